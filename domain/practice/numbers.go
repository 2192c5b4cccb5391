package practice

import (
	"fmt"
	"iter"
	"math"
	"strings"
	"time"
)

// Numbers is one keeper's set of numbers: the defaults and what the keeper
// changed. It is an immutable value, one word in size, and may be shared
// freely; the zero value is all defaults.
type Numbers struct{ own *own }

// own holds the keeper's values by key; set says which of them count.
type own struct {
	value [keyCount]float64
	set   [keyCount]bool
	money string
}

// Get gives the number in use for k, in the unit of its row. The zero Key has
// the number 0; a key beyond the list is a fault of the program and panics.
func (n Numbers) Get(k Key) float64 {
	if n.own != nil && n.own.set[k] {
		return n.own.value[k]
	}
	return rows[k].Default
}

// Duration gives the number in use for k as a length of time. A day counts
// 24 hours: use it on instants, and [Numbers.Days] on calendar days. It
// panics when the unit of k is not [Hour], [Day] or [Minute].
func (n Numbers) Duration(k Key) time.Duration {
	return time.Duration(n.Get(k) * float64(length(k)))
}

// Days gives the number in use for k rounded to whole days, for arithmetic on
// calendar days. It panics when the unit of k is not a length of time.
func (n Numbers) Days(k Key) int {
	return int(math.Round(n.Get(k) * float64(length(k)) / float64(24*time.Hour)))
}

// length is one unit of k as a length of time.
func length(k Key) time.Duration {
	switch u := rows[k].Unit; u {
	case Hour:
		return time.Hour
	case Day:
		return 24 * time.Hour
	case Minute:
		return time.Minute
	default:
		panic(fmt.Sprintf("practice: %s is in %s, not a length of time", rows[k].Name, u))
	}
}

// With gives a copy of n in which k has the value v. It refuses a key that is
// unknown and a value that is not a number or lies outside the row's range;
// the error names the number, the value and the range.
func (n Numbers) With(k Key, v float64) (Numbers, error) {
	if !k.Valid() {
		return n, fmt.Errorf("number %d is unknown, choose one of the list", int(k))
	}
	if r := rows[k]; math.IsNaN(v) || v < r.Min || v > r.Max {
		return n, &RangeError{Number: r, Value: v}
	}
	next := new(own)
	if n.own != nil {
		*next = *n.own
	}
	next.value[k], next.set[k] = v, true
	return Numbers{next}, nil
}

// Without gives a copy of n in which k is back at its default.
func (n Numbers) Without(k Key) Numbers {
	if n.own == nil || !k.Valid() || !n.own.set[k] {
		return n
	}
	next := *n.own
	next.value[k], next.set[k] = 0, false
	if rows[k].Unit == Money {
		next.money = ""
	}
	return Numbers{&next}
}

// InMoney gives a copy of n in which the keeper's money has a name, in the keeper's
// own word; without spaces about it.
func (n Numbers) InMoney(word string) Numbers {
	next := new(own)
	if n.own != nil {
		*next = *n.own
	}
	next.money = strings.TrimSpace(word)
	return Numbers{next}
}

// Money is the keeper's own word for the money that queens are priced in; "" while
// there is none.
func (n Numbers) Money() string {
	if n.own == nil {
		return ""
	}
	return n.own.money
}

// Changed walks the numbers the keeper has set, in the order of the keys,
// with the value in use; one set to its default counts as set.
func (n Numbers) Changed() iter.Seq2[Key, float64] {
	return func(yield func(Key, float64) bool) {
		if n.own == nil {
			return
		}
		for k := Key(1); k < keyCount; k++ {
			if n.own.set[k] && !yield(k, n.own.value[k]) {
				return
			}
		}
	}
}

// Of gives the row of k. The zero Key has an empty row; a key beyond the list
// is a fault of the program and panics.
func Of(k Key) Number { return rows[k] }

// All walks the whole table in the order of the keys.
func All() iter.Seq[Number] {
	return func(yield func(Number) bool) {
		for _, r := range rows[1:] {
			if !yield(r) {
				return
			}
		}
	}
}

// RangeError says that a value lies outside what a number may be.
type RangeError struct {
	Number Number
	Value  float64
}

// Error names the number, the value and the range it must lie in.
func (e *RangeError) Error() string {
	r := e.Number
	return fmt.Sprintf("%s: %v %s is outside the allowed range, give %v to %v %s",
		r.Name, e.Value, r.Unit, r.Min, r.Max, r.Unit)
}
