package main

import (
	"context"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"lidmark/storage"
	"lidmark/ui/paper"
	"lidmark/ui/state"
)

// print makes a paper as a PDF file of its own, and has it shown.
func (d *desk) print(ctx context.Context, e state.Print, tell func(state.Msg)) {
	folder, err := os.MkdirTemp("", "lidmark-")
	if err != nil {
		tell(bad("not printed: " + err.Error()))
		return
	}
	path, pages := filepath.Join(folder, e.Name+".pdf"), 0
	err = storage.WriteFile(path, func(w io.Writer) (err error) {
		pages, err = writePaper(ctx, w, e, d.options(e))
		return err
	})
	if err != nil {
		_ = os.RemoveAll(folder) // nothing of it is kept
		tell(bad("not printed: " + stopped(ctx, err, e.Name).Error()))
		return
	}
	tell(state.Worked{Note: state.Note{Text: fmt.Sprintf("%s: %s, opened to be printed", e.Name, pagesWord(pages))}, Show: path})
}

func pagesWord(n int) string {
	if n == 1 {
		return "1 page"
	}
	return fmt.Sprintf("%d pages", n)
}

// options are how the keeper wants papers.
func (d *desk) options(e state.Print) paper.Options {
	o := paper.Options{Large: e.Large, Book: e.Book, Printed: d.clock()}
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
	default:
		return paper.Route(ctx, w, e.Reading, e.Yard, o)
	}
}
