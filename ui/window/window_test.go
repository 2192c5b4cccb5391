package window

import (
	"slices"
	"strings"
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

// table is a desk that does nothing and notes what it is asked.
type table struct {
	asked []state.Effect
	tick  time.Time
}

func (d *table) Do(_ state.State, e state.Effect, _ func(state.Msg)) { d.asked = append(d.asked, e) }

func (d *table) Tick(s state.State, tell func(state.Msg)) {
	d.tick = s.Now
	tell(state.Ticked{Now: s.Now})
}

func demoBook() *state.Book {
	return &state.Book{Name: "demo season", Season: book.NewSeason(time.LoadLocation, demo.Season(calendar.DayOf(now, time.UTC), time.UTC))}
}

// opened is a window of 1440 × 900 dp on the demo season, painted once.
func opened(t *testing.T) *Window {
	t.Helper()
	app := test.NewTempApp(t)
	w, err := New(app, state.State{Now: now, Room: state.Yard}, &table{})
	if err != nil {
		t.Fatal(err)
	}
	w.window.Resize(fyne.NewSize(1440, 900))
	w.send(state.Opened{Book: demoBook()})
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

// asked is what the window asked of the desk since this was called last.
func (w *Window) asked() (all []state.Effect) {
	d := w.desk.(*table)
	all, d.asked = d.asked, nil
	return all
}

func TestWhatIsDroppedIsOpenedBroughtOrAnswered(t *testing.T) {
	w := opened(t)
	w.asked()
	for names, want := range map[string]string{
		"letter.txt": "letter.txt is neither a book nor a list, weather or a ground", "a.lidmark": "", "A.LIDMARK": "",
		"nucs.csv": "", "nucs.XLSX": "", "forecast.JSON": "", "a.lidmark b.lidmark": "drop one file at a time", "": "drop one file at a time",
	} {
		w.send(state.Worked{})
		var files []fyne.URI
		for name := range strings.FieldsSeq(names) {
			files = append(files, storage.NewFileURI("/"+name))
		}
		w.dropped(fyne.Position{}, files)
		if got := w.state.Note.Text; !strings.HasPrefix(got, want) || (want == "") != (got == "") {
			t.Errorf("%s: the window says %q, want %q", names, got, want)
		}
		asks := w.asked()
		isBook := func(e state.Effect) bool { _, ok := e.(state.OpenBook); return ok }
		if got, want := slices.ContainsFunc(asks, isBook), names == "a.lidmark" || names == "A.LIDMARK"; got != want {
			t.Errorf("%s: asked of the desk: %v", names, asks)
		}
	}
}

func TestTheClockGoesByWayOfTheDesk(t *testing.T) {
	w := opened(t)
	w.tick(now.Add(time.Minute))
	if d := w.desk.(*table); !d.tick.Equal(now.Add(time.Minute)) || !w.state.Now.Equal(d.tick) {
		t.Errorf("the desk has %v, the window %v", d.tick, w.state.Now)
	}
}

func TestWhatIsToldAfterTheWindowClosedIsLost(t *testing.T) {
	w := opened(t)
	w.window.Close()
	w.tell(state.Worked{Note: state.Note{Text: "too late"}})
	if w.state.Note.Text != "" {
		t.Error("a closed window goes on")
	}
}

func TestTheTitleNamesTheBook(t *testing.T) {
	w := opened(t)
	if got := w.window.Title(); got != "Lidmark: demo season" {
		t.Errorf("the title is %q", got)
	}
	w.send(state.Opened{})
	if got := w.window.Title(); got != "Lidmark" {
		t.Errorf("without a book the title is %q", got)
	}
}

func TestTheClipboardGoesBothWays(t *testing.T) {
	w := opened(t)
	w.stage.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyF, Modifier: fyne.KeyModifierControl})
	w.Perform(state.CopyText{Text: "needs you"})
	w.Perform(state.Paste{})
	if w.state.Filter != "needs you" {
		t.Errorf("pasted %q", w.state.Filter)
	}
}

func TestShortcutsOfTheToolkitAreKeys(t *testing.T) {
	w := opened(t)
	var got []state.Msg
	w.stage.send = func(m state.Msg) { got = append(got, m) }
	for want, sc := range map[string]fyne.Shortcut{
		"C": &fyne.ShortcutCopy{}, "X": &fyne.ShortcutCut{}, "V": &fyne.ShortcutPaste{}, "A": &fyne.ShortcutSelectAll{},
		"Z": &fyne.ShortcutUndo{}, "Y": &fyne.ShortcutRedo{}, " ": &desktop.CustomShortcut{KeyName: fyne.KeySpace, Modifier: fyne.KeyModifierControl},
	} {
		got = nil
		w.stage.TypedShortcut(sc)
		if m, ok := got[0].(state.Keyed); len(got) != 1 || !ok || m.Key != want || m.Mods != state.Ctrl {
			t.Errorf("%T sends %v, want Ctrl and %q", sc, got, want)
		}
	}
	got = nil
	w.stage.TypedShortcut(&desktop.CustomShortcut{KeyName: fyne.KeyZ, Modifier: fyne.KeyModifierControl | fyne.KeyModifierShift})
	if m := got[0].(state.Keyed); m.Key != "Z" || m.Mods != state.Ctrl|state.Shift {
		t.Errorf("Ctrl, Shift and Z send %v", m)
	}
	got = nil
	w.stage.TypedRune('ł')
	if len(got) != 2 || got[0] != (state.Wrote{Rune: 'ł'}) {
		t.Errorf("a letter of AltGr sends %v", got)
	}
}

func TestTabAndArrowsKnowTheStops(t *testing.T) {
	w := opened(t)
	var got state.Keyed
	w.stage.send = func(m state.Msg) { got = m.(state.Keyed) }
	for _, k := range []fyne.KeyName{fyne.KeyTab, fyne.KeyUp, fyne.KeyRight} {
		w.stage.TypedKey(&fyne.KeyEvent{Name: k})
		if len(got.Stops) < 20 {
			t.Errorf("%s comes with %d stops", k, len(got.Stops))
		}
	}
	w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyHome})
	if got.Stops != nil {
		t.Error("Home comes with stops, which cost a walk over the scene")
	}
}

func TestAReasonIsToldWhenThePointerRests(t *testing.T) {
	w := opened(t)
	var later []func()
	w.stage.rest = func(d time.Duration, do func()) func() {
		if d != restTime {
			t.Errorf("the pointer rests for %v", d)
		}
		later = append(later, do)
		n := len(later) - 1
		return func() { later[n] = func() {} }
	}
	a1, a3 := w.nucAt(t, "A1"), w.nucAt(t, "A3")
	for _, p := range []scene.Point{a1, a3, a3.Add(scene.Point{X: 1})} {
		w.stage.MouseMoved(mouse(p, 0))
		if h := w.state.Hover; h.Ref != w.stage.tag(p).Ref || h.Reason != "" {
			t.Fatalf("over %v at once: %+v, want what it is and no reason", p, h)
		}
	}
	for _, do := range later {
		do()
	}
	if h := w.state.Hover; h != w.stage.tag(a3) || h.Reason == "" {
		t.Errorf("after a rest: %+v", h)
	}
	w.stage.MouseMoved(mouse(a3, 0))
	if w.state.Hover.Reason == "" {
		t.Error("moving within a nuc takes its reason away")
	}
	w.stage.MouseMoved(mouse(a1, 0))
	if w.state.Hover.Reason != "" {
		t.Error("over the next nuc a reason comes without a rest")
	}
}

// TestAPressHushesTheReason: what is told beside the pointer covers nothing after
// a press or a key, until the pointer moves.
func TestAPressHushesTheReason(t *testing.T) {
	for name, press := range map[string]func(*Window, scene.Point){
		"a press": func(w *Window, p scene.Point) { w.stage.MouseDown(mouse(p, 0)); w.stage.MouseUp(mouse(p, 0)) },
		"a key":   func(w *Window, _ scene.Point) { w.stage.TypedKey(&fyne.KeyEvent{Name: fyne.KeyDown}) },
		"a press before the pointer has rested": func(w *Window, p scene.Point) {
			w.stage.MouseMoved(mouse(p.Add(scene.Point{X: 400}), 0))
			w.stage.MouseMoved(mouse(p, 0))
			w.stage.MouseDown(mouse(p, 0))
			w.stage.MouseUp(mouse(p, 0))
		},
	} {
		w := opened(t)
		var later []func()
		w.stage.rest = func(_ time.Duration, do func()) func() {
			stopped := false
			later = append(later, func() {
				if !stopped {
					do()
				}
			})
			return func() { stopped = true }
		}
		rests := func() {
			for _, do := range later {
				do()
			}
			later = nil
		}
		a1 := w.nucAt(t, "A1")
		w.stage.MouseMoved(mouse(a1, 0))
		rests()
		if w.state.Hover.Reason == "" {
			t.Fatal("no reason is told")
		}
		press(w, a1)
		rests()
		if w.state.Hover.Reason != "" {
			t.Errorf("after %s %q is still told", name, w.state.Hover.Reason)
		}
		w.stage.MouseMoved(mouse(a1.Add(scene.Point{X: 1}), 0))
		rests()
		if w.state.Hover.Reason == "" {
			t.Errorf("after %s and a move no reason is told", name)
		}
	}
}

func TestPressesUponEachOtherAreCounted(t *testing.T) {
	w := opened(t)
	at := now
	w.stage.clock = func() time.Time { return at }
	var got []int
	w.stage.send = func(m state.Msg) {
		if m, ok := m.(state.Pressed); ok {
			got = append(got, m.Clicks)
		}
	}
	p := scene.Point{X: 300, Y: 300}
	for _, c := range []struct {
		p    scene.Point
		wait time.Duration
	}{{p, 0}, {p, 200 * time.Millisecond}, {p, time.Second}, {p.Add(scene.Point{X: 20}), 100 * time.Millisecond}} {
		at = at.Add(c.wait)
		w.stage.MouseDown(mouse(c.p, 0))
	}
	if want := []int{1, 2, 1, 1}; !slices.Equal(got, want) {
		t.Errorf("clicks are counted %v, want %v", got, want)
	}
}

func TestDialogsWearTheThemeOfTheScenes(t *testing.T) {
	for name, role := range roles {
		if (Theme{}).Color(name, 0) == (Theme{Dark: true}).Color(name, 0) && role != scene.None {
			t.Errorf("%v is the same by light and by dark", name)
		}
	}
}
