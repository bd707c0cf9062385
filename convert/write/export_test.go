package write

// MakeLater has every line made as it is written until the function it returns is
// called.
func MakeLater() (undo func()) {
	was := few
	few = 0
	return func() { few = was }
}
