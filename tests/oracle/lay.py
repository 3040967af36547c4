"""Lays, by shapely: what the checker says of random lays, right and spoilt, and whether what fit proves impossible is.

Every lay is judged again from the parts, the panels and the placements alone: the placed coordinates, the grain, the
sides and the counts by plain arithmetic, what lies inside or over what by shapely. Depths and distances are asked at two
tolerances, one narrower and one wider than the library's; where the two differ, the case is counted and left out, and
there must be few. Where the library has proved that a piece has no place on a panel, random places are tried in vain.
On cloth with a repeat, points to match are measured again. What a lay leaves is cut out again: the shapes must hold nothing that is taken, and lack no more than the stated accuracy.

`python3 tests/oracle/lay.py` runs the example `random_lays` and reads it; `python3 tests/oracle/lay.py FILE` reads its
output from a file, `-` from the standard input. Needs shapely and cargo.
"""

import json
import math
import pathlib
import random
import subprocess
import sys
from itertools import pairwise

from shapely import LineString, Point, Polygon, unary_union
from shapely.prepared import prep

ROOT = pathlib.Path(__file__).resolve().parents[2]
# The library's tolerance is 1e-6 mm. Shapely erodes by half a depth on either side, rounded corners of a narrow
# piece by more, so a lay of fit may touch but never reach LOOSE.
TIGHT, LOOSE = 1e-7, 1e-3
TRIES = 60


def xy(points):
    return [(point["x"], point["y"]) for point in points]


def place(points, at):
    """Mirrored, turned, shifted."""
    angle = math.radians(at["turn_deg"])
    sin, cos = math.sin(angle), math.cos(angle)
    for x, y in points:
        x = -x if at["mirrored"] else x
        yield cos * x - sin * y + at["shift"]["x"], sin * x + cos * y + at["shift"]["y"]


def flaw_shape(points):
    match len(set(points)):
        case 1:
            return Point(points[0])
        case 2:
            return LineString(points)
        case _:
            return Polygon(points)


def overlaps(a, b, depth):
    """Whether a and b share more than a rim of about this depth."""
    if a.distance(b) > 0:
        return False
    return a.buffer(-depth / 2, join_style="mitre").intersects(b.buffer(-depth / 2, join_style="mitre"))


def runs_into(thing, piece, depth):
    """Whether a spot or slit is inside a piece by more than this depth."""
    return piece.buffer(-depth, join_style="mitre").intersects(thing)


def turned(angle):
    """Between -180 and 180."""
    return math.remainder(angle, 360)


class Judge:
    """Complaints that are certain, and those that hang on the tolerance."""

    def __init__(self):
        self.certain, self.doubtful = set(), set()

    def say(self, kind, *where, tight, loose):
        if loose:
            self.certain.add((kind, *where))
        elif tight:
            self.doubtful.add((kind, *where))


def judge(lay, parts, panels):
    said = Judge()
    laid = []
    for index, at in enumerate(lay["placements"]):
        part, panel = parts[at["part"]], panels[at["panel"]]
        lie(said, index, at, part, panel)
        piece = Polygon(list(place(xy(part["outline"]), at)))
        if not piece.is_valid:
            piece = piece.buffer(0)
        seam = list(place(xy(part.get("seam", [])), at))
        spot(said, index, piece, panel, part.get("role"), Polygon(seam))
        for other, (where, shape) in enumerate(laid):
            if where != at["panel"]:
                continue
            deep = [overlaps(shape, piece, depth) for depth in (TIGHT, LOOSE)]
            said.say("overlap", other, index, tight=deep[0], loose=deep[1])
            gap, spacing = shape.distance(piece), lay["spacing"]
            if spacing > 0 and not deep[0]:
                said.say("too_close", other, index, tight=gap < spacing - TIGHT, loose=gap < spacing - 2e-6)
            elif spacing > 0 and not deep[1]:
                said.doubtful.add(("too_close", other, index))
        laid.append((at["panel"], piece))
    for fold in lay.get("folds", []):
        folded(said, fold, [(index, shape) for index, (where, shape) in enumerate(laid) if where == fold["panel"]], lay["spacing"])
    match_points(said, lay["placements"], parts, panels)
    for index, part in enumerate(parts):
        for hand in ("as_drawn", "mirrored"):
            there = sum(at["part"] == index and at["hand"] == hand for at in lay["placements"])
            there += sum(left["count"] for left in lay["unplaced"] if left["part"] == index and left["hand"] == hand)
            if there != part[hand]:
                said.certain.add(("count", part["name"], hand))
    return said


def mirror(points, fold):
    """Mirror images in a line by complex numbers: turned so that the line is level, conjugated, turned back."""
    start, end = (complex(*xy([fold[name]])[0]) for name in ("from", "to"))
    way = (end - start) / abs(end - start)
    for x, y in points:
        image = start + way * ((complex(x, y) - start) / way).conjugate()
        yield image.real, image.imag


def folded(said, fold, pieces, spacing):
    """What is cut from the other layer of a folded panel: the place of a piece, or clear of all."""
    images = [(index, Polygon(list(mirror(shape.exterior.coords, fold)))) for index, shape in pieces]
    for index, image in images:
        off = min(image.hausdorff_distance(shape) for _, shape in pieces)
        if off < 5e-7:
            continue
        for other, shape in pieces:
            deep = [overlaps(shape, image, depth) for depth in (TIGHT, LOOSE)]
            gap = shape.distance(image)
            # In doubt whether it is the place of a piece, whatever is said is right.
            same = off < 2e-6
            said.say("cuts_into", index, other, tight=deep[0] or same, loose=deep[1] and not same)
            if spacing > 0 and not deep[0]:
                near = [gap < spacing - TIGHT, gap < spacing - 2e-6]
                said.say("cuts_near", index, other, tight=near[0] or same, loose=near[1] and not same)
            elif spacing > 0 and not deep[1]:
                said.doubtful.add(("cuts_near", index, other))


def off_grain(at, part, panel):
    """How far the grain of a piece is turned from that of its panel."""
    grain = 180 - part["grain_deg"] if at["mirrored"] else part["grain_deg"]
    return turned(grain + at["turn_deg"] - panel["grain_deg"])


def match_points(said, placements, parts, panels):
    """Points of one name at the same place of the repeat: each against the first laid of those it meets."""
    points = []
    for index, at in enumerate(placements):
        part, panel = parts[at["part"]], panels[at["panel"]]
        repeat = panel.get("repeat")
        for point in part.get("matches", []) if repeat else []:
            ((x, y),) = place(xy([point["at"]]), at)
            x, y, angle = x - repeat["from"]["x"], y - repeat["from"]["y"], math.radians(panel["grain_deg"])
            far = x * math.cos(angle) + y * math.sin(angle), y * math.cos(angle) - x * math.sin(angle)
            hand = at["hand"] == "mirrored"
            side = {"own": hand, "other": not hand, "both": "both", "level": None}[point["side"]]
            points.append((point["name"], side, index, at, part, panel, far))
    joined = {name for name, side, *_ in points if side == "both"}
    firsts = {}
    for name, side, *one in points:
        along = firsts.setdefault(name, one)
        group = None if side is None else "both" if name in joined else side
        across = None if group is None else firsts.setdefault((name, group), one)
        meet(said, one, along, across)


def meet(said, one, along, across):
    index, at, part, panel, far = one
    lengths = panel["repeat"]["along"], panel["repeat"]["across"]

    def repeats(other):
        return other[3]["repeat"]["along"], other[3]["repeat"]["across"]

    if repeats(along) != lengths:
        said.certain.add(("other_repeat", along[0], index))
        return
    for axis, first in enumerate((along, across)):
        if first is None or repeats(first) != lengths:
            continue
        number, first_at, first_part, first_panel, first_far = first
        off = off_grain(first_at, first_part, first_panel)
        crosswise = 45 < abs(off) < 135
        length = lengths[axis != crosswise]
        apart = abs(turned(off_grain(at, part, panel) - off))
        if length == 0 or first is one:
            continue
        allowed = part["tilt_deg"] + first_part["tilt_deg"]
        otherwise = [apart > allowed + more for more in (1e-9, 3e-9)]
        said.say("other_way", number, index, tight=otherwise[0], loose=otherwise[1])
        if otherwise[0] and otherwise[1]:
            continue
        if axis == 1 and at["mirrored"] ^ (at["hand"] == "mirrored") ^ first_at["mirrored"] ^ (first_at["hand"] == "mirrored"):
            said.certain.add(("other_face", number, index))
            continue
        miss = abs(math.remainder(far[axis != crosswise] - first_far[axis != crosswise], length))
        said.say("off_across" if axis else "off_along", number, index, tight=miss > 0.9e-6, loose=miss > 1.1e-6)


def lie(said, index, at, part, panel):
    """Grain, nap and side."""
    off = abs(off_grain(at, part, panel))
    one_way = panel["nap"] and not part["either_way"]
    tilt = off if one_way else min(off, 180 - off)
    if part["crosswise"] and not one_way:
        tilt = min(tilt, abs(off - 90))
    kind = "against_nap" if one_way and 180 - off <= part["tilt_deg"] + 1e-9 else "off_grain"
    said.say(kind, index, tight=tilt > part["tilt_deg"], loose=tilt > part["tilt_deg"] + 2e-9)
    if panel["faces"] == "one":
        face_down = at["mirrored"] != (at["hand"] == "mirrored")
        if part["shows"] == "both":
            said.certain.add(("one_face", index))
        elif part["shows"] in ("right", "wrong") and face_down == (part["shows"] == "right"):
            said.certain.add(("wrong_side", index))


def spot(said, index, cut, panel, role, seam):
    """Inside the panel, clear of holes, and of the flaws that matter: by the seam line of those under its allowance."""
    piece = cut
    cloth = Polygon(xy(panel["outline"]))
    out = [not cloth.buffer(depth, join_style="mitre").covers(piece) for depth in (TIGHT, LOOSE)]
    said.say("outside", index, tight=out[0], loose=out[1])
    for number, hole in enumerate(panel["holes"]):
        deep = [overlaps(piece, Polygon(xy(hole)), depth) for depth in (TIGHT, LOOSE)]
        said.say("on_hole", index, number, tight=deep[0], loose=deep[1])
    for number, flaw in enumerate(panel["flaws"]):
        under = flaw.get("under", [])
        if role and role in under:
            continue
        piece = seam if not seam.is_empty and "seam allowance" in under else cut
        shape = flaw_shape(xy(flaw["outline"]))
        over = overlaps if shape.geom_type == "Polygon" else lambda a, b, depth: runs_into(b, a, depth)
        deep = [over(piece, shape, depth) for depth in (TIGHT, LOOSE)]
        said.say("on_flaw", index, number, tight=deep[0], loose=deep[1])
        gap, margin = shape.distance(piece), flaw["margin"]
        if margin > 0 and not deep[0]:
            said.say("near_flaw", index, number, tight=gap < margin - TIGHT, loose=gap < margin - 2e-6)
        elif margin > 0 and not deep[1]:
            said.doubtful.add(("near_flaw", index, number))


def complaints(row):
    """The library's complaints in the same form."""
    for complaint in row["complaints"]:
        ((kind, told),) = complaint.items()
        if kind == "count":
            yield kind, told["part"], told["hand"]
        elif kind in ("cuts_into", "cuts_near"):
            yield kind, told["placement"], told["other"]
        elif "second" in told:
            yield kind, told["first"], told["second"]
        elif kind in ("on_hole", "on_flaw", "near_flaw"):
            yield kind, told["placement"], told["hole" if kind == "on_hole" else "flaw"]
        else:
            yield kind, told["placement"]


def refute(row, chance):
    """A place for something proved to have none, if one is found."""
    for answer in row["cannot"]:
        part, panel = row["parts"][answer["part"]], row["panels"][answer["panel"]]
        if answer["answer"]["cannot"] == "one_face":
            continue
        cloth = Polygon(xy(panel["outline"]))
        room = prep(cloth)
        left, low, right, high = cloth.bounds
        for _ in range(TRIES):
            face_up = answer["hand"] == "mirrored"
            fixed = panel["faces"] == "one" and part["shows"] != "either"
            mirrored = face_up != (part["shows"] == "wrong") if fixed else chance.random() < 0.5
            grain = 180 - part["grain_deg"] if mirrored else part["grain_deg"]
            turn = panel["grain_deg"] - grain + chance.uniform(-1, 1) * part["tilt_deg"]
            if not (panel["nap"] and not part["either_way"]):
                turn += chance.choice((0, 180))
                if part["crosswise"]:
                    turn += chance.choice((0, 90))
            at = {"mirrored": mirrored, "turn_deg": turn, "shift": {"x": 0, "y": 0}}
            piece = Polygon(list(place(xy(part["outline"]), at)))
            # Somewhere in the box of the cloth, which is all the room there is.
            x0, y0, x1, y1 = piece.bounds
            dx = chance.uniform(*sorted((left - x0, right - x1)))
            dy = chance.uniform(*sorted((low - y0, high - y1)))
            piece = Polygon([(x + dx, y + dy) for x, y in piece.exterior.coords])
            if room.covers(piece):
                said = Judge()
                seam = list(place(xy(part.get("seam", [])), at))
                seam = Polygon([(x + dx, y + dy) for x, y in seam])
                spot(said, 0, piece, panel, part.get("role"), seam)
                if not said.certain and not said.doubtful:
                    return answer, at, (dx, dy)
    return None


# What rounding may cost a shape that is left, at any place, and a flaw without area is at least so far off.
ACCURACY = 0.1


def leftover(row):
    """What is wrong with the shapes that the lay leaves, and how many there are."""
    for number, panel in enumerate(row["panels"]):
        cloth = Polygon(xy(panel["outline"]))
        taken = [Polygon(xy(hole)) for hole in panel["holes"]]
        for flaw in panel["flaws"]:
            shape = flaw_shape(xy(flaw["outline"]))
            margin = flaw["margin"] if shape.geom_type == "Polygon" else max(flaw["margin"], ACCURACY)
            taken.append(shape.buffer(margin, quad_segs=64) if margin else shape)
        for at, points in zip(row["lay"]["placements"], row["placed"], strict=True):
            if at["panel"] == number:
                taken.append(Polygon(xy(points)))
        rest = cloth.difference(unary_union([shape.buffer(0) for shape in taken]))
        left = []
        for told in row["left"]:
            if told["panel"] != number:
                continue
            shape = Polygon(xy(told["outline"]), [xy(hole) for hole in told["holes"]])
            if not shape.is_valid:
                return f"a shape that crosses itself: {told}"
            if abs(shape.area - told["area_mm2"]) > 1e-6 * max(1, shape.area):
                return f"{told['area_mm2']} mm2 said, {shape.area} there"
            left.append(shape)
            clear = []
            for r in told["rectangles"]:
                angle = math.radians(r["grain_deg"])
                along = math.cos(angle), math.sin(angle)
                across = along[1], -along[0]
                (x, y), w, h = (r["corner"]["x"], r["corner"]["y"]), r["width"], r["height"]
                corners = [(0, 0), (w, 0), (w, h), (0, h)]
                box = Polygon([(x + a * across[0] + b * along[0], y + a * across[1] + b * along[1]) for a, b in corners])
                if not shape.buffer(1e-6, join_style="mitre").covers(box) or min(w, h) < 20:
                    return f"a rectangle that is not there: {r}"
                if any(overlaps(box, other, LOOSE) for other in clear):
                    return f"a rectangle over another: {r}"
                clear.append(box)
            if any(after.area > before.area + 0.01 for before, after in pairwise(clear)):
                return "rectangles that grow"
        all_left = unary_union(left)
        # Round margins are polygons of many sides here: inside the true one by less than a ten-thousandth of it.
        if not rest.buffer(0.002).covers(all_left):
            return f"left, but taken: {all_left.difference(rest).area} mm2 of panel {number}"
        # Along edges the accuracy may be missing, and slivers of a mean width below twice that.
        missing = rest.difference(all_left.buffer(0.002))
        for gap in getattr(missing, "geoms", [missing]):
            if gap.area > ACCURACY * gap.length:
                return f"not left, but not taken: {gap.area} mm2 of panel {number}"
    return None


def check(row, chance):
    """What is wrong with a row; and whether it was clear and right, clear and wrong, or left out."""
    for at, points in zip(row["lay"]["placements"], row["placed"], strict=True):
        mine = place(xy(row["parts"][at["part"]]["outline"]), at)
        for (x, y), point in zip(mine, points, strict=True):
            if math.dist((x, y), (point["x"], point["y"])) > 1e-9:
                return f"placed at {point}, not at {x, y}", None
    told = set(complaints(row))
    said = judge(row["lay"], row["parts"], row["panels"])
    missed, invented = said.certain - told, told - said.certain - said.doubtful
    if missed or invented:
        return f"not complained of: {missed}; complained of wrongly: {invented}", None
    if row["from_fit"] and (told or said.certain):
        return "fit gave a lay that is wrong", None
    found = refute(row, chance)
    if found:
        return f"proved impossible, but there is a place: {found}", None
    wrong = leftover(row) if row["left"] is not None else None
    if wrong:
        return wrong, None
    return None, "wrong" if said.certain else "left out" if said.doubtful and told else "right"


def met(row):
    """Whether two pieces of a lay, or more, have points of one name on cloth with a repeat."""
    names = []
    for at in row["lay"]["placements"]:
        if row["panels"][at["panel"]].get("repeat"):
            names.extend({point["name"] for point in row["parts"][at["part"]].get("matches", [])})
    return len(names) > len(set(names))


def lines(arguments):
    if arguments:
        return sys.stdin if arguments[0] == "-" else open(arguments[0], encoding="utf-8")
    command = ["cargo", "run", "--quiet", "--package", "recloth-lay", "--features", "serde", "--example", "random_lays"]
    return subprocess.run(command, cwd=ROOT, check=True, capture_output=True, text=True).stdout.splitlines()


def told(lays):
    """The checker's complaints of each."""
    command = ["cargo", "run", "--quiet", "--package", "recloth-lay", "--features", "serde", "--example", "check_lays"]
    text = "".join(json.dumps(row) + "\n" for _, _, row in lays)
    answer = subprocess.run(command, cwd=ROOT, check=True, capture_output=True, text=True, input=text).stdout
    return [json.loads(line) for line in answer.splitlines()]


def main(arguments):
    chance = random.Random(1)
    counts = {"right": 0, "wrong": 0, "left out": 0}
    kinds, cannot, failed, left, matched = set(), 0, 0, 0, 0
    for number, line in enumerate(lines(arguments), 1):
        row = json.loads(line)
        fault, verdict = check(row, chance)
        if fault:
            failed += 1
            print(f"line {number}: {fault}", file=sys.stderr)
            continue
        counts[verdict] += 1
        cannot += len(row["cannot"])
        left += len(row["left"] or [])
        matched += row["from_fit"] and met(row)
        kinds.update(kind for kind, *_ in complaints(row))
    checked = counts["right"] + counts["wrong"]
    print(
        f"{checked} lays checked: {counts['right']} right, {counts['wrong']} wrong in {len(kinds)} ways, "
        f"{counts['left out']} left out; {cannot} refusals tried, {left} leftovers cut out again, {matched} lays matched"
    )
    few = counts["left out"] * 20 <= checked
    said = {"off_along", "off_across", "other_way", "other_face", "other_repeat"} <= kinds
    whole = checked and counts["right"] and counts["wrong"] and left and matched and said
    return 0 if whole and few and not failed else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
