package main

import (
	"cmp"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/storage"
)

func newCommand(a *app) *cobra.Command {
	var b beginning
	c := &cobra.Command{
		Use:   "new [FILE]",
		Short: "Begin a book: a yard, its nucs, who works there",
		Long: "Begins a book. What is not said by flags is asked for, where somebody can answer.\n\n" +
			"Boxes are named by letter and number as they stand: A1-A12 sets up stand A with\n12 places. Names have no I and no O.",
		Example: "  lidbook new\n  lidbook new hill.lidmark --yard \"Home Yard\" --zone Europe/Berlin --boxes A1-A12 --boxes B1-B6 \\\n" +
			"      --kind mini --person \"Ida Mon-Fri 18:30-20:30 Sat-Sun 08:00-20:00\"",
		Args: cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error { return a.newBook(args, b) },
	}
	fl := c.Flags()
	fl.StringVar(&b.Yard, "yard", "", "`NAME` of your home yard")
	fl.StringVar(&b.Zone, "zone", "", "its time `ZONE`, like Europe/Berlin")
	signed(c, &b.Lat, "lat", "its latitude in degrees, north positive")
	signed(c, &b.Lon, "lon", "its longitude in degrees, east positive")
	fl.StringArrayVar(&b.boxes, "boxes", nil, "`NAMES` of nucs, like A1-A12; can be given again")
	amount(c, &b.per, "nucs-per-box", 1, "how many nucs share a box")
	facingFlag(c, &b.facing)
	combFlags(c, &b.combs)
	fl.StringArrayVar(&b.People, "person", nil, "`NAME` of somebody who works there, with free hours if you like; can be given again")
	fl.StringVar(&b.Since, "since", "", "the `DAY` from which all this counts (else 1 January, or two months ago where that is before it)")
	return c
}

func (a *app) newBook(args []string, b beginning) error {
	if err := a.askFounding(&b); err != nil {
		return err
	}
	path, err := bookFile(cmp.Or(strings.Join(args, ""), fileName(b.Yard)))
	if err != nil {
		return err
	}
	ids := newIDs(a.now, nil)
	entries, err := b.said().Entries(a.now, time.LoadLocation, &ids)
	if err != nil {
		return ofFlag(err) // before there is a file
	}
	return a.found(path, entries)
}

// found makes the file with the first entries in it.
func (a *app) found(path string, entries []book.Entry) error {
	v := book.NewSeason(time.LoadLocation, entries).At(a.now)
	for _, e := range entries {
		if err := rules.Sense(v, a.now, e); err != nil {
			return err
		}
	}
	b, err := storage.CreateWith(path, entries...)
	if err != nil {
		return err
	}
	a.sayFounded(path, entries)
	return b.Close()
}

// sayFounded tells what a new book begins with, and how to go on.
func (a *app) sayFounded(path string, entries []book.Entry) {
	yard, nucs, people, combless := "", 0, 0, false
	for _, e := range entries {
		switch f := e.Fact.(type) {
		case book.YardDescribed:
			yard = f.Name
		case book.NucNamed:
			nucs++
			combless = combless || f.Sides == 0
		case book.PersonDescribed:
			people++
		}
	}
	a.line("%s: yard %s, %s, %s", path, yard, plural(nucs, "nuc"), plural(people, "person"))
	if combless {
		a.line("how many sides of comb a nuc has was not said: say it with lidbook add combs")
	}
	a.line("next: make up nucs with lidbook makeup, write down a graft with lidbook graft")
}
