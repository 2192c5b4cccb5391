package state

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/founding"
	"lidmark/domain/line"
)

var ofPerson = []book.Kind{book.KindPerson}

// peopleRecords are what can be written down of the people who work bees.
var peopleRecords = []Record{
	{
		Name: "away", Word: "Away for days", Of: ofPerson, Main: true,
		Asks: asks(
			askWords("from", "From", "tomorrow", "2027-05-20, tomorrow, sat"),
			askWords("to", "To, that day included", "", "left blank: one day"),
		),
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.DaysOff{Person: a.person().Person, From: a.NeededDay("from"), To: a.Day("to")}
			if !a.Said("to") {
				f.To = f.From
			}
			if f.To < f.From {
				a.Wrong("to", "%s is before %s: write the last day off, or leave it blank", f.To.Short(), f.From.Short())
			}
			return fact(f)
		},
	},
	{
		Name: "hours on", Word: "Hours of one day", Of: ofPerson,
		Asks: asks(
			askWords("day", "On", "tomorrow", "2027-05-20, tomorrow, sat"),
			askWords("hours", "Free hours", "", "like 14:00-18:00; left blank: none"),
		),
		Facts: func(_ State, a *Answers) []book.Fact {
			f := book.HoursOn{Person: a.person().Person, Day: a.ComingDay("day")}
			if a.Said("hours") {
				var err error
				if f.FreeHours, err = founding.Hours(a.Text("hours")); err != nil {
					a.Wrong("hours", "write them like 14:00-18:00; left blank: none")
				}
			}
			return fact(f)
		},
	},
	{Name: "change person", Word: "Change hours", Of: ofPerson, Asks: askPerson, Facts: personDescribed(true)},
	{Name: "new person", Word: "New person", Of: fromYard, Asks: askPerson, Facts: personDescribed(false)},
}

// person is the person that the form is about.
func (a *Answers) person() *book.Person { return a.View.Person(book.PersonID(a.Of.Last().UUID)) }

func askPerson(s State) []Ask {
	var p book.Person
	if s.Selection.Last().Kind == book.KindPerson {
		p = *s.Present().View.Person(book.PersonID(s.Selection.Last().UUID))
	}
	_, hours, _ := strings.Cut(line.Words(book.PersonDescribed{Free: p.Free}, line.Names{}), "free ")
	return []Ask{
		askWords("name", "Name", p.Name, ""),
		askWords("hours", "Free hours", hours, "like Mon-Fri 18:30-20:30, Sat 08:00-18:00; left blank, nobody knows them"),
		askWords("phone", "Telephone", p.Phone, "for the wallet card of a batch"),
	}
}

// personDescribed is a new person, or with anew the one selected.
func personDescribed(anew bool) func(State, *Answers) []book.Fact {
	return func(_ State, a *Answers) []book.Fact {
		f := book.PersonDescribed{Person: a.person().Person, Name: a.Needed("name"), Phone: a.Text("phone")}
		if !anew {
			f.Person = book.PersonID(a.Mint())
		}
		var err error
		if f.Free, err = founding.FreeHours(a.Text("hours")); err != nil {
			a.Wrong("hours", "%v", err)
		}
		for p := range a.View.People() {
			if p.Name == f.Name && p.Person != f.Person {
				a.Wrong("name", "%s is there already: write another name", f.Name)
			}
		}
		return fact(f)
	}
}
