package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// folder draws before the head of a section, about the line y, whether it is
// folded, and gives where its word begins. A click folds and unfolds.
func (p *sheet) folder(x, y float64, sec *state.Section) float64 {
	tip := []scene.Point{at(x, y-3), at(x+9, y-3), at(x+4.5, y+3)}
	word := "fold"
	if sec.Folded {
		tip, word = []scene.Point{at(x+1.5, y-4.5), at(x+7.5, y), at(x+1.5, y+4.5)}, "unfold"
	}
	p.add(scene.Poly{Points: tip, Fill: scene.Ink2})
	p.hit(scene.Around(at(x+4.5, y), leastTarget), scene.Ref{Kind: state.FoldRef, ID: sec.Key}, word+" "+sec.Word)
	return x + folderWide
}

// folderWide is from the sign that folds a section to its word, dp.
const folderWide = 16.0

// sectionWord writes the word of a section no further than to, so that a click
// selects its nucs, and gives where it ends.
func (p *sheet) sectionWord(x, y float64, sec *state.Section, to float64) float64 {
	return p.sectionLine(x, y, sentence(sec.Word), sec, to)
}

// sectionLine is sectionWord with the word, or a part of it, as given.
func (p *sheet) sectionLine(x, y float64, line string, sec *state.Section, to float64) float64 {
	ref := scene.Ref{Kind: state.HeadRef, ID: sec.Key}
	word := sentence(sec.Word)
	end := p.fit(x, y, line, ink(14).semi(), to)
	if p.hovers(ref) {
		p.rule(x, y+4, end, y+4, scene.Ink2)
	}
	p.hit(target(scene.Area{X: x, Y: y - 14, W: end - x, H: 20}), ref, word+"  "+plural(len(sec.Nucs), "nuc", "nucs")+"; a click selects them")
	return end
}

// sectionCount is what stands beside the word of a section: its note, and how
// many nucs there are.
func sectionCount(sec *state.Section) string {
	count := plural(len(sec.Nucs), "nuc", "nucs")
	if sec.Note != "" {
		return sec.Note + ", " + count
	}
	return count
}

// sectionHead draws the head of a section across an area, over rows of lids or of
// the table.
func (p *sheet) sectionHead(a scene.Area, sec *state.Section) {
	y := a.Y + a.H - 12
	x := p.folder(a.X, y-5, sec)
	count := sectionCount(sec)
	end := a.Right()
	if sec.Need > 0 {
		tone, _ := p.alarm()
		end = p.right(end, y, needWords(sec.Need, p.s), ink(13).semi().as(tone)) - 12
	}
	x = p.sectionWord(x, y, sec, end-p.width(count, ink2(13))-10)
	p.text(x+10, y, count, ink2(13))
	p.rule(a.X, y+6, a.Right(), y+6, scene.Hair)
}

// headsMenu writes in which order the nucs stand and under which heads, which opens the
// list of all, and gives where it ends. Where there is no room it is left out.
func (p *sheet) headsMenu(x, y, to float64) float64 {
	f := ink2(13)
	if p.hovers(state.CommandOf("heads")) {
		f = f.as(scene.Ink)
	}
	words := p.s.OrderWords()
	i := slices.IndexFunc(words, func(word string) bool { return x+p.width(word, f)+16 <= to })
	if i < 0 {
		return x
	}
	word := words[i]
	end := p.text(x, y, word, f)
	p.add(scene.Poly{Points: []scene.Point{at(end+6, y-8), at(end+15, y-8), at(end+10.5, y-2)}, Fill: scene.Ink2})
	p.command(target(scene.Area{X: x - 6, Y: y - 14, W: end + 27 - x, H: 20}), "heads")
	return end + 15
}
