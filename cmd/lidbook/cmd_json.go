package main

import (
	"fmt"
	"maps"
	"reflect"
	"slices"
	"strings"

	"github.com/spf13/cobra"
)

func jsonCommand(a *app) *cobra.Command {
	return &cobra.Command{
		Use:   "json [COMMAND]",
		Short: "The names that --json prints, by command; they stay",
		Args:  cobra.MaximumNArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			if len(args) == 1 && shapes[args[0]] == nil {
				return &usageError{err: fmt.Errorf("%s prints no JSON: choose one of %s", args[0], strings.Join(slices.Sorted(maps.Keys(shapes)), ", "))}
			}
			for _, name := range slices.Sorted(maps.Keys(shapes)) {
				if len(args) == 0 || args[0] == name {
					a.line("%s", name)
					a.printShape(reflect.TypeOf(shapes[name]), "  ")
				}
			}
			return nil
		},
	}
}

// printShape prints the names and types of a shape, those inside deeper; those of a
// shape within its like stand there already.
func (a *app) printShape(t reflect.Type, indent string) {
	for t.Kind() == reflect.Slice || t.Kind() == reflect.Pointer {
		t = t.Elem()
	}
	for f := range t.Fields() {
		if f.Anonymous {
			a.printShape(f.Type, indent)
			continue
		}
		name, _, _ := strings.Cut(f.Tag.Get("json"), ",")
		if name == "-" || !f.IsExported() {
			continue
		}
		inner := f.Type
		many := ""
		if inner.Kind() == reflect.Slice {
			inner, many = inner.Elem(), "list of "
		}
		for inner.Kind() == reflect.Pointer {
			inner = inner.Elem()
		}
		if inner.Kind() != reflect.Struct {
			a.line("%s%s: %s%s", indent, name, many, typeWord(inner.Kind()))
			continue
		}
		a.line("%s%s: %sobjects", indent, name, many)
		if inner != t {
			a.printShape(inner, indent+"  ")
		}
	}
}

func typeWord(k reflect.Kind) string {
	switch k {
	case reflect.Bool:
		return "true or false"
	case reflect.String:
		return "text"
	default:
		return "number"
	}
}
