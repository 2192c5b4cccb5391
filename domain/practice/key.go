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
	DronesFrom
	DronesUntil
	DronesThrownOut

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
	BankPlaces
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
	WarmthLasts
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
	FlowIncome
	LightBelow
	StarvedAfter
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
