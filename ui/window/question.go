package window

import (
	"fyne.io/fyne/v2"
	"fyne.io/fyne/v2/container"
	"fyne.io/fyne/v2/dialog"
	"fyne.io/fyne/v2/layout"
	"fyne.io/fyne/v2/widget"
)

// question is a dialog of ours, which takes the keys: Esc leaves it, Enter
// confirms in a field and presses a button, Tab goes on.
type question struct{ *dialog.CustomDialog }

// leaver is what Esc has to reach in a question.
type leaver interface{ leaves(func()) }

// ask opens a question with fields; confirmed it goes on. The first of parts has
// the keys, else Cancel.
func (w *Window) ask(title, yes string, items []*widget.FormItem, goOn func(), parts ...leaver) *question {
	q := &question{}
	confirm := func() { q.Dismiss(); goOn() }
	cancel := newButton("Cancel", func() { q.Dismiss() })
	choose := newButton(yes, confirm)
	choose.Importance = widget.HighImportance
	buttons := container.NewHBox(layout.NewSpacer(), cancel, choose, layout.NewSpacer())
	q.CustomDialog = dialog.NewCustomWithoutButtons(title, container.NewVBox(widget.NewForm(items...), buttons), w.window)
	parts = append(parts, cancel, choose)
	for _, p := range parts {
		p.leaves(func() { q.Dismiss() })
		if e, ok := p.(*entry); ok {
			e.OnSubmitted = func(string) { confirm() }
		}
	}
	q.Resize(fyne.NewSize(560, 260))
	w.escapes(q)
	q.Show()
	if first, ok := parts[0].(fyne.Focusable); ok {
		w.window.Canvas().Focus(first)
	}
	return q
}

// escapes has Esc leave a dialog in which nothing has the keys, and gives them
// back to the question below, or to the stage, when it is closed.
func (w *Window) escapes(d dialog.Dialog) {
	c := w.window.Canvas()
	before := c.OnTypedKey()
	c.SetOnTypedKey(func(k *fyne.KeyEvent) {
		if k.Name == fyne.KeyEscape {
			d.Dismiss()
		}
	})
	d.SetOnClosed(func() {
		c.SetOnTypedKey(before)
		if !w.covered() {
			c.Focus(w.stage)
		}
	})
}

// covered tells whether a dialog lies over the stage: then nothing reaches it.
func (w *Window) covered() bool { return w.window.Canvas().Overlays().Top() != nil }

// entry is a field of a question.
type entry struct {
	widget.Entry
	left func()
}

func newEntry(text string) *entry {
	e := &entry{left: func() {}}
	e.ExtendBaseWidget(e)
	e.SetText(text)
	return e
}

func (e *entry) leaves(left func()) { e.left = left }

// TypedKey takes a key; the toolkit's own field swallows Esc.
func (e *entry) TypedKey(k *fyne.KeyEvent) {
	if k.Name == fyne.KeyEscape {
		e.left()
		return
	}
	e.Entry.TypedKey(k)
}

// button is a button of a question.
type button struct {
	widget.Button
	left func()
}

func newButton(word string, does func()) *button {
	b := &button{left: func() {}}
	b.ExtendBaseWidget(b)
	b.SetText(word)
	b.OnTapped = does
	return b
}

func (b *button) leaves(left func()) { b.left = left }

// TypedKey takes a key; the toolkit's own button knows Space alone.
func (b *button) TypedKey(k *fyne.KeyEvent) {
	switch k.Name {
	case fyne.KeyEscape:
		b.left()
	case fyne.KeyReturn, fyne.KeyEnter:
		b.OnTapped()
	default:
		b.Button.TypedKey(k)
	}
}
