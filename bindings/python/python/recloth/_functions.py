# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
"""Every function of the core, with names, defaults and named results."""

from collections import namedtuple
from enum import IntEnum

from . import _call, _core

_new = tuple.__new__


CircleSkirt = namedtuple("CircleSkirt", ["waist_radius", "hem_radius", "hem_length"], module="recloth")
CircleSkirt.__doc__ = "A skirt cut from part of a ring: where to set the compass, and how long the hem comes out."
CircleSkirt.waist_radius.__doc__ = "Radius of the waist edge (mm)"
CircleSkirt.hem_radius.__doc__ = "Radius of the hem edge (mm)"
CircleSkirt.hem_length.__doc__ = "Length of the hem edge (mm)"


def circle_skirt(waist, length, fraction=1.0):
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
    if type(waist) is float and type(length) is float and type(fraction) is float:
        return _new(CircleSkirt, _core.one_circle_skirt(waist, length, fraction))
    return _call.scalars("circle_skirt", CircleSkirt, ("waist", "length", "fraction",), (waist, length, fraction,))


__all__ = [
    "CircleSkirt",
    "circle_skirt",
]
