package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// footButtons are what is done with a try-out, below the plan; each keeps its place,
// whether it can be done or not.
var footButtons = []layingTool{{"Keep", "keep layout"}, {"Print", "print layout"}, {"Further", "search further"}, {"Drop", "drop layout"}}

// footWhy is that of the reasons under the buttons.
var footWhy = ink2(12.5)

// panelFootHigh is how high the foot of the panel is, with what it says under its buttons.
func (d *layingDraw) panelFootHigh() float64 {
	const buttons, line = 184.0, 1
	lines := 0
	for _, why := range d.whyNot() {
		lines += min(2, len(scene.Wrap(d.measure, d.say(why), footWhy.size, footWhy.weight, d.Panel.W-2*state.Edge)))
	}
	return buttons + float64(max(line, lines))*scene.LineHeight(footWhy.size)
}

// smallButtons draws what else is done with a try-out, all in one row.
func (d *layingDraw) smallButtons(x, y, w float64) {
	const gap, air, high = 6.0, 28.0, 34.0
	words, f := 0.0, ink(14).medium()
	for _, b := range footButtons {
		words += d.width(b.word, f)
	}
	n := float64(len(footButtons))
	pad := min(air, (w-words-(n-1)*gap)/n)
	for _, b := range footButtons {
		a := scene.Area{X: x, Y: y, W: d.width(b.word, f) + pad, H: high}
		d.wideButton(a, b.word, b.command, false)
		x = a.Right() + gap
	}
}

// whyNot are the reasons of the buttons in the foot that cannot be used now, each once:
// alone where it is that of all, else behind the words of its buttons.
func (d *layingDraw) whyNot() (why []string) {
	words := map[string]string{}
	var order []string
	for _, b := range slices.Concat([]layingTool{{"Plan", "plan layout"}}, footButtons) {
		c, _ := state.CommandNamed(b.command)
		reason := c.Reason(d.s)
		switch {
		case reason == "":
			continue
		case words[reason] == "":
			order = append(order, reason)
			words[reason] = b.word
		default:
			words[reason] += ", " + b.word
		}
	}
	for _, reason := range order {
		if len(order) == 1 && d.s.Shut() == reason {
			return []string{sentence(reason)}
		}
		why = append(why, words[reason]+": "+reason)
	}
	return why
}
