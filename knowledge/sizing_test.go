package knowledge

import (
	"errors"
	"maps"
	"math"
	"strings"
	"testing"

	"boremend/engine/quantity"
	"boremend/knowledge/worked"
)

// knownJoint is one in weldable cast steel in which everything is known.
func knownJoint() Joint {
	number := func(v float64, k quantity.Kind) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: k}}
	}
	mm := func(v float64) worked.Value { return number(v, quantity.Length) }
	return Joint{
		"material": {Word: "cast_steel_weldable"}, SleeveMaterial: {Word: UsualSleeve},
		"finish_bore": mm(110), "worn_max": mm(114.2), "worn_reach": mm(58.9), "ear_width": mm(160), "edge_distance": mm(98), "wall_now": mm(39),
		"clean_up_bore": mm(118.8), "sleeve_bore": mm(121), "wall_after_sleeve": mm(37.5), "pre_weld_bore": mm(118.8),
		"press_interference": mm(0.23), "pin_load": number(310e3, quantity.Force), "carbon_equivalent": number(0.41, quantity.Ratio),
		"ambient_temp": number(12, quantity.Temperature), "welding_temp": number(12, quantity.Temperature), "site_max_preheat": number(250, quantity.Temperature),
		DiameterDepths:     {List: []float64{10, 80}, Quantity: quantity.Quantity{Kind: quantity.Length}},
		DiameterClocks:     {List: []float64{0, 45, 90, 135}, Quantity: quantity.Quantity{Kind: quantity.Angle}},
		Diameters:          {List: []float64{114.2, 113, 110.4, 112, 114, 113, 110.5, 112}, Quantity: quantity.Quantity{Kind: quantity.Length}},
		RadiusClocks:       {List: []float64{0, 90, 180, 270}, Quantity: quantity.Quantity{Kind: quantity.Angle}},
		Radii:              {List: []float64{58.9, 56, 55, 55.5}, Quantity: quantity.Quantity{Kind: quantity.Length}},
		"limit.weld_volts": number(19, quantity.Ratio), "limit.weld_amperes": number(170, quantity.Ratio), "limit.weld_run": number(600, quantity.Time),
		"bar_diameter": mm(71.5), "worn_min": mm(110.4), "limit.bearing_standoff": mm(60), "limit.cut_depth": mm(1.5), "limit.cut_feed": mm(0.2),
		"limit.tool_projection": mm(6), "limit.mount_radius": mm(80),
		"mate_width": mm(200), "pin_yield": number(655, quantity.Stress),
		"limit.gauge_bore": mm(0.02), "limit.gauge_sleeve": mm(0.01),
		"limit.clean_up": mm(0.5), "limit.weld_finish_cut": mm(2), "limit.weld_efficiency": number(0.87, quantity.Ratio),
		"limit.weld_deposit_per_hour": number(1.5, quantity.Mass), "limit.weld_operating_factor": number(0.45, quantity.Ratio),
		"limit.weld_wire": mm(1.2), "limit.weld_wire_feed": number(6, quantity.Speed), "limit.weld_travel": number(0.4, quantity.Speed),
		"limit.weld_bead_width": mm(8), "limit.burner": number(20, quantity.Power), "limit.heat_input": number(1, quantity.HeatInput),
		"side_clearance": mm(8), "limit.shoulder_width": mm(8), "limit.capture_screw_length": mm(16), "limit.plate_thickness": mm(16),
		"limit.hydrogen": number(5, quantity.Hydrogen), "limit.running_gap": mm(0.25), "limit.hone_allowance": mm(0.127),
	}
}

// TestSizeEverything works every sheet for a joint in which all is known.
func TestSizeEverything(t *testing.T) {
	for _, name := range Sizes() {
		sheet, err := Size(name, knownJoint())
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if len(sheet.Outputs) == 0 || len(sheet.Lines) == 0 {
			t.Errorf("%s shows nothing", name)
		}
	}
}

// TestSizeNamesWhatIsMissing takes one entry away at a time: every sheet either
// does without, or is refused in words that name it.
func TestSizeNamesWhatIsMissing(t *testing.T) {
	for _, name := range Sizes() {
		for entry := range knownJoint() {
			joint := maps.Clone(knownJoint())
			delete(joint, entry)
			_, err := Size(name, joint)
			var refusal *worked.Refusal
			if err != nil && (!errors.As(err, &refusal) || !strings.Contains(err.Error(), entry)) {
				t.Errorf("%s without %s: %v", name, entry, err)
			}
		}
	}
}

// TestSizeNonsense puts what no joint can be into every entry: a refusal, and
// never a panic or a number that is none.
func TestSizeNonsense(t *testing.T) {
	for _, name := range Sizes() {
		for entry, good := range knownJoint() {
			if good.Word != "" {
				joint := maps.Clone(knownJoint())
				joint[entry] = worked.Value{Word: "cheese"}
				if _, err := Size(name, joint); err == nil && entry == "material" && name == "press_fit" {
					t.Errorf("%s takes %s of cheese", name, entry)
				}
				continue
			}
			for _, odd := range []float64{0, -1, 1e308, math.NaN(), math.Inf(1)} {
				joint := maps.Clone(knownJoint())
				joint[entry] = worked.Value{Quantity: quantity.Quantity{Value: odd, Kind: good.Quantity.Kind}}
				sheet, err := Size(name, joint)
				for _, o := range sheet.Outputs {
					if v := o.Quantity.Value; err == nil && (math.IsNaN(v) || math.IsInf(v, 0)) {
						t.Errorf("%s with %s of %v gives %s of %v", name, entry, odd, o.Name, v)
					}
				}
			}
		}
	}
}

// TestSleeveFollowsTheBore turns the sleeve to what was really bored.
func TestSleeveFollowsTheBore(t *testing.T) {
	od := func(joint Joint) float64 {
		sheet, err := Size("turned_sleeve", joint)
		if err != nil {
			t.Fatal(err)
		}
		v, _ := sheet.Output("sleeve_od_least")
		return v.Quantity.Value
	}
	planned := od(knownJoint())
	joint := knownJoint()
	joint[AsBoredLeast], joint[AsBoredMost] = lengthValue(121.2), lengthValue(121.2)
	if got := od(joint) - planned; math.Abs(got-0.2) > 1e-9 {
		t.Errorf("a bore larger by 0.2 mm makes the sleeve larger by %v", got)
	}
}

// TestUnknownSheet names the sheets that there are.
func TestUnknownSheet(t *testing.T) {
	if _, err := Size("pres_fit", knownJoint()); err == nil || !strings.Contains(err.Error(), "press_fit") {
		t.Errorf("got %v", err)
	}
}

// TestMemoryIsSaidInSheets keeps figures from memory from passing as read.
func TestMemoryIsSaidInSheets(t *testing.T) {
	sheet, err := Size("press_fit", knownJoint())
	if err != nil {
		t.Fatal(err)
	}
	if text := strings.Join(sheet.Warnings, " "); !strings.Contains(text, "from memory") {
		t.Errorf("nothing is said of memory: %s", text)
	}
}
