"""Recompute the vectors of yarn counts, quantity, stretch, washes, colour, baths, bleach and plant dyes by mpmath.

Where there is more than one way to a number, this takes another than the library: logarithms for repeated rinses, a
solver for a depth, complex numbers for hues, brute force for a packing.
"""

import itertools
import sys

import common
from mpmath import mp, mpf

# Bits of crates/recloth/src/doubt.rs, written out again.
CLOTH_GROWS, CHANGE_LARGE, _, OWF_LARGE, BATH_RATIO = (2**bit for bit in range(22, 27))
(STRENGTH_BEYOND_USUAL, HEAT_BEYOND_USUAL, TIME_BEYOND_USUAL, PURITY_UNLIKELY, PERCENT_SMALL, SHARE_LARGE, MASS_SMALL,
 VOLUME_SMALL) = (2**bit for bit in range(29, 37))  # fmt: skip
(LABEL_FIRST, POWDER, HOT_BATH, ELASTIC_BATH, CHLORINE_COLD, CHLORINE_ALONE, SWATCH_FIRST, NEUTRALISER_APART,
 BEYOND_TESTED, BATHS_DIFFER) = (2**bit for bit in range(10))  # fmt: skip
BLEACH = LABEL_FIRST + CHLORINE_COLD + CHLORINE_ALONE + SWATCH_FIRST
NEARLY = mpf("1e-11")

POUND, OUNCE = mpf("453.59237"), mpf("453.59237") / 16
YARD = mpf("0.9144")


# Yarn and stitches


def stitch_length(row):
    return {"value": mpf("25.4") / row["stitches_per_inch"]}


def tex_from_denier(row):
    return {"value": row["denier"] / 9}


def tex_from_cotton_count(row):
    metres_a_gram = row["cotton_count"] * 840 * YARD / POUND
    return {"value": 1000 * row["plies"] / metres_a_gram}


def tex_from_metric_count(row):
    return {"value": 1000 / row["metric_count"] * row["plies"]}


# Quantity


def gsm_from_ounces(row):
    return {"value": row["ounces"] * OUNCE / YARD**2}


def cloth_mass(row):
    return {"value": (row["length"] / 1000) * (row["width"] / 1000) * row["gsm"]}


def width_conversion(row):
    area = row["length"] * row["width"]
    by_area = area / row["new_width"]
    doubts = common.bits(_38=row["width"] < 200 or row["new_width"] < 200)
    return {"by_area": by_area, "low": by_area * 9 / 10, "high": by_area * 112 / 100, "doubts": doubts}


def repeats(row):
    whole = mp.ceil(row["length"] / row["repeat"] * (1 - NEARLY))
    each = whole * row["repeat"]
    total = each * row["count"]
    return {"repeats": whole, "each": each, "total": total, "waste": total - row["length"] * row["count"]}


def cloth_to_buy(row):
    length = row["length"] + row["repeat"] + row["extra"]
    return {"value": row["graduation"] * mp.ceil(length / row["graduation"] * (1 - NEARLY))}


# Stretch and washing


def stretch_pct(row):
    return {"value": 100 * (row["pulled"] / row["relaxed"] - 1)}


def negative_ease(row):
    stretch = row["stretch_pct"] / 100
    girth = mp.findroot(lambda g: g * (1 + row["share"] * stretch) - row["body"], row["body"])
    doubts = common.limb(row["body"]) | common.bits(_33=0 < row["stretch_pct"] < 5)
    return {"girth": girth, "ease": girth - row["body"], "furthest": girth + girth * stretch, "doubts": doubts}


def washes(row):
    times = int(row["washes"])
    logs = []
    doubts = 0
    for wash in range(times):
        change = row["first_pct"] if wash == 0 else row["later_pct"]
        logs.append(mp.log1p(change / 100))
        doubts |= CLOTH_GROWS * (change > 0) | CHANGE_LARGE * (abs(change) > 15)
        doubts |= PERCENT_SMALL * (wash == 0 and 0 < abs(change) < 0.2)
    total = mp.fsum(logs)
    doubts |= CLOTH_GROWS * (total > mpf("1e-40"))
    return {"after": row["length"] * mp.exp(total), "change_pct": 100 * mp.expm1(total), "doubts": doubts}


def skew(row):
    return {"value": 100 * row["shift"] / row["width"]}


def skew_diagonals(row):
    mean = (row["first"] + row["second"]) / 2
    return {"value": 100 * (row["first"] - row["second"]) / mean}


# Colour

TO_XYZ = mp.matrix(
    [["0.4124", "0.3576", "0.1805"], ["0.2126", "0.7152", "0.0722"], ["0.0193", "0.1192", "0.9505"]]
)
D65 = mpf("0.3127"), mpf("0.3290")


def light_of(level):
    c = level / 255
    return c / mpf("12.92") if c <= mpf("0.04045") else ((c + mpf("0.055")) / mpf("1.055")) ** mpf("2.4")


def level_of(light):
    light = min(max(light, 0), 1)
    if light <= mpf("0.0031308"):
        return 255 * mpf("12.92") * light
    return 255 * (mpf("1.055") * light ** (1 / mpf("2.4")) - mpf("0.055"))


def linear_light(row):
    return {"value": light_of(row["level"])}


def screen_level(row):
    return {"value": level_of(row["light"])}


def stimulus(levels):
    return list(TO_XYZ * mp.matrix([light_of(level) for level in levels]))


def white(x, y):
    return [x / y, mpf(1), (1 - x - y) / y]


def lab_of(xyz, chromaticity=D65):
    def f(t):
        return mp.cbrt(t) if t > (mpf(6) / 29) ** 3 else t * (mpf(29) / 6) ** 2 / 3 + mpf(4) / 29

    x, y, z = (f(part / most) for part, most in zip(xyz, white(*chromaticity)))
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def xyz_of(l, a, b):
    def back(t):
        return t**3 if t > mpf(6) / 29 else 3 * (mpf(6) / 29) ** 2 * (t - mpf(4) / 29)

    y = (l + 16) / 116
    return [most * back(t) for most, t in zip(white(*D65), (y + a / 500, y, y - b / 200))]


def levels_of(xyz):
    light = list(mp.lu_solve(TO_XYZ, mp.matrix(xyz)))
    outside = sum(not -1e-9 <= share <= 1 + 1e-9 for share in light)
    return dict(zip(("red", "green", "blue"), map(level_of, light)), outside=outside)


def xyz_from_srgb(row):
    return dict(zip("xyz", stimulus([row["red"], row["green"], row["blue"]])))


def srgb_from_xyz(row):
    return levels_of([row["x"], row["y"], row["z"]])


def lab_from_xyz(row):
    return dict(zip("lab", lab_of([row["x"], row["y"], row["z"]], (row["white_x"], row["white_y"]))))


def xyz_from_lab(row):
    return dict(zip("xyz", xyz_of(row["l"], row["a"], row["b"])))


def lab_from_srgb(row):
    return dict(zip("lab", lab_of(stimulus([row["red"], row["green"], row["blue"]]))))


def srgb_from_lab(row):
    return levels_of(xyz_of(row["l"], row["a"], row["b"]))


def apart(first, second):
    """CIEDE2000 with hues as complex numbers: the mean hue is that of the sum of two unit vectors."""
    (l1, a1, b1), (l2, a2, b2) = first, second

    def g(chroma):
        return mp.sqrt(chroma**7 / (chroma**7 + mpf(25) ** 7))

    stretch = 1 + (1 - g((abs(mp.mpc(a1, b1)) + abs(mp.mpc(a2, b2))) / 2)) / 2
    p1, p2 = mp.mpc(a1 * stretch, b1), mp.mpc(a2 * stretch, b2)
    c1, c2 = abs(p1), abs(p2)
    mean_c, mean_l = (c1 + c2) / 2, (l1 + l2) / 2
    if c1 * c2 == 0:
        hue, mean_h = mpf(0), mp.degrees(mp.arg(p1 + p2)) if p1 + p2 != 0 else mpf(0)
    else:
        turn = mp.arg(p2 / p1)
        h1, h2 = (mp.degrees(mp.arg(p)) % 360 for p in (p1, p2))
        # Opposite hues: the formula takes the mean of the two numbers, whichever side that is.
        if abs(abs(h1 - h2) - 180) < mpf("1e-12"):
            mean_h, turn = (h1 + h2) / 2, mp.radians(h2 - h1)
        else:
            mean_h = mp.degrees(mp.arg(p1 / c1 + p2 / c2))
        hue = 2 * mp.sqrt(c1 * c2) * mp.sin(turn / 2)
    mean_h %= 360

    def cos(degrees):
        return mp.cos(mp.radians(degrees))

    t = 1 - mpf("0.17") * cos(mean_h - 30) + mpf("0.24") * cos(2 * mean_h)
    t += mpf("0.32") * cos(3 * mean_h + 6) - mpf("0.2") * cos(4 * mean_h - 63)
    turned = 60 * mp.exp(-(((mean_h - 275) / 25) ** 2))
    r_t = -2 * g(mean_c) * mp.sin(mp.radians(turned))
    far = (mean_l - 50) ** 2
    dl = (l2 - l1) / (1 + mpf("0.015") * far / mp.sqrt(20 + far))
    dc = (c2 - c1) / (1 + mpf("0.045") * mean_c)
    dh = hue / (1 + mpf("0.015") * mean_c * t)
    return mp.sqrt(dl**2 + dc**2 + dh**2 + r_t * dc * dh)


def ciede2000(row):
    return {"value": apart([row[n] for n in ("l1", "a1", "b1")], [row[n] for n in ("l2", "a2", "b2")])}


# Shade


def depth_of(r):
    return (1 / r + r) / 2 - 1


def back_from(k):
    return 1 + k - mp.sqrt(k**2 + 2 * k)


def grey(r):
    return lab_of([part * r for part in white(*D65)])[0], mpf(0), mpf(0)


def k_over_s(row):
    return {"value": depth_of(row["reflectance"])}


def reflectance(row):
    return {"value": back_from(row["k_over_s"])}


def relative_strength(row):
    return {"value": row["k_over_s"] / row["standard"] * 100}


def overdye(row):
    pale, deep = (back_from(depth_of(row["ground"]) + row[end]) for end in ("low", "high"))
    return {"pale": pale, "deep": deep, "pale_l": grey(pale)[0], "deep_l": grey(deep)[0]}


def cover_mark(row):
    ground, mark = depth_of(row["ground"]), depth_of(row["mark"])

    def shows(k):
        return apart(grey(back_from(ground + k)), grey(back_from(mark + k)))

    depth = mpf(0)
    if shows(depth) > row["limit"]:
        steps = (mpf(index) / 500 for index in range(1, 24500))
        hidden = next(k for k in steps if shows(k) <= row["limit"])
        depth = mp.findroot(lambda k: shows(k) - row["limit"], (hidden - mpf(1) / 500, hidden), solver="anderson")
    return {
        "now": shows(0),
        "depth": depth,
        "ground_after": back_from(ground + depth),
        "mark_after": back_from(mark + depth),
        "after": shows(depth),
    }


# Baths


def bits(**raised):
    """The set of the doubts that are so."""
    return sum(globals()[name] for name, so in raised.items() if so)


def batches(row):
    masses = row.items("masses_g")
    capacity = row["vessel_ml"] * row["fill"] / row["ratio"]
    order = sorted(range(len(masses)), key=lambda index: -masses[index])
    baths, numbers = [], [0] * len(masses)
    for index in order:
        fits = [n for n, load in enumerate(baths) if load + masses[index] <= capacity * (1 + NEARLY)]
        at = fits[0] if fits else len(baths)
        baths[at:] = baths[at:] or [mpf(0)]
        baths[at] += masses[index]
        numbers[index] = mpf(at + 1)
    if len(masses) <= 6:
        # What every sharing out needs at the fewest bounds what was found.
        fewest = min(
            len(set(way))
            for way in itertools.product(range(len(masses)), repeat=len(masses))
            if all(
                sum(m for m, at in zip(masses, way) if at == bath) <= capacity * (1 + NEARLY) for bath in set(way)
            )
        )
        assert fewest <= len(baths)
    return {
        "numbers": numbers,
        "batches": len(baths),
        "least": mp.ceil(mp.fsum(masses) / capacity * (1 - NEARLY)),
        "capacity_g": capacity,
        "heaviest_g": max(baths),
        "doubts": bits(MASS_SMALL=sum(masses) < 2, BATH_RATIO=row["ratio"] < 3 or row["ratio"] > 40),
        "cautions": LABEL_FIRST + HOT_BATH + BATHS_DIFFER * (len(baths) > 1),
    }


def liquor_shares(row):
    masses = row.items("masses_g")
    total = mp.fsum(masses)
    shares = [row["pooled_ml"] * mass / total for mass in masses]
    return {
        "shares_ml": shares,
        "waters_ml": [mass * row["ratio"] - share for mass, share in zip(masses, shares)],
        "bath_ml": total * row["ratio"],
        "water_ml": total * row["ratio"] - row["pooled_ml"],
        "doubts": bits(MASS_SMALL=total < 2, BATH_RATIO=row["ratio"] < 3 or row["ratio"] > 40),
        "cautions": LABEL_FIRST + HOT_BATH + BATHS_DIFFER * (len(masses) > 1),
    }


def pooled_strength(row):
    volumes, strengths = row.items("volumes_ml"), row.items("strengths_pct")
    return {
        "strength_pct": mp.fdot(volumes, strengths) / mp.fsum(volumes),
        "volume_ml": mp.fsum(volumes),
        "cautions": LABEL_FIRST + POWDER + CHLORINE_ALONE,
    }


def mix_temperature(row):
    volumes, temperatures = row.items("volumes_ml"), row.items("temperatures_c")
    heats = [mpf("4.18") * volume for volume in volumes] + [row["goods_heat"] * row["goods_g"]]
    warm = mp.fdot(heats, temperatures + [row["goods_temperature_c"]])
    return {
        "temperature_c": warm / mp.fsum(heats),
        "volume_ml": mp.fsum(volumes),
        "doubts": bits(HEAT_BEYOND_USUAL=row["goods_temperature_c"] > 40, VOLUME_SMALL=mp.fsum(volumes) < 50),
        "cautions": LABEL_FIRST + HOT_BATH,
    }


def carried_liquor(row):
    return {
        "carried_ml": row["mass_g"] * row["pick_up_pct"] / 100,
        "doubts": bits(MASS_SMALL=row["mass_g"] < 2, PERCENT_SMALL=0 < row["pick_up_pct"] < 10),
        "cautions": LABEL_FIRST + HOT_BATH,
    }


def rinses(row):
    def count(carried):
        factor = carried / (carried + row["fresh_ml"])
        times = max(0, int(mp.ceil(mp.log(row["share_left"]) / mp.log(factor) - NEARLY)))
        return times, factor**times

    low, (high, left) = count(row["carried_low_ml"])[0], count(row["carried_high_ml"])
    return {
        "rinses_low": low,
        "rinses_high": high,
        "left": left,
        "water_ml": high * row["fresh_ml"],
        "doubts": bits(VOLUME_SMALL=row["fresh_ml"] < row["carried_high_ml"], SHARE_LARGE=row["share_left"] > 0.5),
        "cautions": LABEL_FIRST + HOT_BATH,
    }


def stock_volume(row):
    amount = row["mass_g"] * row["pct"] / 100
    return {
        "stock_ml": amount / (row["stock_pct"] / 100),
        "amount_g": amount,
        "doubts": bits(
            OWF_LARGE=row["pct"] > 100,
            PERCENT_SMALL=0 < row["pct"] < 0.1 or row["stock_pct"] < 0.05,
            MASS_SMALL=row["mass_g"] < 2,
            STRENGTH_BEYOND_USUAL=row["stock_pct"] > 50,
        ),
        "cautions": LABEL_FIRST + POWDER,
    }


def assistant_volume(row):
    amount = row["mass_g"] / 1000 * row["ratio"] * row["grams"]
    return {
        "stock_ml": amount / (row["stock_pct"] / 100),
        "amount_g": amount,
        "doubts": bits(
            BATH_RATIO=not 3 <= row["ratio"] <= 40,
            MASS_SMALL=row["mass_g"] < 2,
            PERCENT_SMALL=row["stock_pct"] < 0.05,
            STRENGTH_BEYOND_USUAL=row["stock_pct"] > 50 or row["grams"] > 150,
        ),
        "cautions": LABEL_FIRST + POWDER + HOT_BATH,
    }


# Bleach


def available_chlorine(row):
    available = row["naocl_pct"] / mpf("74.442") * mpf("70.906")
    return {
        "available_pct": available,
        "trade_pct": available * row["specific_gravity"],
        "doubts": bits(STRENGTH_BEYOND_USUAL=not 1 <= row["naocl_pct"] <= 15),
        "cautions": BLEACH,
    }


def bleach_dilution(row):
    share = row["target_pct"] / row["stock_pct"]
    return {
        "bleach_ml": row["volume_ml"] * share,
        "water_ml": row["volume_ml"] * (1 - share),
        "parts_water": (1 - share) / share,
        "doubts": bits(
            STRENGTH_BEYOND_USUAL=row["target_pct"] > 0.46 or not 1 <= row["stock_pct"] <= 15,
            TIME_BEYOND_USUAL=row["minutes"] > 30,
            VOLUME_SMALL=row["volume_ml"] < 50,
        ),
        "cautions": BLEACH,
    }


def bleach_time(row):
    times, shades = row.items("times_min"), row.items("shades")
    # Least squares by the normal equations.
    a = mp.matrix([[1, -t] for t in times])
    logs = mp.matrix([mp.log(shade - row["floor"]) for shade in shades])
    start, rate = mp.lu_solve(a.T * a, a.T * logs)
    time = max(mpf(0), (start - mp.log(row["target"] - row["floor"])) / rate)
    return {
        "time_min": time,
        "next_swatch_min": min(time, 2 * times[-1]),
        "rate": rate,
        "doubts": bits(TIME_BEYOND_USUAL=time > 30 or times[-1] > 30),
        "cautions": BLEACH + BEYOND_TESTED * (time > times[-1]),
    }


# Grams for one mole of Cl2, from the elements (IUPAC; sulfur as of 2005, before it was given as an interval).
H, C, O, NA, S = map(mpf, ("1.008", "12.011", "15.999", "22.98976928", "32.065"))
CRYSTALS = 2 * NA + 2 * S + 3 * O + 5 * (2 * H + O)
REACTIONS = {
    "thiosulfate_to_tetrathionate": 2 * CRYSTALS,
    "thiosulfate_to_sulfur": CRYSTALS,
    "thiosulfate_to_sulfate": CRYSTALS / 4,
    "bisulfite": NA + H + S + 3 * O,
    "metabisulfite": (2 * NA + 2 * S + 5 * O) / 2,
    "sulfite": 2 * NA + S + 3 * O,
    "ascorbic_acid": 6 * C + 8 * H + 6 * O,
    "peroxide": 2 * H + 2 * O,
}


def neutraliser(row):
    chlorine = row["carried_ml"] * row["chlorine_pct"] / 100
    ratio = REACTIONS[row.text("reaction")] / (2 * mpf("35.453"))
    return {
        "chlorine_g": chlorine,
        "amount_g": chlorine * ratio * (100 + row["excess_pct"]) / row["purity_pct"],
        "ratio": ratio,
        "doubts": bits(
            STRENGTH_BEYOND_USUAL=row["chlorine_pct"] > 0.1,
            PURITY_UNLIKELY=row["purity_pct"] <= 1 or (row.text("reaction") == "peroxide" and row["purity_pct"] > 50),
            PERCENT_SMALL=0 < row["excess_pct"] < 1,
        ),
        "cautions": LABEL_FIRST + CHLORINE_COLD + CHLORINE_ALONE + NEUTRALISER_APART,
    }


# Plant dyes


def binder_solids(row):
    low, high = (row[end] / (1 + row["parts_water"]) for end in ("low_pct", "high_pct"))
    each = row["pick_up_pct"] / 100 * row["dips"]
    return {
        "bath_low_pct": low,
        "bath_high_pct": high,
        "owf_low_pct": low * each,
        "owf_high_pct": high * each,
        "doubts": bits(
            PERCENT_SMALL=row["pick_up_pct"] < 10 or row["low_pct"] < 0.1,
            STRENGTH_BEYOND_USUAL=row["high_pct"] > 20,
        ),
        "cautions": LABEL_FIRST,
    }


def plant_dyestuff(row):
    goods = row["mass_g"] / 100
    turn = {"dryfresh": 1, "freshdry": -1}.get(row.text("recipe") + row.text("at_hand"), 0)
    wet = sorted((row["fresh_per_dry_low"] ** turn, row["fresh_per_dry_high"] ** turn))
    low, high = goods * row["low_pct"] * wet[0], goods * row["high_pct"] * wet[1]
    return {
        "low_g": low,
        "high_g": high,
        "doubts": bits(
            OWF_LARGE=row.text("at_hand") == "dry" and high > row["mass_g"],
            PERCENT_SMALL=row["low_pct"] < 1,
            MASS_SMALL=row["mass_g"] < 2,
        ),
        "cautions": LABEL_FIRST + POWDER + HOT_BATH,
    }


# Fibres: the published lists, as lists.

NEVER_CHLORINE = {"wool", "silk", "mohair", "leather", "elastane", "acetate", "rubber", "polyamide"}
COLOURS = {
    "direct": ("cotton linen viscose", "wool silk mohair"),
    "reactive": ("cotton linen viscose", "wool silk mohair"),
    "acid": ("wool silk mohair polyamide", ""),
    "vat": ("cotton linen viscose", "wool silk mohair polyamide"),
    "sulphur": ("cotton linen viscose", ""),
    "azoic": ("cotton linen viscose", ""),
    "metal_complex": ("wool mohair polyamide", ""),
    "disperse": ("polyester acetate polyamide", ""),
    "basic": ("acrylic", ""),
    "natural": ("wool silk mohair", "cotton linen viscose polyamide"),
}


def component_check(row):
    fibre, finish, swatch, bath = (row.text(n) for n in ("fibre", "finish", "swatch", "bath"))
    hot, chlorine = row["temperature_c"], bath == "chlorine_bleach"
    if chlorine:
        never = fibre in NEVER_CHLORINE or finish in ("not_fast", "flame_retardant") or swatch == "failed" or hot > 30
        open_question = fibre in ("unknown", "acrylic") or finish in ("unknown", "resin")
        bears = 2 if never or (open_question and swatch != "passed") else 1
        if bears == 1 and (fibre == "polyester" or swatch == "passed"):
            bears = 0
    else:
        limit = {"unknown": 40, "rubber": 60, "elastane": 60, "acetate": 60, "leather": 60}.get(fibre, 100)
        asks = fibre in ("unknown", "wool", "silk", "mohair") or finish != "plain"
        bears = {"failed": 2, "passed": 0}.get(swatch, 2 if hot > limit else int(asks))
    cautions = LABEL_FIRST + HOT_BATH * (hot > 40) + ELASTIC_BATH * (fibre in ("rubber", "elastane"))
    cautions += SWATCH_FIRST * (bears == 1 or chlorine) + (CHLORINE_COLD + CHLORINE_ALONE) * chlorine
    delicate = {"unknown": 40, "rubber": 60, "elastane": 60, "acetate": 60, "leather": 60}
    doubts = bits(
        HEAT_BEYOND_USUAL=hot > (30 if chlorine else delicate.get(fibre, 100)),
        TIME_BEYOND_USUAL=row["minutes"] > 30 if chlorine else hot > 60 and row["minutes"] > 240,
    )
    well, some = COLOURS.get(bath, ("", ""))
    colour = 2 if fibre in well.split() else int(fibre in some.split())
    if bath in COLOURS and fibre in ("unknown", "leather", "rubber", "elastane"):
        colour = 1
    return {"bears": bears, "colour": colour, "doubts": doubts, "cautions": cautions}


FUNCTIONS = (
    stitch_length,
    tex_from_denier,
    tex_from_cotton_count,
    tex_from_metric_count,
    gsm_from_ounces,
    cloth_mass,
    width_conversion,
    repeats,
    cloth_to_buy,
    stretch_pct,
    negative_ease,
    washes,
    skew,
    skew_diagonals,
    linear_light,
    screen_level,
    xyz_from_srgb,
    srgb_from_xyz,
    lab_from_xyz,
    xyz_from_lab,
    lab_from_srgb,
    srgb_from_lab,
    ciede2000,
    k_over_s,
    reflectance,
    relative_strength,
    overdye,
    cover_mark,
    batches,
    liquor_shares,
    pooled_strength,
    mix_temperature,
    carried_liquor,
    rinses,
    stock_volume,
    assistant_volume,
    available_chlorine,
    bleach_dilution,
    bleach_time,
    neutraliser,
    component_check,
    binder_solids,
    plant_dyestuff,
)

if __name__ == "__main__":
    sys.exit(common.main(*FUNCTIONS))
