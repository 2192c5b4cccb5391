package view

import (
	"strings"

	"lidmark/ui/scene"
)

// shortName is a name no wider than width: what is cut is cut before its last word, which
// tells it from its neighbours: "Upper or… Q4".
func (p *sheet) shortName(name string, f font, width float64) string {
	if p.width(name, f) <= width {
		return name
	}
	i := strings.LastIndex(name, " ")
	if i < 0 {
		return scene.Shorten(p.measure, name, f.size, f.weight, width)
	}
	head, last := []rune(strings.TrimRight(name[:i], " ")), name[i:]
	for n := len(head) - 1; n > 0; n-- {
		if short := strings.TrimRight(string(head[:n]), " ") + "…" + last; p.width(short, f) <= width {
			return short
		}
	}
	return scene.Shorten(p.measure, strings.TrimSpace(last), f.size, f.weight, width)
}
