"""Cut lines recomputed with shapely, whose buffers and unions share no code with the library.

`python3 tests/oracle/outline.py` runs `cargo run -p recloth --example cut_lines -- 40 0` for random pieces and their cut lines;
`python3 tests/oracle/outline.py FILE` takes what that printed earlier, with other seeds, say. For every piece:

- the cut line is a valid polygon, and holds the piece and, beside every edge, a strip as wide as its allowance;
- straight edges with one allowance: it is what shapely's mitred buffer gives;
- curved edges with one allowance: every point of it is that far from the piece, but near corners (GEOS simplifies
  curves before it buffers them, so that its buffer strays by millimetres where many short sides turn inward);
- different allowances: it lies within the mitred buffer of the widest.

Needs shapely.
"""

import json
import pathlib
import subprocess
import sys

from shapely import Polygon, unary_union
from shapely.geometry import LineString, MultiPoint

# GEOS simplifies what it buffers by up to a hundredth of the distance.
SIMPLIFIED = 0.011


def strip(line, width):
    """What lies to the right of a polyline within `width`, square to each of its sides."""
    parts = []
    for (ax, ay), (bx, by) in zip(line, line[1:]):
        size = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5
        if size == 0:
            continue
        nx, ny = (by - ay) / size * width, (ax - bx) / size * width
        parts.append(Polygon([(ax, ay), (bx, by), (bx + nx, by + ny), (ax + nx, ay + ny)]))
    return parts


def inward_radius_ok(line, width):
    """Whether a polyline, as an arc or curve, never turns to its right more tightly than `width`: else the square
    strips of its far ends reach beyond the centre, where nothing need be kept."""
    for (ax, ay), (bx, by), (cx, cy) in zip(line, line[1:], line[2:]):
        turn = (bx - ax) * (cy - by) - (by - ay) * (cx - bx)
        ab = ((bx - ax) ** 2 + (by - ay) ** 2) ** 0.5
        bc = ((cx - bx) ** 2 + (cy - by) ** 2) ** 0.5
        if ab * bc > 0 and -turn / (ab * bc) * width > min(ab, bc):
            return False
    return True


def complaints(case):
    """What shapely finds wrong with one cut line."""
    cut = Polygon(case["cut"])
    if not cut.is_valid:
        return ["the cut line is not a simple polygon"]
    edges, widths, tolerance = case["edges"], case["widths"], case["tolerance"]
    ring = [point for edge in edges for point in edge[:-1]]
    piece = Polygon(ring)
    found = []
    kept = [piece]
    for line, width in zip(edges, widths):
        if width > 0 and inward_radius_ok(line, width):
            kept.extend(strip(line, width))
    # Two tolerances: the fit of the curve, and chords in place of arcs on both sides.
    # The ends of a strip are square to a chord, which is up to an eighth of a degree off the curve.
    widest = max(widths)
    lean = 0.0 if case["straight"] else 0.0022 * widest
    outside = unary_union(kept).difference(cut.buffer(2 * tolerance + lean))
    if outside.area > 1e-6:
        found.append(f"{outside.area} mm2 of allowance lie outside the cut line")
    if case["uniform"]:
        nearest = min(piece.exterior.distance(p) for p in points(cut))
        if nearest < widest - tolerance - 1e-6:
            found.append(f"a point only {nearest} from the seam line")
    if not case["straight"]:
        if case["uniform"]:
            corners = MultiPoint([edge[0] for edge in edges])
            # A point cut off at the limit has corners a little farther out.
            tip = 1.05 * case["limit"] * widest
            for point in points(cut):
                far = piece.distance(point)
                reach = widest if corners.distance(point) > tip else tip
                if far > reach + tolerance + 1e-6:
                    found.append(f"{point} is {far} from the piece")
        return found
    buffer = piece.buffer(widest, join_style="mitre", mitre_limit=case["limit"])
    mitred = Polygon(buffer.exterior)
    slack = SIMPLIFIED * widest
    beyond = cut.difference(mitred.buffer(slack, join_style="mitre"))
    short = mitred.difference(cut.buffer(slack, join_style="mitre"))
    if beyond.area > 1e-3 or (case["uniform"] and short.area > 1e-3):
        found.append(f"{beyond.area} mm2 more and {short.area} mm2 less than the buffer")
    return found


def points(polygon):
    """Points along the border, 3 mm apart."""
    border = LineString(polygon.exterior.coords)
    return [border.interpolate(3.0 * i) for i in range(int(border.length / 3.0))]


def main():
    if len(sys.argv) > 1:
        text = pathlib.Path(sys.argv[1]).read_text(encoding="utf-8")
    else:
        command = ["cargo", "run", "--quiet", "-p", "recloth", "--example", "cut_lines", "--", "40", "0"]
        house = pathlib.Path(__file__).resolve().parents[2]
        text = subprocess.run(command, check=True, stdout=subprocess.PIPE, text=True, cwd=house).stdout
    checked = failed = without = 0
    for line in text.splitlines():
        case = json.loads(line)
        if case["cut"] is None:
            without += 1
            continue
        checked += 1
        for complaint in complaints(case):
            failed += 1
            kind = f"straight {case['straight']}, uniform {case['uniform']}"
            print(f"seed {case['seed']}, {kind}: {complaint}", file=sys.stderr)
    print(f"{checked} cut lines checked, {without} pieces without one, {failed} complaints")
    return 1 if failed or not checked or without > checked / 4 else 0


if __name__ == "__main__":
    sys.exit(main())
