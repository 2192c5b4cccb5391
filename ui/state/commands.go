package state

import "lidmark/ui/scene"

// windowCommands are the commands that change what is looked at, in the order of
// the sheet of keys.
var windowCommands = []Command{
	{Name: "today", Does: "Today", Keys: "Alt+T", Why: noBook, Do: enter(Today)},
	{Name: "yard", Does: "Yard", Keys: "Alt+Y", Why: noBook, Do: enter(Yard)},
	{Name: "numbers", Does: "My numbers", Keys: "Alt+U", Why: noBook, Do: enter(Numbers)},
	{Name: "about", Does: "Book, and how to read a lid", Keys: "Alt+B", Why: noBook, Do: toBook},

	{Name: "late day", Does: "what waiting costs, and the ways out", Keys: "Alt+L", Word: "The ways out", Why: noLate, Do: pure(State.toLate)},
	{Name: "give ready", Does: "give cells to the nucs that are ready", Word: "Give cells", Why: noReady, Do: pure(giveReady)},
	{Name: "batch room", Does: "the batch in the whole room", Keys: "Alt+Enter", Word: "The whole batch", Why: noBatchChosen, Do: pure(State.toBatchRoom)},
	{Name: "course room", Does: "a nuc's course, large", Keys: "Alt+6", Word: "Larger", Why: noCourse, Do: pure(State.toCourseRoom)},
	{Name: "give back", Does: "give the room back", Word: "Back", Why: noFill, Do: pure(State.givenBack)},

	{Name: "map", Does: "map; again: map and lids", Keys: "Alt+1", Why: noBook, Do: divide(Map)},
	{Name: "lids", Does: "lids; again: map and lids", Keys: "Alt+2", Why: noBook, Do: divide(Lids)},
	{Name: "wall", Does: "wall; again: map and lids", Keys: "Alt+3", Why: noBook, Do: divide(Wall)},
	{Name: "table", Does: "table; again: map and lids", Keys: "Alt+4", Why: noBook, Do: divide(Table)},
	{Name: "wider map", Does: "more room for the map", Keys: "Alt+Shift+Right", Why: noSplit, Do: wider(splitStep)},
	{Name: "wider lids", Does: "more room for the lids", Keys: "Alt+Shift+Left", Why: noSplit, Do: wider(-splitStep)},
	{Name: "next part", Does: "next part, where parts take turns", Keys: "Alt+Right", Why: noTurns, Do: pure(func(s State) State { return s.turned(1) })},
	{Name: "part main", Does: "lids, or the route", Why: noTurns, Do: turnTo(MainPart)},
	{Name: "part side", Does: "map, or kit and time", Why: noTurns, Do: turnTo(SidePart)},
	{Name: "part lanes", Does: "batches", Why: noTurns, Do: turnTo(LanePart)},
	{Name: "lanes up", Does: "batches above", Keys: "Alt+PageUp", Why: noLanesThere(true), Do: lanesMoved(-1)},
	{Name: "lanes down", Does: "batches below", Keys: "Alt+PageDown", Why: noLanesThere(false), Do: lanesMoved(+1)},

	{Name: "day back", Does: "a day back", Keys: ", Alt+Left", Why: noBook, Do: days(-1)},
	{Name: "day on", Does: "a day on", Keys: ".", Why: noBook, Do: days(+1)},
	{Name: "week back", Does: "a week back", Keys: "Shift+, <", Why: noBook, Do: days(-7)},
	{Name: "week on", Does: "a week on", Keys: "Shift+. >", Why: noBook, Do: days(+7)},
	{Name: "now", Does: "back to now", Keys: "Home", Why: isNow, Do: pure(State.now)},
	{Name: "as known then", Does: "a past day as known then, or now", Keys: "Alt+J", Why: notPast, Do: pure(State.asKnownThen)},

	{Name: "next", Does: "next nuc in walking order", Keys: "PageDown", Why: noNucs, Do: step(+1, false)},
	{Name: "previous", Does: "previous nuc in walking order", Keys: "PageUp", Why: noNucs, Do: step(-1, false)},
	{Name: "right", Does: "the nuc that way, all four arrows", Keys: "Right", Why: noNucs, Do: arrow(+1, 0, false)},
	{Name: "left", Does: "", Keys: "Left", Why: noNucs, Do: arrow(-1, 0, false)},
	{Name: "down", Does: "", Keys: "Down", Why: noNucs, Do: arrow(0, +1, false)},
	{Name: "up", Does: "", Keys: "Up", Why: noNucs, Do: arrow(0, -1, false)},
	{Name: "extend right", Does: "that one as well, all four arrows", Keys: "Shift+Right", Why: noNucs, Do: arrow(+1, 0, true)},
	{Name: "extend left", Does: "", Keys: "Shift+Left", Why: noNucs, Do: arrow(-1, 0, true)},
	{Name: "extend down", Does: "", Keys: "Shift+Down", Why: noNucs, Do: arrow(0, +1, true)},
	{Name: "extend up", Does: "", Keys: "Shift+Up", Why: noNucs, Do: arrow(0, -1, true)},
	{Name: "all", Does: "all that are shown", Keys: "Ctrl+A", Why: noNucs, Do: onTryDo(State.allPicked, pure(State.selectAll))},
	{Name: "needs you", Does: "show what needs you", Why: noneNeeds, Do: pure(func(s State) State { return s.filtered("needs you") })},
	{Name: "show batch", Does: "its batch", Why: noBatch, Do: pure(State.toBatch)},
	{Name: "show due", Does: "the day it is due", Why: noDue, Do: pure(State.toDue)},

	{Name: "filter", Does: "filter by typing", Keys: "Ctrl+F", Why: noBook, Do: pure(State.typing)},
	{Name: "clear filter", Does: "show all again", Why: noFilter, Do: pure(func(s State) State { return s.filtered("") })},
	{Name: "copy", Does: "copy what is shown, with heads", Keys: "Ctrl+C", Why: noNucs, Do: copyShown},

	{Name: "zoom in", Does: "zoom the map in", Keys: "+ Shift++ Ctrl++ =", Why: noMap, Do: zoom(zoomStep)},
	{Name: "zoom out", Does: "zoom the map out", Keys: "- Ctrl+-", Why: noMap, Do: zoom(1 / zoomStep)},
	{Name: "fit", Does: "the whole yard", Keys: "Ctrl+0", Why: noMap, Do: pure(State.fitted)},
	{Name: "layer condition", Does: "map by condition", Why: noBook, Do: layer(ByCondition)},
	{Name: "layer due", Does: "map by what is due", Why: noBook, Do: layer(ByDue)},
	{Name: "layer strength", Does: "map by strength as recorded: sides with bees", Why: noBook, Do: layer(ByStrength)},
	{Name: "layer sure", Does: "map by how sure it is what a nuc holds", Why: noBook, Do: layer(BySureness)},
	{Name: "layer robbing", Does: "map by robbers: quiet, watch, act", Why: noBook, Do: layer(ByRobbing)},
	{Name: "layer batch", Does: "map by batch", Why: noBook, Do: layer(ByBatch)},
	{Name: "next layer", Does: "next layer of the map", Keys: "Alt+5", Why: noMap, Do: pure(State.nextLayer)},
	{Name: "layers", Does: "choose what the map shows", Why: noMap, Do: menu(LayerMenu)},
	{Name: "yards", Does: "choose a yard", Keys: "Ctrl+L", Why: noBook, Do: menu(YardMenu)},

	{Name: "larger", Does: "larger text", Keys: "Alt++ Alt+Shift++ Alt+= Alt+Shift+=", Do: text(+1)},
	{Name: "smaller", Does: "smaller text", Keys: "Alt+-", Do: text(-1)},
	{Name: "dark", Does: "light or dark", Keys: "Alt+D", Do: pure(func(s State) State { s.Dark = !s.Dark; return s })},
	{Name: "sheet", Does: "the card's main action, or the card", Keys: "Enter", Why: noMain, Do: pure(State.mainDone)},
	{Name: "leave", Does: "leave list, filter, selection", Keys: "Escape", Do: pure(State.leave)},
	{Name: "keys", Does: "the keys", Keys: "? Shift+?", Do: pure(State.keysShown)},
}

// textSizes are the sizes of text there are.
var textSizes = []float64{1, 1.15, 1.3, 1.5, 1.75, 2}

// zoomStep is by how much a key or a notch of the wheel zooms.
const zoomStep = 1.25

// pure is a command without effects.
func pure(change func(State) State) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) { return change(s), nil }
}

func enter(r Room) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.entered(r) })
}

// entered is the window in a room, with nothing that fills it and no question
// that waits.
func (s State) entered(r Room) State {
	if s.Form != nil {
		s = s.formLeft()
	}
	s.Room, s.Part, s.Menu, s.Keys, s.Fill, s.Asked = r, MainPart, NoMenu, false, NoFill, nil
	s.AllSigns = false
	s.Focus, s.Typing = scene.Ref{}, false
	return s
}

func layer(l Layer) func(State) (State, []Effect) {
	return pure(func(s State) State { s.Layer, s.Menu = l, NoMenu; return s })
}

// nextLayer is the window with the next layer of the map.
func (s State) nextLayer() State {
	s.Layer = map[Layer]Layer{ByCondition: ByDue, ByDue: ByStrength, ByStrength: BySureness, BySureness: ByRobbing, ByRobbing: ByBatch}[s.Layer]
	return s
}

func menu(m Menu) func(State) (State, []Effect) {
	return pure(func(s State) State {
		if s.Menu == m {
			return s.menuOpened(NoMenu)
		}
		return s.menuOpened(m)
	})
}

// divide gives the room Yard one form, or map and lids if it has it.
func divide(p Pane) func(State) (State, []Effect) {
	return pure(func(s State) State {
		form := p
		if s.Room == Yard && s.Pane == p && s.Part == MainPart {
			form = Split
		}
		s.Room, s.Pane, s.Part, s.AllSigns = Yard, form, MainPart, false
		return s
	})
}

func turnTo(p Part) func(State) (State, []Effect) {
	return pure(func(s State) State { return s.inTurn(p) })
}

func text(by int) func(State) (State, []Effect) {
	return pure(func(s State) State {
		at := 0
		for i, size := range textSizes {
			if s.TextSize() >= size {
				at = i
			}
		}
		s.Text = textSizes[min(max(at+by, 0), len(textSizes)-1)]
		return s
	})
}
