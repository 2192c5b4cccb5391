package main

import (
	"cmp"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// closeShape is a day's closing count in JSON.
type closeShape struct {
	Day    string       `json:"day"`
	Closes bool         `json:"closes"`
	Counts []countShape `json:"counts"`
	Twins  []twinShape  `json:"twins"`
}

// countShape is the count of one kind of goods in JSON.
type countShape struct {
	What    string   `json:"what"`
	Batch   int      `json:"batch,omitempty"`
	Out     int      `json:"out"`
	Placed  int      `json:"placed"`
	Caged   int      `json:"caged"`
	Culled  int      `json:"culled"`
	Dropped int      `json:"dropped"`
	Back    int      `json:"back"`
	Missing int      `json:"notAccountedFor"`
	Likely  []string `json:"likelyIn"`
}

// twinShape is an entry that two writers wrote, in JSON.
type twinShape struct {
	Nuc   string `json:"nuc"`
	Words string `json:"words"`
	First string `json:"entry"`
	Again string `json:"entryToStrike"`
	By    string `json:"writer"`
}

func closeCommand(a *app) *cobra.Command {
	var strike bool
	var by string
	c := a.reading(&cobra.Command{
		Use:   "close [DAY]",
		Short: "The closing count of a day: what went out, and where it is",
		Long: "Counts the goods of a day: what was taken along against what was placed, caged,\nculled, dropped and brought back. Entries that two people wrote are listed as\n" +
			"twins; --strike-twins strikes the later one of each.",
		Example: "  lidbook close\n  lidbook close yesterday --strike-twins",
		Args:    cobra.MaximumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		day := v.Today()
		if len(args) == 1 {
			w, err := line.ParseWhen(args[0], v.Today(), v.Zone())
			if err != nil {
				return err
			}
			day = w.Day
		}
		twins := rules.TwinsOn(v, day)
		if strike {
			return a.strikeTwins(twins)
		}
		return a.showClose(v, day, twins)
	})
	c.Flags().BoolVar(&strike, "strike-twins", false, "strike the later entry of each pair")
	c.Flags().StringVar(&by, "by", "", "`WRITER` of the strikes")
	c.PreRun = func(*cobra.Command, []string) { a.flags.by = by }
	return c
}

func (a *app) showClose(v *book.View, day calendar.Day, twins []rules.Twin) error {
	counts := rules.Close(v, day)
	s := closeShape{Day: day.String(), Closes: true, Counts: []countShape{}, Twins: []twinShape{}}
	for _, c := range counts {
		s.Closes = s.Closes && c.Closes()
		shape := countShape{
			What: c.What.String(), Out: c.Out, Placed: c.Placed, Caged: c.Caged, Culled: c.Culled, Dropped: c.Dropped, Back: c.Back,
			Missing: c.Missing(), Likely: []string{},
		}
		if !c.Batch.IsZero() {
			shape.Batch = v.Batch(c.Batch).Number
		}
		for _, id := range c.Likely {
			shape.Likely = append(shape.Likely, v.Nuc(id).Name)
		}
		s.Counts = append(s.Counts, shape)
	}
	for _, t := range twins {
		s.Twins = append(s.Twins, twinShape{
			v.Nuc(t.Nuc).Name, line.WordsOn(t.First.Fact, line.In(v), t.Nuc.Subject()),
			t.First.ID.String(), t.Again.ID.String(), t.Again.Writer,
		})
	}
	return a.show(s, func() { a.printClose(v, day, counts, s) })
}

func (a *app) printClose(v *book.View, day calendar.Day, counts []rules.Closing, s closeShape) {
	if len(counts) == 0 {
		a.line("%s: nothing was taken along. Write it down with lidbook along 48 cells --batch 4", day.Short())
	}
	for i, c := range counts {
		of := c.What.String()
		if !c.Batch.IsZero() {
			of += " of " + rules.Name(v, c.Batch.Subject())
		}
		a.line("%s, %s: %s", day.Short(), of, c)
		if likely := s.Counts[i].Likely; !c.Closes() && len(likely) > 0 {
			a.line("  perhaps in %s", list(likely))
		}
	}
	if len(s.Twins) == 0 {
		return
	}
	a.line("%s, written by two:", plural(len(s.Twins), "twin"))
	var rows [][]string
	for _, t := range s.Twins {
		rows = append(rows, []string{"  " + t.Nuc, t.Words, t.By})
	}
	a.table(rows)
	a.line("  one of each is enough: lidbook close %s --strike-twins", day)
}

// strikeTwins strikes the later of each pair, as one deed.
func (a *app) strikeTwins(twins []rules.Twin) error {
	a.flags.on = ""
	d, err := a.open()
	if err != nil {
		return err
	}
	var facts []book.Fact
	for _, t := range twins {
		facts = append(facts, book.Struck{Entry: t.Again.ID, Why: "written twice"})
	}
	err = d.append(d.entries(d.at, facts...)...)
	if err == nil {
		a.line("struck: %s", plural(len(facts), "twin"))
	}
	return cmp.Or(err, d.close())
}
