"""Arrays of xarray: dimensions, coordinates and attributes as xarray keeps them."""

import dask
import numpy as np
import pytest
import recloth
import xarray
from recloth import ufuncs

WAISTS = xarray.DataArray(
    [[640.0, 660.0], [700.0, 720.0], [71.0, 710.0]],
    dims=("size", "cut"),
    coords={"size": ["s", "m", "l"], "cut": [1, 2]},
    attrs={"unit": "mm", "from": "invented"},
    name="waist",
)
LENGTHS = xarray.DataArray([500.0, 600.0], dims="cut", coords={"cut": [1, 2]})
ONE = recloth.circle_skirt(700, 500)


def test_dims_coords_and_attrs_are_kept():
    # What NumPy's own ufunc keeps is the measure.
    like = np.add(WAISTS, LENGTHS)
    for column in (*recloth.circle_skirt(WAISTS, LENGTHS), ufuncs.circle_skirt.hem_length(WAISTS, LENGTHS, 1)):
        assert isinstance(column, xarray.DataArray) and column.dims == ("size", "cut")
        assert column.attrs == like.attrs == WAISTS.attrs and column.name == like.name
        xarray.testing.assert_identical(column.coords.to_dataset(), like.coords.to_dataset())
    hem = recloth.circle_skirt(WAISTS, LENGTHS).hem_length
    assert hem.sel(size="m", cut=1).item() == ONE.hem_length
    with xarray.set_options(keep_attrs=False):
        assert recloth.circle_skirt(WAISTS, LENGTHS).hem_length.attrs == {}


def test_arrays_meet_by_label():
    hem = recloth.circle_skirt(WAISTS, LENGTHS.isel(cut=[1])).hem_length
    assert hem.shape == (3, 1) and hem.cut.item() == 2
    with xarray.set_options(arithmetic_join="exact"), pytest.raises(ValueError, match="cut"):
        recloth.circle_skirt(WAISTS, LENGTHS.isel(cut=[1]))


def test_a_dataset_variable_by_variable():
    sizes = xarray.Dataset({"coat": WAISTS, "pinafore": WAISTS / 2})
    hem = recloth.circle_skirt(sizes, 500).hem_length
    assert isinstance(hem, xarray.Dataset) and list(hem) == ["coat", "pinafore"]
    assert hem["coat"].sel(size="m", cut=1).item() == ONE.hem_length
    xarray.testing.assert_identical(hem, ufuncs.circle_skirt.hem_length(sizes, 500, 1))


def test_over_dask_it_stays_lazy():
    def refuse(*_, **__):
        raise AssertionError("computed too early")

    with dask.config.set(scheduler=refuse):
        hem = recloth.circle_skirt(WAISTS.chunk({"size": 2}), LENGTHS).hem_length
        assert hem.chunks == ((2, 1), (2,)) and hem.attrs == WAISTS.attrs
        bad = recloth.circle_skirt(WAISTS.where(WAISTS != 710, -1).chunk({"size": 2}), 500).hem_length
    xarray.testing.assert_identical(hem.compute(), recloth.circle_skirt(WAISTS, LENGTHS).hem_length)
    with pytest.raises(recloth.ReclothError) as caught:
        bad.compute(scheduler="synchronous")
    assert (caught.value.value, caught.value.index) == (-1, (2, 1))


def test_a_refused_element_is_named_and_doubts_are_kept():
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(WAISTS, LENGTHS - 600)
    assert (caught.value.argument, caught.value.value, caught.value.index) == ("length", -100, (0, 0))
    # xarray knows what is missing by NaN alone, which is no measure.
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt(WAISTS.where(WAISTS > 100), 500)
    assert (caught.value.kind, caught.value.index) == ("NotFinite", (2, 0))
    doubts = recloth.girth_doubts(WAISTS)
    assert doubts.dtype == np.uint64
    assert recloth.doubts(doubts.sel(size="l", cut=1)) and not recloth.doubts(doubts.sel(size="s", cut=1))
