package knowledge

import (
	"errors"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// fitAdapters serves the reference cases of press and shrink fits.
var fitAdapters = map[string]adapter{
	"press_fit_pressure":            same("press_fit_pressure"),
	"press_fit_numeric":             same("press_fit_pressure"),
	"press_fit_ring":                pressFitRing,
	"press_fit_ear":                 pressFitEar,
	"interference_from_pressure":    interferenceFromPressure,
	"pressure_from_seat_growth":     same("pressure_from_seat_growth"),
	"hoop_from_pressure":            same("hoop_from_pressure"),
	"von_mises_biaxial":             same("von_mises_biaxial"),
	"thick_cylinder_yield_pressure": same("thick_cylinder_yield_pressure"),
	"elastic_limit_pressure":        same("elastic_limit_pressure"),
	"pressure_for_torque":           same("pressure_for_torque"),
	"press_fit_capacity":            same("press_fit_capacity"),
	"press_force_per_length":        same("press_force_per_length"),
	"press_tonnage_factor":          same("press_tonnage_factor"),
	"press_tonnage_rule":            same("press_tonnage_rule"),
	"shrink_temperature":            same("shrink_temperature"),
	"shrink_cooling_temperature":    same("shrink_cooling_temperature"),
	"shrink_temperature_combined":   same("shrink_temperature_combined"),
	"thin_ring_shrink":              same("thin_ring_shrink"),
	"thermal_strain_table":          same("thermal_strain"),
	"cold_shrink_check":             same("cold_shrink_check"),
	"service_interference":          same("service_interference"),
	"bore_closure_same_material":    same("bore_closure_same_material"),
	"roughness_loss":                same("roughness_loss"),
	"fit_from_limits":               same("fit_from_limits"),
	"interference_per_diameter":     same("interference_per_diameter"),
	"wear_limit_clearance":          same("wear_limit_clearance"),
	"housing_leadin_chamfer":        same("housing_leadin_chamfer"),
	"iso286_limits":                 same("iso286_limits"),
	"fit_limits_from_deviation":     same("fit_limits_from_deviation", "fit"), // fit only names the zones that the deviations come from
	"ansi_b41_limits":               same("ansi_b41_limits"),
}

// pressFitRing serves rings given by the wall of the sleeve. hub_material only
// names the metal of the elastic constants.
func pressFitRing(in *given) (*answers, error) {
	in.ignore("hub_material", "sleeve_material")
	names := map[string]string{"seat_diameter": "interface_dia", "interference_diametral": "interference_dia"}
	values, err := in.valuesFor("press_fit_pressure", names)
	if err != nil {
		return nil, err
	}
	if values["sleeve_id"], err = sleeveBore(in, values["seat_diameter"]); err != nil {
		return nil, err
	}
	got, err := run("press_fit_pressure", values)
	if err != nil {
		return nil, err
	}
	got.rename(map[string]string{
		"pressure": "interface_pressure", "hub_hoop_at_seat": "hub_bore_hoop", "bore_closure_diametral": "sleeve_bore_closure_dia",
	})
	return got, nil
}

// pressFitEar serves ears. The length of the shank, its base and where the arc
// centre lies are already in the smallest wall, and were found to matter little
// otherwise.
func pressFitEar(in *given) (*answers, error) {
	in.ignore("hub_material", "sleeve_material", "base", "bore_centre_to_fixed_base", "end_centre_offset_along", "end_centre_offset_across")
	names := map[string]string{
		"seat_diameter": "bore_dia", "edge_wall": "min_wall", "ear_radius": "end_radius", "ear_e": "hub_e", "ear_nu": "hub_nu",
		"interference_diametral": "interference_dia",
	}
	values, err := in.valuesFor("press_fit_ear", names)
	if err != nil {
		return nil, err
	}
	if values["sleeve_id"], err = sleeveBore(in, values["seat_diameter"]); err != nil {
		return nil, err
	}
	got, err := run("press_fit_ear", values)
	if err != nil {
		return nil, err
	}
	got.values["mean_pressure"] = got.values["pressure"] // the ring's is low by at most the tolerance: safe for grip
	got.rename(map[string]string{"pressure": "ring_min_wall_pressure", "ring_hoop": "ring_min_wall_hoop", "ear_hoop_pressed": "max_bore_hoop", "ear_hoop_slipped": "no_slip_max_bore_hoop"})
	return got, nil
}

// sleeveBore is the seat less two walls.
func sleeveBore(in *given, seat worked.Value) (worked.Value, error) {
	wall, err := in.number("sleeve_wall", quantity.Length)
	return measured(seat.Quantity.Value-2*wall, quantity.Length), err
}

// interferenceFromPressure serves limits named for the part that they hold for,
// of which the tighter counts, and goes on to the grip where length and friction
// are given.
func interferenceFromPressure(in *given) (*answers, error) {
	values, err := in.valuesFor("interference_from_pressure", nil)
	if err != nil {
		return nil, err
	}
	limits := map[string]string{"either": "hoop_limit", "hub": "hub_hoop_limit", "sleeve": "sleeve_hoop_limit"}
	var got *answers
	for part, name := range limits {
		if !in.has(name, quantity.Stress) {
			continue
		}
		limit, err := in.number(name, quantity.Stress)
		if err != nil {
			return nil, err
		}
		values["limited"], values["hoop_limit"] = worked.Value{Word: part}, measured(limit, quantity.Stress)
		answer, err := run("interference_from_pressure", values)
		if err != nil {
			return nil, err
		}
		if got == nil || answer.values["pressure"].Quantity.Value < got.values["pressure"].Quantity.Value {
			got = answer
		}
	}
	if got == nil {
		return nil, errors.New("the case gives no hoop limit")
	}
	if !in.has("length", quantity.Length) {
		return got, nil
	}
	grip, err := in.valuesFor("press_fit_capacity", nil)
	if err != nil {
		return nil, err
	}
	grip["pressure"] = got.values["pressure"]
	capacity, err := run("press_fit_capacity", grip)
	if err != nil {
		return nil, err
	}
	got.add(capacity)
	return got, nil
}
