package state

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// The fields of what is chosen on the ground, beside its height, width and name: by how
// many metres to the east and to the north it is moved, and where one of its points is set,
// "2: 12 4.5".
const (
	FeatureMove  = LayoutField + "move"
	FeaturePoint = LayoutField + "corner"
)

// featureFields are the fields by which what is chosen on the ground is changed.
var featureFields = []string{DrawHeight, DrawWidth, DrawLabel, FeatureMove, FeaturePoint}

func featureField(name string) bool { return slices.Contains(featureFields, name) }

// featureAsks are the fields of what is chosen on the ground, with what it has.
func (s State) featureAsks(f book.FeatureDrawn) (asks []GroundAsk) {
	measure := func(v float64) string { return strconv.FormatFloat(v, 'f', -1, 64) }
	is := map[string]string{DrawHeight: measure(f.Height), DrawWidth: measure(f.Width), DrawLabel: f.Label}
	for _, field := range toolOf(f.What).asks() {
		a := s.drawAsk(field, f.What)
		a.Now, a.Says = is[field], "what it has now; another and Enter changes it"
		asks = append(asks, a)
	}
	asks = append(asks, GroundAsk{Word: "move it by, m", Short: true, Field: FeatureMove, Now: "0 0", Says: "metres to the east and to the north, such as 1.5 -2; Enter moves all of it"})
	if n := len(f.Points); n > 1 {
		last := f.Points[n-1]
		asks = append(asks, GroundAsk{Word: "set point to, m", Short: true, Field: FeaturePoint, Now: fmt.Sprintf("%d: %.1f %.1f", n, last.X, last.Y), Says: "the point by its number on the map, then metres to the east and to the north; Enter sets it"})
	}
	last := &asks[len(asks)-1]
	last.Command, last.Does = "change feature", "Change"
	if s.featureTyped() {
		last.Wrong = noChange(s)
	}
	return asks
}

// featureTyped tells whether anything is typed of what is chosen.
func (s State) featureTyped() bool {
	for _, field := range featureFields {
		if s.Typed(field) != "" {
			return true
		}
	}
	return false
}

func noChange(s State) string {
	if why := noFeature(s); why != "" {
		return why
	}
	if !s.featureTyped() {
		return "write another measure, name or place first"
	}
	f, _ := s.featureChosen()
	_, wrong := s.featureChanged(f)
	return wrong
}

// featureChanged is what is chosen as it is typed, or why it cannot be so.
func (s State) featureChanged(f book.FeatureDrawn) (_ book.FeatureDrawn, wrong string) {
	for field, to := range map[string]*float64{DrawHeight: &f.Height, DrawWidth: &f.Width} {
		typed := s.Typed(field)
		v, ok := metresOf(typed)
		if typed != "" && !ok {
			return f, "a height or width is metres from 0 to 1 000, such as 2.5"
		} else if ok {
			*to = v
		}
	}
	if label := s.Typed(DrawLabel); label != "" {
		f.Label = label
	}
	f.Points = append([]book.Point{}, f.Points...)
	if typed := s.Typed(FeaturePoint); typed != "" && !setPoint(f.Points, typed) {
		return f, "write the number of a point and metres to the east and to the north, such as 2: 12 4.5"
	}
	by, ok := pointOf(s.Typed(FeatureMove))
	if s.Typed(FeatureMove) != "" && !ok {
		return f, "write metres to the east and to the north, such as 1.5 -2"
	}
	for i := range f.Points {
		f.Points[i].X += by.X
		f.Points[i].Y += by.Y
	}
	return f, ""
}

// setPoint sets one of the points as typed, "2: 12 4.5"; of an outline the first is its last
// as well.
func setPoint(points []book.Point, typed string) bool {
	number, to, _ := strings.Cut(typed, ":")
	i, err := strconv.Atoi(strings.TrimSpace(number))
	p, ok := pointOf(strings.TrimSpace(to))
	last := len(points) - 1
	if err != nil || !ok || i < 1 || i > last+1 {
		return false
	}
	closed := last > 0 && points[0] == points[last]
	if points[i-1] = p; closed && (i == 1 || i == last+1) {
		points[0], points[last] = p, p
	}
	return true
}

// changedFeature writes down what is chosen as it is typed.
func (s State) changedFeature() (State, []Effect) {
	f, _ := s.featureChosen()
	f, _ = s.featureChanged(f)
	s = s.featureForgotten()
	return s.write(strings.TrimSpace(f.What.String()+" "+f.Label)+" changed on the ground", calendar.Instantly(s.Now), f)
}

// featureForgotten is the window without what was typed of what is chosen.
func (s State) featureForgotten() State {
	for _, field := range featureFields {
		if s.Field(field) != (Field{}) {
			s = s.WithField(field, Field{})
		}
	}
	return s
}
