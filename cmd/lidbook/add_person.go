package main

import (
	"cmp"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/founding"
)

func addPerson(a *app) *cobra.Command {
	var phone string
	c := a.adding(&cobra.Command{
		Use:     "person \"NAME FREE HOURS\"",
		Short:   "Add a person, or say anew when one is free",
		Example: "  lidbook add person \"Jon Mon-Fri 17:00-20:00 Sat 08:00-18:00\"",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, f finder, args []string) error {
		id := book.PersonID(d.ids.Next())
		p, err := founding.Person(strings.Join(args, " "), id)
		if err != nil {
			return err
		}
		if there, err := f.person(p.Name); err == nil {
			p.Person, p.Phone = there.Person, there.Phone
		}
		p.Phone = cmp.Or(phone, p.Phone)
		return d.write(p)
	})
	c.Flags().StringVar(&phone, "phone", "", "telephone `NUMBER`")
	return c
}
