package state_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/practice"
	"lidmark/domain/roll"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// situation is a window in which commands are asked why they cannot run.
type situation struct {
	name string
	state.State
}

// situations are windows in which, taken together, every command is refused for
// each of its reasons.
func situations(t *testing.T) (all []situation) {
	add := func(name string, w *window) *window { all = append(all, situation{name, w.State}); return w }
	bookless := func() *window {
		w := &window{t: t, State: state.State{Now: now, Width: 1440, Height: 900, Machine: state.Machine{Zone: "Europe/Berlin", Zones: time.LoadLocation, Folder: "/books/"}}}
		return w
	}
	add("no book", bookless())
	add("a book is started", bookless().run("start book"))
	boxes := bookless().run("start book")
	for i := range 12 {
		boxes.State = boxes.WithField(boxes.RowField(i, "names"), state.FieldOf(fmt.Sprintf("A%d", i+1)))
		boxes.run("start row")
	}
	add("all its boxes", boxes)
	add("a demo", start(t))
	add("a demo, no van", start(t).run("van less"))
	add("a demo, Yard", start(t).run("yard"))
	add("a nuc chosen", start(t).run("yard").write("A1"))
	add("a nuc with a virgin chosen", chosenBy(start(t).run("yard"), func(n *state.Nuc) bool { return n.Due != nil && n.DueDay != today }))
	w := start(t).run("yard")
	add("a batch chosen", w.tap(state.RefOf(w.Reading().Batches()[0].Batch.Subject()), 0))
	add("a map", start(t).run("yard").run("map"))
	add("a wall", start(t).run("yard").run("wall"))
	add("a table", start(t).run("yard").run("table"))
	small := start(t)
	small.Width, small.Height, small.Text = 800, 560, 2
	add("a small window", small.run("yard"))
	add("a day ahead", start(t).run("yard").run("day on"))
	add("a past day as known then", start(t).run("yard").run("day back").run("as known then"))
	add("a filter that shows nothing", filteredBy(start(t).run("yard"), "zzz"))
	add("Plan", planner(t))
	add("Plan, a day too near", planner(t).typedInto(state.WishDay, "+25"))
	add("Plan, a graft tomorrow", planner(t).run("forwards").typedInto(state.WishDay, "+1"))
	add("Plan, grafts said one by one", planner(t).typedInto(state.WishLarvae, "80 + 60"))
	add("Plan, a yard without nucs", planner(t).inYardOfNone())
	add("Plan, a planned batch", planner(t).run("plan it").settled())
	add("Plan, a line of no breeder", planner(t).typedInto(state.WishLine, "Zz"))
	four := planner(t).run("keep try")
	add("Plan, one kept", &window{t: t, State: four.State})
	for range 3 {
		four.run("day earlier").settled().run("keep try")
	}
	add("Plan, four kept", four)
	kept, _, tag, _ := plannedOne(t)
	add("Yard, a planned batch", kept.run("yard").tap(tag.Ref, 0))
	add("the season, not reckoned yet", start(t).run("season"))
	add("the season", seasonal(t))
	add("the season of a demo", &window{t: t, State: planner(t).run("season").settled().State})
	add("the season, a limit that is none", limited(seasonal(t)))
	add("the season, dates being found", seasonal(t).run("find dates"))
	add("the season, work under way", seasonal(t).send(state.Working{Words: "copying hill", Share: 0.4}))
	add("the season, dates found", datesFound(seasonal(t)))
	formed := datesFound(seasonal(t))
	add("the season, dates found and a form", formed.run("note"))
	all = append(all, layouts(t)...)
	add("Review, not reckoned yet", start(t).run("review"))
	add("Review", reviewer(t))
	add("Review, a nuc decided for", decidedFirst(reviewer(t)))
	add("Review, yesterday", reviewer(t).press(",").settled().press("Down"))
	add("Review, tomorrow", reviewer(t).press(".").settled().press("Down"))
	add("Review, changed and not reckoned yet", reviewer(t).run("one by one").run("review amounts").press("Right"))
	add("Review, a form", reviewer(t).run("one by one").run("note"))
	add("Review of an empty nuc", nothingToReview(t))
	add("My numbers", start(t).run("numbers"))
	add("a number chosen", start(t).run("numbers").press("Down"))
	add("a number out of range", start(t).run("numbers").press("Down").write("9"))
	add("no number", start(t).run("numbers").press("Down").write("-"))
	add("the room Book", start(t).run("about"))
	only := start(t)
	only.Book = &state.Book{Season: only.Book.Season, Name: "hill", Path: "/books/hill.lidmark", ReadOnly: "another program has this book open (process 812); close it there to write here"}
	add("a book to read only", only)
	add("its numbers", only.run("numbers").press("Down"))
	empty := bookless()
	add("an empty book", empty.send(state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, nil), Name: "new", Path: "/books/new.lidmark"}}))
	add("the walk", start(t).run("type it in"))
	add("a question", asking(start(t).run("type it in")))
	add("work under way", start(t).send(state.Working{Words: "copying hill", Share: 0.4}))
	written := start(t)
	written.Pen.Failed = []state.Deed{{Words: "a look"}}
	add("not written", written)
	sent := start(t)
	sent.Pen.Sent = []state.Deed{{Words: "a look"}}
	add("on its way", sent)
	ofNobody := yardOfTheEvening()
	evening := inTheEvening(t, yardOfTheEvening())
	evening.Pen.Writer = "Jon"
	add("another wrote last", evening)
	for i := range ofNobody.Entries {
		ofNobody.Entries[i].Writer = ""
	}
	add("nobody named wrote last", inTheEvening(t, ofNobody))
	add("a nuc with no queen", chosenBy(start(t).run("yard"), func(n *state.Nuc) bool { return n.Holds.Batch.IsZero() }))
	add("the late day", start(t).run("late day"))
	add("a day off for all", withMore(start(t), daysOff(start(t))...))
	add("a step of a planned batch", plannedStep(withMore(start(t), book.BatchPlanned{Batch: booktest.Batch("next"), Day: today + 4, Larvae: 20, Nucs: 10})))
	add("no hour left", hours(start(t).run("only hours"), 30, "hour less"))
	add("a day of hours", hours(start(t).run("only hours"), 30, "hour more"))
	add("a day and night of hours", hours(withMore(start(t), nightsToo(start(t))...).run("only hours"), 30, "hour more"))
	add("rain all day", hours(start(t).run("rain until"), 30, "rain longer"))
	add("rain in the morning", hours(start(t).run("rain until"), 30, "rain shorter"))
	listed := bookless().send(state.ListRead{Path: "/a.csv", List: roll.List{File: "a.csv", Encodings: make([]roll.Encoding, 2)}})
	add("a list not read", listed)
	list := func(w *window, rows ...roll.Row) *window {
		return w.send(state.ListRead{Path: "/a.csv", List: roll.List{File: "a.csv", Sheets: []roll.Sheet{{Name: "a", Rows: rows}}}})
	}
	add("a list with a mistake", list(bookless(), cells(1, "Nuc", "State"), cells(2, "A1", "purple"), cells(3, "A2", "virgin")))
	add("a list with dates of two readings", list(start(t), cells(1, "Nuc", "Cell in"), cells(2, "A1", "3/4/2027")))
	add("a list with dates of no year", list(start(t), cells(1, "Nuc", "Cell in"), cells(2, "A1", "30.4.")))
	add("a list of what is known", list(start(t), cells(1, "Nuc", "Remarks"), cells(2, "A1", ""), cells(3, "A2", "")))
	return all
}

func cells(n int, texts ...string) roll.Row {
	row := roll.Row{Number: n}
	for _, text := range texts {
		row.Cells = append(row.Cells, roll.Cell{Text: text})
	}
	return row
}

func chosenBy(w *window, is func(*state.Nuc) bool) *window {
	for _, n := range w.Reading().Nucs {
		if is(n) {
			return w.tap(state.RefOf(n.Nuc.Nuc.Subject()), 0)
		}
	}
	return w
}

// withMore is a window of a book in which more was written in the morning.
func withMore(w *window, facts ...book.Fact) *window {
	p := &booktest.Pen{Zone: now.Location(), Writer: "Ida"}
	p.At(now.Add(-time.Minute).Format("2006-01-02 15:04")).Write(facts...)
	w.Book = w.Book.With(p.Entries...)
	return w
}

// daysOff are that everybody has the day off.
func daysOff(w *window) (all []book.Fact) {
	for p := range w.Reading().View.People() {
		all = append(all, book.HoursOn{Person: p.Person, Day: today})
	}
	return all
}

// nightsToo makes everybody free today from ten to ten.
func nightsToo(w *window) (all []book.Fact) {
	for p := range w.Reading().View.People() {
		all = append(all, book.HoursOn{Person: p.Person, Day: today, FreeHours: book.FreeHours{From: 10 * 60, Until: 22 * 60}})
	}
	return all
}

// plannedStep is a window with the step of a planned batch chosen.
func plannedStep(w *window) *window {
	for range w.Lines() {
		w.press("Down")
		if l, ok := w.ChosenLine(); ok && l.Findings[0].Rule == rules.PlannedStep {
			return w
		}
	}
	return w
}

// limited is a season in which the most minutes a day are no number.
func limited(w *window) *window {
	w.State = w.WithField(state.MostField, state.FieldOf("some"))
	return w
}

// datesFound is a season in which dates were found.
func datesFound(w *window) *window {
	search := w.run("find dates").found()
	return w.send(search.Search(func(m state.SeasonFound) bool { w.send(m); return true }))
}

func filteredBy(w *window, words string) *window { w.Filter = words; return w }

func hours(w *window, times int, command string) *window {
	for range times {
		w.run(command)
	}
	return w
}

// asking is a walk with a question open.
func asking(w *window) *window {
	w.Asked = &state.Asked{Twice: "e", Asks: "Typed twice?", Answers: []state.Option{{Value: "1", Word: "no, both are right"}}}
	return w
}

// TestCommandsAreProse prints every command that is no record, with what it does,
// the word on its button, its keys, and every reason for which it is refused: to
// be read as prose. Records are read in forms.txt.
func TestCommandsAreProse(t *testing.T) {
	in := situations(t)
	var b strings.Builder
	said := map[string]bool{}
	for _, c := range state.Commands() {
		if _, isRecord := state.RecordNamed(c.Name); isRecord {
			continue
		}
		fmt.Fprintf(&b, "%s: %s", c.Name, c.Does)
		if c.Word != "" {
			fmt.Fprintf(&b, " [%s]", c.Word)
		}
		if c.Keys != "" {
			fmt.Fprintf(&b, " (%s)", c.Keys)
		}
		b.WriteString("\n")
		var reasons []string
		for _, s := range in {
			if why := c.Reason(s.State); why != "" && !slices.Contains(reasons, why) {
				reasons = append(reasons, why)
				said[why] = true
				fmt.Fprintf(&b, "  %s: %s\n", s.name, why)
			}
		}
		proper(t, c, reasons)
	}
	golden(t, "testdata/commands.txt", b.String())
	for _, reason := range reasonsOf(t) {
		if !provoked(said, reason.text) && !unprovoked[reason.text] {
			t.Errorf("%s: nobody provokes %q; add a situation", reason.at, reason.text)
		}
	}
}

// unprovoked are reasons that no situation shows, each with why.
var unprovoked = map[string]bool{
	"nothing can be written of what is selected": true, // every kind of thing has a record, and so has nothing
}

// proper holds the form of what is said: reasons begin with a small letter, and
// nothing ends in a full stop.
func proper(t *testing.T, c state.Command, reasons []string) {
	for _, said := range append([]string{c.Does, c.Word}, reasons...) {
		if strings.HasSuffix(said, ".") || strings.Contains(said, "  ") {
			t.Errorf("%s says %q", c.Name, said)
		}
	}
	for _, why := range reasons {
		if first := why[:1]; strings.ToLower(first) != first && !strings.HasPrefix(why, "Ctrl") {
			t.Errorf("%s is refused with %q", c.Name, why)
		}
	}
}

func provoked(said map[string]bool, text string) bool {
	for why := range said {
		if strings.Contains(why, text) {
			return true
		}
	}
	return false
}

// reason is a text that the source gives as one, and where.
type reason struct{ text, at string }

// reasonsOf reads the reasons of commands from the source: the texts returned by
// the functions that tables of commands name as Why, and by those they ask.
func reasonsOf(t *testing.T) (all []reason) {
	files := token.NewFileSet()
	names, _ := filepath.Glob("*.go")
	functions, wanted := map[string]*ast.FuncDecl{}, []string{}
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(files, name, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range f.Decls {
			if fn, ok := d.(*ast.FuncDecl); ok && fn.Recv == nil {
				functions[fn.Name.Name] = fn
			}
		}
		ast.Inspect(f, func(n ast.Node) bool {
			if lit, ok := n.(*ast.CompositeLit); ok && valueOf(lit, "Do") != nil {
				if id, ok := valueOf(lit, "Why").(*ast.Ident); ok {
					wanted = append(wanted, id.Name)
				}
			}
			return true
		})
	}
	if len(wanted) < 20 {
		t.Fatalf("only %d commands with reasons were found in the source", len(wanted))
	}
	for i := 0; i < len(wanted); i++ {
		if slices.Contains(wanted[:i], wanted[i]) || functions[wanted[i]] == nil {
			continue
		}
		ast.Inspect(functions[wanted[i]].Body, func(n ast.Node) bool {
			switch n := n.(type) {
			case *ast.CallExpr:
				if id, ok := n.Fun.(*ast.Ident); ok && functions[id.Name] != nil && givesText(functions[id.Name]) {
					wanted = append(wanted, id.Name)
				}
			case *ast.ReturnStmt:
				for _, r := range n.Results {
					all = append(all, textsIn(r, files)...)
				}
			}
			return true
		})
	}
	return all
}

// givesText tells whether a function tells of a window why not.
func givesText(fn *ast.FuncDecl) bool {
	in, out := fn.Type.Params.List, fn.Type.Results
	if len(in) != 1 || out == nil || len(out.List) != 1 {
		return false
	}
	from, ok := in[0].Type.(*ast.Ident)
	to, isText := out.List[0].Type.(*ast.Ident)
	return ok && isText && from.Name == "State" && to.Name == "string"
}

func valueOf(lit *ast.CompositeLit, key string) ast.Expr {
	for _, e := range lit.Elts {
		if kv, ok := e.(*ast.KeyValueExpr); ok {
			if id, ok := kv.Key.(*ast.Ident); ok && id.Name == key {
				return kv.Value
			}
		}
	}
	return nil
}

// textsIn are the texts in an expression, each up to where something is put in.
func textsIn(e ast.Expr, files *token.FileSet) (all []reason) {
	ast.Inspect(e, func(n ast.Node) bool {
		if lit, ok := n.(*ast.BasicLit); ok && lit.Kind == token.STRING {
			text, _ := strconv.Unquote(lit.Value)
			text, _, _ = strings.Cut(text, "%")
			if strings.Contains(strings.TrimSpace(text), " ") {
				all = append(all, reason{text, files.Position(lit.Pos()).String()})
			}
		}
		return true
	})
	return all
}

// TestNumbersSayWhatIsWrong: every number refuses what is no number and what is
// out of its range, in the keeper's units, and takes both ends of it as they are
// shown.
func TestNumbersSayWhatIsWrong(t *testing.T) {
	w := start(t).run("numbers")
	for _, units := range []string{"metric", "US"} {
		w.tap(state.ChoiceOf(state.SettingField+"units", units), 0)
		for _, g := range append([]string{""}, "Clock", "Rates", "Weather", "Bees", "Stores", "Robbing", "Times") {
			w.tap(scene.Ref{Kind: state.GroupRef, ID: g}, 0)
			for _, n := range w.NumberLines() {
				if n.Head != "" {
					continue
				}
				w.tap(scene.Ref{Kind: state.NumberRef, ID: n.Name}, 0)
				typed := func(text string) string {
					w.State = w.WithField(state.NumberField, state.FieldOf(text))
					return w.NumberWrong()
				}
				if why := typed("much"); why != "write a number, like 12.5" {
					t.Errorf("%s: what is no number: %q", n.Name, why)
				}
				if why := typed("1e9"); !strings.HasPrefix(why, "write ") || n.Unit != practice.Score && !strings.HasSuffix(why, w.NumberUnit(n.Key)) {
					t.Errorf("%s: out of range: %q", n.Name, why)
				}
				for _, v := range []float64{n.Min, n.Max, n.Default} {
					if why := typed(w.NumberSaid(n.Key, v)); why != "" {
						t.Errorf("%s in %s units: %s is shown and refused: %s", n.Name, units, w.NumberSaid(n.Key, v), why)
					}
				}
			}
		}
	}
}
