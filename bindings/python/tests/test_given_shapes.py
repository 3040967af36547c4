"""Whatever is given to a class or function of shapes is taken for what it is, or refused in words.

Every argument of each of them, one at a time. All measures are invented.
"""

import dataclasses
import inspect
import math

import numpy as np
import pytest
import recloth
from recloth import draft

SQUARE = [(0, 0), (200, 0), (200, 300), (0, 300)]
PIECE = recloth.Piece.polygon("strip", SQUARE, 10)
CLOTH = recloth.Panel("back", [(0, 0), (600, 0), (600, 500), (0, 500)])
PART = PIECE.part()
SKIRT = draft.SkirtPanel("front", 242, 190, 250, 200, 600, 290)
BODICE = recloth.Piece("bodice", [
    ("waist", (0, 0), (225, 0), 15), ("side", (225, 0), (245, 200), 15),
    recloth.Edge("armhole", (245, 200), (172, 392), 12, steer=((190, 200), (150, 290))),
    ("shoulder", (172, 392), (74, 420), 15), ("neck", (74, 420), (0, 345), 8),
    recloth.Edge("centre", (0, 345), (0, 0), role="fold"),
])
SLEEVE = draft.Sleeve(BODICE, BODICE, 340, 430, 250)
DRAFTED = draft.DartedSkirt(720, 980, 250, 235).draft()
DRAFTS = {type(made): made for made in [
    draft.DartedSkirt(720, 980, 250, 235), draft.OffCentreFront(SKIRT, 60, 18, 300), draft.WrapSkirt(720, 980, 300),
    draft.GoredSkirt(720, 1020, 1980), draft.TieredSkirt(800, [1.5, 1.5], [300, 350], 1400),
    draft.ShapedBand(760, 720), draft.EdgeBand(440), draft.Binding(1200, 8, 8, 700),
    draft.NeckTop(BODICE, BODICE, back_depth=90), SLEEVE, draft.RecutSleeve(SLEEVE.draft().pieces[0], BODICE, BODICE),
    draft.PuffedSleeve(SLEEVE.draft().pieces[0], 1.5, 3), draft.Pinafore(580, 360, 520, 70, 140, 170, 330, 200),
]}


def fields(made):
    return {field.name: getattr(made, field.name) for field in dataclasses.fields(made)}


HUGE = 10**400
TOP = [(0, 0), (200, 0), (200, 200), (110, 200), (90, 200), (0, 200)]
NAMES = ["hem", "side", "top side", "mouth", "top centre", "centre"]
SIX = recloth.Piece.polygon("back", [(0, 0), (202, 0), (184, 300), (0, 300), (-180, 300), (-200, 0)], 10)
DART = recloth.DartMark("waist", (100, 100), ((110, 200), (90, 200)))
SQUARE_TOP = recloth.Piece.polygon("top", TOP, 10, NAMES, marks=[DART])

# A good call of everything that is exported and no function of numbers; each argument is spoilt in turn.
CALLS = {
    recloth.Notch: {"name": "middle", "distance": 5.0, "marks": 1, "form": "wedge", "depth": 4},
    recloth.Edge: {
        "name": "hem", "start": (0, 0), "end": (9, 0), "allowance": 10, "role": "seam", "bulge": 0.1,
        "steer": ((1, 2), (8, 2)), "drawn": "seam", "corner": "pointed", "limit": 4, "notches": [("middle", 5)],
    },
    recloth.DartMark: {"name": "dart", "point": (9, 9), "legs": ((0, 0), (9, 0))},
    recloth.DrillMark: {"name": "button", "at": (9, 9)},
    recloth.LineMark: {"name": "fold", "start": (0, 0), "end": (9, 0), "bulge": 0.1, "steer": None, "kind": "fold"},
    recloth.CutoutMark: {"name": "eyelet", "edges": [("a", (60, 50), (50, 50), 1, "seam", 1), ("b", (50, 50), (60, 50), 1, "seam", 1)]},
    recloth.ButtonholeMark: {"name": "hole", "ends": ((9, 9), (20, 9))},
    recloth.Flaw: {"outline": [(9, 9)], "margin": 5, "what": "burn", "under": ["facing"]},
    recloth.CornerReading: {"start": 0, "end": 1, "from_start": 300, "from_end": 350, "right": False},
    recloth.Spare: {"start": 0, "end": 2, "reading": 360, "misfit": None},
    recloth.Panel: {
        "name": "back", "outline": SQUARE, "holes": [], "flaws": [], "grain_deg": 90, "faces": "one", "nap": False,
        "repeat": (80, 60, (1, 2)),
    },
    recloth.Panel.by_triangles: {"name": "back", "base": 300, "corners": [(0, 1, 500, 400)]},
    recloth.Panel.by_offsets: {"name": "sleeve", "stations": [0, 400], "left": [120, 200], "right": [130, 180]},
    recloth.Panel.from_photo: {"name": "yoke", "picture": SQUARE, "truth": SQUARE, "outline": SQUARE},
    recloth.Panel.from_svg_path: {
        "name": "pocket", "path": "M0 0H40V52H0z", "mm_per_unit": 10, "margin": 5, "accuracy": 0.1,
    },
    recloth.Panel.from_json: {"text": CLOTH.to_json()},
    CLOTH.replace: {
        "name": "back", "holes": [], "flaws": [], "grain_deg": 90, "grain": (0, 3), "faces": "two", "nap": True,
        "repeat": {"along": 80}, "spares": [(0, 2, 781)],
    },
    CLOTH.usable: {"losses": 5, "accuracy": 0.1},
    CLOTH.tallest_rectangle: {"width": 50},
    recloth.Part: {
        "name": "strip", "outline": SQUARE, "grain_deg": 90, "tilt_deg": 0, "as_drawn": 1, "mirrored": 0,
        "shows": "right", "either_way": False, "crosswise": False, "role": "facing", "seam": SQUARE,
        "fold": [(100, 0), (100, 9)], "matches": [("hip", (9, 9), "both")],
    },
    recloth.Part.on_fold: {"name": "front", "half": SQUARE, "start": (0, 0), "end": (0, 9)},
    recloth.Fold: {"panel": 0, "start": (100, 0), "end": (100, 9)},
    recloth.Repeat: {"along": 80, "across": 60, "start": (1, 2)},
    recloth.MatchPoint: {"name": "hip", "at": (9, 9), "side": "own"},
    recloth.Change: {"part": 0, "give": "shorter", "toward_deg": 90, "beyond": 50, "most": 20},
    recloth.Strip: {"width": 900, "faces": "one", "nap": False, "folded": True, "repeat": (80, 60)},
    recloth.Placement: {
        "part": 0, "panel": 0, "turn_deg": 0, "shift": (20, 30), "mirrored": False, "hand": "as_drawn",
    },
    recloth.Place: {"edge": "edge 1", "distance": 5},
    recloth.Opening: {"name": "new dart", "at": (0, 5), "share": 0.5},
    recloth.Slash: {"open": (0, 5), "hinge": ("edge 3", 5), "open_by": 10, "hinge_by": 5},
    recloth.PairedNotch: {"name": "middle", "distance": 5, "ease": 1, "marks": 2},
    recloth.SeamEnd: {
        "piece": 0, "edge": "edge 2", "other": 0, "other_edge": 3, "way": "against", "end": "start",
    },
    recloth.DartMouth: {"piece": 1, "dart": "waist", "onto": "start"},
    recloth.Unplaced: {"part": 0, "hand": "as_drawn", "count": 1},
    recloth.Piece: {
        "name": "strip", "edges": PIECE.edges, "marks": [recloth.DrillMark("button", (9, 9))],
        "grain": ((9, 9), (9, 90)), "count": 2, "hand": "mirrored", "cloth": "linen", "interfacing": None,
    },
    recloth.Piece.polygon: {"name": "strip", "points": SQUARE, "allowance": 10, "names": ["a", "b", "c", "d"]},
    recloth.Piece.from_json: {"text": PIECE.to_json()},
    PIECE.edge: {"name": "edge 1"},
    PIECE.cut_line: {"tolerance": 0.1},
    PIECE.seam_line: {"tolerance": 0.1},
    PIECE.at: {"edge": "edge 1", "distance": 5},
    PIECE.shifted: {"x": 1, "y": 2},
    PIECE.turned: {"angle_deg": 5},
    PIECE.handed: {"tolerance": 0.1},
    PIECE.walk: {"edges": [0, "edge 2"], "other": PIECE, "other_edges": 1, "way": "against"},
    PIECE.place: {"point": (9, 9)},
    SQUARE_TOP.turn_dart: {"dart": "waist", "openings": [("side dart", ("side", 100), 0.5)]},
    SQUARE_TOP.close_dart: {"dart": "waist", "at": ("hem", 100)},
    SQUARE_TOP.cap_dart: {"dart": "waist", "onto": "top side"},
    PIECE.open_dart: {
        "name": "new", "point": (100, 150), "at": ("edge 3", 100), "intake": 20, "opposite": ("edge 1", 100),
    },
    PIECE.split: {
        "start": (-9, 100), "end": (209, 100), "name": "cut", "allowance": 8, "notches": [50], "bulge": 0.1, "steer": None,
    },
    PIECE.slash_and_spread: {"slashes": [(("edge 1", 50), ("edge 3", 150), 20, 5)]},
    PIECE.join: {"edge": "edge 1", "other": PIECE, "other_edge": 2, "tolerance": 0.5},
    PIECE.scale_for_change: {"along_pct": -5, "across_pct": 2},
    SIX.symmetrise: {"start": (0, 0), "end": (0, 300), "tolerance": 5},
    PIECE.shift_edges: {"edges": ["edge 1", 1], "by": 5},
    PIECE.extend: {"start": (-5, 100), "end": (205, 100), "by": 20},
    PIECE.facing: {"edges": "edge 3", "depth": 50, "name": "facing", "roll": 1, "inner_allowance": 6},
    PIECE.match_notches: {"other": SQUARE_TOP},
    PIECE.pair_notches: {
        "edges": "edge 1", "other": PIECE, "other_edges": [0], "notches": [("middle", 5, 1, 2)], "way": "against",
    },
    PIECE.trace: {"start": ("edge 1", 50), "end": recloth.Place("edge 2", 50)},
    PIECE.copy_edge: {
        "start": ("edge 1", 50), "end": ("edge 1", 150), "copied": [("e", (0, 0), (100, 0), 5)], "gap": 1, "stretch_pct": 3,
    },
    recloth.measured_edge: {"name": "armhole", "points": [(0, 0), (50, 10), (90, 60)], "smooth": True},
    recloth.opened_edge: {
        "dart": recloth.DartMark("waist", (90, 70), ((102.5, 190), (77.5, 190))), "edges": [("e", (235, 0), (175, 190), 5)],
        "share": 1,
    },
    draft.PatchPocket(120, 140).draft().lining: {
        "pieces": ["patch pocket"], "cloth": "lining", "facings": {"top": 20}, "ease": [("left", 3), ("right", 3)],
        "pleats": {}, "hem": "level", "depth": 40, "clearance": 20, "hem_allowance": 30, "darts": "tucks",
        "allowance": 10, "shell_change_pct": (-3, 0), "lining_change_pct": (-1, 0),
    },
    PIECE.lining: {
        "name": "lining", "cloth": "lining", "facings": {"edge 3": 40}, "ease": [("edge 2", 3)], "pleats": {3: 20},
        "hem": "level", "depth": 40, "clearance": 20, "hem_allowance": 30, "darts": "tucks", "allowance": 10,
        "shell_change_pct": (-3, 0), "lining_change_pct": (-1, 0),
    },
    recloth.true_up: {
        "pieces": [SQUARE_TOP], "meetings": [recloth.DartMouth(0, "waist")], "limit": 5,
    },
    PIECE.part: {"tilt_deg": 2, "shows": "right", "either_way": False, "crosswise": False, "tolerance": 0.1},
    PIECE.svg: {"scale": 1, "edges": True},
    PIECE.cut_line().points: {"tolerance": 0.1},
    PIECE.cut_line().contains: {"point": (9, 9)},
    PIECE.cut_line().distance: {"point": (9, 9)},
    recloth.usable_panel: {"outline": SQUARE, "losses": 5, "flaws": [[(9, 9)]], "margin": 2, "accuracy": 0.1},
    recloth.largest_rectangle: {"outline": SQUARE, "holes": [[(90, 90), (99, 90), (90, 99)]], "grain_deg": 90},
    recloth.tallest_rectangle: {"outline": SQUARE, "width": 50, "holes": [], "grain_deg": 90},
    recloth.UsablePanel.from_json: {"text": recloth.usable_panel(SQUARE, 5).to_json()},
    recloth.UsablePart.from_json: {"text": recloth.usable_panel(SQUARE, 5).parts[0].to_json()},
    recloth.PanelRectangle.from_json: {"text": recloth.largest_rectangle(SQUARE).to_json()},
    recloth.fit: {
        "parts": [PART], "panels": [CLOTH], "spacing": 2, "seed": 1, "budget": 1000, "seconds": 5, "threads": 1,
        "progress": None,
    },
    recloth.least_change: {
        "parts": [PART], "panels": [CLOTH], "changes": [(0, "tilt", 5)], "spacing": 2, "seed": 1, "budget": 1000,
        "seconds": 5, "threads": 1, "progress": None,
    },
    recloth.largest: {
        "values": (10, 20, 5), "parts_at": lambda value: [PART], "panels": [CLOTH], "spacing": 2, "seed": 1,
        "budget": 1000, "seconds": 5, "threads": 1, "progress": None,
    },
    recloth.longest: {
        "parts": [PART], "panels": [CLOTH], "part": 0, "beyond": 50, "most": 20, "opposite": False, "spacing": 2,
        "seed": 1, "budget": 1000, "seconds": 5, "threads": 1, "progress": None,
    },
    recloth.fullest: {
        "parts": [PART], "panels": [CLOTH], "part": 0, "beyond": 50, "most": 20, "opposite": False, "spacing": 2,
        "seed": 1, "budget": 1000, "seconds": 5, "threads": 1, "progress": None,
    },
    recloth.leftovers: {
        "parts": [PART], "panels": [CLOTH], "placements": [(0, 0, 0, (30, 30))], "folds": [(0, (200, 0), (200, 9))],
        "rectangles": 2, "least": 5,
    },
    recloth.strip: {
        "parts": [PART], "strip": (320, "two"), "spacing": 2, "seed": 1, "budget": 1000, "seconds": 5, "threads": 1,
        "progress": None,
    },
    recloth.check: {
        "parts": [PART], "panels": [CLOTH], "placements": [(0, 0, 0, (30, 30))], "unplaced": [],
        "folds": [(0, (200, 0), (200, 9))], "spacing": 2,
    },
    recloth.placed: {"outline": SQUARE, "placement": recloth.Placement(0, 0)},
    recloth.Fit.from_json: {"text": recloth.fit([PART], [CLOTH], budget=1000).to_json()},
    recloth.StripLay.from_json: {"text": recloth.strip([PART], (320,), budget=1000).to_json()},
    recloth.plan: {"brief": "title = 'x'", "name": "x.toml"},
    recloth.doubt_text: {"bit": 1},
    recloth.caution_text: {"bit": 1},
    recloth.doubts: {"bits": 1},
    recloth.cautions: {"bits": 1},
    recloth.reasons: {"function": recloth.circle_skirt, "waist": [710], "length": 600},
    draft.SkirtPanel: fields(SKIRT),
    draft.PanelLining: {"shell": SKIRT, "hang": "free", "hem": 20, "clearance": 20, "ease": 10},
    draft.CircleSector: {"waist": 710, "length": 600, "fraction": 1, "pieces": 2, "seam": 15, "hem": 10},
    draft.StraightBand: {"waist": 700, "overlap": 30, "depth": 30, "turn": 0, "make": "folded", "allowance": 10},
    draft.SectionedBand: {
        "lengths": [200, 300], "depth": 40, "top": 480, "ends": "both", "curved": False, "allowance": 10,
    },
    draft.GatheredStrip: {"finished": 800, "ratio": 1.5, "depth": 60, "strips": 2, "seam": 10, "hem": 20},
    **{kind: fields(made) for kind, made in DRAFTS.items()},
    draft.Draft.from_json: {"text": draft.PatchPocket(120, 140).draft().to_json()},
    DRAFTED.piece: {"name": "skirt front"},
    draft.PatchPocket: {"width": 120, "depth": 140, "corner_radius": 10, "seam": 10, "hem": 30},
}

ODD = [
    None, "", "71 cm", "\ud800", "x" * 5000, b"71", True, 5, -1, 0, 2**31, 2**32, 2**63, 2**64, -(2**63), HUGE, -HUGE,
    0.5, -0.5, 1e300, math.nan, math.inf, -math.inf, 1j, np.float32(2), np.int8(-3), np.float64("nan"), np.True_,
    np.str_("hem"), [], (), {}, set(), [None], [HUGE], [[]], [[1.0], [1.0, 2.0]], [(1, 2), (3, math.nan)],
    [(HUGE, 0), (1, 2), (3, 4)], ((1, 2), (3, 4)), ((1, 2), ("3", "4")), (1, 2), (None, None), ("1", "2"),
    ((math.inf, 0), (0, math.nan)), np.array([]), np.zeros((2, 2, 2)), np.ones((3, 2), np.int8)[::2], np.array(["a"]),
    np.array([None, 1]), np.array([True]), np.ma.array([[1.0, 2.0]] * 3, mask=True), iter([]), iter([1, 2]),
    object(), lambda: 0, int, recloth, PIECE, CLOTH, PART, recloth.Edge("e", (0, 0), (1, 0)), [PIECE], [CLOTH], [PART],
    {"name": 5}, {"nonsense": 5}, [{"nonsense": 5}], [()], [(1,) * 40],
]


def used(thing):
    """What is made must be usable: shown, and drafted, laid or made into a piece."""
    assert len(repr(thing)) < 10_000
    if isinstance(thing, draft._Measures):
        thing.draft()
    elif isinstance(thing, recloth.Edge):
        assert not thing.length < 0
        back = recloth.Edge("back", thing.end, thing.start, bulge=1)
        recloth.Piece("odd", [thing, back]).cut_line()
    elif isinstance(thing, recloth.Notch):
        recloth.Piece("odd", [dataclasses.replace(PIECE.edges[0], notches=[thing]), *PIECE.edges[1:]])
    elif isinstance(thing, (recloth.DartMark, recloth.DrillMark, recloth.LineMark, recloth.ButtonholeMark, recloth.CutoutMark)):
        recloth.Piece("odd", PIECE.edges, marks=[thing])
    elif isinstance(thing, recloth.Part):
        recloth.fit([thing], [CLOTH], budget=100)
    elif isinstance(thing, recloth.Strip):
        recloth.strip([PART], thing, budget=100)
    elif isinstance(thing, recloth.Panel):
        assert thing._repr_svg_() is None or thing._repr_svg_().startswith("<svg")
        recloth.fit([PART], [thing], budget=100)
    elif isinstance(thing, recloth.Repeat):
        recloth.fit([PART], [CLOTH.replace(repeat=thing)], budget=100)
    elif isinstance(thing, recloth.MatchPoint):
        recloth.fit([dataclasses.replace(PART, matches=[thing])], [CLOTH], budget=100)
    elif isinstance(thing, recloth.Flaw):
        recloth.fit([PART], [CLOTH.replace(flaws=[thing])], budget=100)
    elif isinstance(thing, recloth.CornerReading):
        recloth.Panel.by_triangles("back", 300, [thing])
    elif isinstance(thing, recloth.Spare):
        CLOTH.replace(spares=[thing])
    elif isinstance(thing, recloth.Placement):
        recloth.placed(SQUARE, thing)
        recloth.check([PART], [CLOTH], [thing])
    elif isinstance(thing, recloth.Place):
        PIECE.at(thing.edge, thing.distance)
    elif isinstance(thing, recloth.Opening):
        used(thing.at)
        used(recloth.DrillMark(thing.name, (9, 9)))
    elif isinstance(thing, recloth.Slash):
        used(thing.open)
        used(thing.hinge)
    elif isinstance(thing, recloth.PairedNotch):
        PIECE.pair_notches("edge 1", PIECE, "edge 1", [thing])
    elif isinstance(thing, (recloth.SeamEnd, recloth.DartMouth)):
        recloth.true_up([PIECE, SQUARE_TOP], [thing], 1000)
    elif isinstance(thing, recloth.Change):
        recloth.least_change([PART], [CLOTH], [thing], budget=1000)
    elif isinstance(thing, recloth.Fold):
        recloth.check([PART], [CLOTH], [], folds=[thing])
    elif isinstance(thing, recloth.Unplaced):
        recloth.check([PART], [CLOTH], [], [thing])
    elif isinstance(thing, recloth.Piece):
        thing.cut_line().points()
        thing._repr_svg_()


# A number too large is no bit; reasons gives the refusal as its answer; the bulge of a steered edge is not used; what is
# asked of a slash or an opening is judged by the piece it is made in.
NO_BOUNDS = (
    recloth.doubt_text, recloth.caution_text, recloth.reasons, recloth.Edge, recloth.Opening, recloth.Slash,
)

# What may be left out by None: holes have no margin, an old grain stays, nothing is lost, a notch has its usual depth.
LEFT_OUT = [
    (recloth.Panel.from_svg_path, "margin"), (CLOTH.replace, "grain_deg"), (CLOTH.usable, "losses"),
    (recloth.Notch, "depth"), (recloth.strip, "seconds"),
    *((search, "seconds") for search in (
        recloth.fit, recloth.least_change, recloth.largest, recloth.longest, recloth.fullest,
    )),
]

PLACES = [(call, name) for call, given in CALLS.items() for name in given]


@pytest.mark.parametrize(
    ("call", "name"), PLACES, ids=[f"{getattr(call, '__qualname__', call)}-{name}" for call, name in PLACES]
)
def test_an_odd_argument_is_taken_or_refused_in_words(call, name):
    if call is not recloth.plan:
        used(call(**CALLS[call]))
    refused = 0
    for value in ODD:
        try:
            used(call(**{**CALLS[call], name: value}))
        except (recloth.ReclothError, TypeError, UnicodeEncodeError) as error:
            # A brief's name is said in full.
            assert 10 < len(str(error)) < 700 or call is recloth.plan, str(error)
            refused += 1
    # Whatever an argument is, not all of these are it.
    assert refused


@pytest.mark.parametrize(
    ("call", "name"),
    [
        (call, name) for call, name in PLACES
        if isinstance(CALLS[call][name], (int, float)) and not isinstance(CALLS[call][name], bool)
    ],
    ids=lambda value: getattr(value, "__qualname__", value),
)
def test_a_number_that_is_none_is_refused_by_name(call, name):
    for value in (HUGE, -HUGE, math.nan):
        if call in NO_BOUNDS:
            continue
        with pytest.raises((recloth.ReclothError, TypeError)) as caught:
            used(call(**{**CALLS[call], name: value}))
        assert name in str(caught.value), (value, str(caught.value))
        if value in (HUGE, -HUGE):
            assert isinstance(caught.value, recloth.ReclothError), (value, str(caught.value))
    for value in ("71", True, None):
        edges = name in ("edge", "other_edge", "edges", "other_edges", "onto")
        if edges or (value is None and (name == "tolerance" or (call, name) in LEFT_OUT)):
            continue  # An edge has a name; a tolerance left out is that of the line.
        with pytest.raises(TypeError):
            used(call(**{**CALLS[call], name: value}))


def test_nothing_exported_is_left_out():
    owners = [getattr(call, "__self__", None) for call in CALLS]
    listed = [*CALLS, *[owner if isinstance(owner, type) else type(owner) for owner in owners]]
    functions = {getattr(recloth, name) for name in recloth._functions.__all__}
    made = {recloth.Copied, recloth.Lined, recloth.LiningSeam, recloth.NotchMatch, recloth.TruedEdge, recloth.TruedUp, recloth.Joined, recloth.Symmetry, recloth.WalkSection, recloth.Answer, recloth.CutSegment, recloth.CutNotch, recloth.Walk, recloth.WalkNotch, recloth.Plan,
            recloth.BriefError, recloth.ReclothError, draft.Draft, draft.Seam, draft.Check, draft.NamedLength,
            draft.LinedDraft, recloth.CutLine,
            recloth.Made, recloth.LeastChange, recloth.Largest, recloth.Leftover,
            recloth.Fit, recloth.StripLay, recloth.UsablePanel, recloth.UsablePart, recloth.PanelRectangle}
    for module in (recloth, draft):
        for name in module.__all__:
            thing = getattr(module, name)
            if callable(thing) and thing not in functions | made:
                assert thing in listed, name


def test_a_panel_is_drawn():
    panel = recloth.Panel("back", SQUARE, flaws=[([(50, 50), (80, 90)], 5)], holes=[[(90, 90), (99, 90), (90, 99)]])
    drawing = panel._repr_svg_()
    assert drawing.startswith("<svg") and "back" in drawing
    for side in ("width", "height"):
        assert 0 < float(drawing.partition(f'{side}="')[2].partition("mm")[0]) < 250


def test_signatures_can_be_read():
    for call in CALLS:
        assert inspect.signature(call).parameters, call
