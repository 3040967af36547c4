"""Reads the sheets back as a printer would: page sizes, squares to measure, the pasted piece, letters, joins.

    python3 tests/oracle/sheet.py [FOLDER]

Runs `cargo run -p recloth-sheet --example sheet_sample` twice (into FOLDER, or target/sheet-sample) and reads what it
wrote with three independent readers. Prints the number of checks; exits 1 when one fails or none ran.
Needs numpy, pymupdf (coordinates), pypdf (text and fonts) and pypdfium2 (pictures).
"""

import math
import pathlib
import re
import subprocess
import sys
from xml.etree import ElementTree

import numpy
import pymupdf
import pypdf
import pypdfium2

ROOT = pathlib.Path(__file__).resolve().parents[2]
MM = 72 / 25.4  # points in a millimetre: 1 pt = 1/72 in, 1 in = 25.4 mm (ISO 32000)
PX = 10  # pixels in a millimetre of the pictures compared
MARGIN, OVERLAP = 10.0, 10.0  # the defaults that the sample is printed with
PAPERS = {"a4": (210.0, 297.0), "letter": (215.9, 279.4)}  # ISO 216; 8.5 x 11 in

# The cut line of the sample's skirt, as its source gives it: corners, and Bezier curves between some of them.
CUT = [
    [(0, 0), (480, -20)],
    [(480, -20), (470, 300), (430, 500), (380, 720)],
    [(380, 720), (250, 700), (120, 695), (0, 695)],
    [(0, 695), (0, 0)],
]
TITLE = "Wrap skirt, front (Größe 44, krój próbny, ⅜″)"
LABEL = "linen; hem 1⅝″ – ł ő ž é è ß ö ½"

checks = failures = 0


def check(good, what):
    global checks, failures
    checks += 1
    if not good:
        failures += 1
        print(f"FAILED: {what}")


def near(found, wanted, tolerance, what):
    check(abs(found - wanted) <= tolerance, f"{what}: {found}, not {wanted} within {tolerance}")


def lines_of(page):
    """Stroked paths of a page: each a list of runs of points (2 a line, 4 a Bezier), in mm from its lower left corner."""
    height = page.rect.height
    for path in page.get_drawings():
        if path["type"] != "s":
            continue
        runs = []
        for item in path["items"]:
            if item[0] == "re":
                corners = [item[1].tl, item[1].tr, item[1].br, item[1].bl]
                runs += [[a, b] for a, b in zip(corners, corners[1:] + corners[:1])]
            elif item[0] == "qu":
                corners = [item[1].ul, item[1].ur, item[1].lr, item[1].ll]
                runs += [[a, b] for a, b in zip(corners, corners[1:] + corners[:1])]
            else:
                runs.append(list(item[1:]))
        yield path["width"] / MM, [[(p.x / MM, (height - p.y) / MM) for p in run] for run in runs]


def picture(page):
    """The page as dark (True) and light pixels, PX to the millimetre, drawn by PDFium: MuPDF lets dashes drift where it
    cuts a line off at a window."""
    document = pypdfium2.PdfDocument(page.parent.name)
    image = document[page.number].render(scale=PX / MM, grayscale=True).to_numpy()
    return image.reshape(image.shape[:2]) < 200


def squares(page, name):
    """The two squares, by their coordinates and by the picture as a ruler would."""
    found = {}
    for width, runs in lines_of(page):
        xs = [x for run in runs for x, _ in run]
        ys = [y for run in runs for _, y in run]
        sides = max(xs) - min(xs), max(ys) - min(ys)
        for side in (50.0, 50.8):
            if len(runs) in (3, 4) and all(abs(s - side) < 0.05 for s in sides):
                found[side] = (min(xs), min(ys), width, sides)
    check(sorted(found) == [50.0, 50.8], f"{name}: the squares are there: {found}")
    dark = picture(page)
    height = page.rect.height / MM
    for side, (x, y, width, sides) in found.items():
        for s in sides:
            near(s, side, 0.01, f"{name}: square of {side} by its coordinates")
        # A line of pixels through the square, a quarter of the way up, and one across it: first and last dark pixel.
        row = dark[round((height - y - side / 4) * PX), round((x - 2) * PX) : round((x + side + 2) * PX)]
        column = dark[round((height - y - side - 2) * PX) : round((height - y + 2) * PX), round((x + side / 4) * PX)]
        for strip in (row, column):
            ends = numpy.flatnonzero(strip)
            outer = (ends[-1] - ends[0] + 1) / PX - width
            near(outer, side, 0.1 + 1 / PX, f"{name}: square of {side} by the picture")


def pages_of(document):
    """Row, column (from 1) and page of the skirt."""
    for page in document.pages(1, document.page_count, 1):
        text = page.get_text()
        place = re.search(r"row (\d+), column (\d+) · page (\d+) of (\d+)", text)
        check(place is not None, f"page {page.number + 1} says where it lies")
        check(int(place[3]) == page.number + 1, f"page {page.number + 1} has its number")
        check(int(place[4]) == document.page_count, f"page {page.number + 1} knows how many there are")
        if TITLE in text:
            yield int(place[1]), int(place[2]), page


def bezier(run, t):
    if len(run) == 2:
        weights = (1 - t, t)
    else:
        weights = ((1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t**2 * (1 - t), t**3)
    return tuple(sum(w * p[axis] for w, p in zip(weights, run)) for axis in (0, 1))


def pasted(document, paper, name, whole):
    """Puts the pages side by side as a person would, trimmed edge on the neighbour's line."""
    width, height = paper
    across, down = width - 2 * MARGIN - OVERLAP, height - 2 * MARGIN - OVERLAP
    tiles = list(pages_of(document))
    columns, rows = (max(tile[i] for tile in tiles) for i in (1, 0))
    # The ink of the skirt is 480 by 740 mm and half the cut line's width (0.25 mm) all round, a little more at the point.
    check(columns == math.ceil((480.5 - OVERLAP) / across), f"{name}: {columns} columns")
    check(rows == math.ceil((740.5 - OVERLAP) / down), f"{name}: {rows} rows")
    check(len(tiles) == rows * columns, f"{name}: every page is printed")

    origin = None
    paste = numpy.zeros((round((down * rows + OVERLAP) * PX) + 2, round((across * columns + OVERLAP) * PX) + 2), bool)
    for row, column, page in tiles:
        # Where the page's lower left corner lies in the pasted sheet.
        x, y = (column - 1) * across - MARGIN, -(row - 1) * down - (height - MARGIN)
        for pen, runs in lines_of(page):
            if abs(pen - 0.5) > 0.01 or len(runs) < 3:
                continue
            moved = [[(px + x, py + y) for px, py in run] for run in runs]
            if origin is None:
                origin = moved[0][0]
            for found, wanted in zip(moved, CUT):
                for (fx, fy), (wx, wy) in zip(found, wanted):
                    near(fx - origin[0], wx, 0.01, f"{name} row {row} column {column}: cut line, x")
                    near(fy - origin[1], wy, 0.01, f"{name} row {row} column {column}: cut line, y")
        dark = picture(page)
        # What is outside the margins no printer prints.
        edge = round(MARGIN * PX) - 1
        outside = dark.copy()
        outside[edge:-edge, edge:-edge] = False
        check(not outside.any(), f"{name} row {row} column {column}: the margins are white")
        # What is seen when pasted: all but the tabs on the right and below.
        left, top = round(MARGIN * PX), round(MARGIN * PX)
        right = left + round((across + (OVERLAP if column == columns else 0)) * PX)
        bottom = top + round((down + (OVERLAP if row == rows else 0)) * PX)
        seen = dark[top:bottom, left:right]
        at = round((row - 1) * down * PX), round((column - 1) * across * PX)
        paste[at[0] : at[0] + seen.shape[0], at[1] : at[1] + seen.shape[1]] |= seen

    check(origin is not None, f"{name}: the cut line was found")
    # Every dark pixel of the piece printed on one wide page is dark on the pasted sheet, within two pixels (0.2 mm).
    one = picture(whole)
    first = next(runs[0][0] for pen, runs in lines_of(whole) if abs(pen - 0.5) < 0.01)
    shift_x = round((origin[0] - first[0]) * PX)
    shift_y = round((-origin[1] - (whole.rect.height / MM - first[1])) * PX)
    thick = paste.copy()
    for dx in range(-2, 3):
        for dy in range(-2, 3):
            thick |= numpy.roll(paste, (dy, dx), (0, 1))
    ys, xs = numpy.nonzero(one)
    ys, xs = ys + shift_y, xs + shift_x
    inside = (ys >= 0) & (ys < thick.shape[0]) & (xs >= 0) & (xs < thick.shape[1])
    check(inside.all(), f"{name}: {(~inside).sum()} dark pixels of the piece fall off the pasted sheet")
    missing = (~thick[ys[inside], xs[inside]]).sum()
    check(missing == 0, f"{name}: {missing} of {len(ys)} dark pixels of the piece are missing on the pasted sheet")
    check(len(ys) > 10_000, f"{name}: the piece has ink")


def letters(path, name):
    """Letters come back as text, from fonts that are embedded."""
    reader = pypdf.PdfReader(path)
    text = "\n".join(page.extract_text() for page in reader.pages)
    for wanted in (LABEL, TITLE, "Print every page at 100 %", "centre front", "2 in (50.8 mm)"):
        check(wanted in text, f"{name}: {wanted!r} is read back")
    fonts = 0
    for page in reader.pages:
        for font in page["/Resources"].get("/Font", {}).values():
            descriptor = font.get_object()["/DescendantFonts"][0].get_object()["/FontDescriptor"].get_object()
            check(any(key in descriptor for key in ("/FontFile2", "/FontFile3")), f"{name}: the font is embedded")
            fonts += 1
    check(fonts > 0, f"{name}: there are fonts")
    check("/CreationDate" not in (reader.metadata or {}), f"{name}: no time stamp")


def drawing(path):
    """The SVG is at true scale, and its cut line is where it should be, y turned down."""
    root = ElementTree.parse(path).getroot()
    space = "{http://www.w3.org/2000/svg}"
    box = [float(v) for v in root.get("viewBox").split()]
    for name, value in (("width", box[2]), ("height", box[3])):
        check(root.get(name) == f"{value:g}mm", f"svg: {name} {root.get(name)} is {value} mm")
    cut = root.find(f".//{space}path[@stroke-width='0.5']").get("d")
    found = [float(v) for v in re.findall(r"-?[\d.]+", cut)]
    wanted = [0, 0, 480, 20, 470, -300, 430, -500, 380, -720, 250, -700, 120, -695, 0, -695]
    check(found == wanted, f"svg: cut line {found}")
    texts = [node.text for node in root.iter(f"{space}text")]
    check(LABEL in texts and root.find(f"{space}title").text == TITLE, "svg: text and title")


def main():
    folder = pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "target" / "sheet-sample"
    for into in (folder, folder / "again"):
        command = ["cargo", "run", "--quiet", "-p", "recloth-sheet", "--example", "sheet_sample", "--", str(into)]
        subprocess.run(command, cwd=ROOT, check=True)
    for path in sorted(folder.glob("*.*")):
        check(path.read_bytes() == (folder / "again" / path.name).read_bytes(), f"{path.name} is the same twice")

    whole = pymupdf.open(folder / "skirt.pdf")[0]
    for name, paper in PAPERS.items():
        path = folder / f"{name}.pdf"
        document = pymupdf.open(path)
        for page in document:
            near(page.rect.width / MM, paper[0], 0.01, f"{name}: width of page {page.number + 1}")
            near(page.rect.height / MM, paper[1], 0.01, f"{name}: height of page {page.number + 1}")
        squares(document[0], name)
        pasted(document, paper, name, whole)
        letters(path, name)
    drawing(folder / "skirt.svg")
    print(f"{checks} checks, {failures} failed")
    return 1 if failures or checks < 100 else 0


if __name__ == "__main__":
    sys.exit(main())
