package practice

// scoreSource is the source of every weight of the exposure.
const scoreSource = "no published weights exist"

// robbingRows are the terms of the exposure x: risk = 1/(1 + e^−x).
var robbingRows = []Number{
	{
		Key: RobbingBase, Name: "robbing_base", Title: "Exposure without cause", Unit: Score,
		Default: -4, Min: -8, Max: 0, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingDearth, Name: "robbing_dearth", Title: "Full dearth adds", Unit: Score,
		Default: 1.6, Min: 0, Max: 4, Confidence: CommonPractice, Used: "robbers",
		Source: "guards let in 25 % of strangers in dearth and all in flow, Downs & Ratnieks 2000, Behav Ecol 11:326; weight is practice",
	},
	{
		Key: DearthUnsaid, Name: "dearth_unsaid", Title: "Dearth assumed where nobody said", Unit: Share,
		Default: 0.5, Min: 0, Max: 1, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingDoor, Name: "robbing_door", Title: "Entrance 2.7 times too wide adds", Unit: Score,
		Default: 0.9, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingDoorUsual, Name: "robbing_door_usual", Title: "Entrance 1000 bees can guard", Unit: Cm2,
		Default: 1.2, Min: 0.5, Max: 5, Source: "one to two bees wide; " + noSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingQueenless, Name: "robbing_queenless", Title: "No queen adds", Unit: Score,
		Default: 0.5, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingSyrup, Name: "robbing_syrup", Title: "Syrup adds", Unit: Score,
		Default: 0.8, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingFondant, Name: "robbing_fondant", Title: "Fondant adds", Unit: Score,
		Default: 0.1, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingOpened, Name: "robbing_opened", Title: "Open long in dearth adds", Unit: Score,
		Default: 0.4, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingNeighbour, Name: "robbing_neighbour", Title: "A strong neighbour adds", Unit: Score,
		Default: 0.6, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingNeighbourReach, Name: "robbing_neighbour_reach", Title: "Neighbours count within about", Unit: Metre,
		Default: 40, Min: 5, Max: 500, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingWasps, Name: "robbing_wasps", Title: "Wasps add", Unit: Score,
		Default: 0.5, Min: 0, Max: 3, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: WaspsLast, Name: "wasps_last", Title: "Wasps seen count for", Unit: Day,
		Default: 21, Min: 2, Max: 90, Source: "or until forage is told again without them; " + noSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingWatch, Name: "robbing_watch", Title: "Watch from", Unit: Share,
		Default: 0.15, Min: 0.01, Max: 0.9, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingAct, Name: "robbing_act", Title: "Act from", Unit: Share,
		Default: 0.35, Min: 0.02, Max: 0.95, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingPriorWeight, Name: "robbing_prior_weight", Title: "Exposure without cause counts as, nuc months", Unit: Ratio,
		Default: 100, Min: 1, Max: 1000, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: RobbingTrial, Name: "robbing_trial", Title: "A nuc month without robbers", Unit: Day,
		Default: 30, Min: 7, Max: 120, Source: scoreSource, Confidence: CommonPractice, Used: "robbers",
	},
	{
		Key: OneBeeWide, Name: "one_bee_wide", Title: "Entrance one bee wide", Unit: Cm2,
		Default: 0.64, Min: 0.4, Max: 1, Source: "8 by 8 mm; a bee space is 6 to 9 mm in keepers' teaching", Confidence: Derived, Used: "robbers",
	},
	{
		Key: OpenInDearthMost, Name: "open_in_dearth_most", Title: "Open in dearth at most", Unit: Minute,
		Default: 3, Min: 1, Max: 15, Source: noSource, Confidence: CommonPractice, Used: "warning on a look, robbers",
	},
	{
		Key: RobbingLasts, Name: "robbing_lasts", Title: "Robbed yard kept shut for", Unit: Day,
		Default: 2, Min: 1, Max: 7, Source: noSource, Confidence: CommonPractice, Used: "robbed nucs, day's route",
	},
	{
		Key: RobbedLookBy, Name: "robbed_look_by", Title: "Robbed: look whether anything lives by", Unit: Day,
		Default: 3, Min: 2, Max: 14, Source: noSource, Confidence: CommonPractice, Used: "robbed nucs",
	},
	{
		Key: Dusk, Name: "dusk", Title: "Dusk", Unit: ClockHour,
		Default: 20, Min: 15, Max: 23, Source: noSource, Confidence: CommonPractice, Used: "entrances that are shut",
	},
	{
		Key: ShutInMost, Name: "shut_in_most", Title: "Bees shut in at most", Unit: Hour,
		Default: 24, Min: 6, Max: 96, Source: noSource, Confidence: CommonPractice, Used: "entrances that are shut",
	},
	{
		Key: LetOutFrom, Name: "let_out_from", Title: "Made up shut in: let out after", Unit: Hour,
		Default: 24, Min: 12, Max: 96, Source: noSource, Confidence: CommonPractice, Used: "nucs made up shut in",
	},
	{
		Key: LetOutBy, Name: "let_out_by", Title: "Made up shut in: let out within", Unit: Hour,
		Default: 72, Min: 24, Max: 120, Source: noSource, Confidence: CommonPractice, Used: "nucs made up shut in",
	},
}
