"""Many calls take no more memory, and calls from many threads agree."""

import concurrent.futures
import gc
import threading
import time

import numpy as np
import psutil
import pytest
import recloth
from recloth import ufuncs

CALLS = 100_000
# What an allocator may keep to itself; one object of the least size a call would be six times as much.
MARGIN = 1_000_000
WAISTS = np.linspace(250, 1500, 50)
SQUARE = [(0, 0), (200, 0), (200, 300), (0, 300)]
PIECE = recloth.Piece.polygon("strip", SQUARE, 10)
TEXT = PIECE.to_json()
LIST = [10.4, 10.4, 10.2]
OUT = np.empty(50)


def refused():
    try:
        recloth.circle_skirt(-1.0, 600.0)
    except recloth.ReclothError as error:
        return error.index


def refused_in_an_array():
    try:
        recloth.circle_skirt([710.0, -1.0], 600.0)
    except recloth.ReclothError as error:
        return error.index


# What is done, and how many times: the slower ones less often.
WORK = {
    "numbers": (lambda: recloth.circle_skirt(710.0, 600.0), CALLS),
    "array": (lambda: recloth.circle_skirt(WAISTS, 600.0), CALLS),
    "ufunc": (lambda: ufuncs.circle_skirt.hem_length(WAISTS, 600.0, 1.0), CALLS),
    "ufunc into": (lambda: ufuncs.circle_skirt.hem_length(WAISTS, 600.0, 1.0, out=OUT), CALLS),
    "list": (lambda: recloth.round_set(LIST, 1), CALLS),
    "text": (lambda: recloth.format_length(recloth.parse_length("28 1/2 in"), "inch_eighth"), CALLS),
    "doubts": (lambda: recloth.doubts(recloth.girth_doubts(71.0)), CALLS),
    "error": (refused, CALLS),
    "error in an array": (refused_in_an_array, CALLS // 2),
    "edge": (lambda: recloth.Edge("e", (0, 0), (9, 0), 10, bulge=0.5).length, CALLS),
    "cut line": (lambda: PIECE.cut_line().area, CALLS),
    "points": (lambda: PIECE.cut_line().points(), CALLS),
    "edges": (lambda: PIECE.edges, CALLS // 4),
    "json": (lambda: recloth.Piece.from_json(TEXT), CALLS // 4),
    "piece": (lambda: recloth.Piece.polygon("strip", SQUARE, 10), CALLS // 4),
    "drawing": (lambda: PIECE.svg(), CALLS // 40),
    "panel": (lambda: recloth.usable_panel(SQUARE, 5), CALLS // 40),
    "draft": (lambda: recloth.draft.PatchPocket(120, 140).draft(), CALLS // 10),
}


def resident():
    gc.collect()
    return psutil.Process().memory_info().rss


@pytest.mark.parametrize("name", WORK)
def test_memory_does_not_grow(name):
    call, count = WORK[name]
    for _ in range(count // 10):
        call()
    before = resident()
    for _ in range(count):
        call()
    assert resident() - before < MARGIN


def test_a_leak_of_one_small_object_a_call_would_be_seen():
    kept = []
    before = resident()
    for _ in range(CALLS):
        kept.append([None])
    assert resident() - before > 6 * MARGIN


@pytest.mark.parametrize("name", sorted(set(WORK) - {"ufunc into", "error", "error in an array"}))
def test_eight_threads_agree(name):
    call, count = WORK[name]
    count = max(count // 2000, 2)
    wanted = call()
    begin = threading.Barrier(8)

    def work(_):
        begin.wait()
        return [call() for _ in range(count)]

    with concurrent.futures.ThreadPoolExecutor(8) as threads:
        for answers in threads.map(work, range(8)):
            for answer in answers:
                np.testing.assert_equal(answer, wanted)


def test_other_threads_run_during_a_ufunc():
    out = np.empty(1_000_000)
    first, second = np.broadcast_to(50.0, out.shape), np.linspace(0, 60, len(out))
    # With the interpreter's lock held, this thread would have no turn before the end.
    work = threading.Thread(
        target=ufuncs.ciede2000, args=(first, 2.6772, -79.7751, second, 0.0, -82.7485), kwargs={"out": out}
    )
    work.start()
    turns = 0
    while work.is_alive():
        turns += 1
        time.sleep(0.001)
    assert turns > 10
    np.testing.assert_array_equal(out[::10], recloth.ciede2000(50.0, 2.6772, -79.7751, second[::10], 0.0, -82.7485))


def test_eight_threads_write_one_array_as_one_would():
    many = np.linspace(250, 1500, 80_000)
    out = np.zeros_like(many)
    with concurrent.futures.ThreadPoolExecutor(8) as threads:
        list(threads.map(
            lambda part, into: ufuncs.circle_skirt.hem_length(part, 600.0, 1.0, out=into),
            np.array_split(many, 8), np.array_split(out, 8),
        ))
    np.testing.assert_array_equal(out, ufuncs.circle_skirt.hem_length(many, 600.0, 1.0))
