package line

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

func (t teller) queen(f book.Fact) string {
	switch f := f.(type) {
	case book.QueenDescribed:
		return t.described(f)
	case book.QueenMarked:
		mark := commas(f.Colour, unless("disc ", f.Disc), ifSaid(f.Clipped, "wing clipped"))
		return t.called("queen", f.Queen.Subject()) + " marked" + unless(": ", mark) + t.at("in", f.Nuc.Subject())
	case book.QueenTested:
		return t.called("queen", f.Queen.Subject()) + " tested: " + or(f.What, "test") + " " + figureOf(f.Score)
	case book.QueenPutIn:
		return commas(t.called("queen", f.Queen.Subject())+or(t.at("into", f.To), " put in"), f.How.String())
	case book.QueenCaught:
		return commas("queen caught"+t.at("from", f.Nuc.Subject())+ifSaid(f.Culled, " and culled"), unless("cage ", f.Label))
	case book.QueenBanked:
		return t.called("queen", f.Queen.Subject()) + or(t.at("into bank", f.Bank.Subject()), " banked")
	case book.QueenHandedOver:
		return commas(t.called("queen", f.Queen.Subject())+" handed over"+unless(" to ", f.To)+t.at("for order", f.Order.Subject()), ifSaid(f.With, "with attendants"))
	case book.QueenGone:
		return "old queen gone, not known when" + t.at("from", f.Nuc.Subject())
	case book.QueenEnded:
		return t.called("queen", f.Queen.Subject()) + " " + or(f.How.String(), "ended")
	default:
		return ""
	}
}

func (t teller) described(f book.QueenDescribed) string {
	return commas("queen"+unless(" ", f.Name), unless("line ", f.Line), unless("daughter", t.at("of", f.Mother.Subject())),
		strings.TrimSpace(t.at("of", f.Batch.Subject())), ifSaid(!f.Born.IsZero(), "born "+calendar.DayOf(f.Born, nil).String()),
		unless("drone line ", f.DroneLine), ifSaid(f.MatedYear > 0, fmt.Sprintf("mated %d", f.MatedYear)+t.at("at", f.MatedAt.Subject())), unless("descent ", f.Descent.String()))
}

func (t teller) order(f book.Fact) string {
	switch f := f.(type) {
	case book.OrderTaken:
		return commas(fmt.Sprintf("order %s: %s", f.Number, counted(f.Queens, "queen", "queens"))+unless(" ", f.Line)+unless(" or ", list(f.Substitute))+unless(" for ", f.Customer), unless("not before ", t.names.day(f.From)), unless("by ", t.names.day(f.By)), ifSaid(f.Marked, "marked"), ifSaid(f.Disc, "with disc"), ifSaid(f.Clipped, "clipped"),
			ifSaid(f.Sent, "sent"), ifSaid(f.Journey > 0, count(float64(f.Journey), "day")+" on the way"), ifSaid(f.Priority != 0, fmt.Sprintf("priority %d", f.Priority)))
	case book.OrderClosed:
		return t.called("order", f.Order.Subject()) + " closed" + unless(": ", f.Why)
	case book.Claimed:
		return counted(f.Queens, "queen", "queens") + " claimed" + t.at("on order", f.Order.Subject()) + unless(": ", commas(f.How.String(), unless("queen ", namesOf(t, f.Of)), f.Why))
	default:
		return ""
	}
}

func (t teller) people(f book.Fact) string {
	switch f := f.(type) {
	case book.ColonyDescribed:
		roles := make([]string, len(f.Roles))
		for i, r := range f.Roles {
			roles[i] = r.String()
		}
		return commas("colony "+f.Name+t.at("in", f.Yard.Subject()), list(roles), unless("line ", f.Line), ifSaid(f.Thousands > 0, figureOf(f.Thousands)+" thousand bees"))
	case book.PersonDescribed:
		return commas(or(f.Name, "somebody")+" works bees", freeWords(f.Free))
	case book.DaysOff:
		return strings.TrimSpace(t.called("", f.Person.Subject())+" off") + " from " + or(t.names.day(f.From), "a day") + " to " + or(t.names.day(f.To), "a day")
	case book.HoursOn:
		who, on := t.called("", f.Person.Subject()), " on "+or(t.names.day(f.Day), "a day")
		if f.Minutes() == 0 {
			return strings.TrimSpace(who + " not free" + on)
		}
		return strings.TrimSpace(who + " free" + on + " " + clock(f.From) + "-" + clock(f.Until))
	default:
		return ""
	}
}

func (t teller) health(f book.Fact) string {
	switch f := f.(type) {
	case book.Inspected:
		return t.called("inspected", f.Yard.Subject()) + unless(": ", f.Result)
	case book.DiseaseSuspected:
		return or(f.What, "disease") + " suspected" + t.at("in", f.Of)
	case book.SuspicionEnded:
		return "suspicion ended" + t.at("in", f.Of) + unless(": ", f.Why)
	case book.Treated:
		return commas(t.called("treated", f.Of)+unless(" with ", f.With), ifSaid(f.Wait > 0, fmt.Sprintf("wait %d days", f.Wait)))
	case book.PaperHeld:
		return or(f.Name, "paper") + t.at("for", f.Yard.Subject()) + unless(", good until ", t.names.day(f.Expires))
	default:
		return ""
	}
}

func (t teller) desk(f book.Fact) string {
	switch f := f.(type) {
	case book.Planned:
		return t.planned(f)
	case book.BatchPlanned:
		return t.batchPlanned(f)
	case book.BatchReadied:
		return or(f.Step.String(), "a step done") + t.at("for", f.Batch.Subject())
	case book.BatchDropped:
		return t.called("planned graft", f.Batch.Subject()) + " dropped" + unless(": ", f.Why)
	case book.PutOff:
		return "put off" + unless(" until ", t.names.day(f.Until)) + ": " + or(f.Rule, "a task") + t.at("of", f.Of) + unless("; ", f.Why)
	case book.NumberChanged:
		if f.Back {
			return "my number" + unless(" ", f.Number) + " put back"
		}
		return "my number" + unless(" ", f.Number) + " set to " + figureOf(f.Value) + unless(" ", f.In)
	case book.Noted:
		return "note" + t.at("on", f.Of) + ": " + f.Text
	case book.Struck:
		return "an entry struck" + unless(": ", f.Why)
	default:
		return ""
	}
}

// planned is what was decided for a nuc.
func (t teller) planned(f book.Planned) string {
	if f.What == book.PlanNone {
		return "decision taken back" + t.at("for", f.Nuc.Subject())
	}
	of := t.at("of", f.Batch.Subject())
	then := ""
	switch {
	case f.What == book.PlanGiveCell, f.What == book.PlanPutInVirgin:
	case f.Virgin || !f.Queen.IsZero():
		then = "then a virgin"
	case f.Gives():
		then = "then a cell"
	}
	return commas("decided"+t.at("for", f.Nuc.Subject())+unless(" on ", t.names.day(f.Day))+": "+f.What.String()+t.at("with", f.With.Subject())+ifSaid(then == "", of), then+ifSaid(then != "", of), f.Why)
}

// freeWords are the free hours of a week: "free Mon-Fri 18:30-20:30".
func freeWords(free [7]book.FreeHours) string {
	var parts []string
	for from := 1; from <= 7; {
		to := from
		for to < 7 && free[(to+1)%7] == free[from%7] {
			to++
		}
		if h := free[from%7]; h.Minutes() > 0 {
			parts = append(parts, weekdays[from]+ifSaid(to > from, "-"+weekdays[to])+" "+clock(h.From)+"-"+clock(h.Until))
		}
		from = to + 1
	}
	return unless("free ", commas(parts...))
}

var weekdays = [...]string{"Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"}

func clock(minutes int) string { return fmt.Sprintf("%02d:%02d", minutes/60, minutes%60) }
