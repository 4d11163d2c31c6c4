"""Gathered edges on a fold: the garment laid flat is drawn in there to the edge they are sewn to, and what the
gathering says of the fullness is what the seam eases in. Widths are those of the draft, opened from the fold."""

from __future__ import annotations

import pytest

from kit import open_lesson
from kit.picture.assembled import assembled
from kit.picture.laid import place_all
from kit.resources import examples
from kit.sewing.in_work import shown_scenes
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


def test_the_gathering_tells_the_fullness_of_the_whole_edge(skirt) -> None:  # type: ignore[no-untyped-def]
    """Over the fold both halves are one row; the seam, which comes after, says no word of it again."""
    seam = of_kind(skirt, "plain_seam")[0]
    gather = of_kind(skirt, "gather")[0]
    assert seam.ease * 2 == pytest.approx(gather.values(skirt)["less"][0], abs=1e-6)
    assert not seam._ease(skirt)


@pytest.mark.parametrize("number", [0, 1])
def test_a_seam_shows_the_tier_drawn_up_to_the_one_above_fold_on_fold(skirt, number: int) -> None:  # type: ignore[no-untyped-def]
    seam = of_kind(skirt, "plain_seam")[0]
    scene = shown_scenes(skirt, seam)[number]
    tier, above = (next(p for p in place_all(scene, skirt) if p.piece.name == name) for name in ("second", "first"))
    lower = above.lay(skirt.piece("first").edge("lower").path)
    upper = tier.lay(skirt.piece("second").edge("upper").path)
    assert upper.length == pytest.approx(lower.length, abs=0.5)
    ends = sorted(end.x for end in (lower.start, lower.end))
    assert sorted(end.x for end in (upper.start, upper.end)) == pytest.approx(ends, abs=0.5)
    hem = tier.lay(skirt.piece("second").edge("lower").path)
    assert hem.length == pytest.approx(skirt.piece("second").edge("lower").path.length, abs=0.5)
