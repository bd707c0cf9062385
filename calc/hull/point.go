package hull

import "math"

// point is a place on the hull in inches: x aft, y out from the centre line, z
// up from the base line.
type point struct{ x, y, z float64 }

func (p point) plus(q point) point    { return point{p.x + q.x, p.y + q.y, p.z + q.z} }
func (p point) minus(q point) point   { return point{p.x - q.x, p.y - q.y, p.z - q.z} }
func (p point) times(k float64) point { return point{p.x * k, p.y * k, p.z * k} }
func (p point) dot(q point) float64   { return p.x*q.x + p.y*q.y + p.z*q.z }
func (p point) length() float64       { return math.Sqrt(p.dot(p)) }
func (p point) from(q point) float64  { return p.minus(q).length() }
func (p point) unit() point           { return p.times(1 / p.length()) }

func (p point) cross(q point) point {
	return point{p.y*q.z - p.z*q.y, p.z*q.x - p.x*q.z, p.x*q.y - p.y*q.x}
}

func (p point) coordinate(k int) float64 { return [...]float64{p.x, p.y, p.z}[k] }
