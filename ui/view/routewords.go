package view

import (
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// folded draws a task over more than one line: who and when above what and why.
func (r routeDraw) folded(t rules.Task, y float64, lines int) {
	if len(r.r.TaskNames(t)) == 0 {
		r.unnamed(t, y, lines)
		return
	}
	left, right, second := r.line+20, r.area.Right()-state.Edge, y+5+state.RouteMore+1
	r.who(t, y, r.by(t, y)-10)
	if lines == 1 {
		r.what(t, left, second, right)
		return
	}
	said := r.broken(t.Title, taskFont, right-left)
	next := r.written(left, second, said, r.toned(taskFont), right, lines)
	r.written(left, next, r.broken(t.Why, whyFont, right-left), whyFont, right, lines-len(said))
}

// broken is a text in lines as its row is reckoned, so that none of them stays empty.
func (r routeDraw) broken(text string, f font, width float64) []string {
	return scene.Wrap(state.Reckoner{}, r.say(text), f.size, f.weight, width)
}

// written writes lines a further line of a task apart, and gives where the next one would
// stand.
func (r routeDraw) written(x, y float64, lines []string, f font, to float64, most int) float64 {
	for i, l := range lines {
		if i >= most {
			break
		}
		if i == most-1 && len(lines) > most {
			l += " …"
		}
		r.over(x, y, l, f, to)
		y += state.RouteMore
	}
	return y
}

// over writes a line that the bar of the day looked at does not run through.
func (r routeDraw) over(x, y float64, text string, f font, to float64) float64 {
	const near, above, below = 5.0, 15.0, 6.0
	if bar := r.dayBar(); r.Axis && text != "" && x < bar.Right() && min(x+r.width(text, f), to) > bar.X-near {
		r.rect(scene.Area{X: bar.X - 1, Y: y - above, W: bar.W + 2, H: above + below}, r.ground)
	}
	return r.fit(x, y, text, f, to)
}

// unnamed draws a task over more than one line that names nobody: what to do
// begins on the first one, before when; why stands below.
func (r routeDraw) unnamed(t rules.Task, y float64, lines int) {
	const least = 80.0 // of the columns of minutes and boxes
	left, right := r.line+20, r.area.Right()-state.Edge
	x, end := r.lids(t, y, 0), right-least
	if said, _ := r.byWords(t); said != "" {
		r.by(t, y)
		end = r.area.Right() - r.End - r.r.ByRoom(t)
	}
	lid := 0.0
	if x > left {
		lid = state.LidRoom
	}
	said := state.BesideFirst(r.say(t.Title), end-left-lid, right-left-lid)
	next := r.written(x, y+5, said, r.toned(taskFont), right, lines) + 1
	r.written(left, next, r.broken(t.Why, whyFont, right-left), whyFont, right, lines+1-len(said))
}

// what writes what to do and, as far as there is room, why.
func (r routeDraw) what(t rules.Task, x, y, end float64) {
	x = r.over(x, y, t.Title, r.toned(taskFont), end)
	r.over(x+10, y, t.Why, whyFont, end)
}
