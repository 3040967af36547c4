"""Recompute the vectors of seams, hems, thread, pleats, tucks, elastic, necks, sleeves, linings, fastenings and bias.

Where there is more than one way to a number, this takes another than the library: arcs measured for their difference,
a search for a formula, corners cut from a drawn shape.
"""

import sys

import common
from mpmath import mp, mpf
from trade import ELASTIC_BATH, GATHERS_SCANT, NEARLY, PLEATS_OVERLAP, whole

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
        "doubts": GATHERS_SCANT * (ratio < mpf(1.2)),
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
        "doubts": GATHERS_SCANT * (row["ratio"] < mpf(1.2)),
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
        "doubts": PLEATS_OVERLAP * (row["count"] > 1 and row["depth"] > row["spacing"] * (1 + mpf("1e-9"))),
    }


# Elastic


def elastic(row):
    round_it = row["girth"] - row["shorter"]
    return {
        "round": round_it,
        "cut": round_it + row["overlap"],
        "worn_pct": 100 * (row["girth"] / round_it - 1),
        "passing_pct": 100 * (row["widest"] / round_it - 1),
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
)

if __name__ == "__main__":
    sys.exit(common.main(*FUNCTIONS))
