package weather_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/practice"
	"lidmark/domain/weather"
)

// The table is the published formula of Parton and Logan 1981 for days of 16 and
// 14 hours with the sun highest at 12, its night not stretched: by day we agree,
// and by night once the stretching is taken back.
func TestTheCourseOfADay(t *testing.T) {
	var n practice.Numbers
	decay, rest := n.Get(practice.DiurnalNightDecay), n.Get(practice.DiurnalLowLag)
	all := rows(t, "diurnal-parton-logan.csv")
	for _, c := range []struct {
		column            string
		long, high, least float64
	}{{"T_day16h_Tx25_Tn10", 16, 25, 10}, {"T_day14h_Tx20_Tn8", 14, 20, 8}} {
		rise := 12 - c.long/2
		day := weather.NewDiurnal(c.least, c.high, rise, c.long, n)
		atSet := day.At(rise + c.long)
		for _, row := range all {
			hour := number(t, row["hour"])
			got := day.At(hour)
			if hour < rise+rest || hour > rise+c.long {
				left := math.Exp(-decay * (24 - c.long + rest) / (24 - c.long)) // where the printed night ends
				got = c.least + (got-c.least)*(1-left) + (atSet-c.least)*left
			}
			if want := number(t, row[c.column]); math.Abs(got-want) > 6e-5 {
				t.Errorf("day of %g h at %g: %.4f °C, want %.4f", c.long, hour, got, want)
			}
		}
	}
	if len(all) != 24 {
		t.Fatalf("%d hours", len(all))
	}
}

// Through any day the temperature lies between low and high, without a step, and
// is a number in polar day and night.
func TestADayHasNoStep(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		low := rapid.Float64Range(-30, 30).Draw(t, "low")
		high := low + rapid.Float64Range(0, 25).Draw(t, "range")
		long := rapid.SampledFrom([]float64{0, 4, 8, 12, 14, 16, 20, 24}).Draw(t, "length")
		day := weather.NewDiurnal(low, high, 12-long/2, long, practice.Numbers{})
		const step = 0.01
		for h := 0.0; h+step <= 24; h += step {
			c := day.At(h)
			if !(c >= low-1e-9 && c <= high+1e-9) {
				t.Fatalf("%g °C at %g h of a day from %g to %g", c, h, low, high)
			}
			if d := math.Abs(day.At(h+step) - c); d > 0.06*(high-low)+1e-9 && long > 2 {
				t.Fatalf("a step of %g °C at %g h", d, h)
			}
		}
	})
}

// FAO-56 equation 47 with its own example: 3.2 m/s at 10 m are 2.4 m/s at 2 m
// (example 14). The table is the logarithmic profile over open grass, roughness
// 0.03 m, which is rougher than the paper's.
func TestWindNearTheGround(t *testing.T) {
	if w := weather.At2m(3.2, 10); math.Abs(w-2.4) > 0.05 {
		t.Errorf("3.2 m/s at 10 m are %.2f at 2 m", w)
	}
	for _, row := range rows(t, "wind-logprofile.csv") {
		height := number(t, row["height_m"])
		if height < 1.5 {
			continue
		}
		got := 1 / weather.At10m(1, height)
		low, high := number(t, row["z0_0.03_open_grass"]), number(t, row["ratio_to_10m_z0_0.005"])
		if got < low-0.001 || got > high+0.001 {
			t.Errorf("wind at %g m is %.4f of that at 10 m, want %.4f to %.4f", height, got, low, high)
		}
	}
}
