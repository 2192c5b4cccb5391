package view

import (
	"math"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// layingTool is a command above the maps, with its word.
type layingTool struct{ word, command string }

// kit are the tools that are out.
func (d *layingDraw) kit() []layingTool {
	if d.s.Laying.Ground {
		return groundTools
	}
	return layingTools
}

// layingTools are the commands above the maps, with their words.
var layingTools = []layingTool{
	{"Turn left", "turn left"},
	{"Right", "turn right"},
	{"Swing", "swing"},
	{"Line up", "line up"},
	{"Spread", "spread"},
	{"Arc", "bend"},
	{"New beside", "double"},
	{"Hold", "hold"},
	{"Mark fronts", "mark fronts"},
	{"Snap", "grid"},
	{"Measure", "measure"},
	{"As it stands", "as it stands"},
	{"Ground", "ground tools"},
}

// toolsApart is from one row of tools to the next, dp.
const toolsApart = 28.0

// tools draws what is done with the picked stands, each with its key where there is room.
func (d *layingDraw) tools(a scene.Area) {
	d.rule(a.X, a.Bottom()-1, a.Right(), a.Bottom()-1, scene.Hair)
	keys, gap := true, 18.0
	room := a.W - 2*state.Edge
	if rows := 1 + math.Floor((a.H-2*toolsApart+12)/toolsApart); d.toolsWidth(keys, gap)*1.1 > room*rows {
		keys, gap = false, 14
	}
	x, y := a.X+state.Edge, a.Y+27
	for _, t := range d.kit() {
		if x+d.toolWidth(t.word, t.command, keys) > a.Right()-state.Edge+2 {
			x, y = a.X+state.Edge, y+toolsApart
			if y > a.Bottom() {
				return // a low window leaves them to their keys
			}
		}
		x = d.tool(x, y, t.word, t.command, keys) + gap
	}
}

func (d *layingDraw) toolsWidth(keys bool, gap float64) (w float64) {
	for _, t := range d.kit() {
		w += d.toolWidth(t.word, t.command, keys) + gap
	}
	return w - gap
}

func (d *layingDraw) toolWidth(word, command string, keys bool) float64 {
	w := d.width(word, ink(13.5).medium())
	if key := toolKey(command); keys && key != "" {
		w += 5 + d.width(key, ink2(12))
	}
	return w
}

func toolKey(command string) string {
	c, _ := state.CommandNamed(command)
	return firstKey(c.Keys)
}

// tool writes one tool: pale while it cannot be used, underlined while it is on.
func (d *layingDraw) tool(x, y float64, word, command string, keys bool) float64 {
	c, _ := state.CommandNamed(command)
	f := ink(13.5).medium()
	if c.Reason(d.s) != "" {
		f = f.as(scene.Ink3)
	}
	end := d.text(x, y, word, f)
	if d.s.ToolOn(command) {
		d.rect(scene.Area{X: x, Y: y + 5, W: end - x, H: 2.5}, scene.Pen)
	} else if d.hovers(state.CommandOf(command)) {
		d.rule(x, y+6, end, y+6, scene.Ink2)
	}
	if key := toolKey(command); keys && key != "" {
		end = d.text(end+5, y, key, ink2(12))
	}
	d.command(target(scene.Area{X: x - 5, Y: y - 16, W: end - x + 10, H: 24}), command)
	return end
}
