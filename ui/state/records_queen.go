package state

// queenRecords are what can be written down of a queen.
var queenRecords = []Record{}
