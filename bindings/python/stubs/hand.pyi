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
