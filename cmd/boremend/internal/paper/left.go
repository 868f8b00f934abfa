package paper

// leftAlone says what to expect when nothing is done. Nobody can say how fast,
// and the paper says so.
func (j Job) leftAlone(w *writer, b Bore) {
	k := j.known(b.Advice)
	w.heading("What happens if it is left")
	var said []string
	for _, c := range consequences {
		if c.when(k) {
			said = append(said, c.says)
		}
	}
	if k.is("worn_out", "yes") && k.has("wall_now") {
		said = append(said, "Every repair needs metal to work in. The thinnest wall is "+k.text("wall_now")+" now, and wear keeps taking from it.")
	}
	w.list(said)
	w.small("What goes wrong is known in the trade; how soon is nobody's formula. This is our opinion.")
}

// consequences are what wear and neglect lead to, and when that is worth saying.
var consequences = []struct {
	when func(known) bool
	says string
}{
	{func(k known) bool { return k.is("worn_out", "yes") },
		"A loose joint beats itself looser. Every change of load is a blow; hole, pin and bush wear faster the more play they have, and the parts next to them follow."},
	{func(k known) bool { return k.is("worn_out", "no") },
		"Nothing soon, if it is greased and measured again on time. Left without a look, it wears past the limit unseen, and then only a bigger repair helps."},
	{func(k known) bool { return !k.has("worn_out") },
		"Whether the hole is past its limit could not be settled with what is known. Until it is, treat it as worn out."},
	{func(k known) bool { return k.is("shock", "severe") },
		"Under hard shock this goes quickly, and the edge of the ear can crack or tear out."},
	{func(k known) bool { return k.is("load_direction", "toward_thin") },
		"The pin pushes toward the thinnest wall. That is where this ear would break."},
	{func(k known) bool { return k.is("crack", "into_bore", "through_ear", "edge_or_face") },
		"There is a crack. A crack grows without warning, and the ear can break under a load that it has carried many times. The machine should not work."},
	{func(k known) bool { return k.is("crack", "not_checked", "none_seen") || !k.has("crack") },
		"Nobody has tested for cracks yet. If there is one, it grows, and nobody sees it under the grease."},
	{func(k known) bool { return k.is("ear_bent", "yes") },
		"The ear is bent. It has been loaded past what it can bear, and will bend further."},
	{func(k known) bool { return k.is("safety_critical", "hoist") },
		"If this pin leaves its hole, what it holds up comes down."},
	{func(k known) bool { return k.is("safety_critical", "steering") },
		"If this pin leaves its hole, the steering goes with it."},
	{func(k known) bool { return k.is("safety_critical", "brake") },
		"If this pin leaves its hole, a brake goes with it."},
	{func(k known) bool { return k.is("lifts_people", "yes") },
		"People ride on what this joint holds up. Nobody goes up until it has been dealt with and examined."},
	{func(k known) bool { return k.is("grease_path", "none") },
		"No grease reaches this joint. A new pin wears as fast as the last one did."},
	{func(k known) bool { return k.is("wet_or_corrosive", "yes") },
		"Wet and dirt get in and grind; standing still does not stop the rust."},
}
