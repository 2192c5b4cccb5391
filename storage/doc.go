// Package storage keeps a book on disk: one SQLite file, ending in .lidmark.
//
// What [Book.Append] has acknowledged has reached the disk: every append is
// one transaction in write-ahead mode with a full sync. There is one writing
// connection, because SQLite knows one writer at a time and a second one would
// only wait for the first, and a pool of reading connections that see the last
// committed state while a write is under way.
//
// Beside the book "summer.lidmark" stand "summer.lidmark.lock", which keeps a
// second program from writing, and the folder "summer.copies" with verified
// copies. While the book is open, SQLite keeps "-wal" and "-shm" files there.
//
// The tables are described in sql/, one numbered file a version. A version
// also counts up when a kind of fact or a field of one is added, so that an
// older program knows that it does not know everything in the file.
//
// Nothing above this package may assume SQLite: it sees a [book.Journal].
package storage
