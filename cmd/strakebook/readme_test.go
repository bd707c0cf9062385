package main

import (
	"bytes"
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// TestReadme runs every example of README as a builder would type it: blocks
// named by a file are written down, lines after `$` are run, and what stands
// below them must come out, line for line; `...` stands for lines left out.
func TestReadme(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	dir, ran := t.TempDir(), 0
	named := regexp.MustCompile("`([a-z]+\\.csv)`")
	file := ""
	for _, block := range strings.Split(string(readme), "\n\n") {
		if !strings.HasPrefix(block, "    ") {
			file = ""
			if m := named.FindStringSubmatch(block); m != nil {
				file = m[1]
			}
			continue
		}
		lines := strings.Split(strings.TrimPrefix(strings.ReplaceAll(block, "\n    ", "\n"), "    "), "\n")
		switch {
		case strings.HasPrefix(lines[0], "$ "):
			ran += session(t, dir, lines)
		case file != "":
			if err := os.WriteFile(filepath.Join(dir, file), []byte(strings.Join(lines, "\n")+"\n"), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		file = ""
	}
	if ran < 4 {
		t.Errorf("only %d examples were run", ran)
	}
}

// session runs the commands of one block and compares what they say.
func session(t *testing.T, dir string, lines []string) (ran int) {
	t.Helper()
	for i := 0; i < len(lines); {
		command := strings.TrimPrefix(lines[i], "$ ")
		words := strings.Fields(command)
		run := exec.Command(words[0], words[1:]...)
		run.Dir = dir
		said, err := run.CombinedOutput()
		var exit *exec.ExitError
		if err != nil && !errors.As(err, &exit) {
			t.Fatalf("%s: %v", command, err)
		}
		ran++
		got := strings.Split(strings.TrimRight(string(bytes.TrimRight(said, "\n")), " "), "\n")
		skip := false
		for i++; i < len(lines) && !strings.HasPrefix(lines[i], "$ "); i++ {
			if lines[i] == "..." {
				skip = true
				continue
			}
			for skip && len(got) > 0 && got[0] != lines[i] {
				got = got[1:]
			}
			if len(got) == 0 || got[0] != lines[i] {
				t.Errorf("%s does not say %q:\n%s", command, lines[i], said)
				return ran
			}
			got, skip = got[1:], false
		}
		if len(got) > 0 && !skip && got[0] != "" {
			t.Errorf("%s says more than README shows: %q", command, got[0])
		}
	}
	return ran
}

// TestReadmeCommands holds README and what a change must pass to one test
// command.
func TestReadmeCommands(t *testing.T) {
	for path, wants := range map[string][]string{
		"../../README.md": {"\n    go run ./cmd/strakebook cut --demo\n", "\n    go test ./...\n"},
		"../../.ci/run":   {"go test ./...\n"},
	} {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for _, want := range wants {
			if !strings.Contains(string(text), want) {
				t.Errorf("%s lacks %q", path, want)
			}
		}
	}
}

// The pictures that README shows are there, and small.
func TestReadmePictures(t *testing.T) {
	readme, err := os.ReadFile("../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	shown := regexp.MustCompile(`\]\((testdata/[^)]+\.png)\)`).FindAllStringSubmatch(string(readme), -1)
	for _, m := range shown {
		if info, err := os.Stat(filepath.Join("../..", m[1])); err != nil || info.Size() > 150_000 {
			t.Errorf("%s: %v, or larger than 150 kB", m[1], err)
		}
	}
	if len(shown) < 4 {
		t.Errorf("%d pictures", len(shown))
	}
}
