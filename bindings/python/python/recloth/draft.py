"""Pieces drafted from measures.

Each draft is a class of measures (mm) whose method ``draft`` gives the pieces, drawn as seam lines,
with named edges, allowances, notches and how they are cut. y points up; waists are at the top, hems
at the bottom, centres at the left. A draft that cannot be made raises ReclothError, which names the
measure to change.

>>> from recloth import draft
>>> pocket = draft.PatchPocket(width=150, depth=170, corner_radius=20, seam=10, hem=30)
>>> pocket.draft().pieces[0]
Piece("patch pocket", 6 edges)
"""

from dataclasses import dataclass
from typing import NamedTuple

from . import _core, _numbers
from ._shapes import word

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
    """What a draft gives.

    pieces : tuple of Piece    the pieces
    doubts : int               doubts raised; ``recloth.doubts`` puts them into words
    """

    pieces: tuple
    doubts: int


class _Measures:
    __slots__ = ()

    def draft(self):
        """The pieces, and doubts about them.

        Returns
        -------
        Draft

        Raises
        ------
        ReclothError
            naming the measure, and what would do
        """
        return Draft(*_core.draft(self))


@dataclass(frozen=True, slots=True)
class SkirtPanel(_Measures):
    """Half a skirt front or back with darts at the waist, from a panel whose width is given.

    What the panel is wider than the waist goes into the darts; what is left goes at the side seam.

    Parameters
    ----------
    name : str                name of the piece
    panel_width : float       width there is at the waist, centre to side seam (mm), 1 to 5000
    waist : float             finished waist of this half, ease included (mm), at most panel_width
    hip : float               finished width at the hip, ease included (mm), 1 to 5000
    hip_depth : float         waist to hip along the centre (mm), 10 to 1000
    length : float            waist to hem along the centre (mm), more than hip_depth, to 5000
    hem_width : float         width straight across at the hem (mm), 1 to 10000
    darts : int               number of darts, 0 to 8
    largest_intake : float    the most one dart may take in (mm), 0 to 500
    dart_length : float       waist edge to point (mm), 1 to 1000, less than hip_depth
    side_rise : float         how much higher the waist is at the side (mm), 0 to 100
    centre : str              "fold": half of one piece; "seam": a mirrored pair
    seam, hem : float         allowances (mm), 0 to 1000; the waist has that of a seam
    """

    name: str
    panel_width: float
    waist: float
    hip: float
    hip_depth: float
    length: float
    hem_width: float
    darts: int = 1
    largest_intake: float = 30.0
    dart_length: float = 100.0
    side_rise: float = 12.0
    centre: str = "fold"
    seam: float = 15.0
    hem: float = 40.0

    def __post_init__(self):
        word(self.centre, ("fold", "seam"), "draft.SkirtPanel", "centre")


@dataclass(frozen=True, slots=True)
class PanelLining(_Measures):
    """The lining of a skirt panel: the same waist and darts, ease at the side, its own length.

    Parameters
    ----------
    shell : SkirtPanel    the panel to be lined
    hang : str            "free": with a hem of its own; "folded": sewn to the top of the shell's hem
    hem : float           depth of the lining's own hem where it hangs free (mm), 0 to 1000
    clearance : float     lining's lower edge or fold above the shell's hem edge (mm), 0 to 1000
    ease : float          what the lining is wider by at hip and hem (mm), 0 to 500
    """

    shell: SkirtPanel
    hang: str = "free"
    hem: float = 20.0
    clearance: float = 20.0
    ease: float = 10.0

    def __post_init__(self):
        word(self.hang, ("free", "folded"), "draft.PanelLining", "hang")
        if not isinstance(self.shell, SkirtPanel):
            kind = type(self.shell).__name__
            raise TypeError(f"draft.PanelLining: shell must be a SkirtPanel, not {kind}")


@dataclass(frozen=True, slots=True)
class CircleSector(_Measures):
    """One of the equal sectors a circle skirt is made of.

    Parameters
    ----------
    waist : float        finished waist of the whole skirt, ease included (mm), 1 to 1e4
    length : float       waist edge to hem edge (mm), 1 to 5000
    fraction : float     part of a full ring, 0.01 to 4
    pieces : int         number of equal sectors, 1 to 64; none of more than 330 degrees
    seam, hem : float    allowances (mm), 0 to 1000; a hem on so strong a curve is shallow
    """

    waist: float
    length: float
    fraction: float = 1.0
    pieces: int = 2
    seam: float = 15.0
    hem: float = 10.0


@dataclass(frozen=True, slots=True)
class StraightBand(_Measures):
    """A straight waistband: one strip folded along its upper edge, or an outer and an inner strip.

    Parameters
    ----------
    waist : float        finished length round the waist, ease included (mm), 1 to 1e4
    overlap : float      what runs on past the opening (mm), 0 to 1e4
    depth : float        finished depth (mm), 1 to 1000
    turn : float         cloth taken by the thickness of the upper edge (mm), 0 to 100
    make : str           "folded" or "faced"
    allowance : float    seam allowance (mm), 0 to 1000
    """

    waist: float
    overlap: float = 30.0
    depth: float = 30.0
    turn: float = 0.0
    make: str = "folded"
    allowance: float = 10.0

    def __post_init__(self):
        word(self.make, ("folded", "faced"), "draft.StraightBand", "make")


@dataclass(frozen=True, slots=True)
class SectionedBand(_Measures):
    """A shaped waistband in sections, straight with slanted ends or curved.

    Parameters
    ----------
    lengths : list of float    finished lower edge of each section, in order (mm), 1 to 1e4 each
    depth : float              finished depth (mm), 1 to 1000
    top : float                finished upper edge of all sections together (mm), 1 to 1e6
    ends : str                 which free ends are square: "neither", "first", "last", "both"
    curved : bool              whether the sections are curved
    allowance : float          seam allowance (mm), 0 to 1000
    """

    lengths: tuple
    depth: float
    top: float
    ends: str = "both"
    curved: bool = False
    allowance: float = 10.0

    def __post_init__(self):
        word(self.ends, ("neither", "first", "last", "both"), "draft.SectionedBand", "ends")
        lengths = _numbers.list_of(self.lengths, "draft.SectionedBand", "lengths")
        object.__setattr__(self, "lengths", tuple(lengths.tolist()))


@dataclass(frozen=True, slots=True)
class GatheredStrip(_Measures):
    """A strip gathered onto a finished edge, in one length or joined from several.

    Parameters
    ----------
    finished : float     length of the edge it goes on (mm), 1 to 1e4
    ratio : float        strip over finished edge, 1 to 20
    depth : float        finished depth (mm), 1 to 5000
    strips : int         number of equal lengths it is joined from, 1 to 100
    seam, hem : float    allowances (mm), 0 to 1000
    """

    finished: float
    ratio: float
    depth: float
    strips: int = 1
    seam: float = 10.0
    hem: float = 20.0


@dataclass(frozen=True, slots=True)
class PatchPocket(_Measures):
    """A patch pocket: sewn on along its sides and bottom, turned down at the top.

    Parameters
    ----------
    width, depth : float     finished (mm), 10 to 1000
    corner_radius : float    of the lower corners (mm), 0 to 500, at most half the width
    seam, hem : float        allowances (mm), of the seam all round and of the hem at the top
    """

    width: float
    depth: float
    corner_radius: float = 0.0
    seam: float = 10.0
    hem: float = 30.0
