// Package templates holds what the program carries with it: the words a heading
// may bear, the starter book and the demo yard, all as text that shows in a
// diff. It knows nothing of how they are read.
package templates

import "embed"

// Headings is the words a heading may bear: meaning, and words apart by
// semicolons.
//
//go:embed headings.csv
var Headings string

// Books is the sheets of the starter and demo books as CSV: the sheet Offsets of
// the demo yard is demo/Offsets.csv. A cell "date:2003-04-06" stands for one that
// a spreadsheet has turned into that date.
//
//go:embed starter/*.csv demo/*.csv
var Books embed.FS

// Starter is the sheets of the starter book, in order, in the folder starter.
var Starter = []string{"Settings", "Offsets", "Bevels", "Strakes", "Rack", "Pieces"}

// Demo is the sheets of the demo yard's book, in order, in the folder demo.
var Demo = []string{"Job", "Offsets", "Bevels", "Strakes", "Rack"}

// DatePrefix begins a cell that a spreadsheet has turned into a date.
const DatePrefix = "date:"
