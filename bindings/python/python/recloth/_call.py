"""The paths from a generated function to the compiled core."""

import math
import numbers

import numpy as np

from . import _columns, _core, _numbers
from ._errors import ReclothError

_CHOICE, _NOT_UTF8 = -7, -20


def choice(kind, value, function, argument):
    """The number of a choice given as a member, its name in small letters, or its number."""
    try:
        if isinstance(value, (bool, np.bool_)):
            raise ValueError
        return int(kind[value.upper()] if isinstance(value, str) else kind(value))
    except (KeyError, ValueError, AttributeError, TypeError):
        offered = ", ".join(repr(member.name.lower()) for member in kind)
        text = f"{argument} = {value!r:.60} is not one of {offered}"
        nan = math.nan
        raise ReclothError(
            function, "Choice", _CHOICE, argument, nan, nan, nan, None, text
        ) from None


# What numbers nearly always are: the way round for any kind of number costs more than the sum.
_PLAIN = frozenset((float, int))


def scalars(function, record, names, given):
    """A function of numbers, or of arrays element by element."""
    one = getattr(_core, "one_" + function)
    if _PLAIN.issuperset(map(type, given)):
        try:
            answer = one(*map(float, given))
            return answer if record is None else record._make(answer)
        except OverflowError:
            pass  # An int no float holds, told apart below.
    if all(isinstance(value, numbers.Real) for value in given):
        answer = one(*[_numbers.number(value, function, name) for name, value in zip(names, given)])
        return answer if record is None else record._make(answer)
    if any(_columns.is_column(value) for value in given):
        answers = _columns.answers(function, names, given)
    else:
        given = [_numbers.array(value, function, name) for name, value in zip(names, given)]
        *answers, status = getattr(_core, "all_" + function)(*given)
        refuse(function, np.ma.filled(np.asanyarray(status), 0), given)
    return answers[0] if record is None else record._make(answers)


def refuse(function, status, given):
    """Raises the error of the first element whose status is not 0."""
    bad = status != 0
    if bad.any():
        index = tuple(int(place) for place in np.unravel_index(np.argmax(bad), bad.shape))
        element = [float(np.broadcast_to(value, bad.shape)[index]) for value in given]
        try:
            getattr(_core, "one_" + function)(*element)
        except ReclothError as error:
            raise error.at_index(index or None) from None


def text_of(value, function, argument):
    """A text as the core takes it."""
    if not isinstance(value, str):
        raise TypeError(f"{function}: {argument} must be a str, not {type(value).__name__}")
    try:
        value.encode()
    except UnicodeEncodeError as error:
        nan = math.nan
        text = f"{argument} cannot be written as UTF-8"
        raise ReclothError(
            function, "NotUtf8", _NOT_UTF8, argument, nan, nan, nan, error.start, text
        ) from None
    return value
