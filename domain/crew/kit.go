package crew

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Kits are what each person of a day takes along for his own pieces of work, by sheet;
// none where he needs nothing. Cages for the cells that no nuc is given go with who
// collects them.
func (d Day) Kits(j *rules.Judged) [][]rules.KitLine {
	parts := make([][]rules.Finding, len(d.Sheets))
	for i, s := range d.Sheets {
		parts[i] = s.findings()
	}
	return j.Kits(parts, d.On)
}

// findings are those that a person's pieces of work answer, narrowed to what he does.
func (s Sheet) findings() (all []rules.Finding) {
	for _, v := range s.Visits {
		for _, w := range v.Work {
			all = append(all, rules.FindingsOf(w.Task.Findings, map[book.Subject]bool{w.Of: true})...)
		}
	}
	return all
}

// Free are the people for whom a day has no work.
func (d Day) Free() (all []Hand) {
	for _, s := range d.Sheets {
		if len(s.Visits) == 0 {
			all = append(all, s.Hand)
		}
	}
	return all
}
