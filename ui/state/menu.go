package state

import (
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// MenuItem is a row of a menu.
type MenuItem struct {
	Word  string
	Count string    // how many there are; "" where that says nothing
	Ref   scene.Ref // what a click on it means
	On    bool      // it is chosen
}

// MapLayer is a layer of the map with its word and the command that shows it.
type MapLayer struct {
	Word    string
	Command string
	Layer   Layer
}

// MapLayers are the layers of the map in their order.
var MapLayers = []MapLayer{
	{"Condition", "layer condition", ByCondition},
	{"Due", "layer due", ByDue},
	{"Strength", "layer strength", ByStrength},
	{"Sure", "layer sure", BySureness},
	{"Robbing", "layer robbing", ByRobbing},
	{"Batch", "layer batch", ByBatch},
}

// MenuItems are the rows of the menu that is open; none where none is.
func (s State) MenuItems() (items []MenuItem) {
	if s.Book == nil {
		return nil
	}
	switch s.Menu {
	case YardMenu:
		return s.yardItems()
	case WriterMenu:
		for person := range s.Present().View.People() {
			items = append(items, MenuItem{person.Name, "", scene.Ref{Kind: WriterRef, ID: person.Name}, person.Name == s.Pen.Writer})
		}
		return append(items, MenuItem{"nobody named", "", scene.Ref{Kind: WriterRef}, s.Pen.Writer == ""})
	case HeadsMenu:
		for h := range headsCount {
			on := h == s.Heads && (h != StandHeads || s.Pane != Table || s.Sort.By == ByPlace)
			items = append(items, MenuItem{h.String(), "", CommandOf("heads " + h.String()), on})
		}
	case LayerMenu:
		for _, l := range MapLayers {
			items = append(items, MenuItem{l.Word, "", CommandOf(l.Command), l.Layer == s.Layer})
		}
	}
	return items
}

// yardItems are the yards with their nucs, all of them first.
func (s State) yardItems() []MenuItem {
	r, filled := s.Reading(), s.Filled()
	items := []MenuItem{{"all yards", figures(len(r.Nucs)), scene.Ref{Kind: YardRef}, filled == book.YardID{}}}
	for y := range r.View.Yards() {
		items = append(items, MenuItem{y.Name, figures(len(r.In(y.Yard))), scene.Ref{Kind: YardRef, ID: y.Yard.String()}, y.Yard == filled})
	}
	return items
}

// menuOpened is the window with a menu open, the row marked that is chosen.
func (s State) menuOpened(m Menu) State {
	s.Menu, s.AllSigns = m, s.AllSigns && m == NoMenu
	s.MenuRow = max(0, slices.IndexFunc(s.MenuItems(), func(it MenuItem) bool { return it.On }))
	return s
}

// menuFits tells whether the menu that is open has a place in the window.
func (s State) menuFits() bool {
	l := s.Layout()
	switch s.Menu {
	case HeadsMenu:
		return !l.Main.Empty()
	case LayerMenu:
		return !l.Map.Empty()
	}
	return true
}

// keyOver gives a key to what lies over the room, the sheet of keys or a menu, and
// tells whether one of them is open: then nothing reaches the room.
func (s State) keyOver(m Keyed) (next State, effects []Effect, over bool) {
	switch {
	case s.Keys:
		return s.keySheet(m), nil, true
	case s.Menu != NoMenu:
		next, effects = s.keyMenu(m)
		return next, effects, true
	}
	return s, nil, false
}

// keyMenu goes through the rows of the menu, takes the one that is marked, or
// shuts the menu.
func (s State) keyMenu(m Keyed) (State, []Effect) {
	last := len(s.MenuItems()) - 1
	opens := slices.ContainsFunc(byKey[m.name()], func(i int) bool { return s.Menu.closes(commands[i].Name) })
	switch {
	case m.Key == "Escape" || opens || last < 0:
		s.Menu = NoMenu
		return s, nil
	case m.Mods&(Ctrl|Alt) != 0:
		return s, nil
	}
	switch m.Key {
	case "Enter", " ":
		return s.clicked(s.MenuItems()[s.MenuRow].Ref, 0)
	case "Up", "Down":
		s.MenuRow += arrows[m.Key]
	case "Tab":
		s.MenuRow += 1 - 2*boolInt(m.Mods.Has(Shift))
	case "Home", "PageUp":
		s.MenuRow = 0
	case "End", "PageDown":
		s.MenuRow = last
	}
	s.MenuRow = min(max(s.MenuRow, 0), last)
	return s, nil
}

// wroteOver gives a character to what lies over the room: the next row of a menu
// that begins with it is marked.
func (s State) wroteOver(r rune) (next State, over bool) {
	if s.Keys || s.Menu == NoMenu {
		return s, s.Keys
	}
	items := s.MenuItems()
	for i := range items {
		at := (s.MenuRow + 1 + i) % len(items)
		if strings.HasPrefix(strings.ToLower(items[at].Word), strings.ToLower(string(r))) {
			s.MenuRow = at
			break
		}
	}
	return s, true
}

// keySheet scrolls the sheet of keys, or shuts it.
func (s State) keySheet(m Keyed) State {
	const line = 3 * KeyRow
	k := s.KeySheet()
	switch m.Key {
	case "Escape", "Enter", "?", " ":
		s.Keys = false
	case "Down":
		return s.scrolledKeys(line)
	case "Up":
		return s.scrolledKeys(-line)
	case "PageDown":
		return s.scrolledKeys(k.H - line)
	case "PageUp":
		return s.scrolledKeys(line - k.H)
	case "Home":
		return s.scrolledKeys(-k.All)
	case "End":
		return s.scrolledKeys(k.All)
	}
	return s
}
