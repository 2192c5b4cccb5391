package state

// batchRecords are what can be written down of a batch.
var batchRecords = []Record{}
