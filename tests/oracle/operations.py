"""Operations on pieces judged by shapely, which shares no code with the library.

`python3 tests/oracle/operations.py` runs `cargo run -p recloth --example operations -- 40 0` for random pieces, deep inward
corners and needles among them, and what operations make of them; `python3 tests/oracle/operations.py FILE` takes what that
printed earlier, with other seeds, say. What is refused is counted, not judged. For every other case:

- every result is a valid polygon;
- the parts of a split piece make it up, and joined again are as large;
- a piece on a fold and its mirror image make up the unfolded one;
- a piece scaled for a change is shapely's own scaling along its grain;
- facing and lining make up the piece;
- a slash adds what it opens, bridged straight;
- what is trued up lies no farther from where it was than is told;
- an edge copied from a larger piece is where the old one was, and its stretch is told;
- straight pieces: extended, every corner right of the line has moved square to it; all edges shifted, it is the
  mitred buffer.

Needs shapely.
"""

import collections
import json
import math
import pathlib
import subprocess
import sys

from shapely import LineString, Polygon, unary_union
from shapely.affinity import affine_transform, rotate, scale

# Curves come as chords within 5e-4, laid otherwise before and after: so far both may differ all along (mm).
CHORDS = 2e-3
# Borders that coincide but for rounding are cut on a grid, without which GEOS at times loses a part.
GRID = 1e-6


def ring(points):
    return Polygon(points)


def apart(a, b):
    """How much two polygons differ, as a width along the border (mm)."""
    return a.symmetric_difference(b, grid_size=GRID).area / a.length


def near(a, b, within=CHORDS):
    off = apart(a, b)
    return [] if off <= within else [f"differs by {off} mm along the border"]


def split(case, before, after):
    (ax, ay), (bx, by) = case["line"]
    reach = 2000 / math.hypot(bx - ax, by - ay)
    aside = ((ay - by) * reach, (bx - ax) * reach)
    left = Polygon([(ax, ay), (bx, by), (bx + aside[0], by + aside[1]), (ax + aside[0], ay + aside[1])])
    found = near(before.intersection(left, grid_size=GRID), after[0])
    found += near(before.difference(left, grid_size=GRID), after[1])
    joined = ring(case["joined"])
    if not joined.is_valid or abs(joined.area - before.area) > CHORDS * before.length:
        found.append(f"joined again {joined.area} mm2, not {before.area}")
    return found


def unfold(case, before, after):
    half = ring(case["half"])
    (ax, ay), (bx, by) = case["fold"]
    size = (bx - ax) ** 2 + (by - ay) ** 2
    c, s = ((bx - ax) ** 2 - (by - ay) ** 2) / size, 2 * (bx - ax) * (by - ay) / size
    mirrored = affine_transform(half, [c, s, s, -c, ax - c * ax - s * ay, ay - s * ax + c * ay])
    return near(unary_union([half, mirrored], grid_size=GRID), after[0])


def scaled(case, before, after):
    turn = 90 - case["grain_deg"]
    upright = rotate(before, turn, origin=(0, 0))
    grown = scale(upright, 1 / (1 + case["across_pct"] / 100), 1 / (1 + case["along_pct"] / 100), origin=(0, 0))
    return near(rotate(grown, -turn, origin=(0, 0)), after[0], 2 * CHORDS)


def facing(case, before, after):
    # Parallels of cubics are true to 0.02.
    band, lining = after
    found = near(before, unary_union([band, lining], grid_size=GRID), 0.05)
    overlap = band.intersection(lining, grid_size=GRID).area
    if overlap > 0.05 * before.length:
        found.append(f"facing and lining overlap by {overlap} mm2")
    return found


def spread(case, before, after):
    reach = math.dist(*case["slash"])
    opened, hinge = case["open_by"], case["hinge_by"]
    # The slash along the y axis from its end at 0; what lies beyond is shifted across and turned about its end there.
    turn = 2 * math.asin((opened - hinge) / (2 * reach))
    corners = [(0, 0), (0, reach), (-hinge - reach * math.sin(turn), reach * math.cos(turn)), (-hinge, 0)]
    off = after[0].area - before.area - Polygon(corners).area
    return [] if abs(off) < CHORDS * before.length else [f"{off} mm2 more than the slash adds"]


def trued(case, before, after):
    off = max(before.exterior.distance(point) for point in points(after[0]))
    return [] if off <= case["largest"] + 0.05 else [f"moved by {off}, told {case['largest']}"]


def copied(case, before, after):
    wanted = -case["pct"]
    found = [] if abs(case["stretch_pct"] - wanted) < 1e-6 else [f"stretched by {case['stretch_pct']}, not {wanted}"]
    return found + near(before, after[0])


def extend(case, before, after):
    (ax, ay), (bx, by) = case["line"]
    size = math.hypot(bx - ax, by - ay)
    right = (by - ay) / size, (ax - bx) / size
    corners = []
    for x, y in before.exterior.coords[:-1]:
        aside = (x - ax) * right[0] + (y - ay) * right[1]
        far = case["by"] if aside > 0 else 0
        corners.append((x + right[0] * far, y + right[1] * far))
    return near(Polygon(corners), after[0])


def shift(case, before, after):
    buffer = before.buffer(case["by"], join_style="mitre", mitre_limit=1e6)
    if buffer.geom_type != "Polygon":
        return ["the mitred buffer falls apart"]
    # A gap that closes altogether is filled by both, but differently: only borders outside count.
    return near(Polygon(buffer.exterior), after[0], 0.02 * abs(case["by"]))


def points(polygon):
    """Points along the border, 3 mm apart."""
    border = LineString(polygon.exterior.coords)
    return [border.interpolate(3.0 * i) for i in range(int(border.length / 3.0))]


JUDGES = {
    "split": split, "unfold": unfold, "scale": scaled, "facing": facing, "spread": spread, "true_up": trued,
    "copy": copied, "extend": extend, "shift": shift,
}


def main():
    if len(sys.argv) > 1:
        text = pathlib.Path(sys.argv[1]).read_text(encoding="utf-8")
    else:
        command = ["cargo", "run", "--quiet", "-p", "recloth", "--example", "operations", "--", "40", "0"]
        house = pathlib.Path(__file__).resolve().parents[2]
        text = subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True, cwd=house).stdout
    judged, refused, failed = collections.Counter(), collections.Counter(), 0
    for line in text.splitlines():
        case = json.loads(line)
        operation = case["operation"]
        if "error" in case:
            refused[operation] += 1
            continue
        judged[operation] += 1
        before, after = ring(case["before"]), [ring(outline) for outline in case["after"]]
        if abs(before.area - case["area"]) > CHORDS * before.length:
            complaints = [f"an area of {case['area']} mm2, not {before.area}"]
        elif all(polygon.is_valid for polygon in after):
            complaints = JUDGES[operation](case, before, after)
        else:
            complaints = ["not a simple polygon"]
        for complaint in complaints:
            failed += 1
            print(f"{operation}, seed {case['seed']}, straight {case['straight']}: {complaint}", file=sys.stderr)
    for operation in JUDGES:
        print(f"{operation}: {judged[operation]} judged, {refused[operation]} refused")
    missing = [operation for operation in JUDGES if not judged[operation]]
    return 1 if failed or missing else 0


if __name__ == "__main__":
    sys.exit(main())
