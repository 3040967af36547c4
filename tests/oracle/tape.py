"""Recompute the vectors of tape, chains, body measures and panels: texts with rational numbers, the rest by mpmath."""

import itertools
import re
import sys
import unicodedata
from decimal import Decimal
from fractions import Fraction

import common
from mpmath import mp, mpf

INCH = Fraction(254, 10)
# Lengths (mm) nearer to a limit than this are on it.
DUST = mpf("1e-9")
UNITS = {
    "mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000),
    "in": INCH, "ft": 12 * INCH, "yd": 36 * INCH,
    '"': INCH, "″": INCH, "”": INCH, "''": INCH, "'": 12 * INCH, "′": 12 * INCH, "’": 12 * INCH,
}  # fmt: skip
NAMES = {"inch": "in", "inches": "in", "foot": "ft", "feet": "ft", "yard": "yd", "yards": "yd", "yds": "yd"}


def parse_length(row):
    """Taken apart by one regular expression; every part a rational number."""
    text = row.text("text").replace("−", "-").strip()
    sign = -1 if text.startswith("-") else 1
    text = text.lstrip("-")
    total, end = Fraction(0), 0
    term = re.compile(
        r"[\s-]*(?P<whole>[\d.,]*(?:e-?\d+)?)?(?:[\s-]*(?P<top>\d+)[/⁄∕](?P<bottom>\d+)|[\s-]*(?P<sign>[^\W\d_a-zA-Z]|[¼½¾⅐-⅞↉]))?"
        r"\s*(?P<unit>''|[\"″”'′’]|[a-z]+\.?)",
        re.IGNORECASE,
    )
    while end < len(text):
        found = term.match(text, end)
        assert found, (text, end)
        end = found.end()
        whole, top, bottom, part = (found[name] for name in ("whole", "top", "bottom", "sign"))
        # A fraction without a whole number: the expression has taken its numerator's first digits for one.
        if top and whole and not re.search(r"[\s-]", text[found.end("whole") : found.start("top")] or ""):
            whole, top = "", whole + top
        number = Fraction(Decimal(whole.replace(",", "."))) if whole else Fraction(0)
        if top:
            number += Fraction(int(top), int(bottom))
        if part:
            number += Fraction(unicodedata.numeric(part)).limit_denominator(100)
        unit = found["unit"].lower().rstrip(".")
        unit = NAMES.get(unit, unit)
        unit = re.sub(r"^(milli|centi)?met(re|er)s?$", lambda m: {"milli": "mm", "centi": "cm", None: "m"}[m[1]], unit)
        total += number * UNITS[unit]
    total *= sign
    return {"value": mpf(total.numerator) / total.denominator}


def nearest(length, graduation):
    """Whole graduations, from the middle away from zero; the dust of an f64 input is not told from the middle."""
    count = abs(length) / graduation
    return int(count + Fraction(1, 2) + Fraction(1, 10**9))


def reduced(parts, count):
    """Inches and a fraction."""
    whole, part = divmod(count, parts)
    words = [str(whole)] if whole or not part else []
    return " ".join(words + ([str(Fraction(part, parts))] if part else []))


def format_length(row):
    given = float(row.text("length"))
    length, style = Fraction(given), row.text("style")
    sign = "-" if given < 0 else ""
    if style == "exact":
        digits = Decimal(repr(given))
        if given != 0 and abs(given) < 1e-5:
            # One digit before the point: 1.5e-7.
            figures = "".join(map(str, digits.normalize().as_tuple().digits))
            mantissa = figures[0] + ("." + figures[1:] if len(figures) > 1 else "")
            return {"value": f"{sign}{mantissa}e{digits.adjusted()} mm"}
        text = format(digits, "f").removesuffix(".0")
        if re.fullmatch(r"-?\d{1,3}\.\d{3}", text):
            text += "0"
        return {"value": text + " mm"}
    decimal = {"mm": (1, 0, "mm"), "mm_half": (2, 1, "mm"), "cm": (1, 1, "cm"), "metre": (1, 2, "m")}
    base = style.removesuffix("_comma")
    if base in decimal:
        per_mm, places, unit = decimal[base]
        graduation = Fraction(10) if unit == "m" else Fraction(1, per_mm)
        count = nearest(length, graduation)
        size = {"mm": 1, "cm": 10, "m": 1000}[unit]
        value = count * graduation / size
        text = f"{Decimal(value.numerator) / Decimal(value.denominator):.{places}f}"
        if base == "mm_half":
            text = text.removesuffix(".0")
        if style.endswith("_comma"):
            text = text.replace(".", ",")
        return {"value": f"{sign if count else ''}{text} {unit}"}
    parts = {"inch_half": 2, "inch_quarter": 4, "inch_sixteenth": 16, "inch_thirty_second": 32}.get(style, 8)
    count = nearest(length, INCH / parts)
    sign = sign if count else ""
    if style == "inch_mark":
        names = {"1/8": "⅛", "1/4": "¼", "3/8": "⅜", "1/2": "½", "5/8": "⅝", "3/4": "¾", "7/8": "⅞"}
        *whole, last = reduced(parts, count).split(" ")
        return {"value": sign + "".join(whole) + names.get(last, last) + '"'}
    larger = {"foot_eighth": (12, "ft"), "yard_eighth": (36, "yd")}.get(style)
    words = []
    if larger:
        whole, count = divmod(count, larger[0] * parts)
        words = [f"{whole} {larger[1]}"] if whole else []
    if count or not words:
        words.append(reduced(parts, count) + " in")
    return {"value": sign + " ".join(words)}


def whole_graduations(length, graduation):
    """So many graduations, put on a whole or half one where an f64 input is but dust away."""
    count = length / graduation
    half = mp.nint(count * 2) / 2
    return half if abs(count - half) < mpf("1e-9") else count


def round_to(row):
    graduation, way = row["graduation"], row.text("way")
    count = whole_graduations(row["length"], graduation)
    away = mp.sign(count) * mp.floor(abs(count) + mpf(1) / 2)
    whole = {"nearest": away, "up": mp.ceil(count), "down": mp.floor(count)}[way]
    return {"value": whole * graduation}


def round_set(row):
    """All ways to give the missing graduations, the best by (largest loss left, order): no largest-remainder loop."""
    graduation, lengths = row["graduation"], row.items("lengths")
    counts = [whole_graduations(length, graduation) for length in lengths]
    floors = [mp.floor(count) for count in counts]
    lost = [mp.nint((count - floor) * 10**9) for count, floor in zip(counts, floors)]
    total = mp.floor(sum(lost) / mpf(10**9) + mpf(1) / 2) + sum(floors)
    missing = int(total - sum(floors))
    given = max(
        itertools.combinations(range(len(lengths)), missing),
        key=lambda chosen: (sum(lost[index] for index in chosen), [-index for index in chosen]),
    )
    tapes = [(floor + (index in given)) * graduation for index, floor in enumerate(floors)]
    return {
        "tapes": tapes,
        "total": total * graduation,
        "largest_change": max(abs(tape - length) for tape, length in zip(tapes, lengths)),
    }


def button_diameter(row):
    return {"value": row["lines"] * mpf(254) / 10 / 40}


def length_chain(row):
    lengths, factors = row.items("lengths"), row.items("factors")
    # The total is one more term, with a factor of -1, and the whole chain is zero.
    lengths, factors = lengths + [row["total"]], factors + [mpf(-1)]
    unknown = int(row["unknown"])
    sought = factors[unknown]
    terms = [f * x for index, (f, x) in enumerate(zip(factors, lengths)) if index != unknown]
    known = [f for index, f in enumerate(factors) if index != unknown]
    assert -sum(terms) / sought >= -DUST, "a length is not negative: the row should be an error"
    of_lengths = terms if unknown == len(terms) else terms[:-1]
    return {
        "value": -sum(terms) / sought,
        "plus": sum(term for term in of_lengths if term > 0),
        "minus": -sum(term for term in of_lengths if term < 0),
        "worst_per_mm": sum(abs(f) for f in known) / abs(sought),
        "likely_per_mm": mp.norm(known) / abs(sought) if known else mpf(0),
    }


def tolerance_stack(row):
    each = [2 * row["error_each"]] * int(row["seams"])
    return {"worst": sum(each), "likely": mp.norm(each) if each else mpf(0)}


def tolerance_stack_list(row):
    parts = [error * edges for error, edges in zip(row.items("errors"), row.items("edges"))]
    return {
        "worst": sum(parts),
        "likely": mp.norm(parts),
        "largest": mpf(parts.index(max(parts))),
        "largest_part": max(parts),
    }


def third_corner(base, from_start, from_end):
    """By the angle at the start, not by Kahan's product; errors by the derivative of the readings."""
    angle = mp.acos((from_start**2 + base**2 - from_end**2) / (2 * from_start * base))
    along, across = from_start * mp.cos(angle), from_start * mp.sin(angle)
    # d along = (s ds - e de) / base; d across = (s ds - along d along) / across.
    along_parts = from_start / base, -from_end / base
    across_parts = (from_start - along * along_parts[0]) / across, -along * along_parts[1] / across
    return along, across, sum(map(abs, along_parts)), sum(map(abs, across_parts))


def triangle_doubts(along_per_mm, across_per_mm):
    return (256 if across_per_mm > 5 + DUST else 0) | (512 if along_per_mm > 5 + DUST else 0)


def trilaterate(row):
    along, across, along_per_mm, across_per_mm = third_corner(row["base"], row["from_start"], row["from_end"])
    return {
        "along": along,
        "across": across,
        "along_per_mm": along_per_mm,
        "across_per_mm": across_per_mm,
        "doubts": triangle_doubts(along_per_mm, across_per_mm),
    }


def panel_by_triangles(row):
    """Corners as complex numbers; the area by triangles from the middle of all corners, not from the origin."""
    corners = [mp.mpc(0), mp.mpc(row["base"])]
    doubts, weakest = 0, (2, mpf(0))
    lists = [row.items(name) for name in ("starts", "ends", "from_start", "from_end", "sides")]
    for start, end, from_start, from_end, side in zip(*lists):
        start, end = corners[int(start)], corners[int(end)]
        base = end - start
        along, across, along_per_mm, across_per_mm = third_corner(abs(base), from_start, from_end)
        per_mm = max(along_per_mm, across_per_mm)
        if per_mm > weakest[1]:
            weakest = (len(corners), per_mm)
        doubts |= triangle_doubts(along_per_mm, across_per_mm)
        corners.append(start + base / abs(base) * mp.mpc(along, across if side == 0 else -across))
    spares = list(zip(*(row.items(name) for name in ("spare_starts", "spare_ends", "spare_readings"))))
    misfits = [abs(corners[int(a)] - corners[int(b)]) - reading for a, b, reading in spares]
    if any(abs(misfit) > reading / 200 for misfit, (_, _, reading) in zip(misfits, spares)):
        doubts |= 1024
    middle = sum(corners) / len(corners)
    ring = list(zip(corners, corners[1:] + corners[:1]))
    return {
        "along": [mp.re(corner) for corner in corners],
        "across": [mp.im(corner) for corner in corners],
        "misfits": misfits,
        "area": abs(sum(mp.im(mp.conj(a - middle) * (b - middle)) for a, b in ring)) / 2,
        "perimeter": sum(abs(b - a) for a, b in ring),
        "largest_misfit": max(map(abs, misfits), default=mpf(0)),
        "weakest_corner": mpf(weakest[0]),
        "weakest_per_mm": weakest[1],
        "doubts": doubts,
    }


def share(row):
    return {"value": (row["girth"] + row["ease"]) / row["parts"]}


def remaining_width(row):
    left = row["girth"] + row["ease"] - row["other_width"]
    return {"value": left / row["parts"] + row["intake"]}


def girth_doubts(row):
    return {"value": (1 if row["girth"] < 300 else 0) + (2 if row["girth"] > 2000 else 0)}


def body_length_doubts(row):
    return {"value": (4 if row["length"] < 100 else 0) + (8 if row["length"] > 2000 else 0)}


def waist_hip_doubts(row):
    more = row["hip"] - row["waist"]
    return {"value": 16 if more < 0 else 32 if more > 450 + DUST else 0}


def front_back_doubts(row):
    small, large = sorted((row["front"], row["back"]))
    return {"value": 64 if large - mpf("1.5") * small > DUST else 0}


def neck_bust_doubts(row):
    return {"value": 128 if 2 * row["neck"] > row["bust"] else 0}


if __name__ == "__main__":
    sys.exit(
        common.main(
            parse_length,
            format_length,
            round_to,
            round_set,
            button_diameter,
            length_chain,
            tolerance_stack,
            tolerance_stack_list,
            trilaterate,
            panel_by_triangles,
            share,
            remaining_width,
            girth_doubts,
            body_length_doubts,
            waist_hip_doubts,
            front_back_doubts,
            neck_bust_doubts,
        )
    )
