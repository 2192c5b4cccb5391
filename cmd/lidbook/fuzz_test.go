package main

import "testing"

// A place that is typed is read or refused, and what is read lies in a yard.
func FuzzPoint(f *testing.F) {
	for _, s := range []string{"4,-12", "", ",", "1e9,1", "NaN,0", " 3.5 , 2"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		at, err := parsePoint(text)
		switch {
		case (at == nil) != (err != nil || text == ""):
			t.Errorf("parsePoint(%q) = %v, %v", text, at, err)
		case at != nil && !(max(at.X, -at.X, at.Y, -at.Y) <= 10000):
			t.Errorf("parsePoint(%q) = %v", text, at)
		}
	})
}
