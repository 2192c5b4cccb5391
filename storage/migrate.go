package storage

import (
	"context"
	"database/sql"
	"embed"
	"errors"
	"fmt"
	"io/fs"
)

//go:embed sql/*.sql
var scriptFiles embed.FS

// scripts are the migrations: number n-1 in the slice takes a book from
// version n-1 to n, and the number of scripts is the version of this program.
func scripts() []string {
	names, err := fs.Glob(scriptFiles, "sql/*.sql")
	if err != nil {
		panic(err) // the pattern is malformed
	}
	all := make([]string, len(names))
	for i, name := range names {
		text, err := scriptFiles.ReadFile(name)
		if err != nil {
			panic(err) // an embedded file cannot be missing
		}
		all[i] = string(text)
	}
	return all
}

// upgrade brings a book that this process has locked up to date, after a
// copy. A book that is up to date is not touched.
func upgrade(path string, o Options, scripts []string) error {
	version, err := peek(path)
	if err != nil || version >= len(scripts) {
		return err
	}
	if _, err := copyInto(context.Background(), path, o); err != nil {
		return err
	}
	return trouble(path, migrate(path, scripts))
}

// migrate runs the scripts that the file at path still lacks, each in a
// transaction of its own together with the version it leads to.
func migrate(path string, scripts []string) error {
	db, err := dial(path, migrating, 1, "_txlock=immediate")
	if err != nil {
		return err
	}
	for n := 1; n <= len(scripts) && err == nil; n++ {
		err = migrateTo(db, n, scripts[n-1])
	}
	if closeErr := db.Close(); err == nil {
		err = closeErr
	}
	return err
}

func migrateTo(db *sql.DB, n int, script string) error {
	tx, err := db.Begin()
	if err != nil {
		return err
	}
	defer func() { _ = tx.Rollback() }() // after a commit it does nothing
	// Read inside the transaction: another process may have been here.
	var version int
	if err := tx.QueryRow("PRAGMA user_version").Scan(&version); err != nil || version >= n {
		return err
	}
	if version != n-1 {
		return fmt.Errorf("version %d cannot be brought to %d: version %d is missing between them", version, n, n-1)
	}
	if _, err := tx.Exec(script); err != nil {
		return err
	}
	if _, err := tx.Exec(fmt.Sprintf("PRAGMA application_id = %d; PRAGMA user_version = %d", applicationID, n)); err != nil {
		return err
	}
	if err := checkForeignKeys(context.Background(), tx); err != nil {
		return err
	}
	return tx.Commit()
}

// checkForeignKeys asks by a query and not by Exec, which would drop the rows
// that are the answer.
func checkForeignKeys(ctx context.Context, q querier) error {
	rows, err := q.QueryContext(ctx, "SELECT \"table\", count(*) FROM pragma_foreign_key_check GROUP BY 1")
	if err != nil {
		return err
	}
	defer func() { _ = rows.Close() }()
	var dangling []error
	for rows.Next() {
		var table string
		var n int
		if err := rows.Scan(&table, &n); err != nil {
			return err
		}
		dangling = append(dangling, fmt.Errorf("table %s: %d rows refer to rows that are not there", table, n))
	}
	return errors.Join(append(dangling, rows.Err())...)
}
