"""What an installed package must do, where nothing else of the project is: no test tool, no source."""

import pathlib
import pickle
import sys

import numpy as np

import recloth
from recloth import CM, INCH

assert pathlib.Path(recloth.__file__).is_relative_to(sys.prefix), recloth.__file__
passed = 0


def check(there, wanted):
    global passed
    assert there == wanted, f"{there!r} is not {wanted!r}"
    passed += 1


# 710 / (2 pi 0.5) and 600 more, by hand.
skirt = recloth.circle_skirt(71 * CM, 60 * CM, 0.5)
check(round(skirt.waist_radius, 1), 226.0)
check(round(skirt.hem_radius, 1), 826.0)
many = recloth.circle_skirt(np.array([64.0, 71.0]) * CM, 60 * CM, 0.5)
check(many.waist_radius.round(1).tolist(), [203.7, 226.0])
check(recloth.parse_length("28 1/2 in"), 28.5 * INCH)
try:
    recloth.circle_skirt(-1, 600, 0.5)
except recloth.ReclothError as error:
    check(error.argument, "waist")

pocket = recloth.draft.PatchPocket(width=140, depth=160, corner_radius=20).draft().pieces[0]
check(pickle.loads(pickle.dumps(pocket)), pocket)
cut = pocket.cut_line()
check(pickle.loads(pickle.dumps(cut)).bounds, cut.bounds)
cloth = recloth.Panel("skirt back", [(0, 0), (400, 0), (380, 700), (20, 700)])
found = recloth.fit([pocket], [cloth])
check(found.together, "fit")
check(pickle.loads(pickle.dumps(found)).together, "fit")
check("<svg" in pocket._repr_svg_(), True)
print(f"{passed} passed, 0 failed")
