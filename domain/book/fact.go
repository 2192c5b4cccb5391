package book

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"reflect"
	"slices"
)

// Fact is one thing that happened or was described: a closed set of small
// structs, listed in [FactKinds]. Amounts that nobody named are left at the
// zero value of their type, or of [Amount] where none and unsaid differ.
type Fact interface {
	// about names the subjects under which the entry is found. Being
	// unexported, it closes the set.
	about(add func(Subject))
}

// Subjects are the things a fact is about, without repeats.
func Subjects(f Fact) []Subject {
	var all []Subject
	f.about(func(s Subject) {
		if !s.IsZero() && !slices.Contains(all, s) {
			all = append(all, s)
		}
	})
	return all
}

// KindOfFact is the name of a fact's kind in files; "" for nil.
func KindOfFact(f Fact) string { return factNames[reflect.TypeOf(f)] }

// FactKinds are the names of all kinds of fact, in the order in which they
// are described.
func FactKinds() []string {
	names := make([]string, len(factTable))
	for i, row := range factTable {
		names[i] = row.name
	}
	return names
}

// DecodeFact reads a fact of a kind from its JSON object. An unknown kind and
// an unknown field are errors, so that nothing is dropped in silence.
func DecodeFact(kind string, body []byte) (Fact, error) {
	decode, ok := factDecoders[kind]
	if !ok {
		return nil, fmt.Errorf("kind %q: this version knows no such fact", kind)
	}
	return decode(body)
}

type factRow struct {
	name   string
	typ    reflect.Type
	decode func([]byte) (Fact, error)
}

func row[F Fact](name string) factRow {
	return factRow{name, reflect.TypeFor[F](), func(b []byte) (Fact, error) {
		var f F
		if err := decodeStrict(b, &f); err != nil {
			return nil, fmt.Errorf("%s: %w", name, err)
		}
		return f, nil
	}}
}

func decodeStrict(b []byte, into any) error {
	d := json.NewDecoder(bytes.NewReader(b))
	d.DisallowUnknownFields()
	if err := d.Decode(into); err == io.EOF {
		return errors.New("the fact itself is missing")
	} else if err != nil {
		return err
	}
	if _, err := d.Token(); err != io.EOF {
		return errors.New("there is more behind the end of the fact")
	}
	return nil
}

var factNames, factDecoders = byTypeAndName(factTable)

func byTypeAndName(table []factRow) (map[reflect.Type]string, map[string]func([]byte) (Fact, error)) {
	names, decoders := map[reflect.Type]string{}, map[string]func([]byte) (Fact, error){}
	for _, r := range table {
		names[r.typ] = r.name
		decoders[r.name] = r.decode
	}
	return names, decoders
}

var factTable = []factRow{
	row[YardDescribed]("yard described"),
	row[StandSet]("stand set"),
	row[FeatureDrawn]("feature drawn"),
	row[WindSaid]("wind said"),
	row[GroundPictured]("ground pictured"),
	row[LayoutTried]("layout tried"),
	row[LayoutPlanned]("layout planned"),
	row[LayoutDropped]("layout dropped"),
	row[ForageSeen]("forage seen"),
	row[WeatherSeen]("weather seen"),
	row[WeatherHours]("weather hours"),
	row[WeatherNormal]("weather normal"),
	row[BoxBuilt]("box built"),
	row[NucNamed]("nuc named"),
	row[NucPlaced]("nuc placed"),
	row[NucMadeUp]("nuc made up"),
	row[EntranceSet]("entrance set"),
	row[FrontMarked]("front marked"),
	row[LidPainted]("lid painted"),
	row[ColonyDescribed]("colony described"),
	row[PersonDescribed]("person described"),
	row[DaysOff]("days off"),
	row[HoursOn]("hours on"),
	row[Grafted]("grafted"),
	row[CellsMoved]("cells moved"),
	row[TakeCounted]("take counted"),
	row[CappedCounted]("capped counted"),
	row[RipeCounted]("ripe counted"),
	row[CellsCulled]("cells culled"),
	row[IncubatorRead]("incubator read"),
	row[ClockSeen]("clock seen"),
	row[EmergedCounted]("emerged counted"),
	row[TakenAlong]("taken along"),
	row[BroughtBack]("brought back"),
	row[Dropped]("dropped"),
	row[CellGiven]("cell given"),
	row[VirginPutIn]("virgin put in"),
	row[VirginCaged]("virgin caged"),
	row[OwnCellsBroken]("own cells broken down"),
	row[WildCellsSearched]("wild cells searched"),
	row[Looked]("looked"),
	row[RowLooked]("row looked"),
	row[BeesAdded]("bees added"),
	row[BroodGiven]("brood given"),
	row[Fed]("fed"),
	row[QueenDescribed]("queen described"),
	row[QueenMarked]("queen marked"),
	row[QueenTested]("queen tested"),
	row[QueenPutIn]("queen put in"),
	row[QueenCaught]("queen caught"),
	row[QueenBanked]("queen banked"),
	row[QueenHandedOver]("queen handed over"),
	row[QueenGone]("queen gone"),
	row[QueenEnded]("queen ended"),
	row[United]("united"),
	row[ShakenOut]("shaken out"),
	row[Robbed]("robbed"),
	row[NucLost]("nuc lost"),
	row[Inspected]("inspected"),
	row[DiseaseSuspected]("disease suspected"),
	row[SuspicionEnded]("suspicion ended"),
	row[Treated]("treated"),
	row[PaperHeld]("paper held"),
	row[OrderTaken]("order taken"),
	row[OrderClosed]("order closed"),
	row[Claimed]("claimed"),
	row[Planned]("planned"),
	row[BatchPlanned]("batch planned"),
	row[BatchDropped]("batch dropped"),
	row[BatchReadied]("batch readied"),
	row[PutOff]("put off"),
	row[NumberChanged]("number changed"),
	row[Noted]("noted"),
	row[Struck]("struck"),
}
