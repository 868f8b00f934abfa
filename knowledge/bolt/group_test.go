package bolt

import (
	"math"
	"testing"

	"boremend/knowledge/worked"

	"pgregory.net/rapid"
)

// Shigley, 9th ed., example 8-7 p. 457 (read): 16 kN at 425 mm on four bolts; and
// a published question, 10 kN at 100 mm (read).
func TestBoltGroupShearInPrint(t *testing.T) {
	tests := []struct {
		name                       string
		in                         BoltGroupShearInputs
		most, mostTol, least, dist float64
	}{
		{"Shigley 8-7", BoltGroupShearInputs{Columns: 2, Rows: 2, ColumnPitchMM: 150, RowPitchMM: 120, ForceYN: -16000, LoadXMM: 425}, 21000, 0.003, 14800, 0.002},
		{"four M10", BoltGroupShearInputs{Columns: 2, Rows: 2, ColumnPitchMM: 80, RowPitchMM: 60, ForceYN: -10000, LoadXMM: 100}, 7160, 0.001, 0, 0},
	}
	for _, test := range tests {
		out, err := BoltGroupShear(test.in)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(out.MostN-test.most) > test.mostTol*test.most {
			t.Errorf("%s: worst bolt %.0f N, in print %.0f N", test.name, out.MostN, test.most)
		}
		if test.least > 0 && math.Abs(out.LeastN-test.least) > test.dist*test.least {
			t.Errorf("%s: least bolt %.0f N, in print %.0f N", test.name, out.LeastN, test.least)
		}
	}
}

// point is a bolt, seen along its axis, or a force on it.
type point struct{ xMM, yMM float64 }

// sumUp spreads a load over points by brute force, without any of the package's
// shortcuts, and returns the force on each.
func sumUp(points []point, load shearLoad) []point {
	var sumX, sumY, polar float64
	for _, p := range points {
		sumX, sumY = sumX+p.xMM, sumY+p.yMM
	}
	n := float64(len(points))
	cx, cy := sumX/n, sumY/n
	for _, p := range points {
		polar += math.Pow(p.xMM-cx, 2) + math.Pow(p.yMM-cy, 2)
	}
	moment := (load.xMM-cx)*load.forceYN - (load.yMM-cy)*load.forceXN
	forces := make([]point, len(points))
	for i, p := range points {
		r, angle := math.Hypot(p.xMM-cx, p.yMM-cy), math.Atan2(p.yMM-cy, p.xMM-cx)
		turning := moment * r / polar
		forces[i] = point{load.forceXN/n - turning*math.Sin(angle), load.forceYN/n + turning*math.Cos(angle)}
	}
	return forces
}

func gridPoints(in BoltGroupShearInputs) []point {
	var points []point
	for i := range int(in.Columns) {
		for j := range int(in.Rows) {
			points = append(points, point{float64(i)*in.ColumnPitchMM - (in.Columns-1)*in.ColumnPitchMM/2, float64(j)*in.RowPitchMM - (in.Rows-1)*in.RowPitchMM/2})
		}
	}
	return points
}

// patternOf works the sheet for bolts at points.
func patternOf(points []point, load shearLoad) (BoltPatternShearOutputs, error) {
	in := BoltPatternShearInputs{ForceXN: load.forceXN, ForceYN: load.forceYN, LoadXMM: load.xMM, LoadYMM: load.yMM}
	for _, p := range points {
		in.XMM, in.YMM = append(in.XMM, p.xMM), append(in.YMM, p.yMM)
	}
	return BoltPatternShear(in)
}

func drawGroup(t *rapid.T) BoltGroupShearInputs {
	in := BoltGroupShearInputs{
		Columns: float64(rapid.IntRange(1, 6).Draw(t, "columns")), Rows: float64(rapid.IntRange(2, 6).Draw(t, "rows")),
		ColumnPitchMM: rapid.Float64Range(20, 200).Draw(t, "p_x"), RowPitchMM: rapid.Float64Range(20, 200).Draw(t, "p_y"),
		ForceXN: rapid.Float64Range(-1e5, 1e5).Draw(t, "F_x"), ForceYN: rapid.Float64Range(1, 1e5).Draw(t, "F_y"),
		LoadXMM: rapid.Float64Range(-500, 500).Draw(t, "e_x"), LoadYMM: rapid.Float64Range(-500, 500).Draw(t, "e_y"),
	}
	return in
}

// The closed form over a grid, the sum over points and brute force agree.
func TestGroupAgainstDirectSummation(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawGroup(t)
		load := shearLoad{in.ForceXN, in.ForceYN, in.LoadXMM, in.LoadYMM}
		most, least := 0.0, math.Inf(1)
		for _, f := range sumUp(gridPoints(in), load) {
			most, least = max(most, math.Hypot(f.xMM, f.yMM)), min(least, math.Hypot(f.xMM, f.yMM))
		}
		out, err := BoltGroupShear(in)
		if err != nil {
			t.Fatal(err)
		}
		points, err := patternOf(gridPoints(in), load)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "worst bolt", out.MostN, most)
		near(t, "worst bolt over points", points.MostN, most)
		if math.Abs(out.LeastN-least) > 1e-9*most || math.Abs(points.LeastN-least) > 1e-9*most {
			t.Errorf("least bolt %g and %g, want %g", out.LeastN, points.LeastN, least)
		}
	})
}

// Where the group stands, and how it is turned, does not matter.
func TestGroupMayBeMovedAndTurned(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawGroup(t)
		points, load := gridPoints(in), shearLoad{in.ForceXN, in.ForceYN, in.LoadXMM, in.LoadYMM}
		want, err := patternOf(points, load)
		if err != nil {
			t.Fatal(err)
		}
		sin, cos := math.Sincos(rapid.Float64Range(0, 6).Draw(t, "angle"))
		dx, dy := rapid.Float64Range(-500, 500).Draw(t, "dx"), rapid.Float64Range(-500, 500).Draw(t, "dy")
		turn := func(p point) point { return point{cos*p.xMM - sin*p.yMM, sin*p.xMM + cos*p.yMM} }
		for i := range points {
			p := turn(points[i])
			points[i] = point{p.xMM + dx, p.yMM + dy}
		}
		at, force := turn(point{load.xMM, load.yMM}), turn(point{load.forceXN, load.forceYN})
		got, err := patternOf(points, shearLoad{force.xMM, force.yMM, at.xMM + dx, at.yMM + dy})
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(got.MostN-want.MostN) > 1e-6*want.MostN {
			t.Errorf("moved and turned it carries %g, before %g", got.MostN, want.MostN)
		}
	})
}

func TestMoreBoltsNeverRaiseTheWorst(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := drawGroup(t)
		more := in
		more.Columns += float64(rapid.IntRange(0, 3).Draw(t, "more columns"))
		more.Rows += float64(rapid.IntRange(0, 3).Draw(t, "more rows"))
		few, err := BoltGroupShear(in)
		if err != nil {
			t.Fatal(err)
		}
		many, err := BoltGroupShear(more)
		if err != nil {
			t.Fatal(err)
		}
		if many.MostN > few.MostN*(1+1e-12) {
			t.Errorf("%g bolts carry %g N, %g bolts %g N", few.Bolts, few.MostN, many.Bolts, many.MostN)
		}
	})
}

// The bound for a circle covers every place that the bolts can stand in, and is
// no further from the truth than it says.
func TestCircleCoversEveryPlace(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(2, 24).Draw(t, "n")
		in := BoltCircleShearInputs{
			Bolts: float64(n), CircleMM: rapid.Float64Range(50, 800).Draw(t, "D"), ForceN: rapid.Float64Range(1, 1e5).Draw(t, "F"),
			Eccentricity: rapid.Float64Range(0, 500).Draw(t, "e"),
		}
		out, err := BoltCircleShear(in)
		if err != nil {
			t.Fatal(err)
		}
		start := rapid.Float64Range(0, 2*math.Pi).Draw(t, "start")
		points := make([]point, n)
		for i := range points {
			sin, cos := math.Sincos(start + 2*math.Pi*float64(i)/float64(n))
			points[i] = point{in.CircleMM / 2 * cos, in.CircleMM / 2 * sin}
		}
		most := 0.0
		for _, f := range sumUp(points, shearLoad{forceYN: in.ForceN, xMM: in.Eccentricity}) {
			most = max(most, math.Hypot(f.xMM, f.yMM))
		}
		if out.MostN < most*(1-1e-9) || out.MostN > most/math.Cos(math.Pi/2/in.Bolts)*(1+1e-9) {
			t.Errorf("the sheet says %g N, the worst bolt carries %g N", out.MostN, most)
		}
		more := in
		more.Bolts++
		if many, err := BoltCircleShear(more); err != nil || many.MostN > out.MostN {
			t.Errorf("one bolt more carries %g N, before %g N (%v)", many.MostN, out.MostN, err)
		}
	})
}

// The pulls of a tipping plate must balance the moment, about either axis.
func TestTippingIsInBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := BoltGroupTensionInputs{
			Columns: float64(rapid.IntRange(1, 6).Draw(t, "columns")), Rows: float64(rapid.IntRange(2, 8).Draw(t, "rows")),
			RowPitchMM: rapid.Float64Range(20, 200).Draw(t, "p"), EdgeMM: rapid.Float64Range(0, 200).Draw(t, "e"), MomentNM: rapid.Float64Range(1, 1e5).Draw(t, "M"),
		}
		out, err := BoltGroupTension(in)
		if err != nil {
			t.Fatal(err)
		}
		middle, edge := 0.0, 0.0
		for i := 0.0; i < in.Rows; i++ {
			y, above := i*in.RowPitchMM-out.FarMM, in.EdgeMM+i*in.RowPitchMM
			middle += in.Columns * out.MostN * y / out.FarMM * y
			edge += in.Columns * out.EdgeN * above / (in.EdgeMM + 2*out.FarMM) * above
		}
		near(t, "moment about the middle", middle/1000, in.MomentNM)
		near(t, "moment about the edge", edge/1000, in.MomentNM)
		if out.EdgeN > out.MostN*(1+1e-9) {
			t.Errorf("about the edge %g N, about the middle %g N: the middle must be the safe one", out.EdgeN, out.MostN)
		}
		more := in
		more.Rows++
		if many, err := BoltGroupTension(more); err != nil || many.MostN > out.MostN {
			t.Errorf("one row more is pulled by %g N, before %g N (%v)", many.MostN, out.MostN, err)
		}
	})
}

func TestPatternRefuses(t *testing.T) {
	type in = BoltPatternShearInputs
	usual := in{XMM: worked.List{0, 50, 50, 0}, YMM: worked.List{0, 0, 50, 50}, ForceXN: 1, LoadYMM: 300}
	checkRefusals(t, usual, BoltPatternShear, []refusalCase[in]{
		{"no bolts", func(i *in) { i.XMM, i.YMM = nil, nil }, "one bolt is no group"},
		{"one bolt", func(i *in) { i.XMM, i.YMM = worked.List{1}, worked.List{1} }, "one bolt is no group"},
		{"two bolts", func(i *in) { i.XMM, i.YMM = worked.List{1, 90}, worked.List{1, 1} }, ""},
		{"a place along y short", func(i *in) { i.YMM = worked.List{0, 0, 50} }, "as many as bolt_x"},
		{"all bolts in one place", func(i *in) { i.XMM, i.YMM = worked.List{7, 7}, worked.List{7, 7} }, "one place"},
		{"no load", func(i *in) { i.ForceXN = 0 }, "no load"},
		{"load that is none", func(i *in) { i.ForceXN = math.NaN() }, "force_x"},
		{"endless load", func(i *in) { i.ForceYN = math.Inf(1) }, "force_y"},
		{"place that is none", func(i *in) { i.LoadXMM = math.NaN() }, "load_x"},
		{"bolt that is nowhere", func(i *in) { i.YMM = worked.List{0, 0, 50, math.Inf(1)} }, "bolt_y"},
	})
}

// The worst bolt is named by its place in the list, and of equals the first.
func TestWorstBoltIsNamed(t *testing.T) {
	for want, x := range map[float64]worked.List{1: {90, 10, 10, 90}, 2: {10, 90, 90, 10}} {
		out, err := BoltPatternShear(BoltPatternShearInputs{XMM: x, YMM: worked.List{0, 0, 50, 50}, ForceYN: 1e4, LoadXMM: 250, LoadYMM: 25})
		if err != nil {
			t.Fatal(err)
		}
		if out.Worst != want {
			t.Errorf("bolts at %v: number %g is the worst, want %g", x, out.Worst, want)
		}
	}
}

// near compares to nine digits.
func near(t interface{ Errorf(string, ...any) }, what string, got, want float64) {
	if !(math.Abs(got-want) <= 1e-9*math.Max(math.Abs(got), math.Abs(want))) {
		t.Errorf("%s: got %.12g, want %.12g", what, got, want)
	}
}
