package fit

import "boremend/knowledge/worked"

// RoughnessLossInputs are the roughness of both surfaces and the interference.
type RoughnessLossInputs struct {
	RzBoreMM       float64 `name:"rz_bore" symbol:"R_b" kind:"length" means:"roughness Rz of the bore (Rz is about 4 to 6 times Ra)"`
	RzSleeveMM     float64 `name:"rz_sleeve" symbol:"R_s" kind:"length" means:"roughness Rz of the sleeve"`
	InterferenceMM float64 `name:"interference_diametral" symbol:"delta" kind:"length" means:"interference as measured, on the diameter"`
}

// RoughnessLossOutputs are the losses after both editions of the standard.
type RoughnessLossOutputs struct {
	Loss2001MM      float64 `name:"loss_2001" symbol:"s" kind:"length" means:"interference lost, factor 0.8: for holding"`
	Loss2017MM      float64 `name:"loss_2017" symbol:"s_n" kind:"length" means:"interference lost, factor 0.4 of the later edition"`
	Effective2001MM float64 `name:"effective_2001" symbol:"delta_e" kind:"length" means:"interference that is left to hold"`
	Effective2017MM float64 `name:"effective_2017" symbol:"delta_n" kind:"length" means:"interference left after the later edition"`
}

// roughnessFactor2001 and roughnessFactor2017 are the shares of the summed Rz
// that are pressed flat.
const (
	roughnessFactor2001 = 0.8
	roughnessFactor2017 = 0.4
)

// RoughnessLoss computes how much interference is lost as the crests of both
// surfaces are pressed flat.
//
//	s = 0.8 (R_b + R_s)    delta_e = delta - s
//	s_n = 0.4 (R_b + R_s)  delta_n = delta - s_n
//
// R_b and R_s are the roughness Rz of bore and sleeve, delta the interference on
// diameter [mm].
//
// Traps: take the larger loss for holding and none for stress, closure and press
// force, which is the safe side of each.
//
// Validity: machined surfaces. The factor is empirical; the true loss depends on
// the metals and on the whole profile.
//
// Error: half of the loss.
//
// Source: DIN 7190:2001 (0.8) and DIN 7190-1:2017 (0.4), read second-hand, the
// standards were not seen.
func RoughnessLoss(in RoughnessLossInputs) (RoughnessLossOutputs, error) {
	var c worked.Checks
	checkRoughness(&c, "rz_bore", in.RzBoreMM)
	checkRoughness(&c, "rz_sleeve", in.RzSleeveMM)
	c.Positive("interference_diametral", in.InterferenceMM)
	if err := c.Err(); err != nil {
		return RoughnessLossOutputs{}, err
	}
	sum := in.RzBoreMM + in.RzSleeveMM
	return RoughnessLossOutputs{
		Loss2001MM: roughnessFactor2001 * sum, Loss2017MM: roughnessFactor2017 * sum,
		Effective2001MM: in.InterferenceMM - roughnessFactor2001*sum, Effective2017MM: in.InterferenceMM - roughnessFactor2017*sum,
	}, nil
}

// checkRoughness refuses what is no machined surface: Rz up to half a millimetre.
func checkRoughness(c *worked.Checks, input string, v float64) { c.Between(input, v, 0, 0.5) }

// RoughnessLossCalculation is the catalogue entry of RoughnessLoss.
func RoughnessLossCalculation() worked.Calculation {
	const din2001, din2017 = "DIN 7190:2001, factor 0.8 (read second-hand)", "DIN 7190-1:2017, factor 0.4 (read second-hand)"
	return worked.Define("roughness_loss", RoughnessLoss, worked.Page[RoughnessLossInputs, RoughnessLossOutputs]{
		Title:    "Interference lost to roughness",
		Sources:  []string{din2001, din2017},
		Validity: "machined surfaces; for holding only, stress and press force take no loss",
		Formulas: []worked.Formula[RoughnessLossInputs, RoughnessLossOutputs]{
			{Symbol: "s", Is: "0.8 * (R_b + R_s)", Source: din2001},
			{Symbol: "s_n", Is: "0.4 * (R_b + R_s)", Source: din2017},
			{Symbol: "delta_e", Is: "delta - s", Source: "what is left"},
			{Symbol: "delta_n", Is: "delta - s_n", Source: "what is left"},
		},
		Warnings: func(_ RoughnessLossInputs, out RoughnessLossOutputs) []string {
			if out.Effective2001MM <= 0 {
				return []string{"The crests eat the whole interference: nothing is left to hold."}
			}
			return nil
		},
		Example: map[string]string{"rz_bore": "10 um", "rz_sleeve": "6.3 um", "interference_diametral": "100 um"},
	})
}
