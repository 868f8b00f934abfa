package weld

import "boremend/knowledge/worked"

// SteelPreheatInputs are the steel's group and what the table asks of it.
type SteelPreheatInputs struct {
	Group       string          `name:"group" choices:"S-1,S-2,S-4,S-5" means:"S-1 carbon, S-2 quenched and tempered carbon, S-4 chromium-molybdenum to 2 % Cr, S-5 above 2 % Cr"`
	C           worked.Optional `name:"c_pct" kind:"ratio" means:"carbon, percent of mass"`
	ThicknessMM worked.Optional `name:"thickness" kind:"length" means:"thickness at the weld"`
	TensileMPa  worked.Optional `name:"tensile_min" kind:"stress" means:"least tensile strength specified"`
}

// SteelPreheatOutputs are the table values.
type SteelPreheatOutputs struct {
	LeastC     float64         `name:"preheat_min" symbol:"T_1" kind:"temperature" means:"least preheat"`
	MostC      worked.Optional `name:"preheat_max" kind:"temperature" means:"upper end of the range printed"`
	InterpassC worked.Optional `name:"interpass_max" symbol:"T_i" kind:"temperature" means:"highest interpass temperature"`
}

// SteelPreheat looks up the least preheat in the table of a public naval
// welding manual.
//
//	S-1 carbon steel               60 degF; 175 degF where C > 0.30 % and thickness > 1 in
//	S-2 quenched, tempered carbon  60 degF, interpass at most 300 degF
//	S-4 Cr-Mo to 2 % Cr            250 degF where tensile > 60 000 psi or thickness > 1/2 in
//	S-5 Cr-Mo above 2 % Cr         300 to 400 degF
//
// A condition that is not known counts as fulfilled, which asks for more heat;
// where none is known the calculation refuses.
//
// Validity: the groups named. For S-4 with neither condition the page that was
// read gives no figure, and the calculation refuses. The name S-5 is from memory.
//
// Error: a table.
//
// Source: NAVSEA S9074-AR-GIB-010/278, table IV, pages 55 to 57, read
// (online.flippingbook.com/view/342700894/188).
func SteelPreheat(in SteelPreheatInputs) (SteelPreheatOutputs, error) {
	var c worked.Checks
	c.OneOf("group", in.Group, "S-1", "S-2", "S-4", "S-5")
	if in.C.Known {
		c.Between("c_pct", in.C.Value, leastC, mostC)
	}
	if in.ThicknessMM.Known {
		c.Positive("thickness", in.ThicknessMM.Value)
	}
	if in.TensileMPa.Known {
		c.Positive("tensile_min", in.TensileMPa.Value)
	}
	if err := c.Err(); err != nil {
		return SteelPreheatOutputs{}, err
	}
	switch in.Group {
	case "S-1":
		return s1Preheat(&c, in)
	case "S-2":
		return SteelPreheatOutputs{LeastC: fahrenheit(60), InterpassC: worked.Some(fahrenheit(300))}, nil
	case "S-4":
		return s4Preheat(&c, in)
	}
	return SteelPreheatOutputs{LeastC: fahrenheit(300), MostC: worked.Some(fahrenheit(400))}, nil
}

func s1Preheat(c *worked.Checks, in SteelPreheatInputs) (SteelPreheatOutputs, error) {
	const oneInchMM, carbonLimit = 25.4, 0.30
	lean := in.C.Known && in.C.Value <= carbonLimit
	thin := in.ThicknessMM.Known && in.ThicknessMM.Value <= oneInchMM
	switch {
	case lean || thin:
		return SteelPreheatOutputs{LeastC: fahrenheit(60)}, nil
	case !in.C.Known && !in.ThicknessMM.Known:
		c.Refuse("c_pct", "and thickness are both missing: the table goes by them")
		return SteelPreheatOutputs{}, c.Err()
	}
	return SteelPreheatOutputs{LeastC: fahrenheit(175)}, nil
}

func s4Preheat(c *worked.Checks, in SteelPreheatInputs) (SteelPreheatOutputs, error) {
	const halfInchMM, strongMPa = 12.7, 60000 * psiMPa
	weak := in.TensileMPa.Known && in.TensileMPa.Value <= strongMPa
	thin := in.ThicknessMM.Known && in.ThicknessMM.Value <= halfInchMM
	switch {
	case weak && thin:
		c.Refuse("group", "is S-4 with tensile strength to 60 000 psi and thickness to 1/2 in: the page that was read gives no figure for it")
	case !in.TensileMPa.Known && !in.ThicknessMM.Known:
		c.Refuse("tensile_min", "and thickness are both missing: the table goes by them")
	default:
		return SteelPreheatOutputs{LeastC: fahrenheit(250)}, nil
	}
	return SteelPreheatOutputs{}, c.Err()
}

// psiMPa is one pound-force per square inch in MPa.
const psiMPa = 4.4482216152605 / 645.16

// SteelPreheatCalculation is the catalogue entry of SteelPreheat.
func SteelPreheatCalculation() worked.Calculation {
	const table = "NAVSEA S9074-AR-GIB-010/278, table IV"
	return worked.Define("steel_preheat", SteelPreheat, worked.Page[SteelPreheatInputs, SteelPreheatOutputs]{
		Title:    "Least preheat of steels by a naval manual",
		Sources:  []string{table + ", pages 55-57, read (online.flippingbook.com/view/342700894/188)"},
		Validity: "groups S-1, S-2, S-4 and S-5 of the manual",
		Formulas: []worked.Formula[SteelPreheatInputs, SteelPreheatOutputs]{
			{Symbol: "T_1", Table: table, Source: "read"},
			{Symbol: "T_i", Table: table, Source: "read", When: func(_ SteelPreheatInputs, out SteelPreheatOutputs) bool { return out.InterpassC.Known }},
		},
		Warnings: func(SteelPreheatInputs, SteelPreheatOutputs) []string {
			return []string{"The table is for open joints: a bore is a closed ring and wants more, see preheat_cet."}
		},
		Example: map[string]string{"group": "S-1", "c_pct": "0.32", "thickness": "1-1/4 in"},
	})
}
