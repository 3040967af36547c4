"""Functions on the columns of other libraries: what comes out is of the library that went in.

A missing entry that the library knows as one (a null, NA) stays missing; what a function refuses raises its error, with
the place of the first such element. For a lazy column that is when it is computed, and of several chunks that refuse,
the one computed first speaks.
"""

import functools

import numpy as np

from . import _core
from ._errors import ReclothError


def is_column(value):
    """Whether a value takes ufuncs itself."""
    own = getattr(value, "__array_ufunc__", None)
    return own is not None and not isinstance(value, (np.ndarray, np.generic))


def answers(function, names, given):
    """Every answer of a function of numbers as a column, in the order of its record."""
    for name, value in zip(names, given):
        if not _is_numeric(value):
            kind = getattr(value, "dtype", type(value).__name__)
            raise TypeError(f"{function}: {name} must be a column of numbers, not of {kind}")
    of = {type(value).__module__.partition(".")[0] for value in given if is_column(value)}
    if "xarray" in of:
        return _of_xarray(function, given)
    if "dask" in of and all(_is_plain(value) or hasattr(value, "chunks") for value in given):
        return _of_dask(function, given)
    if "polars" in of and any(type(value).__name__ == "Expr" for value in given):
        return _of_polars(function, given)
    return _of_any(function, given)


def _is_plain(value):
    return not is_column(value)


def _is_numeric(value):
    if isinstance(value, (bool, np.bool_, str, bytes)) or value is None:
        return False
    kind = getattr(value, "dtype", None)
    if kind is None:
        # A number, a list, or several columns in one: the ufunc says what it does not take.
        return True
    if callable(getattr(kind, "is_numeric", None)):
        return kind.is_numeric()
    return getattr(kind, "kind", "f") in "iuf"


def _ufuncs(function):
    from . import ufuncs

    return _tuple(getattr(ufuncs, function))


def _call(function, *given):
    """The function by its name, so that it travels to other processes as little more than that."""
    from . import _functions

    return getattr(_functions, function)(*given)


def _tuple(answer):
    return answer if isinstance(answer, tuple) else (answer,)


def _record(function):
    """The type of an array that holds every answer side by side."""
    ufuncs = _ufuncs(function)
    names = getattr(ufuncs, "_fields", ("value",))
    return np.dtype([(name, ufunc.types[0][-1]) for name, ufunc in zip(names, ufuncs)])


def _of_any(function, given):
    """By ufuncs of one output, which is all that some columns take: pandas, a polars Series."""
    from ._call import refuse

    # Under a null there is any number, which must not warn.
    with np.errstate(all="ignore"):
        status = getattr(_core, "status_" + function)(*given)
        codes = np.nan_to_num(np.asarray(status, float))
        if codes.any():
            # Aligned and as long as the answer: what is added is 0 where it counts.
            aligned = [np.asarray(np.add(status * 0, value), float) for value in given]
            refuse(function, codes, aligned)
        return [ufunc(*given) for ufunc in _ufuncs(function)]


def _of_xarray(function, given):
    import xarray

    options = xarray.get_options()
    return _tuple(xarray.apply_ufunc(
        functools.partial(_call, function),
        *given,
        output_core_dims=[()] * len(_ufuncs(function)),
        join=options["arithmetic_join"],
        dataset_join=options["arithmetic_join"],
        dataset_fill_value=np.nan,
        dask="allowed",
        # As its own arithmetic does.
        keep_attrs=options["keep_attrs"] in ("default", True),
    ))


def _of_dask(function, given):
    import dask.array

    arrays = [dask.array.asarray(value) for value in given if np.ndim(value)]
    # One shape and the same chunks, so that each block knows its place.
    arrays = iter(dask.array.broadcast_arrays(*arrays))
    lazy = [next(arrays) if np.ndim(value) else value for value in given]
    record = _record(function)
    dimensions = max(map(np.ndim, lazy))
    packed = dask.array.map_blocks(
        _block, *lazy, function=function, dtype=record, meta=np.empty((0,) * dimensions, record)
    )
    return [packed[name] for name in record.names]


def _block(*given, function, block_info=None):
    """Every answer for one block; an error tells the place in the whole array."""
    try:
        answer = _tuple(_call(function, *given))
    except ReclothError as error:
        starts = [start for start, _ in block_info[None]["array-location"]] if block_info else []
        if error.index is None or len(starts) != len(error.index):
            raise
        raise error.at_index(tuple(map(sum, zip(starts, error.index)))) from None
    masked = any(isinstance(column, np.ma.MaskedArray) for column in answer)
    record = _record(function)
    packed = (np.ma if masked else np).empty(np.broadcast_shapes(*map(np.shape, given)), record)
    for name, column in zip(record.names, answer):
        packed[name] = column
    return packed


def _of_polars(function, given):
    import polars

    record = _record(function)
    kinds = {"f8": polars.Float64, "u4": polars.UInt32, "u8": polars.UInt64}
    is_lazy = [isinstance(value, polars.Expr) for value in given]
    columns = [value.alias(str(place)) for place, value in enumerate(given) if is_lazy[place]]

    def rows(struct):
        filled = [struct.struct.field(str(place)) if is_lazy[place] else value for place, value in enumerate(given)]
        answer = _tuple(_call(function, *filled))
        return polars.DataFrame(dict(zip(record.names, answer))).cast(kinds_by_name).to_struct(struct.name)

    kinds_by_name = {name: kinds[record[name].str[1:]] for name in record.names}
    packed = polars.struct(columns).map_batches(rows, return_dtype=polars.Struct(kinds_by_name))
    return [packed.struct.field(name) for name in record.names]
