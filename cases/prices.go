package cases

import (
	"strconv"

	"gopkg.in/yaml.v3"

	"boremend/engine/quantity"
)

// Prices are what the job knows of money, in the currency of the shop's rates. Nil:
// not known. They change no advice.
type Prices struct {
	Part         *float64 // a new part, as delivered
	DowntimeHour *float64 // what an hour of the standing machine costs its owner
}

// mostMoney is the most that one price may be: far beyond any machine.
const mostMoney = 1e9

// readPrices reads prices of a bore over those of the job.
func (r *reader) readPrices(n *yaml.Node, over Prices) Prices {
	out := over
	fields, _ := r.Entry(n, priceKeys)
	for key, into := range map[string]**float64{"part_price": &out.Part, "downtime_cost": &out.DowntimeHour} {
		if fields[key] == nil {
			continue
		}
		reading, ok := r.Quantity(fields[key], quantity.Money, "")
		switch {
		case !ok:
		case reading.HasGiveOrTake:
			r.Report(fields[key], "write the amount alone", "a give-or-take has no place here")
		case !(reading.Value >= 0 && reading.Value <= mostMoney):
			r.Report(fields[key], "write an amount from zero to a thousand million", "%q cannot be a price", fields[key].Value)
		default:
			*into = &reading.Value
		}
	}
	return out
}

// writePrices writes what is known of money as it is read; without any of it
// there is nothing to write.
func writePrices(p Prices) *yaml.Node {
	n := mapping()
	for _, price := range []struct {
		key string
		is  *float64
	}{{"part_price", p.Part}, {"downtime_cost", p.DowntimeHour}} {
		if price.is != nil {
			addKey(n, price.key, plain(strconv.FormatFloat(*price.is, 'g', -1, 64)))
		}
	}
	return n
}
