package paper_test

import (
	"bytes"
	"image"
	"image/color"
	"image/draw"
	"math"
	"strings"
	"testing"

	"github.com/makiuchi-d/gozxing"
	"github.com/makiuchi-d/gozxing/qrcode"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// sheets are the labels on a page as their makers cut them: columns, rows,
// size of a label, mm.
var sheets = map[paper.Page]struct {
	columns, rows int
	w, h          float64
	left, top     float64
	pitch         float64
}{
	paper.A4:     {3, 8, 70, 37, 0, 0.5, 70},
	paper.Letter: {3, 10, 2.625 * 25.4, 25.4, 0.1875 * 25.4, 0.5 * 25.4, 2.75 * 25.4},
}

func labels(t *testing.T, r *state.Reading, skip int, page paper.Page) []printed {
	t.Helper()
	var out bytes.Buffer
	n, err := paper.Labels(t.Context(), &out, r, every, skip, paper.Options{Page: page})
	if err != nil {
		t.Fatal(err)
	}
	pages := read(t, out.Bytes())
	if n != len(pages) {
		t.Errorf("%d pages, said %d", len(pages), n)
	}
	return pages
}

// TestCodesReadBack: the code on every label of a page holds the id of the nuc
// that is named on it, as another library reads it.
func TestCodesReadBack(t *testing.T) {
	const skip = 2
	r := demoDay(t)
	for page, s := range sheets {
		first := labels(t, r, skip, page)[0]
		for i, n := range r.Nucs[:s.columns*s.rows-skip] {
			at := i + skip
			a := bar{s.left + float64(at%s.columns)*s.pitch, s.top + float64(at/s.columns)*s.h, s.w, s.h}
			if got, want := decode(t, first, a), "urn:uuid:"+n.Nuc.Nuc.String(); got != want {
				t.Errorf("the code of %s reads %q, want %q", n.Name, got, want)
			}
			if !first.has(a, n.Name) {
				t.Errorf("the label of %s does not name it", n.Name)
			}
		}
	}
}

// TestFrontsReadBack: the code on every front's label holds the id of the nuc that is
// named on it, its mark stands there in words, and the marks of a layout take the place
// of those the book has. No colour is printed.
func TestFrontsReadBack(t *testing.T) {
	r := demoDay(t)
	first := r.Nucs[0].Nuc.Nuc
	others := []book.FrontMarked{{Nuc: first, Shape: "cross", Colour: "yellow"}}
	for page, s := range sheets {
		var out bytes.Buffer
		if _, err := paper.Fronts(t.Context(), &out, r, every, others, 0, paper.Options{Page: page}); err != nil {
			t.Fatal(err)
		}
		p, at := read(t, out.Bytes())[0], 0
		for _, n := range r.Nucs {
			f := n.Front
			if n.Nuc.Nuc == first {
				f = others[0]
			}
			if f.Shape+f.Colour == "" || at == s.columns*s.rows {
				continue
			}
			a := bar{s.left + float64(at%s.columns)*s.pitch, s.top + float64(at/s.columns)*s.h, s.w, s.h}
			at++
			if got, want := decode(t, p, a), "urn:uuid:"+n.Nuc.Nuc.String(); got != want {
				t.Errorf("the code of %s reads %q, want %q", n.Name, got, want)
			}
			if words := f.Colour + " " + f.Shape; !p.has(a, n.Name) || !p.has(a, words) {
				t.Errorf("the label of %s has not its name and %q", n.Name, words)
			}
		}
		if at < 10 {
			t.Errorf("%d fronts have labels", at)
		}
		for _, ink := range p.inks {
			if strings.HasSuffix(ink, " rg") {
				t.Fatalf("a front has the colour %q", ink)
			}
		}
	}
	bare := reading(&booktest.Pen{Zone: zone, Writer: "Ida", Entries: hill().Entries[:9]}, "2027-05-11 06:40")
	if _, err := paper.Fronts(t.Context(), &bytes.Buffer{}, bare, every, nil, 0, paper.Options{}); err == nil {
		t.Error("fronts without marks have labels")
	}
	if _, err := paper.Fronts(t.Context(), &bytes.Buffer{}, r, every, nil, 99, paper.Options{}); err == nil || !strings.Contains(err.Error(), "skip 0 to 23") {
		t.Errorf("skip 99: %v", err)
	}
}

// has tells whether a text begins in a label.
func (p printed) has(a bar, text string) bool {
	for _, w := range p.texts {
		if w.text == text && w.x >= a.x && w.x < a.x+a.w && w.y >= a.y && w.y < a.y+a.h {
			return true
		}
	}
	return false
}

// decode reads the code on a label as a camera does: seen at one size or another.
func decode(t *testing.T, p printed, a bar) string {
	t.Helper()
	var err error
	for _, dots := range []float64{12, 16, 20} {
		var read string
		if read, err = decodeAt(p, a, dots); err == nil {
			return read
		}
	}
	t.Fatalf("label at %.0f, %.0f: %v", a.x, a.y, err)
	return ""
}

// decodeAt reads the code on a label, drawn at so many dots a millimetre.
func decodeAt(p printed, a bar, dots float64) (string, error) {
	img := image.NewGray(image.Rect(0, 0, int(a.w*dots), int(a.h*dots)))
	draw.Draw(img, img.Bounds(), image.NewUniform(color.White), image.Point{}, draw.Src)
	at := func(mm float64) int { return int(math.Round(mm * dots)) }
	for _, b := range p.bars {
		if b.x >= a.x && b.x < a.x+a.w && b.y >= a.y && b.y < a.y+a.h {
			box := image.Rect(at(b.x-a.x), at(b.y-a.y), at(b.x+b.w-a.x), at(b.y+b.h-a.y))
			draw.Draw(img, box, image.NewUniform(color.Black), image.Point{}, draw.Src)
		}
	}
	bits, err := gozxing.NewBinaryBitmapFromImage(img)
	if err != nil {
		return "", err
	}
	code, err := qrcode.NewQRCodeReader().Decode(bits, map[gozxing.DecodeHintType]any{gozxing.DecodeHintType_TRY_HARDER: true})
	if err != nil {
		return "", err
	}
	return code.GetText(), nil
}

// TestUsedUpLabelsStayFree: the first ones are skipped, and as many pages are
// used as it takes.
func TestUsedUpLabelsStayFree(t *testing.T) {
	r := reading(hill(), "2027-05-11 06:40")
	for page, s := range sheets {
		per := s.columns * s.rows
		for _, skip := range []int{0, per - 1} {
			pages := labels(t, r, skip, page)
			if want := (len(r.Nucs) + skip + per - 1) / per; len(pages) != want {
				t.Errorf("%d nucs after %d labels take %d pages, want %d", len(r.Nucs), skip, len(pages), want)
			}
			for i := range skip {
				a := bar{s.left + float64(i%s.columns)*s.pitch, s.top + float64(i/s.columns)*s.h, s.w, s.h}
				for _, w := range pages[0].texts {
					if w.x >= a.x && w.x < a.x+a.w && w.y >= a.y && w.y < a.y+a.h {
						t.Fatalf("%q stands on the used label %d", w.text, i+1)
					}
				}
			}
		}
		for _, skip := range []int{-1, per} {
			if _, err := paper.Labels(t.Context(), &bytes.Buffer{}, r, every, skip, paper.Options{Page: page}); err == nil || !strings.Contains(err.Error(), "skip 0 to") {
				t.Errorf("skip %d: %v", skip, err)
			}
		}
		if paper.LabelsPerPage(page) != per {
			t.Errorf("%d labels a page, want %d", paper.LabelsPerPage(page), per)
		}
	}
}
