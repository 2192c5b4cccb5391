package window

import (
	"errors"
	"strconv"
	"sync/atomic"
	"testing"
	"time"
	_ "time/tzdata"

	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/driver/desktop"
	"fyne.io/fyne/v2/storage"
	"fyne.io/fyne/v2/test"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

var now = time.Date(2027, 5, 11, 7, 30, 0, 0, time.UTC)

// shelf has the demo season and no file.
type shelf struct{}

func (shelf) Demo() (*state.Book, error) {
	return &state.Book{Name: "demo season", Season: book.NewSeason(time.LoadLocation, demo.Season(calendar.DayOf(now, time.UTC), time.UTC))}, nil
}

func (shelf) Open(string) (*state.Book, error) { return nil, errors.New("there is no such file") }

func (shelf) Stamp(string) string { return "" }

// growing is a file that somebody writes in.
type growing struct {
	shelf
	stamp *atomic.Int32
}

func (g growing) Open(path string) (*state.Book, error) {
	b, err := g.Demo()
	b.Path = path
	return b, err
}

func (g growing) Stamp(string) string { return strconv.Itoa(int(g.stamp.Load())) }

// opened is a window of 1440 × 900 dp on the demo season, painted once.
func opened(t *testing.T) *Window {
	t.Helper()
	app := test.NewTempApp(t)
	w, err := New(app, state.State{Now: now, Room: state.Yard}, shelf{})
	if err != nil {
		t.Fatal(err)
	}
	w.work = func(f func()) { f() } // the test is its own worker
	w.window.Resize(fyne.NewSize(1440, 900))
	b, err := shelf{}.Demo()
	if err != nil {
		t.Fatal(err)
	}
	w.send(state.Opened{Book: b})
	w.painted(1440, 900)
	return w
}

// painted has the raster painted, as the toolkit would.
func (w *Window) painted(width, height int) { w.stage.paint(width, height) }

// nucAt finds where a nuc's lid lies, asking the scene as the pointer does.
func (w *Window) nucAt(t *testing.T, name string) scene.Point {
	t.Helper()
	n := w.state.Present().View.NucNamed(name)[0]
	for y := 300.0; y < 860; y += 4 {
		for x := 4.0; x < 1100; x += 4 {
			p := scene.Point{X: x, Y: y}
			if tag, ok := w.stage.scene.At(p); ok && tag.Ref.ID == n.Nuc.String() {
				return p
			}
		}
	}
	t.Fatalf("%s is not in the picture", name)
	return scene.Point{}
}

func mouse(p scene.Point, m fyne.KeyModifier) *desktop.MouseEvent {
	return &desktop.MouseEvent{
		PointEvent: fyne.PointEvent{Position: fyne.NewPos(float32(p.X), float32(p.Y))},
		Button:     desktop.MouseButtonPrimary, Modifier: m,
	}
}

func (w *Window) click(p scene.Point, m fyne.KeyModifier) {
	w.stage.MouseMoved(mouse(p, m))
	w.stage.MouseDown(mouse(p, m))
	w.stage.MouseUp(mouse(p, m))
	w.painted(1440, 900)
}

func TestAClickTakesANuc(t *testing.T) {
	w := opened(t)
	w.click(w.nucAt(t, "A1"), 0)
	a1 := w.state.Present().View.NucNamed("A1")[0].Nuc.Subject()
	if !w.state.Selection.Has(a1) || w.state.Selection.Len() != 1 {
		t.Fatalf("%d selected, want A1 alone", w.state.Selection.Len())
	}
	w.click(w.nucAt(t, "A3"), fyne.KeyModifierControl)
	if w.state.Selection.Len() != 2 || !w.state.Selection.Has(a1) {
		t.Errorf("%d selected after Ctrl and a click, want both", w.state.Selection.Len())
	}
}

func TestARubberBandTakesWhatLiesInIt(t *testing.T) {
	w := opened(t)
	from, to := w.state.Layout().Map.Centre(), scene.Point{X: 20, Y: 340}
	for w.stage.tag(from).Ref.Kind != state.PaneRef {
		from = from.Add(scene.Point{X: 3, Y: 7})
	}
	w.stage.MouseMoved(mouse(from, 0))
	w.stage.MouseDown(mouse(from, 0))
	w.stage.MouseMoved(mouse(to, 0))
	w.painted(1440, 900)
	w.stage.MouseUp(mouse(to, 0))
	if got := w.state.Selection.Len(); got < 4 {
		t.Errorf("a band over a quarter of the yard took %d nucs", got)
	}
}

func TestKeysMoveTheDay(t *testing.T) {
	w := opened(t)
	today := w.state.Today()
	for _, c := range []struct {
		press func()
		want  calendar.Day
	}{
		{func() { w.stage.TypedRune('.') }, today + 1},
		{func() { w.stage.TypedRune('>') }, today + 8},
		{func() { w.stage.TypedRune(',') }, today + 7},
		{func() { w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyHome}) }, today},
		{func() {
			w.stage.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyLeft, Modifier: fyne.KeyModifierAlt})
		}, today - 1},
	} {
		c.press()
		if got := w.state.Looked(); got != c.want {
			t.Errorf("looking at %v, want %v", got, c.want)
		}
	}
}

func TestHeldKeysCountUntilLetGo(t *testing.T) {
	w := opened(t)
	w.click(w.nucAt(t, "A1"), 0)
	w.stage.KeyDown(&fyne.KeyEvent{Name: desktop.KeyShiftLeft})
	w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	w.stage.KeyUp(&fyne.KeyEvent{Name: desktop.KeyShiftLeft})
	if got := w.state.Selection.Len(); got != 2 {
		t.Errorf("%d selected after Shift and an arrow, want 2", got)
	}
	w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyRight})
	if got := w.state.Selection.Len(); got != 1 {
		t.Errorf("%d selected after an arrow alone, want 1", got)
	}
}

func TestTheFilterTakesTheKeys(t *testing.T) {
	w := opened(t)
	w.stage.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyF, Modifier: fyne.KeyModifierControl})
	for _, r := range "n1." {
		w.stage.TypedRune(r)
	}
	w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyBackspace})
	if w.state.Filter != "n1" || w.state.Away() {
		t.Errorf("filter %q, away %v; want n1, and the day as it was", w.state.Filter, w.state.Away())
	}
}

func TestTextSizeMovesThePointerToo(t *testing.T) {
	w := opened(t)
	w.send(state.Ran{Command: "larger"})
	if w.state.TextSize() <= 1 {
		t.Fatal("the text did not grow")
	}
	p := w.stage.at(fyne.NewPos(115, 230))
	if want := 115 / w.state.TextSize(); p.X != want {
		t.Errorf("the pointer is at %v, want %v", p.X, want)
	}
}

func TestAShiftOfThePointerPaintsOnlyWhatChanges(t *testing.T) {
	w := opened(t)
	before := w.state
	a1 := w.nucAt(t, "A1")
	w.stage.MouseMoved(mouse(a1, 0))
	if !shows(state.Moved{}, before, w.state) {
		t.Error("coming over a nuc shows nothing")
	}
	before = w.state
	w.stage.MouseMoved(mouse(a1.Add(scene.Point{X: 1}), 0))
	if shows(state.Moved{}, before, w.state) {
		t.Error("moving within a nuc paints the window anew")
	}
}

func TestThePixelsAreWhatTheToolkitWants(t *testing.T) {
	w := opened(t)
	w.painted(2160, 1350)
	p := w.stage.pixels
	if p.Rect.Min.X != 0 || p.Stride != 4*2160 || p.Rect.Dy() != 1350 {
		t.Errorf("bounds %v, stride %d", p.Rect, p.Stride)
	}
}

func TestABookThatDoesNotOpenLeavesTheWindowAsItWas(t *testing.T) {
	w := opened(t)
	was := w.state.Book
	w.OpenFile("nowhere.lidmark")
	if w.state.Book != was {
		t.Error("the book is gone from the window")
	}
	if w.window.Canvas().Overlays().Top() == nil {
		t.Error("nothing says what went wrong")
	}
}

func TestWhatIsDroppedIsOpenedOrAnswered(t *testing.T) {
	w := opened(t)
	for name, want := range map[string]int{"letter.txt": 0, "a.lidmark": 1, "A.LIDMARK": 1} {
		asked := w.asked
		w.dropped(fyne.Position{}, []fyne.URI{storage.NewFileURI("/" + name)})
		if got := w.asked - asked; got != want {
			t.Errorf("%s: %d books asked for, want %d", name, got, want)
		}
	}
	if w.window.Canvas().Overlays().Top() == nil {
		t.Error("a letter was dropped, and nothing says that it is no book")
	}
}

func TestABookThatGrewIsOpenedAnew(t *testing.T) {
	w := opened(t)
	var stamp atomic.Int32
	w.books = growing{stamp: &stamp}
	w.OpenFile("a.lidmark")
	first := w.state.Book
	w.click(w.nucAt(t, "A1"), 0)

	w.tick(now.Add(time.Minute))
	if w.state.Book != first || !w.state.Now.Equal(now.Add(time.Minute)) {
		t.Error("a book that nobody wrote in was opened anew, or the clock stands still")
	}
	stamp.Add(1)
	w.tick(now.Add(2 * time.Minute))
	if w.state.Book == first || w.state.Selection.Len() != 1 {
		t.Errorf("a book that grew is not shown, or %d are selected", w.state.Selection.Len())
	}
}

func TestDialogsWearTheThemeOfTheScenes(t *testing.T) {
	for name, role := range roles {
		if (Theme{}).Color(name, 0) == (Theme{Dark: true}).Color(name, 0) && role != scene.None {
			t.Errorf("%v is the same by light and by dark", name)
		}
	}
}
