package book

import "lidmark/domain/calendar"

// Role is what a full-size colony is kept for.
type Role = Word[roleWords]

// The roles of a colony.
const (
	Breeder Role = iota + 1
	Starter
	Finisher
	CellBuilder
	BroodSource
	DroneSource
	Bank
)

type roleWords struct{}

func (roleWords) words() (string, []string) {
	return "role", []string{"", "breeder", "starter", "finisher", "cell builder", "brood source", "drone source", "bank"}
}

// ColonyDescribed describes a full-size colony: name, yard and place on its
// ground, roles, line, its queen if she is known, and how many bees it has in
// thousands.
type ColonyDescribed struct {
	Colony    ColonyID `json:"colony"`
	Name      string   `json:"name"`
	Yard      YardID   `json:"yard"`
	At        Point    `json:"at,omitzero"`
	Roles     []Role   `json:"roles,omitzero"`
	Line      string   `json:"line,omitzero"`
	Queen     QueenID  `json:"queen,omitzero"`
	Thousands float64  `json:"beesThousands,omitzero"`
}

// FreeHours are a person's free hours on one day of the week, from and until
// in minutes after midnight; none when Until is not after From. A person of
// whom no day is said is one whose hours nobody knows.
type FreeHours struct {
	From  int `json:"from"`
	Until int `json:"until"`
}

// PersonDescribed describes somebody who works bees: the free hours by weekday,
// Sunday first, and a telephone number for the batch's wallet card.
type PersonDescribed struct {
	Person PersonID     `json:"person"`
	Name   string       `json:"name"`
	Free   [7]FreeHours `json:"free,omitzero"`
	Phone  string       `json:"phone,omitzero"`
}

// DaysOff tells that a person is away from one day to another, both included.
type DaysOff struct {
	Person PersonID     `json:"person"`
	From   calendar.Day `json:"from"`
	To     calendar.Day `json:"to"`
}

// HoursOn are a person's free hours on one day, in place of those of the week:
// from and until in minutes after midnight; none when Until is not after From.
type HoursOn struct {
	Person PersonID     `json:"person"`
	Day    calendar.Day `json:"day"`
	FreeHours
}

// Inspected tells that an inspector saw a yard.
type Inspected struct {
	Yard   YardID `json:"yard"`
	Result string `json:"result"`
}

// DiseaseSuspected puts the yard of a colony, a nuc or a whole yard on
// standstill: nothing leaves it until the suspicion has ended.
type DiseaseSuspected struct {
	Of   Subject `json:"of"`
	What string  `json:"what"`
}

// SuspicionEnded lifts a standstill.
type SuspicionEnded struct {
	Of  Subject `json:"of"`
	Why string  `json:"why,omitzero"`
}

// Treated tells that a colony, a nuc or a yard was treated, with what, and for
// how many days the label asks to wait.
type Treated struct {
	Of   Subject `json:"of"`
	With string  `json:"with"`
	Wait int     `json:"waitDays,omitzero"`
}

// PaperHeld tells of a certificate or permit for a yard, good until a day.
type PaperHeld struct {
	Yard    YardID       `json:"yard"`
	Name    string       `json:"name"`
	Expires calendar.Day `json:"expires"`
}

func (f ColonyDescribed) about(add func(Subject)) {
	add(f.Colony.Subject())
	add(f.Yard.Subject())
	add(f.Queen.Subject())
}
func (f PersonDescribed) about(add func(Subject))  { add(f.Person.Subject()) }
func (f DaysOff) about(add func(Subject))          { add(f.Person.Subject()) }
func (f HoursOn) about(add func(Subject))          { add(f.Person.Subject()) }
func (f Inspected) about(add func(Subject))        { add(f.Yard.Subject()) }
func (f DiseaseSuspected) about(add func(Subject)) { add(f.Of) }
func (f SuspicionEnded) about(add func(Subject))   { add(f.Of) }
func (f Treated) about(add func(Subject))          { add(f.Of) }
func (f PaperHeld) about(add func(Subject))        { add(f.Yard.Subject()) }
