"""Recompute the vectors of what remaking asks: stands and zips, bindings, folded bands, strips and gussets let in, hems let
down, scraps pieced, panels laid with a nap, needles, ease and the parts of a chain.

Where there is more than one way to a number, this takes another than the library: corners drawn and measured, meshes
turned, panels set one beside the other, every choice of scraps. Each family is solved back for every unknown.
"""

import itertools
import sys

import common
from mpmath import mp, mpf
from trade import NEARLY, whole

INCH = mpf("25.4")

# Bits of crates/recloth/src/doubt.rs, written out again.
CLOTH_NARROW = 2**38


def length_chain_shares(row):
    lengths, factors, errors = (row.items(name) for name in ("lengths", "factors", "errors"))
    unknown = int(row["unknown"])

    def solved(lengths, total):
        """The unknown by what is left of the total, every other term taken off."""
        if unknown == len(lengths):
            return sum(f * x for f, x in zip(factors, lengths))
        rest = sum(f * x for i, (f, x) in enumerate(zip(factors, lengths)) if i != unknown)
        return (total - rest) / factors[unknown]

    value = solved(lengths, row["total"])
    full = [value if i == unknown else length for i, length in enumerate(lengths)]
    # Each miss by moving its term and solving again.
    misses = [
        mpf(0) if i == unknown else abs(solved([x + (error if i == j else 0) for j, x in enumerate(lengths)], row["total"]) - value)
        for i, error in enumerate(errors)
    ]
    total_miss = mpf(0) if unknown == len(lengths) else abs(solved(lengths, row["total"] + row["total_error"]) - value)
    moved = misses + [total_miss]
    # The first of those that are equal but for the 50th digit.
    rounded = [mpf(mp.nstr(miss, 30)) for miss in moved]
    largest = rounded.index(max(rounded))
    return {
        "parts": [f * x for f, x in zip(factors, full)],
        "misses": misses,
        "value": value,
        "worst": sum(moved),
        "likely": mp.sqrt(sum(miss**2 for miss in moved)),
        "largest": largest,
        "largest_part": moved[largest],
    }


# Fastenings


def button_stand(row):
    edge = row["diameter"] * row["share"]
    return {"extension": edge, "past_rim": edge - row["diameter"] / 2, "overlap": edge + edge}


def button_for_stand(row):
    # The button whose stand this is.
    diameter = row["extension"] / row["share"]
    assert abs(diameter * row["share"] - row["extension"]) < mpf("1e-40") * row["extension"]
    return {"value": diameter}


def zip_length(row):
    # Places down from the raw edge.
    seam = row["allowance"]
    top, bottom = seam + row["gap"], seam + row["opening"] + row["beyond"]
    step = row["graduation"]
    count = whole((bottom - top) / step * (1 - NEARLY))
    count += count * step < (bottom - top) * (1 - NEARLY)
    return {
        "needed": bottom - top,
        "buy": count * step,
        "shorten": max(count * step - (bottom - top), mpf(0)),
        "top_stop": top,
        "bottom_stop": bottom,
    }


def zip_opening(row):
    # From the seam line: the gap, the zip, and back up what runs on below.
    return {"value": row["gap"] + row["zip"] - row["beyond"]}


# Bindings and bands


def binding_length(row):
    return {"value": sum([row["corner"]] * int(row["corners"]), row["edge"] + row["finish"])}


def curved_binding(row):
    radius, finished = row["radius"], row["finished"]
    angle = row["edge"] / radius
    seam = angle * (radius + finished if row.text("curve") == "inward" else radius - finished)
    # A square mesh stood on its corner: pulled along, its side stays and its other diagonal follows.
    along = mp.sqrt(2) * seam / row["edge"]
    across = 2 * mp.sqrt(1 - (along / 2) ** 2)
    return {
        "seam": seam,
        "stretch_pct": 100 * (seam - row["edge"]) / row["edge"],
        "width_pct": 100 * across / mp.sqrt(2),
    }


def folded_band(row):
    # Lines down from the outer raw edge: seam, start and end of the turn, inner seam, inner raw edge.
    seam = row["allowance"]
    turn = (seam + row["depth"], seam + row["depth"] + row["turn"])
    fold = sum(turn) / 2
    end = turn[1] + row["depth"] + row["allowance"] + row["past"]
    return {"cut_width": end, "fold_line": fold, "inner": end - fold}


# Letting in and letting down


def insert_strip(row):
    strips = int(row["strips"])
    lost = {"seam": 0, "slash": 1}[row.text("place")]
    allowance = row["allowance"]
    # A garment of 1000, slashed, loses an allowance at both new edges of each slash; what it must come to less what is
    # left is shown by the strips.
    left = 1000 - strips * 2 * lost * allowance
    finished = (1000 + row["lacking"] - left) / strips
    cut = finished + 2 * allowance
    # Sewn in, the garment gains what was lacking.
    assert abs(strips * (cut - 2 * allowance - 2 * lost * allowance) - row["lacking"]) < mpf("1e-30")
    return {"finished": finished, "cut_width": cut, "cloth": sum([cut] * strips)}


def hem_let_down(row):
    # Heights above the raw edge of the old hem, opened out.
    old_edge = row["hem_depth"] + row["turn_in"]
    new_edge = old_edge - row["lowered_by"]
    return {
        "left": new_edge,
        "crease": old_edge - new_edge,
        "stitching": old_edge + row["hem_depth"] - new_edge,
        "longest": max(old_edge - row["keep"], mpf(0)),
        "longest_faced": max(old_edge - row["seam"], mpf(0)),
    }


def gusset(row):
    # Drawn: the four corners, each side moved out by the allowance, and the moved sides crossed again.
    half = row["added"] / 2
    reach = mp.sqrt(row["slit"] ** 2 - half**2)
    corners = [mp.mpc(reach, 0), mp.mpc(0, half), mp.mpc(-reach, 0), mp.mpc(0, -half)]
    moved = []
    for start, end in zip(corners, corners[1:] + corners[:1]):
        along = (end - start) / abs(end - start)
        moved.append((start - mp.mpc(0, 1) * along * row["allowance"], along))
    cut = []
    for (p, u), (q, v) in zip(moved[-1:] + moved[:-1], moved):
        # p + s u = q + t v
        s = ((q - p).real * v.imag - (q - p).imag * v.real) / (u.real * v.imag - u.imag * v.real)
        cut.append(p + s * u)
    return {
        "angle_deg": mp.degrees(2 * mp.asin(half / row["slit"])),
        "long_diagonal": abs(corners[0] - corners[2]),
        "cut_long": abs(cut[0] - cut[2]),
        "cut_short": abs(cut[1] - cut[3]),
    }


def pieced_length(row):
    lengths, join = row.items("lengths"), 2 * row["allowance"]

    def joined(scraps):
        return sum(scraps) - join * (len(scraps) - 1)

    reach = [
        count
        for count in range(1, len(lengths) + 1)
        if count in (1, len(lengths)) or len(lengths) <= 12
        if max(joined(choice) for choice in itertools.combinations(lengths, count)) > row["needed"] - mpf("1e-9")
    ]
    return {
        "joined": joined(lengths),
        "spare": joined(lengths) - row["needed"],
        "joins": len(lengths) - 1,
        "fewest": min(reach, default=0),
    }


def nap_layout(row):
    wide, narrow, count, width = row["wide"], row["narrow"], int(row["count"]), row["cloth_width"]
    room = width * (1 + NEARLY)

    def turned(number):
        """Extent across of so many panels, every other turned: each set against the slant of the one before."""
        low = high = mpf(0)
        extent = mpf(0)
        for index in range(number):
            below, above = (wide, narrow) if index % 2 == 0 else (narrow, wide)
            # The middle of the panel lies so that its left edge meets the last one's right edge at both ends.
            middle = max(low + below / 2, high + above / 2) if index else wide / 2
            low, high = middle + below / 2, middle + above / 2
            extent = max(low, high)
        return extent

    def most(extent):
        number = 1
        while extent(number + 1) <= room:
            number += 1
        return number

    def length(across):
        return row["length"] * -(-count // across)

    one_way, both = most(lambda number: number * wide), most(turned)
    return {
        "across_one_way": one_way,
        "across_turned": both,
        "length_one_way": length(one_way),
        "length_turned": length(both),
        "nap_extra": length(one_way) - length(both),
        "doubts": CLOTH_NARROW if width < 200 else 0,
    }


# Tables


def needle_metric(row):
    # A step of the US scale is five of the metric one; they meet at 8 and 60.
    return {"value": mpf(60 + sum(5 for _ in range(8, int(row["us_size"]))))}


def needle_blade(row):
    blade = row["metric"] * mpf("0.01")
    return {"blade": blade, "thread": blade * 40 / 100}


def wearing_ease(row):
    """Every author's figures in inches; low and high are theirs."""
    authors = {
        "bust": [(1.5, 2), (2.5, 2.5), (2, 3)],
        "dress_waist": [(0.75, 1), (1, 1), (1, 2)],
        "skirt_waist": [(0.5, 0.75)],
        "hip": [(2, 2.75), (3, 3), (2, 3)],
        "shirt_chest": [(1.5, 2.5), (3, 3)],
    }[row.text("place")]
    low, high = min(low for low, _ in authors) * INCH, max(high for _, high in authors) * INCH
    return {"low": low, "high": high, "garment_low": low + row["body"], "garment_high": high + row["body"], "doubts": common.trunk(row["body"])}


if __name__ == "__main__":
    sys.exit(
        common.main(
            length_chain_shares,
            button_stand,
            button_for_stand,
            zip_length,
            zip_opening,
            binding_length,
            curved_binding,
            folded_band,
            insert_strip,
            hem_let_down,
            gusset,
            pieced_length,
            nap_layout,
            needle_metric,
            needle_blade,
            wearing_ease,
        )
    )
