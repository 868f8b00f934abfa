package knowledge

import (
	"fmt"
	"maps"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/bolt"
	"boremend/knowledge/worked"
)

// boltAdapters serves the reference cases of the subject bolt.
var boltAdapters = map[string]adapter{
	"bolt_torque":          boltTorque,
	"bolt_torque_friction": renamed("bolt_torque_friction", nil, map[string]string{"nut_factor": "k"}),
	"bolt_vdi":             boltVDI,
	"thread_engagement":    threadEngagement,
	"bolt_group_shear":     boltGroupShear,
	"joint_separation":     jointSeparation,
	"slip_resistance":      renamed("slip_resistance", nil, map[string]string{"slip_total": "slip_lrfd"}),
	"prying":               same("prying"),
	"bolt_ec3":             renamed("bolt_ec3", nil, map[string]string{"combined": "utilisation"}),
	"bolt_capture":         same("bolt_capture"),
	"sleeve_retention":     same("sleeve_retention"),
	"shoulder":             same("shoulder"),
	"bolted_reinforcement": same("bolted_reinforcement"),
}

// boltTorque works the torque where a case asks for one, the preload where it
// gives the torque, and the loads of the bolt where it gives their stresses.
func boltTorque(in *given) (*answers, error) {
	got := &answers{values: map[string]worked.Value{}}
	if in.has("torque", quantity.Torque) {
		part, err := preloadFromTorque(in)
		if err != nil {
			return nil, err
		}
		got.add(part)
	} else if in.has("k", quantity.Ratio) {
		part, err := renamed("bolt_torque", map[string]string{"nut_factor": "k"}, map[string]string{"preload_used": "preload"})(in)
		if err != nil {
			return nil, err
		}
		got.add(part)
	}
	if in.has("stress_area", quantity.Area) && in.has("proof_stress", quantity.Stress) {
		part, err := same("bolt_loads", "diameter")(in)
		if err != nil {
			return nil, err
		}
		got.add(part)
	}
	return got, nil
}

// preloadFromTorque takes the one nut factor of a case for both ends of the range.
func preloadFromTorque(in *given) (*answers, error) {
	values, err := in.valuesFor("preload_from_torque", nil)
	if err != nil {
		return nil, err
	}
	if k, err := in.number("k", quantity.Ratio); err == nil {
		values["nut_factor_least"], values["nut_factor_most"] = measured(k, quantity.Ratio), measured(k, quantity.Ratio)
	}
	got, err := run("preload_from_torque", values)
	if err == nil {
		got.values["preload"] = got.values["preload_least"]
	}
	return got, err
}

// boltVDI takes head and hole from the table of heads where a case does not say
// them.
func boltVDI(in *given) (*answers, error) {
	values, err := in.valuesFor("bolt_vdi", nil)
	if err != nil {
		return nil, err
	}
	listed, err := bolt.FindThread(fmt.Sprintf("M%g", values["diameter"].Quantity.Value))
	if err == nil {
		for name, mm := range map[string]worked.Optional{"head_bearing_diameter": listed.HeadBearingMM, "clearance_hole": listed.HoleMM} {
			if _, ok := values[name]; !ok && mm.Known {
				values[name] = measured(mm.Value, quantity.Length)
			}
		}
	}
	return run("bolt_vdi", values)
}

// threadEngagement runs a thread by its strip load, or by the bolt that breaks
// first; inch cases give the threads of an inch in place of the pitch.
func threadEngagement(in *given) (*answers, error) {
	calculation := "thread_engagement"
	if in.has("bolt_load", quantity.Force) {
		calculation = "thread_strip"
	}
	values, err := in.valuesFor(calculation, nil)
	if err != nil {
		return nil, err
	}
	if n, err := in.number("threads_per_inch", quantity.Ratio); err == nil {
		values["pitch"] = measured(inch/n, quantity.Length)
	}
	return run(calculation, values)
}

// boltGroupShear spreads a load over bolts at the points of a case, or in rows and
// columns. A case leaves out the part of a load that is nothing.
func boltGroupShear(in *given) (*answers, error) {
	calculation := "bolt_group_shear"
	hasPoints := in.has("bolts", quantity.Length)
	if hasPoints {
		calculation = "bolt_pattern_shear"
	}
	values, err := in.valuesFor(calculation, nil)
	if err != nil {
		return nil, err
	}
	for name, kind := range map[string]quantity.Kind{"force_x": quantity.Force, "force_y": quantity.Force, "load_x": quantity.Length, "load_y": quantity.Length} {
		if _, ok := values[name]; !ok {
			values[name] = measured(0, kind)
		}
	}
	if hasPoints {
		rows, err := in.rows("bolts", quantity.Length)
		if err != nil {
			return nil, err
		}
		var x, y worked.List
		for i, row := range rows {
			if len(row) != 2 {
				return nil, fmt.Errorf("bolt %d has %d coordinates", i+1, len(row))
			}
			x, y = append(x, row[0]), append(y, row[1])
		}
		length := quantity.Quantity{Kind: quantity.Length}
		values["bolt_x"], values["bolt_y"] = worked.Value{Quantity: length, List: x}, worked.Value{Quantity: length, List: y}
	}
	return run(calculation, values)
}

// jointSeparation takes stiffnesses in pounds an inch as well.
func jointSeparation(in *given) (*answers, error) {
	values, err := in.valuesFor("joint_separation", nil)
	if err != nil {
		return nil, err
	}
	for ending, newtonsPerMM := range map[string]float64{
		"_klbf_per_in": 1000 * poundForce / inch, "_kip_per_in": 1000 * poundForce / inch, "_mlbf_per_in": 1e6 * poundForce / inch, "_lbf_per_in": poundForce / inch,
		"_kn_per_mm": 1000, "_n_per_mm": 1, "_mn_per_m": 1000,
	} {
		for _, name := range []string{"kb", "km"} {
			if k, err := in.number(name+ending, quantity.Ratio); err == nil {
				values[name] = measured(k*newtonsPerMM, quantity.Force)
			}
		}
	}
	got, err := run("joint_separation", values)
	if err == nil {
		got.rename(map[string]string{"stiffness_ratio_used": "stiffness_ratio", "preload_used": "preload"})
	}
	return got, err
}

// boltVariants bend the examples of the sheets so that every line that holds only
// for some inputs is worked once. An empty text takes an input away.
var boltVariants = map[string][]map[string]string{
	"bolt_strength":        {{"size": "3/4-10", "grade": "5"}, {"size": "M20x1.5", "grade": "10.9"}},
	"bolt_torque":          {{"preload": "50 kN"}, {"nut_factor": "0.3"}},
	"bolt_torque_friction": {{"minor_area": "144 mm2", "head_mean_diameter": "21 mm"}},
	"bolt_vdi":             {{"head_friction": "0.10"}},
	"thread_engagement":    {{"major_dia_external_min": "", "pitch_dia_internal_max": "", "bolt_tensile": "", "tapped_tensile": ""}, {"tapped_tensile": "2000 MPa"}},
	"thread_strip":         {{"engagement": ""}},
	"tapped_hole":          {{"size": "3/4-10", "grade": "8", "thread_depth": ""}, {"grade": "12.9", "tapped_metal": "structural_steel"}},
	"bolt_group_shear":     {{"force_x": "7 kN", "load_y": "-90 mm", "rows": "3"}, {"columns": "1", "rows": "5"}},
	"bolt_pattern_shear":   {{"bolt_x": "0, 2, 4 in", "bolt_y": "1, 0, 3 in", "force_x": "700 lbf"}},
	"bolt_circle_shear":    {{"force": "0 N", "torque": "900 N*m"}},
	"bolt_group_tension":   {{"tension": "30 kN", "compression_edge": "0 mm"}},
	"slip_resistance":      {{"slip_load": "", "planes": "2"}},
	"joint_separation": {
		{"stiffness_ratio": "", "kb": "500 kN", "km": "1500 kN", "preload": "60 kN", "proof_stress": "", "allowable": ""},
		{"stiffness_ratio": "0.1", "external_load": "100 kN"}, {"preload": "60 kN", "stress_area": "", "proof_stress": ""},
	},
	"prying":           {{"flange_thickness": "60 mm"}, {"flange_thickness": "6 mm"}},
	"bolt_ec3":         {{"fv_ed": "", "ft_ed": ""}, {"fv_ed": "0 N", "ft_ed": "130 kN"}},
	"sleeve_retention": {{"thrust": "", "fit_pressure": ""}},
	"shoulder":         {{"flange_thickness": "4 mm"}, {"flange_thickness": "14 mm"}, {"side_play_total": "20 mm", "shoulders": "1"}},
	"bolt_capture": {
		{"way": "radial", "load_reverses": "no", "ear_metal": "iron"}, {"way": "head_pocket", "head_overlap": "4 mm", "thrust": ""},
		{"size": "3/8-16", "grade": "5", "screws": "7"},
	},
	"bolted_reinforcement": {
		{"load_angle": "30 deg", "fastening": "through", "plates": "2", "joint": "slip", "slip_coefficient": "0.3"},
		{"load_angle": "-90 deg", "ear_metal": "iron", "size": "5/8-11", "grade": "5"}, {"pin_load": "50 MN"},
	},
}

// TestBoltVariants evaluates the formulas of the sheets on lines that their
// examples do not reach, and works each variant in inches too.
func TestBoltVariants(t *testing.T) {
	for name, variants := range boltVariants {
		c, ok := Find(name)
		if !ok {
			t.Errorf("no calculation %s", name)
			continue
		}
		for i, changes := range variants {
			t.Run(fmt.Sprintf("%s/%d", name, i+1), func(t *testing.T) {
				bent := c
				bent.Example = maps.Clone(c.Example)
				for input, text := range changes {
					bent.Example[input] = text
					if text == "" {
						delete(bent.Example, input)
					}
				}
				checkFormulas(t, exampleSheet(t, bent))
				compareOutputs(t, sheetInInches(t, bent), exampleSheet(t, bent))
			})
		}
	}
}

// sheetInInches works the example with lengths in inches, forces in pounds and
// stresses in ksi.
func sheetInInches(t *testing.T, c worked.Calculation) worked.Sheet {
	t.Helper()
	values := exampleValues(t, c)
	for _, f := range c.Inputs {
		value, given := values[f.Name]
		factor := map[quantity.Kind]float64{quantity.Length: inch, quantity.Area: inch * inch, quantity.Force: poundForce, quantity.Stress: 1000 * psi}[f.Kind]
		unit := map[quantity.Kind]string{quantity.Length: "in", quantity.Area: "in2", quantity.Force: "lbf", quantity.Stress: "ksi"}[f.Kind]
		if f.IsWord || !given || factor == 0 {
			continue
		}
		inOther := func(v float64) float64 { return v / factor }
		text := fmt.Sprintf("%.17g %s", inOther(value.Quantity.Value), unit)
		if f.IsList {
			text = listText(value.List, inOther, unit)
		}
		parsed, err := f.Parse(text)
		if err != nil {
			t.Fatal(err)
		}
		values[f.Name] = parsed
	}
	sheet, err := c.Run(values)
	if err != nil {
		t.Fatal(err)
	}
	return sheet
}
