package fit

import (
	"fmt"
	"strings"

	"boremend/knowledge/worked"
)

// ANSIB41LimitsInputs are a class of inch fit and a basic size.
type ANSIB41LimitsInputs struct {
	NominalMM float64 `name:"nominal" symbol:"d" kind:"length" means:"basic size"`
	Class     string  `name:"class" choices:"RC1,RC2,RC3,RC4,RC5,RC6,RC7,RC8,RC9,LN1,LN2,LN3,FN1,FN2,FN3,FN4,FN5" means:"class: RC running, LN locational interference, FN force"`
}

// ANSIB41LimitsOutputs are the limits from the basic size.
type ANSIB41LimitsOutputs struct {
	HoleUpperMM       float64         `name:"hole_upper" symbol:"e_b" kind:"length" means:"upper limit of the hole from the basic size; the lower is 0"`
	ShaftUpperMM      float64         `name:"shaft_upper" symbol:"e_2" kind:"length" means:"upper limit of the shaft from the basic size"`
	ShaftLowerMM      float64         `name:"shaft_lower" symbol:"e_1" kind:"length" means:"lower limit of the shaft from the basic size"`
	InterferenceMaxMM worked.Optional `name:"interference_max" symbol:"delta_2" kind:"length" means:"most interference (LN and FN)"`
	InterferenceMinMM worked.Optional `name:"interference_min" symbol:"delta_1" kind:"length" means:"least interference (LN and FN)"`
	ClearanceMinMM    worked.Optional `name:"clearance_min" symbol:"c_1" kind:"length" means:"least gap (RC)"`
	ClearanceMaxMM    worked.Optional `name:"clearance_max" symbol:"c_2" kind:"length" means:"most gap (RC)"`
}

// ANSIB41Limits looks a class of inch fit of ANSI B4.1 up.
//
//	LN, FN: delta_2 = e_2         delta_1 = e_1 - e_b
//	RC:     c_1 = -e_2            c_2 = e_b - e_1
//
// d is the basic size; e_b the upper limit of the hole, e_2 and e_1 those of the
// shaft, from the basic size.
//
// Choice: FN1 for thin walls, long fits and cast iron; FN2 for ordinary steel and
// the tightest for good cast iron; FN3 for heavy steel parts; FN4 and FN5 for
// parts that may be highly stressed (read).
//
// Validity: above 0, RC and LN to 19.69 in, FN to 12.41 in; FN3 from 0.95 in.
//
// Error: none where read. The FN row to 4.73 in, RC5 above 9.85 in and some large
// holes (H8, H9, H10) are from memory; the sheet says so where it uses them.
//
// Source: Machinery's Handbook, 31st ed., tables 8a, 8b, 11 and 12 (read), 27th
// ed. p. 663 for FN to 3.94 in (read).
func ANSIB41Limits(in ANSIB41LimitsInputs) (ANSIB41LimitsOutputs, error) {
	var c worked.Checks
	c.Positive("nominal", in.NominalMM)
	if err := c.Err(); err != nil {
		return ANSIB41LimitsOutputs{}, err
	}
	table, err := ansiB41()
	if err != nil {
		return ANSIB41LimitsOutputs{}, err
	}
	class, ok := table.class(in.Class)
	if !ok {
		c.Refuse("class", "is %q, must be RC1 to RC9, LN1 to LN3 or FN1 to FN5", in.Class)
		return ANSIB41LimitsOutputs{}, c.Err()
	}
	l, ok := table.limits(in.Class, class, in.NominalMM/mmPerInch)
	if !ok {
		c.Refuse("nominal", "is %.5g in, which %s does not list (RC and LN end at 19.69 in, FN at 12.41 in, FN3 begins above 0.95 in)", in.NominalMM/mmPerInch, in.Class)
		return ANSIB41LimitsOutputs{}, c.Err()
	}
	const thou = mmPerInch / 1000
	out := ANSIB41LimitsOutputs{HoleUpperMM: l.holeUpper * thou, ShaftUpperMM: l.shaftUpper * thou, ShaftLowerMM: l.shaftLower * thou}
	if isRunning(in.Class) {
		out.ClearanceMinMM = worked.Some(-out.ShaftUpperMM)
		out.ClearanceMaxMM = worked.Some(out.HoleUpperMM - out.ShaftLowerMM)
	} else {
		out.InterferenceMaxMM = worked.Some(out.ShaftUpperMM)
		out.InterferenceMinMM = worked.Some(out.ShaftLowerMM - out.HoleUpperMM)
	}
	return out, nil
}

func isRunning(class string) bool { return strings.HasPrefix(class, "RC") }

const ansiSource = "Machinery's Handbook, 31st ed., tables 8a, 8b, 11 and 12 (ANSI B4.1-1967; read); FN to 3.94 in: 27th ed. p. 663 (read)"

// ANSIB41LimitsCalculation is the catalogue entry of ANSIB41Limits.
func ANSIB41LimitsCalculation() worked.Calculation {
	running := func(in ANSIB41LimitsInputs, _ ANSIB41LimitsOutputs) bool { return isRunning(in.Class) }
	tight := func(in ANSIB41LimitsInputs, _ ANSIB41LimitsOutputs) bool { return !isRunning(in.Class) }
	return worked.Define("ansi_b41_limits", ANSIB41Limits, worked.Page[ANSIB41LimitsInputs, ANSIB41LimitsOutputs]{
		Title:    "Inch fits, ANSI B4.1",
		Sources:  []string{ansiSource},
		Validity: "RC and LN to 19.69 in, FN to 12.41 in, FN3 from 0.95 in",
		Formulas: []worked.Formula[ANSIB41LimitsInputs, ANSIB41LimitsOutputs]{
			{Symbol: "e_b", Table: "ANSI B4.1, hole", Source: ansiSource},
			{Symbol: "e_2", Table: "ANSI B4.1, shaft", Source: ansiSource},
			{Symbol: "e_1", Table: "ANSI B4.1, shaft", Source: ansiSource},
			{Symbol: "delta_2", Is: "e_2", Source: "difference of sizes", When: tight},
			{Symbol: "delta_1", Is: "e_1 - e_b", Source: "difference of sizes", When: tight},
			{Symbol: "c_1", Is: "-e_2", Source: "difference of sizes", When: running},
			{Symbol: "c_2", Is: "e_b - e_1", Source: "difference of sizes", When: running},
		},
		Warnings: ansiWarnings,
		Example:  map[string]string{"nominal": "4 in", "class": "FN2"},
	})
}

func ansiWarnings(in ANSIB41LimitsInputs, _ ANSIB41LimitsOutputs) []string {
	table, err := ansiB41()
	if err != nil {
		return nil // ANSIB41Limits has reported it
	}
	var warnings []string
	for _, of := range table.fromMemory(in.Class, in.NominalMM/mmPerInch) {
		warnings = append(warnings, fmt.Sprintf("The figures of %s at this size are from memory: check them in the standard.", of))
	}
	return warnings
}
