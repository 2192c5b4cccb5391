package weather

import "math"

// sample is a short time of a day: how much of an hour it is worth to fliers at
// its hour, sky and rain, and what of that warmth and wind leave is reckoned.
type sample struct{ worth, celsius, wind float64 }

// profile is a day as fliers have it. What the wind is at 2 m.
type profile []sample

// fit are the fit hours of a day that comes as it is told.
func (p profile) fit(l *limits) float64 { return p.blown(l, 1).warmed(l, 0) }

// expected are the mean of the fit hours of a day that is warmer than told by so many °C, whose
// temperature strays by a standard deviation in °C and whose wind by a share of itself, and the
// chance of at least one, for a day that leaves part of them.
//
// Both are sums over fixed points and not simulated: 21 temperatures times 5
// winds, each as likely as the others (the middles of equal shares of a normal
// distribution). A simulation gives the same to 0.03 h (a test compares).
func (p profile) expected(l *limits, warmer, strays, winds float64, parts ...part) (hours, chance float64) {
	each := 1 / float64(len(byWarmth)*len(byWind))
	for _, w := range byWind {
		blown := p.blown(l, max(0, 1+w*winds))
		for _, z := range byWarmth {
			h := blown.warmed(l, warmer+z*strays)
			for _, of := range parts {
				hours += each * of.chance * h * of.left
				if h*of.left >= 1 {
					chance += each * of.chance
				}
			}
		}
	}
	return hours, min(chance, 1)
}

// blown is what so many times the wind leaves of a day; it has none itself.
func (p profile) blown(l *limits, winds float64) profile {
	left := make(profile, 0, len(p))
	for _, s := range p {
		if worth := s.worth * l.breeze(s.wind*winds); worth > 0 {
			left = append(left, sample{worth: worth, celsius: s.celsius})
		}
	}
	return left
}

// warmed are the fit hours of a day without wind that is warmer by so many °C.
func (p profile) warmed(l *limits, warmer float64) (h float64) {
	for _, s := range p {
		h += s.worth * l.warmth(s.celsius+warmer)
	}
	return h
}

// part is a kind of day, how likely it is, and what it leaves of a fit hour.
type part struct{ chance, left float64 }

// whole is a day that is as it is told.
var whole = part{1, 1}

// byWarmth and byWind are how far temperature and wind stray, in standard
// deviations.
var byWarmth, byWind = middles(21), middles(5)

// middles are the middles of n equal shares of the standard normal distribution.
func middles(n int) []float64 {
	z := make([]float64, n)
	for i := range z {
		z[i] = math.Sqrt2 * math.Erfinv(2*(float64(i)+0.5)/float64(n)-1)
	}
	return z
}
