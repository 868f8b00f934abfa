package draw

// EarAfter draws the ear as the repair leaves it: the new bore, what fills it back
// to size, and the wall left beside it.
func EarAfter(in Ear) (Drawing, error) {
	v, err := in.view()
	if err != nil {
		return Drawing{}, err
	}
	var c checks
	c.needs("the new bore", in.NewBore)
	c.larger("twice the edge distance", MM(2*in.edgeOr(in.NewBore.MM)), "the new bore", in.NewBore)
	if in.Made != "" {
		c.larger("the new bore", in.NewBore, "the finished bore", in.FinishBore)
	}
	if err := c.err(); err != nil {
		return Drawing{}, err
	}
	bore := in.NewBore.MM / 2 * v.scale.of
	v.outline()
	v.fillNewBore(bore)
	v.loadArrow()
	labels := v.edgeLabels("wall left", v.WallLeft, bore)
	labels = append(labels, v.boreLabels(bore)...)
	labels = append(labels, v.loadLabel()...)
	v.column(v.edge, 1, labels...)
	v.foot(v.scale, v.Units, 0, v.edgeNote())
	return v.finish("ear_after", "The ear after the repair", v.afterWords()), nil
}

// edgeOr is the edge distance, or what stands in where it is not known.
func (in Ear) edgeOr(mm float64) float64 {
	if in.EdgeDistance.Known {
		return in.EdgeDistance.MM
	}
	return mm
}

// fillNewBore draws the new bore and what is in it.
func (v *earView) fillNewBore(bore float64) {
	switch v.Made {
	case "":
		v.draw(outline, circle(at(0, 0), bore))
		v.draw(original, circle(at(0, 0), v.round))
	case "weld":
		v.draw(narrow, circle(at(0, 0), bore))
		v.draw(outline, circle(at(0, 0), v.round))
	default:
		v.draw(outline, circle(at(0, 0), bore), circle(at(0, 0), v.round))
	}
}

func (v *earView) boreLabels(bore float64) []label {
	at60, at115 := onCircle(bore, 62), onCircle(v.round, 115)
	finish := "Ø " + shown(v.FinishBore.MM, v.Units)
	cut := "Ø " + shown(v.NewBore.MM, v.Units)
	switch v.Made {
	case "":
		return []label{{lines: []string{"bored for the bigger pin", cut}, target: at60}, {lines: []string{"size as built", finish}, target: at115}}
	case "weld":
		return []label{{lines: []string{"cut before welding", cut}, target: at60}, {lines: []string{"bored back to", finish}, target: at115}}
	}
	return []label{{lines: []string{"bore for the " + v.Made, cut}, target: at60}, {lines: []string{"finished bore", finish}, target: at115}}
}

func (v *earView) afterWords() string {
	words := "The ear seen along its bore, after the repair: bored to " + shown(v.NewBore.MM, v.Units)
	switch v.Made {
	case "":
		words += " for a bigger pin"
	case "weld":
		words += " before welding, filled with weld and bored back to " + shown(v.FinishBore.MM, v.Units)
	default:
		words += ", with a " + v.Made + " in it of bore " + shown(v.FinishBore.MM, v.Units)
	}
	if v.WallLeft.Known {
		words += "; wall left " + v.WallLeft.text(v.Units)
	}
	return words + "."
}
