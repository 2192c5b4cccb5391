package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// strikes presses a key as the window does: a character comes as such and as a key.
func (w *window) strikes(keys ...string) *window {
	for _, k := range keys {
		if r := []rune(k); len(r) == 1 {
			w.send(state.Wrote{Rune: r[0]})
		}
		w.press(k)
	}
	return w
}

// marked is the row of the menu that the keys stand on.
func (w *window) marked() string { return w.MenuItems()[w.MenuRow].Word }

func TestAMenuIsGoneThroughByKeys(t *testing.T) {
	w := start(t).run("yard")
	w.tap(w.ref("A1"), 0).run("layers")
	if w.marked() != "Condition" {
		t.Fatalf("the menu opens at %q, the map shows condition", w.marked())
	}
	for _, step := range []struct{ key, want string }{
		{"Down", "Due"}, {"End", "Batch"}, {"Down", "Batch"}, {"Home", "Condition"}, {"Up", "Condition"}, {"s", "Strength"}, {"b", "Batch"}, {"x", "Batch"},
	} {
		if w.strikes(step.key); w.marked() != step.want {
			t.Errorf("%s marks %q, want %q", step.key, w.marked(), step.want)
		}
	}
	if w.strikes("Return"); w.Layer != state.ByBatch || w.Menu != state.NoMenu {
		t.Errorf("Return leaves layer %v, menu %v", w.Layer, w.Menu)
	}
	w.run("layers").strikes("Home", " ")
	if w.Layer != state.ByCondition || w.chosen() != "A1" {
		t.Errorf("Space takes layer %v, and %q is chosen", w.Layer, w.chosen())
	}
	w.run("heads").strikes("m", "Escape")
	if w.Menu != state.NoMenu || w.Heads != state.StandHeads {
		t.Errorf("Esc leaves menu %v and heads %v", w.Menu, w.Heads)
	}
	w.press("L", state.Ctrl).press("L", state.Ctrl)
	if w.Menu != state.NoMenu {
		t.Error("the key that opened a menu does not shut it")
	}
}

// allKeys are the keys of all commands, and characters.
func allKeys() (all []state.Keyed) {
	for _, c := range state.Commands() {
		for k := range strings.FieldsSeq(c.Keys) {
			m := state.Keyed{Key: k}
			for _, held := range []struct {
				name string
				mod  state.Mods
			}{{"Ctrl+", state.Ctrl}, {"Alt+", state.Alt}, {"Shift+", state.Shift}} {
				if rest, ok := strings.CutPrefix(m.Key, held.name); ok {
					m.Key, m.Mods = rest, m.Mods|held.mod
				}
			}
			all = append(all, m)
		}
	}
	for _, k := range []string{"Tab", "Return", "BackSpace", "Delete", "a", "c", "A", "9", "1", " ", "?", "."} {
		all = append(all, state.Keyed{Key: k})
	}
	return all
}

// TestNothingReachesTheRoomBelowAMenu presses all keys while a menu or the sheet
// of keys is open: none writes, goes elsewhere or looks at another day.
func TestNothingReachesTheRoomBelowAMenu(t *testing.T) {
	keys := allKeys()
	rapid.Check(t, func(rt *rapid.T) {
		w := start(t).run(rapid.SampledFrom([]string{"today", "yard", "table", "map"}).Draw(rt, "room"))
		w.tap(w.ref("A1"), 0)
		if rapid.Bool().Draw(rt, "evening") {
			w.run("type it in")
		}
		w.run(rapid.SampledFrom([]string{"yards", "layers", "heads", "writer", "keys"}).Draw(rt, "over"))
		before, walk := w.State, w.Walk
		for range rapid.IntRange(1, 12).Draw(rt, "keys") {
			if w.Menu == state.NoMenu && !w.Keys {
				return
			}
			k := rapid.SampledFrom(keys).Draw(rt, "key")
			if r := []rune(k.Key); len(r) == 1 && k.Mods == 0 {
				w.send(state.Wrote{Rune: r[0]})
			}
			w.send(k)
			for _, e := range w.effects {
				if _, writes := e.(state.Write); writes {
					rt.Fatalf("%+v writes", k)
				}
			}
			if w.Selection.Last() != before.Selection.Last() || w.Looked() != before.Looked() || w.Room != before.Room || w.Form != nil || walk != nil && w.Typed(state.WalkField) != "" {
				rt.Fatalf("%+v reaches the room", k)
			}
		}
	})
}

func TestTheSheetOfKeysScrollsByKeys(t *testing.T) {
	w := start(t).send(state.Resized{Width: 800, Height: 560}).strikes("?")
	if !w.Keys {
		t.Fatal("? does not open the keys")
	}
	w.strikes("Down", "PageDown")
	if w.KeySheet().Offset == 0 || w.Away() {
		t.Error("the keys do not scroll")
	}
	if w.strikes("Home"); w.KeySheet().Offset != 0 {
		t.Error("Home does not lead to the top")
	}
	if w.strikes("?"); w.Keys {
		t.Error("? does not shut the keys")
	}
}

// TestItIsAskedOnceWhoWrites: the first deed waits for it, later ones do not.
func TestItIsAskedOnceWhoWrites(t *testing.T) {
	for _, name := range []string{"", "Ida"} {
		w := inTheEvening(t, yardOfTheEvening())
		w.Pen.Writer, w.Book.Path = "", "Ostermead.lidmark"
		w.write("c4").press("Return")
		if wrote(w.effects) != nil || w.Menu != state.WriterMenu || !w.WaitsForWriter() {
			t.Fatalf("the first line is written with menu %v open", w.Menu)
		}
		if !w.Unsaved() || w.at() != "A2" {
			t.Errorf("while it is asked the walk stands at %q", w.at())
		}
		if name == "" {
			w.strikes("Escape")
		} else {
			w.strikes("Home", strings.ToLower(name[:1]))
			for w.marked() != name {
				w.strikes("Down")
			}
			w.strikes("Return")
		}
		entries := wrote(w.effects)
		if len(entries) == 0 || entries[0].Writer != name {
			t.Fatalf("%q: written are %d entries", name, len(entries))
		}
		if name != "" && w.Writers[w.Book.Path] != name {
			t.Errorf("the book is written by %q the next time", w.Writers[w.Book.Path])
		}
		w.save()
		w.Book.Path = "Ostermead.lidmark"
		w.types("c4")
		if w.Menu != state.NoMenu || w.Unsaved() {
			t.Errorf("%q: it is asked a second time", name)
		}
	}
}

// TestAFigureAnswersOnlyAsTheFirstKey: typed on, a question is left open, and
// nothing typed is lost.
func TestAFigureAnswersOnlyAsTheFirstKey(t *testing.T) {
	for _, c := range []struct {
		next   string
		typed  string // what then stands in the line
		struck bool
	}{{"h2", "h2", false}, {"2", "", true}, {"2h", "h", true}} {
		w := inTheEvening(t, yardOfTheEvening()).types("n c4 s5 h2", "A1 n c4 s5 h2")
		if w.Asked == nil {
			t.Fatal("nothing is asked")
		}
		w.strikes(strings.Split(c.next, "")...).save()
		if twice := w.rowsOf("A1") == 2; w.Asked != nil || twice == c.struck || w.Typed(state.WalkField) != c.typed {
			t.Errorf("%q: asked %v, A1 written twice %v, %q stands in the line of %s", c.next, w.Asked, twice, w.Typed(state.WalkField), w.at())
		}
		if w.at() != "A2" {
			t.Errorf("%q is typed at %s", c.next, w.at())
		}
	}
}

// TestAQuestionOfAFormIsAnsweredFirst: the same for what a form asks.
func TestAQuestionOfAFormIsAnsweredFirst(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).run("yard")
	var laying string
	for _, n := range w.Reading().Nucs {
		if n.Condition().Queenright() {
			laying = n.Name
		}
	}
	if laying == "" {
		t.Fatal("no nuc has a laying queen")
	}
	w.tap(w.ref(laying), 0).run("look").run("close form")
	w.Asked = &state.Asked{Asks: "The old queen?", Answers: []state.Option{{Value: "1", Word: "gone"}, {Value: "2", Word: "caught"}}}
	w.strikes("h", "2")
	if w.Asked != nil || w.Typed(w.CardField()) != "h2" {
		t.Errorf("asked %v, the line of the card says %q", w.Asked, w.Typed(w.CardField()))
	}
}

// wrote are the entries that effects write.
func wrote(effects []state.Effect) (all []book.Entry) {
	for _, e := range effects {
		if write, ok := e.(state.Write); ok {
			all = append(all, write.Deed.Entries...)
		}
	}
	return all
}
