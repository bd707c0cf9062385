// Command strakebook reads a boatbuilder's own workbook, checks it, works out
// scarfs, bevels, joints and boards, and writes a new workbook.
package main

import "os"

func main() {
	os.Exit(run(os.Args[1:], os.Stdout, os.Stderr))
}
