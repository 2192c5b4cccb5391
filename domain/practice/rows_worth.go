package practice

const (
	priced = "prices stand as 0.15 : 0.40 : 1 for cell, virgin and mated queen; " + noSource
	weighs = "what an action is worth"
)

// worthRows are what things are worth, in mated queens.
var worthRows = []Number{
	{Key: PriceQueen, Name: "price_queen", Title: "A mated queen, in your money", Unit: Money, Default: 1, Min: 0.01, Max: 100000, Source: "1 counts in queens; the keeper's own price, with a word for the money behind it, as in 30 crowns", Confidence: CommonPractice, Used: weighs},
	{Key: PriceCell, Name: "price_cell", Title: "A ripe cell", Unit: Queens, Default: 0.15, Min: 0, Max: 2, Source: priced, Confidence: CommonPractice, Used: weighs},
	{Key: PriceCellFalls, Name: "price_cell_falls", Title: "A cell's price falls, a day nearer to emerging", Unit: Share, Default: 0.05, Min: 0, Max: 0.5, Source: "those that emerge first are given first; " + noSource, Confidence: CommonPractice, Used: weighs},
	{Key: PriceVirgin, Name: "price_virgin", Title: "A virgin", Unit: Queens, Default: 0.40, Min: 0, Max: 2, Source: priced, Confidence: CommonPractice, Used: weighs},
	{Key: WorthOwnQueen, Name: "worth_own_queen", Title: "A laying queen of the nuc's own", Unit: Queens, Default: 0.6, Min: 0, Max: 1, Source: "her line is not sure; " + noSource, Confidence: CommonPractice, Used: weighs},
	{Key: PriceCup, Name: "price_cup", Title: "A cup of bees, its price", Unit: Queens, Default: 0.1, Min: 0, Max: 2, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: PriceBroodComb, Name: "price_brood_comb", Title: "A comb of brood", Unit: Queens, Default: 0.2, Min: 0, Max: 2, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: WorthNucDay, Name: "worth_nuc_day", Title: "A day of a nuc", Unit: Queens, Default: 0.0222, Min: 0, Max: 0.5, Source: "two queens of a nuc in 90 days; " + noSource, Confidence: CommonPractice, Used: weighs},
	{Key: WorthMinute, Name: "worth_minute", Title: "A minute of work", Unit: Queens, Default: 0.01, Min: 0, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: WeakLost, Name: "weak_lost", Title: "A weak nuc left so is lost", Unit: Share, Default: 0.3, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: LightLost, Name: "light_lost", Title: "A light nuc not fed is lost", Unit: Share, Default: 0.5, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: NarrowHelps, Name: "narrow_helps", Title: "A narrow entrance keeps robbers out", Unit: Share, Default: 0.5, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: RobbedLost, Name: "robbed_lost", Title: "A robbed nuc is lost", Unit: Share, Default: 0.3, Min: 0, Max: 1, Source: noSource, Confidence: CommonPractice, Used: weighs},
	{Key: ReviewAhead, Name: "review_ahead", Title: "Queens are wanted in", Unit: Day, Default: 28, Min: 7, Max: 60, Source: noSource, Confidence: CommonPractice, Used: "review"},
	{Key: ReviewSure, Name: "review_sure", Title: "As good as certain from", Unit: Share, Default: 0.95, Min: 0.8, Max: 1, Source: noSource, Confidence: CommonPractice, Used: "review"},
	{Key: PlanLapses, Name: "plan_lapses", Title: "A decision not carried out lapses after", Unit: Day, Default: 7, Min: 1, Max: 30, Source: noSource, Confidence: CommonPractice, Used: "decided work"},
	{Key: ReviewLoss, Name: "review_loss", Title: "Worth a decision from a loss of", Unit: Queens, Default: 0.03, Min: 0, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: "review"},
}
