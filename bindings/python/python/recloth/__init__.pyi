# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
from collections.abc import Sequence
from enum import IntEnum
from typing import Any, Generic, NamedTuple, TypeVar, overload

import numpy as np
from numpy._typing import _ArrayLikeFloat_co
from numpy.typing import NDArray

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from os import PathLike
from typing import ClassVar, Literal, TypeAlias, final

from numpy.typing import ArrayLike

from . import draft as draft
from . import ufuncs as ufuncs

_Point: TypeAlias = tuple[float, float]
_Bounds: TypeAlias = tuple[float, float, float, float]
_Points: TypeAlias = ArrayLike
_Fields: TypeAlias = dict[str, Any] | tuple[Any, ...] | list[Any]

__version__: str
MM: float
CM: float
M: float
INCH: float
FOOT: float
YARD: float

class ReclothError(ValueError):
    function: str
    kind: str
    status: int
    argument: str
    value: float
    min: float
    max: float
    at: int | None
    text: str
    index: tuple[int, ...] | None
    def __init__(
        self,
        function: str,
        kind: str = ...,
        status: int = ...,
        argument: str = ...,
        value: float = ...,
        min: float = ...,
        max: float = ...,
        at: int | None = None,
        text: str | None = None,
        index: tuple[int, ...] | None = None,
    ) -> None: ...
    def at_index(self, index: tuple[int, ...]) -> ReclothError: ...
    def __reduce__(self) -> tuple[type[ReclothError], tuple[object, ...]]: ...

def doubt_text(bit: int) -> str | None: ...
def caution_text(bit: int) -> str | None: ...
def doubts(bits: int) -> list[str]: ...
def cautions(bits: int) -> list[str]: ...
def reasons(function: Callable[..., Any], *given: Any, **named: Any) -> NDArray[Any]: ...

class BriefError(ReclothError):
    """Why a brief cannot be planned: its name and line, what is wrong and what would be right."""

    name: str
    line: int | None
    wrong: str
    right: str
    def __init__(self, name: str, line: int | None, wrong: str, right: str, text: str) -> None: ...
    def __reduce__(self) -> tuple[type[ReclothError], tuple[object, ...]]: ...

@dataclass(frozen=True, slots=True)
class Notch:
    """A place on an edge that meets one on another; distance from the edge's start (mm), 1 to 3 marks."""

    name: str
    distance: float
    marks: int = ...
    form: str = ...
    depth: float | None = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Edge:
    """An edge of a piece: a line, an arc (bulge) or a cubic curve (steer), and its allowance (mm)."""

    name: str
    start: _Point
    end: _Point
    allowance: float = ...
    role: str = ...
    bulge: float = ...
    steer: tuple[_Point, _Point] | None = ...
    drawn: str = ...
    corner: str = ...
    limit: float = ...
    notches: Iterable[Notch | _Fields] = ...
    corner_size: float = ...
    def __post_init__(self) -> None: ...
    @property
    def length(self) -> float: ...

@dataclass(frozen=True, slots=True)
class DartMark:
    """A dart: its point, and the ends of its two legs on the outline (mm)."""

    name: str
    point: _Point
    legs: tuple[_Point, _Point]
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class DrillMark:
    """A drill point, or a button."""

    name: str
    at: _Point
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class LineMark:
    """A line to be marked inside a piece."""

    name: str
    start: _Point
    end: _Point
    bulge: float = ...
    steer: tuple[_Point, _Point] | None = ...
    kind: str = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class CutoutMark:
    """What is cut out of a piece: a closed ring of edges within it."""

    name: str
    edges: Iterable[Edge | _Fields]
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class ButtonholeMark:
    """A buttonhole: the ends of its slit (mm)."""

    name: str
    ends: tuple[_Point, _Point]
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class CutSegment:
    """A line or arc of a cut line; edge is the index of the edge it is parallel to."""

    start: _Point
    end: _Point
    bulge: float
    edge: int | None

@dataclass(frozen=True, slots=True)
class CutNotch:
    """A notch carried to the cut line."""

    edge: int
    name: str
    marks: int
    seam: _Point
    cut: _Point
    form: str
    depth: float

@dataclass(frozen=True, slots=True)
class Flaw:
    """A stain, worn place, hole or slit to keep clear of, by a margin (mm)."""

    outline: _Points
    margin: float = ...
    what: str = ...
    under: tuple[str, ...] = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Repeat:
    """How a stripe, check or print repeats on cloth (mm): along the lengthwise grain and across it, 0 for not."""

    along: float = ...
    across: float = ...
    start: _Point = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class MatchPoint:
    """A point of a part, on its seam line (mm), that meets those of the same name on cloth with a repeat."""

    name: str
    at: _Point
    side: str = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class CornerReading:
    """Where a corner of a panel lies by tape: two readings from corners before it (mm)."""

    start: int
    end: int
    from_start: float
    from_end: float
    right: bool = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Spare:
    """A distance read between two corners of a panel that found neither (mm)."""

    start: int
    end: int
    reading: float
    misfit: float | None = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Part:
    """A piece to be laid: its cut line (mm), its grain (degrees), and how many of each hand."""

    name: str
    outline: _Points
    grain_deg: float = ...
    tilt_deg: float = ...
    as_drawn: int = ...
    mirrored: int = ...
    shows: str = ...
    either_way: bool = ...
    crosswise: bool = ...
    role: str = ...
    seam: _Points = ...
    fold: Iterable[_Point] | None = ...
    matches: Iterable[MatchPoint | _Fields] = ...
    def __post_init__(self) -> None: ...
    @staticmethod
    def on_fold(name: str, half: _Points, start: _Point, end: _Point) -> Part:
        """A part that may lie on a fold, cut once, made whole of its half."""

@dataclass(frozen=True, slots=True)
class Strip:
    """Cloth by the length, from the bolt: its width (mm), how many sides may show, nap, whether it is cut folded, repeat."""

    width: float
    faces: str = ...
    nap: bool = ...
    folded: bool = ...
    repeat: Repeat | _Fields | None = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Placement:
    """One piece laid on a panel: mirrored if so, then turned (degrees), then shifted (mm)."""

    part: int
    panel: int
    turn_deg: float = ...
    shift: _Point = ...
    mirrored: bool = ...
    hand: str = ...
    def __post_init__(self) -> None: ...
    @property
    def face_down(self) -> bool: ...

@dataclass(frozen=True, slots=True)
class Unplaced:
    """Pieces of one part and hand that have no place."""

    part: int
    hand: str
    count: int
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Fold:
    """The line on which a panel is folded when it is cut (mm), so that both layers are cut at once."""

    panel: int
    start: _Point
    end: _Point
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Change:
    """One change that the maker would allow, told by what its kind takes."""

    part: int
    give: str
    to_deg: float | None = ...
    across_deg: float | None = ...
    start: float | None = ...
    end: float | None = ...
    allowance: float | None = ...
    toward_deg: float | None = ...
    beyond: float | None = ...
    most: float | None = ...
    name: str | None = ...
    steps: Any = ...
    parts: Any = ...
    by: int | None = ...
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Made:
    """A change that was made; as text a line for the worksheet."""

    change: int
    part: str
    give: str
    amount: float
    at: float | None
    words: str

@dataclass(frozen=True, slots=True)
class LeastChange:
    """What must give so that all pieces fit; made by least_change."""

    answer: str
    made: tuple[Made, ...]
    parts: tuple[Part, ...]
    fit: Fit | None
    why: str | None
    evaluations: int
    out_of_time: bool = False

@dataclass(frozen=True, slots=True)
class Largest:
    """How large a measure may be; made by largest, longest and fullest."""

    value: float | None
    refused: float | None
    why: str | None
    parts: tuple[Part, ...]
    fit: Fit | None
    evaluations: int
    out_of_time: bool = False

@dataclass(frozen=True, slots=True)
class Leftover:
    """One connected piece of cloth that a lay leaves (mm); made by leftovers."""

    panel: int
    outline: _Points
    holes: tuple[_Points, ...]
    area_mm2: float
    rectangles: tuple[PanelRectangle, ...]

@dataclass(frozen=True, slots=True)
class Answer:
    """Whether one piece, by itself, has a place on one panel: a row of Fit.table."""

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
    def short_by(self) -> float | None: ...

@dataclass(frozen=True, slots=True)
class WalkNotch:
    """A notch met on a walk; distances (mm) from where the walk starts."""

    name: str
    distance: float | None
    other: float | None
    @property
    def difference(self) -> float | None: ...

@dataclass(frozen=True, slots=True)
class Walk:
    """Two rows of edges walked along each other (mm)."""

    length: float
    other_length: float
    difference: float
    notches: tuple[WalkNotch, ...]
    sections: tuple[WalkSection, ...] = ()
    start_kink_deg: float | None = None
    end_kink_deg: float | None = None

@dataclass(frozen=True, slots=True)
class WalkSection:
    """A part of a walk, from one notch that both sides have, or the start, to the next, or the end (mm)."""

    to: str | None
    length: float
    other_length: float
    difference: float
    @property
    def ease_pct(self) -> float | None: ...

@dataclass(frozen=True, slots=True)
class Place:
    """A place on the outline of a piece (mm)."""

    edge: str | int
    distance: float
    off: float = 0.0
    def __post_init__(self) -> None: ...

_At: TypeAlias = Place | tuple[str | int, float] | _Fields

@dataclass(frozen=True, slots=True)
class Opening:
    """Where a dart is turned to."""

    name: str
    at: Place
    share: float = 1.0
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Slash:
    """A straight slash across a piece, and how far it is spread (mm)."""

    open: Place
    hinge: Place
    open_by: float
    hinge_by: float = 0.0
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class Joined:
    """Two pieces laid together along a seam (mm)."""

    piece: Piece
    gap: float

@dataclass(frozen=True, slots=True)
class Symmetry:
    """How far two halves of a piece differ, and the half between them (mm)."""

    half: Piece
    largest: float
    edge: int
    alone: tuple[int, ...] = ()

@dataclass(frozen=True, slots=True)
class NotchMatch:
    """A notch by its name, on one piece or on both."""

    name: str
    here: Place | None
    there: Place | None
    marks: int
    other_marks: int
    @property
    def matches(self) -> bool: ...

@dataclass(frozen=True, slots=True)
class PairedNotch:
    """A notch to be set on two rows of edges that are sewn together (mm)."""

    name: str
    distance: float
    ease: float = 0.0
    marks: int = 1
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class SeamEnd:
    """One end of a seam between two pieces: the edges beside it are to run on into each other."""

    piece: int
    edge: str | int
    other: int
    other_edge: str | int
    way: str = "against"
    end: str = "start"
    kept: str = "neither"
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class DartMouth:
    """A dart: the edges at both sides of its mouth are to run on into each other when it is folded."""

    piece: int
    dart: str
    onto: str = "start"
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class TruedEdge:
    """An edge that was drawn anew so that it runs on (mm, turns in degrees)."""

    piece: int
    edge: int
    start_deg: float
    end_deg: float
    moved: float
    distance: float
    longer: float

@dataclass(frozen=True, slots=True)
class TruedUp:
    """Pieces whose edges run on smoothly (mm)."""

    pieces: tuple[Piece, ...]
    edges: tuple[TruedEdge, ...]
    largest: float
    kinks_deg: tuple[float, ...]

@dataclass(frozen=True, slots=True)
class Copied:
    """A piece with an edge copied onto it (mm, turn in degrees)."""

    piece: Piece
    length: float
    replaced: float
    turn_deg: float
    stretch_pct: float
    gap: float
    doubts: int

@dataclass(frozen=True, slots=True)
class LiningSeam:
    """Edges of a lining, and what to walk them along (mm)."""

    shell: int
    edges: tuple[int, ...]
    along: str
    length: float
    other_length: float
    difference: float

@dataclass(frozen=True, slots=True)
class Lined:
    """A lining, and what to walk."""

    piece: Piece
    finished: Piece
    seams: tuple[LiningSeam, ...]

_EdgeWidths: TypeAlias = dict[str, float] | dict[int, float] | Iterable[tuple[str | int, float]]

@final
class Piece:
    """A piece of a garment: a closed ring of edges, with marks, a grain line and how it is cut (mm)."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    def __new__(
        cls,
        name: str,
        edges: Iterable[Edge | _Fields],
        *,
        marks: Iterable[DartMark | DrillMark | LineMark | ButtonholeMark | CutoutMark] | None = None,
        grain: tuple[_Point, _Point] | None = None,
        count: int = 1,
        hand: str = "identical",
        cloth: str = "cloth",
        interfacing: str | None = None,
    ) -> Piece: ...
    @classmethod
    def polygon(
        cls,
        name: str,
        points: _Points,
        allowance: ArrayLike,
        names: Sequence[str] | None = None,
        **cutting: Any,
    ) -> Piece:
        """A piece with straight edges from corner to corner; one allowance (mm), or one an edge."""

    @staticmethod
    def from_json(text: str) -> Piece: ...
    def to_json(self) -> str: ...
    def to_dict(self) -> dict[str, Any]: ...
    @property
    def name(self) -> str: ...
    @property
    def edges(self) -> tuple[Edge, ...]: ...
    @property
    def marks(self) -> tuple[DartMark | DrillMark | LineMark | ButtonholeMark | CutoutMark, ...]: ...
    @property
    def grain(self) -> tuple[_Point, _Point] | None: ...
    @property
    def grain_deg(self) -> float: ...
    @property
    def count(self) -> int: ...
    @property
    def hand(self) -> str: ...
    @property
    def cloth(self) -> str: ...
    @property
    def interfacing(self) -> str | None: ...
    @property
    def fold(self) -> int | None: ...
    @property
    def area(self) -> float: ...
    @property
    def bounds(self) -> _Bounds: ...
    def edge(self, name: str) -> Edge: ...
    def at(self, edge: str | int, distance: float) -> tuple[_Point, _Point]:
        """Point on an edge at a distance from its start (mm), and the direction outward."""

    def cut_line(self, tolerance: float = 0.05) -> CutLine:
        """The line to cut along: every edge at its allowance; curves followed within tolerance (mm)."""

    def seam_line(self, tolerance: float = 0.05) -> CutLine:
        """The line to sew along: as drawn, or inside where an edge is drawn as already cut."""

    def mirror(self) -> Piece: ...
    def shifted(self, x: float, y: float) -> Piece: ...
    def turned(self, angle_deg: float) -> Piece: ...
    def unfold(self) -> Piece:
        """The whole piece of one cut on a fold."""

    def handed(self, tolerance: float = 0.001) -> bool:
        """Whether the piece differs from its mirror image by more than tolerance (mm)."""

    def walk(
        self,
        edges: str | int | Iterable[str | int],
        other: Piece,
        other_edges: str | int | Iterable[str | int],
        way: str = "against",
    ) -> Walk:
        """Walks edges along those of another piece they are sewn to, length and notch for notch."""

    def place(self, point: _Point) -> Place:
        """The place on the outline nearest to a point."""

    def turn_dart(self, dart: str, openings: Iterable[Opening | _Fields | tuple[Any, ...]]) -> Piece:
        """Turns a dart about its point to other places of the outline, by shares."""

    def close_dart(self, dart: str, at: _At) -> Piece:
        """Closes a dart and lets the piece flare at a place instead."""

    def open_dart(self, name: str, point: _Point, at: _At, intake: float, opposite: _At) -> Piece:
        """Opens a dart where there is none; at opposite the edge gives way."""

    def cap_dart(self, dart: str, onto: str | int) -> Piece:
        """Gives the mouth of a dart the cap that folds into the edge it is pressed onto."""

    def split(
        self,
        start: _Point,
        end: _Point,
        *,
        name: str = "cut",
        allowance: float = 0.0,
        notches: Sequence[float] = (),
        bulge: float = 0.0,
        steer: tuple[_Point, _Point] | None = None,
    ) -> tuple[Piece, Piece]:
        """The parts to the left and to the right of a cut, each with the seam's edge."""

    def slash_and_spread(self, slashes: Iterable[Slash | _Fields | tuple[Any, ...]]) -> Piece:
        """Slashes the piece across and spreads it."""

    def join(
        self, edge: str | int, other: Piece, other_edge: str | int, tolerance: float = 0.5
    ) -> Joined:
        """One piece of two, laid together along a seam."""

    def scale_for_change(self, along_pct: float, across_pct: float) -> Piece:
        """The piece cut for what the wash will do along the grain and across it (%)."""

    def symmetrise(self, start: _Point, end: _Point, tolerance: float) -> Symmetry:
        """Compares the halves beside an axis from corner to corner, and gives their middle."""

    def shift_edges(self, edges: str | int | Iterable[str | int], by: float) -> Piece:
        """Moves edges parallel to themselves, outward or, negative, inward (mm)."""

    def extend(self, start: _Point, end: _Point, by: float) -> Piece:
        """Lengthens the piece at a line across it, or, negative, shortens it (mm)."""

    def match_notches(self, other: Piece) -> tuple[NotchMatch, ...]:
        """The notches of two pieces paired by their names, then those that only the other has."""

    def pair_notches(
        self,
        edges: str | int | Iterable[str | int],
        other: Piece,
        other_edges: str | int | Iterable[str | int],
        notches: Iterable[PairedNotch | _Fields],
        way: str = "against",
    ) -> tuple[Piece, Piece]:
        """Sets notches that meet on edges of this piece and of another."""

    def trace(self, start: _At, end: _At) -> tuple[Edge, ...]:
        """The edges from one place of the outline forward to another, to be copied onto another piece."""

    def copy_edge(
        self,
        start: _At,
        end: _At,
        copied: Iterable[Edge | _Fields],
        *,
        gap: float = 0.0,
        stretch_pct: float = 0.0,
    ) -> Copied:
        """Copies an edge onto the piece between two landmarks; stretched (%) only if that is asked for."""

    def lining(
        self,
        name: str | None = None,
        *,
        cloth: str = "lining",
        facings: _EdgeWidths | None = None,
        ease: _EdgeWidths | None = None,
        pleats: _EdgeWidths | None = None,
        hem: str = "level",
        depth: float = 0.0,
        clearance: float = 0.0,
        hem_allowance: float = 0.0,
        darts: str = "tucks",
        allowance: float = 10.0,
        shell_change_pct: tuple[float, float] = (0.0, 0.0),
        lining_change_pct: tuple[float, float] = (0.0, 0.0),
    ) -> Lined:
        """The lining of the piece, and what to walk (mm)."""

    def facing(
        self,
        edges: str | int | Iterable[str | int],
        depth: float,
        *,
        name: str | None = None,
        roll: float = 0.0,
        inner_allowance: float = 0.0,
    ) -> Piece:
        """The facing of edges that follow each other (mm)."""

    def part(
        self,
        tilt_deg: float = 0.0,
        *,
        shows: str = "right",
        either_way: bool = False,
        crosswise: bool = False,
        tolerance: float = 0.05,
        matches: Iterable[str] = ...,
    ) -> Part:
        """The piece as it is laid; of a piece on a fold the whole."""

    def svg(self, scale: float = 1.0, edges: bool = True) -> str:
        """The piece drawn to cut from; scale 1 is full size."""

    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class CutLine:
    """The line to cut or sew along: a closed ring of lines and arcs, counter-clockwise (mm)."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    def points(self, tolerance: float | None = None) -> NDArray[np.float64]:
        """Corners of a polygon within tolerance (mm) of the line, shape (n, 2)."""

    @property
    def area(self) -> float: ...
    @property
    def length(self) -> float: ...
    @property
    def bounds(self) -> _Bounds: ...
    @property
    def segments(self) -> tuple[CutSegment, ...]: ...
    @property
    def notches(self) -> tuple[CutNotch, ...]: ...
    def cutouts(self, tolerance: float | None = None) -> tuple[NDArray[np.float64], ...]:
        """Lines along which the cut-outs of the piece are cut, each of shape (n, 2), clockwise."""

    @property
    def unmade(self) -> tuple[str, ...]:
        """Corners that could not be made as asked and are pointed instead, in sentences."""

    def contains(self, point: _Point) -> bool: ...
    def distance(self, point: _Point) -> float: ...
    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class Panel:
    """A panel of cloth as it lies right side up on the table (mm, grain in degrees)."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    def __new__(
        cls,
        name: str,
        outline: _Points,
        holes: Iterable[_Points] = (),
        flaws: Iterable[Flaw | _Fields] = (),
        grain_deg: float = 90.0,
        faces: str = "one",
        nap: bool = False,
        repeat: Repeat | _Fields | None = None,
    ) -> Panel: ...
    @staticmethod
    def by_triangles(name: str, base: float, corners: Iterable[CornerReading | _Fields], **rest: Any) -> Panel:
        """A panel measured by tape in triangles (mm); rest as of replace."""

    @staticmethod
    def by_offsets(name: str, stations: ArrayLike, left: ArrayLike, right: ArrayLike, **rest: Any) -> Panel:
        """A panel measured square from a line on the straight grain (mm); rest as of replace."""

    @staticmethod
    def from_photo(name: str, picture: _Points, truth: _Points, outline: _Points, **rest: Any) -> Panel:
        """A panel photographed beside four known points; rest as of replace."""

    @staticmethod
    def from_svg_path(
        name: str,
        path: str,
        mm_per_unit: float | None = None,
        *,
        known: tuple[_Point, _Point, float] | None = None,
        margin: float | None = None,
        accuracy: float = 0.05,
        **rest: Any,
    ) -> Panel:
        """A panel from the path of an SVG drawing; rest as of replace."""

    def replace(
        self,
        *,
        name: str | None = None,
        holes: Iterable[_Points] | None = None,
        flaws: Iterable[Flaw | _Fields] | None = None,
        grain_deg: float | None = None,
        grain: tuple[int, int] | None = None,
        faces: str | None = None,
        nap: bool | None = None,
        repeat: Repeat | _Fields | None = None,
        spares: Iterable[Spare | _Fields] | None = None,
    ) -> Panel:
        """The panel with what is given in place of what it had."""

    @property
    def name(self) -> str: ...
    @property
    def outline(self) -> NDArray[np.float64]: ...
    @property
    def holes(self) -> list[NDArray[np.float64]]: ...
    @property
    def flaws(self) -> tuple[Flaw, ...]: ...
    @property
    def grain_deg(self) -> float: ...
    @property
    def faces(self) -> str: ...
    @property
    def nap(self) -> bool: ...
    @property
    def repeat(self) -> Repeat | None: ...
    @property
    def taken(self) -> dict[str, Any]: ...
    @property
    def spares(self) -> tuple[Spare, ...]: ...
    @property
    def largest_misfit(self) -> float | None: ...
    @property
    def doubts(self) -> int: ...
    @property
    def area_mm2(self) -> float: ...
    @property
    def bounds(self) -> _Bounds: ...
    @property
    def __geo_interface__(self) -> dict[str, Any]: ...
    def usable(self, losses: ArrayLike = 0.0, accuracy: float = 0.1) -> tuple[Panel, ...]:
        """What can be cut from, the largest part first."""

    def largest_rectangle(self) -> PanelRectangle: ...
    def tallest_rectangle(self, width: float) -> PanelRectangle: ...
    def to_numpy(self) -> NDArray[np.float64]: ...
    @staticmethod
    def from_json(text: str) -> Panel: ...
    def to_json(self) -> str: ...
    def to_dict(self) -> dict[str, Any]: ...
    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class UsablePart:
    """One connected part of a panel (mm)."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    @property
    def outline(self) -> NDArray[np.float64]: ...
    @property
    def holes(self) -> list[NDArray[np.float64]]: ...
    @property
    def area_mm2(self) -> float: ...
    @staticmethod
    def from_json(text: str) -> UsablePart: ...
    def to_json(self) -> str: ...
    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class UsablePanel:
    """What is left of a panel, made by usable_panel (mm)."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    @property
    def parts(self) -> list[UsablePart]: ...
    @property
    def area_mm2(self) -> float: ...
    @property
    def share(self) -> float: ...
    @staticmethod
    def from_json(text: str) -> UsablePanel: ...
    def to_json(self) -> str: ...
    def to_dict(self) -> dict[str, Any]: ...
    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class PanelRectangle:
    """A rectangle on grain in a panel, made by largest_rectangle or tallest_rectangle (mm)."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    @property
    def corner(self) -> _Point: ...
    @property
    def width(self) -> float: ...
    @property
    def height(self) -> float: ...
    @property
    def grain_deg(self) -> float: ...
    @property
    def area_mm2(self) -> float: ...
    @property
    def corners(self) -> NDArray[np.float64]: ...
    @staticmethod
    def from_json(text: str) -> PanelRectangle: ...
    def to_json(self) -> str: ...
    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class Fit:
    """Which pieces fit on which panels, and where; made by fit."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    @property
    def together(self) -> str: ...
    @property
    def why(self) -> str | None: ...
    @property
    def table(self) -> tuple[Answer, ...]: ...
    @property
    def placements(self) -> tuple[Placement, ...]: ...
    @property
    def unplaced(self) -> tuple[Unplaced, ...]: ...
    @property
    def spacing(self) -> float: ...
    @property
    def shares(self) -> list[float]: ...
    @property
    def share(self) -> float: ...
    @property
    def evaluations(self) -> int: ...
    @property
    def out_of_time(self) -> bool: ...
    @property
    def parts(self) -> tuple[Part, ...]: ...
    @property
    def panels(self) -> tuple[Panel, ...]: ...
    def outlines(self) -> list[NDArray[np.float64]]:
        """The cut line of each placed piece where it lies (mm), in the order of placements."""

    def check(self) -> list[str]:
        """What is wrong with the lay, as check says it: nothing."""

    @staticmethod
    def from_json(text: str) -> Fit: ...
    def to_json(self) -> str: ...
    def to_dict(self) -> dict[str, Any]: ...
    def svg(self, width: float = ..., height: float = ...) -> str:
        """The panels with the pieces on them, to one scale, within this size (mm)."""

    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class StripLay:
    """All pieces on cloth by the length; made by strip."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    @property
    def length(self) -> float: ...
    @property
    def density(self) -> float: ...
    @property
    def evaluations(self) -> int: ...
    @property
    def out_of_time(self) -> bool: ...
    @property
    def spacing(self) -> float: ...
    @property
    def placements(self) -> tuple[Placement, ...]: ...
    @property
    def folds(self) -> tuple[Fold, ...]: ...
    @property
    def parts(self) -> tuple[Part, ...]: ...
    @property
    def strip(self) -> Strip: ...
    @property
    def panel(self) -> Panel: ...
    def outlines(self) -> list[NDArray[np.float64]]:
        """The cut line of each piece where it lies (mm), in the order of placements."""

    def check(self) -> list[str]:
        """What is wrong with the lay, as check says it: nothing."""

    @staticmethod
    def from_json(text: str) -> StripLay: ...
    def to_json(self) -> str: ...
    def to_dict(self) -> dict[str, Any]: ...
    def svg(self, width: float = ..., height: float = ...) -> str:
        """The cloth with the pieces on it, within this size (mm)."""

    def _repr_svg_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

@final
class Plan:
    """Everything worked out from a brief; made by plan."""

    __hash__: ClassVar[None]  # type: ignore[assignment]
    @property
    def title(self) -> str: ...
    @property
    def brief(self) -> str: ...
    @property
    def name(self) -> str: ...
    @property
    def summary(self) -> str: ...
    @property
    def pieces(self) -> list[Piece]: ...
    @property
    def lays(self) -> dict[str, Fit]: ...
    @property
    def unplaced(self) -> dict[str, int]: ...
    @property
    def too_large(self) -> list[str]: ...
    @property
    def doubts(self) -> list[str]: ...
    @property
    def cautions(self) -> list[str]: ...
    @property
    def files(self) -> dict[str, bytes]: ...
    def to_json(self) -> str: ...
    def to_dict(self) -> dict[str, Any]: ...
    def write(self, folder: str | PathLike[str]) -> None:
        """Writes the files into a folder, all or nothing; raises OSError."""

    def _repr_html_(self) -> str | None: ...
    def __eq__(self, other: object, /) -> bool: ...
    def __ne__(self, other: object, /) -> bool: ...
    def __reduce__(self) -> tuple[Any, ...]: ...

def true_up(
    pieces: Iterable[Piece], meetings: Iterable[SeamEnd | DartMouth], limit: float
) -> TruedUp:
    """Trues up edges that meet at seams and darts, so that they run on; more than limit (mm) is refused."""

def measured_edge(name: str, points: _Points, smooth: bool = True) -> tuple[Edge, ...]:
    """Measured points as an edge to be copied, straight from point to point or smoothly through them."""

def opened_edge(dart: DartMark, edges: Iterable[Edge | _Fields], share: float = 1.0) -> tuple[Edge, ...]:
    """Edges measured with a dart sewn, as they run with a share of it open."""

def usable_panel(
    outline: _Points,
    losses: ArrayLike,
    flaws: Iterable[_Points] | None = None,
    margin: float = 0.0,
    accuracy: float = 0.1,
) -> UsablePanel:
    """What is left of a panel: its outline less a strip along each edge and less each flaw (mm)."""

def largest_rectangle(
    outline: _Points, holes: Iterable[_Points] | None = None, grain_deg: float = 90.0
) -> PanelRectangle:
    """Largest rectangle, one side on grain, that a panel of any shape holds (mm)."""

def tallest_rectangle(
    outline: _Points, width: float, holes: Iterable[_Points] | None = None, grain_deg: float = 90.0
) -> PanelRectangle:
    """Tallest rectangle of a given width, one side on grain, that a panel of any shape holds (mm)."""

def fit(
    parts: Iterable[Piece | Part | _Fields],
    panels: Iterable[Panel | _Fields],
    *,
    spacing: float = 0.0,
    seed: int = 1,
    budget: int = 200000000,
    seconds: float | None = None,
    threads: int = 0,
    progress: Callable[[float, float | None], object] | None = None,
) -> Fit:
    """Which pieces fit on which panels, where all go together, or what proves that they cannot."""

def least_change(
    parts: Iterable[Piece | Part | _Fields],
    panels: Iterable[Panel | _Fields],
    changes: Iterable[Change | _Fields],
    *,
    spacing: float = 0.0,
    seed: int = 1,
    budget: int = 200000000,
    seconds: float | None = None,
    threads: int = 0,
    progress: Callable[[float, float | None], object] | None = None,
) -> LeastChange:
    """The least change that makes all pieces fit, as far as is found; changes in the maker's order."""

def largest(
    values: tuple[float, float, float],
    parts_at: Callable[[float], Iterable[Piece | Part | _Fields]],
    panels: Iterable[Panel | _Fields],
    *,
    spacing: float = 0.0,
    seed: int = 1,
    budget: int = 200000000,
    seconds: float | None = None,
    threads: int = 0,
    progress: Callable[[float, float | None], object] | None = None,
) -> Largest:
    """The largest value (of low, high and step) at which all pieces fit; parts_at gives the parts of a value."""

def longest(
    parts: Iterable[Piece | Part | _Fields],
    panels: Iterable[Panel | _Fields],
    part: int,
    *,
    beyond: float,
    most: float,
    opposite: bool = False,
    spacing: float = 0.0,
    seed: int = 1,
    budget: int = 200000000,
    seconds: float | None = None,
    threads: int = 0,
    progress: Callable[[float, float | None], object] | None = None,
) -> Largest:
    """How much longer a part can be (mm): corners beyond a line move out along its grain."""

def fullest(
    parts: Iterable[Piece | Part | _Fields],
    panels: Iterable[Panel | _Fields],
    part: int,
    *,
    beyond: float,
    most: float,
    opposite: bool = False,
    spacing: float = 0.0,
    seed: int = 1,
    budget: int = 200000000,
    seconds: float | None = None,
    threads: int = 0,
    progress: Callable[[float, float | None], object] | None = None,
) -> Largest:
    """How much wider a part can be (mm): corners beyond a line move out across its grain."""

def leftovers(
    parts: Iterable[Piece | Part | _Fields],
    panels: Iterable[Panel | _Fields],
    placements: Iterable[Placement | _Fields],
    *,
    folds: Iterable[Fold | _Fields] | None = None,
    rectangles: int = 3,
    least: float = 20.0,
) -> tuple[Leftover, ...]:
    """What a lay leaves of each panel, and the largest rectangles on grain in it."""

def strip(
    parts: Iterable[Piece | Part | _Fields],
    strip: Strip | _Fields,
    *,
    spacing: float = 0.0,
    seed: int = 1,
    budget: int = 50000000,
    seconds: float | None = None,
    threads: int = 0,
    progress: Callable[[float, float | None], object] | None = None,
) -> StripLay:
    """All pieces on cloth by the length, as short as was found; progress gets the share done and the least length."""

def check(
    parts: Iterable[Piece | Part | _Fields],
    panels: Iterable[Panel | _Fields],
    placements: Iterable[Placement | _Fields],
    unplaced: Iterable[Unplaced | _Fields] | None = None,
    *,
    folds: Iterable[Fold | _Fields] | None = None,
    spacing: float = 0.0,
) -> list[str]:
    """What is wrong with a lay, a sentence each; empty when it can be cut."""

def placed(outline: _Points, placement: Placement) -> NDArray[np.float64]:
    """An outline as it lies on a panel: mirrored if so, turned, then shifted (mm), shape (n, 2)."""

def plan(brief: str, name: str = "brief.toml") -> Plan:
    """Works out a plan from the text of a brief; raises BriefError, which names the line."""

_N = TypeVar("_N")
_C = TypeVar("_C")
_B = TypeVar("_B")

class BandMake(IntEnum):
    FOLDED = 0
    FACED = 1

class Basis(IntEnum):
    FRESH = 0
    DRY = 1

class Bath(IntEnum):
    WATER = 0
    CHLORINE_BLEACH = 1
    DIRECT = 2
    REACTIVE = 3
    ACID = 4
    VAT = 5
    SULPHUR = 6
    AZOIC = 7
    METAL_COMPLEX = 8
    DISPERSE = 9
    BASIC = 10
    NATURAL = 11

class BindingFold(IntEnum):
    SINGLE = 0
    DOUBLE = 1

class ButtonShape(IntEnum):
    FLAT = 0
    BALL = 1

class EasePlace(IntEnum):
    BUST = 0
    DRESS_WAIST = 1
    SKIRT_WAIST = 2
    HIP = 3
    SHIRT_CHEST = 4

class EdgeCurve(IntEnum):
    INWARD = 0
    OUTWARD = 1

class Fibre(IntEnum):
    UNKNOWN = 0
    COTTON = 1
    LINEN = 2
    VISCOSE = 3
    POLYESTER = 4
    ACRYLIC = 5
    POLYAMIDE = 6
    ACETATE = 7
    ELASTANE = 8
    RUBBER = 9
    WOOL = 10
    SILK = 11
    MOHAIR = 12
    LEATHER = 13

class Finish(IntEnum):
    UNKNOWN = 0
    PLAIN = 1
    NOT_FAST = 2
    FLAME_RETARDANT = 3
    RESIN = 4

class InBath(IntEnum):
    UNKNOWN = 0
    WATER_ONLY = 1
    ACID = 2
    AMMONIA = 3
    ALCOHOL = 4
    PEROXIDE = 5
    NEUTRALISER = 6
    OTHER = 7

class InsertPlace(IntEnum):
    SEAM = 0
    SLASH = 1

class Reaction(IntEnum):
    THIOSULFATE_TO_TETRATHIONATE = 0
    THIOSULFATE_TO_SULFUR = 1
    THIOSULFATE_TO_SULFATE = 2
    BISULFITE = 3
    METABISULFITE = 4
    SULFITE = 5
    ASCORBIC_ACID = 6
    PEROXIDE = 7

class Rounding(IntEnum):
    NEAREST = 0
    UP = 1
    DOWN = 2

class SquareEnds(IntEnum):
    NEITHER = 0
    FIRST = 1
    LAST = 2
    BOTH = 3

class Stage(IntEnum):
    IN_BLEACH = 0
    DRAINED = 1
    FRESH_BATH = 2

class StitchType(IntEnum):
    CHAIN_SINGLE = 0
    LOCK = 1
    CHAIN_DOUBLE = 2

class Style(IntEnum):
    EXACT = 0
    MM = 1
    MM_HALF = 2
    CM = 3
    CM_COMMA = 4
    METRE = 5
    METRE_COMMA = 6
    INCH_HALF = 7
    INCH_QUARTER = 8
    INCH_EIGHTH = 9
    INCH_SIXTEENTH = 10
    INCH_THIRTY_SECOND = 11
    INCH_MARK = 12
    FOOT_EIGHTH = 13
    YARD_EIGHTH = 14

class Swatch(IntEnum):
    UNTRIED = 0
    PASSED = 1
    FAILED = 2

class ArcFromRise(NamedTuple, Generic[_N]):
    radius: _N
    length: _N
    angle_deg: _N

class StockVolume(NamedTuple, Generic[_N, _B]):
    stock_ml: _N
    amount_g: _N
    doubts: _B
    cautions: _B

class AvailableChlorine(NamedTuple, Generic[_N, _B]):
    available_pct: _N
    trade_pct: _N
    doubts: _B
    cautions: _B

class Batches(NamedTuple):
    numbers: NDArray[np.float64]
    batches: int
    least: int
    capacity_g: float
    heaviest_g: float
    doubts: int
    cautions: int

class BathVolume(NamedTuple, Generic[_N, _B]):
    volume_ml: _N
    doubts: _B
    cautions: _B

class BiasStrips(NamedTuple, Generic[_N, _C]):
    strips: _C
    longest: _N
    joined: _N
    kept_pct: _N

class BiasTube(NamedTuple, Generic[_N, _C]):
    turns: _C
    length: _N
    leftover: _N

class BinderSolids(NamedTuple, Generic[_N, _B]):
    bath_low_pct: _N
    bath_high_pct: _N
    owf_low_pct: _N
    owf_high_pct: _N
    doubts: _B
    cautions: _B

class BindingStrips(NamedTuple, Generic[_N, _C]):
    count: _C  # type: ignore[assignment]
    spare: _N

class BleachDilution(NamedTuple, Generic[_N, _B]):
    bleach_ml: _N
    water_ml: _N
    parts_water: _N
    doubts: _B
    cautions: _B

class BleachTime(NamedTuple):
    time_min: float
    next_swatch_min: float
    rate: float
    doubts: int
    cautions: int

class BoxPleats(NamedTuple, Generic[_N, _C, _B]):
    flat: _N
    finished: _N
    count: _C  # type: ignore[assignment]
    show: _N
    depth: _N
    intake: _N
    taken_up: _N
    ratio: _N
    doubts: _B

class Breadths(NamedTuple, Generic[_N, _C]):
    count: _C  # type: ignore[assignment]
    round: _N
    spare: _N

class ButtonForHole(NamedTuple, Generic[_N]):
    diameter: _N
    creep: _N

class ButtonLoop(NamedTuple, Generic[_N, _B]):
    visible: _N
    cut: _N
    cautions: _B

class ButtonStand(NamedTuple, Generic[_N]):
    extension: _N
    past_rim: _N
    overlap: _N

class CapEase(NamedTuple, Generic[_N, _B]):
    ease: _N
    ease_pct: _N
    doubts: _B

class CarriedLiquor(NamedTuple, Generic[_N, _B]):
    carried_ml: _N
    doubts: _B
    cautions: _B

class Casing(NamedTuple, Generic[_N]):
    depth: _N
    allowance: _N

class CircleSkirt(NamedTuple, Generic[_N, _B]):
    waist_radius: _N
    hem_radius: _N
    hem_length: _N
    doubts: _B

class CircleSkirtOnCloth(NamedTuple, Generic[_N, _B]):
    fraction: _N
    length: _N
    waist_radius: _N
    hem_radius: _N
    hem_length: _N
    piece_angle_deg: _N
    cloth_length: _N
    doubts: _B

class ComponentCheck(NamedTuple, Generic[_C, _B]):
    bears: _C
    colour: _C
    doubts: _B
    cautions: _B

class CoverMark(NamedTuple, Generic[_N]):
    now: _N
    depth: _N
    ground_after: _N
    mark_after: _N
    after: _N

class CurvedBand(NamedTuple):
    tops: NDArray[np.float64]
    inner_radius: float
    outer_radius: float
    angle_deg: float
    sagitta: float

class CurvedBinding(NamedTuple, Generic[_N]):
    seam: _N
    stretch_pct: _N
    width_pct: _N

class CutForChange(NamedTuple, Generic[_N, _B]):
    cut: _N
    added: _N
    doubts: _B

class CutState(NamedTuple, Generic[_N]):
    finished: _N
    cut: _N

class Dart(NamedTuple, Generic[_N, _B]):
    leg: _N
    angle_deg: _N
    doubts: _B

class DartEquivalent(NamedTuple, Generic[_N, _B]):
    ease_pct: _N
    gather_ratio: _N
    tuck_depth: _N
    doubts: _B

class DartFromGape(NamedTuple, Generic[_N]):
    intake: _N
    angle_deg: _N

class DartInPanel(NamedTuple, Generic[_N, _B]):
    intake_each: _N
    leftover: _N
    leg: _N
    kink_deg: _N
    doubts: _B

class DoubleDart(NamedTuple, Generic[_N, _B]):
    upper_leg: _N
    lower_leg: _N
    upper_angle_deg: _N
    lower_angle_deg: _N
    bend_deg: _N
    doubts: _B

class Elastic(NamedTuple, Generic[_N, _B]):
    round: _N
    cut: _N
    worn_pct: _N
    passing_pct: _N
    doubts: _B
    cautions: _B

class FiveGores(NamedTuple, Generic[_N, _B]):
    front_waist: _N
    side_waist: _N
    back_waist: _N
    front_hip: _N
    side_hip: _N
    back_hip: _N
    doubts: _B

class Flounce(NamedTuple, Generic[_N]):
    inner_radius: _N
    outer_radius: _N
    hem: _N
    ratio: _N
    square: _N

class FoldedBand(NamedTuple, Generic[_N]):
    cut_width: _N
    fold_line: _N
    inner: _N

class Frustum(NamedTuple, Generic[_N]):
    slant: _N
    inner_radius: _N
    outer_radius: _N
    angle_deg: _N
    area_mm2: _N

class Gathers(NamedTuple, Generic[_N, _B]):
    flat: _N
    taken_up: _N
    ratio: _N
    doubts: _B

class GatherSections(NamedTuple):
    flats: NDArray[np.float64]
    finished: float
    ratio: float
    doubts: int

class Godet(NamedTuple, Generic[_N]):
    angle_deg: _N
    chord: _N
    sagitta: _N
    added: _N

class Gore(NamedTuple, Generic[_N, _B]):
    waist_width: _N
    hip_width: _N
    hem_width: _N
    side_length: _N
    flare_deg: _N
    hem_rise: _N
    doubts: _B

class Gusset(NamedTuple, Generic[_N]):
    angle_deg: _N
    long_diagonal: _N
    cut_long: _N
    cut_short: _N

class HeadOpening(NamedTuple, Generic[_N, _B]):
    least_slit: _N
    spare: _N
    doubts: _B

class HemLetDown(NamedTuple, Generic[_N]):
    left: _N
    crease: _N
    stitching: _N
    longest: _N
    longest_faced: _N

class HemOnCurve(NamedTuple, Generic[_N]):
    excess_pct: _N
    excess: _N
    raw_edge: _N

class HipWaistDrop(NamedTuple, Generic[_N, _B]):
    drop: _N
    doubts: _B

class HolesLeft(NamedTuple, Generic[_N, _C, _B]):
    count: _C  # type: ignore[assignment]
    last: _N
    to_end: _N
    doubts: _B

class InsertStrip(NamedTuple, Generic[_N]):
    finished: _N
    cut_width: _N
    cloth: _N

class KnifePleats(NamedTuple, Generic[_N, _C, _B]):
    flat: _N
    finished: _N
    count: _C  # type: ignore[assignment]
    show: _N
    depth: _N
    intake: _N
    taken_up: _N
    ratio: _N
    doubts: _B

class Lab(NamedTuple, Generic[_N]):
    l: _N
    a: _N
    b: _N

class LengthChain(NamedTuple):
    value: float
    plus: float
    minus: float
    worst_per_mm: float
    likely_per_mm: float

class ChainShares(NamedTuple):
    parts: NDArray[np.float64]
    misses: NDArray[np.float64]
    value: float
    worst: float
    likely: float
    largest: int
    largest_part: float

class LetOut(NamedTuple, Generic[_N, _B]):
    lacking: _N
    each: _N
    gained: _N
    short_by: _N
    doubts: _B

class LevelLine(NamedTuple, Generic[_N]):
    radius: _N
    chord: _N
    sag: _N
    length: _N

class LiningLength(NamedTuple, Generic[_N, _B]):
    seam_to_seam: _N
    straight: _N
    spare: _N
    fold: _N
    doubts: _B

class LiquorShares(NamedTuple):
    shares_ml: NDArray[np.float64]
    waters_ml: NDArray[np.float64]
    bath_ml: float
    water_ml: float
    doubts: int
    cautions: int

class LoopSlack(NamedTuple, Generic[_N, _B]):
    slack: _N
    doubts: _B

class MixTemperature(NamedTuple):
    temperature_c: float
    volume_ml: float
    doubts: int
    cautions: int

class NapLayout(NamedTuple, Generic[_N, _C, _B]):
    across_one_way: _C
    across_turned: _C
    length_one_way: _N
    length_turned: _N
    nap_extra: _N
    doubts: _B

class NeedleBlade(NamedTuple, Generic[_N]):
    blade: _N
    thread: _N

class NegativeEase(NamedTuple, Generic[_N, _B]):
    girth: _N
    ease: _N
    furthest: _N
    doubts: _B

class Neutraliser(NamedTuple, Generic[_N, _B]):
    chlorine_g: _N
    amount_g: _N
    ratio: _N
    doubts: _B
    cautions: _B

class OffCentreOpening(NamedTuple, Generic[_N, _B]):
    narrow_to_line: _N
    wide_to_line: _N
    narrow_cut: _N
    wide_cut: _N
    largest_shift: _N
    dart_to_narrow: _N
    dart_to_wide: _N
    doubts: _B

class Overdye(NamedTuple, Generic[_N]):
    pale: _N
    deep: _N
    pale_l: _N
    deep_l: _N

class Owf(NamedTuple, Generic[_N, _B]):
    amount_g: _N
    doubts: _B
    cautions: _B

class PanelByOffsets(NamedTuple):
    left_bow: NDArray[np.float64]
    right_bow: NDArray[np.float64]
    area: float
    length: float
    widest: float
    narrowest: float
    largest_bow: float

class PanelByTriangles(NamedTuple):
    along: NDArray[np.float64]
    across: NDArray[np.float64]
    misfits: NDArray[np.float64]
    area: float
    perimeter: float
    largest_misfit: float
    weakest_corner: int
    weakest_per_mm: float
    doubts: int

class PhotoMap(NamedTuple):
    along: NDArray[np.float64]
    across: NDArray[np.float64]
    scales: NDArray[np.float64]
    reach: float
    coarsest: float
    doubts: int

class PiecedLength(NamedTuple):
    joined: float
    spare: float
    joins: int
    fewest: int

class PlantDyestuff(NamedTuple, Generic[_N, _B]):
    low_g: _N
    high_g: _N
    doubts: _B
    cautions: _B

class PooledStrength(NamedTuple):
    strength_pct: float
    volume_ml: float
    cautions: int

class PuffSpread(NamedTuple, Generic[_N, _B]):
    flat: _N
    added: _N
    spread_each: _N
    strip_ratio: _N
    doubts: _B

class Repeats(NamedTuple, Generic[_N, _C]):
    repeats: _C
    each: _N
    total: _N
    waste: _N

class Ribbing(NamedTuple, Generic[_N]):
    round: _N
    cut_length: _N
    cut_width: _N
    stretch_pct: _N

class Rinses(NamedTuple, Generic[_N, _C, _B]):
    rinses_low: _C
    rinses_high: _C
    left: _N
    water_ml: _N
    doubts: _B
    cautions: _B

class RoundedSet(NamedTuple):
    tapes: NDArray[np.float64]
    total: float
    largest_change: float

class Ruffle(NamedTuple, Generic[_N, _C, _B]):
    flat: _N
    cut_width: _N
    strips: _C
    cloth_length: _N
    doubts: _B

class SeamPleat(NamedTuple, Generic[_N]):
    first_edge: _N
    next_edge: _N
    intake: _N

class SectionedBand(NamedTuple):
    tops: NDArray[np.float64]
    slant: float
    end_angle_deg: float
    join_kink_deg: float
    doubts: int

class ShapedBand(NamedTuple, Generic[_N]):
    inner_radius: _N
    outer_radius: _N
    angle_deg: _N
    sagitta: _N
    area_mm2: _N

class Shirring(NamedTuple, Generic[_N, _C, _B]):
    flat: _N
    ratio: _N
    rows: _C
    stitching: _N
    cautions: _B

class ShrinkPair(NamedTuple, Generic[_N, _B]):
    shell_after: _N
    lining_after: _N
    below: _N
    shell_cut: _N
    lining_cut: _N
    doubts: _B

class SizeStep(NamedTuple, Generic[_N, _B]):
    step: _N
    each_edge: _N
    doubts: _B

class SnipSpacing(NamedTuple, Generic[_N]):
    spacing: _N
    flat: _N

class SpacingByPitch(NamedTuple, Generic[_N, _C]):
    count: _C  # type: ignore[assignment]
    pitch: _N

class SpacingThrough(NamedTuple):
    places: NDArray[np.float64]
    pitch_before: float
    pitch_after: float
    fixed: int
    doubts: int

class Srgb(NamedTuple, Generic[_N, _C]):
    red: _N
    green: _N
    blue: _N
    outside: _C

class StraightBand(NamedTuple, Generic[_N, _C, _B]):
    cut_length: _N
    cut_width: _N
    strips: _C
    doubts: _B

class TakeIn(NamedTuple, Generic[_N, _B]):
    excess: _N
    each: _N
    taken: _N
    leftover: _N
    doubts: _B

class Tiers(NamedTuple):
    flats: NDArray[np.float64]
    hem: float
    ratio: float
    strip: float
    doubts: int

class ToleranceStack(NamedTuple, Generic[_N]):
    worst: _N
    likely: _N

class ToleranceStackList(NamedTuple):
    worst: float
    likely: float
    largest: int
    largest_part: float

class Trilaterate(NamedTuple, Generic[_N, _B]):
    along: _N
    across: _N
    along_per_mm: _N
    across_per_mm: _N
    doubts: _B

class Tucks(NamedTuple, Generic[_N, _B]):
    flat: _N
    taken_up: _N
    fold_pitch: _N
    gap: _N
    margin: _N
    doubts: _B

class TurnThrough(NamedTuple, Generic[_N]):
    diameter: _N
    least_opening: _N
    spare: _N

class TurnedHem(NamedTuple, Generic[_N]):
    allowance: _N
    cut_length: _N

class VNeck(NamedTuple, Generic[_N]):
    edge: _N
    off_grain_deg: _N
    stay: _N

class Washes(NamedTuple, Generic[_N, _B]):
    after: _N
    change_pct: _N
    doubts: _B

class WearingEase(NamedTuple, Generic[_N, _B]):
    low: _N
    high: _N
    garment_low: _N
    garment_high: _N
    doubts: _B

class WidthConversion(NamedTuple, Generic[_N, _B]):
    by_area: _N
    low: _N
    high: _N
    doubts: _B

class WrapSkirt(NamedTuple, Generic[_N, _B]):
    back_waist: _N
    back_hip: _N
    front_waist: _N
    front_hip: _N
    waist_edge: _N
    wrap_pct: _N
    doubts: _B

class Xyz(NamedTuple, Generic[_N]):
    x: _N
    y: _N
    z: _N

class ZigzagButtonhole(NamedTuple, Generic[_N, _C]):
    length: _N
    width: _N
    stitches: _C

class ZipLength(NamedTuple, Generic[_N]):
    needed: _N
    buy: _N
    shorten: _N
    top_stop: _N
    bottom_stop: _N

@overload
def arc_from_rise(chord: float, rise: float) -> ArcFromRise[float]: ...  # type: ignore[overload-overlap]

@overload
def arc_from_rise(chord: _ArrayLikeFloat_co, rise: _ArrayLikeFloat_co) -> ArcFromRise[NDArray[np.float64]]:
    """Radius and length of the curve that rises so far over its chord.

    `radius = (chord² / 4 + rise²) / (2 · rise)`, angle `4 · atan(2 · rise / chord)`, length their product. For a waist,
    hem or yoke edge on a panel there is: lay a ruler across its ends and measure the rise in the middle, where the curve
    is near enough an arc. A rise above half the chord is more than a half ring.

    Parameters
    ----------
    chord : array_like
        straight from end to end (mm, 1 to 100000)
    rise : array_like
        height of the curve over the chord's middle (mm, 0.1 to 100000)

    Returns
    -------
    radius : float
        Radius of the arc (mm)
    length : float
        Length along the arc (mm)
    angle_deg : float
        Angle from end to end, seen from the centre (deg)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry. *The Practical Designer*, women's volume, Rosenfeld 1918, lesson 73 has a waist so drafted; see
    `tests/vectors/arc_from_rise.csv`.

    Example: arc_from_rise(chord=317.5, rise=38.1) gives radius 349.783, length 329.565, angle_deg 53.98
    """

@overload
def assistant_volume(mass_g: float, ratio: float, grams: float, stock_pct: float) -> StockVolume[float, int]: ...  # type: ignore[overload-overlap]

@overload
def assistant_volume(mass_g: _ArrayLikeFloat_co, ratio: _ArrayLikeFloat_co, grams: _ArrayLikeFloat_co, stock_pct: _ArrayLikeFloat_co) -> StockVolume[NDArray[np.float64], NDArray[np.uint64]]:
    """Volume of a stock solution for so many grams in a litre of bath.

    `stock = mass · ratio · grams / (10 · stock_pct)`: salt, soda and other assistants go by the bath, not by the goods. Usual
    are up to 100 g of salt; more than 150 g in a litre, and a stock outside 0.05 to 50, are doubted.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    ratio : array_like
        liquor to goods, by mass (1 to 200)
    grams : array_like
        grams in a litre of bath (0 to 500)
    stock_pct : array_like
        grams in 100 ml of the stock (%, 0.001 to 100)

    Returns
    -------
    stock_ml : float
        Stock solution to measure out (ml)
    amount_g : float
        What that holds (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: R. Sohel, textile calculation pages, 2014-12 and 2015-01. Where doubts begin: common practice, no source.

    Example: assistant_volume(mass_g=5, ratio=10, grams=20, stock_pct=25) gives stock_ml 4, amount_g 1, doubts 0, cautions 7
    """

@overload
def available_chlorine(naocl_pct: float, specific_gravity: float = ...) -> AvailableChlorine[float, int]: ...  # type: ignore[overload-overlap]

@overload
def available_chlorine(naocl_pct: _ArrayLikeFloat_co, specific_gravity: _ArrayLikeFloat_co = ...) -> AvailableChlorine[NDArray[np.float64], NDArray[np.uint64]]:
    """Available chlorine of bleach from the sodium hypochlorite on its label.

    `available = NaOCl · 70.906 / 74.442`. Labels mix three percentages: sodium hypochlorite by mass, available chlorine by
    mass, and grams of available chlorine in 100 ml; a bottle marked 10 or 12.5 usually means the last. Which one a label
    means changes the answer by up to a fifth. A public health table that takes 5 % hypochlorite as 5 % available chlorine
    is 5 % off, on purpose. Bleach weakens in store: an old bottle is weaker than its label, never stronger. Outside 1 to
    15 % the strength is doubted: 0.05 may be a share for 5 %.

    Parameters
    ----------
    naocl_pct : array_like
        sodium hypochlorite by mass (%, 0.1 to 20)
    specific_gravity : array_like, default 1.1
        mass of a millilitre of it (g) (1 to 1.3)

    Returns
    -------
    available_pct : float
        Available chlorine by mass (%)
    trade_pct : float
        Available chlorine in grams in 100 ml, which the trade also calls percent (%)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Molar masses of Cl2 and NaOCl. *Handbook of Chlorination*, Van Nostrand Reinhold 1972, after a supplier's product
    profile (trade percent). A specific gravity of 1.1: a worked example on a pool-chemistry forum. Bottles of 1 to 15 %:
    common practice, no source.

    Example: available_chlorine(naocl_pct=5.25, specific_gravity=1.1) gives available_pct 5.0006, doubts 0, cautions 113
    """

def batches(masses_g: Sequence[float] | NDArray[Any], vessel_ml: float, ratio: float, fill: float = ...) -> Batches:
    """Which garment goes into which bath, when one vessel does not hold all.

    The vessel takes `vessel · fill / ratio` of dry goods. The heaviest garment is placed first, each into the first bath
    with room (first fit decreasing); where `batches` is `least`, no sharing out needs fewer. A garment is never split, and
    pieces that are to be one garment belong into one bath: give them as one mass. Two baths seldom match in shade.

    Parameters
    ----------
    masses_g : sequence of float
        dry mass of each garment (g, 0.01 to 1000000, 1 to 100 items)
    vessel_ml : float
        what the vessel holds to the brim (ml, 1 to 100000000)
    ratio : float
        liquor to goods, by mass (1 to 200)
    fill : float, default 0.75
        part of the vessel filled with liquor; the rest is goods and room to stir (0.1 to 1)

    Returns
    -------
    numbers : array
        number of each garment's bath, from 1
    batches : int
        Baths needed, shared out as given
    least : int
        Fewest that any sharing out could need, by total mass
    capacity_g : float
        Most that the vessel takes at once (g)
    heaviest_g : float
        Heaviest bath (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `numbers` is too short. `NoSolution` naming
        `vessel_ml` when it does not take the heaviest garment; its `min` is the least vessel that would.

    Notes
    -----
    Source: Arithmetic; first fit decreasing is a usual method. Three quarters full is common practice, no source.

    Example: batches(masses_g=[170, 380, 120, 200], vessel_ml=12000, ratio=18, fill=0.75) gives numbers 2 1 1 2, batches 2, least 2, capacity_g 500, heaviest_g 500, doubts 0, cautions 517
    """

@overload
def bath_volume(mass_g: float, ratio: float) -> BathVolume[float, int]: ...  # type: ignore[overload-overlap]

@overload
def bath_volume(mass_g: _ArrayLikeFloat_co, ratio: _ArrayLikeFloat_co) -> BathVolume[NDArray[np.float64], NDArray[np.uint64]]:
    """Volume of a bath from the dry mass of goods and the liquor ratio.

    `volume = mass · ratio`, a litre of liquor taken as a kilogram: 20 is 20 litres a kilogram, often written 1:20. The
    vessel must hold more than this: the goods, and room to stir.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    ratio : array_like
        liquor to goods, by mass (1 to 200)

    Returns
    -------
    volume_ml : float
        Volume of liquor (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: R. Sohel, textile calculation pages, 2015 (5 g at 1:10 is 50 ml). The doubt's 3 to 40: the smallest ratio of an
    equipment page and above the largest home recipe seen (37.6); common practice.

    Example: bath_volume(mass_g=380, ratio=20) gives volume_ml 7600, doubts 0, cautions 5
    """

@overload
def bias_along_selvedge(width: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def bias_along_selvedge(width: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Distance along the selvedge between the cuts of a true bias strip.

    A strip of width `w`, measured square to its edges, lies at 45° to the selvedge and meets it over `w · √2`. The old
    rule of a third more comes out 6 % short.

    Parameters
    ----------
    width : array_like
        width of the strip, square to its edges (mm, 0.1 to 100000)

    Returns
    -------
    float
        Distance along the selvedge, and equally across the cloth (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916, ch. XXII, table of measures along the selvage: every row within 0.08 in.

    Example: bias_along_selvedge(width=100) gives 141.42
    """

@overload
def bias_square(length: float, width: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def bias_square(length: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Side of the square of cloth that holds a bias strip of a given length and width.

    `side = √(length · width)`: the strip's area as a square, which the continuous tube comes near to. It is the least:
    add 25 to 50 mm (1 to 2 in) for the seams, more if the strip is pieced from separate strips.

    Parameters
    ----------
    length : array_like
        length of strip needed, joins included (mm, 1 to 10000000)
    width : array_like
        cut width of the strip, square to its edges (mm, 0.1 to 10000, <= length)

    Returns
    -------
    float
        Side of the square, without seams (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the length: the
        two are swapped.

    Notes
    -----
    Source: Equal areas. `tests/vectors/bias_square.csv` has published and hand-worked rows.

    Example: bias_square(length=4000, width=40) gives 400
    """

@overload
def bias_strip_length(side: float, width: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def bias_strip_length(side: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Length of bias strip that a square of cloth gives.

    `length = side² / width`, the other way of `bias_square`. It is the most: seams and end triangles take from it (72
    in by the sum, a 12 in square has given about 60 in of 2 in strip). Take the seams' allowances off the side first.

    Parameters
    ----------
    side : array_like
        side of the square, less its seams (mm, 1 to 100000)
    width : array_like
        cut width of the strip, square to its edges (mm, 0.1 to 10000, <= side)

    Returns
    -------
    float
        Length of the strip, at most (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `width` when it is more than the side.

    Notes
    -----
    Source: Equal areas. `tests/vectors/bias_strip_length.csv` has published rows.

    Example: bias_strip_length(side=400, width=40) gives 4000
    """

@overload
def bias_strips(length: float, width: float, strip: float, allowance: float = ..., shortest: float = ...) -> BiasStrips[float, int]: ...  # type: ignore[overload-overlap]

@overload
def bias_strips(length: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co, strip: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co = ..., shortest: _ArrayLikeFloat_co = ...) -> BiasStrips[NDArray[np.float64], NDArray[np.uint32]]:
    """Strips that a rectangle gives when it is cut across at 45°, and their length when joined.

    The first cut runs from a corner, and the others lie `strip · √2` apart along the selvedge to both sides of it. Between the
    two corners' cuts the strips are full, `√2` times the shorter side; in the two end triangles each is shorter than the one
    before. Strips shorter than `shortest`, or than a join takes, are left out. Ends are cut on the straight grain, and each
    join takes `2 · √2 · allowance` along the strip. Fewer, longer pieces come from `bias_tube`.

    Parameters
    ----------
    length : array_like
        one side of the rectangle, on grain (mm, 10 to 100000)
    width : array_like
        the other side (mm, 10 to 100000)
    strip : array_like
        width of a strip, square to its edges (mm, 1 to 10000)
    allowance : array_like, default 6
        seam allowance at each join (mm, 0 to 100)
    shortest : array_like, default 100
        shortest strip worth joining (mm, 0 to 100000)

    Returns
    -------
    strips : int
        Number of strips
    longest : float
        Length of the longest, along its shorter edge (mm)
    joined : float
        All strips joined on the straight grain, what the joins take left off (mm)
    kept_pct : float
        Share of the cloth in them before joining (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `strip` when the cloth holds none so wide; naming
        `allowance` when a join takes the longest strip; naming `shortest` when no strip is as long as that, with the longest as
        `max`.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/bias_strips.csv` has published and hand-worked rows: a tutorial gets about 60 in of 2 in strips
    from a 12 in square, where its area would give 72.

    Example: bias_strips(length=700, width=300, strip=40, allowance=6, shortest=100) gives strips 15, longest 424.26, joined 4549.1
    """

@overload
def bias_tube(length: float, width: float, strip: float, allowance: float = ...) -> BiasTube[float, int]: ...  # type: ignore[overload-overlap]

@overload
def bias_tube(length: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co, strip: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co = ...) -> BiasTube[NDArray[np.float64], NDArray[np.uint32]]:
    """One long bias strip from a rectangle sewn to a slanted tube.

    A corner is cut off at 45° and sewn to the other end; the slanted piece is marked in strips, its long sides are sewn
    together one strip out of step, and the spiral is cut. Both seams cross every turn on the straight grain. The first seam
    takes two allowances of the long side, the second two of the short: `turns = floor((long - 2 · allowance) / (strip · √2))`,
    `length = turns · (short - 2 · allowance) · √2`. Area alone, `long · short / strip`, promises up to one turn more.

    Parameters
    ----------
    length : array_like
        one side of the rectangle, on grain (mm, 10 to 100000)
    width : array_like
        the other side (mm, 10 to 100000)
    strip : array_like
        width of the strip, square to its edges (mm, 1 to 10000)
    allowance : array_like, default 6
        allowance of both seams (mm, 0 to 100)

    Returns
    -------
    turns : int
        Turns of the strip round the tube
    length : float
        Length of the strip (mm)
    leftover : float
        What is left over along the long side, less than one turn (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the short side; naming `strip`
        when not one turn is had.

    Notes
    -----
    Source: Plane geometry. A tutorial counts area, and only one allowance off each side: 22 in square, 3 in strips, 1/4 in: 157.7 in,
    where five whole turns give 152. `tests/vectors/bias_tube.csv` has published and hand-worked rows.

    Example: bias_tube(length=700, width=300, strip=40, allowance=6) gives turns 12, length 700, leftover 9.18
    """

@overload
def binder_solids(low_pct: float, high_pct: float, parts_water: float, pick_up_pct: float, dips: int) -> BinderSolids[float, int]: ...  # type: ignore[overload-overlap]

@overload
def binder_solids(low_pct: _ArrayLikeFloat_co, high_pct: _ArrayLikeFloat_co, parts_water: _ArrayLikeFloat_co, pick_up_pct: _ArrayLikeFloat_co, dips: _ArrayLikeFloat_co) -> BinderSolids[NDArray[np.float64], NDArray[np.uint64]]:
    """Solids that dips in a diluted binder, such as soymilk, leave on the cloth, as a range.

    `bath = solids / (1 + parts)`; each dip, dried between, leaves `bath · pick_up / 100` on weight of fibre. Homemade soymilk
    holds about 10 % of bean, bought 3 to 6 % of solids: the two are not the same measure, so read the label. A binder of
    food goes off: make it fresh, keep it cool, throw it away when it smells, and tell those who have an allergy to it. Solids
    outside 0.1 to 20 % and a pick-up below 10 % are doubted.

    Parameters
    ----------
    low_pct : array_like
        solids of the binder undiluted, least (%, 0.01 to 50)
    high_pct : array_like
        solids of the binder undiluted, most (%, 0.01 to 50, >= low_pct)
    parts_water : array_like
        parts of water to one of binder (0 to 100)
    pick_up_pct : array_like
        liquor held after wringing, on dry mass (%, 1 to 500)
    dips : array_like of int
        dips, dried between (1 to 50)

    Returns
    -------
    bath_low_pct : float
        Solids in the diluted binder, least (%)
    bath_high_pct : float
        Solids in the diluted binder, most (%)
    owf_low_pct : float
        Solids on weight of fibre after all dips, least (%)
    owf_high_pct : float
        Solids on weight of fibre after all dips, most (%)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high_pct` when it is less than `low_pct`.

    Notes
    -----
    Source: Arithmetic. Strengths and 1 part to 5 of water: vickifearon.com; rachelbakewell; tondro.com, 2009. Where doubts begin:
    common practice, no source.

    Example: binder_solids(low_pct=3, high_pct=6, parts_water=5, pick_up_pct=90, dips=4) gives bath_low_pct 0.5, bath_high_pct 1, owf_low_pct 1.8, owf_high_pct 3.6, doubts 0, cautions 1
    """

@overload
def binding_length(edge: float, corners: int = ..., corner: float = ..., finish: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def binding_length(edge: _ArrayLikeFloat_co, corners: _ArrayLikeFloat_co = ..., corner: _ArrayLikeFloat_co = ..., finish: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Length of binding for an edge, with what its corners and its two ends take.

    `length = edge + corners · corner + finish`. A corner turned outward with a mitre takes, by the geometry of its fold, no
    more than the edge itself; what makers allow is for handling and for a fold that is sewn over. One tutorial allows about
    16 in over the perimeter of a square for everything; the defaults are that, shared 2 in to a corner and 8 in to the two
    ends, a share of ours. A neck or an armhole has no corners and takes two allowances to finish. How many strips give the
    length, with what each join loses: `binding_strips`.

    Parameters
    ----------
    edge : array_like
        length of the edge to be bound (mm, 1 to 1000000)
    corners : array_like of int, default 0
        corners to be mitred (0 to 1000)
    corner : array_like, default 50.8
        allowed for each of them (mm, 0 to 1000)
    finish : array_like, default 203.2
        for joining or finishing the two ends (mm, 0 to 10000)

    Returns
    -------
    float
        Length of binding (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; quiltingboard.com, post 8276918 (64 in square: 256 in and about 16). `tests/vectors/binding_length.csv`.

    Example: binding_length(edge=6502.4, corners=4, corner=50.8, finish=203.2) gives 6908.8
    """

@overload
def binding_strips(length: float, strip: float, join: float = ...) -> BindingStrips[float, int]: ...  # type: ignore[overload-overlap]

@overload
def binding_strips(length: _ArrayLikeFloat_co, strip: _ArrayLikeFloat_co, join: _ArrayLikeFloat_co = ...) -> BindingStrips[NDArray[np.float64], NDArray[np.uint32]]:
    """Number of strips of one length to join for a binding.

    Each join takes `join` off the two strips together: `count` is the least with
    `count · strip - (count - 1) · join >= length`. Strips with square ends, crossed and joined from corner to corner at 45°,
    lose their own width at each join; with ends cut at 45°, √2 times the two allowances; joined end to end, the two
    allowances.

    Parameters
    ----------
    length : array_like
        length of binding needed, corners and ends included (mm, 1 to 1000000)
    strip : array_like
        length of each strip, measured along one edge (mm, 10 to 100000)
    join : array_like, default 0
        length lost at each join (mm, 0 to 10000, < strip)

    Returns
    -------
    count : int
        Number of strips
    spare : float
        What the joined strips are longer than needed (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `join` when it takes a whole strip, or so much
        that more than 100000 strips are needed.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/binding_strips.csv` has published and hand-worked rows.

    Example: binding_strips(length=3000, strip=900, join=50) gives count 4, spare 450
    """

@overload
def binding_width(finished: float, turn: float, thickness: float = ..., fold: BindingFold | str | int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def binding_width(finished: _ArrayLikeFloat_co, turn: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co = ..., fold: BindingFold | str | int = ...) -> NDArray[np.float64]:
    """Width to cut a binding of a given finished width.

    Single: `2 · finished + 2 · turn + thickness`. Double: `2 · (2 · finished + turn + thickness)`. With a turn as wide as
    the binding shows these are the 4 and 6 times that are usually told. Bias narrows when it is stretched on: try a
    short piece.

    Parameters
    ----------
    finished : array_like
        width that shows on one side (mm, 0.5 to 1000)
    turn : array_like
        single: turned in at each long edge; double: seam allowance (mm, 0 to 1000)
    thickness : array_like, default 0
        way round the edge itself: the thickness of what is bound (mm, 0 to 100)
    fold : BindingFold, default "single"
        how it is folded

    Returns
    -------
    float
        Width to cut (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: The layers added up; 4 and 6 times are common practice, no source. `tests/vectors/binding_width.csv` has hand-worked
    rows.

    Example: binding_width(finished=8, turn=8, thickness=0, fold='single') gives 32
    """

@overload
def bleach_dilution(volume_ml: float, target_pct: float, stock_pct: float, minutes: float, fibre: Fibre | str | int, finish: Finish | str | int, swatch: Swatch | str | int, in_bath: InBath | str | int) -> BleachDilution[float, int]: ...  # type: ignore[overload-overlap]

@overload
def bleach_dilution(volume_ml: _ArrayLikeFloat_co, target_pct: _ArrayLikeFloat_co, stock_pct: _ArrayLikeFloat_co, minutes: _ArrayLikeFloat_co, fibre: Fibre | str | int, finish: Finish | str | int, swatch: Swatch | str | int, in_bath: InBath | str | int) -> BleachDilution[NDArray[np.float64], NDArray[np.uint64]]:
    """Bleach and water for a bath of a given strength, for a given cloth and time.

    `bleach = volume · target / stock`, both as available chlorine. "1 : 100" in public health tables is 1 part in 100, that
    is 1 + 99. The bleach goes into the cold water. A bath is made for a time: `minutes` is how long the goods may stay in
    at most, by the product's label and by your swatch, and sooner when the colour is reached. Test first: 15 ml bleach in
    60 ml water on a hidden seam for a minute, or better a row of timed swatches (`bleach_time`).

    Usual are a target up to 0.46 %, a bottle of 1 to 15 %, up to 30 minutes and at least 50 ml; beyond that there are doubts.

    Parameters
    ----------
    volume_ml : array_like
        volume of the bath (ml, 1 to 1000000)
    target_pct : array_like
        available chlorine wanted (%, 0.001 to 0.6, <= stock_pct)
    stock_pct : array_like
        available chlorine of the bottle (%, 0.1 to 20)
    minutes : array_like
        longest that the goods stay in (min, 0.1 to 60)
    fibre : Fibre
        the most delicate fibre in the goods, thread and trims included
    finish : Finish
        what was done to the cloth
    swatch : Swatch
        how a swatch stood the same bath
    in_bath : InBath
        what else is in the bath

    Returns
    -------
    bleach_ml : float
        Bleach from the bottle (ml)
    water_ml : float
        Cold water it is added to (ml)
    parts_water : float
        Parts of water to one of bleach
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `target_pct` when the bottle is weaker. `Refused`
        naming `in_bath` for anything but water; naming `fibre`, `finish` or `swatch` for what bleach ruins, and for the
        unknown until a swatch has passed.

    Notes
    -----
    Source: WHO, *Infection Prevention and Control of Epidemic- and Pandemic-Prone Acute Respiratory Infections in Health Care*,
    2014, Annex G (dilution; 30 minutes of immersion, above which there is a doubt). Northwestern Health Unit, Ontario
    (everyday strengths: 0.01 to 0.45 %). Test on a hidden seam: a supplier's laundry sheet. Bottles of 1 to 15 %: common
    practice, no source.

    Example: bleach_dilution(volume_ml=10000, target_pct=0.05, stock_pct=5, minutes=10, fibre='linen', finish='plain', swatch='passed', in_bath='water_only') gives bleach_ml 100, water_ml 9900, parts_water 99, doubts 0, cautions 113
    """

def bleach_time(times_min: Sequence[float] | NDArray[Any], shades: Sequence[float] | NDArray[Any], target: float, limit_min: float, fibre: Fibre | str | int, finish: Finish | str | int, swatch: Swatch | str | int, in_bath: InBath | str | int, floor: float = ...) -> BleachTime:
    """Time in the bleach to a wanted depth of shade, from swatches taken out at known times.

    The shade, K/S (`k_over_s`), is taken to fall to a floor by a constant share a minute:
    `ln(shade - floor)` is a straight line in time, fitted by least squares. Swatches of the same cloth, in the same
    strength and warmth, rinsed, neutralised and dried before they are judged. `swatch` tells how they stood it: pull each
    one wet; at the first weakness stop, whatever the colour. A time beyond the longest swatch is a guess: test it. A shade at
    or below the floor will not be reached at all: choose to dye over it.

    Parameters
    ----------
    times_min : sequence of float
        time of each swatch, rising; 0 is not bleached (min, 0 to 60, 2 to 50 items)
    shades : sequence of float
        depth of shade K/S of each (0.001 to 500, as many as times_min)
    target : float
        depth of shade wanted (0.001 to 500)
    limit_min : float
        longest time that the product's label allows (min, 0.1 to 60)
    fibre : Fibre
        the most delicate fibre in the goods
    finish : Finish
        what was done to the cloth
    swatch : Swatch
        how the swatches stood it, pulled wet
    in_bath : InBath
        what else is in the bath
    floor : float, default 0
        depth of shade that bleach does not take away (0 to 500)

    Returns
    -------
    time_min : float
        Time to the shade wanted (min)
    next_swatch_min : float
        Time for the next swatch: the time found, but never more than twice the longest swatch (min)
    rate : float
        Share of the way to the floor gone in a minute, as a rate: the shade falls by e^-rate
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument. `Refused` as for `bleach_dilution`, and naming `swatch`
        unless the swatches have passed. `NoSolution` naming `times_min` (not rising), `shades` (at or below the floor, or not
        falling), `target` (at or below the floor; or not reached within `limit_min`, `min` being the shade reached then).

    Notes
    -----
    Source: First-order fading, fitted to the user's own swatches. WHO 2014, Annex G: 30 minutes of immersion; a time or a swatch
    longer than that is doubted.

    Example: bleach_time(times_min=[0, 10], shades=[4, 2.4], target=1, limit_min=30, fibre='linen', finish='plain', swatch='passed', in_bath='water_only', floor=0) gives time_min 27.1, next_swatch_min 20, rate 0.0511, doubts 0, cautions 369
    """

@overload
def body_length_doubts(length: float) -> int: ...  # type: ignore[overload-overlap]

@overload
def body_length_doubts(length: _ArrayLikeFloat_co) -> NDArray[np.uint64]:
    """Doubts on a length of the body: back length, shoulder, sleeve, skirt.

    Below 100 mm (`BODY_LENGTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`BODY_LENGTH_LARGE`) it is
    longer than a tall person. A length over 100 cm given in centimetres passes unseen.

    Parameters
    ----------
    length : array_like
        a length of the body (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Thresholds are common practice, no source, set outside the 5th percentile of women's shoulder length, 120 mm, and the
    95th of men's stature, 1870 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,
    NATICK/TR-15/007, 2014.

    Example: body_length_doubts(length=424.5) gives 0
    """

@overload
def box_pleats(finished: float, count: int, depth: float) -> BoxPleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def box_pleats(finished: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> BoxPleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Cloth for box pleats, or inverted ones, of a given number and depth.

    A box pleat is two knife pleats folded away from each other, an inverted pleat two folded towards each other: the same
    cloth seen from its two faces. `flat = finished + 4 · count · depth`. The folds meet behind a box pleat when `depth` is
    half of `show`, and then the cloth is three times the width. The four functions each find one of `flat`, `finished`,
    `count` and `depth`, as those of `knife_pleats` do.

    Parameters
    ----------
    finished : array_like
        width when pleated (mm, 1 to 1000000)
    count : array_like of int
        number of box or inverted pleats (1 to 1000)
    depth : array_like
        depth of each of a pleat's two folds (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats.csv` has hand-worked rows.

    Example: box_pleats(finished=720, count=12, depth=30) gives flat 2160, finished 720, count 12, show 60, depth 30, intake 120, taken_up 1440, ratio 3, doubts 0
    """

@overload
def box_pleats_count(flat: float, finished: float, depth: float) -> BoxPleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def box_pleats_count(flat: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> BoxPleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Number of box pleats of at least a given depth that bring cloth there is to a width.

    The whole number that `(flat - finished) / (4 · depth)` holds, and then the depth at which they take up exactly what
    there is.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    depth : array_like
        least depth of each of a pleat's two folds (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming
        `depth` when there is not enough for one pleat, or so much that there would be more than 1000.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats_count.csv` has hand-worked rows.

    Example: box_pleats_count(flat=1500, finished=700, depth=30) gives flat 1500, finished 700, count 6, show 116.667, depth 30, intake 133.333, taken_up 800, ratio 2.143, doubts 0
    """

@overload
def box_pleats_depth(flat: float, finished: float, count: int) -> BoxPleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def box_pleats_depth(flat: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co) -> BoxPleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Depth of a given number of box pleats that bring cloth there is to a width.

    `depth = (flat - finished) / (4 · count)`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    count : array_like of int
        number of box or inverted pleats (1 to 1000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats_depth.csv` has hand-worked rows.

    Example: box_pleats_depth(flat=1500, finished=700, count=10) gives flat 1500, finished 700, count 10, show 70, depth 20, intake 80, taken_up 800, ratio 2.142857, doubts 0
    """

@overload
def box_pleats_finished(flat: float, count: int, depth: float) -> BoxPleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def box_pleats_finished(flat: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> BoxPleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Width to which a given number of box pleats brings cloth there is.

    `finished = flat - 4 · count · depth`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    count : array_like of int
        number of box or inverted pleats (1 to 1000)
    depth : array_like
        depth of each of a pleat's two folds (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width from pleat to pleat (mm)
    depth : float
        Depth of each of a pleat's two folds (mm)
    intake : float
        Cloth that each pleat takes up, four times its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where the folds just meet behind
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/box_pleats_finished.csv` has hand-worked rows.

    Example: box_pleats_finished(flat=2160, count=12, depth=30) gives flat 2160, finished 720, count 12, show 60, depth 30, intake 120, taken_up 1440, ratio 3, doubts 0
    """

@overload
def breadths(flat: float, cloth_width: float, allowance: float = ...) -> Breadths[float, int]: ...  # type: ignore[overload-overlap]

@overload
def breadths(flat: _ArrayLikeFloat_co, cloth_width: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co = ...) -> Breadths[NDArray[np.float64], NDArray[np.uint32]]:
    """Number of breadths of cloth that a ring of a given length takes.

    Each breadth gives its width less an allowance at both sides, and as many seams as breadths close the ring:
    `count = ceil(flat / (cloth_width - 2 · allowance))`.

    Parameters
    ----------
    flat : array_like
        way round before gathering or pleating (mm, 1 to 1000000)
    cloth_width : array_like
        width of the cloth, or length of each strip there is (mm, 1 to 100000)
    allowance : array_like, default 0
        seam allowance at each join (mm, 0 to 1000)

    Returns
    -------
    count : int
        Number of breadths, which is also the number of seams
    round : float
        Way round when all are joined at their full width (mm)
    spare : float
        What that is more than wanted: gather it in, or cut the last breadth narrower (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole width, or so
        much that there would be more than 100000 breadths.

    Notes
    -----
    Source: Arithmetic. C. C. Ingalls, *Text-Book on Domestic Art*, 1911, "Kilted or Pleated Skirt" (4 yd round from 36 in cloth).

    Example: breadths(flat=3600, cloth_width=1400, allowance=10) gives count 3, round 4140, spare 540
    """

@overload
def button_diameter(lines: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def button_diameter(lines: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Diameter of a button from its size in lines.

    A button line is the fortieth part of an inch: `diameter = 0.635 · lines`. It is not the watchmaker's line of
    2.26 mm, nor the eleventh of an inch by which hat ribbon is sold.

    Parameters
    ----------
    lines : array_like
        size of the button, in lines (1 to 1000)

    Returns
    -------
    float
        The diameter (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: US Tariff Act of 1922, 42 Stat. ch. 356, par. 1410: a line is one fortieth of an inch.

    Example: button_diameter(lines=22) gives 13.97
    """

@overload
def button_for_hole(slit: float, thickness: float, start: float = ...) -> ButtonForHole[float]: ...  # type: ignore[overload-overlap]

@overload
def button_for_hole(slit: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co, start: _ArrayLikeFloat_co = ...) -> ButtonForHole[NDArray[np.float64]]:
    """Largest flat button for a slit, and the creep of a cross hole.

    `diameter = slit - thickness`. The button sits at the end of a cross hole: a hole that is centred on the line instead
    of starting `start` beyond it lets the front out by `slit / 2 - start`. A hole that runs along the edge does not creep.

    Parameters
    ----------
    slit : array_like
        length of the slit (mm, 1 to 300)
    thickness : array_like
        thickness of the button at its thickest (mm, 0 to 100, < slit)
    start : array_like, default 3
        where a cross hole should start, past the line to the edge (mm, 0 to 300, <= slit)

    Returns
    -------
    diameter : float
        Largest diameter of a flat button (mm)
    creep : float
        How far the front is let out when a hole meant to start past the line is centred on it; negative lets it in (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `thickness` or `start` when it is not within the
        slit.

    Notes
    -----
    Source: The buttonhole rule backwards; start of 3 mm (1/8 in) by a sewing-machine manual, model 1288.
    `tests/vectors/button_for_hole.csv` has hand-worked rows.

    Example: button_for_hole(slit=22, thickness=3.5, start=3) gives diameter 18.5, creep 8
    """

@overload
def button_for_stand(extension: float, share: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def button_for_stand(extension: _ArrayLikeFloat_co, share: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Largest button for a stand there is.

    `button_stand` the other way: `diameter = extension / share`. An old front keeps its stand; a button larger than the
    stand allows hangs over the edge.

    Parameters
    ----------
    extension : array_like
        from the button line to the finished edge (mm, 1 to 600)
    share : array_like, default 0.75
        extension over diameter (0.5 to 3)

    Returns
    -------
    float
        Diameter of the button (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: As `button_stand`.

    Example: button_for_stand(extension=15, share=0.75) gives 20
    """

@overload
def button_loop(diameter: float, thickness: float, cord: float, gap: float = ..., stretch: float = ..., seam: float = ..., shape: ButtonShape | str | int = ...) -> ButtonLoop[float, int]: ...  # type: ignore[overload-overlap]

@overload
def button_loop(diameter: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co, cord: _ArrayLikeFloat_co, gap: _ArrayLikeFloat_co = ..., stretch: _ArrayLikeFloat_co = ..., seam: _ArrayLikeFloat_co = ..., shape: ButtonShape | str | int = ...) -> ButtonLoop[NDArray[np.float64], NDArray[np.uint64]]:
    """Loop of cord that just passes over a button.

    The way round the button is `P = 2 · (diameter + thickness)` for a flat one, `π · diameter` for a ball; the middle of
    the cord lies half its thickness further out all round, and its ends are sewn `gap` apart:
    `visible = (P + π · cord - gap) / (1 + stretch)`, `cut = visible + 2 · seam`. For a loop
    there is, see `loop_slack`. Try one before cutting all.

    Parameters
    ----------
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    thickness : array_like
        thickness of a flat button; not used for a ball (mm, 0 to 100)
    cord : array_like
        thickness of the cord (mm, 0 to 50)
    gap : array_like, default 0
        between the loop's two ends where they are sewn (mm, 0 to 500)
    stretch : array_like, default 0
        how much the cord may stretch: 0.3 is 30 % (0 to 3)
    seam : array_like, default 12
        length into the seam at each end (mm, 0 to 200)
    shape : ButtonShape, default "flat"
        shape of the button

    Returns
    -------
    visible : float
        Length of the loop that shows (mm)
    cut : float
        Length to cut (mm)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/button_loop.csv` has hand-worked rows. Any stretch raises the caution `ELASTIC_BATH`.

    Example: button_loop(diameter=10, thickness=3, cord=1.5, gap=4, stretch=0, seam=12, shape='flat') gives visible 26.71, cut 50.71, cautions 0
    """

@overload
def button_stand(diameter: float, share: float = ...) -> ButtonStand[float]: ...  # type: ignore[overload-overlap]

@overload
def button_stand(diameter: _ArrayLikeFloat_co, share: _ArrayLikeFloat_co = ...) -> ButtonStand[NDArray[np.float64]]:
    """Button stand for a button: from the line it sits on to the finished edge.

    `extension = share · diameter`, `past_rim = extension - diameter / 2`, `overlap = 2 · extension`. Authors differ: half the
    diameter brings the rim to the very edge, a machine manual asks for at least three quarters, others for the whole; for a
    button of 20 mm that is 10, 15 or 20 mm. Both sides have the same stand, and a waistband's overlap must equal it. A facing
    or a turn behind it is extra.

    Parameters
    ----------
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    share : array_like, default 0.75
        extension over diameter (0.5 to 3)

    Returns
    -------
    extension : float
        From the button line to the finished edge (mm)
    past_rim : float
        From the button's rim to the finished edge (mm)
    overlap : float
        How far the two sides lie over each other when buttoned (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Sewing-machine manual, model 1288 (at least 3/4 of the diameter); a half to the whole is common practice, no source.
    `tests/vectors/button_stand.csv`.

    Example: button_stand(diameter=20, share=0.75) gives extension 15, past_rim 5, overlap 30
    """

@overload
def buttonhole(diameter: float, thickness: float, ease: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def buttonhole(diameter: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Length of the slit for a flat button.

    `slit = diameter + thickness + ease`. Authors differ on the ease: a machine manual has none, others add 3 mm (1/8 in)
    for the cloth; a bound buttonhole needs none. For a square button use its diagonal as diameter. A ball needs half its
    way round instead: wrap a strip of paper round it and halve that. Always try the button in a slit in a scrap of the
    same layers before cutting: a slit cannot be made shorter.

    Parameters
    ----------
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    thickness : array_like
        thickness of the button at its thickest (mm, 0 to 100)
    ease : array_like, default 0
        extra for the thickness of the cloth (mm, 0 to 20)

    Returns
    -------
    float
        Length of the slit (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Sewing-machine manual, models 5147/5144 (diameter and thickness). `tests/vectors/buttonhole.csv` has published rows.

    Example: buttonhole(diameter=18.5, thickness=3.5, ease=0) gives 22
    """

@overload
def cap_ease(armhole: float, cap: float) -> CapEase[float, int]: ...  # type: ignore[overload-overlap]

@overload
def cap_ease(armhole: _ArrayLikeFloat_co, cap: _ArrayLikeFloat_co) -> CapEase[NDArray[np.float64], NDArray[np.uint64]]:
    """Ease of a sleeve cap in its armhole.

    `ease = cap - armhole`. Walk both along their seam lines, front and back apart, since a right total can hide a front that
    is short. A shirt or a dropped shoulder has 0 to 2 %, a set-in sleeve in soft cloth 3 to 6 %; more than about 6 % in firm
    cloth gathers (common practice, no source).

    A cap shorter than its armhole is doubted, for the two may have changed places, and so is more than 10 % of ease,
    which gathers (common practice, no source).

    Parameters
    ----------
    armhole : array_like
        seam line of the armhole, or of a section of it (mm, 1 to 100000)
    cap : array_like
        seam line of the cap, or of the same section (mm, 1 to 100000)

    Returns
    -------
    ease : float
        What the cap is longer; negative when it is too short to be sewn in (mm)
    ease_pct : float
        The same over the armhole (%)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/cap_ease.csv` has hand-worked rows.

    Example: cap_ease(armhole=440, cap=452) gives ease 12, ease_pct 2.727, doubts 0
    """

@overload
def cap_for_ease(armhole: float, ease_pct: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def cap_for_ease(armhole: _ArrayLikeFloat_co, ease_pct: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Length that a sleeve cap must have for a wanted ease.

    `armhole · (1 + ease_pct / 100)`. Where the cap there is is short of it, raise the cap (by half of what is short, as a
    first guess, then walk it again), widen it, or lift the underarm of the armhole.

    Parameters
    ----------
    armhole : array_like
        seam line of the armhole (mm, 1 to 100000)
    ease_pct : array_like, default 4
        wanted ease over the armhole (%, -20 to 100)

    Returns
    -------
    float
        Seam line of the cap (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the default ease is common practice, no source. `tests/vectors/cap_for_ease.csv` has hand-worked rows.

    Example: cap_for_ease(armhole=440, ease_pct=4) gives 457.6
    """

@overload
def cap_width_bound(cap: float, height: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def cap_width_bound(cap: _ArrayLikeFloat_co, height: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Widest sleeve that a cap of a given length and height can have.

    `2 · √((cap / 2)² - height²)`, as if each half of the cap were straight. The line curves, so the sleeve is narrower than
    this: a bound, not a width to cut to. The bound shrinks as the cap is raised.

    Parameters
    ----------
    cap : array_like
        seam line of the whole cap (mm, 1 to 100000)
    height : array_like
        underarm line up to the top of the cap (mm, 0 to 100000)

    Returns
    -------
    float
        Upper bound of the width at the underarm line (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it is half the cap or more.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/cap_width_bound.csv` has hand-worked rows.

    Example: cap_width_bound(cap=500, height=150) gives 400
    """

@overload
def carried_liquor(mass_g: float, pick_up_pct: float) -> CarriedLiquor[float, int]: ...  # type: ignore[overload-overlap]

@overload
def carried_liquor(mass_g: _ArrayLikeFloat_co, pick_up_pct: _ArrayLikeFloat_co) -> CarriedLiquor[NDArray[np.float64], NDArray[np.uint64]]:
    """Liquor that goods carry out of a bath.

    `carried = mass · pick_up / 100`, a litre taken as a kilogram. Weigh the goods dripping, drained and wrung: that is the
    pick-up, and it differs by several times. It decides how often to rinse. Cloth spun dry holds more than 10 %, so less is
    doubted. Let hot goods cool before wringing.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    pick_up_pct : array_like
        liquor held, on the dry mass (%, 0 to 1000)

    Returns
    -------
    carried_ml : float
        Liquor carried (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definition of pick-up. `tests/vectors/carried_liquor.csv` has hand-worked rows. Where doubts begin: common practice, no
    source.

    Example: carried_liquor(mass_g=380, pick_up_pct=90) gives carried_ml 342, doubts 0, cautions 5
    """

@overload
def casing(width: float, ease: float = ..., turn_in: float = ..., heading: float = ...) -> Casing[float]: ...  # type: ignore[overload-overlap]

@overload
def casing(width: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co = ..., turn_in: _ArrayLikeFloat_co = ..., heading: _ArrayLikeFloat_co = ...) -> Casing[NDArray[np.float64]]:
    """Depth and allowance of a casing for elastic or a cord.

    `depth = width + ease + heading`, `allowance = depth + turn_in`. A tunnel that is too wide lets the elastic roll, one too
    narrow does not let it through. A heading stands above a second line of stitching.

    Parameters
    ----------
    width : array_like
        width of the elastic, or of the cord pressed flat (mm, 1 to 500)
    ease : array_like, default 3.2
        what the tunnel is wider (mm, 0 to 100)
    turn_in : array_like, default 6.4
        turned in at the raw edge (mm, 0 to 100)
    heading : array_like, default 0
        stands above the tunnel (mm, 0 to 500)

    Returns
    -------
    depth : float
        From the fold to the lower stitching (mm)
    allowance : float
        Allowance beyond the fold (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: A magazine's tutorial, allpeoplequilt.com (1/4 in turned in, then 1 3/4 in down, for elastic of 1 1/2 in); 1/8 to 1/4 in
    wider than the elastic.

    Example: casing(width=25, ease=3, turn_in=6, heading=0) gives depth 28, allowance 34
    """

@overload
def ciede2000(l1: float, a1: float, b1: float, l2: float, a2: float, b2: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def ciede2000(l1: _ArrayLikeFloat_co, a1: _ArrayLikeFloat_co, b1: _ArrayLikeFloat_co, l2: _ArrayLikeFloat_co, a2: _ArrayLikeFloat_co, b2: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """How far apart two colours look, by CIEDE2000.

    With all three weights at 1. About 1 is just seen on plain cloth side by side; what is allowed for a match is yours to
    say. Where the two hues lie opposite each other the formula has a step, small for cloth.

    Parameters
    ----------
    l1 : array_like
        L* of one colour (0 to 100)
    a1 : array_like
        a* of one colour (-200 to 200)
    b1 : array_like
        b* of one colour (-200 to 200)
    l2 : array_like
        L* of the other (0 to 100)
    a2 : array_like
        a* of the other (-200 to 200)
    b2 : array_like
        b* of the other (-200 to 200)

    Returns
    -------
    float
        Colour difference

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: G. Sharma, W. Wu, E. N. Dalal, *The CIEDE2000 Color-Difference Formula*, Color Res. Appl. 30(1):21-30, 2005, with its
    test pairs.

    Example: ciede2000(l1=50, a1=2.6772, b1=-79.7751, l2=50, a2=0, b2=-82.7485) gives 2.0425
    """

@overload
def circle_skirt(waist: float, length: float, fraction: float = ...) -> CircleSkirt[float, int]: ...  # type: ignore[overload-overlap]

@overload
def circle_skirt(waist: _ArrayLikeFloat_co, length: _ArrayLikeFloat_co, fraction: _ArrayLikeFloat_co = ...) -> CircleSkirt[NDArray[np.float64], NDArray[np.uint64]]:
    """Radii of a skirt cut from part of a ring.

    The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.

    The waist is doubted as `girth_doubts` does, the length as
    `body_length_doubts`: 71 may be in centimetres.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    length : array_like
        waist edge to hem edge, no allowances (mm, 0 to 100000)
    fraction : array_like, default 1
        part of a full ring: 0.5 is a half circle (0.01 to 4)

    Returns
    -------
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/circle_skirt.csv` has published and hand-worked rows. Handed-down tables that
    divide the girth by 7 rather than by 2π hide a seam allowance in the radius: a square-dance handout gives 4 in where a
    girth of 28 in has 4.456, so 11.6 mm less. This function never does: take the allowance off the radius yourself.

    Example: circle_skirt(waist=710, length=600, fraction=0.5) gives waist_radius 226.00, hem_radius 826.00, hem_length 2594.96, doubts 0
    """

@overload
def circle_skirt_fraction(waist: float, length: float, cloth_width: float, pieces: int = ...) -> CircleSkirtOnCloth[float, int]: ...  # type: ignore[overload-overlap]

@overload
def circle_skirt_fraction(waist: _ArrayLikeFloat_co, length: _ArrayLikeFloat_co, cloth_width: _ArrayLikeFloat_co, pieces: _ArrayLikeFloat_co = ...) -> CircleSkirtOnCloth[NDArray[np.float64], NDArray[np.uint64]]:
    """Largest part of a ring from which cloth of a given width gives a skirt of a given length.

    The fullest skirt that fits, up to four full rings: pieces and their lay are those of `circle_skirt_longest`, so
    each piece's width across the cloth, `(waist / (2π · fraction) + length) · across(angle)`, is at most `cloth_width`.
    There is no formula for the fraction; it is found by halving to the last bit, on the side that fits. A skirt that is
    less full need not fit: a smaller fraction has a larger radius.

    Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    length : array_like
        waist edge to hem edge, no allowances (mm, 0 to 100000)
    cloth_width : array_like
        width between the selvedges, less allowances (mm, 1 to 100000)
    pieces : array_like of int, default 2
        equal pieces the part of a ring is cut in (1 to 64)

    Returns
    -------
    fraction : float
        Part of a full ring
    length : float
        Waist edge to hem edge (mm)
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge, all pieces together (mm)
    piece_angle_deg : float
        Angle of one piece (deg)
    cloth_length : float
        Cloth one piece takes along the grain (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `cloth_width` when no part of a ring from 0.01
        up fits; its `min` is the least width that would do.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/circle_skirt_fraction.csv` has hand-worked rows.

    Example: circle_skirt_fraction(waist=710, length=600, cloth_width=1400, pieces=2) gives fraction 2, length 600, waist_radius 56.50, hem_radius 656.50, hem_length 8249.82, piece_angle_deg 360, cloth_length 1313.00, doubts 0
    """

@overload
def circle_skirt_longest(waist: float, fraction: float, cloth_width: float, pieces: int = ...) -> CircleSkirtOnCloth[float, int]: ...  # type: ignore[overload-overlap]

@overload
def circle_skirt_longest(waist: _ArrayLikeFloat_co, fraction: _ArrayLikeFloat_co, cloth_width: _ArrayLikeFloat_co, pieces: _ArrayLikeFloat_co = ...) -> CircleSkirtOnCloth[NDArray[np.float64], NDArray[np.uint64]]:
    """Longest skirt of a given part of a ring that cloth of a given width allows.

    The part of a ring is cut in equal pieces, sectors of `angle = 360° · fraction / pieces`. A piece up to a half ring
    lies with one straight edge along the selvedge and takes, of the width, `hem_radius · sin(angle)` up to a quarter
    ring and `hem_radius` from there to a half ring. A larger piece lies with its middle straight across the cloth and
    takes `hem_radius · (1 - cos(angle / 2))`: a full ring without a seam takes twice its hem radius. Folding changes
    nothing: a full ring cut through four layers is one piece, and `cloth_width` is the width before folding.

    Other ways to lay a piece may save cloth but turn its grain, and pieces may be nested: these are not counted. Seam
    and hem allowances are the caller's: take them off the cloth's width first.

    Doubts as for `circle_skirt`, and on cloth narrower than 200 mm.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    fraction : array_like
        part of a full ring: 0.5 is a half circle (0.01 to 4, <= pieces)
    cloth_width : array_like
        width between the selvedges, less allowances (mm, 1 to 100000)
    pieces : array_like of int, default 2
        equal pieces the part of a ring is cut in (1 to 64)

    Returns
    -------
    fraction : float
        Part of a full ring
    length : float
        Waist edge to hem edge (mm)
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge, all pieces together (mm)
    piece_angle_deg : float
        Angle of one piece (deg)
    cloth_length : float
        Cloth one piece takes along the grain (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `fraction` when one piece would be more than a
        full ring; naming `cloth_width` when the waist edge alone is wider than the cloth.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/circle_skirt_longest.csv` has hand-worked rows.

    Example: circle_skirt_longest(waist=710, fraction=0.5, cloth_width=1400, pieces=2) gives fraction 0.5, length 1174.00, waist_radius 226.00, hem_radius 1400, hem_length 4398.23, piece_angle_deg 90, cloth_length 1400, doubts 0
    """

@overload
def cloth_mass(length: float, width: float, gsm: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def cloth_mass(length: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co, gsm: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Mass of a rectangle of cloth.

    `mass = length · width · gsm`. Weigh a cut square of known sides to find the mass per area of cloth you have.

    Parameters
    ----------
    length : array_like
        length of the cloth (mm, 0 to 10000000)
    width : array_like
        width of the cloth (mm, 0 to 100000)
    gsm : array_like
        grams in one square metre (gsm, 0.1 to 10000)

    Returns
    -------
    float
        Mass (g)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/cloth_mass.csv` has hand-worked rows.

    Example: cloth_mass(length=2000, width=1400, gsm=150) gives 420
    """

@overload
def cloth_to_buy(length: float, repeat: float = ..., extra: float = ..., graduation: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def cloth_to_buy(length: _ArrayLikeFloat_co, repeat: _ArrayLikeFloat_co = ..., extra: _ArrayLikeFloat_co = ..., graduation: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Length of cloth to buy, with what repeats and nap take, rounded up to what the shop cuts.

    `length + repeat + extra`, up to a whole graduation. For cloth with a nap, or printed one way, all pieces lie the same
    way up; a table's length that let them lie both ways needs more: a quarter of a yard (228.6 mm) is the habit, and a
    lay of the real pieces is better than the habit. Cloth that shrinks: lengthen first.

    Parameters
    ----------
    length : array_like
        length the pieces take (mm, 0 to 1000000)
    repeat : array_like, default 0
        one repeat of the pattern, bought to match it (mm, 0 to 10000)
    extra : array_like, default 0
        for nap, for doubt: 228.6 is a quarter of a yard (mm, 0 to 100000)
    graduation : array_like, default 100
        what the shop cuts by: 114.3 is an eighth of a yard (mm, 1 to 10000)

    Returns
    -------
    float
        Length to buy (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Extra for nap: sewwithsarah.com; a repeat more, half a yard in doubt: sew4home.com. Habits, so arguments here.

    Example: cloth_to_buy(length=2130, repeat=0, extra=0, graduation=100) gives 2200
    """

@overload
def component_check(fibre: Fibre | str | int, finish: Finish | str | int, swatch: Swatch | str | int, bath: Bath | str | int, temperature_c: float, minutes: float) -> ComponentCheck[int, int]: ...  # type: ignore[overload-overlap]

@overload
def component_check(fibre: Fibre | str | int, finish: Finish | str | int, swatch: Swatch | str | int, bath: Bath | str | int, temperature_c: _ArrayLikeFloat_co, minutes: _ArrayLikeFloat_co) -> ComponentCheck[NDArray[np.uint32], NDArray[np.uint64]]:
    """Whether one part of a garment bears a bath, and whether it takes colour there.

    Ask for every part: shell, lining, thread, interfacing, elastic, buttons; the garment bears what its weakest part bears. A
    fibre not known is refused bleach and heat until a swatch has passed, and is never said to take colour well. What bleach
    ruins whatever the swatch (wool, silk, hair, leather, elastane, acetate, polyamide, rubber; colours not fast;
    flame-retardant finishes) stays refused. Thread and lining of polyester come out of a plant dye as they went in.

    Usual are chlorine bleach up to 30 °C and 30 minutes, other baths up to 40 °C for an unknown fibre, 60 °C for rubber,
    elastane, acetate and leather and 4 hours above 60 °C for any; beyond that there are doubts.

    To find a fibre out, a burn test tells the family only, and nothing of a blend, a coated or a fused cloth: a snip the
    size of a thread, in tweezers, over water or a metal tray, window open, hair tied back, no child near.

    Parameters
    ----------
    fibre : Fibre
        what the part is made of
    finish : Finish
        what was done to it
    swatch : Swatch
        how a swatch of it stood the same bath
    bath : Bath
        the bath
    temperature_c : array_like
        hottest it gets (degC, 0 to 100)
    minutes : array_like
        longest it stays in (min, 0 to 1440)

    Returns
    -------
    bears : int
        0: it bears the bath; 1: a swatch decides; 2: it does not, so take it off first
    colour : int
        Colour it takes in this bath: 0 none, 1 some or not sure, 2 well
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `Choice`, from a door that passes numbers.

    Notes
    -----
    Source: Colour: University of Borås, *Textile chemistry*, dye classes. Chlorine: laundry guides that agree (wool, silk, mohair,
    leather, spandex, colours not fast); thespruce.com, howtodothings.com (acetate, elastic, flame-retardant). From memory:
    polyamide and resin finishes; where heat and time are beyond what is usual (30 minutes of bleach: WHO 2014, Annex G).

    Example: component_check(fibre='cotton', finish='plain', swatch='untried', bath='chlorine_bleach', temperature_c=20, minutes=10) gives bears 1, colour 0, doubts 0, cautions 113
    """

@overload
def cover_mark(ground: float, mark: float, limit: float = ...) -> CoverMark[float]: ...  # type: ignore[overload-overlap]

@overload
def cover_mark(ground: _ArrayLikeFloat_co, mark: _ArrayLikeFloat_co, limit: _ArrayLikeFloat_co = ...) -> CoverMark[NDArray[np.float64]]:
    """Depth of dye that brings a mark within a limit of its ground.

    Mark and ground are taken as greys of their reflectance, the dye as adding the same K/S to both; the depth is where
    CIEDE2000 of the two first comes down to the limit. A mark of another hue than the ground shows longer than this says.
    Grease, wax, resin and scorch take dye otherwise: the forecast is void, so try the dye on the mark's own kind first. A
    ground that fades will show it again. Where no depth will do, hide the mark or recut.

    Parameters
    ----------
    ground : array_like
        reflectance of the cloth around the mark (0.001 to 1)
    mark : array_like
        reflectance of the mark (0.001 to 1)
    limit : array_like, default 1
        colour difference that may remain (0.01 to 50)

    Returns
    -------
    now : float
        Colour difference of mark and ground as they are, CIEDE2000
    depth : float
        Depth that the dye must add to both, K/S; 0 when nothing is needed
    ground_after : float
        Reflectance of the ground then
    mark_after : float
        Reflectance of the mark then
    after : float
        Colour difference then

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `limit` when cloth dyed as dark as cloth gets
        (a reflectance of 1 %) still shows the mark; `min` is then the difference that remains.

    Notes
    -----
    Source: E. Allen and G. Sharma, as for `k_over_s` and `ciede2000`. A limit of 1 is common practice,
    no source: about what is just seen.

    Example: cover_mark(ground=0.55, mark=0.42, limit=2.35) gives now 5.97, depth 1, ground_after 0.2424, mark_after 0.2182, after 2.35
    """

def curved_band(lengths: Sequence[float] | NDArray[Any], depth: float, top: float) -> CurvedBand:
    """Upper edges of a band in sections, each cut as an arc, so that the joins have no kink.

    All sections are parts of one ring with `outer_radius = bottom · depth / (bottom - top)`, where `bottom` is the sum of
    the lengths; each top is its length times `top / bottom`. Every end lies on a radius, square to both edges; an end
    that overlaps is a piece of its own.

    Parameters
    ----------
    lengths : sequence of float
        finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items)
    depth : float
        finished depth, along the radius (mm, 1 to 10000)
    top : float
        finished upper edge of all sections together (mm, 1 to 10000000)

    Returns
    -------
    tops : array
        finished upper edge of each section (mm)
    inner_radius : float
        Radius of the upper, shorter edge (mm)
    outer_radius : float
        Radius of the lower, longer edge (mm)
    angle_deg : float
        Angle of all sections together (deg)
    sagitta : float
        Height of the longest section's lower arc above the straight line between its ends (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when it is not below the
        sum of the lengths, or so far below that the sections would be more than a full ring.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/curved_band.csv` has hand-worked rows.

    Example: curved_band(lengths=[140, 330, 230], depth=50, top=676) gives tops 135.20 318.69 222.11, inner_radius 1408.33, outer_radius 1458.33, angle_deg 27.50, sagitta 9.32
    """

@overload
def curved_binding(edge: float, radius: float, finished: float, curve: EdgeCurve | str | int = ...) -> CurvedBinding[float]: ...  # type: ignore[overload-overlap]

@overload
def curved_binding(edge: _ArrayLikeFloat_co, radius: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co, curve: EdgeCurve | str | int = ...) -> CurvedBinding[NDArray[np.float64]]:
    """Stretch of a bias strip that is to lie flat on a curved edge.

    The strip is cut as long as the finished edge, where its fold will lie. Its seam lies `finished` further into the cloth:
    round a neck that is a longer arc, `seam = edge · (radius + finished) / radius`, and the strip is stretched to it by
    `100 · finished / radius` percent; round an outward corner a shorter one, and it is eased. Cut as long as the seam instead,
    a neck's binding stands away. A stretched bias strip grows narrower: as a net of threads that keep their length it keeps
    `√(2 - (1 + stretch)²)` of its width; press it to shape before sewing, and cut it so much wider. A stretch of 41 % would
    close the net.

    Handed-down rules cut the strip 5 to 10 % shorter than the edge whatever the curve (common practice, no source): that is
    right for a binding of 7 mm at radii of 70 to 140 mm, too much on a straighter edge, too little on a tighter one.

    Parameters
    ----------
    edge : array_like
        length of the finished edge (mm, 1 to 100000)
    radius : array_like
        its radius (mm, 1 to 1000000)
    finished : array_like
        width of the binding that shows (mm, 0.5 to 1000)
    curve : EdgeCurve, default "inward"
        which way the edge curves

    Returns
    -------
    seam : float
        Length of the seam that sews the binding on (mm)
    stretch_pct : float
        What the strip is stretched along that seam; negative where it is eased (%)
    width_pct : float
        Width that a bias strip keeps where it is so stretched; above 100 where it is eased (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when bias cannot stretch so far, or when
        the binding reaches the centre of an outward curve.

    Notes
    -----
    Source: Arcs about one centre; a net of threads of fixed length, turned from 45° (plane geometry: real cloth gives a little more
    along its threads). `tests/vectors/curved_binding.csv` has hand-worked rows.

    Example: curved_binding(edge=300, radius=100, finished=8, curve='inward') gives seam 324, stretch_pct 8, width_pct 91.302
    """

@overload
def cut_for_change(finished: float, change_pct: float) -> CutForChange[float, int]: ...  # type: ignore[overload-overlap]

@overload
def cut_for_change(finished: _ArrayLikeFloat_co, change_pct: _ArrayLikeFloat_co) -> CutForChange[NDArray[np.float64], NDArray[np.uint64]]:
    """Length to cut so that washing brings it to a finished length.

    `cut = finished / (1 + change / 100)`. Adding the percentage to the finished length is the usual slip and comes out
    short. Shrink cloth before cutting where you can; this is for what cannot be shrunk first.

    A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.

    Parameters
    ----------
    finished : array_like
        length wanted after washing (mm, 0 to 1000000)
    change_pct : array_like
        dimensional change: shrinkage of 5 % is -5 (%, -90 to 100)

    Returns
    -------
    cut : float
        Length to cut (mm)
    added : float
        What is added; negative for cloth that grows (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ISO 5077:2007 (definition), solved for the length before. `tests/vectors/cut_for_change.csv` has hand-worked rows.

    Example: cut_for_change(finished=600, change_pct=-5) gives cut 631.58, added 31.58, doubts 0
    """

@overload
def cut_state(drawn: float, allowance: float, cut_edges: int) -> CutState[float]: ...  # type: ignore[overload-overlap]

@overload
def cut_state(drawn: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, cut_edges: _ArrayLikeFloat_co) -> CutState[NDArray[np.float64]]:
    """Finished and cut width of a piece, from what its two edges are drawn as.

    An edge drawn as cut line loses its allowance to the seam, one drawn as seam line has it added:
    `finished = drawn - cut_edges · allowance`, `cut = drawn + (2 - cut_edges) · allowance`. Which of the two a drawing
    shows is the costliest question of all: a drawn line taken for the other is wrong by two allowances a seam.

    Parameters
    ----------
    drawn : array_like
        width as drawn, edge to edge (mm, 1 to 100000)
    allowance : array_like
        seam allowance at each edge (mm, 0 to 1000)
    cut_edges : array_like of int
        how many of the two edges are drawn as cut line (0 to 2)

    Returns
    -------
    finished : float
        Width between the seam lines (mm)
    cut : float
        Width between the cut edges (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when nothing is left between the
        seams.

    Notes
    -----
    Source: Arithmetic. How wide an allowance is, is habit, so there is no default: 5/8 in in home patterns (common practice, no
    source), 1/2 in on straight seams and 1/4 in on curves in industry (course cards on ASTM D6193), 3/8 in in Butterick's
    patterns of 1916, 1 in on the long seams of a wool bodice by L. I. Baldt, 1916. Taken for one another, a 1/4 and a 5/8 in
    allowance are 3/4 in (19 mm) apart over the two edges of one piece. For a band folded along its middle see
    `straight_band_depth`.
    `tests/vectors/cut_state.csv` has hand-worked rows.

    Example: cut_state(drawn=50, allowance=10, cut_edges=2) gives finished 30, cut 50
    """

@overload
def dart(intake: float, length: float) -> Dart[float, int]: ...  # type: ignore[overload-overlap]

@overload
def dart(intake: _ArrayLikeFloat_co, length: _ArrayLikeFloat_co) -> Dart[NDArray[np.float64], NDArray[np.uint64]]:
    """Leg and angle of a dart from its intake and the length of its centre line.

    `leg = √((intake / 2)² + length²)` and `angle = 2 · atan(intake / (2 · length))`.

    A dart wider than it is long is doubted: the two may have changed places.

    Parameters
    ----------
    intake : array_like
        width taken up at the edge (mm, 0 to 10000)
    length : array_like
        edge to point along the middle of the dart, not the leg (mm, 1 to 10000)

    Returns
    -------
    leg : float
        Length of each leg, edge to point (mm)
    angle_deg : float
        Angle at the point, which is also the kink of a straight edge when the dart is closed (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/dart.csv` has hand-worked rows.

    Example: dart(intake=30, length=110) gives leg 111.02, angle_deg 15.53, doubts 0
    """

@overload
def dart_equivalent(intake: float, finished: float, tucks: int = ...) -> DartEquivalent[float, int]: ...  # type: ignore[overload-overlap]

@overload
def dart_equivalent(intake: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co, tucks: _ArrayLikeFloat_co = ...) -> DartEquivalent[NDArray[np.float64], NDArray[np.uint64]]:
    """Ease, gathers or tucks that take up as much as a dart, along a stretch of its edge.

    `ease = 100 · intake / finished`, `ratio = (finished + intake) / finished`, `depth = intake / (2 · tucks)`. They take
    the same length of the edge, but not to the same point: ease and gathers give a soft fullness below, tucks are open
    at their ends. Firm cloth eases in by some 4 to 6 %, soft wool by more: common practice, no source.

    Parameters
    ----------
    intake : array_like
        width of the dart at the edge (mm, 0 to 10000)
    finished : array_like
        stretch of the edge that takes it, as it is to be sewn (mm, 1 to 100000)
    tucks : array_like of int, default 1
        number of tucks or pleats (1 to 100)

    Returns
    -------
    ease_pct : float
        Ease of the seam, if it is eased in (%)
    gather_ratio : float
        Ratio of the gathers, if it is gathered
    tuck_depth : float
        Depth of each tuck or pleat, if it is folded (mm)
    doubts : int
        `GATHERS_SCANT` or `GATHERS_LARGE` when as gathers it would look like a mistake (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; tucks by L. I. Baldt, *Clothing for Women*, 1916 (twice the depth times the number). The doubt is
    `gathers`'s own, and on the gathers alone.

    Example: dart_equivalent(intake=12, finished=120, tucks=2) gives ease_pct 10, gather_ratio 1.1, tuck_depth 3, doubts 262144
    """

@overload
def dart_from_gape(gape: float, gape_distance: float, dart_leg: float) -> DartFromGape[float]: ...  # type: ignore[overload-overlap]

@overload
def dart_from_gape(gape: _ArrayLikeFloat_co, gape_distance: _ArrayLikeFloat_co, dart_leg: _ArrayLikeFloat_co) -> DartFromGape[NDArray[np.float64]]:
    """Dart that takes up the gape of an edge, turned to another edge.

    Pin the gape to a fold that runs out at the bust point; a dart of the same angle elsewhere takes it:
    `intake = gape · dart_leg / gape_distance`. A dart that is there already is widened by so much. Pin and count one
    side only: a fold pinned over the middle is shared by both. The edge is afterwards shorter by the gape.

    Parameters
    ----------
    gape : array_like
        what is pinned out at the edge, on one side (mm, 0 to 10000)
    gape_distance : array_like
        from there to the bust point (mm, 1 to 10000)
    dart_leg : array_like
        bust point to the edge where the dart is to be (mm, 1 to 10000)

    Returns
    -------
    intake : float
        Width of the dart at its own edge (mm)
    angle_deg : float
        Angle at the point (deg)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gape` when it is more than twice its distance.

    Notes
    -----
    Source: Similar triangles; both distances are legs, from the bust point, although the sewn dart ends short of it.
    `tests/vectors/dart_from_gape.csv` has hand-worked rows.

    Example: dart_from_gape(gape=10, gape_distance=180, dart_leg=144) gives intake 8, angle_deg 3.184
    """

@overload
def dart_in_panel(panel_width: float, wanted_width: float, count: int, largest_intake: float, length: float) -> DartInPanel[float, int]: ...  # type: ignore[overload-overlap]

@overload
def dart_in_panel(panel_width: _ArrayLikeFloat_co, wanted_width: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, largest_intake: _ArrayLikeFloat_co, length: _ArrayLikeFloat_co) -> DartInPanel[NDArray[np.float64], NDArray[np.uint64]]:
    """Darts that bring a panel there is to the width wanted.

    The panel's own width leads, not the difference of two body measures: what must go is `panel_width - wanted_width`,
    shared evenly by the darts but no more than `largest_intake` each; the rest goes to the side seam.
    `kink = 2 · atan(intake / (2 · length))`.

    Parameters
    ----------
    panel_width : array_like
        width there is at the edge, between seam lines (mm, 1 to 100000)
    wanted_width : array_like
        finished width at the edge, ease included (mm, 1 to 100000, <= panel_width)
    count : array_like of int
        number of darts (1 to 16)
    largest_intake : array_like
        the most that one dart may take (mm, 0 to 10000)
    length : array_like
        edge to point along the middle of a dart (mm, 1 to 10000)

    Returns
    -------
    intake_each : float
        Intake of each dart (mm)
    leftover : float
        Width still to be taken, at the side seam (mm)
    leg : float
        Length of each leg (mm)
    kink_deg : float
        Kink of the straight edge at each closed dart; the edge is trued there before cutting (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wanted_width` when the panel is narrower than
        that: it must be pieced or let out.

    Notes
    -----
    Source: Arithmetic and plane geometry. The limits behind the doubts: `DART_LONG` Butterick, *The New Dressmaker*, 1921 (hip
    line 7 in below the waist); `DART_WIDE` and `DARTS_CLOSE` common practice, no source.

    Example: dart_in_panel(panel_width=242, wanted_width=190, count=1, largest_intake=30, length=110) gives intake_each 30, leftover 22, leg 111.02, kink_deg 15.53, doubts 0
    """

@overload
def dart_turned(intake: float, leg: float, new_leg: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def dart_turned(intake: _ArrayLikeFloat_co, leg: _ArrayLikeFloat_co, new_leg: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Intake of a dart that is turned about its point to an edge at another distance.

    Turning keeps the angle, so the intake grows with the leg: `intake · new_leg / leg`.

    Parameters
    ----------
    intake : array_like
        width of the dart at the edge where it is now (mm, 0 to 10000)
    leg : array_like
        edge to point along the leg where it is now (mm, 1 to 10000)
    new_leg : array_like
        edge to point along the leg in its new place (mm, 1 to 10000)

    Returns
    -------
    float
        Width of the dart at the new edge (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no
        such dart closes.

    Notes
    -----
    Source: Similar triangles. `tests/vectors/dart_turned.csv` has hand-worked rows.

    Example: dart_turned(intake=26, leg=100, new_leg=70) gives 18.2
    """

@overload
def dart_width_at(intake: float, leg: float, distance: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def dart_width_at(intake: _ArrayLikeFloat_co, leg: _ArrayLikeFloat_co, distance: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Width of a dart between its point and its edge.

    `width = intake · distance / leg`: what is lost there when the dart is closed, or gained when it is opened.

    Parameters
    ----------
    intake : array_like
        width of the dart at the edge (mm, 0 to 10000)
    leg : array_like
        edge to point along the leg (mm, 1 to 10000)
    distance : array_like
        from the point along the leg (mm, 0 to 10000, <= leg)

    Returns
    -------
    float
        Width of the dart there (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `intake` when it is more than `2 · leg`: no
        such dart closes; naming `distance` when it is beyond the edge.

    Notes
    -----
    Source: Similar triangles. Straight legs only: a curved dart is narrower or wider than this between its ends.
    `tests/vectors/dart_width_at.csv` has hand-worked rows.

    Example: dart_width_at(intake=26, leg=100, distance=70) gives 18.2
    """

@overload
def deepest_hem(radius: float, excess_pct: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def deepest_hem(radius: _ArrayLikeFloat_co, excess_pct: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Deepest hem on a flared edge that can still be eased in.

    `hem_on_curve` the other way: `depth = radius · pct / (200 + pct)`.

    Parameters
    ----------
    radius : array_like
        radius of the finished hem edge, laid flat (mm, 1 to 1000000)
    excess_pct : array_like, default 5
        fullness that the cloth eases or shrinks away (%, 0 to 100)

    Returns
    -------
    float
        Depth of the hem (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arcs about one centre. How much a cloth eases is habit: firm cotton some 3 to 5 %, wool that shrinks under steam 10 %
    and more (common practice, no source); try a hand's breadth.

    Example: deepest_hem(radius=840, excess_pct=10) gives 40
    """

@overload
def dimensional_change(before: float, after: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def dimensional_change(before: _ArrayLikeFloat_co, after: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Dimensional change of cloth in the wash, in percent; minus is shrinkage.

    `change = 100 · (after - before) / before`. A shrinkage stated as 8.57 % is a change of -8.57. Mark at least 350 mm apart, 50 mm from the edges, along each grain.

    Parameters
    ----------
    before : array_like
        distance of the marks before washing (mm, 1 to 1000000)
    after : array_like
        distance of the marks after washing (mm, 1 to 1000000)

    Returns
    -------
    float
        Change (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ISO 5077:2007 and AATCC 135 (formula). `tests/vectors/dimensional_change.csv` has published rows.

    Example: dimensional_change(before=350, after=320) gives -8.57
    """

@overload
def double_dart(intake: float, upper: float, lower: float) -> DoubleDart[float, int]: ...  # type: ignore[overload-overlap]

@overload
def double_dart(intake: _ArrayLikeFloat_co, upper: _ArrayLikeFloat_co, lower: _ArrayLikeFloat_co) -> DoubleDart[NDArray[np.float64], NDArray[np.uint64]]:
    """Legs and angles of a dart with a point at each end, as at the waist of a dress.

    Each half is a dart of its own: `leg = √((intake / 2)² + length²)`, `angle = 2 · atan(intake / (2 · length))`. Where
    the two meet each leg turns by half the sum of the two angles; the fold of the sewn dart is snipped there, or it
    pulls. The upper and lower legs need not be alike, but the two legs of one half must be, or the side seams hang askew.

    Parameters
    ----------
    intake : array_like
        width taken up where the dart is widest (mm, 0 to 10000)
    upper : array_like
        from there to the upper point, along the middle (mm, 1 to 10000)
    lower : array_like
        from there to the lower point, along the middle (mm, 1 to 10000)

    Returns
    -------
    upper_leg : float
        Length of each upper leg (mm)
    lower_leg : float
        Length of each lower leg (mm)
    upper_angle_deg : float
        Angle at the upper point (deg)
    lower_angle_deg : float
        Angle at the lower point (deg)
    bend_deg : float
        How far each leg turns where the dart is widest, where its fold is snipped (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry. The limits behind the doubts are those of `dart_in_panel`; `DART_LONG` asks after `lower`, which
    runs from the waist to the hip. `tests/vectors/double_dart.csv` has hand-worked rows.

    Example: double_dart(intake=25, upper=150, lower=120) gives upper_leg 150.52, lower_leg 120.65, upper_angle_deg 9.527, lower_angle_deg 11.894, bend_deg 10.71, doubts 0
    """

@overload
def elastic(girth: float, widest: float, shorter: float = ..., overlap: float = ...) -> Elastic[float, int]: ...  # type: ignore[overload-overlap]

@overload
def elastic(girth: _ArrayLikeFloat_co, widest: _ArrayLikeFloat_co, shorter: _ArrayLikeFloat_co = ..., overlap: _ArrayLikeFloat_co = ...) -> Elastic[NDArray[np.float64], NDArray[np.uint64]]:
    """Length of elastic for a waist or a cuff, and the stretch asked of it.

    `round = girth - shorter`, `cut = round + overlap`. Elastics differ: pin it round the body before cutting, and see that
    its own full stretch is more than `passing_pct`. The casing's edge must itself be as long as the widest part. Never
    round a throat; for children's clothes see the safety standards that hold where you are.

    A girth below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    girth : array_like
        girth of the body where it sits (mm, 1 to 100000)
    widest : array_like
        girth that it must pass over, as the hip for a waist (mm, 1 to 100000, >= girth)
    shorter : array_like, default 75
        what the elastic is shorter than the girth (mm, 0 to 10000, < girth)
    overlap : array_like, default 12.7
        overlap where its ends are joined (mm, 0 to 1000)

    Returns
    -------
    round : float
        Way round the joined elastic, not stretched (mm)
    cut : float
        Length to cut, with its overlap (mm)
    worn_pct : float
        Stretch when worn (%)
    passing_pct : float
        Stretch when the widest part passes through (%)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Always `ELASTIC_BATH` (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when it is less than the girth; naming
        `shorter` when no elastic is left.

    Notes
    -----
    Source: A step-by-step sewing column, hastingstribune.com, 2020 (waist less 2 to 4 in for a snug one, and 1/2 in of overlap);
    the default of 75 mm, 3 in, is the middle of its range.

    Example: elastic(girth=720, widest=980, shorter=70, overlap=12) gives round 650, cut 662, worn_pct 10.769, passing_pct 50.769, doubts 0, cautions 8
    """

@overload
def even_spacing(first: float, last: float, count: int) -> float: ...  # type: ignore[overload-overlap]

@overload
def even_spacing(first: _ArrayLikeFloat_co, last: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Pitch of buttons or holes spaced evenly.

    `pitch = (last - first) / (count - 1)`.

    Parameters
    ----------
    first : array_like
        place of the first, from the edge's start (mm, 0 to 100000)
    last : array_like
        place of the last (mm, 0 to 100000, > first)
    count : array_like of int
        how many (2 to 1000)

    Returns
    -------
    float
        From middle to middle of neighbours (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/even_spacing.csv` has hand-worked rows.

    Example: even_spacing(first=30, last=570, count=7) gives 90
    """

@overload
def five_gores(waist: float, hip: float) -> FiveGores[float, int]: ...  # type: ignore[overload-overlap]

@overload
def five_gores(waist: _ArrayLikeFloat_co, hip: _ArrayLikeFloat_co) -> FiveGores[NDArray[np.float64], NDArray[np.uint64]]:
    """Widths of a five-gored skirt's half pattern by a handed-down rule.

    At the waist: front an eighth, side a sixth of it, the back what is left of half. At the hip, 6 in below: the front 1 in
    wider than above, the side half as wide again, the back what is left of half the hip. The rule is for a full skirt of
    its time, 2 1/2 to 3 yd round the hem, with its fullness at the back: for gores alike use `gore`. Seams are extra.

    Waist and hip are doubted as the functions of `body` do.

    Parameters
    ----------
    waist : array_like
        finished waist, ease included (mm, 1 to 100000)
    hip : array_like
        finished hip, ease included (mm, 1 to 100000)

    Returns
    -------
    front_waist : float
        Half the front gore at the waist (mm)
    side_waist : float
        Side gore at the waist (mm)
    back_waist : float
        Back gore at the waist, its gathers included (mm)
    front_hip : float
        Half the front gore at the hip (mm)
    side_hip : float
        Side gore at the hip (mm)
    back_hip : float
        Back gore at the hip (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip` when nothing of it is left for the back.

    Notes
    -----
    Source: C. C. Ingalls, *Text-Book on Domestic Art*, 1911, "Five-Gored Underskirt: Proportions".

    Example: five_gores(waist=600, hip=1000) gives front_waist 75, side_waist 100, back_waist 125, front_hip 100.4, side_hip 150, back_hip 249.6, doubts 0
    """

@overload
def flounce(edge: float, depth: float, rings: int, allowance: float = ...) -> Flounce[float]: ...  # type: ignore[overload-overlap]

@overload
def flounce(edge: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, rings: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co = ...) -> Flounce[NDArray[np.float64]]:
    """Rings for a flounce that lies flat along its edge and ripples at its hem.

    Each full ring is cut open, and joined to the next or to itself: of its way round it loses an allowance at both cuts.
    `inner_radius = (edge / rings + 2 · allowance) / 2π`, `hem = rings · (2π · outer_radius - 2 · allowance)`. More rings
    make it fuller, with a smaller hole. The seam's own allowance lies inside the inner radius and is snipped to lie
    along the edge. For a part of one ring, see `circle_skirt`.

    Parameters
    ----------
    edge : array_like
        edge that the flounce is sewn to, all round (mm, 1 to 1000000)
    depth : array_like
        finished depth, seam to hem (mm, 1 to 10000)
    rings : array_like of int
        number of full rings (1 to 200)
    allowance : array_like, default 0
        seam allowance at each cut (mm, 0 to 100)

    Returns
    -------
    inner_radius : float
        Radius of the seam line that is sewn on (mm)
    outer_radius : float
        Radius of the finished hem (mm)
    hem : float
        Finished hem of all rings joined (mm)
    ratio : float
        Hem over edge: how much it ripples
    square : float
        Side of the square of cloth that each ring takes, without hem allowance (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arc length of a ring. `tests/vectors/flounce.csv` has hand-worked rows.

    Example: flounce(edge=1200, depth=120, rings=3, allowance=10) gives inner_radius 66.85, outer_radius 186.85, hem 3461.9, ratio 2.885, square 373.69
    """

@overload
def folded_band(depth: float, allowance: float, turn: float = ..., past: float = ...) -> FoldedBand[float]: ...  # type: ignore[overload-overlap]

@overload
def folded_band(depth: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, turn: _ArrayLikeFloat_co = ..., past: _ArrayLikeFloat_co = ...) -> FoldedBand[NDArray[np.float64]]:
    """Width of a strip that is folded along its middle to a band, a cuff or a placket, and where its fold lies.

    `cut_width = 2 · depth + 2 · allowance + turn + past`, `fold_line = allowance + depth + turn / 2`. The turn is the cloth
    that the fold takes by its thickness, half from either side. An inner layer that is caught by stitching in the seam from
    the right side must reach `past` below it; sewn down by hand, 0. Interfacing ends at the fold line or goes over it as the
    cloth asks. For the strip's length see `straight_band`; for the depth of a strip there is,
    `straight_band_depth` of its width less `past`.

    Parameters
    ----------
    depth : array_like
        finished depth (mm, 1 to 10000)
    allowance : array_like
        seam allowance at each long edge (mm, 0 to 1000)
    turn : array_like, default 0
        cloth taken by the thickness of the fold (mm, 0 to 100)
    past : array_like, default 0
        what the inner layer reaches past the seam (mm, 0 to 100)

    Returns
    -------
    cut_width : float
        Width to cut, raw edge to raw edge (mm)
    fold_line : float
        Fold line from the raw edge that is sewn to the garment (mm)
    inner : float
        From the fold to the raw edge of the inner layer (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the turn is common practice, no source: fold a sample to learn it. `tests/vectors/folded_band.csv` has
    hand-worked rows.

    Example: folded_band(depth=25, allowance=10, turn=2, past=0) gives cut_width 72, fold_line 36, inner 36
    """

def format_length(length: float, style: Style | str | int = ...) -> str:
    """A length as text, rounded to the nearest graduation of the style.

    From the middle between two graduations it is rounded away from zero. `parse_length` reads every style, and gives
    back the same number when the length is a whole number of the style's graduations, or for the style `exact` always.
    Fractions are reduced, and a part that is nothing is left out. `exact` writes very small numbers with an exponent,
    and a fourth decimal where three could be taken for thousands: `796.9250 mm`.

    Parameters
    ----------
    length : float
        the length (mm, -10000000 to 10000000)
    style : Style, default "exact"
        how to print it

    Returns
    -------
    str
        The length as text.

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Tape fractions: nearest is `round(inches · n) / n`, then reduced. Common practice, no source.

    Example: format_length(length=796.925, style='inch_eighth') gives 31 3/8 in
    """

@overload
def front_back_doubts(front: float, back: float) -> int: ...  # type: ignore[overload-overlap]

@overload
def front_back_doubts(front: _ArrayLikeFloat_co, back: _ArrayLikeFloat_co) -> NDArray[np.uint64]:
    """Doubts on a front and a back at one level, together.

    One more than one and a half times the other (`FRONT_BACK_APART`) may be whole against half.

    Parameters
    ----------
    front : array_like
        width of the front (mm, 1 to 100000)
    back : array_like
        width of the back (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice, no source: whole against half gives 2, and a threshold of 1.5 leaves room for a full bust or seat.

    Example: front_back_doubts(front=500, back=440) gives 0
    """

@overload
def frustum(lower_diameter: float, upper_diameter: float, height: float) -> Frustum[float]: ...  # type: ignore[overload-overlap]

@overload
def frustum(lower_diameter: _ArrayLikeFloat_co, upper_diameter: _ArrayLikeFloat_co, height: _ArrayLikeFloat_co) -> Frustum[NDArray[np.float64]]:
    """Part of a ring that rolls up to a cone, or to a part of one, of given diameters and height.

    `slant = √(((lower - upper) / 2)² + height²)`, `outer_radius = lower · slant / (lower - upper)`, `inner_radius = upper ·
    slant / (lower - upper)`, `angle = 180° · (lower - upper) / slant`. Hats, shades, flared cuffs and the tops of bags
    are measured so; where the edges and the slant are measured along the cloth use
    `shaped_band`, which is the same ring.

    Parameters
    ----------
    lower_diameter : array_like
        diameter of the larger end (mm, 1 to 100000)
    upper_diameter : array_like
        diameter of the smaller end; 0 is a cone (mm, 0 to 100000, < lower_diameter)
    height : array_like
        from end to end, straight up (mm, 0 to 100000)

    Returns
    -------
    slant : float
        From edge to edge along the cloth (mm)
    inner_radius : float
        Radius of the upper, smaller edge, laid flat (mm)
    outer_radius : float
        Radius of the lower, larger edge, laid flat (mm)
    angle_deg : float
        Angle of the sector (deg)
    area_mm2 : float
        Area of the sector, without allowances (mm2)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper_diameter` when it is not the smaller: turn
        the shape over, and a tube of two equal ends is a rectangle.

    Notes
    -----
    Source: E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height; lateral area by half the sum of the circumferences);
    Math Forum, *Building a Cone* (radii and angle). `tests/vectors/frustum.csv` has their numbers.

    Example: frustum(lower_diameter=240, upper_diameter=120, height=80) gives slant 100, inner_radius 100, outer_radius 200, angle_deg 216, area_mm2 56548.67
    """

@overload
def gather_ratio(flat: float, finished: float) -> Gathers[float, int]: ...  # type: ignore[overload-overlap]

@overload
def gather_ratio(flat: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co) -> Gathers[NDArray[np.float64], NDArray[np.uint64]]:
    """Ratio of gathers that a strip there is gives on a line.

    `ratio = flat / finished`.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    flat : array_like
        length of the strip, without allowances (mm, 1 to 20000000)
    finished : array_like
        line that the gathers are sewn to (mm, 1 to 1000000, <= flat)

    Returns
    -------
    flat : float
        Length of the strip before gathering, without allowances (mm)
    taken_up : float
        What the gathers take up (mm)
    ratio : float
        Strip over line: 1.5 is half as much again
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when the strip is shorter than that.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/gather_ratio.csv` has published and hand-worked rows.

    Example: gather_ratio(flat=340, finished=240) gives flat 340, taken_up 100, ratio 1.4167, doubts 0
    """

def gather_sections(lengths: Sequence[float] | NDArray[Any], flat: float) -> GatherSections:
    """Parts of a strip between its marks, so that gathers are even from notch to notch.

    Each section of the line takes its share of the strip: `flat · length / sum of lengths`. Quarter marks of a strip fall on
    quarter marks of the line only where these are evenly spaced: on a waist whose front is wider than its back they are not.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    lengths : sequence of float
        sections of the line between its notches, in order (mm, 1 to 100000, 1 to 100 items)
    flat : float
        length of the strip, without allowances (mm, 1 to 20000000)

    Returns
    -------
    flats : array
        part of the strip for each section (mm)
    finished : float
        Length of the line, all sections together (mm)
    ratio : float
        Strip over line, the same in every section
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `flat` when the strip is shorter
        than its line.

    Notes
    -----
    Source: Proportion. `tests/vectors/gather_sections.csv` has hand-worked rows.

    Example: gather_sections(lengths=[200, 340, 180], flat=1080) gives flats 300 510 270, finished 720, ratio 1.5, doubts 0
    """

@overload
def gathers(finished: float, ratio: float) -> Gathers[float, int]: ...  # type: ignore[overload-overlap]

@overload
def gathers(finished: _ArrayLikeFloat_co, ratio: _ArrayLikeFloat_co) -> Gathers[NDArray[np.float64], NDArray[np.uint64]]:
    """Strip to cut for gathers of a given ratio.

    `flat = finished · ratio`. About 1.5 for a flounce, 2 for a ruche or heavy curtain, up to 3 for sheer cloth; gather a
    sample of the cloth itself.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    finished : array_like
        line that the gathers are sewn to (mm, 1 to 1000000)
    ratio : array_like
        strip over line; "100 % fullness" is a ratio of 2 (1 to 20)

    Returns
    -------
    flat : float
        Length of the strip before gathering, without allowances (mm)
    taken_up : float
        What the gathers take up (mm)
    ratio : float
        Strip over line: 1.5 is half as much again
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Ratios: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (flounce 1 1/2); *The New Dressmaker*, Butterick, 1921
    (ruche 2); I. Crouch, Extension Circular A-249, North Dakota, 1956 (draperies 2); a booklet on draperies (sheer
    curtains 3). The doubt below 1.2 is common practice, no source.

    Example: gathers(finished=240, ratio=1.75) gives flat 420, taken_up 180, ratio 1.75, doubts 0
    """

@overload
def girth_doubts(girth: float) -> int: ...  # type: ignore[overload-overlap]

@overload
def girth_doubts(girth: _ArrayLikeFloat_co) -> NDArray[np.uint64]:
    """Doubts on the girth of a trunk: chest, waist or hip.

    Below 300 mm (`GIRTH_SMALL`) it is likely in centimetres or inches; above 2000 mm (`GIRTH_LARGE`) taken twice.

    Parameters
    ----------
    girth : array_like
        girth of chest, waist or hip (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Thresholds are common practice, no source, set well outside the 5th and 95th percentiles of chest, waist and hip,
    710 to 1207 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.

    Example: girth_doubts(girth=852) gives 0
    """

@overload
def godet(length: float, hem: float, count: int = ...) -> Godet[float]: ...  # type: ignore[overload-overlap]

@overload
def godet(length: _ArrayLikeFloat_co, hem: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co = ...) -> Godet[NDArray[np.float64]]:
    """Sector for a godet of a given length and hem.

    `angle = hem / length` in radians, `chord = 2 · length · sin(angle / 2)`. Its two sides are as long as the slit; the
    hem is an arc, or it hangs in a point. A godet of more than half a ring is cut in two parts.

    Parameters
    ----------
    length : array_like
        slit from its point to the finished hem (mm, 1 to 10000)
    hem : array_like
        finished hem of one godet, along its arc (mm, 1 to 100000)
    count : array_like of int, default 1
        number of godets (1 to 64)

    Returns
    -------
    angle_deg : float
        Angle at the point (deg)
    chord : float
        Straight across the hem from side to side, which is the cloth's width that it takes (mm)
    sagitta : float
        How far the hem bows below that (mm)
    added : float
        What all godets add to the hem (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem` when it is more than half a ring.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/godet.csv` has hand-worked rows.

    Example: godet(length=300, hem=471.24, count=4) gives angle_deg 90, chord 424.26, sagitta 87.87, added 1884.96
    """

@overload
def gore(waist: float, hip: float, hem: float, length: float, hip_depth: float, count: int) -> Gore[float, int]: ...  # type: ignore[overload-overlap]

@overload
def gore(waist: _ArrayLikeFloat_co, hip: _ArrayLikeFloat_co, hem: _ArrayLikeFloat_co, length: _ArrayLikeFloat_co, hip_depth: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co) -> Gore[NDArray[np.float64], NDArray[np.uint64]]:
    """Widths and side edges of one of several equal gores, straight from waist to hip and from hip to hem.

    Each width is the whole by the number of gores. A side edge runs over two slopes, `√(((hip - waist) / 2)² +
    hip_depth²) + √(((hem - hip) / 2)² + (length - hip_depth)²)` for widths of one gore, and is longer than the middle: the
    hem is curved up by `hem_rise` at its ends. The break at the hip is rounded off when the pattern is drawn.

    Waist, hip and length are doubted as the functions of `body` do, and a hip less than 50 mm below
    the waist.

    Parameters
    ----------
    waist : array_like
        finished waist, ease included (mm, 1 to 100000)
    hip : array_like
        finished hip, ease included (mm, 1 to 100000)
    hem : array_like
        finished way round the hem (mm, 1 to 1000000)
    length : array_like
        waist to hem along the middle of a gore (mm, 1 to 100000)
    hip_depth : array_like
        waist to hip along the middle of a gore (mm, 0 to 10000, < length)
    count : array_like of int
        number of gores (1 to 64)

    Returns
    -------
    waist_width : float
        Width at the waist (mm)
    hip_width : float
        Width at the hip (mm)
    hem_width : float
        Width at the hem (mm)
    side_length : float
        Length of each side edge, waist to hip to hem (mm)
    flare_deg : float
        Lean of each side edge below the hip; negative where it tapers in (deg)
    hem_rise : float
        What each side edge is longer than the middle, taken off at the hem's ends so that it hangs level (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hip_depth` when it is not above the hem.

    Notes
    -----
    Source: Plane geometry. How far below the waist the hip lies is where authors differ, so `hip_depth` has no default: 5 to 7 in by
    L. I. Baldt, *Clothing for Women*, 1916, 6 in by I. D. Conover, *A Complete Course in Dressmaking*, v. 5, 7 in by *The New
    Dressmaker*, Butterick, 1921. On a gore flared as in the example the side edge changes by 0.2 mm from 5 to 7 in: it is the
    width there, not the length, that a slip spoils. `tests/vectors/gore.csv` has hand-worked rows.

    Example: gore(waist=720, hip=1020, hem=1980, length=700, hip_depth=200, count=6) gives waist_width 120, hip_width 170, hem_width 330, side_length 707.9, flare_deg 9.09, hem_rise 7.9, doubts 0
    """

@overload
def gsm_from_ounces(ounces: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def gsm_from_ounces(ounces: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Mass of cloth per square metre from ounces per square yard.

    `gsm = ounces · 33.9057`. Ounces *per running yard* are another thing: divide them by the width in yards first.

    Parameters
    ----------
    ounces : array_like
        ounces in one square yard (0.01 to 1000)

    Returns
    -------
    float
        Mass per area (gsm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definitions of ounce and yard. NIST SP 811, appendix B.8 (3.390575e-2 kg/m2; figure from memory).

    Example: gsm_from_ounces(ounces=6) gives 203.4345
    """

@overload
def gusset(slit: float, added: float, allowance: float = ...) -> Gusset[float]: ...  # type: ignore[overload-overlap]

@overload
def gusset(slit: _ArrayLikeFloat_co, added: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co = ...) -> Gusset[NDArray[np.float64]]:
    """Diamond gusset for two slits that meet in a seam, as under an arm.

    Its four sides are as long as the slits, its short diagonal is what the opened slits add across:
    `angle = 2 · asin(added / (2 · slit))`, `long_diagonal = √(4 · slit² - added²)`. Cut, an allowance all round makes the long
    way `2 · allowance / sin(angle / 2)` longer and the short way `2 · allowance / cos(angle / 2)`: sharp points need much
    cloth. Face the slit's end before it is cut, for it has no allowance there; cut last and only after a try in scrap cloth.
    The gusset lies on the bias where slits are on grain.

    Parameters
    ----------
    slit : array_like
        length of each slit, seam to its end (mm, 1 to 10000)
    added : array_like
        what is to be added across, where they meet (mm, 0.1 to 20000)
    allowance : array_like, default 10
        seam allowance all round the gusset (mm, 0 to 100)

    Returns
    -------
    angle_deg : float
        Angle at each slit's end (deg)
    long_diagonal : float
        From slit's end to slit's end (mm)
    cut_long : float
        Cut from point to point the long way, allowances included (mm)
    cut_short : float
        Cut from point to point the short way, allowances included (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `added` when it is as much as both slits.

    Notes
    -----
    Source: Plane geometry of a rhombus. `tests/vectors/gusset.csv` has hand-worked rows.

    Example: gusset(slit=100, added=120, allowance=10) gives angle_deg 73.7398, long_diagonal 160, cut_long 193.3333, cut_short 145
    """

@overload
def head_opening(head: float, neck: float, slit: float, ease: float = ...) -> HeadOpening[float, int]: ...  # type: ignore[overload-overlap]

@overload
def head_opening(head: _ArrayLikeFloat_co, neck: _ArrayLikeFloat_co, slit: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co = ...) -> HeadOpening[NDArray[np.float64], NDArray[np.uint64]]:
    """Whether a neck with a slit passes over the head, and the least slit.

    A slit opens by its length on both sides: `neck + 2 · slit >= head + ease`. The same sum serves a skirt with a zip that
    must pass over the hip, with waist and hip for neck and head, where the skirt at the slit's end is no narrower. Measure
    the finished edge, not the neck of the body. For children no cords or drawstrings at the neck, no small loose buttons,
    no elastic round the throat: see the safety standards that hold where you are.

    A head below 300 mm or above 2000 mm and an edge below 110 mm are doubted: they may be in centimetres.

    Parameters
    ----------
    head : array_like
        girth that must pass (mm, 1 to 100000)
    neck : array_like
        finished way round the edge, not stretched (mm, 1 to 100000)
    slit : array_like
        length of the slit, button placket or zip (mm, 0 to 10000)
    ease : array_like, default 20
        what the opening should be wider (mm, 0 to 1000)

    Returns
    -------
    least_slit : float
        Least length of the slit; 0 where none is needed (mm)
    spare : float
        What the opening is wider than needed; negative when it does not pass (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the ease of 20 mm is common practice, no source. `tests/vectors/head_opening.csv` has hand-worked rows.

    Example: head_opening(head=520, neck=440, slit=60, ease=20) gives least_slit 50, spare 20, doubts 0
    """

@overload
def hem_let_down(hem_depth: float, turn_in: float, lowered_by: float, keep: float = ..., seam: float = ...) -> HemLetDown[float]: ...  # type: ignore[overload-overlap]

@overload
def hem_let_down(hem_depth: _ArrayLikeFloat_co, turn_in: _ArrayLikeFloat_co, lowered_by: _ArrayLikeFloat_co, keep: _ArrayLikeFloat_co = ..., seam: _ArrayLikeFloat_co = ...) -> HemLetDown[NDArray[np.float64]]:
    """What is left for a hem that is let down, and where its old crease and stitching will show.

    The old hem holds `hem_depth + turn_in` of cloth below its edge. Lowered by `lowered_by`, the new edge has
    `left = hem_depth + turn_in - lowered_by` for its hem; with less than `keep`, a facing is sewn on (a false hem), which
    needs `seam`. The old crease lies `lowered_by` above the new edge on the right side, and the old stitching
    `hem_depth + lowered_by`: a crease that has worn or faded stays, and is covered by a tuck, a braid or stitching, or the hem
    is left. Unpick and press a hand's breadth before deciding.

    Parameters
    ----------
    hem_depth : array_like
        depth of the old hem as it is sewn (mm, 0 to 1000)
    turn_in : array_like
        turned in at its raw edge; 0 where it is overcast (mm, 0 to 1000, <= hem_depth)
    lowered_by : array_like
        what the garment is to be longer (mm, 0 to 2000)
    keep : array_like, default 20
        least for a hem of its own, its turn included (mm, 0 to 1000)
    seam : array_like, default 6
        least for the seam of a facing (mm, 0 to 1000)

    Returns
    -------
    left : float
        Cloth left below the new edge for its hem or facing (mm)
    crease : float
        The old edge's crease above the new edge (mm)
    stitching : float
        The old hem's stitching above the new edge (mm)
    longest : float
        The most it can be lowered with a hem of its own (mm)
    longest_faced : float
        The most it can be lowered with a facing sewn on (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem; naming
        `lowered_by` when not even a facing can be sewn on, with the most as `max`; naming `seam` when the old hem holds less.

    Notes
    -----
    Source: Arithmetic; what is least is common practice, no source. `tests/vectors/hem_let_down.csv` has hand-worked rows.

    Example: hem_let_down(hem_depth=50, turn_in=6, lowered_by=30, keep=20, seam=6) gives left 26, crease 30, stitching 80, longest 36, longest_faced 50
    """

@overload
def hem_on_curve(radius: float, depth: float, hem: float = ...) -> HemOnCurve[float]: ...  # type: ignore[overload-overlap]

@overload
def hem_on_curve(radius: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, hem: _ArrayLikeFloat_co = ...) -> HemOnCurve[NDArray[np.float64]]:
    """Fullness to ease into a hem that is turned up on a flared edge.

    The raw edge lies at `radius + depth`; turned up it must lie at `radius - depth`. So it is too long by
    `100 · 2 · depth / (radius - depth)` percent of where it lies, and over a hem of length `hem` by
    `2 · depth · hem / radius`. Radius is that of the hem edge laid flat: `circle_skirt` or
    `arc_from_rise` give it.

    Parameters
    ----------
    radius : array_like
        radius of the finished hem edge, laid flat (mm, 1 to 1000000)
    depth : array_like
        depth of the hem (mm, 0 to 10000, < radius)
    hem : array_like, default 1000
        length of the finished hem edge (mm, 1 to 1000000)

    Returns
    -------
    excess_pct : float
        What the raw edge is longer than the line it lies on when turned up (%)
    excess : float
        The same over the whole hem, to be eased, shrunk or folded away (mm)
    raw_edge : float
        Length of the raw edge before turning (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when it reaches the centre.

    Notes
    -----
    Source: Arcs about one centre. T. Johnson, *It's Fun to Sew a Cotton School Dress*, gives 1 1/2 in for a flared skirt and 1/4 in
    or a rolled hem for a full circle, where by this sum (radius 761) 1/4 in leaves 1.7 % and 1 1/2 in would leave 10.5 %.

    Example: hem_on_curve(radius=840, depth=40, hem=2000) gives excess_pct 10, excess 190.476, raw_edge 2095.238
    """

@overload
def hip_waist_drop(hip: float, waist: float) -> HipWaistDrop[float, int]: ...  # type: ignore[overload-overlap]

@overload
def hip_waist_drop(hip: _ArrayLikeFloat_co, waist: _ArrayLikeFloat_co) -> HipWaistDrop[NDArray[np.float64], NDArray[np.uint64]]:
    """What the hip is larger than the waist, which may be less than nothing.

    `drop = hip - waist`. On a body whose waist is the larger there is nothing to dart: panels hang straight from the waist, or
    flare from the hip to it. What darts take in a panel there is follows from the panel, not from this
    (`dart_in_panel`).

    Parameters
    ----------
    hip : array_like
        girth of hip (mm, 1 to 100000)
    waist : array_like
        girth of waist (mm, 1 to 100000)

    Returns
    -------
    drop : float
        Hip less waist; negative where the waist is larger (mm)
    doubts : int
        Doubts raised, as by `waist_hip_doubts` (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. From the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007: women
    57 to 252 mm, men -21 to 164 mm (5th and 95th percentiles), waist taken at the navel.

    Example: hip_waist_drop(hip=980, waist=720) gives drop 260, doubts 0
    """

@overload
def holes_left(edge: float, first: float, pitch: float) -> HolesLeft[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def holes_left(edge: _ArrayLikeFloat_co, first: _ArrayLikeFloat_co, pitch: _ArrayLikeFloat_co) -> HolesLeft[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Buttonholes left on an edge that is shortened.

    `count = floor((edge - first) / pitch) + 1`.

    Parameters
    ----------
    edge : array_like
        finished length of the edge after shortening (mm, 1 to 100000)
    first : array_like
        first hole from the end that stays (mm, 0 to 100000, <= edge)
    pitch : array_like
        from hole to hole (mm, 1 to 100000)

    Returns
    -------
    count : int
        Number of holes left
    last : float
        Place of the last of them, from the same end as the first (mm)
    to_end : float
        From the last hole to the new end of the edge (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `first` when it lies beyond the edge.

    Notes
    -----
    Source: Arithmetic; the 12 mm behind the doubt are common practice, no source. `tests/vectors/holes_left.csv` has hand-worked
    rows.

    Example: holes_left(edge=610, first=30, pitch=90) gives count 7, last 570, to_end 40, doubts 0
    """

@overload
def insert_strip(lacking: float, allowance: float, strips: int = ..., place: InsertPlace | str | int = ...) -> InsertStrip[float]: ...  # type: ignore[overload-overlap]

@overload
def insert_strip(lacking: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, strips: _ArrayLikeFloat_co = ..., place: InsertPlace | str | int = ...) -> InsertStrip[NDArray[np.float64]]:
    """Strip to let into a garment for what is lacking in its width.

    Each strip must add its share, `lacking / strips`. In an opened seam the old edges are sewn on their old lines, and it
    shows just that. In a cut through the cloth both new edges lose an allowance, which the strip replaces as well:
    `finished = lacking / strips + 2 · allowance`. In both places `cut_width = finished + 2 · allowance`: a strip cut for a
    seam and let into a slash is two allowances short. Cut it on the garment's own grain, of cloth washed as often. What can
    be let out first, `let_out` says.

    Parameters
    ----------
    lacking : array_like
        what the garment is too narrow by, all round (mm, 0.1 to 10000)
    allowance : array_like
        seam allowance at each edge (mm, 0 to 1000)
    strips : array_like of int, default 1
        number of strips that share it (1 to 64)
    place : InsertPlace, default "seam"
        where they are let in

    Returns
    -------
    finished : float
        Width of each strip between its seam lines, as it shows (mm)
    cut_width : float
        Width to cut each strip (mm)
    cloth : float
        Cloth that all strips take side by side (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/insert_strip.csv` has hand-worked rows.

    Example: insert_strip(lacking=60, allowance=10, strips=2, place='seam') gives finished 30, cut_width 50, cloth 100
    """

@overload
def k_over_s(reflectance: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def k_over_s(reflectance: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """K/S, the depth of shade, of a reflectance.

    `K/S = (1 - R)² / (2 R)`. Depths add up where reflectances do not: cloth and dyes each give their own. Near black it grows
    without bounds, so small errors of R are large ones of K/S.

    Parameters
    ----------
    reflectance : array_like
        share of the light that comes back (0.001 to 1)

    Returns
    -------
    float
        K/S

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: E. Allen, "Colorant Formulation and Shading", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 19.

    Example: k_over_s(reflectance=0.5) gives 0.25
    """

@overload
def knife_pleats(finished: float, count: int, depth: float) -> KnifePleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def knife_pleats(finished: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> KnifePleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Cloth for knife pleats of a given number and depth.

    `flat = finished + 2 · count · depth`. The four functions of knife pleats each find one of `flat`, `finished`, `count`
    and `depth` from the others, and give the same answer. Tucks are the same sum.

    Parameters
    ----------
    finished : array_like
        width when pleated (mm, 1 to 1000000)
    count : array_like of int
        number of pleats (1 to 1000)
    depth : array_like
        depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916 (tucks: twice the depth times the number).

    Example: knife_pleats(finished=720, count=24, depth=30) gives flat 2160, finished 720, count 24, show 30, depth 30, intake 60, taken_up 1440, ratio 3, doubts 0
    """

@overload
def knife_pleats_count(flat: float, finished: float, depth: float) -> KnifePleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def knife_pleats_count(flat: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> KnifePleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Number of knife pleats of at least a given depth that bring cloth there is to a width.

    The whole number that `(flat - finished) / (2 · depth)` holds, and then the depth at which they take up exactly what
    there is: the depth wanted or a little more.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    depth : array_like
        least depth of each pleat's underlay (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat; naming
        `depth` when there is not enough for one pleat, or so much that there would be more than 1000.

    Notes
    -----
    Source: A booklet on draperies (pinch pleats: 91 in at 7 in each is 13). `tests/vectors/knife_pleats_count.csv`.

    Example: knife_pleats_count(flat=1500, finished=700, depth=30) gives flat 1500, finished 700, count 13, show 53.85, depth 30, intake 61.54, taken_up 800, ratio 2.14, doubts 0
    """

@overload
def knife_pleats_depth(flat: float, finished: float, count: int) -> KnifePleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def knife_pleats_depth(flat: _ArrayLikeFloat_co, finished: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co) -> KnifePleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Depth of a given number of knife pleats that bring cloth there is to a width.

    `depth = (flat - finished) / (2 · count)`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    finished : array_like
        width when pleated (mm, 1 to 1000000, < flat)
    count : array_like of int
        number of pleats (1 to 1000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `finished` when nothing is left to pleat.

    Notes
    -----
    Source: I. D. Conover, *A Complete Course in Dressmaking*, vol. 5, 1921 (year from memory): in a pleated skirt, what is to be
    pleated away, shared by the pleats. `tests/vectors/knife_pleats_depth.csv` has its numbers.

    Example: knife_pleats_depth(flat=1500, finished=700, count=16) gives flat 1500, finished 700, count 16, show 43.75, depth 25, intake 50, taken_up 800, ratio 2.1429, doubts 0
    """

@overload
def knife_pleats_finished(flat: float, count: int, depth: float) -> KnifePleats[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def knife_pleats_finished(flat: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> KnifePleats[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Width to which a given number of knife pleats brings cloth there is.

    `finished = flat - 2 · count · depth`.

    Parameters
    ----------
    flat : array_like
        width before pleating, without allowances (mm, 1 to 100000000)
    count : array_like of int
        number of pleats (1 to 1000)
    depth : array_like
        depth of each pleat's underlay, fold to fold (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before pleating, without allowances (mm)
    finished : float
        Width when pleated (mm)
    count : int
        Number of pleats
    show : float
        Width of each pleat that shows (mm)
    depth : float
        Depth of each pleat's underlay, fold to fold (mm)
    intake : float
        Cloth that each pleat takes up, twice its depth (mm)
    taken_up : float
        Cloth that all pleats take up (mm)
    ratio : float
        Flat over finished: 3 where pleats just touch
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `depth` when the pleats take up all the cloth.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/knife_pleats_finished.csv` has hand-worked rows.

    Example: knife_pleats_finished(flat=2160, count=24, depth=30) gives flat 2160, finished 720, count 24, show 30, depth 30, intake 60, taken_up 1440, ratio 3, doubts 0
    """

@overload
def lab_from_srgb(red: float, green: float, blue: float) -> Lab[float]: ...  # type: ignore[overload-overlap]

@overload
def lab_from_srgb(red: _ArrayLikeFloat_co, green: _ArrayLikeFloat_co, blue: _ArrayLikeFloat_co) -> Lab[NDArray[np.float64]]:
    """CIELAB of a colour given by its screen levels, under daylight D65.

    Of cloth photographed: put a white card beside it, in the same even daylight, and bring the card to equal levels first.
    Without it the numbers are the lamp's and the camera's. Wet cloth is darker than dry.

    Parameters
    ----------
    red : array_like
        red level (0 to 255)
    green : array_like
        green level (0 to 255)
    blue : array_like
        blue level (0 to 255)

    Returns
    -------
    l : float
        Lightness L*: 0 is black, 100 white
    a : float
        a*: green below 0, red above
    b : float
        b*: blue below 0, yellow above

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB, matrix with four decimals) and CIE 15 (CIELAB). A matrix worked out from the primaries gives greys
    an a* and b* of 0, this one up to 0.01.

    Example: lab_from_srgb(red=192, green=160, blue=144) gives l 68.2864, a 9.3304, b 12.7525
    """

@overload
def lab_from_xyz(x: float, y: float, z: float, white_x: float = ..., white_y: float = ...) -> Lab[float]: ...  # type: ignore[overload-overlap]

@overload
def lab_from_xyz(x: _ArrayLikeFloat_co, y: _ArrayLikeFloat_co, z: _ArrayLikeFloat_co, white_x: _ArrayLikeFloat_co = ..., white_y: _ArrayLikeFloat_co = ...) -> Lab[NDArray[np.float64]]:
    """CIELAB of a colour given by its tristimulus values.

    The white is given by its chromaticity; its `Y` is 1.

    Parameters
    ----------
    x : array_like
        X (0 to 2)
    y : array_like
        Y, the luminance: white has 1 (0 to 2)
    z : array_like
        Z (0 to 2)
    white_x : array_like, default 0.3127
        chromaticity x of the white: daylight D65 (0.05 to 0.8)
    white_y : array_like, default 0.329
        chromaticity y of the white (0.05 to 0.8)

    Returns
    -------
    l : float
        Lightness L*: 0 is black, 100 white
    a : float
        a*: green below 0, red above
    b : float
        b*: blue below 0, yellow above

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `white_y` when both together leave no Z: they
        must sum to less than 1.

    Notes
    -----
    Source: CIE 15, *Colorimetry*, CIELAB (1976).

    Example: lab_from_xyz(x=0.20654008, y=0.12197225, z=0.05136952, white_x=0.3127, white_y=0.329) gives l 41.52787529, a 52.63858304, b 26.92317922
    """

@overload
def lacing(pairs: int, pitch: float, gap: float, tail: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def lacing(pairs: _ArrayLikeFloat_co, pitch: _ArrayLikeFloat_co, gap: _ArrayLikeFloat_co, tail: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Length of lace for a laced opening.

    Crosswise lacing, with one bar straight across at the start: each of the `pairs - 1` steps takes two slanting stretches,
    `lace = gap + 2 · (pairs - 1) · √(gap² + pitch²) + 2 · tail`. Give the gap at its widest, when the garment is put on, or the
    lace must be drawn out each time. No lace at a child's neck or hood.

    Parameters
    ----------
    pairs : array_like of int
        pairs of eyelets (1 to 100)
    pitch : array_like
        from eyelet to eyelet along one side (mm, 1 to 1000)
    gap : array_like
        across from eyelet to eyelet of a pair (mm, 0 to 10000)
    tail : array_like, default 250
        each end left over for a bow (mm, 0 to 10000)

    Returns
    -------
    float
        Length of lace (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry; the thickness of cloth and lace is left out. The tail for a bow is common practice, no source.
    `tests/vectors/lacing.csv` has hand-worked rows.

    Example: lacing(pairs=9, pitch=30, gap=40, tail=250) gives 1340
    """

def length_chain(lengths: Sequence[float] | NDArray[Any], factors: Sequence[float] | NDArray[Any], total: float, unknown: int) -> LengthChain:
    """The one unknown of a chain of lengths.

    The chain is `total = factor · length + factor · length + …`: a factor of 1 for a length that adds, -1 for a seam
    allowance that is lost, 2 for one that is lost or won on both edges, 0.5 for half a girth. `unknown` is the index of
    the length sought, or the number of lengths when the total is sought. What stands in the unknown's place is not used,
    but must be in range: write 0.

    Parameters
    ----------
    lengths : sequence of float
        the lengths (mm, 0 to 100000, 1 to 1000 items)
    factors : sequence of float
        how many times each counts, minus where lost (-100 to 100, as many as lengths)
    total : float
        what they come to (mm, 0 to 10000000000)
    unknown : int
        index of the length sought; their number: total (0 to 1000)

    Returns
    -------
    value : float
        The length sought (mm)
    plus : float
        What the known terms with a plus add up to (mm)
    minus : float
        What the known terms with a minus take away (mm)
    worst_per_mm : float
        How far the value is off at worst, for each mm that every known length may be off
    likely_per_mm : float
        How far the value is off in the usual case, for each mm that every known length may be off

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `unknown`: there is no such length;
        `factors`: the one at the unknown is below 1e-6 either way; `total`: the answer would be negative, with the totals
        that would do (or the sum itself, where the total is sought).

    Notes
    -----
    Source: Arithmetic; errors as in `tolerance_stack`.

    Example: length_chain(lengths=[640, 10, 35], factors=[1, -1, 1], total=0, unknown=3) gives value 665, plus 675, minus 10, worst_per_mm 3, likely_per_mm 1.7321
    """

def length_chain_shares(lengths: Sequence[float] | NDArray[Any], factors: Sequence[float] | NDArray[Any], errors: Sequence[float] | NDArray[Any], total: float, unknown: int, total_error: float = ...) -> ChainShares:
    """Each term's part in a chain of lengths and in its error.

    The chain and its unknown are those of `length_chain`; each length has besides how far it may be off. `parts` says
    what each term adds to the total, `factor · length`, minus where it is lost; the unknown's own part among them.
    `misses` says how far each term's error alone moves the unknown: `|factor| · error / |factor of the unknown|`. They add
    up to the worst case, the total's own among them; the unknown's own is 0. The largest of them is where a second
    measuring pays.

    Parameters
    ----------
    lengths : sequence of float
        the lengths (mm, 0 to 100000, 1 to 1000 items)
    factors : sequence of float
        how many times each counts, minus where lost (-100 to 100, as many as lengths)
    errors : sequence of float
        how far each may be off (mm, 0 to 1000, as many as lengths)
    total : float
        what they come to (mm, 0 to 10000000000)
    unknown : int
        index of the length sought; their number: total (0 to 1000)
    total_error : float, default 0
        how far the total may be off (mm, 0 to 1000)

    Returns
    -------
    parts : array
        what each adds to the total (mm)
    misses : array
        how far the error of each moves the unknown (mm)
    value : float
        The length sought (mm)
    worst : float
        How far it is off when every error falls the same way (mm)
    likely : float
        How far it is off when they fall by chance: the root of the sum of their squares (mm)
    largest : int
        Index of the term whose error moves it most, of equals the first; their number is the total
    largest_part : float
        What that term's error adds to the worst case (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` as `length_chain`.

    Notes
    -----
    Source: Arithmetic; errors that fall by chance add as the root of the sum of their squares: JCGM 100:2008, *Guide to the
    expression of uncertainty in measurement*, 5.1.2. `tests/vectors/length_chain_shares.csv` has hand-worked rows.

    Example: length_chain_shares(lengths=[640, 10, 0], factors=[1, -2, 1], errors=[2, 1, 0], total=680, unknown=2, total_error=3) gives parts 640 -20 60, misses 2 2 0, value 60, worst 7, likely 4.1231, largest 3, largest_part 3
    """

@overload
def let_out(garment: float, body: float, ease: float, allowance: float, edges: int = ..., keep: float = ...) -> LetOut[float, int]: ...  # type: ignore[overload-overlap]

@overload
def let_out(garment: _ArrayLikeFloat_co, body: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, edges: _ArrayLikeFloat_co = ..., keep: _ArrayLikeFloat_co = ...) -> LetOut[NDArray[np.float64], NDArray[np.uint64]]:
    """What to let out at each edge of a garment that is too narrow, and what is still short.

    `lacking = body + ease - garment`, shared evenly by the edges but no more than `allowance - keep` each. Look first: old seam
    lines, needle holes, a faded or worn fold and snips that reach into the allowance may show, and then it is worth nothing.

    A body below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    garment : array_like
        finished garment at this level, all round (mm, 1 to 100000)
    body : array_like
        body at this level, all round (mm, 1 to 100000)
    ease : array_like
        what the garment is to have more than the body (mm, -10000 to 10000)
    allowance : array_like
        allowance there is inside each seam, sound cloth (mm, 0 to 1000)
    edges : array_like of int, default 4
        edges that can be let out, two to a seam (1 to 64)
    keep : array_like, default 5
        allowance that each edge must keep (mm, 0 to 1000, <= allowance)

    Returns
    -------
    lacking : float
        What the garment is too narrow by (mm)
    each : float
        Let out at each edge (mm)
    gained : float
        Let out at all edges together (mm)
    short_by : float
        Still lacking: a strip or a gusset must give it (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is wide enough already; naming `keep`
        when it is more than the allowance.

    Notes
    -----
    Source: Arithmetic; what must be kept is common practice, no source. `tests/vectors/let_out.csv` has hand-worked rows.

    Example: let_out(garment=700, body=720, ease=20, allowance=12, edges=4, keep=5) gives lacking 40, each 7, gained 28, short_by 12, doubts 0
    """

@overload
def level_line(hem_radius: float, height: float, hem_chord: float) -> LevelLine[float]: ...  # type: ignore[overload-overlap]

@overload
def level_line(hem_radius: _ArrayLikeFloat_co, height: _ArrayLikeFloat_co, hem_chord: _ArrayLikeFloat_co) -> LevelLine[NDArray[np.float64]]:
    """Line at an even height above a curved hem that is kept.

    Height is measured from the hem on its radius, so the line is an arc about the same centre: `radius = hem_radius -
    height`, its chord shrinks alike, and `sag = radius - √(radius² - chord² / 4)`. A straight cut through its ends would
    leave the panel too long by the sag in the middle; one through its middle, too short at the sides. Radius and chord of
    the hem come from `arc_from_rise`. The panel is a sector of less than half a ring.

    Parameters
    ----------
    hem_radius : array_like
        radius of the hem that is kept (mm, 1 to 1000000)
    height : array_like
        height of the line above the hem (mm, 0 to 100000, < hem_radius)
    hem_chord : array_like
        straight across from end to end of the hem (mm, 1 to 100000)

    Returns
    -------
    radius : float
        Radius of the line (mm)
    chord : float
        Straight across from end to end of the line (mm)
    sag : float
        How far the line bows below its chord (mm)
    length : float
        Length along the line (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `height` when it reaches the centre; naming
        `hem_chord` when it is more than twice the radius.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/level_line.csv` has hand-worked rows.

    Example: level_line(hem_radius=1500, height=600, hem_chord=500) gives radius 900, chord 300, sag 12.6, length 301.4
    """

@overload
def linear_light(level: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def linear_light(level: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Light of one screen level, as a share of the most.

    With `c = level / 255`: `c / 12.92` up to `c = 0.04045`, above it `((c + 0.055) / 1.055)^2.4`. Levels are not light: the
    middle level 128 has a fifth of it.

    Parameters
    ----------
    level : array_like
        red, green or blue of a picture (0 to 255)

    Returns
    -------
    float
        Share of the most light

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB).

    Example: linear_light(level=100) gives 0.12743768
    """

@overload
def lining_free_length(length: float, clearance: float, hem: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def lining_free_length(length: _ArrayLikeFloat_co, clearance: _ArrayLikeFloat_co, hem: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Length to cut a lining that hangs free of the shell's hem, below its upper seam line.

    `length - clearance + hem`.

    Parameters
    ----------
    length : array_like
        finished shell, upper seam to hem edge (mm, 1 to 100000)
    clearance : array_like
        lining's hem edge above the shell's (mm, 0 to 10000, < length)
    hem : array_like
        all the cloth of the lining's own hem, turn included (mm, 0 to 10000)

    Returns
    -------
    float
        Upper seam line to the lower cut edge (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `clearance` when nothing of the lining is left.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/lining_free_length.csv` has hand-worked rows.

    Example: lining_free_length(length=560, clearance=20, hem=35) gives 575
    """

@overload
def lining_length(length: float, hem_depth: float, clearance: float) -> LiningLength[float, int]: ...  # type: ignore[overload-overlap]

@overload
def lining_length(length: _ArrayLikeFloat_co, hem_depth: _ArrayLikeFloat_co, clearance: _ArrayLikeFloat_co) -> LiningLength[NDArray[np.float64], NDArray[np.uint64]]:
    """Length of a lining that hangs in a fold over the shell's hem.

    The fold ends `clearance` above the finished edge and runs back up to the top of the hem:
    `seam_to_seam = (length - clearance) + (hem_depth - clearance)`, `fold = hem_depth - clearance`. Width and shrinkage
    are other questions; a lining without walking room needs a slit.

    The length is doubted as `body_length_doubts` does.

    Parameters
    ----------
    length : array_like
        finished shell, upper seam to hem edge (mm, 1 to 100000)
    hem_depth : array_like
        finished depth of the shell's hem (mm, 0 to 10000, <= length)
    clearance : array_like
        lining's fold above the hem edge (mm, 0 to 10000, < hem_depth)

    Returns
    -------
    seam_to_seam : float
        Lining from its upper seam to the seam at the top of the hem, without allowances (mm)
    straight : float
        The shell's own distance between these two seams (mm)
    spare : float
        What the lining is longer by, which lies in the fold (mm)
    fold : float
        Depth of the fold, from the hem's top seam down (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `hem_depth` when the hem is deeper than the
        shell is long; naming `clearance` when no fold is left: then the lining hangs free (`lining_free_length`).

    Notes
    -----
    Source: Arithmetic on the fold's path; the construction is common practice, no source. `tests/vectors/lining_length.csv` has
    hand-worked rows.

    Example: lining_length(length=560, hem_depth=45, clearance=20) gives seam_to_seam 565, straight 515, spare 50, fold 25, doubts 0
    """

@overload
def lining_width(panel: float, facing: float = ..., ease_pct: float = ..., pleat: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def lining_width(panel: _ArrayLikeFloat_co, facing: _ArrayLikeFloat_co = ..., ease_pct: _ArrayLikeFloat_co = ..., pleat: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Width to cut a lining panel that meets a facing.

    `width = (panel - facing) · (1 + ease_pct / 100) + pleat`, between seam lines: the lining must never be what strains, so it
    is wider than what it lines. A pleat at the centre back gives room to reach. Panels without a facing have `facing = 0`.

    Parameters
    ----------
    panel : array_like
        finished shell panel, seam line to edge (mm, 1 to 100000)
    facing : array_like, default 0
        finished facing, edge to the seam that joins the lining (mm, 0 to 100000, < panel)
    ease_pct : array_like, default 2
        what the lining is wider than what it lines (%, 0 to 50)
    pleat : array_like, default 0
        cloth of a pleat, both layers of its fold (mm, 0 to 10000)

    Returns
    -------
    float
        Width of the lining panel between seam lines (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `facing` when it is as wide as the panel.

    Notes
    -----
    Source: Arithmetic; the ease is common practice, no source. `tests/vectors/lining_width.csv` has hand-worked rows. What washing
    takes of shell and lining is another question: `shrink_pair`.

    Example: lining_width(panel=260, facing=60, ease_pct=2, pleat=0) gives 204
    """

def liquor_shares(masses_g: Sequence[float] | NDArray[Any], pooled_ml: float, ratio: float) -> LiquorShares:
    """A pooled liquor shared by dry mass, and the water that brings every bath to one liquor ratio.

    `share = pooled · mass / (sum of masses)`, topped up to `mass · ratio`. So all goods have the same dye for their mass in
    the same liquor; they still seldom match, as no two baths heat alike.

    Parameters
    ----------
    masses_g : sequence of float
        dry mass of each bath's goods (g, 0.01 to 1000000, 1 to 100 items)
    pooled_ml : float
        liquor to share (ml, 0 to 1000000000)
    ratio : float
        liquor to goods, by mass (1 to 200)

    Returns
    -------
    shares_ml : array
        pooled liquor for each bath (ml)
    waters_ml : array
        water added to each bath (ml)
    bath_ml : float
        All baths together, topped up (ml)
    water_ml : float
        Fresh water to top all of them up (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room`. `NoSolution` naming `pooled_ml` when there is more of
        it than the ratio asks for.

    Notes
    -----
    Source: Proportion. `tests/vectors/liquor_shares.csv` has a hand-worked row.

    Example: liquor_shares(masses_g=[380, 170], pooled_ml=7000, ratio=20) gives shares_ml 4836.36 2163.64, waters_ml 2763.64 1236.36, bath_ml 11000, water_ml 4000, doubts 0, cautions 517
    """

@overload
def loop_slack(length: float, diameter: float, thickness: float, cord: float, gap: float = ..., stretch: float = ..., shape: ButtonShape | str | int = ...) -> LoopSlack[float, int]: ...  # type: ignore[overload-overlap]

@overload
def loop_slack(length: _ArrayLikeFloat_co, diameter: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co, cord: _ArrayLikeFloat_co, gap: _ArrayLikeFloat_co = ..., stretch: _ArrayLikeFloat_co = ..., shape: ButtonShape | str | int = ...) -> LoopSlack[NDArray[np.float64], NDArray[np.uint64]]:
    """Slack of a loop there is, or of one chosen, on a button.

    `slack = length - visible`, where `visible` is what `button_loop` gives for the same button.

    Parameters
    ----------
    length : array_like
        length of the loop that shows, not stretched (mm, 1 to 2000)
    diameter : array_like
        diameter of the button (mm, 1 to 200)
    thickness : array_like
        thickness of a flat button; not used for a ball (mm, 0 to 100)
    cord : array_like
        thickness of the cord (mm, 0 to 50)
    gap : array_like, default 0
        between the loop's two ends where they are sewn (mm, 0 to 500)
    stretch : array_like, default 0
        how much the cord may stretch: 0.3 is 30 % (0 to 3)
    shape : ButtonShape, default "flat"
        shape of the button

    Returns
    -------
    slack : float
        What the loop is longer than the one that just passes; negative when it is too short (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is as wide as the way round.

    Notes
    -----
    Source: Plane geometry; the 2 mm behind the doubt `LOOP_LOOSE` are common practice, no source. `tests/vectors/loop_slack.csv`
    has hand-worked rows.

    Example: loop_slack(length=28, diameter=10, thickness=3, cord=1.5, gap=4, stretch=0, shape='flat') gives slack 1.29, doubts 0
    """

def mix_temperature(volumes_ml: Sequence[float] | NDArray[Any], temperatures_c: Sequence[float] | NDArray[Any], goods_g: float = ..., goods_temperature_c: float = ..., goods_heat: float = ...) -> MixTemperature:
    """Temperature of liquors of several temperatures poured together, with the goods.

    `T = sum(m c T) / sum(m c)`, water and liquor at 4.18 J/(g °C) and a gram a millilitre. What the vessel takes is left
    out, so the bath comes out nearer the room's temperature than this: measure it. Pour hot into cold, slowly. Goods warmer
    than 40 °C are doubted (68 may be in Fahrenheit), and so is less than 50 ml in all.

    Parameters
    ----------
    volumes_ml : sequence of float
        volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items)
    temperatures_c : sequence of float
        temperature of each (degC, 0 to 100, as many as volumes_ml)
    goods_g : float, default 0
        dry mass of the goods (g, 0 to 1000000)
    goods_temperature_c : float, default 20
        temperature of the goods (degC, 0 to 100)
    goods_heat : float, default 1.3
        specific heat of the goods, J/(g °C) (0.5 to 4.5)

    Returns
    -------
    temperature_c : float
        Temperature before the pot and the air have taken their part (degC)
    volume_ml : float
        Volume of liquor (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument.

    Notes
    -----
    Source: Balance of heat. Cotton 1.22 to 1.35 J/(g °C): table of specific heats in a text on the physics of textile fibres. Water
    4.18: from memory. Wet goods: give the liquor they hold as one of the liquors. Where doubts begin: common practice, no
    source.

    Example: mix_temperature(volumes_ml=[3000, 1000], temperatures_c=[20, 100], goods_g=0, goods_temperature_c=20, goods_heat=1.3) gives temperature_c 40, volume_ml 4000, doubts 0, cautions 5
    """

@overload
def nap_layout(wide: float, narrow: float, length: float, count: int, cloth_width: float) -> NapLayout[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def nap_layout(wide: _ArrayLikeFloat_co, narrow: _ArrayLikeFloat_co, length: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, cloth_width: _ArrayLikeFloat_co) -> NapLayout[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Length of cloth for equal tapered panels with a nap and without.

    All one way up, each panel takes its wide end of the cloth's width: `floor(cloth_width / wide)` side by side. Turned
    every other, a narrow end lies beside each wide one and `n` panels take `wide + (n - 1) · (wide + narrow) / 2`. Either
    way a row takes the panel's length, and there are as many rows as the count asks. On napped cloth (velvet, corduroy,
    brushed cloth, some satins) and one-way prints a turned panel is of another shade: it cannot be put right afterwards. The
    habit of a quarter of a yard more for a nap is sometimes nothing and sometimes a whole row: count.

    Cloth below 200 mm is doubted: no cloth is woven so narrow (from memory).

    Parameters
    ----------
    wide : array_like
        width of a panel at its wide end, allowances included (mm, 1 to 100000)
    narrow : array_like
        width at its narrow end, allowances included (mm, 0 to 100000, <= wide)
    length : array_like
        length of a panel, allowances included (mm, 1 to 100000)
    count : array_like of int
        number of panels (1 to 1000)
    cloth_width : array_like
        width of the cloth between its selvedges (mm, 1 to 100000, >= wide)

    Returns
    -------
    across_one_way : int
        Panels side by side when all lie one way up
    across_turned : int
        Panels side by side when every other is turned upside down
    length_one_way : float
        Length of cloth when all lie one way up (mm)
    length_turned : float
        Length of cloth when every other is turned (mm)
    nap_extra : float
        What the nap takes: the one length less the other (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `narrow` when it is the wider end; naming
        `cloth_width` when one panel is wider.

    Notes
    -----
    Source: Plane geometry of trapezia with level ends; rows are not nested in each other. A quarter of a yard for one-way cloth:
    sewwithsarah.com. `tests/vectors/nap_layout.csv` has hand-worked rows.

    Example: nap_layout(wide=400, narrow=180, length=720, count=8, cloth_width=1400) gives across_one_way 3, across_turned 4, length_one_way 2160, length_turned 1440, nap_extra 720, doubts 0
    """

@overload
def neck_bust_doubts(neck: float, bust: float) -> int: ...  # type: ignore[overload-overlap]

@overload
def neck_bust_doubts(neck: _ArrayLikeFloat_co, bust: _ArrayLikeFloat_co) -> NDArray[np.uint64]:
    """Doubts on a neck and a bust together.

    A neck of more than half the bust (`NECK_OVER_HALF_BUST`) may be the two in each other's place, or half a bust.

    Parameters
    ----------
    neck : array_like
        girth of neck (mm, 1 to 100000)
    bust : array_like
        girth of bust or chest (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice, no source. The 95th percentile of neck is below half the 5th of chest, women 363 and 824 mm, men 443
    and 922 mm, in Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*, NATICK/TR-15/007, 2014.

    Example: neck_bust_doubts(neck=328, bust=940) gives 0
    """

@overload
def needle_blade(metric: int) -> NeedleBlade[float]: ...  # type: ignore[overload-overlap]

@overload
def needle_blade(metric: _ArrayLikeFloat_co) -> NeedleBlade[NDArray[np.float64]]:
    """Blade of a machine needle, and the thickest thread for it, from its metric number.

    `blade = metric / 100`, `thread = 0.4 · blade`. A thread too thick for its needle frays and skips; a needle too thick for
    its cloth leaves holes that stay, which old seams of silk, leather and coated cloth show for ever. A broken needle can
    fly: change a bent one at once.

    Parameters
    ----------
    metric : array_like of int
        the larger number on a packet, 80 of 80/12 (20 to 300)

    Returns
    -------
    blade : float
        Diameter of the blade above the scarf (mm)
    thread : float
        Thickest thread that runs freely in its long groove (mm)

    Raises
    ------
    ReclothError
        `OutOfRange`, naming the argument.

    Notes
    -----
    Source: DIN 5325:1953 (the number), as told at apparelscience.com; a needle maker's dictionary, schmetzneedles.com, "long groove"
    (thread at most 40 % of the needle).

    Example: needle_blade(metric=75) gives blade 0.75, thread 0.3
    """

@overload
def needle_metric(us_size: int) -> float: ...  # type: ignore[overload-overlap]

@overload
def needle_metric(us_size: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Metric number of a machine needle from its US size.

    `metric = 60 + 5 · (us_size - 8)`: 8 is 60, 11 is 75, 18 is 110. The number is the blade's diameter in hundredths of a
    millimetre (`needle_blade`). From 19 up the two scales no longer run together, so these sizes are not offered; read the
    packet.

    Parameters
    ----------
    us_size : array_like of int
        the smaller number on a packet (8 to 18)

    Returns
    -------
    float
        Metric number, hundredths of a millimetre

    Raises
    ------
    ReclothError
        `OutOfRange`, naming the argument.

    Notes
    -----
    Source: apparelscience.com, needle number system; pairs as commonly printed on packets. `tests/vectors/needle_metric.csv` has
    them all.

    Example: needle_metric(us_size=12) gives 80
    """

@overload
def negative_ease(body: float, stretch_pct: float, widest: float = ..., share: float = ...) -> NegativeEase[float, int]: ...  # type: ignore[overload-overlap]

@overload
def negative_ease(body: _ArrayLikeFloat_co, stretch_pct: _ArrayLikeFloat_co, widest: _ArrayLikeFloat_co = ..., share: _ArrayLikeFloat_co = ...) -> NegativeEase[NDArray[np.float64], NDArray[np.uint64]]:
    """Girth of a garment of stretching cloth, from the share of its stretch that wearing is to use.

    Worn, the garment is stretched to the body: `girth · (1 + share · stretch / 100) = body`. Taking `share · stretch`
    percent off the body's girth instead gives a smaller garment that uses more of the stretch than was meant. It must also
    go over the widest part on its way: `girth · (1 + stretch / 100)` must reach that. Seams and elastic stretch less than
    the cloth: try a stitch that gives.

    A body girth below 110 mm, less than a child's wrist (from memory), is doubted, and a stretch below 5 %: 0.5 may
    be a share.

    Parameters
    ----------
    body : array_like
        girth of the body where it is worn (mm, 10 to 100000)
    stretch_pct : array_like
        stretch of the cloth the way it goes round (%, 0 to 500)
    widest : array_like, default 0
        widest girth it is pulled over; 0: not asked (mm, 0 to 100000)
    share : array_like, default 0.5
        part of the stretch used in wear (0 to 1)

    Returns
    -------
    girth : float
        Finished girth of the garment at rest (mm)
    ease : float
        Girth less the body's, so negative (mm)
    furthest : float
        Furthest girth that the cloth stretches to (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `widest` when the cloth does not stretch so far:
        choose a smaller share, or an opening.

    Notes
    -----
    Source: Proportion. A share of one half is common practice, no source; swimwear uses more, a loose top less.

    Example: negative_ease(body=180, stretch_pct=50, widest=210, share=0.5) gives girth 144, ease -36, furthest 216, doubts 0
    """

@overload
def neutraliser(carried_ml: float, chlorine_pct: float, reaction: Reaction | str | int, stage: Stage | str | int, in_bath: InBath | str | int, purity_pct: float = ..., excess_pct: float = ...) -> Neutraliser[float, int]: ...  # type: ignore[overload-overlap]

@overload
def neutraliser(carried_ml: _ArrayLikeFloat_co, chlorine_pct: _ArrayLikeFloat_co, reaction: Reaction | str | int, stage: Stage | str | int, in_bath: InBath | str | int, purity_pct: _ArrayLikeFloat_co = ..., excess_pct: _ArrayLikeFloat_co = ...) -> Neutraliser[NDArray[np.float64], NDArray[np.uint64]]:
    """Neutraliser for the chlorine that goods still carry after draining and rinsing.

    `amount = carried · chlorine / 100 · ratio · (1 + excess / 100) / (purity / 100)`. The ratio is that of the reaction named:
    for thiosulfate crystals 7.00, 3.50 or 0.875 by what it ends as, which strength and acidity decide, so the largest is the
    safe one. A test of field doses at pH 7 asked about a tenth more than the others' sums, hence the excess. Anhydrous
    thiosulfate: 0.637 times as much. It is a separate bath of fresh water, and rinsing well is the main thing: this is for
    the rest. Fibre is not asked here, as goods that ought never have met bleach need it most.

    Doubted are liquor of more than 0.1 % (rinse again first), peroxide of more than 50 % and any purity of 1 % or less, and
    an excess below 1 %.

    Parameters
    ----------
    carried_ml : array_like
        liquor that the goods carry after rinsing (ml, 0 to 1000000)
    chlorine_pct : array_like
        available chlorine in it, grams in 100 ml (%, 0 to 0.6)
    reaction : Reaction
        what takes the chlorine away, and to what
    stage : Stage
        how far the goods are from the bleach
    in_bath : InBath
        what else is in the fresh bath
    purity_pct : array_like, default 100
        share of the pure stuff: 3 for household peroxide (%, 0.1 to 100)
    excess_pct : array_like, default 10
        more than the reaction asks (%, 0 to 100)

    Returns
    -------
    chlorine_g : float
        Available chlorine the goods still carry (g)
    amount_g : float
        Neutraliser to weigh out, excess included (g)
    ratio : float
        Grams of the pure stuff for a gram of available chlorine, excess left out
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `Refused` naming `stage` unless the goods have been drained and rinsed;
        naming `in_bath` for anything but water: sulfite and thiosulfate with acid give sulfur dioxide.

    Notes
    -----
    Source: Molar masses. Hach support document TE213 (7.0 mg of thiosulfate crystals for 1 mg of chlorine). AWWA, *Disinfection of
    Pipelines and Storage Facilities Field Guide*, table 7-2 (field doses). Where doubts begin: common practice, no source.

    Example: neutraliser(carried_ml=500, chlorine_pct=0.02, reaction='thiosulfate_to_tetrathionate', stage='fresh_bath', in_bath='water_only', purity_pct=100, excess_pct=0) gives chlorine_g 0.1, amount_g 0.7, ratio 7, doubts 0, cautions 177
    """

@overload
def off_centre_opening(front: float, shift: float, extension: float, allowance: float, wide_panel: float, dart_distance: float) -> OffCentreOpening[float, int]: ...  # type: ignore[overload-overlap]

@overload
def off_centre_opening(front: _ArrayLikeFloat_co, shift: _ArrayLikeFloat_co, extension: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, wide_panel: _ArrayLikeFloat_co, dart_distance: _ArrayLikeFloat_co) -> OffCentreOpening[NDArray[np.float64], NDArray[np.uint64]]:
    """Widths of two fronts whose button line is shifted to one side of the centre front.

    `narrow_to_line = front / 2 - shift + allowance` and `wide_to_line = front / 2 + shift + allowance`; the cut widths
    add the extension (the button stand; facings are not included). Say which side is narrow and which laps over: the
    sums are the same for both. The waistband's overlap must equal this extension. A sewing-machine manual asks for an
    extension of at least three quarters of the button's diameter.

    A front below 100 mm is doubted: it may be in centimetres.

    Parameters
    ----------
    front : array_like
        finished front, side seam to side seam (mm, 1 to 100000)
    shift : array_like
        button line from the centre front (mm, 0 to 100000)
    extension : array_like
        button stand, button line to the finished opening edge (mm, 0 to 1000)
    allowance : array_like
        seam allowance at the side seams (mm, 0 to 1000)
    wide_panel : array_like
        cloth there is for the wide front, button line to side cut edge (mm, 1 to 100000)
    dart_distance : array_like
        middle of each front's dart from the centre front; half the front where there is none (mm, 0 to 100000)

    Returns
    -------
    narrow_to_line : float
        Narrow front, button line to the cut edge at its side (mm)
    wide_to_line : float
        Wide front, button line to the cut edge at its side (mm)
    narrow_cut : float
        Narrow front, opening edge to the cut edge at its side (mm)
    wide_cut : float
        Wide front, opening edge to the cut edge at its side (mm)
    largest_shift : float
        Largest shift that the wide panel allows (mm)
    dart_to_narrow : float
        Dart from the narrow front's button line; negative beyond the line, towards the edge (mm)
    dart_to_wide : float
        Dart from the wide front's button line (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `wide_panel` when it is too narrow even without
        a shift; naming `shift` when the narrow front would vanish or the wide panel is too narrow, with the largest shift as
        `max`; naming `dart_distance` when the dart lies beyond the side seam.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/off_centre_opening.csv` has hand-worked rows. Least extension: sewing-machine manual, model
    1288.

    Example: off_centre_opening(front=380, shift=85, extension=18, allowance=10, wide_panel=300, dart_distance=90) gives narrow_to_line 115, wide_to_line 285, narrow_cut 133, wide_cut 303, largest_shift 100, dart_to_narrow 5, dart_to_wide 175, doubts 32768
    """

@overload
def overdye(ground: float, low: float, high: float) -> Overdye[float]: ...  # type: ignore[overload-overlap]

@overload
def overdye(ground: _ArrayLikeFloat_co, low: _ArrayLikeFloat_co, high: _ArrayLikeFloat_co) -> Overdye[NDArray[np.float64]]:
    """Reflectance of cloth dyed over the colour it has, as a band from pale to deep.

    Depths of shade add up: `K/S = (K/S of the ground) + (K/S of the dye)`. Give the dye's as a low and a high, from swatches
    on white cloth of the same fibre: water, heat, mordant and the next batch all move it. Ask once for each of red, green
    and blue light. A dye only takes light away, so no part gets lighter. Not foretold: a fibre that takes dye otherwise, a
    finish, a ground that bleeds, hues that alkali or iron turn. Judge dry cloth, by daylight.

    Parameters
    ----------
    ground : array_like
        reflectance of the cloth as it is (0.001 to 1)
    low : array_like
        least that the dye adds, K/S (0 to 100)
    high : array_like
        most that the dye adds, K/S (0 to 100, >= low)

    Returns
    -------
    pale : float
        Reflectance where the dye takes least
    deep : float
        Reflectance where the dye takes most
    pale_l : float
        Lightness L* of a grey of the pale reflectance
    deep_l : float
        Lightness L* of a grey of the deep reflectance

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `high` when it is less than `low`.

    Notes
    -----
    Source: E. Allen, as for `k_over_s`; the sum of depths is the one-constant theory's.

    Example: overdye(ground=0.5, low=0.2, high=0.875) gives pale 0.4, deep 0.25, pale_l 69.47, deep_l 57.08
    """

@overload
def owf(mass_g: float, pct: float) -> Owf[float, int]: ...  # type: ignore[overload-overlap]

@overload
def owf(mass_g: _ArrayLikeFloat_co, pct: _ArrayLikeFloat_co) -> Owf[NDArray[np.float64], NDArray[np.uint64]]:
    """Mass of a dye, mordant or assistant from its percentage on weight of fibre.

    `amount = mass · pct / 100`, the mass being that of the dry goods. Say of a plant dyestuff whether it is weighed
    fresh, frozen or dry: the percentages differ by several times. Not for bleach, whose strength and time decide. Above 100 %
    or below 0.1 %, and for goods of less than 2 g, there are doubts.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    pct : array_like
        percentage on weight of fibre (%, 0 to 1000)

    Returns
    -------
    amount_g : float
        Mass to weigh out (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: E. M. Mairet, *A Book on Vegetable Dyes*, 1916, and *Vegetable Dyes*, 1924 (recipes by weight of wool and cotton). Where doubts begin: common practice, no source.

    Example: owf(mass_g=380, pct=15) gives amount_g 57, doubts 0, cautions 3
    """

def panel_by_offsets(stations: Sequence[float] | NDArray[Any], left: Sequence[float] | NDArray[Any], right: Sequence[float] | NDArray[Any]) -> PanelByOffsets:
    """Area and sides of a panel measured at stations along a grain line, left and right of it.

    The fast way for an uneven or traced panel: draw one thread's line down it, mark stations, and measure square to the line to
    both edges. Between stations the sides are taken as straight, so put one at every corner and more where an edge curves; the
    area is the sum of trapeziums. `left_bow` and `right_bow` tell how far each station lies beyond (positive) or within the
    straight line between its side's ends, measured across as the readings are: a reading out of row is a slip of the tape, or a side that is no straight seam. What
    lies off the line makes every width wrong: check that the thread runs true.

    Parameters
    ----------
    stations : sequence of float
        places along the grain line, rising (mm, -100000 to 100000, 2 to 200 items)
    left : sequence of float
        from the line to the left edge at each (mm, 0 to 100000, as many as stations)
    right : sequence of float
        from the line to the right edge at each (mm, 0 to 100000, as many as stations)

    Returns
    -------
    left_bow : array
        left edge beyond its straight line; negative within (mm)
    right_bow : array
        right edge beyond its straight line (mm)
    area : float
        Area between the first and the last station (mm2)
    length : float
        From the first to the last station (mm)
    widest : float
        Greatest width at a station (mm)
    narrowest : float
        Least width at a station (mm)
    largest_bow : float
        Farthest that a side leaves the straight line between its ends, measured across (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `stations` when one is not beyond the
        one before. `Outline` naming `right` when all widths are 0.

    Notes
    -----
    Source: Offsets from a base line and the trapezium rule, as in land surveying. `tests/vectors/panel_by_offsets.csv` has hand-worked
    rows.

    Example: panel_by_offsets(stations=[0, 200, 400, 600], left=[150, 160, 200, 210], right=[160, 180, 180, 220]) gives left_bow 0 -10 10 0, right_bow 0 0 -20 0, area 218000, length 600, widest 430, narrowest 310, largest_bow 20
    """

def panel_by_triangles(base: float, starts: Sequence[int] | NDArray[Any], ends: Sequence[int] | NDArray[Any], from_start: Sequence[float] | NDArray[Any], from_end: Sequence[float] | NDArray[Any], sides: Sequence[int] | NDArray[Any], spare_starts: Sequence[int] | NDArray[Any], spare_ends: Sequence[int] | NDArray[Any], spare_readings: Sequence[float] | NDArray[Any]) -> PanelByTriangles:
    """Corners and area of a panel measured by tape in triangles, with its spare readings checked.

    Number the corners around the panel, from 0, in either direction; corner 1 is `base` from corner 0. Every further
    corner, in order, is read from two corners before it, `starts` and `ends`, and lies to the left (0) or right (1) as
    seen from the start towards the end. Any other distance between two corners is a spare reading: at least one, the
    other diagonal, tells a misread tape, and cloth that lay off grain.

    `along` and `across` get a place for each corner: corner 0 at 0, 0 and corner 1 at `base`, 0; left is positive across.
    `misfits` gets a length for each spare reading: as the corners have it, less the reading.

    Parameters
    ----------
    base : float
        from corner 0 to corner 1 (mm, 1 to 100000)
    starts : sequence of int
        corner the first reading is from (0 to 63, 1 to 62 items)
    ends : sequence of int
        corner the second reading is from (0 to 63, as many as starts)
    from_start : sequence of float
        first reading of each further corner (mm, 1 to 100000, as many as starts)
    from_end : sequence of float
        second reading of each further corner (mm, 1 to 100000, as many as starts)
    sides : sequence of int
        0 left, 1 right, seen from start to end (0 to 1, as many as starts)
    spare_starts : sequence of int
        one corner of each spare reading (0 to 63, 0 to 200 items)
    spare_ends : sequence of int
        the other corner (0 to 63, as many as spare_starts)
    spare_readings : sequence of float
        distance between them (mm, 1 to 100000, as many as spare_starts)

    Returns
    -------
    along : array
        each corner along the base (mm)
    across : array
        each corner square to it (mm)
    misfits : array
        what each spare reading misses (mm)
    area : float
        Area within the corners (mm2)
    perimeter : float
        Way round the corners (mm)
    largest_misfit : float
        Largest misfit of a spare reading, without its sign (mm)
    weakest_corner : int
        The corner whose own triangle holds it least
    weakest_per_mm : float
        How far that corner moves at worst along or across its base, for each mm that its readings are off
    doubts : int
        `TRIANGLE_FLAT` and `TRIANGLE_TALL` of any corner, `SPARE_MISFIT` when a spare reading misses by over 0.5 % (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `starts` or `ends`: not a corner
        before this one, twice the same, or two in one place; `from_end`: no triangle, with the readings that make one;
        `sides`: the way round the corners crosses itself, most likely at this one; `spare_starts` or `spare_ends`: no such
        corner, or twice the same.

    Notes
    -----
    Source: Triangles as in `trilaterate`; area by the shoelace formula (Gauss). Spare readings to 0.5 %: common practice, no
    source.

    Example: panel_by_triangles(base=500, starts=[0], ends=[1], from_start=[300], from_end=[400], sides=[0], spare_starts=[0], spare_ends=[2], spare_readings=[301]) gives along 0 500 180, across 0 0 240, misfits -1, area 60000, perimeter 1200, largest_misfit 1, weakest_corner 2, weakest_per_mm 1.4, doubts 0
    """

def parse_length(text: str) -> float:
    """A length as it is written.

    Whole and mixed numbers, fractions (`3/8`, `⅜`, `3⁄8`, `31-3/8`), a decimal point or comma, a leading minus sign
    for the whole. Units: mm, cm, m; in, `"`, ft, `'`, yd; their names in full, one or many; upper or lower case, so `M`
    is metres; a full stop after an abbreviation. Spaces of any width or none. Several units in one length, each once,
    larger first, all metric or all imperial: `2 ft 3 1/8 in`, `1 m 20 cm`.

    A number without a unit is refused, zero too, and so are thousands marks: `1,234` may be either. A fraction is less
    than one, for `313/8` is more likely `31 3/8` without its space. At most 64 characters.

    Metric lengths are correctly rounded; imperial ones are counted in inches, then multiplied by 25.4 once, so that
    `31 3/8 in` is `31.375 * INCH`.

    Parameters
    ----------
    text : str
        a length as written

    Returns
    -------
    float
        The length (mm)

    Raises
    ------
    ReclothError
        `Syntax`: it cannot be read, from the character at `at`. `NoUnit`: `value` has several readings. `TwoReadings`: a
        mark after which it may be `min` or `max`; if these are equal, it is a thousands mark. `OutOfRange`: the length is
        over 1e7 mm either way.

    Notes
    -----
    Source: 1 in = 25.4 mm, 1 ft = 12 in, 1 yd = 36 in, exact by the international yard and pound agreement of 1959.

    Example: parse_length(text='31 3/8 in') gives 796.925
    """

def photo_map(picture_x: Sequence[float] | NDArray[Any], picture_y: Sequence[float] | NDArray[Any], true_x: Sequence[float] | NDArray[Any], true_y: Sequence[float] | NDArray[Any], x: Sequence[float] | NDArray[Any], y: Sequence[float] | NDArray[Any]) -> PhotoMap:
    """True places of points in a photograph of cloth that lies flat beside a reference of four known points.

    The picture of a plane is its projective map, and four points fix it: the corners of a sheet of paper of known size, say,
    given in order round it in the picture and in the same order as they truly lie. `along` and `across` get the true place of
    each point, `scales` the length that one picture unit stands for there, `√` of the map's change of area. Only what lies
    flat in the reference's own plane is mapped truly, and the bow that a lens gives straight lines is not taken out: stand
    back, point the camera straight down, use the middle of the picture. Beyond the reference errors grow fast: a slip of
    1 picture unit at a corner moves a point one size away by several. Measure one length by tape to see.

    Parameters
    ----------
    picture_x : sequence of float
        reference in the picture, in pixels or any unit (-100000 to 100000, 4 to 4 items)
    picture_y : sequence of float
        the same, up or down (-100000 to 100000, 4 to 4 items)
    true_x : sequence of float
        reference as it truly lies, along (mm, -100000 to 100000, 4 to 4 items)
    true_y : sequence of float
        the same, across (mm, -100000 to 100000, 4 to 4 items)
    x : sequence of float
        points to map, in the picture (-1000000 to 1000000, 1 to 1000 items)
    y : sequence of float
        the same, up or down (-1000000 to 1000000, as many as x)

    Returns
    -------
    along : array
        true place of each point, along (mm)
    across : array
        true place of each point, across (mm)
    scales : array
        length that one picture unit stands for there (mm)
    reach : float
        Farthest that a point lies beyond the reference, in sizes of the reference in that direction
    coarsest : float
        Largest length that one picture unit stands for at a point (mm)
    doubts : int
        `PHOTO_REACH` when a point lies more than 1.5 sizes beyond the reference (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `picture_x` or `true_x` when three of
        the four points lie in line, or they are not in order round a figure that bulges at every corner; naming `x` when a point
        lies on or beyond the horizon of the picture.

    Notes
    -----
    Source: P. Heckbert, *Fundamentals of Texture Mapping and Image Warping*, 1989 (square to quadrilateral; from memory).
    `tests/vectors/photo_map.csv` has hand-worked rows.

    Example: photo_map(picture_x=[0, 400, 300, 100], picture_y=[0, 0, 300, 300], true_x=[0, 200, 200, 0], true_y=[0, 0, 300, 300], x=[200], y=[200]) gives along 100, across 150, reach 0, doubts 0
    """

def pieced_length(lengths: Sequence[float] | NDArray[Any], allowance: float, needed: float) -> PiecedLength:
    """Length that scraps give when they are joined end to end, and how few of them reach.

    Each join takes an allowance off both its scraps: `joined = sum of lengths - 2 · allowance · (scraps - 1)`. Two allowances
    a join are easily forgotten, and then the strip is short when it is too late. Count in `needed` what its own ends take.
    Keep joins off dart points, pockets and the middle of a back; under a band, in gathers or at a seam they are not seen.
    Grain, face and nap must run alike in all scraps.

    Parameters
    ----------
    lengths : sequence of float
        the scraps, raw edge to raw edge (mm, 1 to 100000, 1 to 100 items)
    allowance : float
        seam allowance at each edge of a join (mm, 0 to 1000)
    needed : float
        length needed, allowances of its ends included (mm, 1 to 1000000)

    Returns
    -------
    joined : float
        Length of all scraps joined, free ends raw (mm)
    spare : float
        What that is longer than needed; negative when it does not reach (mm)
    joins : int
        Number of joins when all are used
    fewest : int
        Fewest scraps that reach, the longest taken first; 0 when all together do not

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument. `NoSolution` naming `lengths` and the scrap that two allowances
        would swallow: leave it out.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/pieced_length.csv` has hand-worked rows.

    Example: pieced_length(lengths=[420, 260], allowance=10, needed=640) gives joined 660, spare 20, joins 1, fewest 2
    """

@overload
def piping_width(cord: float, allowance: float, thickness: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def piping_width(cord: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Width of the strip that covers a cord for piping.

    `π · (cord + thickness) + 2 · allowance`: once round the cord in the middle of the cloth, and an allowance on both sides.
    Stitched close to the cord, it is a little more than is covered, which the stitching needs. Shrink cotton cord first.

    Parameters
    ----------
    cord : array_like
        diameter of the cord (mm, 0 to 200)
    allowance : array_like
        seam allowance beside it (mm, 0 to 1000)
    thickness : array_like, default 0
        thickness of the strip's cloth (mm, 0 to 20)

    Returns
    -------
    float
        Width to cut, square to the edges (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when there is neither cord nor allowance.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/piping_width.csv` has hand-worked rows.

    Example: piping_width(cord=4, allowance=10, thickness=0) gives 32.566
    """

@overload
def plant_dyestuff(mass_g: float, low_pct: float, high_pct: float, recipe: Basis | str | int, at_hand: Basis | str | int, fresh_per_dry_low: float = ..., fresh_per_dry_high: float = ...) -> PlantDyestuff[float, int]: ...  # type: ignore[overload-overlap]

@overload
def plant_dyestuff(mass_g: _ArrayLikeFloat_co, low_pct: _ArrayLikeFloat_co, high_pct: _ArrayLikeFloat_co, recipe: Basis | str | int, at_hand: Basis | str | int, fresh_per_dry_low: _ArrayLikeFloat_co = ..., fresh_per_dry_high: _ArrayLikeFloat_co = ...) -> PlantDyestuff[NDArray[np.float64], NDArray[np.uint64]]:
    """Plant matter for a dye bath, as a range, from a recipe weighed fresh or dry.

    `mass · pct / 100`, low and high; where the recipe weighs it otherwise than it is at hand, turned by the range of fresh
    to dry. Frozen counts as fresh. Season, soil, part of the plant and water decide the colour more than the scale: dye a
    swatch. More extractions of the same matter give paler baths of another hue, so they are not added up here. Not every
    plant is harmless: know what it is, never cook it in vessels for food. Below 1 %, above 100 % of what is dry at hand, and
    for goods of less than 2 g, there are doubts.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    low_pct : array_like
        percentage on weight of fibre, least (%, 0.1 to 2000)
    high_pct : array_like
        percentage on weight of fibre, most (%, 0.1 to 2000, >= low_pct)
    recipe : Basis
        how the recipe weighs it
    at_hand : Basis
        how it is at hand
    fresh_per_dry_low : array_like, default 3
        grams fresh that dry to one, least (1 to 20)
    fresh_per_dry_high : array_like, default 8
        grams fresh that dry to one, most (1 to 20, >= fresh_per_dry_low)

    Returns
    -------
    low_g : float
        Least to weigh out, as it is at hand (g)
    high_g : float
        Most to weigh out, as it is at hand (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming the high of a range that is less than its low.

    Notes
    -----
    Source: Arithmetic. Percentages: E. M. Mairet, *A Book on Vegetable Dyes*, 1916 (madder 50 % on wool, bark 100 %); twice the
    fibre's mass of fresh leaves: northernwisconsin.com. 3 to 8 g fresh to one dry: from memory, common practice; weigh,
    dry and weigh again to know yours.

    Example: plant_dyestuff(mass_g=400, low_pct=50, high_pct=100, recipe='dry', at_hand='fresh', fresh_per_dry_low=3, fresh_per_dry_high=8) gives low_g 600, high_g 3200, doubts 0, cautions 7
    """

def pooled_strength(volumes_ml: Sequence[float] | NDArray[Any], strengths_pct: Sequence[float] | NDArray[Any]) -> PooledStrength:
    """Strength of several liquors of one and the same stuff poured together.

    `strength = sum(volume · strength) / sum(volume)`. Only for liquors of the same dye, mordant or binder: nothing is ever
    poured to bleach, and unlike baths are not mixed to be rid of them.

    Parameters
    ----------
    volumes_ml : sequence of float
        volume of each liquor (ml, 0.01 to 100000000, 1 to 100 items)
    strengths_pct : sequence of float
        strength of each (%, 0 to 100, as many as volumes_ml)

    Returns
    -------
    strength_pct : float
        Strength, in the unit of the strengths given (%)
    volume_ml : float
        Volume (ml)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument.

    Notes
    -----
    Source: Balance of mass, volumes taken to add up.

    Example: pooled_strength(volumes_ml=[4000, 3000], strengths_pct=[0.5, 1.2]) gives strength_pct 0.8, volume_ml 7000, cautions 35
    """

@overload
def puff_spread(zone: float, ratio: float, slashes: int, strip: float = ...) -> PuffSpread[float, int]: ...  # type: ignore[overload-overlap]

@overload
def puff_spread(zone: _ArrayLikeFloat_co, ratio: _ArrayLikeFloat_co, slashes: _ArrayLikeFloat_co, strip: _ArrayLikeFloat_co = ...) -> PuffSpread[NDArray[np.float64], NDArray[np.uint64]]:
    """Spread of a sleeve cap that is slashed and opened for gathers between two notches.

    `flat = zone · ratio`, `spread_each = (flat - zone) / slashes`. Where the sleeve is cut already, a strip is let in instead,
    on the sleeve's own grain: one as wide as `strip` allows a ratio of `(zone + strip) / zone`. A sleeve still to be cut needs
    none. How much the cap is raised as well is taste: fold it in paper first.

    Parameters
    ----------
    zone : array_like
        seam line between the notches, where the gathers go (mm, 1 to 10000)
    ratio : array_like
        zone after spreading over before (1 to 10)
    slashes : array_like of int
        number of slashes (1 to 100)
    strip : array_like, default 0
        cloth there is to let in, allowances taken off; 0: none (mm, 0 to 100000)

    Returns
    -------
    flat : float
        Zone after spreading, before gathering (mm)
    added : float
        What spreading adds in all (mm)
    spread_each : float
        How far each slash opens (mm)
    strip_ratio : float
        The ratio that the strip to be let in allows
    doubts : int
        `GATHERS_SCANT` or `GATHERS_LARGE` when the smaller of the ratios asked for looks like a mistake (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the doubt below 1.2 is common practice, no source. `tests/vectors/puff_spread.csv` has hand-worked rows.

    Example: puff_spread(zone=240, ratio=1.75, slashes=6, strip=100) gives flat 420, added 180, spread_each 30, strip_ratio 1.4167, doubts 0
    """

@overload
def reflectance(k_over_s: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def reflectance(k_over_s: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Reflectance of a depth of shade K/S: `k_over_s` turned round.

    `R = 1 + K/S - √((K/S)² + 2 K/S)`, worked as the reciprocal of `1 + K/S + √(...)`, which loses no digits near black.

    Parameters
    ----------
    k_over_s : array_like
        depth of shade (0 to 500)

    Returns
    -------
    float
        Reflectance

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: E. Allen, "Colorant Formulation and Shading", in *Optical Radiation Measurements* vol. 2, Academic Press 1980, eq. 20.

    Example: reflectance(k_over_s=0.25) gives 0.5
    """

@overload
def relative_strength(k_over_s: float, standard: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def relative_strength(k_over_s: _ArrayLikeFloat_co, standard: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Strength of a dyeing against another, by their depths of shade, in percent.

    Parameters
    ----------
    k_over_s : array_like
        depth of shade of the dyeing (0 to 500)
    standard : array_like
        depth of shade it is held against (0.000001 to 500)

    Returns
    -------
    float
        Relative strength (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice in dye houses: the ratio of K/S, both measured at the same wavelength.

    Example: relative_strength(k_over_s=17.46, standard=11.85) gives 147.34
    """

@overload
def remaining_width(girth: float, ease: float, other_width: float, parts: int = ..., intake: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def remaining_width(girth: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co, other_width: _ArrayLikeFloat_co, parts: _ArrayLikeFloat_co = ..., intake: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Width of the panels still to be made, when the others are given.

    `remaining = (girth + ease - other_width) / parts + intake`, inside the seams: what the given panels leave of the
    girth, shared over the rest, and the darts or pleats of each added.

    For doubts on the girth see `girth_doubts`.

    Parameters
    ----------
    girth : array_like
        girth of the body (mm, 1 to 100000)
    ease : array_like
        what the garment has more (mm, -10000 to 10000)
    other_width : array_like
        the given panels together, inside seams and darts (mm, 0 to 100000)
    parts : array_like of int, default 1
        number of panels still to be made, all equal (1 to 64)
    intake : array_like, default 0
        darts or pleats in each of them (mm, 0 to 10000)

    Returns
    -------
    float
        The width of each remaining panel inside the seams (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away;
        `other_width`: the given panels leave nothing.

    Notes
    -----
    Source: Arithmetic; `tests/vectors/remaining_width.csv` has published rows.

    Example: remaining_width(girth=720, ease=20, other_width=410, parts=2, intake=25) gives 190
    """

@overload
def repeats(length: float, repeat: float, count: int = ...) -> Repeats[float, int]: ...  # type: ignore[overload-overlap]

@overload
def repeats(length: _ArrayLikeFloat_co, repeat: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co = ...) -> Repeats[NDArray[np.float64], NDArray[np.uint32]]:
    """Lengths rounded up to whole repeats of the pattern, so that all of them begin at the same place in it.

    `each = repeat · ceil(length / repeat)`. The first cut may have to move to where the pattern is wanted: buy one repeat
    more than the total.

    Parameters
    ----------
    length : array_like
        length needed, allowances included (mm, 1 to 100000)
    repeat : array_like
        height of the pattern's repeat (mm, 1 to 10000)
    count : array_like of int, default 1
        how many lengths (1 to 1000)

    Returns
    -------
    repeats : int
        Whole repeats in one length
    each : float
        Length to cut each (mm)
    total : float
        All lengths together (mm)
    waste : float
        What is cut off and lies idle, all lengths together (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; common practice, no source. One repeat more: sew4home.com.

    Example: repeats(length=720, repeat=320, count=4) gives repeats 3, each 960, total 3840, waste 960
    """

@overload
def ribbing(edge: float, depth: float, allowance: float, share: float = ...) -> Ribbing[float]: ...  # type: ignore[overload-overlap]

@overload
def ribbing(edge: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, share: _ArrayLikeFloat_co = ...) -> Ribbing[NDArray[np.float64]]:
    """Strip of ribbing for a neck, a cuff or a waist.

    `round = edge · share`, joined with an allowance at both ends; folded along its middle, `cut_width = 2 · depth + 2 ·
    allowance`. A round neck takes less than a waist, lest it stand away. Ribbings differ: pin a strip round the edge first.
    A neck must still pass over the head, see
    `head_opening`.

    Parameters
    ----------
    edge : array_like
        edge that it is sewn to (mm, 1 to 100000)
    depth : array_like
        finished depth (mm, 1 to 1000)
    allowance : array_like
        seam allowance at each edge and end (mm, 0 to 100)
    share : array_like, default 0.8
        strip over edge (0.3 to 1)

    Returns
    -------
    round : float
        Way round the joined strip, not stretched (mm)
    cut_length : float
        Length to cut, along the way it stretches (mm)
    cut_width : float
        Width to cut, folded in two when sewn (mm)
    stretch_pct : float
        Stretch that it is sewn on with (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; a share of 0.75 to 0.9 is common practice, no source. `tests/vectors/ribbing.csv` has hand-worked rows.

    Example: ribbing(edge=250, depth=60, allowance=7, share=0.8) gives round 200, cut_length 214, cut_width 134, stretch_pct 25
    """

@overload
def rinses(carried_low_ml: float, carried_high_ml: float, fresh_ml: float, share_left: float = ...) -> Rinses[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def rinses(carried_low_ml: _ArrayLikeFloat_co, carried_high_ml: _ArrayLikeFloat_co, fresh_ml: _ArrayLikeFloat_co, share_left: _ArrayLikeFloat_co = ...) -> Rinses[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Rinses that thin the liquor carried over to a share of what it was, as a range.

    Each rinse leaves `carried / (carried + fresh)` of it. What the goods carry between rinses is the main term and is never
    known well: give a low and a high. It tells of the liquor between the fibres only; what the fibre itself holds leaves
    in its own time, so rinse until the water runs clear, or has no smell, whatever is printed here. Less fresh water than the
    goods carry is doubted (litres?), and so is a share above a half (1 for 1 %?). The first rinse after a hot bath is warm.

    Parameters
    ----------
    carried_low_ml : array_like
        least liquor carried from bath to bath (ml, 0.01 to 10000000)
    carried_high_ml : array_like
        most liquor carried (ml, 0.01 to 10000000, >= carried_low_ml)
    fresh_ml : array_like
        fresh water each rinse (ml, 0.01 to 100000000)
    share_left : array_like, default 0.01
        share of the liquor that may be left (0.000000001 to 1)

    Returns
    -------
    rinses_low : int
        Rinses where the goods carry least
    rinses_high : int
        Rinses where the goods carry most
    left : float
        Share of the first liquor left after the most rinses, where the goods carry most
    water_ml : float
        Fresh water for the most rinses (ml)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `carried_high_ml` when it is less than the low;
        naming `fresh_ml` when more than 100 rinses would be needed.

    Notes
    -----
    Source: Balance of mass, each rinse fully mixed. `tests/vectors/rinses.csv` has hand-worked rows.

    Example: rinses(carried_low_ml=300, carried_high_ml=1000, fresh_ml=5000, share_left=0.01) gives rinses_low 2, rinses_high 3, left 0.00463, water_ml 15000, doubts 0, cautions 5
    """

def round_set(lengths: Sequence[float] | NDArray[Any], graduation: float = ...) -> RoundedSet:
    """Lengths rounded so that the rounded lengths add up to the rounded sum.

    Each is rounded down; what is then missing from the rounded sum is given, a graduation each, to the lengths that lost
    most, of equals to the earlier. Where two edges are sewn together, round one and give the other the same lengths.

    Parameters
    ----------
    lengths : sequence of float
        the lengths (mm, 0 to 100000, 1 to 1000 items)
    graduation : float, default 1
        distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000)

    Returns
    -------
    tapes : array
        the rounded lengths (mm)
    total : float
        Sum of the rounded lengths, which is the rounded sum (mm)
    largest_change : float
        Most that any length was changed, up or down (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument; `Room` when `tapes` is too short.

    Notes
    -----
    Source: The method of largest remainders (Hamilton), as used to share out whole seats by votes.

    Example: round_set(lengths=[10.4, 10.4, 10.2], graduation=1) gives tapes 11 10 10, total 31, largest_change 0.6
    """

@overload
def round_to(length: float, graduation: float = ..., way: Rounding | str | int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def round_to(length: _ArrayLikeFloat_co, graduation: _ArrayLikeFloat_co = ..., way: Rounding | str | int = ...) -> NDArray[np.float64]:
    """A length rounded to a graduation of the tape.

    A length within a thousand-millionth of a graduation, or of the middle between two, counts as being there: binary
    arithmetic leaves that much dust.

    Parameters
    ----------
    length : array_like
        the length (mm, -10000000 to 10000000)
    graduation : array_like, default 1
        distance between two marks: 3.175 is 1/8 in (mm, 0.001 to 10000)
    way : Rounding, default "nearest"
        which graduation

    Returns
    -------
    float
        The rounded length (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Common practice, no source: to the nearest mark for a seam, up for cloth to buy, down for cloth there is.

    Example: round_to(length=796, graduation=3.175, way='nearest') gives 796.925
    """

@overload
def ruffle(edge: float, ratio: float, depth: float, strip: float, allowance: float, hem: float) -> Ruffle[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def ruffle(edge: _ArrayLikeFloat_co, ratio: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, strip: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, hem: _ArrayLikeFloat_co) -> Ruffle[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Strips to cut for a ruffle along an edge.

    `flat = edge · ratio`, `cut_width = depth + allowance + hem`, and as many strips as their length, less an allowance at both
    ends, makes that up: `strips = ceil(flat / (strip - 2 · allowance))`. A ruffle along an edge with ends has one join fewer
    and narrow hems instead. Strips across the cloth gather softly, along the selvedge crisply; on the bias no hem frays.

    A ratio below 1.2 or above 4 is doubted (common practice, no source).

    Parameters
    ----------
    edge : array_like
        edge that it is sewn to (mm, 1 to 100000)
    ratio : array_like
        strip over edge (1 to 10)
    depth : array_like
        finished depth, seam to hem edge (mm, 1 to 10000)
    strip : array_like
        length of one strip: the cloth's width, or a scrap's length (mm, 10 to 100000)
    allowance : array_like
        seam allowance at the gathered edge and each join (mm, 0 to 1000)
    hem : array_like
        hem allowance, turn included (mm, 0 to 1000)

    Returns
    -------
    flat : float
        Length of the joined strip before gathering (mm)
    cut_width : float
        Width to cut each strip (mm)
    strips : int
        Number of strips
    cloth_length : float
        Cloth that the strips take, lying side by side (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when it takes the whole strip, or so
        much that there would be more than 100000 strips.

    Notes
    -----
    Source: Arithmetic. Ratio: C. C. Ingalls, *Text-Book on Domestic Art*, 1911 (1 1/2); 1.5 to 3 by weight and fullness,
    stitchcoach.blogspot.com, 2017. The doubt is that of `gathers`.

    Example: ruffle(edge=1200, ratio=1.5, depth=80, strip=620, allowance=10, hem=15) gives flat 1800, cut_width 105, strips 3, cloth_length 315, doubts 0
    """

@overload
def screen_level(light: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def screen_level(light: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Screen level of an amount of light: `linear_light` turned round.

    Parameters
    ----------
    light : array_like
        share of the most light (0 to 1)

    Returns
    -------
    float
        Level, 0 to 255, not rounded

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB).

    Example: screen_level(light=0.18) gives 117.64581302261271
    """

@overload
def seam_pleat(depth: float, allowance: float) -> SeamPleat[float]: ...  # type: ignore[overload-overlap]

@overload
def seam_pleat(depth: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co) -> SeamPleat[NDArray[np.float64]]:
    """Cloth added at the two edges of a seam that is to hold an inverted pleat.

    The first edge gets one depth and its allowance, the next one three depths and its allowance: the seam then lies hidden
    in an inner fold, not in the middle of the underlay. At a gored seam both are added along the slanted edge.

    Parameters
    ----------
    depth : array_like
        depth of each of the pleat's two folds (mm, 0.1 to 10000)
    allowance : array_like
        seam allowance of each edge (mm, 0 to 1000)

    Returns
    -------
    first_edge : float
        Added to the edge whose seam lies in the nearer inner fold (mm)
    next_edge : float
        Added to the edge that makes the rest of the pleat (mm)
    intake : float
        Both together, less the seam: what the pleat takes up (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916, Outer Garments pt 4 (inverted pleat at a gored seam: 1 pleat width and a seam on
    the first edge, 3 and a seam on the next). A pleat that deepens to the hem is asked for twice, at the waist and at the
    hem: the same author adds 2 to 3 in at the waist for a back pleat and twice that at the hem.

    Example: seam_pleat(depth=50, allowance=10) gives first_edge 60, next_edge 160, intake 200
    """

def sectioned_band(lengths: Sequence[float] | NDArray[Any], depth: float, top: float, ends: SquareEnds | str | int) -> SectionedBand:
    """Upper edges of a band made of straight sections that slant at their joins.

    What the upper edge is shorter by is shared by the slanted ends: `slant = (sum of lengths - top) / slanted ends`, at
    the angle `atan(slant / depth)` from the square. At each join the lower edge peaks, and the upper edge notches, by
    twice that angle, so the edges are trued to a curve or the band is cut curved (`curved_band`). A side seam runs on
    straight into the band only if the end's angle equals the skirt's side seam's angle from the square at the waist. An
    end that overlaps must be square.

    Parameters
    ----------
    lengths : sequence of float
        finished lower edge of each section, in order (mm, 1 to 100000, 1 to 100 items)
    depth : float
        finished depth, square to the lower edge (mm, 1 to 10000)
    top : float
        finished upper edge of all sections together (mm, 1 to 10000000)
    ends : SquareEnds
        which free ends are square

    Returns
    -------
    tops : array
        finished upper edge of each section (mm)
    slant : float
        What each slanted end takes from the upper edge; negative where the band flares (mm)
    end_angle_deg : float
        Angle of a slanted end from the square (deg)
    join_kink_deg : float
        Kink at each join: a peak of the lower edge and a notch of the upper; 0 without a join (deg)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `top` when one section has
        both ends square and a different top; naming `lengths` when a section is shorter than its slants.

    Notes
    -----
    Source: Plane geometry. `tests/vectors/sectioned_band.csv` has hand-worked rows.

    Example: sectioned_band(lengths=[140, 330, 230], depth=50, top=676, ends='both') gives tops 134 318 224, slant 6, end_angle_deg 6.84, join_kink_deg 13.69, doubts 0
    """

@overload
def shaped_band(lower: float, upper: float, depth: float) -> ShapedBand[float]: ...  # type: ignore[overload-overlap]

@overload
def shaped_band(lower: _ArrayLikeFloat_co, upper: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co) -> ShapedBand[NDArray[np.float64]]:
    """Part of a ring for a shaped band, or for any cone or frustum.

    `outer_radius = lower · depth / (lower - upper)`, `inner_radius = outer_radius - depth`, angle in radians
    `(lower - upper) / depth`. For a straight band there is no such ring: see `straight_band`. A band that flares
    upwards is the same ring turned over: give its longer edge as `lower`.

    Parameters
    ----------
    lower : array_like
        finished length of the lower edge (mm, 1 to 100000)
    upper : array_like
        finished length of the upper edge (mm, 0 to 100000, < lower)
    depth : array_like
        from edge to edge, measured along the cloth (mm, 1 to 10000)

    Returns
    -------
    inner_radius : float
        Radius of the upper, shorter edge (mm)
    outer_radius : float
        Radius of the lower, longer edge (mm)
    angle_deg : float
        Angle of the sector (deg)
    sagitta : float
        Height of the lower edge's arc above the straight line between its ends (mm)
    area_mm2 : float
        Area of the band (mm2)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `upper` when it is not below `lower`, or so far
        below that the sector would be more than a full ring.

    Notes
    -----
    Source: Unrolled frustum: E. M. Longfield, *Sheet Metal Drafting*, 1921 (slant height, area by the mean of the two
    circumferences); `tests/vectors/shaped_band.csv` has published and hand-worked rows.

    Example: shaped_band(lower=700, upper=676, depth=50) gives inner_radius 1408.33, outer_radius 1458.33, angle_deg 27.50, sagitta 41.80, area_mm2 34400
    """

@overload
def share(girth: float, ease: float = ..., parts: int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def share(girth: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co = ..., parts: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """One panel's share of a girth.

    `share = (girth + ease) / parts`, inside the seams. Ease is negative in cloth that stretches.

    For doubts on the girth see `girth_doubts`.

    Parameters
    ----------
    girth : array_like
        girth of the body (mm, 1 to 100000)
    ease : array_like, default 0
        what the garment has more (mm, -10000 to 10000)
    parts : array_like of int, default 4
        number of equal panels (1 to 64)

    Returns
    -------
    float
        The width of each panel inside the seams (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `ease`: it takes the whole girth away.

    Notes
    -----
    Source: Arithmetic; `tests/vectors/share.csv` has published rows.

    Example: share(girth=1000, ease=60, parts=4) gives 265
    """

@overload
def shirring(finished: float, depth: float, pitch: float = ..., drawn_pct: float = ...) -> Shirring[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def shirring(finished: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, pitch: _ArrayLikeFloat_co = ..., drawn_pct: _ArrayLikeFloat_co = ...) -> Shirring[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Cloth and rows for shirring with elastic thread.

    `flat = finished · 100 / drawn_pct`, and `rows = floor(depth / pitch) + 1`, the first and last at the edges of the depth.
    How far it draws up depends on cloth, tension and number of rows, and steam draws it further: shirr a square of known
    width and measure.

    Parameters
    ----------
    finished : array_like
        width when drawn up, not stretched (mm, 1 to 100000)
    depth : array_like
        from the first row to the last (mm, 0 to 10000)
    pitch : array_like, default 10
        from row to row (mm, 1 to 1000)
    drawn_pct : array_like, default 55
        what the cloth draws up to (%, 10 to 100)

    Returns
    -------
    flat : float
        Width before shirring, without allowances (mm)
    ratio : float
        Flat over finished
    rows : int
        Number of rows
    stitching : float
        All rows together, as sewn on the flat cloth (mm)
    cautions : int
        Always `ELASTIC_BATH` (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: To 50 or 60 % of its width: common practice, no source; the default is the middle. `tests/vectors/shirring.csv`.

    Example: shirring(finished=330, depth=120, pitch=10, drawn_pct=55) gives flat 600, ratio 1.8182, rows 13, stitching 7800, cautions 8
    """

@overload
def shrink_pair(shell: float, lining: float, shell_change_pct: float, lining_change_pct: float) -> ShrinkPair[float, int]: ...  # type: ignore[overload-overlap]

@overload
def shrink_pair(shell: _ArrayLikeFloat_co, lining: _ArrayLikeFloat_co, shell_change_pct: _ArrayLikeFloat_co, lining_change_pct: _ArrayLikeFloat_co) -> ShrinkPair[NDArray[np.float64], NDArray[np.uint64]]:
    """What washing does to a shell and its lining, and how to cut both for it.

    Both lengths run from the same upper seam. Sewn as given, each becomes `length · (1 + change / 100)`; to have them as
    given after washing, each is cut `length / (1 + change / 100)`. Ask once for the length and once for the width.

    A change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.

    Parameters
    ----------
    shell : array_like
        finished shell (mm, 0 to 1000000)
    lining : array_like
        finished lining (mm, 0 to 1000000)
    shell_change_pct : array_like
        dimensional change of the shell's cloth (%, -90 to 100)
    lining_change_pct : array_like
        dimensional change of the lining's cloth (%, -90 to 100)

    Returns
    -------
    shell_after : float
        Shell after washing, if it is sewn as given (mm)
    lining_after : float
        Lining after washing, if it is sewn as given (mm)
    below : float
        How far the lining then hangs below the shell; negative above (mm)
    shell_cut : float
        Shell to cut so that washing leaves the length given (mm)
    lining_cut : float
        Lining to cut so that washing leaves the length given (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ISO 5077:2007 (definition). `tests/vectors/shrink_pair.csv` has hand-worked rows.

    Example: shrink_pair(shell=600, lining=580, shell_change_pct=-5, lining_change_pct=-1) gives shell_after 570, lining_after 574.20, below 4.20, shell_cut 631.58, lining_cut 585.86, doubts 16777216
    """

@overload
def size_step(smaller: float, larger: float, steps: int = ..., edges: int = ...) -> SizeStep[float, int]: ...  # type: ignore[overload-overlap]

@overload
def size_step(smaller: _ArrayLikeFloat_co, larger: _ArrayLikeFloat_co, steps: _ArrayLikeFloat_co = ..., edges: _ArrayLikeFloat_co = ...) -> SizeStep[NDArray[np.float64], NDArray[np.uint64]]:
    """Step from one size to the next, all round and at each edge of the pattern.

    `step = (larger - smaller) / steps`, `each_edge = step / edges`. Even steps only: in published series the step itself grows
    in the larger sizes, and lengths do not grow as girths do.

    A girth below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    smaller : array_like
        girth of the smaller size (mm, 1 to 100000)
    larger : array_like
        girth of the larger size (mm, 1 to 100000, >= smaller)
    steps : array_like of int, default 1
        number of steps from one to the other (1 to 100)
    edges : array_like of int, default 4
        edges that share a step, two to a seam (1 to 64)

    Returns
    -------
    step : float
        From one size to the next, all round (mm)
    each_edge : float
        The same at each edge of the pattern (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `larger` when it is the smaller.

    Notes
    -----
    Source: Arithmetic. EN 13402-3's series steps by 40 mm, then 60 mm, in bust (from memory). `tests/vectors/size_step.csv`.

    Example: size_step(smaller=760, larger=1040, steps=7, edges=4) gives step 40, each_edge 10, doubts 0
    """

@overload
def skew(shift: float, width: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def skew(shift: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Skew of cloth: how far a weft thread has run off square, in percent of the width.

    `skew = 100 · shift / width`. Pull or follow one weft thread across; measure along the selvedge how far its far end
    lies from square. Positive and negative are the two ways it may lean.

    Parameters
    ----------
    shift : array_like
        along the selvedge, from square to the thread (mm, -100000 to 100000)
    width : array_like
        width of the cloth, square across (mm, 1 to 100000)

    Returns
    -------
    float
        Skew (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: ASTM D3882 (formula from memory).

    Example: skew(shift=42, width=1400) gives 3
    """

@overload
def skew_diagonals(first: float, second: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def skew_diagonals(first: _ArrayLikeFloat_co, second: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Skew of a square marked on the cloth, from its two diagonals after washing, in percent.

    `skew = 200 · (first - second) / (first + second)`. For a small skew it is the shift of a side in percent of the side,
    as `skew` gives; of a large one it falls short by a quarter of the square: 9.975 for a side shifted by 10 %.

    Parameters
    ----------
    first : array_like
        one diagonal of the square (mm, 1 to 100000)
    second : array_like
        the other (mm, 1 to 100000)

    Returns
    -------
    float
        Skew (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: AATCC 179, the way by diagonals (formula from memory).

    Example: skew_diagonals(first=360, second=340) gives 5.714
    """

@overload
def snip_spacing(radius: float, allowance: float, opening: float = ...) -> SnipSpacing[float]: ...  # type: ignore[overload-overlap]

@overload
def snip_spacing(radius: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, opening: _ArrayLikeFloat_co = ...) -> SnipSpacing[NDArray[np.float64]]:
    """Distance between the snips of a curved seam allowance.

    Turned under, an allowance along an inward curve such as a neckline is too short and each snip opens; along an
    outward one it is too long and each notch cut out closes. Either way a stretch of seam `s` opens or closes by
    `2 · allowance · s / radius` at the raw edge, so `spacing = opening · radius / (2 · allowance)`. A turned edge is
    nearly straight between snips and leaves the curve there by `spacing² / (8 · radius)`. Staystitch first, snip to a
    thread's breadth from it and no further. The blades are sharp: cut away from the hand that holds.

    Parameters
    ----------
    radius : array_like
        radius of the seam line (mm, 1 to 1000000)
    allowance : array_like
        seam allowance, after trimming (mm, 0.1 to 1000)
    opening : array_like, default 3
        how far a snip may open, or how wide a notch is (mm, 0.1 to 100)

    Returns
    -------
    spacing : float
        From snip to snip along the seam line (mm)
    flat : float
        How far a straight fold between two snips leaves the curve (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `opening` when the spacing would be more than a
        quarter ring, where it would no longer be small.

    Notes
    -----
    Source: Arcs about one centre; the opening of 3 mm is common practice, no source. `tests/vectors/snip_spacing.csv` has
    hand-worked rows.

    Example: snip_spacing(radius=80, allowance=10, opening=3) gives spacing 12, flat 0.225
    """

@overload
def spacing_by_pitch(first: float, last: float, pitch: float = ...) -> SpacingByPitch[float, int]: ...  # type: ignore[overload-overlap]

@overload
def spacing_by_pitch(first: _ArrayLikeFloat_co, last: _ArrayLikeFloat_co, pitch: _ArrayLikeFloat_co = ...) -> SpacingByPitch[NDArray[np.float64], NDArray[np.uint32]]:
    """Number of buttons whose even spacing comes nearest to a wanted pitch.

    Of the two whole numbers of spaces about `(last - first) / pitch` the one is taken whose pitch differs less from that
    wanted; on a tie the closer spacing. Two buttons at least.

    Parameters
    ----------
    first : array_like
        place of the first, from the edge's start (mm, 0 to 100000)
    last : array_like
        place of the last (mm, 0 to 100000, > first)
    pitch : array_like, default 90
        pitch wanted (mm, 1 to 100000)

    Returns
    -------
    count : int
        Number of buttons, the first and last included
    pitch : float
        From middle to middle of neighbours (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `last` when it is not beyond `first`.

    Notes
    -----
    Source: Arithmetic. A pitch of about 3 1/2 in is usual on a blouse (sunjournal.com; sewing.about.com); the default is that, in
    round millimetres. One button belongs at the bust line: see `spacing_through`.

    Example: spacing_by_pitch(first=20, last=500, pitch=90) gives count 6, pitch 90
    """

def spacing_through(first: float, last: float, through: float, count: int) -> SpacingThrough:
    """Places of buttons from a first to a last, one of them at a place that must be met.

    The bust line, or a waist seam, fixes one button. The places before it are even among themselves, and so are those
    after it; how many go on each side is chosen so that the two pitches differ least (on a tie, fewer before). Where they
    differ too much to please, move the first or the last, or change the number.

    Parameters
    ----------
    first : float
        place of the first, from the edge's start (mm, 0 to 100000)
    last : float
        place of the last (mm, 0 to 100000, > first)
    through : float
        place that one of them must have (mm, 0 to 100000, > first, < last)
    count : int
        how many, the first and last included (3 to 1000)

    Returns
    -------
    places : array
        the places, in order (mm)
    pitch_before : float
        From middle to middle before the fixed place (mm)
    pitch_after : float
        From middle to middle after the fixed place (mm)
    fixed : int
        Which of the places is the fixed one, from 0
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Room`, naming the argument. `NoSolution` naming `last` or `through` when the three are
        not in order.

    Notes
    -----
    Source: Arithmetic; the doubt at 3.2 mm (1/8 in) is the placement tolerance of a custom clothiers' judging standard.
    `tests/vectors/spacing_through.csv` has hand-worked rows.

    Example: spacing_through(first=20, last=500, through=200, count=7) gives places 20 110 200 275 350 425 500, pitch_before 90, pitch_after 75, fixed 2, doubts 2097152
    """

@overload
def srgb_from_lab(l: float, a: float, b: float) -> Srgb[float, int]: ...  # type: ignore[overload-overlap]

@overload
def srgb_from_lab(l: _ArrayLikeFloat_co, a: _ArrayLikeFloat_co, b: _ArrayLikeFloat_co) -> Srgb[NDArray[np.float64], NDArray[np.uint32]]:
    """Screen levels of a colour given in CIELAB under daylight D65.

    A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`.

    Parameters
    ----------
    l : array_like
        lightness L* (0 to 100)
    a : array_like
        a*: green below 0, red above (-200 to 200)
    b : array_like
        b*: blue below 0, yellow above (-200 to 200)

    Returns
    -------
    red : float
        Red, 0 to 255 where a screen can show it
    green : float
        Green, 0 to 255 where a screen can show it
    blue : float
        Blue, 0 to 255 where a screen can show it
    outside : int
        How many of the three a screen cannot show

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: CIE 15 (CIELAB) and IEC 61966-2-1 (sRGB).

    Example: srgb_from_lab(l=68.2864, a=9.3304, b=12.7525) gives red 192, green 160, blue 144, outside 0
    """

@overload
def srgb_from_xyz(x: float, y: float, z: float) -> Srgb[float, int]: ...  # type: ignore[overload-overlap]

@overload
def srgb_from_xyz(x: _ArrayLikeFloat_co, y: _ArrayLikeFloat_co, z: _ArrayLikeFloat_co) -> Srgb[NDArray[np.float64], NDArray[np.uint32]]:
    """Screen levels of a colour given by its tristimulus values.

    A colour that no screen shows is brought to the nearest end of each level, and counted in `outside`: its hue is then
    not true.

    Parameters
    ----------
    x : array_like
        X (0 to 2)
    y : array_like
        Y, the luminance: white has 1 (0 to 2)
    z : array_like
        Z (0 to 2)

    Returns
    -------
    red : float
        Red, 0 to 255 where a screen can show it
    green : float
        Green, 0 to 255 where a screen can show it
    blue : float
        Blue, 0 to 255 where a screen can show it
    outside : int
        How many of the three a screen cannot show

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB); the matrix is the inverse of the one in `xyz_from_srgb`, to the last digit, so that a colour
    comes back.

    Example: srgb_from_xyz(x=0.9505, y=1, z=1.089) gives red 255, green 255, blue 255, outside 0
    """

@overload
def stitch_length(stitches_per_inch: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def stitch_length(stitches_per_inch: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Length of one stitch from the number of stitches in an inch.

    `length = 25.4 / stitches`. Pages that pair 2.5 to 3 mm with 10 to 12 stitches are not consistent: 3 mm is 8.5.

    Parameters
    ----------
    stitches_per_inch : array_like
        stitches in one inch (0.5 to 200)

    Returns
    -------
    float
        Length of one stitch (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: 1 in = 25.4 mm, exact by the international yard and pound agreement of 1959.

    Example: stitch_length(stitches_per_inch=10) gives 2.54
    """

@overload
def stock_volume(mass_g: float, pct: float, stock_pct: float) -> StockVolume[float, int]: ...  # type: ignore[overload-overlap]

@overload
def stock_volume(mass_g: _ArrayLikeFloat_co, pct: _ArrayLikeFloat_co, stock_pct: _ArrayLikeFloat_co) -> StockVolume[NDArray[np.float64], NDArray[np.uint64]]:
    """Volume of a stock solution for a percentage on weight of fibre.

    `stock = mass · pct / stock_pct`, the stock in grams in 100 ml. For dye, mordant or assistant; not for bleach. Usual is a
    stock of 0.05 to 50; outside it, and as for `owf`, there are doubts.

    Parameters
    ----------
    mass_g : array_like
        dry mass of the goods (g, 0.01 to 1000000)
    pct : array_like
        percentage on weight of fibre (%, 0 to 1000)
    stock_pct : array_like
        grams in 100 ml of the stock (%, 0.001 to 100)

    Returns
    -------
    stock_ml : float
        Stock solution to measure out (ml)
    amount_g : float
        What that holds (g)
    doubts : int
        Doubts raised (bits)
    cautions : int
        Cautions raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: R. Sohel, textile calculation pages, 2014-12 to 2015-04. Where doubts begin: common practice, no source.

    Example: stock_volume(mass_g=5, pct=2, stock_pct=0.5) gives stock_ml 20, amount_g 0.1, doubts 0, cautions 3
    """

@overload
def straight_band(waist: float, overlap: float, depth: float, allowance: float, turn: float = ..., make: BandMake | str | int = ...) -> StraightBand[float, int, int]: ...  # type: ignore[overload-overlap]

@overload
def straight_band(waist: _ArrayLikeFloat_co, overlap: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, turn: _ArrayLikeFloat_co = ..., make: BandMake | str | int = ...) -> StraightBand[NDArray[np.float64], NDArray[np.uint32], NDArray[np.uint64]]:
    """Strip to cut for a straight band.

    Folded: `cut_width = 2 · depth + 2 · allowance + turn`, one strip. Faced: `cut_width = depth + 2 · allowance + turn`,
    two strips. `cut_length = waist + overlap + 2 · allowance`. The turn is the cloth that the upper edge takes by its
    own thickness; fold or sew a sample to learn it.

    The waist is doubted as `girth_doubts` does.

    Parameters
    ----------
    waist : array_like
        finished length round the waist, ease included (mm, 1 to 100000)
    overlap : array_like
        what runs on past the opening, at both ends together (mm, 0 to 10000)
    depth : array_like
        finished depth (mm, 1 to 10000)
    allowance : array_like
        seam allowance at each edge and each end (mm, 0 to 1000)
    turn : array_like, default 0
        cloth taken by the thickness of the upper edge (mm, 0 to 100)
    make : BandMake, default "folded"
        how the band gets its two layers

    Returns
    -------
    cut_length : float
        Length to cut, allowances included (mm)
    cut_width : float
        Width to cut, allowances included (mm)
    strips : int
        How many such strips
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the turn is common practice, no source. `tests/vectors/straight_band.csv` has hand-worked rows.

    Example: straight_band(waist=710, overlap=30, depth=25, allowance=10, turn=2, make='folded') gives cut_length 760, cut_width 72, strips 1, doubts 0
    """

@overload
def straight_band_depth(cut_width: float, allowance: float, turn: float = ..., make: BandMake | str | int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def straight_band_depth(cut_width: _ArrayLikeFloat_co, allowance: _ArrayLikeFloat_co, turn: _ArrayLikeFloat_co = ..., make: BandMake | str | int = ...) -> NDArray[np.float64]:
    """Finished depth of a straight band from a strip there is.

    Folded: `depth = (cut_width - 2 · allowance - turn) / 2`. Faced: `depth = cut_width - 2 · allowance - turn`. A strip
    drawn without allowances still loses them to its seams, which is the usual slip.

    Parameters
    ----------
    cut_width : array_like
        width of the strip from raw edge to raw edge (mm, 1 to 100000)
    allowance : array_like
        seam allowance at each long edge (mm, 0 to 1000)
    turn : array_like, default 0
        cloth taken by the thickness of the upper edge (mm, 0 to 100)
    make : BandMake, default "folded"
        how the band gets its two layers

    Returns
    -------
    float
        Finished depth of the band (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `allowance` when the allowances and the turn
        leave nothing of the strip.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/straight_band_depth.csv` has hand-worked rows.

    Example: straight_band_depth(cut_width=50, allowance=10, turn=0, make='folded') gives 15
    """

@overload
def stretch_pct(relaxed: float, pulled: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def stretch_pct(relaxed: _ArrayLikeFloat_co, pulled: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Stretch of cloth from a marked length and the same length pulled out, in percent.

    `stretch = 100 · (pulled - relaxed) / relaxed`. Fold the cloth across the way it is to stretch, mark 100 mm away from
    the edge, and pull until it resists, not until it can go no further. Let go and measure again: what stays longer will
    bag at knee and elbow.

    Parameters
    ----------
    relaxed : array_like
        distance of the marks at rest (mm, 1 to 100000)
    pulled : array_like
        distance of the marks pulled (mm, 1 to 1000000, >= relaxed)

    Returns
    -------
    float
        Stretch (%)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `pulled` when it is less than `relaxed`.

    Notes
    -----
    Source: Definition; the way to test is common practice, no source.

    Example: stretch_pct(relaxed=100, pulled=135) gives 35
    """

@overload
def take_in(garment: float, body: float, ease: float, edges: int = ..., limit: float = ...) -> TakeIn[float, int]: ...  # type: ignore[overload-overlap]

@overload
def take_in(garment: _ArrayLikeFloat_co, body: _ArrayLikeFloat_co, ease: _ArrayLikeFloat_co, edges: _ArrayLikeFloat_co = ..., limit: _ArrayLikeFloat_co = ...) -> TakeIn[NDArray[np.float64], NDArray[np.uint64]]:
    """What to take in at each edge of a garment that is too wide, and what is left over.

    `excess = garment - (body + ease)`, shared evenly by the edges but no more than `limit` each, beyond which side seams leave
    the body's side and armholes lose their shape. A seam has two edges: both sides are four. A fold pinned out of the cloth
    takes twice its depth: pinned 8, taken 16. Taken in at the armhole, the sleeve must be taken in too; at the hem, see that
    the step is still wide enough.

    A body below 110 mm, less than a child's wrist (from memory), is doubted.

    Parameters
    ----------
    garment : array_like
        finished garment at this level, all round (mm, 1 to 100000)
    body : array_like
        body at this level, all round (mm, 1 to 100000)
    ease : array_like
        what the garment is to have more than the body (mm, -10000 to 10000)
    edges : array_like of int, default 4
        edges that share it, two to a seam (1 to 64)
    limit : array_like, default 20
        the most that each edge may take (mm, 0 to 10000)

    Returns
    -------
    excess : float
        What the garment is too wide by (mm)
    each : float
        Taken at each edge, beyond its old seam line (mm)
    taken : float
        Taken at all edges together (mm)
    leftover : float
        Left for darts or the centre back (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `garment` when it is narrower than body and ease: it
        must be let out (`let_out`).

    Notes
    -----
    Source: Arithmetic; the limit is common practice, no source. `tests/vectors/take_in.csv` has hand-worked rows.

    Example: take_in(garment=1120, body=960, ease=60, edges=4, limit=20) gives excess 100, each 20, taken 80, leftover 20, doubts 0
    """

@overload
def tex_from_cotton_count(cotton_count: float, plies: int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def tex_from_cotton_count(cotton_count: _ArrayLikeFloat_co, plies: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Linear density of a yarn or thread from its cotton count (Ne).

    The cotton count is how many hanks of 840 yards weigh a pound: `tex = 590.54 · plies / count`. A larger number is a
    thinner yarn. A thread marked 40/2 is two plies of count 40. A convention that counts the moisture in has 583.1 in
    place of 590.54, which is 1.3 % less: do not mix the two.

    Parameters
    ----------
    cotton_count : array_like
        cotton count of one ply (0.1 to 1000)
    plies : array_like of int, default 1
        equal plies twisted together (1 to 24)

    Returns
    -------
    float
        Linear density of the plied yarn, take-up in twisting left out (tex)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definition: 453.59237 g in 840 yards of 0.9144 m. NIMI, *Shawl Weaving Artisan*, p. 72 (20 tex is 29.525).

    Example: tex_from_cotton_count(cotton_count=40, plies=2) gives 29.527
    """

@overload
def tex_from_denier(denier: float) -> float: ...  # type: ignore[overload-overlap]

@overload
def tex_from_denier(denier: _ArrayLikeFloat_co) -> NDArray[np.float64]:
    """Linear density of a yarn or thread from its denier.

    Tex is grams a kilometre, denier grams in nine kilometres: `tex = denier / 9`. A larger number is a thicker yarn.

    Parameters
    ----------
    denier : array_like
        grams in 9 kilometres (0.01 to 1000000)

    Returns
    -------
    float
        Linear density (tex)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).

    Example: tex_from_denier(denier=180) gives 20
    """

@overload
def tex_from_metric_count(metric_count: float, plies: int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def tex_from_metric_count(metric_count: _ArrayLikeFloat_co, plies: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Linear density of a yarn or thread from its metric count (Nm).

    The metric count is how many metres weigh a gram: `tex = 1000 · plies / count`. A larger number is a thinner yarn.

    Parameters
    ----------
    metric_count : array_like
        metric count of one ply (0.1 to 2000)
    plies : array_like of int, default 1
        equal plies twisted together (1 to 24)

    Returns
    -------
    float
        Linear density of the plied yarn, take-up in twisting left out (tex)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Definitions of the units. Groen Kennisnet wiki, HNPE 7.1.6, yarn numbering (conversion table).

    Example: tex_from_metric_count(metric_count=50, plies=1) gives 20
    """

@overload
def thread_for_seam(seam: float, ratio: float = ..., waste_pct: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def thread_for_seam(seam: _ArrayLikeFloat_co, ratio: _ArrayLikeFloat_co = ..., waste_pct: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Thread for a seam, waste included.

    `thread = seam · ratio · (1 + waste_pct / 100)`. The ratio is measured on an unpicked length, or taken from
    `thread_ratio` or a maker's table; for one thread of several, give that thread's own. Wind on more than this:
    tension, thickness and the stitch's length all change it.

    Parameters
    ----------
    seam : array_like
        length of all seams of this kind (mm, 0 to 100000000)
    ratio : array_like, default 2.5
        thread over seam (0.1 to 100)
    waste_pct : array_like, default 15
        for ends, tests and what is left on the bobbin (%, 0 to 500)

    Returns
    -------
    float
        Length of thread (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic. Ratio 2.5 for a lockstitch: Coats, *Standard Stitch Type Classification*. Waste of 10 to 15 % by Coats, 15
    to 20 % by American & Efird; in home sewing with many short seams it is more (common practice, no source).

    Example: thread_for_seam(seam=12000, ratio=2.5, waste_pct=15) gives 34500
    """

@overload
def thread_ratio(stitch_length: float, thickness: float, stitch: StitchType | str | int = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def thread_ratio(stitch_length: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co, stitch: StitchType | str | int = ...) -> NDArray[np.float64]:
    """Thread that a seam takes for its length, from the path of the stitch.

    `ratio = c + 2 · thickness / stitch_length`, with `c` 3 for type 101, 2 for 301, 4 for 401: along the seam on both
    faces, and through it twice a stitch. The path is drawn tight: makers' rounded ratios are higher, 2.5 for type 301 where
    thin cloth gives 2.2 here, and 5 for type 101 where it gives 3.1. Overedge stitches have published formulas that disagree, and are left
    out: for them, unpick a length of seam and measure, or take a maker's ratio.

    Parameters
    ----------
    stitch_length : array_like
        length of one stitch (mm, 0.1 to 100)
    thickness : array_like
        all layers of the seam, pressed (mm, 0 to 100)
    stitch : StitchType, default "lock"
        type of the stitch

    Returns
    -------
    float
        Thread over seam, all threads together

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: A. K. Das, *textilecalculation* blog, 2015 (101, 301); Union Special's chart in a bulletin of American & Efird, 2008
    (401). Ratios: Coats, *Standard Stitch Type Classification* (101 5, 103 4.5, 301 2.5).

    Example: thread_ratio(stitch_length=2.5, thickness=1, stitch='lock') gives 2.8
    """

def tiers(top: float, ratios: Sequence[float] | NDArray[Any]) -> Tiers:
    """Way round each tier of a tiered skirt.

    Each tier is the one above times its ratio, the first the top edge times the first ratio, so that the fullness
    multiplies: three tiers of 1.5 make a hem of 3.375 times the waist. How the length is shared over the tiers is
    taste. Allowances and joins are extra (`breadths`).

    Parameters
    ----------
    top : float
        edge that the first tier is gathered to (mm, 1 to 100000)
    ratios : sequence of float
        tier over the one above, from the top down (1 to 10, 1 to 12 items)

    Returns
    -------
    flats : array
        way round each tier before gathering (mm)
    hem : float
        Way round the last tier, which is the hem (mm)
    ratio : float
        Hem over the top edge
    strip : float
        All tiers together, as one strip (mm)
    doubts : int
        `GATHERS_SCANT` when any tier is gathered by less than 1.2, `GATHERS_LARGE` by more than 4 (bits)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange`, `Count` or `Room`, naming the argument. `NoSolution` naming `ratios` when a tier would be
        more than 10 km round.

    Notes
    -----
    Source: Arithmetic; a flounce is 1 1/2 times its line by C. C. Ingalls, *Text-Book on Domestic Art*, 1911.
    `tests/vectors/tiers.csv` has hand-worked rows.

    Example: tiers(top=800, ratios=[1.5, 1.5, 2]) gives flats 1200 1800 3600, hem 3600, ratio 4.5, strip 6600, doubts 0
    """

@overload
def tolerance_stack(seams: int, error_each: float = ...) -> ToleranceStack[float]: ...  # type: ignore[overload-overlap]

@overload
def tolerance_stack(seams: _ArrayLikeFloat_co, error_each: _ArrayLikeFloat_co = ...) -> ToleranceStack[NDArray[np.float64]]:
    """How far a girth made of equal seams may be off.

    A seam sewn `error_each` beside its line takes that much from both of its edges: `worst = 2 · seams · error_each`,
    `likely = 2 · error_each · √seams`. Where the ease at the waist is less than the worst case, try on before the band is
    cut.

    Parameters
    ----------
    seams : array_like of int
        number of seams, darts counted as one each (0 to 1000)
    error_each : array_like, default 1
        how far beside its line a seam may be sewn (mm, 0 to 100)

    Returns
    -------
    worst : float
        When every error falls the same way (mm)
    likely : float
        When they fall by chance: the root of the sum of their squares (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Worst case by arithmetic; independent errors add as the root of the sum of their squares: JCGM 100:2008, *Guide to the
    expression of uncertainty in measurement*, 5.1.2.

    Example: tolerance_stack(seams=6, error_each=1) gives worst 12, likely 4.899
    """

def tolerance_stack_list(errors: Sequence[float] | NDArray[Any], edges: Sequence[int] | NDArray[Any]) -> ToleranceStackList:
    """How far a length made of unlike terms may be off, and which of them adds most.

    Each term's error counts once for each of its edges: 2 for a seam, 1 for a fold or a raw edge, 0 for a term that is
    sure.

    Parameters
    ----------
    errors : sequence of float
        how far each term may be off (mm, 0 to 1000, 1 to 1000 items)
    edges : sequence of int
        how many times each error counts (0 to 100, as many as errors)

    Returns
    -------
    worst : float
        When every error falls the same way (mm)
    likely : float
        When they fall by chance: the root of the sum of their squares (mm)
    largest : int
        Index of the term that adds most, of equals the first
    largest_part : float
        What that term adds to the worst case (mm)

    Raises
    ------
    ReclothError
        `NotFinite`, `OutOfRange` or `Count`, naming the argument.

    Notes
    -----
    Source: As `tolerance_stack`.

    Example: tolerance_stack_list(errors=[1, 1, 1, 1, 2], edges=[2, 2, 2, 2, 1]) gives worst 10, likely 4.472, largest 0, largest_part 2
    """

@overload
def trilaterate(base: float, from_start: float, from_end: float) -> Trilaterate[float, int]: ...  # type: ignore[overload-overlap]

@overload
def trilaterate(base: _ArrayLikeFloat_co, from_start: _ArrayLikeFloat_co, from_end: _ArrayLikeFloat_co) -> Trilaterate[NDArray[np.float64], NDArray[np.uint64]]:
    """A point measured by tape from both ends of a base.

    `along = (from_start² - from_end² + base²) / 2 base`, `across = √(from_start² - along²)`. An error of 1 mm in both
    readings moves the point by at most `along_per_mm` and `across_per_mm`; that of the base is not counted. Choose bases
    that make both small: a point about half as far off as the base is long.

    Parameters
    ----------
    base : array_like
        between the two known points (mm, 1 to 100000)
    from_start : array_like
        reading from the start of the base (mm, 1 to 100000)
    from_end : array_like
        reading from the end of the base (mm, 1 to 100000)

    Returns
    -------
    along : float
        From the start along the base, negative behind the start (mm)
    across : float
        Square to the base (mm)
    along_per_mm : float
        How far along the base the point moves at worst, for each mm that both readings are off
    across_per_mm : float
        How far across the base the point moves at worst, for each mm that both readings are off
    doubts : int
        `TRIANGLE_FLAT` when `across_per_mm` passes 5, `TRIANGLE_TALL` when `along_per_mm` does (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `from_end`, with the readings between which the
        three make a triangle.

    Notes
    -----
    Source: Law of cosines; the height by W. Kahan, *Miscalculating Area and Angles of a Needle-like Triangle* (2014), which keeps
    its digits in flat triangles. Doubt over 5: common practice of survey, no source.

    Example: trilaterate(base=500, from_start=300, from_end=400) gives along 180, across 240, along_per_mm 1.4, across_per_mm 1.4, doubts 0
    """

@overload
def tucks(finished: float, count: int, depth: float, spacing: float) -> Tucks[float, int]: ...  # type: ignore[overload-overlap]

@overload
def tucks(finished: _ArrayLikeFloat_co, count: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, spacing: _ArrayLikeFloat_co) -> Tucks[NDArray[np.float64], NDArray[np.uint64]]:
    """Cloth and marking for tucks stitched an even distance apart.

    `flat = finished + 2 · count · depth`; fold lines are marked `spacing + 2 · depth` apart on the flat cloth. A tuck covers
    its depth of the spacing: blind tucks have `spacing = depth`. Tuck the cloth first, then cut the piece from it.

    Parameters
    ----------
    finished : array_like
        width when tucked (mm, 1 to 100000)
    count : array_like of int
        number of tucks (1 to 1000)
    depth : array_like
        depth of each tuck, stitching to fold (mm, 0.1 to 1000)
    spacing : array_like
        from stitching to stitching when tucked (mm, 0.1 to 10000)

    Returns
    -------
    flat : float
        Width before tucking, without allowances (mm)
    taken_up : float
        Cloth that all tucks take up (mm)
    fold_pitch : float
        From fold line to fold line on the flat cloth (mm)
    gap : float
        What shows between a tuck's fold and the next one's stitching; 0 for blind tucks (mm)
    margin : float
        Width left beside the first and the last stitching, together (mm)
    doubts : int
        `PLEATS_OVERLAP` when tucks lie over each other (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `spacing` when the tucks do not fit in the width.

    Notes
    -----
    Source: L. I. Baldt, *Clothing for Women*, 1916, Decoration pt 4 (twice the depth times the number).
    `tests/vectors/tucks.csv` has hand-worked rows.

    Example: tucks(finished=150, count=8, depth=5, spacing=15) gives flat 230, taken_up 80, fold_pitch 25, gap 10, margin 45, doubts 0
    """

@overload
def turn_through(width: float, thickness: float, opening: float, packing: float = ...) -> TurnThrough[float]: ...  # type: ignore[overload-overlap]

@overload
def turn_through(width: _ArrayLikeFloat_co, thickness: _ArrayLikeFloat_co, opening: _ArrayLikeFloat_co, packing: _ArrayLikeFloat_co = ...) -> TurnThrough[NDArray[np.float64]]:
    """Whether a garment part can be turned right side out through an opening: an estimate.

    The widest part, gathered in the hand, is a round bundle of its layers' section, of which cloth fills a share
    `packing`: `diameter = √(4 · width · thickness / (π · packing))`. An opening of flat width `w` is `2 · w` round, and
    passes it when `2 · w >= π · diameter`. Find the narrowest place on the way: a shoulder seam, a strap, the gap left in
    a lining; and that there is a way: a ring closed on itself cannot be turned.

    Parameters
    ----------
    width : array_like
        widest part that must pass, laid flat (mm, 1 to 100000)
    thickness : array_like
        all its layers together, pressed (mm, 0.01 to 1000)
    opening : array_like
        flat width of the narrowest place on the way (mm, 1 to 100000)
    packing : array_like, default 0.5
        share of the bundle that is cloth (0.1 to 1)

    Returns
    -------
    diameter : float
        Diameter of the bundle (mm)
    least_opening : float
        Least flat width of an opening that it passes (mm)
    spare : float
        What the opening is wider than that; negative when the bundle does not pass (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry; the packing of a half is a guess from memory, so the answer is an estimate: try with a scrap of as many
    layers. `tests/vectors/turn_through.csv` has hand-worked rows.

    Example: turn_through(width=250, thickness=1.6, opening=60, packing=0.5) gives diameter 31.92, least_opening 50.13, spare 9.87
    """

@overload
def turned_hem(length: float, depth: float, turn_in: float = ..., roll: float = ...) -> TurnedHem[float]: ...  # type: ignore[overload-overlap]

@overload
def turned_hem(length: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, turn_in: _ArrayLikeFloat_co = ..., roll: _ArrayLikeFloat_co = ...) -> TurnedHem[NDArray[np.float64]]:
    """Allowance and cut length for a hem that is turned up, its raw edge turned in.

    `allowance = depth + turn_in + folds · roll`: two folds, or one where nothing is turned in. A hem of two equal turns,
    as for sheer cloth, has `turn_in = depth`. The roll is the cloth that each fold takes by its thickness; fold a sample
    to learn it.

    Parameters
    ----------
    length : array_like
        finished length, upper edge or seam line to hem edge (mm, 1 to 100000)
    depth : array_like
        finished depth of the hem (mm, 0 to 10000)
    turn_in : array_like, default 6
        turned in at the raw edge; 0 where it is overcast or bound (mm, 0 to 10000, <= depth)
    roll : array_like, default 0
        cloth that each fold takes by its thickness (mm, 0 to 100)

    Returns
    -------
    allowance : float
        Hem allowance, from the finished edge to the raw edge (mm)
    cut_length : float
        Length to cut, with that allowance and no other (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `turn_in` when it is deeper than the hem.

    Notes
    -----
    Source: Arithmetic; a turn of 1/4 in by L. I. Baldt, *Clothing for Women*, 1916, "Simple Dress of Wool" (6 mm here). Depths are
    habit, and authors differ: T. Johnson, *It's Fun to Sew a Cotton School Dress*, 2 to 3 in on moderate flare, 1 1/2 in on
    more, 1/4 in or a rolled hem on a circle; bellasunshinedesigns.com 1 1/2 to 2 in straight, 1 1/2 A-line, 1 half circle, 1/2
    circle. What a flare bears, `hem_on_curve` says.

    Example: turned_hem(length=600, depth=40, turn_in=6, roll=0) gives allowance 46, cut_length 646
    """

@overload
def v_neck(half_width: float, depth: float, stay_ratio: float = ...) -> VNeck[float]: ...  # type: ignore[overload-overlap]

@overload
def v_neck(half_width: _ArrayLikeFloat_co, depth: _ArrayLikeFloat_co, stay_ratio: _ArrayLikeFloat_co = ...) -> VNeck[NDArray[np.float64]]:
    """Edge of a V neck, how far it lies off grain, and the tape that stays it.

    `edge = √(half_width² + depth²)`, `off_grain = atan(half_width / depth)`, `stay = edge · stay_ratio`. Any edge off grain
    stretches as it is handled, most of all near 45°: staystitch at once, and sew on a tape cut a little shorter than the
    edge. A tape below 0.9 puckers, so less is refused. If the point falls below the bust, nothing holds the edge to the
    body: pin it and see (`dart_from_gape`).

    Parameters
    ----------
    half_width : array_like
        middle to the edge's top at the shoulder, straight across (mm, 0 to 10000)
    depth : array_like
        from that level down to the point (mm, 1 to 10000)
    stay_ratio : array_like, default 0.97
        tape over edge (0.9 to 1)

    Returns
    -------
    edge : float
        Length of the straight edge on one side (mm)
    off_grain_deg : float
        Angle of the edge from the grain that runs down the middle (deg)
    stay : float
        Length of the tape that stays the edge on one side (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Plane geometry; the ratio is common practice, no source. `tests/vectors/v_neck.csv` has hand-worked rows.

    Example: v_neck(half_width=80, depth=300, stay_ratio=0.97) gives edge 310.48, off_grain_deg 14.93, stay 301.17
    """

@overload
def waist_hip_doubts(waist: float, hip: float) -> int: ...  # type: ignore[overload-overlap]

@overload
def waist_hip_doubts(waist: _ArrayLikeFloat_co, hip: _ArrayLikeFloat_co) -> NDArray[np.uint64]:
    """Doubts on a waist and a hip together.

    A waist above the hip (`WAIST_OVER_HIP`) may be the two in each other's place, and is also the shape of some bodies.
    A hip more than 450 mm above the waist (`HIP_FAR_OVER_WAIST`) may be half a waist.

    Parameters
    ----------
    waist : array_like
        girth of waist (mm, 1 to 100000)
    hip : array_like
        girth of hip (mm, 1 to 100000)

    Returns
    -------
    int
        The doubts (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Thresholds are common practice, no source. Hip less waist is 57 to 252 mm for women and -21 to 164 mm for men (5th and
    95th percentiles, from the data of Gordon et al., *2012 Anthropometric Survey of U.S. Army Personnel*,
    NATICK/TR-15/007, 2014; waist taken at the navel): more than one man in twenty has the first doubt.

    Example: waist_hip_doubts(waist=852, hip=1016) gives 0
    """

@overload
def washes(length: float, first_pct: float, later_pct: float, washes: int) -> Washes[float, int]: ...  # type: ignore[overload-overlap]

@overload
def washes(length: _ArrayLikeFloat_co, first_pct: _ArrayLikeFloat_co, later_pct: _ArrayLikeFloat_co, washes: _ArrayLikeFloat_co) -> Washes[NDArray[np.float64], NDArray[np.uint64]]:
    """Length after several washes, of which the first usually takes most.

    Changes multiply, they do not add: `after = length · (1 + first / 100) · (1 + later / 100)^(washes - 1)`. Wash a sample
    until two measures agree: no rule foretells how many times that is.

    A first change of less than 0.2 %, which no tape shows, is doubted: 0.05 may be a share.

    Parameters
    ----------
    length : array_like
        length before any wash (mm, 0 to 1000000)
    first_pct : array_like
        change in the first wash: shrinkage negative (%, -90 to 100)
    later_pct : array_like
        change in each wash after it (%, -90 to 100)
    washes : array_like of int
        how many washes (0 to 1000)

    Returns
    -------
    after : float
        Length after all washes (mm)
    change_pct : float
        Change from the first length to the last (%)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `washes` when the length grows past all bounds.

    Notes
    -----
    Source: ISO 5077:2007 (definition of a change), repeated. `tests/vectors/washes.csv` has hand-worked rows.

    Example: washes(length=600, first_pct=-5, later_pct=-1, washes=3) gives after 558.657, change_pct -6.8905, doubts 0
    """

@overload
def wearing_ease(body: float, place: EasePlace | str | int) -> WearingEase[float, int]: ...  # type: ignore[overload-overlap]

@overload
def wearing_ease(body: _ArrayLikeFloat_co, place: EasePlace | str | int) -> WearingEase[NDArray[np.float64], NDArray[np.uint64]]:
    """Wearing ease of woven cloth, all round, as a range over the authors, and the girths it makes.

    `garment = body + ease`. Ease is what is needed to breathe, sit and reach; what the style has more is taste. Authors differ by as much as an inch:

    - bust: 1 1/2 to 2 in (Robinson), 2 1/2 in (one cited in an encyclopedia), 2 to 3 in (a tailor's notes);
    - waist of a dress: 3/4 to 1 in, 1 in, 1 to 2 in, in that order;
    - waist of a skirt or trousers: 1/2 to 3/4 in (Robinson; the others do not tell it apart);
    - hip: 2 to 2 3/4 in, 3 in, 2 to 3 in;
    - a man's shirt at the chest: 1 1/2 to 2 1/2 in fitted, up to 3 in classic (Robinson).

    The best ease is that of a garment that fits: measure it and take the body's girth off. Thick cloth and a lining need
    more, cloth that stretches less (`negative_ease`).

    A girth below 300 mm or above 2000 mm is doubted.

    Parameters
    ----------
    body : array_like
        girth of the body there (mm, 1 to 100000)
    place : EasePlace
        where it is asked

    Returns
    -------
    low : float
        The least that an author gives, all round (mm)
    high : float
        The most that an author gives, all round (mm)
    garment_low : float
        Finished girth with the least (mm)
    garment_high : float
        Finished girth with the most (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: S. Robinson, costume text, Central Washington University, ch. 16; an encyclopedia's article "Ease (sewing)", first of its
    two cited sources; vintagetailor.blogspot.com, 2012. `tests/vectors/wearing_ease.csv` has each.

    Example: wearing_ease(body=1000, place='bust') gives low 38.1, high 76.2, doubts 0
    """

@overload
def width_conversion(length: float, width: float, new_width: float) -> WidthConversion[float, int]: ...  # type: ignore[overload-overlap]

@overload
def width_conversion(length: _ArrayLikeFloat_co, width: _ArrayLikeFloat_co, new_width: _ArrayLikeFloat_co) -> WidthConversion[NDArray[np.float64], NDArray[np.uint64]]:
    """Length of cloth of one width that does for a length of another, as a range.

    `by_area = length · width / new_width`. Tables handed down for this follow no formula: over all their cells they give
    0.90 to 1.12 times the area's length, and so does this. It is for a guess before buying; lay the pieces to know. A
    piece wider than the new cloth is not seen here.

    Cloth narrower than 200 mm is doubted: 150 may be in centimetres.

    Parameters
    ----------
    length : array_like
        length that is enough (mm, 0 to 1000000)
    width : array_like
        width of that cloth (mm, 10 to 100000)
    new_width : array_like
        width of the cloth to be had (mm, 10 to 100000)

    Returns
    -------
    by_area : float
        Length of the same area (mm)
    low : float
        Least that the printed tables give, 0.9 times the area's (mm)
    high : float
        Most that the printed tables give, 1.12 times the area's (mm)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: The extension services' table as copied at sewwithsarah.com, greenspun.com and hookedonsewing.com (credited to Rutgers
    Cooperative Extension, from memory); the range is that of its cells.

    Example: width_conversion(length=2000, width=900, new_width=1500) gives by_area 1200, low 1080, high 1344, doubts 0
    """

@overload
def wrap_skirt(waist: float, hip: float, overlap: float) -> WrapSkirt[float, int]: ...  # type: ignore[overload-overlap]

@overload
def wrap_skirt(waist: _ArrayLikeFloat_co, hip: _ArrayLikeFloat_co, overlap: _ArrayLikeFloat_co) -> WrapSkirt[NDArray[np.float64], NDArray[np.uint64]]:
    """Widths of a skirt with a back and two fronts that lap over each other.

    A back of half the girth, and fronts of a quarter and half the overlap each: `front = girth / 4 + overlap / 2`. The
    overlap runs straight down, the same at waist and hip; facings or hems of the two front edges are extra. The skirt
    opens when a step spreads the hem by more than the overlap there, so sit and stride in it, pinned, before cutting. The
    lap must equal that of the band, and of the bodice where there is one.

    Waist and hip are doubted alone and together, as `girth_doubts` and
    `waist_hip_doubts` do.

    Parameters
    ----------
    waist : array_like
        finished waist, ease included, darts closed (mm, 1 to 100000)
    hip : array_like
        finished hip, ease included (mm, 1 to 100000)
    overlap : array_like
        how far one front lies over the other (mm, 0 to 100000, <= waist)

    Returns
    -------
    back_waist : float
        Back at the waist, side seam to side seam (mm)
    back_hip : float
        Back at the hip (mm)
    front_waist : float
        Each front at the waist, side seam to its finished edge (mm)
    front_hip : float
        Each front at the hip (mm)
    waist_edge : float
        Waist edge of all three parts, which is the length of its band without ties (mm)
    wrap_pct : float
        How far each front reaches past the centre line, as a share of half a front (%)
    doubts : int
        Doubts raised (bits)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `overlap` when it goes more than once round.

    Notes
    -----
    Source: Arithmetic. `tests/vectors/wrap_skirt.csv` has hand-worked rows.

    Example: wrap_skirt(waist=720, hip=1020, overlap=240) gives back_waist 360, back_hip 510, front_waist 300, front_hip 375, waist_edge 960, wrap_pct 66.67, doubts 0
    """

@overload
def xyz_from_lab(l: float, a: float, b: float) -> Xyz[float]: ...  # type: ignore[overload-overlap]

@overload
def xyz_from_lab(l: _ArrayLikeFloat_co, a: _ArrayLikeFloat_co, b: _ArrayLikeFloat_co) -> Xyz[NDArray[np.float64]]:
    """Tristimulus values of a colour given in CIELAB, under daylight D65: `lab_from_xyz` turned round.

    Parameters
    ----------
    l : array_like
        lightness L* (0 to 100)
    a : array_like
        a*: green below 0, red above (-200 to 200)
    b : array_like
        b*: blue below 0, yellow above (-200 to 200)

    Returns
    -------
    x : float
        X
    y : float
        Y, the luminance: share of the white's
    z : float
        Z

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: CIE 15, *Colorimetry*, CIELAB (1976).

    Example: xyz_from_lab(l=41.52787529, a=52.63858304, b=26.92317922) gives x 0.20654008, y 0.12197225, z 0.05136952
    """

@overload
def xyz_from_srgb(red: float, green: float, blue: float) -> Xyz[float]: ...  # type: ignore[overload-overlap]

@overload
def xyz_from_srgb(red: _ArrayLikeFloat_co, green: _ArrayLikeFloat_co, blue: _ArrayLikeFloat_co) -> Xyz[NDArray[np.float64]]:
    """Tristimulus values of a colour given by its screen levels.

    Parameters
    ----------
    red : array_like
        red level (0 to 255)
    green : array_like
        green level (0 to 255)
    blue : array_like
        blue level (0 to 255)

    Returns
    -------
    x : float
        X
    y : float
        Y, the luminance: share of the white's
    z : float
        Z

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: IEC 61966-2-1 (sRGB), its matrix with four decimals. A matrix worked out from the primaries differs by less than
    0.0001; a grey then has an a* of 0 and not of 0.005.

    Example: xyz_from_srgb(red=255, green=255, blue=255) gives x 0.9505, y 1, z 1.089
    """

@overload
def zigzag_buttonhole(slit: float, bead: float = ..., gap: float = ..., bar: float = ..., spacing: float = ...) -> ZigzagButtonhole[float, int]: ...  # type: ignore[overload-overlap]

@overload
def zigzag_buttonhole(slit: _ArrayLikeFloat_co, bead: _ArrayLikeFloat_co = ..., gap: _ArrayLikeFloat_co = ..., bar: _ArrayLikeFloat_co = ..., spacing: _ArrayLikeFloat_co = ...) -> ZigzagButtonhole[NDArray[np.float64], NDArray[np.uint32]]:
    """Size over all of a buttonhole worked in zigzag: two beads and two bars about a slit.

    `length = slit + 2 · bar`, `width = 2 · bead + gap`, and each side takes `ceil(slit / spacing)` stitches. It is the slit that
    the button passes (`buttonhole`); the whole must lie on the button stand. Work one on a
    scrap of the same layers. Cut from both ends towards the middle, a pin across each bar.

    Parameters
    ----------
    slit : array_like
        length of the slit (mm, 1 to 300)
    bead : array_like, default 2
        width of the zigzag on each side (mm, 0.1 to 20)
    gap : array_like, default 0.5
        between the two sides, where it is cut (mm, 0 to 10)
    bar : array_like, default 2
        length of the bar at each end (mm, 0 to 20)
    spacing : array_like, default 0.4
        stitch length of the zigzag (mm, 0.05 to 10)

    Returns
    -------
    length : float
        Length over all, bars included (mm)
    width : float
        Width over all (mm)
    stitches : int
        Stitches of the two sides together

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arithmetic; the defaults are from memory of home machines, no source: measure a hole of your own. Only a bound hole is
    otherwise: at most 6 mm wide, each welt 3 mm (frkbustad.blogspot.com, 2010).

    Example: zigzag_buttonhole(slit=22, bead=2, gap=0.5, bar=2, spacing=0.4) gives length 26, width 4.5, stitches 110
    """

@overload
def zip_length(opening: float, gap: float = ..., beyond: float = ..., allowance: float = ..., graduation: float = ...) -> ZipLength[float]: ...  # type: ignore[overload-overlap]

@overload
def zip_length(opening: _ArrayLikeFloat_co, gap: _ArrayLikeFloat_co = ..., beyond: _ArrayLikeFloat_co = ..., allowance: _ArrayLikeFloat_co = ..., graduation: _ArrayLikeFloat_co = ...) -> ZipLength[NDArray[np.float64]]:
    """Zip for an opening: its length from stop to stop, and where the stops lie.

    `needed = opening - gap + beyond`, bought in the next length that is sold. The gap leaves room above the slider for a hook
    or for the turn of a facing; where the teeth end at a band's seam it is small. A concealed zip is sewn before the seam
    below it and must run on beyond the opening, or its slider cannot be brought down past the last stitch. A zip is shortened
    at the bottom, by a bar of stitches over the teeth; an open-ended one at the top only. Whether the opening passes the hip
    is asked of `head_opening`.

    Parameters
    ----------
    opening : array_like
        seam line at the top to the lower end of the opening (mm, 10 to 5000)
    gap : array_like, default 6
        seam line at the top down to the top stop (mm, 0 to 500, < opening)
    beyond : array_like, default 0
        what the zip runs on below the opening; some 25 if concealed (mm, 0 to 500)
    allowance : array_like, default 15
        raw edge to seam line at the top (mm, 0 to 1000)
    graduation : array_like, default 20
        step between the lengths that are sold (mm, 1 to 1000)

    Returns
    -------
    needed : float
        Length needed, top stop to bottom stop (mm)
    buy : float
        Length to buy, the next that is sold (mm)
    shorten : float
        What that is too long, to be taken off by a new bottom stop (mm)
    top_stop : float
        Top stop from the raw edge at the top (mm)
    bottom_stop : float
        Bottom stop from the raw edge at the top (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `gap` when it is the whole opening.

    Notes
    -----
    Source: Arithmetic; the defaults are common practice, no source. `tests/vectors/zip_length.csv` has hand-worked rows.

    Example: zip_length(opening=200, gap=6, beyond=0, allowance=15, graduation=20) gives needed 194, buy 200, shorten 6, top_stop 21, bottom_stop 215
    """

@overload
def zip_opening(zip: float, gap: float = ..., beyond: float = ...) -> float: ...  # type: ignore[overload-overlap]

@overload
def zip_opening(zip: _ArrayLikeFloat_co, gap: _ArrayLikeFloat_co = ..., beyond: _ArrayLikeFloat_co = ...) -> NDArray[np.float64]:
    """Opening that a zip there is serves.

    `zip_length` the other way: `opening = zip + gap - beyond`. For a zip saved from the old garment: run it a hundred times
    first, and see that both stops hold.

    Parameters
    ----------
    zip : array_like
        length of the zip, top stop to bottom stop (mm, 10 to 5000)
    gap : array_like, default 6
        seam line at the top down to the top stop (mm, 0 to 500)
    beyond : array_like, default 0
        what the zip runs on below the opening (mm, 0 to 500)

    Returns
    -------
    float
        Seam line at the top to the lower end of the opening (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument. `NoSolution` naming `beyond` when nothing of the opening is left.

    Notes
    -----
    Source: As `zip_length`.

    Example: zip_opening(zip=200, gap=6, beyond=25) gives 181
    """

__all__ = [
    "Answer",
    "ArcFromRise",
    "AvailableChlorine",
    "BandMake",
    "Basis",
    "Batches",
    "Bath",
    "BathVolume",
    "BiasStrips",
    "BiasTube",
    "BinderSolids",
    "BindingFold",
    "BindingStrips",
    "BleachDilution",
    "BleachTime",
    "BoxPleats",
    "Breadths",
    "BriefError",
    "ButtonForHole",
    "ButtonLoop",
    "ButtonShape",
    "ButtonStand",
    "ButtonholeMark",
    "CM",
    "CapEase",
    "CarriedLiquor",
    "Casing",
    "ChainShares",
    "Change",
    "CircleSkirt",
    "CircleSkirtOnCloth",
    "ComponentCheck",
    "Copied",
    "CornerReading",
    "CoverMark",
    "CurvedBand",
    "CurvedBinding",
    "CutForChange",
    "CutLine",
    "CutNotch",
    "CutSegment",
    "CutState",
    "CutoutMark",
    "Dart",
    "DartEquivalent",
    "DartFromGape",
    "DartInPanel",
    "DartMark",
    "DartMouth",
    "DoubleDart",
    "DrillMark",
    "EasePlace",
    "Edge",
    "EdgeCurve",
    "Elastic",
    "FOOT",
    "Fibre",
    "Finish",
    "Fit",
    "FiveGores",
    "Flaw",
    "Flounce",
    "Fold",
    "FoldedBand",
    "Frustum",
    "GatherSections",
    "Gathers",
    "Godet",
    "Gore",
    "Gusset",
    "HeadOpening",
    "HemLetDown",
    "HemOnCurve",
    "HipWaistDrop",
    "HolesLeft",
    "INCH",
    "InBath",
    "InsertPlace",
    "InsertStrip",
    "Joined",
    "KnifePleats",
    "Lab",
    "Largest",
    "LeastChange",
    "Leftover",
    "LengthChain",
    "LetOut",
    "LevelLine",
    "LineMark",
    "Lined",
    "LiningLength",
    "LiningSeam",
    "LiquorShares",
    "LoopSlack",
    "M",
    "MM",
    "Made",
    "MatchPoint",
    "MixTemperature",
    "NapLayout",
    "NeedleBlade",
    "NegativeEase",
    "Neutraliser",
    "Notch",
    "NotchMatch",
    "OffCentreOpening",
    "Opening",
    "Overdye",
    "Owf",
    "PairedNotch",
    "Panel",
    "PanelByOffsets",
    "PanelByTriangles",
    "PanelRectangle",
    "Part",
    "PhotoMap",
    "Piece",
    "PiecedLength",
    "Place",
    "Placement",
    "Plan",
    "PlantDyestuff",
    "PooledStrength",
    "PuffSpread",
    "Reaction",
    "ReclothError",
    "Repeat",
    "Repeats",
    "Ribbing",
    "Rinses",
    "RoundedSet",
    "Rounding",
    "Ruffle",
    "SeamEnd",
    "SeamPleat",
    "SectionedBand",
    "ShapedBand",
    "Shirring",
    "ShrinkPair",
    "SizeStep",
    "Slash",
    "SnipSpacing",
    "SpacingByPitch",
    "SpacingThrough",
    "Spare",
    "SquareEnds",
    "Srgb",
    "Stage",
    "StitchType",
    "StockVolume",
    "StraightBand",
    "Strip",
    "StripLay",
    "Style",
    "Swatch",
    "Symmetry",
    "TakeIn",
    "Tiers",
    "ToleranceStack",
    "ToleranceStackList",
    "Trilaterate",
    "TruedEdge",
    "TruedUp",
    "Tucks",
    "TurnThrough",
    "TurnedHem",
    "Unplaced",
    "UsablePanel",
    "UsablePart",
    "VNeck",
    "Walk",
    "WalkNotch",
    "WalkSection",
    "Washes",
    "WearingEase",
    "WidthConversion",
    "WrapSkirt",
    "Xyz",
    "YARD",
    "ZigzagButtonhole",
    "ZipLength",
    "__version__",
    "arc_from_rise",
    "assistant_volume",
    "available_chlorine",
    "batches",
    "bath_volume",
    "bias_along_selvedge",
    "bias_square",
    "bias_strip_length",
    "bias_strips",
    "bias_tube",
    "binder_solids",
    "binding_length",
    "binding_strips",
    "binding_width",
    "bleach_dilution",
    "bleach_time",
    "body_length_doubts",
    "box_pleats",
    "box_pleats_count",
    "box_pleats_depth",
    "box_pleats_finished",
    "breadths",
    "button_diameter",
    "button_for_hole",
    "button_for_stand",
    "button_loop",
    "button_stand",
    "buttonhole",
    "cap_ease",
    "cap_for_ease",
    "cap_width_bound",
    "carried_liquor",
    "casing",
    "caution_text",
    "cautions",
    "check",
    "ciede2000",
    "circle_skirt",
    "circle_skirt_fraction",
    "circle_skirt_longest",
    "cloth_mass",
    "cloth_to_buy",
    "component_check",
    "cover_mark",
    "curved_band",
    "curved_binding",
    "cut_for_change",
    "cut_state",
    "dart",
    "dart_equivalent",
    "dart_from_gape",
    "dart_in_panel",
    "dart_turned",
    "dart_width_at",
    "deepest_hem",
    "dimensional_change",
    "double_dart",
    "doubt_text",
    "doubts",
    "draft",
    "elastic",
    "even_spacing",
    "fit",
    "five_gores",
    "flounce",
    "folded_band",
    "format_length",
    "front_back_doubts",
    "frustum",
    "fullest",
    "gather_ratio",
    "gather_sections",
    "gathers",
    "girth_doubts",
    "godet",
    "gore",
    "gsm_from_ounces",
    "gusset",
    "head_opening",
    "hem_let_down",
    "hem_on_curve",
    "hip_waist_drop",
    "holes_left",
    "insert_strip",
    "k_over_s",
    "knife_pleats",
    "knife_pleats_count",
    "knife_pleats_depth",
    "knife_pleats_finished",
    "lab_from_srgb",
    "lab_from_xyz",
    "lacing",
    "largest",
    "largest_rectangle",
    "least_change",
    "leftovers",
    "length_chain",
    "length_chain_shares",
    "let_out",
    "level_line",
    "linear_light",
    "lining_free_length",
    "lining_length",
    "lining_width",
    "liquor_shares",
    "longest",
    "loop_slack",
    "measured_edge",
    "mix_temperature",
    "nap_layout",
    "neck_bust_doubts",
    "needle_blade",
    "needle_metric",
    "negative_ease",
    "neutraliser",
    "off_centre_opening",
    "opened_edge",
    "overdye",
    "owf",
    "panel_by_offsets",
    "panel_by_triangles",
    "parse_length",
    "photo_map",
    "pieced_length",
    "piping_width",
    "placed",
    "plan",
    "plant_dyestuff",
    "pooled_strength",
    "puff_spread",
    "reasons",
    "reflectance",
    "relative_strength",
    "remaining_width",
    "repeats",
    "ribbing",
    "rinses",
    "round_set",
    "round_to",
    "ruffle",
    "screen_level",
    "seam_pleat",
    "sectioned_band",
    "shaped_band",
    "share",
    "shirring",
    "shrink_pair",
    "size_step",
    "skew",
    "skew_diagonals",
    "snip_spacing",
    "spacing_by_pitch",
    "spacing_through",
    "srgb_from_lab",
    "srgb_from_xyz",
    "stitch_length",
    "stock_volume",
    "straight_band",
    "straight_band_depth",
    "stretch_pct",
    "strip",
    "take_in",
    "tallest_rectangle",
    "tex_from_cotton_count",
    "tex_from_denier",
    "tex_from_metric_count",
    "thread_for_seam",
    "thread_ratio",
    "tiers",
    "tolerance_stack",
    "tolerance_stack_list",
    "trilaterate",
    "true_up",
    "tucks",
    "turn_through",
    "turned_hem",
    "ufuncs",
    "usable_panel",
    "v_neck",
    "waist_hip_doubts",
    "washes",
    "wearing_ease",
    "width_conversion",
    "wrap_skirt",
    "xyz_from_lab",
    "xyz_from_srgb",
    "zigzag_buttonhole",
    "zip_length",
    "zip_opening",
]
