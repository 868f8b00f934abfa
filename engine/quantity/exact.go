package quantity

import (
	"math"
	"math/big"
	"strconv"
)

// fraction is an exact conversion factor.
type fraction struct{ over, under int64 }

func (f fraction) rat() *big.Rat { return big.NewRat(f.over, f.under) }

// decimal returns the shortest decimal number that v denotes, as an exact
// fraction, and false when v is not finite.
func decimal(v float64) (*big.Rat, bool) {
	return new(big.Rat).SetString(strconv.FormatFloat(v, 'g', -1, 64))
}

// toFloat rounds to the nearest float64. It reports false when the number is
// too large for one, or so small that nothing would be left of it.
func toFloat(exact *big.Rat) (float64, bool) {
	v, _ := exact.Float64()
	if math.IsInf(v, 0) || v == 0 && exact.Sign() != 0 {
		return 0, false
	}
	return v, true
}

// exponent returns e where the first digit of a positive number counts 10^e,
// and 0 for zero.
func exponent(size *big.Rat) int {
	if size.Sign() == 0 {
		return 0
	}
	// A quotient of two whole numbers of m and n digits starts at 10^(m-n) or
	// one place lower; comparing decides.
	digits := len(size.Num().String()) - len(size.Denom().String())
	if size.Cmp(powerOfTen(digits)) < 0 {
		digits--
	}
	return digits
}

func powerOfTen(n int) *big.Rat {
	power := new(big.Int).Exp(big.NewInt(10), big.NewInt(int64(max(n, -n))), nil)
	if n < 0 {
		return new(big.Rat).SetFrac(big.NewInt(1), power)
	}
	return new(big.Rat).SetInt(power)
}
