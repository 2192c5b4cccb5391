package main

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
	"lidmark/storage"
)

// desk is a book open for writing, with the season in it.
type desk struct {
	*app
	book   *storage.Book
	season *book.Season
	ids    book.IDs
	writer string
	zone   *time.Location
	at     calendar.Moment // when what is written happened
	day    line.When       // what --on said
}

// writing gives a command the flags of all that write, and a desk to write at.
func (a *app) writing(c *cobra.Command, do func(*desk, *cobra.Command, []string) error) *cobra.Command {
	c.Flags().StringVar(&a.flags.on, "on", "", "when it happened: a `DAY` or \"DAY TIME\", such as yesterday, \"2027-05-15 18:00\", \"sat evening\" (else now)")
	return a.deciding(c, do)
}

// deciding is writing of what is decided now, of days to come.
func (a *app) deciding(c *cobra.Command, do func(*desk, *cobra.Command, []string) error) *cobra.Command {
	c.Flags().StringVar(&a.flags.by, "by", "", "`WRITER` (else $LIDMARK_WRITER, else the only person of the book)")
	c.RunE = func(c *cobra.Command, args []string) error {
		d, err := a.open()
		if err != nil {
			return err
		}
		for i := range args {
			args[i] = strings.TrimSpace(args[i])
		}
		err = do(d, c, args)
		return cmp.Or(err, d.close())
	}
	return c
}

// open opens the book for writing.
func (a *app) open() (*desk, error) {
	if a.flags.demo {
		return nil, errors.New("the demo season is kept nowhere: write in a book, without --demo")
	}
	path, err := a.bookPath()
	if err != nil {
		return nil, err
	}
	b, err := storage.Open(path, storage.Options{Now: a.clock})
	if err != nil {
		return nil, err
	}
	d := &desk{app: a, book: b}
	if err := d.prepare(); err != nil {
		return nil, cmp.Or(err, b.Close())
	}
	return d, nil
}

// close makes the copy that is due, and closes the book. A copy that fails is
// no reason to say that nothing was written.
func (d *desk) close() error {
	if _, err := d.book.CopyIfDue(context.Background(), d.now); err != nil {
		fmt.Fprintf(d.errs, "no copy was made: %v\n", err)
	}
	return d.book.Close()
}

func (d *desk) prepare() (err error) {
	if why := d.book.ReadOnly(); why != "" {
		return &refusal{why}
	}
	if d.season, err = book.Read(d.book, time.LoadLocation); err != nil {
		return err
	}
	d.ids = newIDs(d.now, d.season)
	d.zone = d.view().Zone()
	today := calendar.DayOf(d.now, d.zone)
	if d.day, err = line.ParseWhen(cmp.Or(d.flags.on, "today"), today, d.zone); err != nil {
		return fmt.Errorf("--on: %w", err)
	}
	d.at = d.day.Moment(d.now, d.zone)
	if d.at.Instant.After(d.now) {
		if d.day.Day > today || d.at.Part == calendar.Exact {
			return fmt.Errorf("--on %s is still to come: write down what has happened", d.flags.on)
		}
		d.at.Instant = calendar.Instantly(d.now).Instant // a part of today that is not over
	}
	d.writer, err = d.whoWrites()
	return err
}

// whoWrites is the person who was named, else the only one of the book. A book
// without people takes any name.
func (d *desk) whoWrites() (string, error) {
	v := d.view()
	name := cmp.Or(d.flags.by, d.env("LIDMARK_WRITER"))
	if name == "" {
		return v.OnlyPerson(), nil
	}
	var there []string
	for p := range v.People() {
		if strings.EqualFold(p.Name, name) {
			return p.Name, nil
		}
		there = append(there, p.Name)
	}
	if len(there) == 0 {
		return name, nil
	}
	said := "--by"
	if d.flags.by == "" {
		said = "$LIDMARK_WRITER"
	}
	return "", fmt.Errorf("%s %s: nobody is called so, there is %s; add a person with lidbook add person %q", said, name, list(there), name)
}

// view is the season as it stands now.
func (d *desk) view() *book.View { return d.season.At(d.now) }

// viewThen is the season at the end of what is written about: the day of --on
// as far as it has gone.
func (d *desk) viewThen() *book.View { return d.season.At(d.day.Instant(d.now, d.zone)) }

// entries are facts as entries of a moment.
func (d *desk) entries(at calendar.Moment, facts ...book.Fact) []book.Entry {
	return d.ids.Entries(at, d.now, d.writer, facts...)
}

// append writes entries that make sense: they are on disk when it returns nil.
func (d *desk) append(entries ...book.Entry) error {
	season := d.season.With(entries...)
	v := season.At(d.now)
	for _, e := range entries {
		if err := rules.Sense(v, d.now, e); err != nil {
			return err
		}
	}
	if err := d.book.Append(entries...); err != nil {
		return err
	}
	d.season = season
	return nil
}

// plausible tells whether facts can be meant, before anything is said of them.
func plausible(facts ...book.Fact) error {
	for _, f := range facts {
		if err := rules.Plausible(f); err != nil {
			return err
		}
	}
	return nil
}

// write writes facts of the moment of --on, with the answers to what they ask,
// and says what was written.
func (d *desk) write(facts ...book.Fact) error {
	if err := plausible(facts...); err != nil {
		return err
	}
	entries, keep := d.settle(d.entries(d.at, facts...))
	if !keep {
		d.line("nothing written")
		return nil
	}
	if err := d.append(entries...); err != nil {
		return err
	}
	d.say(entries)
	return nil
}

// say prints what was written, a line an entry.
func (d *desk) say(entries []book.Entry) {
	const few = 12
	if rest := len(entries) - few; rest > 1 {
		defer d.line("written: %s more like it", plural(rest, "entry"))
		entries = entries[:few]
	}
	names := line.In(d.view())
	for _, e := range entries {
		fmt.Fprintf(d.out, "written: %s (%s)\n", line.Words(e.Fact, names), e.At.In(d.zone))
	}
}
