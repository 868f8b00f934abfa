package fit

import (
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

func TestMoreInterferenceNeverLowersPressure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawRings(t)
		tighter := in
		tighter.InterferenceMM *= rapid.Float64Range(1, 3).Draw(t, "times")
		if pressure(t, tighter) < pressure(t, in) {
			t.Errorf("tighter, and less pressure: %+v", in)
		}
	})
}

func TestThickerSleeveNeverLowersPressure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawRings(t)
		thicker := in
		thicker.SleeveIDMM *= rapid.Float64Range(0.3, 1).Draw(t, "times")
		if pressure(t, thicker) < pressure(t, in)*(1-1e-12) {
			t.Errorf("thicker sleeve, and less pressure: %+v", in)
		}
	})
}

func TestThickerHubNeverLowersPressure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawRings(t)
		thicker := in
		thicker.HubODMM *= rapid.Float64Range(1, 3).Draw(t, "times")
		if pressure(t, thicker) < pressure(t, in)*(1-1e-12) {
			t.Errorf("thicker hub, and less pressure: %+v", in)
		}
	})
}

func pressure(t *rapid.T, in PressFitPressureInputs) float64 {
	t.Helper()
	out, err := PressFitPressure(in)
	if err != nil {
		t.Fatal(err)
	}
	return out.PressureMPa
}

func TestThickerEarNeverRaisesHoopPerPressure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawEar(t)
		thicker := in
		more := in.EdgeWallMM * rapid.Float64Range(0, 3).Draw(t, "more")
		thicker.EdgeWallMM += more
		if in.EarRadiusMM.Known {
			thicker.EarRadiusMM.Value += more
		}
		thin, thick := ear(t, in), ear(t, thicker)
		if thick.HoopPressedMPa/thick.PressureMPa > thin.HoopPressedMPa/thin.PressureMPa*(1+1e-12) {
			t.Errorf("%g mm more wall raises the hoop stress for the same pressure", more)
		}
	})
}

// Friction along the axis does not help while pressing in, and the stiff side of
// the ear always adds to the ring.
func TestEarHoopOrder(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		out := ear(t, drawEar(t))
		if !(out.RingHoopMPa < out.HoopSlippedMPa && out.HoopSlippedMPa < out.HoopPressedMPa) {
			t.Errorf("ring %g, slipped %g, pressed %g", out.RingHoopMPa, out.HoopSlippedMPa, out.HoopPressedMPa)
		}
	})
}

// An ear of unknown radius must never come out better than one that is known.
func TestUnknownRadiusIsTheSafeSide(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawEar(t)
		in.EarRadiusMM = worked.Some(in.SeatDiameterMM/2 + in.EdgeWallMM*rapid.Float64Range(1, 2).Draw(t, "R"))
		known := ear(t, in)
		in.EarRadiusMM = worked.Optional{}
		if unknown := ear(t, in); unknown.HoopPressedMPa < known.HoopPressedMPa*(1-1e-12) {
			t.Errorf("unknown radius %g MPa, known %g MPa", unknown.HoopPressedMPa, known.HoopPressedMPa)
		}
	})
}

func drawEar(t *rapid.T) PressFitEarInputs {
	ring := drawRings(t)
	in := PressFitEarInputs{
		SeatDiameterMM: ring.SeatDiameterMM, EdgeWallMM: ring.SeatDiameterMM * rapid.Float64Range(0.13, 1.5).Draw(t, "w/d"), SleeveIDMM: ring.SleeveIDMM,
		EarEMPa: ring.HubEMPa, EarNu: ring.HubNu, SleeveEMPa: ring.SleeveEMPa, SleeveNu: ring.SleeveNu, InterferenceMM: ring.InterferenceMM,
	}
	if rapid.Bool().Draw(t, "radius known") {
		in.EarRadiusMM = worked.Some(in.SeatDiameterMM/2 + in.EdgeWallMM*rapid.Float64Range(1, 2).Draw(t, "R"))
	}
	return in
}

func ear(t *rapid.T, in PressFitEarInputs) PressFitEarOutputs {
	t.Helper()
	out, err := PressFitEar(in)
	if err != nil {
		t.Fatal(err)
	}
	return out
}

// The sheet of the whole fit must give what its parts give.
func TestPressFitIsMadeOfItsParts(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawPressFit(t)
		out, err := PressFit(in)
		if err != nil {
			t.Fatal(err)
		}
		part := PressFitEarInputs{
			SeatDiameterMM: in.SeatDiameterMM, EdgeWallMM: in.EdgeWallMM, EarRadiusMM: in.EarRadiusMM, SleeveIDMM: in.SleeveIDMM,
			EarEMPa: in.EarEMPa, EarNu: in.EarNu, SleeveEMPa: in.SleeveEMPa, SleeveNu: in.SleeveNu, InterferenceMM: in.InterferenceMost + out.ServiceGainMM,
		}
		atWork := ear(t, part)
		near(t, "ear hoop", out.HoopPressedMPa, atWork.HoopPressedMPa)
		near(t, "ear equivalent", out.EquivalentMPa, atWork.EquivalentMPa)
		ring := PressFitPressureInputs{
			SeatDiameterMM: in.SeatDiameterMM, HubODMM: in.SeatDiameterMM + 2*in.EdgeWallMM, SleeveIDMM: in.SleeveIDMM,
			HubEMPa: in.EarEMPa, HubNu: in.EarNu, SleeveEMPa: in.SleeveEMPa, SleeveNu: in.SleeveNu, InterferenceMM: in.InterferenceMost,
		}
		thin := pressFitPressure(ring)
		near(t, "closure", out.BoreClosureMM, thin.BoreClosureMM)
		near(t, "pressure", out.PressureMostMPa, thin.PressureMPa)
		force, err := PressForce(PressForceInputs{SeatDiameterMM: in.SeatDiameterMM, LengthMM: in.LengthMM, PressureMPa: thin.PressureMPa, FrictionLow: in.FrictionLow, FrictionHigh: in.FrictionHigh})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "least press force", out.PressForceLowN, force.ForceLowN)
		if out.PressForceHighN < force.ForceHighN*(1-1e-12) || out.MostClosureMM < out.BoreClosureMM*(1-1e-12) {
			t.Errorf("the largest wall must bound force and closure of the smallest")
		}
		if out.PressureLeastMPa > out.PressureMostMPa || out.HoldingForceN > out.PressForceLowN {
			t.Errorf("it holds more than it takes to press in")
		}
	})
}

func drawPressFit(t *rapid.T) PressFitInputs {
	e := drawEar(t)
	in := PressFitInputs{
		SeatDiameterMM: e.SeatDiameterMM, LengthMM: rapid.Float64Range(10, 300).Draw(t, "L"), SleeveIDMM: e.SleeveIDMM, EdgeWallMM: e.EdgeWallMM, EarRadiusMM: e.EarRadiusMM,
		InterferenceMost: e.InterferenceMM, InterferenceLeast: e.InterferenceMM * rapid.Float64Range(0.1, 1).Draw(t, "least"),
		EarEMPa: e.EarEMPa, EarNu: e.EarNu, EarMetal: rapid.SampledFrom([]string{"ductile", "brittle"}).Draw(t, "metal"), EarStrengthMPa: 250,
		SleeveEMPa: e.SleeveEMPa, SleeveNu: e.SleeveNu, SleeveYieldMPa: 350, RzBoreMM: 0.01, RzSleeveMM: 0.006,
		FrictionHolding: 0.07, FrictionLow: 0.12, FrictionHigh: 0.2, RoomC: 20, ServiceColdestC: -40, ServiceHottestC: 80,
		EarAlphaPerK: rapid.Float64Range(10e-6, 13e-6).Draw(t, "alpha_h"), SleeveAlphaPerK: rapid.Float64Range(10e-6, 19e-6).Draw(t, "alpha_s"),
		SleeveMetal: "carbon_steel", EarTreatment: "plain",
	}
	if rapid.Bool().Draw(t, "largest wall known") {
		in.LargestWallMM = worked.Some(in.EdgeWallMM * rapid.Float64Range(1, 5).Draw(t, "w_x/w"))
	}
	return in
}
