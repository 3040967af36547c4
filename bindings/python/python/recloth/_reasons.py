"""Why rows of a table are refused."""

import inspect
import math

import numpy as np

from . import _functions, _numbers
from ._errors import ReclothError


def reasons(function, *given, **named):
    """Why a function refuses each row: a sentence, or None where it answers.

    For tables, where ``ufuncs`` answer every row they can and leave NaN in the others. A blank is
    a reason too. Columns are of any kind that is an array of numbers, the rows in order.

    Parameters
    ----------
    function : callable
        a function of numbers of this package, as ``recloth.circle_skirt``
    *given, **named
        what it takes: columns, numbers, choices

    Returns
    -------
    numpy.ndarray of object
        of the shape the columns have together

    Examples
    --------
    >>> recloth.reasons(recloth.circle_skirt, [710, -1], 600).tolist()
    [None, 'waist = -1 is not between 1 and 100000']
    """
    name = getattr(function, "__name__", "")
    if not name or getattr(_functions, name, None) is not function or name not in _scalars():
        raise TypeError("reasons: function must be a function of numbers of recloth, as recloth.circle_skirt")
    bound = inspect.signature(function).bind(*given, **named)
    columns = {
        argument: value if isinstance(value, (str, int)) else _column(value, argument)
        for argument, value in bound.arguments.items()
    }
    shape = np.broadcast_shapes(*map(np.shape, columns.values()))
    rows = [np.broadcast_to(np.asarray(column, object), shape).flat for column in columns.values()]
    found = np.empty(math.prod(shape), object)
    for place, row in enumerate(zip(*rows)):
        try:
            function(**dict(zip(columns, row)))
        except ReclothError as error:
            found[place] = error.text
    return found.reshape(shape)


def _column(value, argument):
    """An array in which what is missing is NaN."""
    if not isinstance(value, np.ndarray) and hasattr(value, "__array_ufunc__"):
        value = np.asarray(value, float)
    return np.ma.filled(_numbers.array(value, "reasons", argument), math.nan)


def _scalars():
    from . import ufuncs

    return ufuncs.__all__


reasons.__module__ = "recloth"
