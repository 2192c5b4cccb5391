package main

import (
	"bufio"
	"cmp"
	"errors"
	"fmt"
	"os"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/storage"
)

// founding is what a new book begins with.
type founding struct {
	yard   string
	zone   string
	lat    float64
	lon    float64
	boxes  []string
	per    int
	combs  combs
	people []string
	since  string
}

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
	facts, err := f.facts(g)
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
func (a *app) found(path string, f founding, g *ids, facts []book.Fact, at calendar.Moment) error {
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

// unmade takes away a book in which nothing was ever written, with the lock
// beside it.
func unmade(path string) error {
	return errors.Join(os.Remove(path), os.Remove(path+".lock"))
}

func writerOf(people []string) string {
	if len(people) == 0 {
		return ""
	}
	name, _, _ := splitHours(people[0])
	return name
}

func (f founding) nucs() (n int) {
	for _, row := range f.boxes {
		names, _ := line.Row(row) // a row with a mistake is refused before this
		n += len(names)
	}
	return n
}

// begins is the moment from which the founding counts.
func (f founding) begins(now time.Time, zone *time.Location) (calendar.Moment, error) {
	today := calendar.DayOf(now, zone)
	const back = 60 // days; a batch of last year may still be on its way
	first := min(calendar.Date(now.In(zone).Year(), time.January, 1), today-back)
	if f.since != "" {
		w, err := parseWhen(f.since, today, zone)
		if err != nil || w.day > today {
			return calendar.Moment{}, fmt.Errorf("--since %q: write a day gone by, like 2027-04-01", f.since)
		}
		first = w.day
	}
	return calendar.Moment{Instant: first.Start(zone).UTC(), Part: calendar.WholeDay}, nil
}

func (f founding) facts(g *ids) ([]book.Fact, error) {
	yard := book.YardID(g.next())
	if f.yard == "" {
		return nil, fmt.Errorf("a yard needs a name: say --yard NAME")
	}
	facts := []book.Fact{book.YardDescribed{Yard: yard, Name: f.yard, Home: true, Lat: f.lat, Lon: f.lon, Zone: f.zone}}
	set := &setUp{ids: g, yard: yard, per: f.per, combs: f.combs}
	for _, row := range f.boxes {
		more, err := set.row(row)
		if err != nil {
			return nil, fmt.Errorf("--boxes %q: %w", row, err)
		}
		facts = append(facts, more...)
	}
	for _, text := range f.people {
		p, err := person(text, book.PersonID(g.next()))
		if err != nil {
			return nil, fmt.Errorf("--person %q: %w", text, err)
		}
		facts = append(facts, p)
	}
	return facts, nil
}

// askFounding asks for what the flags left out, if somebody can answer.
func (a *app) askFounding(f *founding) error {
	if f.yard = strings.TrimSpace(f.yard); !a.asks {
		if f.yard == "" || f.zone == "" {
			return &usageError{err: fmt.Errorf("a new book needs at least --yard NAME and --zone ZONE")}
		}
		return nil
	}
	f.yard = a.ask(f.yard, "Name of your home yard", "Home")
	f.zone = a.ask(f.zone, "Its time zone", a.localZone().String())
	if len(f.boxes) == 0 {
		f.boxes = nonEmpty(a.ask("", "Nucs there, by letter and number, like A1-A12, B1-B6", ""))
	}
	if f.combs == (combs{}) && len(f.boxes) > 0 {
		a.askCombs(f)
	}
	if len(f.people) == 0 {
		f.people = nonEmpty(a.ask("", "Your name, and your free hours if you like, as in: Ida Mon-Fri 18:30-20:30", ""))
	}
	if a.ended {
		return refuse("the questions were left, no book was begun")
	}
	return nil
}

// askCombs asks for the kind of box until the answer is one.
func (a *app) askCombs(f *founding) {
	for {
		c, err := parseCombs(a.ask("", "Their kind: "+kindWords()+"; or sides and dm² of one, like 6 2", kinds[0].kind))
		if err == nil || a.ended {
			f.combs = c
			return
		}
		a.line("  %v", err)
	}
}

func nonEmpty(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}

// ask asks for what was not said; Enter takes what stands in brackets.
func (a *app) ask(said, question, usual string) string {
	if said != "" {
		return said
	}
	hint := ""
	if usual != "" {
		hint = " [" + usual + "]"
	}
	fmt.Fprintf(a.out, "%s%s: ", question, hint)
	return cmp.Or(a.answer(), usual)
}

// answer is the next line that is typed; "" when there are no more.
func (a *app) answer() string {
	text, _ := a.nextLine()
	return text
}

// nextLine is the next line of the input, and whether there was one.
func (a *app) nextLine() (text string, more bool) {
	if a.lines == nil {
		a.lines = bufio.NewScanner(a.in)
	}
	more = a.lines.Scan()
	a.ended = !more
	return strings.TrimSpace(a.lines.Text()), more
}
