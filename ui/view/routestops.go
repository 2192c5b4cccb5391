package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// stops draws the stops and their tasks.
func (r routeDraw) stops(page []state.PageStop, a scene.Area) {
	scroll := min(r.s.Scroll[state.RoutePlace], max(0, r.All-r.Pane))
	top := a.Y - scroll
	whole := r.wholeRows(top, a)
	if len(page) == 0 {
		r.wholeLines(whole, func() {
			r.known(top, a)
			r.nothing(scene.Area{X: a.X, Y: top + r.All, W: a.W, H: a.Bottom() - top - r.All})
		})
		r.scrollBar(a, scroll, r.All)
		return
	}
	end := top + r.All - 40
	if i := slices.IndexFunc(page, state.PageStop.Waits); i >= 0 {
		end = top + r.Stops[i].Y - 14
	}
	r.clipped(a, scene.Tag{}, func() {
		if r.Axis {
			r.rect(scene.Area{X: r.axis.x + axisBefore*r.axis.w/axisDays, Y: a.Y, W: r.axis.w / axisDays, H: a.H}, scene.Sunk)
		}
		if !page[0].Waits() {
			r.add(scene.Line{From: at(r.line, top+r.Stops[0].Y+15), To: at(r.line, end+8), Stroke: stroke(scene.Ink, 3)})
		}
	})
	r.wholeLines(whole, func() {
		r.known(top, a)
		r.allStops(page, top, end, a)
	})
	r.scrollBar(a, scroll, r.All)
}

// wholeRows is what is left of the body without the heads of stops and first lines
// of tasks that its edges cut, with their lids and boxes.
func (r routeDraw) wholeRows(top float64, a scene.Area) scene.Area {
	from, to := a.Y, a.Bottom()
	row := func(y float64) {
		y += top
		if y < a.Y && y+state.RouteLine > a.Y {
			from = max(from, y+state.RouteLine)
		}
		if y < a.Bottom() && y+state.RouteLine > a.Bottom() {
			to = min(to, y)
		}
	}
	for _, t := range r.Known {
		row(t.Y)
	}
	for _, s := range r.Stops {
		row(s.Y)
		for _, t := range s.Tasks {
			row(t.Y)
		}
	}
	if to <= from {
		return a
	}
	return scene.Area{X: a.X, Y: from, W: a.W, H: to - from}
}

// allStops draws the stops, and at the end of the line what is left to do then.
func (r routeDraw) allStops(page []state.PageStop, top, end float64, a scene.Area) {
	for i, s := range page {
		r.stop(s, top+r.Stops[i].Y)
		for j, l := range s.Lines {
			line := r.Stops[i].Tasks[j]
			row := scene.Area{X: r.line + 10, Y: top + line.Y, W: r.area.Right() - r.line - 22, H: line.H}
			if row.Bottom() > a.Y && row.Y < a.Bottom() {
				r.entry(l, row)
			}
			r.row++
		}
	}
	if !page[0].Waits() {
		r.add(scene.Circle{At: at(r.line, end+10), Radius: 6.5, Fill: scene.Ink})
	}
	if end > top+r.All-50 {
		r.fit(r.line+18, end+15, "Write it all in tonight, in this order", ink2(13), r.area.Right()-state.Edge)
	}
}

// stop draws one stop: when it begins, where it is, the way there; or the head
// of what waits.
func (r routeDraw) stop(s state.PageStop, y float64) {
	if s.Waits() {
		r.rule(r.area.X+state.Edge, y, r.area.Right()-state.Edge, y, scene.Rule)
		r.widest(r.line+18, y+20, r.area.Right()-state.Edge, ink(15).semi(), slices.DeleteFunc(
			[]string{r.r.WaitsSaid(r.s.DayPage.Less), r.r.PriceSaid(r.s.DayPage.Less), "Can wait"}, func(s string) bool { return s == "" })...)
		return
	}
	if !s.Start.IsZero() {
		r.text(r.area.X+state.Edge, y+20, s.Start.In(r.r.View.Zone()).Format("15:04"), ink(14).semi())
	}
	r.add(scene.Circle{At: at(r.line, y+15), Radius: 6.5, Fill: scene.Panel, Stroke: stroke(scene.Ink, 3)})
	place := s.Place(r.r.View)
	if s.Who != "" {
		place = s.Who + ": " + place
	}
	end := r.fit(r.line+18, y+20, place, ink(15).semi(), r.end)
	if drive := minutes(s.Drive) + " drive"; s.Drive > 0 && end+12+r.width(drive, ink2(13)) <= r.end {
		r.text(end+12, y+20, drive, ink2(13))
	}
}
