"""Prints what Python answers to each row of the folders named, as the other doors do."""

import csv
import json
import math
import struct
import sys
from pathlib import Path

import recloth

ROOT = Path(__file__).resolve().parents[2]


def spec():
    return json.loads((ROOT / "bindings/spec.json").read_text(encoding="utf-8"))


def inputs(function):
    return [argument for argument in function["arguments"] if argument["kind"] != "fill"]


def outputs(function):
    fills = [a["name"] for a in function["arguments"] if a["kind"] == "fill"]
    return fills + [field["name"] for field in function["answer"]["fields"]]


def read(argument, cell):
    """The cell of a CSV as the argument's kind of value."""
    match argument["kind"]:
        case "number":
            return float(cell)
        case "count":
            return int(cell)
        case "numbers":
            return [float(item) for item in cell.split()]
        case "counts":
            return [int(item) for item in cell.split()]
        case _:
            return cell


def word(value):
    """One answer: the bits of a number (every NaN alike), a count, a text or a list."""
    if isinstance(value, str):
        return value
    if isinstance(value, int):
        return str(value)
    if isinstance(value, float):
        return "nan" if math.isnan(value) else struct.pack(">d", value).hex()
    return " ".join(word(float(item)) for item in value)


def rows(folder, function):
    """Each row as (id, the cells of the inputs, the other cells by their heading)."""
    count = len(inputs(function))
    with open(Path(folder) / f"{function['name']}.csv", encoding="utf-8", newline="") as file:
        reader = csv.reader(file)
        headings = next(reader)
        for cells in reader:
            # An answer may repeat an input under its name: places, not headings, tell them apart.
            rest = dict(zip(headings[count + 1 :], cells[count + 1 :], strict=True))
            yield cells[0], cells[1 : count + 1], rest


def given(function, cells):
    return [read(argument, cell) for argument, cell in zip(inputs(function), cells, strict=True)]


def answer(function, cells):
    try:
        got = getattr(recloth, function["name"])(*given(function, cells))
    except recloth.ReclothError as error:
        at = "-" if error.at is None else error.at
        return f"{error.status}\t{error.argument}\t{at}"
    parts = got if isinstance(got, tuple) else (got,)
    return "0\t" + "\t".join(map(word, parts))


if __name__ == "__main__":
    for folder in sys.argv[1:]:
        for function in spec()["functions"]:
            for name, cells, _ in rows(folder, function):
                print(f"{function['name']}\t{name}\t{answer(function, cells)}")
