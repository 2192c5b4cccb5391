package main

import (
	"bufio"
	"cmp"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/storage/jsonl"
)

func importCommand(a *app) *cobra.Command {
	var partly bool
	var list listFlags
	c := &cobra.Command{
		Use:   "import FILE",
		Short: "Take in the entries of JSON Lines, of another book, or a list of your own (CSV, XLSX); twice changes nothing",
		Long: "Adds the entries of a file that are not in the book yet. A line that is not good is\nnamed with its number, and then nothing is taken in, unless --partly.\n\n" +
			"A list of nucs, dates and queens, as CSV or XLSX, is read row by row and said in words\nbefore anything is written. Rows with mistakes are mended there, or left out with --skip.\n" +
			"Its columns can be: " + columnWords() + ".",
		Example: "  lidbook import jon.jsonl\n  lidbook import /media/stick/jon.lidmark\n" +
			"  lidbook import damaged.jsonl --partly\n" +
			"  lidbook import list.csv --columns nuc,holds,batch,grafted,\"cell given\" --encoding windows-1252 --skip 4,7",
		Args: cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if isList(args[0]) {
				return a.importList(args[0], list)
			}
			return a.importFile(args[0], partly)
		},
	}
	list.flags(c)
	c.Flags().BoolVarP(&a.flags.yes, "yes", "y", false, "take a list in without asking")
	c.Flags().BoolVar(&partly, "partly", false, "take in the good lines and leave the others")
	c.AddCommand(importWeather(a))
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
	entries, refused, err := jsonl.Read(f, path, func(e book.Entry) error { return rules.Plausible(e.Fact) })
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
		return fmt.Errorf("%s: there is no such file, check the name and its folder", path)
	}
	return fmt.Errorf("%s: it cannot be read (%w): check that its disk is there and that you may read it", path, errors.Unwrap(err))
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
