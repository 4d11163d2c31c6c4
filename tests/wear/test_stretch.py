"""Cloth that stretches: measured, spent, eased and sewn by its stretch and not by the rule for woven cloth."""

from __future__ import annotations

import pytest

from kit.booklet.tables import cloth
from kit.errors import KitError
from kit.language import speaking
from kit.picture.drawing import Stroke
from kit.picture.stretch_gauge import stretch_gauge
from kit.proof import prove
from kit.sewing.order import sew
from kit.wear.worn import worn
from tests.wear.garments import lesson_of

KNIT = 'units="cm", size="W4", stretch={stretch},'


def knit(base: str, stretch: float, *changes: tuple[str, str]):
    return lesson_of(base, (*changes, ('units="cm", size="W4",', KNIT.format(stretch=stretch))))


@pytest.mark.parametrize(("stretch", "reach"), [(0.4, 140.0), (0.15, 115.0), (1.0, 200.0)])
def test_the_gauge_shows_what_the_fold_must_reach(stretch: float, reach: float) -> None:
    """(stretched - relaxed) / relaxed: 10 in drawn to 14 in is 40 % (Treadle Yard Goods, page of 2023); ASTM D2594 is
    the laboratory's standard."""
    marks = [item for item in stretch_gauge(stretch).items if isinstance(item, Stroke) and item.name == "mark"]
    hold, relaxed, stretched = (mark.curves[0].start.x for mark in marks)
    assert (hold, stretched) == (0.0, pytest.approx(reach))
    assert (stretched - relaxed) / (relaxed - hold) == pytest.approx(stretch)


def test_how_far_the_cloth_is_spent_is_told_in_the_amount_that_mends_it() -> None:
    """84 cm round 90: of 10 % half may be spent, which 90 / 1.05 keeps."""
    tight = (
        "piece.side = under.to(piece.side_hip)",
        "piece.side = under.into(4 * cm).to(piece.side_hip.into(4 * cm))\n"
        "        piece.join(piece.armhole, piece.side)",
    )
    pattern = knit("tunic", 0.1, tight).work()
    found = [each for each in worn(pattern, sew(pattern)[0]) if each.code == "stretch_spent"]
    bust = next(each for each in found if each.measures == ("bust_girth",))
    assert bust.amount == pytest.approx(900.0 / 1.05 - 840.0, abs=2.0)


def test_a_curved_hem_that_woven_cloth_cannot_take_lies_flat_in_cloth_that_stretches() -> None:
    codes = {}
    for stretch in (0.0, 0.6):
        pattern = knit("shift", stretch, ('hem_drop", 58 * cm', 'hem_drop", 30 * cm')).work()
        codes[stretch] = [each.code for each in prove(pattern) if each.code == "hem_not_flat"]
    assert len(codes[0.6]) <= len(codes[0.0])
    top = lesson_of("tideline_wrap_top")
    assert [each.code for each in prove(top.work())].count("hem_not_flat") == 2
    jersey = lesson_of("tideline_wrap_top", (("    shrinkage=0.04,\n", "    shrinkage=0.04,\n    stretch=0.4,\n"),))
    assert [each.code for each in prove(jersey.work())].count("hem_not_flat") == 0


def test_fullness_is_pinned_in_as_the_cloth_gives() -> None:
    """A sleeve's cap of 3 cm without an ease stitch: 6 % of an armhole of about 46 cm, more than woven cloth is pinned
    by."""
    bare = ("    make.ease_stitch(sleeve.back_cap + sleeve.front_cap)\n", "")
    woven = lesson_of("blouse", (bare,)).work()
    assert any(each.level == "error" for each in sew(woven)[1])
    stretchy = lesson_of("blouse", (bare, ('    units="cm",\n', '    units="cm",\n    stretch=0.5,\n'))).work()
    assert not any(each.level == "error" for each in sew(stretchy)[1])


@pytest.mark.parametrize("language", ["en", "de", "es", "fr"])
def test_the_booklet_says_how_it_is_measured_and_sewn(language: str) -> None:
    with speaking(language):
        woven = cloth(lesson_of("tunic").work(), None, ()).advice
        pattern = knit("tunic", 0.4).work()
        advice = dict(cloth(pattern, None, ()).advice)
    assert len(advice) == len(woven) + 2
    said = " ".join(advice.values())
    assert "14 cm" in said and "40" in said


def test_cloth_that_gives_along_the_grain_alone_is_said_so() -> None:
    pattern = lesson_of("tunic", (('units="cm", size="W4",', 'units="cm", size="W4", stretch_along=0.2,'),)).work()
    assert dict(cloth(pattern, None, ()).advice)["Stretch"] == "Along the grain it gives 20%."


def test_a_stretch_there_is_not_is_refused() -> None:
    with pytest.raises(KitError, match="stretch_along"):
        lesson_of("tunic", (('units="cm", size="W4",', 'units="cm", size="W4", stretch_along=20,'),))
