"""The arithmetic and geometry of remaking clothes.

Lengths are plain floats in millimetres, in and out; anything else carries its unit in its name.
Every function of numbers also takes arrays. ``recloth.ufuncs`` has each answer as a NumPy ufunc.
Shapes are immutable: a :class:`Piece` of :class:`Edge`, the panels there are, and lays of both.

>>> import recloth
>>> skirt = recloth.circle_skirt(71 * recloth.CM, 60 * recloth.CM, fraction=0.5)
>>> round(skirt.waist_radius, 1)
226.0
"""

import math

from . import _numbers, draft, ufuncs
from ._core import (
    CutLine,
    Fit,
    Panel,
    PanelRectangle,
    Piece,
    Plan,
    StripLay,
    UsablePanel,
    UsablePart,
    __version__,
    caution_text,
    check,
    doubt_text,
    fit,
    fullest,
    largest,
    largest_rectangle,
    least_change,
    leftovers,
    longest,
    measured_edge,
    opened_edge,
    placed,
    plan,
    strip,
    tallest_rectangle,
    true_up,
    usable_panel,
)
from ._changes import *  # noqa: F403
from ._changes import __all__ as _change_names
from ._errors import BriefError, ReclothError
from ._functions import *  # noqa: F403
from ._functions import __all__ as _function_names
from ._reasons import reasons
from ._shapes import *  # noqa: F403
from ._shapes import __all__ as _shape_names

#: One millimetre, the unit of every length.
MM = 1.0
#: One centimetre in millimetres.
CM = 10.0
#: One metre in millimetres.
M = 1000.0
#: One inch in millimetres.
INCH = 25.4
#: One foot in millimetres.
FOOT = 304.8
#: One yard in millimetres.
YARD = 914.4


def doubts(bits):
    """The sentences of a set of doubts, as a result carries them."""
    return _sentences("doubts", bits, doubt_text)


def cautions(bits):
    """The sentences of a set of cautions, as a result carries them."""
    return _sentences("cautions", bits, caution_text)


def _sentences(function, bits, text):
    bits = _numbers.whole(bits, function, "bits", 2**64 - 1)
    found = [text(1 << place) for place in range(64) if bits >> place & 1]
    if None in found:
        nan = math.nan
        what = f"bits = {bits} is no set of {function}"
        raise ReclothError(function, "Invalid", -23, "bits", float(bits), nan, nan, None, what)
    return found


__all__ = [
    "CM",
    "FOOT",
    "INCH",
    "M",
    "MM",
    "YARD",
    "BriefError",
    "CutLine",
    "Fit",
    "Panel",
    "PanelRectangle",
    "Piece",
    "Plan",
    "ReclothError",
    "StripLay",
    "UsablePanel",
    "UsablePart",
    "__version__",
    "caution_text",
    "cautions",
    "check",
    "doubt_text",
    "doubts",
    "draft",
    "fit",
    "fullest",
    "largest",
    "largest_rectangle",
    "least_change",
    "leftovers",
    "longest",
    "measured_edge",
    "opened_edge",
    "placed",
    "plan",
    "reasons",
    "strip",
    "tallest_rectangle",
    "true_up",
    "ufuncs",
    "usable_panel",
    *_change_names,
    *_function_names,
    *_shape_names,
]
