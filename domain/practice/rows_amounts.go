package practice

const (
	ratedBy    = "how many larvae, what a batch gives"
	livesAfter = "turn of a nuc"
	notFound   = "no published figure was found for this age; survival rises steeply from 7 to 24 d, Rhodes, Somerville & Harden 2004, Apidologie 35:383-388; the share is the keeper's own"
	rhodes2003 = "advice of 28 to 35 d, Rhodes & Denney 2003, quoted by another"
)

// amountRows are what a batch gives beside the rates, and what a queen's age when
// she is caught does to her.
var amountRows = []Number{
	{
		Key: GoodEnough, Name: "good_enough", Title: "Good enough of laying", Unit: Share,
		Default: 0.90, Min: 0.2, Max: 1, Source: noSource, Confidence: CommonPractice, Used: ratedBy,
	},
	{
		Key: GraftFails, Name: "graft_fails", Title: "A graft fails outright", Unit: Share,
		Default: 0.083, Min: 0, Max: 0.5, Source: "one in twelve; " + noSource, Confidence: CommonPractice, Used: ratedBy,
	},
	{
		Key: PriorWeight, Name: "prior_weight", Title: "A default share counts as so many seen", Unit: Ratio,
		Default: 20, Min: 1, Max: 1000, Source: "your own counts outweigh it after so many; " + noSource, Confidence: CommonPractice, Used: ratedBy,
	},
	{
		Key: LivesCaughtAt7, Name: "lives_caught_at_7", Title: "Alive after 15 weeks, caught at 7 d", Unit: Share,
		Default: 0.20, Min: 0, Max: 1, Source: notFound, Confidence: CommonPractice, Used: livesAfter,
	},
	{
		Key: LivesCaughtAt14, Name: "lives_caught_at_14", Title: "Alive after 15 weeks, caught at 14 d", Unit: Share,
		Default: 0.35, Min: 0, Max: 1, Source: notFound, Confidence: CommonPractice, Used: livesAfter,
	},
	{
		Key: LivesCaughtAt21, Name: "lives_caught_at_21", Title: "Alive after 15 weeks, caught at 21 d", Unit: Share,
		Default: 0.50, Min: 0, Max: 1, Source: notFound, Confidence: CommonPractice, Used: livesAfter,
	},
	{
		Key: LivesCaughtAt28, Name: "lives_caught_at_28", Title: "Alive after 15 weeks, caught at 28 d", Unit: Share,
		Default: 0.60, Min: 0, Max: 1, Source: rhodes2003, Confidence: Taught, Used: livesAfter,
	},
	{
		Key: LivesCaughtAt35, Name: "lives_caught_at_35", Title: "Alive after 15 weeks, caught at 35 d", Unit: Share,
		Default: 0.725, Min: 0, Max: 1, Source: rhodes2003, Confidence: Taught, Used: livesAfter,
	},
}
