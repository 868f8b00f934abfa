package knowledge

import "slices"

// reads lists the facts, and limits as limit.NAME, that sheets take from a joint
// by name. A test compares it with the plans.
var reads = []string{
	"ambient_temp", "bar_diameter", "capture_land", "carbon_equivalent", "ear_width", "edge_distance", "finish_bore",
	"limit.bearing_standoff", "limit.burner", "limit.capture_screw_length", "limit.clean_up", "limit.cut_depth", "limit.cut_feed",
	"limit.gauge_bore", "limit.gauge_sleeve", "limit.heat_input", "limit.hone_allowance", "limit.hydrogen", "limit.mount_radius",
	"limit.plate_thickness", "limit.running_gap", "limit.shoulder_width", "limit.tool_projection", "limit.weld_amperes",
	"limit.weld_bead_width", "limit.weld_deposit_per_hour", "limit.weld_efficiency", "limit.weld_finish_cut",
	"limit.weld_operating_factor", "limit.weld_run", "limit.weld_travel", "limit.weld_volts", "limit.weld_wire", "limit.weld_wire_feed",
	"load_direction", "mate_width", "material", "pin_load", "pin_yield", "pre_weld_bore", "press_interference", "shoulders",
	"side_clearance", "side_play_total", "site_max_preheat", "sleeve_bore", "span", "thread_depth", "wall_after_sleeve", "wall_now",
	"welding_temp", "worn_max", "worn_min", "worn_reach",
}

// Reads reports whether a sheet takes a fact, or limit.NAME, from a joint.
func Reads(name string) bool { return slices.Contains(reads, name) }
