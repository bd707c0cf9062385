package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"strakebook/calc/hull"
	"strakebook/calc/measure"
	"strakebook/calc/scarf"
)

func newScarf() *cobra.Command {
	var slopes []float64
	var units string
	cmd := &cobra.Command{
		Use:   "scarf THICKNESS... [--slope N]",
		Short: "Scarf table on the spot",
		Long: "scarf prints run, fence angle and cut face of a plain scarf for each thickness and slope.\n" +
			"A bare thickness is in inches (mm with --units mm): strakebook scarf 5/8 1 --slope 7 --slope 12",
		Args: cobra.ArbitraryArgs,
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return calledWrongly{fmt.Errorf("no thickness named")}
			}
			unit := measure.InInches
			switch units {
			case "", "feet", "inches":
			case "mm":
				unit = measure.InMillimetres
			default:
				return calledWrongly{fmt.Errorf("--units reads %q: expected feet, inches or mm", units)}
			}
			var uses []scarf.Use
			for _, a := range args {
				t, err := measure.ParseLength(a, unit)
				if err != nil {
					return calledWrongly{fmt.Errorf("thickness %w", err)}
				}
				if t <= 0 || t > 2*measure.Foot {
					return calledWrongly{fmt.Errorf("thickness reads %q: expected more than 0 and up to 24 in", a)}
				}
				for _, n := range slopes {
					if !(n >= 1 && n <= 50) {
						return calledWrongly{fmt.Errorf("--slope reads %v: expected from 1 to 50", n)}
					}
					uses = append(uses, scarf.Use{Skin: hull.Planks, Thickness: t, Slope: n})
				}
			}
			rows, _ := scarf.Table(uses, scarf.DefaultRules())
			printScarfs(cmd.OutOrStdout(), rows, unit)
			return nil
		},
	}
	cmd.Flags().Float64SliceVar(&slopes, "slope", []float64{7, 8, 10, 12}, "slope `N` to 1; may be given again")
	cmd.Flags().StringVar(&units, "units", "", "write lengths in `inches` or mm")
	return cmd
}
