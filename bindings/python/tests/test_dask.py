"""Arrays of dask: lazy, chunk for chunk, the same bits on a cluster, and a refused element is named when computed."""

import dask
import dask.array
import numpy as np
import pytest
import recloth
from recloth import ufuncs

# Invented waists, some large enough for a doubt.
WAISTS = np.linspace(250, 1500, 1001)
LENGTHS = np.linspace(300, 900, 1001)
CHUNKS = (300, 300, 300, 101)


def lazy(values=WAISTS, chunks=300):
    return dask.array.from_array(values, chunks=chunks)


@pytest.fixture
def none_computed():
    """Fails if anything is computed by the schedulers of dask."""
    def refuse(*_, **__):
        raise AssertionError("computed too early")

    with dask.config.set(scheduler=refuse):
        yield


def test_nothing_is_computed_before_it_is_asked_for(none_computed):
    skirt = recloth.circle_skirt(lazy(), lazy(LENGTHS, 500))
    for column in skirt:
        assert isinstance(column, dask.array.Array)
    assert (skirt.hem_length.dtype, skirt.doubts.dtype) == (np.float64, np.uint64)
    assert recloth.circle_skirt(lazy(), 600).hem_length.chunks == (CHUNKS,)
    assert ufuncs.circle_skirt.hem_length(lazy(), 600, 1).chunks == (CHUNKS,)
    # Nor is what would be refused.
    recloth.circle_skirt(-lazy(), 600)
    with pytest.raises(AssertionError, match="too early"):
        skirt.hem_length.compute()


def test_the_bits_are_those_of_arrays():
    wanted = recloth.circle_skirt(WAISTS, LENGTHS)
    for column, array in zip(recloth.circle_skirt(lazy(), lazy(LENGTHS, 500)), wanted):
        np.testing.assert_array_equal(column.compute(), array)
    np.testing.assert_array_equal(
        ufuncs.circle_skirt.hem_length(lazy(), lazy(LENGTHS), 1).compute(), wanted.hem_length
    )
    np.testing.assert_array_equal(recloth.bias_square(lazy(), 40).compute(), recloth.bias_square(WAISTS, 40))


def test_arrays_broadcast_in_chunks():
    hem = recloth.circle_skirt(lazy()[:, None], np.array([500.0, 600.0])).hem_length
    assert hem.shape == (1001, 2) and hem.chunks == (CHUNKS, (2,))
    np.testing.assert_array_equal(
        hem.compute(), recloth.circle_skirt(WAISTS[:, None], [500, 600]).hem_length
    )


def test_a_refused_element_is_named_by_its_place_in_the_whole():
    waists = WAISTS.copy()
    # Both in the third chunk: it is the first that is named.
    waists[[700, 850]] = -1
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(lazy(waists), 600).hem_length.compute(scheduler="synchronous")
    assert (caught.value.argument, caught.value.value, caught.value.index) == ("waist", -1, (700,))
    with pytest.raises(recloth.ReclothError) as caught:
        lengths = np.full((4, 5), 600.0)
        lengths[3, 4] = -1
        recloth.circle_skirt(np.full(5, 700.0), lazy(lengths, (2, 3))).hem_length.compute()
    assert (caught.value.argument, caught.value.index) == ("length", (3, 4))
    with np.errstate(invalid="ignore"):
        hem = ufuncs.circle_skirt.hem_length(lazy(waists), 600, 1).compute(scheduler="synchronous")
    assert np.flatnonzero(np.isnan(hem)).tolist() == [700, 850]


def test_doubts_masks_and_counts_are_kept():
    doubts = recloth.girth_doubts(lazy())
    assert doubts.dtype == np.uint64
    np.testing.assert_array_equal(doubts.compute(), recloth.girth_doubts(WAISTS))
    assert recloth.doubts(doubts[0].compute()) != []
    masked = dask.array.ma.masked_less(lazy(), 700)
    hem = recloth.circle_skirt(masked, 600).hem_length.compute()
    assert hem.mask.tolist() == (WAISTS < 700).tolist()


def test_a_cluster_of_two_workers_gives_the_same_bits():
    distributed = pytest.importorskip("distributed")
    waists = WAISTS.copy()
    waists[700] = -1
    with (
        distributed.LocalCluster(
            n_workers=2, threads_per_worker=1, dashboard_address=None, host="127.0.0.1", silence_logs=50
        ) as cluster,
        distributed.Client(cluster) as client,
    ):
        assert len(client.scheduler_info(n_workers=-1)["workers"]) == 2
        skirt = recloth.circle_skirt(lazy(), lazy(LENGTHS))
        wanted = recloth.circle_skirt(WAISTS, LENGTHS)
        for column, array in zip(dask.compute(*skirt), wanted):
            np.testing.assert_array_equal(column, array)
        np.testing.assert_array_equal(
            ufuncs.circle_skirt.hem_length(lazy(), lazy(LENGTHS), 1).compute(), wanted.hem_length
        )
        # A function, and a shape, travel by themselves.
        pieces = client.map(recloth.draft.PatchPocket.draft, [recloth.draft.PatchPocket(120, 140)] * 2)
        assert client.gather(pieces)[1] == recloth.draft.PatchPocket(120, 140).draft()
        with pytest.raises(recloth.ReclothError) as caught:
            recloth.circle_skirt(lazy(waists), 600).hem_length.compute()
        assert (caught.value.argument, caught.value.index) == ("waist", (700,))
