package pedigree_test

import (
	"math"
	"math/rand/v2"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/pedigree"
	"lidmark/domain/practice"
)

var (
	queen = booktest.Queen
	yard  = booktest.Yard("mating")
)

// family is a book with queens by name, mother and drone line, and a drone colony
// of each of some queens, which stands in the mating yard and is the line of her
// name.
func family(queens [][3]string, drones ...string) *book.View {
	p := (&booktest.Pen{}).At("2027-03-01 12:00")
	for _, q := range queens {
		f := book.QueenDescribed{Queen: queen(q[0]), Name: q[0], DroneLine: q[2]}
		if q[1] != "" {
			f.Mother = queen(q[1])
		}
		p.Write(f)
	}
	for _, d := range drones {
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(d), Name: d, Yard: yard, Roles: []book.Role{book.DroneSource}, Line: d, Queen: queen(d)})
	}
	return p.View("2027-05-01 12:00")
}

func lost(v *book.View, mother string, mates float64, t *testing.T) pedigree.Lost {
	n, err := practice.Numbers{}.With(practice.MatesOfQueen, mates)
	if err != nil {
		t.Fatal(err)
	}
	return pedigree.Daughters(v, queen(mother), yard, n)
}

// Worked by hand from first principles: a drone carries one of his mother's two
// alleles, drawn by lot; a daughter has one of her mother's and her father's one.
func TestKinshipWorkedByHand(t *testing.T) {
	for _, c := range []struct {
		what   string
		queens [][3]string
		drone  string
		mates  float64
		want   float64
	}{
		{"strangers", [][3]string{{"M"}, {"D"}}, "D", 13, 0},
		{"their brothers", [][3]string{{"M"}}, "M", 13, 1.0 / 4},
		{"sons of a sister with the same father", [][3]string{{"M"}, {"S", "M"}}, "S", 1, 3.0 / 8},
		{"sons of a sister with one father in four", [][3]string{{"M"}, {"S", "M"}}, "S", 4, (0.5 + 0.25) / 4},
		{"sons of a full aunt", [][3]string{{"G"}, {"M", "G"}, {"A", "G"}}, "A", 1, 3.0 / 16},
		{"sons of their grandmother", [][3]string{{"G"}, {"M", "G"}}, "G", 13, 1.0 / 8},
	} {
		if got := lost(family(c.queens, c.drone), "M", c.mates, t); math.Abs(got.Kinship-c.want) > 1e-12 {
			t.Errorf("%s: %.4f, by hand %.4f", c.what, got.Kinship, c.want)
		}
	}
}

// A quarter of the brood of a queen mated with her brothers alone is lost in the
// mean; of strangers' drones one egg in as many as there are alleles.
func TestBroodLost(t *testing.T) {
	brothers := lost(family([][3]string{{"M"}}, "M"), "M", 13, t)
	alleles := practice.Numbers{}.Get(practice.SexAlleles)
	if want := 0.25 + 0.75/alleles; math.Abs(brothers.Share-want) > 1e-12 || brothers.With != queen("M") {
		t.Errorf("brothers: %.4f lost, want %.4f", brothers.Share, want)
	}
	strangers := lost(family([][3]string{{"M"}, {"D"}}, "D"), "M", 13, t)
	if want := 1 / alleles; math.Abs(strangers.Share-want) > 1e-12 || !strangers.With.IsZero() {
		t.Errorf("strangers: %.4f lost, want %.4f", strangers.Share, want)
	}
}

// A record that makes queens each other's mothers is wrong, and ends somewhere.
func TestARecordInACircle(t *testing.T) {
	v := family([][3]string{{"M", "N", "D"}, {"N", "M", "D"}, {"D", "M", "D"}}, "D")
	if got := lost(v, "M", 2, t); math.IsNaN(got.Share) || got.Share < 0 || got.Share > 1 {
		t.Errorf("%v lost", got.Share)
	}
}

// drop draws alleles down a pedigree: each queen of the list gets one of her
// mother's two and that of one of the drones her mother mated with, each drone an
// allele of a colony of the line. It knows nothing of the formulas.
type drop struct {
	queens [][3]string
	mates  int
	chance *rand.Rand
	gene   map[string][2]int
	mated  map[string][]int
	next   int
}

func (d *drop) founder(name string) {
	d.gene[name] = [2]int{d.next, d.next + 1}
	d.next += 2
}

func (d *drop) run() {
	d.gene, d.mated, d.next = map[string][2]int{}, map[string][]int{}, 0
	for _, q := range d.queens {
		if q[1] == "" {
			d.founder(q[0])
		} else {
			d.gene[q[0]] = d.daughter(q[1])
		}
	}
}

func (d *drop) daughter(mother string) [2]int {
	if d.mated[mother] == nil {
		for range d.mates {
			d.mated[mother] = append(d.mated[mother], d.drone(d.line(mother)))
		}
	}
	return [2]int{d.gene[mother][d.chance.IntN(2)], d.mated[mother][d.chance.IntN(d.mates)]}
}

func (d *drop) line(of string) string {
	for _, q := range d.queens {
		if q[0] == of {
			return q[2]
		}
	}
	return ""
}

func (d *drop) drone(of string) int {
	if of == "" {
		d.next++
		return d.next - 1
	}
	return d.gene[of][d.chance.IntN(2)]
}

func TestKinshipAgainstGenesDropped(t *testing.T) {
	queens := [][3]string{{"G"}, {"D"}, {"M", "G", "D"}, {"A", "G", "G"}, {"B", "M", "D"}, {"C", "M", "A"}, {"E", "C"}}
	queens[0][2], queens[1][2] = "D", "G"
	v := family(queens, "G", "D", "A")
	const trials = 40000
	for _, mother := range []string{"B", "C", "E", "M"} {
		for _, with := range []string{"G", "D", "A"} {
			d := &drop{queens: queens, mates: 3, chance: rand.New(rand.NewPCG(7, 1))}
			same := 0
			for range trials {
				d.run()
				if d.daughter(mother)[d.chance.IntN(2)] == d.drone(with) {
					same++
				}
			}
			n, _ := practice.Numbers{}.With(practice.MatesOfQueen, 3)
			got, want := daughterWith(v, mother, with, n), float64(same)/trials
			if sd := math.Sqrt(want * (1 - want) / trials); math.Abs(got-want) > 4.5*sd+1e-9 {
				t.Errorf("daughters of %s with drones of %s: %.4f, dropped %.4f ± %.4f", mother, with, got, want, sd)
			}
		}
	}
}

func daughterWith(v *book.View, mother, with string, n practice.Numbers) float64 {
	return pedigree.New(v, n.Get(practice.MatesOfQueen)).Daughter(queen(mother), queen(with))
}
