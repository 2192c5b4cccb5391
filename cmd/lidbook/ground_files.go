package main

import (
	"cmp"
	"errors"
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/yard"
	"lidmark/storage"
	"lidmark/storage/geofile"
)

// originFlags say where the origin of a yard lies that the book does not place.
type originFlags struct{ lat, lon float64 }

func (o *originFlags) flags(c *cobra.Command) {
	signed(c, &o.lat, "lat", "latitude of the yard's origin in degrees (else as in the book)")
	signed(c, &o.lon, "lon", "longitude of it in degrees")
}

// of is the origin of a yard, as said or as in the book.
func (o *originFlags) of(c *cobra.Command, y *book.Yard) (geofile.Origin, error) {
	if c.Flags().Changed("lat") != c.Flags().Changed("lon") {
		return geofile.Origin{}, errors.New("--lat and --lon go together: say both")
	}
	at := geofile.Origin{Lat: y.Lat, Lon: y.Lon}
	if c.Flags().Changed("lat") {
		at = geofile.Origin{Lat: o.lat, Lon: o.lon}
	}
	if at == (geofile.Origin{}) {
		return at, fmt.Errorf("the book does not say where %s lies: write it down with lidbook yard place, or say it with --lat and --lon", y.Name)
	}
	return at, onEarth(book.YardDescribed{Lat: at.Lat, Lon: at.Lon})
}

func groundOut(a *app) *cobra.Command {
	var origin originFlags
	var places positionFlags
	var try string
	c := a.reading(&cobra.Command{
		Use:     "out FILE",
		Short:   "Write what is drawn of a yard, and its stands, as GeoJSON",
		Long:    "Writes GeoJSON (RFC 7946), to FILE or to - for here. With --coarse the whole yard is moved to\nthe nearest point of a grid of about a kilometre, and nobody sees where it lies; read back\nfor the same yard nothing has moved. With --no-positions there are no places in it at all.",
		Example: "  lidbook ground out hill.geojson\n  lidbook ground out hill.geojson --coarse\n  lidbook ground out - --no-positions",
		Args:    cobra.ExactArgs(1),
	}, func(c *cobra.Command, v *book.View, args []string) error {
		y, err := finder{View: v}.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		how, err := places.of()
		if err != nil {
			return err
		}
		at, err := origin.of(c, y)
		if err != nil && how != book.Nowhere {
			return err
		}
		s, err := sheetOf(v, y, try)
		if err != nil {
			return err
		}
		write := func(w io.Writer) error { return geofile.Write(w, s, at, how) }
		if args[0] == "-" {
			return write(a.file)
		}
		return storage.WriteFile(args[0], write)
	})
	origin.flags(c)
	places.flags(c)
	c.Flags().StringVar(&try, "layout", "", "the stands as the try-out of this `NAME` has them")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "of this `YARD` (else the home yard)")
	return c
}

// sheetOf is what is drawn of a yard, with its stands as they stand or as a try-out has
// them.
func sheetOf(v *book.View, y *book.Yard, try string) (s geofile.Sheet, err error) {
	s.Features = y.Features
	var kept book.Layout
	if try != "" {
		if kept, err = (finder{View: v}).tryOut(y, try); err != nil {
			return s, err
		}
	}
	for _, stand := range yard.Of(v, y.Yard).Try(kept.LayoutTried).Stands {
		s.Stands = append(s.Stands, book.StandSet{Stand: stand.ID, Yard: y.Yard, Letter: stand.Letter, At: stand.At, Turn: stand.Turn, Places: stand.Places, Round: stand.Round})
	}
	return s, nil
}

// inFlags say how a file of a yard's ground is meant.
type inFlags struct {
	originFlags
	lines, points string
	swap, far     bool
}

func groundIn(a *app) *cobra.Command {
	var in inFlags
	c := a.writing(&cobra.Command{
		Use:   "in FILE",
		Short: "Take in what is drawn of a yard, and its stands: GeoJSON, or tracks and waypoints of GPX",
		Long: "Says what it understood before anything is written. What does not say its kind is said with\n--lines and --points. A feature of the same id, and a stand of the same id or letter, is moved\n" +
			"to its new place; what is not in the file stays as it is.",
		Example: "  lidbook ground in hill.geojson\n  lidbook ground in walk.gpx --lines boundary --points stand --yes",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error { return d.groundIn(c, args[0], in) })
	in.originFlags.flags(c)
	f := c.Flags()
	f.StringVar(&in.lines, "lines", "", "what lines and outlines are that do not say it: a `KIND` such as boundary, hedge, track")
	f.StringVar(&in.points, "points", "", "what points are that do not say it: a `KIND` such as tree, vehicle spot, or stand")
	f.BoolVar(&in.swap, "swap", false, "latitude and longitude stand in each other's place")
	f.BoolVar(&in.far, "far", false, "it may lie far from the yard, up to 100 km")
	f.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	f.BoolVarP(&a.flags.yes, "yes", "y", false, "take it in without asking")
	return c
}

func (d *desk) groundIn(c *cobra.Command, path string, in inFlags) error {
	y, err := finder{View: d.view()}.homeOr(d.flags.yard)
	if err != nil {
		return err
	}
	found, err := in.read(c, path, y)
	if err != nil {
		return err
	}
	facts := d.drawn(found.Sheet, y)
	names := line.In(d.view())
	for _, f := range facts {
		d.line("%s", line.Words(f, names))
	}
	for _, note := range found.Notes {
		d.line("%s", note)
	}
	switch {
	case len(facts) == 0:
		d.line("nothing to take in: the book has all of it")
		return nil
	case !d.agreed():
		return refuse("nothing was taken in: add --yes when it reads right")
	}
	if err := plausible(facts...); err != nil {
		return err
	}
	if err := d.append(d.entries(d.at, facts...)...); err != nil {
		return err
	}
	d.line("taken in: %s of %s", plural(len(facts), "line"), path)
	return nil
}

func (in *inFlags) read(c *cobra.Command, path string, y *book.Yard) (geofile.Found, error) {
	o := geofile.Options{Swap: in.swap, Far: in.far, Stands: in.points == "stand"}
	var err error
	if o.Origin, err = in.of(c, y); err != nil {
		return geofile.Found{}, err
	}
	if err := kindOf(&o.Lines, in.lines); err != nil {
		return geofile.Found{}, fmt.Errorf("--lines: %w", err)
	}
	if !o.Stands {
		if err := kindOf(&o.Points, in.points); err != nil {
			return geofile.Found{}, fmt.Errorf("--points: %w, or stand", err)
		}
	}
	file, err := openText(path)
	if err != nil {
		return geofile.Found{}, err
	}
	defer file.Close() // nothing was written
	found, err := geofile.Read(path, file, o)
	var far *geofile.FarError
	switch {
	case errors.As(err, &far) && far.Swapped():
		return found, fmt.Errorf("%w (--swap changes them over)", err)
	case far != nil && far.May():
		return found, fmt.Errorf("%w (--far)", err)
	}
	return found, err
}

// kindOf reads a kind of feature; nothing is said of none.
func kindOf(to *book.FeatureKind, word string) error {
	if word == "" {
		return nil
	}
	return to.UnmarshalText([]byte(word))
}

// drawn are the facts of a sheet that the book does not hold yet.
func (d *desk) drawn(s geofile.Sheet, y *book.Yard) []book.Fact {
	facts := geofile.News(s, d.view(), y.Yard)
	for i, f := range facts {
		switch f := f.(type) {
		case book.FeatureDrawn:
			f.Feature = cmp.Or(f.Feature, book.FeatureID(d.ids.Next()))
			facts[i] = f
		case book.StandSet:
			f.Stand = cmp.Or(f.Stand, book.StandID(d.ids.Next()))
			facts[i] = f
		}
	}
	return facts
}
