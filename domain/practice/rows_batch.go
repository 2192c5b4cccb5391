package practice

// batchRows are the numbers of one batch: its larvae, its spread, the first
// virgin of it.
var batchRows = []Number{
	{
		Key: LarvaAgeAtGraft, Name: "larva_age_at_graft", Title: "Age of larvae at graft", Unit: Hour,
		Default: 18, Min: 12, Max: 24, Source: "12 to 20 h, Akongte et al 2022, J Apiculture 37:365-371; 12 to 24 h in teaching",
		Confidence: Verified, Front: true, Used: "emergence date",
	},
	{
		Key: LarvaAgeWarned, Name: "larva_age_warned", Title: "Larvae old from", Unit: Hour,
		Default: 24, Min: 18, Max: 36, Source: "weight, spermatheca and ovarioles fall with each day: Woyke 1971, J Apic Res 10",
		Confidence: Unchecked, Used: "warning at the graft",
	},
	{
		Key: LarvaAgeRefused, Name: "larva_age_refused", Title: "Larvae too old over", Unit: Hour,
		Default: 36, Min: 24, Max: 48, Source: "1 to 1.5 d taught as the limit; 3-day larvae 7 % taken against 81 %, Lashari et al, trials of 2020 and 2021",
		Confidence: Taught, Used: "a planned graft is refused; one written down is taken in, with a word",
	},
	{
		Key: EmergenceSpread, Name: "emergence_spread", Title: "Spread of emergence", Unit: Hour,
		Default: 8, Min: 4, Max: 16, Source: "no measured spread exists; an even age window of 24 h alone gives 6.9 h",
		Confidence: CommonPractice, Front: true, Used: "how early cells must be in",
	},
	{
		Key: SharedShiftSpread, Name: "shared_shift_spread", Title: "Spread of whole batches", Unit: Hour,
		Default: 8, Min: 0, Max: 16, Source: "hour of the graft, breeder's comb, incubator; " + noSource,
		Confidence: CommonPractice, Used: "how early cells must be in",
	},
	{
		Key: OverAgedShare, Name: "over_aged_share", Title: "Larvae older than thought", Unit: Share,
		Default: 0.03, Min: 0, Max: 0.3, Source: noSource, Confidence: CommonPractice, Used: "how early the first walks",
	},
	{
		Key: OverAgedBy, Name: "over_aged_by", Title: "Older than thought by", Unit: Hour,
		Default: 24, Min: 12, Max: 36, Source: "larvae of 48 to 60 h instead of 18 to 24 h emerge up to 1.5 d early, a breeder's account on a teaching page",
		Confidence: Taught, Used: "how early the first walks",
	},
	{
		Key: TipBareBefore, Name: "tip_bare_before", Title: "Tip bare before emergence", Unit: Hour,
		Default: 24, Min: 6, Max: 72, Source: "bees strip the wax from the tip in the last day or two; " + noSource,
		Confidence: CommonPractice, Used: "the clock, once seen",
	},
	{
		Key: TipBareSpread, Name: "tip_bare_spread", Title: "Tip bare, spread", Unit: Hour,
		Default: 12, Min: 4, Max: 24, Source: noSource, Confidence: CommonPractice, Used: "the clock, once seen",
	},
	{
		Key: GraceOfFirstVirgin, Name: "grace_of_first_virgin", Title: "Grace of the first virgin", Unit: Hour,
		Default: 6, Min: 0, Max: 24, Source: "hours until she has opened the other cells; " + noSource, Confidence: CommonPractice,
		Used: "the late day",
	},
	{
		Key: HardChance, Name: "hard_chance", Title: "Chance a virgin walks that is too much", Unit: Share,
		Default: 0.01, Min: 0.001, Max: 0.1, Source: noSource, Confidence: CommonPractice, Used: "every hard deadline",
	},
	{
		Key: HardMargin, Name: "hard_margin", Title: "Cells out before that hour by", Unit: Hour,
		Default: 6, Min: 0, Max: 24, Source: noSource, Confidence: CommonPractice, Used: "every hard deadline",
	},
	{
		Key: BestAheadOfHard, Name: "best_ahead_of_hard", Title: "Cells best out before the hard hour by", Unit: Hour,
		Default: 24, Min: 0, Max: 48, Source: noSource, Confidence: CommonPractice, Used: "day for placing cells",
	},
}
