package measure

// BoardFeet is lumber by board measure: one is a foot square and an inch thick.
type BoardFeet float64
