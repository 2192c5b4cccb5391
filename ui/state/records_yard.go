package state

// yardRecords are what can be written down of a yard.
var yardRecords = []Record{}
