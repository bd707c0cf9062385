package hull

import "strings"

// StrakeOf is a strake of a side as the hull is lined off, and its skin's lining; of
// no skin, the first that has it.
func (s *Shape) StrakeOf(skin Skin, strake string, side Side) (Lined, *Lining, bool) {
	if s == nil {
		return Lined{}, nil, false
	}
	for i := range s.Linings {
		l := &s.Linings[i]
		if skin != "" && l.Skin != skin || side != BothSides && l.Side != BothSides && l.Side != side {
			continue
		}
		for _, k := range l.Strakes {
			if strings.EqualFold(k.Name, strake) {
				return k, l, true
			}
		}
	}
	return Lined{}, nil, false
}
