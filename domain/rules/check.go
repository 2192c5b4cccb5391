package rules

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// Intent is something the keeper means to do: a closed set of small structs.
type Intent interface{ check(*checker) }

// Reason is why a plan is refused or warned of, and the way out.
type Reason struct {
	Why  string
	Do   string // the way out
	Used []practice.Key
}

// Verdict is what the rules say of a plan.
type Verdict struct {
	Refused []Reason // the plan cannot be, or would destroy a queen to no purpose
	Warned  []Reason // it can be done; told when a line is written, and not stored
}

// OK tells whether the plan may be carried out, with or without warnings.
func (v Verdict) OK() bool { return len(v.Refused) == 0 }

// Check judges a plan to be carried out at the view's instant. It judges
// plans only: what has happened is always taken down.
func Check(v *book.View, plan Intent) Verdict { return check(course.New(v), nil, plan) }

// Check judges a plan as [Check] does, with what the pass has reckoned already.
func (j *Judged) Check(plan Intent) Verdict { return check(j.pass.course, j.Strength, plan) }

// Strength is a yard's bees and food as the pass reckons them.
func (j *Judged) Strength(id book.YardID) *strength.Yard {
	j.mu.Lock()
	defer j.mu.Unlock()
	return j.pass.yard(id).strength
}

func check(c *course.Course, yards func(book.YardID) *strength.Yard, plan Intent) Verdict {
	v := c.View()
	if yards == nil {
		yards = func(id book.YardID) *strength.Yard { return strength.NewYard(v, id, c.Zone(id)) }
	}
	k := &checker{view: v, course: c, numbers: v.Numbers(), now: v.On(), strength: yards}
	plan.check(k)
	return k.Verdict
}

// checker gathers reasons while a plan is judged.
type checker struct {
	view    *book.View
	course  *course.Course
	numbers practice.Numbers
	now     time.Time

	strength func(book.YardID) *strength.Yard
	Verdict
}

func (c *checker) refuse(why, do string, used ...practice.Key) {
	c.Refused = append(c.Refused, Reason{why, do, used})
}

func (c *checker) warn(why, do string, used ...practice.Key) {
	c.Warned = append(c.Warned, Reason{why, do, used})
}

func (c *checker) day(t time.Time, yard book.YardID) calendar.Day {
	return calendar.DayOf(t, c.course.Zone(yard))
}

// standstill refuses what would take bees or queens out of a yard under
// suspicion.
func (c *checker) standstill(yard book.YardID, what string) {
	if yard.IsZero() {
		return
	}
	if y := c.view.Yard(yard); y.Standstill != nil {
		c.refuse(y.Name+" is on standstill: "+y.Standstill.What+" suspected in "+Name(c.view, y.Standstill.Of)+" since "+
			c.day(y.Standstill.Since.Instant, yard).ShortFrom(c.view.Today()), what+" when the suspicion has ended")
	}
}
