package siting

import (
	"fmt"
	"strconv"
	"strings"
)

// Title names the stands of a step: "Row N, 8 singles".
func (s Step) Title() string {
	switch {
	case s.Added && len(s.Letters) == 1:
		return "New stand " + s.Letters[0]
	case s.Added:
		return "New stands " + Names(s.Letters)
	case s.Row != "" && len(s.Letters) == s.Nucs:
		return fmt.Sprintf("Row %s, %s", s.Row, counted(s.Nucs, "single"))
	case s.Row != "":
		return fmt.Sprintf("Row %s, %s", s.Row, counted(s.Nucs, "nuc"))
	case len(s.Letters) == 1:
		return "Stand " + s.Letters[0]
	}
	return "Stands " + Names(s.Letters)
}

// Names are letters of stands in a few words, with those of a row that follow each
// other as "N1–N8".
func Names(letters []string) string {
	var out []string
	for i := 0; i < len(letters); {
		k := i + 1
		for k < len(letters) && follows(letters[k-1], letters[k]) {
			k++
		}
		if k-i > 2 {
			out = append(out, letters[i]+"–"+letters[k-1])
		} else {
			out = append(out, letters[i:k]...)
		}
		i = k
	}
	return strings.Join(out, ", ")
}

// follows tells whether a letter of a row is the next after another.
func follows(a, b string) bool {
	stemA, stemB := stem(a), stem(b)
	n, err := strconv.Atoi(a[len(stemA):])
	return err == nil && stemA == stemB && b[len(stemB):] == strconv.Itoa(n+1)
}

// stem is a letter without the figure of a row.
func stem(letter string) string { return strings.TrimRight(letter, "0123456789") }

// Words say what is done, and what it does to drift.
func (s Step) Words() string {
	var does []string
	if s.Carried > 0 {
		does = append(does, fmt.Sprintf("%s carried %s%s", s.some(s.Carried), s.metres(), s.mended()))
	}
	if s.Turned > 0 {
		does = append(does, s.some(s.Turned)+" turned"+s.angle())
	}
	if s.Faced > 0 {
		does = append(does, s.some(s.Faced)+" turned on the stand")
	}
	if s.Painted > 0 {
		does = append(does, counted(s.Painted, "front")+" marked anew")
	}
	if s.Windy > 0 {
		does = append(does, counted(s.Windy, "front")+" out of the wind")
	}
	if s.Added {
		return strings.Join(append(does, fmt.Sprintf("drift %.0f of 100", 100*s.Drift)), ", ")
	}
	return fmt.Sprintf("%s; drift %.0f → %.0f of 100", strings.Join(does, ", "), 100*s.DriftWas, 100*s.Drift)
}

// some is how many of the nucs.
func (s Step) some(n int) string {
	if n == s.Nucs {
		if n == 1 {
			return "the nuc"
		}
		return "all"
	}
	return fmt.Sprintf("%d of %d", n, s.Nucs)
}

func (s Step) metres() string {
	if near, far := fmt.Sprintf("%.1f", s.Nearest), fmt.Sprintf("%.1f", s.Furthest); near != far {
		return near + " to " + far + " m"
	}
	return fmt.Sprintf("%.1f m", s.Furthest)
}

// mended says that stands come to where boxes may stand.
func (s Step) mended() string {
	switch {
	case s.Mended == 0:
		return ""
	case s.Mended == len(s.Letters):
		return " to where boxes may stand"
	}
	return fmt.Sprintf(", %s to where boxes may stand", counted(s.Mended, "stand"))
}

func (s Step) angle() string {
	switch {
	case s.Degrees == 0:
		return ""
	case s.Degrees > circle/2:
		return fmt.Sprintf(" by %.0f° anticlockwise", circle-s.Degrees)
	}
	return fmt.Sprintf(" by %.0f°", s.Degrees)
}

func counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}
