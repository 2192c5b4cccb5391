package weatherfile

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"time"

	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/storage/listfile"
)

// forecast is the part of a saved forecast that is read.
type forecast struct {
	Hourly      map[string]json.RawMessage `json:"hourly"`
	HourlyUnits map[string]string          `json:"hourly_units"`
	Daily       map[string]json.RawMessage `json:"daily"`
	DailyUnits  map[string]string          `json:"daily_units"`
	Offset      *float64                   `json:"utc_offset_seconds"`
}

func isJSON(content []byte) bool {
	content = bytes.TrimLeft(bytes.TrimPrefix(content, []byte("\xEF\xBB\xBF")), " \t\r\n")
	return bytes.HasPrefix(content, []byte("{"))
}

// openJSON makes headings and rows of parallel lists: the hourly ones, else the
// daily ones.
func openJSON(content []byte) (*series.File, error) {
	var in forecast
	if err := json.Unmarshal(bytes.TrimPrefix(content, []byte("\xEF\xBB\xBF")), &in); err != nil {
		return nil, fmt.Errorf("it is no whole JSON (%w): save it again", err)
	}
	name, lists, units := "hourly", in.Hourly, in.HourlyUnits
	if len(lists) == 0 {
		name, lists, units = "daily", in.Daily, in.DailyUnits
	}
	if len(lists) == 0 {
		return nil, errors.New(`it has neither "hourly" nor "daily" lists: save the forecast as JSON by the hour or by the day`)
	}
	f := &series.File{List: name}
	if in.Offset != nil {
		const most = 15 * 3600
		if !(*in.Offset >= -most && *in.Offset <= most) {
			return nil, fmt.Errorf("utc_offset_seconds of %g: a clock is at most 15 hours from UTC, save it again", *in.Offset)
		}
		f.Offset = time.FixedZone("", int(*in.Offset))
	}
	keys := slices.Sorted(maps.Keys(lists))
	keys = slices.DeleteFunc(keys, func(k string) bool { return k == "time" })
	keys = append([]string{"time"}, keys...)
	for i, key := range keys {
		if err := takeList(f, name+"."+key, i, lists[key]); err != nil {
			return nil, err
		}
		heading := key
		if u := units[key]; u != "" && key != "time" {
			heading += " (" + u + ")"
		}
		f.Headings = append(f.Headings, heading)
	}
	return f, nil
}

// takeList lays a list into a column of the rows, the first list, of the times,
// making them.
func takeList(f *series.File, name string, column int, raw json.RawMessage) error {
	var values []json.RawMessage
	if err := json.Unmarshal(raw, &values); err != nil {
		return fmt.Errorf("%s is no list: save the forecast again", name)
	}
	if column == 0 {
		if len(values) == 0 || len(values) > listfile.MostRows {
			return fmt.Errorf("%s has %d values: save a forecast of 1 to %d", name, len(values), listfile.MostRows)
		}
		f.Rows = make([]roll.Row, len(values))
	}
	if len(values) != len(f.Rows) {
		return fmt.Errorf("%s has %d values and the times %d: save the forecast again, whole", name, len(values), len(f.Rows))
	}
	for i, v := range values {
		f.Rows[i].Number = i + 1
		f.Rows[i].Cells = append(f.Rows[i].Cells, roll.Cell{Text: plain(v)})
	}
	return nil
}

// plain is a value as text, nothing for null.
func plain(raw json.RawMessage) string {
	var v any
	if json.Unmarshal(raw, &v) != nil {
		return string(raw)
	}
	switch v := v.(type) {
	case nil:
		return ""
	case string:
		return v
	case float64:
		return strconv.FormatFloat(v, 'f', -1, 64)
	}
	return string(raw)
}
