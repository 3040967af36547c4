"""Operations on pieces through Python. Numbers are worked by hand beside the checks; shapely judges areas.

All measures are invented.
"""

import math
import pickle

import pytest
import recloth
from recloth import Opening, Piece, Place, ReclothError, Slash, draft
from shapely.geometry import Polygon

NAMES = ["hem", "side", "top side", "mouth", "top centre", "centre"]
CORNERS = [(0, 0), (200, 0), (200, 200), (110, 200), (90, 200), (0, 200)]


@pytest.fixture
def square():
    """200 by 200 with a dart 20 wide and 100 deep in the middle of its top."""
    edges = [(NAMES[i], CORNERS[i], CORNERS[(i + 1) % 6], 10) for i in range(6)]
    return Piece("square", edges, marks=[recloth.DartMark("waist", (100, 100), ((110, 200), (90, 200)))])


@pytest.fixture
def skirt():
    return Piece.polygon("skirt", [(0, 0), (300, 0), (300, 600), (0, 600)], 10, ["hem", "side", "waist", "centre"])


def length(piece, name):
    parts = [e for e in piece.edges if e.name == name or e.name.rsplit(" ", 1)[0] == name]
    return sum(math.dist(e.start, e.end) for e in parts)


def dart(piece, name):
    (found,) = [mark for mark in piece.marks if mark.name == name]
    return found


def test_a_place_is_found_and_given_in_several_ways(square):
    place = square.place((230, 100))
    assert (place.edge, place.distance, place.off) == (1, 100, 30)
    ways = [place, ("side", 100), (1, 100.0), {"edge": "side", "distance": 100}, Place("side", 100)]
    turned = [square.turn_dart("waist", [("side dart", at)]) for at in ways]
    assert all(one == turned[0] for one in turned)
    assert square.turn_dart("waist", [Opening("side dart", Place(1, 100))]) == turned[0]


def test_a_dart_turned_keeps_its_angle(square):
    # The half angle is atan(10 / 100); over a leg of 100 the dart is 200 sin of it wide.
    turned = square.turn_dart("waist", [("side dart", ("side", 100), 1)])
    first, second = dart(turned, "side dart").legs
    assert math.dist(first, second) == pytest.approx(200 * math.sin(math.atan(0.1)), abs=1e-9)
    assert length(turned, "side") == pytest.approx(200, abs=1e-9)
    halved = square.turn_dart("waist", [("side dart", ("side", 100), 0.5)])
    assert {mark.name for mark in halved.marks} == {"waist", "side dart"}


def test_a_dart_is_closed_opened_and_capped(square, skirt):
    flared = square.close_dart("waist", ("hem", 100))
    assert flared.marks == ()
    assert length(flared, "hem") == pytest.approx(200 + 200 * math.sin(math.atan(0.1)), abs=1e-9)
    # Over a leg of 300 the half angle is asin(15 / 300); as much is trimmed at the hem, 300 below.
    opened = skirt.open_dart("new", (150, 300), ("waist", 150), 30, ("hem", 150))
    assert length(opened, "hem") == pytest.approx(300 - 600 * math.tan(math.asin(0.05)), abs=1e-6)
    capped = square.cap_dart("waist", "top centre")
    cap = [edge for edge in capped.edges if edge.name.startswith("cap waist")]
    # The edge is level, so the cap's peak folds onto it: 100 / cos 2a up, a being the half angle.
    assert cap[0].end[1] == pytest.approx(100 + 100 / math.cos(2 * math.atan(0.1)), abs=1e-9)


def test_a_piece_split_and_joined_is_itself(skirt):
    left, right = skirt.split((-20, 400), (320, 420), name="yoke", allowance=12, notches=[50, 200])
    assert left.area + right.area == pytest.approx(180_000, abs=1e-6)
    walk = left.walk("yoke", right, "yoke")
    assert walk.difference == pytest.approx(0, abs=1e-6)
    assert [section.to for section in walk.sections] == ["yoke 1", "yoke 2", None]
    # The side runs straight on over the seam.
    assert walk.start_kink_deg == pytest.approx(0, abs=1e-9)
    joined = left.join("yoke", right.turned(30).shifted(5, 5), "yoke")
    assert joined.gap < 1e-6
    assert joined.piece.area == pytest.approx(180_000, abs=1e-6)
    curved = skirt.split((-1, 300), (301, 300), bulge=0.1)
    assert sum(part.area for part in curved) == pytest.approx(180_000, abs=1e-6)


def test_slashes_spread(skirt):
    # Hinged at the waist: a triangle of 600 by 600 with 60 across.
    flared = skirt.slash_and_spread([Slash(("hem", 150), ("waist", 150), 60)])
    half = math.asin(60 / 1200)
    assert flared.area == pytest.approx(180_000 + 600**2 * math.sin(2 * half) / 2, abs=1e-6)
    wide = skirt.slash_and_spread([(("hem", x), ("waist", 300 - x), 20, 20) for x in (100, 200)])
    assert wide.bounds == pytest.approx((0, 0, 340, 600), abs=1e-9)
    assert Polygon(wide.cut_line(0.01).points(0.01)).area == pytest.approx(360 * 620, abs=0.1)


def test_scaled_symmetrised_shifted_and_faced(skirt):
    cut = skirt.scale_for_change(-4, 0)
    assert cut.bounds == pytest.approx((0, 0, 300, 625), abs=1e-9)
    back = Piece.polygon("back", [(0, 0), (202, 0), (184, 300), (0, 300), (-180, 300), (-200, 0)], 10)
    halves = back.symmetrise((0, 0), (0, 300), 5)
    assert halves.largest == pytest.approx(4)
    assert halves.half.bounds[0] == pytest.approx(-201)
    with pytest.raises(ReclothError, match=r"edge \"edge 4\": difference.* = 4"):
        back.symmetrise((0, 0), (0, 300), 3)
    longer = skirt.shift_edges("hem", 80)
    assert longer.area == pytest.approx(300 * 680)
    facing = skirt.facing("waist", 50, inner_allowance=6)
    assert (facing.name, facing.area) == ("skirt facing", pytest.approx(300 * 50))
    rolled = skirt.facing("waist", 50, name="f", roll=2)
    assert rolled.area == pytest.approx(300 * 48)
    assert pickle.loads(pickle.dumps(rolled)) == rolled


def test_a_piece_is_lengthened_at_a_line(skirt):
    longer = skirt.extend((-10, 200), (310, 200), 50)
    assert longer.bounds == pytest.approx((0, -50, 300, 600))
    assert longer.area == pytest.approx(300 * 650)
    assert skirt.extend((-10, 200), (310, 200), -80).area == pytest.approx(300 * 520)
    assert skirt.extend((310, 200), (-10, 200), 50).bounds == pytest.approx((0, 0, 300, 650))


def test_notches_are_paired(skirt):
    # The side of 600 eased by 12 onto one of 588, all of it between 200 and 400.
    short = Piece.polygon("short", [(0, 0), (300, 0), (300, 588), (0, 588)], 10, ["hem", "side", "waist", "centre"])
    notches = [("hip", 200), recloth.PairedNotch("knee", 400, 12, 2)]
    one, other = skirt.pair_notches("side", short, "side", notches, way="along")
    walk = one.walk("side", other, "side", way="along")
    assert [(section.to, section.difference) for section in walk.sections] == [("hip", 0), ("knee", 12), (None, 0)]
    assert walk.sections[1].ease_pct == pytest.approx(6)
    found = one.match_notches(other)
    assert [(notch.name, notch.here.edge, notch.here.distance, notch.there.distance) for notch in found] == [
        ("hip", 1, 200, 200), ("knee", 1, 412, 400),
    ]
    assert all(notch.matches for notch in found)
    (lone, *_) = skirt.match_notches(other)
    assert (lone.here, lone.marks, lone.other_marks, lone.matches) == (None, 0, 1, False)


def test_edges_are_trued_up(square):
    # A gore 300 wide below and 180 above: its sides lean by atan(60 / 600), so hems meet in a peak of twice that.
    gore = Piece.polygon("gore", [(-150, 0), (150, 0), (90, 600), (-90, 600)], 10, ["hem", "right", "waist", "left"])
    ends = [recloth.SeamEnd(0, "right", 0, "left"), recloth.SeamEnd(0, "right", 0, "left", end="end")]
    trued = recloth.true_up([gore], ends, 10)
    lean = math.atan(0.1)
    assert trued.kinks_deg == pytest.approx((2 * math.degrees(lean), -2 * math.degrees(lean)))
    # An arc over a chord of 300, turned by the lean at both ends, sags by 150 tan(lean / 2).
    assert trued.largest == pytest.approx(150 * math.tan(lean / 2), abs=1e-3)
    walk = trued.pieces[0].walk("right", trued.pieces[0], "left")
    assert (walk.start_kink_deg, walk.end_kink_deg) == pytest.approx((0, 0), abs=1e-9)
    assert [(edge.piece, edge.edge) for edge in trued.edges] == [(0, 0), (0, 2)]
    with pytest.raises(ReclothError, match="moved"):
        recloth.true_up([gore], ends, 5)
    capped = recloth.true_up([square], [recloth.DartMouth(0, "waist", "end")], 3).pieces[0]
    assert sum(edge.name.startswith("cap waist") for edge in capped.edges) == 2


def half_back(waist):
    """Half a back: so wide at the waist, 235 at the hip 190 below."""
    return Piece.polygon("back", [(0, 0), (235, 0), (waist, 190), (0, 190)], 10, ["hip", "side", "waist", "centre"])


def test_an_edge_is_copied_between_landmarks():
    fits, new = half_back(175), half_back(200)
    side = fits.trace(("side", 0), ("waist", 0))
    assert [edge.name for edge in side] == ["side"]
    # sqrt(60^2 + 190^2) = 199.249 onto sqrt(35^2 + 190^2) = 193.197, for the dart of 25 is open.
    places = ("side", 0), ("waist", 0)
    with pytest.raises(ReclothError, match="misfit"):
        new.copy_edge(*places, side)
    with pytest.raises(ReclothError, match="stretch"):
        new.copy_edge(*places, side, stretch_pct=3)
    copied = new.copy_edge(*places, side, stretch_pct=4)
    assert copied.stretch_pct == pytest.approx(100 * (193.197 / 199.249 - 1), abs=1e-3)
    assert "3 %" in recloth.doubts(copied.doubts)[0]
    assert copied.piece.area == pytest.approx(new.area)
    moved = new.copy_edge(*places, side, gap=7)
    assert (moved.gap, moved.doubts) == (pytest.approx(193.197 - 199.249, abs=1e-3), 0)
    # The arms of both triangles differ by their angles off the upright.
    assert moved.turn_deg == pytest.approx(math.degrees(math.atan(35 / 190) - math.atan(60 / 190)))
    same = fits.copy_edge(*places, fits.turned(40).shifted(9, 9).trace(*places))
    assert same.piece.area == pytest.approx(fits.area)


def test_points_measured_along_an_edge_are_copied():
    # A quarter of a circle of radius 100, at 7 points.
    points = [(100 * math.cos(i * math.pi / 12), 100 * math.sin(i * math.pi / 12)) for i in range(7)]
    armhole = recloth.measured_edge("armhole", points)
    assert [edge.name for edge in armhole] == [f"armhole {i}" for i in range(1, 7)]
    assert sum(edge.length for edge in armhole) == pytest.approx(50 * math.pi, abs=0.1)
    straight = recloth.measured_edge("armhole", points, smooth=False)
    assert sum(edge.length for edge in straight) == pytest.approx(1200 * math.sin(math.radians(7.5)))
    corner = Piece.polygon("corner", [(0, 0), (100, 0), (0, 100)], 10, ["hem", "slope", "side"])
    rounded = corner.copy_edge(("slope", 0), ("side", 0), armhole)
    assert rounded.piece.area == pytest.approx(2500 * math.pi, rel=2e-3)
    assert rounded.replaced == pytest.approx(100 * math.sqrt(2))


def test_a_lining_is_derived():
    # 560 long, a hem of 45 with the lining's fold 20 above its edge: 540 + 25 = 565 is sewn onto 515.
    names = ["hem", "side", "waist", "centre"]
    edges = [recloth.Edge(n, a, b, 45 if n == "hem" else 15, "hem" if n == "hem" else "seam") for n, a, b in zip(
        names, [(0, 0), (250, 0), (250, 560), (0, 560)], [(250, 0), (250, 560), (0, 560), (0, 0)])]
    back = Piece("back", edges)
    lined = back.lining(hem="jump", depth=45, clearance=20)
    seams = {back.edges[seam.shell].name: seam for seam in lined.seams}
    assert (seams["side"].length, seams["side"].difference) == pytest.approx((565, 50))
    assert (seams["hem"].along, seams["hem"].difference) == ("hem", pytest.approx(0))
    assert (lined.piece.name, lined.piece.cloth) == ("back lining", "lining")
    # A facing of 60, 3 of ease, a pleat of 25, a free hem 20 shorter.
    lined = back.lining("inside", facings={"waist": 60}, ease=[("side", 3)], pleats={"centre": 25}, hem="free",
                        clearance=20, hem_allowance=30, allowance=12)
    assert lined.piece.bounds == pytest.approx((-25, 20, 253, 500))
    assert {edge.name: edge.allowance for edge in lined.piece.edges} == {"hem": 30, "side": 12, "waist": 12, "centre": 12}
    assert [mark.name for mark in lined.piece.marks] == ["pleat"]
    (faced,) = [seam for seam in lined.seams if seam.along == "facing"]
    assert faced.difference == pytest.approx(28)
    # The shell will lose 5 % along the grain, the lining 1 %: cut 560 * 0.95 / 0.99.
    lined = back.lining(shell_change_pct=(-5, 0), lining_change_pct=[-1, 0])
    assert lined.piece.bounds[3] - lined.piece.bounds[1] == pytest.approx(560 * 0.95 / 0.99)
    assert lined.finished.bounds == back.bounds


@pytest.mark.parametrize(
    ("call", "says"),
    [
        (lambda p: p.turn_dart("none", [("n", ("side", 5))]), "dart"),
        (lambda p: p.turn_dart("waist", []), "openings"),
        (lambda p: p.turn_dart("waist", [("n", ("mouth", 5))]), 'edge "mouth": at[3] = 5'),
        (lambda p: p.turn_dart("waist", [("n", ("side", math.nan))]), "at"),
        (lambda p: p.turn_dart("waist", [("n", ("side", 5), 2)]), '"square": share[0] = 2'),
        (lambda p: p.close_dart("waist", ("nowhere", 5)), 'no edge "nowhere"'),
        (lambda p: p.cap_dart("waist", "hem"), "onto"),
        (lambda p: p.open_dart("n", (500, 0), ("top side", 5), 5, ("hem", 5)), "point"),
        (lambda p: p.split((-5, 150), (205, 150)), "mark"),
        (lambda p: p.split((-5, 350), (205, 350)), "cut"),
        (lambda p: p.split((0, 0), (math.inf, 0)), "cut"),
        (lambda p: p.split((-5, 50), (205, 50), notches=[10, 300]), "notches[1] = 300"),
        (lambda p: p.slash_and_spread([(("hem", 5), ("centre", 50), 900)]), "open_by"),
        (lambda p: p.scale_for_change(-95, 0), "along_pct"),
        (lambda p: p.shift_edges([], 5), "edges"),
        (lambda p: p.shift_edges("hem", math.nan), "by"),
        (lambda p: p.facing(["hem", "centre"], 20), "edge"),
        (lambda p: p.facing("hem", 0), "depth"),
        (lambda p: p.extend((0, 150), (200, 150), 5), "mark"),
        (lambda p: p.extend((0, 250), (200, 250), 5), "line"),
        (lambda p: p.extend((0, 50), (200, 50), -300), "by"),
        (lambda p: p.trace(("hem", 5), ("hem", 5)), "to"),
        (lambda p: p.trace(("hem", 500), ("hem", 5)), "from"),
        (lambda p: p.copy_edge(("hem", 5), ("hem", 50), []), "copied"),
        (lambda p: p.copy_edge(("hem", 5), ("hem", 50), p.trace(("hem", 5), ("hem", 90))), "misfit"),
        (lambda p: p.copy_edge(("hem", 5), ("hem", 50), p.edges, gap=math.nan), "gap"),
        (lambda p: recloth.measured_edge("e", [(0, 0)]), "points"),
        (lambda p: recloth.measured_edge("e", [(0, 0), (0, 0)]), "points[0]"),
        (lambda p: p.lining(facings={"none": 5}), "facings"),
        (lambda p: p.lining(facings={"hem": 5000}), "by"),
        (lambda p: p.lining(hem="free"), "hem"),
        (lambda p: p.lining(hem="long"), "hem"),
        (lambda p: p.lining(darts="cut"), "darts"),
        (lambda p: p.lining(lining_change_pct=(0, -99)), "lining_change_pct[1] = -99"),
        (lambda p: p.pair_notches("hem", p, "hem", [("n", 250)]), "distance"),
        (lambda p: p.pair_notches("hem", p, "hem", [("n", 50, 200)]), "along"),
        (lambda p: p.pair_notches("hem", p, "hem", [("n", 50), ("n", 60)]), "name"),
        (lambda p: p.pair_notches("hem", p, "hem", [("n", 50)], way="up"), "way"),
        (lambda p: recloth.true_up([p], [], 5), "meetings"),
        (lambda p: recloth.true_up([p], [recloth.DartMouth(1, "waist")], 5), "piece"),
        (lambda p: recloth.true_up([p], [recloth.DartMouth(0, "none")], 5), "dart"),
        (lambda p: recloth.true_up([p], [recloth.SeamEnd(0, "hem", 3, "hem")], 5), "piece"),
        (lambda p: recloth.true_up([p], [recloth.SeamEnd(0, "none", 0, "hem")], 5), "edge"),
    ],
)
def test_what_cannot_be_done_is_named(square, call, says):
    with pytest.raises(ReclothError) as caught:
        call(square)
    assert says in str(caught.value)


@pytest.mark.parametrize(
    "call",
    [
        lambda p: p.place("here"),
        lambda p: p.turn_dart("waist", "side"),
        lambda p: p.turn_dart("waist", [("n", 5)]),
        lambda p: p.close_dart("waist", None),
        lambda p: p.split((0, 0), 5),
        lambda p: p.slash_and_spread([1]),
        lambda p: p.join("hem", "piece", "hem"),
        lambda p: p.shift_edges("hem", "far"),
        lambda p: p.extend((0, 0), 5, 5),
        lambda p: p.match_notches("piece"),
        lambda p: p.trace("hem", "side"),
        lambda p: p.copy_edge(("hem", 5), ("hem", 50), "edge"),
        lambda p: recloth.measured_edge("e", "points"),
        lambda p: p.lining(facings="waist"),
        lambda p: p.lining(ease={"hem": "3"}),
        lambda p: p.lining(shell_change_pct=(1, 2, 3)),
        lambda p: p.pair_notches("hem", p, "hem", "notches"),
        lambda p: recloth.true_up([p], [("waist", 0)], 5),
        lambda p: recloth.true_up(["piece"], [recloth.DartMouth(0, "waist")], 5),
    ],
)
def test_what_is_no_such_thing_is_a_type_error(square, call):
    with pytest.raises(TypeError):
        call(square)


def test_a_whole_draft_is_lined():
    # 25 shorter than the shell, let out by 3 at the side, which is narrower by 25 * 30 / 400 there.
    shell = draft.DartedSkirt(waist=720, hip=980, front_panel=250, back_panel=235).draft()
    lined = shell.lining(ease={"side": 3}, facings=[(("skirt front", "waist"), 40), (("skirt back", "waist"), 40)],
                         hem="free", clearance=25, hem_allowance=20, darts="sewn")
    assert [piece.name for piece in lined.draft.pieces] == ["skirt front lining", "skirt back lining"]
    assert [seam.name for seam in lined.draft.seams] == [seam.name for seam in shell.seams]
    for lining, seam in zip(lined.draft.seams, shell.seams):
        assert lining.walk.difference == pytest.approx(seam.ease, abs=0.5)
    front, was = lined.linings["skirt front"].piece.bounds, shell.piece("skirt front").bounds
    assert (front[2] - front[0]) - (was[2] - was[0]) == pytest.approx(3 - 25 * 30 / 400, abs=0.05)
    with pytest.raises(ReclothError, match="facings"):
        shell.lining(facings={"neck": 40})
    with pytest.raises(ReclothError, match="seam"):
        shell.lining(facings=[(("skirt front", "waist"), 40), (("skirt back", "waist"), 60)])
    with pytest.raises(TypeError, match="facings"):
        shell.lining(facings={3: 40})


def test_an_edge_measured_with_its_dart_sewn_is_opened():
    # 175 at the waist, and with the dart of 25 open 200; below the dart's point, 70 up, nothing moves.
    side = recloth.measured_edge("side", [(235, 0), (175, 190)], smooth=False)
    dart = recloth.DartMark("waist", (90, 70), ((102.5, 190), (77.5, 190)))
    lower, upper = recloth.opened_edge(dart, side)
    assert lower.end == pytest.approx((235 - 60 * 70 / 190, 70))
    assert upper.end == pytest.approx((200, 190))
    copied = half_back(200).copy_edge((1, 0), (1, math.hypot(35, 190)), [lower, upper])
    assert copied.gap == pytest.approx(0)
    with pytest.raises(ReclothError, match="share"):
        recloth.opened_edge(dart, side, 2)
    with pytest.raises(TypeError, match="dart"):
        recloth.opened_edge("waist", side)


def test_one_of_two_pieces_is_kept():
    gore = Piece.polygon("gore", [(-150, 0), (150, 0), (90, 600), (-90, 600)], 10, ["hem", "right", "waist", "left"])
    trued = recloth.true_up([gore, gore], [recloth.SeamEnd(0, "right", 1, "left", kept="first")], 30)
    assert trued.pieces[0] == gore
    # The second takes the whole peak of twice the lean.
    assert [(edge.piece, edge.end_deg or edge.start_deg) for edge in trued.edges] == [
        (1, pytest.approx(-2 * math.degrees(math.atan(0.1)))),
    ]
    with pytest.raises(ReclothError, match="kept"):
        recloth.SeamEnd(0, "right", 1, "left", kept="both")
