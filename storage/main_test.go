package storage

import (
	"testing"

	"lidmark/storage/childtest"
)

// children are the parts that the test program plays in another process.
var children = childtest.Parts{}

func TestMain(m *testing.M) { children.Main(m) }
