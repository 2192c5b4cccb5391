package main

import (
	"cmp"
	"errors"
	"io/fs"
	"os"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/storage"
)

func newCommand(a *app) *cobra.Command {
	var f founding
	c := &cobra.Command{
		Use:   "new [FILE]",
		Short: "Begin a book: a yard, its nucs, who works there",
		Long: "Begins a book. What is not said by flags is asked for, where somebody can answer.\n\n" +
			"Boxes are named by letter and number as they stand: A1-A12 sets up stand A with\n12 places. Names have no I and no O.",
		Example: "  lidbook new\n  lidbook new hill.lidmark --yard \"Home Hill\" --zone Europe/Berlin --boxes A1-A12 --boxes B1-B6 \\\n" +
			"      --kind mini --person \"Ida Mon-Fri 18:30-20:30 Sat-Sun 08:00-20:00\"",
		Args: cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error { return a.newBook(args, f) },
	}
	fl := c.Flags()
	fl.StringVar(&f.yard, "yard", "", "`NAME` of your home yard")
	fl.StringVar(&f.zone, "zone", "", "its time `ZONE`, like Europe/Berlin")
	signed(c, &f.lat, "lat", "its latitude in degrees, north positive")
	signed(c, &f.lon, "lon", "its longitude in degrees, east positive")
	fl.StringArrayVar(&f.boxes, "boxes", nil, "`NAMES` of nucs, like A1-A12; can be given again")
	amount(c, &f.per, "nucs-per-box", 1, "how many nucs share a box")
	f.combs.flags(c)
	fl.StringArrayVar(&f.people, "person", nil, "`NAME` of somebody who works there, with free hours if you like; can be given again")
	fl.StringVar(&f.since, "since", "", "the `DAY` from which all this counts (else 1 January, or two months ago where that is before it)")
	return c
}

func (a *app) newBook(args []string, f founding) error {
	if err := a.askFounding(&f); err != nil {
		return err
	}
	path, err := bookFile(cmp.Or(strings.Join(args, ""), fileName(f.yard)))
	if err != nil {
		return err
	}
	zone, err := namedZone(f.zone)
	if err != nil {
		return err
	}
	g := newIDs(a.now, nil)
	if f.combs, err = f.combs.filled(); err != nil {
		return err
	}
	facts, err := f.facts(&g)
	if err != nil {
		return err
	}
	at, err := f.begins(a.now, zone)
	if err != nil {
		return err
	}
	if err := plausible(facts...); err != nil {
		return err // before there is a file
	}
	return a.found(path, f, g, facts, at)
}

// found makes the file and writes the first entries.
func (a *app) found(path string, f founding, g book.IDs, facts []book.Fact, at calendar.Moment) error {
	b, err := storage.Create(path)
	if err != nil {
		return err
	}
	d := &desk{app: a, book: b, ids: g, season: book.NewSeason(time.LoadLocation, nil), writer: writerOf(f.people)}
	if err := d.append(d.entries(at, facts...)...); err != nil {
		return errors.Join(err, b.Close(), unmade(path))
	}
	a.line("%s: yard %s, %s, %s", path, f.yard, plural(f.nucs(), "nuc"), plural(len(f.people), "person"))
	if f.combs.sides == 0 && len(f.boxes) > 0 {
		a.line("how many sides of comb a nuc has was not said: say it with lidbook add combs")
	}
	a.line("next: make up nucs with lidbook makeup, write down a graft with lidbook graft")
	return b.Close()
}

// unmade takes away a closed book in which nothing was ever written, with what
// stood beside it.
func unmade(path string) (err error) {
	for _, file := range []string{path, path + "-wal", path + "-shm", path + ".lock"} {
		if failed := os.Remove(file); !errors.Is(failed, fs.ErrNotExist) {
			err = errors.Join(err, failed)
		}
	}
	return err
}

func writerOf(people []string) string {
	if len(people) == 0 {
		return ""
	}
	name, _, _ := splitHours(people[0])
	return name
}
