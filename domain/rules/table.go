package rules

// row is a rule of the table: its name, what it finds, and a function for
// each thing it looks at. That for a nuc looks at its case alone and tells
// [pass.addTo] or [pass.noteOf].
type row struct {
	rule   Rule
	doc    string
	nuc    func(*pass, *nucCase)
	batch  func(*pass, *batchCase)
	yard   func(*pass, *yardCase)
	season func(*pass)
}

// run takes in what the rule finds of all but nucs.
func (r row) run(p *pass) {
	if r.batch != nil {
		for _, b := range p.batches {
			r.batch(p, b)
		}
	}
	if r.yard != nil {
		for y := range p.view.Yards() {
			r.yard(p, p.yard(y.Yard))
		}
	}
	if r.season != nil {
		r.season(p)
	}
}

// table holds all rules, in the order in which their findings are told when
// they press alike. It is a function because rules ask the table themselves.
func table() []row {
	return []row{
		{rule: VirginWalks, doc: "a virgin is out, or to be expected, among cells still together", batch: (*pass).virginWalks},
		{rule: CellsOut, doc: "cells are still together and the first virgin is near", batch: (*pass).cellsOut},
		{rule: NobodyReady, doc: "a batch has more cells than nucs are ready", batch: (*pass).nobodyReady},
		{rule: WildCells, doc: "open brood among bees who would raise a queen from it", nuc: (*pass).wildInNuc, season: (*pass).wildInColonies},
		{rule: OwnCells, doc: "a nuc was left without a queen on young brood, or own cells were seen", nuc: (*pass).ownCells},
		{rule: Decided, doc: "the keeper decided what is to be done", nuc: (*pass).decided, season: (*pass).decidedEmpty},
		{rule: BeingRobbed, doc: "robbers are at a nuc, and so in the yard", nuc: (*pass).beingRobbed, yard: (*pass).yardRobbed},
		{rule: ShutIn, doc: "an entrance that was shut is to be opened again", nuc: (*pass).shutIn},
		{rule: DroneLayer, doc: "a queen lays drones only", nuc: (*pass).droneLayer},
		{rule: LayingWorkers, doc: "laying workers, seen or to be expected", nuc: (*pass).layingWorkers},
		{rule: Queenless, doc: "no queen, no cell, no virgin", nuc: (*pass).queenless},
		{rule: VirginsTime, doc: "a virgin not seen laying grows old", nuc: (*pass).virginsTime},
		{rule: LookEggs, doc: "a virgin is old enough to be laying", nuc: (*pass).lookEggs},
		{rule: Late, doc: "a look found no eggs where they were due", nuc: (*pass).late},
		{rule: LookAgain, doc: "eggs were seen; capped worker brood proves her", nuc: (*pass).lookAgain},
		{rule: Ready, doc: "a proven queen is old enough to be handed over", nuc: (*pass).ready},
		{rule: Full, doc: "a laying queen fills her small box", nuc: (*pass).full},
		{rule: CheckBees, doc: "a nuc was stocked the day before with bees who know the way home", nuc: (*pass).checkBees},
		{rule: Weak, doc: "fewer bees than the night needs", nuc: (*pass).weak},
		{rule: Light, doc: "food for a few days only", nuc: (*pass).light},
		{rule: NotLooked, doc: "nobody has looked into it for long", nuc: (*pass).notLooked},
		{rule: Robbers, doc: "exposed to robbers", season: (*pass).robbers},
		{rule: BankVirgins, doc: "virgins in cages too long", season: (*pass).bankVirgins},
		{rule: BankMated, doc: "mated queens in cages too long", season: (*pass).bankMated},
		{rule: CagedAlone, doc: "mated queens in cages, in no bank", season: (*pass).cagedAlone},
		{rule: BankFull, doc: "more queens in a bank than it takes, or on the way into one", season: (*pass).bankFull},
		{rule: Standstill, doc: "a disease is suspected: nothing leaves the yard", yard: (*pass).standstill},
		{rule: AfterTreatment, doc: "the label of a treatment asks to wait", nuc: (*pass).treatedNuc, yard: (*pass).treatedYard, season: (*pass).treatedColonies},
		{rule: Papers, doc: "a certificate or permit runs out", yard: (*pass).papers},
		{rule: Counts, doc: "what went out is not all accounted for", season: (*pass).counts, batch: (*pass).lostBatch},
		{rule: Twice, doc: "the same was written down twice", season: (*pass).twice},
		{rule: GapAsks, doc: "a record does not fit the book and nobody has said why", nuc: (*pass).gapAsks},
		{rule: SameNucs, doc: "two batches want the same nucs", season: (*pass).sameNucs},
		{rule: SameFinisher, doc: "two batches want the same colony", season: (*pass).sameFinisher},
		{rule: SameDay, doc: "two batches want the same day and it is too short", season: (*pass).sameDay},
		{rule: Leaving, doc: "the queens of an order leave the keeper's hands", season: (*pass).leaving},
		{rule: OrderShort, doc: "what was planned or grafted for an order gives fewer queens than it misses", season: (*pass).ordersShort},
		{rule: MoveToFinisher, doc: "the cells of a batch go from the starter to a finisher", batch: (*pass).moveToFinisher},
		{rule: CountTake, doc: "the take of a batch is counted", batch: (*pass).countTake},
		{rule: CountCapped, doc: "the capped cells of a batch are counted", batch: (*pass).countCapped},
		{rule: PlannedStep, doc: "a step of a planned batch", season: (*pass).plannedSteps},
		{rule: LayoutStep, doc: "the layout that is the plan asks for it", yard: (*pass).layoutSteps},
		{rule: NoHands, doc: "nobody is free before a hard deadline", season: (*pass).noHands},
	}
}

// The rules by the names that books keep.
const (
	VirginWalks    Rule = "a virgin is out"
	CellsOut       Rule = "cells must be out"
	NobodyReady    Rule = "emerging where nobody is ready"
	WildCells      Rule = "search for wild cells"
	OwnCells       Rule = "break down own cells"
	Decided        Rule = "decided"
	BeingRobbed    Rule = "robbed"
	ShutIn         Rule = "shut in"
	DroneLayer     Rule = "drone layer"
	LayingWorkers  Rule = "laying workers"
	Queenless      Rule = "no queen"
	VirginsTime    Rule = "virgin's time is running"
	LookEggs       Rule = "look for eggs"
	Late           Rule = "late"
	LookAgain      Rule = "look again for capped brood"
	Ready          Rule = "ready to hand over"
	Full           Rule = "full"
	CheckBees      Rule = "check the bees"
	Weak           Rule = "weak"
	Light          Rule = "light"
	NotLooked      Rule = "not looked at"
	Robbers        Rule = "robbers"
	BankVirgins    Rule = "virgins in cages"
	BankMated      Rule = "queens in cages"
	CagedAlone     Rule = "queens in no bank"
	BankFull       Rule = "bank is full"
	Standstill     Rule = "standstill"
	AfterTreatment Rule = "wait after treatment"
	Papers         Rule = "papers"
	Counts         Rule = "counts do not close"
	Twice          Rule = "typed twice"
	GapAsks        Rule = "does not fit the book"
	SameNucs       Rule = "two batches want the same nucs"
	SameFinisher   Rule = "two batches want the same colony"
	SameDay        Rule = "two batches want the same day"
	Leaving        Rule = "queens leave"
	OrderShort     Rule = "order is short"
	MoveToFinisher Rule = "cells to a finisher"
	CountTake      Rule = "count the take"
	CountCapped    Rule = "count the capped cells"
	PlannedStep    Rule = "planned step"
	LayoutStep     Rule = "layout"
	NoHands        Rule = "nobody is free"
)

// Described is a rule with what it finds.
type Described struct {
	Rule Rule
	Doc  string
}

// All are the rules in the order of the table.
func All() []Described {
	all := make([]Described, len(table()))
	for i, r := range table() {
		all[i] = Described{r.rule, r.doc}
	}
	return all
}
