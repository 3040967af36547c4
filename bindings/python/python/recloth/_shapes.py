"""Plain data that pieces, panels and lays are described by. All of it is immutable.

Points are (x, y) in millimetres, y up; a list of points is anything of shape (n, 2).
"""

import math
from dataclasses import dataclass

import numpy as np

from . import _numbers
from ._errors import ReclothError

__all__ = [
    "Answer",
    "ButtonholeMark",
    "Copied",
    "CornerReading",
    "CutNotch",
    "CutSegment",
    "CutoutMark",
    "DartMark",
    "DartMouth",
    "DrillMark",
    "Edge",
    "Flaw",
    "Fold",
    "Joined",
    "LineMark",
    "Lined",
    "LiningSeam",
    "MatchPoint",
    "Notch",
    "NotchMatch",
    "Opening",
    "PairedNotch",
    "Part",
    "Place",
    "Placement",
    "Repeat",
    "SeamEnd",
    "Slash",
    "Spare",
    "Strip",
    "Symmetry",
    "TruedEdge",
    "TruedUp",
    "Unplaced",
    "Walk",
    "WalkNotch",
    "WalkSection",
]

ROLES = ("seam", "hem", "fold", "opening")
DRAWN = ("seam", "cut")
CORNERS = (
    "pointed",
    "squared_to_this",
    "squared_to_next",
    "mirrored_on_this",
    "mirrored_on_next",
    "stepped_on_this",
    "stepped_on_next",
    "trimmed",
    "rounded",
)
FORMS = ("slit", "wedge")
LINES = ("plain", "fold", "placement", "stitching", "slash", "stripe")
HANDS = ("as_drawn", "mirrored")
WAYS = ("against", "along")
ENDS = ("start", "end")
SHOWS = ("right", "wrong", "either", "both")
FACES = ("one", "two")
SIDES = ("own", "other", "both", "level")


def point(value, argument):
    """One point as two floats."""
    try:
        x, y = value
        return _numbers.number(x, "point", "x"), _numbers.number(y, "point", "y")
    except (TypeError, ValueError):
        raise TypeError(f"{argument} must be a point (x, y), not {value!r:.60}") from None


def points(value, argument):
    """A list of points as an array (n, 2)."""
    array = _numbers.array(value, "points", argument)
    if array.size == 0:
        return np.empty((0, 2))
    if array.ndim != 2 or array.shape[1] != 2:
        raise TypeError(f"{argument} must be points, of shape (n, 2), not of shape {array.shape}")
    return np.ascontiguousarray(np.ma.filled(array, math.nan))


def ring(value, argument):
    """A list of points as tuples, which compare and never change."""
    return tuple(map(tuple, points(value, argument).tolist()))


def _two_points(value, argument):
    pair = ring(value, argument)
    if len(pair) != 2:
        raise TypeError(f"{argument} must be two points, not {len(pair)}")
    return pair


def word(value, offered, function, argument):
    """One of the words offered."""
    if isinstance(value, str) and value in offered:
        return value
    text = f"{argument} = {value!r:.60} is not one of {', '.join(map(repr, offered))}"
    nan = math.nan
    raise ReclothError(function, "Choice", -7, argument, nan, nan, nan, None, text)


def flag(value, function, argument):
    """True or False, and nothing that Python would take for either: "no" is true to it."""
    if isinstance(value, (bool, np.bool_)):
        return bool(value)
    raise TypeError(f"{function}: {argument} must be True or False, not {value!r:.60}")


def each(kind, values, argument):
    """Items as this kind of data: as they are, from dicts, or from tuples in the order of the fields."""
    if isinstance(values, (str, bytes, dict, kind)):
        raise TypeError(f"{argument} must be a list of {kind.__name__}, not {type(values).__name__}")
    return tuple(one(kind, value, argument) for value in values)


def one(kind, value, argument):
    """One item as this kind of data."""
    if isinstance(value, kind):
        return value
    if isinstance(value, dict):
        return kind(**value)
    if isinstance(value, (tuple, list)):
        return kind(*value)
    raise TypeError(f"{argument}: a {kind.__name__}, dict or tuple is wanted, not {value!r:.60}")


def _settle(data, **values):
    # The way to set a field of frozen data while it is made.
    for name, value in values.items():
        object.__setattr__(data, name, value)


def _short(data):
    """A repr under 80 characters that cannot fail."""
    name = f"{getattr(data, 'name', '')!r:.30}"
    return f"{type(data).__name__}({name})"


@dataclass(frozen=True, slots=True)
class Notch:
    """A place on an edge that meets one on another.

    Parameters
    ----------
    name : str               notches that meet have the same name
    distance : float         from the start of the edge along it (mm)
    marks : int              how many marks side by side, 1 to 3
    form : str               "slit", a snip square to the edge, or "wedge", cut out as wide as it is deep
    depth : float or None    how far it is cut in from the cut line (mm), at most the allowance; None
                             for 0.6 of the allowance, at most 6 mm
    """

    name: str
    distance: float
    marks: int = 1
    form: str = "slit"
    depth: float | None = None

    def __post_init__(self):
        word(self.form, FORMS, "Notch", "form")
        _settle(
            self,
            distance=_numbers.number(self.distance, "Notch", "distance"),
            depth=None if self.depth is None else _numbers.number(self.depth, "Notch", "depth"),
        )


@dataclass(frozen=True, slots=True)
class Edge:
    """An edge of a piece: a line, an arc or a cubic curve, and how its allowance is cut.

    Parameters
    ----------
    name : str                  for people, and for finding it
    start, end : (x, y)         its ends (mm); the cloth lies to its left
    allowance : float           width of its seam or hem allowance (mm), 0 to 1000
    role : str                  "seam", "hem", "fold" (of the cloth: straight, no allowance), "opening"
    bulge : float               0 for a line; for an arc the tangent of a quarter of its sweep:
                                1 is a half circle, positive turns counter-clockwise
    steer : two points or None  the points that steer a cubic Bezier curve
    drawn : str                 "seam": start and end lie on the seam line; "cut": the cloth is
                                already cut there and the seam line lies inside
    corner : str                how the allowance joins that of the next edge: "pointed",
                                "squared_to_this", "squared_to_next", or for a turned hem
                                "mirrored_on_this" (this edge is the hem), "mirrored_on_next";
                                "stepped_on_this" where this edge's allowance ends early and the
                                next runs on to its end, "stepped_on_next"; "trimmed" square across;
                                "rounded"
    limit : float               most that a pointed corner reaches, in larger allowances, 1 to 100
    notches : list of Notch     or dicts, or tuples (name, distance, marks, form, depth)
    corner_size : float         distance of a trimmed corner from the corner of the seam lines, or
                                radius of a rounded one (mm), 0 to 1000

    :class:`Piece` checks the numbers.
    """

    name: str
    start: tuple
    end: tuple
    allowance: float = 0.0
    role: str = "seam"
    bulge: float = 0.0
    steer: tuple | None = None
    drawn: str = "seam"
    corner: str = "pointed"
    limit: float = 4.0
    notches: tuple = ()
    corner_size: float = 0.0

    def __post_init__(self):
        steer = self.steer
        if steer is not None:
            try:
                first, second = steer
            except (TypeError, ValueError):
                raise TypeError(f"steer must be two points, not {steer!r:.60}") from None
            steer = point(first, "steer"), point(second, "steer")
        word(self.role, ROLES, "Edge", "role")
        word(self.drawn, DRAWN, "Edge", "drawn")
        word(self.corner, CORNERS, "Edge", "corner")
        _settle(
            self,
            start=point(self.start, "start"),
            end=point(self.end, "end"),
            allowance=_numbers.number(self.allowance, "Edge", "allowance"),
            bulge=_numbers.number(self.bulge, "Edge", "bulge"),
            steer=steer,
            limit=_numbers.number(self.limit, "Edge", "limit"),
            notches=each(Notch, self.notches, "notches"),
            corner_size=_numbers.number(self.corner_size, "Edge", "corner_size"),
        )

    @property
    def length(self):
        """Length of the drawn curve (mm)."""
        from ._core import edge_length

        return edge_length(self)

    __repr__ = _short


@dataclass(frozen=True, slots=True)
class DartMark:
    """A dart: from its opening on an edge to its point.

    Parameters
    ----------
    name : str           name
    point : (x, y)       where it ends, inside the piece (mm)
    legs : two points    ends of its two legs, on the outline (mm)
    """

    name: str
    point: tuple
    legs: tuple

    def __post_init__(self):
        _settle(self, point=point(self.point, "point"), legs=pair(self.legs, "legs"))


@dataclass(frozen=True, slots=True)
class DrillMark:
    """A drill point, or a button.

    Parameters
    ----------
    name : str     name
    at : (x, y)    where (mm)
    """

    name: str
    at: tuple

    def __post_init__(self):
        _settle(self, at=point(self.at, "at"))


@dataclass(frozen=True, slots=True)
class LineMark:
    """A line to be marked: where to fold, to sew a pocket on, to slash.

    Parameters
    ----------
    name : str                  name
    start, end : (x, y)         its ends (mm)
    bulge : float               as of an :class:`Edge`
    steer : two points or None  as of an :class:`Edge`
    kind : str                  "fold", "placement", "stitching", "slash", "stripe" (where a stripe
                                of the cloth must lie), or "plain" for any other
    """

    name: str
    start: tuple
    end: tuple
    bulge: float = 0.0
    steer: tuple | None = None
    kind: str = "plain"

    def __post_init__(self):
        word(self.kind, LINES, "LineMark", "kind")
        _settle(
            self,
            start=point(self.start, "start"),
            end=point(self.end, "end"),
            bulge=_numbers.number(self.bulge, "LineMark", "bulge"),
            steer=None if self.steer is None else pair(self.steer, "steer"),
        )


@dataclass(frozen=True, slots=True)
class ButtonholeMark:
    """A buttonhole: the slit from one end to the other.

    Parameters
    ----------
    name : str           name
    ends : two points    ends of the slit (mm)
    """

    name: str
    ends: tuple

    def __post_init__(self):
        _settle(self, ends=pair(self.ends, "ends"))


@dataclass(frozen=True, slots=True)
class CutoutMark:
    """What is cut out of a piece: a closed ring of edges within it, each with its allowance.

    Parameters
    ----------
    name : str              name
    edges : list of Edge    as of a :class:`Piece`, with the cloth to the left of each; turned round
                            where it lies to the right
    """

    name: str
    edges: tuple

    def __post_init__(self):
        _settle(self, edges=each(Edge, self.edges, "edges"))

    __repr__ = _short


def pair(value, argument):
    """Two points."""
    try:
        first, second = value
    except (TypeError, ValueError):
        raise TypeError(f"{argument} must be two points, not {value!r:.60}") from None
    return point(first, argument), point(second, argument)


@dataclass(frozen=True, slots=True)
class CutSegment:
    """A line or arc of a cut line.

    Attributes
    ----------
    start, end : (x, y)    its ends (mm)
    bulge : float          0 for a line, else the tangent of a quarter of its sweep
    edge : int or None     index of the edge it is parallel to; none in a corner
    """

    start: tuple
    end: tuple
    bulge: float
    edge: int | None


@dataclass(frozen=True, slots=True)
class CutNotch:
    """A notch carried to the cut line.

    Attributes
    ----------
    edge : int       index of its edge
    name : str       its name
    marks : int      how many marks side by side
    seam : (x, y)    where it is on the drawn line (mm)
    cut : (x, y)     where it is on the cut line (mm)
    form : str       "slit" or "wedge"
    depth : float    how far it is cut in from the cut line (mm); 0 where it is only marked
    """

    edge: int
    name: str
    marks: int
    seam: tuple
    cut: tuple
    form: str
    depth: float


@dataclass(frozen=True, slots=True)
class Flaw:
    """A stain, worn place, hole or slit to keep clear of.

    Parameters
    ----------
    outline : points    one is a spot, two are a slit, 3 to 5000 the outline of an area (mm)
    margin : float      how far every piece keeps from it (mm), 0 to 1e4
    what : str          what it is: "scorch", "old stitching"
    under : tuple       roles of parts it does not matter under: "pocket bag"; under "seam allowance" it is kept
                        from a part's seam line instead of from its cut line
    """

    outline: tuple
    margin: float = 0.0
    what: str = ""
    under: tuple = ()

    def __post_init__(self):
        if not isinstance(self.what, str):
            raise TypeError(f"Flaw: what must be a text, not {type(self.what).__name__}")
        if isinstance(self.under, str) or not all(isinstance(role, str) for role in self.under):
            raise TypeError("Flaw: under must be a list of texts")
        _settle(
            self,
            outline=ring(self.outline, "outline"),
            margin=_numbers.number(self.margin, "Flaw", "margin"),
            under=tuple(self.under),
        )

    def __repr__(self):
        return f"Flaw({len(self.outline)} points, {self.margin:g} mm, {self.what!r:.30})"


@dataclass(frozen=True, slots=True)
class Repeat:
    """How a stripe, check or print repeats on cloth. One of the two lengths at least is not 0.

    Printed and woven cloth is rarely true: measure over several repeats and divide.

    Parameters
    ----------
    along : float      length of the repeat along the lengthwise grain (mm), 1 to 2000, or 0 where there is none
    across : float     the same across the grain
    start : (x, y)     a point of the cloth where a repeat begins (mm)
    """

    along: float = 0.0
    across: float = 0.0
    start: tuple = (0.0, 0.0)

    def __post_init__(self):
        _settle(
            self,
            along=_numbers.number(self.along, "Repeat", "along"),
            across=_numbers.number(self.across, "Repeat", "across"),
            start=point(self.start, "start"),
        )


@dataclass(frozen=True, slots=True)
class MatchPoint:
    """A point of a part that meets those of the same name, so that a print runs on across the seam.

    It lies on the seam line. Along the grain all points of a name meet; across it those of one hand.

    Parameters
    ----------
    name : str      points that meet have the same name
    at : (x, y)     where it is on the axes of the outline (mm)
    side : str      which it meets across the grain: those of its "own" hand; of the "other" hand, on the mirrored
                    half of a piece cut on a fold; those of "both", which the seam joins, as at a centre back; or none:
                    "level", as all points but one of a slanting seam
    """

    name: str
    at: tuple
    side: str = "own"

    def __post_init__(self):
        if not isinstance(self.name, str):
            raise TypeError(f"MatchPoint: name must be a text, not {type(self.name).__name__}")
        word(self.side, SIDES, "MatchPoint", "side")
        _settle(self, at=point(self.at, "at"))


@dataclass(frozen=True, slots=True)
class CornerReading:
    """Where a corner of a panel lies by tape: two readings from corners before it.

    Parameters
    ----------
    start, end : int                the corners the two readings are from
    from_start, from_end : float    the readings (mm), 1 to 1e5
    right : bool                    whether it lies to the right, seen from ``start`` towards ``end``
    """

    start: int
    end: int
    from_start: float
    from_end: float
    right: bool = False

    def __post_init__(self):
        whole = {name: _numbers.whole(getattr(self, name), "CornerReading", name) for name in ("start", "end")}
        read = {
            name: _numbers.number(getattr(self, name), "CornerReading", name)
            for name in ("from_start", "from_end")
        }
        _settle(self, **whole, **read, right=flag(self.right, "CornerReading", "right"))


@dataclass(frozen=True, slots=True)
class Spare:
    """A distance read between two corners of a panel that found neither.

    Parameters
    ----------
    start, end : int          the corners
    reading : float           the distance as read (mm), 1 to 1e5
    misfit : float or None    the distance as the corners have it, less the reading (mm); told by
                              ``Panel.spares``, not taken from what is given
    """

    start: int
    end: int
    reading: float
    misfit: float | None = None

    def __post_init__(self):
        whole = {name: _numbers.whole(getattr(self, name), "Spare", name) for name in ("start", "end")}
        misfit = self.misfit if self.misfit is None else _numbers.number(self.misfit, "Spare", "misfit")
        _settle(self, **whole, reading=_numbers.number(self.reading, "Spare", "reading"), misfit=misfit)


@dataclass(frozen=True, slots=True)
class Part:
    """A piece to be laid: its cut line, its grain, and how many of each hand.

    ``Piece.part()`` makes one of a piece.

    Parameters
    ----------
    name : str           what the maker calls it
    outline : points     the cut line, 3 to 5000 points (mm), seen from the side that shows
    grain_deg : float    direction of its grain line, counter-clockwise from the x axis (degrees)
    tilt_deg : float     how far the grain may be tilted either way (degrees, 0 to 180)
    as_drawn : int       how many as drawn, 0 to 1000
    mirrored : int       how many mirrored, 0 to 1000
    shows : str          the side of the cloth that may show: "right", "wrong", "either", "both"
    either_way : bool    whether it may be turned end for end on cloth with a nap
    crosswise : bool     whether its grain may also run across the cloth; on cloth with a nap only
                         where it may be turned end for end too
    role : str           what it is on the garment, where a Flaw names that in ``under``: "facing"
    seam : points        its seam line on the same axes (mm), for flaws under the "seam allowance"; or none
    fold : two points    a line on the same axes about which the whole outline is symmetrical: on folded
                         cloth it may lie on the fold; or None. ``Part.on_fold`` makes it of a half
    matches : list       points that meet those of other parts on cloth with a repeat: MatchPoint, or dicts, or
                         tuples (name, at, side)
    """

    name: str
    outline: tuple
    grain_deg: float = 90.0
    tilt_deg: float = 0.0
    as_drawn: int = 1
    mirrored: int = 0
    shows: str = "right"
    either_way: bool = False
    crosswise: bool = False
    role: str = ""
    seam: tuple = ()
    fold: tuple | None = None
    matches: tuple = ()

    def __post_init__(self):
        word(self.shows, SHOWS, "Part", "shows")
        if not isinstance(self.role, str):
            raise TypeError(f"Part: role must be a text, not {type(self.role).__name__}")
        _settle(
            self,
            outline=ring(self.outline, "outline"),
            grain_deg=_numbers.number(self.grain_deg, "Part", "grain_deg"),
            tilt_deg=_numbers.number(self.tilt_deg, "Part", "tilt_deg"),
            either_way=flag(self.either_way, "Part", "either_way"),
            crosswise=flag(self.crosswise, "Part", "crosswise"),
            seam=ring(self.seam, "seam") if len(self.seam) else (),
            fold=None if self.fold is None else _two_points(self.fold, "fold"),
            matches=each(MatchPoint, self.matches, "matches"),
        )

    @staticmethod
    def on_fold(name, half, start, end):
        """A part that may lie on a fold, cut once, made whole of its half.

        Parameters
        ----------
        name : str
            what the maker calls it
        half : points
            the cut line of the half, with the fold as its straight edge
        start, end : (x, y)
            two points of the fold (mm)

        Raises
        ------
        ReclothError
            the half crosses the fold, or does not lie on it along one edge

        Examples
        --------
        >>> import recloth
        >>> front = recloth.Part.on_fold("front", [(0, 0), (230, 0), (180, 600), (0, 600)], (0, 0), (0, 600))
        >>> min(front.outline)
        (-230.0, 0.0)
        """
        from ._core import part_on_fold

        return part_on_fold(name, half, point(start, "start"), point(end, "end"))

    __repr__ = _short


@dataclass(frozen=True, slots=True)
class Strip:
    """Cloth by the length, without flaws: from the bolt, its grain along it.

    Parameters
    ----------
    width : float    between the selvedges (mm), 1 to 1e5
    faces : str      how many of its sides may show: "one" or "two"
    nap : bool       whether it has a nap, pile or one-way print, which runs from the cut end on
    folded : bool    whether it is cut folded lengthwise in the middle, right sides together, selvedge on
                     selvedge, so that both layers are cut at once
    repeat : Repeat  how a stripe, check or print repeats, or None; where on the print the points to match lie is
                     chosen by the search
    """

    width: float
    faces: str = "one"
    nap: bool = False
    folded: bool = False
    repeat: Repeat | None = None

    def __post_init__(self):
        word(self.faces, FACES, "Strip", "faces")
        _settle(
            self,
            width=_numbers.number(self.width, "Strip", "width"),
            nap=flag(self.nap, "Strip", "nap"),
            folded=flag(self.folded, "Strip", "folded"),
            repeat=cloth_repeat(self.repeat),
        )


@dataclass(frozen=True, slots=True)
class Placement:
    """One piece laid on a panel: mirrored if so, then turned, then shifted.

    Parameters
    ----------
    part : int           index of the part
    panel : int          index of the panel
    turn_deg : float     turn about the origin, counter-clockwise (degrees)
    shift : (x, y)       shift after the turn (mm)
    mirrored : bool      whether the outline is mirrored (x to -x) before it is turned
    hand : str           the hand this piece serves as: "as_drawn" or "mirrored"
    """

    part: int
    panel: int
    turn_deg: float = 0.0
    shift: tuple = (0.0, 0.0)
    mirrored: bool = False
    hand: str = "as_drawn"

    def __post_init__(self):
        word(self.hand, HANDS, "Placement", "hand")
        _settle(
            self,
            part=_numbers.whole(self.part, "Placement", "part"),
            panel=_numbers.whole(self.panel, "Placement", "panel"),
            turn_deg=_numbers.number(self.turn_deg, "Placement", "turn_deg"),
            shift=point(self.shift, "shift"),
            mirrored=flag(self.mirrored, "Placement", "mirrored"),
        )

    @property
    def face_down(self):
        """Whether the piece lies with its showing side against the table."""
        return self.mirrored != (self.hand == "mirrored")


@dataclass(frozen=True, slots=True)
class Unplaced:
    """Pieces of one part and hand that have no place.

    Parameters
    ----------
    part : int     index of the part
    hand : str     "as_drawn" or "mirrored"
    count : int    how many
    """

    part: int
    hand: str
    count: int

    def __post_init__(self):
        word(self.hand, HANDS, "Unplaced", "hand")
        _settle(self, part=_numbers.whole(self.part, "Unplaced", "part"))


@dataclass(frozen=True, slots=True)
class Fold:
    """The line on which a panel is folded when it is cut, so that both layers are cut at once.

    Parameters
    ----------
    panel : int         index of the panel
    start : (x, y)      a point of the line, on the panel's axes (mm)
    end : (x, y)        another
    """

    panel: int
    start: tuple
    end: tuple

    def __post_init__(self):
        _settle(
            self,
            panel=_numbers.whole(self.panel, "Fold", "panel"),
            start=point(self.start, "start"),
            end=point(self.end, "end"),
        )


@dataclass(frozen=True, slots=True)
class Answer:
    """Whether one piece, by itself, has a place on one panel: a row of ``Fit.table``.

    Attributes
    ----------
    part, panel : int               their indices
    hand : str                      "as_drawn" or "mirrored"
    answer : str                    "fits", "cannot" or "undecided" (none found, none excluded)
    placement : Placement or None   where it fits
    bound : str or None             what proves that it cannot: "one_face", "area", "across",
                                    "along", "everywhere"
    needed, there : float or None   what the bound compares (mm, or mm2 for an area)
    why : str or None               the bound as a sentence
    """

    part: int
    hand: str
    panel: int
    answer: str
    placement: Placement | None
    bound: str | None
    needed: float | None
    there: float | None
    why: str | None

    @property
    def short_by(self):
        """By how much the piece is too wide or too long (mm); None where that is not the reason."""
        return self.needed - self.there if self.bound in ("across", "along") else None


@dataclass(frozen=True, slots=True)
class WalkNotch:
    """A notch met on a walk; distances (mm) from where the walk starts, None where it is not.

    Attributes
    ----------
    name : str                 its name
    distance : float or None   where it is on these edges
    other : float or None      where it is on the other edges
    """

    name: str
    distance: float | None
    other: float | None

    @property
    def difference(self):
        """``distance - other`` (mm); None where the notch is on one side only."""
        if self.distance is None or self.other is None:
            return None
        return self.distance - self.other


@dataclass(frozen=True, slots=True)
class Walk:
    """Two rows of edges walked along each other.

    Attributes
    ----------
    length : float             length of these edges (mm)
    other_length : float       length of the other edges (mm)
    difference : float         ``length - other_length`` (mm): what must be eased in, if positive
    notches : tuple            of :class:`WalkNotch`, in the order met, then those of the other only
    sections : tuple           of :class:`WalkSection`, from notch to notch: where the ease lies
    start_kink_deg : float or None
                               kink of the edges that run on across the seam where the walk starts,
                               once it is sewn (degrees): 0 smooth, positive a peak, negative a dent;
                               None where one of them lies on a fold
    end_kink_deg : float or None
                               the same where the walk ends
    """

    length: float
    other_length: float
    difference: float
    notches: tuple
    sections: tuple = ()
    start_kink_deg: float | None = None
    end_kink_deg: float | None = None


@dataclass(frozen=True, slots=True)
class WalkSection:
    """A part of a walk, from one notch that both sides have, or the start, to the next, or the end.

    Attributes
    ----------
    to : str or None           name of the notch at its end; None at the end of the walk
    length : float             length of these edges (mm)
    other_length : float       length of the other edges (mm)
    difference : float         ``length - other_length`` (mm): what must be eased in, if positive,
                               or stretched, if negative
    """

    to: str | None
    length: float
    other_length: float
    difference: float

    @property
    def ease_pct(self):
        """``difference`` as a share of the other edges (%); None where those have no length there."""
        return 100 * self.difference / self.other_length if self.other_length > 0 else None


@dataclass(frozen=True, slots=True)
class Place:
    """A place on the outline of a piece.

    Parameters
    ----------
    edge : str or int    the edge, by name or index
    distance : float     from its start along it (mm)
    off : float          how far off the outline the point lay for which the place was sought (mm)
    """

    edge: str | int
    distance: float
    off: float = 0.0

    def __post_init__(self):
        _settle(self, distance=_numbers.number(self.distance, "Place", "distance"))


def place(value, argument):
    """A place, also from (edge, distance)."""
    return one(Place, value, argument)


@dataclass(frozen=True, slots=True)
class Opening:
    """Where a dart is turned to.

    Parameters
    ----------
    name : str                        name of the new dart
    at : Place, or (edge, distance)   where on the outline it opens
    share : float                     its share of the turned dart's angle, above 0 to 1
    """

    name: str
    at: Place
    share: float = 1.0

    def __post_init__(self):
        share = _numbers.number(self.share, "Opening", "share")
        _settle(self, at=place(self.at, "at"), share=share)


def opening_list(values):
    """Openings, also from tuples and dicts."""
    return each(Opening, values, "openings")


@dataclass(frozen=True, slots=True)
class Slash:
    """A straight slash across a piece, and how far it is spread.

    Parameters
    ----------
    open : Place, or (edge, distance)    the end that is spread
    hinge : Place, or (edge, distance)   the other end
    open_by : float                      how far it opens at its start (mm), 0 to 10 000
    hinge_by : float                     how far at its end (mm): 0 for a hinge, as much as
                                         ``open_by`` for a parallel spread
    """

    open: Place
    hinge: Place
    open_by: float
    hinge_by: float = 0.0

    def __post_init__(self):
        widths = {
            name: _numbers.number(getattr(self, name), "Slash", name) for name in ("open_by", "hinge_by")
        }
        _settle(self, open=place(self.open, "open"), hinge=place(self.hinge, "hinge"), **widths)


def slash_list(values):
    """Slashes, also from tuples and dicts."""
    return each(Slash, values, "slashes")


@dataclass(frozen=True, slots=True)
class Joined:
    """Two pieces laid together along a seam.

    Attributes
    ----------
    piece : Piece    the one piece
    gap : float      the farthest that the two edges lie apart or over each other (mm)
    """

    piece: object
    gap: float


@dataclass(frozen=True, slots=True)
class Symmetry:
    """How far two halves of a piece differ, and the half between them.

    Attributes
    ----------
    half : Piece      the middle of both halves, on a fold along the axis
    largest : float   the farthest that a point of one half lies from its fellow in the other (mm)
    edge : int        index of the edge of the whole piece where that is
    alone : tuple     indices of the marks that have no fellow in the other half, mirrored, within the
                      tolerance
    """

    half: object
    largest: float
    edge: int
    alone: tuple = ()


@dataclass(frozen=True, slots=True)
class NotchMatch:
    """A notch by its name, on one piece or on both.

    Attributes
    ----------
    name : str              its name
    here : Place or None    where it is on this piece
    there : Place or None   where it is on the other
    marks : int             how many marks it has on this piece; 0 where it is not
    other_marks : int       how many marks it has on the other
    """

    name: str
    here: Place | None
    there: Place | None
    marks: int
    other_marks: int

    @property
    def matches(self):
        """Whether it is on both pieces, with as many marks."""
        return self.here is not None and self.there is not None and self.marks == self.other_marks


@dataclass(frozen=True, slots=True)
class PairedNotch:
    """A notch to be set on two rows of edges that are sewn together.

    Parameters
    ----------
    name : str          its name on both
    distance : float    how far along the other edges it is (mm), from where the walk starts
    ease : float        what these edges are eased in by up to there (mm): it is
                        ``distance + ease`` along them
    marks : int         how many marks side by side, 1 to 3
    """

    name: str
    distance: float
    ease: float = 0.0
    marks: int = 1

    def __post_init__(self):
        numbers = {name: _numbers.number(getattr(self, name), "PairedNotch", name) for name in ("distance", "ease")}
        _settle(self, **numbers)


def paired_notch_list(values):
    """Notches to be paired, also from tuples and dicts."""
    return each(PairedNotch, values, "notches")


@dataclass(frozen=True, slots=True)
class SeamEnd:
    """One end of a seam between two pieces: the edges beside it are to run on into each other.

    Parameters
    ----------
    piece : int                index of the one piece
    edge : str or int          its edge that is sewn, at this end of the seam
    other : int                index of the other piece; the same where a piece is sewn to its like
    other_edge : str or int    its edge
    way : str                  "against" or "along", as of :meth:`Piece.walk`
    end : str                  "start" or "end" of the one edge
    kept : str                 which of the two pieces is left as it is: "neither", "first", "second"
    """

    piece: int
    edge: str | int
    other: int
    other_edge: str | int
    way: str = "against"
    end: str = "start"
    kept: str = "neither"

    def __post_init__(self):
        word(self.way, WAYS, "SeamEnd", "way")
        word(self.end, ENDS, "SeamEnd", "end")
        word(self.kept, ("neither", "first", "second"), "SeamEnd", "kept")
        wholes = {name: _numbers.whole(getattr(self, name), "SeamEnd", name) for name in ("piece", "other")}
        _settle(self, **wholes)


@dataclass(frozen=True, slots=True)
class DartMouth:
    """A dart: the edges at both sides of its mouth are to run on into each other when it is folded.

    Parameters
    ----------
    piece : int    index of the piece
    dart : str     name of the dart
    onto : str     the edge it is pressed onto: that at the "start" of its mouth, or at its "end",
                   counter-clockwise
    """

    piece: int
    dart: str
    onto: str = "start"

    def __post_init__(self):
        word(self.onto, ENDS, "DartMouth", "onto")
        _settle(self, piece=_numbers.whole(self.piece, "DartMouth", "piece"))


def meeting_list(values):
    """Seam ends and dart mouths, each with the word for its kind."""
    words = {SeamEnd: "seam", DartMouth: "dart"}
    if isinstance(values, (str, bytes, dict)):
        raise TypeError(f"meetings must be a list of SeamEnd and DartMouth, not {type(values).__name__}")
    values = list(values)
    for value in values:
        if type(value) not in words:
            raise TypeError(f"meetings: a SeamEnd or DartMouth is wanted, not {value!r:.40}")
    return [(words[type(value)], value) for value in values]


@dataclass(frozen=True, slots=True)
class TruedEdge:
    """An edge that was drawn anew so that it runs on.

    Attributes
    ----------
    piece : int          index of the piece
    edge : int           index of the edge in the piece as it was given
    start_deg : float    how far it was turned at its start (degrees, counter-clockwise)
    end_deg : float      how far it was turned at its end
    moved : float        the farthest that it lies from where it was (mm)
    distance : float     where that is, from its start along the edge as it was (mm)
    longer : float       what it has become longer by (mm)
    """

    piece: int
    edge: int
    start_deg: float
    end_deg: float
    moved: float
    distance: float
    longer: float


@dataclass(frozen=True, slots=True)
class TruedUp:
    """Pieces whose edges run on smoothly.

    Attributes
    ----------
    pieces : tuple of Piece       all the pieces, changed or not
    edges : tuple of TruedEdge    the edges that were drawn anew
    largest : float               the farthest that any of them lies from where it was (mm)
    kinks_deg : tuple of float    the kink there was at each meeting (degrees): positive a peak,
                                  negative a dent
    """

    pieces: tuple
    edges: tuple
    largest: float
    kinks_deg: tuple


@dataclass(frozen=True, slots=True)
class Copied:
    """A piece with an edge copied onto it.

    Attributes
    ----------
    piece : Piece          the piece
    length : float         length of the edge as it was copied (mm)
    replaced : float       length of what it replaced (mm)
    turn_deg : float       how far it was turned (degrees, counter-clockwise)
    stretch_pct : float    what it was stretched by (%), negative where it was shrunk
    gap : float            what the landmarks are farther apart than its ends (mm), negative where
                           they are nearer; 0 where it was stretched
    doubts : int           doubts raised (bits), see :func:`recloth.doubts`
    """

    piece: object
    length: float
    replaced: float
    turn_deg: float
    stretch_pct: float
    gap: float
    doubts: int


@dataclass(frozen=True, slots=True)
class LiningSeam:
    """Edges of a lining, and what to walk them along.

    Attributes
    ----------
    shell : int            index of the shell's edge they came of
    edges : tuple of int   their indices in the finished lining
    along : str            "shell": the same seam as the shell's edge; "facing": the inner edge of the
                           facing; "hem": the top of the shell's hem
    length : float         their length (mm)
    other_length : float   length of what they are sewn along (mm)
    difference : float     ``length - other_length`` (mm): ease, a pleat or tuck, or the cloth of the
                           jump; negative for a free hem's clearance
    """

    shell: int
    edges: tuple
    along: str
    length: float
    other_length: float
    difference: float


@dataclass(frozen=True, slots=True)
class Lined:
    """A lining, and what to walk.

    Attributes
    ----------
    piece : Piece        the lining to cut
    finished : Piece     the lining as it will be when it and the shell have been washed: to walk
    seams : tuple        of :class:`LiningSeam`, without folds and a free hem
    """

    piece: object
    finished: object
    seams: tuple


def edge_widths(value, function, argument):
    """Edges, each with a number: from a dict, or a list of pairs."""
    if value is None:
        return []
    if isinstance(value, (str, bytes)):
        raise TypeError(f"{argument} must be edges with their numbers, not {type(value).__name__}")
    pairs = []
    for item in value.items() if isinstance(value, dict) else value:
        try:
            edge, by = item
        except (TypeError, ValueError):
            raise TypeError(f"{argument}: an edge and a number are wanted, not {item!r:.60}") from None
        pairs.append((edge, _numbers.number(by, function, argument)))
    return pairs


def named_widths(value, function, argument):
    """Edges of a draft by name, or by piece and name, each with a number."""
    named = []
    for edge, by in edge_widths(value, function, argument):
        names = ("", edge) if isinstance(edge, str) else tuple(edge) if isinstance(edge, (tuple, list)) else ()
        if len(names) != 2 or not all(isinstance(name, str) for name in names):
            raise TypeError(f"{argument}: an edge is a name, or a piece's name and an edge's, not {edge!r:.60}")
        named.append((*names, by))
    return named


def dart_mark(value):
    """A dart."""
    if not isinstance(value, DartMark):
        raise TypeError(f"opened_edge: dart must be a DartMark, not {type(value).__name__}")


def two(value, function, argument):
    """Two numbers."""
    numbers = _numbers.list_of(value, function, argument)
    if len(numbers) != 2:
        raise TypeError(f"{argument} must be two numbers, along the grain and across it, not {len(numbers)}")
    return tuple(numbers.tolist())


for _name in __all__:
    globals()[_name].__module__ = "recloth"


def edge_list(values):
    """The edges of a piece."""
    return each(Edge, values, "edges")


def mark_list(values):
    """The marks of a piece, each with the word for its kind."""
    words = {
        DartMark: "dart",
        DrillMark: "drill",
        LineMark: "line",
        ButtonholeMark: "buttonhole",
        CutoutMark: "cutout",
    }
    for value in values:
        if type(value) not in words:
            raise TypeError(f"marks: a {', '.join(kind.__name__ for kind in words)} is wanted, not {value!r:.40}")
    return [(words[type(value)], value) for value in values]


def per_edge(value, count, function, argument):
    """One number for every edge, or a list of them."""
    if np.ndim(_numbers.array(value, function, argument)) == 0:
        return [_numbers.number(value, function, argument)] * count
    return _numbers.list_of(value, function, argument).tolist()


def polygon(outline, allowance, names):
    """Straight edges from corner to corner."""
    corners = ring(outline, "points")
    allowances = per_edge(allowance, len(corners), "Piece.polygon", "allowance")
    if len(allowances) != len(corners):
        raise TypeError(f"Piece.polygon: allowance must be one number or {len(corners)}, one an edge")
    if names is None:
        names = [f"edge {place}" for place in range(1, len(corners) + 1)]
    if len(names) != len(corners):
        raise TypeError(f"names must be {len(corners)} names, one an edge, not {len(names)}")
    return [
        Edge(edge, start, end, width)
        for edge, start, end, width in zip(names, corners, corners[1:] + corners[:1], allowances)
    ]


def part_list(values):
    """The parts of a lay; a Piece stands for its part."""
    from ._core import Piece

    if isinstance(values, (Piece, Part, dict, str)):
        raise TypeError(f"parts must be a list, not one {type(values).__name__}")
    return tuple(
        value.part() if isinstance(value, Piece) else one(Part, value, "parts") for value in values
    )


def panel_list(values):
    """The panels of a lay."""
    from ._core import Panel

    return each(Panel, values, "panels")


def flaw_list(values):
    """The flaws of a panel."""
    return each(Flaw, values, "flaws")


def corner_list(values):
    """Where the corners of a panel lie by tape."""
    return each(CornerReading, values, "corners")


def spare_list(values):
    """Spare readings of a panel."""
    return each(Spare, values, "spares")


def faces(value, function):
    """How many sides may show."""
    return word(value, FACES, function, "faces")


def numbers(value, function, argument):
    """A list of numbers."""
    return _numbers.list_of(value, function, argument).tolist()


def cloth_repeat(value):
    """How cloth repeats; None, or nothing at all, where it does not."""
    if value is None or (isinstance(value, (tuple, list, dict)) and not value):
        return None
    return one(Repeat, value, "repeat")


def cloth_strip(value):
    """Cloth by the length."""
    return one(Strip, value, "strip")


def placement(value):
    """A placement."""
    return one(Placement, value, "placement")


def placement_list(values):
    """The placements of a lay."""
    return each(Placement, values, "placements")


def fold_list(values):
    """The folds of a lay."""
    return each(Fold, values, "folds")


def unplaced_list(values):
    """What a lay leaves out."""
    return each(Unplaced, values, "unplaced")


def piece_words(part, hand):
    """A piece of a lay by its part and its hand."""
    return f"{part.name}, mirrored" if hand == "mirrored" else part.name


def answer_words(answer):
    """An answer of a fit, short enough for a table."""
    return answer.answer if answer.why is None else answer.why.partition(":")[0]


def grid(rows):
    """Rows of texts, each column as wide as its widest."""
    widths = [max(map(len, column)) for column in zip(*rows)]
    lines = ["  ".join(text.ljust(width) for text, width in zip(row, widths)) for row in rows]
    return "\n".join(line.rstrip() for line in lines)


def fit_table(fit):
    """What ``str`` says of a fit."""
    lines, parts = {}, fit.parts
    for answer in fit.table:
        piece = answer.part, answer.hand
        lines.setdefault(piece, [piece_words(parts[answer.part], answer.hand)]).append(answer_words(answer))
    head = ["piece", *(panel.name for panel in fit.panels)]
    left = sum(unplaced.count for unplaced in fit.unplaced)
    together = f"together: {fit.together}, {len(fit.placements)} placed, {left} not"
    why = "" if fit.why is None else f"; {fit.why}"
    return f"{grid([head, *lines.values()])}\n{together}{why}"


def strip_table(lay):
    """What ``str`` says of a lay by the length."""
    parts, rows = lay.parts, [("piece", "along", "across", "turned", "")]
    for placement, outline in zip(lay.placements, lay.outlines()):
        along, across = outline.min(axis=0)
        down = "face down" if placement.face_down and lay.strip.faces == "one" else ""
        piece = piece_words(parts[placement.part], placement.hand)
        rows.append((piece, f"{along:.1f}", f"{across:.1f}", f"{placement.turn_deg:g}", down))
    cloth = f"{lay.length:.1f} mm of cloth {lay.strip.width:g} mm wide, {100 * lay.density:.1f} % covered"
    return f"{cloth}\n{grid(rows)}"
