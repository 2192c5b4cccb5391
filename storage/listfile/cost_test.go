package listfile_test

import (
	"bytes"
	"testing"

	"lidmark/storage/listfile"
)

// A row costs the text it stands in, its cells, and little besides.
func TestARowIsCheap(t *testing.T) {
	text := asText(long(1000))
	got := testing.AllocsPerRun(5, func() {
		if _, err := listfile.Read("list", bytes.NewReader(text), ""); err != nil {
			t.Fatal(err)
		}
	})
	if perRow := got / 1000; perRow > 10 {
		t.Errorf("%.1f allocations a row, want 10 at most", perRow)
	}
}
