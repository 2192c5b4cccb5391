package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/storage/ics"
)

func calendarCommand(a *app) *cobra.Command {
	var days int
	c := a.reading(&cobra.Command{
		Use:     "calendar FILE.ics",
		Short:   "Hard deadlines and batch events as a calendar file with alarms",
		Long:    "Writes an iCalendar file. Events keep their ids: read in again, a calendar moves\nthem, doubles none, and strikes those of a plan that was dropped. Hard deadlines ring the last free evening before and in the\nmorning.",
		Example: "  lidbook calendar batches.ics",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		if err := checkEnding(args[0], "a calendar is", ".ics"); err != nil {
			return err
		}
		const most = 2 * 365
		if days < 1 || days > most {
			return fmt.Errorf("--days %d: write 1 to %d", days, most)
		}
		from := v.Today()
		events := []ics.Event{}
		off := 0
		for _, d := range rules.Judge(v).Calendar(from, from+calendar.Day(days)) {
			dl := ics.Deadline{ID: d.ID, Day: d.Day, At: d.At, Hard: d.Hard, Off: d.Off, What: d.Title(v), Do: d.Do, Alarms: d.Alarms, Lines: v.Season().Len()}
			events = append(events, dl.Event(v.Zone()))
			if d.Off {
				off++
			}
		}
		err := storage.WriteFile(args[0], func(w io.Writer) error { return ics.Write(w, events, v.Zone(), a.now) })
		if err != nil {
			return err
		}
		a.line("%s: %s until %s%s", args[0], plural(len(events)-off, "event"), dayOf(v, (from+calendar.Day(days)).Start(v.Zone())), struckOut(off))
		return nil
	})
	amount(c, &days, "days", 60, "how many days ahead")
	return c
}

// struckOut is how many events of an earlier file stand no more, in words.
func struckOut(off int) string {
	if off == 0 {
		return ""
	}
	return fmt.Sprintf("; %d of before struck", off)
}
