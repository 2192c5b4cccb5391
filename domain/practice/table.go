package practice

import "fmt"

// rows is the whole table by key; row 0 is empty. names finds a key by its
// stable name. Both are built once from the lists of the groups and only read
// afterwards.
var (
	rows  = table()
	names = index(rows)
)

// list is numbers under one heading.
type list struct {
	group Group
	rows  []Number
}

// table lays all lists out by key.
func table() [keyCount]Number {
	return layOut([]list{
		{Clock, casteRows},
		{Clock, batchRows},
		{Clock, cellRows},
		{Clock, queenRows},
		{Rates, rateRows},
		{Course, courseRows},
		{Weather, weatherRows},
		{BeesAndBrood, beeRows},
		{Stores, storeRows},
		{Robbing, robbingRows},
		{Times, timeRows},
		{Worth, worthRows},
		{Planning, planRows},
		{Planning, amountRows},
		{MatingYard, yardRows},
	})
}

// layOut puts numbers at their keys. Two of one key are a fault of the lists,
// and panic: the first would be lost.
func layOut(lists []list) (all [keyCount]Number) {
	for _, l := range lists {
		for _, r := range l.rows {
			if was := all[r.Key]; was.Key != 0 {
				panic(fmt.Sprintf("practice: %s and %s have one key", was.Name, r.Name))
			}
			r.Group = l.group
			all[r.Key] = r
		}
	}
	return all
}

// index finds keys by name.
func index(rows [keyCount]Number) map[string]Key {
	byName := make(map[string]Key, len(rows))
	for _, r := range rows[1:] {
		byName[r.Name] = r.Key
	}
	return byName
}
