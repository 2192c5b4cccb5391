// Package photofile reads a photograph of the ground, and makes it small enough to
// live in a book.
package photofile

import (
	"bytes"
	"errors"
	"fmt"
	"image"
	"image/color"
	"image/jpeg"
	_ "image/png" // a picture from a map or a screen
	"io"

	"golang.org/x/image/draw"
)

// Photo is a photograph as a book keeps it: a JPEG, and how large it is in pixels.
type Photo struct {
	JPEG       []byte
	Wide, High int
}

// Limits of what is read, and of what is kept.
const (
	mostBytes  = 60 << 20
	mostPixels = 50_000_000
	longest    = 1600 // pixels of the longer side that is kept
	quality    = 80
)

// Read reads a JPEG or PNG of a name, and scales it down where its longer side has
// more than 1,600 pixels. How a camera was held is not minded: the keeper turns it.
func Read(name string, r io.Reader) (Photo, error) {
	b, err := io.ReadAll(io.LimitReader(r, mostBytes+1))
	switch {
	case err != nil:
		return Photo{}, fmt.Errorf("%s: %w", name, err)
	case len(b) > mostBytes:
		return Photo{}, fmt.Errorf("%s has more than %d MB: save it smaller", name, mostBytes>>20)
	}
	c, _, err := image.DecodeConfig(bytes.NewReader(b))
	switch {
	case errors.Is(err, image.ErrFormat):
		return Photo{}, fmt.Errorf("%s is neither JPEG nor PNG: save it as one of these", name)
	case err != nil:
		return Photo{}, fmt.Errorf("%s is damaged (%w): save it anew", name, err)
	case c.Width < 1 || c.Height < 1 || c.Width > mostPixels/c.Height:
		return Photo{}, fmt.Errorf("%s is %d by %d pixels: save it smaller", name, c.Width, c.Height)
	}
	m, _, err := image.Decode(bytes.NewReader(b))
	if err != nil {
		return Photo{}, fmt.Errorf("%s is damaged (%w): save it anew", name, err)
	}
	return kept(m)
}

// kept is a picture made small, on white where it lets light through.
func kept(m image.Image) (Photo, error) {
	from := m.Bounds()
	w, h := from.Dx(), from.Dy()
	if long := max(w, h); long > longest {
		w, h = max(1, w*longest/long), max(1, h*longest/long)
	}
	to := image.NewRGBA(image.Rect(0, 0, w, h))
	draw.Draw(to, to.Rect, image.NewUniform(color.White), image.Point{}, draw.Src)
	draw.CatmullRom.Scale(to, to.Rect, m, from, draw.Over, nil)
	var b bytes.Buffer
	if err := jpeg.Encode(&b, to, &jpeg.Options{Quality: quality}); err != nil {
		return Photo{}, err
	}
	return Photo{JPEG: b.Bytes(), Wide: w, High: h}, nil
}
