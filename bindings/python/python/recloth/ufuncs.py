# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
"""Each answer of each function of numbers as a NumPy ufunc of one output.

Inputs are positional. An error gives NaN and raises the invalid flag, so that
``np.errstate`` decides what becomes of it. They take masked arrays, pandas, polars,
dask and xarray columns.
"""

from ._core import (
    circle_skirt_waist_radius,
    circle_skirt_hem_radius,
    circle_skirt_hem_length,
)

__all__ = [
    "circle_skirt_waist_radius",
    "circle_skirt_hem_radius",
    "circle_skirt_hem_length",
]
