package main

import (
	"bytes"
	"os"
	"path/filepath"
	"regexp"
	"testing"

	"strakebook/convert"
)

// TestEveryFindingHasAStory demands for each code a story that shows it on the
// terminal; a line that says it must not be there does not count, nor one that lies
// in a file of the story, where it is never run.
func TestEveryFindingHasAStory(t *testing.T) {
	stories, err := filepath.Glob("../../testdata/script/*.txtar")
	if err != nil || len(stories) == 0 {
		t.Fatal("no stories", err)
	}
	shown := map[string]bool{}
	demand := regexp.MustCompile(`(?m)^stdout .*(?:\\\[|\.)([a-z]+(?:-[a-z]+)+)(?:\\\]|\.)'$`)
	command := regexp.MustCompile(`(?m)^(?:! )?(?:exec|stdout|stderr|grep|cmp) .*$`)
	for _, path := range stories {
		story, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		run, files, _ := bytes.Cut(story, []byte("\n-- "))
		if astray := command.Find(files); astray != nil {
			t.Errorf("%s: %q stands in a file and is never run", path, astray)
		}
		for _, m := range demand.FindAllSubmatch(run, -1) {
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
