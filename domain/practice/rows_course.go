package practice

// LagDays are the days from mating on which a first egg may be laid; each has a
// share, at the default of [MatingToFirstEgg]. Published means are 2.8 to 3.4 d; the shape is
// chosen to fit published ages at the first egg.
const LagDays = 6

// LagShares are the shares by day at a mean of about 3 d.
func LagShares() [LagDays]float64 { return [LagDays]float64{.02, .33, .38, .17, .07, .03} }

const (
	fitted  = "fitted to published ages at the first egg (8.5 to 12.9 d) and 0.875 mated of accepted"
	whatNuc = "what a nuc most probably holds"
	lookWas = "what a look is worth"
	ofHabit = "how often keepers say they see it; " + noSource
)

// courseRows are the course of a queen by the day, and what a look is worth.
var courseRows = []Number{
	{Key: OwnQueenEmergesSpread, Name: "own_queen_emerges_spread", Title: "Own queen emerges, spread", Unit: Day, Default: 1, Min: 0, Max: 2, Source: "10 to 14 d after the loss, " + fellMorse1984 + "; the spread is practice", Confidence: Derived, Used: whatNuc},
	{Key: VirginLateSpread, Name: "virgin_late_spread", Title: "Virgin late, spread", Unit: Day, Default: 2, Min: 0.5, Max: 5, Source: "no measured curve found; " + noSource, Confidence: CommonPractice, Used: whatNuc},
	{Key: VirginDeaths, Name: "virgin_deaths", Title: "Virgin dies at home, a day", Unit: SharePerDay, Default: 0.002, Min: 0, Max: 0.05, Source: noSource, Confidence: CommonPractice, Used: whatNuc},
	{
		Key: NeverFlies, Name: "never_flies", Title: "Virgin never flies to mate", Unit: Share, Default: 0.02, Min: 0, Max: 0.2,
		Source: "crippled or unwilling, or far slower than others; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{Key: MatedPerHour, Name: "mated_per_hour", Title: "Mated in an hour fit to fly", Unit: Share, Default: 0.30, Min: 0.05, Max: 1, Source: fitted, Confidence: Derived, Used: whatNuc},
	{Key: LostPerHour, Name: "lost_per_hour", Title: "Lost in an hour fit to fly", Unit: Share, Default: 0.033, Min: 0, Max: 0.3, Source: fitted + "; 0.033 a flight is told of one trial, its source not found", Confidence: Derived, Used: whatNuc},
	{Key: DroneLayerTurns, Name: "drone_layer_turns", Title: "Late virgin turns drone layer, a day", Unit: SharePerDay, Default: 0.10, Min: 0, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: whatNuc},
	{Key: LayingEnds, Name: "laying_ends", Title: "Laying queen lost, a day", Unit: SharePerDay, Default: 0.002, Min: 0, Max: 0.05, Source: noSource, Confidence: CommonPractice, Used: whatNuc},
	{Key: LayingWorkersMean, Name: "laying_workers_mean", Title: "Laying workers, middle day", Unit: Day, Default: 23, Min: 14, Max: 40, Source: "14 to 30 d in keepers' teaching; Miller & Ratnieks 2001, Insectes Soc 48:178-184", Confidence: CommonPractice, Used: whatNuc},
	{Key: LayingWorkersSpread, Name: "laying_workers_spread", Title: "Laying workers, spread", Unit: Day, Default: 4, Min: 1, Max: 10, Source: noSource, Confidence: CommonPractice, Used: whatNuc},
	{
		Key: FlightsFlown, Name: "flights_flown", Title: "A day's flights are flown by", Unit: ClockHour, Default: 14, Min: 11, Max: 19,
		Source: "what is seen or done from this hour on counts for the next day; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{
		Key: RipeCellOnDay, Name: "ripe_cell_on_day", Title: "Ripe cell of no batch emerges on its day", Unit: Share, Default: 0.5, Min: 0.2, Max: 1,
		Source: "the rest half on the day before, half on the day after; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{
		Key: VirginDaysOld, Name: "virgin_days_old", Title: "Virgin is taken as days old from", Unit: Day, Default: 3, Min: 1, Max: 7,
		Source: "the age of those put in at 3 to 4 d; in between the take falls straight; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{
		Key: UnknownLays, Name: "unknown_lays", Title: "Nothing known of a nuc, laying", Unit: Share, Default: 0.4, Min: 0.05, Max: 0.5,
		Source: "before its first look; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{
		Key: UnknownVirgin, Name: "unknown_virgin", Title: "Nothing known of a nuc, virgin", Unit: Share, Default: 0.2, Min: 0.01, Max: 0.25,
		Source: "before its first look; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{
		Key: UnknownTrouble, Name: "unknown_trouble", Title: "Nothing known of a nuc, drone layer or laying workers, each", Unit: Share, Default: 0.1, Min: 0.01, Max: 0.1,
		Source: "before its first look, what is left has no queen; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{Key: SeesEggs, Name: "sees_eggs", Title: "Eggs seen, laying 2 d or more", Unit: Share, Default: 0.95, Min: 0.5, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: SeesYoungEggs, Name: "sees_young_eggs", Title: "Eggs seen, laying since yesterday", Unit: Share, Default: 0.80, Min: 0.2, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: SeesFirstEggs, Name: "sees_first_eggs", Title: "Eggs seen, laying since today", Unit: Share, Default: 0.50, Min: 0.1, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: SeesDroneLayerEggs, Name: "sees_drone_layer_eggs", Title: "Eggs seen, drone layer", Unit: Share, Default: 0.5, Min: 0.1, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: ManyEggsOfYoung, Name: "many_eggs_of_young", Title: "Many eggs a cell, of a queen new to laying", Unit: Share, Default: 0.15, Min: 0, Max: 0.5, Source: "two or three eggs a cell at first can pass, keepers' teaching", Confidence: Taught, Used: lookWas},
	{
		Key: NewToLaying, Name: "new_to_laying", Title: "Queen is new to laying under", Unit: Day, Default: 3, Min: 1, Max: 10,
		Source: noSource, Confidence: CommonPractice, Used: lookWas,
	},
	{Key: ManyEggsOfWorkers, Name: "many_eggs_of_workers", Title: "Many eggs a cell, laying workers", Unit: Share, Default: 0.9, Min: 0.5, Max: 0.999, Source: "5 to 15 eggs a cell, keepers' teaching", Confidence: Taught, Used: lookWas},
	{Key: ManyEggsOfDroneLayer, Name: "many_eggs_of_drone_layer", Title: "Many eggs a cell, drone layer", Unit: Share, Default: 0.2, Min: 0, Max: 0.5, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: FindsVirgin, Name: "finds_virgin", Title: "Queen found, a virgin", Unit: Share, Default: 0.55, Min: 0.1, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: FindsMated, Name: "finds_mated", Title: "Queen found, mated and not laying", Unit: Share, Default: 0.65, Min: 0.1, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: FindsLaying, Name: "finds_laying", Title: "Queen found, laying", Unit: Share, Default: 0.85, Min: 0.1, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: NotFoundCounts, Name: "not_found_counts", Title: "No queen seen counts for", Unit: Ratio, Default: 0.4, Min: 0, Max: 1, Source: "of a search: who looks for eggs rarely searches for her; " + noSource, Confidence: CommonPractice, Used: lookWas},
	{Key: CallsVirgin, Name: "calls_virgin", Title: "A virgin called a virgin", Unit: Share, Default: 0.9, Min: 0.5, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: CallsMated, Name: "calls_mated", Title: "A mated queen who does not lay called a virgin", Unit: Share, Default: 0.6, Min: 0.1, Max: 0.999, Source: "she grows broad before she lays; " + noSource, Confidence: CommonPractice, Used: lookWas},
	{Key: CallsYoungVirgin, Name: "calls_young_virgin", Title: "A laying queen called a virgin", Unit: Share, Default: 0.1, Min: 0, Max: 0.5, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{
		Key: CallsNoQueen, Name: "calls_no_queen", Title: "A queen seen where none is, called a virgin", Unit: Share, Default: 0.5, Min: 0, Max: 1,
		Source: "even odds; " + noSource, Confidence: CommonPractice, Used: lookWas,
	},
	{
		Key: TellsManyEggs, Name: "tells_many_eggs", Title: "Laying workers told by who works among the combs", Unit: Share, Default: 0.6, Min: 0, Max: 0.95,
		Source: "who gives brood, a cell or a virgin, or looks, and has no word of eggs; " + noSource, Confidence: CommonPractice, Used: lookWas,
	},
	{
		Key: FewBees, Name: "few_bees", Title: "Too few bees to keep a queen, up to", Unit: Sides, Default: 1, Min: 0, Max: 3,
		Source: noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{
		Key: WeakLoses, Name: "weak_loses", Title: "Queen lost from a nuc of too few bees, a day", Unit: SharePerDay, Default: 0.04, Min: 0, Max: 0.3,
		Source: "it flies off or dies out, until bees are given or a look finds more; " + noSource, Confidence: CommonPractice, Used: whatNuc,
	},
	{Key: SeesDroneBrood, Name: "sees_drone_brood", Title: "Drone brood seen in worker cells after 9 d", Unit: Share, Default: 0.95, Min: 0.5, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: SeesCappedBrood, Name: "sees_capped_brood", Title: "Capped worker brood seen once it is there", Unit: Share, Default: 0.95, Min: 0.5, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: SeesOwnCells, Name: "sees_own_cells", Title: "Own cells seen where there are some", Unit: Share, Default: 0.9, Min: 0.5, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: OwnCellsQueenright, Name: "own_cells_queenright", Title: "Cells seen beside a queen", Unit: Share, Default: 0.03, Min: 0.001, Max: 0.3, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{
		Key: OwnCellsBeside, Name: "own_cells_beside", Title: "Own cells stand beside a virgin under", Unit: Day, Default: 2, Min: 0, Max: 7,
		Source: "she tears them down within days; " + noSource, Confidence: CommonPractice, Used: lookWas,
	},
	{Key: SeesCellSign, Name: "sees_cell_sign", Title: "Cell tells truly how it went", Unit: Share, Default: 0.9, Min: 0.5, Max: 0.999, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: CellSignElsewhere, Name: "cell_sign_elsewhere", Title: "Cell open at the tip, virgin not taken in", Unit: Share, Default: 0.3, Min: 0.01, Max: 0.9, Source: ofHabit, Confidence: CommonPractice, Used: lookWas},
	{Key: SeenAmiss, Name: "seen_amiss", Title: "Said by mistake", Unit: Share, Default: 0.002, Min: 0.0001, Max: 0.05, Source: "a slip of eye, tongue or pen; " + noSource, Confidence: CommonPractice, Used: lookWas},
	{Key: ThoroughLook, Name: "thorough_look", Title: "A thorough look counts for", Unit: Ratio, Default: 2, Min: 1, Max: 4, Source: "looks; " + noSource, Confidence: CommonPractice, Used: lookWas},
	{Key: QuickLook, Name: "quick_look", Title: "A glance under the lid counts for", Unit: Ratio, Default: 0.3, Min: 0.05, Max: 1, Source: "looks; " + noSource, Confidence: CommonPractice, Used: lookWas},
}
