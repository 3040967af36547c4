"""Columns of pandas: index and missing entries stay, a refused row is named."""

import numpy as np
import pandas as pd
import pytest
import recloth
from recloth import ufuncs

WAISTS = pd.Series([640.0, 710.0, 780.0], index=["a", "b", "c"])
ONE = recloth.circle_skirt(710, 600)


def test_a_series_stays_one():
    skirt = recloth.circle_skirt(WAISTS, 600)
    for column in skirt:
        assert isinstance(column, pd.Series) and list(column.index) == ["a", "b", "c"]
    assert skirt.hem_length["b"] == ONE.hem_length
    pd.testing.assert_series_equal(ufuncs.circle_skirt.hem_length(WAISTS, 600, 1), skirt.hem_length)


def test_two_series_meet_by_label_as_in_pandas():
    lengths = pd.Series([500.0, 600.0, 700.0], index=["c", "b", "a"])
    hem = recloth.circle_skirt(WAISTS, lengths).hem_length
    assert hem["a"] == recloth.circle_skirt(640, 700).hem_length and hem["b"] == ONE.hem_length


@pytest.mark.parametrize("kind", ["Float64", "Int64"])
def test_what_is_missing_stays_missing(kind):
    waists = pd.Series([710, None, 640], dtype=kind)
    skirt = recloth.circle_skirt(waists, 600)
    assert skirt.hem_length.isna().tolist() == [False, True, False]
    assert skirt.hem_length[0] == ONE.hem_length


def test_a_refused_row_is_named():
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(pd.Series([None, 710, -1], dtype="Float64"), 600)
    assert (caught.value.argument, caught.value.value, caught.value.index) == ("waist", -1, (2,))
    # In a column of plain floats a blank is NaN, which is no measure: `ufuncs` leave NaN.
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(pd.Series([710.0, None]), 600)
    assert (caught.value.kind, caught.value.index) == ("NotFinite", (1,))
    with np.errstate(invalid="ignore"):
        hem = ufuncs.circle_skirt.hem_length(pd.Series([710.0, None, -1.0]), 600, 1)
    assert hem.isna().tolist() == [False, True, True]
    # The condition between two columns, aligned by label: a hip band longer than its top ...
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.gathers(pd.Series([300.0, 0.0], index=["y", "x"]), pd.Series([2.0, 2.0], index=["x", "y"]))
    assert caught.value.value == 0


def test_doubts_are_kept():
    doubts = recloth.girth_doubts(pd.Series([71.0, 710.0]))
    assert doubts.dtype == np.uint64
    assert [bool(recloth.doubts(bits)) for bits in doubts] == [True, False]


def test_a_frame_of_columns():
    frame = pd.DataFrame({"small": [640.0, 710.0], "large": [780.0, 850.0]})
    hem = recloth.circle_skirt(frame, 600).hem_length
    assert list(hem.columns) == ["small", "large"] and hem["small"][1] == ONE.hem_length
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(frame - 700, 600)
    assert caught.value.index == (0, 0)


@pytest.mark.parametrize("waists", [["71 cm"], [True], [710, "n/a"]])
def test_a_column_of_no_numbers_is_a_type_error(waists):
    with pytest.raises(TypeError, match="^circle_skirt: waist must be a column of numbers, not of "):
        recloth.circle_skirt(pd.Series(waists), 600)


def test_lists_come_as_series_too():
    assert recloth.round_set(pd.Series([10.4, 10.4, 10.2]), 1).tapes.tolist() == [11, 10, 10]
