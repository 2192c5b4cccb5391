package practice

// planRows are what a batch needs before and around the graft, and how far
// ahead plans are made.
var planRows = []Number{
	{
		Key: ConfineBreederBefore, Name: "confine_breeder_before", Title: "Breeder confined before the graft", Unit: Day,
		Default: 4, Min: 3, Max: 5, Source: "four days, " + buechler2013, Confidence: Verified, Used: "plan of a batch",
	},
	{
		Key: ConfineBreederFor, Name: "confine_breeder_for", Title: "Breeder stays confined", Unit: Hour,
		Default: 24, Min: 12, Max: 36, Source: "12 to 24 h, " + buechler2013, Confidence: Verified, Used: "plan of a batch",
	},
	{
		Key: FeedStarterBefore, Name: "feed_starter_before", Title: "Starter fed before the graft", Unit: Day,
		Default: 3, Min: 0, Max: 14, Source: "at least three days where there is no flow, " + buechler2013, Confidence: Verified, Used: "plan of a batch",
	},
	{
		Key: StarterSetUpBefore, Name: "starter_set_up_before", Title: "Starter set up before the graft", Unit: Day,
		Default: 1, Min: 0, Max: 7, Source: noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: NucsMadeUpBefore, Name: "nucs_made_up_before", Title: "Nucs made up before the cells", Unit: Day,
		Default: 1, Min: 0, Max: 3, Source: "24 to 48 h without a queen; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: NucsMadeUpEarliest, Name: "nucs_made_up_earliest", Title: "Nucs made up before the cells, earliest", Unit: Day,
		Default: 2, Min: 1, Max: 7, Source: "24 to 48 h without a queen; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: DroneCombAhead, Name: "drone_comb_ahead", Title: "Drone comb offered ahead of its last day", Unit: Day,
		Default: 14, Min: 0, Max: 30, Source: "begin no later than two months before mating, " + buechler2013, Confidence: Derived, Used: "plan of a batch",
	},
	{
		Key: CellsPerStarter, Name: "cells_per_starter", Title: "Larvae a starter takes at once", Unit: Cells,
		Default: 45, Min: 10, Max: 120, Source: "50 in a queenless unit in a keeper's account, up to 100 in a flow; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: CellsPerFinisher, Name: "cells_per_finisher", Title: "Cells a finisher rears at once", Unit: Cells,
		Default: 20, Min: 10, Max: 60, Source: "heaviest queens at 15, fewer of them at 24 and 48: Abd Al-Fattah, Mazeed & Abd Al-Hady 2011, J Apic Sci 55(2); the default is practice",
		Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: FinisherTurn, Name: "finisher_turn", Title: "A finisher takes the next cells after", Unit: Day,
		Default: 5, Min: 3, Max: 12, Source: "when the cells are capped; " + noSource, Confidence: CommonPractice, Used: "plan of a season",
	},
	{
		Key: IncubatorPlaces, Name: "incubator_places", Title: "Capped cells your incubator holds, 0 without one", Unit: Cells,
		Default: 0, Min: 0, Max: 2000, Source: "your own, by what stands in your shed; without one the cells ripen in their finisher", Confidence: CommonPractice, Used: "plan of a batch, plan of a season",
	},
	{
		Key: StarterBees, Name: "starter_bees", Title: "Bees for a starter", Unit: Kilogram,
		Default: 1.2, Min: 0.5, Max: 3, Source: "1 to 1.5 kg in a teaching page; 2 to 3 lb in slides", Confidence: Taught, Used: "plan of a batch",
	},
	{
		Key: NursesPerCell, Name: "nurses_per_cell", Title: "Nurse bees a queen cell wants", Unit: Bees,
		Default: 300, Min: 100, Max: 600, Source: "Laidlaw & Page, quoted by another", Confidence: Taught, Used: "plan of a batch",
	},
	{
		Key: FeedPerRearer, Name: "feed_per_rearer", Title: "Syrup a starter or finisher is fed a day", Unit: Litre,
		Default: 0.5, Min: 0, Max: 3, Source: noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: QueensPerDroneColony, Name: "queens_per_drone_colony", Title: "Queens that a drone colony serves", Unit: Queens,
		Default: 25, Min: 10, Max: 50, Source: "one drone colony to 25 queens, " + buechler2013 + ", after Tiesler & Englert 1989", Confidence: Verified, Used: "plan of a batch",
	},
	{
		Key: DronesPerComb, Name: "drones_per_comb", Title: "Ripe drones that a drone comb gives", Unit: Drones,
		Default: 1500, Min: 100, Max: 4000, Source: "1,840 drone cells a side by an estimating frame, not all laid in, not all raised; " + noSource, Confidence: CommonPractice, Used: "drones by day",
	},
	{
		Key: CombsPerColonyWeek, Name: "combs_per_colony_week", Title: "Brood combs a colony gives in a week", Unit: Combs,
		Default: 2, Min: 0.5, Max: 4, Source: "1 to 3; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: BroodCombsPerNuc, Name: "brood_combs_per_nuc", Title: "Brood combs a nuc on full combs gets", Unit: Combs,
		Default: 1, Min: 0.25, Max: 3, Source: "one of brood, two of food, Alley 1903", Confidence: Taught, Used: "plan of a batch",
	},
	{
		Key: HalfCombSide, Name: "half_comb_side", Title: "A side counts as half a full one from", Unit: Dm2,
		Default: 3, Min: 2, Max: 5, Source: "halved frames have 2.6 to 5, mini combs 1 to 2.2; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: HalfCombsPerNuc, Name: "half_combs_per_nuc", Title: "Half combs of brood a nuc on half combs gets", Unit: Combs,
		Default: 1, Min: 0, Max: 4, Source: "as a nuc on full combs gets one; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: FoodPerNuc, Name: "food_per_nuc", Title: "Food a mini nuc is set up with", Unit: Kilogram,
		Default: 0.6, Min: 0.1, Max: 3, Source: "for two weeks and more at 15 g a day and 1000 bees, with a reserve; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: BuyAhead, Name: "buy_ahead", Title: "Bought goods ordered ahead", Unit: Day,
		Default: 14, Min: 1, Max: 60, Source: noSource, Confidence: CommonPractice, Used: "buying list",
	},
	{
		Key: LeaveInColony, Name: "leave_in_colony", Title: "Bees left in a colony that gives", Unit: Bees,
		Default: 20000, Min: 5000, Max: 40000, Source: "a builder has over 20,000 bees, a lecture page; the rest is practice", Confidence: Taught, Used: "plan of a batch",
	},
	{
		Key: MinutesConfine, Name: "minutes_confine", Title: "Confine the breeder on a comb", Unit: Minute,
		Default: 20, Min: 5, Max: 90, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesSetUpStarter, Name: "minutes_set_up_starter", Title: "Set up a starter", Unit: Minute,
		Default: 40, Min: 10, Max: 180, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesFeedRearer, Name: "minutes_feed_rearer", Title: "Feed a starter or finisher", Unit: Minute,
		Default: 5, Min: 1, Max: 30, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesDroneComb, Name: "minutes_drone_comb", Title: "Hang a drone comb in", Unit: Minute,
		Default: 10, Min: 2, Max: 60, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesCheckTake, Name: "minutes_check_take", Title: "Count the takes or capped cells of a finisher", Unit: Minute,
		Default: 10, Min: 2, Max: 60, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: PlanSure, Name: "plan_sure", Title: "A promise should hold with", Unit: Share,
		Default: 0.90, Min: 0.5, Max: 0.99, Source: noSource, Confidence: CommonPractice, Used: "plan of a batch, plan of a season",
	},
	{
		Key: PlanInTime, Name: "plan_in_time", Title: "A graft is in time when so many of those who lay are ready", Unit: Share,
		Default: 0.90, Min: 0.5, Max: 0.99, Source: noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: PlanSlack, Name: "plan_slack", Title: "A graft is planned before the last day in time by", Unit: Day,
		Default: 2, Min: 0, Max: 14, Source: "a hand that does not come, a day of rain; " + noSource, Confidence: CommonPractice, Used: "plan of a batch",
	},
	{
		Key: MatesOfQueen, Name: "mates_of_queen", Title: "Drones a queen mates with", Unit: Drones,
		Default: 13, Min: 1, Max: 40, Source: "13.0 on islands, 18.1 on the mainland, 6 to 24: Neumann, Moritz & van Praagh 1999, J Apic Res 38:11-18", Confidence: Verified, Used: "kinship, brood lost",
	},
	{
		Key: SexAlleles, Name: "sex_alleles", Title: "Sex alleles in the drones of strangers", Unit: Alleles,
		Default: 18, Min: 4, Max: 150, Source: "18.9 in one population, Adams et al 1977, Genetics 86:583-596; far more over continents, Lechner et al 2014, Mol Biol Evol 31:272-287", Confidence: Unchecked, Used: "kinship, brood lost",
	},
	{
		Key: BroodLostWarned, Name: "brood_lost_warned", Title: "Brood lost to kinship warned from", Unit: Share,
		Default: 0.10, Min: 0.02, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: "kinship, brood lost",
	},
	{
		Key: CagedMost, Name: "caged_most", Title: "Caged before the hand-over, at most", Unit: Day,
		Default: 3, Min: 0, Max: 10, Source: "with attendants, out of a bank; " + noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
	{
		Key: JourneyUsual, Name: "journey_usual", Title: "Queens sent are on the way", Unit: Day,
		Default: 1, Min: 0, Max: 7, Source: noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
	{
		Key: ReplacedWithin, Name: "replaced_within", Title: "Queens claimed are replaced within", Unit: Day,
		Default: 14, Min: 1, Max: 90, Source: noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
	{
		Key: SentFrom, Name: "sent_from", Title: "Queens are sent from the day of the week, Monday 1", Unit: WeekdayNumber,
		Default: 1, Min: 1, Max: 7, Source: "early in the week, so that none wait over Sunday; " + noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
	{
		Key: SentUntil, Name: "sent_until", Title: "Queens are sent until the day of the week, Sunday 7", Unit: WeekdayNumber,
		Default: 3, Min: 1, Max: 7, Source: "early in the week, so that none wait over Sunday; " + noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
	{
		Key: HeatStop, Name: "heat_stop", Title: "No queens sent on days hotter than", Unit: Celsius,
		Default: 30, Min: 22, Max: 40, Source: noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
	{
		Key: NextSure, Name: "next_sure", Title: "Missing queens told for the day they are ready with", Unit: Share,
		Default: 0.85, Min: 0.5, Max: 0.99, Source: noSource, Confidence: CommonPractice, Used: "orders, who gets which queen",
	},
}
