package main

import (
	"os"
	"regexp"
	"strings"
	"testing"
)

// placedBook is a book of a yard on Earth with stands, a ground and a try-out, whose
// figures stand nowhere else.
func placedBook(t *testing.T) {
	t.Helper()
	t.Chdir(t.TempDir())
	for _, args := range commandLines(t, `
new hill --yard Hill --zone Europe/Berlin --boxes A1-A4 --since 2027-03-01 --person Ida --lat 47.12345 --lon 8.66100
add colony S2 --role finisher
ground draw boundary -41.731,-41.731 61.737,-41.731 61.737,51.733 -41.731,51.733
ground draw tree 33.371,27.373 --height 6
layout try other
layout set A --at 13.717,17.719 --turn 90
graft --larvae 20 --on '2027-05-05 18:00'
makeup A1 --cups 3 --on 2027-05-08
`) {
		if out, errs, code := call(t, "", false, args...); code != 0 {
			t.Fatalf("lidbook %q = %d\n%s%s", args, code, out, errs)
		}
	}
}

// onEarthFigures are the yard's degrees, inYardFigures the metres in it. The latitude of
// the coarse grid begins like neither.
var (
	onEarthFigures = regexp.MustCompile(`47\.12[1-9]|8\.66[01]`)
	inYardFigures  = regexp.MustCompile(`41\.73|61\.73|51\.73|33\.37|27\.37|13\.71|17\.71`)
)

// TestNoCoordinateStays: whatever leaves the book on request without places has none of
// its figures, and coarse none that says where on Earth the yard lies. What holds no
// places without being asked has none either.
func TestNoCoordinateStays(t *testing.T) {
	placedBook(t)
	files := func(args ...string) (text string) {
		out, errs, code := call(t, "", false, args...)
		if code != 0 {
			t.Fatalf("lidbook %q = %d\n%s", args, code, errs)
		}
		if args[0] != "calendar" {
			return out
		}
		b, err := os.ReadFile(args[1])
		if err != nil {
			t.Fatal(err)
		}
		return string(b)
	}
	holding := [][]string{{"export", "jsonl"}, {"export", "layout"}, {"export", "layout", "other"}, {"ground", "out", "-"}, {"ground", "out", "-", "--layout", "other"}}
	for _, args := range holding {
		if text := files(args...); !onEarthFigures.MatchString(text) && !inYardFigures.MatchString(text) && args[len(args)-1] != "layout" {
			t.Errorf("%q holds no places to be left out:\n%s", args, text)
		}
		if text := files(append(args, "--no-positions")...); onEarthFigures.MatchString(text) || inYardFigures.MatchString(text) || strings.Contains(text, `"lat"`) {
			t.Errorf("%q --no-positions still has %q", args, append(onEarthFigures.FindAllString(text, 3), inYardFigures.FindAllString(text, 3)...))
		}
		if text := files(append(args, "--coarse")...); onEarthFigures.MatchString(text) {
			t.Errorf("%q --coarse still has %q", args, onEarthFigures.FindAllString(text, 3))
		}
	}
	for _, args := range [][]string{
		{"export", "nucs"},
		{"export", "batches"},
		{"export", "looks"},
		{"export", "plans"},
		{"export", "plan"},
		{"export", "orders"},
		{"export", "buying"},
		{"buying"},
		{"calendar", "out.ics"},
		{"today"},
		{"nucs", "--json"},
		{"batches", "--json"},
	} {
		if text := files(args...); onEarthFigures.MatchString(text) || inYardFigures.MatchString(text) {
			t.Errorf("%q has places", args)
		}
	}
}

// TestPlacelessIsTakenIn: entries without places are read by another book like any
// other.
func TestPlacelessIsTakenIn(t *testing.T) {
	placedBook(t)
	for _, args := range commandLines(t, `
export jsonl --no-positions --to shared.jsonl --book hill.lidmark
new other --yard Other --zone Europe/Berlin --person Jon
import shared.jsonl --book other.lidmark
nuc A1 --book other.lidmark
`) {
		out, errs, code := call(t, "", false, args...)
		if code != 0 || args[0] == "import" && !strings.Contains(out, "taken in") {
			t.Fatalf("lidbook %q = %d\n%s%s", args, code, out, errs)
		}
	}
}
