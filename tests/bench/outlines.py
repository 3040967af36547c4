"""The cut line of a piece against shapely's mitred buffer of the same piece, flattened to the same tolerance.

`python3 tests/bench/outlines.py FILE` reads what `cargo bench -p recloth-peers` printed, times shapely on the outline in it,
and prints figures for `cargo xtask bench`. Needs shapely.
"""

import json
import pathlib
import sys
import time

from shapely import Polygon

ALLOWANCE = 10.0
LIMIT = 4.0
CALLS, TIMES = 20, 31


def least(call):
    """The least mean time of some runs (ns): what comes on top of it is other work of the machine."""
    times = []
    for _ in range(TIMES):
        start = time.perf_counter_ns()
        for _ in range(CALLS):
            call()
        times.append((time.perf_counter_ns() - start) / CALLS)
    return min(times)


def figure(name, ours, peer, unit, what, goal):
    ratio = None if peer is None else ours / peer
    return {"name": name, "ours": ours, "peer": peer, "ratio": ratio, "unit": unit, "what": what, "goal": goal}


def main():
    lines = pathlib.Path(sys.argv[1]).read_text(encoding="utf-8").splitlines()
    printed = dict(line.split(" ", 1) for line in lines)
    piece = Polygon(json.loads(printed["outline"]))

    def buffer():
        return piece.buffer(ALLOWANCE, join_style="mitre", mitre_limit=LIMIT)

    corners = len(buffer().exterior.coords) - 1
    ours = {name: float(printed[name]) for name in printed if name != "outline"}
    micro = 1e-3
    figures = [
        figure(
            "cut_line_vs_shapely", ours["cut_line"] * micro, least(buffer) * micro, "us",
            "a piece of 12 edges at 0.01 mm against buffer of it flattened so, mitred", 0.33,
        ),
        figure(
            "cut_line_points_vs_shapely", ours["points"], corners, "points",
            f"corners of both, flattened at 0.01 mm; {ours['lines_and_arcs']:.0f} lines and arcs before", 1.0,
        ),
        figure(
            "cut_line_vs_cavalier_contours", ours["cut_line_of_arcs"] * micro, ours["cavalier_contours"] * micro, "us",
            "12 lines and arcs at one distance, corners round", 1.0,
        ),
        figure("rust_call walk", ours["walk"], None, "ns", "two edges with a notch each", None),
        figure("rust_call open_dart", ours["open_dart"], None, "ns", "in a piece of 4 edges", None),
    ]
    print(json.dumps(figures))


if __name__ == "__main__":
    main()
