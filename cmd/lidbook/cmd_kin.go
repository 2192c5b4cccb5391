package main

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/pedigree"
	"lidmark/domain/practice"
)

// kinShape is what kinship costs the brood of a mother's daughters, in JSON. Shares
// are of one.
type kinShape struct {
	Mother  string          `json:"mother"`
	Yard    string          `json:"yard"`
	Lost    float64         `json:"broodLost"`
	Kinship float64         `json:"kinship"`
	Warned  bool            `json:"warned"`
	Drones  []kinDroneShape `json:"droneColonies"`
	Unnamed []string        `json:"droneColoniesWithoutQueen"`
	Numbers []kinNumber     `json:"numbers"`
	Others  []kinShape      `json:"otherYards,omitempty"` // in which they mate too
}

// kinDroneShape is a drone colony and how close it is, in JSON.
type kinDroneShape struct {
	Colony  string  `json:"colony"`
	Queen   string  `json:"queen"`
	Kinship float64 `json:"kinship"`
}

// kinNumber is a number on which the answer stands, in JSON.
type kinNumber struct {
	Name   string  `json:"name"`
	Value  float64 `json:"value"`
	Source string  `json:"source"`
	title  string
}

func kinCommand(a *app) *cobra.Command {
	c := a.completes(a.reading(&cobra.Command{
		Use:   "kin MOTHER",
		Short: "How closely a mother's daughters are kin to the drones of a yard, and the brood it costs",
		Long: "Tells what share of the brood of a mother's daughters, mated in a yard, is to be\nexpected to be lost to like sex alleles, and how close each drone colony is.\n" +
			"The mother is a queen, or the colony she is in. Who has no recorded parents\ncounts as kin to nobody.",
		Example: "  lidbook kin \"Rook 12\"\n  lidbook kin S2 --yard \"Far Hill\"",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		f := finder{View: v}
		mother, err := f.mother(args[0])
		if err != nil {
			return err
		}
		var said book.YardID
		if a.flags.yard != "" {
			y, err := f.yard(a.flags.yard)
			if err != nil {
				return err
			}
			said = y.Yard
		}
		s, err := kinIn(v, mother, pedigree.MatingYards(v, said))
		if err != nil {
			return err
		}
		return a.show(s, func() { a.printKin(s) })
	}), queenNames)
	c.Flags().StringVar(&a.flags.yard, "yard", "", "mated in this `YARD` (else where nucs stand)")
	return c
}

// mother finds a queen, or the one in a colony.
func (f finder) mother(name string) (book.QueenID, error) {
	q, err := f.queen(name)
	if err == nil {
		return q.Queen, nil
	}
	c, none := f.colony(name)
	switch {
	case none != nil:
		return book.QueenID{}, err
	case c.Queen.IsZero():
		return book.QueenID{}, fmt.Errorf("nobody said which queen is in %s: say it with lidbook add colony %q --queen NAME", c.Name, c.Name)
	}
	return c.Queen, nil
}

// kinIn is what kinship costs in the yards in which daughters mate, the dearest first.
func kinIn(v *book.View, mother book.QueenID, yards []book.YardID) (s kinShape, err error) {
	if len(yards) == 0 {
		return s, fmt.Errorf("no yard in the book: add one with lidbook add yard")
	}
	var all []kinShape
	for _, y := range yards {
		all = append(all, kinOf(v, mother, v.Yard(y)))
	}
	slices.SortStableFunc(all, func(a, b kinShape) int { return cmp.Compare(b.Lost, a.Lost) })
	s, s.Others = all[0], all[1:]
	return s, nil
}

func kinOf(v *book.View, mother book.QueenID, y *book.Yard) kinShape {
	n := v.Numbers()
	lost := pedigree.Daughters(v, mother, y.Yard, n)
	k := pedigree.New(v, n.Get(practice.MatesOfQueen))
	s := kinShape{
		Mother: thingOf(v, mother.Subject()).Name, Yard: y.Name, Lost: thousandth(lost.Share), Kinship: thousandth(lost.Kinship),
		Warned: lost.Kinship > 0 && lost.Share >= n.Get(practice.BroodLostWarned), Drones: []kinDroneShape{}, Unnamed: []string{},
	}
	for c := range v.Colonies() {
		switch {
		case !c.Is(book.DroneSource) || c.Yard != y.Yard:
		case c.Queen.IsZero():
			s.Unnamed = append(s.Unnamed, c.Name)
		default:
			s.Drones = append(s.Drones, kinDroneShape{c.Name, thingOf(v, c.Queen.Subject()).Name, thousandth(k.Daughter(mother, c.Queen))})
		}
	}
	for _, key := range []practice.Key{practice.MatesOfQueen, practice.SexAlleles, practice.BroodLostWarned} {
		row := practice.Of(key)
		s.Numbers = append(s.Numbers, kinNumber{row.Name, n.Get(key), row.Source, row.Title})
	}
	return s
}

// thousandth is a share in JSON.
func thousandth(x float64) float64 { return math.Round(1000*x) / 1000 }

func (a *app) printKin(s kinShape) {
	for _, y := range append([]kinShape{s}, s.Others...) {
		a.printKinIn(y)
	}
	for _, n := range s.Numbers {
		a.line("  %s: %s; %s", n.title, figure(n.Value), n.Source)
	}
}

func (a *app) printKinIn(s kinShape) {
	warn := ""
	if s.Warned {
		warn = "; graft from another line, or have them mate where other drones fly"
	}
	a.line("daughters of %s mated in %s: about %s of 100 of their brood lost to like sex alleles%s", s.Mother, s.Yard, hundred(s.Lost), warn)
	if len(s.Drones)+len(s.Unnamed) == 0 {
		a.line("  no drone colony is recorded there; all drones count as strangers")
	}
	var rows [][]string
	for _, d := range s.Drones {
		rows = append(rows, []string{"  " + d.Colony, d.Queen, kinWords(d.Kinship)})
	}
	for _, name := range s.Unnamed {
		rows = append(rows, []string{"  " + name, "", "nobody said which queen is in it; she counts as kin to nobody"})
	}
	a.table(rows)
}

func kinWords(kinship float64) string {
	if kinship == 0 {
		return "no kin that is recorded"
	}
	return fmt.Sprintf("kinship %.3f", kinship)
}
