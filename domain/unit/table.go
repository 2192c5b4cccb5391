package unit

// The US units in metric ones, each exact by definition: NIST Special
// Publication 811 (2008), appendix B.8, and NIST Handbook 44, appendix C. The
// inch is the international one, pound and ounce are avoirdupois, quart and
// fluid ounce are US liquid (a gallon is 231 cubic inches).
const (
	inch       = 2.54         // cm
	foot       = 12 * inch    // cm
	mile       = 5280 * foot  // cm
	quart      = 0.946352946  // l
	fluidOunce = quart / 32   // l
	pound      = 453.59237    // g
	ounce      = pound / 16   // g
	degree     = 5.0 / 9      // °C in a °F; 32 °F are 0 °C
	squareInch = inch * inch  // cm²
	squareFoot = foot * foot  // cm²
	dm2        = 100.0        // cm²
	m2         = 100 * dm2    // cm²
	hour       = 3600.0       // s
	metre      = 100.0        // cm
	kilometre  = 1000 * metre // cm
	ml         = 1.0 / 1000   // l
	kg         = 1000.0       // g
	sqInchDm2  = squareInch / dm2
	mphInMS    = mile / metre / hour
	perDegree  = 1 / degree
	ozPerSqIn  = ounce / sqInchDm2
	lbPerQuart = pound / kg / quart
)

// row is a metric unit, what is said for it in the US, how much of the metric
// unit one of those is, and what is said for zero.
type row struct {
	metric, us string
	one        float64
	zero       float64
}

func (r *row) of(v float64) float64 { return v/r.one + r.zero }

// rows are the units the program's texts use.
var rows = [...]row{
	{metric: "l", us: "qt", one: quart},
	{metric: "litres", us: "quarts", one: quart},
	{metric: "litre", us: "quart", one: quart},
	{metric: "ml", us: "fl oz", one: fluidOunce / ml},
	{metric: "°C", us: "°F", one: degree, zero: 32},
	{metric: "km", us: "mi", one: mile / kilometre},
	{metric: "m", us: "ft", one: foot / metre},
	{metric: "metres", us: "feet", one: foot / metre},
	{metric: "cm", us: "in", one: inch},
	{metric: "mm", us: "in", one: inch * 10},
	{metric: "g", us: "oz", one: ounce},
	{metric: "kg", us: "lb", one: pound / kg},
	{metric: "dm²", us: "sq in", one: sqInchDm2},
	{metric: "cm²", us: "sq in", one: squareInch},
	{metric: "m²", us: "sq ft", one: squareFoot / m2},
	{metric: "m/s", us: "mph", one: mphInMS},
	{metric: "km/h", us: "mph", one: mile / kilometre},
	{metric: "h/°C", us: "h/°F", one: perDegree},
	{metric: "bees/dm²", us: "bees/sq in", one: 1 / sqInchDm2},
	{metric: "cells/dm²", us: "cells/sq in", one: 1 / sqInchDm2},
	{metric: "g/dm²", us: "oz/sq in", one: ozPerSqIn},
	{metric: "g/l", us: "oz/qt", one: ounce / quart},
	{metric: "kg/l", us: "lb/qt", one: lbPerQuart},
	{metric: "g/d", us: "oz/d", one: ounce},
}

func find(unit string) *row {
	for i := range rows {
		if rows[i].metric == unit {
			return &rows[i]
		}
	}
	return nil
}
