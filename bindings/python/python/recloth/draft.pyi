"""Pieces drafted from measures (mm), or from pieces there are."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any, NamedTuple, TypeAlias, final

from . import Lined, Piece, Walk

__all__ = [
    "Binding",
    "Check",
    "CircleSector",
    "DartedSkirt",
    "Draft",
    "EdgeBand",
    "GatheredStrip",
    "GoredSkirt",
    "LinedDraft",
    "NamedLength",
    "NeckTop",
    "OffCentreFront",
    "PanelLining",
    "PatchPocket",
    "Pinafore",
    "PuffedSleeve",
    "RecutSleeve",
    "Seam",
    "SectionedBand",
    "ShapedBand",
    "SkirtPanel",
    "Sleeve",
    "StraightBand",
    "TieredSkirt",
    "WrapSkirt",
]

_NamedWidths: TypeAlias = (
    dict[str, float] | dict[tuple[str, str], float] | Iterable[tuple[str | tuple[str, str], float]]
)

class Seam(NamedTuple):
    """A seam to walk before cutting, with what walking it found."""

    name: str
    edges: tuple[tuple[str, str], ...]
    other_edges: tuple[tuple[str, str], ...]
    way: str
    ease: float
    walk: Walk

class Check(NamedTuple):
    """Something a draft found right about itself."""

    what: str
    kind: str
    found: float
    within: float

class NamedLength(NamedTuple):
    """A length to cut that needs no pattern."""

    name: str
    length: float

class LinedDraft(NamedTuple):
    """The lining of a draft: the pieces to cut with their seams, and the lining of each piece by its name."""

    draft: Draft
    linings: dict[str, Lined]

@final
class Draft:
    """What a draft gives: pieces, the seams to walk, what was checked."""

    @staticmethod
    def from_json(text: str) -> Draft:
        """The draft that ``to_json`` wrote, its pieces checked again."""
    def to_json(self) -> str:
        """The draft as JSON, every number to the last bit."""
    def to_dict(self) -> dict[str, Any]:
        """The draft as dicts and lists, as ``to_json`` writes it."""
    @property
    def pieces(self) -> tuple[Piece, ...]:
        """Its pieces."""
    def piece(self, name: str) -> Piece | None:
        """The first piece of this name, or None."""
    @property
    def seams(self) -> tuple[Seam, ...]:
        """The seams to walk, with what walking them found."""
    @property
    def checks(self) -> tuple[Check, ...]:
        """What was checked, all of which holds."""
    @property
    def lengths(self) -> tuple[NamedLength, ...]:
        """What is cut without a pattern."""
    @property
    def doubts(self) -> int:
        """Doubts raised; ``recloth.doubts`` puts them into words."""
    @property
    def cautions(self) -> int:
        """Cautions; ``recloth.cautions`` puts them into words."""
    def lining(
        self,
        *,
        pieces: Iterable[str] | None = None,
        cloth: str = "lining",
        facings: _NamedWidths | None = None,
        ease: _NamedWidths | None = None,
        pleats: _NamedWidths | None = None,
        hem: str = "level",
        depth: float = 0.0,
        clearance: float = 0.0,
        hem_allowance: float = 0.0,
        darts: str = "tucks",
        allowance: float = 10.0,
        shell_change_pct: tuple[float, float] = (0.0, 0.0),
        lining_change_pct: tuple[float, float] = (0.0, 0.0),
    ) -> LinedDraft:
        """The lining of the draft, or of some of its pieces; an edge is named by a seam of the draft too."""
    def __reduce__(self) -> tuple[Any, ...]: ...
    def _repr_svg_(self) -> str | None: ...

class _Measures:
    def __post_init__(self) -> None: ...
    def draft(self) -> Draft:
        """The pieces, the seams to walk, what was checked; raises ReclothError naming the measure."""

@dataclass(frozen=True, slots=True)
class SkirtPanel(_Measures):
    """Half a skirt front or back with darts at the waist, from a panel whose width is given."""

    name: str
    panel_width: float
    waist: float
    hip: float
    hip_depth: float
    length: float
    hem_width: float
    darts: int = ...
    largest_intake: float = ...
    dart_length: float = ...
    side_rise: float = ...
    centre: str = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class PanelLining(_Measures):
    """The lining of a skirt panel: the same waist and darts, ease at the side, its own length."""

    shell: SkirtPanel
    hang: str = ...
    hem: float = ...
    clearance: float = ...
    ease: float = ...

@dataclass(frozen=True, slots=True)
class CircleSector(_Measures):
    """One of the equal sectors a circle skirt is made of."""

    waist: float
    length: float
    fraction: float = ...
    pieces: int = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class StraightBand(_Measures):
    """A straight waistband: one strip folded along its upper edge, or an outer and an inner strip."""

    waist: float
    overlap: float = ...
    depth: float = ...
    turn: float = ...
    make: str = ...
    allowance: float = ...

@dataclass(frozen=True, slots=True)
class SectionedBand(_Measures):
    """A shaped waistband in sections, straight with slanted ends or curved."""

    lengths: Iterable[float]
    depth: float
    top: float
    ends: str = ...
    curved: bool = ...
    allowance: float = ...

@dataclass(frozen=True, slots=True)
class GatheredStrip(_Measures):
    """A strip gathered onto a finished edge, in one length or joined from several."""

    finished: float
    ratio: float
    depth: float
    strips: int = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class PatchPocket(_Measures):
    """A patch pocket: sewn on along its sides and bottom, turned down at the top."""

    width: float
    depth: float
    corner_radius: float = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class DartedSkirt(_Measures):
    """A skirt of a front and a back with darts at the waist, whose side seams match."""

    waist: float
    hip: float
    front_panel: float
    back_panel: float
    hip_depth: float = ...
    length: float = ...
    flare: float = ...
    forward: float = ...
    front_darts: int = ...
    back_darts: int = ...
    largest_intake: float = ...
    front_dart_length: float = ...
    back_dart_length: float = ...
    side_rise: float = ...
    front_centre: str = ...
    back_centre: str = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class OffCentreFront(_Measures):
    """A skirt front whose button line lies to one side of the centre: a narrow and a wide front."""

    front: SkirtPanel
    shift: float
    extension: float
    wide_panel: float
    facing: float = ...

@dataclass(frozen=True, slots=True)
class WrapSkirt(_Measures):
    """A wrap skirt: a back, and two fronts that lie over each other by the whole overlap."""

    waist: float
    hip: float
    overlap: float
    hip_depth: float = ...
    length: float = ...
    flare: float = ...
    front_darts: int = ...
    back_darts: int = ...
    largest_intake: float = ...
    dart_length: float = ...
    side_rise: float = ...
    back_centre: str = ...
    facing: float = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class GoredSkirt(_Measures):
    """A skirt of equal gores: fitted to the hip and flared below it by its seams alone."""

    waist: float
    hip: float
    hem: float
    length: float = ...
    hip_depth: float = ...
    count: int = ...
    seam: float = ...
    hem_allowance: float = ...

@dataclass(frozen=True, slots=True)
class TieredSkirt(_Measures):
    """A skirt of tiers, each gathered onto the one above, the first onto a waist edge."""

    waist: float
    ratios: Iterable[float]
    depths: Iterable[float]
    cloth_width: float
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class ShapedBand(_Measures):
    """A shaped waistband in one piece: part of a ring, its upper edge shorter than its lower one."""

    lower: float
    upper: float
    depth: float = ...
    overlap: float = ...
    allowance: float = ...

@dataclass(frozen=True, slots=True)
class EdgeBand(_Measures):
    """A folded band joined to a ring and sewn round an edge: a cuff, a neck band, ribbing."""

    edge: float
    share: float = ...
    depth: float = ...
    allowance: float = ...

@dataclass(frozen=True, slots=True)
class Binding(_Measures):
    """A bias binding for an edge, joined from strips that are all cut alike, their ends on the grain."""

    edge: float
    finished: float
    turn: float
    strip: float
    thickness: float = ...
    fold: str = ...
    corners: int = ...
    corner: float = ...
    finish: float = ...
    allowance: float = ...

@dataclass(frozen=True, slots=True)
class NeckTop(_Measures):
    """A top with a V or square neck, cut from a bodice there is: front, back and their facings."""

    front: Piece
    back: Piece
    shape: str = ...
    off_shoulder: float = ...
    depth: float = ...
    back_depth: float = ...
    facing: float = ...
    stay_ratio: float = ...
    allowance: float = ...

@dataclass(frozen=True, slots=True)
class Sleeve(_Measures):
    """A plain sleeve drawn to an armhole; its ease lies above the notches."""

    front: Piece
    back: Piece
    width: float
    length: float
    hem_width: float
    ease_pct: float = ...
    notch: float = ...
    seam: float = ...
    hem: float = ...

@dataclass(frozen=True, slots=True)
class RecutSleeve(_Measures):
    """A sleeve there is, with its cap cut anew to an armhole."""

    sleeve: Piece
    front: Piece
    back: Piece
    ease_pct: float = ...
    notch: float = ...
    largest_lift: float = ...

@dataclass(frozen=True, slots=True)
class PuffedSleeve(_Measures):
    """A puffed sleeve: a plain one slashed and spread, its cap raised and drawn anew."""

    sleeve: Piece
    ratio: float = ...
    slashes: int = ...
    lift: float = ...
    hem: str = ...

@dataclass(frozen=True, slots=True)
class Pinafore(_Measures):
    """A child's pinafore: a yoke that buttons at the back, a band where wanted, a gathered skirt."""

    chest: float
    neck: float
    head: float
    shoulder: float
    armhole_depth: float
    yoke_depth: float
    skirt_length: float
    opening: float
    ease: float = ...
    band_depth: float = ...
    fullness: float = ...
    panels: int = ...
    stand: float = ...
    seam: float = ...
    hem: float = ...
