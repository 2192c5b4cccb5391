package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"

	"lidmark/domain/crew"
	"lidmark/storage"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// print makes a paper as a PDF file of its own in the folder of the book's papers,
// and has it shown. One of the same name, of the same day, gives way.
func (d *desk) print(ctx context.Context, e state.Print, tell func(state.Msg)) {
	folder, err := d.sheets()
	if err != nil {
		tell(bad("not printed: " + err.Error() + "; make room on the disk, or leave to write in the folder"))
		return
	}
	path, pages := filepath.Join(folder, e.Name+".pdf"), 0
	err = storage.WriteFile(path, func(w io.Writer) (err error) {
		pages, err = writePaper(ctx, w, e, d.options(e))
		return err
	})
	if err != nil {
		tell(bad("not printed: " + stopped(ctx, err, e.Name).Error()))
		return
	}
	tell(state.Worked{Note: state.Note{Text: fmt.Sprintf("%s: %s, to be printed from %s", e.Name, pagesWord(pages), path)}, Show: path})
}

// sheets is the folder of the papers of the open book: beside it, like its copies.
// Those of the demo season are gone when the program ends.
func (d *desk) sheets() (string, error) {
	if o := d.opened(); o != nil && o.file != nil {
		path := o.file.Path()
		folder := strings.TrimSuffix(path, filepath.Ext(path)) + ".sheets"
		return folder, os.MkdirAll(folder, 0o777)
	}
	d.mu.Lock()
	defer d.mu.Unlock()
	var err error
	if d.demoSheets == "" {
		d.demoSheets, err = os.MkdirTemp("", "lidmark-")
	}
	return d.demoSheets, err
}

func pagesWord(n int) string {
	if n == 1 {
		return "1 page"
	}
	return fmt.Sprintf("%d pages", n)
}

// options are how the keeper wants papers.
func (d *desk) options(e state.Print) paper.Options {
	o := paper.Options{Large: e.Large, Say: e.Units.Say, Units: e.Units, Book: e.Book, Printed: d.clock()}
	if e.Letter {
		o.Page = paper.Letter
	}
	return o
}

// writePaper writes the paper that is asked for.
func writePaper(ctx context.Context, w io.Writer, e state.Print, o paper.Options) (pages int, err error) {
	switch e.Paper {
	case state.DensePaper:
		return paper.Dense(ctx, w, e.Reading, e.Yard, o)
	case state.BatchPaper:
		return paper.Batch(ctx, w, e.Reading, e.Batches[0], o)
	case state.WalletPaper:
		return paper.Wallet(ctx, w, e.Reading, o, e.Batches...)
	case state.LabelsPaper:
		return paper.Labels(ctx, w, e.Reading, e.Yard, 0, o)
	case state.WeekPaper:
		return paper.Week(ctx, w, e.Reading, o)
	case state.PlanPaper:
		return paper.Plan(ctx, w, e.Reading, e.Batches[0], o)
	case state.BuyingPaper:
		return paper.Buying(ctx, w, e.Reading, o)
	case state.CagesPaper:
		return paper.Cages(ctx, w, e.Reading, e.Order, 0, o)
	case state.CrewPaper:
		return crewPaper(ctx, w, e, o)
	case state.LayoutPaper:
		return paper.Layout(ctx, w, e.Reading, e.Layout, o)
	default:
		return paper.Route(ctx, w, e.Reading, e.Yard, o)
	}
}

// crewPaper writes a sheet for each person, in as many vans as was said.
func crewPaper(ctx context.Context, w io.Writer, e state.Print, o paper.Options) (pages int, err error) {
	r := e.Reading
	day, known := r.Crew(e.Less)
	if !known {
		day, err = crew.Plan(r.Judged(), r.Day, crew.HandsOf(r.View, r.Day, 1, float64(e.Hours)))
	}
	if err != nil {
		return 0, err
	}
	return paper.Crew(ctx, w, r, day, o)
}
