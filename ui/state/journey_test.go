package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

func TestDaysAreWalked(t *testing.T) {
	w := start(t)
	w.press(".").press(".").press(",")
	if got := w.Looked(); got != today+1 {
		t.Errorf("two days on and one back: looked at %v, want %v", got, today+1)
	}
	if !w.Away() || !w.Ahead() {
		t.Error("a day ahead is neither away nor ahead")
	}
	w.press(",", state.Shift)
	if got := w.Looked(); got != today-6 {
		t.Errorf("a week back: looked at %v, want %v", got, today-6)
	}
	w.press("Home")
	if w.Away() {
		t.Errorf("Home leaves the window at %v", w.Looked())
	}
}

func TestTheRibbonFollowsTheDay(t *testing.T) {
	w := start(t)
	for range 30 {
		w.press(".", state.Shift)
		if r := w.Layout().Ribbon; w.Looked() < r.First || w.Looked() > r.Last() {
			t.Fatalf("%v lies outside the ribbon %v to %v", w.Looked(), r.First, r.Last())
		}
	}
}

func TestTheHandleIsDragged(t *testing.T) {
	w := start(t)
	r := w.Layout().Ribbon
	y := r.Y + 10
	w.send(state.Pressed{At: scene.Point{X: r.At(today), Y: y}}, state.Moved{At: scene.Point{X: r.At(today + 9), Y: y + 400}})
	if got := w.Looked(); got != today+9 {
		t.Errorf("dragged to %v, looked at %v", today+9, got)
	}
	w.send(state.Released{At: scene.Point{X: r.At(today + 9), Y: y}}, state.Moved{At: scene.Point{X: r.At(today), Y: y}})
	if got := w.Looked(); got != today+9 {
		t.Errorf("the handle moved after it was let go: %v", got)
	}
}

func TestTheWheelMovesTheDays(t *testing.T) {
	w := start(t)
	r := w.Layout().Ribbon
	w.send(state.Wheeled{At: r.Centre(), DY: 60})
	if got := w.Layout().Ribbon.First; got != r.First+3 {
		t.Errorf("after three notches the ribbon begins at %v, want %v", got, r.First+3)
	}
	if w.Away() {
		t.Error("the wheel changed the day looked at")
	}
}

func TestSelecting(t *testing.T) {
	w := start(t).run("yard")
	w.tap(w.ref("A1"), 0)
	w.tap(w.ref("C3"), state.Ctrl)
	if w.Selection.Len() != 2 || w.chosen() != "C3" {
		t.Errorf("A1 and with Ctrl C3: %d selected, %q last", w.Selection.Len(), w.chosen())
	}
	w.tap(w.ref("C3"), state.Ctrl)
	if w.Selection.Len() != 1 || w.chosen() != "A1" {
		t.Errorf("C3 taken off again: %d selected, %q last", w.Selection.Len(), w.chosen())
	}
	w.tap(state.RefOf(w.nuc("B2").Stand.Subject()), 0)
	if w.Selection.Len() != 4 || !w.Selection.Has(w.nuc("B4").Nuc.Nuc.Subject()) {
		t.Errorf("stand B takes %d nucs, want its four", w.Selection.Len())
	}
	batch := w.nuc("N6").Holds.Batch.Subject()
	w.tap(state.RefOf(batch), 0)
	if w.Selection.Last() != batch {
		t.Error("a batch's name does not take the batch")
	}
	w.tap(scene.Ref{Kind: state.PaneRef, ID: state.GridGround}, 0)
	if w.Selection.Len() != 0 {
		t.Error("a click on empty ground keeps the selection")
	}
}

func TestSelectionSurvivesFilterAndSort(t *testing.T) {
	w := start(t).run("table")
	w.tap(w.ref("N6"), 0)
	w.tap(scene.Ref{Kind: state.SortRef, ID: "nuc"}, 0)
	w.tap(scene.Ref{Kind: state.SortRef, ID: "nuc"}, 0)
	w.run("needs you")
	if w.chosen() != "N6" || w.Selection.Len() != 1 {
		t.Errorf("after sorting and filtering %q is chosen, want N6", w.chosen())
	}
	if !w.Sort.Down {
		t.Error("the head clicked twice does not sort downwards")
	}
}

func TestWalkingAndArrows(t *testing.T) {
	w := start(t).run("yard")
	w.Yards[state.Yard] = w.nuc("A1").Yard
	w.tap(w.ref("A1"), 0)
	for _, step := range []struct{ key, want string }{
		{"Right", "A2"}, {"Down", "C2"}, {"Left", "C1"}, {"Up", "A1"}, {"PageDown", "A2"}, {"PageUp", "A1"}, {"Left", "A1"},
	} {
		if w.press(step.key); w.chosen() != step.want {
			t.Fatalf("%s leads to %s, want %s", step.key, w.chosen(), step.want)
		}
	}
	w.press("Right", state.Shift).press("Down", state.Shift)
	if w.Selection.Len() != 3 {
		t.Errorf("Shift and two arrows: %d selected, want 3", w.Selection.Len())
	}
}

func TestArrowsOnTheMapTakeTheNearest(t *testing.T) {
	w := start(t).run("yard").run("map")
	w.Yards[state.Yard] = w.nuc("A1").Yard
	w.tap(w.ref("A1"), 0)
	for _, step := range []struct{ key, want string }{{"Right", "A2"}, {"Down", "A4"}, {"Right", "B3"}} {
		if w.press(step.key); w.chosen() != step.want {
			t.Errorf("%s leads to %s, want %s", step.key, w.chosen(), step.want)
		}
	}
}

func TestTheChosenNucIsBroughtIntoSight(t *testing.T) {
	w := start(t).run("yard")
	for range len(w.Reading().Nucs) + 1 {
		w.press("PageDown")
		g := w.Grid(w.Layout())
		row := slices.IndexFunc(g.Rows, func(r state.Row) bool { return slices.Contains(r.Lids, w.nuc(w.chosen())) })
		if r := g.Rows[row]; r.Y < g.Offset-0.01 || r.Y+r.H > g.Offset+g.Height+0.01 {
			t.Fatalf("%s lies at %.0f, in sight is %.0f to %.0f", w.chosen(), r.Y, g.Offset, g.Offset+g.Height)
		}
	}
}

func TestFilterByTyping(t *testing.T) {
	w := start(t).press("F", state.Ctrl)
	if w.Room != state.Yard || !w.Typing {
		t.Fatal("Ctrl+F does not open the filter")
	}
	w.write("batch 2x").press("BackSpace")
	if len(w.Shown()) == 0 {
		t.Fatal("nothing is of batch 2")
	}
	for _, n := range w.Shown() {
		if w.Reading().View.Batch(n.Holds.Batch).Number != 2 {
			t.Errorf("%s is shown and not of batch 2", n.Name)
		}
	}
	w.press(",") // a letter of the filter, no day
	if w.Away() {
		t.Error("a comma typed into the filter changed the day")
	}
	w.press("Return")
	if w.Typing || w.Filter == "" {
		t.Error("Return does not keep the filter")
	}
	if w.press("Escape"); w.Filter != "" {
		t.Error("Esc does not show all again")
	}
}

func TestEscapeLeavesInOrder(t *testing.T) {
	w := start(t).run("wall")
	w.tap(w.ref("A1"), 0)
	w.run("needs you").run("yards").run("keys")
	for _, step := range []struct {
		left string
		gone func() bool
	}{
		{"the keys", func() bool { return !w.Keys }},
		{"the menu", func() bool { return w.Menu == state.NoMenu }},
		{"the filter", func() bool { return w.Filter == "" }},
		{"the selection", func() bool { return w.Selection.Len() == 0 }},
		{"the filled room", func() bool { return w.Pane == state.Split }},
	} {
		if step.gone() {
			t.Fatalf("%s is gone before its turn", step.left)
		}
		if w.press("Escape"); !step.gone() {
			t.Fatalf("Esc does not leave %s", step.left)
		}
	}
}

func TestMapKeepsThePointUnderTheWheel(t *testing.T) {
	w := start(t).run("yard")
	p := w.Layout().MapFrame().Centre().Add(scene.Point{X: 60, Y: -40})
	before := w.MapCamera().World(p)
	w.send(state.Wheeled{At: p, DY: -20}, state.Wheeled{At: p, DY: -20})
	after := w.MapCamera().World(p)
	if d := after.Sub(before); d.X*d.X+d.Y*d.Y > 1e-9 {
		t.Errorf("the ground under the wheel moved by %v m", d)
	}
	w.send(state.Pressed{At: p, Mods: state.Shift}, state.Moved{At: p.Add(scene.Point{X: 30, Y: 10})})
	if got := w.MapCamera().World(p.Add(scene.Point{X: 30, Y: 10})); got.Sub(before).X > 1e-9 {
		t.Errorf("the ground does not follow the drag: %v", got)
	}
	w.press("Escape")
	if got := w.MapCamera().World(p); got.Sub(before).X > 1e-9 {
		t.Error("Esc does not put a dragged map back")
	}
	if w.run("fit"); len(w.Map) != 0 {
		t.Error("Ctrl+0 does not show the whole yard")
	}
}

func TestRubberBand(t *testing.T) {
	w := start(t).run("yard")
	o := w.Layout().MapFrame().Centre()
	ground := scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.MapGround}}
	w.send(state.Pressed{At: o, Tag: ground}, state.Moved{At: o.Add(scene.Point{X: 2})})
	if !w.Band().Empty() {
		t.Error("a band begins before the pointer has moved")
	}
	w.send(state.Moved{At: o.Add(scene.Point{X: 80, Y: 60})})
	if got := w.Band(); got != (scene.Area{X: o.X, Y: o.Y, W: 80, H: 60}) {
		t.Errorf("the band is %v", got)
	}
	within := []scene.Ref{w.ref("A1"), w.ref("B2"), ground.Ref}
	w.send(state.Released{At: o, Within: within})
	if w.Selection.Len() != 2 || !w.Band().Empty() {
		t.Errorf("the band took %d nucs, want 2", w.Selection.Len())
	}
}

func TestANameThatIsTypedLeadsThere(t *testing.T) {
	w := start(t).run("yard")
	for _, typed := range []struct{ letters, want string }{{"N1", "N1"}, {"6", "N16"}, {"C", "N16"}, {"3", "C3"}, {"v", "C3"}} {
		if w.write(typed.letters); w.chosen() != typed.want {
			t.Errorf("%q leads to %s, want %s", typed.letters, w.chosen(), typed.want)
		}
	}
	w.write("A").press("PageDown").write("1")
	if w.chosen() != "C4" {
		t.Errorf("a figure after another key leads to %s, want C4 kept", w.chosen())
	}
}

func TestTheRouteIsWalked(t *testing.T) {
	w := start(t)
	tasks := w.Reading().Tasks()
	if len(tasks) == 0 {
		t.Fatal("the demo season has no work today")
	}
	many := slices.IndexFunc(tasks, func(t rules.Task) bool { return len(t.Of) > 1 })
	w.tap(state.TaskOf(many), 0)
	if !w.TaskChosen(tasks[many]) || w.Selection.Len() != len(tasks[many].Of) {
		t.Errorf("a line of the route about %d nucs takes %d", len(tasks[many].Of), w.Selection.Len())
	}
	w.press("Escape")
	for range len(tasks) + 2 {
		w.press("Down")
	}
	last := tasks[len(tasks)-1]
	if !w.TaskChosen(last) {
		t.Errorf("at the end of the route %d things are chosen, want those of %q", w.Selection.Len(), last.Title)
	}
	if w.Scroll[state.RoutePlace] == 0 {
		t.Error("the end of the route was not brought into sight")
	}
}

func TestTheCardLiesOverASmallWindow(t *testing.T) {
	w := start(t).run("yard").send(state.Resized{Width: 720, Height: 600})
	if w.tap(w.ref("A1"), 0); !w.Layout().Card.Empty() {
		t.Error("the card is open before it is asked for")
	}
	if w.tap(w.ref("A1"), 0); w.Layout().Card.Empty() {
		t.Error("a second click does not open the card")
	}
	if w.press("Escape"); !w.Layout().Card.Empty() || w.chosen() != "A1" {
		t.Error("Esc does not close the card alone")
	}
	if w.press("Return"); w.Layout().Card.Empty() {
		t.Error("Enter does not open the card")
	}
}

func TestDueDayIsShown(t *testing.T) {
	w := start(t).run("yard")
	w.tap(w.ref("D4"), 0)
	due := w.nuc("D4").DueDay
	if due <= today {
		t.Fatalf("D4 is due on %v; the test wants one ahead", due)
	}
	if w.run("show due"); w.Looked() != due {
		t.Errorf("looked at %v, want the day D4 is due, %v", w.Looked(), due)
	}
	w.run("now").run("show batch")
	if w.Selection.Last().Kind != book.KindBatch {
		t.Error("the batch of D4 is not shown")
	}
}

func TestCopyingWhatIsShown(t *testing.T) {
	w := start(t).run("table").press("C", state.Ctrl)
	if len(w.effects) != 1 {
		t.Fatalf("%d effects, want one copy", len(w.effects))
	}
	lines := strings.Split(strings.TrimSpace(w.effects[0].(state.CopyText).Text), "\n")
	if len(lines) != len(w.Shown())+1 || !strings.HasPrefix(lines[0], "nuc\t") {
		t.Errorf("%d lines for %d nucs, begun with %q", len(lines), len(w.Shown()), lines[0])
	}
}

func TestABookThatIsTakenOut(t *testing.T) {
	w := start(t).run("yard")
	w.tap(w.ref("A1"), 0)
	w.Yards[state.Yard] = w.nuc("A1").Yard
	w.send(state.Opened{})
	if w.Selection.Len() != 0 || !w.Yards[state.Yard].IsZero() {
		t.Error("what the book knew stays when it is gone")
	}
	w.run("demo").run("open")
	if len(w.effects) != 2 {
		t.Errorf("%d effects, want the demo and the choice of a file", len(w.effects))
	}
}

// apart are commands that share a key because never both of them can run: one
// is of Yard and the other of Today, or one of the walk and the other of the route,
// or one of Review and the other of cards or forms, or one of the route and the other
// of forms.
// Those of Plan run there alone.
var apart = map[[2]string]bool{
	{"select", "tick"}: true, {"evening", "tick except"}: true, {"sheet", "accept"}: true, {"accept all", "write"}: true, {"write", "make the day"}: true,
	{"fold", "forwards"}: true, {"heads", "two grafts"}: true, {"plan it", "accept all"}: true, {"keep try", "close walk"}: true,
	{"other dates", "find dates"}: true, {"plan it", "plan dates"}: true, {"plan dates", "accept all"}: true,
}

func TestCommandsAreSound(t *testing.T) {
	names, keys := map[string]bool{}, map[string]string{}
	for _, c := range state.Commands() {
		if names[c.Name] {
			t.Errorf("two commands are called %q", c.Name)
		}
		names[c.Name] = true
		for k := range strings.FieldsSeq(c.Keys) {
			if other, taken := keys[k]; taken && !apart[[2]string{other, c.Name}] {
				t.Errorf("%q runs %q and %q", k, other, c.Name)
			}
			keys[k] = c.Name
		}
		if c.Do == nil {
			t.Errorf("%q does nothing", c.Name)
		}
		if found, ok := state.CommandNamed(c.Name); !ok || found.Name != c.Name {
			t.Errorf("%q is not found by its name", c.Name)
		}
	}
}

// TestAnyMessagesInAnyOrder runs whatever may happen: nothing may panic, what
// is selected is known, and a command without a reason against it can run.
func TestAnyMessagesInAnyOrder(t *testing.T) {
	base := open(t)
	var refs []scene.Ref
	for _, n := range base.Reading().Nucs {
		refs = append(refs, state.RefOf(n.Nuc.Nuc.Subject()), state.RefOf(n.Stand.Subject()))
	}
	for y := range base.Reading().View.Yards() {
		refs = append(refs, scene.Ref{Kind: state.YardRef, ID: y.Yard.String()})
	}
	refs = append(refs, scene.Ref{Kind: state.PaneRef, ID: state.MapGround}, scene.Ref{Kind: state.SortRef, ID: "due"}, scene.Ref{})
	for _, c := range state.Commands() {
		refs = append(refs, state.CommandOf(c.Name))
	}
	rapid.Check(t, func(t *rapid.T) {
		s := base
		for range rapid.IntRange(1, 40).Draw(t, "length") {
			p := scene.Point{X: rapid.Float64Range(-10, 2000).Draw(t, "x"), Y: rapid.Float64Range(-10, 1200).Draw(t, "y")}
			tag := scene.Tag{Ref: rapid.SampledFrom(refs).Draw(t, "ref")}
			mods := state.Mods(rapid.IntRange(0, 7).Draw(t, "mods"))
			m := rapid.SampledFrom([]state.Msg{
				state.Moved{At: p, Tag: tag},
				state.Pressed{At: p, Tag: tag, Mods: mods},
				state.Released{At: p, Tag: tag, Within: refs[:3], Mods: mods},
				state.Wheeled{At: p, DY: p.X - 1000, Mods: mods},
				state.Wrote{Rune: 'v'},
				state.Ran{Command: tag.Ref.ID},
				state.Keyed{Key: "Escape"},
				state.Keyed{Key: "Return"},
				state.Resized{Width: 700 + max(0, p.X), Height: 500 + max(0, p.Y)},
			}).Draw(t, "message")
			s, _ = state.Update(s, m)
			s.Layout()
			for sub := range s.Selection.All() {
				if !s.Reading().Known(sub) && s.Looked() >= today {
					t.Fatalf("%v is selected and not known", sub)
				}
			}
		}
	})
}
