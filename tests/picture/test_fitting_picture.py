"""Before and after a fitting, in a picture and in words."""

from __future__ import annotations

from itertools import combinations

import pytest
import shapely

from kit.lesson.fitting import Change, Fitting
from kit.lesson.lesson import Lesson
from kit.lesson.moved import TOLD
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dimension, Stroke
from kit.picture.fit_change import _places
from kit.picture.fitting import MOST, differences, fitting_drawing, moved_pieces
from kit.picture.svg_pen import svg
from kit.prose.fitting import fitting_words
from kit.units import System, both
from tests.example import EXAMPLE, notebook_names
from tests.lesson_words import own_words
from tests.pseudo import OPEN, escaped, pseudo


@pytest.fixture(scope="module")
def lesson() -> Lesson:
    found = notebook_names(EXAMPLE)["lesson"]
    assert isinstance(found, Lesson)
    found.reset()
    return found


def pair(lesson: Lesson, name: str, before: float, after: float) -> tuple[Pattern, Pattern]:
    return lesson.work(values={name: before}), lesson.work(values={name: after})


CASES = [
    ("shoulder_lift", 8.0, 12.0),
    ("sleeve_ease", 30.0, 45.0),
    ("hem_drop", 140.0, 170.0),
    ("wrap_share", 0.7, 0.8),
]


@pytest.mark.parametrize(("name", "low", "high"), CASES)
def test_ghost_and_new_line_of_what_moved(lesson: Lesson, name: str, low: float, high: float) -> None:
    before, after = pair(lesson, name, low, high)
    for piece in moved_pieces(before, after):
        drawing = fitting_drawing(before, after, piece)
        strokes = {(s.name, s.role): s for s in drawing.items if isinstance(s, Stroke)}
        moved = {shift.edge for shift in differences(before, after, piece) if shift.size > TOLD}
        for edge in after.piece(piece).edges:
            if edge.name in moved:
                assert strokes[f"{piece}.{edge.name}", "new"].curves == edge.path.curves
                old = before.piece(piece).edge(edge.name).path
                assert strokes[f"{piece}.{edge.name}.before", "removed"].curves == old.curves
            else:
                assert (f"{piece}.{edge.name}", "new") not in strokes


@pytest.mark.parametrize("units", ["cm", "inch"])
@pytest.mark.parametrize(("name", "low", "high"), CASES)
def test_dimensions_are_the_shifts_and_few(lesson: Lesson, name: str, low: float, high: float, units: System) -> None:
    before, after = pair(lesson, name, low, high)
    for piece in moved_pieces(before, after):
        drawing = fitting_drawing(before, after, piece, units)
        found = [d for d in drawing.items if isinstance(d, Dimension)]
        shifts = {f"{s.edge}.{s.place}.shift": s for s in differences(before, after, piece)}
        assert 0 < len(found) <= MOST
        for dimension in found:
            shift = shifts[dimension.name]
            assert dimension.text == both(shift.size, units)
            assert dimension.start.distance(dimension.end) == pytest.approx(shift.size)
        largest = max(shifts.values(), key=lambda s: s.size)
        assert any(shifts[d.name].size == pytest.approx(largest.size) for d in found)
        assert svg(drawing, 560).startswith("<svg") and after.piece(piece).title in drawing.alt


def test_the_sentences_of_a_raised_shoulder(lesson: Lesson) -> None:
    before, after = pair(lesson, "shoulder_lift", 8.0, 12.0)
    fitting = Fitting("First toile", "", "", (Change("shoulder_lift", 8.0, 12.0),))
    words = fitting_words(fitting, before, after)
    assert words[0] == "Shoulder lift from 8 mm (5/16 in) to 1.2 cm (1/2 in)."
    assert (
        "Front: the shoulder and overarm seam is raised by 1.2 cm (1/2 in) at the sleeve opening, tapering to nothing "
        "at the neck edge." in words
    )
    inches = fitting_words(fitting, before, after, "inch")
    assert inches[0] == "Shoulder lift from 5/16 in (8 mm) to 1/2 in (1.2 cm)."
    alt = fitting_drawing(before, after, "front").alt
    assert all(sentence in alt for sentence in words if sentence.startswith("Front:"))


def test_the_sentences_of_a_wider_opening_and_a_lower_hem(lesson: Lesson) -> None:
    wide = fitting_words(
        Fitting("", "", "", (Change("sleeve_ease", 30.0, 45.0),)), *pair(lesson, "sleeve_ease", 30.0, 45.0)
    )
    assert any(
        w.startswith("Back: the underarm seam is lowered by 1.5 cm") and "tapering to nothing at the side" in w
        for w in wide
    )
    low = fitting_words(Fitting("", "", "", (Change("hem_drop", 140.0, 170.0),)), *pair(lesson, "hem_drop", 140, 170))
    assert any(w.startswith("Front: the hem is lowered by 3 cm") for w in low)
    assert not any("0 in" in w.replace("10 in", "") for w in (*wide, *low))


def test_shares_in_per_cent_and_lines_that_stay(lesson: Lesson) -> None:
    words = fitting_words(Fitting("", "", "", (Change("wrap_share", 0.7, 0.8),)), *pair(lesson, "wrap_share", 0.7, 0.8))
    assert words[0] == "Wrap share from 70% to 80%."
    seam = fitting_words(Fitting("", "", "", (Change("seam", 10.0, 12.0),)), *pair(lesson, "seam", 10.0, 12.0))
    assert seam == ("Seam allowance from 1 cm (3/8 in) to 1.2 cm (1/2 in).", "No stitch line moves.")


@pytest.mark.parametrize(("name", "low", "high"), [*CASES, ("seam", 10.0, 12.0), ("hem_rise", 18.0, 10.0)])
def test_every_text_comes_from_the_catalogue(lesson: Lesson, name: str, low: float, high: float) -> None:
    before, after = pair(lesson, name, low, high)
    allowed = own_words(before)
    fitting = Fitting("", "", "", (Change(name, low, high),))
    with pseudo():
        texts = list(fitting_words(fitting, before, after))
        for piece in moved_pieces(before, after):
            drawing = fitting_drawing(before, after, piece)
            texts += [drawing.alt, drawing.title]
        for text in texts:
            assert text.startswith(OPEN) and escaped(text, allowed) == [], text


def test_many_pieces_of_a_fit_change_stand_in_rows() -> None:
    """Six tiers in one line were 4 mm high on the page; the picture has about the room of a square."""
    tiers = [(26.5, 21.0), (37.1, 24.0), (51.9, 27.0)] * 2
    places = _places(tiers, 6.0)
    wide = max(x + size[0] for (x, _), size in zip(places, tiers, strict=True))
    high = -min(y for _, y in places)
    assert max(wide, high) < 140.0 < sum(size[0] for size in tiers)
    boxes = [shapely.box(x, y, x + w, y + h) for (x, y), (w, h) in zip(places, tiers, strict=True)]
    assert not any(a.intersects(b) for a, b in combinations(boxes, 2))
    assert _places([(30.0, 60.0), (32.0, 61.0)], 7.0) == [(0.0, -61.0), (37.0, -61.0)]  # two stand side by side
