package state

// RouteLine is the height of a line of the route, RouteGap what parts two
// stops, RouteHead what stands above it, dp.
const (
	RouteLine = 30.0
	RouteGap  = 4.0
	RouteHead = 36.0
	routeEnd  = 40.0
	// HardHeight is the height of the strip of the hard deadlines.
	HardHeight = 44.0
)

// RouteHeight is how high the day's route is with all its stops and tasks, and
// what stands above it.
func (s State) RouteHeight() float64 {
	return RouteHead + s.hardHeight() + s.routeY(len(s.Reading().Tasks())) + routeEnd
}

func (s State) hardHeight() float64 {
	if len(s.Reading().Plan().Hard) == 0 {
		return 0
	}
	return HardHeight
}

// routeY is where a line of the route begins below the first stop; for the
// number of lines it is where the route ends.
func (s State) routeY(number int) float64 {
	y := 0.0
	for _, stop := range s.Reading().Plan().Stops {
		y += RouteLine
		if number < len(stop.Tasks) {
			return y + float64(number)*RouteLine
		}
		number -= len(stop.Tasks)
		y += float64(len(stop.Tasks))*RouteLine + RouteGap
	}
	return y
}
