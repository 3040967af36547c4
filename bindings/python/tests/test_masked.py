"""Masked arrays: what is masked is neither computed nor refused, and stays masked."""

import numpy as np
import pytest
import recloth
from recloth import ufuncs

# The second is no waist, but masked.
WAISTS = np.ma.array([710.0, -1.0, 640.0], mask=[False, True, False])
ONE = recloth.circle_skirt(710, 600)


def test_a_mask_stays():
    skirt = recloth.circle_skirt(WAISTS, 600)
    for column in skirt:
        assert isinstance(column, np.ma.MaskedArray) and column.mask.tolist() == [False, True, False]
    assert skirt.hem_length[0] == ONE.hem_length
    # What is under the mask is computed and thrown away: NumPy warns of it.
    with np.errstate(invalid="ignore"):
        hem = ufuncs.circle_skirt.hem_length(WAISTS, 600, 1)
    assert hem.mask.tolist() == [False, True, False] and hem[0] == ONE.hem_length


def test_what_is_not_masked_is_refused_with_its_place():
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(np.ma.array([-1.0, 710.0, -2.0], mask=[True, False, False]), 600)
    assert (caught.value.index, caught.value.value) == ((2,), -2)


def test_doubts_are_kept():
    # 71 mm is no girth of a body: 71 cm is meant.
    doubts = recloth.girth_doubts(np.ma.array([71.0, 71.0, 710.0], mask=[True, False, False]))
    assert doubts.mask.tolist() == [True, False, False]
    assert recloth.doubts(doubts[1]) and recloth.doubts(doubts[2]) == []


def test_a_masked_item_of_a_list_is_none():
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.round_set(np.ma.array([10.4, 10.4], mask=[False, True]), 1)
    assert (caught.value.kind, caught.value.at) == ("NotFinite", 1)
