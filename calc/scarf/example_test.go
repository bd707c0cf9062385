package scarf_test

import (
	"fmt"

	"strakebook/calc/measure"
	"strakebook/calc/scarf"
)

// A 1/4 in plank at 8 to 1 scarfs over 2 in (sawtoothboatworks).
func ExampleRun() {
	fmt.Println(scarf.Run(measure.Inches(0.25), 8, 0))
	// Output: 2 in
}

// 1 in 12 is 4.76364 degrees (a published roof-pitch table); 1 in 15 is 3.8 and
// 1 in 8 is 7.1 (a builder's published note).
func ExampleAngle() {
	fmt.Printf("%.5f %.1f %.1f\n", scarf.Angle(12), scarf.Angle(15), scarf.Angle(8))
	// Output: 4.76364 3.8 7.1
}

// Plain geometry: fences a tenth of a degree apart leave a 1 in scarf of 12 to 1
// open by 21 thousandths at the feather.
func ExampleGap() {
	fmt.Printf("%.4f in\n", scarf.Gap(measure.Inch, 12, 0, 0.1).Inches())
	// Output: 0.0210 in
}
