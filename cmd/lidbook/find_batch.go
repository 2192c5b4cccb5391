package main

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// anyBatch finds a batch by its number, and one that is only planned as [finder.plan] does.
func (f finder) anyBatch(name string) (book.Subject, error) {
	b, err := f.batch(name)
	if err == nil {
		return b.Batch.Subject(), nil
	}
	if p, none := f.plan(name); none == nil {
		return p.Batch.Subject(), nil
	}
	return book.Subject{}, err
}

// batch finds a batch that was grafted, as "4" or "batch 4".
func (f finder) batch(name string) (*book.Batch, error) {
	number := strings.TrimPrefix(name, "batch ")
	n, err := strconv.Atoi(number)
	if err != nil {
		if p, none := f.plan(name); none == nil {
			return nil, fmt.Errorf("%s is only planned: once it is grafted, write that down with lidbook graft --plan %s", rules.Name(f.View, p.Batch.Subject()), p.Day)
		}
		return nil, fmt.Errorf("batch %q: write its number, like 4", number)
	}
	if b := f.BatchNumbered(n); b != nil {
		return b, nil
	}
	return one("batch", number, f.Batches(), func(b *book.Batch) string { return strconv.Itoa(b.Number) })
}

// plan finds a planned batch by its day, its line, both, or its id; the day as it is typed
// or told.
func (f finder) plan(name string) (p book.BatchPlan, err error) {
	typed := strings.TrimPrefix(name, "batch of ")
	on, _ := line.ParseComing(typed, f.Today())
	n := 0
	var there []string
	for one := range f.Plans() {
		called := calledOf(one)
		there = append(there, called[0])
		if !on.IsZero() && one.Day == on || strings.EqualFold(typed, one.Line) || typed == one.Batch.String() || isOne(called, typed) {
			p = one
			n++
		}
	}
	switch {
	case n == 1:
		return p, nil
	case n > 1:
		return p, fmt.Errorf("%d grafts are planned for %q: name the day and the line, like %q, or the id that --json shows", n, name, there[0])
	default:
		return p, fmt.Errorf("no graft is planned for %q: there is %s", name, cmp.Or(shortList(there), "none"))
	}
}

// calledOf are the names of a planned batch: its day, as files and as the program writes it, with
// its year or without, and its line.
func calledOf(b book.BatchPlan) (all []string) {
	for _, day := range []string{b.Day.String(), b.Day.Short(), b.Day.ShortFrom(0)} {
		all = append(all, strings.TrimSpace(day+" "+b.Line), strings.TrimSpace(day+prefixed(", ", b.Line)), day)
	}
	return all
}

func isOne(of []string, typed string) bool {
	return slices.ContainsFunc(of, func(name string) bool { return strings.EqualFold(name, typed) })
}
