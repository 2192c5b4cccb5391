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
// the queens were caught, told by its first day. A group that is not known is empty; those of
// whom nobody said which follow their table, where there are any.
func claimsTable(all handover.Claims) table.Table {
	lines := claimLines("batch", all.ByBatch, all.BatchNotSaid)
	return tableOf(claimFields(), append(lines, claimLines("age at the catch, from day", all.ByAge, all.AgeNotSaid)...))
}

func claimLines(by string, rows []handover.ClaimRow, notSaid handover.ClaimRow) (lines []claimLine) {
	for _, r := range rows {
		lines = append(lines, claimLine{by, r})
	}
	if notSaid.All() > 0 {
		lines = append(lines, claimLine{by + ", not said which", notSaid})
	}
	return lines
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
