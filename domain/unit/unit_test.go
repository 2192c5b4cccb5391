package unit_test

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/practice"
	"lidmark/domain/unit"
)

// What the program says, and what a keeper in the US reads.
var told = map[string]string{
	"Feed 0.3 l syrup, inside":          "Feed 0.32 qt syrup, inside",
	"fed 0.3 l and 250 g fondant to A3": "fed 0.32 qt and 8.82 oz fondant to A3",
	"fed 0.3 l; 250 g fondant":          "fed 0.32 qt; 8.82 oz fondant",
	"6 to 9 l":                          "6.3 to 9.5 qt",
	"0.6 l":                             "0.63 qt",
	"a cup of bees: 0.237 l":            "a cup of bees: 0.25 qt",

	"night of 8 °C forecast; best in the evening":            "night of 46 °F forecast; best in the evening",
	"bees on 3 sides on Sun 2 May, a night of 14 °C assumed": "bees on 3 sides on Sun 2 May, a night of 57 °F assumed",
	"incubator of batch 4 at 34.5 °C, 60 % damp":             "incubator of batch 4 at 94.1 °F, 60 % damp",
	"34.5°C":           "94.1°F",
	"34.5 ± 0.5 °C":    "94.1 ± 0.9 °F",
	"12–24 °C":         "54–75 °F",
	"nest 33 to 36 °C": "nest 91 to 97 °F",
	"from -5 to 11 °C": "from 23 to 52 °F",
	"−20 to −5 °C":     "−4 to 23 °F",
	"low -20 °C, high 2 °C, wind 6 m/s, rain 10 mm, sky 0.4": "low -4 °F, high 36 °F, wind 13 mph, rain 0.39 in, sky 0.4",
	"low −18 °C":                                                 "low 0 °F",
	"± 2 °C":                                                     "± 3.6 °F",
	"Full flight when warmer by: 2 °C":                           "Full flight when warmer by: 3.6 °F",
	"No flight when cooler by 4 °C":                              "No flight when cooler by 7.2 °F",
	"27 h later for 2.5 °C less":                                 "27 h later for 4.5 °F less",
	"10.8 h/°C, from 8 to 12":                                    "6 h/°F, from 8 to 12",
	"Move it 5 km or more, or wait until she lays":               "Move it 3.1 mi or more, or wait until she lays",
	"nearer than 3.5 km.":                                        "nearer than 2.2 mi.",
	"Narrow the entrance to 2.5 cm², insulate, feed":             "Narrow the entrance to 0.39 sq in, insulate, feed",
	"entrance 5.0 cm² for 1 500 bees":                            "entrance 0.78 sq in for 1 500 bees",
	"laying since Tue 1 Jun on 6 sides of 2 dm². Catch her":      "laying since Tue 1 Jun on 6 sides of 31 sq in. Catch her",
	"nuc A3 with 6 sides of 2.1 dm²":                             "nuc A3 with 6 sides of 33 sq in",
	"about 0 g of food for 1 250 bees; feed in the evening":      "about 0 oz of food for 1 250 bees; feed in the evening",
	"food 1 250 g":                                               "food 44.1 oz",
	"1 500 m":                                                    "4 920 ft",
	"hedge 3 m (1.2 m wide)":                                     "hedge 9.8 ft (3.9 ft wide)",
	"10 m":                                                       "33 ft",
	"Neighbours count within about 40 m":                         "Neighbours count within about 130 ft",
	"honey 1.2 kg":                                               "honey 2.6 lb",
	"3.0 bees a ml; 1000 bees about 300 ml in keepers' accounts": "3.0 bees a ml; 1000 bees about 10.1 fl oz in keepers' accounts",
	"half sugar by weight at 1.23 kg/l":                          "half sugar by weight at 2.57 lb/qt",
	"615 g/l, 125 g/dm², 400 cells/dm², 125 bees/dm²":            "20.5 oz/qt, 0.284 oz/sq in, 25.8 cells/sq in, 8.06 bees/sq in",
	"15 g/d":                                "0.53 oz/d",
	"not over 24 km/h":                      "not over 15 mph",
	"air at 150 cm":                         "air at 59.1 in",
	"500 litres of syrup: write 0 to 100":   "528 quarts of syrup: write 0 to 106",
	"99 °C in the incubator: write 0 to 60": "210 °F in the incubator: write 32 to 140",
	"2 m²":                                  "22 sq ft",
	"fed 0.946 l":                           "fed 1 qt",
	"fed 283.5 g fondant":                   "fed 10 oz fondant",
	"note, \"gave 2 l\": 0.3 l":             "note, \"gave 2 l\": 0.32 qt",
	"half a sentence \" and 0.3 l":          "half a sentence \" and 0.32 qt",
	"weather of Mon 17 May: low 8 °C, high 22 °C, wind 3 m/s in Hill": "weather of Mon 17 May: low 46 °F, high 72 °F, wind 6.7 mph in Hill",
}

// What is no quantity, or none that the systems differ in.
var untold = []string{
	"", "no queen since Sat 1 May, 1 day", "it takes 6 h, 24 d or 15 min", "16 d 1 h", "60 %", "10–90 %", "1 500 bees", "78 of 100",
	"capped brood 4 palms", "stores 2 of 3", "2 cups of bees added", "L7 l", "A1-A12 done as written, except A3 A9", "A 50 looked 41 laying",
	"A3 n o0 c4 s4 h2 f0.3 /", "f0.3  f250g", "f0.3l", "f0.3 l", "b4 m", "L7 c", "a unit: 0.3l", "14:30 m", "2027-05-15 l", "15.5.2027 l", "1,5 l", "@14:30",
	"write \"f0.3 l\" to feed 2 cells", "“0.3 l”", "„0.3 l“", "1e+99 cm² of entrance: write 0 to 1000", "version 1.2.3 m", "Agric Meteorol 23:205-216 (air)",
	"°C", "l", "the queen is 3 days old; m and l", "0.01 share/d", "3 x 4", "3 larvae", "7 mating nucs", "5 g/x", "4 l/m", "batch 4 to 6", "4 to l", "write s0 to s6", "nearest 5 kmh",
}

func TestUSWords(t *testing.T) {
	for text, want := range told {
		if got := unit.US.Say(text); got != want {
			t.Errorf("Say(%q)\n   = %q\nwant %q", text, got, want)
		}
	}
	for _, text := range untold {
		if got := unit.US.Say(text); got != text {
			t.Errorf("Say(%q) = %q, want it as it is", text, got)
		}
	}
}

// Exact by definition: NIST Special Publication 811 (2008), appendix B.8, and
// Handbook 44, appendix C: inch 25.4 mm, foot 0.3048 m, mile 1.609 344 km,
// liquid quart 0.946 352 946 l, fluid ounce 29.573 529 562 5 ml, avoirdupois
// pound 0.453 592 37 kg, ounce 28.349 523 125 g, square inch 6.4516 cm²,
// square foot 0.092 903 04 m², mile per hour 0.447 04 m/s; boiling water 212 °F.
func TestFactorsArePublished(t *testing.T) {
	for _, c := range []struct {
		metric float64
		unit   string
		us     float64
		want   string
	}{
		{25.4, "mm", 1, "in"},
		{2.54, "cm", 1, "in"},
		{0.3048, "m", 1, "ft"},
		{1.609344, "km", 1, "mi"},
		{0.946352946, "l", 1, "qt"},
		{29.5735295625, "ml", 1, "fl oz"},
		{0.45359237, "kg", 1, "lb"},
		{28.349523125, "g", 1, "oz"},
		{6.4516, "cm²", 1, "sq in"},
		{0.064516, "dm²", 1, "sq in"},
		{0.09290304, "m²", 1, "sq ft"},
		{0.44704, "m/s", 1, "mph"},
		{1.609344, "km/h", 1, "mph"},
		{100, "°C", 212, "°F"},
		{0, "°C", 32, "°F"},
		{-40, "°C", -40, "°F"},
	} {
		v, name := unit.US.Of(c.metric, c.unit)
		if math.Abs(v-c.us) > 1e-12*math.Abs(c.us) || name != c.want {
			t.Errorf("%v %s = %v %s, want %v %s", c.metric, c.unit, v, name, c.us, c.want)
		}
	}
	if v, name := unit.US.Step(5, "°C"); v != 9 || name != "°F" {
		t.Errorf("5 °C more are %v %s more, want 9 °F", v, name)
	}
}

// Every unit in the table of numbers is either the same for both systems or
// one that is reckoned over.
func TestUnitsOfTheNumbers(t *testing.T) {
	same := strings.Fields("h d min o'clock share share/d × weight bees colonies boxes ° eggs/d cells/bee money queens cells combs sides drones alleles")
	same = append(same, "day of week")
	asked := map[string]bool{}
	for r := range practice.All() {
		asked[string(r.Unit)] = true
	}
	for _, u := range same {
		delete(asked, u)
	}
	for u := range asked {
		if _, name := unit.US.Of(1, u); name == u {
			t.Errorf("%q is the same in the US: convert it, or name it among those", u)
		}
	}
	if len(asked) == 0 {
		t.Error("no number has a unit")
	}
}

var units = []string{"l", "litres", "litre", "ml", "°C", "km", "m", "metres", "cm", "mm", "g", "kg", "dm²", "cm²", "m²", "m/s", "km/h", "h/°C", "bees/dm²", "cells/dm²", "g/dm²", "g/l", "kg/l", "g/d", "h", "bees"}

func TestBackUndoesOf(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.SampledFrom([]unit.System{unit.Metric, unit.US}).Draw(t, "system")
		v := rapid.Float64Range(-1e6, 1e6).Draw(t, "value")
		u := rapid.SampledFrom(units).Draw(t, "unit")
		near := func(got float64) bool { return math.Abs(got-v) <= 1e-9*max(1, math.Abs(v)) }
		of, _ := s.Of(v, u)
		step, _ := s.Step(v, u)
		if !near(s.Back(of, u)) || !near(s.StepBack(step, u)) {
			t.Fatalf("%v %s in %v is %v, back %v; as a step %v, back %v", v, u, s, of, s.Back(of, u), step, s.StepBack(step, u))
		}
	})
}

// A figure said is off by no more than the twentieth part, or half of its last
// decimal in degrees.
func TestSaidIsNearlyWhatIs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 99_999).Draw(t, "n")
		said := unit.US.Say(plain(float64(n)/10) + " l")
		v, name, _ := strings.Cut(said, " ")
		want, _ := unit.US.Of(float64(n)/10, "l")
		if got := number(t, v); name != "qt" || math.Abs(got-want) > 0.05*want {
			t.Fatalf("%v l = %s, want about %v qt", float64(n)/10, said, want)
		}
	})
}

func TestSaidOnceIsSaid(t *testing.T) {
	words := rapid.SampledFrom(append([]string{"0.3", "12", "1 500", "to", "–", "±", "\"", "write", ":", "-", " ", "L7", "2 m"}, units...))
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOf(words).Draw(t, "words"), rapid.SampledFrom([]string{"", " "}).Draw(t, "between"))
		if got := unit.Metric.Say(text); got != text {
			t.Fatalf("metric %q is said %q", text, got)
		}
		once := unit.US.Say(text)
		if twice := unit.US.Say(once); twice != once {
			t.Fatalf("%q is said %q, and that %q", text, once, twice)
		}
	})
}

func TestSystemsReadBack(t *testing.T) {
	for _, s := range []unit.System{unit.Metric, unit.US} {
		if got, err := unit.ParseSystem(s.String()); got != s || err != nil {
			t.Errorf("%v reads back as %v, %v", s, got, err)
		}
	}
	if _, err := unit.ParseSystem("troy"); err == nil || err.Error() != `units "troy": use metric or US` {
		t.Errorf("troy: %v", err)
	}
}

func TestUnchangedTextCostsNothing(t *testing.T) {
	for _, s := range []unit.System{unit.Metric, unit.US} {
		text := "A1: due for a look. 14 days old by the calendar, 1 500 bees. Look for eggs"
		if s == unit.Metric {
			text = "Feed 0.3 l syrup, inside; a night of 8 °C"
		}
		if n := testing.AllocsPerRun(10, func() { text = s.Say(text) }); n != 0 {
			t.Errorf("%v: %v allocations, want none", s, n)
		}
	}
}
