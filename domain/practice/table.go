package practice

// rows is the whole table by key; row 0 is empty. names finds a key by its
// stable name. Both are built once from the lists of the groups and only read
// afterwards.
var (
	rows  = table()
	names = index(rows)
)

// table lays the groups' lists out by key.
func table() [keyCount]Number {
	groups := []struct {
		group Group
		rows  []Number
	}{
		{Clock, casteRows},
		{Clock, batchRows},
		{Clock, cellRows},
		{Clock, queenRows},
		{Rates, rateRows},
		{Weather, weatherRows},
		{BeesAndBrood, beeRows},
		{Stores, storeRows},
		{Robbing, robbingRows},
		{Times, timeRows},
	}
	var all [keyCount]Number
	for _, g := range groups {
		for _, r := range g.rows {
			r.Group = g.group
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
