package cut

import (
	"math"

	"boremend/knowledge/worked"
)

// SurfaceFinishInputs are the feed and the point of the tool, round or sharp.
type SurfaceFinishInputs struct {
	FeedMM  float64         `name:"feed" symbol:"f" kind:"length" means:"feed a revolution"`
	NoseMM  worked.Optional `name:"nose_radius" symbol:"r" kind:"length" means:"nose radius of the tool; or give both angles of a sharp point"`
	SideDeg worked.Optional `name:"side_edge_angle" symbol:"C_s" kind:"angle" means:"side cutting edge angle, for a sharp point"`
	EndDeg  worked.Optional `name:"end_edge_angle" symbol:"C_e" kind:"angle" means:"end cutting edge angle, for a sharp point"`
}

// SurfaceFinishOutputs are the roughness that the shape of the tool leaves.
type SurfaceFinishOutputs struct {
	RzMM    worked.Optional `name:"rz" symbol:"R_z" kind:"length" means:"height of the ridges, round nose"`
	RaMM    worked.Optional `name:"ra" symbol:"R_a" kind:"length" means:"mean deviation of the ideal profile"`
	ShopMM  worked.Optional `name:"ra_shop" symbol:"R_s" kind:"length" means:"the same by the form used in shops"`
	SharpMM worked.Optional `name:"sharp_rz" symbol:"R_t" kind:"length" means:"height of the ridges, sharp point"`
	Ratio   worked.Optional `name:"ratio" symbol:"q" kind:"ratio" means:"sharp over round"`
}

// SurfaceFinish computes the roughness that feed and point of the tool leave.
//
//	R_z = f^2 / (8 r)
//	R_a = f^2 / (18 sqrt(3) r)      R_s = f^2 / (32 r), 2.6 % low
//	R_t = f / (tan C_s + 1/tan C_e)
//	q   = R_t / R_z
//
// f is the feed and r the nose radius [mm]; C_s and C_e are the cutting edge angles
// of a sharp tool [deg].
//
// Validity: feed up to the nose radius; there R_z is 7 % low against the exact arc.
//
// Error: real surfaces are rougher than ideal ones: built-up edge, chatter, torn
// metal. Keep the nose radius to half the depth of cut or less on a slender bar.
//
// Source: geometry, the mean deviation integrated numerically in a test; sharp
// point as in a GATE question (read).
func SurfaceFinish(in SurfaceFinishInputs) (SurfaceFinishOutputs, error) {
	if err := in.check(); err != nil {
		return SurfaceFinishOutputs{}, err
	}
	var out SurfaceFinishOutputs
	if in.NoseMM.Known {
		ff, r := in.FeedMM*in.FeedMM, in.NoseMM.Value
		out.RzMM, out.RaMM, out.ShopMM = worked.Some(ff/(8*r)), worked.Some(ff/(18*math.Sqrt(3)*r)), worked.Some(ff/(32*r))
	}
	if in.SideDeg.Known {
		out.SharpMM = worked.Some(in.FeedMM / (math.Tan(in.SideDeg.Value*math.Pi/180) + 1/math.Tan(in.EndDeg.Value*math.Pi/180)))
	}
	if in.NoseMM.Known && in.SideDeg.Known {
		out.Ratio = worked.Some(out.SharpMM.Value / out.RzMM.Value)
	}
	return out, nil
}

func (in SurfaceFinishInputs) check() error {
	var c worked.Checks
	c.Between("feed", in.FeedMM, 1e-3, 10)
	if in.NoseMM.Known {
		c.Between("nose_radius", in.NoseMM.Value, 1e-2, 50)
	}
	if in.SideDeg.Known {
		c.Between("side_edge_angle", in.SideDeg.Value, 0, 80)
	}
	if in.EndDeg.Known {
		c.Between("end_edge_angle", in.EndDeg.Value, 1, 80)
	}
	if in.SideDeg.Known != in.EndDeg.Known {
		c.Refuse("side_edge_angle", "and end_edge_angle belong together: give both or none")
	}
	if !in.NoseMM.Known && !in.SideDeg.Known && !in.EndDeg.Known {
		c.Refuse("nose_radius", "or both angles of a sharp point: give one of the two")
	}
	if c.Err() == nil && in.NoseMM.Known && in.FeedMM > in.NoseMM.Value {
		c.Refuse("feed", "is %g mm, more than nose_radius, which is %g mm: the arcs no longer meet as the formula has it", in.FeedMM, in.NoseMM.Value)
	}
	return c.Err()
}

// SurfaceFinishCalculation is the catalogue entry of SurfaceFinish.
func SurfaceFinishCalculation() worked.Calculation {
	const geometry = "ideal profile of arcs"
	isRound := func(in SurfaceFinishInputs, _ SurfaceFinishOutputs) bool { return in.NoseMM.Known }
	isSharp := func(in SurfaceFinishInputs, _ SurfaceFinishOutputs) bool { return in.SideDeg.Known }
	isBoth := func(_ SurfaceFinishInputs, out SurfaceFinishOutputs) bool { return out.Ratio.Known }
	return worked.Define("surface_finish", SurfaceFinish, worked.Page[SurfaceFinishInputs, SurfaceFinishOutputs]{
		Title:    "Roughness from feed and point of the tool",
		Sources:  []string{"geometry of the ideal profile, recomputed", "sharp point: GATE question, collegedunia.com (read)"},
		Validity: "feed up to the nose radius",
		Formulas: []worked.Formula[SurfaceFinishInputs, SurfaceFinishOutputs]{
			{Symbol: "R_z", Is: "f^2 / (8 * r)", Source: geometry, When: isRound},
			{Symbol: "R_a", Is: "f^2 / (18 * sqrt(3) * r)", Source: geometry, When: isRound},
			{Symbol: "R_s", Is: "f^2 / (32 * r)", Source: "shop form", When: isRound},
			{Symbol: "R_t", Is: "f / (tan(C_s * pi / 180) + 1 / tan(C_e * pi / 180))", Source: "GATE question", When: isSharp},
			{Symbol: "q", Is: "R_t / R_z", Source: "definition", When: isBoth},
		},
		Warnings: func(SurfaceFinishInputs, SurfaceFinishOutputs) []string {
			return []string{"The real surface is rougher: this is what the shape of the tool alone leaves."}
		},
		Example: map[string]string{"feed": "0.2 mm", "nose_radius": "0.8 mm", "side_edge_angle": "20 deg", "end_edge_angle": "10 deg"},
	})
}
