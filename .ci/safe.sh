#!/usr/bin/env bash
# Kills the program at fifty moments of its work: the book that was there is kept
# whole, or is the new one whole; no half of one lies under its name. Then the same
# book is cut a hundred times and has one digest, and is read by another reader.
# Run as: .ci/safe.sh STRAKEBOOK
set -euo pipefail
program=$(realpath "$1")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
"$program" cut --demo --quiet >/dev/null
cp "demo cut list.xlsx" new.xlsx
cp demo.xlsx untouched.xlsx
echo "the book that was there" > old.xlsx
start=$(date +%s%N)
"$program" cut demo.xlsx -o took.xlsx --quiet >/dev/null
took=$((($(date +%s%N) - start) / 1000))
kept=0 done=0
for i in $(seq 1 50); do
  cp old.xlsx out.xlsx
  "$program" cut demo.xlsx -o out.xlsx --force --quiet >/dev/null 2>&1 &
  pid=$!
  sleep "$(awk "BEGIN{print $took*2*$i/50/1e6}")"
  kill -9 "$pid" 2>/dev/null || true
  wait "$pid" 2>/dev/null || true
  if cmp -s out.xlsx old.xlsx; then kept=$((kept + 1))
  elif cmp -s out.xlsx new.xlsx; then done=$((done + 1))
  else echo "killed at moment $i: neither the old book nor the new"; exit 1; fi
done
echo "killed at 50 moments: $kept kept the old book, $done had the new one whole"
for i in $(seq 1 "${RUNS:-100}"); do
  "$program" cut demo.xlsx -o same.xlsx --force --quiet >/dev/null
  sha256sum < same.xlsx
done | sort | uniq -c | tee digests
test "$(wc -l < digests)" = 1
cmp demo.xlsx untouched.xlsx
# A full disk and a folder gone.
if mkdir small && mount -t tmpfs -o size=64k none small 2>/dev/null; then
  if "$program" cut demo.xlsx -o small/out.xlsx --quiet >/dev/null 2>told; then echo "written on a full disk"; umount small; exit 1; fi
  cat told
  left=$(ls -A small | wc -l)
  umount small
  test "$left" = 0
fi
if "$program" cut demo.xlsx -o gone/out.xlsx --quiet >/dev/null 2>told; then echo "written in a folder that is not there"; exit 1; fi
cat told
python=$(command -v /usr/bin/python3 || command -v python3)
"$python" - new.xlsx <<'PY'
import sys, openpyxl
for lazy in (False, True):
    book = openpyxl.load_workbook(sys.argv[1], read_only=lazy)
    cells = sum(1 for s in book for row in s.iter_rows() for c in row if c.value is not None)
    print("openpyxl, lazily" if lazy else "openpyxl", len(book.sheetnames), "sheets", cells, "cells")
PY
