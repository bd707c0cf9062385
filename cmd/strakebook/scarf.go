package main

import (
	"fmt"
	"regexp"
	"slices"

	"github.com/spf13/cobra"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
	"strakebook/calc/setting"
)

func newScarf() *cobra.Command {
	var slopes []string
	var units string
	cmd := &cobra.Command{
		Use:   "scarf THICKNESS... [--slope N]",
		Short: "Scarf table on the spot",
		Long: "scarf prints run, fence angle and cut face of a plain scarf for each thickness and slope.\n" +
			"A bare thickness is in inches (mm with --units mm): strakebook scarf 5/8 1 --slope 7 --slope 12\n" +
			"Where every thickness is metric the table is in mm: strakebook scarf 22mm\n" +
			"A fraction after a whole number goes with it: 1 1/8 is one thickness.",
		Args: cobra.ArbitraryArgs,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return calledWrongly{fmt.Errorf("no thickness named")}
			}
			unit := measure.InInches
			switch units {
			case "":
				if !slices.ContainsFunc(args, func(a string) bool { return !metric.MatchString(a) }) {
					unit = measure.InMillimetres
				}
			case "feet", "inches":
			case "mm":
				unit = measure.InMillimetres
			default:
				return calledWrongly{fmt.Errorf("--units reads %q: expected feet, inches or mm", units)}
			}
			runs, err := slopesOf(slopes)
			if err != nil {
				return calledWrongly{err}
			}
			var uses []scarf.Use
			for _, a := range thicknesses(args) {
				t, err := measure.ParseLength(a, unit)
				if err != nil {
					return calledWrongly{fmt.Errorf("thickness %w", err)}
				}
				if t <= 0 || t > 2*measure.Foot {
					return calledWrongly{fmt.Errorf("thickness reads %q: expected more than 0 and up to 24 in", a)}
				}
				for _, n := range runs {
					uses = append(uses, scarf.Use{Skin: hull.Planks, Thickness: t, Slope: n})
				}
			}
			rows, _ := scarf.Table(uses, scarf.DefaultRules())
			printScarfs(cmd.OutOrStdout(), rows, unit)
			return nil
		},
	}
	cmd.Flags().StringSliceVar(&slopes, "slope", []string{"7", "8", "10", "12"}, "slope `N` to 1: 12, 12:1 or 1:12; may be given again")
	cmd.Flags().StringVar(&units, "units", "", "write lengths in `inches` or mm")
	return cmd
}

// slopesOf reads slopes in any of the usual ways.
func slopesOf(texts []string) ([]float64, error) {
	all := make([]float64, len(texts))
	for i, t := range texts {
		if err := setting.Number(&all[i], "to 1", 1, 50).Set(t); err != nil {
			return nil, fmt.Errorf("--slope %w", err)
		}
	}
	return all, nil
}

var (
	wholeInches = regexp.MustCompile(`^\d+$`)
	metric      = regexp.MustCompile(`(?i)\d\s*[mc]?m$`)
	fraction    = regexp.MustCompile(`^\d+/\d+"?$`)
)

// thicknesses is the thicknesses named, a fraction together with the whole number
// that the command line has parted from it: 1 1/8.
func thicknesses(args []string) []string {
	var all []string
	for i, a := range args {
		if i > 0 && fraction.MatchString(a) && wholeInches.MatchString(args[i-1]) {
			all[len(all)-1] += " " + a
			continue
		}
		all = append(all, a)
	}
	return all
}
