// Package childtest lets a test program play parts in processes of their own,
// which can be killed while they write.
package childtest

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"testing"
)

// variable names the part that a copy of the test program shall play.
const variable = "LIDMARK_TEST_CHILD"

// Parts are the parts that a test program plays in another process. What one
// returns is printed and ends the process.
type Parts map[string]func(args []string) error

// Main plays a part if it is asked to, and else runs the tests. It is the body
// of TestMain, and ends the process.
func (p Parts) Main(m *testing.M) {
	part := os.Getenv(variable)
	if part == "" {
		os.Exit(m.Run())
	}
	if err := p[part](os.Args[1:]); err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
	os.Exit(0)
}

// Child is the test program in another process.
type Child struct {
	*exec.Cmd
	said *bufio.Scanner
	in   io.WriteCloser
}

// Play starts a child that plays a part; it ends with the test.
func (p Parts) Play(t *testing.T, part string, args ...string) *Child {
	t.Helper()
	if p[part] == nil {
		t.Fatalf("there is no part %q", part)
	}
	cmd := exec.Command(os.Args[0], args...)
	cmd.Env = append(os.Environ(), variable+"="+part)
	cmd.Stderr = os.Stderr
	in, inErr := cmd.StdinPipe()
	out, outErr := cmd.StdoutPipe()
	for _, err := range []error{inErr, outErr, cmd.Start()} {
		if err != nil {
			t.Fatal(err)
		}
	}
	t.Cleanup(func() { _ = cmd.Process.Kill() })
	return &Child{cmd, bufio.NewScanner(out), in}
}

// Line is the next line the child prints; "" when it prints no more.
func (c *Child) Line() string {
	c.said.Scan()
	return c.said.Text()
}

// Answer lets the child go on, which waits for a line.
func (c *Child) Answer() { _, _ = fmt.Fprintln(c.in) }

// Kill kills the child at once and returns the lines it had printed by then.
func (c *Child) Kill() (rest []string) {
	_ = c.Process.Kill()
	rest = c.Rest()
	_ = c.Wait()
	return rest
}

// Rest are the lines that the child prints until it ends.
func (c *Child) Rest() (rest []string) {
	for c.said.Scan() {
		rest = append(rest, c.said.Text())
	}
	return rest
}
