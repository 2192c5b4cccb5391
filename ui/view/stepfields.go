package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// yardFields ask for the yard and where it lies.
func (d *stepDraw) yardFields() {
	d.ask(d.x, stepField{label: "What the yard is called", name: state.StartYard, empty: "Home", w: d.w})
	d.next()
	d.ask(d.x, stepField{label: "Time zone", name: state.StartZone, empty: "Europe/Berlin", note: "Of this computer, unless the yard lies in another one", w: d.w})
	d.next()
	half := (d.w - 20) / 2
	x := d.ask(d.x, stepField{label: "Latitude, °, if you like", name: state.StartLat, empty: "54.6", note: "South is negative", w: half})
	d.ask(x, stepField{label: "Longitude, °", name: state.StartLon, empty: "15", note: "West is negative", w: half})
	d.next()
	c, _ := state.CommandNamed("start file")
	word := d.width(c.Word, ink(14).medium()) + 28
	_, folder := state.FileName(d.f.Path)
	file, _ := state.FileName(d.f.Path)
	d.ask(d.x, stepField{label: "The file in which the book is kept", name: state.StartFile, empty: file, note: "In " + folder, w: d.w - word - 12})
	d.button(d.x+d.w-word, d.y+stepLabel, c.Word, "start file", false)
	d.next()
}

// peopleFields ask for people and when they are free.
func (d *stepDraw) peopleFields() {
	for i, name := range d.s.People() {
		label, empty, note := "Your name, and when you are free", "Ida Mon-Fri 18:30-20:30 Sat-Sun 8:00-18:00", "A name alone will do, or like Ida Mon-Fri 18:30-20:30 Sat 8:00-12:00"
		if i > 0 {
			label, empty, note = "Somebody else", "Jon Sat 9:00-13:00", ""
		}
		d.ask(d.x, stepField{label: label, name: name, empty: empty, note: note, w: d.w})
		d.next()
	}
}

// batchFields ask for the first batch.
func (d *stepDraw) batchFields() {
	d.y = d.choices(d.x, d.y, d.w, state.StartBatch, []state.Option{{Value: "graft", Word: "It is grafted"}, {Value: "none", Word: "None yet"}}) + 10
	if d.s.Typed(state.StartBatch) != "graft" {
		d.wrap(d.x, d.y+12, "Write the graft down on its evening: the book then says what has to be done, and by which hour. What you see beside this is an example.", ink2(15), d.w, 5)
		return
	}
	d.ask(d.x, stepField{label: "When it was grafted", name: state.StartGrafted, empty: "yesterday 18:00", note: "yesterday 18:00, 3 days ago 17:00, sat 14:30, 2027-05-08 17:00", w: d.w})
	d.next()
	half := (d.w - 20) / 2
	x := d.ask(d.x, stepField{label: "Larvae", name: state.StartLarvae, empty: "30", w: half})
	d.ask(x, stepField{label: "Their age, h, if you know", name: state.StartAge, empty: "18", note: "12 to 24 h is usual", w: half})
	d.next()
	d.ask(d.x, stepField{label: "Line of the mother, if it has a name", name: state.StartLine, empty: "Plover", w: d.w})
	d.next()
	for _, m := range d.f.Minds {
		d.y = d.wrap(d.x, d.y+12, sentence(m), ink(14).as(scene.Act), d.w, 3)
	}
}
