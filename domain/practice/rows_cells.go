package practice

// cellRows are the windows from the graft, of wild cells and of own cells.
var cellRows = []Number{
	{
		Key: StarterToFinisher, Name: "starter_to_finisher", Title: "Starter to finisher", Unit: Day,
		Default: 1, Min: 1, Max: 2, Source: "24 h in breeders' tables; about two days, " + buechler2013, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: AcceptedCheck, Name: "accepted_check", Title: "Count the take", Unit: Day,
		Default: 1, Min: 1, Max: 2, Source: breedersTable, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: GraftToCappedFrom, Name: "graft_to_capped_from", Title: "Graft to capped, earliest", Unit: Day,
		Default: 4, Min: 3, Max: 5, Source: breedersTable, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: GraftToCapped, Name: "graft_to_capped", Title: "Graft to capped", Unit: Day,
		Default: 5, Min: 4, Max: 6, Source: breedersTable, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: GraftToCappedBy, Name: "graft_to_capped_by", Title: "Graft to capped, latest", Unit: Day,
		Default: 6, Min: 5, Max: 7, Source: breedersTable, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: HandsOffFrom, Name: "hands_off_from", Title: "Hands off cells from", Unit: Day,
		Default: 6, Min: 5, Max: 7, Source: "breeders' rule; no experiment on jolts by day was found", Confidence: CommonPractice,
		Used: "warning on handling cells",
	},
	{
		Key: HandsOffUntil, Name: "hands_off_until", Title: "Hands off cells until", Unit: Day,
		Default: 9, Min: 8, Max: 10, Source: "breeders' rule; no experiment on jolts by day was found", Confidence: CommonPractice,
		Used: "warning on handling cells",
	},
	{
		Key: CellsInFrom, Name: "cells_in_from", Title: "Cells into nucs from", Unit: Day,
		Default: 9, Min: 8, Max: 10, Source: "9 to 10, de Bruyn 2015, Bee Craft", Confidence: Verified, Used: "day for placing cells",
	},
	{
		Key: CellsIn, Name: "cells_in", Title: "Cells into nucs", Unit: Day,
		Default: 10, Min: 9, Max: 11, Source: breedersTable, Confidence: Taught, Used: "day for placing cells",
	},
	{
		Key: CellsInBy, Name: "cells_in_by", Title: "Cells into nucs by", Unit: Day,
		Default: 11, Min: 10, Max: 11, Source: "a breeders' journal, 2014", Confidence: Taught, Used: "day for placing cells",
	},
	{
		Key: GraftToEmergeFrom, Name: "graft_to_emerge_from", Title: "Graft to emergence, earliest", Unit: Day,
		Default: 11, Min: 10, Max: 12, Source: breedersTable, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: GraftToEmerge, Name: "graft_to_emerge", Title: "Graft to emergence", Unit: Day,
		Default: 12, Min: 11, Max: 13, Source: breedersTable + "; 295 h by the egg's clock", Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: GraftToEmergeBy, Name: "graft_to_emerge_by", Title: "Graft to emergence, latest", Unit: Day,
		Default: 13, Min: 12, Max: 14, Source: breedersTable, Confidence: Taught, Used: "tasks of a batch",
	},
	{
		Key: WildCellSearchFrom, Name: "wild_cell_search_from", Title: "Search for wild cells from", Unit: Day,
		Default: 4, Min: 3, Max: 6, Source: fellMorse1984 + ": cells begun after 12 to 48 h, most by day 3 to 4", Confidence: Verified,
		Used: "search for wild cells",
	},
	{
		Key: WildCellSearchGood, Name: "wild_cell_search_good", Title: "Search for wild cells, well until", Unit: Day,
		Default: 6, Min: 4, Max: 8, Source: noSource, Confidence: CommonPractice, Used: "search for wild cells",
	},
	{
		Key: WildCellSearchBy, Name: "wild_cell_search_by", Title: "Search for wild cells by", Unit: Day,
		Default: 9, Min: 7, Max: 10, Source: "a day before a queen could walk", Confidence: Derived, Used: "search for wild cells",
	},
	{
		Key: WildCellWalk, Name: "wild_cell_walk", Title: "A wild queen could walk from", Unit: Day,
		Default: 10, Min: 9, Max: 14, Source: "16 d less the age of the oldest larva that makes a queen, and the day the cell was begun",
		Confidence: Derived, Used: "search for wild cells",
	},
	{
		Key: BreakDownOwnCellsFrom, Name: "break_down_own_cells_from", Title: "Break down own cells from", Unit: Day,
		Default: 5, Min: 4, Max: 7, Source: "no larva is young enough after; " + noSource, Confidence: CommonPractice,
		Used: "break down own cells",
	},
	{
		Key: BreakDownOwnCellsBy, Name: "break_down_own_cells_by", Title: "Break down own cells by", Unit: Day,
		Default: 8, Min: 6, Max: 9, Source: noSource, Confidence: CommonPractice, Used: "break down own cells",
	},
	{
		Key: OwnCellsBegun, Name: "own_cells_begun", Title: "Own cells begun after", Unit: Hour,
		Default: 30, Min: 12, Max: 48, Source: fellMorse1984 + ": 12 to 48 h", Confidence: Verified, Used: ForReference,
	},
	{
		Key: OwnCellsOnLarvaeUnder, Name: "own_cells_on_larvae_under", Title: "Own cells on larvae under", Unit: Day,
		Default: 3, Min: 2, Max: 4, Source: fellMorse1984 + ": 65 % under 2 d, 25 % 3 d, 10 % 4 d", Confidence: Verified, Used: "own cells",
	},
	{
		Key: OwnQueenEmerges, Name: "own_queen_emerges", Title: "Own queen emerges after the loss", Unit: Day,
		Default: 12, Min: 10, Max: 14, Source: "16 d less 3 to 5 d developed, plus 0.5 to 2 d of delay: " + fellMorse1984, Confidence: Derived,
		Used: "own cells, own virgins",
	},
}
