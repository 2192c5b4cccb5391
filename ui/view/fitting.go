package view

import "strings"

// firstFitting is the first of some words that have room, else the last.
func (p *sheet) firstFitting(room float64, all ...string) string {
	for _, said := range all {
		if p.width(said, ink2(13)) <= room {
			return said
		}
	}
	return all[len(all)-1]
}

// wholeClauses is as much of some words as has room, and no half figure or name: without what a
// colon lists, then without one clause behind a comma after the other.
func (p *sheet) wholeClauses(room float64, says string) string {
	for p.width(says, ink2(13)) > room {
		end := strings.LastIndex(says, ": ")
		if end < 0 {
			end = strings.LastIndex(says, ", ")
		}
		if end < 0 {
			break
		}
		says = says[:end]
	}
	return says
}
