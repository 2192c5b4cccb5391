package book

import (
	"lidmark/domain/calendar"
)

// Point is a place on a yard's ground in metres: X east, Y north of the
// yard's origin.
type Point struct {
	X float64 `json:"x"`
	Y float64 `json:"y"`
}

// YardDescribed founds a yard or describes it anew. Lat and Lon are degrees
// (WGS 84), north and east positive; Zone is the name of its time zone, as in
// "Europe/Berlin"; Drive is the way from home in minutes, Home marks the home
// yard.
type YardDescribed struct {
	Yard  YardID  `json:"yard"`
	Name  string  `json:"name"`
	Home  bool    `json:"home,omitzero"`
	Lat   float64 `json:"lat,omitzero"`
	Lon   float64 `json:"lon,omitzero"`
	Zone  string  `json:"zone"`
	Drive float64 `json:"driveMin,omitzero"`
}

// StandSet sets a stand in a yard, or sets it anew: its letter, its middle,
// how far it is turned clockwise from north in degrees, and how many places
// for boxes it has. Round is the part of the yard it is walked with, such as
// "north row".
type StandSet struct {
	Stand  StandID `json:"stand"`
	Yard   YardID  `json:"yard"`
	Letter string  `json:"letter"`
	At     Point   `json:"at"`
	Turn   float64 `json:"turnDeg,omitzero"`
	Places int     `json:"places"`
	Round  string  `json:"round,omitzero"`
}

// FeatureKind is what a feature of the ground is.
type FeatureKind = Word[featureKindWords]

// The features of a yard's ground.
const (
	Boundary FeatureKind = iota + 1
	Hedge
	Wall
	Tree
	Water
	Track
	VehicleSpot
	Dwelling
	ColdHollow
)

type featureKindWords struct{}

func (featureKindWords) words() (string, []string) {
	return "feature", []string{"", "boundary", "hedge", "wall", "tree", "water", "track", "vehicle spot", "dwelling", "cold hollow"}
}

// FeatureDrawn draws something on a yard's ground: a line or an outline of
// points, or the middle of a tree. Height and Width are metres; a tree's
// width is that of its crown. Drawn again it takes its own place; without points
// it is wiped off.
type FeatureDrawn struct {
	Feature FeatureID   `json:"feature"`
	Yard    YardID      `json:"yard"`
	What    FeatureKind `json:"what"`
	Points  []Point     `json:"points"`
	Height  float64     `json:"heightM,omitzero"`
	Width   float64     `json:"widthM,omitzero"`
	Label   string      `json:"label,omitzero"`
}

// Forage is whether bees find nectar around a yard.
type Forage = Word[forageWords]

// The states of forage.
const (
	InFlow Forage = iota + 1
	InDearth
)

type forageWords struct{}

func (forageWords) words() (string, []string) {
	return "forage", []string{"", "flow", "dearth"}
}

// ForageSeen tells that a yard is in flow or in dearth from now on, and whether
// wasps are about its boxes.
type ForageSeen struct {
	Yard   YardID `json:"yard"`
	Forage Forage `json:"forage"`
	Wasps  bool   `json:"wasps,omitzero"`
}

// Sign is a day's weather in one stroke, as far as queens fly.
type Sign = Word[signWords]

// The signs of a day's weather.
const (
	Flying   Sign = iota + 1 // +
	HalfFit                  // ±
	NoFlight                 // −
)

type signWords struct{}

func (signWords) words() (string, []string) {
	return "weather", []string{"", "+", "±", "−"}
}

// WeatherSeen is a day's weather at a yard: one sign, or what was measured,
// or both. Low and High are °C, Wind m/s at 10 m, Rain mm, Sky the share of
// sun, 0 to 1. Forecast marks what was only foretold when it was written.
type WeatherSeen struct {
	Yard     YardID       `json:"yard"`
	Day      calendar.Day `json:"day"`
	Sign     Sign         `json:"sign,omitzero"`
	Low      Amount       `json:"lowC,omitzero"`
	High     Amount       `json:"highC,omitzero"`
	Wind     Amount       `json:"windMS,omitzero"`
	Rain     Amount       `json:"rainMM,omitzero"`
	Sky      Amount       `json:"sky,omitzero"`
	Forecast bool         `json:"forecast,omitzero"`
}

func (f YardDescribed) about(add func(Subject)) { add(f.Yard.Subject()) }
func (f StandSet) about(add func(Subject))      { add(f.Stand.Subject()); add(f.Yard.Subject()) }
func (f FeatureDrawn) about(add func(Subject))  { add(f.Feature.Subject()); add(f.Yard.Subject()) }
func (f ForageSeen) about(add func(Subject))    { add(f.Yard.Subject()) }
func (f WeatherSeen) about(add func(Subject))   { add(f.Yard.Subject()) }
