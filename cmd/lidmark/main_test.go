package main

import (
	"bufio"
	"fmt"
	"io"
	"os"
	"os/exec"
	"testing"
)

// childVariable names the part that a copy of the test program shall play.
const childVariable = "LIDMARK_TEST_CHILD"

// children are the parts that the test program plays in another process. What
// one returns is printed and ends the process.
var children = map[string]func(args []string) error{}

// TestMain plays a part if it is asked to, and else runs the tests.
func TestMain(m *testing.M) {
	part := os.Getenv(childVariable)
	if part == "" {
		os.Exit(m.Run())
	}
	if err := children[part](os.Args[1:]); err != nil {
		fmt.Println(err)
		os.Exit(1)
	}
}

// child is the test program in another process.
type child struct {
	*exec.Cmd
	said *bufio.Scanner
	in   io.WriteCloser
}

// play starts a child that plays a part.
func play(t *testing.T, part string, args ...string) *child {
	t.Helper()
	if children[part] == nil {
		t.Fatalf("there is no part %q", part)
	}
	c := exec.Command(os.Args[0], args...)
	c.Env = append(os.Environ(), childVariable+"="+part)
	c.Stderr = os.Stderr
	in, err := c.StdinPipe()
	check(t, err)
	out, err := c.StdoutPipe()
	check(t, err)
	check(t, c.Start())
	t.Cleanup(func() { _ = c.Process.Kill() })
	return &child{c, bufio.NewScanner(out), in}
}

// line is the next line the child prints; "" when it prints no more.
func (c *child) line() string {
	c.said.Scan()
	return c.said.Text()
}

// answer lets the child go on, which waits for a line.
func (c *child) answer() { _, _ = fmt.Fprintln(c.in) }

// kill kills the child at once and returns the lines it had printed by then.
func (c *child) kill() (rest []string) {
	_ = c.Process.Kill()
	for c.said.Scan() {
		rest = append(rest, c.said.Text())
	}
	_ = c.Wait()
	return rest
}
