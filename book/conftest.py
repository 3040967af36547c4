"""Runs the Python and C blocks of the pages: `pytest book` from the top of the project.

A page's Python blocks share their names from top to bottom. A C block that has no `main` is the body of one; each is
compiled with every warning an error, linked with the C library and run. A `text` block right after either is what it
prints, compared line by line. Rust blocks are doctests of the crate `recloth-book`.

RECLOTH_LIBRARY is the folder of the C library; without it, where `cargo xtask test c` leaves it.
"""

import contextlib
import io
import os
import re
import subprocess
import tempfile
from pathlib import Path

from sybil import Region, Sybil

TOP = Path(__file__).resolve().parent.parent
INCLUDE = TOP / "bindings" / "c" / "include"
TARGET = Path(os.environ.get("CARGO_TARGET_DIR", TOP / "target"))
LIBRARY = Path(os.environ.get("RECLOTH_LIBRARY", TARGET / "debug"))

BLOCK = re.compile(
    r"^```(?P<language>python|c)\n(?P<code>.*?)^```\n(?:\s*^```text\n(?P<output>.*?)^```\n)?",
    re.MULTILINE | re.DOTALL,
)

C_BODY = """\
#include <math.h>
#include <stdio.h>
#include <string.h>
#include "recloth.h"
int main(void) {
%s
return 0;
}
"""


def blocks(document):
    """Every Python or C block with what it should print."""
    for match in BLOCK.finditer(document.text):
        run = {"python": run_python, "c": run_c}[match["language"]]
        yield Region(match.start(), match.end(), match.groupdict(), run)


def run_python(example):
    # Blank lines in front, so that a traceback names the line of the page.
    code = "\n" * example.line + example.parsed["code"]
    printed = io.StringIO()
    with contextlib.redirect_stdout(printed):
        exec(compile(code, example.path, "exec"), example.namespace)  # noqa: S102
    compare(printed.getvalue(), example)


def run_c(example):
    code = example.parsed["code"]
    # So that the compiler names the line of the page.
    place = f'#line {example.line + 1} "{example.path}"\n'
    code = place + code if "int main" in code else C_BODY % (place + code)
    with tempfile.TemporaryDirectory() as folder:
        source, program = Path(folder) / "page.c", Path(folder) / "page"
        source.write_text(code, encoding="utf-8")
        flags = ["-std=c99", "-Wall", "-Wextra", "-Wpedantic", "-Werror"]
        paths = [f"-I{INCLUDE}", f"-L{LIBRARY}", f"-Wl,-rpath,{LIBRARY}"]
        compiler = os.environ.get("CC", "cc")
        call([compiler, *flags, source, "-o", program, *paths, "-lrecloth", "-lm"])
        compare(call([program]), example)


def call(command):
    done = subprocess.run(command, capture_output=True, text=True, check=False)
    assert done.returncode == 0, f"{command[0]} ended with {done.returncode}\n{done.stdout}{done.stderr}"
    return done.stdout


def compare(printed, example):
    wanted = example.parsed["output"]
    if wanted is None:
        # A block that prints must show what it prints.
        assert printed == "", f"the page does not show this output:\n{printed}"
    else:
        assert printed.rstrip("\n") == wanted.rstrip("\n"), f"printed:\n{printed}\non the page:\n{wanted}"


pages = Sybil(parsers=[blocks], patterns=["*.md"], path="pages")
# As a plugin (`pytest -p book.conftest README.md`) this file runs the blocks of a README.
readme = Sybil(parsers=[blocks], patterns=["README.md", "bindings/python/README.md"], path=str(TOP))
pytest_collect_file = (pages + readme).pytest()
