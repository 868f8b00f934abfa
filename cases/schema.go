package cases

import (
	"boremend/engine"
	"boremend/engine/quantity"
	"boremend/engine/schema"
)

// Schema returns the schema of job files, with the facts, choices, methods,
// rules and cautions of the rulebook.
func Schema(book *engine.Rulebook) *schema.Schema {
	facts := &schema.Schema{Type: "object", Additional: false}
	withUnit := &schema.Schema{}
	for _, f := range book.Facts {
		if f.WorkedOut() {
			continue
		}
		facts.Properties = append(facts.Properties, schema.Property{Name: f.Name, Is: schema.Fact(f, true).Means(schema.Question(f))})
		if f.Sort == engine.Number && f.Kind == quantity.Length {
			withUnit.Properties = append(withUnit.Properties, schema.Property{Name: f.Name, Is: schema.Fact(f, false)})
		}
	}
	job := schema.Entry(jobKeys, map[string]*schema.Schema{
		"job": schema.Text(), "about": schema.Text(), "invented": schema.YesNo(), "units": schema.OneWord(unitWords...),
		"facts":  {Ref: "#/$defs/facts"},
		"prices": pricesSchema(),
		"photos": {Ref: "#/$defs/photos"},
		"bores":  {Type: "array", MinItems: 1, Items: boreSchema()},
		"expect": {Type: "object", Additional: expectSchema(book)},
	})
	job.Dialect, job.Title = schema.Dialect, "A boremend job file"
	job.Description = "What was found at each worn bore of one visit, for the rulebook " + book.Title + ", edition " + book.Edition + "."
	job.If, job.Else = &schema.Schema{Required: []string{"units"}}, unitsNeeded()
	job.Defs = schema.Properties{
		{Name: "facts", Is: facts},
		{Name: "readings", Is: schema.List(readingSchema())},
		{Name: "photos", Is: photosSchema()},
		{Name: "facts_with_units", Is: withUnit},
		{Name: "readings_with_units", Is: schema.List(readingValues(false))},
	}
	return job
}

func boreSchema() *schema.Schema {
	readings := &schema.Schema{Ref: "#/$defs/readings"}
	return schema.Entry(boreKeys, map[string]*schema.Schema{
		"bore": schema.Text(), "facts": {Ref: "#/$defs/facts"}, "prices": pricesSchema(), "readings": readings, "as_bored": readings, "photos": {Ref: "#/$defs/photos"},
	})
}

func pricesSchema() *schema.Schema {
	amount := schema.Quantity(quantity.Money, true)
	return schema.Entry(priceKeys, map[string]*schema.Schema{"part_price": amount, "downtime_cost": amount})
}

func photosSchema() *schema.Schema {
	photos := schema.List(schema.Entry(photoKeys, map[string]*schema.Schema{"file": schema.Text(), "shows": schema.Text()}))
	photos.MaxItems = mostPhotos
	return photos
}

func readingSchema() *schema.Schema {
	values := map[string]*schema.Schema{}
	for _, p := range readingValues(true).Properties {
		values[p.Name] = p.Is
	}
	entry := schema.Entry(readingKeys, values)
	entry.OneOf = []*schema.Schema{{Required: []string{"diameter"}}, {Required: []string{"radius"}}}
	return entry
}

// readingValues says what the numbers of a reading look like.
func readingValues(bare bool) *schema.Schema {
	s := &schema.Schema{}
	for _, k := range readingKeys {
		value := schema.Quantity(quantity.Length, bare)
		if k.Name == "clock" {
			value = schema.Quantity(quantity.Angle, true)
		}
		s.Properties = append(s.Properties, schema.Property{Name: k.Name, Is: value})
	}
	return s
}

// unitsNeeded asks for a unit on every length of a job that names none for all.
func unitsNeeded() *schema.Schema {
	facts, readings := &schema.Schema{Ref: "#/$defs/facts_with_units"}, &schema.Schema{Ref: "#/$defs/readings_with_units"}
	bore := &schema.Schema{Properties: schema.Properties{{Name: "facts", Is: facts}, {Name: "readings", Is: readings}, {Name: "as_bored", Is: readings}}}
	return &schema.Schema{Properties: schema.Properties{{Name: "facts", Is: facts}, {Name: "bores", Is: &schema.Schema{Items: bore}}}}
}

func expectSchema(book *engine.Rulebook) *schema.Schema {
	ruleNames, cautionNames := expectable(book)
	methods := schema.List(schema.OneWord(book.MethodNames()...))
	rules, cautions := schema.List(schema.OneWord(ruleNames...)), schema.List(schema.OneWord(cautionNames...))
	byMethod := func(is *schema.Schema) *schema.Schema { return byName(book.MethodNames(), is) }
	points := schema.Number(nil, nil, 0)
	return schema.Entry(expectKeys, map[string]*schema.Schema{
		"advice": methods, "may_stand": methods, "no_go": methods, "not_advised": methods,
		"cautions": cautions, "no_cautions": cautions, "holds": rules, "fails": rules,
		"left_open": rules, "until_known": rules, "not_checked": rules,
		"provisional": schema.YesNo(), "narrow": schema.YesNo(),
		"verdicts": byMethod(schema.OneWord(verdicts...)),
		"points":   byMethod(&schema.Schema{AnyOf: []*schema.Schema{points, {Type: "array", Items: points, MinItems: 2, MaxItems: 2}}}),
		"leans":    byMethod(byName(book.RuleNames(), points)), "ruled_out_by": byMethod(rules), "demands": byMethod(rules),
		"worked_out": byName(book.WorkedOutNames(), schema.Text()),
	})
}

// byName is a mapping from some names to what is given.
func byName(names []string, is *schema.Schema) *schema.Schema {
	s := &schema.Schema{Type: "object", Additional: false}
	for _, name := range names {
		s.Properties = append(s.Properties, schema.Property{Name: name, Is: is})
	}
	return s
}
