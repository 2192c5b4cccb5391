package unit

import "fmt"

// System is a system of units. The zero System is metric, and changes nothing.
type System uint8

// The systems. US are the customary units of the United States: quarts,
// degrees Fahrenheit, miles, feet, inches, pounds and ounces.
const (
	Metric System = iota
	US
)

var systems = [...]string{Metric: "metric", US: "US"}

// String is the system's name, as it is shown and kept.
func (s System) String() string { return systems[min(s, US)] }

// ParseSystem reads a system's name. The error tells which there are.
func ParseSystem(name string) (System, error) {
	for s, n := range systems {
		if n == name {
			return System(s), nil
		}
	}
	return Metric, fmt.Errorf("units %q: use metric or US", name)
}

// Of is a value of a metric unit in the system, and that system's unit. A unit
// that no measure has, such as "h" or "bees", comes back as it is.
func (s System) Of(v float64, unit string) (float64, string) {
	if r := s.row(unit); r != nil {
		return r.of(v), r.us
	}
	return v, unit
}

// Back is a value typed in the system, in the metric unit given: Back undoes Of.
func (s System) Back(v float64, unit string) float64 {
	if r := s.row(unit); r != nil {
		return (v - r.zero) * r.one
	}
	return v
}

// Step is a difference of two values of a metric unit, in the system: 4 °C
// cooler is 7.2 °F cooler, where 4 °C itself is 39.2 °F.
func (s System) Step(v float64, unit string) (float64, string) {
	if r := s.row(unit); r != nil {
		return v / r.one, r.us
	}
	return v, unit
}

// StepBack is a difference typed in the system, in the metric unit given.
func (s System) StepBack(v float64, unit string) float64 {
	if r := s.row(unit); r != nil {
		return v * r.one
	}
	return v
}

func (s System) row(unit string) *row {
	if s == Metric {
		return nil
	}
	return find(unit)
}
