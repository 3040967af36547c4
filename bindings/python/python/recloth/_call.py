"""The paths from a generated function to the compiled core."""

import math
import numbers

import numpy as np

from . import _core
from ._errors import ReclothError

STATUS_NOT_WHOLE = -6
STATUS_CHOICE = -7


def choice(kind, value, function, argument):
    """The number of a choice given as a member, its name in small letters, or its number."""
    try:
        return int(kind[value.upper()] if isinstance(value, str) else kind(value))
    except (KeyError, ValueError, AttributeError):
        offered = ", ".join(repr(member.name.lower()) for member in kind)
        text = f"{argument} = {value!r} is not one of {offered}"
        nan = math.nan
        raise ReclothError(
            function, "Choice", STATUS_CHOICE, argument, nan, nan, nan, None, text
        ) from None


def scalars(function, record, names, given):
    """A function of numbers, or of arrays element by element."""
    one = getattr(_core, "one_" + function)
    if all(isinstance(value, numbers.Real) for value in given):
        answer = one(*map(float, given))
        return answer if record is None else record._make(answer)
    for name, value in zip(names, given):
        if value is None or isinstance(value, (str, bytes)):
            raise TypeError(
                f"{function}: {name} must be a number or an array of numbers, "
                f"not {type(value).__name__} (recloth.parse_length reads text)"
            )
    if any(_is_foreign(value) for value in given):
        return _fields(function, record, given)
    given = [value if isinstance(value, np.ndarray) else np.asarray(value, float) for value in given]
    *answers, status = getattr(_core, "all_" + function)(*given)
    bad = np.ma.filled(np.asanyarray(status), 0) != 0
    if bad.any():
        index = tuple(int(place) for place in np.unravel_index(np.argmax(bad), bad.shape))
        element = [float(np.broadcast_to(value, bad.shape)[index]) for value in given]
        try:
            one(*element)
        except ReclothError as error:
            raise error.at_index(index) from None
    return answers[0] if record is None else record._make(answers)


def _is_foreign(value):
    """A column or lazy array that takes ufuncs itself: one answer at a time."""
    return hasattr(value, "__array_ufunc__") and not isinstance(value, (np.ndarray, np.generic))


def _fields(function, record, given):
    if record is None:
        return getattr(_core, function)(*given)
    return record._make(
        getattr(_core, f"{function}_{field}")(*given) for field in record._fields
    )


def text_of(value, function, argument):
    """A text as the core takes it."""
    if not isinstance(value, str):
        raise TypeError(f"{function}: {argument} must be a str, not {type(value).__name__}")
    return value


def numbers_of(value, function, argument):
    """A list of numbers as the core takes it."""
    array = np.ascontiguousarray(value, dtype=np.float64)
    if array.ndim != 1:
        raise TypeError(f"{function}: {argument} must be one list of numbers")
    return array


def counts_of(value, function, argument):
    """A list of whole numbers as the core takes it."""
    array = numbers_of(value, function, argument)
    whole = (array == np.trunc(array)) & (array >= 0) & (array <= 0xFFFFFFFF)
    if not whole.all():
        at = int(np.argmin(whole))
        text = f"{argument}[{at}] = {array[at]:g} is not a whole number"
        raise ReclothError(
            function, "NotWhole", STATUS_NOT_WHOLE, argument, float(array[at]),
            0.0, float(0xFFFFFFFF), at, text,
        )
    return array.astype(np.uint32)
