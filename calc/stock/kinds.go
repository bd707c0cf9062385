package stock

import "strakebook/calc/finding"

// What the checks of the rack and the cutting find.
var (
	Incomplete = &finding.Kind{
		Code: "stock-incomplete", Severity: finding.Warning, Title: "board without a size, or without a count",
		Why:    "A board of unknown thickness, width or length cannot be cut on paper, nor one that is not there.",
		Remedy: "measure the board and write its size; it is left on the rack until then",
	}
	Absurd = &finding.Kind{
		Code: "stock-absurd", Severity: finding.Error, Title: "board beyond reason",
		Why:    "No mill sends such a board: the unit or the figure is wrong.",
		Remedy: "correct the size, the count or the price; the board is left on the rack until then",
	}
	Delivery = &finding.Kind{
		Code: "stock-delivered", Severity: finding.Warning, Title: "boards counted otherwise than delivered",
		Why:    "The plan cuts as many as are counted: boards that have not come cannot be cut.",
		Remedy: "count the boards that are there",
	}
	Thin = &finding.Kind{
		Code: "stock-thin", Severity: finding.Warning, Title: "stock too thin for every strake of its species",
		Why:    "Finished thickness and the allowance to dress it must both come out of the rough thickness.",
		Remedy: "check the thickness; set \"dressing allowance\" to 0 if the rack is dressed",
	}
	Narrow = &finding.Kind{
		Code: "stock-narrow", Severity: finding.Warning, Title: "stock too narrow for every strake of its species",
		Why:    "The board must cover the wider face of the plank, and lose its edges too.",
		Remedy: "check the width, or keep the board for other work",
	}
	Unused = &finding.Kind{
		Code: "stock-unused", Severity: finding.Note, Title: "species no strake asks for",
		Why:    "It may be meant for other work, or the species is spelt another way.",
		Remedy: "nothing, or spell the species as the strakes do",
	}
	NoSpecies = &finding.Kind{
		Code: "stock-species", Severity: finding.Error, Title: "species not on the rack",
		Why:    "The strake's pieces cannot be cut from wood that is not there.",
		Remedy: "add the species to the rack or the mill's list, or spell it as the rack does",
	}
	NoThick = &finding.Kind{
		Code: "stock-no-thick", Severity: finding.Error, Title: "no stock thick enough",
		Why:    "Finished thickness and the allowance to dress it must both come out of the rough thickness.",
		Remedy: "add thicker stock, or set \"dressing allowance\" to 0 if the rack is dressed",
	}
	NoWide = &finding.Kind{
		Code: "stock-no-wide", Severity: finding.Error, Title: "no stock wide enough",
		Why:    "The board must cover the wider face of the plank, and lose its edges too.",
		Remedy: "add wider stock, or line off narrower planks",
	}
	NoLong = &finding.Kind{
		Code: "stock-no-long", Severity: finding.Error, Title: "no stock long enough",
		Why:    "No chain of pieces that the stock can give reaches from hood end to hood end.",
		Remedy: "add longer stock, or allow shorter pieces",
	}
	Out = &finding.Kind{
		Code: "stock-out", Severity: finding.Error, Title: "rack used up",
		Why:    "The counted boards do not go round, and no mill length may be had as wanted.",
		Remedy: "add boards, or a mill length with its count left blank",
	}
	NoRack = &finding.Kind{
		Code: "stock-none", Severity: finding.Note, Title: "no rack or mill lengths",
		Why:    "Boards, waste and the mill order need sizes to choose from.",
		Remedy: "add a table of boards: species, thickness, width, length, count (blank: as many as wanted)",
	}
	NoPrice = &finding.Kind{
		Code: "stock-price", Severity: finding.Note, Title: "rack without all its prices",
		Why:    "With no price for some boards the least board feet are sought in place of the least cost.",
		Remedy: "price every row of the rack to have the least cost sought",
	}
)
