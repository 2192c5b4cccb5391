package storage

import (
	"slices"
	"strings"
	"testing"
)

func TestVerifyFindsWhatIsWrong(t *testing.T) {
	const unlocked = "DROP TRIGGER entry_is_never_changed; DROP TRIGGER entry_is_never_deleted; PRAGMA foreign_keys = 0;"
	for want, statement := range map[string]string{
		"does not stand there":                     "DELETE FROM about WHERE entry = 5",
		"which it is not about":                    "INSERT INTO about SELECT 2, at, id FROM entry WHERE id = 1",
		"and happened at":                          "UPDATE about SET at = at + 60 WHERE entry = 5",
		"at 1808000000 and happened at 1807344240": "UPDATE about SET at = 1808000000 WHERE entry = 5",
		"at 1800000000 and happened at 1807344240": "UPDATE about SET at = 1800000000 WHERE entry = 5",
		"unknown field":                            `UPDATE entry SET body = '{"queue": 1}' WHERE id = 5`,
		"knows no such fact":                       "UPDATE kind SET name = 'danced' WHERE id = 1",
		"rows that are not there":                  "UPDATE entry SET writer = 99 WHERE id = 5",
		"no id":                                    "UPDATE entry SET uuid = zeroblob(16) WHERE id = 5",
		"invalid character":                        "PRAGMA ignore_check_constraints = 1; UPDATE entry SET body = 'milk' WHERE id = 5",
	} {
		path := written(t)
		raw(t, path, unlocked+statement)
		b, err := Open(path, Options{})
		check(t, err)
		found := b.Verify(t.Context())
		if !slices.ContainsFunc(found, func(p Problem) bool { return strings.Contains(p.String(), want) }) {
			t.Errorf("%s: found %v, want %q", statement, found, want)
		}
		check(t, b.Close())
	}
}
