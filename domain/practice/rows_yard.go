package practice

// yardRows are where bees end who come home to a yard of many like boxes. The
// kernel is a proposal held against published drift, see the package yard; its
// ranges are those within which it still keeps the published bands.
var yardRows = []Number{
	{
		Key: HomingVirgins, Name: "homing_virgins", Title: "Virgins: a like door at no distance, against their own", Unit: Share,
		Default: 0.08, Min: 0.02, Max: 0.2, Source: "fitted to 4 % of queens in pairs 2 and 5 m apart, " + perezSato2008, Confidence: Derived, Used: "homing in a yard",
	},
	{
		Key: HomingVirginsReach, Name: "homing_virgins_reach", Title: "Virgins: distance at which a door counts a third", Unit: Metre,
		Default: 2.5, Min: 1, Max: 8, Source: "the data do not settle it; " + noSource, Confidence: CommonPractice, Used: "homing in a yard",
	},
	{
		Key: HomingWorkers, Name: "homing_workers", Title: "Workers: a like door at no distance, against their own", Unit: Share,
		Default: 0.117, Min: 0.03, Max: 0.25, Source: "fitted to 22 % in plain rows, Pfeiffer & Crailsheim 1998, Insectes Sociaux 45:151", Confidence: Derived, Used: "drift in a yard",
	},
	{
		Key: HomingWorkersReach, Name: "homing_workers_reach", Title: "Workers: distance at which a door counts a third", Unit: Metre,
		Default: 2, Min: 1, Max: 6, Source: "the data do not settle it; " + noSource, Confidence: CommonPractice, Used: "drift in a yard",
	},
	{
		Key: HomingFacing, Name: "homing_facing", Title: "A door that faces a right angle or more away counts", Unit: Ratio,
		Default: 0.5, Min: 0.3, Max: 1, Source: "facing cuts drift more than colour, Free 1958, J Agric Sci; none found for queens, " + perezSato2008, Confidence: Derived, Used: "homing in a yard",
	},
	{
		Key: HomingOneMark, Name: "homing_one_mark", Title: "A front that differs in colour or shape counts", Unit: Ratio,
		Default: 0.7, Min: 0.5, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "homing in a yard",
	},
	{
		Key: HomingBothMarks, Name: "homing_both_marks", Title: "A front that differs in colour and shape counts", Unit: Ratio,
		Default: 0.5, Min: 0.3, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "homing in a yard",
	},
	{
		Key: HomingActivityMost, Name: "homing_activity_most", Title: "A door busier than their own counts, at most", Unit: Ratio,
		Default: 2, Min: 1, Max: 4, Source: "fewer bees at the own door raise drift, no measure given, " + perezSato2008, Confidence: Derived, Used: "homing in a yard",
	},
	{
		Key: HomingNearest, Name: "homing_nearest", Title: "Boxes around that bees mix up with their own", Unit: Boxes,
		Default: 4, Min: 1, Max: 8, Source: "bees tell three or four places of a row apart; " + noSource, Confidence: CommonPractice, Used: "homing in a yard",
	},
	{
		Key: PlaceApartInBlock, Name: "place_apart_in_block", Title: "Places of a stand of four apart", Unit: Metre,
		Default: 0.3, Min: 0.1, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "homing in a yard",
	},
	{
		Key: PlaceApartInRow, Name: "place_apart_in_row", Title: "Places of a row on one stand apart", Unit: Metre,
		Default: 1, Min: 0.2, Max: 4, Source: noSource, Confidence: CommonPractice, Used: "homing in a yard",
	},
	{
		Key: YardWrongUsual, Name: "yard_wrong_usual", Title: "Virgins at a wrong door in a usual yard", Unit: Share,
		Default: 0.04, Min: 0, Max: 0.2, Source: "4 % of queens, " + perezSato2008, Confidence: Verified, Used: "what a virgin's place costs",
	},
	{
		Key: YardWrongDoubles, Name: "yard_wrong_doubles", Title: "More at a wrong door that double the loss of virgins", Unit: Share,
		Default: 0.1, Min: 0.05, Max: 0.3, Source: "the loss over a usual mating; " + noSource, Confidence: CommonPractice, Used: "what a virgin's place costs",
	},
	{
		Key: YardFactorLeast, Name: "yard_factor_least", Title: "Loss of virgins in the best place, against the usual", Unit: Ratio,
		Default: 0.6, Min: 0.3, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "what a virgin's place costs",
	},
}
