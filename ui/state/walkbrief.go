package state

import "strings"

// briefPlans says how wide an entrance is to be once, where it is another than that of
// the rows above: many boxes of a yard are narrowed alike.
func briefPlans(rows []WalkRow) {
	width, plan, brief := "", "", ""
	for i := range rows {
		row := &rows[i]
		switch {
		case row.Planned == "":
			continue
		case row.Planned != plan || brief == "":
			before := width
			plan = row.Planned
			row.Brief, width = briefPlan(plan, width)
			if brief = ""; width == before {
				brief = row.Brief // so are those that plan the same
			}
		default:
			row.Brief = brief
		}
	}
}

// briefPlan is a plan of which the width of the entrance was said before, or not, and
// the width said now.
func briefPlan(plan, said string) (brief, now string) {
	parts, now := strings.Split(plan, ", "), said
	for i, part := range parts {
		switch {
		case part == entranceShut:
			now = ""
		case !strings.HasPrefix(part, entranceTo):
		case part == said:
			parts[i] = "entrance"
		default:
			now = part
		}
	}
	return strings.Join(parts, ", "), now
}
