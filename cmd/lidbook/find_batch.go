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
			return nil, fmt.Errorf("%s is only planned: once it is grafted, write that down with lidbook graft --plan %s", rules.Name(f.View, p.Batch.Subject()), argument(f.called(p)))
		}
		return nil, fmt.Errorf("batch %q: write its number, like 4", number)
	}
	if b := f.BatchNumbered(n); b != nil {
		return b, nil
	}
	return one("batch", number, f.Batches(), func(b *book.Batch) string { return strconv.Itoa(b.Number) })
}

// plan finds a planned batch by its day, its line, both, its larvae besides, or its id; the day as it
// is typed or told.
func (f finder) plan(name string) (p book.BatchPlan, err error) {
	typed := strings.TrimPrefix(name, "batch of ")
	on, _ := line.ParseComing(typed, f.Today())
	n := 0
	var there, alike []string
	for one := range f.Plans() {
		called := f.called(one)
		there = append(there, called)
		if !on.IsZero() && one.Day == on || strings.EqualFold(typed, one.Line) || typed == one.Batch.String() || isOne(f.names(one), typed) {
			p = one
			n++
			alike = append(alike, strconv.Quote(called))
		}
	}
	switch {
	case n == 1:
		return p, nil
	case n > 1:
		return p, fmt.Errorf("%d grafts are planned for %q: write one of %s, or the id that --json shows", n, name, list(alike))
	default:
		return p, fmt.Errorf("no graft is planned for %q: there is %s", name, cmp.Or(shortList(there), "none"))
	}
}

// called is how a planned batch is named so that [finder.plan] finds it alone: by its day and line,
// and by its larvae where that needs it.
func (f finder) called(b book.BatchPlan) string {
	return strings.TrimSpace(b.Day.String()+" "+b.Line) + f.Apart(b)
}

// argument is a name as it is typed in a command.
func argument(name string) string {
	if strings.ContainsAny(name, " ,") {
		return strconv.Quote(name)
	}
	return name
}

// names are the names of a planned batch: its day, as files and as the program writes it, with its
// year or without, its line, and what tells it from others.
func (f finder) names(b book.BatchPlan) (all []string) {
	apart := f.Apart(b)
	for _, day := range []string{b.Day.String(), b.Day.Short(), b.Day.ShortFrom(0)} {
		for _, name := range []string{strings.TrimSpace(day + " " + b.Line), strings.TrimSpace(day + prefixed(", ", b.Line)), day} {
			all = append(all, name, name+apart)
		}
	}
	return all
}

func isOne(of []string, typed string) bool {
	return slices.ContainsFunc(of, func(name string) bool { return strings.EqualFold(name, typed) })
}
