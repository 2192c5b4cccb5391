package picture_test

import (
	"testing"
	"time"
	_ "time/tzdata"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/ui/picture"
	"lidmark/ui/state"
)

func demoState(t *testing.T) state.State {
	t.Helper()
	now := time.Date(2027, 5, 11, 7, 30, 0, 0, time.UTC)
	season := book.NewSeason(time.LoadLocation, demo.Season(calendar.DayOf(now, time.UTC), time.UTC))
	return state.State{Book: &state.Book{Season: season, Name: "demo"}, Now: now, Width: 1440, Height: 900}
}

// Every room in every dress covers the whole picture with opaque pixels, and
// no two rooms look the same.
func TestEveryRoomIsPainted(t *testing.T) {
	seen := map[string]string{}
	for _, room := range picture.Rooms() {
		for _, dark := range []bool{false, true} {
			s, err := picture.Enter(demoState(t), room)
			if err != nil {
				t.Fatal(err)
			}
			s.Dark = dark
			img, err := picture.Of(s, 1)
			if err != nil {
				t.Fatal(err)
			}
			for i := 3; i < len(img.Pix); i += 4 {
				if img.Pix[i] != 255 {
					t.Fatalf("%s, dark %v: pixel %d is not painted", room, dark, i/4)
				}
			}
			if other, twice := seen[string(img.Pix)]; twice {
				t.Errorf("%s looks just like %s", room, other)
			}
			seen[string(img.Pix)] = room
		}
	}
}

func TestPicturesGrowWithTheScale(t *testing.T) {
	img, err := picture.Of(demoState(t), 1.5)
	if err != nil {
		t.Fatal(err)
	}
	if got := img.Rect.Size(); got.X != 2160 || got.Y != 1350 {
		t.Errorf("the picture is %v, want 2160 x 1350", got)
	}
}

func TestAnUnknownRoomSaysWhichThereAre(t *testing.T) {
	if _, err := picture.Enter(state.State{}, "attic"); err == nil {
		t.Error("there is a room called attic")
	}
}
