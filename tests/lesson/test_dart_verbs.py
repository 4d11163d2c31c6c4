"""The way a dart is pressed, said by a direction of the paper."""

from __future__ import annotations

import pytest

from kit import Lesson
from kit.blocks.darted_bodice import darted_bodice_block
from kit.body.chart import workshop_chart
from kit.errors import KitError
from kit.geometry import Path, Point
from kit.lesson.bench import BenchPiece, opened
from kit.lesson.dart_verbs import pressed_way
from kit.piece.piece import Piece
from kit.units import cm, mm

LOW, HIGH = Point(200.0, 10.0), Point(160.0, 180.0)


@pytest.mark.parametrize(
    ("start", "end", "ways"),
    [
        (LOW, HIGH, {"up": "end", "down": "start", "centre": "end", "side": "start"}),
        (HIGH, LOW, {"up": "start", "down": "end", "centre": "start", "side": "end"}),
        # left of the centre the same words mean the other way across, and up is up
        (Point(-200.0, 10.0), Point(-160.0, 180.0), {"up": "end", "down": "start", "centre": "end", "side": "start"}),
        (Point(-160.0, 180.0), Point(-200.0, 10.0), {"up": "start", "down": "end", "centre": "start", "side": "end"}),
    ],
)
def test_a_direction_is_the_end_of_the_edge_that_lies_there(start: Point, end: Point, ways: dict[str, str]) -> None:
    """Up is where the paper is higher, the centre where it is nearer to the middle line at x = 0."""
    piece = BenchPiece(Piece("front", "Front", ()))
    a, b = (piece.place(p.x * mm, p.y * mm) for p in (start, end))
    piece.draw(side=a.to(b))
    for word, way in (ways | {"start": "start", "end": "end"}).items():
        assert pressed_way(opened(piece), "side", word) == way, word
    assert opened(piece).path("side") == Path.line(start, end)


def test_a_dart_is_read_by_its_name() -> None:
    """Its places and measures, on every body; taken away, it still tells where it was."""
    for size in ("W1", "W4", "W10"):
        front = BenchPiece(darted_bodice_block(workshop_chart()[size])[0])
        dart, edge = front.waist_dart, front.waist
        assert dart.intake == pytest.approx(edge.length - front.sewn_length("waist"), abs=1.0)
        assert edge.path.distance_to(dart.middle.point) < 5.0  # the cap hangs a little below the straight mouth
        assert dart.tip.distance_to(dart.middle) == pytest.approx(dart.depth)
        assert dart.apex.distance_to(dart.middle) >= dart.depth
        front.remove_dart(dart)
        assert "waist_dart" not in [each.name for each in front.freeze().darts]
        front.add_double_dart(
            "waist_dart",
            top=dart.tip,
            bottom=dart.middle.up(1 * cm),
            at=dart.tip.toward(dart.middle, dart.depth / 2),
            intake=dart.intake,
        )
    assert "bust_dart" in dir(front)
    with pytest.raises(KitError, match="Did you mean 'bust_dart'"):
        _ = front.bustdart


def test_what_a_line_or_a_dart_has_not_is_told_in_words() -> None:
    lesson = Lesson("Top", start=darted_bodice_block, size="W4")

    @lesson.step("Turn a line round")
    def turn(front):
        """Turn it."""
        front.guide(other=front.waist.reverse())

    with pytest.raises(KitError, match="a line has no 'reverse'"):
        lesson.work()

    lesson.remove("turn")

    @lesson.step("Measure a dart")
    def measured(front):
        """Measure it."""
        front.guide(other=front.waist_dart.intakes)

    with pytest.raises(KitError, match=r"a dart has no 'intakes'\. Did you mean 'intake'"):
        lesson.work()


def test_edges_are_named_in_a_list_too() -> None:
    front = BenchPiece(darted_bodice_block(workshop_chart()["W4"])[0])
    line = front.centre_waist.into(2 * cm).to(front.neck_point)
    front.draw(v_edge=line, low=front.centre_waist.to(line.start), instead_of=[front.centre, front.neck])
    assert not front.freeze().has_edge("neck")


def test_a_level_parted_by_a_moved_dart_is_measured_whole() -> None:
    for size in ("W1", "W4", "W10"):
        front = BenchPiece(darted_bodice_block(workshop_chart()[size])[0])
        whole = front.sewn_width(front.bust_line)
        front.move_dart("bust_dart", to="shoulder", at=6 * cm)
        assert front.sewn_width(front.bust_line) == pytest.approx(whole, abs=8.0)
        assert front.bust_line.length < whole * 0.7
