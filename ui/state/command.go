package state

import (
	"slices"
	"strings"
)

// Command is something the window can do by name: buttons, keys, the sheet of
// keys and tests read the one list [Commands].
type Command struct {
	Name string // stable; the ID of a [CommandRef]
	Does string // in the keeper's words, for the sheet of keys; "" where another row says it
	Keys string // the keys that run it, parted by spaces: "Alt+T", "Ctrl+F"
	Word string // on its button, where that says less than Does
	// Why says why it cannot run now; "" means it can. Nil means always.
	Why func(State) string
	Do  func(State) (State, []Effect)
}

// Reason is why the command cannot run now; "" means it can.
func (c Command) Reason(s State) string {
	if c.Why == nil {
		return ""
	}
	return c.Why(s)
}

// CommandNamed finds a command.
func CommandNamed(name string) (Command, bool) {
	i, ok := byName[name]
	if !ok {
		return Command{}, false
	}
	return commands[i], true
}

// Commands are all commands in the order of the sheet of keys, the records
// behind them.
func Commands() []Command { return commands }

var commands = allCommands()

var byName, byKey = index()

// allCommands are the rows of all tables, one behind the other.
func allCommands() []Command {
	all := slices.Concat(windowCommands, headsCommands, reachCommands, layoutCommands, drawCommands, photoCommands, groundFileCommands, planCommands, seasonCommands, orderCommands, reviewCommands, numberCommands, bookCommands, startCommands, listCommands, penCommands, cardCommands, recordCommands, tickCommands, lessCommands, crewCommands, lateCommands, printCommands, nextCommands)
	for _, rec := range records {
		all = append(all, rec.command())
	}
	return all
}

// index finds commands by name and by key.
func index() (name map[string]int, key map[string][]int) {
	name, key = map[string]int{}, map[string][]int{}
	for i, c := range commands {
		name[c.Name] = i
		for k := range strings.FieldsSeq(c.Keys) {
			key[k] = append(key[k], i)
		}
	}
	return name, key
}

// run runs a command by name, if there is one and it can.
func run(s State, name string) (State, []Effect) {
	c, ok := CommandNamed(name)
	if !ok {
		return s, nil
	}
	if why := c.Reason(s); why != "" {
		s.Note = refusal(c, why)
		return s, nil
	}
	s.Note = Note{}
	return c.done(s)
}

// keyed runs the command of a key, the first of them that can. Of a key held with
// another the foot says why none does.
func keyed(s State, m Keyed) (State, []Effect) {
	all := byKey[m.name()]
	for _, i := range all {
		if commands[i].Reason(s) == "" {
			return commands[i].done(s)
		}
	}
	if len(all) > 0 && m.Mods&(Ctrl|Alt) != 0 {
		s.Note = refusal(commands[all[0]], commands[all[0]].Reason(s))
	}
	return s, nil
}

// done is the window after the command, if it can run, and after the one that it
// wants to be run then.
func (c Command) done(s State) (State, []Effect) {
	if c.Reason(s) != "" {
		return s, nil
	}
	next, effects := c.Do(s.layingNamed())
	if then := next.then; then != "" {
		next.then = ""
		after, more := run(next, then)
		return after, append(effects, more...)
	}
	return next, effects
}

// name is the key with those held, as commands name it.
func (m Keyed) name() string {
	var b strings.Builder
	for _, held := range []struct {
		mod  Mods
		name string
	}{{Ctrl, "Ctrl+"}, {Alt, "Alt+"}, {Shift, "Shift+"}} {
		if m.Mods.Has(held.mod) {
			b.WriteString(held.name)
		}
	}
	b.WriteString(m.Key)
	return b.String()
}
