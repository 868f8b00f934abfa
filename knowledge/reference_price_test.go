package knowledge

import (
	"fmt"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// priceAdapters serves the reference cases of the subject price.
var priceAdapters = map[string]adapter{
	"pert":             threePoints,
	"operating_factor": operatingFactors,
}

// operatingFactors serves the defaults of a worksheet for all ways of welding.
func operatingFactors(*given) (*answers, error) {
	all := &answers{values: map[string]worked.Value{}}
	for way, names := range map[string][2]string{
		"stick": {"smaw", "smaw"}, "semi_automatic": {"semi_auto_gmaw_fcaw", "semi_auto_gmaw_fcaw"}, "automatic": {"automatic_min", "automatic_max"},
	} {
		got, err := run("operating_factor", map[string]worked.Value{"way": {Word: way}})
		if err != nil {
			return nil, err
		}
		all.values[names[0]], all.values[names[1]] = got.values["factor_min"], got.values["factor_max"]
		all.sheets = append(all.sheets, got.sheets...)
	}
	return all, nil
}

// threePoints serves a path of activities, each guessed three times, in any one
// unit. The first and the last activity are worked by themselves too.
func threePoints(in *given) (*answers, error) {
	rows, err := in.rows("estimates", quantity.Ratio)
	if err != nil {
		return nil, err
	}
	var low, likely, high worked.List
	for _, row := range rows {
		if len(row) != 3 {
			return nil, fmt.Errorf("estimates holds %v, want low, likely and high", row)
		}
		low, likely, high = append(low, row[0]), append(likely, row[1]), append(high, row[2])
	}
	values := map[string]worked.Value{
		"low": listed(low, quantity.Ratio), "likely": listed(likely, quantity.Ratio), "high": listed(high, quantity.Ratio),
	}
	if deadline, err := in.number("deadline", quantity.Ratio); err == nil {
		values["limit"] = measured(deadline, quantity.Ratio)
	}
	got, err := run("three_point_sum", values)
	if err != nil {
		return nil, err
	}
	got.rename(map[string]string{"standard_deviation": "std_dev"})
	for name, i := range map[string]int{"first": 0, "last": len(rows) - 1} {
		one, err := run("three_point", map[string]worked.Value{
			"low": measured(low[i], quantity.Ratio), "likely": measured(likely[i], quantity.Ratio), "high": measured(high[i], quantity.Ratio),
		})
		if err != nil {
			return nil, err
		}
		got.values[name+"_expected"] = one.values["expected"]
		got.sheets = append(got.sheets, one.sheets...)
	}
	return got, nil
}
