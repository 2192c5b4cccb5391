package practice

// rateRows are the shares from one step of the work to the next.
var rateRows = []Number{
	{
		Key: Take, Name: "take", Title: "Take", Unit: Share,
		Default: 0.80, Min: 0.05, Max: 1, Source: "at least 0.80 when well run, " + buechler2013 + "; 0.81, Lashari et al, trials of 2020 and 2021",
		Confidence: Verified, Front: true, Used: "expected numbers of a batch ahead",
	},
	{
		Key: RipeOfTakes, Name: "ripe_of_takes", Title: "Takes that ripen", Unit: Share,
		Default: 0.95, Min: 0.3, Max: 1, Source: noSource, Confidence: CommonPractice, Front: true, Used: "expected numbers of a batch ahead",
	},
	{
		Key: EmergedOfCells, Name: "emerged_of_cells", Title: "Cells given that emerge", Unit: Share,
		Default: 0.95, Min: 0.3, Max: 1, Source: "all of those accepted, Dodologlu & Genc 1997; less in use", Confidence: CommonPractice, Front: true,
		Used: "expected numbers of a batch ahead",
	},
	{
		Key: LayingOfAccepted, Name: "laying_of_accepted", Title: "Accepted that come to lay", Unit: Share,
		Default: 0.875, Min: 0.1, Max: 1, Source: "cell to laying 0.70 with a third of the losses in mating, " + perezSato2006, Confidence: Derived,
		Front: true, Used: "expected numbers of a batch ahead",
	},
	{
		Key: BatchLuck, Name: "batch_luck", Title: "Batch luck", Unit: Share,
		Default: 0.11, Min: 0, Max: 0.4, Source: "spread between batches about their mean; " + noSource, Confidence: CommonPractice, Front: true,
		Used: "expected numbers of a batch ahead, their spread",
	},
	{
		Key: AcceptCell, Name: "accept_cell", Title: "Cell given, accepted", Unit: Share,
		Default: 0.80, Min: 0.2, Max: 1, Source: "70 % to laying over 0.875 mated, " + perezSato2006, Confidence: Derived,
		Used: "late day; expected numbers of a batch ahead",
	},
	{
		Key: AcceptVirginUnderDay, Name: "accept_virgin_under_day", Title: "Virgin put in, accepted", Unit: Share,
		Default: 0.74, Min: 0.2, Max: 1, Source: "65 % to laying over 0.875 mated, under a day old, " + perezSato2006, Confidence: Derived,
		Front: true, Used: "late day",
	},
	{
		Key: AcceptVirginDaysOld, Name: "accept_virgin_days_old", Title: "Virgin of 3 to 4 d, accepted", Unit: Share,
		Default: 0.63, Min: 0.1, Max: 1, Source: "55 % to laying over 0.875 mated, " + perezSato2006, Confidence: Derived, Used: "late day",
	},
	{
		Key: AcceptVirginSprayed, Name: "accept_virgin_sprayed", Title: "Virgin put in with spray or smoke, accepted", Unit: Share,
		Default: 0.92, Min: 0.3, Max: 1, Source: "0.90 to 0.95 by keepers' own account", Confidence: CommonPractice, Used: ForReference,
	},
	{
		Key: AcceptVirginQueenright, Name: "accept_virgin_queenright", Title: "Virgin caged in a queenright box, accepted", Unit: Share,
		Default: 0.33, Min: 0.05, Max: 1, Source: "29 % to laying over 0.875 mated, " + perezSato2006, Confidence: Derived, Used: ForReference,
	},
	{
		Key: AcceptLaying, Name: "accept_laying", Title: "Laying queen put in, accepted", Unit: Share,
		Default: 0.85, Min: 0.3, Max: 1, Source: "13 to 30 % of bought queens lost in 16 weeks, controls 5 to 17 %: Rhodes, Somerville & Harden 2004, Apidologie 35:383-388; the share at once is practice",
		Confidence: CommonPractice, Used: "what a nuc most probably holds",
	},
	{
		Key: VirginBankSurvival, Name: "virgin_bank_survival", Title: "Virgins alive in the bank", Unit: Share,
		Default: 0.77, Min: 0.4, Max: 1, Source: "0.774 in queenless, 0.680 in queenright colonies, 3 to 30 d, as taught, no study found", Confidence: Taught,
		Used: "bank limits",
	},
	{
		Key: MatedBankSurvival, Name: "mated_bank_survival", Title: "Mated queens alive after six weeks", Unit: Share,
		Default: 0.70, Min: 0.4, Max: 1, Source: "0.62 outdoors, 0.78 in a cool room: a university's page for keepers, no study named", Confidence: Taught, Used: "bank limits",
	},
	{
		Key: OwnCellsRaised, Name: "own_cells_raised", Title: "Raises own cells when refused", Unit: Share,
		Default: 0.7, Min: 0, Max: 1, Source: "0.6 to 0.8; " + noSource, Confidence: CommonPractice, Used: "what a nuc most probably holds",
	},
	{
		Key: OwnCellsDestroy, Name: "own_cells_destroy", Title: "Cell given is lost where own cells are left standing", Unit: Share,
		Default: 0.30, Min: 0, Max: 1, Source: "of those that would be accepted; " + noSource, Confidence: CommonPractice, Used: "what a nuc most probably holds",
	},
	{
		Key: OwnCellsOverlooked, Name: "own_cells_overlooked", Title: "Own cells overlooked", Unit: Share,
		Default: 0.1, Min: 0, Max: 0.5, Source: noSource, Confidence: CommonPractice, Used: "what a nuc most probably holds",
	},
}
