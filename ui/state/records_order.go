package state

// orderRecords are what can be written down of a order.
var orderRecords = []Record{}
