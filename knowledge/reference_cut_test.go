package knowledge

import (
	"math"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// cutAdapters serves the reference cases of the subject cut, and those of welding
// that stand beside them.
var cutAdapters = map[string]adapter{
	"kienzle_kc":                     same("kienzle_kc"),
	"kienzle_fit":                    same("kienzle_fit"),
	"kienzle_ratio":                  kienzleRatio,
	"cutting_force":                  same("cutting_force"),
	"cutting_power":                  same("cutting_power"),
	"turning_rate":                   turningRate,
	"turning_rate_inch":              turningRate,
	"cut_time":                       cutTime,
	"spindle_speed":                  renamed("spindle_speed", spindle, map[string]string{"cutting_speed": "speed"}),
	"surface_finish":                 same("surface_finish"),
	"bar_section":                    barSection,
	"bar_section_inch":               barSection,
	"bar_cantilever":                 same("bar_cantilever"),
	"bar_cantilever_inch":            same("bar_cantilever"),
	"bar_between_supports":           same("bar_between_supports"),
	"bar_overhung":                   same("bar_overhung"),
	"bar_sag":                        same("bar_sag"),
	"bar_frequency":                  supported("bar_frequency"),
	"bar_min_diameter_for_frequency": barMinDiameter,
	"chatter_limit":                  stiff("chatter_limit"),
	"bar_ld_equivalent":              same("bar_ld_equivalent"),
	"error_copy":                     stiff("error_copy"),
	"tack_group":                     same("tack_group"),
	"fillet_unit_strength":           filletStrength,
	"fillet_weight":                  renamed("weld_metal_mass", nil, map[string]string{"mass": "weight"}),
	"weld_cost_per_lb":               weldCostPerPound,
	"weld_time":                      weldTime,
}

// spindle: the calculations keep the revolutions that go in apart from those that
// come out.
var spindle = map[string]string{"spindle_rpm": "speed_rpm"}

// with adds a figure without a kind of its own under the name that a case gives it.
func (a *answers) with(name string, v float64) { a.values[name] = measured(v, quantity.Ratio) }

func (a *answers) number(name string) float64 { return a.values[name].Quantity.Value }

func kienzleRatio(in *given) (*answers, error) {
	got, err := same("kienzle_ratio")(in)
	if err == nil {
		got.with("force_change_percent", 100*got.number("force_change"))
	}
	return got, err
}

// turningRate takes the energy for a volume of chips in the units of the books.
func turningRate(in *given) (*answers, error) {
	values, err := in.valuesFor("turning_rate", nil)
	if err != nil {
		return nil, err
	}
	const horsepowerMinute = 60 * 550 * poundForce * foot / 1000 // in N m
	for name, mpa := range map[string]float64{
		"specific_energy_j_mm3": 1000, "specific_energy_ws_mm3": 1000, "specific_energy_w_s_mm3": 1000,
		"unit_power_hp_min_in3": horsepowerMinute / (inch * inch * inch) * 1000,
	} {
		if v, err := in.number(name, quantity.Ratio); err == nil {
			values["specific_energy"] = measured(v*mpa, quantity.Stress)
		}
	}
	got, err := run("turning_rate", values)
	if err != nil {
		return nil, err
	}
	got.rates(got.number("removal_rate_mm3_min"))
	return got, nil
}

// rates adds a rate of chips in the units of the books.
func (a *answers) rates(mm3PerMin float64) {
	a.with("removal_rate_mm3_min", mm3PerMin)
	a.with("removal_rate_mm3_s", mm3PerMin/60)
	a.with("removal_rate_cm3_min", mm3PerMin/1000)
	a.with("removal_rate_in3_min", mm3PerMin/(inch*inch*inch))
}

func cutTime(in *given) (*answers, error) {
	got, err := renamed("cut_time", spindle, nil)(in)
	if err != nil {
		return nil, err
	}
	if rate, ok := got.values["removal_rate_mm3_s"]; ok {
		got.rates(60 * rate.Quantity.Value)
	}
	return got, nil
}

func barSection(in *given) (*answers, error) {
	got, err := same("bar_section")(in)
	if err == nil {
		got.with("second_moment_in4", got.number("second_moment_mm4")/math.Pow(inch, 4))
	}
	return got, err
}

// supported takes the words of books for how a bar is held.
func supported(calculation string) adapter {
	return func(in *given) (*answers, error) {
		values, err := in.valuesFor(calculation, nil)
		if err != nil {
			return nil, err
		}
		words := map[string]string{
			"simple": "simply_supported", "pinned": "simply_supported", "pinned_pinned": "simply_supported",
			"fixed_free": "cantilever", "clamped_free": "cantilever", "overhung": "cantilever",
			"fixed_fixed": "fixed", "clamped": "fixed", "clamped_clamped": "fixed", "fixed_ends": "fixed",
		}
		if ours, ok := words[values["support"].Word]; ok {
			values["support"] = worked.Value{Word: ours}
		}
		return run(calculation, values)
	}
}

// barMinDiameter serves cases from a textbook on design that rounds the square of
// the cantilever's root, 3.516015, to 3.5156: ISBN 9781498721127.
func barMinDiameter(in *given) (*answers, error) {
	if in.has("support", quantity.Ratio) {
		return supported("bar_min_diameter_for_frequency")(in)
	}
	values, err := in.valuesFor("bar_min_diameter_for_frequency", nil)
	if err != nil {
		return nil, err
	}
	values["root_squared_own"] = measured(3.5156, quantity.Ratio)
	return run("bar_min_diameter_for_frequency", values)
}

// stiff takes a stiffness in any unit.
func stiff(calculation string) adapter {
	return func(in *given) (*answers, error) {
		values, err := in.valuesFor(calculation, nil)
		if err != nil {
			return nil, err
		}
		for ending, perMM := range map[string]float64{"n_m": 1e-3, "n_um": 1e3, "kn_mm": 1e3, "mn_m": 1e3, "lbf_in": poundForce / inch} {
			if v, err := in.number("stiffness_"+ending, quantity.Ratio); err == nil {
				values["stiffness_n_mm"] = measured(v*perMM, quantity.Ratio)
			}
		}
		return run(calculation, values)
	}
}

func filletStrength(in *given) (*answers, error) {
	got, err := same("fillet_unit_strength")(in)
	if err == nil {
		got.with("strength_kip_in", got.number("strength_n_mm")*inch/(1000*poundForce))
		got.with("strength_lbf_in", got.number("strength_n_mm")*inch/poundForce)
	}
	return got, err
}

// weldCostPerPound gives prices an hour and a pound, in dollars.
func weldCostPerPound(in *given) (*answers, error) {
	values, err := in.valuesFor("weld_cost", nil)
	if err != nil {
		return nil, err
	}
	cubicFoot := foot * foot * foot
	for name, take := range map[string]struct {
		input  string
		kind   quantity.Kind
		factor float64
	}{
		"labour_usd_h":     {"labour_rate", quantity.Money, 1},
		"deposition_lb_h":  {"deposition_rate", quantity.Mass, pound},
		"electrode_usd_lb": {"filler_price", quantity.Money, 1 / pound},
		"gas_ft3_h":        {"gas_flow", quantity.Volume, cubicFoot},
		"gas_usd_ft3":      {"gas_price", quantity.Money, 1e9 / cubicFoot},
	} {
		if v, err := in.number(name, quantity.Ratio); err == nil {
			values[take.input] = measured(v*take.factor, take.kind)
		}
	}
	got, err := run("weld_cost", values)
	if err != nil {
		return nil, err
	}
	got.with("labour_usd_lb", got.number("labour_cost")*pound)
	got.with("electrode_usd_lb_deposited", got.number("filler_cost")*pound)
	got.with("gas_usd_lb", got.number("gas_cost")*pound)
	got.with("total_usd_lb", got.number("cost")*pound)
	return got, nil
}

// weldTime welds the mass that a case gives into a bore just long enough for it.
func weldTime(in *given) (*answers, error) {
	deposit, err := in.number("deposit", quantity.Mass)
	if err != nil {
		return nil, err
	}
	values, err := in.valuesFor("build_up", nil)
	if err != nil {
		return nil, err
	}
	for ending, kg := range map[string]float64{"lb_h": pound, "kg_h": 1} {
		if v, err := in.number("deposition_"+ending, quantity.Ratio); err == nil {
			values["deposition_rate"] = measured(v*kg, quantity.Mass)
		}
	}
	const worn, filled, density = 110.0, 96.0, 7850.0
	values["worn_dia"], values["finish_dia"] = measured(worn, quantity.Length), measured(filled, quantity.Length)
	values["machining_allowance_radial"] = measured(0, quantity.Length)
	values["deposition_efficiency"], values["density"] = measured(1, quantity.Ratio), measured(density, quantity.Density)
	values["length"] = measured(deposit*1e9/(density*math.Pi/4*(worn*worn-filled*filled)), quantity.Length)
	got, err := run("build_up", values)
	if err == nil {
		got.values["time"] = got.values["welding_time"]
	}
	return got, err
}
