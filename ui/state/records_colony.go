package state

// colonyRecords are what can be written down of a colony.
var colonyRecords = []Record{}
