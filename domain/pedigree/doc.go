// Package pedigree says how closely queens are related, and what that costs: where
// a fertilised egg has two like sex alleles it becomes a drone that the workers
// take out, and the brood is full of holes.
//
// Queens have two of every gene, drones one: a drone is an egg of his mother's. A
// queen mates with several drones; daughters of one queen may have one father, or
// different ones. All follows from who the mothers are and from which colonies'
// drones they mated, as the book has it; whoever has no recorded parents counts as
// related to nobody.
package pedigree
