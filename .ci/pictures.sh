#!/usr/bin/env bash
# Makes the pictures of README anew: the head of some pages of the demo yard's book
# as LibreOffice prints them.
# Run as: .ci/pictures.sh STRAKEBOOK
set -euo pipefail
program=$(realpath "$1")
to=$(realpath "$(dirname "$0")/../testdata")/pictures
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
mkdir -p "$to"
cd "$work"
"$program" cut --demo --quiet >/dev/null
soffice "-env:UserInstallation=file://$work/profile" --headless --convert-to pdf "demo cut list.xlsx" >/dev/null
pages=$(pdfinfo "demo cut list.pdf" | awk '/^Pages/ {print $2}')
# The first page whose foot bears a sheet's name, down to a part of its height.
picture() {
  for page in $(seq 1 "$pages"); do
    if pdftotext -layout -f "$page" -l "$page" "demo cut list.pdf" - | grep -q "  $1  *Page "; then break; fi
  done
  pdftoppm -r 90 -f "$page" -l "$page" -singlefile -png "demo cut list.pdf" page
  high=$(identify -format %h page.png)
  convert page.png -crop "x$((high * $3 / 100))+0+0" +repage -bordercolor '#BFBFBF' -border 1 -colors 32 -strip "$to/$2.png"
}
picture "Pictures" body-plan 78
picture "Cut list" cut-list 45
picture "Bevels.*" bevels 50
picture "Bevel curves" bevel-curves 62
picture "Stock" stock 45
picture "Warnings" warnings 60
ls -l "$to"
