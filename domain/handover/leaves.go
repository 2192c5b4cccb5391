package handover

import "lidmark/domain/calendar"

// Leaves is the day on which the queens of an order leave, or on which they should have.
func (s Served) Leaves() calendar.Day {
	if s.Order.By.IsZero() {
		return s.On
	}
	return min(s.On, s.Order.By-s.Arrive+s.On)
}

// LeavesSaid says when they do: "to be fetched Wed 2 Dec", "was to be sent Mon 30 Nov, there Wed 2 Dec".
func (s Served) LeavesSaid(today calendar.Day) string {
	on, how := s.Leaves(), "to be fetched "
	if s.Order.Sent {
		how = "to be sent "
	}
	if on < today {
		how = "was " + how
	}
	how += on.ShortFrom(today)
	if s.Order.Sent {
		how += ", there " + (s.Arrive - s.On + on).ShortFrom(today)
	}
	return how
}
