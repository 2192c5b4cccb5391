package main

import (
	"fmt"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
	"lidmark/storage/listfile"
)

// listFlags is what is said of a keeper's own list.
type listFlags struct {
	columns, encoding, sheet, dates string
	year, sides                     int
	skip, grafted                   []string
}

func (f *listFlags) flags(c *cobra.Command) {
	fl := c.Flags()
	fl.StringVar(&f.columns, "columns", "", "what the `COLUMNS` of a list mean, from the left, like nuc,holds,batch (else guessed)")
	fl.StringVar(&f.encoding, "encoding", "", "`ENCODING` of the text of a list, like windows-1252")
	fl.StringVar(&f.sheet, "sheet", "", "the `NAME` of the sheet that is the list")
	fl.StringVar(&f.dates, "dates", "", "the `ORDER` of dates like 5/6/2027 in a list: day-first or month-first")
	amount(c, &f.year, "year", 0, "the year of dates in a list that say none")
	amount(c, &f.sides, "sides", 0, "how many sides of comb the new nucs of a list have")
	fl.StringSliceVar(&f.skip, "skip", nil, "`ROWS` of a list to leave out, like 4,7")
	fl.StringSliceVar(&f.grafted, "grafted", nil, "when a `BATCH=DAY` of a list was grafted, like 4=2027-04-20; can be given again")
}

// columnWords are what a column can be, in lines that fit the help.
func columnWords() string {
	var all []string
	for i, c := range roll.Columns() {
		word := c.String()
		if i%wordsALine == wordsALine-1 {
			word = "\n" + word
		}
		all = append(all, word)
	}
	return strings.ReplaceAll(strings.Join(all, ", "), " \n", "\n")
}

const wordsALine = 9

// isList tells the files of tables by their names.
func isList(path string) bool {
	return slices.Contains([]string{".csv", ".tsv", ".txt", ".xlsx", ".xlsm", ".xls", ".ods"}, strings.ToLower(filepath.Ext(path)))
}

// importList takes in a keeper's own list, when it has no mistake and somebody
// says yes.
func (a *app) importList(path string, f listFlags) error {
	sheet, err := f.read(path)
	if err != nil {
		return err
	}
	o, err := f.options(sheet)
	if err != nil {
		return err
	}
	d, err := a.open()
	if err != nil {
		return err
	}
	defer d.close() // says itself what went wrong
	r := roll.Read(sheet, o, roll.Context{View: d.view(), Now: d.now, Zone: d.zone, Mint: d.ids.Next})
	a.sayList(r, o)
	switch {
	case r.AsksDates:
		return fmt.Errorf("%s: say with --dates whether in its dates the day or the month stands first", path)
	case !r.Ready() && len(r.Mistakes()) > 0:
		return fmt.Errorf("%s: %s, nothing was taken in: mend them, or leave rows out with --skip", path, plural(len(r.Mistakes()), "mistake"))
	case !r.Ready():
		a.line("nothing to take in: the book has all of it")
		return nil
	case !a.agreed():
		return refuse("nothing was taken in: add --yes when it reads right")
	}
	entries := r.Entries(d.now, d.writer, d.ids.Next)
	if err := d.append(entries...); err != nil {
		return err
	}
	a.line("taken in: %s of %s", plural(len(entries), "entry"), path)
	return nil
}

func (a *app) agreed() bool {
	return a.flags.yes || a.asks && strings.HasPrefix(strings.ToLower(a.ask("", "Take it in? yes or no", "no")), "y")
}

// read reads the one sheet that is meant.
func (f listFlags) read(path string) (sheet roll.Sheet, err error) {
	file, err := openText(path)
	if err != nil {
		return sheet, err
	}
	defer file.Close() // nothing was written
	list, err := listfile.Read(path, file, f.encoding)
	if err != nil {
		return sheet, err
	}
	if len(list.Encodings) > 0 {
		var all strings.Builder
		for _, e := range list.Encodings {
			fmt.Fprintf(&all, "\n  %-14s %s (%s)", e.Name, e.Preview, e.Words)
		}
		return sheet, fmt.Errorf("%s: say with --encoding how it is written, by what reads right:%s", path, all.String())
	}
	var names []string
	for _, s := range list.Sheets {
		if len(list.Sheets) == 1 && (f.sheet == "" || s.Name == "") || strings.EqualFold(s.Name, f.sheet) {
			return s, nil
		}
		names = append(names, s.Name)
	}
	return sheet, fmt.Errorf("%s: say with --sheet which is the list: %s", path, strings.Join(names, ", "))
}

// options are what the flags say, the rest guessed.
func (f listFlags) options(s roll.Sheet) (o roll.Options, err error) {
	o = roll.Options{Heading: roll.Heading(s), Year: f.year, Sides: f.sides, Skip: map[int]bool{}, Grafted: map[int]calendar.Day{}}
	for _, row := range f.skip {
		n, err := strconv.Atoi(strings.TrimSpace(row))
		if err != nil {
			return o, fmt.Errorf("--skip %q: write the numbers of rows, like 4,7", row)
		}
		o.Skip[n] = true
	}
	for _, batch := range f.grafted {
		number, text, both := strings.Cut(batch, "=")
		n, err := strconv.Atoi(number)
		if err != nil || !both {
			return o, fmt.Errorf("--grafted %q: write the number of a batch and its day, like 4=2027-04-20", batch)
		}
		if o.Grafted[n], err = calendar.ParseDay(text); err != nil {
			return o, fmt.Errorf("--grafted: %w", err)
		}
	}
	if f.dates != "" {
		if o.Dates, err = roll.ParseOrder(f.dates); err != nil {
			return o, fmt.Errorf("--dates: %w", err)
		}
	}
	o.Columns = roll.Guess(s, o.Heading)
	if f.columns == "" {
		return o, nil
	}
	o.Columns = nil
	for word := range strings.SplitSeq(f.columns, ",") {
		c, err := roll.ParseColumn(word)
		if err != nil {
			return o, fmt.Errorf("--columns: %w", err)
		}
		o.Columns = append(o.Columns, c)
	}
	return o, nil
}

// sayList says what was understood, and every mistake.
func (a *app) sayList(r roll.Result, o roll.Options) {
	var columns []string
	for i, c := range o.Columns {
		columns = append(columns, roll.Letters(i+1)+" "+c.String())
	}
	a.line("columns: %s", strings.Join(columns, ", "))
	if by := r.DatesBy; by.Row > 0 {
		a.line("dates are read %s, by %s: %s", r.Dates, by.Place(), by.What)
	}
	boxes := 0
	for _, d := range r.Ground {
		if _, is := d.Fact.(book.BoxBuilt); is {
			boxes++
			continue
		}
		a.line("new: %s", d.Words)
	}
	if boxes > 0 {
		a.line("new: %s", plural(boxes, "box"))
	}
	for _, row := range r.Rows {
		if row.Words != "" {
			a.line("row %d: %s", row.Row.Number, row.Words)
		}
	}
	for _, m := range r.Mistakes() {
		fmt.Fprintln(a.errs, m.Error())
	}
	a.line("%s", r.Counts)
}
