package main

import (
	"bytes"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
	"time"
)

// reads is how each reading command is asked of the demo season.
var reads = map[string][]string{
	"today": nil, "needs": {"--all"}, "nuc": {"A3"}, "nucs": nil, "batch": {"5"}, "batches": nil, "queen": {"Plover 6"},
	"colony": {"S8"}, "late": nil, "close": {"yesterday"}, "trace": {"S8"}, "numbers": {"--all"}, "plan": nil, "buying": nil, "orders": nil, "orders NUMBER": {"31"}, "lines": nil, "weather": nil,
	"may": {"A1 s5"}, "wish": {"--queens", "20", "--until", "2027-07-20"}, "turn": {"--until", "2027-08-31"}, "drones": nil, "season": {"--search"}, "ground": nil, "round": {"--yard", "Hollin Ledge"}, "layout": {"--yard", "Hollin Ledge", "--improve", "turn", "--tries", "2000", "--less", "1"}, "layout compare": {"compare", "--yard", "Hollin Ledge"}, "handover": nil, "sold": nil, "claims": nil, "kin": {"Plover 6"}, "day": nil, "review": nil, "course": {"A3"}, "strength": nil, "enough": {"--cups", "3", "--nucs", "40", "--thin"}, "clock": {"--graft", "2027-05-05 18:00"},
}

// morning is when the tests run the program.
var morning = time.Date(2027, time.May, 11, 7, 0, 0, 0, time.UTC)

// call runs the program on the morning of 11 May 2027.
func call(t *testing.T, in string, asks bool, args ...string) (out, errs string, code int) {
	t.Helper()
	var o, e bytes.Buffer
	a := &app{
		now: morning, in: strings.NewReader(in), out: &o, errs: &e,
		env: func(string) string { return "" }, asks: asks,
	}
	err := a.execute(args)
	if err != nil {
		fmt.Fprint(a.errs, a.explain(err))
	}
	return o.String(), e.String(), exitCode(err)
}

// Every reading command prints JSON that has exactly the promised names.
func TestJSONHasThePromisedNames(t *testing.T) {
	for name := range shapes {
		if _, ok := reads[name]; !ok {
			t.Errorf("no test reads %s as JSON", name)
		}
	}
	for name, args := range reads {
		command, _, _ := strings.Cut(name, " ")
		args = append([]string{command}, args...)
		args = append(args, "--json")
		if name != "clock" {
			args = append(args, "--demo")
		}
		out, errs, code := call(t, "", false, args...)
		if code != 0 {
			t.Errorf("lidbook %s: exit code %d: %s", strings.Join(args, " "), code, errs)
			continue
		}
		d := json.NewDecoder(strings.NewReader(out))
		d.DisallowUnknownFields()
		into := reflect.New(reflect.TypeOf(shapes[name]))
		if err := d.Decode(into.Interface()); err != nil {
			t.Errorf("lidbook %s: %v", strings.Join(args, " "), err)
		}
		if into.Elem().IsZero() {
			t.Errorf("lidbook %s: nothing in it", strings.Join(args, " "))
		}
	}
}

// The names are promised to stay: taking one out or changing it must be meant.
func TestNamesStay(t *testing.T) {
	golden := filepath.Join("testdata", "json.golden")
	got, _, code := call(t, "", false, "json")
	if code != 0 {
		t.Fatalf("lidbook json: exit code %d", code)
	}
	if os.Getenv("UPDATE") != "" {
		if err := os.WriteFile(golden, []byte(got), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("lidbook json differs from %s; run with UPDATE=1 and look at the difference:\n%s", golden, got)
	}
}
