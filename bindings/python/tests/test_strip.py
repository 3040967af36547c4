"""Pieces on cloth by the length: what strip answers; how it and fit are watched, and what stops them. All measures are invented."""

import copy
import dataclasses
import json
import os
import pickle
import signal
import threading
import xml.etree.ElementTree as ElementTree

import pytest
import recloth
from recloth import Part, Piece, ReclothError, Strip
from shapely import Polygon

# Facings for the fronts of three linen house-coats, their collars and their pockets.
FACING = Part("front facing", [(0, 0), (90, 0), (75, 620), (160, 960), (110, 1010), (40, 900)], as_drawn=3, mirrored=3, tilt_deg=2)
COLLAR = Part("collar", [(0, 0), (420, 0), (440, 85), (210, 70), (-20, 85)], as_drawn=6, either_way=True)
POCKET = Part("pocket", [(0, 0), (160, 0), (160, 150), (80, 190), (0, 150)], as_drawn=8, crosswise=True)
PARTS, CLOTH = [FACING, COLLAR, POCKET], Strip(800)
BUDGET = 1_000_000


def laid(**options):
    return recloth.strip(PARTS, CLOTH, **{"budget": BUDGET, **options})


def test_a_strip_is_laid_as_shapely_says():
    lay = laid(spacing=2)
    assert len(lay.placements) == 20 and lay.spacing == 2 and not lay.out_of_time
    assert lay.parts == tuple(PARTS) and lay.strip == CLOTH and lay.check() == []
    pieces = [Polygon(outline) for outline in lay.outlines()]
    cloth = Polygon([(0, 0), (lay.length, 0), (lay.length, 800), (0, 800)]).buffer(1e-6)
    assert all(cloth.contains(piece) for piece in pieces)
    for index, piece in enumerate(pieces):
        assert all(piece.distance(other) > 2 - 1e-6 for other in pieces[:index])
    area = sum(piece.area for piece in pieces)
    assert area == pytest.approx(sum(Polygon(part.outline).area * (part.as_drawn + part.mirrored) for part in PARTS))
    assert lay.density == pytest.approx(area / (800 * lay.length)) and 0.6 < lay.density < 1
    assert recloth.check(PARTS, [lay.panel], lay.placements, spacing=2) == []


def test_the_same_seed_and_budget_give_the_same_lay_whatever_the_threads():
    one, two, other = laid(threads=1), laid(threads=2), laid(seed=2)
    assert one == two and one.to_json() == two.to_json() and one.evaluations >= BUDGET
    assert one != other and other.check() == []


def test_grain_across_is_taken_where_it_may_be():
    # 400 long and 100 wide, on cloth 400 wide: laid along it takes 400 of cloth, laid across 100.
    band = Part("band", [(0, 0), (100, 0), (100, 400), (0, 400)])
    along = recloth.strip([band], Strip(400), budget=BUDGET)
    across = recloth.strip([Part("band", band.outline, crosswise=True)], Strip(400), budget=BUDGET)
    assert along.length == pytest.approx(400) and across.length == pytest.approx(100)
    piece = Piece.polygon("band", band.outline, 0)
    assert piece.part(crosswise=True).crosswise and not piece.part().crosswise
    tight = [recloth.Panel("scrap", [(0, 0), (400, 0), (400, 100), (0, 100)])]
    assert recloth.fit([band], tight).together == "cannot"
    crosswise = recloth.fit([piece.part(crosswise=True)], tight)
    assert crosswise.together == "fit" and crosswise.parts[0].crosswise and crosswise.check() == []


def test_on_cloth_with_a_repeat_the_pieces_match():
    # Two panels as wide as half the cloth; their hips are 200 and 150 up: side by side one lies 50 further, or 30 back.
    front, back = (
        Part(name, [(0, 0), (400, 0), (400, 600), (0, 600)], matches=[{"name": "hip", "at": (0, up)}])
        for name, up in (("front", 200), ("back", 150))
    )
    plain = recloth.strip([front, back], CLOTH, budget=BUDGET)
    checked = recloth.strip([front, back], Strip(800, repeat=(80, 0)), budget=BUDGET)
    assert (plain.length, checked.length) == (pytest.approx(600), pytest.approx(630))
    assert checked.strip.repeat == recloth.Repeat(80) == checked.panel.repeat and checked.check() == []
    assert recloth.StripLay.from_json(checked.to_json()) == checked == pickle.loads(pickle.dumps(checked))
    hems = [dataclasses.replace(part, matches=[*part.matches, ("hem", (0, 0))]) for part in (front, back)]
    with pytest.raises(ReclothError, match="30 mm off") as refused:
        recloth.strip(hems, Strip(800, repeat=(80, 0)), budget=BUDGET)
    assert refused.value.argument == "matches" and refused.value.value == pytest.approx(30)


def test_cloth_and_parts_come_as_pieces_dicts_and_tuples():
    piece = Piece.polygon("pocket", POCKET.outline, 10)
    whole = recloth.strip([piece], {"width": 300, "faces": "two", "nap": True}, budget=BUDGET)
    assert whole.strip == Strip(300, "two", True) and whole.panel.nap and whole.panel.faces == "two"
    assert recloth.strip([piece], (300, "two", True), budget=BUDGET) == whole


def test_no_pieces_take_no_cloth():
    lay = recloth.strip([], CLOTH)
    assert (lay.length, lay.density, lay.placements, lay.check(), lay._repr_svg_()) == (0, 0, (), [], None)
    assert pickle.loads(pickle.dumps(lay)) == lay and str(lay).startswith("0.0 mm")
    with pytest.raises(ReclothError):
        lay.panel


def test_a_lay_says_in_words_where_its_pieces_lie():
    lay = laid()
    assert repr(lay).startswith("StripLay(20 pieces on ") and len(repr(lay)) < 80
    first, head, *rows = str(lay).splitlines()
    assert first == f"{lay.length:.1f} mm of cloth 800 mm wide, {100 * lay.density:.1f} % covered"
    assert head.split() == ["piece", "along", "across", "turned"] and len(rows) == 20
    assert rows[3].startswith("front facing, mirrored  ") and rows[2].startswith("front facing  ")
    for row, outline in zip(rows, lay.outlines()):
        assert row.split()[-3:-1] == [f"{low:.1f}" for low in outline.min(axis=0)] or "face down" in row


def test_a_fit_says_in_words_what_fits_where():
    panels = [recloth.Panel("back", [(0, 0), (500, 0), (500, 1100), (0, 1100)]),
              recloth.Panel("sleeve", [(0, 0), (450, 0), (450, 300), (0, 300)])]
    fit = recloth.fit([dataclasses.replace(FACING, as_drawn=1, mirrored=1), COLLAR, Part("hem band", [(0, 0), (60, 0), (60, 1200), (0, 1200)])], panels, budget=5_000_000)
    head, *rows, together = str(fit).splitlines()
    assert head.split() == ["piece", "back", "sleeve"] and len(rows) == 4
    words = [row.split("  ")[0] for row in rows]
    assert words == ["front facing", "front facing, mirrored", "collar", "hem band"]
    # The collar is 460 across, where there are 450.
    assert rows[2].split(maxsplit=2) == ["collar", "fits", "short by 10.0 mm across the grain"]
    # 1200 along the grain, where there are 1100 and 300.
    assert "short by 100.0 mm along the grain" in rows[3] and rows[3].endswith("short by 900.0 mm along the grain")
    assert together.startswith("together: cannot, ") and "hem band" in together and fit.check() == []


def test_a_lay_travels_and_is_proved_again():
    lay = laid()
    assert pickle.loads(pickle.dumps(lay)) == lay and copy.deepcopy(lay) == lay
    assert recloth.StripLay.from_json(json.dumps(lay.to_dict())) == lay
    spoilt = lay.to_dict()
    spoilt["found"]["lay"]["placements"][0]["shift"]["x"] -= 5000
    with pytest.raises(ReclothError, match="front facing leaves strip"):
        recloth.StripLay.from_json(json.dumps(spoilt))
    spoilt = lay.to_dict()
    spoilt["found"]["length"] = -1
    with pytest.raises(ReclothError):
        recloth.StripLay.from_json(json.dumps(spoilt))
    del spoilt["strip"]["width"]
    with pytest.raises(ReclothError, match="width"):
        recloth.StripLay.from_json(json.dumps(spoilt))
    with pytest.raises(TypeError):
        hash(lay)


def test_a_lay_is_drawn_with_its_pieces_named():
    lay = laid()
    root = ElementTree.fromstring(lay._repr_svg_())
    assert 0 < float(root.get("width").removesuffix("mm")) < 250
    text = "".join(root.itertext())
    assert all(name in text for name in ("front facing", "collar", "pocket", f"{lay.length:.0f} mm of cloth"))
    wide = ElementTree.fromstring(lay.svg(width=600, height=500))
    assert float(wide.get("width").removesuffix("mm")) > 250
    with pytest.raises(ReclothError, match="width"):
        lay.svg(width=10)


@pytest.mark.parametrize(("given", "argument"), [
    ({"spacing": -1}, "spacing"), ({"seconds": -1}, "seconds"), ({"seconds": float("nan")}, "seconds"),
    ({"seed": -1}, "seed"), ({"seed": 2**64}, "seed"), ({"budget": -1}, "budget"), ({"threads": -1}, "threads"),
    ({"threads": 2**32}, "threads"),
])
def test_an_option_out_of_range_is_named(given, argument):
    with pytest.raises(ReclothError, match="strip: .*" + argument) as caught:
        laid(**given)
    assert caught.value.argument == argument


def test_a_fit_refuses_a_negative_seed_like_other_bad_input():
    panel = recloth.Panel("back", [(0, 0), (500, 0), (500, 500), (0, 500)])
    for option in ("seed", "budget"):
        with pytest.raises(ReclothError, match=f"fit: {option} = -1 is not between") as caught:
            recloth.fit([POCKET], [panel], **{option: -1})
        assert (caught.value.kind, caught.value.value, caught.value.argument) == ("OutOfRange", -1, option)


def test_what_cannot_lie_on_the_cloth_is_named():
    with pytest.raises(ReclothError, match='part "pocket" on the strip: width') as caught:
        recloth.strip([POCKET], Strip(80))
    # It is 160 by 190, and may lie across.
    assert (caught.value.kind, caught.value.value) == ("NoSolution", 80)
    assert caught.value.min == pytest.approx(160)
    with pytest.raises(ReclothError, match="both sides|width"):
        recloth.strip([Part("cuff", POCKET.outline, shows="both")], CLOTH)
    with pytest.raises(ReclothError, match="width"):
        Strip(float("nan")) and recloth.strip([], Strip(float("nan")))
    with pytest.raises(ReclothError, match="faces"):
        Strip(900, "three")


def test_progress_is_told():
    told = []
    lay = laid(budget=8_000_000, threads=1, progress=lambda done, best: told.append((done, best)))
    dones = [done for done, _ in told]
    assert told[0][1] is None and dones == sorted(dones) and told[-1] == (1, lay.length)
    lengths = [best for _, best in told[:-1] if best is not None]
    assert lay.length <= lengths[-1] + 1e-6
    assert len(told) > 1 and lengths == sorted(lengths, reverse=True)
    assert lay == laid(budget=8_000_000)


def test_an_exception_in_progress_ends_the_search_and_is_passed_on():
    class Enough(Exception):
        pass

    told = []

    def progress(done, best):
        told.append(done)
        raise Enough(done)

    with pytest.raises(Enough):
        laid(seconds=60, budget=2**64 - 1, progress=progress)
    assert len(told) == 1
    with pytest.raises(TypeError, match="progress must be a function"):
        laid(progress=5)
    with pytest.raises(TypeError, match="argument"):
        laid(progress=lambda: None)


@pytest.mark.parametrize("told", [None, []])
def test_ctrl_c_stops_a_search(told):
    """The search would go on for a minute; were it not stopped, the interrupt would be raised when it ends."""
    done = threading.Event()
    late = []

    def interrupt():
        done.wait(0.3)
        os.kill(os.getpid(), signal.SIGINT)
        if not done.wait(30):
            late.append(True)

    thread = threading.Thread(target=interrupt)
    progress = None if told is None else lambda *so_far: told.append(so_far)
    with pytest.raises(KeyboardInterrupt):
        thread.start()
        try:
            laid(seconds=60, budget=2**64 - 1, progress=progress)
        finally:
            done.set()
    thread.join()
    assert not late
    assert told is None or (told and told[-1][0] < 0.5)


def odd_fit(**options):
    """An odd shape that leaves much over, wanted once too often: the search runs to its end."""
    ell = Part("ell", [(0, 0), (90, 0), (90, 30), (30, 30), (30, 90), (0, 90)], as_drawn=60, either_way=True)
    return recloth.fit([ell], [recloth.Panel("back", [(0, 0), (600, 0), (600, 500), (0, 500)])], **options)


def test_a_fit_is_told_of_and_stopped():
    told = []
    fit = odd_fit(budget=30_000_000, progress=lambda done, best: told.append((done, best)))
    assert told[-1][0] == 1 and [done for done, _ in told] == sorted(done for done, _ in told)
    assert all(best is None or 0 <= best <= 1 for _, best in told)
    assert fit == odd_fit(budget=30_000_000, threads=1) and fit.check() == [] and not fit.out_of_time
    assert odd_fit(seconds=0.01, budget=2**64 - 1).out_of_time
    with pytest.raises(ZeroDivisionError):
        odd_fit(seconds=60, budget=2**64 - 1, progress=lambda done, best: 1 / 0)
    told = []

    def interrupt(done, best):
        told.append(done)
        os.kill(os.getpid(), signal.SIGINT)

    with pytest.raises(KeyboardInterrupt):
        odd_fit(seconds=60, budget=2**64 - 1, progress=interrupt)
    assert told and told[-1] < 0.5


def test_ctrl_c_stops_a_search_of_many_pieces():
    many = [Part(f"part {index}", [(0, 0), (100 + index, 0), (80, 90), (0, 100 + index / 3)], as_drawn=20) for index in range(20)]
    with pytest.raises(KeyboardInterrupt):
        threading.Timer(0.3, os.kill, (os.getpid(), signal.SIGINT)).start()
        recloth.strip(many, CLOTH, seconds=60, budget=2**64 - 1)


@pytest.mark.parametrize(
    "search",
    [
        lambda parts, panels: recloth.least_change(
            parts, panels, [recloth.Change(0, "tilt", to_deg=1)], budget=2**64 - 1
        ),
        lambda parts, panels: recloth.longest(parts, panels, 0, beyond=50, most=5, budget=2**64 - 1),
        lambda parts, panels: recloth.largest((1, 2, 1), lambda _: parts, panels, budget=2**64 - 1),
    ],
)
def test_ctrl_c_stops_a_search_of_searches(search):
    ell = Part("ell", [(0, 0), (90, 0), (90, 30), (30, 30), (30, 90), (0, 90)], as_drawn=60, either_way=True)
    cloth = recloth.Panel("back", [(0, 0), (600, 0), (600, 500), (0, 500)])
    with pytest.raises(KeyboardInterrupt):
        threading.Timer(0.3, os.kill, (os.getpid(), signal.SIGINT)).start()
        search([ell], [cloth])


def test_other_threads_run_during_a_search():
    work = threading.Thread(target=laid, kwargs={"budget": 8_000_000, "threads": 1})
    work.start()
    turns = 0
    while work.is_alive():
        turns += 1
        threading.Event().wait(0.001)
    assert turns > 20


def test_searches_may_run_side_by_side():
    found = []
    threads = [threading.Thread(target=lambda: found.append(laid(threads=1))) for _ in range(3)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert found == [laid()] * 3
