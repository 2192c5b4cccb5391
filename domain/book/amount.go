package book

import (
	"encoding/json"
	"fmt"
	"math"
	"strconv"
)

// Amount is a number that somebody may have said, none included; the zero
// Amount is unsaid. "b0" says there is no capped brood, which is news; saying
// nothing of brood is not.
type Amount struct {
	value float64
	said  bool
}

// Said is the amount v; a v that is no finite number is unsaid.
func Said(v float64) Amount {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return Amount{}
	}
	return Amount{v, true}
}

// Get is the amount and whether it was said.
func (a Amount) Get() (v float64, said bool) { return a.value, a.said }

// Or is the amount, or v when it is unsaid.
func (a Amount) Or(v float64) float64 {
	if a.said {
		return a.value
	}
	return v
}

// IsZero tells whether the amount is unsaid.
func (a Amount) IsZero() bool { return !a.said }

// None tells whether it was said that there is none.
func (a Amount) None() bool { return a.said && a.value == 0 }

// Some tells whether it was said that there is some.
func (a Amount) Some() bool { return a.said && a.value > 0 }

// String is the number, or "" when unsaid.
func (a Amount) String() string {
	if !a.said {
		return ""
	}
	return strconv.FormatFloat(a.value, 'f', -1, 64)
}

// MarshalJSON writes the number, or null when unsaid.
func (a Amount) MarshalJSON() ([]byte, error) {
	if !a.said {
		return []byte("null"), nil
	}
	return json.Marshal(a.value)
}

// UnmarshalJSON reads what MarshalJSON writes.
func (a *Amount) UnmarshalJSON(b []byte) error {
	var v *float64
	if err := json.Unmarshal(b, &v); err != nil {
		return fmt.Errorf("amount %s: not a number", b)
	}
	*a = Amount{}
	if v != nil {
		*a = Said(*v)
	}
	return nil
}
