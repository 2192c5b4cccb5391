package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// By hand, on a Saturday on which one has 60 minutes and the other 90, and a Sunday on
// which the second is away: 100 minutes are 90 and 10, 80 are 60 with 20 over.
func TestMinutesByPerson(t *testing.T) {
	person := func(name string, until int) book.PersonDescribed {
		return book.PersonDescribed{Person: booktest.Person(name), Name: name, Free: [7]book.FreeHours{0: {From: 600, Until: until}, 6: {From: 600, Until: until}}}
	}
	pen := sources(nil).Write(person("Anna", 660), person("Ben", 690), book.DaysOff{Person: booktest.Person("Ben"), From: day(t, "2027-05-02"), To: day(t, "2027-05-02")})
	p := plan.New(course.New(pen.View("2027-04-02 08:00")))
	sat, sun := day(t, "2027-05-01"), day(t, "2027-05-02")
	days := p.ByPerson([]plan.Minutes{{Day: sun, Minutes: 80}, {Day: sat, Minutes: 70}, {Day: sat, Minutes: 30}})
	if len(days) != 2 || days[0].Day != sat || days[0].Over != 0 || days[1].Over != 20 || len(days[0].Parts) != 2 || len(days[1].Parts) != 1 {
		t.Fatalf("shared out so: %+v", days)
	}
	if first, then := days[0].Parts[0], days[0].Parts[1]; first.Who.Name != "Ben" || first.Minutes != 90 || then.Minutes != 10 {
		t.Errorf("Saturday: %+v", days[0].Parts)
	}
	all, over := plan.PeopleOf(days)
	if len(all) != 2 || all[0].Name != "Ben" || all[0].Minutes != 90 || all[1].Minutes != 70 || over != 20 {
		t.Errorf("in all: %v, over %v", all, over)
	}
	if none := plan.New(course.New(sources(nil).View("2027-04-02 08:00"))).ByPerson([]plan.Minutes{{Day: sat, Minutes: 1}}); none != nil {
		t.Errorf("hours nobody told are shared out: %v", none)
	}
}

// Two people of one name are two.
func TestTwoOfOneNameAreTwo(t *testing.T) {
	part := func(id string) plan.Part {
		return plan.Part{Who: &book.Person{PersonDescribed: book.PersonDescribed{Person: booktest.Person(id), Name: "Anna"}}, Minutes: 10}
	}
	if all, _ := plan.PeopleOf([]plan.DayParts{{Parts: []plan.Part{part("a"), part("b")}}, {Parts: []plan.Part{part("b")}}}); len(all) != 2 || all[0].Minutes != 20 || all[1].Minutes != 10 {
		t.Errorf("%+v", all)
	}
}
