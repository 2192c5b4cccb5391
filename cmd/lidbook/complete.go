package main

import (
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// completes lets the shell complete the first argument with names of the book.
func (a *app) completes(c *cobra.Command, names func(*book.View) []string) *cobra.Command {
	c.ValidArgsFunction = func(_ *cobra.Command, args []string, _ string) ([]string, cobra.ShellCompDirective) {
		if len(args) > 0 {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		s, err := a.season()
		if err != nil {
			return nil, cobra.ShellCompDirectiveNoFileComp
		}
		return names(s.At(a.now)), cobra.ShellCompDirectiveNoFileComp
	}
	return c
}

func nucNames(v *book.View) (all []string) {
	for n := range v.Nucs() {
		all = append(all, n.Name)
	}
	return all
}

func batchNumbers(v *book.View) (all []string) {
	for b := range v.Batches() {
		all = append(all, strconv.Itoa(b.Number))
	}
	return all
}

func colonyNames(v *book.View) (all []string) {
	for c := range v.Colonies() {
		all = append(all, c.Name)
	}
	return all
}

func queenNames(v *book.View) (all []string) {
	for q := range v.Queens() {
		if q.Name != "" {
			all = append(all, q.Name)
		}
	}
	return all
}

// thingNames are the names of all that a card can be asked of.
func thingNames(v *book.View) []string {
	all := append(nucNames(v), colonyNames(v)...)
	for _, n := range batchNumbers(v) {
		all = append(all, "batch "+n)
	}
	return append(all, queenNames(v)...)
}
