package main

import (
	"errors"
	"fmt"
	"strings"

	"lidmark/domain/founding"
)

// beginning is what a new book begins with, as flags say it.
type beginning struct {
	founding.Book
	boxes  []string
	facing []float64
	per    int
	combs  founding.Combs
}

// said is the book that was said.
func (b beginning) said() founding.Book {
	for _, names := range b.boxes {
		b.Rows = append(b.Rows, founding.Row{Names: names, PerBox: b.per, Combs: b.combs, Facing: b.facing})
	}
	return b.Book
}

// ofFlag puts the flag before what is wrong with what it said.
func ofFlag(err error) error {
	var w *founding.Wrong
	if !errors.As(err, &w) || w.Text == "" {
		return err
	}
	return fmt.Errorf("--%s %q: %w", w.Field, w.Text, w.Err)
}

// askFounding asks for what the flags left out, if somebody can answer.
func (a *app) askFounding(b *beginning) error {
	if b.Yard = strings.TrimSpace(b.Yard); !a.asks {
		if b.Yard == "" || b.Zone == "" {
			return &usageError{err: fmt.Errorf("a new book needs at least --yard NAME and --zone ZONE")}
		}
		return nil
	}
	b.Yard = a.ask(b.Yard, "Name of your home yard", "Home")
	b.Zone = a.ask(b.Zone, "Its time zone", a.localZone().String())
	if len(b.boxes) == 0 {
		b.boxes = nonEmpty(a.ask("", "Nucs there, by letter and number, like A1-A12, B1-B6", ""))
	}
	if b.combs == (founding.Combs{}) && len(b.boxes) > 0 {
		a.askCombs(b)
	}
	if len(b.People) == 0 {
		b.People = nonEmpty(a.ask("", "Your name, and your free hours if you like, as in: Ida Mon-Fri 18:30-20:30", ""))
	}
	if a.ended {
		return refuse("the questions were left, no book was begun")
	}
	return nil
}

// askCombs asks for the kind of box until the answer is one.
func (a *app) askCombs(b *beginning) {
	for {
		c, err := founding.ParseCombs(a.ask("", "Their kind: "+founding.KindWords()+"; or sides and dm² of one, like 6 2", founding.Kinds()[0].Kind))
		if err == nil || a.ended {
			b.combs = c
			return
		}
		a.line("  %v", err)
	}
}

func nonEmpty(text string) []string {
	if text == "" {
		return nil
	}
	return []string{text}
}
