"""Whatever is given to a function of numbers is taken for what it is, or refused with function and argument named.

Every function of spec.json, one argument of its base row at a time.
"""

import array
import decimal
import fractions
import math

import answers
import numpy as np
import pytest
import recloth

FUNCTIONS = answers.spec()["functions"]
VECTORS = answers.ROOT / "tests/vectors"

HUGE = 10**400

NO_NUMBERS = [
    None, "71 cm", "71", "", b"71", True, np.True_, 1j, object(), {}, {1.0}, lambda: 1.0, iter([1.0]),
    np.array(["71"]), np.array([b"71"]), np.array(["2020-01-01"], "M8[D]"), np.array([True]), np.array([1j]),
    np.array([(1.0,)], [("waist", float)]), [None], ["71"], [object()], [True, None], [[1.0], [1.0, 2.0]],
]
# No list, where one is wanted; beside what is no number.
NO_LISTS = [1.0, np.float64(1.0), np.array(1.0), [[1.0, 2.0], [3.0, 4.0]], np.ones((1, 2, 3)), [[]]]
NO_CHOICES = [None, True, np.True_, "", "nonsense", "\ud800", b"up", -1, 99, HUGE, 0.5, math.nan, [0], [], {}, object()]
NO_TEXTS = [None, True, 71, 71.0, b"71 cm", ["71 cm"], np.array(["71 cm", "72 cm"]), object()]


class Tape(np.ndarray):
    """A subclass of an array."""


def forms(value):
    """The same number as an array of one, in every form an array comes in."""
    two = np.array([value, value])
    locked = two.copy()
    locked.flags.writeable = False
    yield from (
        [value, value], (value, value), two, two.astype(">f8"), two.astype("<f8"), two.astype(np.longdouble),
        locked, two.view(Tape), array.array("d", two), memoryview(two), np.repeat(two, 3)[::3], two[::-1],
        np.array([value, value], object), np.array([decimal.Decimal(value)] * 2),
        [fractions.Fraction(value), value], np.ma.array(two), range(int(value), int(value) + 2)[:1]
        if value == int(value) and abs(value) < 1e9 else two,
    )


def one_number(value):
    """The same number in every form one number comes in."""
    yield from (value, np.float64(value), decimal.Decimal(value), fractions.Fraction(value), np.array(value))
    yield np.array(value, object)
    if value == int(value) and abs(value) < 2**53:
        yield from (int(value), np.int64(value), float(value))
    if float(np.float32(value)) == value:
        yield np.float32(value)


def base(function):
    for _, cells, row in answers.rows(VECTORS, function):
        assert row["status"] == "0"
        return answers.given(function, cells)


def is_scalar(function):
    kinds = [argument["kind"] for argument in function["arguments"]]
    numbers = all(kind in ("number", "count") or isinstance(kind, dict) for kind in kinds)
    return numbers and function["answer"]["kind"] != "text"


def arguments(wanted):
    """Function, its base row, and the place and kind of each argument of these kinds."""
    return list(each_argument(wanted))


def each_argument(wanted):
    for function in FUNCTIONS:
        given = base(function)
        for place, argument in enumerate(answers.inputs(function)):
            kind = "choice" if isinstance(argument["kind"], dict) else argument["kind"]
            if kind in wanted:
                yield pytest.param(
                    function, given, place, argument, id=f"{function['name']}-{argument['name']}"
                )


def with_one(given, place, value):
    return [value if index == place else other for index, other in enumerate(given)]


def refused(function, given, place, argument, value, kind):
    """The exception, which must be of this kind and name function and argument, briefly."""
    call, name = getattr(recloth, function["name"]), argument["name"]
    with pytest.raises(kind) as caught:
        call(*with_one(given, place, value))
    text = str(caught.value)
    assert text.startswith(f"{function['name']}: {name}"), (value, text)
    assert len(text) < 300, text
    if kind is recloth.ReclothError:
        assert (caught.value.function, caught.value.argument) == (function["name"], name)
    return caught.value


def flat(answer):
    parts = answer if isinstance(answer, tuple) else (answer,)
    return [part.tolist() if isinstance(part, np.ndarray) else part for part in parts]


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("number", "count")))
def test_what_is_no_number_is_a_type_error(function, given, place, argument):
    for value in NO_NUMBERS:
        refused(function, given, place, argument, value, TypeError)
    if not is_scalar(function):
        for value in ([1.0, 2.0], np.ones(2), []):
            refused(function, given, place, argument, value, TypeError)


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("number", "count")))
def test_what_no_float_holds_is_refused_by_name(function, given, place, argument):
    for value in (HUGE, -HUGE, math.nan, math.inf, np.float32("nan"), decimal.Decimal("1e999"), fractions.Fraction(HUGE)):
        error = refused(function, given, place, argument, value, recloth.ReclothError)
        assert error.kind == "NotFinite" and error.index is None
        if is_scalar(function):
            error = refused(function, given, place, argument, [given[place], value], recloth.ReclothError)
            assert (error.kind, error.index) == ("NotFinite", (1,))


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("numbers", "counts")))
def test_what_is_no_list_is_a_type_error(function, given, place, argument):
    for value in NO_NUMBERS + NO_LISTS:
        refused(function, given, place, argument, value, TypeError)
    for item in (HUGE, math.nan, math.inf):
        error = refused(
            function, given, place, argument, [*given[place][:-1], item], recloth.ReclothError
        )
        assert (error.kind, error.at) == ("NotFinite", len(given[place]) - 1)


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("numbers", "counts")))
def test_a_list_comes_in_any_form(function, given, place, argument):
    call, values = getattr(recloth, function["name"]), np.array(given[place], float)
    wanted = flat(call(*given))
    locked = values.copy()
    locked.flags.writeable = False
    for value in (
        tuple(given[place]), values, values.astype(">f8"), np.repeat(values, 3)[::3], locked, values.view(Tape),
        array.array("d", values), memoryview(values), values.astype(object), np.ma.array(values),
        [decimal.Decimal(item) for item in given[place]],
    ):
        np.testing.assert_equal(flat(call(*with_one(given, place, value))), wanted)


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("choice",)))
def test_what_is_no_choice_is_refused_by_name(function, given, place, argument):
    for value in NO_CHOICES:
        assert refused(function, given, place, argument, value, recloth.ReclothError).kind == "Choice"
    call, kind = getattr(recloth, function["name"]), getattr(recloth, argument["kind"]["choice"])
    member = kind[given[place].upper()]
    for value in (member, int(member), np.int64(member), float(member), given[place].upper(), np.str_(given[place])):
        np.testing.assert_equal(flat(call(*with_one(given, place, value))), flat(call(*given)))


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("text",)))
def test_what_is_no_text_is_a_type_error(function, given, place, argument):
    for value in NO_TEXTS:
        refused(function, given, place, argument, value, TypeError)
    error = refused(function, given, place, argument, "71\ud800", recloth.ReclothError)
    assert (error.kind, error.at) == ("NotUtf8", 2)
    refused(function, given, place, argument, "7" * 100_000, recloth.ReclothError)


@pytest.mark.parametrize(("function", "given", "place", "argument"), arguments(("number", "count")))
def test_a_number_comes_in_any_form(function, given, place, argument):
    call = getattr(recloth, function["name"])
    wanted = flat(call(*given))
    values = list(one_number(given[place]))
    if not is_scalar(function):
        values = [value for value in values if not isinstance(value, np.ndarray)]
    for value in values:
        np.testing.assert_equal(flat(call(*with_one(given, place, value))), wanted)


@pytest.mark.parametrize(("function", "given", "place", "argument"), [
    param for param in arguments(("number", "count")) if is_scalar(param.values[0])
])
def test_an_array_comes_in_any_form(function, given, place, argument):
    call = getattr(recloth, function["name"])
    wanted = flat(call(*given))
    wholes = {"bits": np.uint64, "count": np.uint32}
    kinds = [np.dtype(wholes.get(field["unit"], float)) for field in function["answer"]["fields"]]
    for value in forms(given[place]):
        got = call(*with_one(given, place, value))
        for column, one, kind in zip(got if isinstance(got, tuple) else (got,), wanted, kinds, strict=True):
            assert isinstance(column, np.ndarray) and column.dtype == kind
            np.testing.assert_equal(np.ma.filled(column).tolist(), [one] * len(column))
    # Nothing in, nothing out.
    for empty in ([], np.empty((0, 3)), np.array([], object), np.array([], np.int32)):
        got = call(*with_one(given, place, empty))
        for column, kind in zip(got if isinstance(got, tuple) else (got,), kinds, strict=True):
            assert column.shape == np.shape(empty) and column.dtype == kind


@pytest.mark.parametrize("function", list(filter(is_scalar, FUNCTIONS)), ids=lambda function: function["name"])
def test_ufuncs_write_only_where_they_may(function):
    found = getattr(recloth.ufuncs, function["name"])
    given = [
        getattr(recloth, argument["kind"]["choice"])[value.upper()] if isinstance(argument["kind"], dict) else value
        for argument, value in zip(answers.inputs(function), base(function))
    ]
    wanted = flat(getattr(recloth, function["name"])(*given))
    for ufunc, value in zip(found if isinstance(found, tuple) else (found,), wanted, strict=True):
        locked = np.full(2, 7.0)
        locked.flags.writeable = False
        with pytest.raises(ValueError, match="read-only"):
            ufunc(*given, out=locked)
        assert locked.tolist() == [7, 7]
        with pytest.raises(TypeError, match="Cannot cast"):
            ufunc(*given, out=np.zeros(2, bool))
        with pytest.raises(TypeError):
            ufunc("71 cm", *given[1:])
        # A good row raises no flag, into whatever memory it is written.
        with np.errstate(all="raise", under="ignore"):
            for out in (np.zeros(6)[::3], np.zeros(2, ">f8"), np.zeros((2, 2), order="F")):
                np.testing.assert_equal(ufunc(*given, out=out), np.full(out.shape, value, float))
