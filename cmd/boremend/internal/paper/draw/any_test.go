package draw

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"boremend/engine/quantity"
)

// drawer draws random numbers for drawings, from a hair to a house.
type drawer struct{ *rapid.T }

// between is a length anywhere between two, as likely small as large.
func (d drawer) between(name string, least, most float64) Length {
	return MM(least * math.Pow(most/least, rapid.Float64Range(0, 1).Draw(d.T, name)))
}

// maybe is a length that may not be known, or assumed.
func (d drawer) maybe(name string, least, most float64) Length {
	l := d.between(name, least, most)
	switch rapid.IntRange(0, 3).Draw(d.T, name+" known") {
	case 0:
		return Length{}
	case 1:
		l.Assumed = true
	}
	return l
}

func (d drawer) units() quantity.System {
	return rapid.SampledFrom([]quantity.System{quantity.Millimetre, quantity.Inch}).Draw(d.T, "units")
}

func (d drawer) load() Load { return Load(rapid.IntRange(0, 3).Draw(d.T, "load")) }

// beyond is a length larger than another by a thin or a thick wall.
func (d drawer) beyond(name string, l Length) Length {
	return MM(l.MM * (1 + math.Pow(10, rapid.Float64Range(-4, 1).Draw(d.T, name))))
}

func (d drawer) ear() Ear {
	bore := d.between("bore", 0.5, 300)
	cut := d.beyond("cut", bore)
	e := Ear{
		Units: d.units(), FinishBore: bore, WornMax: d.maybe("worn", bore.MM*0.9, bore.MM*1.5), WornMin: d.maybe("least worn", bore.MM*0.9, bore.MM*1.1),
		WornReach: d.maybe("reach", bore.MM*0.5, bore.MM*0.8), WallNow: d.maybe("wall", 0.01, bore.MM), Load: d.load(),
		NewBore: cut, WallLeft: d.maybe("wall left", 0.01, bore.MM), Made: rapid.SampledFrom([]string{"", "sleeve", "weld"}).Draw(d.T, "made"),
	}
	if rapid.IntRange(0, 4).Draw(d.T, "edge known") > 0 {
		e.EdgeDistance = d.beyond("edge", MM(cut.MM/2))
	}
	if rapid.Bool().Draw(d.T, "read") {
		e.Wear = d.readings(bore)
	}
	return e
}

func (d drawer) readings(bore Length) []Radius {
	var list []Radius
	for range rapid.IntRange(1, 12).Draw(d.T, "readings") {
		list = append(list, Radius{rapid.Float64Range(0, 359.9).Draw(d.T, "clock"), bore.MM / 2 * rapid.Float64Range(0.9, 1.4).Draw(d.T, "radius")})
	}
	return list
}

func (d drawer) shoulder(od Length) *Shoulder {
	switch rapid.IntRange(0, 2).Draw(d.T, "shoulder") {
	case 0:
		return nil
	case 1:
		return &Shoulder{}
	}
	s := &Shoulder{Thickness: d.between("thickness", 0.1, 80), OD: d.beyond("shoulder OD", od)}
	if rapid.Bool().Draw(d.T, "recessed") {
		s.Recess = d.between("recess", 0.01, 4)
	}
	return s
}

func (d drawer) section() Section {
	bore := d.between("bore", 0.5, 300)
	cut := d.beyond("cut", bore)
	s := Section{
		Units: d.units(), Made: "sleeve", EarWidth: d.between("width", 5, 2000), NewBore: cut, FinishBore: bore, EdgeDistance: d.beyond("edge", MM(cut.MM/2)),
		WallLeft: d.maybe("wall left", 0.01, bore.MM), Wall: d.maybe("wall", 0.01, bore.MM), SideGap: d.maybe("gap", 0.01, 200), PlayLeft: d.maybe("play", 0.01, 100),
		Shoulder: d.shoulder(cut),
	}
	if rapid.Bool().Draw(d.T, "screwed") {
		s.Screws = d.screws()
		s.Screws.Diameter = d.between("screw", bore.MM/100, bore.MM*0.9)
	}
	return s
}

func (d drawer) screws() *Screws {
	return &Screws{Size: "M8", Count: rapid.IntRange(1, 12).Draw(d.T, "screws"), Diameter: d.between("screw", 0.3, 40), Depth: d.maybe("depth", 1, 100)}
}

func (d drawer) sleeve() Sleeve {
	bore := d.between("bore", 0.5, 300)
	least := d.beyond("outside", bore)
	s := Sleeve{
		Made: "sleeve", ODLeast: least, ODMost: MM(least.MM * 1.0003), IDBefore: bore, IDPressed: d.maybe("pressed", bore.MM*0.99, bore.MM), FinishBore: d.maybe("finish", bore.MM, bore.MM*1.001),
		EarWidth: d.between("width", 5, 2000), Shoulder: d.shoulder(MM(least.MM * 1.0003)), Material: "Steel 42CrMo4", RoughnessRz: d.maybe("roughness", 0.001, 0.1),
		Grease: rapid.SampledFrom([]string{"ear", "pin", "none", ""}).Draw(d.T, "grease"),
	}
	if rapid.Bool().Draw(d.T, "chamfered") {
		s.Seat = &Chamfer{1.8, 0.8, 20, 5}
	}
	return s
}

func (d drawer) buildUp() BuildUp {
	filled := d.between("filled", 0.5, 200)
	finish := d.beyond("finish", filled)
	return BuildUp{
		Units: d.units(), Filled: filled, FinishBore: finish, PreBore: d.beyond("cut", finish), Build: d.maybe("build", 0.1, 100), Allowance: d.maybe("allowance", 0.1, 10),
		LayerHeight: d.maybe("layer", 0.1, 20), BeadPitch: d.maybe("pitch", 0.1, 20), Layers: rapid.IntRange(0, 100).Draw(d.T, "layers"),
	}
}

func (d drawer) captured() Captured {
	screws := d.screws()
	bore := d.between("bore", screws.Diameter.MM*1.1, 1000)
	return Captured{
		Units: d.units(), NewBore: d.beyond("cut", bore), FinishBore: bore, Land: d.maybe("land", 1, 200), LandNeeded: d.maybe("land needed", 1, 200), Screws: *screws,
		Needed: rapid.IntRange(0, 99).Draw(d.T, "needed"), Load: d.load(),
	}
}

func (d drawer) plate() Plate {
	columns, rows := rapid.IntRange(1, 6).Draw(d.T, "columns"), rapid.IntRange(1, 6).Draw(d.T, "rows")
	bolt := d.between("bolt", 3, 60)
	pitch := MM(bolt.MM * rapid.Float64Range(2.2, 10).Draw(d.T, "pitch"))
	return Plate{
		Units: d.units(), Bore: d.between("bore", 5, 800), Thickness: d.maybe("thickness", 1, 200), Plates: rapid.IntRange(1, 2).Draw(d.T, "plates"), Columns: columns, Rows: rows,
		ColumnPitch: pitch, RowPitch: MM(bolt.MM * rapid.Float64Range(2.2, 10).Draw(d.T, "across")), Eccentricity: MM(pitch.MM*float64(columns-1)/2 + bolt.MM*rapid.Float64Range(0.6, 30).Draw(d.T, "away")),
		Edge: MM(bolt.MM * rapid.Float64Range(1.2, 5).Draw(d.T, "edge")), Bolt: bolt, BoltSize: "1-1/4-7", Grade: "10.9", Fitted: rapid.Bool().Draw(d.T, "fitted"),
	}
}

func (d drawer) wear() Wear {
	w := Wear{Units: d.units(), FinishBore: d.between("bore", 0.5, 300), Diameters: rapid.Bool().Draw(d.T, "diameters")}
	for i := range rapid.IntRange(1, 7).Draw(d.T, "depths") {
		at := WearAtDepth{DepthMM: float64(i) * 12.7, Readings: d.readings(w.FinishBore)}
		w.Depths = append(w.Depths, at)
	}
	w.Depths[0].Readings = append(w.Depths[0].Readings, Radius{0, w.FinishBore.MM / 2}, Radius{90, w.FinishBore.MM / 2})
	return w
}

// anyTitle is a method's title, friendly or hostile.
func (d drawer) anyTitle() string {
	return rapid.OneOf(rapid.SampledFrom([]string{"Weld up and bore back to size", "<script>alert(1)</script>", "مرحبا بالعالم", "🔧 fix", "x\ny", "", "A\u202eB"}),
		rapid.StringN(0, 40, -1), rapid.StringMatching(`[A-Z]{100,200}`)).Draw(d.T, "title")
}

func (d drawer) shares() []Share {
	var list []Share
	for range rapid.IntRange(1, 8).Draw(d.T, "methods") {
		list = append(list, Share{d.anyTitle(), rapid.Float64Range(0, 1).Draw(d.T, "share"), rapid.SampledFrom([]float64{0, 0.0004, 0.009, 0.4}).Draw(d.T, "error")})
	}
	return list
}

func (d drawer) prices() []Price {
	var list []Price
	for range rapid.IntRange(1, 8).Draw(d.T, "methods") {
		low := d.between("low", 0.01, 1e9).MM
		up := func(name string) float64 { return rapid.Float64Range(1, 3).Draw(d.T, name) }
		half := low * up("half")
		four := half * up("four of five")
		list = append(list, Price{d.anyTitle(), low, half, four, four * up("high")})
	}
	return list
}

// TestAnyNumbers draws with numbers that no joint ever had. Each drawing comes out,
// and nothing in it overlaps.
func TestAnyNumbers(t *testing.T) {
	for name, draw := range map[string]func(drawer) (Drawing, error){
		"ear_found": func(d drawer) (Drawing, error) { return EarFound(d.ear()) },
		"ear_after": func(d drawer) (Drawing, error) { return EarAfter(d.ear()) },
		"section":   func(d drawer) (Drawing, error) { return DrawSection(d.section()) },
		"sleeve":    func(d drawer) (Drawing, error) { return DrawSleeve(d.sleeve()) },
		"build_up":  func(d drawer) (Drawing, error) { return DrawBuildUp(d.buildUp()) },
		"screws":    func(d drawer) (Drawing, error) { return DrawCaptured(d.captured()) },
		"plate":     func(d drawer) (Drawing, error) { return DrawPlate(d.plate()) },
		"wear":      func(d drawer) (Drawing, error) { return DrawWear(d.wear()) },
		"shares":    func(d drawer) (Drawing, error) { return Shares(d.shares(), "Sampled in 10 000 draws.") },
		"prices":    func(d drawer) (Drawing, error) { return Prices(d.prices(), thousands) },
	} {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(rt *rapid.T) {
				d, err := draw(drawer{rt})
				if err != nil {
					rt.Fatal(err)
				}
				if d.Name != name {
					rt.Errorf("is named %s", d.Name)
				}
				for _, f := range d.Faults() {
					rt.Error(f)
				}
			})
		})
	}
}
