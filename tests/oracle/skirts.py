"""Recompute the vectors of double and turned darts, arcs and cones, gores, tiers, flounces and wrap skirts.

Where there is more than one way to a number, this takes another than the library: circles through points for formulas,
the sum of small parts for the whole.
"""

import functools
import operator
import sys

import common
from mpmath import mp, mpf
from trade import DART_LONG, DART_WIDE, NEARLY, legs, sagitta

INCH = mpf(25.4)



# Darts


def double_dart(row):
    intake, upper, lower = row["intake"], row["upper"], row["lower"]
    (upper_leg, upper_angle), (lower_leg, lower_angle) = legs(intake, upper), legs(intake, lower)
    # The inside angle between the two legs, from the far points: law of cosines.
    inside = mp.acos((upper_leg**2 + lower_leg**2 - (upper + lower) ** 2) / (2 * upper_leg * lower_leg))
    return {
        "upper_leg": upper_leg,
        "lower_leg": lower_leg,
        "upper_angle_deg": upper_angle,
        "lower_angle_deg": lower_angle,
        "bend_deg": 180 - mp.degrees(inside),
        "doubts": DART_WIDE * (intake > 32) + DART_LONG * (lower > 178) + common.bits(_42=intake > min(upper, lower)),
    }


def dart_from_gape(row):
    half_angle = common.asin(row["gape"] / (2 * row["gape_distance"]))
    return {"intake": 2 * row["dart_leg"] * mp.sin(half_angle), "angle_deg": mp.degrees(2 * half_angle)}


def dart_width_at(row):
    half_angle = common.asin(row["intake"] / (2 * row["leg"]))
    return {"value": 2 * row["distance"] * mp.sin(half_angle)}


def dart_equivalent(row):
    flat = row["finished"] + row["intake"]
    return {
        "ease_pct": 100 * (flat / row["finished"] - 1),
        "gather_ratio": flat / row["finished"],
        "tuck_depth": row["intake"] / row["tucks"] / 2,
        "doubts": common.gathers(flat / row["finished"]),
    }


# Arcs


def arc_from_rise(row):
    # The circle through the two ends and the top: as far from an end as from the top.
    half, rise = row["chord"] / 2, row["rise"]
    centre = (rise**2 - half**2) / (2 * rise)
    radius = rise - centre
    angle = 2 * mp.atan2(half, -centre)
    return {"radius": radius, "length": radius * angle, "angle_deg": mp.degrees(angle)}


def frustum(row):
    lower, upper, height = row["lower_diameter"] / 2, row["upper_diameter"] / 2, row["height"]
    # The whole cone, and its missing tip.
    whole = height * lower / (lower - upper)
    outer = mp.sqrt(whole**2 + lower**2)
    inner = outer * upper / lower
    angle = 2 * mp.pi * lower / outer
    return {
        "slant": outer - inner,
        "inner_radius": inner,
        "outer_radius": outer,
        "angle_deg": mp.degrees(angle),
        "area_mm2": angle / 2 * (outer**2 - inner**2),
    }


def level_line(row):
    hem, chord = row["hem_radius"], row["hem_chord"]
    radius = hem - row["height"]
    half = chord / hem * radius / 2
    # A rounding past half a ring is half a ring.
    inward = mp.sqrt(max(radius**2 - half**2, 0))
    return {
        "radius": radius,
        "chord": 2 * half,
        "sag": radius - inward,
        "length": radius * 2 * mp.atan2(half, inward),
    }


# Gores


def gore(row):
    waist, hip, hem = (row[name] / row["count"] for name in ("waist", "hip", "hem"))
    above = mp.sqrt(((hip - waist) / 2) ** 2 + row["hip_depth"] ** 2)
    skirt = row["length"] - row["hip_depth"]
    below = mp.sqrt(((hem - hip) / 2) ** 2 + skirt**2)
    return {
        "waist_width": waist,
        "hip_width": hip,
        "hem_width": hem,
        "side_length": above + below,
        "flare_deg": mp.degrees(common.asin((hem - hip) / 2 / below)),
        "hem_rise": above + below - row["length"],
        "doubts": common.skirt(row["waist"], row["hip"])
        | common.along_body(row["length"])
        | common.bits(_2=0 < row["hip_depth"] < 50),
    }


def five_gores(row):
    half_waist, half_hip = row["waist"] / 2, row["hip"] / 2
    front, side = half_waist / 4, half_waist / 3
    return {
        "front_waist": front,
        "side_waist": side,
        "back_waist": half_waist - front - side,
        "front_hip": front + INCH,
        "side_hip": side + side / 2,
        "back_hip": half_hip - front - INCH - side - side / 2,
        "doubts": common.skirt(row["waist"], row["hip"]),
    }


def godet(row):
    length, angle = row["length"], row["hem"] / row["length"]
    # Two sides of the same length and the angle between them.
    return {
        "angle_deg": mp.degrees(angle),
        "chord": length * mp.sqrt(2 - 2 * mp.cos(angle)),
        "sagitta": sagitta(length, row["hem"]),
        "added": row["count"] * row["hem"],
    }


# Tiers


def breadths(row):
    each = row["cloth_width"] - 2 * row["allowance"]
    count = max(mp.ceil(row["flat"] / each * (1 - NEARLY)), 1)
    return {"count": count, "round": count * each, "spare": max(count * each - row["flat"], 0)}


def tiers(row):
    ratios = row.items("ratios")
    flats = [row["top"] * mp.fprod(ratios[: k + 1]) for k in range(len(ratios))]
    return {
        "flats": flats,
        "hem": flats[-1],
        "ratio": mp.fprod(ratios),
        "strip": mp.fsum(flats),
        "doubts": functools.reduce(operator.or_, map(common.gathers, ratios)),
    }


def flounce(row):
    cuts = 2 * row["allowance"]
    inner = (row["edge"] / row["rings"] + cuts) / (2 * mp.pi)
    outer = inner + row["depth"]
    hem = row["rings"] * (2 * mp.pi * outer - cuts)
    return {
        "inner_radius": inner,
        "outer_radius": outer,
        "hem": hem,
        "ratio": hem / row["edge"],
        "square": 2 * outer,
    }


def wrap_skirt(row):
    waist, hip, overlap = row["waist"], row["hip"], row["overlap"]
    return {
        "back_waist": waist / 2,
        "back_hip": hip / 2,
        "front_waist": (waist / 2 + overlap) / 2,
        "front_hip": (hip / 2 + overlap) / 2,
        "waist_edge": waist + overlap,
        "wrap_pct": 100 * (overlap / 2) / (waist / 4),
        "doubts": common.skirt(waist, hip),
    }


FUNCTIONS = (
    double_dart,
    dart_from_gape,
    dart_width_at,
    dart_equivalent,
    arc_from_rise,
    frustum,
    level_line,
    gore,
    five_gores,
    godet,
    breadths,
    tiers,
    flounce,
    wrap_skirt,
)

if __name__ == "__main__":
    sys.exit(common.main(*FUNCTIONS))
