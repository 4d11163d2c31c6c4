"""Bound edges, bias facings, casings and what is drawn through them, handles and slanted ties."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Arc, Path, Point
from kit.piece.piece import CutPlan, Mark, Notch, Strip
from kit.proof.edges import allowances, raw_edges
from kit.proof.strip_ends import strip_ends
from kit.prose import sentences
from kit.sewing.sections import bindings as shapes
from kit.units import cm, mm

BIAS = Strip("bias", "Bias strip", 1000, 24, 1, grain="bias")


@pytest.fixture(scope="module")
def bib(garments):
    """A straight-edged panel on the fold, cut on the line at its top."""
    piece = garments.polygon(
        "panel",
        [(0, 0), (150, 0), (150, -200), (0, -200)],
        {"top": 0, "side": 15, "hem": 30, "centre": 0},
        cut=CutPlan(fold="centre"),
    )
    return (piece,)


# ---- binding --------------------------------------------------------------------------------------------------


def test_a_binding_takes_the_place_of_the_allowance(sewn, bib):
    found = sewn(bib, lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm), strips=(BIAS,))
    assert found.codes == []
    assert found.last.takes(found.pattern) == {("panel", "top"): 0.0}
    assert [finding.code for finding in allowances(found.pattern)] == []
    assert found.state.made == ("bias",) and found.state.count("bias") == 1
    assert found.said == [
        "Press the bias strip lengthwise in half, then both long edges to the crease in the middle, and open it out.",
        "Pin the bias strip to the top of the panel on the right side, raw edges together. Ease it round curves that "
        "bend out, stretch it a little round curves that bend in.",
        "Turn in 1 cm (3/8 in) at each end.",
        "Stitch 6 mm (1/4 in) from the raw edge.",
        "Turn the strip over the edge to the wrong side and tuck its raw edge in, so that the fold just covers the "
        "stitches.",
        "From the right side stitch in the groove of the seam, catching the fold underneath.",
    ]


def test_the_allowance_is_cut_off_first(sewn, bib):
    piece = replace(bib[0], edges=tuple(replace(e, allowance=15) if e.name == "top" else e for e in bib[0].edges))
    found = sewn(
        (piece,),
        lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm, trim=15 * mm),
        strips=(BIAS,),
    )
    assert found.codes == [] and allowances(found.pattern) == []
    assert found.said[0].startswith("Trim the allowance of 1.5 cm")


@pytest.mark.parametrize(("double", "width"), [(False, 24.0), (True, 36.0)])
def test_cut_widths_of_bindings(sewn, bib, double, width):
    """Four times the finished width, six times for a double one: common practice, no source."""
    for cut, codes in ((width, []), (width + 2, []), (width - 2, ["binding_width"]), (width + 8, ["binding_width"])):
        strip = replace(BIAS, width=cut)
        found = sewn(
            bib,
            lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm, double=double),
            strips=(strip,),
        )
        assert found.codes == codes


@pytest.mark.parametrize(
    ("strip", "code"),
    [
        (replace(BIAS, length=310), "binding_short"),
        (replace(BIAS, count=0), "too_few_strips"),
    ],
)
def test_a_strip_that_does_not_do(sewn, bib, strip, code):
    found = sewn(bib, lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm), strips=(strip,))
    assert code in found.codes


def test_a_curve_wants_a_bias_strip(sewn, bib):
    low = Point(75, -50)
    from_angle, to_angle = math.atan2(50, -75), math.atan2(50, 75)
    arc = Path((Arc(low, math.hypot(75, 50), from_angle, to_angle - from_angle),))
    piece = replace(
        bib[0],
        edges=tuple(replace(e, path=arc) if e.name == "top" else e for e in bib[0].edges),
    )
    straight = replace(BIAS, grain="lengthwise")
    for strip, codes in ((BIAS, []), (straight, ["binding_not_bias"])):
        found = sewn(
            (piece,), lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm), strips=(strip,)
        )
        assert found.codes == codes


def test_an_edge_is_bound_once(sewn, bib):
    def bind(make, **p):
        make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm)

    found = sewn(bib, bind, bind, strips=(replace(BIAS, count=2),))
    assert set(found.codes) == {"closed_twice"}


def test_a_bias_facing_takes_its_allowance(sewn, bib):
    piece = replace(bib[0], edges=tuple(replace(e, allowance=6) if e.name == "top" else e for e in bib[0].edges))
    found = sewn(
        (piece,),
        lambda make, **p: make.bias_facing(p["panel"].top, strip=p["bias"], finished=12 * mm, ends="caught"),
        strips=(BIAS,),
    )
    assert found.codes == [] and allowances(found.pattern) == []
    assert found.last.cut_width() == 24.0
    assert (
        "Turn the whole strip to the inside and press, the seam at the very edge: it is 1.2 cm (1/2 in) wide there."
        in (found.said)
    )


def test_an_unbound_edge_is_noticed(sewn, bib):
    found = sewn(bib, strips=(BIAS,))
    assert "top" in {finding.edge for finding in raw_edges(found.pattern, found.state)}


def _ending(found) -> list[str]:
    (bind,) = [each for record in found.pattern.sewing for each in record.operations if each.kind == "bind"]
    return [key for key, _ in bind.sentences(found.pattern) if key.startswith("bind.ends_")]


def test_what_becomes_of_the_ends_follows_the_edge(sewn, shorts):
    """Open ends are turned in, ends that a later seam takes in run into it, and a ring is joined; what is said counts.
    Common practice, no source."""

    def bind(**more):
        return lambda make, front, back, bias: make.bind(
            [front.waist, back.waist], strip=bias, finished=6 * mm, trim=40 * mm, **more
        )

    def one(make, front, back, bias):
        make.bind(front.waist, strip=bias, finished=6 * mm, trim=40 * mm)

    def hemmed(make, front, back, bias):
        make.narrow_hem(front.side, turn=7.5 * mm)

    def first(make, front, back, bias):
        make.bind(front.waist, strip=bias, finished=6 * mm, trim=40 * mm, rows="first")

    cases = (
        ((one,), "turned"),
        ((hemmed, one), "turned"),
        ((one, sides), "caught"),
        ((sides, bind()), "ring"),
        ((sides, bind(ends="turned")), "turned"),
        ((bind(ends="caught"),), "caught"),
    )
    for steps, word in cases:
        found = sewn(shorts, *steps, strips=(BIAS,))
        assert _ending(found) == [f"bind.ends_{word}"], steps
    begun = sewn(shorts, hemmed, first, strips=(BIAS,))
    assert [key for key, _ in begun.last.sentences(begun.pattern)][3] == "bind.ends_turned"


def test_ends_told_as_caught_need_a_later_seam_there(sewn, shorts):
    """Common practice, no source: an end left raw is caught by a seam sewn over it afterwards, or it frays."""

    def bind(make, front, back, bias):
        make.bind([front.waist], strip=bias, finished=6 * mm, trim=40 * mm, ends="caught")

    def both(make, front, back, bias):
        make.bind(front.waist + back.waist, strip=bias, finished=6 * mm, trim=40 * mm, ends="caught")

    def turned_up(make, front, back, bias):
        make.edge_finish(front.side, leave=True)

    for steps, codes in (
        ((bind, sides), []),
        ((bind,), ["ends_not_caught"]),
        ((sides, bind), ["ends_not_caught"]),
        ((bind, turned_up), ["ends_not_caught"]),
        ((sides, both), ["ends_of_ring_caught"]),
    ):
        found = sewn(shorts, *steps, strips=(BIAS,))
        assert found.codes == []
        assert [finding.code for finding in strip_ends(found.pattern)] == codes, (steps, codes)


def test_a_ring_named_edge_by_edge_is_found(sewn, garments):
    """The outer edge of two pieces joined at the shoulders, all round: its ends meet, however it is named."""

    def half(name):
        corners = [(0, 0), (150, 0), (150, 200), (100, 220), (0, 220)]
        names = {"hem": 0, "side": 0, "shoulder": 15, "neck": 0, "centre": 0}
        return garments.polygon(name, corners, names, cut=CutPlan(fold="centre"))

    def shoulders(make, front, back, **p):
        make.plain_seam(front.shoulder, back.shoulder, allowance=15 * mm)

    def commas(make, front, back, bias):
        make.bind(front.hem, front.side, back.side, back.hem, strip=bias, finished=6 * mm)

    def groups(make, front, back, bias):
        make.bind([front.hem + front.side, back.side + back.hem], strip=bias, finished=6 * mm)

    def one_less(make, front, back, bias):
        make.bind(front.hem, front.side, back.side, strip=bias, finished=6 * mm)

    long = replace(BIAS, length=2000)
    for step, word in ((commas, "ring"), (groups, "ring"), (one_less, "turned")):
        found = sewn((half("front"), half("back")), shoulders, step, strips=(long,))
        assert (found.codes, _ending(found)) == ([], [f"bind.ends_{word}"]), step
        assert strip_ends(found.pattern) == []


def test_ends_that_are_turned_in_need_cloth_and_those_a_seam_catches_do_not(sewn, shorts):
    def one(make, front, back, bias):
        make.bind(front.waist, strip=bias, finished=6 * mm, trim=40 * mm)

    bound = replace(BIAS, length=302)
    assert "binding_short" in sewn(shorts, one, strips=(bound,)).codes
    assert sewn(shorts, one, sides, strips=(bound,)).codes == []


# ---- casings --------------------------------------------------------------------------------------------------


@pytest.fixture(scope="module")
def shorts(garments):
    """Front and back on the fold with a waist for a casing: 600 mm all round."""

    def half(name):
        return garments.polygon(
            name,
            [(0, 0), (150, 0), (150, -200), (0, -200)],
            {"waist": 40, "side": 15, "hem": 30, "centre": 0},
            cut=CutPlan(fold="centre"),
            marks=(
                Mark("eyelet", "point", point=Point(20, -20), said="eyelet"),
                Mark("low", "opening", edge="side", start=10, end=60, said="vent"),
            ),
        )

    return half("front"), half("back")


def sides(make, front, back, **p):
    make.plain_seam(front.side, back.side, allowance=15 * mm)


def casing(make, front, back, **p):
    make.casing([front.waist, back.waist], depth=3 * cm, gap=back.right.waist.between(2 * cm, 6 * cm))


def elastic(make, front, back, **p):
    make.thread_elastic(
        [front.waist, back.waist],
        length=52 * cm,
        width=25 * mm,
        gap=back.right.waist.between(2 * cm, 6 * cm),
    )


def test_a_casing_leaves_its_gap_and_the_elastic_closes_it(sewn, shorts):
    found = sewn(shorts, sides, casing)
    assert found.codes == []
    (left,) = [finding for finding in raw_edges(found.pattern, found.state) if finding.edge == "waist"]
    assert left.amount == pytest.approx(40.0)
    assert found.last.wants(found.pattern)[0] == ("threaded", "front", "left", "waist")
    whole = sewn(shorts, sides, casing, elastic)
    assert whole.codes == []
    assert not [finding for finding in raw_edges(whole.pattern, whole.state) if finding.edge == "waist"]
    assert set(whole.pattern.sewing[1].operations[0].wants(whole.pattern)) <= whole.state.facts
    assert whole.last.notion_amounts(whole.pattern) == {"elastic": (520.0, "length")}
    assert whole.last.takes(whole.pattern) == {}
    assert allowances(whole.pattern) == []


def test_a_casing_says_its_gap(sewn, shorts):
    found = sewn(shorts, sides, casing, elastic)
    fold = found.pattern.sewing[1].operations[0]
    assert sentences(found.pattern, fold)[-1] == (
        "Stitch 2 mm (1/16 in) from the inner fold, but leave 4 cm (1 9/16 in) open for threading, on the waist of the "
        "right back from 2 cm (3/4 in) to 6 cm (2 3/8 in), measured from the centre line. Backstitch at both ends "
        "of the gap."
    )
    assert found.said[0].startswith("Cut 52 cm (20 1/2 in) of elastic 2.5 cm (1 in) wide, fix a bodkin to one end")


@pytest.mark.parametrize(
    ("writes", "codes"),
    [
        ((sides, elastic), ["no_casing"]),
        ((casing,), ["not_joined_yet"]),
        ((sides, elastic, casing), ["no_casing", "closed_twice"]),
        (
            (
                sides,
                casing,
                lambda make, front, back, **p: make.thread_elastic(
                    [front.waist, back.waist],
                    length=62 * cm,
                    width=25 * mm,
                    gap=back.right.waist.between(2 * cm, 6 * cm),
                ),
            ),
            ["elastic_long"],
        ),
        (
            (
                sides,
                casing,
                lambda make, front, back, **p: make.thread_elastic(
                    [front.waist, back.waist],
                    length=50 * cm,
                    width=30 * mm,
                    gap=back.right.waist.between(2 * cm, 6 * cm),
                ),
            ),
            ["elastic_wide"],
        ),
        (
            (
                sides,
                lambda make, front, back, **p: make.casing([front.waist, back.waist], depth=3 * cm),
                elastic,
            ),
            ["gap_shut", "closed_twice"],
        ),
        (
            (
                sides,
                lambda make, front, back, **p: make.casing(
                    [front.waist, back.waist], depth=3 * cm, gap=front.right.side.between(1 * cm, 4 * cm)
                ),
            ),
            ["gap_elsewhere"],
        ),
    ],
)
def test_casings_are_refused(sewn, shorts, writes, codes):
    found = sewn(shorts, *writes).codes
    assert found[0] == codes[0] and set(found) <= set(codes) | {"threaded_twice"}


def test_threading_twice_is_refused(sewn, shorts):
    assert "threaded_twice" in sewn(shorts, sides, casing, elastic, elastic).codes


def cord(make, front, back, **p):
    make.thread_cord([front.waist, back.waist], cord=120 * cm, through=front.eyelet)


def plain_casing(make, front, back, **p):
    make.casing([front.waist, back.waist], depth=3 * cm)


def test_a_cord_comes_out_at_eyelets(sewn, shorts):
    found = sewn(shorts, lambda make, front, **p: make.eyelets(front.eyelet), sides, plain_casing, cord)
    assert found.codes == []
    assert found.last.notion_amounts(found.pattern) == {"cord": (1200.0, "length")}
    assert "cords" in found.last.cautions
    assert set(found.pattern.sewing[0].operations[0].wants(found.pattern)) <= found.state.facts
    without = sewn(shorts, sides, plain_casing, cord)
    assert without.codes == ["no_eyelet"]
    late = sewn(shorts, sides, plain_casing, lambda make, front, **p: make.eyelets(front.eyelet), cord)
    assert late.codes == ["eyelet_late"]


def test_elastic_and_a_cord_share_a_casing(sewn, shorts):
    """What would sew, and why (common practice, no source): a bodkin passes along what is in a casing, so either
    may be first; a second elastic would draw in what is drawn in; a hole takes one cord; 3 cm take elastic of 2 cm and
    a cord beside it, not elastic of 2.5 cm."""

    def thread(wide):
        gap = {"width": wide * mm, "length": 52 * cm}
        return lambda make, front, back, **p: make.thread_elastic(
            [front.waist, back.waist], **gap, gap=back.right.waist.between(2 * cm, 6 * cm)
        )

    def holes(make, front, **p):
        make.eyelets(front.eyelet)

    begun = (holes, sides, casing)
    both = sewn(shorts, *begun, thread(20), cord)
    assert both.codes == []
    assert "Draw it in along the elastic, on the side of the eyelets" in " ".join(both.said)
    turned = sewn(shorts, *begun, cord, thread(20))
    assert turned.codes == []
    assert "along the cord" in " ".join(turned.said)
    assert "along the" not in " ".join(sewn(shorts, *begun, cord).said)
    assert sewn(shorts, *begun, thread(25), cord).codes == ["cord_no_room"]
    assert sewn(shorts, *begun, cord, thread(25)).codes == ["cord_no_room"]
    assert sewn(shorts, *begun, cord, cord).codes == ["threaded_twice"]
    assert "threaded_twice" in sewn(shorts, *begun, thread(20), cord, thread(20)).codes


def test_a_cord_may_be_a_made_strip_long_enough_to_tie(sewn, shorts):
    strip = Strip("tie", "Tie", 1000, 40, 1)

    def draw(make, front, back, tie):
        make.thread_cord([front.waist, back.waist], cord=tie, through=front.eyelet)

    def eyelets(make, front, **p):
        make.eyelets(front.eyelet)

    def fold(make, tie, **p):
        make.fold_strip(tie)

    assert sewn(shorts, eyelets, sides, fold, plain_casing, draw, strips=(strip,)).codes == []
    assert sewn(shorts, eyelets, sides, plain_casing, draw, strips=(strip,)).codes == ["strip_not_made"]
    short = replace(strip, length=590)
    assert sewn(shorts, eyelets, sides, fold, plain_casing, draw, strips=(short,)).codes == ["cord_short"]


# ---- strips ---------------------------------------------------------------------------------------------------


def test_a_tie_end_on_a_slant(sewn, bib):
    sash = Strip("sash", "Sash", 900, 100, 1, fold="in_two")
    found = sewn(bib, lambda make, **p: make.turn_strip(p["sash"], allowance=1 * cm, slant=4 * cm), strips=(sash,))
    assert found.said[2:4] == [
        "At one end carry on across it on a slant, so that the fold is 4 cm (1 9/16 in) longer than the seamed edge. "
        "The other end stays open for turning.",
        "Trim the allowance of the slant and cut the corners off.",
    ]
    long = sewn(
        bib,
        lambda make, **p: make.turn_strip(p["sash"], allowance=1 * cm, slant=30 * cm),
        strips=(replace(sash, length=500),),
    )
    assert long.codes == ["slant_long"]


def test_a_tie_is_caught_where_it_lies_only(sewn, bib):
    """The rest of the edge may be closed already; the place of the tie must still be raw."""
    tie = Strip("tie", "Tie", 500, 40, 1)
    lower = lambda make, **p: make.hem(p["panel"].right.side.between(10 * cm, 20 * cm), first=15 * mm)  # noqa: E731
    fold = lambda make, **p: make.fold_strip(p["tie"])  # noqa: E731

    def caught(at):
        return lambda make, **p: make.attach_strip(p["tie"], p["panel"].right.side, at=at, method="caught")

    assert sewn(bib, lower, fold, caught(5 * cm), strips=(tie,)).codes == []
    assert sewn(bib, lower, fold, caught(15 * cm), strips=(tie,)).codes == ["edge_closed_already"]


def test_a_handle_has_two_ends(sewn, bib):
    strap = Strip("strap", "Strap", 500, 100, 2, finished_width=25)

    def handle(*at, method="caught"):
        return lambda make, **p: make.attach_handle(p["strap"], p["panel"].top, at=at, method=method)

    fold = lambda make, **p: make.fold_strip(p["strap"], ends=0)  # noqa: E731
    found = sewn(bib, fold, handle(2 * cm, 12 * cm), strips=(strap,))
    assert found.codes == [] and found.state.count("strap") == 2
    assert sewn(bib, handle(2 * cm, 12 * cm), strips=(strap,)).codes == ["strip_not_made"]
    assert sewn(bib, fold, handle(2 * cm, 12 * cm, method="stitched_on"), strips=(strap,)).codes == ["edge_still_raw"]
    twice = sewn(bib, fold, handle(2 * cm, 12 * cm), handle(2 * cm, 12 * cm), strips=(strap,)).codes
    assert twice == ["too_few_strips", "handle_twice"]
    with pytest.raises(KitError, match="off the edge"):
        sewn(bib, fold, handle(2 * cm, 25 * cm), strips=(strap,))
    with pytest.raises(KitError, match="same spot"):
        sewn(bib, fold, handle(2 * cm, 2 * cm), strips=(strap,))


def test_the_ends_of_a_handle_are_told_from_the_nearer_end_where_they_lie_alike(sewn, bib):
    """Two lengths from one end are measured twice, and the second over the first end of the handle."""
    strap = Strip("strap", "Strap", 500, 100, 2, finished_width=25)

    def said(one, two):
        write = lambda make, **p: make.attach_handle(p["strap"], p["panel"].top, at=(one, two), method="caught")  # noqa: E731
        found = sewn(bib, lambda make, **p: make.fold_strip(p["strap"], ends=0), write, strips=(strap,))
        return sentences(found.pattern, found.last)[0]

    assert "2 cm (3/4 in) from the centre line and 2 cm (3/4 in) from the side seam" in said(2 * cm, 13 * cm)
    assert "2 cm (3/4 in) and 12 cm (4 3/4 in) from the centre line" in said(2 * cm, 12 * cm)


def test_notches_at_both_ends_of_a_handle_are_told(sewn, bib):
    """Cut there when the piece was marked, they save measuring once more."""
    (panel,) = bib
    strap = Strip("strap", "Strap", 500, 100, 2, finished_width=25)

    def said(*at):
        notches = tuple(Notch("top", each) for each in at)
        write = lambda make, **p: make.attach_handle(p["strap"], p["panel"].top, at=(2 * cm, 12 * cm), method="caught")  # noqa: E731
        fold = lambda make, **p: make.fold_strip(p["strap"], ends=0)  # noqa: E731
        found = sewn((replace(panel, notches=notches),), fold, write, strips=(strap,))
        return [sentence.key for sentence in found.last.sentences(found.pattern)]

    assert "attach_handle.notches" in said(20.0, 120.0)
    assert "attach_handle.notches" not in said(20.0)
    assert "attach_handle.notches" not in said(20.0, 110.0)


# ---- cross-sections: counts worked by hand from the textbook diagrams (common practice, no source) -------------

BY_HAND = {
    # name: (section, cut edges, of these shut in, folds of each ply)
    "binding, first row": (shapes.bound_first(), 3, 0, [0, 0]),
    "double binding, first row": (shapes.bound_first(double=True), 3, 1, [0, 1]),
    "bound": (shapes.bound(), 3, 3, [0, 3]),
    "bound double": (shapes.bound_double(), 3, 3, [0, 5]),
    "faced with a bias strip": (shapes.bias_faced(), 3, 3, [1, 2]),
    "casing": (shapes.casing(), 1, 1, [2]),
    "casing with elastic": (shapes.casing("elastic"), 1, 1, [2, 0]),
    "channel": (shapes.channel(), 2, 2, [1, 1]),
    "channel with a cord": (shapes.channel("cord"), 2, 2, [1, 1, 0]),
    "channel in a hem": (shapes.channel(hemmed=True), 1, 1, [2]),
}


@pytest.mark.parametrize("name", BY_HAND)
def test_cut_edges_and_folds(name):
    found, raw, enclosed, folds = BY_HAND[name]
    assert (found.raw_edges, found.enclosed) == (raw, enclosed)
    assert [ply.folds for ply in found.plies] == folds


def test_rows_go_through_what_they_hold():
    assert shapes.bound_first().through(0) == ("garment", "binding")
    assert shapes.bound().through(0) == ("garment", "binding")  # the first row, now hidden under the fold
    assert shapes.bound().through(1) == ("binding", "binding", "garment")
    assert shapes.bound_double().through(0) == ("garment", "binding", "binding")
    assert shapes.bound_double().through(1) == ("binding", "binding", "garment")
    assert shapes.bias_faced().through(0) == ("strip", "strip", "garment")
    assert shapes.casing("elastic").through(0) == ("garment",) * 3
    for row in (0, 1):  # between the rows lies what is drawn in, and no allowance
        assert shapes.channel("cord").through(row) == ("inner", "outer")
        assert shapes.channel("cord", hemmed=True).through(row) == ("garment",) * 2


def test_the_binding_lies_on_both_sides_of_the_edge():
    assert shapes.bound().at(-1.0) == ("binding", "binding", "garment", "binding", "binding")
    assert shapes.bound_double().at(-1.0) == ("binding", "binding", "garment") + ("binding",) * 4
    assert shapes.casing("elastic").at(0.0) == ("garment", "elastic", "garment")
    assert shapes.channel("cord").at(-9.0) == ("inner", "cord", "outer")


# ---- ties under a binding ----------------------------------------------------------------------------------------


TIE = Strip("tie", "Tie", 400, 60, 2, finished_length=380, finished_width=15, fold="in_four")


def _tied(make, panel, tie, bias, bound=True):
    make.fold_strip(tie, ends=1 * cm)
    make.attach_strip(tie, panel.top, at=7 * cm, method="caught")
    if bound:
        make.bind(panel.top, strip=bias, finished=6 * mm)


def test_a_tie_on_an_edge_without_allowance_is_basted_on_the_cloth(sewn, bib):
    found = sewn(bib, lambda make, **p: _tied(make, p["panel"], p["tie"], p["bias"], False), strips=(BIAS, TIE))
    assert found.last.sentences(found.pattern)[1].key == "attach_strip.caught.sew_edge"
    (row,) = found.last.scenes(found.pattern)[0].rows
    assert row.inset > 0 and row.style == "baste", "a row outside the cloth holds nothing"


def test_a_tie_that_is_caught_is_brought_out_over_the_binding(sewn, bib):
    """Laid inwards and bound over, it would come out from under the binding on the inner side."""
    found = sewn(bib, lambda make, **p: _tied(make, p["panel"], p["tie"], p["bias"]), strips=(BIAS, TIE))
    assert found.codes == []
    keys = [sentence.key for sentence in found.last.sentences(found.pattern)]
    assert keys.index("bind.ties_out") > keys.index("bind.last_machine")
    first, *_, last = found.last.scenes(found.pattern)
    assert any(thing.kind == "caught" for thing in first.things)
    assert last.strip == "tie" and last.rows[0].style == "box" and last.layers[0].bound


def test_without_a_tie_nothing_is_brought_out(sewn, bib):
    found = sewn(bib, lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm), strips=(BIAS,))
    assert "bind.ties_out" not in [sentence.key for sentence in found.last.sentences(found.pattern)]
    assert len(found.last.scenes(found.pattern)) == 3


@pytest.mark.parametrize(("last", "faces"), [("machine", ["right", "wrong", "right"]), ("hand", ["right", "wrong"])])
def test_the_last_row_of_a_binding_is_shown_from_where_it_is_sewn(sewn, bib, last, faces):
    """In the groove from the right side; a fold is slip-stitched where it lies, on the wrong side (as it is told)."""
    write = lambda make, **p: make.bind(p["panel"].top, strip=p["bias"], finished=6 * mm, last=last)  # noqa: E731
    found = sewn(bib, write, strips=(BIAS,))
    scenes = found.last.scenes(found.pattern)
    assert [scene.layers[0].up for scene in scenes] == faces
    assert [bool(scene.rows) for scene in scenes] == [True, *([False] if last == "machine" else []), True]


def test_an_edge_that_is_bound_stays_bound_in_later_pictures(sewn, bib):
    from kit.sewing.in_work import shown_scenes

    def write(make, panel, bias):
        make.bind(panel.top, strip=bias, finished=6 * mm)
        make.hem(panel.hem, first=1 * cm, second=2 * cm)

    found = sewn(bib, write, strips=(BIAS,))
    (scene, *_) = shown_scenes(found.pattern, found.last)
    assert {(run.edges, wide) for run, wide in scene.layers[0].bound} == {(("top",), 6.0)}


def test_a_cord_comes_out_at_buttonholes_as_at_eyelets(sewn, shorts):
    def hole(make, front, **p):
        make.eyelets(front.eyelet, worked="buttonhole")

    found = sewn(shorts, hole, sides, plain_casing, cord)
    assert found.codes == []
    assert sewn(shorts, hole, sides, plain_casing).codes == []
    assert any("buttonhole" in said and "one layer" in said for said in sewn(shorts, hole).said)
    assert sewn(shorts, hole).last.notion_amounts(found.pattern) == {}
    assert sewn(shorts, sides, plain_casing, hole, cord).codes == ["eyelet_late"]


def test_a_lace_is_not_drawn_through_buttonholes(sewn, shorts):
    with pytest.raises(KitError, match="lace is drawn through eyelets"):
        sewn(shorts, lambda make, front, **p: make.eyelets(front.eyelet, opposite=front.eyelet, worked="buttonhole"))
