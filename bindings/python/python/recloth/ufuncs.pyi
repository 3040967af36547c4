# Written by `cargo xtask generate` from the doc comments of the core; do not edit.
import numpy as np

circle_skirt_waist_radius: np.ufunc
circle_skirt_hem_radius: np.ufunc
circle_skirt_hem_length: np.ufunc

__all__ = [
    "circle_skirt_waist_radius",
    "circle_skirt_hem_radius",
    "circle_skirt_hem_length",
]
