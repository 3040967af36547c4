"""Lays garments on cloth by the length, by Recloth and by a peer in turn, and prints figures as JSON.

Given: the program `strip_lay`, then the seconds to compare after. Both have two threads and the time for themselves. What
counts is the mean share of the cloth covered, over the garments in `tests/bench/lay`.
"""

import json
import statistics
import subprocess
import sys
from pathlib import Path

import spyrrow

FOLDER = Path(__file__).parent / "lay"


def ours(program, file, seconds):
    done = subprocess.run([program, file, str(seconds)], check=True, capture_output=True, text=True)
    return float(done.stdout)


def peer(file, seconds):
    data = json.loads(file.read_text())
    items = [
        spyrrow.Item(
            str(item["id"]),
            [tuple(corner) for corner in item["shape"]["data"]],
            item["demand"],
            item["allowed_orientations"],
        )
        for item in data["items"]
    ]
    instance = spyrrow.StripPackingInstance(data["name"], data["strip_height"], items)
    config = spyrrow.StripPackingConfig(
        early_termination=False, total_computation_time=seconds, num_workers=2, seed=1
    )
    return instance.solve(config).density


def main():
    program, *times = sys.argv[1:]
    figures = []
    for seconds in map(int, times):
        each = [(ours(program, file, seconds), peer(file, seconds)) for file in sorted(FOLDER.glob("*.json"))]
        mean, other = (statistics.mean(column) for column in zip(*each))
        named = zip(sorted(FOLDER.glob("*.json")), each)
        shares = "; ".join(f"{file.stem} {own:.3f} by {their:.3f}" for file, (own, their) in named)
        figures.append({
            "name": f"strip_{seconds}s_vs_spyrrow", "ours": mean, "peer": other,
            "ratio": mean / other, "unit": "share of the cloth", "goal": 0.98,
            "what": f"mean share covered, of four garments, more is better: {shares}",
        })
    print(json.dumps(figures))


if __name__ == "__main__":
    main()
