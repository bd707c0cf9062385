#!/usr/bin/python3
"""Opens the new book in headless LibreOffice, its stored figures taken out, and
holds what is worked out there to what was stored; then changes settings and holds
what follows to a book made with those settings.

Run as: .ci/live.py STRAKEBOOK   (the program). Wants soffice and openpyxl.
"""
import os
import subprocess
import sys
import tempfile

import openpyxl

PROGRAM = os.path.abspath(sys.argv[1])
WORK = tempfile.mkdtemp(prefix="strakebook-live-")
BAD = 0


def run(*args):
    subprocess.run(args, check=True, cwd=WORK, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def cut(book, out, *more):
    subprocess.run([PROGRAM, "cut", book, "-o", out, "--quiet", "--force", *more], check=True, cwd=WORK, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)


def reckoned(name, change, slopes=None):
    """The book as LibreOffice works it out, with settings or all slopes changed."""
    book = openpyxl.load_workbook(os.path.join(WORK, name))
    for row in book["Settings"].iter_rows(min_row=2):
        if row[0].value in change:
            row[1].value = change[row[0].value]
    for row in book["Scarfs"].iter_rows(min_row=2) if slopes else ():
        if isinstance(row[9].value, int):
            row[2].value = slopes
    os.makedirs(os.path.join(WORK, "bare"), exist_ok=True)
    book.save(os.path.join(WORK, "bare", name))  # without the stored figures
    run("soffice", "-env:UserInstallation=file://" + WORK + "/profile", "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", "reckoned", os.path.join("bare", name))
    return openpyxl.load_workbook(os.path.join(WORK, "reckoned", name), data_only=True)


def same(a, b):
    if isinstance(a, (int, float)) and isinstance(b, (int, float)):
        return abs(a - b) <= 1e-6 * max(1, abs(a))
    return (a or "") == (b or "")


def held(what, sheets, want, got, formulas):
    global BAD
    count = wrong = 0
    for sheet in sheets:
        if sheet not in want.sheetnames:
            continue
        for row in formulas[sheet].iter_rows():
            for cell in row:
                if not (isinstance(cell.value, str) and cell.value.startswith("=")):
                    continue
                count += 1
                a, b = want[sheet][cell.coordinate].value, got[sheet][cell.coordinate].value
                if isinstance(b, str) and b.startswith("Which planks one batten serves"):
                    continue  # words that a change of the batten takes back
                if not same(a, b):
                    wrong += 1
                    if wrong <= 5:
                        print("  %s!%s: %r, want %r: %.120s" % (sheet, cell.coordinate, b, a, cell.value))
    print("%s: %d formulas, %d wrong" % (what, count, wrong))
    BAD += wrong or count == 0


run(PROGRAM, "cut", "--demo", "--quiet")
for units in "feet", "inches", "mm":
    name = units + ".xlsx"
    cut("demo.xlsx", name, "--units", units)
    stored = openpyxl.load_workbook(os.path.join(WORK, name), data_only=True)
    formulas = openpyxl.load_workbook(os.path.join(WORK, name))
    held("as worked out, " + units, formulas.sheetnames, stored, reckoned(name, {}), formulas)

# What depends on no other board or joint is as if the book were made anew.
for sheet, change in {
    "Scarfs": {"scarf nib": 0.0625, "fence difference": 0.2},
    "Bevels": {"batten thickness": 0.75, "saw offset": 0.625, "spare depth": 0.25},
}.items():
    cut("demo.xlsx", "anew.xlsx", *[w for n, v in change.items() for w in ("--set", "%s=%s" % (n, v))])
    formulas = openpyxl.load_workbook(os.path.join(WORK, "feet.xlsx"))
    anew = openpyxl.load_workbook(os.path.join(WORK, "anew.xlsx"), data_only=True)
    held("settings changed, " + sheet, [s for s in formulas.sheetnames if s.split(" (")[0] == sheet and s + " (checked)" not in formulas.sheetnames], anew, reckoned("feet.xlsx", change), formulas)

# A slope changed: every piece grows by what its scarfs do, its text with it.
steep = reckoned("feet.xlsx", {"end trim": 40}, slopes=9)
before, after = openpyxl.load_workbook(os.path.join(WORK, "feet.xlsx"), data_only=True)["Cut list"], steep["Cut list"]
head = [c.value for c in before[1]]
length, text, run_at, mark = head.index("Length, in"), head.index("Length, ft-in-8ths"), head.index("Scarf run, in"), head.index("Mark")
moved = 0
for a, b in zip(before.iter_rows(min_row=2, values_only=True), after.iter_rows(min_row=2, values_only=True)):
    if not isinstance(a[length], (int, float)):
        continue
    n = sum(1 for e in a if isinstance(e, str) and e.startswith("feather"))
    if not same(b[length] - a[length], n * (b[run_at] - a[run_at]) / 2):
        BAD += 1
        print("  %s: %s became %s" % (a[mark], a[length], b[length]))
    sixteenths = int(b[length] * 16 + 0.5)
    want = "%d-%d-%d%s" % (sixteenths // 192, sixteenths % 192 // 16, sixteenths % 16 // 2, "+" if sixteenths % 2 else "")
    if b[text] != want:
        BAD += 1
        print("  %s: %s is written %s" % (a[mark], b[length], b[text]))
    moved += a[length] != b[length]
misfits = [v for r in steep["Summary"].iter_rows(values_only=True) if r[0] == "Sticks that no longer fit" for v in [r[1]]]
print("slope 9, end trim 40: %d pieces moved, %s sticks no longer fit" % (moved, misfits))
if not moved or not misfits or misfits[0] == 0:
    BAD += 1

# Kerf, trim and price changed: every stick takes so much more at each cut, and the
# costs are those of the new price.
KERF, TRIM, TIMES = 0.1875, 6.0, 2.0
stored = openpyxl.load_workbook(os.path.join(WORK, "feet.xlsx"), data_only=True)
was = {r[0]: r[1] for r in stored["Settings"].iter_rows(min_row=2, values_only=True)}
prices = {n: v * TIMES for n, v in was.items() if isinstance(n, str) and n.startswith("price ") and isinstance(v, (int, float))}
changed = reckoned("feet.xlsx", {"cross-cut kerf": KERF, "end trim": TRIM, **prices})
head = [c.value for c in stored["Stock"][1]]
used, left, drawn, fits = (head.index(h) for h in ("Used, in", "Left, in", "Pieces", "Still fits"))
sticks = over = 0
for a, b in zip(stored["Stock"].iter_rows(min_row=2, values_only=True), changed["Stock"].iter_rows(min_row=2, values_only=True)):
    if not isinstance(a[used], (int, float)):
        continue
    sticks += 1
    more = (a[drawn] or "").count(",") * (KERF - was["cross-cut kerf"])
    if not same(b[used] - a[used], more) or not same(a[left] - b[left], more + TRIM - was["end trim"]) or (b[fits] == "fits") != (b[left] >= -0.00001):
        BAD += 1
        print("  stick %s: used %s became %s, left %s became %s, %s" % (a[0], a[used], b[used], a[left], b[left], b[fits]))
    over += b[fits] != "fits"
summary = [{r[0]: r[1] for r in book["Summary"].iter_rows(min_row=2, values_only=True)} for book in (stored, changed)]
if not prices or not same(summary[0]["Cost"] * TIMES, summary[1]["Cost"]) or summary[1]["Sticks that no longer fit"] != over or not over:
    BAD += 1
    print("  cost %s became %s; %s sticks of %d" % (summary[0].get("Cost"), summary[1].get("Cost"), summary[1].get("Sticks that no longer fit"), over))
print("kerf %s, end trim %s, prices twice: %d sticks, %d no longer fit, cost %.2f became %.2f" % (KERF, TRIM, sticks, over, summary[0]["Cost"], summary[1]["Cost"]))
subprocess.run(["rm", "-rf", WORK])
sys.exit(1 if BAD else 0)
