package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// group is a part of the help, with its commands.
type group struct {
	id, title string
	commands  []func(*app) *cobra.Command
}

// groups are all commands. A new one is a function here, and where it prints
// JSON its shape below.
func groups() []group {
	return []group{
		{"see", "To see:", []func(*app) *cobra.Command{
			todayCommand, needsCommand, nucCommand, nucsCommand, batchCommand,
			batchesCommand, clockCommand, lateCommand, mayCommand, queenCommand,
			reviewCommand, courseCommand, strengthCommand, enoughCommand,
			colonyCommand, traceCommand, ordersCommand, handOverCommand, wishCommand, turnCommand, dronesCommand, seasonCommand, planCommand, buyingCommand, soldCommand, claimsCommand, kinCommand, dayCommand, closeCommand, linesCommand, groundCommand, roundCommand, layoutCommand,
			numbersCommand, pictureCommand, printCommand, lettersCommand,
		}},
		{"do", "To write down:", []func(*app) *cobra.Command{
			goodsCommand("along", "Write down what was taken along to the yard", func(g goods) book.Fact { return book.TakenAlong(g) }),
			goodsCommand("back", "Write down what was brought back unused", func(g goods) book.Fact { return book.BroughtBack(g) }),
			goodsCommand("dropped", "Write down what was dropped or crushed", func(g goods) book.Fact { return book.Dropped(g) }),
			readyCommand, graftCommand, countCommand, signCommand, moveCommand, cageCommand,
			makeUpCommand, placeCommand, entranceCommand, frontCommand, robbedCommand,
			broodCommand, searchCommand, feedCommand, weatherCommand, forageCommand,
			markCommand, bankCommand, putInCommand, endedCommand, testedCommand,
			orderCommand, claimCommand,
			yardCommand, suspectCommand, clearCommand, treatCommand, inspectedCommand, paperCommand,
			writeCommand, noteCommand, offCommand, hoursCommand, putOffCommand, strikeCommand,
		}},
		{groupKeep, "To keep the book:", []func(*app) *cobra.Command{
			newCommand, addCommand, checkCommand, copyCommand, exportCommand,
			importCommand, calendarCommand, demoCommand, jsonCommand, completionCommand,
		}},
	}
}

// groupKeep is the group to which help belongs.
const groupKeep = "keep"

// shapes are what --json prints, by command. Their names are promised to stay.
var shapes = map[string]any{
	"batch":          batchShape{},
	"batches":        []batchRow{},
	"buying":         []buyShape{},
	"clock":          clockShape{},
	"claims":         claimsShape{},
	"close":          closeShape{},
	"day":            crewShape{},
	"ground":         groundShape{},
	"handover":       sheetShape{},
	"kin":            kinShape{},
	"sold":           []goneShape{},
	"late":           []lateShape{},
	"layout":         layoutShape{},
	"layout compare": comparedShape{},
	"may":            []verdictShape{},
	"needs":          []findingShape{},
	"nuc":            nucShape{},
	"nucs":           []nucRow{},
	"numbers":        []numberShape{},
	"orders":         []orderShape{},
	"orders NUMBER":  []orderCard{},
	"plan":           []planShape{},
	"queen":          queenShape{},
	"colony":         colonyShape{},
	"lines":          []lineShape{},
	"review":         reviewShape{},
	"round":          roundShape{},
	"course":         courseShape{},
	"strength":       []strengthShape{},
	"drones":         []dronesShape{},
	"enough":         enoughShape{},
	"today":          dayShape{},
	"trace":          traceShape{},
	"turn":           turnShape{},
	"weather":        []flightShape{},
	"wish":           wishShape{},
	"season":         seasonShape{},
}
