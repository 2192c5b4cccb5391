package jsonl_test

import (
	"bytes"
	"errors"
	"io"
	"math/rand/v2"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/storage"
	"lidmark/storage/journaltest"
	"lidmark/storage/jsonl"
)

const head = `{"format":"lidmark entries","version":1}` + "\n"

// lines is the entries as JSON Lines.
func lines(t *testing.T, entries []book.Entry) string {
	t.Helper()
	var m journaltest.Memory
	if err := m.Append(entries...); err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := jsonl.Write(&out, m.Entries()); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// readAll reads all entries or none: the error holds every refusal.
func readAll(r io.Reader, file string) ([]book.Entry, error) {
	entries, refused, err := jsonl.Read(r, file, nil)
	if err != nil {
		return nil, err
	}
	if len(refused) > 0 {
		errs := make([]error, len(refused))
		for i, r := range refused {
			errs[i] = r
		}
		return nil, errors.Join(errs...)
	}
	return entries, nil
}

func TestWrittenAndReadIsTheSame(t *testing.T) {
	some := journaltest.Some(300, 11)
	text := lines(t, some)
	if !strings.HasPrefix(text, head) || strings.Count(text, "\n") != 301 {
		t.Errorf("%d lines, the first %q", strings.Count(text, "\n"), text[:60])
	}
	got, err := readAll(strings.NewReader(text), "a.jsonl")
	if err != nil {
		t.Fatal(err)
	}
	if !slices.IsSortedFunc(got, book.Entry.Compare) {
		t.Error("not in the order of the book")
	}
	var m journaltest.Memory
	if err := m.Append(got...); err != nil {
		t.Fatal(err)
	}
	journaltest.Same(t, &m, some)
}

func TestOrderOfWritingIsStable(t *testing.T) {
	some := journaltest.Some(100, 5)
	want := lines(t, some)
	rand.New(rand.NewPCG(1, 1)).Shuffle(len(some), func(i, j int) { some[i], some[j] = some[j], some[i] })
	if got := lines(t, some); got != want {
		t.Error("the same entries in another order give another file")
	}
}

func TestThroughBooksAndBack(t *testing.T) {
	some := journaltest.Some(300, 11)
	b, err := storage.Create(filepath.Join(t.TempDir(), "summer.lidmark"))
	if err != nil {
		t.Fatal(err)
	}
	text := lines(t, some)
	for range 2 {
		entries, err := readAll(strings.NewReader(text), "a.jsonl")
		if err != nil {
			t.Fatal(err)
		}
		if err := b.Append(entries...); err != nil {
			t.Fatal(err)
		}
	}
	journaltest.Same(t, b, some)
	var out bytes.Buffer
	if err := jsonl.Write(&out, b.Entries()); err != nil {
		t.Fatal(err)
	}
	if out.String() != text {
		t.Error("the book gives another file than it got")
	}
	for _, p := range b.Verify(t.Context()) {
		t.Error(p)
	}
	if err := b.Close(); err != nil {
		t.Error(err)
	}
}

// good is a line, and id the id in it.
const (
	id   = "01890a5d-ac96-774b-bcce-b302099a8057"
	good = `{"id":"` + id + `","at":"2027-05-15T18:00:00Z","written":"2027-05-15T20:00:00Z","kind":"robbed","fact":{"nuc":"` + id + `"}}`
)

func TestEveryLineIsChecked(t *testing.T) {
	change := func(from, to string) string { return strings.Replace(good, from, to, 1) }
	for _, c := range []struct{ line, want string }{
		{"milk", "a.jsonl:2: column 1: invalid character 'm' looking for beginning of value"},
		{good[:50], "a.jsonl:2: column 50: unexpected end of JSON input"},
		{good + " }", "a.jsonl:2: column 178: invalid character '}' after top-level value"},
		{change("robbed", "rained"), `a.jsonl:2: kind "rained": this version knows no such fact`},
		{change(`"nuc"`, `"nux"`), `a.jsonl:2: robbed: json: unknown field "nux"`},
		{change(`"kind"`, `"kin"`), `a.jsonl:2: unknown field "kin"`},
		{change(id, "7"), `a.jsonl:2: entry id "7": not a UUID, write one like 01a4ce1c-8580-7000-800e-000000000004`},
		{change(`"kind"`, "\"writer\":\"\xff\",\"kind\""), "a.jsonl:2: column 117: this is no UTF-8 text; save the file as UTF-8"},
		{change(`"kind"`, `"writer":"\ud800","kind"`), "a.jsonl:2: column 117: half a character; its other half is missing, write it whole"},
		{change(`"kind"`, `"writer":7,"kind"`), "a.jsonl:2: field writer: a number does not fit here; write it as in the lines that are read"},
		{change("2027-05-15T18:00:00Z", "yesterday"), `a.jsonl:2: yesterday is no instant; write it like 2027-05-15T18:00:00Z`},
		{"[]", "a.jsonl:2: here stands an array and no entry; take the line out"},
		{change("18:00:00Z", "18:00:00.5Z"), "a.jsonl:2: the entry's times have fractions of a second; give them to the second"},
		{"\r\n\n" + good + "\n" + change("robbed", "nuc lost"), "a.jsonl:5: entry " + id + " stands in line 4 already and says something else there; one of them needs another id"},
	} {
		text := head + c.line + "\n"
		_, err := readAll(strings.NewReader(text), "a.jsonl")
		if err == nil || err.Error() != c.want {
			t.Errorf("%s\ngot  %v\nwant %s", c.line, err, c.want)
		}
	}
}

func TestTheFirstLineIsChecked(t *testing.T) {
	const do = `; the first line must be {"format":"lidmark entries","version":1}`
	for text, want := range map[string]string{
		"":          "a.jsonl:1: the file is empty" + do,
		"\n\n":      "a.jsonl:1: the file is empty" + do,
		"milk":      "a.jsonl:1: this is not a file of entries" + do,
		good:        "a.jsonl:1: this is not a file of entries" + do,
		"\n" + good: "a.jsonl:2: this is not a file of entries" + do,
		`{"format":"lidmark entries","version":2}`: "a.jsonl:1: the file is of version 2; this program reads version 1; take it in with a newer version of Lidmark",
		head + strings.Repeat("x", 17<<20):         "a.jsonl:2: the line is longer than 16 MiB: it is no entry, choose a file of entries",
	} {
		_, _, err := jsonl.Read(strings.NewReader(text), "a.jsonl", nil)
		var r jsonl.Refusal
		if !errors.As(err, &r) || err.Error() != want {
			t.Errorf("%.40q: got %v, want %s", text, err, want)
		}
	}
}

func TestCharactersOfTwoEscapesAreRead(t *testing.T) {
	for _, text := range []string{`\ud83d\udc1d`, `\\ud83d`, `a \"word\"`} {
		line := strings.Replace(good, `"kind"`, `"writer":"`+text+`","kind"`, 1)
		if _, err := readAll(strings.NewReader(head+line), "a.jsonl"); err != nil {
			t.Errorf("%s: %v", text, err)
		}
	}
}

func TestWhatIsNoSenseIsRefusedByItsLine(t *testing.T) {
	nonsense := func(book.Entry) error { return errors.New("nobody can mean that") }
	entries, refused, err := jsonl.Read(strings.NewReader(head+good), "a.jsonl", nonsense)
	if err != nil || len(entries) != 0 || len(refused) != 1 || refused[0].Error() != "a.jsonl:2: nobody can mean that" {
		t.Errorf("entries %d, refused %v, %v", len(entries), refused, err)
	}
}

func TestGoodLinesAreReadBesideBadOnes(t *testing.T) {
	text := "\ufeff" + head + "milk\r\n" + good + "\r\n\r\n" + good + "\neggs"
	entries, refused, err := jsonl.Read(strings.NewReader(text), "a.jsonl", nil)
	if err != nil || len(entries) != 2 || len(refused) != 2 || refused[0].Line != 2 || refused[1].Line != 6 {
		t.Errorf("entries %d, refused %v, %v", len(entries), refused, err)
	}
	if all, err := readAll(strings.NewReader(text), "a.jsonl"); all != nil || err == nil || strings.Count(err.Error(), "\n") != 1 {
		t.Errorf("all or nothing: %d entries, %v", len(all), err)
	}
}

func FuzzRead(f *testing.F) {
	f.Add([]byte(head + good))
	f.Add([]byte(head + good + "\n" + good))
	f.Add([]byte(head + "{}\n\n" + strings.Replace(good, "robbed", "rained", 1)))
	f.Add([]byte(""))
	f.Fuzz(func(t *testing.T, b []byte) {
		entries, refused, err := jsonl.Read(bytes.NewReader(b), "f", nil)
		for _, r := range refused {
			if r.Line < 2 {
				t.Errorf("refused the header as an entry: %v", r)
			}
		}
		if err != nil {
			return
		}
		text := lines(t, entries)
		again, err := readAll(strings.NewReader(text), "f")
		if err != nil {
			t.Fatalf("what was read and written is not read: %v\n%s", err, text)
		}
		if got := lines(t, again); got != text {
			t.Fatalf("written twice:\n%s\n%s", text, got)
		}
	})
}
