package scene

// Role is what a colour is for. The painter's theme gives each role its colour;
// None paints nothing. The roles of conditions come from [Condition.Fill],
// [Condition.Line] and [Condition.Letter].
type Role uint8

// The roles of the sheet, of text, of signs and of maps.
const (
	None   Role = iota // paints nothing
	Ground             // the sheet
	Panel              // paper laid on the sheet
	Sunk               // a part of the sheet that lies lower
	Map                // the ground of a yard
	Paper              // what lies under a lid's signs and letter
	Ink                // text and outlines
	Ink2               // second line of text, units
	Ink3               // what steps back: hints, refused buttons
	Rule               // lines between panes; carries nothing alone
	Hair               // the finest lines; carries nothing alone
	Pen                // the keeper's own: selection, focus, links, a try-out
	PenTint
	Act // past due, hard deadline, over the time there is, trouble, a mistake
	ActTint
	Good // a gain, a chosen chance, saved
	GoodTint
	Off // what is put out of use, grafts before the take
	Bar // measured hours, work done
	BarLight
	Water
	WaterLine
	Hedge
	Tree
	TreeLine
	Shadow
	Track
	Contour

	// Colours of paint and of front marks, the same by light and by dark. The
	// five of queens' discs follow the year (White 1 and 6, Yellow 2 and 7, Red 3
	// and 8, Green 4 and 9, Blue 5 and 0).
	White
	Yellow
	Red
	Green
	Blue
	Sky
	Black
	Orange

	firstCondition
)

// RoleCount is the number of roles, None included: for tables by role.
const RoleCount = int(firstCondition) + 3*int(conditionCount)

// Fill returns the role of the condition's fill, also used for its part of a
// strip. Empty has none.
func (c Condition) Fill() Role {
	if c == Empty {
		return None
	}
	return firstCondition + 3*Role(c)
}

// Line returns the role of the condition's hatch and of its outline where it is
// not seen yet.
func (c Condition) Line() Role { return firstCondition + 3*Role(c) + 1 }

// Letter returns the role of a letter on the condition's fill.
func (c Condition) Letter() Role { return firstCondition + 3*Role(c) + 2 }
