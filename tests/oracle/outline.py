"""Cut lines recomputed with shapely, whose buffers and unions share no code with the library.

`python3 tests/oracle/outline.py` runs `cargo run -p recloth --example cut_lines -- COUNT 0` for random pieces and their cut lines,
some 1,000; RECLOTH_CUT_LINES=10000 asks for so many. `python3 tests/oracle/outline.py FILE` takes what that printed earlier,
with other seeds, say. The pieces have lines, arcs and cubics, deep inward corners, needles and necks, different allowances,
cloth already cut and folds. For every piece:

- the cut line is a valid polygon, and holds the piece and, with pointed corners, beside every edge a strip as wide as its
  allowance, but for what would lie beyond a fold;
- straight edges with one allowance: it is what shapely's mitred buffer gives;
- round corners: every point of it is just that far from the piece, and straight edges give what shapely's round buffer does;
- curved edges with one allowance: every point of it is that far from the piece, but near corners (GEOS simplifies
  curves before it buffers them, so that its buffer strays by millimetres where many short sides turn inward);
- different allowances: it lies within the mitred buffer of the widest;
- a cut-out, the outline at a quarter of its size: what is cut is valid and lies within it by its allowance; with straight edges
  it is shapely's mitred buffer inward, and where that falls apart or is empty it is refused.

Needs shapely.
"""

import json
import os
import pathlib
import subprocess
import sys

import numpy as np
import shapely
from shapely import LineString, MultiPoint, Polygon

# GEOS simplifies what it buffers by up to a hundredth of the distance.
SIMPLIFIED = 0.011


def strips(line, width):
    """What lies to the right of a polyline within `width`, square to each of its sides, as polygons."""
    points = np.array(line)
    start, end = points[:-1], points[1:]
    along = end - start
    size = np.hypot(*along.T)
    start, end, along = (part[size > 0] for part in (start, end, along))
    out = np.stack([along[:, 1], -along[:, 0]], axis=1) / size[size > 0, None] * width
    return shapely.polygons(np.stack([start, end, end + out, start + out], axis=1))


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


def beyond_fold(case, kept):
    """What of the strips lies beyond the fold, run on from its ends: cloth that is not there, for the fold's other side is the
    piece again. Only what hangs together with an end of the fold; the piece may cross the fold's line elsewhere."""
    (start, end) = np.array(case["edges"][case["fold"]])[[0, -1]]
    along = (end - start) / np.hypot(*(end - start))
    # Outside is to the right.
    out, far = np.array([along[1], -along[0]]), 1e5
    half = Polygon([start - along * far, end + along * far, end + along * far + out * far, start - along * far + out * far])
    # Strips beside a curve gape by a little; a millimetre closes that.
    cut_off = shapely.union_all(kept).intersection(half)
    cut_off = cut_off if cut_off.is_empty else cut_off.buffer(1)
    ends = MultiPoint([start, end])
    return shapely.union_all([part for part in shapely.get_parts(cut_off) if part.intersects(ends)]).intersection(half)


def complaints(case):
    """What shapely finds wrong with one cut line."""
    cut = Polygon(case["cut"])
    if not cut.is_valid:
        return ["the cut line is not a simple polygon"]
    edges, widths, tolerance = case["edges"], case["widths"], case["tolerance"]
    piece = polygon(edges)
    widest = max(widths)
    if case["corners"] == "Any":
        outside = piece.difference(cut.buffer(2 * tolerance))
        return [f"{outside.area} mm2 of the piece lie outside the cut line"] if outside.area > 1e-6 else []
    found = []
    kept = [piece]
    for line, width in zip(edges, widths):
        if width > 0 and inward_radius_ok(line, width):
            kept.extend(strips(line, width))
    # Two tolerances: the fit of the curve, and chords in place of arcs on both sides.
    # The ends of a strip are square to a chord, which is up to half a degree off the curve.
    lean = 0.0 if case["straight"] else 0.0088 * widest
    wanted = shapely.union_all(kept)
    if case["fold"] is not None:
        wanted = wanted.difference(beyond_fold(case, kept[1:]))
    outside = wanted.difference(cut.buffer(2 * tolerance + lean))
    if outside.area > 1e-6:
        found.append(f"{outside.area} mm2 of allowance lie outside the cut line")
    round_corners = case["corners"] == "Round"
    if case["uniform"]:
        nearest = shapely.distance(piece.exterior, points(cut)).min()
        if nearest < widest - tolerance - 1e-6:
            found.append(f"a point only {nearest} from the seam line")
    if round_corners or (case["uniform"] and not case["straight"]):
        corners = MultiPoint([edge[0] for edge in edges])
        # A point cut off at the limit has corners a little farther out.
        tip = 0 if round_corners else 1.05 * case["limit"] * widest
        border = points(cut)
        far = shapely.distance(piece, border)
        reach = np.where(shapely.distance(corners, border) > tip, widest, max(tip, widest))
        for point, off in zip(border[far > reach + tolerance + 1e-6], far[far > reach + tolerance + 1e-6]):
            found.append(f"{point} is {off} from the piece")
    if not case["straight"]:
        return found
    style = {"join_style": "round", "quad_segs": 90} if round_corners else {"join_style": "mitre", "mitre_limit": case["limit"]}
    buffer = Polygon(piece.buffer(widest, **style).exterior)
    slack = SIMPLIFIED * widest
    beyond = cut.difference(buffer.buffer(slack, join_style="mitre"))
    short = buffer.difference(cut.buffer(slack, join_style="mitre"))
    if beyond.area > 1e-3 or (case["uniform"] and short.area > 1e-3):
        found.append(f"{beyond.area} mm2 more and {short.area} mm2 less than the buffer")
    return found


def cutout_complaints(case):
    """What is wrong with the line along which a cut-out is cut."""
    cutout, width, tolerance = polygon(case["cutout"]), case["inside"], case["tolerance"]
    inward = cutout.buffer(-width, join_style="mitre", mitre_limit=case["limit"])
    whole = not inward.is_empty and inward.geom_type == "Polygon"
    if case["opening"] == "none left":
        # An edge may be lost too, where the rest is whole.
        lost = [edge for edge in case["cutout"] if inward.distance(LineString(edge)) > width + 0.1 or LineString(edge).length > 2 * width]
        return [] if not whole or lost else ["refused, but shapely has it whole"]
    opening = Polygon(case["opening"])
    if not opening.is_valid:
        return ["the line of the cut-out is not a simple polygon"]
    nearest = opening.exterior.distance(cutout.exterior)
    if not cutout.contains(opening) or nearest < width - tolerance - 1e-6:
        return [f"a cut-out cut only {nearest} inside"]
    if case["straight"]:
        slack = SIMPLIFIED * width
        difference = opening.symmetric_difference(inward)
        rest = difference.buffer(-slack / 2, join_style="mitre").area
        return [f"{rest} mm2 between the cut-out and the buffer"] if rest > 1e-3 else []
    return []


def polygon(edges):
    """The ring of these polylines."""
    return Polygon([point for edge in edges for point in edge[:-1]])


def points(polygon):
    """Points along the border, 3 mm apart."""
    border = LineString(polygon.exterior.coords)
    return shapely.line_interpolate_point(border, np.arange(0.0, border.length, 3.0))


def cases():
    """The cases of a file, or of a run of the example, one after the other: ten thousand do not go into memory."""
    if len(sys.argv) > 1:
        with open(sys.argv[1], encoding="utf-8") as file:
            yield from map(json.loads, file)
        return
    # Seven pieces a seed.
    seeds = max(int(os.environ.get("RECLOTH_CUT_LINES", "1000")) // 7, 1)
    command = ["cargo", "run", "--quiet", "-p", "recloth", "--example", "cut_lines", "--", str(seeds), "0"]
    house = pathlib.Path(__file__).resolve().parents[2]
    with subprocess.Popen(command, stdout=subprocess.PIPE, text=True, cwd=house) as example:
        yield from map(json.loads, example.stdout)
    if example.returncode:
        raise SystemExit(f"the example ended with {example.returncode}")


def main():
    checked = failed = without = cutouts = 0
    for case in cases():
        found = []
        if case["opening"] is not None:
            cutouts += 1
            found += cutout_complaints(case)
        if case["cut"] is None:
            without += 1
        else:
            checked += 1
            found += complaints(case)
        for complaint in found:
            failed += 1
            kind = f"straight {case['straight']}, uniform {case['uniform']}, {case['corners']}"
            print(f"seed {case['seed']}, {kind}: {complaint}", file=sys.stderr)
    print(f"{checked} cut lines and {cutouts} cut-outs checked, {without} pieces without one, {failed} complaints")
    return 1 if failed or not checked or not cutouts or without > checked / 4 else 0


if __name__ == "__main__":
    sys.exit(main())
