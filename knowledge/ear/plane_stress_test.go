package ear_test

import "math"

// earModel is a small finite-element model of a round-ended ear, clamped three end
// radii behind the bore: plane stress, 8-node elements in rings about the bore, unit
// thickness. It shares no line with the formulas that it checks.
type earModel struct {
	bore       float64 // radius
	round, out int     // elements round the bore and outward
	nodes      [][2]float64
	band       bandMatrix
}

const modulus, poisson = 205000.0, 0.3

// newEarModel meshes and factors an ear with bore radius r and end radius R; the
// free end lies at angle zero.
func newEarModel(r, end float64, round, out int) *earModel {
	m := &earModel{bore: r, round: round, out: out}
	m.placeNodes(end)
	m.assemble(end)
	return m
}

// node numbers the grid of half elements; rings are taken alternately from both
// sides of the free end, which keeps the band narrow.
func (m *earModel) node(i, j int) int {
	n := 2 * m.round
	i = (i%n + n) % n
	ring := 2 * (n - i)
	if i <= n/2 {
		ring = max(2*i-1, 0)
	}
	return ring*(2*m.out+1) + j
}

// placeNodes lays rays from the bore to the outline, one of them into each corner
// of the clamped end.
func (m *earModel) placeNodes(end float64) {
	n := 2 * m.round
	angles := make([]float64, n)
	for i := range angles {
		angles[i] = 2 * math.Pi * float64(i) / float64(n)
	}
	for _, corner := range []float64{math.Atan2(1, -3), 2*math.Pi - math.Atan2(1, -3)} {
		k := 2 * int(math.Round(corner/(2*math.Pi)*float64(m.round)))
		shift := corner - angles[k]
		angles[k], angles[k-1], angles[k+1] = corner, angles[k-1]+shift/2, angles[k+1]+shift/2
	}
	m.nodes = make([][2]float64, n*(2*m.out+1))
	for i, angle := range angles {
		c, s := math.Cos(angle), math.Sin(angle)
		reach := end // the round end
		if c < 0 {
			reach = min(3*end/-c, end/max(math.Abs(s), 1e-12))
		}
		for j := range 2*m.out + 1 {
			share := float64(j) / float64(2*m.out)
			share *= 0.35 + 0.65*share // finer toward the bore
			radius := m.bore + (reach-m.bore)*share
			m.nodes[m.node(i, j)] = [2]float64{radius * c, radius * s}
		}
	}
}

// element lists the nodes of an element: corners, then the middles of its sides.
func (m *earModel) element(e, f int) [8]int {
	i, j := 2*e, 2*f
	return [8]int{
		m.node(i, j), m.node(i, j+2), m.node(i+2, j+2), m.node(i+2, j),
		m.node(i, j+1), m.node(i+1, j+2), m.node(i+2, j+1), m.node(i+1, j),
	}
}

// shapes returns the shape functions and their slopes at a place in an element.
func shapes(x, y float64) (n, dx, dy [8]float64) {
	for k, corner := range [4][2]float64{{-1, -1}, {1, -1}, {1, 1}, {-1, 1}} {
		a, b := corner[0]*x, corner[1]*y
		n[k] = (1 + a) * (1 + b) * (a + b - 1) / 4
		dx[k] = corner[0] * (1 + b) * (2*a + b) / 4
		dy[k] = corner[1] * (1 + a) * (2*b + a) / 4
	}
	for _, k := range []int{4, 6} {
		side := float64(k - 5)
		n[k], dx[k], dy[k] = (1-x*x)*(1+side*y)/2, -x*(1+side*y), side*(1-x*x)/2
	}
	for _, k := range []int{5, 7} {
		side := float64(6 - k)
		n[k], dx[k], dy[k] = (1-y*y)*(1+side*x)/2, side*(1-y*y)/2, -y*(1+side*x)
	}
	return n, dx, dy
}

// strains returns the matrix that turns displacements into strains.
func (m *earModel) strains(nodes [8]int, x, y float64) (b [3][16]float64, area float64) {
	_, dx, dy := shapes(x, y)
	var j [2][2]float64
	for k, n := range nodes {
		for axis := range 2 {
			j[0][axis] += dx[k] * m.nodes[n][axis]
			j[1][axis] += dy[k] * m.nodes[n][axis]
		}
	}
	area = j[0][0]*j[1][1] - j[0][1]*j[1][0]
	for k := range 8 {
		alongX := (j[1][1]*dx[k] - j[0][1]*dy[k]) / area
		alongY := (j[0][0]*dy[k] - j[1][0]*dx[k]) / area
		b[0][2*k], b[1][2*k+1], b[2][2*k], b[2][2*k+1] = alongX, alongY, alongY, alongX
	}
	return b, area
}

// stress turns strains into stresses.
func stress(e [3]float64) [3]float64 {
	f := modulus / (1 - poisson*poisson)
	return [3]float64{f * (e[0] + poisson*e[1]), f * (e[1] + poisson*e[0]), f * (1 - poisson) / 2 * e[2]}
}

// assemble builds the stiffness, clamps the far end and factors.
func (m *earModel) assemble(end float64) {
	width := 0
	for e := range m.round {
		for _, a := range m.element(e, m.out-1) {
			for _, b := range m.element(e, 0) {
				width = max(width, a-b, b-a)
			}
		}
	}
	m.band = newBandMatrix(2*len(m.nodes), 2*width+2)
	gauss := [3]float64{-math.Sqrt(0.6), 0, math.Sqrt(0.6)}
	weight := [3]float64{5.0 / 9, 8.0 / 9, 5.0 / 9}
	for e := range m.round {
		for f := range m.out {
			nodes := m.element(e, f)
			for a, x := range gauss {
				for b, y := range gauss {
					m.addPoint(nodes, x, y, weight[a]*weight[b])
				}
			}
		}
	}
	for k, place := range m.nodes {
		if place[0] < -3*end+1e-6 {
			m.band.add(2*k, 2*k, 1e13)
			m.band.add(2*k+1, 2*k+1, 1e13)
		}
	}
	m.band.factor()
}

func (m *earModel) addPoint(nodes [8]int, x, y, weight float64) {
	b, area := m.strains(nodes, x, y)
	for q := range 16 {
		s := stress([3]float64{b[0][q], b[1][q], b[2][q]})
		for p := range 16 {
			m.band.add(2*nodes[p/2]+p%2, 2*nodes[q/2]+q%2, (b[0][p]*s[0]+b[1][p]*s[1]+b[2][p]*s[2])*weight*area)
		}
	}
}

// factor returns the peak hoop tension at the bore over F/(d t), under a pressure on
// the bore that depends on the angle.
func (m *earModel) factor(pressure func(angle float64) float64) float64 {
	load := make([]float64, 2*len(m.nodes))
	var force [2]float64
	for e := range m.round {
		nodes := m.element(e, 0)
		for k, y := range gaussPlaces {
			n, _, dy := shapes(-1, y)
			var place, along [2]float64
			for a, node := range nodes {
				for axis := range 2 {
					place[axis] += n[a] * m.nodes[node][axis]
					along[axis] += dy[a] * m.nodes[node][axis]
				}
			}
			p := pressure(math.Atan2(place[1], place[0])) * math.Hypot(along[0], along[1]) * gaussWeights[k]
			for axis := range 2 {
				share := p * place[axis] / m.bore
				force[axis] += share
				for a, node := range nodes {
					load[2*node+axis] += n[a] * share
				}
			}
		}
	}
	m.band.solve(load)
	return m.peakHoop(load) / math.Hypot(force[0], force[1]) * 2 * m.bore
}

var (
	gaussPlaces  = [4]float64{-0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526}
	gaussWeights = [4]float64{0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538}
)

// peakHoop averages the stress of the elements that meet at a node of the bore.
func (m *earModel) peakHoop(moved []float64) float64 {
	n := 2 * m.round
	sum, count := make([]float64, n), make([]float64, n)
	for e := range m.round {
		nodes := m.element(e, 0)
		for q, y := range []float64{-1, 0, 1} {
			b, _ := m.strains(nodes, -1, y)
			var strain [3]float64
			for row := range 3 {
				for k := range 16 {
					strain[row] += b[row][k] * moved[2*nodes[k/2]+k%2]
				}
			}
			s, i := stress(strain), (2*e+q)%n
			place := m.nodes[m.node(i, 0)]
			cos, sin := place[0]/m.bore, place[1]/m.bore
			sum[i] += s[0]*sin*sin + s[1]*cos*cos - 2*s[2]*sin*cos
			count[i]++
		}
	}
	peak := math.Inf(-1)
	for i := range sum {
		peak = max(peak, sum[i]/count[i])
	}
	return peak
}

// bandMatrix is symmetric; it holds each row from the diagonal on.
type bandMatrix struct {
	size, width int
	rows        []float64
}

func newBandMatrix(size, width int) bandMatrix {
	return bandMatrix{size, width, make([]float64, size*width)}
}

func (b bandMatrix) add(i, j int, v float64) {
	if j >= i {
		b.rows[i*b.width+j-i] += v
	}
}

// factor eliminates downward; a row that no element touches is left alone.
func (b bandMatrix) factor() {
	for i := range b.size {
		row := b.rows[i*b.width:][:min(b.width, b.size-i)]
		if row[0] == 0 {
			row[0] = 1
		}
		for k := 1; k < len(row); k++ {
			if share := row[k] / row[0]; share != 0 {
				below := b.rows[(i+k)*b.width:]
				for q, v := range row[k:] {
					below[q] -= share * v
				}
			}
		}
	}
}

func (b bandMatrix) solve(v []float64) {
	for i := range b.size {
		row := b.rows[i*b.width:][:min(b.width, b.size-i)]
		for k := 1; k < len(row); k++ {
			v[i+k] -= row[k] / row[0] * v[i]
		}
	}
	for i := b.size - 1; i >= 0; i-- {
		row := b.rows[i*b.width:][:min(b.width, b.size-i)]
		for k := 1; k < len(row); k++ {
			v[i] -= row[k] * v[i+k]
		}
		v[i] /= row[0]
	}
}
