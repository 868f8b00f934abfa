package draw

import (
	"os"
	"testing"
)

func TestLook(t *testing.T) {
	dir := os.Getenv("LOOK")
	if dir == "" {
		t.Skip()
	}
	ear := Ear{FinishBore: MM(110), WornMax: MM(114.2), WornMin: MM(110.4), WornReach: Length{MM: 59.2, Known: true, Assumed: true}, EdgeDistance: MM(98.425), WallNow: Length{MM: 39.2, Known: true, Assumed: true}, Load: TowardThin, NewBore: MM(122), WallLeft: MM(37.425), Made: "sleeve"}
	for _, f := range []func(Ear) (Drawing, error){EarFound, EarAfter} {
		d, err := f(ear)
		if err != nil {
			t.Fatal(err)
		}
		look(t, dir, d)
	}
	sec := Section{Made: "sleeve", EarWidth: MM(50), EdgeDistance: MM(75), NewBore: MM(90), FinishBore: MM(80), WallLeft: MM(30), Wall: MM(5), SideGap: MM(9), PlayLeft: MM(1), Shoulder: &Shoulder{Thickness: MM(8), OD: MM(106), Recess: MM(0)}}
	d, err := DrawSection(sec)
	if err != nil {
		t.Fatal(err)
	}
	look(t, dir, d)
	sl := Sleeve{Made: "sleeve", ODLeast: MM(90.160), ODMost: MM(90.183), IDBefore: MM(80.035), IDPressed: MM(79.873), FinishBore: MM(80), EarWidth: MM(50), Shoulder: &Shoulder{Thickness: MM(8), OD: MM(106)}, Material: "4140 quenched and tempered", RoughnessRz: MM(0.01), Seat: &Chamfer{1.8, .8, 20, 5}, Grease: "ear"}
	d, err = DrawSleeve(sl)
	if err != nil {
		t.Fatal(err)
	}
	look(t, dir, d)
	must := func(d Drawing, err error) {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		look(t, dir, d)
	}
	must(DrawBuildUp(BuildUp{PreBore: MM(118.8), Filled: MM(106), FinishBore: MM(110), Build: MM(6.4), Allowance: MM(2), LayerHeight: MM(3.075), BeadPitch: MM(4.8), Layers: 3}))
	must(DrawCaptured(Captured{NewBore: MM(90), FinishBore: MM(80), Land: MM(20), LandNeeded: MM(17.5), Screws: Screws{"M8", 3, MM(8), MM(16)}, Needed: 3, Load: TowardThin}))
	must(DrawPlate(Plate{Bore: MM(60), Thickness: MM(16), Plates: 1, Columns: 2, Rows: 2, ColumnPitch: MM(60), RowPitch: MM(60), Eccentricity: MM(120), Edge: MM(30), Bolt: MM(20), BoltSize: "M20", Grade: "8.8", Fitted: true}))
	must(DrawWear(Wear{FinishBore: MM(110), Diameters: true, Depths: []WearAtDepth{{10, []Radius{{0, 57}, {180, 57}, {45, 56}, {225, 56}, {90, 55.2}, {270, 55.2}, {135, 55.6}, {315, 55.6}}}, {60, []Radius{{0, 56.5}, {180, 56.5}, {45, 55.7}, {225, 55.7}, {90, 55.1}, {270, 55.1}, {135, 55.3}, {315, 55.3}}}}}))
	must(Shares([]Share{{"Bore over and press in a sleeve with a shoulder", 0.937, 0.005}, {"Weld up and bore back to size", 0.05, 0.004}, {"Stop and ask the maker or an engineer", 0.013, 0.002}}, "10 000 draws, each number anywhere within its give-or-take."))
	must(Prices([]Price{{"Bore over and press in a sleeve with a shoulder", 1800, 2400, 2900, 4100}, {"Weld up and bore back to size", 2600, 3700, 4400, 6800}}, func(a float64) string { return thousands(a) + " USD" }))
}

func look(t *testing.T, dir string, d Drawing) {
	t.Logf("%s %.1f x %.1f", d.Name, d.WidthMM(), d.HeightMM())
	png, err := d.PNG(150)
	if err != nil {
		t.Fatal(err)
	}
	os.WriteFile(dir+"/"+d.Name+".png", png, 0o644)
	svg, err := d.SVG()
	if err != nil {
		t.Fatal(err)
	}
	os.WriteFile(dir+"/"+d.Name+".svg", svg, 0o644)
	pdf, err := d.PDF()
	if err != nil {
		t.Fatal(err)
	}
	os.WriteFile(dir+"/"+d.Name+".pdf", pdf, 0o644)
}
