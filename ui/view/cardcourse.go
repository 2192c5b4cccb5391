package view

import (
	"fmt"
	"slices"

	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// probably writes what a nuc most probably holds: a strip, its parts in per
// cent, the same by day, when the first egg is to be expected, and why.
func (c *cardDraw) probably(n *state.Nuc) {
	of := c.r.CourseOf(n.Nuc.Nuc)
	if len(of.Days) == 0 {
		return
	}
	head := "Most probably today"
	if c.s.Away() {
		head = "Most probably on " + c.r.Day.Short()
	}
	c.heading(head)
	if command, _ := state.CommandNamed("course room"); c.s.Fill == state.NoFill {
		f := ink(13).as(scene.Pen)
		c.link(c.x+c.w-c.width(command.Word, f), c.y-22, command.Word, f, command.Name, false)
	}
	const high = 20.0
	c.partsStrip(scene.Area{X: c.x, Y: c.y - 10, W: c.w, H: high}, of.Now)
	c.y += high + 10
	for part := range partLooks {
		if part := state.CoursePart(part); of.Now.Shown(part) {
			c.part(part, of)
		}
	}
	c.nowKnown(n)
	c.chart(n, of)
	if of.Given < 100 && of.Now.Shown(state.LayingPart) {
		c.para(fmt.Sprintf("If one lays, she is the one given in %d of 100", of.Given), ink2(13), whole)
	}
	if egg := of.FirstEgg(); egg != "" {
		c.field("First egg", egg, ink(14), whole)
	}
	c.para(of.Grounds(), ink2(13), whole)
	c.worth(of.Looks)
	c.numbers(courseNumbers(of))
}

// part writes a part's look, word and chance.
func (c *cardDraw) part(part state.CoursePart, of *state.NucCourse) {
	c.swatch(scene.Area{X: c.x, Y: c.y - 12, W: 15, H: 15}, part)
	from := c.right(c.x+c.w, c.y, fmt.Sprintf("%d %%", of.Now.Percent(part)), ink(14).semi())
	c.y = c.wrap(c.x+26, c.y, part.String(), ink(14), from-10-c.x-26, whole) - scene.LineHeight(14) + 22
}

// bands and bandFly are how high the bands of a card's chart and its flying hours
// are, dp.
const (
	bands   = 84.0
	bandFly = 22.0
)

// chart draws the bands of a nuc by day.
func (c *cardDraw) chart(n *state.Nuc, of *state.NucCourse) {
	a := scene.Area{X: c.x, Y: c.y - 12, W: c.w, H: bandHeight(bands, bandFly)}
	c.whole(scene.Area{X: a.X, Y: a.Y, W: a.W, H: 40}) // no sliver of it
	c.newBand(c.r, n, a, bandFly).draw()
	c.y = c.courseLegend(c.x, a.Bottom()+17, c.w, of.Parts()) + 4
}

// nowKnown says of a day that is past what it held by all that is known now.
func (c *cardDraw) nowKnown(n *state.Nuc) {
	if c.r.Day >= c.s.Today() {
		return
	}
	for _, d := range c.s.NowKnown(n.Nuc.Nuc) {
		if d.Day == c.r.Day {
			c.field("As known now", d.String(), ink(14), whole)
			c.y += 6
		}
	}
}

// mostLooks are how many looks the card tells of.
const mostLooks = 5

// worth writes what the looks were worth, the last first.
func (c *cardDraw) worth(looks []course.Evidence) {
	told := 0
	for _, l := range slices.Backward(looks) {
		if told == mostLooks {
			break
		}
		told++
		c.right(c.x+52, c.y, shortDay(l.Day), ink2(13))
		c.y = c.wrap(c.x+66, c.y, l.Words, ink(13), c.w-66, whole) + 4
	}
	c.more(len(looks) - told)
}

// courseNumbers are the numbers that a course leans on most.
func courseNumbers(of *state.NucCourse) (used []practice.Key) {
	if of.FirstEgg() != "" {
		used = append(used, practice.FirstMatingFlight, practice.MatedPerHour, practice.MatingToFirstEgg)
	}
	if len(of.Looks) > 0 {
		used = append(used, practice.SeesEggs, practice.FindsVirgin)
	}
	return append(used, practice.LayingWorkersMean)
}
