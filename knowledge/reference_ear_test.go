package knowledge

import (
	"fmt"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// earAdapters serves the reference cases of the subject ear.
var earAdapters = map[string]adapter{
	"lug_load":           lugLoad,
	"lug_load_direction": lugLoadDirection,
	"lug_load_growth":    lugLoadGrowth,
	"lug_load_contact":   covers(2.2, lugContact),
	"lug_load_sleeve":    covers(1.4, renamed("lug_sleeve", nil, nil, "end_radius_mm", "direction", "ear_nu")),
	"pin_plate_bth1":     pinPlateBTH1,
	"pin_plate_aisc":     renamed("pin_plate_aisc", plateStrength, nil),
	"eyebar_aisc":        renamed("eyebar_aisc", plateStrength, nil),
	"pin_ec3":            pinEC3,
	"padeye_dnv":         renamed("padeye_dnv", map[string]string{"yield_strength": "yield"}, nil),
	"padeye_simple":      padeyeSimple,
	"lug_allowables":     renamed("lug_allowables", map[string]string{"tensile_strength": "ftu", "tensile_strength_across": "ftux"}, nil),
	"lug_oblique":        same("lug_oblique"),
	"bearing_pressure":   same("bearing_pressure"),
	"conformal_contact":  same("conformal_contact"),
	"pin_beam":           pinBeam,
	"flange_ring":        same("flange_ring"),
	"anti_rotation":      same("anti_rotation"),
}

// plateStrength are the names that cases give to the strength of a plate.
var plateStrength = map[string]string{"yield_strength": "fy", "tensile_strength": "fu"}

// covers serves a kind whose calculation gives figures to design with: they must
// not lie below the published ones and be at most so many times as large. The cases
// are finite elements of a single ear, slack and load.
func covers(most float64, a adapter) adapter {
	return func(in *given) (*answers, error) {
		got, err := a(in)
		if err == nil {
			got.coverMost = most
		}
		return got, err
	}
}

// lugLoad names the worse side of a bore off centre as its cases do.
func lugLoad(in *given) (*answers, error) {
	got, err := same("lug_load")(in)
	if err == nil {
		got.values["peak_hoop_side_worse"] = got.values["peak_hoop_side"]
	}
	return got, err
}

func lugContact(in *given) (*answers, error) {
	return renamed("lug_contact", map[string]string{"modulus": "e"}, nil, "base", "nu", "clearance_parameter")(in)
}

// lugLoadDirection runs every angle of a case and names the answers after it.
func lugLoadDirection(in *given) (*answers, error) {
	values, err := in.valuesFor("lug_load_direction", nil)
	if err != nil {
		return nil, err
	}
	angles, err := in.rows("load_angles_deg_from_free_end", quantity.Angle)
	if err != nil {
		return nil, err
	}
	all := &answers{values: map[string]worked.Value{}}
	for _, angle := range angles {
		values["load_angle"] = measured(angle[0], quantity.Angle)
		got, err := run("lug_load_direction", values)
		if err != nil {
			return nil, err
		}
		all.values[fmt.Sprintf("peak_hoop_%03.0fdeg", angle[0])] = got.values["peak_hoop"]
		all.add(got)
	}
	return all, nil
}

// lugLoadGrowth runs every enlargement of a case and names the answers after it.
func lugLoadGrowth(in *given) (*answers, error) {
	before, err := in.number("bore_dia_before", quantity.Length)
	if err != nil {
		return nil, err
	}
	values, err := in.valuesFor("lug_load_growth", nil)
	if err != nil {
		return nil, err
	}
	enlargements, err := in.rows("bore_enlargement_dia", quantity.Length)
	if err != nil {
		return nil, err
	}
	all := &answers{values: map[string]worked.Value{}}
	for _, more := range enlargements {
		values["bore_dia_after"] = measured(before+more[0], quantity.Length)
		got, err := run("lug_load_growth", values)
		if err != nil {
			return nil, err
		}
		for _, direction := range []string{"pull", "push", "side"} {
			all.values[fmt.Sprintf("growth_%s_plus%gmm", direction, more[0])] = got.values["growth_"+direction]
		}
		all.add(got)
	}
	return all, nil
}

// pinPlateBTH1 also takes other spellings of the shear rule of 2005.
func pinPlateBTH1(in *given) (*answers, error) {
	values, err := in.valuesFor("pin_plate_bth1", plateStrength)
	if err != nil {
		return nil, err
	}
	if rule, ok := values["shear_area_rule"]; ok && strings.Contains(rule.Word, "45") {
		values["shear_area_rule"] = worked.Value{Word: "dh_45"}
	}
	return run("pin_plate_bth1", values)
}

// pinEC3 runs the pin alone, and the joint where a case gives plates and a load.
func pinEC3(in *given) (*answers, error) {
	strength := map[string]string{"pin_yield": "pin_fy", "pin_tensile": "pin_fu", "plate_yield": "plate_fy"}
	got, err := renamed("pin_ec3", strength, nil)(in)
	if err != nil || !in.has("inner_thickness", quantity.Length) {
		return got, err
	}
	joint, err := renamed("pin_joint_ec3", strength, nil)(in)
	if err != nil {
		return nil, err
	}
	got.add(joint)
	return got, nil
}

// padeyeSimple gives the stresses in tonnes-force on a square millimetre as well.
func padeyeSimple(in *given) (*answers, error) {
	got, err := renamed("padeye_simple", map[string]string{"yield_strength": "fy"}, nil)(in)
	if err != nil {
		return nil, err
	}
	for _, name := range []string{"bearing", "shear_one_plane", "net_tension"} {
		got.values[name+"_tf_mm2"] = measured(got.values[name].Quantity.Value/(1000*gravity), quantity.Ratio)
	}
	return got, nil
}

// pinBeam runs a pin on a span, or one through a fork.
func pinBeam(in *given) (*answers, error) {
	if in.has("span", quantity.Length) {
		return renamed("pin_flexure", plateStrength, nil)(in)
	}
	return same("pin_beam")(in)
}
