package practice

// queenRows follow a queen from her emergence to the hand-over, and a nuc
// without one.
var queenRows = []Number{
	{
		Key: VirginMayFlyFrom, Name: "virgin_may_fly_from", Title: "Virgin may fly from, age", Unit: Day,
		Default: 4, Min: 3, Max: 6, Source: "orientation at 3 to 5 d, Burley 2007, thesis Virginia Tech", Confidence: Verified,
		Used: "moves refused, looks warned",
	},
	{
		Key: FirstMatingFlight, Name: "first_mating_flight", Title: "First mating flight, age", Unit: Day,
		Default: 6.4, Min: 4, Max: 10, Source: "5 to 14 d, Burley 2007, thesis Virginia Tech, after Roberts 1944, Woyke 1964, Harbo 1985",
		Confidence: Derived, Front: true, Used: "mating window, drones",
	},
	{
		Key: FirstMatingFlightSpread, Name: "first_mating_flight_spread", Title: "First mating flight, spread", Unit: Day,
		Default: 2.2, Min: 0.5, Max: 4, Source: "chosen to fit published ages at the first egg", Confidence: Derived, Used: "what a nuc most probably holds",
	},
	{
		Key: FirstMatingFlightFrom, Name: "first_mating_flight_from", Title: "First mating flight, earliest", Unit: Day,
		Default: 4, Min: 3, Max: 6, Source: "Burley 2007, thesis Virginia Tech", Confidence: Verified, Used: "mating window",
	},
	{
		Key: FirstMatingFlightBy, Name: "first_mating_flight_by", Title: "First mating flight, latest", Unit: Day,
		Default: 14, Min: 12, Max: 21, Source: "Burley 2007, thesis Virginia Tech", Confidence: Verified, Used: "mating window",
	},
	{
		Key: MatingToFirstEgg, Name: "mating_to_first_egg", Title: "Mating to first egg", Unit: Day,
		Default: 3, Min: 2, Max: 5, Source: "2.8 to 3.4 d as taught, no study found", Confidence: Taught, Used: "what a nuc most probably holds",
	},
	{
		Key: FirstEggsHalfBy, Name: "first_eggs_half_by", Title: "First eggs: half by", Unit: Day,
		Default: 11, Min: 8, Max: 21, Confidence: Verified, Front: true, Used: "turn of a nuc",
		Source: "means 10.6 (Szabo et al 1987, J Apic Res 26:73-78), 10.3, 8.5 to 9.8 (Akyol et al 2008), 12.9 (" + perezSato2006 + ")",
	},
	{
		Key: FirstEggsNineInTenBy, Name: "first_eggs_nine_in_ten_by", Title: "First eggs: nine in ten by", Unit: Day,
		Default: 15, Min: 10, Max: 24, Confidence: Derived, Front: true, Used: "when to worry, turn of a nuc",
		Source: "lognormal shape, Woyke et al 2008, about the means of four published sets",
	},
	{
		Key: LookForEggsNotBefore, Name: "look_for_eggs_not_before", Title: "Look for eggs not before", Unit: Day,
		Default: 9, Min: 7, Max: 12, Source: "earliest usual laying, Akyol et al 2008", Confidence: Derived, Used: "look for eggs",
	},
	{
		Key: LookForEggsFrom, Name: "look_for_eggs_from", Title: "Look for eggs from", Unit: Day,
		Default: 14, Min: 9, Max: 17, Source: buechler2013 + ": about two weeks", Confidence: Verified, Used: "look for eggs",
	},
	{
		Key: LookForEggsChance, Name: "look_for_eggs_chance", Title: "Look when the chance of eggs passes", Unit: Share,
		Default: 0.8, Min: 0.3, Max: 0.99, Source: noSource, Confidence: CommonPractice, Used: "what a nuc most probably holds",
	},
	{
		Key: LookAgainFrom, Name: "look_again_from", Title: "No eggs: look again after", Unit: Day,
		Default: 3, Min: 1, Max: 7, Source: noSource, Confidence: CommonPractice, Used: "late queens",
	},
	{
		Key: LookAgainBy, Name: "look_again_by", Title: "No eggs: look again by", Unit: Day,
		Default: 4, Min: 2, Max: 10, Source: noSource, Confidence: CommonPractice, Used: "late queens",
	},
	{
		Key: VirginWatch, Name: "virgin_watch", Title: "Virgin watched from, age", Unit: Day,
		Default: 14, Min: 10, Max: 21, Source: "mating flights mostly done by 14 d, Burley 2007, thesis Virginia Tech", Confidence: Verified,
		Used: "virgin's time is running",
	},
	{
		Key: VirginLate, Name: "virgin_late", Title: "Virgin late over, age", Unit: Day,
		Default: 21, Min: 18, Max: 28, Source: buechler2013 + ": mating within three weeks", Confidence: Verified,
		Used: "virgin's time is running, virgins put in or banked",
	},
	{
		Key: VirginTooLate, Name: "virgin_too_late", Title: "Too late to mate from", Unit: Day,
		Default: 28, Min: 21, Max: 35, Source: "up to four weeks, then drone layer, in keepers' teaching; no measured curve found",
		Confidence: Taught, Front: true, Used: "virgin's time is running, drone layers",
	},
	{
		Key: EggToCappedWorkerBrood, Name: "egg_to_capped_worker_brood", Title: "First eggs to capped worker brood", Unit: Day,
		Default: 9, Min: 8, Max: 11, Source: milum1930 + ": most between day 8 and 9", Confidence: Verified, Used: "look for good brood",
	},
	{
		Key: ReadyAfterFirstEggFrom, Name: "ready_after_first_egg_from", Title: "Ready after first eggs, earliest", Unit: Day,
		Default: 9, Min: 8, Max: 14, Source: "good brood is capped: de Bruyn 2015, Bee Craft; " + buechler2013, Confidence: Verified,
		Used: "plan of a batch",
	},
	{
		Key: ReadyAfterFirstEgg, Name: "ready_after_first_egg", Title: "Ready after first eggs", Unit: Day,
		Default: 12, Min: 9, Max: 28, Source: "9 d to capped brood; about two weeks for a closed nest by breeders", Confidence: CommonPractice,
		Front: true, Used: "hand-over date",
	},
	{
		Key: LeastAgeAtHandOver, Name: "least_age_at_hand_over", Title: "Least age at hand-over", Unit: Day,
		Default: 28, Min: 14, Max: 42, Source: "Rhodes, Somerville & Harden 2004, Apidologie 35:383-388; 28 to 35 d, Rhodes & Denney 2003",
		Confidence: Verified, Front: true, Used: "hand-over date",
	},
	{
		Key: FullFrom, Name: "full_from", Title: "Laying queen fills small combs from", Unit: Day,
		Default: 7, Min: 3, Max: 21, Source: "days to two weeks; " + noSource, Confidence: CommonPractice, Used: "full boxes",
	},
	{
		Key: FullBy, Name: "full_by", Title: "Laying queen fills small combs by", Unit: Day,
		Default: 14, Min: 5, Max: 28, Source: "days to two weeks; " + noSource, Confidence: CommonPractice, Used: "full boxes",
	},
	{
		Key: NoCellWithin, Name: "no_cell_within", Title: "No cell within, after a queen", Unit: Hour,
		Default: 6, Min: 2, Max: 24, Source: "loss noticed after 6 to 12 h, " + fellMorse1984, Confidence: Verified, Front: true,
		Used: "tasks of a day",
	},
	{
		Key: QueenlessBeforeCell, Name: "queenless_before_cell", Title: "Without queen before a cell", Unit: Hour,
		Default: 24, Min: 2, Max: 72, Source: "worst at 3 h or less, best at 3 d or more: farmers' records, Free & Spencer-Booth 1961, J Agric Sci",
		Confidence: CommonPractice, Front: true, Used: "make-up day",
	},
	{
		Key: QueenlessActAfter, Name: "queenless_act_after", Title: "Without queen: act after", Unit: Day,
		Default: 2, Min: 1, Max: 7, Source: "de Bruyn 2015, Bee Craft: two days to the next cell", Confidence: Verified, Used: "queenless nucs",
	},
	{
		Key: LayingWorkersEarliest, Name: "laying_workers_earliest", Title: "Laying workers, earliest", Unit: Day,
		Default: 14, Min: 10, Max: 21, Source: "about two weeks in keepers' teaching; Miller & Ratnieks 2001, Insectes Soc 48:178-184", Confidence: Verified,
		Used: ForReference,
	},
	{
		Key: LayingWorkersFrom, Name: "laying_workers_from", Title: "Laying workers from", Unit: Day,
		Default: 21, Min: 14, Max: 30, Source: "about when the last brood has emerged, keepers' teaching", Confidence: Taught,
		Used: "queenless nucs, cells into them",
	},
	{
		Key: LayingWorkersLatest, Name: "laying_workers_latest", Title: "Laying workers, latest", Unit: Day,
		Default: 30, Min: 21, Max: 40, Source: "23 to 30 d, Winston 1987, The biology of the honey bee", Confidence: Unchecked, Used: ForReference,
	},
	{
		Key: VirginBankGood, Name: "virgin_bank_good", Title: "Virgins keep well for", Unit: Day,
		Default: 3, Min: 1, Max: 7, Source: "90 to 100 % alive at 3 d in 12 ways of caging, Bigio, Grueter & Ratnieks 2012, PLoS ONE", Confidence: Verified,
		Used: "bank limits",
	},
	{
		Key: VirginBankMost, Name: "virgin_bank_most", Title: "Virgins keep at most", Unit: Day,
		Default: 7, Min: 3, Max: 14, Source: "53 % alive at 7 d with attendants, 18 % without, Bigio, Grueter & Ratnieks 2012, PLoS ONE", Confidence: Verified,
		Used: "bank limits",
	},
	{
		Key: MatedBankMost, Name: "mated_bank_most", Title: "Mated queens keep at most", Unit: Day,
		Default: 45, Min: 14, Max: 60, Source: buechler2013 + ": one to two months", Confidence: Verified, Used: "bank limits",
	},
	{
		Key: BankPlaces, Name: "bank_places", Title: "Cages that a bank colony takes", Unit: Queens,
		Default: 120, Min: 1, Max: 500, Source: "up to 60 cages a frame and 120 a colony, " + buechler2013 + ", after Morse 1994", Confidence: Verified,
		Used: "bank limits",
	},
	{
		Key: TraceBack, Name: "trace_back", Title: "Disease suspected: trace bees and combs back", Unit: Day,
		Default: 60, Min: 14, Max: 365, Source: noSource, Confidence: CommonPractice, Used: "standstill, trace",
	},
	{
		Key: PapersWarned, Name: "papers_warned", Title: "Papers run out: say so ahead", Unit: Day,
		Default: 14, Min: 1, Max: 60, Source: noSource, Confidence: CommonPractice, Used: "papers",
	},
}
