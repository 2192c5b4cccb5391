package review

import (
	"cmp"
	"fmt"
	"math"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Sum is one part of what a way is worth: in words with its figures, in queens,
// and the numbers it was reckoned with.
type Sum struct {
	Words  string         `json:"words"`
	Queens float64        `json:"queens"`
	Used   []practice.Key `json:"-"`
}

// Title is a way in words.
func (r *Review) Title(w Way) string { return title(w, r.Hand, r.view) }

func (k *nucCase) title(w Way) string { return title(w, k.hand, k.view) }

func title(w Way, hand Hand, v *book.View) string {
	given := "then a cell when there is one"
	if w.Gives() {
		given = "then " + hand.Wares[w.Ware-1].Name
	}
	text := ""
	switch w.Kind {
	case Leave:
		text = "Leave it"
		switch {
		case w.On != 0 && w.Do != "":
			text = w.Do + " by " + w.On.Short()
		case w.On != 0:
			text = "Leave to " + w.On.Short()
		}
	case LookFirst:
		text = lookTitle(w, hand)
	case GiveCell:
		text = "Give a " + hand.Wares[w.Ware-1].Name
	case PutInVirgin:
		text = "Put in a " + hand.Wares[w.Ware-1].Name
	case BreakDown:
		text = "Break down own cells, " + given
	case TakeOut:
		text = "Take her out, " + given
		if w.Unsure {
			text = "Look; without worker brood take her out, " + given
		}
		if w.Gives() {
			text += " on " + (w.On + 1).Short()
		}
	case ShakeOut:
		text = cmp.Or(w.Do, "Shake out")
		if w.Unsure {
			text = cmp.Or(w.Do, "Look; without worker brood shake out")
		}
		if w.Gives() {
			text += ", make up again, " + given
		}
	case MakeUp:
		text = "Make it up, " + given
	case Unite:
		text = "Unite with " + v.Nuc(w.With).Name
	case Feed:
		text = cmp.Or(w.Do, "Feed it")
	default:
		text = [...]string{GiveBrood: "Give open brood", AddBees: "Add a cup of bees", Narrow: "Narrow the entrance", Catch: "Catch the queen"}[w.Kind]
	}
	return text + besides(w) + atDusk(w, v.Zone())
}

// atDusk is when a box is opened while robbers are about.
func atDusk(w Way, zone *time.Location) string {
	if w.Dusk.IsZero() {
		return ""
	}
	return ", at dusk, " + w.Dusk.In(zone).Format("15:04")
}

func lookTitle(w Way, hand Hand) string {
	switch {
	case w.Gives() && w.OwnFirst:
		return "Look first for a virgin of its own; none there: give a " + hand.Wares[w.Ware-1].Name
	case w.OwnFirst:
		return "Look for a virgin of its own; no cell yet"
	case w.Gives() && w.Own:
		return "Look for opened own cells: any → leave; none → " + hand.Wares[w.Ware-1].Name
	case w.Gives():
		return "Look: eggs → leave; none → " + hand.Wares[w.Ware-1].Name
	case w.Own:
		return "Look for opened own cells; no cell yet"
	default:
		return "Look for eggs"
	}
}

func besides(w Way) (text string) {
	if w.Care&WithFeed != 0 && w.Kind != Feed {
		text += ", feed"
	}
	if w.Care&WithNarrow != 0 && w.Kind != Narrow {
		text += ", narrow the entrance"
	}
	return text
}

// If is when what a way gives is given: "if nothing is seen"; "" always.
func (w Way) If() string {
	switch {
	case !w.Gives() || w.Kind != LookFirst:
		return ""
	case w.OwnFirst:
		return "if no virgin of its own"
	case w.Own:
		return "if no opened cell and no eggs"
	default:
		return "if no eggs"
	}
}

// Why says what the worth of a way is made of, in order; the sums add up to it.
func (r *Review) Why(w Way) (all []Sum) {
	p := w.parts
	add := func(queens float64, used []practice.Key, words string, args ...any) {
		if math.Abs(queens) > 1e-12 {
			all = append(all, Sum{fmt.Sprintf(words, args...), queens, used})
		}
	}
	keys := func(k ...practice.Key) []practice.Key { return k }
	queens := fmt.Sprintf("%d of 100 laying by %s, %d of them ready to be caught", percent(w.Lays), r.By.Short(), percent(w.Ready))
	if own := percent(w.Doubtful); own > 0 {
		queens += fmt.Sprintf(", %d of its own raising", own)
	}
	if w.Kind == Catch {
		queens = fmt.Sprintf("the queen caught, and %d of 100 laying again by %s", percent(w.Lays), r.By.Short())
	}
	add(p.queens, keys(practice.ReadyAfterFirstEgg, practice.WorthNucDay, practice.WorthOwnQueen, practice.AcceptCell), "%s", queens)
	add(p.bees, keys(practice.PriceCup, practice.BeesPerCup, practice.LayingWorkersMean), "its bees, %.1f cups, as far as they are kept", p.cups)
	add(-p.lost*(p.queens+p.bees), keys(practice.WeakLost, practice.LightLost, practice.StarvedAfter, practice.RobbingWatch, practice.RobbedLost, practice.NarrowHelps), "%s: %d of 100 such nucs are lost", p.cause(), percent(p.lost))
	add(p.again, keys(practice.LookAgainBy, practice.PriceCell, practice.WorthNucDay), "a cell for those found without a queen at the next look")
	add(p.found, keys(practice.LookAgainFrom, practice.WorthNucDay, practice.PriceCup), "%s", p.soon(w))
	if w.Gives() {
		add(-p.ware, keys(practice.PriceCell, practice.PriceCellFalls, practice.PriceVirgin), "a %s, given %d times of 100", r.Hand.Wares[w.Ware-1].Name, percent(w.Given))
	}
	add(-p.goods, keys(practice.PriceCup, practice.PriceBroodComb), "bees or brood from others")
	add(-p.minutes, keys(practice.WorthMinute), "%g min of work", w.Minutes)
	return all
}

// MoreWords say what one more would be worth, as a bound where it is not proven.
func (r *Review) MoreWords(thing string, m More) string {
	if m.Exact {
		return fmt.Sprintf("%s would be worth %s", thing, r.Worth(m.Worth))
	}
	return fmt.Sprintf("%s would be worth %s at most", thing, r.Worth(m.Worth))
}

// soon is what is known, or free, days sooner.
func (p parts) soon(w Way) string {
	switch {
	case w.Kind == LookFirst:
		return "found without a queen days sooner"
	case w.Kind == ShakeOut && w.Unsure:
		return "its bees, and its box free days sooner, where no worker brood is found"
	default:
		return "its box is free days sooner"
	}
}

// cause is why such nucs are lost.
func (p parts) cause() string {
	switch {
	case p.weak:
		return "weak"
	case p.light:
		return "without food until somebody comes again"
	default:
		return "exposed to robbers"
	}
}

func percent(p float64) int { return int(math.Round(100 * p)) }

// Worth is a worth in words: in queens, and in the keeper's money where a queen has
// a price.
func (r *Review) Worth(queens float64) string {
	said := fmt.Sprintf("%.2f queens", queens)
	price, word := r.numbers.Get(practice.PriceQueen), r.numbers.Money()
	switch {
	case price == 1 && word == "":
		return said
	case word == "":
		word = "in your money"
	}
	const whole = 10 // from so much on nobody counts the small change
	if money := queens * price; math.Abs(money) < whole {
		return fmt.Sprintf("%s · %.2f %s", said, money, word)
	}
	return fmt.Sprintf("%s · %.0f %s", said, queens*price, word)
}
