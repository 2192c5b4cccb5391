package practice

const combTables = "teaching pages on judging combs by the dm², per side"

// beeRows are amounts of bees and brood, how they dwindle, and drones.
var beeRows = []Number{
	{
		Key: CupOfBees, Name: "cup_of_bees", Title: "A cup of bees", Unit: Litre,
		Default: 0.237, Min: 0.05, Max: 1, Source: "the US cup", Confidence: CommonPractice, Front: true, Used: "bees to take",
	},
	{
		Key: BeesPerCup, Name: "bees_per_cup", Title: "Bees in a cup", Unit: Bees,
		Default: 700, Min: 100, Max: 3500, Source: "3.0 bees a ml; 1000 bees about 300 ml in keepers' accounts", Confidence: CommonPractice,
		Used: "bees to take, bees added",
	},
	{
		Key: BeesPerKilogram, Name: "bees_per_kilogram", Title: "Bees in a kilogram", Unit: Bees,
		Default: 8300, Min: 6700, Max: 12500, Confidence: Taught, Used: "bees to take",
		Source: "0.12 g a bee shaken from brood combs, partly gorged; 7690 gorged to 11360 calm, Mitchell 1970, Am Bee J 110, quoted by another",
	},
	{
		Key: ColonyGives, Name: "colony_gives", Title: "Bees a strong colony can give in a week", Unit: Kilogram,
		Default: 1.1, Min: 0.3, Max: 2.5, Source: noSource, Confidence: CommonPractice, Used: "bees to take",
	},
	{
		Key: BeesPerSide, Name: "bees_per_side", Title: "Bees on a crowded comb", Unit: BeesPerDm2,
		Default: 125, Min: 100, Max: 140, Source: combTables + "", Confidence: Taught, Used: "bees from what is seen",
	},
	{
		Key: CombSideArea, Name: "comb_side_area", Title: "A side of comb where nobody said its size", Unit: Dm2,
		Default: 2, Min: 0.5, Max: 12, Source: "a small mating comb has 1 to 4; " + noSource, Confidence: CommonPractice, Used: "bees and food from what is seen",
	},
	{
		Key: FullCombSide, Name: "full_comb_side", Title: "A side counts as full size from", Unit: Dm2,
		Default: 6, Min: 4, Max: 8, Source: "brood frames have 7 to 11, mating nuc combs 1 to 4; " + noSource, Confidence: CommonPractice, Used: "full boxes, minutes a day",
	},
	{
		Key: LookError, Name: "look_error", Title: "Error of a look", Unit: Share,
		Default: 0.20, Min: 0.05, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: "bees from what is seen",
	},
	{
		Key: MadeUpError, Name: "made_up_error", Title: "Error of bees put in by the cup", Unit: Share,
		Default: 0.20, Min: 0.05, Max: 0.5, Source: "a cup holds 550 to 900 bees and half to five in six of them stay; " + noSource, Confidence: CommonPractice,
		Used: "bees from what is seen",
	},
	{
		Key: ReckoningErrorGrows, Name: "reckoning_error_grows", Title: "Error that a day of reckoning adds", Unit: Share,
		Default: 0.05, Min: 0.01, Max: 0.2, Source: noSource, Confidence: CommonPractice, Used: "bees from what is seen",
	},
	{
		Key: LookOverrules, Name: "look_overrules", Title: "A look stands alone from, in errors", Unit: Ratio,
		Default: 2, Min: 1, Max: 5, Source: noSource, Confidence: CommonPractice, Used: "bees from what is seen",
	},
	{
		Key: StrengthAhead, Name: "strength_ahead", Title: "Bees and food are reckoned ahead", Unit: Day,
		Default: 14, Min: 3, Max: 28, Source: noSource, Confidence: CommonPractice, Used: "weak, light and full nucs",
	},
	{
		Key: StrengthToldAhead, Name: "strength_told_ahead", Title: "Weak or light is told ahead", Unit: Day,
		Default: 3, Min: 0, Max: 14, Source: noSource, Confidence: CommonPractice, Used: "weak and light nucs",
	},
	{
		Key: LookTooOld, Name: "look_too_old", Title: "Look whether it lives, days after the last look", Unit: Day,
		Default: 28, Min: 7, Max: 90, Source: noSource, Confidence: CommonPractice, Used: "bees and food from what is seen, nucs not looked at",
	},
	{
		Key: MildNight, Name: "mild_night", Title: "A mild night", Unit: Celsius,
		Default: 20, Min: 17, Max: 26, Source: noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: UsualNight, Name: "usual_night", Title: "A usual night, assumed where none is known", Unit: Celsius,
		Default: 14, Min: 12, Max: 16, Source: noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: ColdNight, Name: "cold_night", Title: "A cold night", Unit: Celsius,
		Default: 8, Min: -5, Max: 11, Source: noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: NeedAt20C, Name: "need_at_20c", Title: "Bees a mild night needs", Unit: Bees,
		Default: 600, Min: 200, Max: 2000, Source: "300 ml a mini nuc in keepers' accounts; by warmth, " + noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: NeedAt14C, Name: "need_at_14c", Title: "Bees a usual night needs", Unit: Bees,
		Default: 1000, Min: 400, Max: 3000, Source: "300 ml a mini nuc in keepers' accounts; by warmth, " + noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: NeedAt8C, Name: "need_at_8c", Title: "Bees a cold night needs", Unit: Bees,
		Default: 1500, Min: 600, Max: 4000, Source: noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: ThinWoodFactor, Name: "thin_wood_factor", Title: "Thin wood needs", Unit: Ratio,
		Default: 1.5, Min: 1, Max: 3, Source: noSource, Confidence: CommonPractice, Used: "weak nucs, make-up",
	},
	{
		Key: AddBeesUnder, Name: "add_bees_under", Title: "Add bees under this part of the need", Unit: Share,
		Default: 0.67, Min: 0.3, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "weak nucs",
	},
	{
		Key: CellsPerSide, Name: "cells_per_side", Title: "Worker cells on a comb", Unit: CellsPerDm2,
		Default: 400, Min: 340, Max: 430, Source: combTables, Confidence: Taught, Used: "bees to come",
	},
	{
		Key: CappedEmergence, Name: "capped_emergence", Title: "Capped brood that emerges", Unit: Share,
		Default: 0.94, Min: 0.7, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "bees to come",
	},
	{
		Key: CappedEmergesOver, Name: "capped_emerges_over", Title: "Capped brood emerges over", Unit: Day,
		Default: 12, Min: 11, Max: 12.5, Source: "textbooks", Confidence: Unchecked, Used: "bees to come",
	},
	{
		Key: QueenLays, Name: "queen_lays", Title: "Eggs a young queen lays in a nuc", Unit: EggsPerDay,
		Default: 300, Min: 50, Max: 2000, Source: "small combs of some 3000 cells are full in 7 to 14 d; " + noSource, Confidence: CommonPractice,
		Used: "bees to come, full boxes",
	},
	{
		Key: BroodPerBee, Name: "brood_per_bee", Title: "Brood a bee can rear", Unit: CellsPerBee,
		Default: 1.75, Min: 0.5, Max: 3, Confidence: CommonPractice, Used: "bees to come, full boxes",
		Source: "a capped cell a bee, so 21 of 12 in all; few reared more a bee, Eischen et al 1982, abstract; " + noSource,
	},
	{
		Key: BroodShareOfComb, Name: "brood_share_of_comb", Title: "Comb that brood can fill", Unit: Share,
		Default: 0.7, Min: 0.3, Max: 0.95, Source: "the rest is food and the rim; " + noSource, Confidence: CommonPractice, Used: "bees to come, full boxes",
	},
	{
		Key: ForagingFromAge, Name: "foraging_from_age", Title: "Bees forage over, age", Unit: Day,
		Default: 18, Min: 7, Max: 28, Source: "about 21 d in textbooks, sooner in small units", Confidence: Unchecked, Used: "bees that dwindle",
	},
	{
		Key: WorkerLifeMost, Name: "worker_life_most", Title: "Oldest worker in summer", Unit: Day,
		Default: 50, Min: 40, Max: 60, Source: "Remolina et al 2007, J Insect Physiol 53:1027, as another paper quotes it", Confidence: Taught, Used: "bees that dwindle",
	},
	{
		Key: HouseBeeDeaths, Name: "house_bee_deaths", Title: "House bees that die", Unit: SharePerDay,
		Default: 0.01, Min: 0.003, Max: 0.05, Source: "Schmickl & Crailsheim 2007, Apidologie 38", Confidence: Unchecked, Used: "bees that dwindle",
	},
	{
		Key: ForagerDeaths, Name: "forager_deaths", Title: "Foragers that die on a flying day", Unit: SharePerDay,
		Default: 0.12, Min: 0.05, Max: 0.36, Source: "36 % a foraging day, a third of them out: Prado et al 2020, R Soc Open Sci, abstract", Confidence: Derived,
		Used: "bees that dwindle",
	},
	{
		Key: LossOfBroodCombs, Name: "loss_of_brood_combs", Title: "Fly home from brood combs, same yard", Unit: Share,
		Default: 0.30, Min: 0.05, Max: 0.6, Source: noSource, Confidence: CommonPractice, Used: "make-up",
	},
	{
		Key: LossOfSievedBees, Name: "loss_of_sieved_bees", Title: "Fly home of sieved young bees, same yard", Unit: Share,
		Default: 0.10, Min: 0.02, Max: 0.3, Source: noSource, Confidence: CommonPractice, Used: ForReference,
	},
	{
		Key: LossOfShutInBees, Name: "loss_of_shut_in_bees", Title: "Fly home after 24 to 48 h shut in", Unit: Share,
		Default: 0.08, Min: 0.02, Max: 0.3, Source: "only a few older bees go back, Alley 1903; share is practice", Confidence: CommonPractice, Used: "make-up",
	},
	{
		Key: LossOfMovedBees, Name: "loss_of_moved_bees", Title: "Lost of bees moved far", Unit: Share,
		Default: 0.02, Min: 0, Max: 0.2, Source: noSource, Confidence: CommonPractice, Used: "make-up",
	},
	{
		Key: SettlingTime, Name: "settling_time", Title: "Fliers go home within", Unit: Day,
		Default: 2, Min: 1, Max: 4, Source: noSource, Confidence: CommonPractice, Used: "make-up, check bees",
	},
	{
		Key: MoveDistanceLeast, Name: "move_distance_least", Title: "Moved bees stay from", Unit: Kilometre,
		Default: 5, Min: 3, Max: 6, Source: "2 miles, Alley 1903; 3 miles in keepers' teaching", Confidence: Taught, Used: "moves refused, make-up",
	},
	{
		Key: DroneColonies, Name: "drone_colonies", Title: "Drone colonies for a yard", Unit: Colonies,
		Default: 8, Min: 1, Max: 50, Source: "8 to 10, " + buechler2013 + ", after Tiesler & Englert 1989", Confidence: Verified, Front: true, Used: "plan of a batch",
	},
	{
		Key: DroneCombBeforeFlights, Name: "drone_comb_before_flights", Title: "Drone comb in before flights", Unit: Day,
		Default: 47, Min: 36, Max: 70, Source: "40 d from egg to ripe, " + buechler2013 + ", and a week so that many are", Confidence: Derived, Front: true,
		Used: "plan of a batch",
	},
}
