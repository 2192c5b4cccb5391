package state

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/plan"
)

// The fields of the wish.
const (
	WishQueens = "plan.queens"
	WishDay    = "plan.day"  // queens are wanted by; forwards: the graft
	WishHour   = "plan.hour" // forwards: of the graft
	WishLine   = "plan.line"
	WishNucs   = "plan.nucs"
	WishLarvae = "plan.larvae"
	WishApart  = "plan.apart" // days between several grafts
	WishSure   = "plan.sure"
)

// WishFields are the fields of the wish in the order in which they stand.
var WishFields = []string{WishQueens, WishDay, WishHour, WishLine, WishNucs, WishLarvae, WishApart, WishSure}

// WishWrong is what is wrong in a field of the wish. The zero WishWrong is nothing.
type WishWrong struct{ Field, Why string }

// Wish is what stands in the fields, and what is wrong there, the first of it.
func (s State) Wish() (w plan.Wish, wrong WishWrong) {
	r := wishReader{s: s}
	w.Queens = r.count(WishQueens, 1, plan.MostQueens, "queens")
	w.Nucs = r.open(WishNucs, plan.MostNucs, "nucs")
	w.Sure = float64(r.open(WishSure, 99, "of 100")) / 100
	day := r.day(WishDay)
	if s.Planning.Forwards {
		w.Graft, w.Minute, w.By = day, r.hour(), s.Planning.By
	} else {
		w.By = day
	}
	w.Line = r.line()
	w.Yard, w.Laying, w.Not = s.Yards[Plan], s.Planning.Laying, s.Planning.Batch
	if s.Planning.Grafts > 1 {
		w.Grafts = s.Planning.Grafts
	}
	if w = w.WithLarvae(r.larvae()...); w.Grafts > 1 {
		w.Apart = r.open(WishApart, plan.MostApart, "days")
	}
	return w, r.wrong
}

type wishReader struct {
	s     State
	wrong WishWrong
}

func (r *wishReader) mind(field, why string, args ...any) {
	if r.wrong.Field == "" {
		r.wrong = WishWrong{field, fmt.Sprintf(why, args...)}
	}
}

func (r *wishReader) count(field string, least, most int, of string) int {
	n, err := strconv.Atoi(r.s.Typed(field))
	if err != nil || n < least || n > most {
		r.mind(field, "say how many %s, %d to %d", of, least, most)
	}
	return n
}

// open is a number that may be left out: 0 then.
func (r *wishReader) open(field string, most int, of string) int {
	text := strings.TrimSuffix(r.s.Typed(field), " %")
	if text == "" {
		return 0
	}
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > most {
		r.mind(field, "say how many %s, 1 to %d, or leave it blank", of, most)
	}
	return n
}

// larvae are how many each graft has, or one after the other; none where that is left out.
func (r *wishReader) larvae() []int {
	text := r.s.Typed(WishLarvae)
	if text == "" {
		return nil
	}
	all, ok := plan.ReadLarvae(text)
	if !ok || slices.ContainsFunc(all, func(n int) bool { return n < 1 || n > plan.MostLarvae }) {
		r.mind(WishLarvae, "say how many larvae, 1 to %d, one graft after the other as in 80 + 60, or leave it blank", plan.MostLarvae)
		return nil
	}
	return all
}

func (r *wishReader) day(field string) calendar.Day {
	today := r.s.Today()
	d, err := line.ParseComing(r.s.Typed(field), today)
	switch {
	case err != nil:
		r.mind(field, "%v", err)
	case d <= today && r.s.Planning.Batch.IsZero():
		r.mind(field, "%s has gone: say a day to come, as in 31 May", d.ShortFrom(today))
	case d > today+plan.MostAhead:
		r.mind(field, "%s is too far ahead: at most %d days can be planned", d.ShortFrom(today), plan.MostAhead)
	}
	return d
}

// hour is that of the graft, in minutes after midnight; 0 where it is left out.
func (r *wishReader) hour() int {
	text := r.s.Typed(WishHour)
	if text == "" {
		return 0
	}
	at, err := time.Parse("15:04", text)
	if err != nil {
		at, err = time.Parse("15", text)
	}
	minute := at.Hour()*60 + at.Minute()
	if err != nil || minute == 0 {
		r.mind(WishHour, "say at which hour you graft, as in 14:00, or leave it blank")
	}
	return minute
}

// hourTyped is an hour as it stands in its field.
func hourTyped(minute int) string {
	if minute == 0 {
		return ""
	}
	return fmt.Sprintf("%02d:%02d", minute/60, minute%60)
}

// line is a line of a breeder's, written as it is in the book; "" for any.
func (r *wishReader) line() string {
	typed := r.s.Typed(WishLine)
	if typed == "" {
		return ""
	}
	all := r.s.breederLines()
	if i := slices.IndexFunc(all, func(l string) bool { return strings.EqualFold(l, typed) }); i >= 0 {
		return all[i]
	}
	if len(all) == 0 {
		r.mind(WishLine, "no breeder's line is in the book: leave the line blank, or write a breeder down in Yard")
	} else {
		r.mind(WishLine, "no breeder is of the line %s: there are %s", typed, strings.Join(all, ", "))
	}
	return typed
}

// dayTyped is a day as it stands in a field and is read back from there: with its year where that
// is not this one, or the day has gone.
func (s State) dayTyped(d calendar.Day) string {
	if d < s.Today() {
		return d.ShortFrom(0)
	}
	return d.ShortFrom(s.Today())
}

// wishStepped is the window with the value of a field one step on, or back: a queen,
// a day, the next line that is kept.
func (s State) wishStepped(field string, by int) State {
	switch field {
	case WishDay:
		w, wrong := s.Wish()
		if wrong.Field == WishDay {
			return s
		}
		day := w.By
		if s.Planning.Forwards {
			day = w.Graft
		}
		return s.toWish(field, s.dayTyped(max(day+calendar.Day(by), s.Today()+1)))
	case WishHour:
		w, _ := s.Wish()
		const hour, last = 60, 23 * 60
		return s.toWish(field, hourTyped(min(last, max(hour, cmp.Or(w.Minute, s.foundIn(WishHour))+by*hour))))
	case WishLine:
		return s.toWish(field, stepIn(append([]string{""}, s.breederLines()...), s.Typed(field), by))
	}
	if w, _ := s.Wish(); field == WishLarvae && w.OneByOne() {
		all := w.Said()
		for i := range all {
			all[i] = max(1, all[i]+by*wishStep[field])
		}
		return s.toWish(field, plan.LarvaeSaid(all))
	}
	n, err := strconv.Atoi(s.Typed(field))
	if err != nil {
		n = s.foundIn(field)
	}
	return s.toWish(field, strconv.Itoa(max(1, n+by*wishStep[field])))
}

// wishStep is by how much an arrow changes a number.
var wishStep = map[string]int{WishQueens: 1, WishNucs: 1, WishApart: 1, WishLarvae: 4, WishSure: 5}

// foundIn is the number that was found for a field left blank.
func (s State) foundIn(field string) int {
	sheet, _ := s.PlanSheet()
	if sheet == nil {
		return 0
	}
	switch field {
	case WishHour:
		at := sheet.Batches[0].Ladder.Graft.In(s.Present().View.Zone())
		return at.Hour()*60 + at.Minute()
	case WishNucs:
		return sheet.Nucs
	case WishLarvae:
		return sheet.Larvae
	case WishApart:
		return sheet.Apart
	case WishSure:
		return int(sheet.Sure*100 + 0.5)
	}
	return 0
}

// HourFound is the hour of the graft that was found; "" while none is.
func (s State) HourFound() string { return hourTyped(s.foundIn(WishHour)) }

func (s State) toWish(field, text string) State { return s.WithField(field, FieldOf(text)) }

// breederLines are the lines of the breeders, in the order of their names.
func (s State) breederLines() (all []string) {
	for c := range s.Present().View.Colonies() {
		if c.Is(book.Breeder) && c.Line != "" && !slices.Contains(all, c.Line) {
			all = append(all, c.Line)
		}
	}
	return all
}

// stepIn is the one before or after an answer in a list, around its ends.
func stepIn(all []string, now string, by int) string {
	at := max(slices.Index(all, now), 0)
	return all[(at+by+len(all))%len(all)]
}
