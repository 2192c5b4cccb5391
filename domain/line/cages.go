package line

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Cages reads the numbers of cages, each once: "3", "1-5", "1-3,7". Its error says
// how to write them.
func Cages(text string) (labels []string, err error) {
	for part := range strings.SplitSeq(text, ",") {
		first, last, span := strings.Cut(strings.TrimSpace(part), "-")
		if !span {
			last = first
		}
		from, err1 := strconv.Atoi(first)
		to, err2 := strconv.Atoi(last)
		const most = 1000 // cages at one time; more is a slip of the finger
		if err1 != nil || err2 != nil || from < 1 || to < from || len(labels)+to-from >= most {
			return nil, fmt.Errorf("cages %q: write their numbers, like 3 or 1-5", text)
		}
		for n := from; n <= to; n++ {
			label := strconv.Itoa(n)
			if slices.Contains(labels, label) {
				return nil, fmt.Errorf("cages %q: %s is there twice, write each once", text, label)
			}
			labels = append(labels, label)
		}
	}
	return labels, nil
}
