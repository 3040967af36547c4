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

corners = np.array([[0.0, 0.0], [300.0, 0.0], [300.0, 50.0], [0.0, 50.0]])
hem = recloth.Edge("hem", (0, 0), (300, 0), 40, "hem", notches=[("middle", 150)])
piece: recloth.Piece = recloth.Piece("strip", [hem, ("end", (300, 0), (0, 9))], count=2, hand="mirrored")
polygon: recloth.Piece = recloth.Piece.polygon("strip", corners, [10, 10, 10, 40])
cut: NDArray[np.float64] = piece.cut_line(0.1).points()
side: str = piece.edges[0].name
slack: float = piece.walk("hem", polygon, [0, "edge 2"]).difference
panel = recloth.Panel("back", corners, flaws=[([(10, 10)], 5)], faces="two")
found: recloth.Fit = recloth.fit([piece, recloth.Part("pocket", corners)], [panel], seed=2)
missing: float | None = found.table[0].short_by
said: list[str] = recloth.check(found.parts, found.panels, found.placements, found.unplaced)
kept: float = recloth.usable_panel(corners, 5, [corners]).share
pocket: tuple[recloth.Piece, ...] = recloth.draft.PatchPocket(width=120, depth=140).draft().pieces
made: dict[str, bytes] = recloth.plan("title = 'x'").files
wrong_piece = recloth.Piece("strip")  # type: ignore[call-arg]
wrong = recloth.circle_skirt("710", 600)  # type: ignore[call-overload]
