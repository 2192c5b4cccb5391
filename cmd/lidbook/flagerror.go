package main

import (
	"errors"
	"fmt"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"
)

// flagError says in the keeper's words what is wrong with a flag.
func flagError(c *cobra.Command, err error) error {
	var value *pflag.InvalidValueError
	var missing *pflag.ValueRequiredError
	var unknown *pflag.NotExistError
	switch {
	case errors.As(err, &value):
		return fmt.Errorf("--%s %s: %s", value.GetFlag().Name, value.GetValue(), whyNot(value))
	case errors.As(err, &missing):
		what, usage := pflag.UnquoteUsage(missing.GetFlag())
		return fmt.Errorf("--%s wants %s behind it: %s", missing.GetFlag().Name, what, usage)
	case errors.As(err, &unknown) && unknown.GetSpecifiedShortnames() != "" && len(wantedArgs(c.Use)) > 0:
		return fmt.Errorf("unknown flag -%s: what begins with - and is no flag goes behind two dashes, as in: %s -- -%[1]s",
			unknown.GetSpecifiedShortnames(), c.CommandPath())
	case errors.As(err, &unknown):
		return fmt.Errorf("unknown flag %s", dashed(unknown))
	default:
		return err
	}
}

// whyNot is what a flag has against its value: what our own flags say, and for
// those that are set or not how to write them.
func whyNot(e *pflag.InvalidValueError) string {
	if e.GetFlag().Value.Type() == "bool" {
		return "write it alone, or with =false"
	}
	return errors.Unwrap(e).Error()
}

// dashed is a flag that there is not, as it was typed.
func dashed(e *pflag.NotExistError) string {
	if short := e.GetSpecifiedShortnames(); short != "" {
		return "-" + short
	}
	return "--" + e.GetSpecifiedName()
}
