package main

import (
	"bufio"
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/storage/ics"
	"lidmark/storage/jsonl"
	"lidmark/storage/table"
)

func checkCommand(a *app) *cobra.Command {
	return &cobra.Command{
		Use:   "check",
		Short: "Read the whole book and list what is wrong with the file",
		Args:  cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			b, err := a.openToRead()
			if err != nil {
				return err
			}
			defer b.Close() // nothing was written
			problems := b.Verify(context.Background())
			for _, p := range problems {
				a.line("%s", p)
			}
			if len(problems) > 0 {
				return fmt.Errorf("%s: %s; go on with a copy, they stand in %s", b.Path(), plural(len(problems), "problem"), storage.CopiesFolder(b.Path()))
			}
			n, err := b.Count()
			a.line("%s: %s, nothing is wrong", b.Path(), plural(n, "entry"))
			return err
		},
	}
}

func (a *app) openToRead() (*storage.Book, error) {
	path, err := a.bookPath()
	if err != nil {
		return nil, err
	}
	return storage.Open(path, storage.Options{ReadOnly: true, Now: a.clock})
}

func copyCommand(a *app) *cobra.Command {
	return &cobra.Command{
		Use:     "copy FILE|FOLDER",
		Short:   "Make a checked copy of the book, which can stay open",
		Long:    "Makes a copy and reads it through. Into a folder it gets the book's name and the\nday. Beside the book is no place for it: with two books in a folder every command\nmust be told which is meant.",
		Example: "  lidbook copy /media/stick\n  lidbook copy /media/stick/hill-2027-05-15.lidmark",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			b, err := a.openToRead()
			if err != nil {
				return err
			}
			defer b.Close() // nothing was written
			to, err := a.copyName(b.Path(), args[0])
			if err != nil {
				return err
			}
			if sameFolder(to, b.Path()) {
				return refuse("%s lies beside the book, and then nobody knows which is meant: name a folder, like %s", to, storage.CopiesFolder(b.Path()))
			}
			if err := b.Copy(context.Background(), to); err != nil {
				return err
			}
			a.line("copied to %s and read through", to)
			return nil
		},
	}
}

// copyName is the file of a copy: in a folder the book's name and the day.
func (a *app) copyName(book, to string) (string, error) {
	info, err := os.Stat(to)
	if err != nil || !info.IsDir() {
		return bookFile(to)
	}
	name := strings.TrimSuffix(filepath.Base(book), storage.Extension)
	return filepath.Join(to, name+a.now.Format("-2006-01-02")+storage.Extension), nil
}

func sameFolder(a, b string) bool {
	x, err := filepath.Abs(filepath.Dir(a))
	y, err2 := filepath.Abs(filepath.Dir(b))
	return err == nil && err2 == nil && x == y
}

func exportCommand(a *app) *cobra.Command {
	var to string
	c := a.reading(&cobra.Command{
		Use:       "export jsonl|nucs|batches|looks",
		Short:     "The book in open forms: all entries as JSON Lines, or a table as CSV",
		Example:   "  lidbook export jsonl --to hill.jsonl\n  lidbook export nucs > nucs.csv",
		Args:      cobra.ExactArgs(1),
		ValidArgs: []string{"jsonl", "nucs", "batches", "looks"},
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		write, err := exporter(v, args[0])
		if err != nil {
			return err
		}
		if to == "" {
			return write(a.file)
		}
		return storage.WriteFile(to, write)
	})
	c.Flags().StringVar(&to, "to", "", "write to `FILE` instead of here")
	return c
}

// exporter writes the season in a form. JSON Lines have every entry, whatever
// day is looked at; tables are as of that day.
func exporter(v *book.View, form string) (func(io.Writer) error, error) {
	switch form {
	case "jsonl":
		return func(w io.Writer) error { return jsonl.Write(w, withoutErrors(v.Season().Entries())) }, nil
	case "nucs":
		return func(w io.Writer) error { return table.Nucs(v).Write(w, table.Format{}) }, nil
	case "batches":
		return func(w io.Writer) error { return table.Batches(v).Write(w, table.Format{}) }, nil
	case "looks":
		return func(w io.Writer) error { return table.Looks(v).Write(w, table.Format{}) }, nil
	default:
		return nil, &usageError{err: fmt.Errorf("export %q: choose jsonl, nucs, batches or looks", form)}
	}
}

func withoutErrors(all iter.Seq[book.Entry]) iter.Seq2[book.Entry, error] {
	return func(yield func(book.Entry, error) bool) {
		for e := range all {
			if !yield(e, nil) {
				return
			}
		}
	}
}

func importCommand(a *app) *cobra.Command {
	var partly bool
	c := &cobra.Command{
		Use:   "import FILE",
		Short: "Take in the entries of JSON Lines or of another book; twice changes nothing",
		Long:  "Adds the entries of a file that are not in the book yet. A line that is not good is\nnamed with its number, and then nothing is taken in, unless --partly.",
		Example: "  lidbook import jon.jsonl\n  lidbook import /media/stick/jon.lidmark\n" +
			"  lidbook import damaged.jsonl --partly",
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error { return a.importFile(args[0], partly) },
	}
	c.Flags().BoolVar(&partly, "partly", false, "take in the good lines and leave the others")
	return c
}

func (a *app) importFile(path string, partly bool) error {
	d, err := a.open()
	if err != nil {
		return err
	}
	before, err := d.book.Count()
	if err == nil {
		err = a.takeIn(d, path, partly)
	}
	after, err2 := d.book.Count()
	if err := cmp.Or(err, err2, d.close()); err != nil {
		return err
	}
	a.line("taken in: %s, %d in all", plural(after-before, "entry"), after)
	return nil
}

func (a *app) takeIn(d *desk, path string, partly bool) error {
	if strings.HasSuffix(path, storage.Extension) {
		other, err := storage.Open(path, storage.Options{ReadOnly: true, Now: a.clock})
		if err != nil {
			return err
		}
		defer other.Close() // nothing was written
		return d.book.Merge(other)
	}
	f, err := openText(path)
	if err != nil {
		return err
	}
	defer f.Close() // nothing was written
	entries, refused, err := jsonl.Read(f, path)
	if errors.Is(err, bufio.ErrTooLong) {
		return fmt.Errorf("%s: a line of it is longer than any entry: it is no file of entries", path)
	}
	if err != nil {
		return err
	}
	a.sayRefused(refused)
	if len(refused) > 0 && !partly {
		return fmt.Errorf("%s not good, nothing was taken in: mend the file, or add --partly", plural(len(refused), "line"))
	}
	return d.book.Append(entries...)
}

// openText opens a file to read, not a folder or a device.
func openText(path string) (*os.File, error) {
	info, err := os.Stat(path)
	if err != nil {
		return nil, unread(path, err)
	}
	if info.Mode()&(os.ModeDir|os.ModeDevice) != 0 {
		return nil, fmt.Errorf("%s is no file: name one of JSON Lines, or a book", path)
	}
	f, err := os.Open(path)
	if err != nil {
		return nil, unread(path, err)
	}
	return f, nil
}

func unread(path string, err error) error {
	if errors.Is(err, fs.ErrNotExist) {
		return fmt.Errorf("%s: there is no such file", path)
	}
	return fmt.Errorf("%s: cannot be read: %w", path, errors.Unwrap(err))
}

// sayRefused names lines that are not good, the first ones each.
func (a *app) sayRefused(all []jsonl.Refusal) {
	const few = 20
	for _, r := range all[:min(few, len(all))] {
		fmt.Fprintln(a.errs, r.Error())
	}
	if more := len(all) - few; more > 0 {
		fmt.Fprintf(a.errs, "and %s more\n", thousands(more))
	}
}

func calendarCommand(a *app) *cobra.Command {
	var days int
	c := a.reading(&cobra.Command{
		Use:     "calendar FILE.ics",
		Short:   "Hard deadlines and batch events as a calendar file with alarms",
		Long:    "Writes an iCalendar file. Events keep their ids: read in again, a calendar moves\nthem and doubles none. Hard deadlines ring the last free evening before and in the\nmorning.",
		Example: "  lidbook calendar batches.ics",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		const most = 2 * 365
		if days < 1 || days > most {
			return fmt.Errorf("--days %d: write 1 to %d", days, most)
		}
		from := v.Today()
		events := []ics.Event{}
		for _, d := range rules.Deadlines(v, from, from+calendar.Day(days)) {
			events = append(events, eventOf(v, d))
		}
		err := storage.WriteFile(args[0], func(w io.Writer) error { return ics.Write(w, events, v.Zone(), a.now) })
		if err != nil {
			return err
		}
		a.line("%s: %s until %s", args[0], plural(len(events), "event"), dayOf(v, (from+calendar.Day(days)).Start(v.Zone())))
		return nil
	})
	amount(c, &days, "days", 60, "how many days ahead")
	return c
}

func eventOf(v *book.View, d rules.Deadline) ics.Event {
	e := ics.Event{ID: d.ID, Title: d.What, Text: d.Do, Alarms: d.Alarms, Hard: d.Hard}
	if !d.Hard {
		e.Day = d.Day
		return e
	}
	const (
		shown = 15 * time.Minute // a deadline is an instant; calendars show what takes time
		step  = 5 * time.Minute  // down to a time that one says, to be on the safe side
	)
	at := d.At.Truncate(step)
	e.Title = "By " + hour(at, v.Zone()) + ": " + d.What
	e.Start, e.End = at.Add(-shown), at
	return e
}
