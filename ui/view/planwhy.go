package view

import (
	"fmt"
	"math"
	"slices"
	"strconv"

	"lidmark/domain/plan"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// stageNames are the links of the chain as they are told, each with those before it
// that go without saying.
var stageNames = map[plan.Link]string{
	plan.Grafted: "grafted", plan.Taken: "take", plan.RipeOfTaken: "capped, ripe", plan.Placed: "given, one a nuc",
	plan.EmergedOfRipe: "emerged", plan.LayingOfAccepted: "accepted, laying", plan.InTime: "good, in time",
}

// why draws the chain from the larvae to the queens: how many are left after each
// link, most probably and nine times in ten, and below it what raises the chance.
func (d *planDraw) why(a scene.Area) {
	switch {
	case d.compares():
		d.triesBeside(a)
		return
	case d.s.Planning.Dates:
		d.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
		d.others(a)
		return
	}
	d.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
	y := d.whyHead(a)
	foot := d.planButtons(a)
	told, row, raises := d.stageRows(foot - y)
	for i, s := range told {
		from := d.all.Stages[0][0]
		if i > 0 {
			from = told[i-1]
		}
		d.stageLine(from, s, i == len(told)-1, scene.Area{X: a.X + state.Edge, Y: y, W: a.W - 2*state.Edge, H: row})
		y += row
	}
	if raises > 0 {
		y = d.raises(a.X+state.Edge, y, a.Right()-state.Edge)
		d.costs(scene.Area{X: a.X + state.Edge, Y: y, W: a.W - 2*state.Edge, H: foot - y})
	}
}

// whyHead writes the head of the chain and what its figures and ticks are, and gives where
// its body begins.
func (d *planDraw) whyHead(a scene.Area) float64 {
	head := "Why " + plural(d.all.Larvae, "larva", "larvae")
	if d.several() {
		head = "Why the first " + plural(d.all.Larvae, "larva", "larvae")
	}
	d.partHead(a, head, "")
	ranges, wanted, f := "likely (10–90 %)", fmt.Sprintf("%d wanted", d.all.Queens), ink(12.5).semi().as(scene.Pen)
	x, to := a.X+state.Edge+d.width(head, ink(15).semi())+9, a.Right()-state.Edge
	words := 6 + d.width(wanted, f) + 6
	if x+words+d.width(ranges, ink2(12.5)) > to {
		ranges = "(10–90 %)"
	}
	if from := d.right(to, a.Y+24, ranges, ink2(12.5)); x+words <= from && !d.several() {
		d.rect(scene.Area{X: x, Y: a.Y + 13, W: 1.6, H: 12}, scene.Pen)
		d.text(x+6, a.Y+24, wanted, f)
	}
	if a.H < whyLow {
		return a.Y + 32
	}
	return a.Y + 36
}

// several tells whether the chain is that of the first graft of some: what is wanted is
// of all of them then.
func (d *planDraw) several() bool { return len(d.all.Batches) > 1 }

// whyLow is under which height of the part its rows want all the room there is, dp.
const whyLow = 300.0

// leastStage is how high a stage is at least, dp: under it the bars touch the letters.
const leastStage = 24.0

// untold are the stages that are left out where there is little room, the first of them
// first: what goes without saying, or is said in the ladder.
var untold = []plan.Link{plan.Grafted, plan.Placed, plan.RipeOfTaken, plan.Taken}

// stageRows are the stages that have room, how high each is, and what is left below for
// what raises the chance.
func (d *planDraw) stageRows(room float64) (told []plan.Stage, row, raises float64) {
	told, raises = d.told(nil), d.raisesHeight()
	if row = min(32, (room-raises)/float64(len(told))); row >= 26 {
		return told, row, raises
	}
	for i := 0; i < len(untold) && room/float64(len(told)) < leastStage; i++ {
		told = d.told(untold[:i+1])
	}
	return told, min(32, room/float64(len(told))), 0
}

// told are the stages that are told but for some.
func (d *planDraw) told(but []plan.Link) (told []plan.Stage) {
	for _, s := range d.all.Stages[0] {
		if stageNames[s.Link] != "" && !slices.Contains(but, s.Link) {
			told = append(told, s)
		}
	}
	return told
}

// asRate is by how much the part that figures make of each other may be off the rate that they stand on to
// be told as one: figures of a few are rounded by more. A convention of telling.
const asRate = 0.02

// stageSays is what stands behind the name of a stage: of those of the one before how many
// come through, so that the figures multiply to each other, where that is the rate too; of the graft how
// many fail.
func (d *planDraw) stageSays(from, s plan.Stage) string {
	switch n, of := s.Likely(), from.Likely(); {
	case s.Link == plan.Grafted:
		works := slices.IndexFunc(d.all.Stages[0], func(st plan.Stage) bool { return st.Link == plan.GraftWorks })
		if works < 0 || d.all.Stages[0][works].Share > 0.995 {
			return ""
		}
		return fmt.Sprintf("%.0f of 100 grafts fail", 100*(1-d.all.Stages[0][works].Share))
	case s.Link == plan.Placed, of == 0, math.Abs(float64(n)/float64(of)-d.rate(from, s)) > asRate:
		return ""
	default:
		return "× " + percentOf(n, of) + " %"
	}
}

// rate is the mean rate from one stage of the first graft to another.
func (d *planDraw) rate(from, to plan.Stage) float64 {
	share, between := 1.0, false
	for _, s := range d.all.Stages[0] {
		if between {
			share *= s.Share
		}
		if s.Link == to.Link {
			break
		}
		between = between || s.Link == from.Link
	}
	return share
}

// percentOf is a part of a whole in per cent, with as many decimals as it takes to come
// from the one to the other.
func percentOf(n, of int) string {
	for decimals := range 2 {
		says := strconv.FormatFloat(100*float64(n)/float64(of), 'f', decimals, 64)
		if p, err := strconv.ParseFloat(says, 64); err == nil && math.Round(p*float64(of)/100) == float64(n) {
			return says
		}
	}
	return strconv.FormatFloat(100*float64(n)/float64(of), 'f', 2, 64)
}

func (d *planDraw) stageLine(from, s plan.Stage, last bool, a scene.Area) {
	name, f := stageNames[s.Link], ink(13.5)
	if last {
		f = f.semi()
	}
	x := d.text(a.X, a.Y+12, name, f)
	if says := d.stageSays(from, s); says != "" {
		d.text(x+6, a.Y+12, says, ink2(12.5))
	}
	says := strconv.Itoa(s.Likely())
	if s.Link != plan.Grafted {
		says += fmt.Sprintf(" (%d–%d)", s.Low(), s.High())
	}
	d.right(a.Right(), a.Y+12, says, ink(13).semi())
	most := d.all.Larvae
	if !d.several() {
		most = max(most, d.all.Queens)
	}
	k := a.W / float64(max(1, most))
	y, high, role := a.Y+min(18.5, a.H-6.5), min(5, a.H-20), scene.Bar
	if last {
		role = scene.Good
	}
	d.rect(scene.Area{X: a.X, Y: y, W: k * float64(s.Likely()), H: high}, role)
	if s.Link != plan.Grafted {
		d.add(scene.Line{From: at(a.X+k*float64(s.Low()), y+high/2), To: at(a.X+k*float64(s.High()), y+high/2), Stroke: stroke(scene.Ink, 1.6)})
	}
	if !d.several() {
		d.rect(scene.Area{X: a.X + k*float64(d.all.Queens) - 0.8, Y: y - 1, W: 1.6, H: high + 2}, scene.Pen)
	}
	d.hit(scene.Area{X: a.X, Y: a.Y, W: a.W, H: a.H}, scene.Ref{Kind: state.FigureRef, ID: name}, name+"  "+d.numbersSaid(s.Link.Used()))
}

// raisesShown is how many changes are told.
const raisesShown = 3

func (d *planDraw) raisesHeight() float64 { return 26 + 18*raisesShown }

// raises are the changes that make it surer, the best first; it gives where they end.
func (d *planDraw) raises(x, y, to float64) float64 {
	d.text(x, y+16, "What would raise it", ink(13.5).semi())
	y += 16
	for i, r := range d.all.Raises {
		if i == raisesShown || r.Gain < 0.005 {
			break
		}
		y += 18
		end := d.right(to, y, plan.OfHundred(r.Chance), ink(13).semi())
		d.fit(x, y, r.Change.String(), ink2(13), end-8)
	}
	return y
}

// costs says which misfortune costs most of what can be promised, where it has room.
func (d *planDraw) costs(a scene.Area) {
	const above = 24.0
	says, f := d.costsSaid(), ink2(13)
	lines := d.lines(says, f, a.W)
	if says != "" && above+float64(lines-1)*scene.LineHeight(f.size) <= a.H-6 {
		d.wrap(a.X, a.Y+above, says, f, a.W, lines)
	}
}

// costsSaid is which misfortune costs most, and how much; "" where none costs a queen.
func (d *planDraw) costsSaid() string {
	c := d.all.Costs
	if c.Fails() == "" {
		return ""
	}
	return fmt.Sprintf("Costs most: %s; without that %d at %.0f %%, not %d", c, c.Without, 100*d.all.Sure, c.With)
}

// planButtons are at the foot of the part, and above them what a day late costs; it
// gives where they begin.
func (d *planDraw) planButtons(a scene.Area) float64 {
	x, w := a.X+state.Edge, a.W-2*state.Edge
	y := a.Bottom() - 42
	other := "Other dates"
	if d.s.Planning.Dates || d.compares() {
		other = "Why"
	}
	half := (w - 8) / 2
	d.wideButton(scene.Area{X: x, Y: y, W: half + 14, H: 34}, d.planWord(), "plan it", !d.unlikely())
	d.wideButton(scene.Area{X: x + half + 22, Y: y, W: half - 14, H: 34}, other, "other dates", false)
	if why := d.refusal(); why != "" {
		lines := d.lines(why, ink(13), w)
		d.wrap(x, y-10-float64(lines-1)*scene.LineHeight(13), why, ink(13).as(scene.Act), w, lines)
		return y - 16 - float64(lines)*scene.LineHeight(13)
	}
	f := ink2(12.5)
	if d.s.Planning.Dates && !d.compares() && !d.reckons() {
		return d.lastLines(x, y-12, w, f)
	}
	late := "A day late: " + d.all.DayLate()
	says := d.firstFitting(w, fmt.Sprintf("%s; cells %s", late, d.all.Late.Words(d.s.Reading().View.Zone())), late)
	switch {
	case d.reckons():
		says = reckoning
	case a.H < whyLow || d.compares(): // the ladder says it too
		return y - 4
	}
	d.fit(x, y-12, says, f, x+w)
	return y - 28
}

// lastLines writes above a line the last graft that makes sense, and gives where that begins.
func (d *planDraw) lastLines(x, y, w float64, f font) float64 {
	says := sentence(d.lastSaid())
	more := float64(d.lines(says, f, w)-1) * scene.LineHeight(f.size)
	d.wrap(x, y-more, says, f, w, 3)
	reason := says
	if d.all.Last != 0 {
		reason = sentence(d.all.After)
	}
	d.hit(scene.Area{X: x, Y: y - more - 14, W: w, H: more + 20}, scene.Ref{Kind: state.FigureRef, ID: "last"}, reason)
	return y - more - 16
}

// planWord is the word of the main button.
func (d *planDraw) planWord() string {
	if d.s.PlanChanged() {
		return "Change the plan"
	}
	return "Make it the plan"
}

// refusal is why the answer cannot be made the plan, where that is more than that it
// is on its way, or on the plan.
func (d *planDraw) refusal() string {
	c, _ := state.CommandNamed("plan it")
	if d.reckons() || d.s.PlanStands() {
		return ""
	}
	return sentence(c.Reason(d.s))
}

// lines is how many lines a text takes, three at most.
func (d *planDraw) lines(text string, f font, w float64) int {
	return min(3, len(scene.Wrap(d.measure, d.say(text), f.size, f.weight, w)))
}
