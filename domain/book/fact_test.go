package book_test

import (
	"encoding/json"
	"reflect"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"github.com/google/uuid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// filled sets every field of a fact to something other than its zero value.
func filled(v reflect.Value) {
	switch x := v.Addr().Interface().(type) {
	case *time.Time:
		*x = time.Date(2027, 5, 15, 18, 0, 0, 0, time.UTC)
		return
	case *calendar.Day:
		*x = calendar.Date(2027, 5, 15)
		return
	case *book.Amount:
		*x = book.Said(2.5)
		return
	case *book.Subject:
		*x = book.Subject{Kind: book.KindNuc, UUID: uuid.MustParse("01890a5d-ac96-774b-bcce-b302099a8057")}
		return
	}
	switch v.Kind() {
	case reflect.Struct:
		for _, field := range v.Fields() {
			filled(field)
		}
	case reflect.Array:
		for i := range v.Len() {
			filled(v.Index(i))
		}
	case reflect.Slice:
		v.Set(reflect.MakeSlice(v.Type(), 2, 2))
		filled(v.Index(0))
		filled(v.Index(1))
	case reflect.String:
		v.SetString("a word")
	case reflect.Bool:
		v.SetBool(true)
	case reflect.Int, reflect.Int32:
		v.SetInt(3)
	case reflect.Uint8:
		v.SetUint(1)
	case reflect.Float64:
		v.SetFloat(1.25)
	default:
		panic("no rule to fill " + v.Type().String())
	}
}

// everyFact is one filled fact of each kind.
func everyFact(t *testing.T) map[string]book.Fact {
	t.Helper()
	all := map[string]book.Fact{}
	for _, kind := range book.FactKinds() {
		empty, err := book.DecodeFact(kind, []byte("{}"))
		if err != nil {
			t.Fatalf("%s: %v", kind, err)
		}
		v := reflect.New(reflect.TypeOf(empty)).Elem()
		filled(v)
		all[kind] = v.Interface().(book.Fact)
	}
	return all
}

func TestEveryFactReadsBack(t *testing.T) {
	equal := cmp.Comparer(func(a, b book.Amount) bool { return a == b })
	for kind, want := range everyFact(t) {
		if got := book.KindOfFact(want); got != kind {
			t.Errorf("%s: its kind is %q", kind, got)
		}
		body, err := json.Marshal(want)
		if err != nil {
			t.Errorf("%s: %v", kind, err)
			continue
		}
		got, err := book.DecodeFact(kind, body)
		if err != nil {
			t.Errorf("%s: %v\n%s", kind, err, body)
		}
		if d := cmp.Diff(want, got, equal); d != "" {
			t.Errorf("%s reads back otherwise:\n%s", kind, d)
		}
	}
}

func TestEveryFactHasSubjectsButTwo(t *testing.T) {
	bare := map[string]bool{"number changed": true, "struck": true}
	for kind, f := range everyFact(t) {
		if got := len(book.Subjects(f)) == 0; got != bare[kind] {
			t.Errorf("%s: about nothing = %v, want %v", kind, got, bare[kind])
		}
	}
}

func TestEntryReadsBack(t *testing.T) {
	for kind, f := range everyFact(t) {
		want := book.Entry{
			ID:      book.EntryID(uuid.MustParse("01890a5d-ac96-774b-bcce-b302099a8057")),
			At:      calendar.On(calendar.Date(2027, 5, 15), calendar.Morning, nil),
			Written: time.Date(2027, 5, 15, 20, 41, 7, 0, time.UTC),
			Writer:  "Ida M.",
			Fact:    f,
		}
		b, err := json.Marshal(want)
		if err != nil {
			t.Fatal(err)
		}
		var got book.Entry
		if err := json.Unmarshal(b, &got); err != nil {
			t.Fatalf("%s: %v", kind, err)
		}
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%s: read back as %+v, want %+v", kind, got, want)
		}
	}
}

func TestEntryRefusesWhatItDoesNotKnow(t *testing.T) {
	const good = `{"id":"01890a5d-ac96-774b-bcce-b302099a8057","at":"2027-05-15T18:00:00Z","written":"2027-05-15T20:00:00Z","kind":"robbed","fact":{"nuc":"01890a5d-ac96-774b-bcce-b302099a8057"}}`
	var e book.Entry
	if err := json.Unmarshal([]byte(good), &e); err != nil {
		t.Fatal(err)
	}
	for name, change := range map[string][2]string{
		"knows no such fact": {`"robbed"`, `"rained"`},
		"unknown field":      {`"nuc"`, `"nux"`},
		"needs an id":        {`"id":"01890a5d-ac96-774b-bcce-b302099a8057",`, ``},
		"needs an id and":    {`"at":"2027-05-15T18:00:00Z",`, ``},
		"not a UUID":         {`b302099a8057"}`, `b30209"}`},
	} {
		bad := strings.Replace(good, change[0], change[1], 1)
		err := json.Unmarshal([]byte(bad), &e)
		if err == nil || !strings.Contains(err.Error(), name) {
			t.Errorf("%s: got %v, want %q", bad, err, name)
		}
	}
}

func TestAFactEndsWhereItEnds(t *testing.T) {
	for _, bad := range []string{``, `{}{}`, `{} x`, `[]`} {
		if f, err := book.DecodeFact("robbed", []byte(bad)); err == nil {
			t.Errorf("%q read as %+v, want an error", bad, f)
		}
	}
}

func FuzzEntry(f *testing.F) {
	f.Add([]byte(`{"id":"01890a5d-ac96-774b-bcce-b302099a8057","at":"2027-05-15T18:00:00Z","part":"morning","written":"2027-05-15T20:00:00Z","kind":"looked","fact":{"nuc":"01890a5d-ac96-774b-bcce-b302099a8057","cappedDM2":4,"queen":"queen seen"}}`))
	for _, fact := range []string{
		`"kind":"batch planned","fact":{"batch":"01890a5d-ac96-774b-bcce-b302099a8057","day":"2027-04-19","larvae":96,"sure":0.9,"orders":["01890a5d-ac96-774b-bcce-b302099a8058"]}`,
		`"kind":"batch dropped","fact":{"batch":"01890a5d-ac96-774b-bcce-b302099a8057","why":"too cold"}`,
		`"kind":"hours on","fact":{"person":"01890a5d-ac96-774b-bcce-b302099a8057","day":"2027-05-11","from":480,"until":720}`,
		`"kind":"claimed","fact":{"order":"01890a5d-ac96-774b-bcce-b302099a8057","queens":2,"how":"dead on arrival","why":""}`,
	} {
		f.Add([]byte(`{"id":"01890a5d-ac96-774b-bcce-b302099a8057","at":"2027-05-15T18:00:00Z","written":"2027-05-15T20:00:00Z",` + fact + `}`))
	}
	f.Add([]byte(`{"kind":"looked"}`))
	f.Fuzz(func(t *testing.T, b []byte) {
		var e, again book.Entry
		if json.Unmarshal(b, &e) != nil {
			return
		}
		out, err := json.Marshal(e)
		if err != nil {
			t.Fatalf("read but not written: %v", err)
		}
		if err := json.Unmarshal(out, &again); err != nil {
			t.Fatalf("written but not read: %v\n%s", err, out)
		}
		if !reflect.DeepEqual(e, again) {
			t.Fatalf("%+v became %+v", e, again)
		}
	})
}
