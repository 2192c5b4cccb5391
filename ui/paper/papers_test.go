package paper_test

import (
	"bytes"
	"context"
	"errors"
	"flag"
	"math"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"lidmark/ui/paper"
)

var update = flag.Bool("update", false, "write the texts in testdata anew; look at the papers before committing")

// TestTexts holds what stands on the papers of a small book. Figures of a plan are
// compared with the plan itself, in tests of their own.
func TestTexts(t *testing.T) {
	for _, p := range papers() {
		if p.name == "plan" || p.name == "buying" {
			continue
		}
		got := all(p.pages(t, hillOf(p), paper.Options{Book: "Hill 2027", Printed: now}))
		file := filepath.Join("testdata", p.name+".txt")
		if *update {
			if err := os.WriteFile(file, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(file)
		if err != nil {
			t.Fatalf("%v; write it with go test -update", err)
		}
		if diff := cmp.Diff(string(want), got); diff != "" {
			t.Errorf("%s differs; go test -update writes it anew\n%s", file, diff)
		}
	}
}

// TestTheSameBytes: the same book printed twice is the same file, and the clock
// is not asked when it was printed.
func TestTheSameBytes(t *testing.T) {
	r := demoDay(t)
	for _, o := range []paper.Options{{}, {Book: "Hill", Printed: now}} {
		for _, p := range papers() {
			var one, two bytes.Buffer
			if _, err := p.print(t.Context(), &one, r, o); err != nil {
				t.Fatal(err)
			}
			if _, err := p.print(t.Context(), &two, r, o); err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(one.Bytes(), two.Bytes()) {
				t.Errorf("%s printed twice differs", p.name)
			}
		}
	}
}

// TestAllStandsOnThePage: nothing is written outside the page or into what a
// printer cannot reach, in any choice.
func TestAllStandsOnThePage(t *testing.T) {
	const margin = 4.0 // mm, what printers leave white
	r := demoDay(t)
	for name, o := range choices() {
		for _, p := range papers() {
			if o.Large && slices.Contains([]string{"labels", "cages", "fronts"}, p.name) {
				continue // they are of one size
			}
			for i, page := range p.pages(t, r, o) {
				if len(page.texts) == 0 {
					t.Errorf("%s, %s: page %d is empty", p.name, name, i+1)
				}
				for _, w := range page.texts {
					if w.x < margin || w.y < margin || w.x > page.w-margin || w.y > page.h-margin {
						t.Errorf("%s, %s, page %d: %q stands at %.0f, %.0f of %.0f by %.0f mm", p.name, name, i+1, w.text, w.x, w.y, page.w, page.h)
					}
				}
			}
		}
	}
}

func TestFormats(t *testing.T) {
	r := demoDay(t)
	for page, want := range map[paper.Page][2]float64{paper.A4: {210, 297}, paper.Letter: {215.9, 279.4}} { // ISO 216; ANSI Y14.1
		p := routeOf(t, r, paper.Options{Page: page})[0]
		if math.Abs(p.w-want[0]) > 0.1 || math.Abs(p.h-want[1]) > 0.1 {
			t.Errorf("the page is %.1f by %.1f mm, want %v", p.w, p.h, want)
		}
	}
	for word, want := range map[string]paper.Page{"": paper.A4, "A4": paper.A4, "letter": paper.Letter} {
		if got, err := paper.ParsePage(word); got != want || err != nil {
			t.Errorf("page %q is %v, %v", word, got, err)
		}
	}
	if _, err := paper.ParsePage("a5"); err == nil || !strings.Contains(err.Error(), "a4, letter") {
		t.Errorf("page a5: %v", err)
	}
}

// TestPure: black and white only means just that; else greys are used, and
// colours on labels alone: plans that fit on a page are too small for marks.
func TestPure(t *testing.T) {
	r := demoDay(t)
	blackAndWhite := []string{"0.000 g", "1.000 g", "0.000 G", "1.000 G"}
	for _, p := range papers() {
		for _, page := range p.pages(t, r, paper.Options{Pure: true}) {
			for _, ink := range page.inks {
				if !slices.Contains(blackAndWhite, ink) {
					t.Fatalf("%s in black and white has the colour %q", p.name, ink)
				}
			}
		}
		coloured := slices.ContainsFunc(p.pages(t, r, paper.Options{}), func(page printed) bool {
			return slices.ContainsFunc(page.inks, func(ink string) bool { return strings.HasSuffix(ink, " rg") })
		})
		if coloured != slices.Contains([]string{"labels", "cages"}, p.name) {
			t.Errorf("%s has colours: %v", p.name, coloured)
		}
	}
}

func TestPrintingCanBeStopped(t *testing.T) {
	r := demoDay(t)
	ctx, stop := context.WithCancel(t.Context())
	stop()
	for _, p := range papers() {
		var out bytes.Buffer
		if _, err := p.print(ctx, &out, r, paper.Options{}); !errors.Is(err, context.Canceled) || out.Len() > 0 {
			t.Errorf("%s: %v after %d bytes", p.name, err, out.Len())
		}
	}
}

// broken is a writer that takes nothing.
type broken struct{}

var errFull = errors.New("disk full")

func (broken) Write([]byte) (int, error) { return 0, errFull }

func TestAFullDiskIsTold(t *testing.T) {
	r := demoDay(t)
	for _, p := range papers() {
		if _, err := p.print(t.Context(), broken{}, r, paper.Options{}); !errors.Is(err, errFull) {
			t.Errorf("%s: %v", p.name, err)
		}
	}
}

// TestAnotherProgramReadsIt asks qpdf whether the documents are sound and
// pdftotext what stands on them, where they are installed.
func TestAnotherProgramReadsIt(t *testing.T) {
	for _, name := range []string{"qpdf", "pdftotext"} {
		if _, err := exec.LookPath(name); err != nil {
			t.Skip(name, "is not installed")
		}
	}
	for _, p := range papers() {
		file := filepath.Join(t.TempDir(), p.name+".pdf")
		f, err := os.Create(file)
		if err != nil {
			t.Fatal(err)
		}
		if _, err := p.print(t.Context(), f, hillOf(p), paper.Options{Book: "Hill 2027"}); err != nil {
			t.Fatal(err)
		}
		if err := f.Close(); err != nil {
			t.Fatal(err)
		}
		if out, err := exec.Command("qpdf", "--check", file).CombinedOutput(); err != nil {
			t.Errorf("%s: %s", p.name, out)
		}
		want := "Hill"
		switch p.name {
		case "cages":
			want = "order 71"
		case "fronts":
			want = "yellow disc"
		}
		out, err := exec.Command("pdftotext", "-layout", file, "-").Output()
		if err != nil || !strings.Contains(string(out), want) {
			t.Errorf("%s: %v; it reads\n%s", p.name, err, out)
		}
	}
}
