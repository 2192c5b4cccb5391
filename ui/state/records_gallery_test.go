package state_test

import (
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// subjects are things of the demo season by what stands for them in the gallery:
// nucs in every condition, and one of each other kind.
func subjects(w *window) (all []chosen) {
	r := w.Reading()
	there := map[book.Condition]bool{}
	for _, n := range r.Nucs {
		if k := n.Condition(); !there[k] {
			there[k] = true
			all = append(all, chosen{n.Name + ", " + k.String(), state.Select(n.Nuc.Nuc.Subject())})
		}
	}
	all = append(all, chosen{"A1 and C3", state.Select(w.nuc("A1").Nuc.Nuc.Subject(), w.nuc("C3").Nuc.Nuc.Subject())})
	for b := range r.View.Batches() {
		if b.Unplaced() > 0 {
			all = append(all, chosen{fmt.Sprintf("batch %d", b.Number), state.Select(b.Batch.Subject())})
			break
		}
	}
	add := func(what string, s book.Subject) {
		if !slices.ContainsFunc(all, func(c chosen) bool { return c.what == what }) {
			all = append(all, chosen{what, state.Select(s)})
		}
	}
	for q := range r.View.Queens() {
		switch {
		case q.Caged() && q.Virgin:
			add("a virgin in a cage", q.Queen.Subject())
		case q.Caged():
			add("a mated queen in a cage", q.Queen.Subject())
		}
	}
	for c := range r.View.Colonies() {
		if len(c.OpenBrood) > 0 && c.OpenBrood[len(c.OpenBrood)-1].Searched.IsZero() {
			add("a colony with open brood", c.Colony.Subject())
		}
	}
	for o := range r.View.Orders() {
		if o.Open() > 0 {
			add("an order", o.Order.Subject())
		}
	}
	for p := range r.View.People() {
		add("a person", p.Person.Subject())
	}
	for y := range r.View.Yards() {
		add("a yard", y.Yard.Subject())
		if y.Standstill != nil {
			add("a yard that stands still", y.Yard.Subject())
		}
	}
	return append(all, chosen{"nothing", state.Selection{}})
}

type chosen struct {
	what string
	of   state.Selection
}

// TestFormsAreProse prints every record's form as it opens in the demo season,
// once for each kind of thing, with what it says back, what the rules have
// against it and what is wrong while it is empty, and why others are refused: to
// be read as prose.
func TestFormsAreProse(t *testing.T) {
	w := start(t).run("yard")
	var b strings.Builder
	seen := map[string]bool{}
	for _, c := range subjects(w) {
		w.Selection, w.Form = c.of, nil
		fmt.Fprintf(&b, "== %s: %s first\n", c.what, orNone(w.Main()))
		for _, rec := range w.Offered() {
			command, _ := state.CommandNamed(rec.Name)
			if why := command.Reason(w.State); why != "" {
				fmt.Fprintf(&b, "\n%s: refused: %s\n", rec.Word, why)
				continue
			}
			key := rec.Name + string(rune('0'+min(c.of.Len(), 2)))
			if seen[key] || rec.Asks == nil {
				continue
			}
			seen[key] = true
			printForm(&b, w, rec)
		}
		b.WriteString("\n")
	}
	golden(t, "testdata/forms.txt", b.String())
	for _, rec := range state.Records() {
		if rec.Asks != nil && !seen[rec.Name+"1"] && !seen[rec.Name+"2"] && !seen[rec.Name+"0"] && !strings.HasPrefix(rec.Name, "walk") {
			t.Logf("no thing of the demo season offers %q", rec.Name)
		}
	}
}

func orNone(name string) string {
	if name == "" {
		return "nothing"
	}
	return name
}

func printForm(b *strings.Builder, w *window, rec state.Record) {
	opened := *w
	opened.run(rec.Name)
	if opened.Form == nil {
		return
	}
	fmt.Fprintf(b, "\n%s\n", rec.Word)
	for _, a := range opened.Form.Asks {
		if a.Name == state.WhenField {
			continue
		}
		fmt.Fprintf(b, "  %s [%s]%s\n", a.Label+unit(a.Unit), first(a, opened.Typed(state.FormField+a.Name)), options(a))
		if a.Note != "" {
			fmt.Fprintf(b, "    %s\n", a.Note)
		}
	}
	says := opened.FormSays()
	for _, back := range says.Back {
		if says.OK() {
			fmt.Fprintf(b, "  > %s\n", back)
		}
	}
	for _, m := range says.Minds {
		fmt.Fprintf(b, "  ! %s\n", m)
	}
	for _, a := range opened.Form.Asks {
		if wrong := says.Answers.Mistakes[a.Name]; wrong != "" {
			fmt.Fprintf(b, "  %s: %s\n", a.Label, wrong)
		}
	}
}

// first is the answer that stands there, by its word.
func first(a state.Ask, answer string) string {
	for _, o := range a.Options {
		if o.Value == answer {
			return o.Word
		}
	}
	return answer
}

func unit(u string) string {
	if u == "" {
		return ""
	}
	return ", " + u
}

// options are the words of a question's options, many of them counted.
func options(a state.Ask) string {
	const few = 9
	var words []string
	for _, o := range a.Options {
		words = append(words, o.Word)
	}
	switch {
	case len(words) > few:
		return fmt.Sprintf("  %s and %d more", strings.Join(words[:3], " | "), len(words)-3)
	case len(words) > 0:
		return "  " + strings.Join(words, " | ")
	case a.Kind == state.Yes:
		return "  yes"
	}
	return ""
}

// golden compares text with a file, or with -update writes it.
func golden(t *testing.T, file, got string) {
	t.Helper()
	if *update {
		if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if string(want) == got {
		return
	}
	a, b := strings.Split(string(want), "\n"), strings.Split(got, "\n")
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			t.Fatalf("%s, line %d:\n%s\nwant\n%s\n(-update writes it anew)", file, i+1, b[i], a[i])
		}
	}
	t.Fatalf("%s: %d lines, want %d", file, len(b), len(a))
}
