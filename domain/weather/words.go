package weather

import "strconv"

// figure is a quantity to a tenth, without a tenth where that is none.
func figure(x float64) string {
	s := strconv.FormatFloat(x, 'f', 1, 64)
	if s == "-0.0" {
		return "0"
	}
	if whole := len(s) - len(".0"); s[whole:] == ".0" {
		return s[:whole]
	}
	return s
}

// percent is a share in per cent.
func percent(share float64) string { return strconv.FormatFloat(100*share, 'f', 0, 64) + " %" }

// days is a number of days.
func days(n int) string {
	if n == 1 {
		return "1 day"
	}
	return strconv.Itoa(n) + " days"
}
