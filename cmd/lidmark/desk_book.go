package main

import (
	"context"
	"fmt"
	"path/filepath"
	"runtime/debug"
	"slices"

	"lidmark/assets"
	"lidmark/storage"
	"lidmark/ui/state"
)

// doBook does what the room Book asks for, and tells whether the effect is one of
// those.
func (d *desk) doBook(e state.Effect, tell func(state.Msg)) bool {
	var do func(context.Context, func(state.Msg))
	switch e := e.(type) {
	case state.FindCopies:
		do = d.findCopies
	case state.CopyBook:
		do = func(ctx context.Context, tell func(state.Msg)) { d.copyBook(ctx, e.To, tell) }
	case state.RestoreCopy:
		do = func(ctx context.Context, tell func(state.Msg)) { d.restore(ctx, e, tell) }
	case state.TakeIn:
		do = func(ctx context.Context, tell func(state.Msg)) { d.takeIn(ctx, e.Path, tell) }
	case state.TakeOut:
		do = func(_ context.Context, tell func(state.Msg)) { d.takeOut(e, tell) }
	case state.CheckBook:
		do = d.checkBook
	case state.ReadLicences:
		do = func(_ context.Context, tell func(state.Msg)) { tell(licences()) }
	default:
		return false
	}
	d.work(tell, do)
	return true
}

// ofFile is the open book and its file; it tells where there is none.
func (d *desk) ofFile(tell func(state.Msg)) (*opened, bool) {
	o := d.opened()
	if o == nil || o.file == nil {
		tell(bad("the demo season is kept in no file: start a book of your own first"))
		return nil, false
	}
	return o, true
}

// findCopies tells which copies the book has, the latest first.
func (d *desk) findCopies(_ context.Context, tell func(state.Msg)) {
	o, ok := d.ofFile(tell)
	if !ok {
		return
	}
	found := state.CopiesFound{Path: o.now().Path}
	for _, c := range slices.Backward(storage.Copies(o.file.Path())) {
		found.All = append(found.All, state.KeptCopy{Path: c.Path, Made: c.Made, Entries: c.Entries})
	}
	tell(found)
}

// copyBook makes a checked copy in a file, or with no name among the copies.
func (d *desk) copyBook(ctx context.Context, to string, tell func(state.Msg)) {
	o, ok := d.ofFile(tell)
	if !ok {
		return
	}
	tell(state.Working{Words: "copying " + o.now().Name, Share: -1})
	var err error
	if to == "" {
		to, err = o.file.CopyNow(ctx, d.clock())
	} else {
		err = o.file.Copy(ctx, to)
	}
	if err != nil {
		tell(bad(stopped(ctx, err, "no copy was made").Error()))
		return
	}
	tell(good("copied to " + filepath.Base(to) + " and read through"))
	d.findCopies(ctx, tell)
}

// restore makes a new book of a copy and opens it. The copy stays what it is.
func (d *desk) restore(ctx context.Context, e state.RestoreCopy, tell func(state.Msg)) {
	tell(state.Working{Words: "restoring " + nameOf(e.Copy), Share: -1})
	from, err := storage.Open(e.Copy, storage.Options{ReadOnly: true, Now: d.clock})
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	err = from.Copy(ctx, e.To)
	_ = from.Close() // it was only read
	if err != nil {
		tell(bad(stopped(ctx, err, "nothing was restored").Error()))
		return
	}
	d.openBook(ctx, e.To, tell)
}

// checkBook reads the whole book and tells what is wrong with it.
func (d *desk) checkBook(ctx context.Context, tell func(state.Msg)) {
	o, ok := d.ofFile(tell)
	if !ok {
		return
	}
	tell(state.Working{Words: "checking " + o.now().Name, Share: -1})
	problems := o.file.Verify(ctx)
	switch {
	case ctx.Err() != nil:
		tell(bad("stopped: the book was not checked to its end"))
	case len(problems) == 0:
		tell(good("the whole book was read: all is well"))
	default:
		tell(bad(fmt.Sprintf("%s; %d such in all: restore a copy, and keep this file", problems[0], len(problems))))
	}
}

// licences are those of the program and of all in it, with its version.
func licences() state.LicencesRead {
	m := state.LicencesRead{Version: version(debug.ReadBuildInfo)}
	for _, l := range assets.Licences() {
		m.All = append(m.All, state.Licence{Of: l.Of, Terms: l.Terms, Text: l.Text})
	}
	return m
}

// version is the version of the program, or the revision it was built from; ""
// where the build knows neither.
func version(read func() (*debug.BuildInfo, bool)) string {
	info, ok := read()
	if !ok {
		return ""
	}
	if v := info.Main.Version; v != "" && v != "(devel)" {
		return v
	}
	const figures = 12 // as many tell one revision from all others
	for _, set := range info.Settings {
		if set.Key == "vcs.revision" {
			return "revision " + set.Value[:min(figures, len(set.Value))]
		}
	}
	return ""
}
