"""What the independent programs share: they read tests/vectors and compare every good row with their own sums.

A program gives `main` one function for each vectors file, named as the file is:

    def dart(row):
        half = row["intake"] / 2
        return {"leg": mp.hypot(half, row["length"]), "angle_deg": mp.degrees(2 * mp.atan2(half, row["length"]))}

    if __name__ == "__main__":
        sys.exit(common.main(dart))

`python3 tests/oracle/NAME.py` checks every row. `python3 tests/oracle/NAME.py dart intake=30 length=110` prints the
outputs of one function to 17 digits, which is how a new row gets them. Needs mpmath.
"""

import csv
import pathlib
import sys

from mpmath import mp, mpf

mp.dps = 50

VECTORS = pathlib.Path(__file__).resolve().parents[1] / "vectors"

# `exact` asks the library for equal bits; against 50 digits the rounding of one f64 remains.
EXACT = mpf("1e-15")


class Row(dict):
    """One row's inputs, by name: a number is taken as the f64 that the library is given."""

    def __getitem__(self, name):
        return mpf(float(self.text(name)))

    def text(self, name):
        """A text or a choice, as written."""
        return super().__getitem__(name)

    def items(self, name):
        """A list of numbers."""
        return [mpf(float(item)) for item in self.text(name).split()]


# Doubts that more than one program finds, by the bits of crates/recloth/src/doubt.rs. A length nearer than DUST (mm) to a
# limit is on it.
DUST = mpf("1e-9")


def bits(**places):
    """A set of doubts from whether each is so: `bits(_3=length > 2000)`."""
    return sum(2 ** int(place[1:]) for place, so in places.items() if so)


def trunk(girth):
    return bits(_0=girth < 300, _1=girth > 2000)


def limb(girth):
    return bits(_37=girth < 110)


def along_body(length):
    return bits(_2=length < 100, _3=length > 2000)


def skirt(waist, hip):
    return trunk(waist) | trunk(hip) | bits(_4=waist > hip, _5=hip - waist > 450 + DUST)


def gathers(ratio):
    return bits(_18=ratio < mpf("1.2") - DUST, _39=ratio > 4 + DUST)


def asin(sine):
    """Of a sine that rounded lengths may put a hair past 1."""
    return mp.asin(min(sine, mpf(1)))


def read(name):
    """The rows of one vectors file: id, inputs, status, outputs (as text), tolerance."""
    with open(VECTORS / f"{name}.csv", newline="", encoding="utf-8") as file:
        lines = csv.reader(file)
        head = next(lines)
        status, tolerance = head.index("status"), head.index("tolerance")
        for cells in lines:
            if len(cells) != len(head):
                raise SystemExit(f"{name}.csv, row {cells[0]}: {len(cells)} cells, not {len(head)}")
            inputs = Row(zip(head[1:status], cells[1:status]))
            outputs = dict(zip(head[status + 1 : tolerance], cells[status + 1 : tolerance]))
            yield cells[0], inputs, int(cells[status]), outputs, cells[tolerance]


def complaints(wanted, found, tolerance):
    """What is wrong with one output of a row: `wanted` as written in the file, `found` by the independent program.

    A text and a whole number found (counts, bits) must be equal; the rest agree to the tolerance.
    """
    if isinstance(found, str):
        return [] if wanted == found else [f"{wanted!r} in the file, {found!r} here"]
    if isinstance(found, int):
        return [] if wanted == str(int(found)) else [f"{wanted} in the file, {int(found)} here"]
    wanted = [mpf(float(item)) for item in wanted.split()]
    found = found if isinstance(found, list) else [found]
    if len(wanted) != len(found):
        return [f"{len(wanted)} items, not {len(found)}"]
    return [
        f"{mp.nstr(want, 17)} in the file, {mp.nstr(get, 17)} here"
        for want, get in zip(wanted, found)
        if not abs(want - get) <= (EXACT * max(abs(get), 1) if tolerance == "exact" else mpf(tolerance))
    ]


def digits(found):
    """A number or a list as the file has it: the nearest f64, shortest digits that bring it back."""
    if isinstance(found, str):
        return found
    if isinstance(found, list):
        return " ".join(digits(item) for item in found)
    return repr(float(found)).removesuffix(".0")


def check(function):
    """Recompute one file; return how many rows were recomputed and the complaints."""
    rows, bad = 0, []
    for row_id, inputs, status, outputs, tolerance in read(function.__name__):
        if status != 0:
            continue
        rows += 1
        found = function(inputs)
        for name, wanted in outputs.items():
            if wanted != "":
                bad += [f"{function.__name__} {row_id}, {name}: {c}" for c in complaints(wanted, found[name], tolerance)]
    if rows == 0:
        bad.append(f"{function.__name__}: no good row")
    return rows, bad


def main(*functions):
    """Check all files, or print one answer; the exit status."""
    if len(sys.argv) > 1:
        function = next(f for f in functions if f.__name__ == sys.argv[1])
        for name, found in function(Row(argument.split("=", 1) for argument in sys.argv[2:])).items():
            print(f"{name} = {digits(found)}")
        return 0
    total, bad = 0, []
    for function in functions:
        rows, found = check(function)
        total, bad = total + rows, bad + found
    print("\n".join(bad + [f"{total} rows recomputed"]))
    return 1 if bad or total == 0 else 0
