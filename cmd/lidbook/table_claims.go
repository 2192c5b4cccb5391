package main

import (
	"lidmark/domain/handover"
	"lidmark/storage/table"
)

// claimLine is a row of the claims, by what it is grouped.
type claimLine struct {
	by string
	handover.ClaimRow
}

// claimsTable is the table of what customers claimed: by batch, then by the week of age at which
// the queens were caught, told by its first day. A group that is not known is empty.
func claimsTable(all handover.Claims) table.Table {
	var lines []claimLine
	for _, r := range all.ByBatch {
		lines = append(lines, claimLine{"batch", r})
	}
	for _, r := range all.ByAge {
		lines = append(lines, claimLine{"age at the catch, from day", r})
	}
	return tableOf(claimFields(), lines)
}

func claimFields() []column[claimLine] {
	return []column[claimLine]{
		{"by", "", func(l claimLine) table.Cell { return table.Text(l.by) }},
		{"group", "", func(l claimLine) table.Cell { return countCell(l.Group) }},
		{"handed over", "", func(l claimLine) table.Cell { return table.Count(l.Out) }},
		{"claimed", "", func(l claimLine) table.Cell { return table.Count(l.All()) }},
		{"dead on arrival", "", func(l claimLine) table.Cell { return table.Count(l.Dead) }},
		{"not accepted", "", func(l claimLine) table.Cell { return table.Count(l.NotAccepted) }},
		{"superseded", "", func(l claimLine) table.Cell { return table.Count(l.Superseded) }},
		{"kind not said", "", func(l claimLine) table.Cell { return table.Count(l.Unsaid) }},
	}
}
