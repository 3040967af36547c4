"""What Python users expect of a package of array functions."""

import inspect
import pickle
import subprocess
import sys

import numpy as np
import pytest
import recloth
from recloth import CM, INCH, ufuncs

WAISTS = np.array([640.0, 710.0, 780.0])


def test_numbers_give_plain_floats():
    skirt = recloth.circle_skirt(71 * CM, 600, 0.5)
    assert type(skirt.waist_radius) is float
    assert skirt == recloth.circle_skirt(waist=710, length=600.0, fraction=np.float64(0.5))


def test_arrays_broadcast_and_keep_their_shape():
    skirt = recloth.circle_skirt(WAISTS[:, None], [500, 600], 1)
    assert skirt.hem_length.shape == (3, 2)
    one = recloth.circle_skirt(710.0, 600.0, 1.0)
    assert skirt.hem_length[1, 1] == one.hem_length


def test_out_and_where():
    out = WAISTS.copy()
    ufuncs.circle_skirt.waist_radius(out, 600, 1, out=out)
    np.testing.assert_array_equal(out, recloth.circle_skirt(WAISTS, 600).waist_radius)
    kept = ufuncs.circle_skirt.waist_radius(
        WAISTS, 600, 1, out=np.zeros(3), where=[True, False, True]
    )
    assert kept[1] == 0 and kept[0] == out[0]


def test_errors_name_function_argument_value_range_and_place():
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.circle_skirt([710, 700, -1, -2], 600)
    error = caught.value
    assert (error.function, error.argument, error.value) == ("circle_skirt", "waist", -1)
    assert (error.min, error.max, error.index, error.kind) == (1, 1e5, (2,), "OutOfRange")
    assert str(error) == "circle_skirt: waist = -1 is not between 1 and 100000 (element 2)"
    assert isinstance(error, ValueError)
    again = pickle.loads(pickle.dumps(error))
    assert str(again) == str(error) and again.index == error.index


def test_errstate_decides_what_becomes_of_an_error_in_a_ufunc():
    with np.errstate(invalid="raise"), pytest.raises(FloatingPointError):
        ufuncs.circle_skirt.hem_length(-1.0, 600, 1)
    with np.errstate(invalid="ignore"):
        assert np.isnan(ufuncs.circle_skirt.hem_length(-1.0, 600, 1))
    with pytest.warns(RuntimeWarning):
        ufuncs.circle_skirt.hem_length(-1.0, 600, 1)


@pytest.mark.parametrize("value", [None, "71 cm", b"71", object()])
def test_what_is_no_number_is_refused_as_a_type(value):
    with pytest.raises(TypeError):
        recloth.circle_skirt(value, 600)


def test_results_and_ufuncs_travel_to_a_fresh_process():
    skirt = recloth.circle_skirt(710, 600)
    assert pickle.loads(pickle.dumps(skirt)) == skirt
    text = pickle.dumps((skirt, ufuncs.circle_skirt.hem_length)).hex()
    program = (
        f"import pickle; skirt, ufunc = pickle.loads(bytes.fromhex('{text}')); "
        "print(ufunc(710, 600, 1) == skirt.hem_length)"
    )
    done = subprocess.run([sys.executable, "-c", program], capture_output=True, text=True)
    assert done.stdout.strip() == "True", done.stderr


def test_choices_are_members_words_or_numbers():
    up = recloth.round_to(10.2 * INCH, INCH / 8, recloth.Rounding.UP)
    assert up == recloth.round_to(10.2 * INCH, INCH / 8, "up")
    with pytest.raises(recloth.ReclothError, match="'nearest'"):
        recloth.round_to(10, 1, "sideways")


def test_counts_must_be_whole():
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.share(960, 40, 2.5)
    assert caught.value.kind == "NotWhole"
    # The first bad argument is the one named, also before a count.
    with pytest.raises(recloth.ReclothError) as caught:
        recloth.share(float("nan"), 40, 2.5)
    assert caught.value.argument == "girth"


def test_a_wrong_type_is_told_with_function_and_argument():
    with pytest.raises(TypeError, match="^parse_length: text must be a str, not int$"):
        recloth.parse_length(28)
    with pytest.raises(TypeError, match="^circle_skirt: waist must be a number .*not str"):
        recloth.circle_skirt("71 cm", 600)


def test_lists_come_as_any_sequence_and_go_as_arrays():
    for lengths in ([10.4, 10.4, 10.2], (10.4, 10.4, 10.2), np.array([10.4, 10.4, 10.2])[::1]):
        tapes = recloth.round_set(lengths, 1).tapes
        assert tapes.tolist() == [11, 10, 10]
    with pytest.raises(TypeError):
        recloth.round_set([[1.0, 2.0]], 1)
    with pytest.raises(recloth.ReclothError):
        recloth.round_set([], 1)


def test_bits_have_sentences():
    assert recloth.doubts(0) == [] and recloth.cautions(0) == []
    assert recloth.doubts(0b11) == [recloth.doubt_text(1), recloth.doubt_text(2)]


def test_everything_public_says_what_it_is():
    assert recloth.__version__
    for name in recloth.__all__:
        thing = getattr(recloth, name)
        if callable(thing):
            assert inspect.getdoc(thing), name
        assert getattr(thing, "__module__", "recloth").startswith("recloth") or name == "ufuncs"
    for name in ufuncs.__all__:
        found = getattr(ufuncs, name)
        for ufunc in found if isinstance(found, tuple) else (found,):
            assert isinstance(ufunc, np.ufunc) and "Inputs:" in ufunc.__doc__, name
