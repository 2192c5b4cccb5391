package main

import (
	"cmp"
	"errors"
	"fmt"
	"iter"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

// finder finds things of a view by the names a keeper types.
type finder struct {
	*book.View
	in book.YardID // where a nuc is looked for first; zero: everywhere
}

func (a *app) finder(v *book.View) (finder, error) {
	f := finder{View: v}
	if a.flags.yard == "" {
		return f, nil
	}
	y, err := f.yard(a.flags.yard)
	if err != nil {
		return f, err
	}
	f.in = y.Yard
	return f, nil
}

// one is the only one of all that match, or an error that lists those there.
func one[T any](what, name string, all iter.Seq[T], called func(T) string) (found T, err error) {
	n := 0
	var there []string
	for t := range all {
		there = append(there, called(t))
		if strings.EqualFold(called(t), name) {
			found = t
			n++
		}
	}
	switch {
	case n == 1:
		return found, nil
	case n > 1:
		return found, fmt.Errorf("%d %ss are called %s: give one of them another name first", n, what, name)
	case len(there) == 0:
		return found, fmt.Errorf("no %s %q: there is none in the book on that day, choose a later one or add it first", what, name)
	default:
		return found, fmt.Errorf("no %s %q: the book has %s", what, name, shortList(there))
	}
}

// shortList lists a few names.
func shortList(names []string) string {
	const few = 8
	if len(names) > few {
		return strings.Join(names[:few], ", ") + " and more"
	}
	return strings.Join(names, ", ")
}

func (f finder) yard(name string) (*book.Yard, error) {
	return one("yard", name, f.Yards(), func(y *book.Yard) string { return y.Name })
}

// homeOr is the yard of a name, or the home yard without one.
func (f finder) homeOr(name string) (*book.Yard, error) {
	if name != "" {
		return f.yard(name)
	}
	if y := f.HomeYard(); y != nil {
		return y, nil
	}
	return nil, fmt.Errorf("no yard in the book: add one with lidbook add yard")
}

// laidOr is the yard of a name. Without one it is the home yard if something stands
// there, else of the yards where something does the first of which try-outs are kept, else
// the first by name.
func (f finder) laidOr(name string) (*book.Yard, error) {
	y, err := f.homeOr(name)
	if err != nil || name != "" || f.laid(y) {
		return y, err
	}
	there := f.yardsLaid()
	if i := slices.IndexFunc(there, func(y *book.Yard) bool { return len(f.Layouts(y.Yard)) > 0 }); i >= 0 {
		return there[i], nil
	}
	return cmp.Or(append(there, y)...), nil
}

// yardsLaid are the yards in which something stands, the home yard first, then by name.
func (f finder) yardsLaid() (there []*book.Yard) {
	for y := range f.Yards() {
		if f.laid(y) {
			there = append(there, y)
		}
	}
	return there
}

// sayYard tells on the side which yard was taken, where none was named and others would
// have done as well.
func (a *app) sayYard(v *book.View, y *book.Yard) {
	others := slices.DeleteFunc(finder{View: v}.yardsLaid(), func(o *book.Yard) bool { return o.Yard == y.Yard })
	if a.flags.yard != "" || len(others) == 0 || y.Home {
		return
	}
	names := make([]string, len(others))
	for i, o := range others {
		names[i] = o.Name
	}
	fmt.Fprintf(a.errs, "%s is shown; --yard names another: %s\n", y.Name, shortList(names))
}

// laid tells whether stands are in a yard, or try-outs of it are kept.
func (f finder) laid(y *book.Yard) bool {
	for range f.Stands(y.Yard) {
		return true
	}
	return len(f.Layouts(y.Yard)) > 0
}

func (f finder) colony(name string) (*book.Colony, error) {
	return one("colony", name, f.Colonies(), func(c *book.Colony) string { return c.Name })
}

func (f finder) person(name string) (*book.Person, error) {
	return one("person", name, f.People(), func(p *book.Person) string { return p.Name })
}

// breederLine is a line of a breeder's, written as it is in the book.
func (f finder) breederLine(name string) (string, error) {
	var there []string
	for c := range f.Colonies() {
		switch {
		case !c.Is(book.Breeder) || c.Line == "":
		case strings.EqualFold(c.Line, name):
			return c.Line, nil
		case !slices.Contains(there, c.Line):
			there = append(there, c.Line)
		}
	}
	if len(there) == 0 {
		return "", fmt.Errorf("--line %s: no breeder's line is in the book; leave --line out, or write one down: lidbook add colony NAME --role breeder --line %[1]s", name)
	}
	slices.Sort(there)
	return "", fmt.Errorf("--line %s: no breeder is of that line; write one of %s, or leave it out", name, shortList(there))
}

// graftedLine is the line of a graft to come: a breeder's, where the book tells any.
func (f finder) graftedLine(name string) (string, error) {
	for c := range f.Colonies() {
		if c.Is(book.Breeder) && c.Line != "" {
			return f.breederLine(name)
		}
	}
	return name, nil
}

// order is the order of a number, or an error that lists those that are open.
func (f finder) order(number string) (*book.Order, error) {
	number = plainOrder(number)
	var open []string
	for o := range f.Orders() {
		if o.Open() > 0 {
			open = append(open, o.Number)
		}
	}
	o, err := one("order", number, f.Orders(), func(o *book.Order) string { return o.Number })
	if err == nil || o != nil || len(open) == 0 {
		return o, err
	}
	return nil, fmt.Errorf("no order %q: open are %s; those closed are in lidbook orders --all", number, shortList(open))
}

// nucs are the nucs of names, lists and rows, each once.
func (f finder) nucs(names ...string) ([]book.NucID, error) {
	var all []book.NucID
	for _, text := range names {
		some, err := line.Nucs(text, line.Context{View: f.View, Yard: f.in})
		if err != nil {
			return nil, f.unknown(text, ofName(err))
		}
		for _, id := range some {
			if !slices.Contains(all, id) {
				all = append(all, id)
			}
		}
	}
	return all, nil
}

// unknown is what is wrong with names of nucs: they come into the book only
// later, or what is wrong otherwise.
func (f finder) unknown(text string, wrong error) error {
	ever := f.Season().At(f.On().AddDate(100, 0, 0))
	if _, err := line.Nucs(text, line.Context{View: ever, Yard: f.in}); err == nil {
		return fmt.Errorf("%s: not in the book yet then; choose a later day", text)
	}
	return fmt.Errorf("%s: %w", text, wrong)
}

// ofName is what is wrong with a name, without the column where that is the
// first one.
func ofName(err error) error {
	var all line.Mistakes
	if errors.As(err, &all) && len(all) == 1 && all[0].Column == 1 {
		return fmt.Errorf("%s; %s", all[0].What, all[0].Do)
	}
	return err
}

func (f finder) nuc(name string) (*book.Nuc, error) {
	all, err := f.nucs(name)
	if err != nil {
		return nil, err
	}
	if len(all) != 1 {
		return nil, fmt.Errorf("%s: name one nuc", name)
	}
	return f.Nuc(all[0]), nil
}

// unit finds a nuc or a colony.
func (f finder) unit(name string) (book.Subject, error) {
	all, err := f.units(name)
	switch {
	case err != nil:
		return book.Subject{}, err
	case len(all) != 1:
		return book.Subject{}, fmt.Errorf("%s: name one nuc or colony", name)
	}
	return all[0], nil
}

// units are the colonies and nucs of names, lists and rows, each once.
func (f finder) units(names ...string) ([]book.Subject, error) {
	var all []book.Subject
	add := func(s book.Subject) {
		if !slices.Contains(all, s) {
			all = append(all, s)
		}
	}
	for _, text := range f.apart(names) {
		if c, err := f.colony(text); err == nil {
			add(c.Colony.Subject())
			continue
		}
		nucs, err := line.Nucs(text, line.Context{View: f.View, Yard: f.in})
		if err != nil {
			return nil, f.unknown(text, fmt.Errorf("no colony is called so, and %w", ofName(err)))
		}
		for _, id := range nucs {
			add(id.Subject())
		}
	}
	return all, nil
}

// apart parts lists at their commas, so that colonies and nucs can stand in
// one; a name that has a comma of its own stays whole.
func (f finder) apart(names []string) (all []string) {
	for _, text := range names {
		if _, err := f.colony(text); err == nil {
			all = append(all, text)
			continue
		}
		for part := range strings.SplitSeq(text, ",") {
			if part = strings.TrimSpace(part); part != "" {
				all = append(all, part)
			}
		}
	}
	return all
}

// anything finds a yard, colony, nuc, queen, customer, "batch 4", "batch of Mon 19 Apr" or
// "order 12".
func (f finder) anything(name string) (book.Subject, error) {
	if strings.HasPrefix(name, "batch ") {
		return f.anyBatch(name)
	}
	if strings.HasPrefix(name, "order ") {
		o, err := f.order(name)
		if err != nil {
			return book.Subject{}, err
		}
		return o.Order.Subject(), nil
	}
	if y, err := f.yard(name); err == nil {
		return y.Yard.Subject(), nil
	}
	if q, err := f.ownQueen(name); err == nil {
		return q.Queen.Subject(), nil
	}
	if orders := f.customer(name); len(orders) == 1 {
		return orders[0].Order.Subject(), nil
	}
	unit, err := f.unit(name)
	if err == nil {
		return unit, nil // who says A1 means the nuc before the queen who was caught there
	}
	if q, err := f.queen(name); err == nil {
		return q.Queen.Subject(), nil
	}
	if p, err := f.plan(name); err == nil {
		return p.Batch.Subject(), nil
	}
	return unit, err
}

func plainOrder(name string) string { return strings.TrimPrefix(name, "order ") }

// things are those of names; lists and rows of nucs and colonies among them.
func (f finder) things(names []string) ([]book.Subject, error) {
	var all []book.Subject
	for _, name := range names {
		one, err := f.anything(name)
		if err == nil {
			all = append(all, one)
			continue
		}
		some, none := f.units(name)
		if none != nil {
			return nil, err
		}
		all = append(all, some...)
	}
	return all, nil
}

// customer are the orders of a customer.
func (f finder) customer(name string) (all []*book.Order) {
	for o := range f.Orders() {
		if strings.EqualFold(o.Customer, name) {
			all = append(all, o)
		}
	}
	return all
}
