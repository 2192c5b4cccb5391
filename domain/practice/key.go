package practice

// Key names one number. Keys are only for code: files and books use the
// stable string name (see [Key.String] and [ByName]), so the order of this
// list may change. The zero Key is invalid.
type Key int

// The numbers of the clock: castes, batches, cells, queens. Titles, units,
// ranges and sources stand in the rows.
const (
	// The castes' timetables, counted from the egg.
	_ Key = iota
	QueenHatches
	QueenCapped
	QueenEmerges
	WorkerHatches
	WorkerCapped
	WorkerEmerges
	DroneHatches
	DroneCapped
	DroneEmerges
	DroneRipe
	DroneBestUntil

	// The capped phase and its warmth.
	BroodWarmth
	HoursPerDegree
	WarmthLeast
	WarmthMost
	LastResortWarmth

	// A batch: its larvae, its spread, its first virgin.
	LarvaAgeAtGraft
	LarvaAgeWarned
	LarvaAgeRefused
	EmergenceSpread
	SharedShiftSpread
	OverAgedShare
	OverAgedBy
	TipBareBefore
	TipBareSpread
	GraceOfFirstVirgin
	HardChance
	HardMargin
	BestAheadOfHard

	// Windows from the graft, in days.
	StarterToFinisher
	AcceptedCheck
	GraftToCappedFrom
	GraftToCapped
	GraftToCappedBy
	HandsOffFrom
	HandsOffUntil
	CellsInFrom
	CellsIn
	CellsInBy
	GraftToEmergeFrom
	GraftToEmerge
	GraftToEmergeBy

	// Wild cells and own cells, in days from the comb or the loss.
	WildCellSearchFrom
	WildCellSearchGood
	WildCellSearchBy
	WildCellWalk
	BreakDownOwnCellsFrom
	BreakDownOwnCellsBy
	OwnCellsBegun
	OwnCellsOnLarvaeUnder
	OwnQueenEmerges

	// A virgin's age in days, up to eggs.
	VirginMayFlyFrom
	FirstMatingFlight
	FirstMatingFlightSpread
	FirstMatingFlightFrom
	FirstMatingFlightBy
	MatingToFirstEgg
	FirstEggsHalfBy
	FirstEggsNineInTenBy
	LookForEggsNotBefore
	LookForEggsFrom
	LookForEggsChance
	LookAgainFrom
	LookAgainBy
	VirginWatch
	VirginLate
	VirginTooLate

	// A laying queen, up to the hand-over.
	EggToCappedWorkerBrood
	ReadyAfterFirstEggFrom
	ReadyAfterFirstEgg
	LeastAgeAtHandOver
	FullFrom
	FullBy

	// Without a queen, and in the bank.
	NoCellWithin
	QueenlessBeforeCell
	QueenlessActAfter
	LayingWorkersEarliest
	LayingWorkersFrom
	LayingWorkersLatest
	VirginBankGood
	VirginBankMost
	MatedBankMost
	TraceBack
	PapersWarned
)

// The shares from one step of the work to the next.
const (
	Take Key = iota + PapersWarned + 1
	RipeOfTakes
	EmergedOfCells
	LayingOfAccepted
	BatchLuck
	AcceptCell
	AcceptVirginUnderDay
	AcceptVirginDaysOld
	AcceptVirginSprayed
	AcceptVirginQueenright
	AcceptLaying
	VirginBankSurvival
	MatedBankSurvival
	OwnCellsRaised
	OwnCellsDestroy
	OwnCellsOverlooked
)

// The course of a queen by the day, and what a look is worth: see the package
// course.
const (
	OwnQueenEmergesSpread Key = iota + OwnCellsOverlooked + 1
	VirginLateSpread
	VirginDeaths
	NeverFlies
	MatedPerHour
	LostPerHour
	DroneLayerTurns
	LayingEnds
	LayingWorkersMean
	LayingWorkersSpread
	FlightsFlown
	RipeCellOnDay
	VirginDaysOld
	UnknownLays
	UnknownVirgin
	UnknownTrouble
	SeesEggs
	SeesYoungEggs
	SeesFirstEggs
	SeesDroneLayerEggs
	ManyEggsOfYoung
	NewToLaying
	ManyEggsOfWorkers
	ManyEggsOfDroneLayer
	FindsVirgin
	FindsMated
	FindsLaying
	NotFoundCounts
	CallsVirgin
	CallsYoungVirgin
	CallsMated
	CallsNoQueen
	TellsManyEggs
	FewBees
	WeakLoses
	SeesDroneBrood
	SeesCappedBrood
	SeesOwnCells
	OwnCellsQueenright
	OwnCellsBeside
	SeesCellSign
	CellSignElsewhere
	SeenAmiss
	ThoroughLook
	QuickLook
)

// The numbers of weather and flight.
const (
	WarmEnoughToFly Key = iota + QuickLook + 1
	FlightRampBelow
	FlightRampAbove
	HotFrom
	TooHotToFly
	CalmUpTo
	TooWindyToFly
	OvercastFit
	BrokenCloudFit
	FlightFrom
	FlightPeakFrom
	FlightPeakUntil
	FlightUntil
	FitHoursPlus
	FitHoursHalf
	FitHoursMinus
	FitHoursUntold
	UsualDayRange
	UsualWind
	UsualSun
	RainLasts
	RainyDayFit
	UsualSpread
	WindSpread
	ForecastError
	ForecastErrorGrows
	ForecastWindError
	ForecastSignRight
	ForecastSignFades
	DiurnalPeakLag
	DiurnalNightDecay
	DiurnalLowLag
	WarmEnoughToOpen
	QuietHoursFrom
	QuietHoursUntil
)

// The numbers of bees, brood and drones.
const (
	CupOfBees Key = iota + QuietHoursUntil + 1
	BeesPerCup
	BeesPerKilogram
	ColonyGives
	BeesPerSide
	CombSideArea
	FullCombSide
	LookError
	MadeUpError
	ReckoningErrorGrows
	LookOverrules
	StrengthAhead
	StrengthToldAhead
	MildNight
	UsualNight
	ColdNight
	NeedAt20C
	NeedAt14C
	NeedAt8C
	ThinWoodFactor
	AddBeesUnder
	CellsPerSide
	CappedEmergence
	CappedEmergesOver
	QueenLays
	BroodPerBee
	BroodShareOfComb
	ForagingFromAge
	WorkerLifeMost
	HouseBeeDeaths
	ForagerDeaths
	LossOfBroodCombs
	LossOfSievedBees
	LossOfShutInBees
	LossOfMovedBees
	SettlingTime
	MoveDistanceLeast
	DroneColonies
	DroneCombBeforeFlights
	LookTooOld
)

// The numbers of food.
const (
	SyrupPerFeed Key = iota + LookTooOld + 1
	SyrupSugar
	FondantSugar
	HoneyPerSide
	SugarPerDay
	LightBelow
	StarvedAfter
)

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
)

// The minutes a task takes, when alarms ring, and how far ahead and back the
// book is asked.
const (
	MinutesLook Key = iota + ShutInMost + 1
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
	StarterBees
	NursesPerCell
	FeedPerRearer
	QueensPerDroneColony
	CombsPerColonyWeek
	BroodCombsPerNuc
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
	MatesOfQueen
	SexAlleles
	BroodLostWarned
	CagedMost
	JourneyUsual
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

	keyCount
)

// String gives the stable name of k, the one used in files, or "" for a key
// that is not one of this package's.
func (k Key) String() string {
	if !k.Valid() {
		return ""
	}
	return rows[k].Name
}

// Valid says whether k is a key of this package.
func (k Key) Valid() bool { return k > 0 && k < keyCount }

// ByName finds the key with the stable name s.
func ByName(s string) (Key, bool) {
	k, ok := names[s]
	return k, ok
}
