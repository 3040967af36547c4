"""Cloth cut folded, and parts on a fold. All measures are invented."""

import dataclasses
import math
import pickle

import pytest
import recloth
from recloth import Fold, Panel, Part, Piece, Placement, ReclothError, Strip, StripLay
from shapely import Polygon
from shapely.affinity import scale

FRONT = Part.on_fold("front", [(0, 0), (300, 0), (240, 700), (0, 680)], (0, 0), (0, 680))
BACK = Part("back", [(0, 0), (310, 0), (260, 700), (0, 690)], mirrored=1, tilt_deg=1)
COLLAR = Part("collar", [(0, 0), (400, 0), (410, 80), (200, 60), (-10, 80)], as_drawn=2, shows="either")
PARTS = [FRONT, BACK, COLLAR, Part("pocket", [(0, 0), (150, 0), (150, 170), (0, 170)])]


def laid(**options):
    return recloth.strip(PARTS, Strip(1300, folded=True), **{"budget": 500_000, **options})


def test_a_lay_cut_folded_is_as_shapely_says():
    lay = laid(spacing=3)
    assert lay.check() == [] and len(lay.placements) == 6
    (fold,) = lay.folds
    assert fold == Fold(0, (0, 650), fold.end) and fold.end[1] == 650
    pieces = [Polygon(outline) for outline in lay.outlines()]
    images = [scale(piece, 1, -1, origin=(0, 650)) for piece in pieces]
    cut = {"on the fold": 0, "twins": 0, "spare": 0}
    for index, image in enumerate(images):
        same = [other for other, piece in enumerate(pieces) if piece.hausdorff_distance(image) < 2e-6]
        if same:
            cut["on the fold" if same == [index] else "twins"] += 1
        else:
            cut["spare"] += 1
            assert all(image.distance(piece) > 3 - 1e-6 for piece in pieces)
    assert cut == {"on the fold": 1, "twins": 4, "spare": 1}
    assert recloth.check(PARTS, [lay.panel], lay.placements, folds=lay.folds, spacing=3) == []
    assert recloth.check(PARTS, [lay.panel], lay.placements, folds=[(0, (0, 651), (9, 651))], spacing=3) != []


def test_the_same_lay_whatever_the_threads_and_as_json():
    one = laid(threads=1)
    assert one == laid(threads=2) and one.strip == Strip(1300, folded=True)
    assert pickle.loads(pickle.dumps(one)) == one == StripLay.from_json(one.to_json())
    told = one.to_dict()
    assert told["strip"]["folded"] is True and told["found"]["lay"]["folds"][0]["from"] == {"x": 0, "y": 650}
    assert told["parts"][0]["fold"] == [{"x": 0, "y": 0}, {"x": 0, "y": 680}] and "fold" not in told["parts"][1]
    # A lay that is not right is not read back: folded elsewhere, what is cut through both layers is another's.
    with pytest.raises(ReclothError, match="cut through both layers"):
        StripLay.from_json(one.to_json().replace('"y":650.0', '"y":640.0'))


def test_the_fold_is_drawn():
    folded, opened = laid()._repr_svg_(), recloth.strip(PARTS, Strip(1300), budget=500_000)._repr_svg_()
    assert "cut folded" in folded and "cut folded" not in opened
    assert folded.count("stroke-dasharray") == opened.count("stroke-dasharray") + 1


def test_a_part_is_made_of_its_half():
    assert FRONT.fold == ((0, 0), (0, 680)) and (FRONT.as_drawn, FRONT.mirrored) == (1, 0)
    assert sorted(FRONT.outline) == [(-300, 0), (-240, 700), (0, 0), (0, 680), (240, 700), (300, 0)]
    assert Part(**{field.name: getattr(FRONT, field.name) for field in dataclasses.fields(FRONT)}) == FRONT
    with pytest.raises(ReclothError, match=r"Part.on_fold: outline\[0\]"):
        Part.on_fold("front", [(-1, 0), (300, 0), (240, 700), (0, 680)], (0, 0), (0, 680))
    with pytest.raises(TypeError, match="fold must be two points, not 1"):
        dataclasses.replace(FRONT, fold=[(0, 0)])
    skew = dataclasses.replace(FRONT, fold=((1, 0), (1, 9)))
    with pytest.raises(ReclothError) as caught:
        recloth.strip([skew], Strip(700), budget=1000)
    assert caught.value.argument == "fold" and caught.value.value == pytest.approx(2, rel=0.01)


def test_a_piece_on_a_fold_is_a_part_on_one():
    edges = [
        recloth.Edge("hem", (0, 0), (230, 12), 40, bulge=0.03),
        recloth.Edge("side", (230, 12), (180, 600), 15),
        recloth.Edge("waist", (180, 600), (0, 590), 10, bulge=-0.04),
        recloth.Edge("centre", (0, 590), (0, 0), 0, role="fold"),
    ]
    part = Piece("front", edges, grain=((50, 50), (50, 500))).turned(20).part()
    (x0, y0), (x1, y1) = part.fold
    assert math.dist((x0, y0), (x1, y1)) == pytest.approx(590) and Polygon(part.outline).contains(Polygon(part.seam))
    lay = recloth.strip([part], Strip(520, folded=True), budget=100_000)
    assert lay.check() == [] and lay.placements[0].turn_deg % 180 == pytest.approx(70)


def test_what_fits_opened_only_says_so():
    with pytest.raises(ReclothError, match="on the folded strip, though it fits opened") as caught:
        recloth.strip([PARTS[3]], (280, "one", False, True))
    assert caught.value.argument == "width" and caught.value.min == pytest.approx(300)
    assert recloth.strip([PARTS[3]], (280, "one", False, False), budget=1000).folds == ()


def test_what_is_spare_is_left_by_itself():
    cloth = Panel("cloth", [(0, 0), (200, 0), (200, 200), (0, 200)])
    pocket = Part("pocket", [(0, 0), (50, 0), (50, 50), (0, 50)])
    lie = [Placement(0, 0, shift=(20, 30))]
    (opened,) = recloth.leftovers([pocket], [cloth], lie)
    rest, spare = recloth.leftovers([pocket], [cloth], lie, folds=[Fold(0, (100, 0), (100, 9))])
    assert opened.area_mm2 == pytest.approx(37_500, abs=1)
    # The cut round it takes a tenth of a millimetre either way of 200.
    assert spare.area_mm2 == pytest.approx(2500, abs=25) and rest.area_mm2 == pytest.approx(35_000, abs=25)


def test_bad_folds_are_told():
    cloth = Panel("cloth", [(0, 0), (200, 0), (200, 200), (0, 200)])
    pocket = Part("pocket", [(0, 0), (50, 0), (50, 50), (0, 50)])
    lie = [Placement(0, 0, shift=(20, 30))]
    assert recloth.check([pocket], [cloth], lie, folds=[Fold(0, (100, 0), (100, 9))]) == []
    told = recloth.check([pocket], [cloth], lie, folds=[Fold(0, (60, 0), (60, 9)), {"panel": 3, "start": (0, 0), "end": (1, 0)}])
    assert told == [
        "placement 0: pocket, cut through both layers of cloth, cuts into placement 0, pocket, at (50, 55)",
        "fold 1: there is no panel 3",
    ]
    with pytest.raises(TypeError):
        recloth.check([pocket], [cloth], lie, folds=[Fold(0, (60, 0))])
