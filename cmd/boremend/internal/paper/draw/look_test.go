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
	sl := Sleeve{Made: "sleeve", ODLeast: MM(90.160), ODMost: MM(90.183), IDBefore: MM(80.035), IDPressed: MM(79.873), FinishBore: MM(80), EarWidth: MM(50), Shoulder: &Shoulder{Thickness: MM(8), OD: MM(106)}, Material: "4140 quenched and tempered", RoughnessRzMM: MM(0.01), Seat: &Chamfer{1.8, .8, 20, 5}, Grease: "ear"}
	d, err = DrawSleeve(sl)
	if err != nil {
		t.Fatal(err)
	}
	look(t, dir, d)
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
