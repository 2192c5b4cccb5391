package main

import "testing"

// A way out that costs a promise nothing does not say that it does.
func TestAPromiseThatStaysIsNotToldAsAChange(t *testing.T) {
	for _, c := range []struct {
		before, after float64
		want          string
	}{
		{89.2, 88.7, "promise 89 % as before"},
		{89.2, 71.5, "promise 72 % instead of 89 %"},
	} {
		if got := promiseWords(c.before, c.after); got != c.want {
			t.Errorf("%.1f, then %.1f: %q, want %q", c.before, c.after, got, c.want)
		}
	}
}
