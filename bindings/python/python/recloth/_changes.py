"""What may give so that all pieces fit, and what is found. All of it is immutable."""

from dataclasses import dataclass

from . import _numbers
from ._shapes import _settle, each, part_list, ring, word

__all__ = ["Change", "Largest", "LeastChange", "Leftover", "Made"]

# What each kind of change is told by.
GIVES = {
    "tilt": ("to_deg",),
    "join": ("across_deg", "start", "end", "allowance"),
    "shorter": ("toward_deg", "beyond", "most"),
    "smaller": ("name", "steps"),
    "instead": ("name", "parts"),
    "fewer": ("by",),
}


@dataclass(frozen=True, slots=True)
class Change:
    """One change that the maker would allow. Directions and lengths are in the axes of the part's outline.

    - ``Change(0, "tilt", to_deg=5)``: the grain may be tilted so far (degrees).
    - ``Change(0, "join", across_deg=90, start=100, end=540, allowance=10)``: a piece may be joined of two halves by a
      seam square to a direction (degrees), at least ``start`` and at most ``end`` along it from the origin; both halves get
      the allowance (mm).
    - ``Change(0, "shorter", toward_deg=90, beyond=500, most=40)``: all corners further than ``beyond`` along a direction
      may move back, by ``most`` at most (mm); shorter, or narrower.
    - ``Change(0, "smaller", name="narrower seam allowance", steps=[(5, outline), ...])``: other outlines, in growing amount
      (mm).
    - ``Change(0, "instead", name="in three sections", parts=[...])``: other parts in place of one piece.
    - ``Change(0, "fewer", by=1)``: so many fewer at most.

    Parameters
    ----------
    part : int                  index of the part that gives
    give : str                  "tilt", "join", "shorter", "smaller", "instead" or "fewer"
    to_deg, across_deg, start, end, allowance, toward_deg, beyond, most, name, steps, parts, by
                                what that kind is told by, and no other
    """

    part: int
    give: str
    to_deg: float | None = None
    across_deg: float | None = None
    start: float | None = None
    end: float | None = None
    allowance: float | None = None
    toward_deg: float | None = None
    beyond: float | None = None
    most: float | None = None
    name: str | None = None
    steps: tuple | None = None
    parts: tuple | None = None
    by: int | None = None

    def __post_init__(self):
        word(self.give, tuple(GIVES), "Change", "give")
        _settle(self, part=_numbers.whole(self.part, "Change", "part"))
        for field in sorted({field for fields in GIVES.values() for field in fields}):
            value = getattr(self, field)
            if field not in GIVES[self.give]:
                if value is not None:
                    raise TypeError(f"Change: {self.give!r} takes {', '.join(GIVES[self.give])}, not {field}")
                continue
            if value is None:
                raise TypeError(f"Change: {self.give!r} wants {field}")
            _settle(self, **{field: _told(field, value)})

    def __repr__(self):
        return f"Change({self.part}, {self.give!r})"


def _told(field, value):
    match field:
        case "name":
            if not isinstance(value, str):
                raise TypeError(f"Change: name must be a text, not {type(value).__name__}")
            return value
        case "steps":
            steps = tuple(value)
            if not all(isinstance(step, (tuple, list)) and len(step) == 2 for step in steps):
                raise TypeError("Change: steps must be pairs (amount, outline)")
            return tuple((_numbers.number(amount, "Change", "steps"), ring(outline, "steps")) for amount, outline in steps)
        case "parts":
            return part_list(value)
        case "by":
            return _numbers.whole(value, "Change", "by")
        case _:
            return _numbers.number(value, "Change", field)


@dataclass(frozen=True, slots=True)
class Made:
    """A change that was made; as text it is a line for the worksheet.

    Parameters
    ----------
    change : int    index in the list of changes
    part : str      name of the part
    give : str      what kind of change
    amount : float  how much: degrees, millimetres, or pieces
    at : float or None
                    where a join's seam lies along the direction across it, from the origin (mm)
    words : str     the whole in words: "band: joined, 240 mm from its end"
    """

    change: int
    part: str
    give: str
    amount: float
    at: float | None
    words: str

    def __str__(self):
        return self.words


@dataclass(frozen=True, slots=True)
class LeastChange:
    """What must give so that all pieces fit; made by ``least_change``.

    Parameters
    ----------
    answer : str            "nothing", "changed", "never" (proved) or "undecided"
    made : tuple of Made    what gives, in the maker's order
    parts : tuple of Part   the parts then: first those given, then halves and replacements; of "never" what stays of them
    fit : Fit or None       how these fit
    why : str or None       what proves that nothing will do
    evaluations : int       how many were made
    out_of_time : bool      whether the time was up before all was tried
    """

    answer: str
    made: tuple
    parts: tuple
    fit: object
    why: str | None
    evaluations: int
    out_of_time: bool = False

    def __repr__(self):
        return f"LeastChange({self.answer!r}, {len(self.made)} made)"

    def __str__(self):
        match self.answer:
            case "changed":
                return "\n".join(made.words for made in self.made)
            case "never":
                return f"never: {self.why}"
            case _:
                return self.answer


@dataclass(frozen=True, slots=True)
class Largest:
    """How large a measure may be; made by ``largest``, ``longest`` and ``fullest``.

    Parameters
    ----------
    value : float or None     the most found to fit, of ``longest`` and ``fullest`` in mm; None where nothing does
    refused : float or None   the least tried that is proved not to
    why : str or None         what proves it
    parts : tuple of Part     the parts at that value
    fit : Fit or None         how they fit
    evaluations : int         how many were made
    out_of_time : bool        whether the time was up before all was tried
    """

    value: float | None
    refused: float | None
    why: str | None
    parts: tuple
    fit: object
    evaluations: int
    out_of_time: bool = False

    def __repr__(self):
        return f"Largest({self.value}, refused {self.refused})"


@dataclass(frozen=True, slots=True)
class Leftover:
    """One connected piece of cloth that a lay leaves; made by ``leftovers``.

    Parameters
    ----------
    panel : int             index of the panel
    outline : tuple         its outline, counter-clockwise (mm)
    holes : tuple           its holes, clockwise (mm)
    area_mm2 : float        its area, without the holes
    rectangles : tuple of PanelRectangle
                            the largest on the straight grain in it, in turn
    """

    panel: int
    outline: tuple
    holes: tuple
    area_mm2: float
    rectangles: tuple

    def __repr__(self):
        return f"Leftover(panel {self.panel}, {self.area_mm2:.0f} mm2)"


def change_list(values):
    """The changes that a maker would allow."""
    return each(Change, values, "changes")
