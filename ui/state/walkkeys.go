package state

import (
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
)

// recordCommands are what the evening's record can do.
var recordCommands = []Command{
	{Name: "type it in", Does: "type in the walk of the day", Word: "Type it in", Keys: "Alt+I", Why: noWalk, Do: pure(State.toWalk)},
	{Name: "morning", Does: "what is typed was in the morning", Word: "morning", Keys: "Alt+M", Why: notWalking, Do: parted(calendar.Morning)},
	{Name: "midday", Does: "it was at midday", Word: "midday", Keys: "Alt+N", Why: notWalking, Do: parted(calendar.Midday)},
	{Name: "afternoon", Does: "it was in the afternoon", Word: "afternoon", Keys: "Alt+A", Why: notWalking, Do: parted(calendar.Afternoon)},
	{Name: "evening", Does: "it was in the evening", Word: "evening", Keys: "Alt+E", Why: notWalking, Do: parted(calendar.Evening)},
	{Name: "all nucs", Does: "a row for every nuc, or the day's", Word: "all nucs", Keys: "Alt+W", Why: notWalking, Do: pure(State.allNucs)},
	{Name: "reader", Does: "choose who reads aloud", Keys: "Alt+Q", Why: notWalking, Do: pure(State.nextReader)},
	{Name: "letters", Does: "the letters of the line, over the rows", Word: "letters", Keys: "Alt+Shift+L", Why: lettersBeside, Do: pure(State.lettersTurned)},
	{Name: "next row", Does: "next row", Why: notWalking, Do: rowStep(+1)},
	{Name: "row before", Does: "row before", Why: notWalking, Do: rowStep(-1)},
	{Name: "strike row", Does: "strike what is written in the row", Word: "strike", Keys: "Alt+X", Why: nothingTyped, Do: rowStruck},
	{Name: "close walk", Does: "close the walk", Word: "Close the walk", Keys: "Alt+K", Why: notWalking, Do: toClose},
	{Name: "leave open", Does: "close the walk, leave the rest open", Word: "Leave it open", Why: notWalking, Do: leaveOpen},
}

// rowKeys are the keys that go through the rows.
var rowKeys = map[string]string{"PageDown": "next row", "Down": "next row", "PageUp": "row before", "Up": "row before"}

// keyWalk gives a key to the walk, and tells whether that took it.
func (s State) keyWalk(m Keyed) (next State, effects []Effect, took bool) {
	name, goes := rowKeys[m.Key]
	if s.Walk == nil || s.Form != nil || s.Keys || s.Menu != NoMenu || m.Mods != 0 || s.Focus.Kind == ChoiceRef {
		return s, nil, false
	}
	if next, effects, took = s.keyPassed(m.Key); took || !goes {
		return next, effects, took
	}
	next, effects = run(s, name)
	return next, effects, true
}

// wroteWalk is the window with the keys going to the line of the walk, where a
// character is typed beside it.
func (s State) wroteWalk(r rune) State {
	if s.Walk == nil || s.Form != nil || s.InField() != "" || s.Keys || r == ' ' {
		return s
	}
	return s.focused(FieldNamed(WalkField))
}

// rowClicked opens the row that a scene names.
func (s State) rowClicked(r scene.Ref) State {
	if s.Walk == nil {
		return s
	}
	for _, row := range s.Walk.Rows {
		if row.Ref() == r {
			return s.rowOpened(row.RowName)
		}
	}
	return s
}
