"""Seams of every kind: what they close and take, what they say, what they refuse, how their sections are built."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.piece.piece import CutPlan, Strip
from kit.proof.unfinished import unfinished
from kit.sewing.sections import seams as shapes
from kit.units import cm, inch, mm

BIAS = Strip("bias", "Bias strip", 1000, 40, 1, finished_length=1000, finished_width=10, grain="bias")


@pytest.fixture
def pair(wrap):
    """Front and back, single pieces 300 x 200, sides 15 mm of allowance."""

    def panel(name):
        return wrap.polygon(
            name, [(0, 0), (200, 0), (200, 300), (0, 300)], {"hem": 30, "side": 15, "top": 10, "centre": 15}
        )

    return panel("front"), panel("back")


def plain(**more):
    def write(make, front, back, **_):
        make.plain_seam(front.side, back.side, allowance=15 * mm, **more)

    return write


def hem(make, front, back, **_):
    make.hem(front.hem, back.hem, first=3 * cm)


# ---- plain seam -------------------------------------------------------------------------------------------


def test_allowances_finished_together_are_pressed_to_one_side(sewn, pair):
    found = sewn(pair, plain(together=True, press="back", finish="overlock"))
    assert found.said == [
        "Pin the front to the back, right sides together, along the side seam.",
        "Stitch 1.5 cm (5/8 in) from the edge.",
        "Finish both allowances together with an overlock stitch.",
        "Press the seam towards the back.",
    ]
    with pytest.raises(KitError, match="cannot be pressed open"):
        sewn(pair, plain(together=True))


def test_a_seam_takes_a_learner_minutes(sewn, pair):
    """Setting up takes 4 minutes and each metre along either layer 6 (common practice, no source): two sides of 30 cm
    come to 4 + 0.6 x 6."""
    found = sewn(pair, plain())
    assert found.last.minutes(found.pattern) == pytest.approx(7.6)


def test_a_row_may_stop_at_the_stitch_lines(sewn, pair):
    found = sewn(pair, plain(ends="stitch line"))
    assert "where the stitch lines of the neighbouring edges cross" in found.said[1]
    with pytest.raises(KitError, match="ends is"):
        sewn(pair, plain(ends="the notch"))
    with pytest.raises(KitError, match="has no opening as well"):
        sewn(pair, plain(ends="stitch line", opening=(5 * cm, 8 * cm)))


def test_bound_allowances_take_a_strip_or_bought_binding(sewn, pair):
    bound = lambda make, front, back, bias: make.plain_seam(  # noqa: E731
        front.side, back.side, allowance=15 * mm, finish="bound", binding=bias
    )
    found = sewn(pair, bound, strips=(BIAS,))
    assert found.codes == []
    assert found.last.bound_length(found.pattern) == pytest.approx(600)  # two allowances of 300 mm
    assert found.state.count("bias") == 1 and "bias" in found.state.made
    assert found.said[2].startswith("Fold the bias strip over the raw edge of each allowance")
    short = sewn(pair, bound, strips=(replace(BIAS, length=500),))
    assert short.codes == ["binding_short"]
    bought = sewn(pair, plain(finish="bound"))
    assert bought.last.notions == ("thread", "bias_binding")
    assert bought.last.notion_amounts(bought.pattern) == {"bias_binding": (600.0, "length")}
    assert bought.said[2].startswith("Fold bias binding over the raw edge of each allowance")
    with pytest.raises(KitError, match="the finish is 'zigzag'"):
        sewn(
            pair,
            lambda make, front, back, bias: make.plain_seam(front.side, back.side, allowance=1 * cm, binding=bias),
            strips=(BIAS,),
        )


def test_a_seam_left_for_later_is_pressed_before_it_is_crossed(sewn, pair):
    press = lambda make, front, back: make.press(back.side)  # noqa: E731
    assert sewn(pair, plain(press="later"), hem).codes == ["not_pressed", "not_pressed"]
    found = sewn(pair, plain(press="later"), press)
    assert found.codes == []
    assert found.state.edges("unpressed") == frozenset()  # an iron presses both sides of a seam
    assert sewn(pair, plain(press="later"), press, hem).codes == []
    assert sewn(pair, press, plain(press="later")).codes == ["pressed_early"]
    assert sewn(pair, plain(press="later"), press, press, hem).codes == []  # pressing twice does no harm


def test_a_seam_never_pressed_is_found(sewn, pair):
    found = sewn(pair, plain(press="later"))
    assert {finding.code for finding in unfinished(found.pattern, found.state)} == {"never_pressed"}
    assert unfinished(*(lambda f: (f.pattern, f.state))(sewn(pair, plain()))) == []


def test_pressing_is_said(sewn, pair):
    found = sewn(pair, plain(press="later"), lambda make, front, back: make.press(front.side, way=back))
    assert found.said == ["Press the seam along the side seam of the front towards the back."]
    with pytest.raises(KitError, match="way is 'sideways'"):
        sewn(pair, lambda make, front, back: make.press(front.side, way="sideways"))


def test_shut_in_edges_are_not_pressed_open(sewn, pair):
    seam = lambda make, front, back: make.french_seam(front.side, back.side, first=9 * mm, second=6 * mm)  # noqa: E731
    assert sewn(pair, seam, lambda make, front, back: make.press(front.side)).codes == ["pressed_open_shut_in"]


# ---- French seam ------------------------------------------------------------------------------------------


def french(**more):
    def write(make, front, back):
        make.french_seam(front.side, back.side, **{"first": 8 * mm, "second": 6 * mm, **more})

    return write


def test_the_trimmed_remainder_is_narrower_than_the_second_row(sewn, pair):
    assert sewn(pair, french(trim=4 * mm)).codes == []
    assert sewn(pair, french(trim=6 * mm)).codes == ["french_seam_trimmed"]
    assert "Trim both allowances to 4 mm (1/8 in)." in sewn(pair, french(trim=4 * mm)).said


def test_the_whys_of_a_french_seam_agree_with_the_1921_handbook(sewn, pair):
    """A Complete Course in Dressmaking, vol. 1 (1921, public domain), p. 98: it suits fine cloth and is too bulky for
    thick cloth; the first row is sewn with the wrong sides together."""
    from kit.prose.phrases import say

    found = sewn(pair, french(first=inch / 8, second=inch / 4))
    whys = " ".join(say(key, {}) for key, _ in found.last.whys(found.pattern))
    assert "fine cloth" in whys and "too bulky" in whys and "wrong sides together" in whys


# ---- seams that hide their edges --------------------------------------------------------------------------


def test_a_mock_french_seam(sewn, pair):
    write = lambda make, front, back: make.mock_french_seam(front.side, back.side, allowance=15 * mm)  # noqa: E731
    found = sewn(pair, write)
    assert found.codes == []
    assert found.last.takes(found.pattern) == {("front", "side"): 15.0, ("back", "side"): 15.0}
    assert {closing.how for closing in found.last.closes(found.pattern)} == {"sewn"}
    assert found.said[1:4] == [
        "Stitch 1.5 cm (5/8 in) from the edge.",
        "Turn the raw edge of each allowance in by 5 mm (3/16 in) towards the other and press, so that the two folds "
        "lie on each other.",
        "Stitch the folds together close to their edge.",
    ]
    deep = lambda make, front, back: make.mock_french_seam(  # noqa: E731
        front.side, back.side, allowance=15 * mm, turn=8 * mm
    )
    assert sewn(pair, deep).codes == ["mock_french_turn"]
    with pytest.raises(KitError, match="cannot be pressed open"):
        sewn(
            pair, lambda make, front, back: make.mock_french_seam(front.side, back.side, allowance=1 * cm, press="open")
        )


def felled(**more):
    def write(make, front, back):
        make.flat_felled_seam(front.side, back.side, allowance=16 * mm, **more)

    return write


def test_the_piece_that_laps_is_pressed_over_the_other(sewn, pair):
    found = sewn(pair, felled(lap="back"))
    assert found.codes == []
    seam = found.last
    assert (seam.a[0].piece, seam.b[0].piece, seam.press) == ("back", "front", "front")
    assert (seam.width, seam.trim) == (10.0, 5.0)
    assert found.said == [
        "Pin the back to the front, wrong sides together, along the side seam.",
        "Stitch 1.6 cm (5/8 in) from the edge and press the allowances towards the front, that of the back on top.",
        "Trim only the allowance of the front, the lower one, to 5 mm (3/16 in).",
        "Fold the edge of the allowance of the back around the trimmed one, so that it is 1 cm (3/8 in) wide, and "
        "press.",
        "Lay the fold flat on the front, so that every raw edge is hidden, and pin.",
        "Stitch it down 2 mm (1/16 in) from the fold, through all layers.",
    ]
    assert sewn(pair, felled(outside=False)).said[0].startswith("Pin the front to the back, right sides together")


def test_a_fell_that_cannot_be_folded_is_refused(sewn, pair):
    assert sewn(pair, felled(width=10 * mm, trim=10 * mm)).codes == ["felled_trim"]
    assert sewn(pair, felled(width=15 * mm, trim=5 * mm)).codes == ["felled_width"]
    assert sewn(pair, felled(width=7 * mm, trim=4 * mm)).codes == ["felled_width"]
    with pytest.raises(KitError, match="lap is 'sleeve'"):
        sewn(pair, felled(lap="sleeve"))


def test_the_halves_of_a_pair_are_felled_to_each_other(sewn, wrap):
    piece = wrap.polygon(
        "leg", [(0, 0), (200, 0), (200, 300), (0, 300)], {"hem": 30, "crotch": 16, "top": 10, "side": 15}
    )
    found = sewn(
        (replace(piece, cut=CutPlan(count=2, mirrored=True)),),
        lambda make, leg: make.flat_felled_seam(leg.crotch, leg.crotch, allowance=16 * mm),
    )
    assert "Trim only the allowance of the right half, the lower one, to 5 mm (3/16 in)." in found.said


def test_a_lapped_seam(sewn, pair):
    lap = lambda make, front, back: make.lapped_seam(front.side, back.side, allowance=15 * mm)  # noqa: E731
    found = sewn(pair, lap)
    assert found.codes == []
    assert found.said == [
        "Turn the side seam of the front under by 1.5 cm (5/8 in), to its stitch line, and press.",
        "Lay the fold on the right side of the side seam of the back, along its stitch line, and pin.",
        "Stitch 2 mm (1/16 in) from the fold, through all layers.",
        "Finish the raw edges inside with a zigzag stitch.",
    ]
    raw = lambda make, front, back: make.lapped_seam(front.side, back.side, allowance=15 * mm, turned=False)  # noqa: E731
    assert sewn(pair, raw).said[0].startswith("Lay the side seam of the front on the right side of")
    far = lambda make, front, back: make.lapped_seam(  # noqa: E731
        front.side, back.side, allowance=15 * mm, edgestitch=16 * mm
    )
    assert sewn(pair, far).codes == ["lapped_row"]


def test_an_edge_is_sewn_once_whatever_the_seam(sewn, pair):
    assert sewn(pair, plain(), felled()).codes == ["closed_twice", "closed_twice"]


# ---- fullness ---------------------------------------------------------------------------------------------


def eased(wrap, by: float):
    plain_side = {"hem": 30, "side": 15, "top": 10, "centre": 15}
    return (
        wrap.polygon("front", [(0, 0), (200, 0), (200, 300 + by), (0, 300 + by)], plain_side),
        wrap.polygon("back", [(0, 0), (200, 0), (200, 300), (0, 300)], plain_side),
    )


@pytest.mark.parametrize(
    ("by", "codes"),
    [(12, []), (15, []), (18, ["not_eased_yet"]), (45, ["not_eased_yet"]), (60, ["not_gathered_yet"])],
)
def test_how_much_fullness_needs_what(sewn, wrap, by, codes):
    """Up to 5% is pinned in, up to 15% eased, more is gathered (common practice, no source)."""
    assert sewn(eased(wrap, by), plain(ease=by * mm)).codes == codes


def test_ease_stitching_and_gathers_make_a_seam_ready(sewn, wrap):
    ease = lambda make, front, back: make.ease_stitch(front.side, fit=back.side)  # noqa: E731
    gather = lambda make, front, back: make.gather(front.side, fit=back.side)  # noqa: E731
    assert sewn(eased(wrap, 30), ease, plain(ease=30 * mm)).codes == []
    assert sewn(eased(wrap, 300), gather, plain(ease=300 * mm)).codes == []
    assert sewn(eased(wrap, 300), plain(ease=300 * mm), gather).codes == ["not_gathered_yet", "gathered_late"]
    wrong = lambda make, front, back: make.ease_stitch(back.side)  # noqa: E731
    assert sewn(eased(wrap, 30), wrong, plain(ease=30 * mm)).codes == ["not_eased_yet"]


def test_a_seam_may_take_up_all_that_is_gathered(sewn, wrap):
    gather = lambda make, front, back: make.gather(front.side, fit=back.side)  # noqa: E731
    found = sewn(eased(wrap, 250), gather, plain(ease="gathered"))
    assert found.codes == [] and found.last.ease == pytest.approx(250)
    assert sewn(eased(wrap, 250), plain(ease="gathered")).codes == ["not_gathered_yet"]


def test_gathers_are_taken_up_and_fit(sewn, wrap, pair):
    to = lambda make, front, back: make.gather(front.side, to=25 * cm)  # noqa: E731
    assert sewn(eased(wrap, 300), to, plain(ease=300 * mm)).codes == ["gathered_to_another_length"]
    assert sewn(pair, to, plain()).codes == ["gathers_not_taken_up"]


# ---- sections ---------------------------------------------------------------------------------------------

# name: (section, cut edges, of these shut in), worked by hand from textbook diagrams (common practice, no source)
BY_HAND = {
    "pressed to one side": (shapes.pressed_one_side(), 2, 0),
    "bound, open": (shapes.bound_open(), 2, 2),
    "mock French": (shapes.mock_french(), 2, 2),
    "opening": (shapes.opening(), 2, 2),
    "flat-felled": (shapes.felled(), 2, 2),
    "lapped": (shapes.lapped(), 2, 1),
    "lapped, raw": (shapes.lapped_raw(), 2, 0),
}


@pytest.mark.parametrize("name", BY_HAND)
def test_cut_edges_shut_in(name):
    found, raw, enclosed = BY_HAND[name]
    assert (found.raw_edges, found.enclosed) == (raw, enclosed)


def test_what_the_rows_go_through():
    assert shapes.pressed_one_side().through(0) == ("left", "right")
    assert shapes.bound_open().through(0) == ("binding", "left", "binding")
    assert shapes.mock_french().through(0) == ("lower", "lower", "upper", "upper")
    assert shapes.mock_french().through(1) == ("lower", "upper")
    first, second = 0, 1
    assert shapes.felled().through(first) == ("under", "lapping")  # the row that joins the two
    assert shapes.felled().through(second) == ("under", "lapping", "lapping")  # beyond the trimmed allowance
    assert shapes.felled().at(2.5) == ("under", "lapping", "under", "lapping")  # hooked into each other
    assert shapes.lapped().through(0) == ("under", "lapping", "lapping")
    assert [ply.folds for ply in shapes.felled().plies] == [1, 1]


def test_iso_classes_from_memory(sewn, pair):
    """ISO 4916, from memory: 1 superimposed, 2 lapped, of these 2.04 felled."""
    assert sewn(pair, plain()).last.seam_class == "1.01.01"
    assert sewn(pair, felled()).last.seam_class == "2.04"
    lap = lambda make, front, back: make.lapped_seam(front.side, back.side, allowance=15 * mm)  # noqa: E731
    assert sewn(pair, lap).last.seam_class == "2"
