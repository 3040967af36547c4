"""Pieces drafted from measures, or from pieces there are.

Each draft is a class of measures (mm) whose method ``draft`` gives the pieces, drawn as seam lines,
with named edges, allowances, notches and how they are cut; with them the seams to walk, and what the
draft checked about itself. y points up; waists are at the top, hems at the bottom, centres at the
left. A draft that cannot be made raises ReclothError, which names the measure to change and what
would do.

>>> from recloth import draft
>>> pocket = draft.PatchPocket(width=150, depth=170, corner_radius=20, seam=10, hem=30)
>>> pocket.draft().pieces[0]
Piece("patch pocket", 6 edges)
"""

from dataclasses import dataclass, field, fields
from typing import NamedTuple

from . import _core, _numbers
from ._core import Draft
from ._shapes import word

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


class Seam(NamedTuple):
    """A seam to walk before cutting, with what walking it found.

    name : str             what it is
    edges : tuple          pairs of a piece's and an edge's name, in the order met
    other_edges : tuple    those on the other side
    way : str              which way the others run: "against" or "along"
    ease : float           what ``edges`` are meant to be longer (mm)
    walk : Walk            what was found
    """

    name: str
    edges: tuple
    other_edges: tuple
    way: str
    ease: float
    walk: object


class Check(NamedTuple):
    """Something a draft found right about itself.

    what : str         what was looked at
    kind : str         "seam" and "level" (mm), "run": an edge runs on smoothly (degrees)
    found : float      by how much it misses
    within : float     by how much it may miss, either way
    """

    what: str
    kind: str
    found: float
    within: float


class NamedLength(NamedTuple):
    """A length to cut that needs no pattern.

    name : str        what it is of
    length : float    the length (mm)
    """

    name: str
    length: float


class LinedDraft(NamedTuple):
    """The lining of a draft.

    draft : Draft     the pieces to cut, and their seams, walked as they will be once washed
    linings : dict    by the name of each piece its lining, a Lined, with what that is sewn along
    """

    draft: object
    linings: dict


def _choice(*words, default=None):
    """A field that is one of these words, the first if no other is the default."""
    return field(default=default or words[0], metadata={"words": words})


class _Measures:
    __slots__ = ()

    def __post_init__(self):
        """Choices are words there are, lists are numbers, a panel is one."""
        kind = f"draft.{type(self).__name__}"
        for one in fields(self):
            value = getattr(self, one.name)
            if "words" in one.metadata:
                word(value, one.metadata["words"], kind, one.name)
            elif one.type is tuple:
                object.__setattr__(self, one.name, tuple(_numbers.list_of(value, kind, one.name).tolist()))
            elif one.type is SkirtPanel and not isinstance(value, SkirtPanel):
                raise TypeError(f"{kind}: {one.name} must be a SkirtPanel, not {type(value).__name__}")

    def draft(self):
        """The pieces, the seams to walk, what was checked, and doubts.

        Returns
        -------
        Draft

        Raises
        ------
        ReclothError
            naming the measure, and what would do
        """
        return _core.draft(self)


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
    centre: str = _choice("fold", "seam")
    seam: float = 15.0
    hem: float = 40.0


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
    hang: str = _choice("free", "folded")
    hem: float = 20.0
    clearance: float = 20.0
    ease: float = 10.0


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
    make: str = _choice("folded", "faced")
    allowance: float = 10.0


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
    ends: str = _choice("neither", "first", "last", "both", default="both")
    curved: bool = False
    allowance: float = 10.0


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


@dataclass(frozen=True, slots=True)
class DartedSkirt(_Measures):
    """A skirt of a front and a back with darts at the waist, whose side seams match.

    What the panels are wider than the waist goes into darts, and what the darts leave into the side
    seam.

    Parameters
    ----------
    waist, hip : float               finished, of the whole skirt, ease included (mm), 1 to 1e4
    front_panel, back_panel : float  width there is for half the front, half the back at the waist (mm)
    hip_depth : float                waist to hip along the centres (mm), 10 to 1000
    length : float                   waist to hem along the centres (mm), at least 10 more, to 5000
    flare : float                    what each quarter is wider at the hem than at the hip (mm)
    forward : float                  what a front quarter is wider than a quarter (mm), 0 to 200
    front_darts, back_darts : int    in half the front, half the back, 0 to 8
    largest_intake : float           the most one dart may take in (mm), 0 to 500
    front_dart_length, back_dart_length : float    waist edge to point (mm), less than hip_depth
    side_rise : float                how much higher the waist is at the sides (mm), 0 to 100
    front_centre, back_centre : str  "fold" or "seam"
    seam, hem : float                allowances (mm), 0 to 1000
    """

    waist: float
    hip: float
    front_panel: float
    back_panel: float
    hip_depth: float = 200.0
    length: float = 600.0
    flare: float = 30.0
    forward: float = 10.0
    front_darts: int = 1
    back_darts: int = 2
    largest_intake: float = 30.0
    front_dart_length: float = 90.0
    back_dart_length: float = 120.0
    side_rise: float = 12.0
    front_centre: str = _choice("fold", "seam")
    back_centre: str = _choice("fold", "seam", default="seam")
    seam: float = 15.0
    hem: float = 40.0


@dataclass(frozen=True, slots=True)
class OffCentreFront(_Measures):
    """A skirt front whose button line lies to one side of the centre: a narrow and a wide front.

    Parameters
    ----------
    front : SkirtPanel    half of the front as it would be on a fold
    shift : float         button line from the centre front (mm), 0 to 5000
    extension : float     button stand, button line to opening edge (mm), 0 to 500
    wide_panel : float    cloth there is for the wide front, button line to side cut edge (mm)
    facing : float        what is turned in at the opening edges (mm), 0 to 1000
    """

    front: SkirtPanel
    shift: float
    extension: float
    wide_panel: float
    facing: float = 40.0


@dataclass(frozen=True, slots=True)
class WrapSkirt(_Measures):
    """A wrap skirt: a back, and two fronts that lie over each other by the whole overlap.

    Parameters
    ----------
    waist, hip : float             finished, round the body, ease included (mm), 1 to 1e4
    overlap : float                how far the fronts lie over each other (mm), at most waist
    hip_depth : float              waist to hip along the centres (mm), 10 to 1000
    length : float                 waist to hem along the centres (mm), at least 10 more, to 5000
    flare : float                  what each quarter is wider at the hem than at the hip (mm)
    front_darts, back_darts : int  in each front, in half the back, 0 to 8
    largest_intake : float         the most one dart may take in (mm), 0 to 500
    dart_length : float            waist edge to point (mm), less than hip_depth
    side_rise : float              how much higher the waist is at the sides (mm), 0 to 100
    back_centre : str              "fold" or "seam"
    facing : float                 what is turned in at the wrap edges (mm), 0 to 1000
    seam, hem : float              allowances (mm), 0 to 1000
    """

    waist: float
    hip: float
    overlap: float
    hip_depth: float = 200.0
    length: float = 600.0
    flare: float = 30.0
    front_darts: int = 1
    back_darts: int = 2
    largest_intake: float = 30.0
    dart_length: float = 100.0
    side_rise: float = 12.0
    back_centre: str = _choice("fold", "seam")
    facing: float = 40.0
    seam: float = 15.0
    hem: float = 40.0


@dataclass(frozen=True, slots=True)
class GoredSkirt(_Measures):
    """A skirt of equal gores: fitted to the hip and flared below it by its seams alone.

    Parameters
    ----------
    waist, hip : float            finished, of the whole skirt, ease included (mm), 1 to 1e4
    hem : float                   finished way round the hem (mm), 1 to 1e5
    length : float                waist to hem along the middle of a gore and along its seams (mm)
    hip_depth : float             waist to hip (mm), 10 to 1000
    count : int                   number of gores, 2 to 64
    seam, hem_allowance : float   allowances (mm), 0 to 1000
    """

    waist: float
    hip: float
    hem: float
    length: float = 600.0
    hip_depth: float = 200.0
    count: int = 6
    seam: float = 15.0
    hem_allowance: float = 20.0


@dataclass(frozen=True, slots=True)
class TieredSkirt(_Measures):
    """A skirt of tiers, each gathered onto the one above, the first onto a waist edge.

    Parameters
    ----------
    waist : float              edge that the first tier is gathered to (mm), 1 to 1e4
    ratios : list of float     each tier over the one above, from the top, 1 to 10
    depths : list of float     finished depth of each (mm), 1 to 5000, as many
    cloth_width : float        width of the cloth, or length of each strip there is (mm), 10 to 1e5
    seam, hem : float          allowances (mm), 0 to 1000
    """

    waist: float
    ratios: tuple
    depths: tuple
    cloth_width: float
    seam: float = 15.0
    hem: float = 20.0


@dataclass(frozen=True, slots=True)
class ShapedBand(_Measures):
    """A shaped waistband in one piece: part of a ring, its upper edge shorter than its lower one.

    Parameters
    ----------
    lower : float        finished lower edge round the body, ease included (mm), 1 to 1e4
    upper : float        finished upper edge (mm), less than lower
    depth : float        finished depth (mm), 1 to 1000
    overlap : float      what runs on past the opening along the lower edge (mm), 0 to 1e4
    allowance : float    seam allowance (mm), 0 to 1000
    """

    lower: float
    upper: float
    depth: float = 50.0
    overlap: float = 0.0
    allowance: float = 10.0


@dataclass(frozen=True, slots=True)
class EdgeBand(_Measures):
    """A folded band joined to a ring and sewn round an edge: a cuff, a neck band, ribbing.

    Parameters
    ----------
    edge : float         way round the edge that it is sewn to (mm), 1 to 1e4
    share : float        band over edge, 0.3 to 1: 1 of cloth that does not stretch
    depth : float        finished depth (mm), 1 to 1000
    allowance : float    seam allowance (mm), 0 to 100
    """

    edge: float
    share: float = 1.0
    depth: float = 30.0
    allowance: float = 10.0


@dataclass(frozen=True, slots=True)
class Binding(_Measures):
    """A bias binding for an edge, joined from strips that are all cut alike, their ends on the grain.

    Parameters
    ----------
    edge : float         length of the edge to be bound (mm), 1 to 1e5
    finished : float     width that shows on one side (mm), 0.5 to 500
    turn : float         turned in at each long edge, or a double binding's seam allowance (mm)
    strip : float        longest strip that the cloth gives on the bias (mm), 10 to 1e4
    thickness : float    thickness of what is bound (mm), 0 to 100
    fold : str           "single" or "double"
    corners : int        corners to be mitred, 0 to 1000
    corner : float       allowed for each of them (mm), 0 to 1000
    finish : float       allowed for joining or finishing the two ends (mm), 0 to 1e4
    allowance : float    seam allowance of the joins (mm), 0 to 100
    """

    edge: float
    finished: float
    turn: float
    strip: float
    thickness: float = 0.0
    fold: str = _choice("single", "double")
    corners: int = 0
    corner: float = 50.8
    finish: float = 203.2
    allowance: float = 6.0


@dataclass(frozen=True, slots=True)
class NeckTop(_Measures):
    """A top with a V or square neck, cut from a bodice there is: front, back and their facings.

    Parameters
    ----------
    front, back : Piece      halves on a fold at ``centre``, with edges ``neck`` and ``shoulder``,
                             centre at the left
    shape : str              "v" or "square"
    off_shoulder : float     taken off the shoulder, from the old neck (mm), 0 to 500
    depth : float            from the new neck's end straight down to its lowest place (mm)
    back_depth : float       the same behind (mm), 5 to 1000
    facing : float           depth of the front's facing (mm), 10 to 300
    stay_ratio : float       stay tape over the edge of a V, 0.9 to 1
    allowance : float        seam allowance of the neck (mm), 0 to 1000
    """

    front: object
    back: object
    shape: str = _choice("v", "square")
    off_shoulder: float = 0.0
    depth: float = 150.0
    back_depth: float = 40.0
    facing: float = 50.0
    stay_ratio: float = 0.97
    allowance: float = 8.0


@dataclass(frozen=True, slots=True)
class Sleeve(_Measures):
    """A plain sleeve drawn to an armhole; its ease lies above the notches.

    Parameters
    ----------
    front, back : Piece    halves of a bodice with edges ``armhole``, centre at the left
    width : float          at the underarm, ease included (mm), 50 to 2000
    length : float         underarm to hem, along the seam (mm), 10 to 2000
    hem_width : float      width at the hem (mm), 30 to 4000
    ease_pct : float       ease of the cap over the armhole (%), 0 to 15
    notch : float          part of each armhole below its notch, 0.1 to 0.6
    seam, hem : float      allowances (mm), 0 to 1000
    """

    front: object
    back: object
    width: float
    length: float
    hem_width: float
    ease_pct: float = 4.0
    notch: float = 1 / 3
    seam: float = 15.0
    hem: float = 30.0


@dataclass(frozen=True, slots=True)
class RecutSleeve(_Measures):
    """A sleeve there is, with its cap cut anew to an armhole.

    Parameters
    ----------
    sleeve : Piece           with edges ``cap front`` and ``cap back``, or ``cap``; front at the right
    front, back : Piece      halves of a bodice with edges ``armhole``, centre at the left
    ease_pct : float         ease of the cap over the armhole (%), 0 to 15
    notch : float            part of each armhole below its notch, 0.1 to 0.6
    largest_lift : float    how far the new crown may lie above the old one (mm), 0 to 1000
    """

    sleeve: object
    front: object
    back: object
    ease_pct: float = 4.0
    notch: float = 1 / 3
    largest_lift: float = 0.0


@dataclass(frozen=True, slots=True)
class PuffedSleeve(_Measures):
    """A puffed sleeve: a plain one slashed and spread, its cap raised and drawn anew.

    Parameters
    ----------
    sleeve : Piece     with edges ``cap front`` and ``cap back``, notched ``front`` and ``back``
    ratio : float      zone between the notches after spreading over before, 1 to 4
    slashes : int      number of slashes, 1 to 20
    lift : float       how much higher the crown is (mm), 0 to 300
    hem : str          "kept": hinged there, as long as it was; "gathered": spread as the cap is
    """

    sleeve: object
    ratio: float = 1.75
    slashes: int = 6
    lift: float = 20.0
    hem: str = _choice("kept", "gathered")


@dataclass(frozen=True, slots=True)
class Pinafore(_Measures):
    """A child's pinafore: a yoke that buttons at the back, a band where wanted, a gathered skirt.

    Its cautions are the usual ones for children's clothes; safety standards go before them.

    Parameters
    ----------
    chest, neck, head : float    girth of chest and head, finished way round the neck edge (mm)
    shoulder : float             neck edge to armhole edge (mm), 10 to 300
    armhole_depth : float        nape to the level of the underarm (mm), 20 to 500
    yoke_depth : float           nape to the lower edge of the yoke (mm)
    skirt_length : float         yoke or band to the hem (mm), 10 to 2000
    opening : float              how far the back opens from the neck (mm), at least yoke and band
    ease : float                 what the yoke is wider all round (mm), 0 to 500
    band_depth : float           finished depth of a band (mm), 0 or 5 to 300
    fullness : float             skirt before gathering over the edge it goes on, 1 to 10
    panels : int                 widths the skirt is joined from, 1 to 20
    stand : float                button stand, centre back to the opening edge (mm), 0 to 100
    seam, hem : float            allowances (mm), 0 to 1000
    """

    chest: float
    neck: float
    head: float
    shoulder: float
    armhole_depth: float
    yoke_depth: float
    skirt_length: float
    opening: float
    ease: float = 80.0
    band_depth: float = 0.0
    fullness: float = 1.8
    panels: int = 2
    stand: float = 15.0
    seam: float = 10.0
    hem: float = 30.0
