"""Gathered edges on a fold: the garment laid flat is drawn in there to the edge they are sewn to, and what the seam
says of the fullness is what the gathering drew up. Widths are those of the draft, opened from the fold."""

from __future__ import annotations

import pytest

from kit import open_lesson
from kit.picture.assembled import assembled
from kit.resources import examples
from kit.sewing.order import of_kind


@pytest.fixture(scope="module")
def skirt():  # type: ignore[no-untyped-def]
    return open_lesson(examples() / "breaker_skirt.ipynb").work()


@pytest.mark.parametrize(("tier", "above"), [("second", "first"), ("third", "second")])
def test_a_tier_is_as_wide_above_as_the_one_it_hangs_from_and_full_below(skirt, tier: str, above: str) -> None:  # type: ignore[no-untyped-def]
    flats = {flat.piece.name: flat for flat in assembled(skirt, "front").flats}
    piece, flat = skirt.piece(tier), flats[tier]
    corner = max(piece.edge("upper").path.points(1.0), key=lambda point: point.x)
    low = max(piece.edge("side").path.points(1.0), key=lambda point: -point.y)
    assert abs(flat.put(corner).x) == pytest.approx(skirt.piece(above).edge("lower").path.length, abs=0.5)
    assert abs(flat.put(low).x) == pytest.approx(piece.edge("upper").path.length, abs=0.5)
    assert flat.put(corner).y == pytest.approx(flats[above].put(skirt.piece(above).edge("lower").path.start).y, abs=0.5)


def test_the_seam_tells_the_fullness_of_the_whole_edge(skirt) -> None:  # type: ignore[no-untyped-def]
    seam = of_kind(skirt, "plain_seam")[0]
    gather = of_kind(skirt, "gather")[0]
    (ease,) = (sentence for sentence in seam._ease(skirt))
    assert ease.values["ease"][0] == pytest.approx(gather.values(skirt)["less"][0], abs=1e-6)
    assert seam.ease * 2 == pytest.approx(ease.values["ease"][0])
