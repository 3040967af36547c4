"""Prints what Python answers to each job of lays in the folder named, as the other doors do."""

import json
import sys
from pathlib import Path

import recloth

THREADS = (1, 2, 7)


def plain(value):
    """Points as pairs."""
    if isinstance(value, list):
        return [plain(item) for item in value]
    if isinstance(value, dict):
        return (value["x"], value["y"]) if set(value) == {"x", "y"} else {key: plain(of) for key, of in value.items()}
    return value


def told(call):
    try:
        return call().to_json()
    except recloth.ReclothError as error:
        return f"{error.status} {error.argument}"


if __name__ == "__main__":
    for path in sorted(Path(sys.argv[1]).glob("*.json")):
        job = plain(json.loads(path.read_text(encoding="utf-8")))
        options = job.get("options", {})
        if "panels" in job:
            print(f"fit\t{path.stem}\t{told(lambda: recloth.fit(job['parts'], job['panels'], **options))}")
            continue
        for threads in THREADS:
            asked = {**options, "threads": threads}
            print(f"strip\t{path.stem}-{threads}\t{told(lambda: recloth.strip(job['parts'], job['strip'], **asked))}")
