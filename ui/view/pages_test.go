package view_test

import (
	"fmt"
	"math"
	"slices"
	"testing"

	"lidmark/domain/roll"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// pages are the pages of the first start, filled in.
func pages(t testing.TB) map[string]state.State {
	all := map[string]state.State{}
	h := nothingOpen(t)
	h.Recent = []string{"/books/home-yard.lidmark", `C:\Users\ida\Documents\other.lidmark`}
	all["start"] = h.State
	h.Recent = nil
	all["the very first start"] = h.State
	h.write("2")
	all["an empty step"] = h.State
	h.write("Home Yard").press("Tab", "Tab").write("54.6").press("Tab").write("15")
	all["the yard"] = h.State
	h.press("Enter").write("A1-A12, B1-B8").press("Tab").write("4")
	h.tab(state.ChoiceOf("start.row0.kind", "mini")).press("Right", "Right", "Right")
	all["the boxes"] = h.State
	h.press("Tab").write("5").press("Tab").write("3").press("Enter")
	h.write("Ida Mon-Fri 18:30-20:30 Sat-Sun 8:00-18:00").press("Tab").write("Jon Sat 9:00-12:00").press("Tab").write("Mo").press("Tab").write("An Wed 9:00-12:00")
	all["the people"] = h.State
	h.press("Enter").write("yesterday 18:00").press("Tab").write("24").press("Tab").write("30")
	all["the batch"] = h.State
	h = nothingOpen(t)
	h.send(state.ListRead{Path: "/lists/nucs of last year.csv", List: aList("Nuc,State,Graft no,Grafted,Cell in,Queen line,Bees,Stores,Remarks", "A1,virgin,1,2027-04-20,2027-04-30,Plover,4,2,", "A2,purple,1,2027-04-20,31.4.,Plover,4,2,a note", "A3,virgin,2,,2027-04-30,,,,")})
	all["a list"] = h.State
	h.press("Right", "Enter")
	all["the meanings"] = h.State
	var many []roll.Encoding
	for i := range 12 {
		many = append(many, roll.Encoding{Name: fmt.Sprint(i), Words: "Central Europe, Windows", Preview: "Zuchtliste Obere Wiese, Königinnenzelle, schön, nächste, Räuber, mäßig"})
	}
	h.send(state.ListRead{Path: "/lists/a.csv", List: roll.List{File: "a.csv", Encodings: many}})
	all["the encodings"] = h.State
	return all
}

// TestPagesAreReadInEverySize: no word covers another, none leaves its pane, and
// all that takes the keys is large enough to be hit.
func TestPagesAreReadInEverySize(t *testing.T) {
	for name, s := range pages(t) {
		for _, size := range [][3]float64{{1440, 900, 1}, {1280, 800, 1}, {1280, 800, 1.5}, {800, 560, 1}, {1920, 1080, 1}} {
			s.Width, s.Height, s.Text = size[0], size[1], size[2]
			sc := window(s)
			all := texts(t, sc, s.Size())
			for i, a := range all {
				if a.Text.Text == "" || a.box.Intersect(a.clip).W <= 0 || a.clip.H <= 32 { // out of sight, or in a field
					continue
				}
				if a.box.X < a.clip.X-1 || a.box.Right() > a.clip.Right()+1 {
					t.Errorf("%s at %v: %q fills %.0f to %.0f, its pane %.0f to %.0f", name, size, a.Text.Text, a.box.X, a.box.Right(), a.clip.X, a.clip.Right())
				}
				for _, b := range all[i+1:] {
					if cut := a.box.Inset(1).Intersect(a.clip).Intersect(b.box.Inset(1)).Intersect(b.clip); name != "the meanings" && cut.W > 0 && cut.H > 0 {
						t.Errorf("%s at %v: %q and %q cover one another", name, size, a.Text.Text, b.Text.Text)
					}
				}
			}
			for _, ref := range sc.Refs() {
				a, _ := sc.Where(ref)
				if cut := s.Layout().Foot.Y - 62; math.Abs(a.Bottom()-cut) < 1 {
					continue // half in sight at the foot of the fields
				}
				if min(a.W, a.H) < 27 && !slices.Contains([]string{state.CaretRef, state.DayRef, "note"}, ref.Kind) {
					t.Errorf("%s at %v: %v is %.0f by %.0f, too small to be hit", name, size, ref, a.W, a.H)
				}
			}
		}
	}
}

// TestTheMainButtonIsAlwaysThere: whatever the size, the way on can be seen.
func TestTheMainButtonIsAlwaysThere(t *testing.T) {
	mains := map[string]string{"the yard": "start on", "the boxes": "start on", "the people": "start on", "the batch": "start on", "a list": "keep list", "the encodings": "read list", "start": "start book"}
	for name, s := range pages(t) {
		for i := range sizes {
			s := sized(s, i)
			if mains[name] == "" {
				continue
			}
			a, ok := window(s).Where(state.CommandOf(mains[name]))
			if body := (scene.Area{W: s.Size().W, H: s.Layout().Foot.Y}); !ok || a.X < 0 || a.Right() > body.W || a.Bottom() > body.H || a.Y < 0 {
				t.Errorf("%s at %v: the button lies at %v", name, sizes[i], a)
			}
		}
	}
}
