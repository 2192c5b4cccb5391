// Command lidbook keeps a book of queen rearing from the terminal: what was
// done goes in, what needs the keeper and by when comes out.
package main

import (
	"fmt"
	"io"
	"os"
	"time"
	_ "time/tzdata" // a machine may have no time zones of its own
)

func main() {
	os.Exit(run(os.Args[1:], os.Stdin, os.Stdout, os.Stderr))
}

// run is the program. This is the one place that reads the clock.
func run(args []string, in io.Reader, out, errs io.Writer) int {
	a := &app{now: time.Now().Truncate(time.Second), in: in, out: out, errs: errs, env: os.Getenv, asks: isTerminal(in)}
	err := a.execute(args)
	if err != nil {
		fmt.Fprintln(a.errs, "lidbook: "+a.explain(err))
	}
	return exitCode(err)
}

// isTerminal tells whether somebody sits before in and can answer.
func isTerminal(in io.Reader) bool {
	f, ok := in.(*os.File)
	if !ok {
		return false
	}
	info, err := f.Stat()
	if err != nil || info.Mode()&os.ModeCharDevice == 0 {
		return false
	}
	null, err := os.Stat(os.DevNull)
	return err != nil || !os.SameFile(info, null)
}
