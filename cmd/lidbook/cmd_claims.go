package main

import (
	"fmt"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/handover"
)

// claimsShape is what customers claimed, in JSON.
type claimsShape struct {
	ByBatch []claimRowShape `json:"byBatch"`
	ByAge   []claimRowShape `json:"byWeekOfAge"`
	Unnamed int             `json:"nobodySaidWhich"` // batchNotSaid, in all

	BatchNotSaid claimRowShape `json:"batchNotSaid"` // of whom nobody said which, who can be of several batches
	AgeNotSaid   claimRowShape `json:"ageNotSaid"`
}

// claimRowShape is a group of queens handed over and those claimed, in JSON: those
// of a batch, or those caught in a week of age, told by its first day. Group 0 is
// those of whom it is not known.
type claimRowShape struct {
	Group       int `json:"group"`
	Out         int `json:"handedOver"`
	Claimed     int `json:"claimed"`
	Dead        int `json:"deadOnArrival"`
	NotAccepted int `json:"notAccepted"`
	Superseded  int `json:"superseded"`
	Unsaid      int `json:"kindNotSaid"`
}

func claimsCommand(a *app) *cobra.Command {
	return a.reading(&cobra.Command{
		Use:     "claims",
		Short:   "What customers claimed, by batch and by the queens' age at the catch",
		Example: "  lidbook claims\n  lidbook claims --on 2026-10-01",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		all := handover.ClaimsOf(v)
		s := claimsShape{claimRows(all.ByBatch), claimRows(all.ByAge), all.BatchNotSaid.All(), claimRow(all.BatchNotSaid), claimRow(all.AgeNotSaid)}
		return a.show(s, func() { a.printClaims(s) })
	})
}

func claimRows(all []handover.ClaimRow) []claimRowShape {
	rows := []claimRowShape{}
	for _, r := range all {
		rows = append(rows, claimRow(r))
	}
	return rows
}

func claimRow(r handover.ClaimRow) claimRowShape {
	return claimRowShape{r.Group, r.Out, r.All(), r.Dead, r.NotAccepted, r.Superseded, r.Unsaid}
}

func (a *app) printClaims(s claimsShape) {
	if len(s.ByBatch) == 0 {
		a.line("no queen was handed over")
		return
	}
	head := []string{"handed over", "claimed", "dead on arrival", "not accepted", "superseded", "kind not said"}
	rows := [][]string{append([]string{"batch"}, head...)}
	for _, r := range s.ByBatch {
		name := "not known"
		if r.Group > 0 {
			name = strconv.Itoa(r.Group)
		}
		rows = append(rows, append([]string{name}, r.figures()...))
	}
	rows = s.BatchNotSaid.notSaid(rows)
	rows = append(rows, append([]string{"caught at"}, head...))
	for _, r := range s.ByAge {
		name := "not known"
		if r.Group > 0 {
			name = fmt.Sprintf("%d to %d d", r.Group, r.Group+6)
		}
		rows = append(rows, append([]string{name}, r.figures()...))
	}
	a.table(s.AgeNotSaid.notSaid(rows))
	if n := max(s.BatchNotSaid.Claimed, s.AgeNotSaid.Claimed); n > 0 {
		a.line("%d claimed of whom nobody said which: strike that line (lidbook lines --ids, lidbook strike ID) and claim anew with --queen NAME --how KIND", n)
	}
}

// notSaid adds those of whom nobody said which, where there are any.
func (r claimRowShape) notSaid(rows [][]string) [][]string {
	if r.Claimed == 0 {
		return rows
	}
	return append(rows, append([]string{"not said which", ""}, r.figures()[1:]...))
}

func (r claimRowShape) figures() (all []string) {
	for _, n := range []int{r.Out, r.Claimed, r.Dead, r.NotAccepted, r.Superseded, r.Unsaid} {
		all = append(all, strconv.Itoa(n))
	}
	return all
}
