package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"strakebook/calc/finding"
	"strakebook/convert"
)

func newExplain() *cobra.Command {
	return &cobra.Command{
		Use:   "explain [CODE]",
		Short: "What a finding means, why it matters, what to do",
		Args:  cobra.ArbitraryArgs,
		RunE: func(cmd *cobra.Command, codes []string) error {
			kinds := slices.Clone(convert.Kinds())
			slices.SortFunc(kinds, func(a, b *finding.Kind) int { return strings.Compare(a.Code, b.Code) })
			out := cmd.OutOrStdout()
			if len(codes) == 0 {
				for _, k := range kinds {
					fmt.Fprintf(out, "%-22s %-8s %s\n", k.Code, k.Severity, k.Title)
				}
				return nil
			}
			for _, code := range codes {
				i := slices.IndexFunc(kinds, func(k *finding.Kind) bool { return k.Code == strings.ToLower(code) })
				if i < 0 {
					return calledWrongly{fmt.Errorf("explain %s: no finding has that code; strakebook explain lists them", code)}
				}
				k := kinds[i]
				fmt.Fprintf(out, "%s (%s): %s\n  why: %s\n  what to do: %s\n", k.Code, k.Severity, k.Title, k.Why, k.Remedy)
			}
			return nil
		},
	}
}
