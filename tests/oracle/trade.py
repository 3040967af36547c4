"""Recompute the vectors of darts, skirts, bands, openings, fullness, bias, closures, linings, cloth and baths.

Where there is more than one way to a number, this takes another than the library: a chord for a tangent, a search for
a formula, the corners of a shape for its width.
"""

import sys

import common
from mpmath import mp, mpf

# Bits of crates/recloth/src/doubt.rs, written out again.
DART_WIDE, DART_LONG, DARTS_CLOSE, DART_IN_STAND, DART_OFF_PANEL = (2**bit for bit in range(12, 17))
BAND_FLARED, _, PLEATS_OVERLAP, HOLE_NEAR_SEAM, PITCH_UNEVEN = (2**bit for bit in range(17, 22))
CLOTH_GROWS, CHANGE_LARGE, LINING_SHOWS, OWF_LARGE, BATH_RATIO = (2**bit for bit in range(22, 27))
LOOP_LOOSE, LOOP_TIGHT = (2**bit for bit in range(27, 29))
PERCENT_SMALL, _, MASS_SMALL = (2**bit for bit in range(33, 36))
LABEL_FIRST, POWDER, HOT_BATH, ELASTIC_BATH = (2**bit for bit in range(4))

# A whole number missed by less than this is the rounding of lengths given in inches.
NEARLY = mpf("1e-11")

DUST = common.DUST


def whole(number):
    """The whole part, where a number a rounding short of whole counts as whole."""
    return mp.floor(number * (1 + NEARLY))


# Darts


def legs(intake, length):
    leg = mp.sqrt(intake**2 / 4 + length**2)
    return leg, mp.degrees(2 * common.asin(intake / (2 * leg)))


def flat(intake, length):
    return common.bits(_42=intake > length + DUST)


def dart(row):
    leg, angle = legs(row["intake"], row["length"])
    return {"leg": leg, "angle_deg": angle, "doubts": flat(row["intake"], row["length"])}


def dart_in_panel(row):
    surplus = row["panel_width"] - row["wanted_width"]
    each = min(surplus / row["count"], row["largest_intake"])
    leg, kink = legs(each, row["length"])
    doubts = DART_WIDE * (each > 32 + DUST) + DART_LONG * (row["length"] > 178)
    doubts += flat(each, row["length"]) + DARTS_CLOSE * (row["count"] > 1 and row["wanted_width"] < (25 - DUST) * (row["count"] + 1))
    leftover = surplus - row["count"] * each
    leftover = leftover if leftover > DUST else mpf(0)
    return {"intake_each": each, "leftover": leftover, "leg": leg, "kink_deg": kink, "doubts": doubts}


def dart_turned(row):
    half_angle = common.asin(row["intake"] / (2 * row["leg"]))
    return {"value": 2 * row["new_leg"] * mp.sin(half_angle)}


# Skirts


def skirt_doubts(waist, length):
    return common.trunk(waist) | (common.along_body(length) if length > DUST else 0)


def circle_skirt(row):
    radius = row["waist"] / (2 * mp.pi * row["fraction"])
    hem = radius + row["length"]
    return {
        "waist_radius": radius,
        "hem_radius": hem,
        "hem_length": 2 * mp.pi * row["fraction"] * hem,
        "doubts": skirt_doubts(row["waist"], row["length"]),
    }


def extent(angle, inner, outer):
    """Width and length of cloth under a sector of a ring, from its corners and from the arcs' furthest points."""
    quarter = mp.pi / 2
    start = mpf(0) if angle <= mp.pi else quarter - angle / 2
    turns = [start, start + angle] + [k * quarter for k in range(-4, 5) if start < k * quarter < start + angle]
    points = [(r * mp.cos(t), r * mp.sin(t)) for t in turns for r in (inner, outer)]
    xs, ys = zip(*points)
    return max(ys) - min(ys), max(xs) - min(xs)


def on_cloth(waist, length, fraction, pieces, cloth_width):
    inner = waist / (2 * mp.pi * fraction)
    outer = inner + length
    angle = 2 * mp.pi * fraction / pieces
    return {
        "fraction": fraction,
        "length": length,
        "waist_radius": inner,
        "hem_radius": outer,
        "hem_length": waist + 2 * mp.pi * fraction * length,
        "piece_angle_deg": 360 * fraction / pieces,
        "cloth_length": extent(angle, inner, outer)[1],
        "doubts": skirt_doubts(waist, length) | common.bits(_38=cloth_width < 200),
    }


def circle_skirt_longest(row):
    waist, fraction, pieces = row["waist"], row["fraction"], row["pieces"]
    angle = 2 * mp.pi * fraction / pieces
    inner = waist / (2 * mp.pi * fraction)
    outer = row["cloth_width"] / extent(angle, mpf(0), mpf(1))[0]
    return on_cloth(waist, outer - inner, fraction, pieces, row["cloth_width"])


def circle_skirt_fraction(row):
    waist, length, pieces = row["waist"], row["length"], row["pieces"]

    def fits(fraction):
        inner = waist / (2 * mp.pi * fraction)
        return extent(2 * mp.pi * fraction / pieces, inner, inner + length)[0] <= row["cloth_width"]

    fullest = min(pieces, mpf(4))
    bad, good = None, fullest
    while not fits(good):
        bad, good = good, good - fullest / 2000
        if good < mpf("0.01"):
            raise ValueError("no fraction fits: the row must have the status of NoSolution")
    for _ in range(0 if bad is None else 150):
        middle = (good + bad) / 2
        good, bad = (middle, bad) if fits(middle) else (good, middle)
    return on_cloth(waist, length, good, pieces, row["cloth_width"])


# Bands


def straight_band(row):
    folded = row.text("make") == "folded"
    edges = 2 * row["allowance"]
    return {
        "cut_length": row["waist"] + row["overlap"] + edges,
        "cut_width": row["depth"] * (2 if folded else 1) + row["turn"] + edges,
        "strips": 1 if folded else 2,
        "doubts": common.trunk(row["waist"]),
    }


def straight_band_depth(row):
    left = row["cut_width"] - row["turn"] - 2 * row["allowance"]
    return {"value": left / 2 if row.text("make") == "folded" else left}


def ring(lower, upper, depth):
    """Radii and angle of the ring whose arcs are so long: the radii are as the arcs, `depth` apart."""
    ratio = upper / lower
    outer = depth / (1 - ratio)
    return ratio * outer, outer, mp.degrees(lower / outer)


def sagitta(radius, arc):
    return radius * (1 - mp.cos(arc / (2 * radius)))


def shaped_band(row):
    inner, outer, angle = ring(row["lower"], row["upper"], row["depth"])
    return {
        "inner_radius": inner,
        "outer_radius": outer,
        "angle_deg": angle,
        "sagitta": sagitta(outer, row["lower"]),
        "area_mm2": mp.radians(angle) * (outer**2 - inner**2) / 2,
    }


def sectioned_band(row):
    lengths = row.items("lengths")
    slanted = [[True, True] for _ in lengths]
    slanted[0][0] = row.text("ends") not in ("first", "both")
    slanted[-1][1] = row.text("ends") not in ("last", "both")
    count = sum(sum(pair) for pair in slanted)
    lost = mp.fsum(lengths) - row["top"]
    slant = lost / count if count and abs(lost) > DUST else mpf(0)
    angle = mp.degrees(mp.atan(slant / row["depth"]))
    return {
        "tops": [length - slant * sum(pair) for length, pair in zip(lengths, slanted)],
        "slant": slant,
        "end_angle_deg": angle,
        "join_kink_deg": 2 * angle if len(lengths) > 1 else mpf(0),
        "doubts": BAND_FLARED * (slant < 0),
    }


def curved_band(row):
    lengths = row.items("lengths")
    inner, outer, angle = ring(mp.fsum(lengths), row["top"], row["depth"])
    return {
        "tops": [length * inner / outer for length in lengths],
        "inner_radius": inner,
        "outer_radius": outer,
        "angle_deg": angle,
        "sagitta": sagitta(outer, max(lengths)),
    }


# Openings


def off_centre_opening(row):
    stand = row["extension"]
    narrow = (row["front"] - 2 * row["shift"]) / 2 + row["allowance"]
    wide = (row["front"] + 2 * row["shift"]) / 2 + row["allowance"]
    dart = row["dart_distance"] - row["shift"]
    off = dart + stand <= DUST
    in_stand = not off and dart < stand - DUST
    return {
        "narrow_to_line": narrow,
        "wide_to_line": wide,
        "narrow_cut": narrow + stand,
        "wide_cut": wide + stand,
        "largest_shift": row["wide_panel"] - wide + row["shift"],
        "dart_to_narrow": dart,
        "dart_to_wide": dart + 2 * row["shift"],
        "doubts": DART_OFF_PANEL * off + DART_IN_STAND * in_stand + common.bits(_2=row["front"] < 100),
    }


# Fullness


def gathered(flat, finished):
    ratio = flat / finished
    return {"flat": flat, "taken_up": flat - finished, "ratio": ratio, "doubts": common.gathers(ratio)}


def gathers(row):
    return gathered(row["finished"] * row["ratio"], row["finished"])


def gather_ratio(row):
    return gathered(row["flat"], row["finished"])


def pleated(flat, finished, count):
    intake = (flat - finished) / count
    return {
        "flat": flat,
        "finished": finished,
        "count": count,
        "show": finished / count,
        "depth": intake / 2,
        "intake": intake,
        "taken_up": flat - finished,
        "ratio": flat / finished,
        "doubts": PLEATS_OVERLAP * (intake / 2 > finished / count * (1 + mpf("1e-9"))),
    }


def knife_pleats(row):
    return pleated(row["finished"] + row["count"] * 2 * row["depth"], row["finished"], row["count"])


def knife_pleats_depth(row):
    return pleated(row["flat"], row["finished"], row["count"])


def knife_pleats_count(row):
    count = whole((row["flat"] - row["finished"]) / (2 * row["depth"]))
    return pleated(row["flat"], row["finished"], count)


def knife_pleats_finished(row):
    return pleated(row["flat"], row["flat"] - row["count"] * 2 * row["depth"], row["count"])


# Bias


def bias_along_selvedge(row):
    return {"value": row["width"] / mp.sin(mp.pi / 4)}


def bias_square(row):
    return {"value": mp.sqrt(row["length"]) * mp.sqrt(row["width"])}


def bias_strip_length(row):
    return {"value": row["side"] ** 2 / row["width"]}


def binding_width(row):
    layers = 1 if row.text("fold") == "single" else 2
    turns = 2 if layers == 1 else 1
    return {"value": layers * (2 * row["finished"] + turns * row["turn"] + row["thickness"])}


def binding_strips(row):
    count = 1
    while count * row["strip"] - (count - 1) * row["join"] < row["length"] * (1 - NEARLY):
        count += 1
    joined = count * row["strip"] - (count - 1) * row["join"]
    return {"count": count, "spare": max(joined - row["length"], 0)}


# Closures


def buttonhole(row):
    return {"value": row["diameter"] + row["thickness"] + row["ease"]}


def button_for_hole(row):
    return {"diameter": row["slit"] - row["thickness"], "creep": row["slit"] / 2 - row["start"]}


def holes_left(row):
    steps = whole(max(row["edge"] - row["first"], 0) / row["pitch"])
    last = row["first"] + steps * row["pitch"]
    to_end = row["edge"] - last
    return {"count": steps + 1, "last": last, "to_end": to_end, "doubts": HOLE_NEAR_SEAM * (to_end < 12 - DUST)}


def even_spacing(row):
    return {"value": (row["last"] - row["first"]) / (row["count"] - 1)}


def spacing_through(row):
    first, last, through, steps = row["first"], row["last"], row["through"], int(row["count"]) - 1

    def pitches(before):
        return (through - first) / before, (last - through) / (steps - before)

    # `min` keeps the first of equals: fewer before.
    before = min(range(1, steps), key=lambda k: abs(pitches(k)[0] - pitches(k)[1]))
    above, below = pitches(before)
    return {
        "places": [first + k * above for k in range(before)] + [through + k * below for k in range(steps - before + 1)],
        "pitch_before": above,
        "pitch_after": below,
        "fixed": before,
        "doubts": PITCH_UNEVEN * (abs(above - below) > mpf("3.2") + DUST),
    }


def loop(row):
    ball = row.text("shape") == "ball"
    button = mp.pi * row["diameter"] if ball else 2 * row["diameter"] + 2 * row["thickness"]
    return (button + mp.pi * row["cord"] - row["gap"]) / (1 + row["stretch"])


def loop_slack(row):
    slack = row["length"] - loop(row)
    return {"slack": slack, "doubts": LOOP_LOOSE * (slack > 2 + DUST) + LOOP_TIGHT * (slack < -DUST)}


def button_loop(row):
    visible = loop(row)
    return {"visible": visible, "cut": visible + 2 * row["seam"], "cautions": ELASTIC_BATH * (row["stretch"] > 0)}


# Linings


def lining_length(row):
    straight = row["length"] - row["hem_depth"]
    fold = row["hem_depth"] - row["clearance"]
    # Down past the top of the hem to the fold, and back up again.
    return {
        "seam_to_seam": straight + fold + fold,
        "straight": straight,
        "spare": fold + fold,
        "fold": fold,
        "doubts": common.along_body(row["length"]),
    }


def lining_free_length(row):
    return {"value": row["length"] + row["hem"] - row["clearance"]}


# Cloth


def kept(change_pct):
    return (100 + change_pct) / 100


def change_doubts(change_pct):
    small = PERCENT_SMALL * (0 < abs(change_pct) < 0.2)
    return CLOTH_GROWS * (change_pct > 0) | CHANGE_LARGE * (abs(change_pct) > 15) | small


def dimensional_change(row):
    return {"value": 100 * (row["after"] / row["before"] - 1)}


def cut_for_change(row):
    cut = row["finished"] / kept(row["change_pct"])
    return {"cut": cut, "added": -cut * row["change_pct"] / 100, "doubts": change_doubts(row["change_pct"])}


def shrink_pair(row):
    shell, lining = kept(row["shell_change_pct"]), kept(row["lining_change_pct"])
    below = row["lining"] * lining - row["shell"] * shell
    doubts = change_doubts(row["shell_change_pct"]) | change_doubts(row["lining_change_pct"])
    return {
        "shell_after": row["shell"] * shell,
        "lining_after": row["lining"] * lining,
        "below": below,
        "shell_cut": row["shell"] / shell,
        "lining_cut": row["lining"] / lining,
        "doubts": doubts | LINING_SHOWS * (below > DUST),
    }


# Baths


def owf(row):
    amount = row["mass_g"] / 100 * row["pct"]
    doubts = OWF_LARGE * (row["pct"] > 100) + PERCENT_SMALL * (0 < row["pct"] < 0.1) + MASS_SMALL * (row["mass_g"] < 2)
    return {"amount_g": amount, "doubts": doubts, "cautions": LABEL_FIRST + POWDER}


def bath_volume(row):
    usual = 3 <= row["ratio"] <= 40
    volume = row["ratio"] * row["mass_g"]
    doubts = BATH_RATIO * (not usual) + MASS_SMALL * (row["mass_g"] < 2)
    return {"volume_ml": volume, "doubts": doubts, "cautions": LABEL_FIRST + HOT_BATH}


FUNCTIONS = (
    dart,
    dart_in_panel,
    dart_turned,
    circle_skirt,
    circle_skirt_longest,
    circle_skirt_fraction,
    straight_band,
    straight_band_depth,
    shaped_band,
    sectioned_band,
    curved_band,
    off_centre_opening,
    gathers,
    gather_ratio,
    knife_pleats,
    knife_pleats_depth,
    knife_pleats_count,
    knife_pleats_finished,
    bias_along_selvedge,
    bias_square,
    bias_strip_length,
    binding_width,
    binding_strips,
    buttonhole,
    button_for_hole,
    holes_left,
    even_spacing,
    spacing_through,
    button_loop,
    loop_slack,
    lining_length,
    lining_free_length,
    dimensional_change,
    cut_for_change,
    shrink_pair,
    owf,
    bath_volume,
)

if __name__ == "__main__":
    sys.exit(common.main(*FUNCTIONS))
