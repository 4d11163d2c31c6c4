"""What the proof says of darts with two points that would not sew, and how they are printed.

The width they take up is what a tape would read (worked by hand); the limits are common practice, no source."""

from __future__ import annotations

import jsonschema
import pytest

from kit.paper.export import pattern_json, pattern_schema
from kit.picture.drawing import Dot, Stroke
from kit.picture.piece_sheet import piece_items
from kit.piece.double_dart import double_darts
from kit.piece.piece import Mark
from kit.piece.unfold import pair
from kit.proof import prove
from kit.proof.double_darts import drawn
from tests.double_darted import back, dart
from tests.sewing.table import sewn


def codes(*marks: Mark) -> list[str]:
    return [finding.code for finding in drawn((back(*marks),))]


# ---- the proof ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("mark", "found"),
    [
        (dart(), []),
        (dart(aside=2.0), []),  # 0.4 mm between its legs: within half a millimetre
        (dart(aside=20.0), ["dart_legs"]),
        (dart(bottom=3.0), ["double_dart_edge"]),
        (dart(top=600.0), ["double_dart_edge"]),
        (dart(x=10.0), ["double_dart_edge"]),
        (dart(intake=60.0, top=340.0), ["double_dart_sharp"]),  # 60 mm within 60: 53 degrees
        (dart(intake=30.0, top=350.0), []),  # 30 mm within 70: 24 degrees
    ],
)
def test_what_would_not_sew_is_told(mark, found) -> None:
    assert codes(mark) == found


def test_two_that_cross_are_told() -> None:
    assert codes(dart(), dart("second", x=140.0)) == []
    assert codes(dart(), dart("second", x=115.0)) == ["double_darts_cross"]


def test_left_out_it_is_told_with_its_call() -> None:
    def told(*writes):
        done = sewn((back(dart()),), *writes)
        return [(f.code, str(f)) for f in prove(done.pattern) if f.code == "never_folded"]

    hem = lambda make, back: make.narrow_hem(back.hem)  # noqa: E731
    both = lambda make, back: make.double_dart(back.waist_dart)  # noqa: E731
    one = lambda make, back: make.double_dart(back.left.waist_dart)  # noqa: E731
    other = lambda make, back: make.double_dart(back.right.waist_dart)  # noqa: E731
    assert [code for code, _ in told(hem)] == ["never_folded"]
    assert "make.double_dart(back.waist_dart)" in told(hem)[0][1]
    assert told(hem, one) and not told(hem, both) and not told(hem, one, other)


def test_in_a_lining_it_may_stay_open() -> None:
    """Lessons that lined such a piece before a lining had its darts go on as they were, and are told."""
    hem = lambda make, back: make.narrow_hem(back.hem)  # noqa: E731
    for role, level in (("lining", "warning"), ("back", "error")):
        done = sewn((back(dart(), role=role),), hem)
        assert [f.level for f in prove(done.pattern) if f.code == "never_folded"] == [level]


# ---- paper ----------------------------------------------------------------------------------------------------------


def test_it_is_printed_with_its_points_and_its_widest_place() -> None:
    done = sewn((back(dart()),), lambda make, back: make.double_dart(back.waist_dart))
    items = piece_items(back(dart()), done.pattern)
    legs = [item for item in items if isinstance(item, Stroke) and item.name == "back.waist_dart"]
    assert [leg.role for leg in legs] == ["stitch", "stitch"]
    dots = {(item.name, round(item.at.x), round(item.at.y)) for item in items if isinstance(item, Dot)}
    assert dots >= {
        ("back.waist_dart.top", 100, 430),
        ("back.waist_dart.bottom", 100, 130),
        ("back.waist_dart.widest", 85, 280),
        ("back.waist_dart.widest", 115, 280),
    }
    data = pattern_json(done.pattern)
    jsonschema.Draft202012Validator(pattern_schema()).validate(data)
    assert data["pieces"][0]["marks"][0]["kind"] == "dart"


def test_a_pair_carries_it_to_both_halves() -> None:
    left, right = pair(back(dart()))
    for piece, x in ((left, -100), (right, 100)):
        (found,) = double_darts(piece)
        assert found.top.x == pytest.approx(x) and found.intake == pytest.approx(30.0)
        assert drawn((piece,)) == []
