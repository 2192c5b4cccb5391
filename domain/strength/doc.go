// Package strength reckons what bees and food a nuc has, what the night asks
// of it, and how exposed it is to robbers: from what was put in and last seen,
// with plain published losses. It is silent where the book says too little.
package strength
