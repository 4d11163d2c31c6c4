"""The list of garments that nobody could put on, wear or tie, and of others that can be worn: see
`data/garments.toml`, labelled with a tape at the sewing table before any check was written (common practice, no
source)."""

from __future__ import annotations

import pytest

from tests.wear.garments import labelled, lesson_of

GARMENTS = tuple(labelled())
BASES = tuple(dict.fromkeys(garment.base for garment in GARMENTS))


def test_forty_cannot_be_worn_and_more_than_twenty_can() -> None:
    assert sum(not garment.worn for garment in GARMENTS) >= 40
    assert sum(garment.worn for garment in GARMENTS) >= 20
    assert all(len(garment.why) > 10 for garment in GARMENTS)
    assert len({(garment.base, garment.changes) for garment in GARMENTS}) == len(GARMENTS)


@pytest.mark.parametrize("garment", GARMENTS, ids=lambda garment: garment.name)
def test_every_one_can_be_drafted(garment) -> None:
    assert lesson_of(garment.base, garment.changes).work().pieces
