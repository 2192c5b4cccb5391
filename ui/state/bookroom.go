package state

import (
	"strconv"
	"strings"

	"lidmark/ui/scene"
)

// bookCommands are the commands of the room Book.
var bookCommands = append([]Command{
	{Name: "file page", Does: "copies, what comes in and what leaves", Word: "The file", Why: noBook, Do: bookPage(FilePage)},
	{Name: "lid page", Does: "how to read a lid", Word: "How to read a lid", Why: noBook, Do: bookPage(LidPage)},
	{Name: "licence page", Does: "the program and its licences", Word: "About", Why: noBook, Do: bookPage(LicencePage)},
	{Name: "copy now", Does: "make a checked copy now", Word: "Copy now", Why: noFile, Do: func(s State) (State, []Effect) { return s, []Effect{CopyBook{}} }},
	{Name: "copy to", Does: "make a checked copy elsewhere, on a stick", Word: "Copy elsewhere", Why: noFile, Do: copyTo},
	{Name: "check book", Does: "read the whole book and say what is wrong with it", Word: "Check the book", Why: noFile, Do: func(s State) (State, []Effect) { return s, []Effect{CheckBook{}} }},
	{Name: "take in", Does: "take in another book, entries as JSON Lines, a list (CSV, XLSX), or a ground (GeoJSON, GPX)", Word: "Take in a file", Why: noTakingIn, Do: chooseTakenIn},
	{Name: "take in weather", Does: "take in weather by the hour or by the day: a table (CSV, XLSX), or a forecast saved as JSON", Word: "Take in a weather file", Why: noPen, Do: chooseWeather},
}, takeOutCommands()...)

// takeOutCommands are a command for each open form.
func takeOutCommands() (all []Command) {
	for i, f := range openForms {
		form := OpenForm(i)
		all = append(all, Command{Name: f.command, Does: f.does, Word: "Take out", Why: noBook, Do: func(s State) (State, []Effect) {
			return s, []Effect{ChooseFile{For: f.command, Kinds: []string{f.ending}, Name: s.fileName(form)}}
		}})
	}
	return all
}

// fileName is how a file that leaves is called unless the keeper says otherwise.
func (s State) fileName(form OpenForm) string {
	what := strings.TrimPrefix(openForms[form].command, "take out ")
	name := strings.ToLower(strings.ReplaceAll(s.Book.Name, " ", "-"))
	return name + "-" + what + "-" + s.Looked().String() + openForms[form].ending
}

func noFile(s State) string {
	if why := noBook(s); why != "" {
		return why
	}
	if s.Book.Path == "" {
		return "the demo season is kept in no file: start a book of your own first"
	}
	return ""
}

func noTakingIn(s State) string {
	if why := noFile(s); why != "" {
		return why
	}
	return s.Book.ReadOnly
}

// toBook is the window in the room Book, with its copies asked for.
func toBook(s State) (State, []Effect) {
	s = s.entered(About)
	s.BookPage = FilePage
	s = s.scrolled(BookPlace, -s.Scroll[BookPlace])
	if noFile(s) != "" {
		return s, nil
	}
	return s, []Effect{FindCopies{}}
}

func bookPage(p BookPage) func(State) (State, []Effect) {
	return func(s State) (State, []Effect) {
		s = s.entered(About)
		s.BookPage = p
		s = s.scrolled(BookPlace, -s.Scroll[BookPlace])
		switch {
		case p == LicencePage && s.Licences == nil:
			return s, []Effect{ReadLicences{}}
		case p == FilePage && noFile(s) == "":
			return s, []Effect{FindCopies{}}
		}
		return s, nil
	}
}

func copyTo(s State) (State, []Effect) {
	name := s.Book.Name + "-" + s.Today().String() + ".lidmark"
	return s, []Effect{ChooseFile{For: "copy to", Kinds: []string{".lidmark"}, Name: name}}
}

func chooseTakenIn(s State) (State, []Effect) {
	return s, []Effect{ChooseFile{For: "take in", Kinds: []string{".lidmark", ".jsonl", ".csv", ".xlsx", ".geojson", ".gpx"}}}
}

// restored asks into which file a new book is made of the copy at a path: by its
// name the book as it was on a day.
func (s State) restored(path string) (State, []Effect) {
	name := s.Book.Name + "-restored"
	for _, k := range s.Copies {
		if k.Path == path {
			name = s.Book.Name + "-of-" + k.Made.In(s.Present().View.Zone()).Format("2006-01-02")
		}
	}
	return s, []Effect{ChooseFile{For: "restore " + path, Kinds: []string{BookExtension}, Name: name + BookExtension}}
}

// withEnding is a path whose name ends in one of some endings, the first where it
// has none of them; a dot elsewhere in it, as in a date, is none.
func withEnding(path string, endings ...string) string {
	for _, e := range endings {
		if strings.HasSuffix(strings.ToLower(path), e) {
			return path
		}
	}
	return path + endings[0]
}

// tookIn is the window with what was taken into its book.
func (s State) tookIn(m TookIn) State {
	if s.Book == nil || s.Book.Path != m.Book.Path {
		return s
	}
	s.Pen.IDs = m.IDs
	return s.grown(m.Book)
}

// choseForBook is the window after a file was chosen in the room Book.
func (s State) choseForBook(m Chose) (State, []Effect) {
	lower := strings.ToLower(m.Path)
	switch {
	case m.For == "take in weather":
		return s.choseWeather(m.Path)
	case m.For == "take in ground", (m.For == "take in" || m.For == "drop") && isGround(m.Path):
		return s.choseGround(m.Path)
	case m.For == "lay photograph":
		return s, []Effect{ReadPhoto{m.Path}}
	case m.For == "copy to":
		return s, []Effect{CopyBook{withEnding(m.Path, BookExtension)}}
	case strings.HasPrefix(m.For, "restore "):
		return s, []Effect{RestoreCopy{strings.TrimPrefix(m.For, "restore "), withEnding(m.Path, BookExtension)}}
	case m.For == "take in" && (strings.HasSuffix(lower, ".csv") || strings.HasSuffix(lower, ".xlsx")):
		return s.choseAtStart(Chose{"list", m.Path})
	case m.For == "take in", m.For == "drop" && strings.HasSuffix(lower, ".jsonl"):
		if why := noTakingIn(s); why != "" {
			s.Note = Note{why, true}
			return s, nil
		}
		return s, []Effect{TakeIn{m.Path}}
	}
	for i, f := range openForms {
		if m.For == f.command {
			return s, []Effect{TakeOut{OpenForm(i), withEnding(m.Path, f.endings()...), s.Reading().View.On(), s.MapYard()}}
		}
	}
	return s.choseAtStart(m)
}

// licenceClicked shows the text of a licence, or closes it again.
func (s State) licenceClicked(id string) State {
	n, err := strconv.Atoi(id)
	if err != nil || n < 1 || n > len(s.Licences) || n == s.Licence {
		n = 0
	}
	s.Licence = n
	return s
}

// bookMost is about how far the page of the room Book can be scrolled, dp: state
// measures no text. The view stops where the page ends.
func (s State) bookMost(l Layout) float64 {
	const file, facts, aCopy, most, head, licence, line = 760.0, 800.0, 30.0, 9, 260.0, 30.0, 19.0
	const text, lids = 580.0, 520.0
	all := 0.0
	switch s.BookPage {
	case FilePage:
		all = file + aCopy*float64(min(len(s.Copies), most))
		if l.Over {
			all += facts
		}
	case LidPage:
		all = lids
	case LicencePage:
		all = head + licence*float64(len(s.Licences))
		if s.Licence > 0 && s.Licence <= len(s.Licences) {
			for part := range strings.SplitSeq(s.Licences[s.Licence-1].Text, "\n\n") {
				all += line * (2 + Reckoner{}.Width(part, 13, scene.Regular)/min(text, l.Main.W-120))
			}
		}
	}
	return max(0, all-(l.Main.H-BookHead))
}

// BookHead is how high the words are that lead to the pages of the room Book, dp.
const BookHead = HeadHeight + 10
