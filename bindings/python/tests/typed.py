"""What an editor and mypy see: not run, but checked by `mypy --strict`."""

from typing import Any

import numpy as np
import recloth
from numpy.typing import NDArray

one: float = recloth.circle_skirt(710, 600, 0.5).hem_length
many: NDArray[np.float64] = recloth.circle_skirt(np.array([710.0, 720.0]), 600).hem_length
column: NDArray[np.float64] = recloth.bias_along_selvedge([25.4, 50.8])
text: str = recloth.format_length(recloth.parse_length("28 1/2 in"), recloth.Style.INCH_EIGHTH)
tapes: NDArray[Any] = recloth.round_set([10.4, 10.4, 10.2], 1).tapes
rounded: float = recloth.round_to(711.0, 25.4 / 8, "up")
wrong = recloth.circle_skirt("710", 600)  # type: ignore[call-overload]
