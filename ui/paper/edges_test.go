package paper_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paper"
)

// TestTheDateIsWhole: however long a yard is called, the day stands whole over every
// page of its sheets.
func TestTheDateIsWhole(t *testing.T) {
	p := hill()
	p.At("2027-05-09 10:00").Write(book.YardDescribed{
		Yard: booktest.Yard("Hill"), Name: "The Long Orchard behind the Old Mill above the Second Weir by the Upper Water Meadow of the Three Brothers, lower half of it",
		Home: true, Zone: "Europe/Berlin",
	})
	r := reading(p, "2027-05-11 06:40")
	for name, o := range choices() {
		for _, sheet := range papers()[:2] { // route and yard sheet
			for i, page := range sheet.pages(t, r, o) {
				if !slices.ContainsFunc(page.texts, func(w word) bool { return strings.Contains(w.text, "Tuesday 11 May 2027") }) {
					t.Errorf("%s, %s, page %d has no whole date: %v", sheet.name, name, i+1, page.lines()[:4])
				}
			}
		}
	}
}

// TestLastDaysStandAtTheFoot: no text of a row stands below its last day, so that the
// column of last days can be run down.
func TestLastDaysStandAtTheFoot(t *testing.T) {
	r := demoDay(t)
	for name, o := range choices() {
		line, days := 4.5, 0 // mm: a line of text and a little
		if o.Large {
			line *= 1.4
		}
		for _, page := range routeOf(t, r, o) {
			for _, w := range page.texts {
				if f := strings.Fields(w.text); len(f) < 2 || len(f) > 3 || f[0] != "by" && f[0] != "past" {
					continue
				}
				days++
				if i := slices.IndexFunc(page.texts, func(o word) bool { return o.x < w.x && o.y > w.y+0.5 && o.y < w.y+line }); i >= 0 {
					t.Errorf("%s: %q stands below the last day %q", name, page.texts[i].text, w.text)
				}
			}
		}
		if days < 5 {
			t.Errorf("%s: %d last days", name, days)
		}
	}
}

// TestTodayIsCalledToday: the last day of what is due today is no day of the week,
// which might be that of next week.
func TestTodayIsCalledToday(t *testing.T) {
	for _, p := range papers() {
		if p.name != "week" && p.name != "crew" {
			continue
		}
		if text := all(p.pages(t, hillOf(p), paper.Options{})); strings.Contains(text, "by Tue") || !strings.Contains(text, "today") {
			t.Errorf("%s, on a Tuesday:\n%s", p.name, text)
		}
	}
}

// TestLabelsKeepOffTheEdge: name and code begin at one height, and no ink of a label is
// less than 5 mm from the edge of the sheet, where printers do not print.
func TestLabelsKeepOffTheEdge(t *testing.T) {
	const least, capital = 5.0, 0.7
	r := demoDay(t)
	for page, s := range sheets {
		p := labels(t, r, 0, page)[0]
		for i, n := range r.Nucs[:s.columns*s.rows] {
			a := bar{s.left + float64(i%s.columns)*s.pitch, s.top + float64(i/s.columns)*s.h, s.w, s.h}
			code := bar{x: p.w, y: p.h}
			for _, b := range p.bars {
				if b.x >= a.x && b.x < a.x+a.w && b.y >= a.y && b.y < a.y+a.h {
					code.x, code.y = min(code.x, b.x), min(code.y, b.y)
				}
				if b.x < least || b.y < least || b.x+b.w > p.w-least || b.y+b.h > p.h-least {
					t.Fatalf("ink of the code of %s at %.1f, %.1f mm", n.Name, b.x, b.y)
				}
			}
			for _, w := range p.texts {
				if w.x < a.x || w.x >= a.x+a.w || w.y < a.y || w.y >= a.y+a.h {
					continue
				}
				if top := w.y - w.size*capital; w.text == n.Name && math.Abs(top-code.y) > 0.1 {
					t.Errorf("%s begins at %.2f mm, its code at %.2f mm", n.Name, top, code.y)
				}
				if w.x < least || w.y-w.size*capital < least || w.y > p.h-least {
					t.Errorf("%q stands at %.1f, %.1f mm, in the margin of a printer", w.text, w.x, w.y)
				}
			}
		}
	}
}

// TestNothingIsCutThatIsToBeDone: on the sheet of a day nothing loses its end, however
// large the print: neither what to pack nor why something is done.
func TestNothingIsCutThatIsToBeDone(t *testing.T) {
	r := demoDay(t)
	for name, o := range choices() {
		for i, page := range routeOf(t, r, o) {
			for _, w := range page.texts {
				if strings.HasSuffix(w.text, "…") {
					t.Errorf("%s, page %d: %q is cut", name, i+1, w.text)
				}
			}
		}
	}
}

// TestADayBeginsWithItsWork: no day of a week stands at the foot of a page with all of
// its work on the next.
func TestADayBeginsWithItsWork(t *testing.T) {
	for _, p := range papers() {
		if p.name != "week" {
			continue
		}
		for name, o := range choices() {
			for i, page := range p.pages(t, demoDay(t), o) {
				lines := page.lines()
				for k, l := range lines {
					if head := strings.Contains(l, "free ") && strings.Contains(l, "day "); head && k+1 < len(lines) && strings.Contains(lines[k+1], "page ") {
						t.Errorf("%s, page %d ends with the heading %q", name, i+1, l)
					}
				}
			}
		}
	}
}
