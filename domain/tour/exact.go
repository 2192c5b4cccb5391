package tour

import "math"

// exactUpTo is how many points are gone through whole: twice as many sets with each
// further one.
const exactUpTo = 12

// exact is the shortest round by dynamic programming over the sets of points that
// lie behind, each with the point at which it ends. Point 0 is in none.
func exact(n int, distance func(i, j int) float64) []int {
	if n <= 3 {
		return upTo(n)
	}
	m := n - 1
	best := make([][]float64, 1<<m)
	from := make([][]int, 1<<m)
	for set := 1; set < 1<<m; set++ {
		best[set], from[set] = make([]float64, m), make([]int, m)
		for end := range m {
			best[set][end], from[set][end] = arrive(best, set, end, distance)
		}
	}
	return back(best, from, distance)
}

// arrive is the shortest way from point 0 through a set to its end, and the end
// before that. Point i of a set is point i+1.
func arrive(best [][]float64, set, end int, distance func(i, j int) float64) (length float64, before int) {
	rest := set &^ (1 << end)
	switch {
	case set == rest:
		return math.Inf(1), -1
	case rest == 0:
		return distance(0, end+1), -1
	}
	length, before = math.Inf(1), -1
	for i, so := range best[rest] {
		if d := so + distance(i+1, end+1); d < length {
			length, before = d, i
		}
	}
	return length, before
}

// back goes the shortest round backwards.
func back(best [][]float64, from [][]int, distance func(i, j int) float64) []int {
	set, end, least := len(best)-1, 0, math.Inf(1)
	for i, so := range best[set] {
		if d := so + distance(i+1, 0); d < least {
			end, least = i, d
		}
	}
	order := []int{0}
	for end >= 0 {
		order = append(order, end+1)
		set, end = set&^(1<<end), from[set][end]
	}
	return order
}

func upTo(n int) []int {
	order := make([]int, n)
	for i := range order {
		order[i] = i
	}
	return order
}
