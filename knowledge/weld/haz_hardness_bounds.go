package weld

import (
	"math"

	"boremend/knowledge/worked"
)

// HAZHardnessBounds gives limits between which HAZHardness lies while each number
// of the inputs is between those of low and high, both of the same material. ok
// is false where some such input would be refused, and where the limits cannot
// be told.
//
// The chain of HAZHardness is followed link by link. What only rises or only
// falls goes by its ends:
//
//	analysis, CET, Pcm, CE1 to CE3, t_M, t_B, H_M, H_B   rise with CE
//	T_p                                                  rises with CET and d
//	t_3, t_2                                             rise with T_0; t_2 falls with d
//
// Where method B begins (wall of 10 mm, CET of 0.20) the preheat jumps, and both
// sides of the jump count. The hardness itself is linear in each of its last terms,
// so its extremes lie at corners. The limits are sound and not tight: each link
// takes the worst of the one before. They close in as low and high do.
func HAZHardnessBounds(low, high HAZHardnessInputs) (least, most float64, ok bool) {
	if low.Material != high.Material || !ordered(low, high) {
		return 0, 0, false
	}
	var c worked.Checks
	typical, err := typicalOf(&c, low.Material)
	for _, in := range []HAZHardnessInputs{low, high} {
		c.Between("carbon_equivalent", in.CarbonEquivalent, 0.1, 1.2)
		procedure{in.WallMM, in.HeatInput, in.Hydrogen, in.SiteMaxPreheatC, in.AmbientC}.check(&c)
	}
	if err != nil || c.Err() != nil || low.HeatInput != high.HeatInput || low.Hydrogen != high.Hydrogen {
		return 0, 0, false
	}
	lean, rich := typical.scaledTo(low.CarbonEquivalent), typical.scaledTo(high.CarbonEquivalent)
	if rich.cet() > methodBMostCET {
		return 0, 0, false
	}
	t85 := cooledBetween(low, high, lean, rich)
	if t85.most > mostT85S {
		return 0, 0, false
	}
	yurioka, ok := yurioka87Between(lean, rich, t85)
	suzuki, clear := bl70sBetween(lean, rich, t85)
	const slip = 1e-9 // more than rounding can do
	return max(yurioka.least, suzuki.least) * (1 - slip), max(yurioka.most, suzuki.most) * (1 + slip), ok && clear
}

// ordered reports whether every number of low is at most that of high.
func ordered(low, high HAZHardnessInputs) bool {
	return low.CarbonEquivalent <= high.CarbonEquivalent && low.WallMM <= high.WallMM && low.HeatInput <= high.HeatInput &&
		low.Hydrogen <= high.Hydrogen && low.SiteMaxPreheatC <= high.SiteMaxPreheatC && low.AmbientC <= high.AmbientC
}

// bounds are the limits of one link of the chain.
type bounds struct{ least, most float64 }

// corners are the limits of a function that, in each of its arguments alone, only
// rises or only falls.
func corners(f func(a, b, c float64) float64, a, b, c bounds) bounds {
	out := bounds{math.Inf(1), math.Inf(-1)}
	for _, x := range [2]float64{a.least, a.most} {
		for _, y := range [2]float64{b.least, b.most} {
			for _, z := range [2]float64{c.least, c.most} {
				v := f(x, y, z)
				out.least, out.most = min(out.least, v), max(out.most, v)
			}
		}
	}
	return out
}

// cooledBetween bounds the cooling time.
func cooledBetween(low, high HAZHardnessInputs, lean, rich Analysis) bounds {
	coldest, warmest := max(low.AmbientC, warmPartC), max(high.AmbientC, warmPartC)
	preheat := func(in HAZHardnessInputs, a Analysis) float64 {
		return min(methodB(a.cet(), min(in.WallMM, methodBMostWall), in.Hydrogen, in.HeatInput).PreheatC, in.SiteMaxPreheatC)
	}
	if rich.cet() >= methodBLeastCET && high.WallMM >= methodBLeastWall {
		warmest = max(warmest, preheat(high, rich))
	}
	if lean.cet() >= methodBLeastCET && low.WallMM >= methodBLeastWall {
		coldest = max(coldest, preheat(low, lean))
	}
	return bounds{
		max(coolingThick(low.HeatInput, coldest), coolingThin(low.HeatInput, coldest, high.WallMM)),
		max(coolingThick(high.HeatInput, warmest), coolingThin(high.HeatInput, warmest, low.WallMM)),
	}
}

// yurioka87Between bounds Yurioka's hardness; ok is false where the steel may be
// too highly alloyed for the formula.
func yurioka87Between(lean, rich Analysis, t85 bounds) (limits bounds, ok bool) {
	l, r := yurioka87(lean, t85.least), yurioka87(rich, t85.most)
	width := bounds{math.Log(l.TBainiteS / r.TMartensiteS), math.Log(r.TBainiteS / l.TMartensiteS)}
	if width.least <= 0 {
		return bounds{}, false
	}
	past := bounds{math.Log(t85.least / r.TMartensiteS), math.Log(t85.most / l.TMartensiteS)}
	x := corners(func(past, width, _ float64) float64 { return 4*past/width - 2 }, past, width, bounds{})
	return corners(func(martensite, bainite, turn float64) float64 {
		return (martensite+bainite)/2 - (martensite-bainite)/2.2*turn
	}, bounds{l.HVMartensite, r.HVMartensite}, bounds{l.HVBainite, r.HVBainite}, bounds{math.Atan(x.least), math.Atan(x.most)}), true
}

// bl70sBetween bounds the hardness by BL70S, written as 884 C + 287 - K g with g
// between 0 and 1; ok is false where K may not be positive.
func bl70sBetween(lean, rich Analysis, t85 bounds) (limits bounds, ok bool) {
	l, r := bl70s(lean, t85.least), bl70s(rich, t85.most)
	between := func(a, b float64) bounds { return bounds{min(a, b), max(a, b)} }
	// Rise, slope times rise and the logarithm of time are linear in CE.
	rise := between(l.Rise, r.Rise)
	if rise.least <= 0 {
		return bounds{}, false
	}
	steep, at := between(l.Slope*l.Rise, r.Slope*r.Rise), between(l.LogTime, r.LogTime)
	late := bounds{math.Log10(t85.least) - at.most, math.Log10(t85.most) - at.least}
	turn := corners(func(steep, rise, late float64) float64 { return steep / rise * late }, steep, rise, late)
	share := bounds{logistic(turn.least), logistic(turn.most)}
	return corners(func(carbon, rise, share float64) float64 { return 884*carbon + 287 - rise*share },
		bounds{lean.C, rich.C}, rise, share), true
}

// logistic rises from 0 to 1.
func logistic(v float64) float64 { return 1 / (1 + math.Exp(-v)) }
