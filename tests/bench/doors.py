"""Times the Python door against NumPy and plain Python, and prints figures as JSON.

Each function is timed in turn with its peer, many times over; what counts is the median of the
processor's time. Peers check ranges as a careful user would: an array at once, a number alone.
"""

import json
import math
import statistics
import time
from collections import namedtuple

import numpy as np
import recloth
from recloth import ufuncs

ROWS = 1_000_000
CALLS = 20_000
REPEATS = 15

# name; the answer timed (None: the one number); ranges of the arguments; where their values are drawn; a call as it is
# typed; all answers, by `m`, which is numpy or math; that answer alone.
Case = namedtuple("Case", "name field ranges drawn typed every one")


def hem_length(m, waist, length, fraction):
    turn = math.tau * fraction
    return turn * (waist / turn + length)


def circle_skirt(m, waist, length, fraction):
    turn = math.tau * fraction
    waist_radius = waist / turn
    hem_radius = waist_radius + length
    return waist_radius, hem_radius, turn * hem_radius


def cloth_mass(m, length, width, gsm):
    return length * width * gsm / 1e6


def leg(m, intake, length):
    return m.hypot(intake / 2, length)


def dart(m, intake, length):
    return m.hypot(intake / 2, length), m.degrees(2 * m.atan2(intake / 2, length))


def k_over_s(m, reflectance):
    return (1 - reflectance) ** 2 / (2 * reflectance)


def outer_radius(m, lower, upper, height):
    taper = lower - upper
    return lower * m.hypot(taper / 2, height) / taper


def frustum(m, lower, upper, height):
    taper = lower - upper
    slant = m.hypot(taper / 2, height)
    return (
        slant,
        upper * slant / taper,
        lower * slant / taper,
        180 * taper / slant,
        math.pi * (lower + upper) / 2 * slant,
    )


def arc_length(m, chord, rise):
    half = chord / 2
    return (half * half + rise * rise) / (2 * rise) * (4 * m.atan2(rise, half))


def arc_from_rise(m, chord, rise):
    half = chord / 2
    radius = (half * half + rise * rise) / (2 * rise)
    angle = 4 * m.atan2(rise, half)
    return radius, radius * angle, m.degrees(angle)


def chord(m, length, hem, count):
    return 2 * length * m.sin(hem / length / 2)


def godet(m, length, hem, count):
    angle = hem / length
    sine = m.sin(angle / 4)
    return m.degrees(angle), 2 * length * m.sin(angle / 2), 2 * length * sine * sine, hem * count


def lightness(m, red, green, blue):
    def light(level):
        share = level / 255
        return m.where(share <= 0.04045, share / 12.92, ((share + 0.055) / 1.055) ** 2.4)

    y = 0.2126 * light(red) + 0.7152 * light(green) + 0.0722 * light(blue)
    root = m.where(y > (6 / 29) ** 3, m.cbrt(y), (y * (29 / 3) ** 3 + 16) / 116)
    return 116 * root - 16


LONG = (1, 1e5)
LEVEL = (0, 255)
CASES = [
    Case("circle_skirt", "hem_length", [LONG, (0, 1e5), (0.01, 4)],
         [(500, 1200), (300, 1000), (0.25, 2)], (710, 600, 0.5), circle_skirt, hem_length),
    Case("cloth_mass", None, [(0, 1e7), (0, 1e5), (0.1, 1e4)],
         [(300, 3000), (700, 1600), (80, 500)], (1800, 1400, 185), cloth_mass, cloth_mass),
    Case("dart", "leg", [(0, 1e4), (1, 1e4)], [(5, 60), (60, 300)], (25.4, 110), dart, leg),
    Case("k_over_s", None, [(1e-3, 1)], [(0.01, 1)], (0.18,), k_over_s, k_over_s),
    Case("frustum", "outer_radius", [LONG, (0, 1e5), (0, 1e5)],
         [(200, 300), (100, 190), (50, 300)], (300, 120, 180), frustum, outer_radius),
    Case("arc_from_rise", "length", [LONG, (0.1, 1e5)],
         [(100, 900), (5, 80)], (317.5, 38.1), arc_from_rise, arc_length),
    Case("godet", "chord", [(1, 1e4), LONG, (1, 64)],
         [(100, 900), (50, 250), (3, 3)], (250, 200.0, 4), godet, chord),
    Case("lab_from_srgb", "l", [LEVEL] * 3, [LEVEL] * 3, None, None, lightness),
]


def check_arrays(arrays, ranges):
    for array, (least, most) in zip(arrays, ranges):
        if not ((array >= least) & (array <= most)).all():
            raise ValueError("out of range")


def check_number(name, value, least, most):
    if not least <= value <= most:
        raise ValueError(f"{name} = {value} is not between {least} and {most}")


def medians(count, *functions):
    """Nanoseconds by `count`, of each; taken in turn, so that what slows one slows all."""
    times = [[] for _ in functions]
    for _ in range(REPEATS):
        for function, taken in zip(functions, times):
            start = time.process_time_ns()
            function()
            taken.append((time.process_time_ns() - start) / count)
    return [statistics.median(taken) for taken in times]


def arrays(case, random):
    """Ours, NumPy and NumPy with checks, a row."""
    given = [random.uniform(least, most, ROWS) for least, most in case.drawn]
    ours = getattr(ufuncs, case.name)
    if case.field is not None:
        ours = getattr(ours, case.field)
    np.testing.assert_allclose(ours(*given), case.one(np, *given), rtol=1e-9)

    def checked():
        check_arrays(given, case.ranges)
        return case.one(np, *given)

    return medians(ROWS, lambda: ours(*given), lambda: case.one(np, *given), checked)


def numbers(case):
    """Ours and plain Python with the same checks, a call."""
    given = case.typed
    ours = getattr(recloth, case.name)
    wanted = case.every(math, *given)
    answer = ours(*given)
    record = None
    if isinstance(answer, tuple):
        # Doubts come last; the peer has none.
        answer = answer[: len(wanted)]
        record = namedtuple("Record", ours(*given)._fields[: len(wanted)])
    np.testing.assert_allclose(answer, wanted, rtol=1e-9)
    names = [f"argument {place}" for place in range(len(given))]

    def peer(*values):
        for name, value, (least, most) in zip(names, values, case.ranges):
            check_number(name, value, least, most)
        got = case.every(math, *values)
        return record(*got) if record else got

    def repeated(function):
        def run():
            for _ in range(CALLS):
                function(*given)

        return run

    return medians(CALLS, repeated(ours), repeated(peer))


def figure(name, ours, peer, what, goal=None):
    return {"name": name, "ours": ours, "peer": peer, "ratio": ours / peer, "unit": "ns",
            "what": what, "goal": goal}


def group(name, rows, what, goal):
    """Their geometric means first, then each."""
    means = [statistics.geometric_mean(values) for values in zip(*[pair for _, pair in rows])]
    yield figure(name, *means, f"{what}, geometric mean of the {len(rows)} below", goal)
    for part, pair in rows:
        yield figure(f"{name} {part}", *pair, what)


def main():
    random = np.random.default_rng(1)
    tables = [(f"{case.name}.{case.field}" if case.field else case.name, arrays(case, random))
              for case in CASES]
    plain = [(name, (ours, peer)) for name, (ours, peer, _) in tables]
    checked = [(name, (ours, peer)) for name, (ours, _, peer) in tables]
    calls = [(case.name, numbers(case)) for case in CASES if case.typed is not None]
    print(json.dumps([
        *group("ufunc_vs_numpy", plain, "a row of 1e6, by NumPy without checks", 0.3),
        *group("ufunc_vs_numpy_checked", checked, "a row of 1e6, by NumPy with range checks", 0.15),
        *group("scalar_vs_python", calls, "a call, by plain Python with range checks", 1.5),
    ]))


if __name__ == "__main__":
    main()
