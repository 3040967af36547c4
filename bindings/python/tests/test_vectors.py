"""Every row of tests/vectors through the functions and through the ufuncs."""

import math

import answers
import numpy as np
import pytest
import recloth

FUNCTIONS = answers.spec()["functions"]
VECTORS = answers.ROOT / "tests/vectors"


def close(wanted, got, tolerance):
    if tolerance in ("", "exact"):
        return float(wanted) == got or (math.isnan(float(wanted)) and math.isnan(got))
    return abs(float(wanted) - got) <= float(tolerance)


def same(wanted, got, tolerance):
    if isinstance(got, str):
        return wanted == got
    if isinstance(got, np.ndarray):
        items = wanted.split()
        return len(items) == len(got) and all(map(close, items, got, [tolerance] * len(got)))
    return close(wanted, got, tolerance)


def is_scalar(function):
    return function["answer"]["kind"] != "text" and all(
        argument["kind"] in ("number", "count") or isinstance(argument["kind"], dict)
        for argument in function["arguments"]
    )


@pytest.mark.parametrize("function", FUNCTIONS, ids=lambda function: function["name"])
def test_every_row(function):
    call = getattr(recloth, function["name"])
    checked = 0
    for name, cells, row in answers.rows(VECTORS, function):
        given = answers.given(function, cells)
        status = int(row["status"])
        if status:
            with pytest.raises(recloth.ReclothError) as caught:
                call(*given)
            assert caught.value.status == status, name
            assert row["comment"].startswith(caught.value.argument + ":"), name
        else:
            got = call(*given)
            parts = got if isinstance(got, tuple) else (got,)
            for output, value in zip(answers.outputs(function), parts, strict=True):
                if row[output]:
                    assert same(row[output], value, row["tolerance"]), (name, output, value)
        checked += 1
    assert checked


@pytest.mark.parametrize("function", list(filter(is_scalar, FUNCTIONS)), ids=lambda f: f["name"])
def test_ufuncs_give_the_bits_of_the_function(function):
    """All rows at once, as arrays: each ufunc against the function row by row, NaN on error."""
    call = getattr(recloth, function["name"])
    choices = [
        argument["kind"].get("choice") if isinstance(argument["kind"], dict) else None
        for argument in answers.inputs(function)
    ]
    columns, wanted = [], []
    for _, cells, _ in answers.rows(VECTORS, function):
        given = answers.given(function, cells)
        columns.append([
            getattr(recloth, choice)[value.upper()] if choice else value
            for choice, value in zip(choices, given)
        ])
        try:
            got = call(*given)
        except recloth.ReclothError:
            got = (math.nan,) * len(function["answer"]["fields"])
        wanted.append(got if isinstance(got, tuple) else (got,))
    columns = np.array(columns, float).T
    good = [not math.isnan(answer[0]) for answer in wanted]
    for place, field in enumerate(function["answer"]["fields"]):
        ufunc = getattr(recloth.ufuncs, function["name"])
        if function["answer"]["kind"] == "record":
            ufunc = getattr(ufunc, field["name"])
        # A refused row raises the invalid flag and no other, a good row none: nothing is divided by zero on the way.
        with np.errstate(divide="raise", over="raise", invalid="ignore"):
            got = ufunc(*columns)
        with np.errstate(divide="raise", over="raise", invalid="raise"):
            ufunc(*columns[:, good])
        column = np.array([answer[place] for answer in wanted], float)
        if field["whole"]:
            column = np.nan_to_num(column).astype(np.uint64 if field["unit"] == "bits" else np.uint32)
            assert got.dtype == column.dtype, field["name"]
        np.testing.assert_array_equal(got, column, err_msg=field["name"])
