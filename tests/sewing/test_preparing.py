"""Gathers, ease stitching and basting: drawn up to what they are sewn to, and missed when left out."""

from __future__ import annotations

import pytest

from kit.errors import KitError
from kit.piece.piece import CutPlan
from kit.proof.unfinished import unfinished
from kit.units import cm, mm


@pytest.fixture
def skirt(wrap):
    """A skirt on the fold, 450 mm at the waist on each half, and a yoke of 300."""
    skirt = wrap.polygon(
        "skirt",
        [(0, 0), (450, 0), (450, 600), (0, 600)],
        {"hem": 40, "side": 15, "waist": 10, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    yoke = wrap.polygon(
        "yoke",
        [(0, 600), (300, 600), (300, 700), (0, 700)],
        {"lower": 10, "side": 15, "top": 10, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    return skirt, yoke


def gather(make, skirt, yoke):
    make.gather(skirt.waist, fit=yoke.lower)


def seam(make, skirt, yoke):
    make.plain_seam(skirt.waist, yoke.lower, allowance=10 * mm, ease=15 * cm, press="yoke")


def test_gathers_are_drawn_up_to_fit_what_they_are_sewn_to(sewn, skirt):
    found = sewn(skirt, gather)
    assert found.codes == []
    assert found.last.closes(found.pattern) == () and found.last.takes(found.pattern) == {}
    assert {fact for fact in found.state.facts if fact[0] == "gathered"} == {
        ("gathered", "skirt", "left", "waist"),
        ("gathered", "skirt", "right", "waist"),
    }
    assert found.said == [
        "Set the longest stitch and sew two rows along the waist of the skirt, 6 mm (1/4 in) apart, on either side of "
        "the stitch line. Leave long thread ends and do not backstitch.",
        "Mark the quarters of the waist of the skirt and of the edge it will be sewn to.",
        "Pull the bobbin threads from both ends until it fits the lower of the yoke: 60 cm (23 5/8 in) instead of "
        "90 cm (35 1/2 in). Wind them around a pin.",
        "Spread the gathers evenly between the marks.",
    ]
    assert sewn(skirt, gather, seam).codes == []


def test_gathering_left_out_doubled_or_late_is_noticed(sewn, skirt):
    assert sewn(skirt, seam).codes == ["not_gathered_yet"]
    assert sewn(skirt, gather, gather, seam).codes == ["gathered_twice"]
    assert sewn(skirt, seam, gather).codes == ["not_gathered_yet", "gathered_late"]


def test_gathers_have_a_least_and_a_most(sewn, skirt):
    """Under 1.05 to 1 none show, above 4 to 1 they cannot be pushed together (common practice, no source)."""
    few = lambda make, skirt, yoke: make.gather(skirt.waist, to=44 * cm)  # noqa: E731
    many = lambda make, skirt, yoke: make.gather(skirt.waist, to=11 * cm)  # noqa: E731
    assert sewn(skirt, few).codes == ["gathers_too_few"]
    assert sewn(skirt, many).codes == ["gathers_too_many"]
    with pytest.raises(KitError, match="not said how far"):
        sewn(skirt, lambda make, skirt, yoke: make.gather(skirt.waist))
    with pytest.raises(KitError, match="both a length and an edge"):
        sewn(skirt, lambda make, skirt, yoke: make.gather(skirt.waist, to=1 * cm, fit=yoke.lower))
    with pytest.raises(KitError, match="9 rows"):
        sewn(skirt, lambda make, skirt, yoke: make.gather(skirt.waist, to=30 * cm, rows=9))


def test_ease_stitching_says_by_how_much(sewn, skirt):
    found = sewn(skirt, lambda make, skirt, yoke: make.ease_stitch(skirt.waist, to=42 * cm))
    assert found.codes == []
    assert "until the edge is 6 cm (2 3/8 in) shorter and measures 84 cm" in found.said[1]
    much = lambda make, skirt, yoke: make.ease_stitch(skirt.waist, to=35 * cm)  # noqa: E731
    none = lambda make, skirt, yoke: make.ease_stitch(skirt.waist, to=46 * cm)  # noqa: E731
    assert sewn(skirt, much).codes == ["too_much_to_ease"]
    assert sewn(skirt, none).codes == ["nothing_to_ease"]


def test_basting_on_the_stitch_line_is_taken_out_again(sewn, skirt):
    baste = lambda make, skirt, yoke: make.baste(skirt.side, distance=0 * mm)  # noqa: E731
    side = lambda make, skirt, yoke: make.hem(skirt.side, first=15 * mm)  # noqa: E731
    out = lambda make, skirt, yoke: make.remove_basting(skirt.side)  # noqa: E731
    found = sewn(skirt, baste, side, out)
    assert found.codes == []
    wanted = found.pattern.sewing[0].operations[0].wants(found.pattern)
    assert set(wanted) <= found.state.facts
    assert not set(wanted) <= sewn(skirt, baste, side).state.facts  # left out, the proof has something to ask for
    assert sewn(skirt, side, out).codes == ["not_basted"]
    assert sewn(skirt, baste, out).codes == ["basting_out_early"]
    assert sewn(skirt, baste, side, out, out).codes == ["not_basted"]
    assert sewn(skirt, side, baste).codes == ["basted_late"]


def test_basting_in_the_allowance_may_stay(sewn, skirt):
    found = sewn(skirt, lambda make, skirt, yoke: make.baste(skirt.side))
    assert found.last.wants(found.pattern) == ()
    assert (
        found.said[0]
        == "Baste along the side seam of the skirt, 3 mm (1/8 in) outside the stitch line, through all layers."
    )


# ---- basting for a fitting --------------------------------------------------------------------------------


@pytest.fixture
def pair(wrap):
    def panel(name):
        return wrap.polygon(
            name, [(0, 0), (200, 0), (200, 300), (0, 300)], {"hem": 20, "side": 10, "top": 10, "centre": 15}
        )

    return panel("front"), panel("back")


def baste(make, front, back):
    make.baste(front.side, back.side, distance=0 * mm)


def try_on(make, front, back):
    make.try_on("Is the waist too wide?")


def out(make, front, back):
    make.remove_basting(front.side, back.side)


def plain(make, front, back):
    make.plain_seam(front.side, back.side, allowance=1 * cm)


def french(make, front, back):
    make.french_seam(front.side, back.side, first=6 * mm, second=4 * mm)


def never(found) -> set[str]:
    return {each.code for each in unfinished(found.pattern, found.state)}


def test_basting_for_a_fitting_comes_out_before_the_seam_or_after_it(sewn, pair):
    """Common practice, no source: once it was tried on, basting may come out before the seam; a seam sewn right sides
    together may also be sewn first, one that begins with the wrong sides together cannot."""
    assert sewn(pair, baste, try_on, out, french).codes == []
    assert sewn(pair, baste, try_on, plain, out).codes == []
    assert sewn(pair, baste, out, plain).codes == ["basting_out_early", "basting_out_early"]
    assert sewn(pair, try_on, baste, out, plain).codes == ["basting_out_early", "basting_out_early"]
    assert set(sewn(pair, baste, try_on, french, out).codes) == {"basted_otherwise"}
    lapped = lambda make, front, back: make.lapped_seam(front.side, back.side, allowance=1 * cm)  # noqa: E731
    assert set(sewn(pair, baste, try_on, lapped, out).codes) == {"basted_otherwise"}
    for outside, codes in ((True, {"basted_otherwise"}), (False, set())):
        felled = lambda make, front, back, outside=outside: make.flat_felled_seam(  # noqa: E731
            front.side, back.side, allowance=1 * cm, outside=outside
        )
        assert set(sewn(pair, baste, felled, out).codes) == codes


def test_basting_never_taken_out_is_an_error(sewn, pair):
    assert never(sewn(pair, baste, try_on, plain)) == {"never_used"}
    assert never(sewn(pair, baste, try_on, out, french)) == set()
    again = sewn(pair, baste, try_on, out, baste, plain)  # basted anew after the fitting
    assert never(again) == {"never_used"}


def test_between_two_rows_the_next_may_be_basted_and_tried_on(sewn, pair):
    first = lambda make, front, back: make.french_seam(  # noqa: E731
        front.side, back.side, first=6 * mm, second=4 * mm, rows="first"
    )
    finish = lambda make, front, back: make.finish(front.side)  # noqa: E731
    assert sewn(pair, first, baste, try_on, finish, out).codes == []
    assert never(sewn(pair, first, baste, try_on, finish)) == {"never_used"}
    assert set(sewn(pair, first, finish, baste).codes) == {"basted_late"}


def test_basting_says_which_way_it_comes_out(sewn, pair):
    said = sewn(pair, baste).said
    assert said[0].startswith(
        "Lay the side seam of the front and back edge to edge, right sides together, pin, and baste"
    )
    assert said[1].startswith("This basting comes out again. In a seam that begins with the wrong sides together")
    scene = sewn(pair, baste).last.scenes(sewn(pair, baste).pattern)[0]
    assert [layer.run.piece for layer in scene.layers] == ["back", "front"]
