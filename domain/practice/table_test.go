package practice

import "testing"

// TestADoubledKeyIsCaught: a row whose key another has would put that out.
func TestADoubledKeyIsCaught(t *testing.T) {
	defer func() {
		const want = "practice: take and luck have one key"
		if got := recover(); got != want {
			t.Errorf("%v, want a panic: %s", got, want)
		}
	}()
	layOut([]list{{Rates, []Number{{Key: Take, Name: "take"}}}, {Times, []Number{{Key: Take, Name: "luck"}}}})
}
