package rules

import (
	"encoding"
	"fmt"
	"reflect"
	"strconv"
	"strings"
	"time"
	"unicode"
	"unicode/utf8"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Plausible tells whether what a fact says of itself can be meant: its amounts
// and dates lie in the widest range that anybody could mean, its names are
// there, short, and without signs that do not show. It knows no book; the error
// names the field.
func Plausible(f book.Fact) error {
	return plausible(book.KindOfFact(f), "", reflect.ValueOf(f))
}

// span is the widest range of an amount, and what it counts.
type span struct {
	least, most float64
	what        string
}

const (
	firstYear = 1900 // of any date in a book
	lastYear  = 2200
	nameRunes = 80 // the longest name, in characters
	textRunes = 4000
)

// plausible walks the fields of a fact and of what is in them.
func plausible(kind, path string, v reflect.Value) error {
	for i := range v.NumField() {
		if chosen(v.Field(i)) {
			continue // before its name is looked up, which takes longer than the rest
		}
		if v.Type().Field(i).Anonymous {
			if err := plausible(kind, path, v.Field(i)); err != nil {
				return err
			}
			continue // its fields stand in the fact's own
		}
		name, option, _ := strings.Cut(v.Type().Field(i).Tag.Get("json"), ",")
		if err := plausibleField(kind, path+name, option == "", v.Field(i)); err != nil {
			return err
		}
	}
	return nil
}

// chosen tells whether a value is one of those there are, whatever it is: yes or
// no, a word, an id, a picture.
func chosen(v reflect.Value) bool {
	switch v.Kind() {
	case reflect.Bool, reflect.Uint8:
		return true
	case reflect.Array, reflect.Slice:
		return v.Type().Elem().Kind() == reflect.Uint8
	}
	return false
}

// plausibleField looks at one field; needed tells that it cannot be left out.
func plausibleField(kind, field string, needed bool, v reflect.Value) error {
	switch x := v.Interface().(type) {
	case time.Time:
		if x.IsZero() {
			return nil
		}
		return yearOf(field, x.Year())
	case calendar.Day:
		if x.IsZero() {
			return nil
		}
		return PlausibleDay(field, x)
	case book.Amount:
		if n, said := x.Get(); said {
			return inRange(kind, field, n)
		}
		return nil
	case encoding.TextMarshaler, book.Subject:
		return nil // ids and words are among those there are
	}
	switch v.Kind() {
	case reflect.Int:
		return inRange(kind, field, float64(v.Int()))
	case reflect.Float64:
		return inRange(kind, field, v.Float())
	case reflect.String:
		return plausibleText(field, v.String(), needed)
	case reflect.Struct:
		return plausible(kind, field+".", v)
	case reflect.Slice, reflect.Array:
		for i := range v.Len() {
			if err := plausibleField(kind, field, false, v.Index(i)); err != nil {
				return err
			}
		}
	}
	return nil
}

// PlausibleDay tells whether a day is in a year in which anybody keeps such a
// book; what names the day in the error.
func PlausibleDay(what string, d calendar.Day) error {
	year, _, _ := d.Date()
	return yearOf(what, year)
}

func yearOf(what string, year int) error {
	if year < firstYear || year > lastYear {
		return fmt.Errorf("%s in the year %d: write a year from %d to %d", what, year, firstYear, lastYear)
	}
	return nil
}

func inRange(kind, field string, n float64) error {
	s, ok := ranges[kind+": "+field]
	if ok && !(n >= s.least && n <= s.most) {
		return fmt.Errorf("%s %s: write %s to %s", figure(n), s.what, figure(s.least), figure(s.most))
	}
	return nil
}

// figure is a number as one types it; a huge one with its power of ten.
func figure(n float64) string {
	const huge = 1e12
	if n < huge && n > -huge {
		return strconv.FormatFloat(n, 'f', -1, 64)
	}
	return strconv.FormatFloat(n, 'g', 4, 64)
}

// longTexts are the fields that hold what the keeper has to say, not a name.
var longTexts = map[string]bool{"note": true, "text": true, "why": true, "result": true}

func plausibleText(field, s string, needed bool) error {
	if longTexts[field] {
		return plain(field, s, textRunes, "\n\t")
	}
	if err := plain(field, s, nameRunes, ""); err != nil {
		return err
	}
	switch {
	case needed && strings.TrimSpace(s) == "":
		return fmt.Errorf("%s: it is empty, write what it is called", field)
	case strings.TrimSpace(s) != s:
		return fmt.Errorf("%s %q: take the spaces off its ends", field, s)
	}
	return nil
}

// plain refuses what is too long, and characters that do not show or turn the
// direction of those that do, but for some.
func plain(field, s string, most int, but string) error {
	if n := utf8.RuneCountInString(s); n > most {
		return fmt.Errorf("%s of %d characters: write %d at most", field, n, most)
	}
	for _, r := range s {
		if (unicode.IsControl(r) || unicode.Is(unicode.Bidi_Control, r) || r == utf8.RuneError) && !strings.ContainsRune(but, r) {
			return fmt.Errorf("%s %q: %U does not show, take it out", field, s, r)
		}
	}
	return nil
}

// Ranges that several facts share.
var (
	degrees = span{-360, 360, "degrees"}
	metres  = span{-10_000, 10_000, "m"}
	cups    = span{0, 100, "cups of bees"}
	palms   = span{0, 1000, "dm² of brood"}
	grams   = span{0, 50_000, "g"}
	cells   = span{0, 10_000, "cells"}
	nucs    = span{0, 10_000, "nucs"}
	pieces  = span{1, 100_000, "pieces"}
	places  = span{0, 1000, "places"}
	celsius = span{-60, 60, "°C"}
	minutes = span{0, 24 * 60, "minutes of the day"}
	queens  = span{1, 100_000, "queens"}
)

// ranges are the widest ranges of all amounts, by fact and field. They keep
// out slips of the finger; what is good practice is judged elsewhere.
var ranges = map[string]span{
	"yard described: lat":             {-90, 90, "degrees of latitude"},
	"yard described: lon":             {-180, 180, "degrees of longitude"},
	"yard described: driveMin":        {0, 24 * 60, "minutes from home"},
	"stand set: at.x":                 metres,
	"stand set: at.y":                 metres,
	"stand set: turnDeg":              degrees,
	"stand set: places":               places,
	"wind said: fromDeg":              degrees,
	"ground pictured: at.x":           metres,
	"ground pictured: at.y":           metres,
	"ground pictured: turnDeg":        degrees,
	"ground pictured: metresPerPixel": {0, 100, "m to a pixel"},
	"ground pictured: widePixels":     {0, 20_000, "pixels wide"},
	"ground pictured: highPixels":     {0, 20_000, "pixels high"},
	"layout tried: stands.at.x":       metres,
	"layout tried: stands.at.y":       metres,
	"layout tried: stands.turnDeg":    degrees,
	"layout tried: faces.entranceDeg": degrees,
	"layout tried: stands.places":     places,
	"feature drawn: points.x":         metres,
	"feature drawn: points.y":         metres,
	"feature drawn: heightM":          {0, 1000, "m of height"},
	"feature drawn: widthM":           {0, 1000, "m of width"},
	"weather seen: lowC":              celsius,
	"weather seen: highC":             celsius,
	"weather seen: windMS":            {0, 100, "m/s of wind"},
	"weather seen: rainMM":            {0, 2000, "mm of rain"},
	"weather seen: sky":               {0, 1, "of sun"},
	"weather hours: celsius":          celsius,
	"weather hours: windMS":           {0, 100, "m/s of wind"},
	"weather hours: rainMM":           {0, 500, "mm of rain in an hour"},
	"weather hours: sky":              {0, 1, "of sun"},
	"weather normal: month":           {1, 12, "as a month"},
	"weather normal: lowC":            celsius,
	"weather normal: highC":           celsius,
	"weather normal: spreadC":         {0, 20, "°C of spread"},
	"weather normal: windMS":          {0, 100, "m/s of wind"},
	"weather normal: rainy":           {0, 1, "of the days with rain"},
	"weather normal: sky":             {0, 1, "of sun"},
	"box built: nucs":                 {1, 24, "nucs in a box"},
	"nuc named: entranceDeg":          degrees,
	"nuc named: sides":                {0, 100, "sides of comb"},
	"nuc named: sideDM2":              {0, 100, "dm² a side of comb"},
	"nuc placed: place":               {0, 1000, "as a place"},
	"nuc made up: cups":               cups,
	"nuc made up: cappedDM2":          palms,
	"nuc made up: openDM2":            palms,
	"nuc made up: foodG":              grams,
	"entrance set: areaCM2":           {0, 1000, "cm² of entrance"},
	"colony described: at.x":          metres,
	"colony described: at.y":          metres,
	"colony described: beesThousands": {0, 500, "thousand bees"},
	"person described: free.from":     minutes,
	"person described: free.until":    minutes,
	"hours on: from":                  minutes,
	"hours on: until":                 minutes,
	"grafted: number":                 {1, 1_000_000, "as a batch's number"},
	"grafted: larvae":                 {1, 10_000, "larvae"},
	"grafted: larvaAgeH":              {0, 240, "hours of age"},
	"grafted: bars":                   {0, 1000, "bars"},
	"take counted: accepted":          cells,
	"capped counted: capped":          cells,
	"ripe counted: ripe":              cells,
	"cells culled: cells":             cells,
	"incubator read: celsius":         {0, 60, "°C in the incubator"},
	"incubator read: humidity":        {0, 100, "% of humidity"},
	"emerged counted: out":            cells,
	"emerged counted: dead":           cells,
	"taken along: count":              pieces,
	"brought back: count":             pieces,
	"dropped: count":                  pieces,
	"own cells broken down: found":    cells,
	"wild cells searched: found":      cells,
	"looked: cappedDM2":               palms,
	"looked: ownCells":                cells,
	"looked: sides":                   {0, 100, "sides of bees"},
	"looked: stores":                  {0, 3, "as stores"},
	"looked: temper":                  {1, 4, "as temper"},
	"row looked: looked":              nucs,
	"row looked: laying":              nucs,
	"row looked: virgins":             nucs,
	"row looked: none":                nucs,
	"bees added: cups":                cups,
	"brood given: combs":              {0, 100, "combs of brood"},
	"brood given: cappedDM2":          palms,
	"brood given: openDM2":            palms,
	"fed: litres":                     {0, 100, "litres of syrup"},
	"fed: fondantG":                   grams,
	"queen described: matedYear":      {0, lastYear, "as a year"},
	"queen tested: score":             {-1_000_000, 1_000_000, "as a score"},
	"treated: waitDays":               {0, 3650, "days to wait"},
	"order taken: queens":             queens,
	"order taken: journeyDays":        {0, 60, "days on the way"},
	"order taken: priority":           {-1000, 1000, "as a priority"},
	"claimed: queens":                 queens,
	"batch planned: minute":           {0, 24*60 - 1, "minutes after midnight"},
	"batch planned: larvae":           {1, 10_000, "larvae"},
	"batch planned: nucs":             nucs,
	"batch planned: queens":           {0, 10_000, "queens"},
	"batch planned: sure":             {0, 1, "of certainty"},
	"number changed: value":           {-1_000_000, 1_000_000, "as a number"},
}
