package state

import "lidmark/domain/book"

// Next is what to do next in a book that has just begun: a sentence, and the
// commands that do it, the likelier first. The zero Next is that of a book under
// way.
type Next struct {
	Words    string
	Commands []string
}

// Next is what to do next.
func (s State) Next() Next {
	if s.Book == nil || s.Book.ReadOnly != "" {
		return Next{}
	}
	r := s.Present()
	madeUp := 0
	for _, n := range r.Nucs {
		madeUp += boolInt(n.Presumed.Condition != book.Empty)
	}
	batches := len(r.Batches())
	switch {
	case len(r.Nucs) == 0:
		return Next{"Set up boxes: their names, like A1-A12", []string{"next boxes"}}
	case madeUp == 0 && batches == 0:
		return Next{"Make up nucs, or write down a graft", []string{"next nucs", "next graft"}}
	case madeUp == 0:
		return Next{"Make up the nucs for its cells", []string{"next nucs"}}
	case batches == 0:
		return Next{"On the evening of a graft write it down", []string{"next graft"}}
	case len(r.Plan().Stops) == 0 && s.untold(r):
		return Next{"Give the nucs their cells; for one type A1 and c1", []string{"next cells"}}
	}
	return Next{}
}

// untold tells whether no nuc holds anything of a batch yet.
func (s State) untold(r *Reading) bool {
	for _, n := range r.Nucs {
		if !n.Holds.Batch.IsZero() {
			return false
		}
	}
	return true
}

// nextCommands do what is next in a book that has just begun: they take what it is
// about and open the form.
var nextCommands = []Command{
	nextStep("next boxes", "Add boxes", "add boxes", nil),
	nextStep("next nucs", "Make up the nucs", "make up", func(c book.Condition) bool { return c == book.Empty }),
	nextStep("next graft", "Write down a graft", "graft", nil),
	nextStep("next cells", "Give cells", "give cell", func(c book.Condition) bool { return c == book.NoQueen }),
}

// nextStep is a record of the yard, or of the nucs that are as it wants them.
func nextStep(name, word, record string, of func(book.Condition) bool) Command {
	taken := func(s State) State {
		s.Selection = Selection{}
		if of == nil {
			return s
		}
		for _, n := range s.Present().Nucs {
			if of(n.Presumed.Condition) {
				s.Selection = s.Selection.With(n.Nuc.Nuc.Subject())
			}
		}
		return s
	}
	return Command{
		Name: name, Word: word, Does: word,
		Why: func(s State) string {
			if why := noPen(s); why != "" {
				return why
			}
			rec, _ := RecordNamed(record)
			next := taken(s)
			if of != nil && next.Selection.Len() == 0 {
				return "no nuc is ready for it"
			}
			return rec.command().Reason(next)
		},
		Do: func(s State) (State, []Effect) {
			s = taken(s)
			s.then, s.Sheet = record, s.Layout().Over
			return s, nil
		},
	}
}
