package yard

import "lidmark/domain/book"

// Door is an entrance on the ground, that of a nuc or of a full-size colony.
type Door struct {
	At      book.Point // m
	Bearing float64    // degrees clockwise from north; of a colony nobody knows it
	Mark    Mark
	Bees    float64 // 0: nobody knows
	Colony  bool
	Stand   int // of a nuc: its stand in the layout
	Nuc     int // of a nuc: where it is among those of the stand
}

// Doors are the entrances of a layout, of the nucs in the order of the stands and
// then of the colonies.
func (l Layout) Doors(apart Spacing) []Door {
	doors := make([]Door, 0, l.Nucs()+len(l.Colonies))
	for i := range l.Stands {
		s := &l.Stands[i]
		for k := range s.Nucs {
			doors = append(doors, s.door(i, k, apart))
		}
	}
	for _, c := range l.Colonies {
		doors = append(doors, Door{At: c.At, Bees: c.Bees, Colony: true})
	}
	return doors
}

// Door is the entrance of a nuc by its stand in the layout and where it is among
// those of the stand.
func (l Layout) Door(stand, nuc int, apart Spacing) Door {
	return l.Stands[stand].door(stand, nuc, apart)
}

func (s *Stand) door(stand, nuc int, apart Spacing) Door {
	n := &s.Nucs[nuc]
	return Door{
		At: s.On(n.Place, apart), Bearing: n.Bearing + s.Turn, Mark: n.Mark, Bees: n.Bees, Stand: stand, Nuc: nuc,
	}
}
