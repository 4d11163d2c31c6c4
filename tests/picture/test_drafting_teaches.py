"""Drafting pictures show how: what is square, in which order, from which point, how much, and what must be equal.

Every drafting step of every example lesson is drawn and held against what the hand did in it (the step's own record);
a table of the counts is printed. The rules are those of a drawing lesson (common practice, no source): a square corner
and a run without a corner have their signs, strokes are numbered in the order of the sentence, the points a sentence
starts from are named, every measure of the sentence is dimensioned, and what is under 2 mm on the page is enlarged.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator
from dataclasses import replace
from itertools import combinations

import pytest

from kit.geometry import Point
from kit.language import called, says
from kit.language import say as said
from kit.lesson.hand import same
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern, StepMeasure, StepRecord
from kit.picture.dimension_line import dimension_curves, in_lanes
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dimension, Drawing, Label, Stroke
from kit.picture.hand_order import numbered
from kit.picture.svg_pen import bounds_of
from kit.piece.dart import legs
from kit.placeholder import names as placeholders
from kit.prose.worksheet import letters_of, worksheet
from kit.units import show
from tests.example import lesson_notebooks, notebook_names

STEP, ACROSS, FULL = (97.6, 78.0), (165.6, 86.0), (165.6, 158.0)
"""The room of a step's picture on A4 in mm: beside its text, across the page, and for the cut lines of many pieces."""
LEAST = 2.0
LARGE = 20.0


def lessons() -> Iterator[tuple[str, Pattern]]:
    for notebook in lesson_notebooks():
        mine = [value for value in notebook_names(notebook).values() if isinstance(value, Lesson)]
        yield notebook.stem, mine[-1].work(values={})


@pytest.fixture(scope="module")
def drawn() -> list[tuple[str, StepRecord, Drawing]]:
    return [(name, record, step_drawing(record)) for name, pattern in lessons() for record in pattern.steps]


def place(name: str, record: StepRecord) -> str:
    return f"{name}, {record.key}"


def signs(drawing: Drawing, kind: str) -> int:
    """The signs of a kind; one that is drawn again in an enlarged corner is the same."""
    names = {item.name for item in drawing.items if isinstance(item, Stroke) and f".{kind}." in item.name}
    return len({name for name in names if not name.startswith("lens.") and not name.endswith(".level")})


def recorded(record: StepRecord, kind: str) -> int:
    return sum(sign.kind == kind for move in record.moves for sign in move.signs)


def texts(drawing: Drawing) -> list[str]:
    return [item.text for item in drawing.items if isinstance(item, Label)]


def starts(record: StepRecord) -> set[tuple[str, str]]:
    """(piece, point) of all named points that a move of the hand begins at."""
    points = {piece.name: piece.points for piece in record.pieces}
    moves = [move for move in record.moves if move.kind not in ("trace", "mirror")]
    return {
        (move.piece, name)
        for move in moves
        for name, at in points.get(move.piece, ())
        if same(at, move.start) and not any(move.name == name for move in moves)
    }


def point_name(name: str) -> str:
    key = f"worksheet.name.{name}"
    return said(key) if says(key) else called(name)


def on_paper(drawing: Drawing, record: StepRecord) -> float:
    """Millimetres on the printed page for one of the drawing."""
    left, low, right, high = bounds_of(drawing)
    wide, tall = max(right - left, 1.0), max(high - low, 1.0)
    room = FULL if len(record.allowed) > 2 else ACROSS if wide > 1.75 * tall else STEP
    return min(room[0] / wide, room[1] / tall)


def small(record: StepRecord, drawing: Drawing) -> list[StepMeasure]:
    """The measures of a step that are under 2 mm on the page where they are dimensioned."""
    scale = on_paper(drawing, record)
    lengths = {i.name: i.start.distance(i.end) for i in drawing.items if isinstance(i, Dimension)}
    return [
        spot
        for spot in record.spots
        if spot.kind == "length" and spot.value < LARGE and lengths.get(spot.name, spot.value) * scale < LEAST
    ]


def told(record: StepRecord) -> list[str]:
    """The lengths that the sentence names: without strips, which are shown as cut, and without what a line keeps
    within, the least a radius may be say, as nothing drawn is that long."""
    lengths = {name for name, value, kind in record.values if kind == "length" and value > 0} - set(record.limits)
    return [] if record.strips else [name for name in dict.fromkeys(placeholders(record.text)) if name in lengths]


def dimensioned(name: str, record: StepRecord, drawing: Drawing) -> bool:
    values = {key: value for key, value, _ in record.values}
    shown = {show(values[name], "cm"), show(values[name], "cm", "allowance"), show(values[name] * 2, "cm")}
    return any(
        isinstance(item, Dimension) and (item.name == name or any(text in item.text for text in shown))
        for item in drawing.items
    )


def test_the_table(drawn: list[tuple[str, StepRecord, Drawing]], capsys: pytest.CaptureFixture[str]) -> None:
    have: Counter[str] = Counter()
    want: Counter[str] = Counter()
    for _, record, drawing in drawn:
        for kind in ("square", "tangent"):
            have[kind] += signs(drawing, kind)
            want[kind] += recorded(record, kind)
        for _, name in starts(record):
            have["start points named"] += any(point_name(name) in text for text in texts(drawing))
            want["start points named"] += 1
        for name in told(record):
            have["measures of the sentence"] += dimensioned(name, record, drawing)
            want["measures of the sentence"] += 1
        hard = [spot for spot in small(record, drawing) if not spot.allowance]
        want["under 2 mm on A4 enlarged"] += len(hard) + len(enlarged(drawing))
        have["under 2 mm on A4 enlarged"] += len(enlarged(drawing))
    with capsys.disabled():
        print(f"\n  {len(drawn)} drafting pictures")
        for kind in want:
            print(f"  {kind:<28} {have[kind]:>4} of {want[kind]:>4}")


def enlarged(drawing: Drawing) -> set[str]:
    """The measures shown in an enlarged corner."""
    names = {item.name for item in drawing.items if isinstance(item, Stroke)}
    return {name.removeprefix("enlarged.") for name in names if name.startswith("enlarged.")}


def test_every_square_corner_and_every_tangent_has_its_sign(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    for name, record, drawing in drawn:
        for kind in ("square", "tangent"):
            assert signs(drawing, kind) == recorded(record, kind), place(name, record)


def test_a_square_sign_is_a_square_at_its_corner(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    seen = 0
    for name, record, drawing in drawn:
        for item in drawing.items:
            if isinstance(item, Stroke) and item.role == "sign" and ".square." in item.name and len(item.curves) == 2:
                one, two = item.curves
                assert one.length == pytest.approx(two.length), place(name, record)
                assert one.tangent(1.0).dot(two.tangent(0.0)) == pytest.approx(0.0, abs=0.01), place(name, record)
                seen += 1
    assert seen > 50


def test_every_point_a_stroke_starts_from_is_named(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    for name, record, drawing in drawn:
        for _, point in starts(record):
            assert any(point_name(point) in text for text in texts(drawing)), (place(name, record), point)


def test_strokes_are_numbered_in_the_order_of_the_hand(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    several = 0
    for name, record, drawing in drawn:
        found = sorted(int(i.text) for i in drawing.items if isinstance(i, Label) and i.role == "order")
        wanted = sorted(number for piece in record.pieces for number, _ in enumerate(numbered(piece, record), start=1))
        assert found == wanted, place(name, record)
        several += bool(wanted)
    assert several >= 20


def test_the_numbers_of_a_sentence_worked_by_hand(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    # "From the shoulder tip square up and mark. Rule a line from the neck point through the mark": the first number
    # lies at the lift, the second on the overarm.
    record, drawing = next((r, d) for n, r, d in drawn if n == "tideline_wrap_top" and r.key == "overarm")
    at = {i.text: i.at for i in drawing.items if isinstance(i, Label) and i.role == "order"}
    overarm = next(i for i in drawing.items if isinstance(i, Stroke) and i.name == "front.overarm")
    assert min(curve.point(t / 20).distance(at["2"]) for curve in overarm.curves for t in range(21)) < 20.0
    (lift,) = [move for move in record.moves if move.kind == "mark"]
    assert lift.size == pytest.approx(12.0)


def test_every_measure_of_the_sentence_is_dimensioned(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    missing = [
        (place(name, record), measure)
        for name, record, drawing in drawn
        for measure in told(record)
        if not dimensioned(measure, record, drawing)
    ]
    assert missing == []


def test_what_would_be_lost_in_print_is_enlarged(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    for name, record, drawing in drawn:
        lost = [spot.name for spot in small(record, drawing) if not spot.allowance]
        assert lost == [], place(name, record)


def test_what_is_traced_is_drawn_as_traced(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    seen = 0
    for name, record, drawing in drawn:
        sources = {piece.name: {edge.path for edge in piece.edges} for piece in record.pieces}
        roles = {item.name: item.role for item in drawing.items if isinstance(item, Stroke)}
        for move in record.moves:
            if move.kind == "trace" and move.source in sources:
                piece = next(piece for piece in record.pieces if piece.name == move.piece)
                for edge in piece.edges:
                    if edge.path in sources[move.source]:
                        assert roles[f"{piece.name}.{edge.name}"] == "traced", (place(name, record), edge.name)
                        seen += 1
    assert seen > 15


def test_no_two_pieces_of_a_picture_share_a_line(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    for name, record, drawing in drawn:
        laid = {piece.name: piece.source for piece in record.pieces}
        boxes: dict[str, list[float]] = {}
        for item in drawing.items:
            owner = item.name.split(".")[0] if isinstance(item, Stroke) else ""
            if owner in laid and isinstance(item, Stroke) and item.role in ("kept", "new", "traced", "fold"):
                for curve in item.curves:
                    a, b, c, d = curve.bounds()
                    box = boxes.setdefault(owner, [a, b, c, d])
                    box[:] = [min(box[0], a), min(box[1], b), max(box[2], c), max(box[3], d)]
        scale = on_paper(drawing, record)
        for (one, a), (two, b) in combinations(boxes.items(), 2):
            if two in (laid[one], laid.get(laid[one], "")) or one in (laid[two], laid.get(laid[two], "")):
                continue
            gap = max(b[0] - a[2], a[0] - b[2], b[1] - a[3], a[1] - b[3])
            assert gap * scale > 2.0, (place(name, record), one, two)


def test_a_ruled_rectangle_shows_its_equal_diagonals() -> None:
    (tote,) = [pattern for name, pattern in lessons() if name == "ferry_tote"]
    drawing = step_drawing(tote.steps[0])
    checks = [i for i in drawing.items if isinstance(i, Stroke) and i.role == "check" and not i.name.endswith("equal")]
    assert len(checks) == 2
    assert checks[0].curves[0].length == pytest.approx(checks[1].curves[0].length)
    assert sum(isinstance(i, Stroke) and i.name.endswith(".equal") for i in drawing.items) == 4


def test_a_hem_is_cropped_to_and_located(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    record, drawing = next((r, d) for n, r, d in drawn if n == "tideline_wrap_top" and r.key == "true_hem")
    piece = record.pieces[0]
    high = max(edge.path.bounds()[3] for edge in piece.edges) - min(edge.path.bounds()[1] for edge in piece.edges)
    shown = [c.bounds() for i in drawing.items if isinstance(i, Stroke) and i.name == "front.side" for c in i.curves]
    assert max(b[3] for b in shown) - min(b[1] for b in shown) < 0.4 * high
    assert any(isinstance(i, Stroke) and i.name == "lens.front.locator" for i in drawing.items)
    # 1.8 cm were 1.5 mm of print.
    assert 18.0 * on_paper(drawing, record) > 5.0


def test_a_dart_is_shown_whole(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    record, drawing = next((r, d) for n, r, d in drawn if n == "blocks_and_moves" and r.key == "waists")
    for piece in record.pieces:
        for dart in piece.darts:
            name = f"{piece.name}.{dart.name}"
            shown = sum(c.length for i in drawing.items if isinstance(i, Stroke) and i.name == name for c in i.curves)
            assert shown == pytest.approx(sum(leg.length for leg in legs(piece, dart)), rel=1e-6)


def test_a_strip_shows_its_folds_and_what_is_added_at_its_ends(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    drawing = next(d for n, r, d in drawn if n == "ferry_tote" and r.key == "handles")
    folds = [i for i in drawing.items if isinstance(i, Stroke) and i.name == "handle.fold"]
    assert len(folds) == 3  # folded in four
    assert [i.text for i in drawing.items if isinstance(i, Dimension) and i.name == "handle.end"] == ["3 cm"]


def test_letters_are_those_of_the_worksheet() -> None:
    (top,) = [pattern for name, pattern in lessons() if name == "tideline_wrap_top"]
    letters = letters_of(worksheet(top))
    record = next(step for step in top.steps if step.key == "overarm")
    found = texts(step_drawing(record, letters=letters["overarm"]))
    (sheet,) = [s for step in worksheet(top) if step.key == "start" for s in step.sheets if s.piece.name == "front"]
    named = {point.name: point.letter for point in sheet.points if point.name}
    for name in ("neck point", "shoulder tip"):
        assert f"{named[name]}, {name}" in found


def test_no_dimension_lies_on_another(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    """Two measures on one line: the end of the shorter is taken for the end of the longer (ISO 129-1 sets parallel
    dimension lines apart, the shorter nearest; from memory)."""
    met, longer = [], 0
    for name, record, drawing in drawn:
        lines = [
            (item, dimension_curves(item)[0])
            for item in drawing.items
            if isinstance(item, Dimension) and not item.along and item.offset and dimension_curves(item)
        ]
        for (one, a), (two, b) in combinations(lines, 2):
            way = (a.end - a.start).unit()
            spans = [sorted(way.dot(p - a.start) for p in (line.start, line.end)) for line in (a, b)]
            beside = max(abs(way.cross(p - a.start)) for p in (b.start, b.end))
            over = min(spans[0][1], spans[1][1]) - max(spans[0][0], spans[1][0])
            if beside < 1.0 and over > 5.0:
                met.append((place(name, record), one.text, two.text))
            longer += beside < 1.0
    assert not met and longer  # some stand end to end on one line, which tells no lie


def test_the_longer_of_two_dimensions_stands_outside() -> None:
    """A bag 300 deep, of which the rounding takes the last 60: worked by hand."""
    deep = Dimension(Point(260, 300), Point(260, 0), "30 cm", offset=12.0)
    part = Dimension(Point(260, 60), Point(260, 0), "6 cm", offset=12.0)
    wide = Dimension(Point(0, 0), Point(260, 0), "26 cm", offset=-12.0)
    assert [item.offset for item in in_lanes([deep, part, wide], 14.0)] == [26.0, 12.0, -12.0]
    assert in_lanes([part, deep], 14.0) == [part, replace(deep, offset=26.0)]


def test_strips_stand_beside_a_piece_that_would_make_them_small(drawn: list[tuple[str, StepRecord, Drawing]]) -> None:
    """Below an apron 80 cm high, strips of 89 cm were drawn 20 mm long."""
    ((record, drawing),) = ((r, d) for name, r, d in drawn if name == "oyster_apron" and r.strips)
    names = {strip.name for strip in record.strips}
    lines = [item for item in drawing.items if isinstance(item, Stroke)]
    strips = [curve.bounds() for item in lines if item.name in names for curve in item.curves]
    piece = [curve.bounds() for item in lines if item.name.startswith("apron.") for curve in item.curves]
    assert len(names) == 3 and strips
    assert min(b[0] for b in strips) > max(b[2] for b in piece)
    assert min(b[1] for b in strips) > min(b[1] for b in piece) and max(b[3] for b in strips) < max(b[3] for b in piece)
