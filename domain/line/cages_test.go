package line_test

import (
	"slices"
	"testing"

	"lidmark/domain/line"
)

func TestCages(t *testing.T) {
	for text, want := range map[string][]string{
		"3": {"3"}, "1-3": {"1", "2", "3"}, "1-2, 7": {"1", "2", "7"},
	} {
		if got, err := line.Cages(text); err != nil || !slices.Equal(got, want) {
			t.Errorf("Cages(%q) = %q, %v, want %q", text, got, err, want)
		}
	}
	for _, text := range []string{"", "many", "3-1", "0", "-1", "1-1001", "1-3,2", "1,,2", "1-600,601-1200", "1-9223372036854775807"} {
		if got, err := line.Cages(text); err == nil {
			t.Errorf("Cages(%q) = %d cages, want an error", text, len(got))
		}
	}
}
