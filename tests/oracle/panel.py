"""Panels as shapes, by shapely and by search: areas of usable panels, sizes of rectangles.

A usable panel is the outline less a buffer of each edge and of each flaw. A rectangle is searched for numerically: for
a place to start and a place to end across the grain, what is free along it is the panel less what stands between; the
two places are refined from a net of starts. Nothing is shared with the library but the rows. Needs mpmath and shapely.
"""

import sys

import common
from mpmath import mpf
from shapely import LineString, MultiPoint, Point, Polygon, affinity, union_all

# Segments a quarter of an arc: a disc of 100 mm is then short of pi by 1e-5 of itself.
ROUND = 256


def rings(text):
    """The rings of a cell: `x y x y ...`, rings separated by `;`."""
    values = [[float(item) for item in ring.split()] for ring in text.split(";")]
    return [list(zip(ring[::2], ring[1::2])) for ring in values if ring]


def usable_panel(row):
    (outline,) = rings(row.text("outline"))
    losses = [float(item) for item in row.text("losses").split()]
    panel = Polygon(outline)
    lost = []
    for start, end, loss in zip(outline, outline[1:] + outline[:1], losses, strict=True):
        if start != end and loss > 0:
            lost.append(LineString([start, end]).buffer(loss, quad_segs=ROUND))
    for flaw in rings(row.text("flaws")):
        shape = {1: Point, 2: LineString}.get(len(flaw), Polygon)(flaw[0] if len(flaw) == 1 else flaw)
        lost.append(shape.buffer(float(row["margin"]), quad_segs=ROUND))
    kept = panel.difference(union_all(lost))
    parts = [part for part in getattr(kept, "geoms", [kept]) if part.area > 0]
    return {
        "parts": len(parts),
        "holes": sum(len(part.interiors) for part in parts),
        "area_mm2": mpf(kept.area),
        "share": mpf(kept.area / panel.area),
    }


def gaps(cloth, x1, x2):
    """What is free from one place to the other, as stretches along the grain."""
    left, low, right, high = cloth.bounds
    strip = Polygon([(x1, low - 1), (x2, low - 1), (x2, high + 1), (x1, high + 1)])
    inside = cloth.intersection(strip)
    for part in getattr(inside, "geoms", [inside]):
        if part.area <= 0:
            continue
        # What stands in the strip: everything in it that is not this part. Seen from the middle of the part's free levels.
        rest = strip.difference(part)
        blocked = sorted(piece.bounds[1::2] for piece in getattr(rest, "geoms", [rest]) if piece.area > 0)
        level = low - 1
        for bottom, top in blocked + [(high + 1, high + 1)]:
            if bottom > level:
                yield level, bottom
            level = max(level, top)


def best_at(cloth, x1, x2):
    """The largest rectangle from one place to the other: area, bottom, top."""
    if not x1 < x2:
        return (0.0, 0.0, 0.0)
    return max(((top - bottom) * (x2 - x1), bottom, top) for bottom, top in [*gaps(cloth, x1, x2), (0.0, 0.0)])


def largest_rectangle(row):
    (outline,) = rings(row.text("outline"))
    grain = float(row["grain_deg"])
    cloth = Polygon(outline)
    for hole in rings(row.text("holes")):
        cloth = cloth.difference(Polygon(hole))
    upright = affinity.rotate(cloth, 90 - grain, origin=(0, 0))
    left, _, right, _ = upright.bounds
    corners = [x for part in getattr(upright, "geoms", [upright]) for ring in [part.exterior, *part.interiors] for x, _ in ring.coords]
    net = sorted({left + (right - left) * step / 24 for step in range(25)} | set(corners))
    starts = sorted(((best_at(upright, x1, x2)[0], x1, x2) for x1 in net for x2 in net if x1 < x2), reverse=True)
    best = (0.0, 0.0, 0.0)
    for area, x1, x2 in starts[:4]:
        step = (right - left) / 24
        while step > 1e-7:
            moves = [
                (best_at(upright, a, b)[0], a, b)
                for a, b in ((x1 + i * step, x2 + j * step) for i in (-1, 0, 1) for j in (-1, 0, 1) if i or j)
            ]
            better = max(moves)
            if better[0] > area:
                area, x1, x2 = better
            else:
                step /= 2
        best = max(best, (area, x1, x2))
    area, x1, x2 = best
    _, bottom, top = best_at(upright, x1, x2)
    corner = affinity.rotate(Point(x1, bottom), grain - 90, origin=(0, 0))
    found = MultiPoint([(x1, bottom), (x2, bottom), (x2, top), (x1, top)]).convex_hull
    assert upright.buffer(1e-6).covers(found), "the search left the cloth"
    return {
        "x": mpf(corner.x),
        "y": mpf(corner.y),
        "width": mpf(x2 - x1),
        "height": mpf(top - bottom),
        "area_mm2": mpf(area),
    }


def tallest_rectangle(row):
    (outline,) = rings(row.text("outline"))
    grain, width = float(row["grain_deg"]), float(row["width"])
    cloth = Polygon(outline)
    for hole in rings(row.text("holes")):
        cloth = cloth.difference(Polygon(hole))
    upright = affinity.rotate(cloth, 90 - grain, origin=(0, 0))
    left, _, right, _ = upright.bounds
    # A hair narrower, lest the strip of a rectangle that just fits is called blocked.
    hair = 1e-7

    def height(x):
        area, bottom, top = best_at(upright, x + hair, x + width - hair)
        return top - bottom, bottom

    corners = [x for part in getattr(upright, "geoms", [upright]) for ring in [part.exterior, *part.interiors] for x, _ in ring.coords]
    net = {left + (right - left) * step / 400 for step in range(401)} | set(corners) | {x - width for x in corners}
    starts = sorted(((height(x)[0], x) for x in net if left - hair <= x <= right - width + hair), reverse=True)
    best = max(starts)
    for found, x in starts[:12]:
        step = (right - left) / 400
        while step > 1e-8:
            better = max((height(place)[0], place) for place in (x - step, x + step))
            if better[0] > found:
                found, x = better
            else:
                step /= 2
        best = max(best, (found, x))
    found, x = best
    corner = affinity.rotate(Point(x, height(x)[1]), grain - 90, origin=(0, 0))
    return {"x": mpf(corner.x), "y": mpf(corner.y), "height": mpf(found), "area_mm2": mpf(found * width)}


if __name__ == "__main__":
    sys.exit(common.main(usable_panel, largest_rectangle, tallest_rectangle))
