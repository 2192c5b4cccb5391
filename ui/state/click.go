package state

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// clicked does what a click on a thing of the scene means.
func (s State) clicked(r scene.Ref, mods Mods) (State, []Effect) {
	if s.Keys {
		s.Keys = false
		return s, nil
	}
	if s.Asked != nil {
		if r.Kind == AnswerRef {
			return s.answered(r.ID)
		}
		return s, nil
	}
	menu := s.Menu
	s.Menu = NoMenu
	switch r.Kind {
	case CommandRef:
		if menu == YardMenu && r.ID == "yards" || menu == LayerMenu && r.ID == "layers" || menu == WriterMenu && r.ID == "writer" {
			return s, nil
		}
		return run(s, r.ID)
	case SortRef:
		if c, ok := columnNamed(r.ID); ok {
			s.Sort = s.Sort.by(c, mods.Has(Shift))
		}
		return s, nil
	case NumberRef:
		return s.numberClicked(r.ID), nil
	case CopyRef:
		return s.restored(r.ID)
	case GroupRef:
		return s.grouped(r.ID), nil
	case YardRef:
		return s.shows(yardOf(r.ID)), nil
	case WriterRef:
		s.Pen.Writer = r.ID
		s.Prefs = s.recalled(s.Book.Path, r.ID)
		return s, nil
	case TaskRef, TickRef, DoneRef:
		if menu != NoMenu {
			return s, nil
		}
		return s.lineClicked(r)
	case RowRef:
		return s.rowClicked(r), nil
	case RecentRef:
		return s, []Effect{OpenBook{r.ID}}
	case StepRef:
		return s.stepClicked(r), nil
	case ColumnRef:
		return s.columnClicked(r), nil
	case PaneRef:
		s.Selection, s.Sheet, s.Focus = Selection{}, false, r
		return s, nil
	case FieldRef:
		return s.WithField(r.ID, FieldOf(s.Field(r.ID).Text)).focused(r), nil
	case CaretRef:
		return s.caretPut(r, mods.Has(Shift)), nil
	case ChoiceRef:
		return s.chosenAnswer(r), nil
	case SuggestRef:
		return s.suggested(r.ID, r.Part, s.Typed(r.ID)), nil
	case LinkRef:
		return s.followed(r), nil
	case StrikeRef:
		return s.struckLine(r.ID)
	}
	if menu != NoMenu {
		return s, nil
	}
	return s.pointed(SubjectOf(r), mods.Has(Ctrl)), nil
}

// yardOf is the yard of an id; the zero yard for none.
func yardOf(id string) (yard book.YardID) {
	if yard.UnmarshalText([]byte(id)) != nil {
		return book.YardID{}
	}
	return yard
}

// pointed selects a subject; a stand stands for its nucs. Where the card has no
// room beside the pane, a second click lays it over the pane.
func (s State) pointed(sub book.Subject, add bool) State {
	switch {
	case sub.IsZero():
	case sub.Kind == book.KindStand:
		if !add {
			s.Selection = Selection{}
		}
		for _, n := range s.Reading().Nucs {
			if n.Stand.Subject() == sub {
				s.Selection = s.Selection.With(n.Nuc.Nuc.Subject())
			}
		}
	case add:
		s.Selection = s.Selection.Toggled(sub)
	default:
		s.Sheet = s.Layout().Over && s.Selection.Len() == 1 && s.Selection.Has(sub)
		s.Selection = Select(sub)
	}
	return s
}

// copyShown puts the shown nucs on the clipboard as lines with tabs.
func copyShown(s State) (State, []Effect) {
	r := s.Reading()
	var b strings.Builder
	b.WriteString("nuc\tyard\tholds\tbatch\tage, d\tlast entry\tdue\tneeds you\n")
	for _, n := range s.walk() {
		batch, due, age := "", "", ""
		if !n.Holds.Batch.IsZero() {
			batch = fmt.Sprint(r.View.Batch(n.Holds.Batch).Number)
		}
		if n.Due != nil {
			due = n.Due.Act.String() + " " + n.DueDay.String()
		}
		if !n.Presumed.Emerged.IsZero() {
			age = fmt.Sprint(n.Presumed.Age)
		}
		why := ""
		if n.NeedsYou {
			why = n.Findings[0].What
		}
		fmt.Fprintf(&b, "%s\t%s\t%s\t%s\t%s\t%s\t%s\t%s\n", n.Name, r.View.Yard(n.Yard).Name,
			n.Presumed.Condition, batch, age, r.DayOf(n.LastEntry.Instant), due, why)
	}
	return s, []Effect{CopyText{b.String()}}
}
