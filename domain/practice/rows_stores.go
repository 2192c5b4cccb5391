package practice

// storeRows are food: what is given, what is there, what is used.
var storeRows = []Number{
	{
		Key: SyrupPerFeed, Name: "syrup_per_feed", Title: "Syrup a nuc and feeding", Unit: Litre,
		Default: 0.3, Min: 0.05, Max: 2, Source: noSource, Confidence: CommonPractice, Front: true, Used: "kit",
	},
	{
		Key: SyrupSugar, Name: "syrup_sugar", Title: "Sugar in syrup", Unit: GramPerLitre,
		Default: 615, Min: 450, Max: 950, Source: "half sugar by weight at 1.23 kg/l", Confidence: Derived, Used: "food left",
	},
	{
		Key: FondantSugar, Name: "fondant_sugar", Title: "Sugar in fondant", Unit: Share,
		Default: 0.9, Min: 0.7, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "food left",
	},
	{
		Key: HoneyPerSide, Name: "honey_per_side", Title: "Capped food on a comb", Unit: GramPerDm2,
		Default: 125, Min: 60, Max: 175, Source: combTables, Confidence: Taught, Used: "food left",
	},
	{
		Key: SugarPerDay, Name: "sugar_per_day", Title: "Sugar 1000 bees use", Unit: GramPerDay,
		Default: 15, Min: 5, Max: 40, Source: "10 to 40 mg a bee, Rortais et al 2005", Confidence: Unchecked, Used: "food left",
	},
	{
		Key: FlowIncome, Name: "flow_income", Title: "Sugar 1000 bees bring in on a flying day of a flow", Unit: GramPerDay,
		Default: 10, Min: 0, Max: 100, Source: "a small nuc lives on a flow more than it stores; " + noSource, Confidence: CommonPractice, Used: "food left",
	},
	{
		Key: LightBelow, Name: "light_below", Title: "Light when food lasts under", Unit: Day,
		Default: 5, Min: 2, Max: 21, Source: noSource, Confidence: CommonPractice, Used: "light nucs",
	},
	{
		Key: StarvedAfter, Name: "starved_after", Title: "May have starved, days after the last food", Unit: Day,
		Default: 3, Min: 1, Max: 7, Source: noSource, Confidence: CommonPractice, Used: "light nucs",
	},
}
