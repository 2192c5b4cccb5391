package storage

import (
	"path/filepath"
	"testing"
)

// What is said to be written has reached the disk: that rests on these
// settings of the one connection that writes, so they are asked of it and
// spelled out here, not taken from the code.
func TestTheWriterWaitsForTheDisk(t *testing.T) {
	b, err := Create(filepath.Join(t.TempDir(), "safe"+Extension))
	if err != nil {
		t.Fatal(err)
	}
	defer func() { _ = b.Close() }()
	for pragma, want := range map[string]string{
		"journal_mode": "wal", "synchronous": "2", "foreign_keys": "1", "fullfsync": "1", "checkpoint_fullfsync": "1",
	} {
		var got string
		if err := b.write.QueryRow("PRAGMA " + pragma).Scan(&got); err != nil || got != want {
			t.Errorf("%s is %s, %v; want %s", pragma, got, err, want)
		}
	}
	if got := b.write.Stats().MaxOpenConnections; got != 1 {
		t.Errorf("%d connections write, want one", got)
	}
	var readOnly string
	if err := b.read.QueryRow("PRAGMA query_only").Scan(&readOnly); err != nil || readOnly != "1" {
		t.Errorf("query_only of a reader is %s, %v; want 1", readOnly, err)
	}
}
