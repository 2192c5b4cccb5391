package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// The kinds of a [scene.Ref] on the heads of sections; ID is the [Section.Key].
const (
	HeadRef = "head" // a click selects its nucs
	FoldRef = "fold" // a click folds it, or unfolds it
)

// TableLine is a row of the table: a head or a nuc.
type TableLine struct {
	Head *Section // nil: the row is a nuc
	Nuc  *Nuc
}

// listingKey is what the rows of the table depend on.
type listingKey struct {
	sectionsKey
	sort   Sort
	folded string
}

// Listing are the rows of the table, sorted within each section.
func (s State) Listing() []TableLine {
	k := listingKey{sectionsKey{s.Filled(), s.Filter, s.Heads, s.Week}, s.Sort, s.foldedKeys()}
	return s.Reading().listing(k)
}

// foldedKeys are the folded sections as one text.
func (s State) foldedKeys() string {
	keys := make([]string, 0, len(s.Folded))
	for k := range s.Folded {
		keys = append(keys, k)
	}
	slices.Sort(keys)
	return strings.Join(keys, "\n")
}

func (r *Reading) readListing(k listingKey) (rows []TableLine) {
	if k.by == StandHeads {
		for _, n := range k.sort.Sorted(r, r.filtered(shownKey{k.yard, k.filter})) {
			rows = append(rows, TableLine{Nuc: n})
		}
		return rows
	}
	folded := strings.Split(k.folded, "\n")
	for _, sec := range r.sections(k.sectionsKey) {
		sec.Nucs = k.sort.Sorted(r, sec.Nucs)
		sec.Folded = slices.Contains(folded, sec.Key)
		rows = append(rows, TableLine{Head: &sec})
		if sec.Folded {
			continue
		}
		for _, n := range sec.Nucs {
			rows = append(rows, TableLine{Nuc: n})
		}
	}
	return rows
}

// section is the section of a key, as far as the filter shows its nucs.
func (s State) section(key string) (nucs []book.Subject) {
	f := FilterBy(s.Filter)
	for _, sec := range s.Sections() {
		if sec.Key != key {
			continue
		}
		for _, n := range sec.Nucs {
			if f.Shows(n) {
				nucs = append(nucs, n.Nuc.Nuc.Subject())
			}
		}
	}
	return nucs
}

// headClicked selects the nucs of a section, or adds them.
func (s State) headClicked(r scene.Ref, mods Mods) (State, []Effect) {
	if !mods.Has(Ctrl) {
		s.Selection = Selection{}
	}
	s.Selection, s.Ring = s.Selection.With(s.section(r.ID)...), book.Subject{}
	return s, nil
}

// foldClicked folds a section, or unfolds it.
func (s State) foldClicked(r scene.Ref, _ Mods) (State, []Effect) {
	return s.fold(!s.Folded[r.ID], r.ID), nil
}

// fold is the window with sections folded or not.
func (s State) fold(folded bool, keys ...string) State {
	next := map[string]bool{}
	for k := range s.Folded {
		next[k] = true
	}
	for _, k := range keys {
		if next[k] = true; !folded {
			delete(next, k)
		}
	}
	s.Folded = next
	return s
}

// foldChosen folds the section of the nuc the keys stand on, or unfolds it.
func (s State) foldChosen() State {
	n := s.cursor()
	for _, sec := range s.Sections() {
		if slices.Contains(sec.Nucs, n) {
			return s.fold(!sec.Folded, sec.Key).revealed()
		}
	}
	return s
}

// foldAll folds all sections, or unfolds them where all are.
func (s State) foldAll() State {
	var keys []string
	folded := true
	for _, sec := range s.Sections() {
		keys, folded = append(keys, sec.Key), folded && sec.Folded
	}
	return s.fold(!folded, keys...)
}

// standUnder is the command that puts the nucs of Yard under heads. In stand order the
// table is sorted so too.
func standUnder(h Heads) func(State) (State, []Effect) {
	return pure(func(s State) State {
		if h == StandHeads && s.Pane == Table {
			s.Sort = Sort{By: ByPlace}
		}
		s.Heads, s.Menu, s.Scroll = h, NoMenu, nil
		return s
	})
}

func noHeads(s State) string {
	switch why := noNucs(s); {
	case why != "":
		return why
	case s.Room != Yard || s.Pane == Map:
		return "no heads are shown"
	case s.Pane == Table && s.Heads == StandHeads:
		return "the table has no heads; choose what nucs stand together by"
	default:
		return ""
	}
}

func noChosenHead(s State) string {
	if why := noHeads(s); why != "" {
		return why
	}
	if s.cursor() == nil {
		return "choose a nuc of the section first"
	}
	return ""
}

func noLids(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Room != Yard || s.Pane == Map {
		return "lids, wall and table have heads"
	}
	return ""
}

// noSigns is why a legend cannot be opened, nor folded: no row that holds it.
func noSigns(s State) string {
	if s.Room == Yard && s.Book != nil && s.Layout().MapTurns() {
		return ""
	}
	return noLids(s)
}

// headsCommands put the nucs of Yard under heads, and fold those.
var headsCommands = []Command{
	{Name: "heads", Does: "what nucs stand together by", Keys: "Alt+G", Why: noLids, Do: menu(HeadsMenu)},
	{Name: "heads stand order", Does: "in stand order", Why: noLids, Do: standUnder(StandHeads)},
	{Name: "heads yard", Does: "by yard", Why: noLids, Do: standUnder(YardHeads)},
	{Name: "heads batch", Does: "by batch", Why: noLids, Do: standUnder(BatchHeads)},
	{Name: "heads mother line", Does: "by mother line", Why: noLids, Do: standUnder(MotherHeads)},
	{Name: "heads due", Does: "by when work is due", Why: noLids, Do: standUnder(DueHeads)},
	{Name: "heads condition", Does: "by condition", Why: noLids, Do: standUnder(ConditionHeads)},
	{Name: "fold", Does: "fold or unfold the chosen one's head", Keys: "Alt+F", Why: noChosenHead, Do: pure(State.foldChosen)},
	{Name: "fold all", Does: "fold or unfold all heads", Keys: "Alt+Shift+F", Why: noHeads, Do: pure(State.foldAll)},
	{Name: "signs", Does: "all signs and what they mean", Why: noSigns, Do: pure(State.signsTurned)},
}

// signsTurned is the window with all signs told, or not any more: on a small map in a list
// over it, which has nothing to do with the legend of the lids.
func (s State) signsTurned() State {
	if s.Layout().MapTurns() {
		s.AllSigns, s.Menu = !s.AllSigns, NoMenu
	} else {
		s.Signs = !s.Signs
	}
	return s
}

// SignsTold tells whether the list of all signs lies over a small map.
func (s State) SignsTold() bool { return s.AllSigns && s.Room == Yard && s.Layout().MapTurns() }

// SignsRef is what stands for the list of all signs over a small map.
var SignsRef = scene.Ref{Kind: "note", ID: "signs"}

// signsLeft is the window without the list of all signs, unless r is of it.
func (s State) signsLeft(r scene.Ref) State {
	if r != SignsRef && r != CommandOf("signs") {
		s.AllSigns = false
	}
	return s
}
