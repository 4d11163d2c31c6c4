"""Which parameters a finding depends on, and which move brought it."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit import Lesson, blank_paper, cm
from kit.lesson.bench import BenchPiece
from kit.proof.causes import Moves, parameters_of
from kit.proof.finding import Finding
from kit.units import Length


def finding(**more: object) -> Finding:
    return replace(Finding("seam_length", "error", "too long", "Front"), **more)  # type: ignore[arg-type]


@pytest.fixture(scope="module")
def lesson() -> Lesson:
    lesson = Lesson("Napkin", start=blank_paper, units="cm")
    for name in ("width", "height", "turn", "spare", "narrow", "long"):
        lesson.length(name, 20 * cm, least=5 * cm, most=60 * cm)

    @lesson.step("Draw the bottom and the side", makes="front")
    def first(front, width):
        """Rule."""
        a, b, c = front.place(0, 0), front.place(width, 0), front.place(width, 20 * cm)
        front.draw(bottom=a.to(b), one_side=b.to(c))

    @lesson.step("Close it")
    def second(front, height, width):
        """Rule."""
        d = front.place(0 * cm, 20 * cm)
        front.draw(top=front.one_side.end.to(d), other_side=d.to(front.bottom.start), after=front.one_side)

    @lesson.step("Allow for it")
    def third(front, turn):
        """Allow."""
        front.allow(bottom=turn, one_side=1 * cm, top=1 * cm, other_side=1 * cm)

    @lesson.step("Draw an edging", makes="edging")  # its name comes before "front" and shares the names of edges
    def fourth(edging, narrow):
        """Rule."""
        squared(edging, narrow)

    @lesson.step("Draw a tie", makes="tie")  # and one that comes after
    def fifth(tie, long):
        """Rule."""
        squared(tie, long)

    return lesson


def squared(piece: BenchPiece, size: Length) -> None:
    a, b, c, d = (piece.place(x, y) for x, y in ((0, 0), (size, 0), (size, size), (0, size)))
    piece.draw(bottom=a.to(b), one_side=b.to(c), top=c.to(d), other_side=d.to(a))


ORDER = ("spare", "turn", "height", "width", "narrow", "long")


@pytest.mark.parametrize(
    ("place", "wanted"),
    [
        ({"step": "third"}, ("turn",)),
        ({"step": "second"}, ("height", "width")),
        ({"step": "third", "piece": "front"}, ("turn",)),  # a piece alone adds nothing to a step
        ({"step": "third", "piece": "front", "edge": "bottom"}, ("turn", "width")),
        ({"piece": "front", "edge": "bottom"}, ("width",)),
        ({"piece": "front", "edge": "top"}, ("height", "width")),
        ({"piece": "front"}, ("height", "width")),
        ({"piece": "back", "edge": "bottom"}, ()),
        ({"piece": "edging"}, ("narrow",)),
        ({"piece": "edging", "edge": "bottom"}, ("narrow",)),
        ({"piece": "tie", "edge": "other_side"}, ("long",)),
        ({"step": "nowhere"}, ()),
        ({}, ()),
    ],
)
def test_what_the_step_and_the_drawing_of_the_edge_use(lesson: Lesson, place: dict[str, str], wanted) -> None:
    pattern = lesson.work()
    assert parameters_of(finding(**place), pattern, lesson.definition.entries, ORDER) == wanted


def test_only_parameters_among_the_names(lesson: Lesson) -> None:
    assert parameters_of(finding(step="second"), lesson.work(), lesson.definition.entries, ["height"]) == ("height",)


HERE = finding(step="sew", piece="front", edge="side", amount=2.0)


def test_a_finding_that_comes_with_a_move_was_brought_by_it() -> None:
    moves = Moves()
    moves.note([], {"a": 1.0, "b": 1.0})
    moves.note([HERE], {"a": 2.0, "b": 1.0})
    assert moves.brought(HERE) == ("a",)
    moves.note([HERE], {"a": 2.0, "b": 3.0})  # it is still there and no worse: the first move is to blame
    assert moves.brought(HERE) == ("a",)
    moves.note([], {"a": 2.0, "b": 4.0})
    assert moves.brought(HERE) == ()
    moves.note([HERE], {"a": 5.0, "b": 5.0})
    assert moves.brought(HERE) == ("a", "b")


def test_what_was_there_from_the_start_was_brought_by_nothing() -> None:
    moves = Moves()
    assert moves.brought(HERE) == ()
    moves.note([HERE], {"a": 1.0})
    moves.note([HERE], {"a": 2.0})
    assert moves.brought(HERE) == ()
    moves.note([], {"a": 2.0})
    moves.note([HERE], {"a": 2.0})  # nothing was moved: the lesson itself changed
    assert moves.brought(HERE) == ()
    moves.note([], {"a": 2.0})
    moves.note([HERE], {"new": 7.0})  # a parameter that was not there before was not moved
    assert moves.brought(HERE) == ()


@pytest.mark.parametrize(("grown", "brought"), [(0.45, ()), (0.55, ("a",)), (-1.0, ())])
def test_a_finding_that_grows_by_half_a_millimetre_is_brought_again(grown: float, brought) -> None:
    moves = Moves()
    moves.note([HERE], {"a": 1.0})
    moves.note([replace(HERE, amount=2.0 + grown)], {"a": 2.0})
    assert moves.brought(HERE) == brought


def test_notes_are_brought_by_nothing_and_places_are_told_apart() -> None:
    moves = Moves()
    moves.note([], {"a": 1.0})
    note = replace(HERE, level="note", code="hem_not_flat", amount=None)
    warning = replace(HERE, level="warning", edge="hem", amount=None)
    moves.note([note, warning], {"a": 2.0})
    assert (moves.brought(note), moves.brought(warning)) == ((), ("a",))
    for change in ({"step": "x"}, {"piece": "back"}, {"edge": "neck"}, {"code": "ease_amount"}):
        assert moves.brought(replace(warning, **change)) == ()
