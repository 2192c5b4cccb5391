package main

import (
	"errors"
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

func writeCommand(a *app) *cobra.Command {
	c := a.writing(&cobra.Command{
		Use:   "write [LINE...]",
		Short: "Write up nucs in letters, as on the sheet",
		Long: "Reads lines as one scribbles them on a lid, says them back in plain words, and\n" +
			"writes them down. Without lines they are read from the input, one a line.\n\n" +
			"Where somebody can answer, each line is written when it was read back and Enter\nwas pressed; else nothing is written without --yes.\n\n" +
			"What contradicts the book is never refused: one question is asked.\n\n" +
			"Done as written stands for what the day's sheet asks of a nuc and a tick can tell:\na cell given, own cells broken down, feed, bees added; see lidbook today. A nuc of\n" +
			"which the sheet asks nothing of the kind cannot be done as written.",
		Example: "  lidbook write \"L7 q e b4 s6 /\"\n  lidbook write --on yesterday \"A1-A12 done as written, except A3 A9\" \"A3 n o0 c4 s4\"\n" +
			"  lidbook write --by Ida --yes < evening.txt\n  lidbook letters               all letters",
	}, func(d *desk, _ *cobra.Command, args []string) error {
		w, err := d.scribe()
		if err != nil {
			return err
		}
		return w.all(args)
	})
	f := c.Flags()
	f.BoolVarP(&a.flags.yes, "yes", "y", false, "write without asking")
	f.StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}

// scribe writes typed lines.
type scribe struct {
	*desk
	yard    book.YardID
	sheet   func(book.NucID) []book.Fact
	before  string // the line before
	written int
	bad     int
	unasked int
}

func (d *desk) scribe() (*scribe, error) {
	f, err := d.finder(d.view())
	return &scribe{desk: d, yard: f.in, sheet: line.Sheet(rules.Day(d.viewThen(), d.day.Day))}, err
}

func (s *scribe) context() line.Context {
	return line.Context{
		View: s.viewThen(), Now: s.now, Day: s.day.Day, At: s.at, Yard: s.yard, Planned: s.sheet,
		Mint: func() book.QueenID { return book.QueenID(s.ids.Next()) },
	}
}

// all writes the lines of the arguments, else those of the input.
func (s *scribe) all(lines []string) error {
	if len(lines) > 0 {
		for _, text := range lines {
			if err := s.one(text); err != nil {
				return err
			}
		}
		return s.end()
	}
	s.prompt()
	for text, more := s.nextLine(); more; text, more = s.nextLine() {
		if err := s.one(text); err != nil {
			return err
		}
		s.prompt()
	}
	return s.end()
}

func (s *scribe) prompt() {
	if s.asks {
		fmt.Fprint(s.out, "> ")
	}
}

// one reads a line back and writes it.
func (s *scribe) one(text string) error {
	s.ids.Deed()
	l, err := line.Parse(text, s.context())
	if err == nil {
		err = plausible(l.Facts()...)
	}
	if err != nil {
		if !s.asks { // who sits there mends it
			s.bad++
		}
		s.mistakes(text, err)
		return nil
	}
	if len(l.Sections) == 0 {
		return nil
	}
	s.line("%s", l)
	ids := s.ids
	s.mindsEach(l.Entries(&ids, s.now, s.writer))
	question := "Enter writes it, n leaves it"
	if text == s.before {
		question = "Typed twice? Enter writes it again, n leaves it"
	}
	s.before = text
	if !s.confirmed(question) {
		return nil
	}
	entries, keep := s.settle(l.Entries(&s.ids, s.now, s.writer))
	if !keep {
		return nil
	}
	if err := s.append(entries...); err != nil {
		return err
	}
	s.written += len(entries)
	return nil
}

// mistakes shows where a line makes no sense.
func (s *scribe) mistakes(text string, err error) {
	fmt.Fprintf(s.errs, "%s\n", text)
	var all line.Mistakes
	if !errors.As(err, &all) {
		fmt.Fprintln(s.errs, err)
		return
	}
	fmt.Fprintf(s.errs, "%s^\n", strings.Repeat(" ", all[0].Column-1))
	for _, m := range all {
		fmt.Fprintf(s.errs, "%s\n", m)
	}
}

// confirmed asks whether to write. Without somebody to ask, only --yes does.
func (s *scribe) confirmed(question string) bool {
	switch {
	case s.flags.yes:
		return true
	case !s.asks:
		s.unasked++
		return false
	}
	fmt.Fprintf(s.out, "  %s: ", question)
	answer, more := s.nextLine()
	return more && (answer == "" || strings.HasPrefix(strings.ToLower(answer), "y"))
}

// end tells what became of the lines.
func (s *scribe) end() error {
	if s.written > 0 {
		s.line("written: %s", plural(s.written, "entry"))
	}
	switch {
	case s.bad > 0:
		return fmt.Errorf("%s not written: mend and type again", plural(s.bad, "line"))
	case s.unasked > 0:
		return refuse("%s read back, nothing written: add --yes to write", plural(s.unasked, "line"))
	default:
		return nil
	}
}
