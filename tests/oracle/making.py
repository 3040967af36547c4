"""Recompute the vectors of seams, hems, thread, pleats, tucks, elastic, necks, sleeves, linings, fastenings, bias,
alterations, panels by offsets and photographs.

Where there is more than one way to a number, this takes another than the library: arcs measured for their difference,
a search for a formula, corners cut from a drawn shape.
"""

import sys

import common
from mpmath import mp, mpf
from trade import DUST, ELASTIC_BATH, NEARLY, PLEATS_OVERLAP, whole

# Bits of crates/recloth/src/doubt.rs, written out again.
WAIST_OVER_HIP, HIP_FAR_OVER_WAIST, PHOTO_REACH = 2**4, 2**5, 2**11

# Seams and hems


def hem_on_curve(row):
    radius, depth, angle = row["radius"], row["depth"], row["hem"] / row["radius"]
    raw, lies = angle * (radius + depth), angle * (radius - depth)
    return {"excess_pct": 100 * (raw / lies - 1), "excess": raw - lies, "raw_edge": raw}


def deepest_hem(row):
    # Raw edge over line: (radius + depth) / (radius - depth) = k.
    k = 1 + row["excess_pct"] / 100
    return {"value": row["radius"] * (k - 1) / (k + 1)}


def snip_spacing(row):
    radius, allowance = row["radius"], row["allowance"]
    # An inward curve: the raw edge, nearer the centre, turned out to lie as far beyond the seam.
    opens_per_mm = ((radius + allowance) - (radius - allowance)) / radius
    spacing = row["opening"] / opens_per_mm
    return {"spacing": spacing, "flat": spacing**2 / (8 * radius)}


def turned_hem(row):
    allowance = row["depth"] + row["roll"]
    if row["turn_in"] > 0:
        allowance += row["turn_in"] + row["roll"]
    return {"allowance": allowance, "cut_length": row["length"] + allowance}


def cut_state(row):
    cut = row["drawn"] + row["allowance"] * (2 - row["cut_edges"])
    return {"finished": cut - 2 * row["allowance"], "cut": cut}


def turn_through(row):
    # Area of the layers, of the bundle, and from that its way round.
    area = row["width"] * row["thickness"] / row["packing"]
    round_it = mp.sqrt(4 * mp.pi * area)
    return {"diameter": round_it / mp.pi, "least_opening": round_it / 2, "spare": row["opening"] - round_it / 2}


# Thread


def thread_ratio(row):
    per_mm = 1 / row["stitch_length"]
    faces = {"chain_single": 3, "lock": 2, "chain_double": 4}[row.text("stitch")]
    return {"value": faces + per_mm * row["thickness"] + per_mm * row["thickness"]}


def thread_for_seam(row):
    thread = row["seam"] * row["ratio"]
    return {"value": thread + thread * row["waste_pct"] / 100}


# Fullness


def gather_sections(row):
    lengths = row.items("lengths")
    line = mp.fsum(lengths)
    ratio = row["flat"] / line
    return {
        "flats": [length * ratio for length in lengths],
        "finished": line,
        "ratio": ratio,
        "doubts": common.gathers(ratio),
    }


def ruffle(row):
    flat = row["edge"] * row["ratio"]
    strips = 1
    while strips * (row["strip"] - 2 * row["allowance"]) < flat * (1 - NEARLY):
        strips += 1
    width = row["depth"] + row["allowance"] + row["hem"]
    return {
        "flat": flat,
        "cut_width": width,
        "strips": strips,
        "cloth_length": strips * width,
        "doubts": common.gathers(row["ratio"]),
    }


# Pleats and tucks


def boxes(flat, finished, count):
    fold = (flat - finished) / count / 4
    return {
        "flat": flat,
        "finished": finished,
        "count": count,
        "show": finished / count,
        "depth": fold,
        "intake": 4 * fold,
        "taken_up": flat - finished,
        "ratio": flat / finished,
        "doubts": PLEATS_OVERLAP * (2 * fold > finished / count * (1 + mpf("1e-9"))),
    }


def box_pleats(row):
    return boxes(row["finished"] + 4 * row["count"] * row["depth"], row["finished"], row["count"])


def box_pleats_depth(row):
    return boxes(row["flat"], row["finished"], row["count"])


def box_pleats_count(row):
    count = whole((row["flat"] - row["finished"]) / (4 * row["depth"]))
    return boxes(row["flat"], row["finished"], count)


def box_pleats_finished(row):
    return boxes(row["flat"], row["flat"] - 4 * row["count"] * row["depth"], row["count"])


def seam_pleat(row):
    first, following = row["depth"] + row["allowance"], 3 * row["depth"] + row["allowance"]
    return {"first_edge": first, "next_edge": following, "intake": first + following - 2 * row["allowance"]}


def tucks(row):
    between = (row["count"] - 1) * row["spacing"]
    return {
        "flat": row["finished"] + row["count"] * row["depth"] * 2,
        "taken_up": row["count"] * row["depth"] * 2,
        "fold_pitch": row["depth"] + row["spacing"] + row["depth"],
        "gap": row["spacing"] - row["depth"],
        "margin": max(row["finished"] - between, 0),
        "doubts": PLEATS_OVERLAP * (row["count"] > 1 and row["depth"] > row["spacing"] + DUST),
    }


# Elastic


def elastic(row):
    round_it = row["girth"] - row["shorter"]
    return {
        "round": round_it,
        "cut": round_it + row["overlap"],
        "worn_pct": 100 * (row["girth"] / round_it - 1),
        "passing_pct": 100 * (row["widest"] / round_it - 1),
        "doubts": common.limb(row["girth"]),
        "cautions": ELASTIC_BATH,
    }


def casing(row):
    depth = row["width"] + row["ease"] + row["heading"]
    return {"depth": depth, "allowance": depth + row["turn_in"]}


def shirring(row):
    flat = row["finished"] / (row["drawn_pct"] / 100)
    rows = whole(row["depth"] / row["pitch"]) + 1
    return {
        "flat": flat,
        "ratio": 100 / row["drawn_pct"],
        "rows": rows,
        "stitching": rows * flat,
        "cautions": ELASTIC_BATH,
    }


def ribbing(row):
    round_it = row["edge"] * row["share"]
    return {
        "round": round_it,
        "cut_length": round_it + 2 * row["allowance"],
        "cut_width": 2 * (row["depth"] + row["allowance"]),
        "stretch_pct": 100 * (1 / row["share"] - 1),
    }


# Necks and sleeves


def v_neck(row):
    edge = mp.sqrt(row["half_width"] ** 2 + row["depth"] ** 2)
    return {
        "edge": edge,
        "off_grain_deg": mp.degrees(common.asin(row["half_width"] / edge)),
        "stay": row["stay_ratio"] * edge,
    }


def head_opening(row):
    wanted = row["head"] + row["ease"]
    return {
        "least_slit": max(wanted - row["neck"], 0) / 2,
        "spare": row["neck"] + 2 * row["slit"] - wanted,
        "doubts": common.trunk(row["head"]) | common.limb(row["neck"]),
    }


def cap_ease(row):
    ease = row["cap"] - row["armhole"]
    return {
        "ease": ease,
        "ease_pct": 100 * (row["cap"] / row["armhole"] - 1),
        "doubts": common.bits(_40=ease < -DUST, _41=10 * ease > row["armhole"] + 10 * DUST),
    }


def cap_for_ease(row):
    return {"value": row["armhole"] + row["armhole"] * row["ease_pct"] / 100}


def cap_width_bound(row):
    # Half the cap leans over half the width.
    lean = mp.acos(row["height"] / (row["cap"] / 2))
    return {"value": row["cap"] * mp.sin(lean)}


def puff_spread(row):
    zone = row["zone"]
    strip_ratio = 1 + row["strip"] / zone
    return {
        "flat": zone * row["ratio"],
        "added": zone * (row["ratio"] - 1),
        "spread_each": zone * (row["ratio"] - 1) / row["slashes"],
        "strip_ratio": strip_ratio,
        "doubts": common.gathers(min(row["ratio"], strip_ratio) if row["strip"] else row["ratio"]),
    }


# Linings


def lining_width(row):
    lined = row["panel"] - row["facing"]
    return {"value": lined + lined * row["ease_pct"] / 100 + row["pleat"]}


# Fastenings


def spacing_by_pitch(row):
    length, wanted = row["last"] - row["first"], row["pitch"]
    near = int(length / wanted)
    # The nearest of all pitches about it; of two as near, the closer one.
    spaces = min(range(max(near - 2, 1), near + 4), key=lambda k: (mp.nint(abs(length / k - wanted) * 10**9), -k))
    return {"count": spaces + 1, "pitch": length / spaces}


def zigzag_buttonhole(row):
    side = mp.ceil(row["slit"] / row["spacing"] * (1 - NEARLY))
    return {
        "length": row["slit"] + 2 * row["bar"],
        "width": row["gap"] + 2 * row["bead"],
        "stitches": 2 * side,
    }


def lacing(row):
    slant = mp.sqrt(row["gap"] ** 2 + row["pitch"] ** 2)
    return {"value": row["gap"] + mp.fsum([slant] * (2 * (int(row["pairs"]) - 1))) + row["tail"] + row["tail"]}


# Bias from a rectangle


def bias_strips(row):
    long, short = max(row["length"], row["width"]), min(row["length"], row["width"])
    pitch = row["strip"] / mp.sin(mp.pi / 4)
    join = 2 * row["allowance"] / mp.sin(mp.pi / 4)

    def chord(c):
        """Length within the rectangle of the cut x + y = c."""
        low, high = max(0, c - short), min(long, c)
        return max(high - low, mpf(0)) * mp.sqrt(2)

    count = int((long + short) / pitch) + 2
    cuts = [short + k * pitch for k in range(-count, count)]
    strips = [min(chord(one), chord(other)) for one, other in zip(cuts, cuts[1:])]
    strips = [length for length in strips if length > join and length >= row["shortest"]]
    return {
        "strips": len(strips),
        "longest": max(strips),
        "joined": mp.fsum(strips) - (len(strips) - 1) * join,
        "kept_pct": 100 * mp.fsum(strips) * row["strip"] / (long * short),
    }


def bias_tube(row):
    long, short = max(row["length"], row["width"]), min(row["length"], row["width"])
    along, across = long - 2 * row["allowance"], short - 2 * row["allowance"]
    pitch = row["strip"] / mp.sin(mp.pi / 4)
    turns = whole(along / pitch)
    return {"turns": turns, "length": turns * across / mp.cos(mp.pi / 4), "leftover": max(along - turns * pitch, 0)}


def piping_width(row):
    return {"value": row["allowance"] + mp.pi * row["cord"] + mp.pi * row["thickness"] + row["allowance"]}


# Bodies and alterations


def hip_waist_drop(row):
    drop = row["hip"] - row["waist"]
    return {"drop": drop, "doubts": WAIST_OVER_HIP * (drop < -DUST) + HIP_FAR_OVER_WAIST * (drop > 450 + DUST)}


def take_in(row):
    excess = max(row["garment"] - row["body"] - row["ease"], 0)
    each = min(excess / row["edges"], row["limit"])
    return {
        "excess": excess,
        "each": each,
        "taken": each * row["edges"],
        "leftover": excess - each * row["edges"],
        "doubts": common.limb(row["body"]),
    }


def let_out(row):
    lacking = max(row["body"] + row["ease"] - row["garment"], 0)
    each = min(lacking / row["edges"], row["allowance"] - row["keep"])
    return {
        "lacking": lacking,
        "each": each,
        "gained": each * row["edges"],
        "short_by": lacking - each * row["edges"],
        "doubts": common.limb(row["body"]),
    }


def size_step(row):
    step = (row["larger"] - row["smaller"]) / row["steps"]
    return {"step": step, "each_edge": step / row["edges"], "doubts": common.limb(row["smaller"])}


# Panels by offsets


def panel_by_offsets(row):
    stations, left, right = row.items("stations"), row.items("left"), row.items("right")
    # The shoelace formula round the panel, up the right side and down the left.
    ring = list(zip(right, stations)) + [(-x, y) for x, y in reversed(list(zip(left, stations)))]
    area = mp.fsum(x * v - u * y for (x, y), (u, v) in zip(ring, ring[1:] + ring[:1])) / 2
    widths = [a + b for a, b in zip(left, right)]

    def bows(side):
        slope = (side[-1] - side[0]) / (stations[-1] - stations[0])
        return [x - (side[0] + slope * (y - stations[0])) for x, y in zip(side, stations)]

    return {
        "left_bow": bows(left),
        "right_bow": bows(right),
        "area": area,
        "length": stations[-1] - stations[0],
        "widest": max(widths),
        "narrowest": min(widths),
        "largest_bow": max(abs(bow) for bow in bows(left) + bows(right)),
    }


# Photographs


def photo_map(row):
    picture = list(zip(row.items("picture_x"), row.items("picture_y")))
    truth = list(zip(row.items("true_x"), row.items("true_y")))
    # The eight unknowns, from two equations a corner.
    left, right = mp.zeros(8, 8), mp.zeros(8, 1)
    for k, ((u, v), (p, q)) in enumerate(zip(picture, truth)):
        for line, value in ((2 * k, p), (2 * k + 1, q)):
            start = 3 * (line % 2)
            left[line, start], left[line, start + 1], left[line, start + 2] = u, v, 1
            left[line, 6], left[line, 7], right[line] = -u * value, -v * value, value
    a, b, c, d, e, f, g, h = mp.lu_solve(left, right)

    def place(u, v):
        w = g * u + h * v + 1
        return (a * u + b * v + c) / w, (d * u + e * v + f) / w

    def scale(u, v):
        """From the true area of a very small square."""
        small = mpf("1e-15")
        (p, q), (r, s), (t, z) = place(u, v), place(u + small, v), place(u, v + small)
        return mp.sqrt(abs((r - p) * (z - q) - (t - p) * (s - q))) / small

    points = list(zip(row.items("x"), row.items("y")))
    places, scales = [place(u, v) for u, v in points], [scale(u, v) for u, v in points]
    xs, ys = zip(*truth)
    reach = max(
        max(0, (min(all_) - value) / (max(all_) - min(all_)), (value - max(all_)) / (max(all_) - min(all_)))
        for place_ in places
        for value, all_ in zip(place_, (xs, ys))
    )
    return {
        "along": [p for p, q in places],
        "across": [q for p, q in places],
        "scales": scales,
        "reach": reach,
        "coarsest": max(scales),
        "doubts": PHOTO_REACH * (reach > mpf("1.5")),
    }


FUNCTIONS = (
    hem_on_curve,
    deepest_hem,
    snip_spacing,
    turned_hem,
    cut_state,
    turn_through,
    thread_ratio,
    thread_for_seam,
    gather_sections,
    ruffle,
    box_pleats,
    box_pleats_depth,
    box_pleats_count,
    box_pleats_finished,
    seam_pleat,
    tucks,
    elastic,
    casing,
    shirring,
    ribbing,
    v_neck,
    head_opening,
    cap_ease,
    cap_for_ease,
    cap_width_bound,
    puff_spread,
    lining_width,
    spacing_by_pitch,
    zigzag_buttonhole,
    lacing,
    bias_strips,
    bias_tube,
    piping_width,
    hip_waist_drop,
    take_in,
    let_out,
    size_step,
    panel_by_offsets,
    photo_map,
)

if __name__ == "__main__":
    sys.exit(common.main(*FUNCTIONS))
