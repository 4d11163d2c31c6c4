"""The list of garments that nobody could put on, wear or tie, and of others that can be worn: see
`data/garments.toml`, labelled with a tape at the sewing table before any check was written (common practice, no
source)."""

from __future__ import annotations

import pytest

from kit.body.body import Body
from kit.body.chart import workshop_chart
from kit.body.make import make_body
from kit.diagnostic import Diagnostic
from kit.proof import prove
from kit.sewing.order import sew
from kit.wear.worn import worn
from tests.body.bdims import some_women
from tests.example import GARMENTS as EXAMPLES
from tests.wear.garments import labelled, lesson_of

GARMENTS = tuple(labelled())
BASES = tuple(dict.fromkeys(garment.base for garment in GARMENTS))


def told(base: str, changes=(), body: Body | None = None) -> list[Diagnostic]:
    """What is found of a garment on its body."""
    pattern = lesson_of(base, changes).work(body) if body else lesson_of(base, changes).work()
    return worn(pattern, sew(pattern)[0])


def test_forty_cannot_be_worn_and_more_than_twenty_can() -> None:
    assert sum(not garment.worn for garment in GARMENTS) >= 40
    assert sum(garment.worn for garment in GARMENTS) >= 20
    assert all(len(garment.why) > 10 for garment in GARMENTS)
    assert len({(garment.base, garment.changes) for garment in GARMENTS}) == len(GARMENTS)


@pytest.mark.parametrize("garment", GARMENTS, ids=lambda garment: garment.name)
def test_what_cannot_be_worn_is_told_and_nothing_else(garment) -> None:
    said = told(garment.base, garment.changes)
    assert bool(said) != garment.worn, (garment.why, [str(each) for each in said])


@pytest.mark.parametrize("base", BASES)
def test_nothing_is_said_of_the_garments_as_they_are(base: str) -> None:
    assert told(base) == []
    assert [str(finding) for finding in prove(lesson_of(base).work()) if finding.level != "note"] == []


@pytest.mark.parametrize("base", EXAMPLES)
def test_no_false_alarm_on_the_examples_for_every_size_and_for_measured_women(base: str) -> None:
    """All of the workshop's sizes, and each tenth of 260 measured women (`bdims`)."""
    lesson = lesson_of(base)
    women = [make_body(woman, name=f"woman {number}") for number, woman in enumerate(some_women(False))]
    for body in (*workshop_chart().bodies(), *women):
        pattern = lesson.work(body)
        assert [str(found) for found in worn(pattern, sew(pattern)[0])] == [], body.name


def test_cloth_that_stretches_lets_more_through() -> None:
    """A neck of 48 cm and a chest of 84 are a plain shirt of jersey: 10 in stretched to 14 is 40 % (Treadle Yard Goods,
    page of 2023)."""
    small = [garment for garment in GARMENTS if garment.base == "tunic" and not garment.worn][2:4]
    for garment in small:
        assert told("tunic", garment.changes)
        knit = ('units="cm", size="W4",', 'units="cm", size="W4", stretch=0.4,')
        assert told("tunic", (*garment.changes, knit)) == []
    tight = ('units="cm", size="W4",', 'units="cm", size="W4", stretch=0.05,')
    assert told("tunic", (*small[0].changes, tight))
