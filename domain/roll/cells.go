package roll

import (
	"slices"
	"strconv"
	"strings"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/line"
)

// takeName reads the name of a nuc. A bare number is a place on the stand of
// another column, so it waits until the row is read.
func takeName(_ *reading, it *item, c Cell) fault {
	it.typed = c.Text
	return fault{}
}

// signless takes out what some write between the letter and the number.
var signless = strings.NewReplacer(" ", "", "-", "", "_", "", ".", "")

// nucName is a name as the book writes it, and its letters and number: "a-3"
// is A3, and 3 on stand A is A3 as well. It is empty where it can be none.
func nucName(text, stand string) (name, letters string, number int) {
	short := signless.Replace(text)
	if n, err := strconv.Atoi(short); err == nil && n > 0 {
		short = stand + strconv.Itoa(n)
	}
	names, err := line.Row(short)
	if err != nil || len(names) != 1 {
		return "", "", 0
	}
	letters = strings.TrimRight(names[0], "0123456789")
	number, _ = strconv.Atoi(names[0][len(letters):]) // a name has a number
	return names[0], letters, number
}

func takeStand(_ *reading, it *item, c Cell) fault {
	it.stand = strings.ToUpper(strings.TrimSpace(c.Text))
	return fault{}
}

func takeText(of func(*item) *string) func(*reading, *item, Cell) fault {
	return func(_ *reading, it *item, c Cell) fault {
		*of(it) = c.Text
		return fault{}
	}
}

func takeNote(_ *reading, it *item, c Cell) fault {
	if it.note != "" {
		it.note += "; "
	}
	it.note += c.Text
	return fault{}
}

func takeBatch(_ *reading, it *item, c Cell) fault {
	number := strings.TrimSpace(strings.TrimPrefix(strings.ToLower(c.Text), "batch"))
	n, err := strconv.Atoi(strings.TrimPrefix(number, "#"))
	if err != nil || n < 1 {
		return faulty("write a whole number from 1, like 4", "%q is no number of a batch", c.Text)
	}
	it.batch = n
	return fault{}
}

func takeAmount(of Column) func(*reading, *item, Cell) fault {
	return func(_ *reading, it *item, c Cell) fault {
		text := strings.ToLower(c.Text)
		for _, unit := range []string{"sides", "side", "palms", "palm", "dm²"} {
			text = strings.TrimSpace(strings.TrimSuffix(text, unit))
		}
		n, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
		amount := book.Said(n)
		if err != nil || amount.IsZero() {
			return faulty("write a number, like 4 or 2.5", "%q is no amount", c.Text)
		}
		switch of {
		case Bees:
			it.bees = amount
		case Brood:
			it.brood = amount
		default:
			it.stores = amount
		}
		return fault{}
	}
}

func takeSeen(_ *reading, it *item, c Cell) fault {
	switch strings.ToLower(c.Text) {
	case "yes", "y", "x", "q", "seen", "queen seen", "✓", "✔", "1", "true", "+":
		it.seen = book.QueenSeen
	case "no", "n", "none", "not seen", "no queen seen", "0", "false", "-", "–", "−":
		it.seen = book.NoneSeen
	default:
		return faulty("write yes or no, or leave the cell empty", "%q does not say whether the queen was seen", c.Text)
	}
	return fault{}
}

func takeHolds(_ *reading, it *item, c Cell) fault {
	condition, ok := conditionOf(c.Text)
	if !ok {
		return faulty("write its letter or word: "+conditionWords(), "%q is nothing that a nuc holds", c.Text)
	}
	it.holds, it.saysHolds = condition, true
	return fault{}
}

func takeColour(_ *reading, it *item, c Cell) fault {
	it.colour = strings.ToLower(c.Text)
	if colour, ok := colourOf(c.Text); ok {
		it.colour = colour
	}
	return fault{}
}

// colourOf is one of the colours of the convention by its word or first letter.
func colourOf(text string) (string, bool) {
	text = strings.ToLower(text)
	for c := bee.White; c <= bee.Blue; c++ {
		if word := c.String(); text == word || text == word[:1] {
			return word, true
		}
	}
	return "", false
}

// otherWords are what keepers write besides the words of the legend.
var otherWords = map[book.Condition][]string{
	book.Empty:         {".", "dead", "out", "died out", "lost"},
	book.NoQueen:       {"-", "−", "none", "queenless", "ql", "no q", "nq", "hopeless"},
	book.Cell:          {"queen cell", "qc", "celled", "cell given"},
	book.Virgin:        {"virgin queen", "vq", "virgin seen"},
	book.Due:           {"due", "waiting", "not yet"},
	book.Laying:        {"eggs", "egg", "mated", "laying queen", "mated queen", "lq", "mq", "q", "queenright"},
	book.GoodBrood:     {"brood", "capped brood", "capped worker brood", "sealed brood"},
	book.DroneLayer:    {"drones", "drone laying queen", "dlq", "drone laying"},
	book.LayingWorkers: {"laying worker", "lw"},
	book.BeingRobbed:   {"robbers", "robbing", "robbed out"},
}

func conditionOf(text string) (book.Condition, bool) {
	text = strings.ToLower(strings.Join(strings.Fields(text), " "))
	for _, c := range book.Conditions() {
		if text == strings.ToLower(c.Letter()) || text == c.String() || slices.Contains(otherWords[c], text) {
			return c, true
		}
	}
	return book.Empty, false
}

// conditionWords lists the conditions with their letters.
func conditionWords() string {
	var all []string
	for _, c := range book.Conditions() {
		all = append(all, c.Letter()+" "+c.String())
	}
	return strings.Join(all, ", ")
}
