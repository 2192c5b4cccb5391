package view

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// answer says how sure the wish is, and what would make it surer.
func (d *planDraw) answer(a scene.Area) {
	x, to := a.X+state.Edge, a.Right()-state.Edge
	if a.H > 90 && a.X > d.Wish.X {
		d.rule(a.X, a.Y+14, a.X, a.Bottom()-14, scene.Rule)
	}
	room := to
	if d.stacks() { // the button at the foot of the room is far below
		const high = 34.0
		d.wideButton(scene.Area{X: to - answerButton, Y: a.Y + 12, W: answerButton, H: high}, d.planWord(), "plan it", !d.unlikely())
		if _, wrong := d.s.Wish(); wrong.Field == "" { // else it is said at length in place of the answer
			d.fit(to-answerButton, a.Y+12+high+17, clause(cmp.Or(d.refusal(), d.reckonsSaid())), ink2(13), to)
		}
		room -= answerButton + 16
	}
	if _, wrong := d.s.Wish(); wrong.Field != "" {
		d.wrap(x, a.Y+30, sentence(wrong.Why), ink(14).as(scene.Act), room-x, 4)
		return
	}
	if d.all == nil {
		return
	}
	says, y := ink2(13), d.answerLines(a)
	if !d.now {
		says = says.as(scene.Ink3)
	}
	possible := d.answerHead(x, y[0], room)
	if words, late := d.answerSays(room - x); late {
		d.wrap(x, y[1], words, ink(13).as(scene.Act), room-x, 2)
		if !d.s.Planning.Forwards {
			d.minded(x, y[2], d.noEarlier(), says, room)
		}
	} else {
		d.fit(x, y[1], words, says, room)
		d.minded(x, y[2], d.reach(room-x), says, room)
	}
	d.turns(x, to, y[3:], possible)
}

// answerLines are where the lines of the answer stand: two of them for what turns it around where it
// stands beside the wish.
func (d *planDraw) answerLines(a scene.Area) []float64 {
	if a.X > d.Wish.X {
		return []float64{a.Y + 25, a.Y + 44, a.Y + 60, a.Y + 78, a.Y + 96}
	}
	return []float64{a.Y + 30, a.Y + 50, a.Y + 67, a.Y + 88}
}

// answerHead says how many batches how sure, beside it how sure the planned batch is as it stands on
// the plan and on what the answer counts, each in as many words as have room; it tells whether the wish
// is possible.
func (d *planDraw) answerHead(x, y, to float64) bool {
	f := ink(17).semi()
	if !d.now {
		f = f.as(scene.Ink3)
	}
	head, possible := d.batches()+": "+plan.OfHundred(d.all.Chance), d.all.InTime || d.s.Planning.Forwards
	if !possible {
		head = sentence(d.all.TooLate().Head())
	}
	before, assumed := d.beforeSaid(), []string{""}
	if possible && !d.reckons() {
		assumed = d.assumedSaid()
	}
	wide := func(said string, f font) float64 {
		if said == "" {
			return 0
		}
		return 12 + d.width(said, f)
	}
	on, as := ink(14).as(scene.Pen), ink2(13).as(scene.Act)
	room := to - x - d.width(head, f)
	least := wide(assumed[len(assumed)-1], as)
	said := before[len(before)-1]
	for _, b := range before {
		if wide(b, on)+least <= room {
			said = b
			break
		}
	}
	room -= wide(said, on)
	if likely := fmt.Sprintf(", most likely %d", d.all.Chances.Quantile(0.5)); possible && d.unlikely() && d.all.Chances.Quantile(0.5) > 0 && d.width(likely, f)+least <= room {
		head, room = head+likely, room-d.width(likely, f)
	}
	end := d.text(x, y, head, f) + 12
	if said != "" {
		end = d.text(end, y, said, on) + 12
	}
	if d.reckons() {
		d.fit(end, y, reckoning, ink2(13), to)
		return possible
	}
	if says := d.firstFitting(room-12, assumed...); says != "" {
		all := "too few " + strings.Join(plan.Assumed(d.all.Needs), ", ")
		end := d.fit(end, y, says, as, to)
		d.hit(scene.Area{X: end - d.width(says, as), Y: y - 17, W: d.width(says, as), H: 24}, scene.Ref{Kind: state.FigureRef, ID: "assumed"}, "Reckoned as if nothing were short: there are "+all)
	}
	return possible
}

// unlikely tells whether more such plans fall short than are enough: such a plan can be made,
// and is not advised.
func (d *planDraw) unlikely() bool {
	const even = 0.5
	return d.all != nil && d.all.Chance < even
}

// reckons tells whether the answer to what stands in the fields is on its way.
func (d *planDraw) reckons() bool {
	_, wrong := d.s.Wish()
	return !d.now && wrong.Field == ""
}

// reckoning is said while it does.
const reckoning = "reckoning …"

func (d *planDraw) reckonsSaid() string {
	if d.reckons() {
		return reckoning
	}
	return ""
}

// beforeSaid says of a planned batch how sure it is as it stands on the plan, in fewer and fewer words.
func (d *planDraw) beforeSaid() []string {
	b, ok := d.s.Present().View.BatchPlan(d.s.Planning.Batch)
	if !ok || b.Queens == 0 || b.By == 0 {
		return []string{""}
	}
	figure := fmt.Sprintf("%.0f", 100*d.s.PlannedLane(b).Before)
	return []string{"on the plan " + d.shortDay(b.Day) + ": " + figure, "plan " + d.shortDay(b.Day) + ": " + figure, "plan: " + figure}
}

// assumedSaid says what that counts on and is not there, in fewer and fewer words; all of it is told
// where somebody points at it.
func (d *planDraw) assumedSaid() []string {
	all := plan.Assumed(d.all.Needs)
	if len(all) == 0 || !d.now {
		return []string{""}
	}
	const as = "as if nothing were short"
	return []string{as + ": too few " + strings.Join(all, ", "), as, "if nothing is short"}
}

// minded writes a line, and where there is none what is to be minded of the answer; all of
// that is told where somebody points at it.
func (d *planDraw) minded(x, y float64, line string, f font, to float64) {
	var all []string
	for _, m := range d.all.Minds {
		all = append(all, sentence(strings.TrimSuffix(m.Why+". "+m.Do, ". ")))
	}
	if line == "" && len(all) > 0 {
		line, f = all[0], f.as(scene.Act)
	}
	end := d.fit(x, y, d.wholeClauses(to-x, line), f, to)
	if len(all) == 0 {
		return
	}
	d.hit(scene.Area{X: x, Y: y - 14, W: end - x, H: 18}, scene.Ref{Kind: state.FigureRef, ID: "minds"}, strings.Join(all, ". "))
}

// answerButton is how wide the button is that stands beside the answer, dp.
const answerButton = 156.0

// shortDay is a day without its weekday, with its year where that is not this one.
func (d *planDraw) shortDay(day calendar.Day) string {
	return shortDay(day) + strings.TrimPrefix(day.ShortFrom(d.s.Today()), day.Short())
}

// answerSays is the answer in a sentence that has room, and whether no graft is in time.
func (d *planDraw) answerSays(room float64) (says string, late bool) {
	graft, by := d.all.Batches[0].Day, d.goal()+" by "+d.shortDay(d.all.Nearest)
	switch {
	case d.all.InTime && d.all.Laying:
		laying, wanted := "nine in ten lay by "+d.shortDay(d.all.LayBy), "wanted "+d.shortDay(d.all.By)
		return d.firstFitting(room, fmt.Sprintf("graft %s, %s; %s", longDay(graft), laying, wanted), fmt.Sprintf("graft %s, %s", graft.ShortFrom(d.s.Today()), laying)), false
	case d.all.InTime:
		laying := "laying by " + d.shortDay(d.all.LayBy)
		return d.firstFitting(room, fmt.Sprintf("graft %s, %s, %s", longDay(graft), laying, by),
			fmt.Sprintf("graft %s, %s, %s", graft.ShortFrom(d.s.Today()), laying, by), fmt.Sprintf("graft %s, %s", graft.ShortFrom(d.s.Today()), by)), false
	case d.s.Planning.Forwards:
		return fmt.Sprintf("Grafted on %s %s are %s by %s, later than %s", d.shortDay(d.all.Batches[0].Day), plan.OfHundred(d.s.Present().Numbers().Get(practice.PlanInTime)), d.goal(), d.all.Nearest.ShortFrom(d.s.Today()), d.shortDay(d.all.By)), true
	default:
		said, late := func(day calendar.Day) string { return day.ShortFrom(d.s.Today()) }, d.all.TooLate()
		rest := late.Rest(said)
		all := []string{rest + ", grafted on " + said(d.all.Batches[0].Day), rest}
		if late.Soonest.Day > late.By {
			soonest := fmt.Sprintf("by %s; the soonest day is %s", said(late.By), said(late.Soonest.Day))
			all = append(all, fmt.Sprintf("%s (%s)", soonest, plan.OfHundred(late.Soonest.Chance)), soonest) // how sure it is the figure of the queens shows
		}
		return d.firstFitting(room, all...), true
	}
}

// noEarlier says why no graft before that of the nearest day is possible.
func (d *planDraw) noEarlier() string {
	switch {
	case len(d.all.Minds) > 0 && d.all.Minds[0].Season:
		return "" // that is the reason
	case d.all.Batches[0].Day > d.s.Today()+1:
		return "steps of an earlier graft are past"
	}
	return "grafted tomorrow: none is earlier"
}

// batches says how many batches the answer has.
func (d *planDraw) batches() string {
	switch n := len(d.all.Batches); n {
	case 1:
		return "One batch"
	case 2:
		return "Two batches"
	default:
		return fmt.Sprintf("%d batches", n)
	}
}

// reach is what would be surer than several batches as they are, as far as it has room,
// else why the wish is out of reach.
func (d *planDraw) reach(room float64) string {
	sure := d.all.Insured()
	if sure == 0 {
		if again := d.all.Again; again.Chance > 0 && again.Day == d.all.Batches[0].Day {
			return fmt.Sprintf("surer: another on %s if it fails: %s", d.shortDay(again.Other), plan.OfHundred(again.Chance))
		}
		return cmp.Or(d.outOfReach(room), d.turnsSaid(room))
	}
	one := fmt.Sprintf("one of %s for all nucs", plural(d.all.Sizing.Larvae, "larva", "larvae"))
	return d.firstFitting(room, fmt.Sprintf("surer: %s, another only if it fails: %s", one, plan.OfHundred(sure)),
		fmt.Sprintf("surer: one for all nucs, another only if it fails: %s", plan.OfHundred(sure)), fmt.Sprintf("surer one, another if it fails: %s", plan.OfHundred(sure)))
}

// turnsSaid says that the nucs serve one graft after the other, as far as it has room.
func (d *planDraw) turnsSaid(room float64) string {
	n := d.all.Turns()
	if n < 2 {
		return ""
	}
	serve := fmt.Sprintf("the %s serve %s", plural(d.all.Nucs, "nuc", "nucs"), plan.Times(n))
	return d.firstFitting(room, serve+": queens of one graft are ready before cells of the next go in",
		serve+": ready before the next cells go in", serve)
}

func (d *planDraw) goal() string {
	if d.all.Laying {
		return "laying"
	}
	return "ready"
}

// turns are the words that read the wish another way, on lines at some places, as many as have room.
func (d *planDraw) turns(left, to float64, lines []float64, possible bool) {
	pen := ink(13.5).as(scene.Pen)
	ends := slices.Repeat([]float64{left}, len(lines))
	for _, w := range d.turnWords(possible) {
		i := slices.IndexFunc(ends, func(end float64) bool { return end+d.width(w[0], pen) <= to })
		if i >= 0 {
			ends[i] = d.link(ends[i], lines[i], w[0], pen, w[1], false) + 18
		}
	}
}

// turnWords are those words and their commands, in the order of what they are worth.
func (d *planDraw) turnWords(possible bool) [][2]string {
	two := "one batch instead"
	if len(d.all.Batches) == 1 {
		two = "two batches, a week apart"
		if d.all.Two > 0 && d.all.InTime {
			two += ": " + plan.OfHundred(d.all.Two)
		}
	}
	back := "from a graft"
	if d.s.Planning.Forwards {
		back = "backwards from a day"
	}
	if d.s.PlanChanged() {
		return [][2]string{{"another batch", "new plan"}, {"take it off the plan", "drop plan"}, {"keep beside", "keep try"}, {back, "forwards"}}
	}
	words := [][2]string{{two, "two grafts"}, {back, "forwards"}, {"keep beside", "keep try"}}
	if !possible {
		words = append([][2]string{{"by " + d.all.Nearest.ShortFrom(d.s.Today()), "nearest day"}}, words...)
	}
	if again := d.all.Again; again.Chance > 0 && d.now && again.Day != d.all.Batches[0].Day {
		words = append([][2]string{{fmt.Sprintf("graft %s, again if it fails: %.0f", d.shortDay(again.Day), 100*again.Chance), "graft again"}}, words...)
	}
	return words
}
