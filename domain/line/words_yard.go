package line

import (
	"fmt"

	"lidmark/domain/book"
)

func (t teller) place(f book.Fact) string {
	switch f := f.(type) {
	case book.YardDescribed:
		return commas("yard "+f.Name+ifSaid(f.Home, " (home)"), ifSaid(f.Drive > 0, figureOf(f.Drive)+" min from home"), unless("zone ", f.Zone))
	case book.StandSet:
		return "stand" + unless(" ", f.Letter) + t.at("in", f.Yard.Subject()) + " with " + count(float64(f.Places), "place")
	case book.FeatureDrawn:
		return or(f.What.String(), "feature") + unless(" ", f.Label) + " drawn" + t.at("in", f.Yard.Subject())
	case book.WindSaid:
		return "wind mostly from " + figureOf(f.From) + "°" + t.at("in", f.Yard.Subject())
	case book.GroundPictured:
		return ifSaid(len(f.JPEG) == 0, "no ") + "photograph laid under the map" + t.at("of", f.Yard.Subject())
	case book.LayoutTried, book.LayoutPlanned, book.LayoutDropped:
		return t.layout(f)
	case book.ForageSeen:
		return or(f.Forage.String(), "forage not known") + ifSaid(f.Wasps, ", wasps about") + t.at("in", f.Yard.Subject())
	case book.WeatherSeen:
		return t.weather(f) + t.at("in", f.Yard.Subject())
	case book.WeatherHours:
		return t.weatherHours(f) + t.at("in", f.Yard.Subject())
	case book.WeatherNormal:
		return weatherNormal(f) + t.at("in", f.Yard.Subject())
	default:
		return ""
	}
}

func (t teller) layout(f book.Fact) string {
	switch f := f.(type) {
	case book.LayoutTried:
		return commas("try-out"+unless(" ", f.Name)+" kept"+t.at("for", f.Yard.Subject()), ifSaid(len(f.Stands) > 0, count(float64(len(f.Stands)), "stand")+" moved or turned"), ifSaid(len(f.Fronts) > 0, count(float64(len(f.Fronts)), "front")+" painted"), ifSaid(len(f.Faces) > 0, count(float64(len(f.Faces)), "entrance")+" turned"))
	case book.LayoutPlanned:
		return t.called("try-out", f.Layout.Subject()) + " made the plan" + t.at("of", f.Yard.Subject()) + " from " + t.names.day(f.From)
	case book.LayoutDropped:
		return t.called("try-out", f.Layout.Subject()) + " thrown away" + t.at("in", f.Yard.Subject())
	default:
		return ""
	}
}

func (t teller) nuc(f book.Fact) string {
	switch f := f.(type) {
	case book.BoxBuilt:
		return commas("box"+unless(" ", f.Number)+unless(" ", f.Model)+" with "+count(float64(f.Nucs), "nuc"), ifSaid(f.Thin, "thin wood"))
	case book.NucNamed:
		sides := ifSaid(f.Sides > 0, " with "+count(float64(f.Sides), "side")+ifSaid(f.Side > 0, " of "+figureOf(f.Side)+" dm²"))
		return "nuc" + unless(" ", f.Name) + or(sides, " named") + t.at("in box", f.Box.Subject())
	case book.NucPlaced:
		return t.called("nuc", f.Nuc.Subject()) + " set up" + t.at("in", f.Yard.Subject()) + t.at("on stand", f.Stand.Subject()) + ifSaid(f.Place > 0, fmt.Sprintf(" place %d", f.Place))
	case book.NucMadeUp:
		return t.madeUp(f)
	case book.EntranceSet:
		if f.Area == 0 {
			return "entrance" + t.at("of", f.Nuc.Subject()) + " shut"
		}
		return "entrance" + t.at("of", f.Nuc.Subject()) + " set to " + figureOf(f.Area) + " cm²"
	case book.FrontMarked:
		return "front" + t.at("of", f.Nuc.Subject()) + " marked" + unless(" ", f.Colour) + unless(" ", f.Shape)
	case book.LidPainted:
		return strokes[f.Stroke] + t.at("on", f.Nuc.Subject())
	default:
		return ""
	}
}

var strokes = map[book.Stroke]string{
	book.NoStroke: "lid wiped", book.Settled: "one stroke: settled", book.Watch: "two strokes: watch", book.Act: "cross: act",
}

func (t teller) madeUp(f book.NucMadeUp) string {
	with := commas(ifSaid(f.Cups > 0, cupsSaid(f.Cups)+t.at("from", f.From.Subject())), ifSaid(f.Capped > 0, "capped brood "+count(f.Capped, "palm")),
		ifSaid(f.Open > 0, "open brood "+count(f.Open, "palm")), ifSaid(f.Food > 0, "food "+figureOf(f.Food)+" g"))
	return t.named(f.Nuc) + "made up" + unless(" with ", with) + ifSaid(f.Cups == 0, t.at("from", f.From.Subject())) + ifSaid(f.Shut, ", shut in")
}

func (t teller) care(f book.Fact) string {
	switch f := f.(type) {
	case book.BeesAdded:
		return cupsSaid(f.Cups) + t.at("from", f.From) + or(t.at("into", f.Nuc.Subject()), " added")
	case book.BroodGiven:
		return t.brood(f)
	case book.Fed:
		return fedSaid(f.Litres, f.Fondant) + t.at("to", f.To)
	default:
		return ""
	}
}

func (t teller) brood(f book.BroodGiven) string {
	what := commas(ifSaid(f.Combs > 0, count(f.Combs, "comb")+" of brood"),
		ifSaid(f.Capped > 0, "capped brood "+count(f.Capped, "palm")), ifSaid(f.Open > 0, "open brood "+count(f.Open, "palm")))
	return or(what, "brood") + t.at("from", f.From) + or(t.at("into", f.To), " given")
}

func (t teller) end(f book.Fact) string {
	switch f := f.(type) {
	case book.United:
		return t.named(f.Nuc) + "united" + t.at("with", f.With) + ifSaid(f.With == t.card && !t.card.IsZero(), " with this one")
	case book.ShakenOut:
		return t.named(f.Nuc) + "shaken out"
	case book.Robbed:
		return t.named(f.Nuc) + "robbed"
	case book.NucLost:
		return t.named(f.Nuc) + "lost" + unless(": ", f.How.String())
	default:
		return ""
	}
}

// named is the nuc's name before what happened to it, as in "A3 robbed".
func (t teller) named(n book.NucID) string {
	if name := t.called("", n.Subject()); name != "" {
		return name[1:] + " "
	}
	return ""
}
