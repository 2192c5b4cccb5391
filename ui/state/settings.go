package state

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/unit"
)

// SettingField begins the names of the choices that are kept for this machine.
const SettingField = "settings."

// Setting is a choice that is kept for this machine.
type Setting struct {
	Name    string // of the choice, without [SettingField]
	Label   string
	Options []Option
	Value   string // the option taken now
}

// Settings are the choices kept for this machine.
func (s State) Settings() []Setting {
	sizes := make([]Option, len(textSizes))
	for i, size := range textSizes {
		sizes[i] = Option{count(int(100*size + 0.5)), fmt.Sprintf("%.0f %%", 100*size)}
	}
	return []Setting{
		{"units", "Units", []Option{{"metric", "metric"}, {"US", "US"}}, s.Units.String()},
		{"week", "Weeks begin on", []Option{{"0", "Monday"}, {"1", "Sunday"}, {"2", "Saturday"}}, count(int(s.Week))},
		{"text", "Text size", sizes, count(int(100*s.TextSize() + 0.5))},
		{"dark", "Light or dark", []Option{{"light", "light"}, {"dark", "dark"}}, pick(s.Dark, "dark", "light")},
		{"paper", "Paper", []Option{{"A4", "A4"}, {"letter", "US letter"}}, pick(s.Letter, "letter", "A4")},
		{"print", "Print", []Option{{"usual", "usual size"}, {"large", "large print"}}, pick(s.Large, "large", "usual")},
	}
}

func pick(is bool, yes, no string) string {
	if is {
		return yes
	}
	return no
}

func count(n int) string { return strconv.Itoa(n) }

// set is the window after a setting was chosen.
func (s State) set(name, value string) State {
	switch strings.TrimPrefix(name, SettingField) {
	case "units":
		if u, err := unit.ParseSystem(value); err == nil {
			s.Units, s.Letter = u, u == unit.US // who measures in these units has paper of their kind, unless it is set after
		}
		if s.Number != 0 {
			s = s.toNumber(s.Number)
		}
	case "week":
		if n, err := strconv.Atoi(value); err == nil {
			s.Week = Weekday(n)
		}
	case "text":
		if n, err := strconv.Atoi(value); err == nil {
			s.Text = float64(n) / 100
		}
	case "dark":
		s.Dark = value == "dark"
	case "paper":
		s.Letter = value == "letter"
	case "print":
		s.Large = value == "large"
	}
	return s
}
