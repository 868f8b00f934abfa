package knowledge

import (
	"maps"
	"testing"

	"boremend/knowledge/worked"
)

// TestBranches works pages of cutting and measuring on inputs for which they use
// other formulas than on their example, and evaluates each formula shown.
func TestBranches(t *testing.T) {
	setup := map[string]string{
		"work": "alloy_steel_qt", "bore_before": "92 mm", "bore_after": "100 mm", "length": "80 mm", "span": "500 mm", "bar_diameter": "60 mm", "depth": "1 mm", "feed": "0.25 mm",
	}
	passes := map[string]string{"bore_before": "99.6 mm", "bore_after": "100 mm", "length": "80 mm", "rough_depth": "1 mm", "rough_feed": "0.2 mm", "speed": "20 m/min"}
	copying := map[string]string{"kc": "2000 MPa", "feed": "0.25 mm", "depth": "1 mm", "stiffness_n_mm": "5954", "runout_before": "0.01 mm", "target_runout": "0.02 mm"}
	parts := map[string]string{"standard": "5, 2 um", "rectangular_half": "10 um", "triangular_half": "3, 4 um"}
	tests := []struct {
		calculation string
		inputs      map[string]string
		symbol, is  string // a line that this branch must show
	}{
		{"boring_setup", with(setup, "tool", "hss"), "K_t", "1.2"},
		{"boring_setup", with(setup, "speed", "60 m/min"), "v", "v_0"},
		{"boring_setup", with(setup, "speed", "60 m/min"), "K_t", "1"},
		{"boring_setup", with(setup, "bearings", "rigid"), "y_g", "G * S^3 / (384 * E * I)"},
		{"boring_setup", with(setup, "bearings", "rigid"), "k", "3 * E * I * S^3 / (a^3 * b^3)"},
		{"boring_setup", with(setup, "tool_at", "200 mm"), "a", "a_0"},
		{"boring_setup", with(setup, "work", "manganese_steel"), "c", "0"},
		{"boring_setup", with(setup, "undersize_allowed", "1 mm"), "c", "0"},
		{"boring_setup", with(setup, "undersize_allowed", "1 um"), "c", "min(3, max(0, ceil(log(u_0 / u_f) / log(mu_f) - 0.000000001)))"},
		{"boring_setup", with(setup, "bore_before", "99.8 mm"), "a_1", "0"},
		{"boring_passes", passes, "a_1", "0"},
		{"boring_passes", with(passes, "bore_before", "90 mm"), "a_1", "(s - a_2) / N_r"},
		{"error_copy", copying, "N_t", "0"},
		{"kienzle_kc", map[string]string{"kc11": "1800 MPa", "mc": "0.2", "feed": "0.2 mm"}, "K_g", "1"},
		{"surface_finish", map[string]string{"feed": "0.2 mm", "side_edge_angle": "20 deg", "end_edge_angle": "10 deg"}, "R_t", "f / (tan(C_s * pi / 180) + 1 / tan(C_e * pi / 180))"},
		{"spindle_speed", map[string]string{"diameter": "100 mm", "spindle_rpm": "60"}, "v", "pi * D * n_0 / 1000"},
		{"cut_time", map[string]string{"length": "80 mm", "feed": "0.2 mm", "spindle_rpm": "60"}, "N", "1 + c"},
		{"turning_rate", map[string]string{"start_diameter": "90 mm", "finish_diameter": "80 mm", "speed_rpm": "60", "axial_speed": "20 mm/min", "specific_energy": "2 GPa"}, "v_a", "v_0"},
		{"bar_min_diameter_for_frequency", map[string]string{"length": "400 mm", "frequency_hz": "150", "root_squared_own": "12"}, "B", "B_0"},
		{"uncertainty_rss", parts, "q", "sum(u, #^2) + sum(a, #^2) / 3 + sum(t, #^2) / 6"},
		{"uncertainty_rss", without(parts, "standard"), "q", "sum(a, #^2) / 3 + sum(t, #^2) / 6"},
		{"uncertainty_rss", without(parts, "rectangular_half"), "q", "sum(u, #^2) + sum(t, #^2) / 6"},
		{"uncertainty_rss", without(parts, "standard", "triangular_half"), "q", "sum(a, #^2) / 3"},
		{"uncertainty_rss", without(parts, "standard", "rectangular_half"), "q", "sum(t, #^2) / 6"},
	}
	for _, test := range tests {
		t.Run(test.calculation+"/"+test.symbol+"="+test.is, func(t *testing.T) {
			sheet := runText(t, test.calculation, test.inputs)
			checkFormulas(t, sheet)
			shown := map[string]int{}
			is := ""
			for _, line := range sheet.Lines {
				shown[line.Symbol]++
				if line.Symbol == test.symbol {
					is = line.Formula
				}
			}
			if is != test.is || shown[test.symbol] != 1 {
				t.Errorf("%s = %s, shown %d times; want %s", test.symbol, is, shown[test.symbol], test.is)
			}
			for symbol, times := range shown {
				if times != 1 {
					t.Errorf("%s is worked %d times", symbol, times)
				}
			}
		})
	}
}

func with(inputs map[string]string, name, text string) map[string]string {
	bent := maps.Clone(inputs)
	bent[name] = text
	return bent
}

func without(inputs map[string]string, names ...string) map[string]string {
	bent := maps.Clone(inputs)
	for _, name := range names {
		delete(bent, name)
	}
	return bent
}

// runText works a calculation on inputs as a person would write them.
func runText(t *testing.T, calculation string, inputs map[string]string) worked.Sheet {
	t.Helper()
	c, ok := Find(calculation)
	if !ok {
		t.Fatalf("the catalogue has no calculation %s", calculation)
	}
	c.Example = inputs
	return exampleSheet(t, c)
}
