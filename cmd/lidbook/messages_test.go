package main

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// asBefore are the commands that make the book in which the messages are
// provoked; none of them fails.
const asBefore = `
new hill --yard Hill --zone Europe/Berlin --boxes A1-A6 --sides 6 --since 2027-03-01 --person Ida --person Jon
add yard 'Far Hill'
add boxes A1 --yard 'Far Hill'
add colony S2 --role finisher
add queen 'Rook 1' --line Rook
add queen 'Rook 2' --line Rook
graft --larvae 20 --on '2027-04-10 18:00'
graft --larvae 24 --on '2027-05-05 18:00'
graft --larvae 5 --on '2027-05-06 18:00' --batch 7
count 7 --culled 5
move 2 incubator
order 12 --customer Club --queens 4 --until 2027-06-20
order 14 --customer Anna --queens 1 --until 2027-06-20
order 14 --close 'called off'
cage 1 88
makeup A3 A5 --cups 3 --on 2027-05-01
write --yes 'A3 q e'
write --yes 'A5 q e'
plan batch --on 2027-06-01 --larvae 20 --line Linnet
plan batch --on 2027-06-08 --larvae 20 --line Linnet
hours Jon 2027-06-02 8-12
add yard 'Bare Hill'
add boxes Y7 --yard Hill
ground draw hedge 0,9 9,9 --label long
ground draw hedge 0,8 9,8
ground draw hedge 0,7 9,7
layout try 'by the hedge'
layout try second
layout try empty --yard 'Bare Hill'
`

// wrong are commands that each provoke a message, by what is wrong.
const wrong = `
# not understood
frobnicate
todya
day --hours 25
day --rain-until three
export nucs --to a.doc
export jsonl --to a.xlsx
print dense -o a.doc
calendar a.txt
queen 'A3 A5'
turn --from 2027-12-01
day --vans 101
nuc
suspect
nuc A3 A4
nuc A3 --on 2027-02-01
today --book
nucs A3
add nosuch
count 2 --take abc
count 2 --take
graft --larvae 2.5
graft --larvae 9000000000000000000
graft --larvae 5 --age old
graft --larvae 5 --age -5h
graft --larvae 5 --bars -3
makeup A1 --cups NaN
today --demo=maybe
today -5
bank -5
today --nonsense
today --now x
help nosuch
json nosuch
export nosuch
export orders --search
clock
new
print
print route
print poster -o a.pdf
print batch -o a.pdf
print route 2 -o a.pdf
print route --page a5 -o a.pdf
print labels --skip 99 -o a.pdf
print batch 9 -o a.pdf
print dense --yard nowhere -o a.pdf
print plan -o a.pdf
print plan -o a.pdf --on 2027-03-02
print cages 12 13 -o a.pdf
print cages 99 -o a.pdf

# days and times
today --on someday
today --known someday
today --on +99999999
today --on '2027-05-10 25:00'
today --on '2027-03-28 02:30'
today --on '2026-10-25 02:30'
today --on 2027-02-30
graft --larvae 5 --on yesterday
graft --larvae 5 --on '+1 18:00'
note A3 text --on someday
clock someday
clock 2027-05-05
late --graft '2027-05-05 18:00'
late --graft '2027-05-05 18:00' --on someday
late --next someday
late --next tomorrow
late --next '2027-05-01 18:00'
late 7
enough
weather + --from someday
review --by someday
review --by yesterday
off Ida 2027-05-20 2027-05-10
hours Ida someday 8-12
hours Ida tomorrow 20:00-18:00
plan batch --on someday --larvae 20
plan batch --on 2047-04-19 --larvae 20
plan batch --on yesterday --larvae 20
plan batch --on +14 --larvae 20 --queens 5 --until +10
plan batch --on +14 --larvae 20 --sure 100
plan batch --on +14 --larvae 20 --until someday
plan batch --larvae 20
plan batch --on +14
plan batch --on +14 --larvae 20 --nucs 99999
plan move 2027-06-19 +3
export nucs 4
export plan 2027-06-19
plan for 2027-06-08 --order 99
plan for 2027-06-08
plan drop Linnet
ready 2027-06-19 paint
move 'batch of Tue 8 Jun' incubator
putoff 'batch of Tue 8 Jun' 'planned step' +3
graft --plan 2027-06-19
wish --queens 40
wish --until +60
wish --queens 40 --until someday
wish --queens 40 --until yesterday
wish --queens 40 --until 2047-05-31
wish --queens 4000 --until +60
wish --queens 40 --until +60 --sure 100
wish --queens 40 --until +60 --larvae eighty
wish --queens 40 --until +60 --larvae 80,3000
wish --queens 40 --until +60 --larvae 80,60 --grafts 3
wish --queens 40 --graft 2026-05-31
wish --queens 40 --until +60 --yard Nowhere
calendar --days 99999999 a.ics

# names
nuc Z9
nuc A1
nuc A1-A3 --yard Hill
nuc nowhere
batch 9
batch nine
colony S9
today --on 2027-05-11 --book nosuch.lidmark
handover 'Rook 9'
handover A3
putin 'Rook 1' A3,A4
feed 'No such' --litres 1
feed A1 --litres 1
feed S2,Z9 --litres 1
add yard Hill
add yard ''
add boxes A3-A4 --yard Hill
add boxes O1-O4
add boxes ,
add boxes B1 --nucs-per-box 0
add boxes B1 --nucs-per-box 99
add boxes B1 --at here
add boxes B1 --kind huge
add boxes B1 --sides 999
add boxes B1 --facing up
add combs A3
add person 'Ida Mon'
add person 'Ida Mon 20:00-18:00'
add person ''
add yard Third --zone Local
place A3 B
place A3 A
place A3 A 99
inspected A3 fine
putoff A3 'no such rule' +1
order 12
order 12 --customer Anna --queens 4 --until 2027-06-20
order 12 --from 2027-07-01
order 15 --customer Club --queens 4 --until 2027-06-20 --or Siskin
order 14 --queens 2
order 13 --customer Club
bank S2 'Rook 1'
claim 12 9 dead
claim 12 nine dead
kin Nobody
kin S2
kin 'Rook 1' --yard Nowhere
day --without Nobody
day --on 2027-05-02
handover Nobody
handover 88 --order 12
handover 7 --demo
review --accept all --demo
claim 12 1
claim 12 1 --how late
claim 12 1 --how superseded --queen 'Rook 1' --queen 'Rook 2'
claim 12 1 dead --queen 'Rook 1'
order 13 --customer Club --queens 4 --until 2027-06-20 --journey 99
note A3 text --by Nobody
strike ffffffff
strike 0
wish --queens 5 --until 2027-07-20 --line Nosuch
wish --queens 5 --until 2027-07-20 --line Nosuch --demo

# amounts
graft --larvae 0
graft --larvae 1000000000
graft --larvae 5 --batch 99999999
makeup A1 --cups 1e308 --yard Hill
count 2 --take 99
count 2
move 2 incubator
cage 2 many
along none cells
along 4 cells
clock '2027-05-05 18:00' --cells 0
entrance A3 wide
brood S2
feed S2
tested 'Rook 1' gentleness much
numbers set nonsense 4
numbers set emergence_spread much
numbers set emergence_spread 400
numbers set emergence_spread 9 crowns
weather '+?'
weather ++++++++++++++++++++++++++++
weather + +
weather --back 5000
weather normal Mai --low 8
weather normal May --wind 3
weather normal May --low 20 --high 10
weather normal May --low 80
note A3 "bell\a"

# files
new . --yard Hill --zone UTC
new second --yard Hill --zone Nowhere/Land
new second --yard Hill --zone UTC --boxes O1
new second --yard Hill --zone UTC --person 'Ida Mon 20:00-18:00'
new second --yard Hill --zone UTC --since 2028-01-01
new hill --yard Hill --zone UTC
copy a2
import .
import nosuch.jsonl
import bad.jsonl
import long.jsonl
import nosuch.csv
import list.csv
import list.csv --columns nuc,weather
import list.csv --dates sometimes
import list.csv --grafted 4
import list.csv --grafted 4=soon
import list.csv --skip two
import slips.csv
import weather nosuch.csv
import weather list.csv
import weather hot.csv
import weather hot.csv --columns time,warmth
import weather letters.csv
import weather cut.json
import weather warm.csv
import slash.csv
import letters.csv

# the ground of a yard
ground in walk.gpx
ground in walk.gpx --lat 50.1
ground in walk.gpx --lat 50.1 --lon 200
ground in walk.gpx --lat 50.1 --lon 8.2
ground in walk.gpx --lat 50.1 --lon 8.2 --points moat
ground in walk.gpx --lat 50.1 --lon 8.2 --lines moat
ground in walk.gpx --lat 8.2 --lon 50.1 --points tree
ground in walk.gpx --lat 50.1 --lon 8.3 --points tree
ground in walk.gpx --lat 50.1 --lon 12.3 --points tree
ground in walk.gpx --lat 50.1 --lon 8.2 --points tree
ground out - --coarse --no-positions
layout --improve paint
layout --improve turn --mark "blue disc"
layout --improve turn --mark "some blue disc"
ground draw moat 1,1
ground draw hedge 1,1
ground draw hedge 1;1 2,2
ground draw hedge 1,1 20000,2
ground wipe hedge
ground wipe wall
ground wipe hedge --yard 'Far Hill'
ground wind 400
yard place north 8
yard place 95 8

# layouts
layout set A --turn 9
layout set A --turn 9 --yard 'Far Hill'
layout compare nosuch
layout plan second
layout plan second --from someday
layout try ''
layout try second
layout try third --improve turn --tries 20 --yard 'Far Hill'
layout set A --in second
layout set A --in second --at here
layout set A --in second --facing up
layout set A --in second --rows many
layout set A Y --in second --rows '1 x 1, 6 m'
layout set A --in second --mark blue
layout set A --in second --turn 9 --places 4
layout set Q --in second --turn 9
layout set Q --in second --turn 9 --places 4
layout set A Q --in second --at 1,1 --places 4
layout set A Y --in second --at 1,1
layout set Q --turn 9 --yard 'Bare Hill'
print layout one two -o a.pdf
print layout --scale 1:x -o a.pdf
print layout --peg 'long 1' -o a.pdf
print layout --peg 'long 1' --peg post -o a.pdf
print layout --peg 1,1 --peg post -o a.pdf --yard 'Far Hill'
print layout --peg 1,1 --peg 1.2,1 -o a.pdf
print layout -o a.pdf --yard 'Bare Hill'
print fronts -o a.pdf

# refused
write 'A3 q e'
write --yes 'A3 q s9'
may 'A3 c2'
`

// unprovoked are messages that no command here brings about, and why.
var unprovoked = map[string]string{
	"what was to be read here could not be written": "a full disk, in TestFullOutput",
	"go on with a copy, they stand in":              "a broken book",
	"the questions were left, no book was begun":    "a dialogue, in TestDialogue",
	"combs %q: write a kind like mini":              "a dialogue, in TestDialogue",
	"and no other is called so":                     "queens caught without a number, in testdata",
	"by the book %s none":                           "queens who lack what is ordered, in testdata",
	"nothing is written yet that could be struck":   "a book without entries",
	"what was written last is a yard":               "a book just begun, in testdata",
	"a yard needs a name":                           "a dialogue asks for it",
	"no yard in the book":                           "a book without a yard",
	"no book here":                                  "a folder without a book, in testdata",
	"books here":                                    "a folder of two books, in testdata",
	"%ss are called":                                "two yards of one name come from two copies of a book",
	"there is none in the book on that day":         "an empty book, in testdata",
	"say with --sheet which is the list":            "a workbook of several sheets",
	"%s: it cannot be read (%w): check that its disk is there and that you may read it": "a file that may not be read",
}

// Every message of the program, to be read as prose when one changes.
func TestMessages(t *testing.T) {
	golden, err := filepath.Abs(filepath.Join("testdata", "messages.golden"))
	if err != nil {
		t.Fatal(err)
	}
	sources := literals(t)
	t.Chdir(t.TempDir())
	write(t, "bad.jsonl", "{\"format\":\"lidmark entries\",\"version\":1}\n{\"id\":\"no id\"}\n")
	write(t, "list.csv", "Nuc,Holds\nA4,E\n")
	write(t, "hot.csv", "time,temp\n2027-05-10 12:00,71\n")
	write(t, "warm.csv", "time,temp\n2027-05-10 12:00,21\n")
	write(t, "cut.json", "{\"hourly\":{")
	write(t, "slips.csv", "Nuc,Holds,Sides\nA4,C,4\nO1,E,many\n")
	write(t, "slash.csv", "Nuc,Eggs\nA4,2/5/2027\n")
	write(t, "letters.csv", "Nuc,Note\nA4,M\xfchle\n")
	write(t, "walk.gpx", `<gpx><wpt lat="50.1" lon="8.2"><name>plum</name></wpt></gpx>`)
	write(t, "long.jsonl", strings.Repeat("x", 1<<25))
	for _, args := range commandLines(t, asBefore) {
		if out, errs, code := call(t, "", false, args...); code != 0 {
			t.Fatalf("lidbook %q = %d\n%s%s", args, code, out, errs)
		}
	}
	var got strings.Builder
	for typed := range strings.SplitSeq(strings.TrimSpace(wrong), "\n") {
		if typed == "" || typed[0] == '#' {
			fmt.Fprintf(&got, "%s\n", typed)
			continue
		}
		out, errs, code := call(t, "", false, commandLines(t, typed)[0]...)
		if code == 0 {
			t.Errorf("lidbook %s is understood:\n%s", typed, out)
		}
		fmt.Fprintf(&got, "$ lidbook %s\n%s\n[%d]\n", typed, strings.TrimRight(errs, "\n"), code)
	}
	if os.Getenv("UPDATE") != "" {
		write(t, golden, got.String())
	}
	want, err := os.ReadFile(golden)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), got.String()); diff != "" {
		t.Errorf("the messages differ from testdata/messages.golden; run with UPDATE=1 and read them:\n%s", diff)
	}
	for _, text := range sources {
		if !provoked(text, got.String()) {
			t.Errorf("no command here provokes %q", text)
		}
	}
}

func provoked(text, all string) bool {
	for part := range unprovoked {
		if strings.Contains(text, part) {
			return true
		}
	}
	longest := slices.MaxFunc(verbs.Split(text, -1), func(a, b string) int { return len(a) - len(b) })
	return strings.Contains(all, longest)
}

var verbs = regexp.MustCompile(`%(\[\d\])?[a-zA-Z0-9.]*[a-z]`)

// literals are the texts of all errors the program makes.
func literals(t *testing.T) (all []string) {
	t.Helper()
	files, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range files {
		if strings.HasSuffix(file, "_test.go") {
			continue
		}
		f, err := parser.ParseFile(token.NewFileSet(), file, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(f, func(n ast.Node) bool {
			c, ok := n.(*ast.CallExpr)
			if !ok || len(c.Args) == 0 || !makesError(c.Fun) {
				return true
			}
			if lit, ok := c.Args[0].(*ast.BasicLit); ok {
				text, err := strconv.Unquote(lit.Value)
				if err != nil {
					t.Fatal(err)
				}
				all = append(all, text)
			}
			return true
		})
	}
	if len(all) < 80 {
		t.Errorf("only %d messages were found", len(all))
	}
	return all
}

func makesError(fun ast.Expr) bool {
	switch f := fun.(type) {
	case *ast.Ident:
		return f.Name == "refuse"
	case *ast.SelectorExpr:
		return f.Sel.Name == "Errorf" || f.Sel.Name == "New"
	}
	return false
}

// commandLines parts lines into words; what stands in quotes is one.
func commandLines(t *testing.T, text string) (all [][]string) {
	t.Helper()
	for typed := range strings.SplitSeq(strings.TrimSpace(text), "\n") {
		var args []string
		for _, w := range words.FindAllString(typed, -1) {
			switch w[0] {
			case '\'':
				w = strings.Trim(w, "'")
			case '"':
				unquoted, err := strconv.Unquote(w)
				if err != nil {
					t.Fatal(err)
				}
				w = unquoted
			}
			args = append(args, w)
		}
		all = append(all, args)
	}
	return all
}

var words = regexp.MustCompile(`'[^']*'|"[^"]*"|\S+`)

func write(t *testing.T, file, text string) {
	t.Helper()
	if err := os.WriteFile(file, []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}
