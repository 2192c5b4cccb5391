-- Version 1: the book.
--
-- An entry is one line of the journal. Entries are only ever added; a mistake
-- is struck by a later entry. Instants are seconds since 1970-01-01 00:00 UTC.

-- Who wrote entries, by name; '' is nobody named.
CREATE TABLE writer (
    id   INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE
) STRICT;

-- The kinds of fact that occur in this book, by the name used in files.
CREATE TABLE kind (
    id   INTEGER PRIMARY KEY,
    name TEXT NOT NULL UNIQUE CHECK (name <> '')
) STRICT;

-- The things that entries are about. A uuid stands here once, and everywhere
-- else in the book a small integer stands for it.
CREATE TABLE subject (
    id   INTEGER PRIMARY KEY,
    kind TEXT NOT NULL CHECK (kind <> ''),           -- 'nuc', 'queen', ...
    uuid BLOB NOT NULL CHECK (length(uuid) = 16),
    UNIQUE (uuid, kind)
) STRICT;

CREATE TABLE entry (
    id      INTEGER PRIMARY KEY,                     -- the order of arrival in this file
    uuid    BLOB    NOT NULL UNIQUE CHECK (length(uuid) = 16), -- names the entry in every copy
    at      INTEGER NOT NULL,                        -- when it happened, s
    part    TEXT    NOT NULL CHECK (part IN          -- how closely that is known; '' is to the second
            ('', 'day', 'morning', 'midday', 'afternoon', 'evening', 'night')),
    written INTEGER NOT NULL,                        -- when it was written down, s
    writer  INTEGER NOT NULL REFERENCES writer (id),
    kind    INTEGER NOT NULL REFERENCES kind (id),
    body    TEXT    NOT NULL CHECK (json_valid(body)) -- the fact, a JSON object
) STRICT;

CREATE TRIGGER entry_is_never_changed BEFORE UPDATE ON entry
BEGIN SELECT RAISE(ABORT, 'an entry is never changed; strike it'); END;

CREATE TRIGGER entry_is_never_deleted BEFORE DELETE ON entry
BEGIN SELECT RAISE(ABORT, 'an entry is never deleted; strike it'); END;

-- The entries of each subject in the order in which they happened.
CREATE TABLE about (
    subject INTEGER NOT NULL REFERENCES subject (id),
    at      INTEGER NOT NULL,                        -- that of the entry, s
    entry   INTEGER NOT NULL REFERENCES entry (id),
    PRIMARY KEY (subject, at, entry)
) STRICT, WITHOUT ROWID;
