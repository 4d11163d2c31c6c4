"""What is told of a garment that is moved in, against lengths worked by hand and against other people's rules."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.body.chart import workshop_chart
from kit.diagnostic import Diagnostic
from kit.errors import KitError
from kit.sewing.order import sew
from kit.wear.covers import THIGH
from kit.wear.fit import INCH, LEAST_EASE, STYLES
from kit.wear.girth import Worn
from kit.wear.hand import mouth_of, wrist_height
from kit.wear.moved import ARMPIT, BARE, CAP, CAP_KNIT, LIFTS, underarm_long
from kit.wear.worn import worn
from tests.body import survey
from tests.wear.garments import labelled, lesson_of


def told(base: str, *changes: tuple[str, str]) -> dict[str, Diagnostic]:
    pattern = lesson_of(base, changes).work()
    return {each.code: each for each in worn(pattern, sew(pattern)[0])}


def top(armhole: float, cap: float) -> tuple[tuple[str, str], ...]:
    return (
        ('lesson.length("armhole", 24 * cm', f'lesson.length("armhole", {armhole} * cm'),
        ('lesson.length("cap", 4 * cm', f'lesson.length("cap", {cap} * cm'),
    )


def test_a_raised_arm_lifts_what_the_lengths_lack() -> None:
    """Of straight lines: the underarm lies 40 cm less the armhole above the waist, and the sleeve is 50 less its cap
    below it. The body has 21.1 to the armpit and 50 less the 12 from the shoulder to it."""
    garment = (40 - 32) + (50 - 14)
    body = 21.1 + 50 - ARMPIT / 10
    found = told("t_top", *top(32, 14))["arm_raised"]
    assert found.amount == pytest.approx(10 * (body - garment) - LIFTS, abs=0.5)


@pytest.mark.parametrize(("armhole", "cap"), [(30, 11), (26, 15), (34, 7)])
def test_one_centimetre_less_on_the_way_is_a_centimetre_more_lifted(armhole: float, cap: float) -> None:
    more = told("t_top", *top(armhole + 1, cap + 1)).get("arm_raised")
    less = told("t_top", *top(armhole, cap)).get("arm_raised")
    assert more and more.amount
    assert more.amount - (less.amount if less and less.amount else more.amount - 20) == pytest.approx(20.0, abs=0.5)


def test_an_underarm_of_two_edges_a_side_is_as_long_as_one() -> None:
    cut = (
        (
            "        front_underarm=two.to(right),",
            "        front_underarm=two.to(f),\n        front_forearm=f.to(right),",
        ),
        ("        back_underarm=left.to(one),", "        back_forearm=left.to(b),\n        back_underarm=b.to(one),"),
        ("    sleeve.draw(\n", "    f, b = two.down(20 * cm), one.down(20 * cm)\n    sleeve.draw(\n"),
        ('    sleeve.role("sleeve", ', '    sleeve.role("sleeve", front_forearm="underarm", back_forearm="underarm", '),
        ("    sleeve.allow(", "    sleeve.allow(front_forearm=seam, back_forearm=seam, "),
        (
            "(sleeve.front_underarm, sleeve.back_underarm, ",
            "(sleeve.front_underarm + sleeve.front_forearm, sleeve.back_forearm + sleeve.back_underarm, ",
        ),
    )
    assert told("t_top", *top(32, 14), *cut)["arm_raised"].amount == pytest.approx(
        told("t_top", *top(32, 14))["arm_raised"].amount, abs=0.1
    )


def test_a_sleeve_on_the_fold_and_half_of_one_have_one_underarm() -> None:
    whole = lesson_of("t_top").work().piece("sleeve")
    long = whole.edge("back_underarm").path.length
    half = replace(whole, edges=tuple(replace(e, role="") if e.name == "front_underarm" else e for e in whole.edges))
    assert underarm_long(whole) == underarm_long(half) == pytest.approx(long)
    assert underarm_long(replace(half, cut=replace(half.cut, fold="front_underarm"))) == pytest.approx(long)


def test_the_mouth_of_a_pocket_cut_on_the_fold_is_both_halves() -> None:
    pocket = lesson_of("harbour_jacket").work().piece("pocket")
    mouth = pocket.edge("mouth").path.length
    assert mouth_of(pocket, {"front_side", "bottom", "back_side"}) == pytest.approx(mouth)
    folded = replace(pocket, cut=replace(pocket.cut, mirrored=False, fold="back_side"))
    assert mouth_of(folded, {"front_side", "bottom"}) == pytest.approx(2 * mouth)


@pytest.mark.skipif(not survey.rows(), reason=survey.ABSENT)
def test_the_armpit_lies_below_the_shoulder_as_in_measured_women() -> None:
    """Nape to armpit, less what the shoulder's tip lies below the nape (about 4 cm; common practice, no source): 993
    women of the 2012 Anthropometric Survey of U.S. Army Personnel (Gordon et al., NATICK/TR-15/007, 2014)."""
    rows = survey.rows()
    nape = sum(row["cervicaleheight"] - row["axillaheight"] for row in rows) / len(rows)
    assert nape - 40.0 == pytest.approx(ARMPIT, abs=10.0)


@pytest.mark.skipif(not survey.rows(), reason=survey.ABSENT)
def test_the_wrist_hangs_where_it_hangs_in_measured_women() -> None:
    """Nape less sleeve outseam (shoulder to wrist) against the waist: the same survey, whose waist is at the navel,
    some 4 cm below the narrowest (from memory)."""
    rows = survey.rows()
    hang = sum(
        row["cervicaleheight"] - 40.0 - row["sleeveoutseam"] - row["waistheightomphalion"] for row in rows
    ) / len(rows)
    pattern = lesson_of("tideline_wrap_top").work()
    at = wrist_height(Worn(pattern, sew(pattern)[0]))
    assert at is not None and at == pytest.approx(hang - 40.0, abs=40.0)


def test_rules_of_others_stand_as_they_say() -> None:
    """Cap ease 1 to 1 1/2 in, knits 1/2 to 3/4 in (SFD Learning Center; Madalynne); armhole 1 to 2 in below the armpit
    (New Mexico State University, Extension Guide C-220); bust ease 3 to 4 in (C-228), raglan and dolman 20 to 30 % more
    (Anthropometry, Apparel Sizing and Design, pp. 226-228)."""
    assert CAP == 1.5 * INCH and CAP_KNIT == 0.75 * INCH
    assert 2 * INCH < BARE <= 3 * INCH
    assert 3 * INCH <= STYLES["easy"]["bust"] <= 4 * INCH
    assert 1.2 * 4 * INCH <= STYLES["loose"]["bust"] <= 1.3 * 4 * INCH
    for level, least in LEAST_EASE.items():
        assert least <= STYLES["easy"][level] <= STYLES["loose"][level]


def test_cloth_that_stretches_takes_less_ease_in_the_cap() -> None:
    knit = ('    units="cm",\n', '    units="cm",\n    stretch=0.3,\n')
    assert "cap_ease" not in told("blouse")
    assert told("blouse", knit)["cap_ease"].amount == pytest.approx(30.0 - CAP_KNIT)


def test_a_gathered_cap_is_meant_so() -> None:
    (puff,) = [garment for garment in labelled() if garment.base == "blouse" and "puckers" in garment.why]
    gather = ("    make.ease_stitch(sleeve.back_cap + sleeve.front_cap)\n",)
    put = "    make.gather(sleeve.back_cap + sleeve.front_cap, fit=[back.armhole, front.armhole])\n"
    assert "cap_ease" in told("blouse", *puff.changes)
    assert "cap_ease" not in told("blouse", *puff.changes, (gather[0], put))


def test_amounts_are_what_is_missing() -> None:
    by_why = {garment.why[:25]: garment for garment in labelled()}

    def amount(why: str, code: str) -> float:
        (garment,) = [each for start, each in by_why.items() if start.startswith(why)]
        return told(garment.base, *garment.changes)[code].amount or 0.0

    body = workshop_chart()["W4"]
    assert amount("a belt 4 cm wide", "loop_small") == pytest.approx(15.0)
    assert amount("a tie 9 cm wide", "tie_opening") == pytest.approx(5.0)
    assert amount("a pocket at the hip 7", "pocket_narrow") == pytest.approx(body["hand_girth"] / 2 + 10.0 - 70.0)
    assert amount("the fronts overlap by 12", "wrap_thigh") == pytest.approx(THIGH * body["hip_girth"] - 120.0)
    assert amount("an armhole that ends 12.5", "armhole_low") == pytest.approx(125.0 - 2 * INCH, abs=1.0)


def test_the_edge_of_a_wrap_lacks_what_a_longer_front_has_along_it() -> None:
    """From the neck point 43.5 cm above the waist to a corner 23.6 cm across, the edge leans: of what the front is
    longer it lacks 43.5 parts of its 49.5 (the hypotenuse)."""
    (garment,) = [each for each in labelled() if "pulls across the bust" in each.why]
    lean = 435.5 / math.hypot(435.5, 236.0)
    assert told(garment.base, *garment.changes)["wrap_pulls"].amount == pytest.approx((490.0 - 435.5) * lean, abs=5.0)


def test_a_longer_body_finds_the_crotch_short() -> None:
    """The seam follows the body's own; on one who is longer there by 4 cm the same trousers cut in."""
    pattern = lesson_of("trousers").work()
    state, _ = sew(pattern)
    assert worn(pattern, state) == []
    longer = tuple(
        replace(each, value=each.value + 40.0) if each.name == "total_crotch_length" else each
        for each in pattern.body.measures
    )
    (found,) = worn(replace(pattern, body=replace(pattern.body, measures=longer)), state)
    assert (found.code, found.amount) == ("crotch_short", pytest.approx(35.0, abs=2.0))


def test_a_fit_there_is_not_is_refused() -> None:
    with pytest.raises(KitError, match="close"):
        lesson_of("shift", (('units="cm", size="W4",', 'units="cm", size="W4", fit="snug",'),))
