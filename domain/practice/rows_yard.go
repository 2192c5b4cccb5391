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
	{
		Key: LayoutCounts, Name: "layout_counts", Title: "Smallest difference of two layouts that counts", Unit: Share,
		Default: 0.01, Min: 0, Max: 0.1, Source: "one of a hundred virgins; " + noSource, Confidence: CommonPractice, Used: "layouts compared",
	},
	{
		Key: LayoutTold, Name: "layout_told", Title: "Trials that agree before two layouts are said to differ", Unit: Share,
		Default: 0.9, Min: 0.5, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "layouts compared",
	},
	{
		Key: AlikeApart, Name: "alike_apart", Title: "Look-alikes apart at least", Unit: Metre,
		Default: 2, Min: 0.3, Max: 10, Source: "pairs 2 m apart lost no more than pairs 5 m apart, " + perezSato2008, Confidence: Derived, Used: "findings of a layout",
	},
	{
		Key: AlikeApartAdvised, Name: "alike_apart_advised", Title: "Look-alikes apart, advised", Unit: Metre,
		Default: 3, Min: 0.5, Max: 15, Source: "extension advice of 2018, 10 ft and more; nothing measured", Confidence: Taught, Used: "findings of a layout",
	},
	{
		Key: StrongApart, Name: "strong_apart", Title: "Nucs from strong colonies at least", Unit: Metre,
		Default: 30, Min: 0, Max: 1000, Source: "30 to 1000 m are told; " + noSource, Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: StrongApartDearth, Name: "strong_apart_dearth", Title: "Nucs from strong colonies in dearth at least", Unit: Metre,
		Default: 100, Min: 0, Max: 1000, Source: "30 to 1000 m are told; " + noSource, Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: SetbackDwelling, Name: "setback_dwelling", Title: "Nucs from dwellings at least", Unit: Metre,
		Default: 8, Min: 0, Max: 200, Source: "25 ft in the code of one county, 50 and more for many colonies: ask what holds where you live", Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: SetbackTrack, Name: "setback_track", Title: "Nucs from tracks and paths at least", Unit: Metre,
		Default: 3, Min: 0, Max: 200, Source: "10 ft in the code of one village: ask what holds where you live", Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: SetbackBoundary, Name: "setback_boundary", Title: "Nucs from the boundary at least", Unit: Metre,
		Default: 3, Min: 0, Max: 200, Source: "10 ft on a teaching page: ask what holds where you live", Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: MorningSunLeast, Name: "morning_sun_least", Title: "Sun before noon on a nuc at least", Unit: Hour,
		Default: 1, Min: 0, Max: 8, Source: noSource, Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: SunOnFrontBy, Name: "sun_on_front_by", Title: "Sun on the entrance by", Unit: ClockHour,
		Default: 9, Min: 5, Max: 13, Source: "hives that face east start earlier, Evans et al 2024, Insects 15:112, no minutes given; " + noSource, Confidence: CommonPractice, Used: "figures of a layout",
	},
	{
		Key: WindOnFront, Name: "wind_on_front", Title: "An entrance faces the wind within", Unit: Degree,
		Default: 45, Min: 10, Max: 90, Source: noSource, Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: ShelterReach, Name: "shelter_reach", Title: "A hedge or wall shelters for its height times", Unit: Ratio,
		Default: 10, Min: 2, Max: 30, Source: noSource, Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: WaterWithin, Name: "water_within", Title: "Water within", Unit: Kilometre,
		Default: 0.4, Min: 0.05, Max: 2, Source: "a quarter of a mile on an extension service's page", Confidence: Taught, Used: "findings of a layout",
	},
	{
		Key: VehicleWithin, Name: "vehicle_within", Title: "Vehicle within", Unit: Metre,
		Default: 20, Min: 2, Max: 500, Source: noSource, Confidence: CommonPractice, Used: "findings of a layout",
	},
	{
		Key: MarkSize, Name: "mark_size", Title: "Front marks are as wide as", Unit: Metre,
		Default: 0.2, Min: 0.03, Max: 0.6, Source: noSource, Confidence: CommonPractice, Used: "how far bees see a mark",
	},
	{
		Key: MarkSeenLight, Name: "mark_seen_light", Title: "Bees see a mark lighter or darker from", Unit: Degree,
		Default: 5, Min: 2, Max: 20, Source: giurfa1996, Confidence: Verified, Used: "how far bees see a mark",
	},
	{
		Key: MarkSeenHue, Name: "mark_seen_hue", Title: "Bees see a mark of another hue alone from", Unit: Degree,
		Default: 15, Min: 5, Max: 40, Source: giurfa1996, Confidence: Verified, Used: "how far bees see a mark",
	},
	{
		Key: BeeAcuity, Name: "bee_acuity", Title: "Bees see details from", Unit: Degree,
		Default: 1.9, Min: 1, Max: 4, Source: "Rigosi et al 2017, Sci Rep 7:45972", Confidence: Verified, Used: "how far bees see a mark",
	},
	{
		Key: BoxWide, Name: "box_wide", Title: "A nuc's box is as wide as", Unit: Metre,
		Default: 0.25, Min: 0.1, Max: 0.6, Source: noSource, Confidence: CommonPractice, Used: "whether a nuc can be reached",
	},
	{
		Key: WalkwayLeast, Name: "walkway_least", Title: "Walkways as wide as", Unit: Metre,
		Default: 0.6, Min: 0.3, Max: 3, Source: noSource, Confidence: CommonPractice, Used: "whether a nuc can be reached",
	},
	{
		Key: WorkedFrom, Name: "worked_from", Title: "A nuc is worked from no further than", Unit: Metre,
		Default: 0.8, Min: 0.4, Max: 2, Source: noSource, Confidence: CommonPractice, Used: "whether a nuc can be reached",
	},
	{
		Key: VirginStays, Name: "virgin_stays", Title: "A virgin who stays at a wrong door, against one lost", Unit: Share,
		Default: 0.3, Min: 0, Max: 1, Source: "she lays where nobody knows whose daughter she is; " + noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
	{
		Key: MinutesTurnNuc, Name: "minutes_turn_nuc", Title: "Turn a nuc where it stands", Unit: Minute,
		Default: 1, Min: 0.2, Max: 15, Source: noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
	{
		Key: LoadedWalk, Name: "loaded_walk", Title: "Walking with a load", Unit: MetrePerSec,
		Default: 0.8, Min: 0.3, Max: 1.6, Source: noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
	{
		Key: LayoutRounds, Name: "layout_rounds", Title: "Days on which the yard is walked round while a layout stands", Unit: Day,
		Default: 20, Min: 0, Max: 365, Source: noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
	{
		Key: LayoutPays, Name: "layout_pays", Title: "A stand is left as it is for a gain under", Unit: Queens,
		Default: 0.005, Min: 0, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
	{
		Key: LayoutTurnStep, Name: "layout_turn_step", Title: "Stands are turned by", Unit: Degree,
		Default: 45, Min: 5, Max: 180, Source: noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
	{
		Key: LayoutWind, Name: "layout_wind", Title: "A front in the wind weighs", Unit: Queens,
		Default: 0.05, Min: 0, Max: 1, Source: "enough that none is turned into it for next to nothing; " + noSource, Confidence: CommonPractice, Used: "layouts searched for",
	},
}

// giurfa1996 is of coloured discs that bees were taught.
const giurfa1996 = "Giurfa, Vorobyev, Kevan & Menzel 1996, J Comp Physiol A 178:699"
