package main

import (
	"errors"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"
)

// numeric is what a flag that is a number is kept in.
type numeric interface{ int | float64 }

// number is the value of a flag that is a number: none or more, unless it may
// have a sign or has to be some.
type number[T numeric] struct {
	to     *T
	signed bool
	some   string // from one on: which it may be, as in "1 to 99"; "": none or more
}

// amount gives a command a flag that is none or more of something.
func amount[T numeric](c *cobra.Command, to *T, flag string, usual T, usage string) {
	*to = usual
	c.Flags().Var(&number[T]{to: to}, flag, usage)
}

// some gives a command a flag that is one or more of something, and nothing where it is left
// out; said are those that it may be, as in "1 to 99".
func some[T numeric](c *cobra.Command, to *T, flag, said, usage string) {
	c.Flags().Var(&number[T]{to: to, some: said}, flag, usage)
}

// percent is what a certainty may be, as a flag takes it.
const percent = "1 to 99"

// upTo are the whole numbers from one to so many, said.
func upTo(most int) string { return fmt.Sprintf("1 to %d", most) }

// signed gives a command a flag that is a number with a sign.
func signed[T numeric](c *cobra.Command, to *T, flag, usage string) {
	c.Flags().Var(&number[T]{to: to, signed: true}, flag, usage)
}

// Type is the word of the help for a number.
func (*number[T]) Type() string { return "NUMBER" }

// String is the number as it stands.
func (n *number[T]) String() string {
	if n.to == nil {
		return "0" // what the help takes for unsaid
	}
	return strconv.FormatFloat(float64(*n.to), 'g', -1, 64)
}

// Set reads the number.
func (n *number[T]) Set(text string) error {
	var zero T
	x, err := strconv.ParseFloat(strings.Replace(strings.TrimSpace(text), ",", ".", 1), 64)
	_, whole := any(zero).(int)
	switch {
	case err != nil || math.IsNaN(x) || math.IsInf(x, 0), whole && x != math.Trunc(x):
		return errors.New(n.like(whole))
	case x < 1 && n.some != "":
		return errors.New("write " + n.some)
	case x < 0 && !n.signed:
		return errors.New("below 0, write 0 or more")
	case whole && math.Abs(x) > math.MaxInt32:
		return errors.New("that is too large, " + n.like(whole))
	}
	*n.to = T(x)
	return nil
}

func (n *number[T]) like(whole bool) string {
	if whole {
		return "write a whole number, like 4"
	}
	return "write a number, like 2.5"
}

// ageFlag is the value of a flag that is the age of larvae.
type ageFlag struct{ to *time.Duration }

// age gives a command the flag for the age of larvae.
func age(c *cobra.Command, to *time.Duration) {
	c.Flags().Var(ageFlag{to}, "age", "`AGE` of the larvae at the graft, like 18h (else as in your numbers)")
}

// Type is the word of the help for an age.
func (ageFlag) Type() string { return "AGE" }

// String is the age as it stands, nothing where none was said.
func (f ageFlag) String() string {
	if f.to == nil || *f.to == 0 {
		return ""
	}
	return f.to.String()
}

// Set reads an age: "18h", or the bare hours.
func (f ageFlag) Set(text string) error {
	if _, err := strconv.ParseFloat(text, 64); err == nil {
		text += "h"
	}
	d, err := time.ParseDuration(text)
	switch {
	case err != nil:
		return errors.New("write the hours, like 18h")
	case d < 0:
		return errors.New("below 0, write the hours, like 18h")
	}
	*f.to = d
	return nil
}
