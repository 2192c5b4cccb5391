package line

import (
	"strconv"
	"strings"

	"lidmark/domain/book"
)

// What the codes with a figure are read back as. [Words] says the same of the
// facts they become.

func broodWords(v value) string { return broodSaid(book.Said(v.n)) }

func broodSaid(a book.Amount) string {
	if a.None() {
		return "no capped brood"
	}
	return "capped brood " + count(a.Or(0), "palm")
}

func ownWords(v value) string {
	if !v.has {
		return ownSaid(1)
	}
	return ownSaid(v.n)
}

func ownSaid(n float64) string {
	switch n {
	case 0:
		return "no own cells seen"
	case 1:
		return "own cells seen"
	default:
		return figureOf(n) + " own cells seen"
	}
}

func cellWords(v value) string { return "cell from batch " + v.String() + " given" }

func virginWords(v value) string { return "virgin " + v.name + " put in" }

func sideWords(v value) string { return sidesSaid(v.n) }

func sidesSaid(n float64) string {
	if n == 0 {
		return "no bees left"
	}
	return "bees on " + count(n, "side")
}

func storeWords(v value) string { return storesSaid(v.n) }

func storesSaid(n float64) string {
	if n == 0 {
		return "no stores"
	}
	return "stores " + figureOf(n) + " of 3"
}

func feedWords(v value) string {
	var d deed
	sayFed(&d, v)
	return v.said.Say(fedSaid(d.litres, d.grams))
}

func fedSaid(litres, grams float64) string {
	switch {
	case litres > 0 && grams > 0:
		return "fed " + figureOf(litres) + " l and " + figureOf(grams) + " g fondant"
	case grams > 0:
		return "fed " + figureOf(grams) + " g fondant"
	case litres > 0:
		return "fed " + figureOf(litres) + " l"
	default:
		return "fed"
	}
}

func cupWords(v value) string { return cupsSaid(v.n) + " added" }

func cupsSaid(n float64) string { return count(n, "cup") + " of bees" }

func catchWords(v value) string {
	if v.has {
		return "queen caught, cage " + v.String()
	}
	return "queen caught"
}

func temperWords(v value) string { return temperSaid(v.n) }

func temperSaid(n float64) string {
	words := [...]string{"calm", "lively", "nervous", "fierce"}
	if i := int(n) - 1; i >= 0 && i < len(words) {
		return "temper: " + words[i]
	}
	return "temper " + figureOf(n)
}

// count is a figure and what it counts: "1 palm", "4 palms".
func count(n float64, what string) string {
	if n != 1 {
		what += "s"
	}
	return figureOf(n) + " " + what
}

func figureOf(n float64) string { return strconv.FormatFloat(n, 'f', -1, 64) }

// list joins words as one says them: "3", "3 and 4", "3, 4 and 5".
func list(words []string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	last := len(words) - 1
	return strings.Join(words[:last], ", ") + " and " + words[last]
}
