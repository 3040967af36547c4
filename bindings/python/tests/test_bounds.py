"""What an error says would do, does: every bound that it names is given back to the function."""

import math

import answers
import pytest
import recloth

FUNCTIONS = answers.spec()["functions"]
VECTORS = answers.ROOT / "tests/vectors"
# Numbers of corners between these bounds would do, but for those that are given twice.
CORNERS = {"starts", "ends", "spare_starts", "spare_ends"}
STEPS = (0.01, 0.3, 0.7, 0.99, 1.01, 1.5, 4, 30)


def error_of(call, given):
    try:
        call(*given)
    except recloth.ReclothError as error:
        return error
    return None


def replaced(given, place, at, value):
    changed = list(given)
    if at is None:
        changed[place] = value
    else:
        changed[place] = [*given[place][:at], value, *given[place][at + 1 :]]
    return changed


def varied(arguments, given):
    """The arguments with one number changed: to the ends of its range, and to parts and times of itself."""
    for place, argument in enumerate(arguments):
        if argument["kind"] not in ("number", "count", "numbers", "counts"):
            continue
        items = argument["kind"].endswith("s")
        low, high = argument["range"]
        for at in range(len(given[place])) if items else [None]:
            own = given[place] if at is None else given[place][at]
            for value in (low, high, *(own * step for step in STEPS)):
                if low <= value <= high:
                    whole = argument["unit"] == "count"
                    yield replaced(given, place, at, int(value) if whole else value)


def test_every_bound_that_an_error_names_would_do():
    tried = set()
    for function in FUNCTIONS:
        call = getattr(recloth, function["name"])
        arguments = [each for each in function["arguments"] if each["kind"] != "fill"]
        names = [each["name"] for each in arguments]
        _, cells, _ = next(iter(answers.rows(VECTORS, function)))
        given = [list(v) if hasattr(v, "__len__") and not isinstance(v, str) else v
                 for v in answers.given(function, cells)]
        for row in varied(arguments, given):
            error = error_of(call, row)
            if error is None or error.kind != "NoSolution":
                continue
            place = names.index(error.argument)
            was = row[place] if error.at is None else row[place][error.at]
            if was != error.value:  # not given but found, as the total of a chain
                continue
            if error.argument in CORNERS:
                continue
            low, high = arguments[place]["range"]
            for bound in (error.min, error.max):
                if math.isnan(bound) or not low <= bound <= high:
                    continue
                whole = arguments[place]["unit"] == "count"
                mended = replaced(row, place, error.at, int(bound) if whole else bound)
                again = error_of(call, mended)
                asked = (error.argument, error.at)
                assert again is None or (again.argument, again.at) != asked, (
                    f"{function['name']}: {error}; {bound!r} given: {again}"
                )
                tried.add((function["name"], error.argument, bound == error.min))
    assert len(tried) > 80


@pytest.mark.parametrize(
    ("call", "said"),
    [
        (lambda: recloth.cap_width_bound(500, 260), "at least 0 and less than 250"),
        (lambda: recloth.even_spacing(30, 20, 3), "more than 30"),
        (lambda: recloth.dart_turned(300, 120, 80), "between 0 and 240"),
    ],
)
def test_a_limit_that_would_not_do_is_called_so(call, said):
    with pytest.raises(recloth.ReclothError) as caught:
        call()
    assert str(caught.value).endswith("it must be " + said)
