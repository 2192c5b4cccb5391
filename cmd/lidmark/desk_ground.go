package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"

	"lidmark/domain/book"
	"lidmark/storage/geofile"
	"lidmark/ui/state"
)

// readGround reads a file of a yard's ground and what of it the book does not hold.
func (d *desk) readGround(e state.ReadGround) state.GroundRead {
	m := state.GroundRead{ReadGround: e}
	o := d.opened()
	if o == nil {
		return m
	}
	v := o.now().Season.At(d.clock())
	found, err := groundFound(e, v)
	var far *geofile.FarError
	if errors.As(err, &far) {
		m.Swapped, m.MayFar = far.Swapped(), far.May()
	}
	if err != nil {
		m.Wrong = err.Error()
		return m
	}
	m.Notes = found.Notes
	m.Facts = geofile.News(found.Sheet, v, e.Yard)
	return m
}

func groundFound(e state.ReadGround, v *book.View) (found geofile.Found, err error) {
	origin, err := originOf(v, e.Yard)
	if err != nil {
		return found, err
	}
	name := filepath.Base(e.Path)
	f, err := os.Open(e.Path)
	if err != nil {
		return found, fmt.Errorf("%s: it cannot be found or read; choose a file that is there", name)
	}
	defer func() { _ = f.Close() }() // it was only read
	return geofile.Read(name, f, geofile.Options{
		Origin: origin, Lines: e.Options.Lines, Points: e.Options.Points, Stands: e.Options.Stands, Swap: e.Options.Swap, Far: e.Options.Far,
	})
}

// originOf is where the origin of a yard lies; files have degrees.
func originOf(v *book.View, yard book.YardID) (geofile.Origin, error) {
	y := v.Yard(yard)
	if y.Lat == 0 && y.Lon == 0 {
		return geofile.Origin{}, fmt.Errorf("the file has degrees, and the book does not say where %s lies: write down its latitude and longitude first", y.Name)
	}
	return geofile.Origin{Lat: y.Lat, Lon: y.Lon}, nil
}
