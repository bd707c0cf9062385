package main

import (
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"strakebook/convert"
)

// TestEveryFindingHasAStory demands for each code a story that shows it on the
// terminal; a line that says it must not be there does not count.
func TestEveryFindingHasAStory(t *testing.T) {
	stories, err := filepath.Glob("../../testdata/script/*.txtar")
	if err != nil || len(stories) == 0 {
		t.Fatal("no stories", err)
	}
	shown := map[string]bool{}
	demand := regexp.MustCompile(`(?m)^stdout .*(?:\\\[|\.)([a-z]+(?:-[a-z]+)+)(?:\\\]|\.)'$`)
	for _, path := range stories {
		story, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range demand.FindAllSubmatch(story, -1) {
			shown[string(m[1])] = true
		}
	}
	known := map[string]bool{}
	for _, k := range convert.Kinds() {
		known[k.Code] = true
		if !shown[k.Code] {
			t.Errorf("%s has no story under testdata/script that shows it", k.Code)
		}
	}
	for code := range shown {
		if !known[code] {
			t.Errorf("a story shows %s, which no package lists", code)
		}
	}
}
