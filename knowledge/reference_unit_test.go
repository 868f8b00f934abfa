package knowledge

import (
	"strings"

	"boremend/engine/quantity"
)

// unit converts a number of a reference case: canonical = (v + shift) * factor.
type unit struct {
	kind          quantity.Kind
	factor, shift float64
}

// plain is the unit of a name that matches as it stands.
var plain = unit{factor: 1}

func (u unit) toCanonical(v float64) float64   { return (v + u.shift) * u.factor }
func (u unit) fromCanonical(v float64) float64 { return v/u.factor - u.shift }

// unitOf reports the unit of key when key is name followed by the ending of a
// unit of the kind.
func unitOf(key, name string, kind quantity.Kind) (unit, bool) {
	key, name = strings.ToLower(key), strings.ToLower(name)
	ending, ok := strings.CutPrefix(key, name+"_")
	if !ok {
		return unit{}, false
	}
	for _, u := range endings[ending] {
		if u.kind.Dimension() == kind.Dimension() {
			return u, true
		}
	}
	return unit{}, false
}

const (
	inch       = 25.4
	foot       = 12 * inch
	pound      = 0.45359237
	gravity    = 9.80665
	poundForce = pound * gravity // one pound of force, in newtons
	psi        = poundForce / (inch * inch)
	shortTon   = 2000 * poundForce
	gasAtm     = 0.101325
	rankine    = 5.0 / 9.0
	hour       = 3600.0
)

// endings lists the unit endings of names in reference cases.
var endings = map[string][]unit{
	"mm": one(quantity.Length, 1), "um": one(quantity.Length, 1e-3), "cm": one(quantity.Length, 10),
	"in": one(quantity.Length, inch), "thou": one(quantity.Length, inch/1000), "ft": one(quantity.Length, foot),
	"m": one(quantity.Length, 1000),

	"mm2": one(quantity.Area, 1), "cm2": one(quantity.Area, 100), "in2": one(quantity.Area, inch*inch),
	"mm3": one(quantity.Volume, 1), "cm3": one(quantity.Volume, 1000), "in3": one(quantity.Volume, inch*inch*inch),

	"n": one(quantity.Force, 1), "kn": one(quantity.Force, 1000), "mn": one(quantity.Force, 1e6),
	"lbf": one(quantity.Force, poundForce), "klbf": one(quantity.Force, 1000*poundForce), "kip": one(quantity.Force, 1000*poundForce),
	"kgf": one(quantity.Force, gravity), "tf": one(quantity.Force, 1000*gravity),
	"short_tons": one(quantity.Force, shortTon), "short_ton": one(quantity.Force, shortTon), "tons": one(quantity.Force, shortTon),

	"mpa": one(quantity.Stress, 1), "gpa": one(quantity.Stress, 1000), "kpa": one(quantity.Stress, 1e-3),
	"pa": one(quantity.Stress, 1e-6), "bar": one(quantity.Stress, 0.1), "atm": one(quantity.Stress, gasAtm),
	"psi": one(quantity.Stress, psi), "ksi": one(quantity.Stress, 1000*psi), "mpsi": one(quantity.Stress, 1e6*psi),

	"c": celsius, "degc": celsius,
	"f": fahrenheit, "degf": fahrenheit,
	"k": {{quantity.Temperature, 1, -273.15}, {quantity.TemperatureChange, 1, 0}},

	"per_k": one(quantity.Expansion, 1), "per_c": one(quantity.Expansion, 1), "per_f": one(quantity.Expansion, 1/rankine),
	"um_mk": one(quantity.Expansion, 1e-6), "e6_per_k": one(quantity.Expansion, 1e-6),

	"hv": one(quantity.HardnessVickers, 1), "hb": one(quantity.HardnessBrinell, 1), "hbw": one(quantity.HardnessBrinell, 1),

	"s": one(quantity.Time, 1), "min": one(quantity.Time, 60), "h": one(quantity.Time, hour),
	"kg": one(quantity.Mass, 1), "g": one(quantity.Mass, 1e-3), "lb": one(quantity.Mass, pound), "t": one(quantity.Mass, 1000),

	"kg_m3": one(quantity.Density, 1), "g_cm3": one(quantity.Density, 1000),
	"kg_per_mm3": one(quantity.Density, 1e9), "g_mm3": one(quantity.Density, 1e6),
	"lb_in3": one(quantity.Density, pound/(inch*inch*inch)*1e9),

	"deg": one(quantity.Angle, 1), "rad": one(quantity.Angle, 57.29577951308232),

	"m_min": one(quantity.Speed, 1), "m_s": one(quantity.Speed, 60), "mm_s": one(quantity.Speed, 0.06),
	"mm_min": one(quantity.Speed, 1e-3), "cm_min": one(quantity.Speed, 1e-2),
	"in_min": one(quantity.Speed, inch/1000), "ft_min": one(quantity.Speed, foot/1000),

	"n_m": one(quantity.Torque, 1), "nm": one(quantity.Torque, 1), "kn_m": one(quantity.Torque, 1000), "n_mm": one(quantity.Torque, 1e-3),
	"lbf_in": one(quantity.Torque, poundForce*inch/1000), "lbf_ft": one(quantity.Torque, poundForce*foot/1000),
	"kip_in": one(quantity.Torque, poundForce*inch),

	"kj": one(quantity.Energy, 1), "j": one(quantity.Energy, 1e-3),
	"kw": one(quantity.Power, 1), "w": one(quantity.Power, 1e-3), "hp": one(quantity.Power, 550*poundForce*foot*1e-6),
	"kj_mm": one(quantity.HeatInput, 1), "kj_per_mm": one(quantity.HeatInput, 1), "j_mm": one(quantity.HeatInput, 1e-3),
	"kj_in": one(quantity.HeatInput, 1/inch), "kj_cm": one(quantity.HeatInput, 0.1),
	"ml_100g": one(quantity.Hydrogen, 1), "pct": one(quantity.Ratio, 0.01), "um_per_mm": one(quantity.Ratio, 1e-3),
	"usd": one(quantity.Money, 1),
}

var (
	celsius    = []unit{{quantity.Temperature, 1, 0}, {quantity.TemperatureChange, 1, 0}}
	fahrenheit = []unit{{quantity.Temperature, rankine, -32}, {quantity.TemperatureChange, rankine, 0}}
)

func one(kind quantity.Kind, factor float64) []unit { return []unit{{kind, factor, 0}} }
