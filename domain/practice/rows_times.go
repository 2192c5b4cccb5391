package practice

// timeSource is the source of the minutes: none was found.
const timeSource = "no published study found"

// timeRows are the minutes a task takes for one nuc, cell or colony, the hours
// alarms ring at, and how far ahead and back the book is asked.
var timeRows = []Number{
	{
		Key: MinutesLook, Name: "minutes_look", Title: "Look, one nuc", Unit: Minute,
		Default: 2, Min: 0.5, Max: 20, Source: timeSource, Confidence: CommonPractice, Front: true, Used: "minutes a day",
	},
	{
		Key: MinutesLookFrameNuc, Name: "minutes_look_frame_nuc", Title: "Look, nuc on full combs", Unit: Minute,
		Default: 4, Min: 1, Max: 20, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesGiveCell, Name: "minutes_give_cell", Title: "Give a cell", Unit: Minute,
		Default: 1, Min: 0.25, Max: 10, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day, late day",
	},
	{
		Key: MinutesPutInVirgin, Name: "minutes_put_in_virgin", Title: "Put in a virgin", Unit: Minute,
		Default: 2, Min: 0.5, Max: 10, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesEmergenceCheck, Name: "minutes_emergence_check", Title: "See whether a cell has emerged", Unit: Minute,
		Default: 1, Min: 0.25, Max: 10, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesMakeUp, Name: "minutes_make_up", Title: "Make up a mini nuc", Unit: Minute,
		Default: 4, Min: 1, Max: 20, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesMakeUpFrameNuc, Name: "minutes_make_up_frame_nuc", Title: "Make up a nuc on full combs", Unit: Minute,
		Default: 8, Min: 2, Max: 40, Source: timeSource, Confidence: CommonPractice, Used: "what an action is worth",
	},
	{
		Key: MinutesCatch, Name: "minutes_catch", Title: "Catch, cage and mark a queen", Unit: Minute,
		Default: 4, Min: 1, Max: 20, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesCageCell, Name: "minutes_cage_cell", Title: "Cage a ripe cell", Unit: Minute,
		Default: 1.5, Min: 0.25, Max: 10, Source: timeSource, Confidence: CommonPractice, Used: "late day",
	},
	{
		Key: MinutesFeed, Name: "minutes_feed", Title: "Feed a nuc", Unit: Minute,
		Default: 1, Min: 0.25, Max: 10, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesAddBees, Name: "minutes_add_bees", Title: "Add bees or brood", Unit: Minute,
		Default: 3, Min: 0.5, Max: 20, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesCheckBees, Name: "minutes_check_bees", Title: "Check bees after make-up", Unit: Minute,
		Default: 1, Min: 0.25, Max: 10, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesBreakDownCells, Name: "minutes_break_down_cells", Title: "Break down own cells", Unit: Minute,
		Default: 3, Min: 1, Max: 20, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesSearchBrood, Name: "minutes_search_brood", Title: "Search a colony's brood for cells", Unit: Minute,
		Default: 20, Min: 5, Max: 60, Source: "up to 20 min for a full assessment, as taught, no study found", Confidence: Taught, Used: "minutes a day",
	},
	{
		Key: MinutesUnite, Name: "minutes_unite", Title: "Unite two nucs", Unit: Minute,
		Default: 5, Min: 1, Max: 30, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesShakeOut, Name: "minutes_shake_out", Title: "Shake out a nuc", Unit: Minute,
		Default: 4, Min: 1, Max: 30, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesBank, Name: "minutes_bank", Title: "See to the bank", Unit: Minute,
		Default: 10, Min: 2, Max: 60, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesEntrance, Name: "minutes_entrance", Title: "Narrow an entrance", Unit: Minute,
		Default: 0.5, Min: 0.1, Max: 5, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesGraftLarva, Name: "minutes_graft_larva", Title: "Graft a larva", Unit: Minute,
		Default: 0.5, Min: 0.1, Max: 5, Source: timeSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: MinutesCarryStand, Name: "minutes_carry_stand", Title: "Carry a nuc to another place in its yard", Unit: Minute,
		Default: 3, Min: 0.5, Max: 30, Source: noSource, Confidence: CommonPractice, Used: "tasks",
	},
	{
		Key: MinutesPaintFront, Name: "minutes_paint_front", Title: "Mark a front", Unit: Minute,
		Default: 2, Min: 0.2, Max: 20, Source: noSource, Confidence: CommonPractice, Used: "tasks",
	},
	{
		Key: MinutesHandOver, Name: "minutes_hand_over", Title: "Hand the queens of an order over, who are in their cages", Unit: Minute,
		Default: 5, Min: 0, Max: 120, Source: noSource, Confidence: CommonPractice, Used: "minutes a day",
	},
	{
		Key: AlarmEvening, Name: "alarm_evening", Title: "Evening alarm", Unit: ClockHour,
		Default: 19, Min: 15, Max: 23, Source: noSource, Confidence: CommonPractice, Used: "alarms of hard deadlines",
	},
	{
		Key: AlarmMorning, Name: "alarm_morning", Title: "Morning alarm", Unit: ClockHour,
		Default: 8, Min: 4, Max: 11, Source: noSource, Confidence: CommonPractice, Used: "alarms of hard deadlines",
	},
	{
		Key: AlarmEveningsBack, Name: "alarm_evenings_back", Title: "Evenings before asked for a free one", Unit: Day,
		Default: 7, Min: 1, Max: 14, Source: noSource, Confidence: CommonPractice, Used: "alarms of hard deadlines",
	},
	{
		Key: FreeHourAhead, Name: "free_hour_ahead", Title: "Free hour looked for, days ahead", Unit: Day,
		Default: 28, Min: 7, Max: 60, Source: noSource, Confidence: CommonPractice, Used: "late day",
	},
	{
		Key: ShortNotice, Name: "short_notice", Title: "The day for a deadline is the one before it by", Unit: Hour,
		Default: 12, Min: 1, Max: 24, Source: noSource, Confidence: CommonPractice, Used: "nobody is free",
	},
	{
		Key: AskedBack, Name: "asked_back", Title: "Counts and lines written twice asked for, days", Unit: Day,
		Default: 7, Min: 1, Max: 30, Source: noSource, Confidence: CommonPractice, Used: "counts, lines written twice",
	},
	{
		Key: LateFrom, Name: "late_from", Title: "Ways out shown before the hard hour by", Unit: Hour,
		Default: 48, Min: 6, Max: 96, Source: noSource, Confidence: CommonPractice, Used: "late day",
	},
	{
		Key: LateLossFirst, Name: "late_loss_first", Title: "Loss of waiting told first after", Unit: Hour,
		Default: 6, Min: 1, Max: 12, Source: noSource, Confidence: CommonPractice, Used: "late day",
	},
	{
		Key: LateLossSecond, Name: "late_loss_second", Title: "Loss of waiting told again after", Unit: Hour,
		Default: 24, Min: 13, Max: 72, Source: noSource, Confidence: CommonPractice, Used: "late day",
	},
}
