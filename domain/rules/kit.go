package rules

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// KitLine is something to pack: 7 ripe cells, 0.6 l syrup.
type KitLine struct {
	Amount float64
	Unit   string // "l", or "" for things that are counted
	Goods  string
	Note   string
}

// kit sums what the work of a day needs.
func (p *pass) kit(work []Finding, d calendar.Day) []KitLine { return p.packed(p.sum(work, d), d) }

// packed are the lines of a sum.
func (p *pass) packed(k kitSum, d calendar.Day) []KitLine {
	var lines []KitLine
	line := func(amount float64, one, many, note string) {
		switch {
		case amount == 1:
			lines = append(lines, KitLine{Amount: 1, Goods: one, Note: note})
		case amount > 0:
			lines = append(lines, KitLine{Amount: amount, Goods: many, Note: note})
		}
	}
	cells := 0
	for _, b := range k.batches(p.view) {
		of := batchWord(p.view.Batch(b.batch))
		if c := p.caseOf(b.batch); c != nil && c.Uncounted() {
			of = fmt.Sprintf("%s, about: %d grafted, not counted", of, c.Larvae)
		}
		cells += b.into()
		line(float64(b.into()), "ripe cell", "ripe cells", of+", kept warm")
		if b.perhaps > 0 && b.cages() > 0 {
			of += fmt.Sprintf(", %d in case of eggs", min(b.perhaps, b.cages())) // its cell is counted above too
		}
		line(float64(b.cages()), "cage for cells", "cages for cells", of)
	}
	line(float64(k.goods.RipeCells), "ripe cell", "ripe cells", "as planned, kept warm")
	cells += k.goods.RipeCells
	line(float64(cells), "cell protector", "cell protectors", "")
	spare, cups := max(0, math.Ceil(k.spare-hardlyAny)), k.cups+math.Ceil(k.goods.Cups-hardlyAny)
	note := fmt.Sprintf("%.1f l", (cups+spare)*p.numbers.Get(practice.CupOfBees))
	if spare > 0 {
		note += fmt.Sprintf(", %.0f in case there are few", spare)
	}
	line(cups+spare, "cup of bees", "cups of bees", note)
	line(math.Ceil(k.goods.Combs-hardlyAny), "comb of brood", "combs of brood", "full ones, to make up nucs")
	line(k.goods.DroneCombs, "drone comb", "drone combs", "")
	line(float64(k.goods.CellCups), "cell cup", "cell cups", "to graft into")
	if syrup := k.syrup + k.goods.Syrup; syrup > 0 {
		lines = append(lines, KitLine{syrup, "l", "syrup", feeds(k.feeds)})
	}
	line(float64(k.fondant), "portion of fondant", "portions of fondant", "")
	line(float64(len(k.reducers)), "entrance reducer", "entrance reducers", "")
	line(float64(k.cages+k.goods.QueenCages), "queen cage", "queen cages", "")
	if k.marks > 0 {
		year, _, _ := d.Date()
		line(1, "marking pen", "", bee.MarkColour(year).String())
	}
	line(float64(min(k.shaken, 1)), "sheet to shake out on", "", "")
	return lines
}

// hardlyAny is the chance of wanting a cup for which nobody packs one. Common practice, no
// source.
const hardlyAny = 0.05

// kitsOf are what each of several people packs for his part of a day's work: cages for
// cells that nobody is given go with who collects them.
func (p *pass) kitsOf(parts [][]Finding, d calendar.Day) (kits [][]KitLine) {
	whole := p.sum(slices.Concat(parts...), d)
	for _, work := range parts {
		k := p.sum(work, d)
		for i := range k.sums {
			k.sums[i].besides(*whole.batch(k.sums[i].batch))
		}
		kits = append(kits, p.packed(k, d))
	}
	return kits
}

// besides makes the sum of one person's part of the cells of a batch, of which others do
// the rest.
func (b *batchSum) besides(whole batchSum) {
	switch {
	case b.part: // everybody collects his own
	case b.collected > 0:
		b.elsewhere = whole.given + whole.made - b.given - b.made
	case whole.collected > 0:
		if b.makes {
			b.made = whole.made
		}
		b.collected = b.given + b.made // none but those in case of eggs
	}
}

// sum adds up what is packed for some work of a day.
func (p *pass) sum(work []Finding, d calendar.Day) kitSum {
	k := kitSum{reducers: map[book.Subject]bool{}}
	checked := map[book.NucID]bool{}
	for _, f := range work {
		k.add(f)
		switch id, ok := f.Of.Nuc(); {
		case !ok:
		case f.Act == ActCheckBees:
			checked[id] = true
		case f.Act == ActCatchQueen && p.marked(p.view.Nuc(id)) == "":
			k.marks++
		}
	}
	for i := range p.nucs {
		n := &p.nucs[i]
		if checked[n.Nuc.Nuc] {
			k.spare += n.has.Few()
		}
	}
	for i := range k.sums {
		b := &k.sums[i]
		c := p.caseOf(b.batch)
		if c == nil {
			continue
		}
		if c.Uncounted() {
			b.given = min(b.given, p.ripe(c))
		}
		if b.collected > 0 {
			b.kept, b.made = c.waits, p.intoMadeUp(c, d, b.makes)
			if b.part = b.collected < p.ripe(c) && b.collected <= b.given; b.part {
				b.kept, b.made = 0, 0
			}
		}
	}
	return k
}

// timeToCage gives the collecting of a batch the time for the cells that go into cages by
// the work of the day, those as well that a nuc is ready for and not given, and into nucs
// that wait or are made up for it.
func (p *pass) timeToCage(work []Finding, d calendar.Day) {
	k := p.sum(work, d)
	for i := range work {
		if id, ok := work[i].Of.Batch(); ok && work[i].Rule == CellsOut && work[i].Act == ActCollectCells {
			b := k.batch(id)
			work[i].Takes = p.cageOrGive(max(0, b.cages()), b.kept+b.made)
		}
	}
}

func feeds(n int) string {
	if n > 1 {
		return fmt.Sprintf("%d feeds", n)
	}
	return ""
}

// Goods are what a piece of work takes along besides what its act takes at each nuc.
type Goods struct {
	Cups       float64 // of bees
	Combs      float64 // of brood, in full ones
	DroneCombs float64
	CellCups   int
	RipeCells  int     // of planned batches: those of others are counted by what they have
	QueenCages int     // the same
	Syrup      float64 // litres
}

// add counts the goods of one piece of work more.
func (g *Goods) add(more Goods) {
	g.Cups += more.Cups
	g.Combs += more.Combs
	g.DroneCombs += more.DroneCombs
	g.CellCups += more.CellCups
	g.RipeCells += more.RipeCells
	g.QueenCages += more.QueenCages
	g.Syrup += more.Syrup
}

type batchSum struct {
	batch            book.BatchID
	given, collected int
	perhaps          int // of those given: in cages until a look finds no eggs
	elsewhere        int // given by others
	kept             int // of those collected: into nucs that wait for them, a day ahead
	made             int // of those collected: into nucs that are made up for them
	makes            bool
	part             bool // only what is given is collected, the others stay together
}

// cages are those for cells that no nuc is given, and that perhaps none is.
func (b batchSum) cages() int { return b.collected - b.into() - b.elsewhere + b.perhaps }

// into are those for nucs.
func (b batchSum) into() int { return b.given + b.kept + b.made }

type kitSum struct {
	sums                 []batchSum
	cups, syrup          float64
	spare                float64 // cups to be expected where bees are checked
	feeds, fondant       int
	reducers             map[book.Subject]bool // each nuc once, for however many reasons
	cages, marks, shaken int
	goods                Goods
}

func (k *kitSum) batch(id book.BatchID) *batchSum {
	for i := range k.sums {
		if k.sums[i].batch == id {
			return &k.sums[i]
		}
	}
	k.sums = append(k.sums, batchSum{batch: id})
	return &k.sums[len(k.sums)-1]
}

func (k *kitSum) add(f Finding) {
	k.goods.add(f.Goods)
	if (f.Act == ActGiveCell || f.Then == ActGiveCell) && len(f.Also) > 0 {
		if id, ok := f.Also[0].Batch(); ok {
			sum := k.batch(id)
			sum.given++
			if f.Act == ActLookForEggs {
				sum.perhaps++
			}
		}
	}
	switch f.Act {
	case ActCollectCells:
		if id, ok := f.Of.Batch(); ok {
			k.batch(id).collected += int(f.Amount)
		}
	case ActMakeUp:
		if id, ok := f.Of.Batch(); ok {
			k.batch(id).makes = true
		}
	case ActAddBees:
		k.cups += f.Amount
	case ActFeed:
		if k.syrup += f.Amount; f.Amount > 0 {
			k.feeds++
		} else {
			k.fondant++
		}
	case ActNarrowEntrance:
		for _, of := range f.Subjects() {
			k.reducers[of] = true
		}
	case ActCatchQueen:
		k.cages++
	case ActShakeOut:
		k.shaken++
	}
}

// batches are the sums by the number of the batch.
func (k *kitSum) batches(v *book.View) []batchSum {
	slices.SortFunc(k.sums, func(a, b batchSum) int {
		return cmp.Compare(v.Batch(a.batch).Number, v.Batch(b.batch).Number)
	})
	return k.sums
}
