package view

import (
	"fmt"
	"time"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// sideFootHigh is the height kept for the buttons at the foot of the day's pane, dp.
const sideFootHigh = 58.0

// daySide draws the minutes of the day against the time there is, what to do
// with less, the kit to pack, the caution and the buttons.
func (p *sheet) daySide(a scene.Area) {
	p.clipped(a, scene.Tag{}, func() {
		const column = 256.0
		x, all := a.X+state.Edge, a.W-2*state.Edge
		w := min(all, column)
		plan := p.s.Reading().Plan()
		y := a.Y + 30
		p.fit(x, y, longDay(p.s.Looked()), ink(20).semi(), a.Right()-8)
		y += 30
		p.fit(x, y, p.workWords(), ink(14), x+all)
		p.moreWords(x, y+scene.LineHeight(13)+2, x+w) // its line is kept on every day
		top := y + scene.LineHeight(13) + 14
		p.timeBar(scene.Area{X: x, Y: top, W: w, H: 16})
		y = top + 16 + 44
		body, foot := a.Bottom()-sideFootHigh, 0.0
		if shut := p.refused(all, p.sideFoot(all)...); shut != "" {
			p.fit(x, body+2, shut, ink2(13), x+all)
			foot += state.RefusedLine
		}
		kit := scene.Area{X: x, W: w}
		if beside := x + w + 1.5*state.Edge; a.Right()-beside > w*0.75 {
			kit = scene.Area{X: beside, Y: top + 8, W: min(w, a.Right()-beside-state.Edge/2)}
		}
		if y+lessHigh < body {
			high := lessHigh // the kit begins there whatever they say
			if len(plan.Stops) > 0 {
				if end := p.lessButtons(x, y-26, w); p.s.DayPage.Less.On() {
					high = end + lessGap + 24 - y
				}
			}
			y += high
			if y+rainHigh+rainLeast < body {
				if len(plan.Stops) > 0 {
					p.rain(scene.Area{X: x, Y: y - 24, W: w, H: rainHigh - 6})
				}
				y += rainHigh
			}
			y += 13
			below := kitLeast
			if kit.Y > 0 {
				below = 0
			}
			y += p.hands(scene.Area{X: x, Y: y - 36, W: w, H: body - y + 36 - below})
		}
		if kit.Y == 0 {
			kit.Y = y
		}
		kit.H = p.caution(scene.Area{X: x, Y: y - 20, W: all, H: body - foot - y + 20}) - kit.Y
		p.kit(p.s.Reading().Kit(p.s.DayPage.Less), kit)
		end := x
		for _, b := range p.sideFoot(all) { // last: Tab goes from the top down
			end = p.button(end, a.Bottom()-sideFootHigh+10, b.word, b.command, b.main) + 8
		}
	})
	p.rule(a.Right()-1, a.Y, a.Right()-1, a.Bottom(), scene.Rule)
}

// kitLeast is the height kept for the kit below who comes, dp.
const kitLeast = 100.0

// sideFoot are the buttons at the pane's foot that have room. The sheet is the main one
// where there is something to print.
func (p *sheet) sideFoot(room float64) []button {
	plan, typed := p.s.Reading().Plan(), button{"Type it in", "type it in", false}
	all := []button{{"Print the sheet", "print route", true}, typed}
	switch {
	case len(plan.Stops)+len(plan.Waits) == 0:
		all = []button{typed}
	case p.s.DayPage.Less.Nobody: // no round, and no sheets
		all = []button{{"As planned", "as planned", true}}
	case p.s.DayPage.Less.On() && len(p.s.Hands()) > 0:
		all = []button{{"Make it the day", "make the day", true}, {"A sheet each", "print crew", false}}
	}
	wide := 0.0
	for _, b := range all {
		wide += p.width(b.word, ink(14).medium()) + 28 + 8
	}
	if wide > room+16 {
		all = all[:1]
	}
	return all
}

// lessHigh is from the first of the buttons for less time to what stands below them, dp:
// the second of them says two lines at most. On a short day the kit wants the room.
const lessHigh = 121.0

// lessGap is what lies between them, dp.
const lessGap = 8.0

// lessButtons draws what can be said when there is less time than planned, and gives where that ends.
func (p *sheet) lessButtons(x, y, w float64) float64 {
	less, h := p.s.DayPage.Less, p.s.HoursLeft()
	hours := less
	hours.Hours, hours.Nobody = h, false
	word := "I have only " + hoursWord(h)
	if len(p.s.Hands()) > 1 {
		word = "Only " + hoursWord(h) + " each"
	}
	y = p.lessButton(scene.Area{X: x, Y: y, W: w}, word, hours, "only hours", less.Hours > 0, 1) + lessGap
	return p.lessButton(scene.Area{X: x, Y: y, W: w}, p.nobodyWord(), state.Less{Nobody: true}, "nobody comes", less.Nobody, 2)
}

// nobodyWord names the day on which nobody comes: the one looked at.
func (p *sheet) nobodyWord() string {
	if p.s.Away() {
		return "Nobody comes on " + p.s.Looked().Short()
	}
	return "Nobody comes today"
}

// lessButton draws one of them: a word, and what it means below. While it holds
// the hours can be changed beside it. It is as high as so many lines at most need;
// its end is given.
func (p *sheet) lessButton(a scene.Area, word string, means state.Less, command string, on bool, most int) float64 {
	const one = 46.0
	to := a.Right() - 12
	if on && command == "only hours" {
		to -= 66
	}
	says, more := p.s.Reading().LessSays(means)
	if a.X+12+p.width(says+more, ink2(13)) <= to {
		says += more
	}
	lines := len(scene.Wrap(p.measure, p.say(says), 13, scene.Regular, to-a.X-12))
	a.H = one + float64(min(lines, most)-1)*scene.LineHeight(13)
	box := scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)}
	if on {
		box.Fill, box.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
	}
	box.Tag = scene.Tag{Ref: state.CommandOf(command), Reason: p.says(command)}
	p.hoverRing(a, box.Ref)
	p.add(box)
	if on && command == "only hours" {
		p.wideButton(scene.Area{X: a.Right() - 70, Y: a.Y + 8, W: 30, H: 30}, "−", "hour less", false)
		p.wideButton(scene.Area{X: a.Right() - 36, Y: a.Y + 8, W: 30, H: 30}, "+", "hour more", false)
	}
	p.fit(a.X+12, a.Y+19, word, ink(14).semi(), to)
	p.wrap(a.X+12, a.Y+36, says, ink2(13), to-a.X-12, most)
	return a.Bottom()
}

// hoursWord is a number of hours, small ones in words.
func hoursWord(n int) string {
	words := [...]string{"", "one hour", "two hours", "three hours", "four hours", "five hours", "six hours"}
	if n < len(words) {
		return words[n]
	}
	return fmt.Sprintf("%d hours", n)
}

// caution writes at the foot of an area what must not be forgotten, in few words where
// the kit needs the room, and gives where it begins.
func (p *sheet) caution(a scene.Area) float64 {
	const said, short, foot, kit = "Stings can kill. Phone charged and within reach; whoever comes along knows the plan.", "Stings can kill: phone within reach", 6.0, 120.0
	lines := scene.Wrap(p.measure, said, 13, scene.Regular, a.W)
	if scene.LineHeight(13)*float64(len(lines))+foot+kit > a.H {
		lines = []string{short}
	}
	high := scene.LineHeight(13) * float64(len(lines))
	if high+foot > a.H {
		return a.Bottom() - foot
	}
	top := a.Bottom() - foot - high
	for i, line := range lines {
		p.fit(a.X, top+13+float64(i)*scene.LineHeight(13), line, ink2(13), a.Right())
	}
	return top - 12
}

// dayTime are the minutes of a day: done, left to do, and the time for it.
type dayTime struct {
	done, left, free float64
	late             float64 // by which the last of it ends after all free hours
	told             bool
	home             string
	ends             time.Time // of the free hours, where the last of the work ends after them
	underWay         bool
}

// all is the time there is, with what is done.
func (t dayTime) all() float64 {
	if t.underWay {
		return t.free + t.done // the time there is, is what is left of it
	}
	return t.free
}

// over is what of the work the day has no time for, or has none at its hour.
func (t dayTime) over() float64 { return max(0, t.done+t.left-t.all(), t.late) }

func (p *sheet) dayTime() dayTime {
	r := p.s.Reading()
	plan := r.Plan()
	t := dayTime{done: r.DoneMinutes(), left: plan.Minutes, free: plan.Free, told: plan.Told, underWay: r.UnderWay, late: plan.Late}
	home := plan.Home
	if less := p.s.DayPage.Less; less.On() {
		t.done, t.told, t.late = 0, true, 0
		t.left, t.free, home = r.LessTime(less)
	}
	if p.s.Ahead() {
		t.done = 0
	}
	if !home.IsZero() && t.left > 0 {
		t.home = "home by " + home.In(r.View.Zone()).Format("15:04")
		if t.late > 0 {
			t.ends = home.In(r.View.Zone()).Add(-time.Duration(t.late * float64(time.Minute)))
		}
	}
	return t
}

// workWords says how long the day's work is and how much time there is.
func (p *sheet) workWords() string {
	t := p.dayTime()
	if p.s.DayPage.Less.Nobody {
		return minutes(t.left) + " of work cannot wait"
	}
	said := minutes(t.left) + " of work"
	if t.done > 0 {
		said = minutes(t.left) + " left"
	}
	if over := p.s.Reading().HoursOver() && !p.s.DayPage.Less.On(); t.told && !over { // that none is left stands above the bar
		said += ", " + minutes(t.free) + " of time"
	}
	return said
}

// moreWords says what is done of the work and when it ends, or ahead what of it is best
// done on that day, as the ribbon shows it; and at the right what there is no time for.
func (p *sheet) moreWords(x, y, to float64) {
	t := p.dayTime()
	if t.told {
		tone, _ := p.alarm()
		to = p.right(to, y, p.overWords(t), ink(13).semi().as(tone)) - 8
	}
	done := ""
	if t.done > 0 {
		done = minutes(t.done) + " done"
	}
	both := done + ", " + t.home
	if done == "" || t.home == "" {
		both = done + t.home
	}
	says := []string{both, t.home, done}
	switch {
	case p.s.DayPage.Less.Nobody:
		says = []string{"and nobody comes"}
	case p.s.Ahead():
		best := minutes(p.s.Present().WorkOn(p.s.Looked()).Minutes) + " best on this day"
		says = []string{best + ", the rest left over", best}
	}
	for _, said := range says {
		if p.width(said, ink2(13)) <= to-x {
			p.text(x, y, said, ink2(13))
			return
		}
	}
}

// overWords says how much of the work the day has no time for.
func (p *sheet) overWords(t dayTime) string {
	switch over := t.over(); {
	case p.s.Reading().HoursOver() && !p.s.DayPage.Less.On():
		return "no time left today"
	case t.free == 0 && p.s.DayPage.Less.Nobody:
		return ""
	case t.free == 0:
		return "nobody is free"
	case over > 0 && over == t.late && !t.ends.IsZero():
		return "hours end at " + t.ends.Format("15:04")
	case over > 0:
		return minutes(over) + " over"
	default:
		return ""
	}
}

// timeBar draws what is done, what is left and the time there is, where somebody
// told it.
func (p *sheet) timeBar(a scene.Area) {
	t := p.dayTime()
	if !t.told {
		return
	}
	tone, tint := p.alarm()
	all, free := t.done+t.left, t.all()
	k := a.W / max(all, free, 1)
	p.add(scene.Rect{Area: a, Fill: scene.Off})
	p.rect(scene.Area{X: a.X, Y: a.Y, W: min(all, free) * k, H: a.H}, scene.Ink2)
	if over := t.over(); over > 0 {
		p.add(scene.Rect{
			Area: scene.Area{X: a.X + (all-over)*k, Y: a.Y, W: over * k, H: a.H}, Fill: tint,
			Hatch: scene.Hatch{Role: tone, Pitch: 5, Weight: 1.4}, Stroke: stroke(tone, 1.01),
		})
	}
	p.rect(scene.Area{X: a.X, Y: a.Y, W: t.done * k, H: a.H}, scene.Good)
	edge := a.X + free*k
	p.add(scene.Line{From: at(edge, a.Y-4), To: at(edge, a.Bottom()+6), Stroke: stroke(scene.Ink, 2)})
}
