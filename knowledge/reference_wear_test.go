package knowledge

import (
	"fmt"
	"math"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// wearAdapters serves the reference cases of the subject wear.
var wearAdapters = map[string]adapter{
	"sleeve_geometry":          same("sleeve_geometry"),
	"circle_fit_geometric":     points("circle_fit_geometric"),
	"circle_fit_kasa":          points("circle_fit_kasa"),
	"circle_fit_taubin":        points("circle_fit_taubin"),
	"circle_fit_pratt":         points("circle_fit_pratt"),
	"circle_fit_unit_norm":     points("circle_fit_unit_norm"),
	"min_circumscribed_circle": points("min_circumscribed_circle"),
	"roundness_four_circles":   roundness,
	"bore_from_diameters":      same("bore_from_diameters"),
	"radial_cleanup":           same("radial_cleanup"),
	"bore_gauge_setting_error": same("bore_gauge_setting_error"),
	"uncertainty_rss":          same("uncertainty_rss"),
	"uncertainty_of_fit":       same("uncertainty_of_fit"),
	"thermal_size":             same("thermal_size"),
}

// points serves cases that give a list of places [x, y].
func points(calculation string) adapter {
	return func(in *given) (*answers, error) {
		rows, err := in.rows("points", quantity.Length)
		if err != nil {
			return nil, err
		}
		var x, y worked.List
		for _, row := range rows {
			if len(row) != 2 {
				return nil, fmt.Errorf("points holds %v, want x and y", row)
			}
			x, y = append(x, row[0]), append(y, row[1])
		}
		return run(calculation, map[string]worked.Value{"x": listed(x, quantity.Length), "y": listed(y, quantity.Length)})
	}
}

// roundness serves points, radii, and ideal ovals given by their axes.
func roundness(in *given) (*answers, error) {
	if in.has("radius", quantity.Length) {
		return same("roundness_four_circles")(in)
	}
	if !in.has("semi_major", quantity.Length) {
		return points("roundness_four_circles")(in)
	}
	major, err := in.number("semi_major", quantity.Length)
	if err != nil {
		return nil, err
	}
	minor, err := in.number("semi_minor", quantity.Length)
	if err != nil {
		return nil, err
	}
	count, err := in.number("count", quantity.Count)
	if err != nil {
		return nil, err
	}
	var x, y worked.List
	for i := range int(count) {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / count)
		x, y = append(x, major*cos), append(y, minor*sin)
	}
	return run("roundness_four_circles", map[string]worked.Value{"x": listed(x, quantity.Length), "y": listed(y, quantity.Length)})
}
