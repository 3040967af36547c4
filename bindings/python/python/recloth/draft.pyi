"""Pieces drafted from measures (mm)."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import NamedTuple

from . import Piece

__all__ = [
    "CircleSector",
    "Draft",
    "GatheredStrip",
    "PanelLining",
    "PatchPocket",
    "SectionedBand",
    "SkirtPanel",
    "StraightBand",
]

class Draft(NamedTuple):
    """What a draft gives: its pieces, and doubts, which recloth.doubts puts into words."""

    pieces: tuple[Piece, ...]
    doubts: int

class _Measures:
    def draft(self) -> Draft:
        """The pieces, and doubts about them; raises ReclothError naming the measure."""

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
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class PanelLining(_Measures):
    """The lining of a skirt panel: the same waist and darts, ease at the side, its own length."""

    shell: SkirtPanel
    hang: str = ...
    hem: float = ...
    clearance: float = ...
    ease: float = ...
    def __post_init__(self) -> None: ...

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
    def __post_init__(self) -> None: ...

@dataclass(frozen=True, slots=True)
class SectionedBand(_Measures):
    """A shaped waistband in sections, straight with slanted ends or curved."""

    lengths: Iterable[float]
    depth: float
    top: float
    ends: str = ...
    curved: bool = ...
    allowance: float = ...
    def __post_init__(self) -> None: ...

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
