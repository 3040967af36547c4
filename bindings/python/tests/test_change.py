"""What must give, how large a part may be, what a lay leaves, and flaws under pieces. All measures are invented."""

import pickle

import pytest
import recloth
from recloth import Change, Flaw, Panel, Part, Placement, ReclothError, draft


def rectangle(width, height):
    return [(0, 0), (width, 0), (width, height), (0, height)]


SKIRT = Part("skirt", [(0, 0), (380, 0), (300, 650), (80, 650)])
CLOTH = [Panel("back", rectangle(400, 700))]
BAND = Part("band", rectangle(60, 640))
SCRAPS = [Panel("left", rectangle(60, 420)), Panel("right", rectangle(60, 260))]
JOIN = Change(0, "join", across_deg=90, start=100, end=540, allowance=10)


def test_the_least_change_of_each_kind():
    # 640 of 420 + 260 - 20: the middle of 230 to 250.
    found = recloth.least_change([BAND], SCRAPS, [JOIN])
    assert (found.answer, str(found)) == ("changed", "band: joined, 240 mm from its end")
    (made,) = found.made
    assert (made.change, made.part, made.give, made.amount, made.at) == (0, "band", "join", 1, 240)
    assert [part.name for part in found.parts] == ["band", "band, half 1", "band, half 2"]
    assert len(found.fit.placements) == 2 and recloth.check(found.parts, SCRAPS, found.fit.placements) == []
    assert pickle.loads(pickle.dumps(found)) == found

    long = Part("long", rectangle(400, 712.3))
    shorter = Change(0, "shorter", toward_deg=90, beyond=500, most=40)
    (made,) = recloth.least_change([long], CLOTH, [shorter]).made
    assert (made.give, made.amount, made.at, str(made)) == ("shorter", 12.3, None, "long: 12.3 mm shorter")
    smaller = Change(0, "smaller", name="narrower allowance", steps=[(5, rectangle(400, 702)), (9, rectangle(400, 694))])
    assert str(recloth.least_change([long], CLOTH, [smaller])) == "long: narrower allowance, by 9 mm"
    halves = Change(0, "instead", name="in two", parts=[Part("half", rectangle(200, 380), as_drawn=2)])
    assert str(recloth.least_change([long], CLOTH, [halves])) == "long: in two"
    two = Part("two", rectangle(400, 700), as_drawn=2)
    assert str(recloth.least_change([two], CLOTH, [{"part": 0, "give": "fewer", "by": 1}])) == "two: 1 fewer of 2"
    tilt = Change(0, "tilt", to_deg=45)
    belt = Part("belt", rectangle(10, 720))
    (made,) = recloth.least_change([belt], CLOTH, [tilt]).made
    assert made.give == "tilt" and 0 < made.amount <= 45


def test_nothing_needed_and_nothing_that_helps():
    found = recloth.least_change([SKIRT], CLOTH, [])
    assert (found.answer, str(found), found.made) == ("nothing", "nothing", ())
    assert found.parts == (SKIRT,) and found.fit.together == "fit"
    long = Part("long", rectangle(400, 800))
    shorter = Change(0, "shorter", toward_deg=90, beyond=500, most=40)
    found = recloth.least_change([long], CLOTH, [shorter])
    assert (found.answer, found.fit, found.evaluations) == ("never", None, 0)
    assert found.why == '"long" (as drawn) can lie on no panel' and str(found) == f"never: {found.why}"


def test_a_change_is_told_by_what_its_kind_takes():
    with pytest.raises(TypeError, match="'tilt' takes to_deg, not most"):
        Change(0, "tilt", to_deg=3, most=4)
    with pytest.raises(TypeError, match="'fewer' wants by"):
        Change(0, "fewer")
    with pytest.raises(ReclothError, match="give = 'shrink' is not one of"):
        Change(0, "shrink")
    with pytest.raises(ReclothError, match='change 0, of "band": from = 0 leaves no solution'):
        recloth.least_change([BAND], SCRAPS, [Change(0, "join", across_deg=90, start=0, end=100, allowance=10)])
    with pytest.raises(ReclothError, match="change 0: part = 4"):
        recloth.least_change([BAND], SCRAPS, [Change(4, "fewer", by=1)])


def test_longest_and_fullest():
    found = recloth.longest([SKIRT], CLOTH, 0, beyond=-100, most=200, opposite=True)
    assert (found.value, found.refused, repr(found)) == (50, 50.1, "Largest(50.0, refused 50.1)")
    assert found.why == '"skirt" (as drawn) can lie on no panel'
    assert min(y for _, y in found.parts[0].outline) == -50
    assert recloth.check(found.parts, CLOTH, found.fit.placements) == []
    wider = recloth.fullest([SKIRT], CLOTH, 0, beyond=190, most=100)
    assert (wider.value, wider.refused) == (20, 20.1)
    with pytest.raises(ReclothError, match="beyond = 900"):
        recloth.longest([SKIRT], CLOTH, 0, beyond=900, most=10)
    with pytest.raises(ReclothError, match="seed"):
        recloth.fullest([SKIRT], CLOTH, 0, beyond=190, most=100, seed=-1)


def test_the_largest_value_of_a_measure():
    # Four pockets of 150 x depth on 400 x 700: no three beside each other, so twice the depth is 700.
    def pockets(depth):
        return [Part("pocket", rectangle(150, depth), as_drawn=4)]

    found = recloth.largest((100, 400, 5), pockets, CLOTH)
    assert (found.value, found.refused, found.out_of_time) == (350, 355, False)
    assert found.parts == tuple(pockets(350)) and recloth.check(found.parts, CLOTH, found.fit.placements) == []
    assert found == recloth.largest([100, 400, 5], pockets, CLOTH, threads=1)
    # Of one value the proof names the part of that value.
    band = recloth.largest((600, 800, 1), lambda length: [Part(f"band {length:g}", rectangle(60, length))], CLOTH)
    assert (band.value, band.refused, band.why) == (700, 701, '"band 701" (as drawn) can lie on no panel')
    piece = draft.PatchPocket(120, 140).draft().pieces[0]
    assert recloth.largest((1, 1, 1), lambda _: [piece], CLOTH).value == 1


def test_what_makes_the_parts_may_raise():
    class Enough(Exception):
        pass

    raised = Enough("no such draft")

    def parts_at(value):
        raise raised

    with pytest.raises(Enough) as caught:
        recloth.largest((1, 2, 1), parts_at, CLOTH)
    assert caught.value is raised
    with pytest.raises(TypeError, match="not iterable"):
        recloth.largest((1, 2, 1), lambda value: 5, CLOTH)
    with pytest.raises(ReclothError, match='largest: part "bow": outline') as caught:
        recloth.largest((1, 2, 1), lambda value: [Part("bow", [(0, 0), (9, 9), (9, 0), (0, 9)])], CLOTH)
    with pytest.raises(TypeError, match="parts_at must be a function of one number, not list"):
        recloth.largest((1, 2, 1), [], CLOTH)
    with pytest.raises(TypeError, match="values must be three numbers, low, high and step, not tuple"):
        recloth.largest((1, 2), parts_at, CLOTH)
    with pytest.raises(ReclothError, match="values: step"):
        recloth.largest((1, 2, 0), parts_at, CLOTH)


def searches(**options):
    """Each search of searches, with these options."""
    return [
        lambda: recloth.least_change([SKIRT], CLOTH, [], **options),
        lambda: recloth.longest([SKIRT], CLOTH, 0, beyond=-100, most=200, opposite=True, **options),
        lambda: recloth.fullest([SKIRT], CLOTH, 0, beyond=190, most=100, **options),
        lambda: recloth.largest((0, 1, 1), lambda _: [SKIRT], CLOTH, **options),
    ]


def test_a_time_that_is_up_is_said():
    for search in searches(seconds=0):
        found = search()
        assert found.out_of_time and found.fit is None
    for search in searches(seconds=1e6, threads=2):
        found = search()
        assert not found.out_of_time and found.fit.together == "fit"


def test_a_search_of_searches_is_told_of():
    told = []
    for search in searches(progress=lambda *so_far: told.append(so_far)):
        told.clear()
        search()
        dones = [done for done, _ in told]
        assert told[-1] == (1, None) and dones == sorted(dones)
    for search in searches(progress=lambda done, best: 1 / 0):
        with pytest.raises(ZeroDivisionError):
            search()
    for search in searches(progres=None):
        with pytest.raises(TypeError, match="unexpected keyword argument 'progres'"):
            search()
    for search in searches(spacing="2"):
        with pytest.raises(TypeError, match="argument 'spacing': a number is wanted, not str"):
            search()


def test_leftovers():
    # 400 x 700 less 300 x 600.
    part = Part("skirt", rectangle(300, 600))
    (left,) = recloth.leftovers([part], CLOTH, [Placement(0, 0)])
    assert left.panel == 0 and left.area_mm2 == pytest.approx(100_000, abs=1) and left.holes == ()
    sides = [(round(r.width), round(r.height)) for r in left.rectangles]
    assert sides == [(100, 700), (300, 100)]
    (left,) = recloth.leftovers([part], CLOTH, [Placement(0, 0)], rectangles=1)
    assert len(left.rectangles) == 1 and repr(left).startswith("Leftover(panel 0, ")


def test_flaws_under_pieces():
    stain = Flaw([(10, 10), (90, 10), (90, 90), (10, 90)], 0, "stain", ["pocket bag"])
    (cloth,) = [Panel("scrap", rectangle(100, 100), flaws=[stain])]
    assert cloth.flaws == (stain,) and Panel.from_json(cloth.to_json()) == cloth
    place = [Placement(0, 0)]
    outer, bag = Part("a", rectangle(100, 100)), Part("a", rectangle(100, 100), role="pocket bag")
    assert len(recloth.check([outer], [cloth], place)) == 1 and recloth.check([bag], [cloth], place) == []
    assert recloth.fit([bag], [cloth]).parts == (bag,)
    edge = Panel("scrap", rectangle(100, 100), flaws=[Flaw([(5, 50)], 0, "hole", ["seam allowance"])])
    seam = Part("a", rectangle(100, 100), seam=[(10, 10), (90, 10), (90, 90), (10, 90)])
    assert len(recloth.check([outer], [edge], place)) == 1 and recloth.check([seam], [edge], place) == []
    assert recloth.fit([seam], [edge]).parts == (seam,)
    for under in ("pocket bag", [3]):
        with pytest.raises(TypeError, match="under must be a list of texts"):
            Flaw([(5, 50)], under=under)
