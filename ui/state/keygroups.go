package state

// keyGroup are keys that work in one place, under its head on the sheet of keys.
type keyGroup struct {
	Head  string
	Names []string  // of the commands, those of one thing together
	More  []Command // keys that are no command's
}

// keyGroups are the sheet of keys. A head is said as the room is named.
var keyGroups = []keyGroup{
	{"Everywhere", []string{
		"today", "yard", "plan", "review", "numbers", "about", "yards", "leave", "filter", "undo", "redo", "copy", "print",
		"other book", "writer", "larger", "smaller", "dark", "keys", "next part",
	}, []Command{{Keys: "Tab", Does: "next pane or field; with Shift back"}}},
	{"Days", []string{"day back", "day on", "week back", "week on", "now", "as known then"}, nil},
	{"Nucs and the card", []string{
		"next", "previous", "right", "extend right", "ring right", "all", "sheet", "more", "card back",
	}, []Command{{Keys: "A3", Does: "go to the nuc of that name"}}},
	{"Today", []string{"tick", "tick except", "line record", "put off line", "only hours", "nobody comes", "who comes", "van more", "van less", "rain until", "make the day"}, nil},
	{"Yard", []string{
		"select", "map", "lids", "wall", "table", "wider map", "wider lids", "next layer", "zoom in", "zoom out", "fit",
		"heads", "fold", "fold all", "lanes up", "lanes down",
	}, nil},
	{"Plan", []string{"orders", "season", "move plan", "plan it", "forwards", "two grafts", "day earlier", "day later", "other dates", "by larvae", "keep try"}, []Command{{Keys: "Up", Does: "one more in the wish; Down: less"}}},
	{"The season, in Plan", []string{"turn of a nuc", "find dates", "plan dates"}, []Command{{Keys: "1", Does: "take the way out of that figure"}}},
	{"Review", []string{"accept", "accept all"}, []Command{{Keys: "Right", Does: "why, the other ways; Left: back"}}},
	{"What fills the room", []string{"late day", "batch room", "course room", "layout"}, nil},
	{"A try-out of a layout", []string{
		"turn left", "turn right", "swing", "line up", "spread", "bend", "double", "face out", "hold", "mark fronts", "grid", "measure", "ground tools",
		"turn layout", "move layout", "more boxes", "too many", "search further", "keep layout", "finish drawing", "point back", "wipe feature",
	}, []Command{{Keys: "Up", Does: "move the picked stands; other arrows"}}},
	{"The walk, typed in the evening", []string{
		"type it in", "morning", "midday", "afternoon", "evening", "all nucs", "reader", "letters", "strike row", "close walk",
	}, nil},
	{"Forms", []string{"write"}, nil},
	{"Before a book is open", []string{"demo", "start book", "choose list", "open"}, nil},
}

// keyRows are the rows of the sheet of keys: the heads, which have no key, and
// below each its keys.
func keyRows() []Command {
	var rows []Command
	for _, g := range keyGroups {
		rows = append(rows, Command{Does: g.Head})
		for _, name := range g.Names {
			c, _ := CommandNamed(name)
			rows = append(rows, c)
		}
		rows = append(rows, g.More...)
	}
	return rows
}
