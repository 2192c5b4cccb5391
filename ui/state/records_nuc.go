package state

// nucRecords are what can be written down of a nuc.
var nucRecords = []Record{}
