package paper

import (
	"math"
	"testing"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

func emptySheet() *sheet {
	var none *state.Book
	return newSheet("Empty", none.On(time.Time{}, 0), Options{})
}

// TestWidthsAreThoseOfTheDocument: what we measure is what the library sets, to
// its rounding of a thousandth of the size a character.
func TestWidthsAreThoseOfTheDocument(t *testing.T) {
	s := emptySheet()
	pdf := fpdf.New("P", "mm", "A4", "")
	for w := range cuts {
		weight := scene.Weight(w)
		pdf.AddUTF8FontFromBytes(cuts[w].family, "", *cuts[w].file)
		pdf.SetFont(cuts[w].family, "", 10)
		for _, text := range []string{"Look for eggs", "34.5 °C – 0.3 l", "Žluťásek Ωμέγα Пасека", "1010101010"} {
			got, want := s.Width(text, 10, weight), pdf.GetStringWidth(text)
			if most := float64(len(text)) * 10 * point / 1000; math.Abs(got-want) > most {
				t.Errorf("%q in %s is %.3f mm wide, the library says %.3f", text, cuts[w].family, got, want)
			}
		}
	}
	if pdf.Error() != nil {
		t.Fatal(pdf.Error())
	}
}

// TestMeasuringTakesNoMemory: every line of a sheet is measured several times.
func TestMeasuringTakesNoMemory(t *testing.T) {
	s := emptySheet()
	const text = "17 days old by the calendar"
	s.Width(text, 9, scene.Regular)
	if n := testing.AllocsPerRun(100, func() { s.Width(text, 9, scene.Regular) }); n > 0 {
		t.Errorf("measuring a line takes %.0f allocations", n)
	}
}
