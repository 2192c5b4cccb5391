package view_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/roll"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// hands are a keeper at the keyboard of a window, with a desk that begins books
// and writes in them, and keeps nothing.
type hands struct {
	t testing.TB
	state.State
	asked []state.Effect
}

// nothingOpen is a window without a book.
func nothingOpen(t testing.TB) *hands {
	now := today.At(9, 10, zone)
	return &hands{t: t, State: state.State{
		Now: now, Width: 1440, Height: 900, Room: state.Yard,
		Machine: state.Machine{Zone: "Europe/Berlin", Zones: time.LoadLocation, Folder: "/books/", IDs: book.NewIDs(now, nil, [32]byte{1})},
	}}
}

func (h *hands) send(m state.Msg) {
	var effects []state.Effect
	h.State, effects = state.Update(h.State, m)
	h.asked = append(h.asked, effects...)
	for _, e := range effects {
		switch e := e.(type) {
		case state.Found:
			season := book.NewSeason(time.LoadLocation, e.Entries)
			h.send(state.Opened{Book: &state.Book{Season: season, Name: "new", Path: e.Path}, IDs: book.NewIDs(h.Now, season, [32]byte{1})})
		case state.Write:
			h.send(state.Written{Number: e.Deed.Number, Book: h.Book.With(e.Deed.Entries...)})
		}
	}
}

// press presses keys that write no character: "Enter", "Ctrl+A".
func (h *hands) press(keys ...string) *hands {
	h.t.Helper()
	for _, key := range keys {
		m := state.Keyed{Stops: state.Stops(window(h.State))}
		for held, mod := range map[string]state.Mods{"Ctrl+": state.Ctrl, "Shift+": state.Shift, "Alt+": state.Alt} {
			if strings.Contains(key, held) {
				m.Mods |= mod
				key = strings.Replace(key, held, "", 1)
			}
		}
		m.Key = key
		h.send(m)
	}
	return h
}

// write types characters, each of which comes as one and as a key.
func (h *hands) write(text string) *hands {
	for _, r := range text {
		h.send(state.Wrote{Rune: r})
		h.send(state.Keyed{Key: string(r)})
	}
	return h
}

// tab goes on until the keys go to what is asked for.
func (h *hands) tab(to scene.Ref) *hands {
	h.t.Helper()
	for range 80 {
		if h.Focus == to {
			return h
		}
		h.press("Tab")
	}
	h.t.Fatalf("Tab does not reach %v; it is at %v", to, h.Focus)
	return h
}

// do runs a command: by its button where the card has one, else by its name.
func (h *hands) do(command string) *hands {
	if slices.Contains(window(h.State).Refs(), state.CommandOf(command)) {
		return h.tab(state.CommandOf(command)).press("Enter")
	}
	h.send(state.Ran{Command: command})
	return h
}

func (h *hands) says(text string) bool {
	for _, w := range texts(h.t, window(h.State), h.Size()) {
		if strings.Contains(w.Text.Text, text) {
			return true
		}
	}
	return false
}

// TestFromNothingToTodaysWork: a book with a graft, nucs made up, cells given and
// a look, without the mouse.
func TestFromNothingToTodaysWork(t *testing.T) {
	h := nothingOpen(t)
	h.write("2")
	if h.Fill != state.StartFill {
		t.Fatal("2 does not lead to the steps of a new book")
	}
	h.press("Enter") // nothing said yet
	if h.Start.Step != state.YardStep || !h.says("A yard needs a name") {
		t.Errorf("a book without a name of its yard goes on to step %d", h.Start.Step)
	}
	h.write("Home Yard").press("Enter")
	h.write("A1-A6, B1-B4").press("Tab").write("2").press("Enter")
	h.write("Ida Mon-Fri 18:30-20:30 Sat-Sun 8:00-18:00").press("Enter")
	h.write("2027-04-29 18:00").press("Tab").write("24").press("Enter")
	if h.Book == nil || h.Fill != state.NoFill || h.Room != state.Yard || h.Book.Path != "/books/home-yard.lidmark" {
		t.Fatalf("no book was begun: step %d, the keys go to %v: %s", h.Start.Step, h.Focus, h.Founding().Wrong(h.Focus.ID))
	}
	r := h.Reading()
	if len(r.Nucs) != 10 || len(r.Batches()) != 1 || h.Pen.Writer != "Ida" {
		t.Fatalf("the book has %d nucs, %d batches and is written by %q", len(r.Nucs), len(r.Batches()), h.Pen.Writer)
	}
	if !h.says("Make up the nucs for its cells") {
		t.Error("nothing says what to do next")
	}

	h.press("Ctrl+A").do("make up")
	h.write("3").tab(state.FieldNamed(state.FormField + state.WhenField)).write("yesterday evening").press("Enter")
	h.press("Ctrl+A").do("give cell").press("Enter")
	if got := h.Reading().Nucs[0].Presumed.Condition; got != book.Cell {
		t.Fatalf("the first nuc holds %v, want a cell", got)
	}
	h.write("A1c").press("BackSpace").write("n s4").press("Enter")
	if got := len(h.Pen.Done); got != 3 {
		t.Fatalf("%d deeds were written, want nucs made up, cells given, a look", got)
	}
	h.press("Alt+T")
	for h.Today() < today+16 && len(h.Reading().Plan().Stops) == 0 {
		h.send(state.Ticked{Now: h.Now.AddDate(0, 0, 1)})
	}
	if len(h.Reading().Plan().Stops) == 0 || h.says("Nothing to do") {
		t.Error("no work is found")
	}
}

// TestAListBecomesABook by keyboard: a column is renamed, a row left out.
func TestAListBecomesABook(t *testing.T) {
	h := nothingOpen(t)
	h.write("3")
	if _, ok := h.asked[len(h.asked)-1].(state.ChooseFile); !ok {
		t.Fatal("3 does not ask for a file")
	}
	h.send(state.Chose{For: "list", Path: "/lists/nucs.csv"})
	if e, ok := h.asked[len(h.asked)-1].(state.ReadList); !ok || e.Path != "/lists/nucs.csv" {
		t.Fatal("the file is not read")
	}
	h.send(state.ListRead{Path: "/lists/nucs.csv", List: aList("Nuc,What,Graft no,Grafted,Cell in", "A1,virgin,1,2027-04-20,2027-04-30", "A2,purple,1,2027-04-20,2027-04-30", "A3,virgin,1,2027-04-20,2027-04-30")})
	if h.Fill != state.ListFill || h.Bring.Result.Counts.Nucs != 3 {
		t.Fatalf("read was %s", h.Bring.Result.Counts)
	}
	h.press("Right", "Enter")
	for h.Bring.Options.Columns[1] != roll.Holds {
		before := h.Bring.Options.Columns[1]
		if h.press("Up"); h.Bring.Options.Columns[1] == before {
			t.Fatal("the arrows do not reach what it holds")
		}
	}
	h.press("Escape")
	if h.Bring == nil || h.Bring.Open != 0 || h.Bring.Result.Counts.Mistaken != 1 || !h.says("is nothing that a nuc holds") {
		t.Fatalf("after column B means what it holds: %s", h.Bring.Result.Counts)
	}
	mended := aList("Nuc,What,Graft no,Grafted,Cell in", "A1,cell,1,2027-04-20,2027-04-30", "A2,purple,1,2027-04-20,2027-04-30", "A3,virgin,1,2027-04-20,2027-04-30")
	h.tab(state.CommandOf("list again")).press("Enter").send(state.ListRead{Path: "/lists/nucs.csv", List: mended})
	if h.Bring.Options.Columns[1] != roll.Holds || h.Bring.Rows()[1].Cells[1].Text != "cell" {
		t.Error("read again the list is another one, or what was said of it is forgotten")
	}
	h.tab(state.CommandOf("next mistake")).press("Enter").press(" ")
	if got := h.Bring.Result.Counts; got.Skipped != 1 || got.Nucs != 2 {
		t.Fatalf("after a row was left out: %s", got)
	}
	h.press("Enter") // no other mistake: it would be kept, were it known where
	if c, _ := state.CommandNamed("keep list"); !h.says("yard needs a name") || c.Reason(h.State) == "" {
		t.Errorf("without the name of a yard the list is not kept because: %s", c.Reason(h.State))
	}
	h.tab(state.FieldNamed(state.StartYard)).write("Home Yard")
	h.tab(state.FieldNamed("start.person0")).write("Ida").press("Enter")
	if h.Book == nil || len(h.Reading().Nucs) != 2 || h.Reading().View.HomeYard().Name != "Home Yard" {
		c, _ := state.CommandNamed("keep list")
		t.Fatalf("no book was begun with the list: %s", c.Reason(h.State))
	}
}

// TestAListJoinsABook as one deed, which is undone as one.
func TestAListJoinsABook(t *testing.T) {
	h := &hands{t: t, State: open(t)}
	h.send(state.Opened{Book: h.Book, IDs: book.NewIDs(h.Now, h.Book.Season, [32]byte{2})})
	before := len(h.Reading().Nucs)
	h.send(state.Chose{For: "drop", Path: "more.csv"})
	h.send(state.ListRead{Path: "more.csv", List: aList("nuc,note", "Z98,from a list", "Z99,")})
	if c, _ := state.CommandNamed("keep list"); c.Reason(h.State) != "" {
		t.Fatalf("%s: %v", c.Reason(h.State), h.Bring.Result.Mistakes())
	}
	h.tab(state.CommandOf("keep list")).press("Enter")
	if got := len(h.Reading().Nucs); got != before+2 || h.Fill != state.NoFill {
		t.Fatalf("%d nucs, want %d", got, before+2)
	}
	h.press("Ctrl+Z")
	if got := len(h.Reading().Nucs); got != before {
		t.Errorf("undone there are %d nucs, want %d", got, before)
	}
}

// aList is a list of lines with commas, as a text file is read.
func aList(lines ...string) roll.List {
	s := roll.Sheet{Name: "list"}
	for i, l := range lines {
		row := roll.Row{Number: i + 1}
		for cell := range strings.SplitSeq(l, ",") {
			row.Cells = append(row.Cells, roll.Cell{Text: cell})
		}
		s.Rows = append(s.Rows, row)
	}
	return roll.List{File: "list.csv", Sheets: []roll.Sheet{s}, Encoding: "utf-8"}
}
