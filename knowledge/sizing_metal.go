package knowledge

import (
	"fmt"
	"strings"

	"boremend/engine/quantity"
	"boremend/knowledge/material"
	"boremend/knowledge/worked"
)

// metal is what the sheets need of a material, as their inputs take it.
type metal struct {
	elastic, poisson, yield, tensile, strength, expansion worked.Value
	breaks, treatment, chills                             string
}

// metal looks up the material that a fact names: a class of joint material, or
// the grade of a sleeve.
func (t *taker) metal(fact string) metal {
	word := t.take(fact).Word
	if word == "" {
		return metal{}
	}
	look := material.OfClass
	if fact == SleeveMaterial {
		look = material.Named
	}
	m, err := look(word)
	if err != nil {
		t.failed = firstOf(t.failed, &worked.Refusal{Input: fact, Says: err.Error()})
		return metal{}
	}
	return t.properties(fact, word, m)
}

// metalNamed looks up the class of a part that is made for the repair.
func (t *taker) metalNamed(class string) metal {
	m, err := material.OfClass(class)
	if err != nil {
		t.failed = firstOf(t.failed, err)
		return metal{}
	}
	return t.properties("new_part", class, m)
}

// properties turns a material into inputs of the sheets.
func (t *taker) properties(fact, word string, m material.Material) metal {
	if m.Strength == nil {
		t.failed = firstOf(t.failed, &worked.Refusal{Input: fact, Says: "the strength of " + m.Title + " is not known"})
		return metal{}
	}
	t.note(fact, m)
	ratio := func(v float64, kind quantity.Kind) worked.Value {
		return worked.Value{Quantity: quantity.Quantity{Value: v, Kind: kind}}
	}
	out := metal{
		elastic: ratio(m.Elastic.EMPa(), quantity.Stress), poisson: ratio(m.Elastic.Poisson, quantity.Ratio),
		yield: ratio(m.Strength.YieldMPa, quantity.Stress), tensile: ratio(m.Strength.TensileMPa, quantity.Stress),
		expansion: ratio(m.Physical.ExpansionPerK, quantity.Expansion),
		breaks:    "ductile", treatment: treatments[word], chills: "carbon_steel",
	}
	out.strength = out.yield
	if m.Brittle {
		out.breaks, out.strength = "brittle", out.tensile
	}
	if out.treatment == "" {
		out.treatment = "plain"
	}
	if m.Family == "bronze" {
		out.chills = "bronze"
	}
	return out
}

// treatments are the heat treatments that heating must not undo. Alloy castings
// and forgings are taken as quenched and tempered, which many are.
var treatments = map[string]string{
	"qt_steel": "quenched_tempered", "cast_steel_alloy": "quenched_tempered", "forged_alloy": "quenched_tempered",
}

// note says what a material stands for and which of its figures come from
// memory.
func (t *taker) note(fact string, m material.Material) {
	text := fmt.Sprintf("%s taken as %s: strength %s (%s, %s).", strings.ReplaceAll(fact, "_", " "), m.Title, m.Strength.Basis, m.Strength.Source, m.Strength.HowKnown)
	if m.Elastic.HowKnown != material.Read {
		text += fmt.Sprintf(" Modulus and Poisson's ratio %s.", m.Elastic.HowKnown)
	}
	if m.Physical.HowKnown != material.Read {
		text += fmt.Sprintf(" Expansion %s.", m.Physical.HowKnown)
	}
	if m.Note != "" {
		text += " " + m.Note
	}
	t.notes = append(t.notes, strings.ToUpper(text[:1])+text[1:])
}

// SleeveMaterials lists the grades that a sleeve can be made of.
func SleeveMaterials() []string {
	all, err := material.All()
	if err != nil {
		return nil // every lookup of a material reports it
	}
	var names []string
	for _, m := range all {
		if m.Strength != nil && m.Strength.YieldMPa > 0 && (m.Family == "steel" || m.Family == "bronze") {
			names = append(names, m.Name)
		}
	}
	return names
}
