"""Columns and expressions of polars: nulls stay, a refused row is named."""

import polars as pl
import pytest
import recloth
from recloth import ufuncs

FRAME = pl.DataFrame({"waist": [640.0, None, 710.0], "length": [500, 600, None]})
ONE = recloth.circle_skirt(640, 500)


def test_a_column_stays_one():
    skirt = recloth.circle_skirt(FRAME["waist"], FRAME["length"])
    for column in skirt:
        assert isinstance(column, pl.Series) and column.dtype == pl.Float64
    assert skirt.hem_length.to_list() == [ONE.hem_length, None, None]
    # Under a null there may be any number, which is not judged.
    with pytest.warns(RuntimeWarning, match="circle_skirt__hem_length"):
        hem = ufuncs.circle_skirt.hem_length(FRAME["waist"], 500, 1.0)
    assert hem.to_list() == [ONE.hem_length, None, recloth.circle_skirt(710, 500).hem_length]


@pytest.mark.parametrize("frame", [FRAME, FRAME.lazy()], ids=["eager", "lazy"])
def test_an_expression_gives_a_column_an_answer(frame):
    skirt = recloth.circle_skirt(pl.col("waist"), pl.col("length"), 1)
    assert all(isinstance(column, pl.Expr) for column in skirt)
    done = frame.with_columns(*skirt).lazy().collect()
    assert done.columns == ["waist", "length", "waist_radius", "hem_radius", "hem_length", "doubts"]
    assert done["hem_length"].to_list() == [ONE.hem_length, None, None]
    one = frame.select(hem=ufuncs.circle_skirt.hem_length(pl.col("waist").drop_nulls(), 500, 1.0))
    assert one.lazy().collect()["hem"][0] == ONE.hem_length


def test_expressions_work_in_groups():
    sizes = FRAME.with_columns(size=pl.Series(["s", "m", "s"]), length=pl.lit(500.0))
    hem = recloth.circle_skirt(pl.col("waist"), pl.col("length")).hem_length
    done = sizes.group_by("size", maintain_order=True).agg(hem)
    assert done["hem_length"].to_list() == [
        [ONE.hem_length, recloth.circle_skirt(710, 500).hem_length], [None],
    ]


def test_a_refused_row_is_named():
    bad = pl.DataFrame({"waist": [None, 640.0, -1.0]})
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(bad["waist"], 600)
    assert (caught.value.argument, caught.value.value, caught.value.index) == ("waist", -1, (2,))
    skirt = recloth.circle_skirt(pl.col("waist"), 600)
    # Polars passes on the class and the text.
    with pytest.raises(recloth.ReclothError, match=r"^circle_skirt: waist = -1 is not .* \(element 2\)"):
        bad.lazy().with_columns(*skirt).collect()


def test_doubts_and_counts_are_kept():
    girths = pl.DataFrame({"girth": [71.0, None, 710.0]})
    (lazy,) = girths.select(recloth.girth_doubts(pl.col("girth")))
    for doubts in (recloth.girth_doubts(girths["girth"]), lazy):
        assert doubts[1] is None
        assert recloth.doubts(doubts[0]) == recloth.doubts(recloth.girth_doubts(71.0)) != []
        assert recloth.doubts(doubts[2]) == []
    assert lazy.dtype == pl.UInt64


@pytest.mark.parametrize("values", [["71 cm"], [True], [[1.0, 2.0]]])
def test_a_column_of_no_numbers_is_a_type_error(values):
    with pytest.raises(TypeError, match="^circle_skirt: waist must be a column of numbers, not of "):
        recloth.circle_skirt(pl.Series(values), 600)
