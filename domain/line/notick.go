package line

import (
	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// untold are the acts that a tick cannot tell: what it does not say, and what to
// type instead.
var untold = map[rules.Act][2]string{
	rules.ActCatchQueen:   {"does not say which cage", "k7"},
	rules.ActTakeOutQueen: {"does not say what became of her", "k0, or k7 for a cage"},
	rules.ActLookForEggs:  {"does not say what was seen", "q e, or n"},
	rules.ActLookForBrood: {"does not say what was seen", "q e b4, or n"},
	rules.ActLookInside:   {"does not say what was seen", "q e b4, or n"},
	rules.ActSearchBrood:  {"does not say what was seen", "n e0 b0, or what there was"},
	rules.ActCheckBees:    {"does not say how many", "s4"},
	rules.ActUnite:        {"does not say with which nuc", "uD4"},
	rules.ActShakeOut:     {"does not say whether it was done", "shaken out"},
}

// noTick says that nothing of a section can be ticked off. Of one nuc for which
// an act is planned it says why a tick does not tell it, and what to type.
func (p *parser) noTick(d *draft, nucs []*book.Nuc) {
	if len(nucs) == 1 && p.Asked != nil {
		act := p.Asked(nucs[0].NucNamed.Nuc)
		if told, ok := untold[act]; ok {
			p.wrong(d.from, "to "+act.String()+" is planned, and a tick "+told[0], "type %s", told[1])
			return
		}
	}
	p.wrong(d.from, "nothing that can be ticked off is written for "+list(d.unwritten), "type what was seen or done there, or leave it out")
}
