package weatherfile

import (
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/natefinch/atomic"

	"lidmark/domain/series"
)

// Recall is the choice that was last made for a file with these headings, as kept
// in a file; else the one that its headings suggest. A file of choices that is not
// there, or damaged, suggests nothing.
func Recall(f *series.File, kept string) series.Choice {
	if text, ok := choices(kept)[f.Key()]; ok {
		if c, err := series.ParseChoice(text); err == nil && len(c.Columns) <= len(f.Headings) {
			return c
		}
	}
	return series.Guess(f.Headings)
}

// Remember keeps a choice for files with the same headings, by [series.File.Key]. The folder is made if
// need be.
func Remember(kept, key string, c series.Choice) error {
	all := choices(kept)
	if all == nil {
		all = map[string]string{}
	}
	all[key] = c.String()
	text, err := json.MarshalIndent(all, "", "  ")
	if err == nil {
		err = os.MkdirAll(filepath.Dir(kept), 0o700)
	}
	if err == nil {
		err = atomic.WriteFile(kept, strings.NewReader(string(text)+"\n"))
	}
	if err != nil {
		return fmt.Errorf("%s: the choice of columns is not remembered: %w", kept, err)
	}
	return nil
}

// choices are those kept, by headings; nil where there are none.
func choices(kept string) (all map[string]string) {
	text, err := os.ReadFile(kept)
	if errors.Is(err, fs.ErrNotExist) || err == nil && json.Unmarshal(text, &all) != nil {
		return nil
	}
	return all
}
