package state_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// onFile is a window on a book that has a file.
func onFile(t testing.TB) *window {
	t.Helper()
	w := start(t)
	b := &state.Book{Season: w.Book.Season, Name: "hill", Path: "/books/hill.lidmark"}
	return w.send(state.Opened{Book: b})
}

// drafts are the drafts that were to be kept, as they come back from disk.
func (w *window) drafts() (all []state.Draft) {
	w.t.Helper()
	for _, e := range w.effects {
		if k, ok := e.(state.KeepDraft); ok {
			text, err := json.Marshal(k.Draft)
			if err != nil {
				w.t.Fatal(err)
			}
			var d state.Draft
			if err := json.Unmarshal(text, &d); err != nil {
				w.t.Fatal(err)
			}
			all = append(all, d)
		}
	}
	return all
}

// back is a new window on the same book with a draft in it.
func (w *window) back(d state.Draft) *window {
	return start(w.t).send(state.Opened{Book: w.Book, Draft: d})
}

func TestEveryKeystrokeIsInTheDraft(t *testing.T) {
	w := onFile(t).run("yard")
	w.tap(w.ref("A1"), 0)
	before := len(w.drafts())
	w.write("e b4")
	all := w.drafts()[before:]
	if len(all) != 4 {
		t.Fatalf("4 keystrokes made %d drafts", len(all))
	}
	got := w.back(all[3])
	line := state.LineField(w.nuc("A1").Nuc.Nuc)
	if text := got.Field(line).Text; text != "e b4" || got.chosen() != "A1" || got.Room != state.Yard || got.InField() != line {
		t.Errorf("back are %q about %q in room %d, the keys in %q", text, got.chosen(), got.Room, got.InField())
	}
	if got.Note.Text == "" {
		t.Error("nothing says that something is back")
	}
	w.send(state.Moved{}, state.Resized{Width: 1000, Height: 700}).press("Left")
	if more := len(w.drafts()) - before; more != 4 {
		t.Errorf("moving about made %d drafts more", more-4)
	}
}

func TestWhatTheBookDidNotTakeIsInTheDraft(t *testing.T) {
	w := onFile(t).run("yard")
	w.tap(w.ref("A1"), 0)
	w.write("e").press("Enter")
	sent := w.Pen.Sent
	if len(sent) != 1 {
		t.Fatalf("%d deeds sent", len(sent))
	}
	last := func() state.Draft { all := w.drafts(); return all[len(all)-1] }
	if d := last(); len(d.Unsaid) != 1 {
		t.Fatalf("on its way a deed is in no draft: %+v", d)
	}
	w.send(state.Written{Number: sent[0].Number, Failed: "the disk is full; make room"})
	w.effects = append(w.effects, state.KeepDraft{Draft: w.Draft()})
	got := w.back(last())
	if len(got.Pen.Failed) != 1 || got.Pen.Failed[0].Words != sent[0].Words || got.Pen.Why == "" {
		t.Fatalf("back are %+v because %q", got.Pen.Failed, got.Pen.Why)
	}
	same := func(a, b book.Entry) bool { return a.ID == b.ID }
	if !slices.EqualFunc(got.Pen.Failed[0].Entries, sent[0].Entries, same) {
		t.Error("what is to be tried again are other entries")
	}
	got.effects = nil
	got.run("again")
	write, ok := got.effects[0].(state.Write)
	if !ok || !slices.EqualFunc(write.Deed.Entries, sent[0].Entries, same) {
		t.Fatalf("trying again does %+v", got.effects)
	}
	got.send(state.Written{Number: write.Deed.Number, Book: got.Book})
	all := got.drafts()
	if d := all[len(all)-1]; !d.IsZero() || got.Unsaved() {
		t.Errorf("when all is written the draft is %+v", d)
	}
}

func TestAWalkIsOpenAgainWhereItWasTyped(t *testing.T) {
	w := onFile(t).run("type it in")
	if w.Walk == nil {
		t.Fatal("no walk is open")
	}
	w.write("e b4").press("Down").press("Down").write("v calm")
	row, _ := w.Walk.Row()
	all := w.drafts()
	got := w.back(all[len(all)-1])
	if got.Walk == nil {
		t.Fatalf("the walk is not open; fill %d", got.Fill)
	}
	if back, _ := got.Walk.Row(); back.RowName != row.RowName || got.Field(state.WalkField).Text != "v calm" || got.Walk.Day != w.Walk.Day {
		t.Errorf("open is row %+v with %q, want %+v", back.RowName, got.Field(state.WalkField).Text, row.RowName)
	}
	if first := got.Walk.Rows[0]; got.RowDraft(first) != "e b4" {
		t.Errorf("in the first row stands %q", got.RowDraft(first))
	}
}

func TestAFormIsOpenAgain(t *testing.T) {
	w := onFile(t).run("yard")
	w.tap(w.ref("A1"), 0)
	w.run("look")
	if w.Form == nil {
		t.Fatal("no form is open")
	}
	w.write("8")
	all := w.drafts()
	got := w.back(all[len(all)-1])
	if got.Form == nil || got.Form.Record != "look" || !got.Form.Of.Has(w.nuc("A1").Nuc.Nuc.Subject()) {
		t.Fatalf("open is %+v", got.Form)
	}
	for name, f := range w.Fields {
		if got.Field(name).Text != f.Text {
			t.Errorf("%s says %q, want %q", name, got.Field(name).Text, f.Text)
		}
	}
}

func TestADraftLeavesOutWhatIsInTheBook(t *testing.T) {
	a, b := book.Entry{ID: book.EntryID{1}}, book.Entry{ID: book.EntryID{2}}
	d := state.Draft{Path: "x", Unsaid: []state.Unsaid{{Entries: []book.Entry{a}}, {Entries: []book.Entry{a, b}}}}
	got := d.Without(func(id book.EntryID) bool { return id == a.ID })
	if len(got.Unsaid) != 1 || len(got.Unsaid[0].Entries) != 2 || len(d.Unsaid) != 2 {
		t.Errorf("of %+v there is left %+v", d, got)
	}
}

func TestNoDraftWhereNothingCanBeWritten(t *testing.T) {
	for name, b := range map[string]*state.Book{
		"demo":      {Name: "demo"},
		"read only": {Name: "hill", Path: "/books/hill.lidmark", ReadOnly: "another program has it"},
	} {
		w := start(t)
		b.Season = w.Book.Season
		w.send(state.Opened{Book: b}).run("yard")
		w.tap(w.ref("A1"), 0).write("e b4")
		if all := w.drafts(); len(all) > 0 {
			t.Errorf("%s: %+v", name, all)
		}
	}
}

// Whatever a draft holds, the window takes it and can be drawn and used.
func TestAnyDraftComesBack(t *testing.T) {
	w := onFile(t)
	var subjects []book.Subject
	for _, n := range w.Reading().Nucs[:8] {
		subjects = append(subjects, n.Nuc.Nuc.Subject())
	}
	subjects = append(subjects, book.NucID{9}.Subject(), book.Subject{})
	names := []string{state.LineField(w.nuc("A1").Nuc.Nuc), "form.when", "form.note", "filter", ""}
	for _, c := range state.Commands() {
		names = append(names, c.Name)
	}
	rapid.Check(t, func(r *rapid.T) {
		d := state.Draft{
			Path: w.Book.Path, Form: rapid.SampledFrom(names).Draw(r, "form"),
			Of:   rapid.SliceOfN(rapid.SampledFrom(subjects), 0, 3).Draw(r, "of"),
			Room: state.Room(rapid.Uint8().Draw(r, "room")), Fill: state.Fill(rapid.Uint8().Draw(r, "fill")),
			FillOf: rapid.SampledFrom(subjects).Draw(r, "fill of"),
			Fields: rapid.MapOf(rapid.SampledFrom(names), rapid.String()).Draw(r, "fields"),
		}
		got := w.back(d)
		if (got.Form != nil) != (got.Form != nil && got.Form.Record == d.Form) {
			r.Errorf("form %+v, want %q", got.Form, d.Form)
		}
		for name, f := range got.Fields {
			if got.Form == nil && strings.HasPrefix(name, state.FormField) {
				r.Errorf("field %q %q without a form", name, f.Text)
			}
		}
		got.press("Tab").write("x").press("Enter").press("Escape")
	})
}

// Whatever stands in the file of a draft, it is refused or the window takes it,
// and keeps it again.
func FuzzDraft(f *testing.F) {
	w := onFile(f).run("yard")
	w.tap(w.ref("A1"), 0)
	w.write("e b4").press("Enter")
	w.run("look").write("8")
	for _, d := range []state.Draft{{}, w.Draft(), {Form: "graft", Fields: map[string]string{"form.when": "now"}}, {Fill: state.RecordFill, Fields: map[string]string{state.WalkField: "v"}}} {
		text, err := json.Marshal(d)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Add([]byte(`{"of":["nuc:7"],"room":200,"fill":3,"unwritten":[{"words":"x","entries":[]}]}`))
	f.Fuzz(func(t *testing.T, text []byte) {
		var d state.Draft
		if json.Unmarshal(text, &d) != nil {
			return
		}
		got := (&window{t: t, State: w.State}).send(state.Opened{}, state.Opened{Book: w.Book, Draft: d})
		got.press("Tab").write("x").press("Enter").press("Escape").run("again")
		if _, err := json.Marshal(got.Draft()); err != nil {
			t.Errorf("of %s comes a draft that cannot be kept: %v", text, err)
		}
	})
}

// TestTheSameFormAboutAnotherNucIsKept: what comes back is about the nuc that it
// was about last.
func TestTheSameFormAboutAnotherNucIsKept(t *testing.T) {
	w := onFile(t).run("yard")
	w.tap(w.ref("A1"), 0).run("look")
	w.tap(w.ref("A2"), 0).run("look")
	all := w.drafts()
	got := w.back(all[len(all)-1])
	if got.Form == nil || !got.Form.Of.Has(w.nuc("A2").Nuc.Nuc.Subject()) {
		t.Errorf("back is the form %+v", got.Form)
	}
}

// TestAHalfTypedNumberIsKeptWithItsName: it is the value of that number.
func TestAHalfTypedNumberIsKeptWithItsName(t *testing.T) {
	w := onFile(t).run("numbers").press("Down").write("18")
	all := w.drafts()
	if len(all) == 0 {
		t.Fatal("nothing was kept")
	}
	got := w.back(all[len(all)-1])
	if got.Number == 0 || got.Number != w.Number || got.Typed(state.NumberField) != "18" || got.InField() != state.NumberField {
		t.Errorf("back is %v with %q, the keys go to %q", got.Number, got.Typed(state.NumberField), got.InField())
	}
}

// A try-out that nobody kept is there again when the program ended, however it ended.
func TestATryOutIsInTheDraft(t *testing.T) {
	w := onFile(t)
	w.press("Z", state.Alt)
	before := len(w.drafts())
	w.dragStand("B", scene.Point{X: 80})
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]")
	all := w.drafts()[before:]
	if len(all) != 2 {
		t.Fatalf("a drag and a turn made %d drafts", len(all))
	}
	got := w.back(all[1])
	if !strings.Contains(got.Note.Text, "not kept yet, is here again") {
		t.Errorf("the foot says %q", got.Note.Text)
	}
	got.press("Z", state.Alt)
	for _, letter := range []string{"A", "B"} {
		if got.standOf(letter) != w.standOf(letter) {
			t.Errorf("%s is here again as %+v, and was %+v", letter, got.standOf(letter), w.standOf(letter))
		}
	}
	if got.press("Z", state.Ctrl).press("Z", state.Ctrl); got.LayoutSheet() == nil {
		t.Error("the room is left")
	}
}

// What is kept is in the book, and in no draft.
func TestAKeptTryOutIsInNoDraft(t *testing.T) {
	w := layingOut(t)
	w.Book, w.Pen.Writer = &state.Book{Season: w.Book.Season, Name: w.Book.Name, Path: "/books/hill.lidmark"}, "Ida"
	w.tap(state.TriedStand(w.standOf("A").Stand), 0).press("]")
	if w.Draft().IsZero() {
		t.Fatal("not kept, and in no draft")
	}
	if w.run("keep layout").settle(); !w.Draft().IsZero() {
		t.Errorf("kept, and in the draft: %+v", w.Draft().Tries)
	}
	if w.press("]"); len(w.Draft().Tries) != 1 {
		t.Error("kept and turned further, it is in no draft")
	}
	if w.press("Z", state.Ctrl); !w.Draft().IsZero() {
		t.Error("as it was kept, it is in the draft")
	}
}
