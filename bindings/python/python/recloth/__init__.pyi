# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
from collections.abc import Sequence
from enum import IntEnum
from typing import Any, Generic, NamedTuple, TypeVar, overload

import numpy as np
from numpy.typing import ArrayLike, NDArray

from . import ufuncs as ufuncs

__version__: str
MM: float
CM: float
M: float
INCH: float
FOOT: float
YARD: float

class ReclothError(ValueError):
    function: str
    kind: str
    status: int
    argument: str
    value: float
    min: float
    max: float
    at: int | None
    text: str
    index: tuple[int, ...] | None
    def __init__(
        self,
        function: str,
        kind: str,
        status: int,
        argument: str,
        value: float,
        min: float,
        max: float,
        at: int | None,
        text: str,
        index: tuple[int, ...] | None = None,
    ) -> None: ...
    def at_index(self, index: tuple[int, ...]) -> ReclothError: ...
    def __reduce__(self) -> tuple[type[ReclothError], tuple[object, ...]]: ...

def doubt_text(bit: int) -> str | None: ...
def caution_text(bit: int) -> str | None: ...
def doubts(bits: int) -> list[str]: ...
def cautions(bits: int) -> list[str]: ...

_N = TypeVar("_N")
_W = TypeVar("_W")

class CircleSkirt(NamedTuple, Generic[_N]):
    waist_radius: _N
    hem_radius: _N
    hem_length: _N

@overload
def circle_skirt(waist: float, length: float, fraction: float = ...) -> CircleSkirt[float]: ...  # type: ignore[overload-overlap]

@overload
def circle_skirt(waist: ArrayLike, length: ArrayLike, fraction: ArrayLike = ...) -> CircleSkirt[NDArray[np.float64]]:
    """Radii of a skirt cut from part of a ring.

    The waist edge is an arc: `waist = 2π · fraction · waist_radius`. A fraction above 1 is made of several sectors.

    Parameters
    ----------
    waist : array_like
        finished waist edge, ease included (mm, 1 to 100000)
    length : array_like
        waist edge to hem edge, no allowances (mm, 0 to 100000)
    fraction : array_like, default 1
        part of a full ring: 0.5 is a half circle (0.01 to 4)

    Returns
    -------
    waist_radius : float
        Radius of the waist edge (mm)
    hem_radius : float
        Radius of the hem edge (mm)
    hem_length : float
        Length of the hem edge (mm)

    Raises
    ------
    ReclothError
        `NotFinite` or `OutOfRange`, naming the argument.

    Notes
    -----
    Source: Arc length of a sector. `tests/vectors/circle_skirt.csv` has published and hand-worked rows.

    Example: circle_skirt(waist=710, length=600, fraction=0.5) gives waist_radius 226.00, hem_radius 826.00, hem_length 2594.96
    """

__all__: list[str]
