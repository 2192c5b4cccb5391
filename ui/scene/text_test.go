package scene_test

import (
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"lidmark/ui/scene"

	"pgregory.net/rapid"
)

// even measures every character as half its size wide.
type even struct{}

func (even) Width(text string, size float64, _ scene.Weight) float64 {
	return float64(utf8.RuneCountInString(text)) * size / 2
}

func TestShorten(t *testing.T) {
	for _, c := range []struct {
		text  string
		width float64 // at size 10: 5 a character
		want  string
	}{
		{"laying", 30, "laying"},
		{"laying", 29, "layi…"},
		{"due for a look", 25, "due…"},
		{"königin", 20, "kön…"},
		{"laying", 5, "…"},
		{"laying", 4, ""},
		{"", 0, ""},
	} {
		if got := scene.Shorten(even{}, c.text, 10, scene.Regular, c.width); got != c.want {
			t.Errorf("Shorten(%q, width %v) = %q, want %q", c.text, c.width, got, c.want)
		}
	}
}

func TestWrap(t *testing.T) {
	got := scene.Wrap(even{}, "look for eggs Mon 17 May", 10, scene.Regular, 50)
	if want := []string{"look for", "eggs", "Mon 17 May"}; !slices.Equal(got, want) {
		t.Errorf("Wrap = %q, want %q", got, want)
	}
	got = scene.Wrap(even{}, "take out the queen Sat 24 Apr", 10, scene.Regular, 125)
	if want := []string{"take out the queen", "Sat 24 Apr"}; !slices.Equal(got, want) {
		t.Errorf("Wrap = %q, want %q: a day is not parted", got, want)
	}
	got = scene.Wrap(even{}, "look on Sat 24 Apr", 10, scene.Regular, 45)
	if want := []string{"look on", "Sat", "24 Apr"}; !slices.Equal(got, want) {
		t.Errorf("Wrap = %q, want %q: the weekday has no room beside its date", got, want)
	}
	got = scene.Wrap(even{}, "on 24 midsummer", 10, scene.Regular, 50)
	if want := []string{"on 24", "midsummer"}; !slices.Equal(got, want) {
		t.Errorf("Wrap = %q, want %q: both do not fit into a line", got, want)
	}
	got = scene.Wrap(even{}, "a extraordinarily b", 10, scene.Regular, 20)
	if want := []string{"a", "extraordinarily", "b"}; !slices.Equal(got, want) {
		t.Errorf("Wrap with a word too wide = %q, want %q", got, want)
	}
	if got := scene.Wrap(even{}, " ", 10, scene.Regular, 20); len(got) != 0 {
		t.Errorf("Wrap of nothing = %q, want no lines", got)
	}
}

func TestNoWordIsLeftAlone(t *testing.T) {
	for _, c := range []struct {
		text  string
		width float64 // at size 10: 5 a character
		want  []string
	}{
		{"the typed line has letters of its own", 165, []string{"the typed line has letters of", "its own"}},
		{"due for a look", 45, []string{"due for", "a look"}},
		{"laying workers", 40, []string{"laying", "workers"}},               // the line above has one word
		{"eggs seen today", 50, []string{"eggs seen", "today"}},             // and here two
		{"it is in an incubator", 55, []string{"it is in an", "incubator"}}, // both are too wide for a line
	} {
		if got := scene.Wrap(even{}, c.text, 10, scene.Regular, c.width); !slices.Equal(got, c.want) {
			t.Errorf("Wrap(%q, %v) = %q, want %q", c.text, c.width, got, c.want)
		}
	}
}

func TestWrapKeepsEveryWord(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOf(rapid.StringMatching(`[a-z0-9]{1,12}`)).Draw(t, "words")
		width := rapid.Float64Range(10, 200).Draw(t, "width")
		lines := scene.Wrap(even{}, strings.Join(words, " "), 10, scene.Regular, width)
		if got := strings.Fields(strings.Join(lines, " ")); !slices.Equal(got, words) {
			t.Fatalf("%q wrapped at %v is %q", words, width, lines)
		}
		for i, line := range lines {
			if (even{}).Width(line, 10, scene.Regular) > width && strings.Contains(line, " ") {
				t.Fatalf("line %d of %q is wider than %v", i, lines, width)
			}
		}
	})
}

func TestShortenedTextFits(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.String().Draw(t, "text")
		width := rapid.Float64Range(0, 200).Draw(t, "width")
		if short := scene.Shorten(even{}, text, 10, scene.Bold, width); (even{}).Width(short, 10, scene.Bold) > width {
			t.Fatalf("Shorten(%q, %v) = %q is wider", text, width, short)
		}
	})
}
