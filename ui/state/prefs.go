package state

import (
	"maps"
	"slices"
	"time"

	"lidmark/domain/unit"
)

// Prefs are what the keeper chose for this machine, whatever book is open. The
// zero Prefs are metric, weeks from Monday, text of the usual size, light.
type Prefs struct {
	Units   unit.System       `json:"units,omitzero"`
	Week    Weekday           `json:"week,omitzero"`
	Text    float64           `json:"text,omitzero"` // 1 to 2; 0 counts as 1
	Dark    bool              `json:"dark,omitzero"`
	Large   bool              `json:"largePrint,omitzero"`
	Letter  bool              `json:"letterPaper,omitzero"` // US letter instead of A4
	Recent  []string          `json:"recent,omitzero"`      // files of books, the latest first
	Writers map[string]string `json:"writers,omitzero"`     // who writes, by the file of the book
	Window  [2]float64        `json:"window,omitzero"`      // its width and height, dp
	Split   float64           `json:"split,omitzero"`       // how far the division of Yard was dragged from where it lies, dp
}

// Weekday is the day on which weeks begin. The zero Weekday is Monday.
type Weekday uint8

// The days on which weeks begin.
const (
	FromMonday Weekday = iota
	FromSunday
	FromSaturday
)

// Day is the weekday in the words of the standard library.
func (w Weekday) Day() time.Weekday {
	return [...]time.Weekday{time.Monday, time.Sunday, time.Saturday}[w%3]
}

// KeepPrefs is the effect that keeps what the keeper chose.
type KeepPrefs struct{ Prefs Prefs }

func (KeepPrefs) effect() {}

// mostRecent is how many books are remembered.
const mostRecent = 8

// recalled are the choices with a book opened last, and who writes in it.
func (p Prefs) recalled(path, writer string) Prefs {
	if path == "" {
		return p
	}
	rest := slices.DeleteFunc(slices.Clone(p.Recent), func(r string) bool { return r == path })
	p.Recent = append([]string{path}, rest[:min(len(rest), mostRecent-1)]...)
	p.Writers = maps.Clone(p.Writers)
	if p.Writers == nil {
		p.Writers = map[string]string{}
	}
	if writer != "" {
		p.Writers[path] = writer
	}
	return p
}
