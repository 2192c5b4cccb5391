package state

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/review"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
)

// ReviewSheet is a review as the room lists it. It does not change.
type ReviewSheet struct {
	*review.Review
	Base  review.Hand // what the book says is in hand
	key   reviewKey
	rows  []ReviewRow // folded, the worst first
	at    map[book.NucID]int
	sees  [7]bool             // parts of strips that are in the list
	shows map[ReviewSign]bool // signs of what is done in it
	wide  float64             // of the widest name, dp
	folds float64             // of the widest [ReviewSheet.Together], dp

	longest [2]ReviewSaid // the longest words without and with a note

	listed func(reviewList) []ReviewRow
}

// reviewList is how the list is shown: of which yard, and which lines are open.
type reviewList struct {
	yard book.YardID
	open string // their keys
}

// ReviewRow is a row of the list: a nuc, or the line of like nucs.
type ReviewRow struct {
	Nucs   []int  // their places among the nucs of the review
	Fold   string // of a line of several: its key
	Within bool   // it stands below the line of its like
}

// sheetOf lists a review. Nucs of which one thing is as good as certain, and with
// which the same is done for the same reason, share a line; what was decided goes to the
// end.
func sheetOf(r *review.Review, base review.Hand, key reviewKey) *ReviewSheet {
	sheet := &ReviewSheet{Review: r, Base: base, key: key, at: make(map[book.NucID]int, len(r.Nucs)), shows: map[ReviewSign]bool{}}
	sheet.listed = lately(sheet.list)
	lines := map[string]int{}
	var decided []ReviewRow
	for i, n := range r.Nucs {
		sheet.at[n.Nuc.Nuc] = i
		if n.Decide || n.Decided {
			sheet.wide = max(sheet.wide, Reckoner{}.Width(n.NucNamed.Name, ReviewName, scene.Bold))
			sheet.notes(n, n.Ways[r.This.Chosen[i]])
		}
		switch {
		case n.Decided:
			decided = append(decided, ReviewRow{Nucs: []int{i}})
			continue
		case !n.Decide:
			continue
		case !n.Sure:
			sheet.rows = append(sheet.rows, ReviewRow{Nucs: []int{i}})
			continue
		}
		use := n.Ways[r.This.Chosen[i]]
		fold := fmt.Sprint("\n", surest(n.Chances), " ", n.Yard, " ", r.Title(use), " ", n.Why, "\n") // in Open no key is part of another
		at, ok := lines[fold]
		if !ok {
			at = len(sheet.rows)
			lines[fold] = at
			sheet.rows = append(sheet.rows, ReviewRow{Fold: fold})
		}
		sheet.rows[at].Nucs = append(sheet.rows[at].Nucs, i)
	}
	wide := func(said string) float64 { return Reckoner{}.Width(said, ReviewName, scene.Bold) }
	for _, row := range sheet.rows {
		if len(row.Nucs) > 1 {
			sheet.folds = max(sheet.folds, wide(sheet.Together(row, func(said string) bool { return wide(said) <= reviewNamesMost })))
		}
	}
	sheet.rows = append(sheet.rows, decided...)
	return sheet
}

// ChanceShown is the chance from which a part of a strip is drawn.
const ChanceShown = 0.004

// ChancePart is a part of a strip of chances.
type ChancePart struct {
	Look CoursePart // how it looks: as on the card
	Word string
	Says string // where that is more
	P    float64
}

// ChanceParts are the parts of a strip, always in this order.
func ChanceParts(c course.Chances) [7]ChancePart {
	return [...]ChancePart{
		{LayingPart, "laying", "laying", c.Lays()},
		{MatedPart, "mated", "mated, not laying yet", c.Mated + c.OwnMated},
		{VirginPart, "virgin", "virgin, or the cell given", c.Cell + c.Virgin},
		{OwnPart, "own virgin or cell", "a virgin or a cell of its own", c.OwnCell + c.OwnVirgin},
		{NonePart, "no queen", "no queen", c.None},
		{DronePart, "drone layer", "drone layer", c.DroneLayer},
		{WorkersPart, "laying workers", "laying workers", c.LayingWorkers},
	}
}

// surest is the place of the greatest part.
func surest(c course.Chances) (most int) {
	parts := ChanceParts(c)
	for i, p := range parts {
		if p.P > parts[most].P {
			most = i
		}
	}
	return most
}

// Decisions is how many nucs of a yard, or of all, need a decision and have none.
func (r *ReviewSheet) Decisions(yard book.YardID) (all int) {
	for _, row := range r.rows {
		for _, i := range row.Nucs {
			if n := r.Nucs[i]; n.Decide && r.in(i, yard) {
				all++
			}
		}
	}
	return all
}

func (r *ReviewSheet) in(i int, yard book.YardID) bool {
	return yard.IsZero() || r.Nucs[i].Yard == yard
}

// ReviewRows are the rows of the list as it is folded, of the yard shown.
func (s State) ReviewRows() []ReviewRow {
	sheet, _ := s.ReviewSheet()
	if sheet == nil {
		return nil
	}
	return sheet.listed(reviewList{s.Filled(), s.Reviewing.Open})
}

func (r *ReviewSheet) list(as reviewList) (all []ReviewRow) {
	for _, row := range r.rows {
		if !r.in(row.Nucs[0], as.yard) {
			continue
		}
		if len(row.Nucs) == 1 {
			row.Fold = ""
			all = append(all, row)
			continue
		}
		all = append(all, row)
		if strings.Contains(as.open, row.Fold) {
			for _, i := range row.Nucs {
				all = append(all, ReviewRow{Nucs: []int{i}, Within: true})
			}
		}
	}
	return all
}

// subjects are the nucs of a row.
func (r *ReviewSheet) subjects(row ReviewRow) []book.Subject {
	all := make([]book.Subject, len(row.Nucs))
	for i, n := range row.Nucs {
		all[i] = r.Nucs[n].Nuc.Nuc.Subject()
	}
	return all
}

// ReviewWay is the way of a nuc: the one the keeper chose for it, else that of the best
// use of what is in hand. Own tells that the keeper chose it.
func (s State) ReviewWay(i int) (w review.Way, own bool) {
	sheet, _ := s.ReviewSheet()
	return sheet.Way(i, s.Reviewing)
}

// Way is [State.ReviewWay], asked of many.
func (r *ReviewSheet) Way(i int, set Reviewing) (w review.Way, own bool) {
	n := &r.Nucs[i]
	if chosen, ok := set.Ways[n.Nuc.Nuc]; ok {
		if at := slices.IndexFunc(n.Ways, func(w review.Way) bool { return r.ChoiceOf(w) == chosen }); at >= 0 {
			return n.Ways[at], true
		}
	}
	return n.Ways[r.This.Chosen[i]], false
}

// sameWay tells whether two ways do the same, whatever they are worth.
func sameWay(a, b review.Way) bool {
	return a.Kind == b.Kind && a.Ware == b.Ware && a.With == b.With
}

// ReviewDecided is what stands decided for a nuc of the review, as the book has it
// now.
func (s State) ReviewDecided(i int) (book.Planned, bool) {
	sheet, _ := s.ReviewSheet()
	return sheet.decided(s.Reading(), i)
}

func (r *ReviewSheet) decided(now *Reading, i int) (book.Planned, bool) {
	n := now.Nuc(r.Nucs[i].Nuc.Nuc)
	if n == nil || !rules.PlanStands(n.Nuc, now.Day, now.Numbers()) {
		return book.Planned{}, false
	}
	return n.Plan, true
}

// ReviewUses are the ways with a nuc, the best first, as the card lists them: of
// those that give like things the best, and the one that is taken.
func (s State) ReviewUses(i int) (uses []review.Way) {
	sheet, _ := s.ReviewSheet()
	taken, _ := s.ReviewWay(i)
	ways := slices.Clone(sheet.Nucs[i].Ways)
	slices.SortStableFunc(ways, func(a, b review.Way) int {
		return cmp.Or(cmp.Compare(boolInt(a.Barred), boolInt(b.Barred)), -cmp.Compare(boolInt(!sheet.lacks(a)), boolInt(!sheet.lacks(b))), -cmp.Compare(a.Worth, b.Worth))
	})
	for _, w := range ways {
		like := slices.IndexFunc(uses, func(u review.Way) bool {
			return u.Kind == w.Kind && u.Gives() == w.Gives() && (!u.Gives() || sheet.Hand.Wares[u.Ware-1].Virgin == sheet.Hand.Wares[w.Ware-1].Virgin)
		})
		switch {
		case like < 0:
			uses = append(uses, w)
		case sameWay(w, taken):
			uses[like] = w
		}
	}
	return uses
}

// lacks tells whether a way gives what is not in hand.
func (r *ReviewSheet) lacks(w review.Way) bool { return r.Hand.Lacks(w) }

// BeesWords say from which colonies bees can be had, and how many cups.
func (r *ReviewSheet) BeesWords() string {
	cups, from := r.Bees()
	if cups == 0 {
		return "type the cups you have"
	}
	names := book.Together(from)
	return fmt.Sprintf("%s can give %s this week: type the cups you take", names, course.Count(cups, "cup"))
}

// ReviewChosen is the place of the nuc chosen last among those of the review;
// false where none is chosen that stands in the list.
func (s State) ReviewChosen() (int, bool) {
	sheet, _ := s.ReviewSheet()
	id, isNuc := s.Selection.Last().Nuc()
	if sheet == nil || !isNuc {
		return 0, false
	}
	i, ok := sheet.at[id]
	return i, ok
}
