package knowledge

import (
	"fmt"
	"maps"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// weldAdapters serves the reference cases of the subject weld.
var weldAdapters = map[string]adapter{
	"carbon_equivalent":           same("carbon_equivalent", elementsNotUsed...),
	"graphite_carbon_equivalent":  renamed("graphite_carbon_equivalent", map[string]string{"weight": "k"}, nil, "Mn_pct", "S_pct", "Mg_pct"),
	"heat_input":                  renamed("heat_input", arcInputs, nil),
	"cooling_time_t85":            same("cooling_time_t85"),
	"cooling_rate":                coolingRate,
	"preheat_cet":                 same("preheat_cet"),
	"preheat_table":               preheatTable,
	"steel_preheat":               renamed("steel_preheat", map[string]string{"c_pct": "carbon_pct"}, nil),
	"iron_preheat":                same("iron_preheat"),
	"susceptibility_index":        same("susceptibility_index"),
	"haz_hardness_yurioka87":      same("haz_hardness_yurioka87", elementsNotUsed...),
	"haz_hardness_bl70s":          same("haz_hardness_bl70s", elementsNotUsed...),
	"haz_hardness_dueren":         same("haz_hardness_dueren", elementsNotUsed...),
	"haz_hardness_jis":            same("haz_hardness_jis", elementsNotUsed...),
	"haz_risk_steel":              same("haz_risk_steel", elementsNotUsed...),
	"haz_risk_iron":               same("haz_risk_iron"),
	"haz_risk_manganese":          same("haz_risk_manganese"),
	"ndt_hold":                    same("ndt_hold"),
	"ndt_hold_code":               same("ndt_hold_code"),
	"build_up":                    buildUp,
	"weld_fill_mass":              same("weld_fill_mass"),
	"weld_metal_mass":             same("weld_metal_mass"),
	"bead_layer":                  same("bead_layer"),
	"deposition_rate":             depositionRate,
	"deposition_rate_test":        depositionTrial,
	"deposition_efficiency":       same("deposition_efficiency"),
	"deposition_efficiency_range": depositionEfficiencyRange,
	"electrode_efficiency":        same("electrode_efficiency"),
	"stub_loss":                   same("stub_loss"),
	"wire_length_per_mass":        wireLength,
	"preheat_energy":              preheatEnergy,
	"interpass_rise":              interpassRise,
	"peak_temperature":            peakTemperature,
	"weld_cost_labour":            weldCost,
	"weld_cost_filler":            weldCost,
	"weld_cost_gas":               weldCost,
	"weld_cost_total":             weldCost,
	"weld_payback":                weldPayback,
}

// arcInputs are the names that cases give to what the meters show.
var arcInputs = map[string]string{"voltage": "voltage_V", "current": "current_A"}

// elementsNotUsed may stand in an analysis without entering any formula here.
var elementsNotUsed = []string{"P_pct", "S_pct", "Al_pct", "Ti_pct", "Sn_pct", "As_pct"}

// coolingRate gives degrees a second; the calculation gives the change in one second.
func coolingRate(in *given) (*answers, error) {
	got, err := same("cooling_rate")(in)
	if err != nil {
		return nil, err
	}
	got.values["cooling_rate_C_s"] = measured(got.values["cooling_rate"].Quantity.Value, quantity.Ratio)
	return got, nil
}

// preheatTable finds the table that a case was read from by what it gives.
func preheatTable(in *given) (*answers, error) {
	grade, hasGrade := in.word("grade")
	group, hasGroup := in.word("group")
	switch {
	case in.has("iron", quantity.Ratio):
		return ironTable(in)
	case in.has("restraint", quantity.Ratio):
		return same("preheat_annex")(in)
	case hasGroup:
		values, err := in.valuesFor("steel_preheat", nil)
		if err != nil {
			return nil, err
		}
		short, _, _ := strings.Cut(group, " ") // "S-1 carbon steel"
		values["group"] = worked.Value{Word: short}
		got, err := run("steel_preheat", values)
		if err == nil {
			got.values["preheat"] = got.values["preheat_min"]
		}
		return got, err
	case hasGrade && in.has("thickness", quantity.Length):
		values, err := in.valuesFor("preheat_table", nil)
		if err != nil {
			return nil, err
		}
		if grade == "A572 gr 50" || grade == "A572 grade 50" || grade == "A572 50" {
			values["grade"] = worked.Value{Word: "A572-50"}
		}
		return run("preheat_table", values)
	}
	return same("preheat_chart")(in)
}

// ironTable joins iron and matrix to one word.
func ironTable(in *given) (*answers, error) {
	iron, _ := in.word("iron")
	values := map[string]worked.Value{"iron": {Word: iron}}
	if matrix, ok := in.word("matrix"); ok {
		values["iron"] = worked.Value{Word: iron + "_" + matrix}
	}
	if section, ok := in.word("section"); ok && strings.Contains(section, "thick") {
		values["thick_or_complex"] = worked.Value{Word: "yes"}
	}
	if restraint, ok := in.word("stress"); ok && strings.Contains(restraint, "high") {
		values["high_stress"] = worked.Value{Word: "yes"}
	}
	return run("iron_preheat", values)
}

// withRates adds answers in mass per hour for masses of one hour.
func withRates(got *answers, err error, outputs ...string) (*answers, error) {
	if err != nil {
		return nil, err
	}
	for _, name := range outputs {
		kg := got.values[name].Quantity.Value
		got.values[name+"_kg_h"] = measured(kg, quantity.Ratio)
		got.values[name+"_lb_h"] = measured(kg/pound, quantity.Ratio)
	}
	return got, nil
}

func depositionTrial(in *given) (*answers, error) {
	got, err := same("deposition_rate_test")(in)
	return withRates(got, err, "deposition")
}

// hourly reads a rate of a case as the mass of one hour.
func (g *given) hourly(name string) (worked.Value, bool) {
	for ending, kg := range map[string]float64{"_kg_h": 1, "_lb_h": pound} {
		if v, err := g.number(name+ending, quantity.Ratio); err == nil {
			return measured(v*kg, quantity.Mass), true
		}
	}
	return worked.Value{}, false
}

// perMass reads a price of a mass as the price of one kilogram.
func (g *given) perMass(name string) (worked.Value, bool) {
	for ending, kg := range map[string]float64{"_per_kg": 1, "_per_lb": pound} {
		if v, err := g.number(name+ending, quantity.Ratio); err == nil {
			return measured(v/kg, quantity.Money), true
		}
	}
	return worked.Value{}, false
}

// depositionRate takes the wire table of a case, in inches a pound.
func depositionRate(in *given) (*answers, error) {
	values, err := in.valuesFor("deposition_rate", nil)
	if err != nil {
		return nil, err
	}
	if n, err := in.number("inches_per_lb", quantity.Ratio); err == nil {
		values["length_per_kg"] = measured(n*inch/pound, quantity.Length)
	}
	got, err := run("deposition_rate", values)
	return withRates(got, err, "melt_off", "deposition")
}

// buildUp takes the rate of a case as the mass of one hour.
func buildUp(in *given) (*answers, error) {
	values, err := in.valuesFor("build_up", nil)
	if err != nil {
		return nil, err
	}
	if v, ok := in.hourly("deposition_rate"); ok {
		values["deposition_rate"] = v
	}
	return run("build_up", values)
}

// wireLength turns the length in a kilogram into the figures of wire tables.
func wireLength(in *given) (*answers, error) {
	got, err := renamed("wire_length_per_mass", map[string]string{"inches_per_pound": "inches_per_lb"}, nil)(in)
	if err != nil {
		return nil, err
	}
	mm := got.values["length_per_kg"].Quantity.Value
	got.values["inches_per_lb"] = measured(mm/inch*pound, quantity.Ratio)
	got.values["m_per_kg"] = measured(mm/1000, quantity.Ratio)
	return got, nil
}

func depositionEfficiencyRange(in *given) (*answers, error) {
	process, _ := in.word("process")
	for mark, ours := range map[string]string{
		"E70T-1": "fcaw_e70t_1_2", "E70T-4": "fcaw_e70t_4", "E70T-5": "fcaw_e70t_5", "GMAW": "gmaw_solid",
	} {
		if strings.Contains(process, mark) {
			return run("deposition_efficiency_range", map[string]worked.Value{"process": {Word: ours}})
		}
	}
	return nil, fmt.Errorf("no process %q in the calculation", process)
}

func preheatEnergy(in *given) (*answers, error) {
	return renamed("preheat_energy", map[string]string{"specific_heat": "specific_heat_kJ_kgK"}, nil)(in)
}

func interpassRise(in *given) (*answers, error) {
	names := maps.Clone(arcInputs)
	names["specific_heat"] = "specific_heat_kJ_kgK"
	return renamed("interpass_rise", names, nil)(in)
}

func peakTemperature(in *given) (*answers, error) {
	return renamed("peak_temperature", map[string]string{
		"start_temperature": "T0", "melting_temperature": "Tm", "density": "rho", "specific_heat": "cp_J_gK",
	}, nil)(in)
}

// weldCost leaves a part of the cost at nothing where a case does not ask for it.
func weldCost(in *given) (*answers, error) {
	values := map[string]worked.Value{
		"labour_rate": measured(0, quantity.Money), "deposition_rate": measured(1, quantity.Mass),
		"operating_factor": measured(1, quantity.Ratio), "filler_price": measured(0, quantity.Money),
		"deposition_efficiency": measured(1, quantity.Ratio),
	}
	if v, err := in.number("labour_rate_per_h", quantity.Ratio); err == nil {
		values["labour_rate"] = measured(v, quantity.Money)
	}
	for _, name := range []string{"operating_factor", "deposition_efficiency"} {
		if v, err := in.number(name, quantity.Ratio); err == nil {
			values[name] = measured(v, quantity.Ratio)
		}
	}
	if v, ok := in.hourly("deposition_rate"); ok {
		values["deposition_rate"] = v
	}
	if v, ok := in.perMass("filler_price"); ok {
		values["filler_price"] = v
	}
	in.gas(values)
	got, err := run("weld_cost", values)
	if err != nil {
		return nil, err
	}
	kg := got.values["cost"].Quantity.Value
	got.values["cost_per_kg"], got.values["cost_per_lb"] = measured(kg, quantity.Ratio), measured(kg*pound, quantity.Ratio)
	return got, nil
}

// gas reads flow and price of the gas in cubic feet or in metric units.
func (g *given) gas(values map[string]worked.Value) {
	for ending, mm3 := range map[string]float64{"_ft3_h": foot * foot * foot, "_m3_h": 1e9, "_l_min": 60e6} {
		if v, err := g.number("gas_flow"+ending, quantity.Ratio); err == nil {
			values["gas_flow"] = measured(v*mm3, quantity.Volume)
		}
	}
	for ending, m3 := range map[string]float64{"_per_ft3": foot * foot * foot / 1e9, "_per_m3": 1} {
		if v, err := g.number("gas_price"+ending, quantity.Ratio); err == nil {
			values["gas_price"] = measured(v/m3, quantity.Money)
		}
	}
}

func weldPayback(in *given) (*answers, error) {
	values, err := in.valuesFor("weld_payback", nil)
	if err != nil {
		return nil, err
	}
	if v, ok := in.perMass("saving"); ok {
		values["saving"] = v
	}
	if v, ok := in.hourly("deposition_rate"); ok {
		values["deposition_rate"] = v
	}
	return run("weld_payback", values)
}
