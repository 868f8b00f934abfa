package bolt

import (
	"math"

	"boremend/knowledge/worked"
)

// BoltedReinforcementInputs are an ear, the cheek plates bolted to it and the bolts.
type BoltedReinforcementInputs struct {
	PinLoadN      float64         `name:"pin_load" symbol:"F" kind:"force" means:"load of the pin on ear and plates together"`
	LoadAngleDeg  worked.Optional `name:"load_angle" symbol:"phi" kind:"angle" means:"between the load and the line from the pin to the middle of the bolts; without it, the worst direction"`
	BoreMM        float64         `name:"bore" symbol:"D" kind:"length" means:"bore through ear and plates"`
	BoreFinish    string          `name:"bore_finish" choices:"together,apart" means:"whether ear and plates were bored in one setting, bolted up"`
	EarMM         float64         `name:"ear_thickness" symbol:"t_e" kind:"length" means:"thickness of the ear"`
	EarEMPa       float64         `name:"ear_e" symbol:"E_e" kind:"stress" means:"modulus of elasticity of the ear"`
	PlateMM       float64         `name:"plate_thickness" symbol:"t_p" kind:"length" means:"thickness of one plate"`
	PlateEMPa     float64         `name:"plate_e" symbol:"E_p" kind:"stress" default:"205 GPa" means:"modulus of elasticity of the plates"`
	Plates        float64         `name:"plates" symbol:"n_p" kind:"count" means:"1, or 2 for one on each side"`
	Columns       float64         `name:"columns" symbol:"n_x" kind:"count" means:"bolts along the line from the pin"`
	Rows          float64         `name:"rows" symbol:"n_y" kind:"count" means:"bolts across that line"`
	ColumnPitchMM float64         `name:"column_pitch" symbol:"p_x" kind:"length" means:"from bolt to bolt along the line"`
	RowPitchMM    float64         `name:"row_pitch" symbol:"p_y" kind:"length" means:"from bolt to bolt across it"`
	Eccentricity  float64         `name:"eccentricity" symbol:"e" kind:"length" means:"from the pin to the middle of the bolts"`
	EdgeMM        float64         `name:"edge_distance" symbol:"c_e" kind:"length" means:"from a hole to the nearest edge of plate or ear"`
	Size          string          `name:"size" means:"size of the bolts: M16, 5/8-11"`
	Grade         string          `name:"grade" choices:"8.8,10.9,12.9,2,5,8" means:"class of a metric bolt or grade of an inch bolt"`
	Joint         string          `name:"joint" choices:"fitted,slip" means:"fitted: bolts or dowels reamed in; slip: bolts in clearance holes that hold by friction"`
	Fastening     string          `name:"fastening" choices:"through,tapped" means:"through bolts with nuts, or screws in the ear"`
	EarMetal      string          `name:"ear_metal" choices:"steel,iron" means:"metal of the ear"`
	DepthMM       worked.Optional `name:"thread_depth" symbol:"t_d" kind:"length" means:"sound metal for threads, where known (tapped)"`
	SlipMu        float64         `name:"slip_coefficient" symbol:"mu_s" kind:"ratio" default:"0.10" means:"slip coefficient of the faces: 0.10 for faces that nobody has looked at (see slip_coefficient)"`
	Fraction      float64         `name:"preload_fraction" symbol:"f" kind:"ratio" default:"0.75" means:"most preload as a share of the proof load"`
	FactorLeast   float64         `name:"nut_factor_least" symbol:"K_1" kind:"ratio" default:"0.12" means:"nut factor of the slipperiest thread to reckon with"`
	FactorMost    float64         `name:"nut_factor_most" symbol:"K_2" kind:"ratio" default:"0.20" means:"nut factor of the driest thread to reckon with"`
	Stiffness     float64         `name:"stiffness_ratio" symbol:"c" kind:"ratio" default:"0.33" means:"share of a pull that the bolt feels"`
	PlateYieldMPa float64         `name:"plate_yield" symbol:"R_1" kind:"stress" means:"yield strength of the plates"`
	EarYieldMPa   float64         `name:"ear_yield" symbol:"R_2" kind:"stress" means:"yield strength of the ear; of grey iron its tensile strength"`
	SafetyWanted  float64         `name:"safety_wanted" symbol:"S_0" kind:"ratio" default:"2" means:"safety wanted of bolts and bearing"`
	SlipWanted    float64         `name:"slip_safety_wanted" symbol:"S_1" kind:"ratio" default:"1.5" means:"safety wanted against slip and opening"`
}

// BoltedReinforcementOutputs are the shares, the bolt forces and the safeties.
type BoltedReinforcementOutputs struct {
	Share          float64         `name:"plate_share" symbol:"k" kind:"ratio" means:"share of the pin load in each plate"`
	PlateN         float64         `name:"plate_load" symbol:"F_p" kind:"force" means:"load in each plate, which its bolts must carry"`
	EarN           float64         `name:"ear_load" symbol:"F_e" kind:"force" means:"load left to the ear itself"`
	Bolts          float64         `name:"bolts" symbol:"n" kind:"count" means:"bolts"`
	FarXMM         float64         `name:"far_x" symbol:"x_m" kind:"length" means:"from the middle to the corner bolts, along the line"`
	FarYMM         float64         `name:"far_y" symbol:"y_m" kind:"length" means:"from the middle to the corner bolts, across it"`
	SquaresX       float64         `name:"sum_of_squares_x" symbol:"I_x" kind:"area" means:"sum of the squares of the distances along the line"`
	SquaresY       float64         `name:"sum_of_squares_y" symbol:"I_y" kind:"area" means:"sum of the squares of the distances across it"`
	DirectN        float64         `name:"direct" symbol:"V_1" kind:"force" means:"a bolt's share of the load"`
	TurningXN      float64         `name:"turning_x" symbol:"V_2" kind:"force" means:"force of the whole moment on a corner bolt, along the line"`
	TurningYN      float64         `name:"turning_y" symbol:"V_3" kind:"force" means:"force of the whole moment on a corner bolt, across it"`
	ShearN         float64         `name:"max_shear" symbol:"V" kind:"force" means:"force across the worst bolt at each plate"`
	TippingXN      float64         `name:"tipping_x" symbol:"N_x" kind:"force" means:"pull on a corner bolt from a load along the line"`
	TippingYN      float64         `name:"tipping_y" symbol:"N_y" kind:"force" means:"pull on a corner bolt from a load across it"`
	PullN          float64         `name:"max_pull" symbol:"N" kind:"force" means:"pull on the worst bolt"`
	DiameterMM     float64         `name:"diameter" symbol:"d" kind:"length" means:"diameter of the bolts"`
	StressAreaMM2  float64         `name:"stress_area" symbol:"A_s" kind:"area" means:"stress area"`
	ProofMPa       float64         `name:"proof_stress" symbol:"S_p" kind:"stress" means:"proof strength"`
	TensileMPa     float64         `name:"tensile_stress" symbol:"R_m" kind:"stress" means:"tensile strength"`
	ShearShare     float64         `name:"shear_share" symbol:"alpha_v" kind:"ratio" means:"share of it in shear through the thread"`
	PreloadMostN   float64         `name:"preload_most" symbol:"F_2" kind:"force" means:"most preload"`
	TorqueNM       float64         `name:"torque" symbol:"T" kind:"torque" means:"torque that goes over it in no bolt"`
	PreloadLeastN  float64         `name:"preload_least" symbol:"F_1" kind:"force" means:"preload of this torque in the driest thread"`
	SlipN          float64         `name:"slip_per_bolt" symbol:"r_s" kind:"force" means:"force that the worst bolt's clamping holds by friction"`
	SlipSafety     float64         `name:"slip_safety" symbol:"S_s" kind:"ratio" means:"that over the force across it"`
	OpeningSafety  float64         `name:"separation_factor" symbol:"n_0" kind:"ratio" means:"least preload over the pull: below 1 the plate lifts"`
	BoltPullN      float64         `name:"bolt_pull" symbol:"F_b" kind:"force" means:"most pull on a bolt, preload counted"`
	ProofSafety    float64         `name:"proof_safety" symbol:"S_f" kind:"ratio" means:"proof load over it"`
	ShearResistsN  float64         `name:"shear_strength" symbol:"R_v" kind:"force" means:"force across a bolt at which it breaks"`
	PullResistsN   float64         `name:"pull_strength" symbol:"R_t" kind:"force" means:"pull at which it breaks"`
	BoltSafety     float64         `name:"bolt_safety" symbol:"S_b" kind:"ratio" means:"safety of the worst bolt against breaking, pull and shear together"`
	EngagementMM   worked.Optional `name:"engagement_needed" symbol:"L_n" kind:"length" means:"thread needed in the ear (tapped)"`
	PlateBearing   float64         `name:"plate_bearing" symbol:"p_1" kind:"stress" means:"bearing stress of the worst bolt on a plate"`
	EarBearing     float64         `name:"ear_bearing" symbol:"p_2" kind:"stress" means:"bearing stress of the worst bolt on the ear"`
	BearingSafety  float64         `name:"bearing_safety" symbol:"S_h" kind:"ratio" means:"yield over bearing stress, the lower of plate and ear"`
	EdgeNeededMM   float64         `name:"edge_needed" symbol:"c_n" kind:"length" means:"least distance from a hole to an edge or to the bore"`
	PitchNeededMM  float64         `name:"pitch_needed" symbol:"p_n" kind:"length" means:"least distance from bolt to bolt"`
	BoreDistanceMM float64         `name:"bore_distance" kind:"length" means:"from the edge of the bore to the nearest bolt's middle"`
}

// BoltedReinforcement computes what cheek plates bolted to an ear carry, and
// whether their bolts stand it.
//
//	k   = E_p t_p/(E_e t_e + n_p E_p t_p),  F_p = k F,  F_e = F - n_p F_p
//	n   = n_x n_y,  x_m = (n_x - 1) p_x/2,  y_m = (n_y - 1) p_y/2
//	I_x = n (n_x^2 - 1) p_x^2/12,  I_y likewise
//	V_1 = F_p/n,  V_2 = F_p e y_m/(I_x + I_y),  V_3 = F_p e x_m/(I_x + I_y)
//	V   = sqrt{[V_1 |cos phi| + V_2 |sin phi|]^2 + [(V_1 + V_3) sin phi]^2}
//	N_x = F_p t_p/2 x_m/I_x,  N_y = F_p t_p/2 y_m/I_y
//	N   = N_x |cos phi| + N_y |sin phi|
//	F_2 = f S_p A_s,  T = K_1 d F_2,  F_1 = F_2 K_1/K_2
//	r_s = mu_s max(F_1 - N, 0),  S_s = r_s/V,  n_0 = F_1/N
//	F_b = max(F_2 + c N, N),  S_f = S_p A_s/F_b
//	R_v = alpha_v R_m A_s,  R_t = 0.9 R_m A_s
//	S_b = 1/max[V/R_v + N/(1.4 R_t), N/R_t]
//	p_1 = V/(d t_p),  p_2 = n_p V/(d t_e) (through), V/(d L_n) (tapped)
//	S_h = min(R_1/p_1, R_2/p_2)
//	L_n = 1.5 d in steel, 2 d in iron;  c_n = 1.5 d,  p_n = 3 d
//
// F is the pin load [N], D the bore; t_e and t_p the thicknesses, E_e and E_p the
// moduli of ear and plate, n_p the plates; n_x bolts along the line from the pin and
// n_y across it, p_x and p_y apart, their middle at e from the pin, a hole c_e from
// the nearest edge, t_d the metal for threads [mm]; phi the angle of the load to
// that line. Without phi, V and N are those of the worst direction:
//
//	V^2 = (V_1^2 + V_2^2 + V_4^2)/2 + sqrt{[(V_1^2 - V_2^2 - V_4^2)/2]^2 + V_1^2 V_2^2}, V_4 = V_1 + V_3
//	N   = sqrt(N_x^2 + N_y^2)
//
// mu_s is the slip coefficient, f the preload as a share of the proof load, K_1 and
// K_2 the range of the nut factor, c the share of a pull that a bolt feels; R_1 and
// R_2 the yield strengths of plate and ear [MPa]; S_0 and S_1 the safeties wanted of
// bolts and against slip; T in N*m.
//
// A plate shares the load only through a bore that was finished together with the
// ear: a plate bored apart carries nothing until the pin has moved, and the sheet
// refuses it. The load sits in the middle of the plate and the bolts hold it at its
// face; that tips the plate and pulls at the bolts.
//
// Validity: plates that bear on the pin all along; two rows and two columns at
// least; holes not nearer than 1.2 d to an edge or 2.2 d to each other.
//
// Error: the share by stiffness counts the bolts as rigid. They are not, so the ear
// carries more than F_e and the plates less than F_p: check the ear for its own.
//
// Source: stiffness and statics, recomputed; group: Shigley's Mechanical Engineering
// Design, 9th ed., section 8-12 (read); pull and shear together and least distances:
// EN 1993-1-8 tables 3.3 and 3.4 (from memory); 1.5 d, 3 d, depth of thread: common
// practice, no source.
func BoltedReinforcement(in BoltedReinforcementInputs) (BoltedReinforcementOutputs, error) {
	var c worked.Checks
	in.check(&c)
	in.checkBolts(&c)
	t, s := lookUp(&c, in.Size, in.Grade)
	nearest := in.pattern().nearest(in.Eccentricity)
	in.checkSpacing(&c, t.DiameterMM, nearest)
	if err := c.Err(); err != nil {
		return BoltedReinforcementOutputs{}, err
	}
	out := BoltedReinforcementOutputs{
		DiameterMM: t.DiameterMM, StressAreaMM2: t.StressAreaMM2, ProofMPa: s.ProofMPa, TensileMPa: s.TensileMPa, ShearShare: s.ShearShare,
		EdgeNeededMM: 1.5 * t.DiameterMM, PitchNeededMM: 3 * t.DiameterMM, BoreDistanceMM: nearest - in.BoreMM/2,
	}
	out.shares(in)
	out.forces(in)
	out.clamping(in)
	out.strength(in)
	return out, nil
}

func (in BoltedReinforcementInputs) pattern() grid {
	return grid{in.Columns, in.Rows, in.ColumnPitchMM, in.RowPitchMM}
}

// shares splits the pin load by stiffness.
func (out *BoltedReinforcementOutputs) shares(in BoltedReinforcementInputs) {
	out.Share = in.PlateEMPa * in.PlateMM / (in.EarEMPa*in.EarMM + in.Plates*in.PlateEMPa*in.PlateMM)
	out.PlateN = out.Share * in.PinLoadN
	out.EarN = in.PinLoadN - in.Plates*out.PlateN
}

// forces fills in what the worst bolt carries across and along.
func (out *BoltedReinforcementOutputs) forces(in BoltedReinforcementInputs) {
	g := in.pattern()
	out.Bolts, out.FarXMM, out.FarYMM, out.SquaresX, out.SquaresY = g.count(), g.farXMM(), g.farYMM(), g.squaresX(), g.squaresY()
	turn := out.PlateN * in.Eccentricity / (out.SquaresX + out.SquaresY)
	out.DirectN, out.TurningXN, out.TurningYN = out.PlateN/out.Bolts, turn*out.FarYMM, turn*out.FarXMM
	tipping := out.PlateN * in.PlateMM / 2
	out.TippingXN, out.TippingYN = tipping*out.FarXMM/out.SquaresX, tipping*out.FarYMM/out.SquaresY
	across := out.DirectN + out.TurningYN
	if !in.LoadAngleDeg.Known {
		out.ShearN = worstShear(out.DirectN, out.TurningXN, across)
		out.PullN = math.Hypot(out.TippingXN, out.TippingYN)
		return
	}
	sin, cos := math.Sincos(in.LoadAngleDeg.Value * math.Pi / 180)
	sin, cos = math.Abs(sin), math.Abs(cos)
	out.ShearN = math.Hypot(out.DirectN*cos+out.TurningXN*sin, across*sin)
	out.PullN = out.TippingXN*cos + out.TippingYN*sin
}

// worstShear is the largest length of (direct cos + turning sin, across sin) over
// all angles: the larger singular value of the matrix behind it.
func worstShear(direct, turning, across float64) float64 {
	a, b, c := direct*direct, turning*turning, across*across
	return math.Sqrt((a+b+c)/2 + math.Sqrt((a-b-c)*(a-b-c)/4+a*b))
}

// clamping fills in torque, slip and opening.
func (out *BoltedReinforcementOutputs) clamping(in BoltedReinforcementInputs) {
	proof := out.ProofMPa * out.StressAreaMM2
	out.PreloadMostN = in.Fraction * proof
	out.TorqueNM = in.FactorLeast * out.DiameterMM * out.PreloadMostN / 1000
	out.PreloadLeastN = out.PreloadMostN * in.FactorLeast / in.FactorMost
	out.SlipN = in.SlipMu * max(out.PreloadLeastN-out.PullN, 0)
	out.SlipSafety = out.SlipN / out.ShearN
	out.OpeningSafety = out.PreloadLeastN / out.PullN
	out.BoltPullN = max(out.PreloadMostN+in.Stiffness*out.PullN, out.PullN)
	out.ProofSafety = proof / out.BoltPullN
}

// strength fills in the safeties of bolts and holes.
func (out *BoltedReinforcementOutputs) strength(in BoltedReinforcementInputs) {
	out.ShearResistsN = out.ShearShare * out.TensileMPa * out.StressAreaMM2
	out.PullResistsN = 0.9 * out.TensileMPa * out.StressAreaMM2
	out.BoltSafety = 1 / max(out.ShearN/out.ShearResistsN+out.PullN/(1.4*out.PullResistsN), out.PullN/out.PullResistsN)
	out.PlateBearing = out.ShearN / (out.DiameterMM * in.PlateMM)
	out.EarBearing = in.Plates * out.ShearN / (out.DiameterMM * in.EarMM)
	if in.Fastening == "tapped" {
		thread := ruleMultiple(in.EarMetal == "iron") * out.DiameterMM
		out.EngagementMM = worked.Some(thread)
		out.EarBearing = out.ShearN / (out.DiameterMM * thread)
	}
	out.BearingSafety = min(in.PlateYieldMPa/out.PlateBearing, in.EarYieldMPa/out.EarBearing)
}
