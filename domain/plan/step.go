package plan

import (
	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Step is a step of a batch, from the drone comb that is hung in before it to
// the queens that are ready.
type Step uint8

// The steps, in the order in which the last day of each comes as a rule.
const (
	DroneComb Step = iota + 1
	Confine
	FeedStarter
	SetUpStarter
	GraftLarvae
	ToFinisher
	CountTake
	CountCapped
	MakeUpNucs
	GiveCells
	Emerge
	Fly
	LookForEggs
	Ready
)

var steps = [...]string{
	"", "drone comb in", "confine the breeder", "feed the starter", "set up starters", "graft", "move to finishers", "count the take", "count capped cells",
	"make up nucs", "give ripe cells", "emerge", "mating flights", "look for eggs", "ready",
}

// String is the step in the keeper's words.
func (s Step) String() string { return steps[s] }

// Done tells whether the step is work of the keeper's; the others are the bees'.
func (s Step) Done() bool { return s != Emerge && s != Fly && s != Ready }

// readied is what is written down when a step that makes ready is done.
var readied = map[Step]book.ReadyStep{
	DroneComb: book.DroneCombIn, Confine: book.BreederConfined, FeedStarter: book.StarterFed, SetUpStarter: book.StarterSetUp, MakeUpNucs: book.NucsReady,
}

// Readied is what is written down when the step is done; 0 for the graft, which makes
// a plan a batch, and for what follows from it.
func (s Step) Readied() book.ReadyStep { return readied[s] }

// numbersOf are the numbers on which the days of each step stand.
var numbersOf = map[Step][]practice.Key{
	DroneComb:    {practice.DroneRipe, practice.DroneCombBeforeFlights, practice.DroneCombAhead, practice.FirstMatingFlightFrom},
	Confine:      {practice.ConfineBreederBefore, practice.ConfineBreederFor, practice.QueenHatches, practice.LarvaAgeAtGraft},
	FeedStarter:  {practice.FeedStarterBefore},
	SetUpStarter: {practice.StarterSetUpBefore},
	GraftLarvae:  {practice.LarvaAgeAtGraft, practice.LarvaAgeRefused},
	ToFinisher:   {practice.StarterToFinisher},
	CountTake:    {practice.AcceptedCheck},
	CountCapped:  {practice.GraftToCappedFrom, practice.GraftToCapped, practice.GraftToCappedBy},
	MakeUpNucs:   {practice.NucsMadeUpEarliest, practice.NucsMadeUpBefore},
	GiveCells:    {practice.CellsInFrom, practice.CellsIn, practice.HardChance, practice.HardMargin},
	Emerge:       {practice.GraftToEmerge, practice.EmergenceSpread, practice.SharedShiftSpread},
	Fly:          {practice.FirstMatingFlightFrom, practice.FirstMatingFlight, practice.FirstMatingFlightBy},
	LookForEggs:  {practice.LookForEggsFrom, practice.LookForEggsChance, practice.MatedPerHour},
	Ready:        {practice.ReadyAfterFirstEggFrom, practice.ReadyAfterFirstEgg, practice.LeastAgeAtHandOver},
}

// StepOf is the step that a window of a batch's table is here; 0 for what is none.
func StepOf(s bee.Step) Step { return stepOf[s] }

// Used are the numbers on which the days of the step stand.
func (s Step) Used() []practice.Key { return numbersOf[s] }
