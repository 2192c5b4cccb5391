package state

// RouteLine is the height of a line of the route, RouteGap what parts two
// stops, RouteHead what stands above it, dp.
const (
	RouteLine = 30.0
	RouteGap  = 4.0
	RouteHead = 36.0
	routeEnd  = 40.0
	// HardHeight is the height of the strip of one hard deadline.
	HardHeight = 44.0
)

// RouteHeight is how high the day's route is with all its stops and tasks.
func (s State) RouteHeight() float64 {
	plan := s.Reading().Plan()
	h := RouteHead + routeEnd + HardHeight*min(1, float64(len(plan.Hard)))
	for _, stop := range plan.Stops {
		h += RouteLine*float64(1+len(stop.Tasks)) + RouteGap
	}
	return h
}
