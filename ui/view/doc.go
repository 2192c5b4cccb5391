// Package view draws the window: a [state.State] in, a [scene.Scene] out. Its
// functions are pure; what they draw is reckoned from the book, and what is
// drawn can be hit, so a test can read a picture without painting it.
//
// [Window] draws everything. Each pane is drawn into its own area of
// [state.Layout] and does not reach beyond it.
package view
