package course

import "fmt"

// Count is a number of things in words: "1 day", "3 days".
func Count(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

func byCalendar(told bool) string {
	if told {
		return ""
	}
	return " by the calendar"
}

// batchWords is a thing with the number of the batch the nuc's queen is of.
func (a asked) batchWords(thing string) string {
	if b := a.view.Batch(a.nuc.Holds.Batch); !b.At.IsZero() {
		return fmt.Sprintf("%s of batch %d", thing, b.Number)
	}
	return thing
}

// age sets how old she is, if it is known of which batch she is.
func (a asked) age(p *Presumption) {
	h := a.nuc.Holds
	if h.Emerged.IsZero() && a.Emerges(h.Batch).IsZero() {
		return
	}
	p.Emerged, p.Told = a.emerged()
	p.Age = max(0, a.today.Sub(a.day(p.Emerged)))
}
