"""Numbers out of what a caller gives, or a TypeError that names function and argument.

No text is read as a number (``recloth.parse_length`` does that, unit and all), and True is no measure. A number beyond
what a float holds becomes an infinity, which the core then refuses by name.
"""

import math

import numpy as np

from ._errors import ReclothError

_NOT_WHOLE, _OUT_OF_RANGE, _NOT_FINITE = -6, -2, -1
_TEXT = (str, bytes, bytearray)


def number(value, function, argument):
    """One number as a float."""
    if not isinstance(value, (bool, np.bool_, *_TEXT)):
        try:
            return float(value)
        except OverflowError:
            return math.inf if value > 0 else -math.inf
        except (TypeError, ValueError):
            pass
    raise _wrong(function, argument, "a number", value)


def array(value, function, argument):
    """An array of floats of any shape; a masked array stays one."""
    wanted = "a number or an array of numbers"
    try:
        given = np.asanyarray(value)
    except (TypeError, ValueError):
        raise _wrong(function, argument, wanted, value, "of uneven rows") from None
    if given.dtype.kind in "iuf":
        return given.astype(np.float64, copy=False)
    if given.dtype.kind != "O":
        raise _wrong(function, argument, wanted, value, "" if given.ndim == 0 else f"of {given.dtype}")
    items = [number(item, function, argument) for item in given.flat]
    return np.array(items, np.float64).reshape(given.shape)


def list_of(value, function, argument):
    """One list of numbers, its items side by side; a masked item is as none: NaN."""
    given = np.ma.filled(array(value, function, argument), math.nan)
    if given.ndim != 1:
        raise TypeError(f"{function}: {argument} must be one list of numbers, not of shape {given.shape}")
    return np.ascontiguousarray(given)


def whole(value, function, argument, most=0xFFFFFFFF):
    """A whole number from 0 to the most, as an int."""
    given = number(value, function, argument)
    if not _is_whole(given) or int(value) > most:
        raise _no_whole(given, function, argument, most)
    return int(value)


def wholes_of(value, function, argument, most=0xFFFFFFFF):
    """A list of whole numbers as the core takes it."""
    given = list_of(value, function, argument)
    good = _is_whole(given) & (given <= most)
    if not good.all():
        at = int(np.argmin(good))
        raise _no_whole(float(given[at]), function, argument, most, at)
    return given.astype(np.uint32)


def _is_whole(given):
    return np.isfinite(given) & (given == np.trunc(given)) & (given >= 0)


def _no_whole(given, function, argument, most, at=None):
    if not math.isfinite(given):
        kind, status, text = "NotFinite", _NOT_FINITE, "is not a finite number"
    elif given != math.trunc(given):
        kind, status, text = "NotWhole", _NOT_WHOLE, "is not a whole number"
    else:
        kind, status, text = "OutOfRange", _OUT_OF_RANGE, f"is not between 0 and {most}"
    place = argument if at is None else f"{argument}[{at}]"
    text = f"{place} = {given:g} {text}"
    return ReclothError(function, kind, status, argument, given, 0.0, float(most), at, text)


def _wrong(function, argument, wanted, value, where=""):
    text = " (recloth.parse_length reads text)" if isinstance(value, _TEXT) else ""
    kind = f"{type(value).__name__} {where}".rstrip()
    return TypeError(f"{function}: {argument} must be {wanted}, not {kind}{text}")
