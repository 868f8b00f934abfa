package cut

import (
	"fmt"
	"math"
	"slices"

	"boremend/knowledge/worked"
)

// CuttingDataInputs name a metal, a tool and a chip.
type CuttingDataInputs struct {
	Work   string  `name:"work" choices:"mild_structural_steel,medium_carbon_steel,alloy_steel_qt,cast_steel_low,cast_steel_high,manganese_steel,grey_iron,ductile_iron,weld_deposit_carbon,weld_deposit_hard,weld_deposit_austenitic" means:"metal to be cut"`
	Tool   string  `name:"tool" choices:"hss,carbide" default:"carbide" means:"what the edge is made of"`
	ChipMM float64 `name:"chip_thickness" symbol:"h" kind:"length" default:"0.2 mm" means:"thickness of the chip, for the force"`
}

// CuttingDataOutputs are figures to start with.
type CuttingDataOutputs struct {
	KC11MPa    float64 `name:"kc11" symbol:"k_c11" kind:"stress" means:"specific cutting force for a chip 1 mm by 1 mm, of the row with the largest force"`
	MC         float64 `name:"mc" symbol:"m_c" kind:"ratio" means:"exponent of the same row"`
	KCMPa      float64 `name:"kc" symbol:"k_c" kind:"stress" means:"specific cutting force for this chip, a sharp edge, outside turning"`
	LeastMPa   float64 `name:"kc_least" symbol:"k_n" kind:"stress" means:"the same by the row with the smallest force"`
	SpeedLeast float64 `name:"speed_least" symbol:"v_1" kind:"speed" means:"cutting speed to start with on a portable bar"`
	SpeedMost  float64 `name:"speed_most" symbol:"v_2" kind:"speed" means:"and to go up to"`
	FeedLeast  float64 `name:"rough_feed_least" symbol:"f_1" kind:"length" means:"feed for roughing, least"`
	FeedMost   float64 `name:"rough_feed_most" symbol:"f_2" kind:"length" means:"feed for roughing, most"`
	FineLeast  float64 `name:"finish_feed_least" symbol:"f_3" kind:"length" means:"feed for finishing, least"`
	FineMost   float64 `name:"finish_feed_most" symbol:"f_4" kind:"length" means:"feed for finishing, most"`
	DepthLeast float64 `name:"rough_depth_least" symbol:"a_1" kind:"length" means:"depth of a roughing cut, a side, to start with"`
	DepthMost  float64 `name:"rough_depth_most" symbol:"a_2" kind:"length" means:"and to go up to"`
}

// CuttingData looks up where to start with a metal: the figures of its cutting
// force, speed, feed and depth for a portable bar.
//
//	k_c = k_c11 h^-m_c
//
// h is the thickness of the chip [mm]. Where several sources give figures for one
// metal, those with the largest force for this chip are taken, which is the safe
// side for force, bend and chatter; k_n shows how far they lie apart.
//
// Validity: chips from 0.11 to 1.13 mm; outside 0.05 to 1.6 mm it refuses. Speeds
// are for a plain bar in the field and lie below those of a lathe.
//
// Error: 15 % between sources on the force, far more on speeds.
//
// Source: each row of the table names its own; speeds and depths to start with are
// judgement. Weld metal stands in by steels of like strength.
func CuttingData(in CuttingDataInputs) (CuttingDataOutputs, error) {
	var c worked.Checks
	c.OneOf("tool", in.Tool, "hss", "carbide")
	c.Between("chip_thickness", in.ChipMM, thinnestMM, thickestMM)
	if err := c.Err(); err != nil {
		return CuttingDataOutputs{}, err
	}
	w, err := workNamed(in.Work)
	if err != nil {
		return CuttingDataOutputs{}, err
	}
	row, least := w.hardest(in.ChipMM)
	speed := w.Portable.speed(in.Tool)
	return CuttingDataOutputs{
		KC11MPa: row.KC11MPa, MC: row.MC, KCMPa: row.KC11MPa * math.Pow(in.ChipMM, -row.MC), LeastMPa: least,
		SpeedLeast: speed[0], SpeedMost: speed[1],
		FeedLeast: w.Feeds.RoughMM[0], FeedMost: w.Feeds.RoughMM[1], FineLeast: w.Feeds.FinishMM[0], FineMost: w.Feeds.FinishMM[1],
		DepthLeast: w.Portable.RoughDepthMM[0], DepthMost: w.Portable.RoughDepthMM[1],
	}, nil
}

// CuttingDataCalculation is the catalogue entry of CuttingData.
func CuttingDataCalculation() worked.Calculation {
	const table, start = "cutting data: row with the largest force for this chip", "cutting data: start on a portable bar"
	const feeds = "cutting data: feeds"
	return worked.Define("cutting_data", CuttingData, worked.Page[CuttingDataInputs, CuttingDataOutputs]{
		Title:    "Cutting data of a metal",
		Sources:  []string{"rows of cutting data, each with its own source", "speeds and depths to start with: judgement"},
		Validity: "chips 0.11 to 1.13 mm thick, plain portable bar",
		Formulas: []worked.Formula[CuttingDataInputs, CuttingDataOutputs]{
			{Symbol: "k_c11", Table: table, Source: table},
			{Symbol: "m_c", Table: table, Source: table},
			{Symbol: "k_c", Is: "k_c11 * h^(-m_c)", Source: "Kienzle's law"},
			{Symbol: "k_n", Table: "cutting data: row with the smallest force for this chip", Source: "Kienzle's law"},
			{Symbol: "v_1", Table: start, Source: start}, {Symbol: "v_2", Table: start, Source: start},
			{Symbol: "f_1", Table: feeds, Source: feeds}, {Symbol: "f_2", Table: feeds, Source: feeds},
			{Symbol: "f_3", Table: feeds, Source: feeds}, {Symbol: "f_4", Table: feeds, Source: feeds},
			{Symbol: "a_1", Table: start, Source: start}, {Symbol: "a_2", Table: start, Source: start},
		},
		Warnings: func(in CuttingDataInputs, _ CuttingDataOutputs) []string {
			w, err := workNamed(in.Work)
			if err != nil {
				return nil // the calculation itself has refused
			}
			return slices.Concat(workWarnings(w, in.ChipMM), speedWarnings(w, in.Tool), chipWarnings("The chip", in.ChipMM))
		},
		Example: map[string]string{"work": "cast_steel_low"},
	})
}

// workWarnings say where the figures of a metal come from and what to mind.
func workWarnings(w Work, chipMM float64) []string {
	row, _ := w.hardest(chipMM)
	rake := ""
	if row.ReferenceRakeDeg != nil {
		rake = fmt.Sprintf(", for a rake of %g degrees", *row.ReferenceRakeDeg)
	}
	says := []string{
		fmt.Sprintf("Force by the row %s%s: %s (%s).", row.Of, rake, row.Source, row.HowKnown),
		fmt.Sprintf("Feeds: %s (%s). Speed and depth to start with: %s.", w.Feeds.Source, w.Feeds.HowKnown, w.Portable.Source),
	}
	if w.Note != "" {
		says = append(says, w.Note)
	}
	return says
}

// speedWarnings list what sources give for stiffer machines.
func speedWarnings(w Work, tool string) (says []string) {
	for _, s := range w.Speeds {
		if s.Tool != tool {
			continue
		}
		of := ""
		if s.Of != "" {
			of = ", " + s.Of
		}
		says = append(says, fmt.Sprintf("On machines that are stiffer%s: %s m/min. %s (%s).", of, s.MPerMin, s.Source, s.HowKnown))
	}
	return says
}
