package view_test

import (
	"testing"

	"lidmark/ui/state"
)

// BenchmarkLayer draws the map and wall of 10,000 nucs in each layer once all is
// reckoned. Floor: the condition alone, which asks nothing.
func BenchmarkLayer(b *testing.B) {
	for _, layer := range []struct {
		name string
		of   state.Layer
	}{{"floor", state.ByCondition}, {"sure", state.BySureness}, {"robbing", state.ByRobbing}} {
		b.Run(layer.name, func(b *testing.B) {
			s := yardstick(b)
			s.Pane, s.Layer = state.Map, layer.of
			window(s)
			for b.Loop() {
				window(s)
			}
		})
	}
}

// BenchmarkLayerOfAnotherDay is the first drawing of a layer on a day that was not
// looked at before, without reading the day itself. Floor: the condition.
func BenchmarkLayerOfAnotherDay(b *testing.B) {
	for _, layer := range []struct {
		name string
		of   state.Layer
	}{{"floor", state.ByCondition}, {"sure", state.BySureness}, {"robbing", state.ByRobbing}} {
		b.Run(layer.name, func(b *testing.B) {
			s := yardstick(b)
			s.Pane = state.Map
			d := s.Today()
			for b.Loop() {
				b.StopTimer()
				d++
				s.Day, s.Layer = d, state.ByCondition
				window(s)
				s.Layer = layer.of
				b.StartTimer()
				window(s)
			}
		})
	}
}
