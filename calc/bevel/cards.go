package bevel

import (
	"fmt"
	"slices"
	"strings"

	"strakebook/calc/finding"
	"strakebook/calc/hull"
)

// What the planks sawn lack.
var (
	EdgeOther = &finding.Kind{
		Code: "bevel-edge", Severity: finding.Warning, Title: "lifted along an edge that is not the one sawn",
		Why:    "The turn of a seam goes on the edge that meets the plank already hung; sawn on the other it opens both seams.",
		Remedy: "set \"sawn edge\" to the edge lifted, or lift the other edge: the upper edge of a plank is the seam of the lower edge of the plank above",
	}
	NoBevels = &finding.Kind{
		Code: "bevel-none", Severity: finding.Note, Title: "plank without bevels",
		Why:    "It gets no card, and cannot be sawn before its seam is lifted.",
		Remedy: "lift its bevels, or give offsets that the hull can be drawn from",
	}
)

// key is a plank on a side, whatever the case of its name.
type key struct {
	skin   hull.Skin
	strake string
	side   hull.Side
}

func (s Schedule) plank() key { return key{s.Skin, strings.ToLower(s.Strake), s.Side} }

// CheckCards looks through the cards of the whole job: planks lifted along an edge
// that is not sawn, whose cards it leaves in doubt; planks that have no card; sides
// sawn as the other.
func CheckCards(all []Schedule, strakes []hull.Strake, r Rules) finding.List {
	if len(all) == 0 {
		return nil
	}
	found := checkEdges(all, r)
	found = append(found, checkNone(all, strakes, r)...)
	return append(found, checkOneSided(all)...)
}

func checkEdges(all []Schedule, r Rules) finding.List {
	edges := map[key][]Edge{}
	for _, s := range all {
		edges[s.plank()] = append(edges[s.plank()], s.Edge)
	}
	var wrong []Schedule
	for i := range all {
		s := &all[i]
		lacks := slices.ContainsFunc(r.edges(), func(e Edge) bool { return !slices.Contains(edges[s.plank()], e) })
		if s.Computed || !lacks || r.Sawn == EdgeUnstated && !r.Shared {
			continue
		}
		wrong = append(wrong, *s)
		if s.Doubt == "" {
			s.Doubt = EdgeOther.Title
		}
	}
	if len(wrong) == 0 {
		return nil
	}
	f := at(EdgeOther, wrong)
	f.Text = fmt.Sprintf("%s: the only edge lifted, and the %s one is sawn", planks(wrong), r.Sawn)
	if r.Shared {
		f.Text = fmt.Sprintf("%s: the only edge lifted, and both share the bevel", planks(wrong))
	}
	return finding.List{f}
}

// checkNone names the planks listed that no card is of. The plank at the sheer has no
// seam above it to be sawn to, nor the last one below it.
func checkNone(all []Schedule, strakes []hull.Strake, r Rules) finding.List {
	var names []string
	var f finding.Finding
	for _, skin := range skins(strakes) {
		rows := slices.DeleteFunc(slices.Clone(strakes), func(k hull.Strake) bool { return k.Skin != skin })
		free := free(rows, r)
		for _, k := range rows {
			for _, name := range k.Names() {
				without := cardless(all, k, name)
				if name == free || len(without) == 0 {
					continue
				}
				if len(names) == 0 {
					f = finding.Finding{Kind: NoBevels, Cell: k.Cell}
				} else if k.Cell != f.Cell && !slices.Contains(f.Also, k.Cell) {
					f.Also = append(f.Also, k.Cell)
				}
				words := strings.TrimSpace(fmt.Sprintf("%s %s", skin, name))
				if len(without) == 1 {
					words += " " + without[0].String()
				}
				names = append(names, words)
			}
		}
	}
	if len(names) == 0 {
		return nil
	}
	f.Text = strings.Join(names, ", ") + ": no bevels lifted and none worked out, and so no card"
	if more := len(names) - 6; more > 1 {
		f.Text = fmt.Sprintf("%s and %d more: no bevels lifted and none worked out, and so no card", strings.Join(names[:6], ", "), more)
	}
	return finding.List{f}
}

// cardless is the sides of a strake that have no card.
func cardless(all []Schedule, k hull.Strake, name string) []hull.Side {
	sides := []hull.Side{k.Side}
	if k.Side == hull.BothSides {
		sides = []hull.Side{hull.Starboard, hull.Port}
	}
	var without []hull.Side
	for _, side := range sides {
		if !has(all, k.Skin, name, side) {
			without = append(without, side)
		}
	}
	return without
}

// free is the strake whose sawn edge is at no seam: the first at the sheer, or the
// last; "" where both edges are sawn.
func free(rows []hull.Strake, r Rules) string {
	switch {
	case r.Shared || r.Sawn == EdgeUnstated:
		return ""
	case r.Sawn == Lower:
		names := rows[len(rows)-1].Names()
		return names[len(names)-1]
	}
	return rows[0].Names()[0]
}

// skins is the skins that are sawn to bevels, in the order of the list.
func skins(strakes []hull.Strake) []hull.Skin {
	var all []hull.Skin
	for _, k := range strakes {
		if k.Skin != hull.Strips && !slices.Contains(all, k.Skin) {
			all = append(all, k.Skin)
		}
	}
	return all
}
