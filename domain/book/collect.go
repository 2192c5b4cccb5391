package book

import (
	"bytes"
	"cmp"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/spread"
)

// collect folds every subject of a kind that has entries by the view's
// instant, in no order.
func collect[K kinder, T any](v *View, kind Kind, fold func(ID[K]) *T) []*T {
	subjects := v.season.kinds[kind]
	all := make([]*T, len(subjects))
	spread.Over(len(subjects), func(i int) {
		if len(v.lines(subjects[i])) > 0 {
			all[i] = fold(ID[K](subjects[i].UUID))
		}
	})
	return slices.DeleteFunc(all, func(t *T) bool { return t == nil })
}

func (id ID[K]) compare(other ID[K]) int { return bytes.Compare(id[:], other[:]) }

// TrueFirst puts true before false in an order: it is below 0, 0 or above 0 as
// [cmp.Compare] is.
func TrueFirst(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return -1
	default:
		return 1
	}
}

// compareNames puts A9 before A10: the word first, then the number behind it.
func compareNames(a, b string) int {
	wa, na := splitName(a)
	wb, nb := splitName(b)
	return cmp.Or(strings.Compare(wa, wb), cmp.Compare(na, nb), strings.Compare(a, b))
}

func splitName(s string) (word string, number int) {
	i := len(s)
	for i > 0 && '0' <= s[i-1] && s[i-1] <= '9' {
		i--
	}
	if i == len(s) {
		return s, 0
	}
	n, err := strconv.Atoi(s[i:])
	if err != nil {
		return s, 0
	}
	return s[:i], n
}
