package price

import (
	"hash/fnv"
	"math"
	"math/rand/v2"
)

// Draws is how often a job is drawn. The price that half of all cases stay below is
// then known to about 1.25 standard deviations over the root of this: a fiftieth or
// so of one, a few units of money in a thousand.
const Draws = 5_000

// seed starts every stream of draws.
const seed = 20_261_125

// draws of one line fall between 0 and 1 of its range, by the beta distribution of
// its three guesses. Each line has a stream of its own, named by the line and its
// bore: a job that gains a line keeps the draws of all others, and two methods that
// share a line share its luck. Two lines are therefore compared on equal terms, and
// what is twice as dear comes out twice as dear.
func draws(stream string, e Estimate) []float64 {
	out := make([]float64, Draws)
	alpha, beta, ok := e.shape()
	if !ok {
		return out
	}
	name := fnv.New64a()
	name.Write([]byte(stream))
	random := rand.New(rand.NewPCG(seed, name.Sum64()))
	for i := range out {
		up, down := gamma(random, alpha), gamma(random, beta)
		out[i] = up / (up + down)
	}
	return out
}

// gamma draws from the gamma distribution of a shape of 1 or more, after Marsaglia
// and Tsang 2000, A simple method for generating gamma variables, ACM Transactions
// on Mathematical Software 26(3).
func gamma(random *rand.Rand, shape float64) float64 {
	d := shape - 1.0/3
	c := 1 / math.Sqrt(9*d)
	for {
		x := random.NormFloat64()
		v := 1 + c*x
		if v <= 0 {
			continue
		}
		v = v * v * v
		if u := random.Float64(); math.Log(u) < x*x/2+d*(1-v+math.Log(v)) {
			return d * v
		}
	}
}
