package paper

import (
	"fmt"
	"io"
	"time"

	"codeberg.org/go-pdf/fpdf"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// sheet is a document being drawn. Lengths are millimetres from the upper left
// corner of the page as it is before it is enlarged by zoom.
type sheet struct {
	Options
	pdf   *fpdf.Fpdf
	zone  *time.Location
	title string
	zoom  float64
	w, h  float64   // of the page
	wide  []float64 // of each page that was begun
	faces [len(cuts)]*face
	now   pen // as the page has it
	lacks bool
	err   error
}

// pen is what a page was last told of font and colours.
type pen struct {
	weight     scene.Weight
	size       float64
	draw, fill colour
	width      float64
}

// Margins of a page, mm, before any enlarging.
const (
	marginLeft   = 11.0
	marginRight  = 10.0
	marginTop    = 9.0
	marginBottom = 13.0 // what is drawn ends here
	footLine     = 7.5  // and here stands the foot
)

func newSheet(title string, r *state.Reading, o Options) *sheet {
	s := &sheet{Options: o, zone: r.View.Zone(), title: title, zoom: 1}
	if o.Large {
		s.zoom = large
	}
	format := formats[o.Page]
	s.w, s.h = format.w/s.zoom, format.h/s.zoom
	s.pdf = fpdf.NewCustom(&fpdf.InitType{UnitStr: "mm", Size: fpdf.SizeType{Wd: format.w, Ht: format.h}})
	s.pdf.SetAutoPageBreak(false, 0)
	s.pdf.SetCatalogSort(true)
	s.pdf.SetTitle(title, true)
	s.pdf.SetProducer("Lidmark", true)
	s.pdf.SetCreator("Lidmark", true)
	s.pdf.SetLang("en")
	made := o.Printed
	if made.IsZero() {
		made = r.View.On() // the library would take the clock
	}
	if made.IsZero() {
		made = time.Unix(0, 0)
	}
	s.pdf.SetCreationDate(made.UTC())
	s.pdf.SetModificationDate(made.UTC())
	return s
}

func (s *sheet) left() float64   { return marginLeft / s.zoom }
func (s *sheet) right() float64  { return s.w - marginRight/s.zoom }
func (s *sheet) top() float64    { return marginTop / s.zoom }
func (s *sheet) bottom() float64 { return s.h - marginBottom/s.zoom }

// page begins a page.
func (s *sheet) page() {
	way, format := "P", formats[s.Page]
	if s.w > s.h {
		way = "L"
	}
	s.pdf.AddPageFormat(way, fpdf.SizeType{Wd: format.w, Ht: format.h})
	s.wide = append(s.wide, s.w)
	s.forget()
}

// lie lays the pages that are begun from now on upright or along.
func (s *sheet) lie(along bool) {
	if along != (s.w > s.h) {
		s.w, s.h = s.h, s.w
	}
}

// forget makes sure that font and colours are told anew.
func (s *sheet) forget() { s.now = pen{size: -1, width: -1, draw: -1, fill: -1} }

// finish writes the document and tells how many pages it has.
func (s *sheet) finish(w io.Writer) (pages int, err error) {
	pages = s.pdf.PageCount()
	if s.err != nil {
		return 0, s.err
	}
	if err := s.pdf.Output(w); err != nil {
		return 0, fmt.Errorf("%s could not be written: %w", s.title, err)
	}
	return pages, nil
}

// foot writes the line at the foot of every page.
func (s *sheet) foot() {
	left := "Lidmark"
	if s.Book != "" {
		left += " · " + s.Book
	}
	if !s.Printed.IsZero() {
		left += " · printed " + s.Printed.In(s.zone).Format("2 Jan 2006 15:04")
	}
	if s.lacks {
		left += " · " + string(missing) + " is a character that the typeface lacks"
	}
	n, y := s.pdf.PageCount(), s.h-footLine/s.zoom // of the last page: the library measures from its foot
	for i := range n {
		s.pdf.SetPage(i + 1)
		s.w = s.wide[i]
		s.forget()
		page := fmt.Sprintf("page %d of %d", i+1, n)
		to := s.ends(s.right(), y, page, soft(8))
		s.fit(s.left(), y, left, soft(8), to-4)
	}
}
