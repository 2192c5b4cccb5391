package practice

// The terms of the exposure to robbers, and what calls for what.
const (
	RobbingBase Key = iota + StarvedAfter + 1
	RobbingDearth
	DearthUnsaid
	RobbingDoor
	RobbingDoorUsual
	RobbingQueenless
	RobbingSyrup
	RobbingFondant
	RobbingOpened
	RobbingNeighbour
	RobbingNeighbourReach
	RobbingWasps
	WaspsLast
	RobbingWatch
	RobbingAct
	RobbingPriorWeight
	RobbingTrial
	OneBeeWide
	OpenInDearthMost
	RobbingLasts
	RobbedLookBy
	Dusk
	ShutInMost
	LetOutFrom
	LetOutBy
)

// The minutes a task takes, when alarms ring, and how far ahead and back the
// book is asked.
const (
	MinutesLook Key = iota + LetOutBy + 1
	MinutesLookFrameNuc
	MinutesGiveCell
	MinutesPutInVirgin
	MinutesEmergenceCheck
	MinutesMakeUp
	MinutesMakeUpFrameNuc
	MinutesCatch
	MinutesCageCell
	MinutesFeed
	MinutesAddBees
	MinutesCheckBees
	MinutesBreakDownCells
	MinutesSearchBrood
	MinutesUnite
	MinutesShakeOut
	MinutesBank
	MinutesEntrance
	MinutesGraftLarva
	MinutesCarryStand
	MinutesPaintFront
	MinutesHandOver
	AlarmEvening
	AlarmMorning
	AlarmEveningsBack
	FreeHourAhead
	ShortNotice
	AskedBack
	LateFrom
	LateLossFirst
	LateLossSecond
)

// The numbers of what things are worth, and of when a nuc is up for review.
const (
	PriceQueen Key = iota + LateLossSecond + 1
	PriceCell
	PriceCellFalls
	PriceVirgin
	WorthOwnQueen
	PriceCup
	PriceBroodComb
	WorthNucDay
	WorthMinute
	WeakLost
	LightLost
	NarrowHelps
	RobbedLost
	ReviewAhead
	ReviewSure
	ReviewLoss
	PlanLapses
)

// The numbers of plans: what a batch needs before and around the graft.
const (
	ConfineBreederBefore Key = iota + PlanLapses + 1
	ConfineBreederFor
	FeedStarterBefore
	StarterSetUpBefore
	NucsMadeUpBefore
	NucsMadeUpEarliest
	DroneCombAhead
	CellsPerStarter
	CellsPerFinisher
	FinisherTurn
	IncubatorPlaces
	StarterBees
	NursesPerCell
	FeedPerRearer
	QueensPerDroneColony
	DronesPerComb
	CombsPerColonyWeek
	BroodCombsPerNuc
	HalfCombSide
	HalfCombsPerNuc
	FoodPerNuc
	BuyAhead
	LeaveInColony
	MinutesConfine
	MinutesSetUpStarter
	MinutesFeedRearer
	MinutesDroneComb
	MinutesCheckTake
	PlanSure
	PlanInTime
	PlanSlack
	MatesOfQueen
	SexAlleles
	BroodLostWarned
	CagedMost
	JourneyUsual
	ReplacedWithin
	SentFrom
	SentUntil
	HeatStop
	NextSure

	// How much a batch gives, and what a queen's age at the catch does to her.
	GoodEnough
	GraftFails
	PriorWeight
	LivesCaughtAt7
	LivesCaughtAt14
	LivesCaughtAt21
	LivesCaughtAt28
	LivesCaughtAt35
)

// The mating yard: where bees end who come home, and how far apart things stand.
const (
	HomingVirgins Key = iota + LivesCaughtAt35 + 1
	HomingVirginsReach
	HomingWorkers
	HomingWorkersReach
	HomingFacing
	HomingOneMark
	HomingBothMarks
	HomingActivityMost
	HomingNearest
	PlaceApartInBlock
	PlaceApartInRow
	YardWrongUsual
	YardWrongDoubles
	YardFactorLeast

	// What the ground asks of a place for a box, and what bees see of its front.
	AlikeApart
	AlikeApartAdvised
	StrongApart
	StrongApartDearth
	SetbackDwelling
	SetbackTrack
	SetbackBoundary
	MorningSunLeast
	SunOnFrontBy
	WindOnFront
	ShelterReach
	WaterWithin
	VehicleWithin
	MarkSize
	MarkSeenLight
	MarkSeenHue
	BeeAcuity
	BoxWide
	WalkwayLeast
	WorkedFrom

	LayoutCounts
	LayoutTold

	// What a search for a better layout weighs.
	VirginStays
	MinutesTurnNuc
	LoadedWalk
	LayoutRounds
	LayoutPays
	LayoutTurnStep
	LayoutWind

	keyCount
)
