package quantity

import "math/big"

// FormatStock writes a length in the steps in which stock is sold: the nearest
// 1/64 in ("7/8 in", "1-1/4 in") or the nearest 0.5 mm ("22.5 mm"). What would
// round to nothing, and what is no length, is written as by Format.
func (q Quantity) FormatStock(s System) string {
	exact, ok := decimal(q.Value)
	if q.Kind != Length || !ok {
		return q.Format(s)
	}
	step, name := big.NewRat(1, 2), "mm"
	if s == Inch {
		step, name = big.NewRat(254, 640), "in"
	}
	steps := nearestWhole(new(big.Rat).Quo(exact, step))
	if !steps.IsInt64() || steps.Sign() == 0 {
		return q.Format(s)
	}
	if s == Inch {
		return withUnit(sixtyFourths(steps.Int64()), name)
	}
	return withUnit(trimZeros(new(big.Rat).Mul(new(big.Rat).SetInt(steps), step).FloatString(1), 0), name)
}

// nearestWhole rounds halves away from zero.
func nearestWhole(r *big.Rat) *big.Int {
	raised := new(big.Rat).Add(new(big.Rat).Abs(r), big.NewRat(1, 2))
	whole := new(big.Int).Quo(raised.Num(), raised.Denom())
	if r.Sign() < 0 {
		whole.Neg(whole)
	}
	return whole
}

// sixtyFourths writes n/64 as a whole number and a fraction in lowest terms.
func sixtyFourths(n int64) string {
	size := big.NewInt(n)
	sign := ""
	if n < 0 {
		sign, size = "-", size.Neg(size)
	}
	whole, rest := size.QuoRem(size, big.NewInt(64), new(big.Int))
	switch {
	case rest.Sign() == 0:
		return sign + whole.String()
	case whole.Sign() == 0:
		return sign + new(big.Rat).SetFrac(rest, big.NewInt(64)).String()
	}
	return sign + whole.String() + "-" + new(big.Rat).SetFrac(rest, big.NewInt(64)).String()
}
