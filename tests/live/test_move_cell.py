"""The cells that moves write: formatted, runnable, drawing what was previewed, with names of their own; refusals.

The formatter itself (ruff, https://docs.astral.sh/ruff/formatter/) judges the source; shapely measures areas and
distances; lengths and angles are reckoned by hand.
"""

from __future__ import annotations

import json
import re
import subprocess
import sys
from collections.abc import Iterator
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely.geometry import LineString, Polygon

from kit import KitError, Lesson, bodice_block, cm, inch, mm
from kit.language import languages, speaking
from kit.lesson.lesson import rewrite
from kit.lesson.pattern import Pattern
from kit.live.canvas.menu import ghost, menu_answer, read_amount
from kit.live.canvas.shown import arranged
from kit.live.move_cell import MOVES, Cell, ChosenMove, cell_for, fits, ways_for
from kit.live.picked import Chosen
from kit.live.tidy_source import Call, docstring, free, identifier, length_source, quoted, stepped
from kit.piece.piece import Piece

ROOT = Path(__file__).resolve().parents[2]


@pytest.fixture
def vest(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Lesson:
    """A lesson with a block and nothing drawn."""
    monkeypatch.chdir(tmp_path)
    return Lesson("Quay vest", start=bodice_block, units="cm", size="W4", edition="1", date="2026-11")


@pytest.fixture(scope="module")
def wrap_top(root: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Lesson]:
    """The wrap top, in a folder of its own."""
    patch = pytest.MonkeyPatch()
    patch.chdir(tmp_path_factory.mktemp("top"))
    names: dict[str, Any] = {}
    book = json.loads((root / "example_notebooks" / "tideline_wrap_top.ipynb").read_text(encoding="utf-8"))
    for cell in book["cells"]:
        source = "".join(cell["source"])
        if cell["cell_type"] == "code" and not source.startswith("panel("):
            exec(compile(source, "<cell>", "exec"), names)
    yield names["lesson"]
    patch.undo()


def edges(*names: str) -> list[Chosen]:
    return [Chosen("edge", *name.split(".", 1)) for name in names]


def points(*names: str) -> list[Chosen]:
    return [Chosen("point", *name.split(".", 1)) for name in names]


def formatted(source: str) -> None:
    """The formatter and the linter have nothing to say about `source` (names come from other cells)."""
    settings = ("--config", str(ROOT / "pyproject.toml"), "-")
    for command in (("format", "--diff", *settings), ("check", "--ignore", "F811,F821", *settings)):
        ran = subprocess.run(
            (sys.executable, "-m", "ruff", *command), input=source + "\n", text=True, capture_output=True, check=False
        )
        assert ran.returncode == 0, ran.stdout + ran.stderr


def run(lesson: Lesson, source: str) -> Pattern:
    """The pattern of `lesson` after the cell was run as a notebook runs it."""
    exec(compile(source, "<cell>", "exec"), {"lesson": lesson, "cm": cm, "mm": mm, "inch": inch})
    return lesson.work()


def written(lesson: Lesson, move: ChosenMove, chosen: list[Chosen]) -> Cell:
    cell = cell_for(move, lesson, lesson.work(), chosen)
    assert cell.source, cell.why_not
    return cell


@dataclass(frozen=True)
class Case:
    name: str
    way: str
    chosen: list[Chosen]
    measure: str


CASES = [
    *(
        Case("point", way, points("front.shoulder_tip"), m)
        for way, m in (("up", "shoulder_lift"), ("down", "shoulder_drop"))
    ),
    *(
        Case("point", way, points("front.shoulder_tip"), m)
        for way, m in (("out", "shoulder_out"), ("in", "shoulder_in"))
    ),
    Case("point", "up", points("front.shoulder_tip", "back.shoulder_tip"), "shoulder_lift"),
    Case("point", "down", points("front.side_hip"), "side_hip_drop"),
    Case("extend", "end", edges("front.shoulder"), "shoulder_extension"),
    Case("extend", "start", edges("front.side"), "side_extension"),
    Case("edge", "down", edges("front.hip"), "hip_drop"),
    Case("edge", "up", edges("front.hip"), "hip_lift"),
    Case("edge", "down", edges("front.hip", "back.hip"), "hip_drop"),
    Case("square", "end down", edges("front.shoulder"), "shoulder_square_length"),
    Case("square", "start up", edges("front.hip"), "hip_square_length"),
    Case("round", "", edges("front.side", "front.hip"), "side_round_reach"),
    Case("round", "", points("back.side_hip"), "side_round_reach"),
    *(
        Case("curve", w, edges("front.neck"), "neck_fullness")
        for w in ("square", "smooth", "square_smooth", "smooth_square")
    ),
    *(Case("into", w, edges("front.shoulder", "front.side"), "armhole_reach") for w in ("smooth", "square")),
    *(Case("into", w, edges("front.side", "front.shoulder"), "armhole_reach") for w in ("smooth", "square")),
    Case("between", "straight", points("front.neck_point", "front.side_hip"), ""),
    *(
        Case("between", w, points("front.neck_point", "front.side_hip"), "neck_side_hip_fullness")
        for w in ("square", "smooth")
    ),
    Case("line", "end down", edges("front.shoulder"), "shoulder_square_length"),
    *(Case("parallel", w, edges("front.neck"), "neck_offset") for w in ("inside", "outside")),
    Case("mirror", "", edges("front.centre"), ""),
    *(Case("spread", w, edges("front.shoulder", "front.hip"), "shoulder_spread") for w in ("parallel", "hinged")),
    Case("cut", "after", edges("front.centre", "front.armhole"), "front_part_depth"),
    Case("cut", "before", edges("front.armhole", "front.centre"), "front_part_depth"),
    Case("cut", "after", edges("front.side", "front.centre"), "front_part_depth"),
    *(Case("opening", w, edges("front.side"), "side_opening_size") for w in ("middle", "start", "end")),
    *(Case("notch", w, edges("front.side"), "side_notch") for w in ("start", "end")),
    Case("notch", "", edges("front.side", "back.side"), "side_notch"),
]


@pytest.mark.parametrize("case", CASES, ids=lambda c: f"{c.name}-{c.way}-{len(c.chosen)}-{c.chosen[0].name}")
def test_a_cell_is_tidy_runs_and_draws_what_was_previewed(vest: Lesson, case: Case) -> None:
    cell = written(vest, ChosenMove(case.name, case.way, why="it is meant so"), case.chosen)
    formatted(cell.source)
    assert not vest.entries and not vest.parameters, "the lesson is left as it is until the cell is run"
    assert cell.measure == case.measure
    assert bool(cell.parameters) == bool(cell.measure)
    pattern = run(vest, cell.source)
    assert cell.pattern is not None
    assert pattern.pieces == cell.pattern.pieces
    record = pattern.steps[-1]
    assert (record.key, record.title) == (cell.name, cell.title)
    if cell.measure:
        assert f"{{{cell.measure}}}" in record.text
        (parameter,) = (p for p in vest.parameters if p.name == cell.measure)
        assert parameter.why == "it is meant so"
        assert parameter.least <= parameter.default <= parameter.most
        for value in (parameter.least, parameter.most):
            vest.work(values={cell.measure: value})
        if parameter.kind == "length":
            assert any(spot.name == cell.measure for spot in record.spots), "the picture dimensions it"


@pytest.mark.parametrize("case", [c for c in CASES if c.way and c.name != "notch"], ids=lambda c: f"{c.name}-{c.way}")
def test_the_ways_offered_are_those_that_can_be_done(vest: Lesson, case: Case) -> None:
    pattern = vest.work()
    assert fits(case.name, vest, pattern, case.chosen) == ""
    assert case.way in [way for way, _ in ways_for(case.name, vest, pattern, case.chosen)]


def test_an_amount_in_inches_is_written_in_inches(vest: Lesson) -> None:
    cell = written(vest, ChosenMove("point", "up", 1.5 * 25.4, "inch"), points("front.shoulder_tip"))
    assert cell.parameters[0].startswith('lesson.length("shoulder_lift", 1.5 * inch, least=0 * inch, most=')
    bare = cell_for(
        ChosenMove("point", "up", 38.1, "inch"), vest, vest.work(), points("front.shoulder_tip"), names=("lesson",)
    )
    assert bare.parameters[0].startswith('lesson.length("shoulder_lift", "1.5 in", least="0 in", most=')
    assert run(vest, bare.source).value("shoulder_lift") == pytest.approx(38.1)


@pytest.mark.parametrize("code", languages()[1:])
def test_a_lesson_in_another_language_gets_its_steps_in_it(vest: Lesson, code: str) -> None:
    sources = []
    with speaking(code):
        for case in CASES:
            cell = written(vest, ChosenMove(case.name, case.way), case.chosen)
            assert "[en]" not in cell.source, case
            sources.append(cell.source)
    formatted("\n\n\n".join(sources))


# ---- geometry, reckoned by hand or by shapely -----------------------------------------------------------------


def polygon(piece: Piece) -> Polygon:
    return Polygon([(p.x, p.y) for edge in piece.edges for p in edge.path.points(0.01)[:-1]])


def test_a_raised_point_lies_that_much_higher(vest: Lesson) -> None:
    before = dict(vest.work().piece("front").points)["shoulder_tip"]
    front = run(vest, written(vest, ChosenMove("point", "up", 15.0), points("front.shoulder_tip")).source).piece(
        "front"
    )
    after = dict(front.points)["shoulder_tip"]
    assert (after.x, after.y) == pytest.approx((before.x, before.y + 15.0))
    assert front.edge("shoulder").path.end.distance(after) < 1e-6
    assert front.edge("armhole").path.start.distance(after) < 1e-6


def test_a_line_carried_on_keeps_its_direction(vest: Lesson) -> None:
    old = vest.work().piece("front").edge("shoulder").path
    new = run(vest, written(vest, ChosenMove("extend", "end", 40.0), edges("front.shoulder")).source).piece("front")
    path = new.edge("shoulder").path
    assert path.length == pytest.approx(old.length + 40.0)
    assert abs(path.end_tangent.cross(old.end_tangent)) < 1e-9


def test_a_rounded_corner_runs_into_both_edges(vest: Lesson) -> None:
    old = vest.work().piece("front")
    cell = written(vest, ChosenMove("round", amount=50.0), points("front.side_hip"))
    front = run(vest, cell.source).piece("front")
    names = [edge.name for edge in front.edges]
    assert names[names.index("side") : names.index("hip") + 1] == ["side", "side_round", "hip"]
    side, curve, hip = (front.edge(name).path for name in ("side", "side_round", "hip"))
    assert side.length == pytest.approx(old.edge("side").path.length - 50.0, abs=0.02)
    assert hip.length == pytest.approx(old.edge("hip").path.length - 50.0, abs=0.02)
    assert abs(side.end_tangent.turn_to(curve.start_tangent)) < 0.01
    assert abs(curve.end_tangent.turn_to(hip.start_tangent)) < 0.01


def test_a_parallel_keeps_its_distance(vest: Lesson) -> None:
    front = run(vest, written(vest, ChosenMove("parallel", "inside", 30.0), edges("front.neck")).source).piece("front")
    line = LineString([(p.x, p.y) for p in front.edge("neck").path.points(0.005)])
    path = dict(front.guides)["neck_parallel"]
    from shapely.geometry import Point as Dot

    gaps = [line.distance(Dot(p.x, p.y)) for p in path.points(0.1)]
    assert min(gaps) == pytest.approx(30.0, abs=0.1) and max(gaps) == pytest.approx(30.0, abs=0.1)
    assert polygon(front).contains(Dot(*(path.at(path.length / 2).x, path.at(path.length / 2).y)))


@pytest.mark.parametrize("way", ["after", "before"])
def test_the_parts_of_a_cut_piece_make_the_whole(vest: Lesson, way: str) -> None:
    whole = polygon(vest.work().piece("front"))
    cell = written(vest, ChosenMove("cut", way, 120.0), edges("front.side", "front.centre"))
    pattern = run(vest, cell.source)
    parts = [polygon(pattern.piece(name)) for name in ("front", "front_part")]
    assert sum(part.area for part in parts) == pytest.approx(whole.area, rel=1e-4)
    assert parts[0].intersection(parts[1]).area < 1.0
    assert pattern.piece("front").edge(cell_seam(pattern)).path.length == pytest.approx(
        pattern.piece("front_part").edge(cell_seam(pattern)).path.length
    )
    assert [pattern.piece(name).fold for name in ("front", "front_part")] == ["centre", "centre"]


def cell_seam(pattern: Pattern) -> str:
    return next(e.name for e in pattern.piece("front_part").edges if e.name.endswith("_seam"))


def test_an_edge_curved_square_is_square(vest: Lesson) -> None:
    front = run(vest, written(vest, ChosenMove("curve", "square", 0.9), edges("front.neck")).source).piece("front")
    neck, shoulder = front.edge("neck").path, front.edge("shoulder").path
    assert abs(neck.start_tangent.x) > 0.999, "square to the centre line"
    assert abs(neck.end_tangent.dot(shoulder.start_tangent)) < 1e-6


# ---- a whole lesson ------------------------------------------------------------------------------------------


def test_in_a_finished_lesson_a_move_follows_the_step_it_is_made_on(wrap_top: Lesson) -> None:
    entries = wrap_top.entries
    try:
        cell = written(wrap_top, ChosenMove("edge", "down", 30.0, after="lower_hem"), edges("front.hem"))
        assert 'after="lower_hem"' in cell.source
        formatted(cell.source)
        pattern = run(wrap_top, cell.source)
        keys = [record.key for record in pattern.steps]
        assert keys[keys.index("lower_hem") + 1] == cell.name
        assert cell.pattern is not None and pattern.pieces == cell.pattern.pieces
    finally:
        rewrite(wrap_top, entries=entries)
        rewrite(wrap_top, parameters=tuple(p for p in wrap_top.parameters if p.name in wrap_top_names(wrap_top)))


def wrap_top_names(lesson: Lesson) -> set[str]:
    return {name for entry in lesson.entries for name in entry.uses}


def test_a_move_at_the_end_keeps_allowances_and_gives_new_edges_theirs(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    cell = cell_for(ChosenMove("square", "end down", 40.0), wrap_top, pattern, edges("front.overarm"))
    assert cell.source, cell.why_not
    assert "front.allow(overarm_square=1 * cm)" in cell.source
    assert 'after="strips"' in cell.source, "steps that sew come after it"
    assert cell.pattern is not None
    front = cell.pattern.piece("front")
    assert front.edge("overarm_square").allowance == 10.0
    assert all(edge.allowance is not None for edge in front.edges)


def test_a_step_that_then_fails_is_named(wrap_top: Lesson) -> None:
    """The overarm replaced before the sleeve opening is squared from it: a later step says what it misses."""
    cell = cell_for(
        ChosenMove("cut", "after", 100.0, after="lower_hem"),
        wrap_top,
        wrap_top.work(),
        edges("front.side", "front.centre"),
    )
    assert cell.source == "" and cell.why_not.startswith("Step '")


def test_names_are_free_and_made_of_what_is_there(wrap_top: Lesson) -> None:
    pattern = wrap_top.work()
    chosen = points("front.shoulder_tip")
    cell = cell_for(ChosenMove("point", "up", after="overarm"), wrap_top, pattern, chosen)
    assert cell.measure == "shoulder_lift_2", "shoulder_lift is a parameter already"
    own = cell_for(
        ChosenMove("point", "up", title="Lift it", measure="Höhe 1", after="overarm"), wrap_top, pattern, chosen
    )
    assert (own.title, own.name, own.measure) == ("Lift it", "lift", "hoehe_1")
    taken = cell_for(
        ChosenMove("point", "up", measure="seam", after="overarm"), wrap_top, pattern, chosen, names=("lift",)
    )
    assert taken.measure == "seam_2"


def test_a_title_with_quotes_and_braces_is_written_soundly(vest: Lesson) -> None:
    title = 'The "lifted" {shoulder} \\ tip'
    cell = written(vest, ChosenMove("point", "up", title=title), points("front.shoulder_tip"))
    formatted(cell.source)
    assert run(vest, cell.source).steps[-1].title == title


# ---- refusals ------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("move", "chosen", "words"),
    [
        (ChosenMove("point"), edges("front.hip"), "Choose one point"),
        (ChosenMove("point"), [], "Choose one point"),
        (ChosenMove("edge"), edges("front.hip", "front.side"), "Choose one edge"),
        (ChosenMove("edge"), edges("front.centre"), "placed on the fold"),
        (ChosenMove("curve"), edges("front.centre"), "cloth folds straight"),
        (ChosenMove("point", "out"), points("front.centre_hip"), "can only go along it"),
        (ChosenMove("mirror"), edges("front.neck"), "the neck is curved"),
        (ChosenMove("round"), edges("front.neck", "front.side"), "do not meet"),
        (ChosenMove("into"), edges("front.neck", "front.shoulder"), "One edge must lie between"),
        (ChosenMove("between"), points("front.side_hip", "front.side_hip"), "the same place"),
        (ChosenMove("edge"), edges("front.hip", "back.side"), "of the same names"),
        (ChosenMove("opening", amount=0.0), edges("front.side"), "above nothing"),
        (ChosenMove("opening", amount=9000.0), edges("front.side"), "The side is only"),
        (ChosenMove("notch", amount=9000.0), edges("front.side"), "The side is only"),
        (ChosenMove("round", amount=2000.0), points("front.side_hip"), "The hip is only"),
        (ChosenMove("cut"), edges("front.centre", "front.side", "front.hip"), "Choose 2 edges"),
    ],
)
def test_what_does_not_fit_is_refused_in_plain_words(
    vest: Lesson, move: ChosenMove, chosen: list[Chosen], words: str
) -> None:
    cell = cell_for(move, vest, vest.work(), chosen)
    assert cell.source == "" and cell.pattern is None
    assert words in cell.why_not
    assert "Error" not in cell.why_not and "Traceback" not in cell.why_not


# ---- the menu ------------------------------------------------------------------------------------------------


def test_the_menu_answers_with_plain_data(vest: Lesson) -> None:
    pattern = vest.work()
    places = arranged(pattern.pieces, {})
    asked = {
        "turn": 7,
        "chosen": [{"kind": "point", "piece": "front", "name": "shoulder_tip"}],
        "move": "point",
        "amount": "1 1/2 cm",
    }
    answer = menu_answer(vest, pattern, asked, places)
    assert json.loads(json.dumps(answer, allow_nan=False))["turn"] == 7
    assert answer["amount"] == "1.5 cm" and answer["value"] == pytest.approx(15.0)
    assert {key for key, _, why in answer["moves"] if not why} == {"point", "round"}
    assert {key for key, _, _ in answer["moves"]} == set(MOVES)
    assert "square up 1.5 cm (5/8 in)" in answer["sentence"]
    tip = dict(pattern.piece("front").points)["shoulder_tip"] + places["front"]
    assert answer["grip"] == pytest.approx([tip.x, tip.y + 15.0, 0.0, 1.0], abs=1e-6)


def test_the_ghost_is_what_the_cell_draws(vest: Lesson) -> None:
    pattern = vest.work()
    places = arranged(pattern.pieces, {})
    cell = written(vest, ChosenMove("point", "up", 15.0), points("front.shoulder_tip"))
    rows = ghost(vest, pattern, cell, places)
    drawn = run(vest, cell.source).piece("front")
    ends = {(round(row[0], 1), round(row[1], 1)) for row in rows}
    wanted = {drawn.edge(name).path.start + places["front"] for name in ("shoulder", "armhole")}
    assert ends == {(round(p.x, 1), round(p.y, 1)) for p in wanted}


@pytest.mark.parametrize("name", MOVES)
def test_the_menu_survives_whatever_is_chosen(wrap_top: Lesson, name: str) -> None:
    """Every move with every single edge and point of the front: a cell or a reason, never a stop."""
    pattern = wrap_top.work()
    front = pattern.piece("front")
    every = [*(("edge", e.name) for e in front.edges), *(("point", n) for n, _ in front.points)]
    for kind, own in every:
        asked = {"chosen": [{"kind": kind, "piece": "front", "name": own}], "move": name, "rest": False}
        answer = menu_answer(wrap_top, pattern, asked, {})
        assert bool(answer["source"]) != bool(answer["trouble"]), (kind, own)


@pytest.mark.parametrize(
    ("typed", "kind", "value", "system"),
    [
        ("1 1/2 cm", "length", 15.0, "cm"),
        ("1 1/2 in", "length", 38.1, "inch"),
        ('3/4"', "length", 19.05, "inch"),
        ("2", "length", 20.0, "cm"),
        ("90 %", "share", 0.9, "cm"),
        ("", "length", None, "cm"),
        (14.6, "length", 15.0, "cm"),
    ],
)
def test_amounts_are_read_as_people_type_them(typed: object, kind: str, value: float | None, system: str) -> None:
    found, read = read_amount(typed, kind, "cm")
    assert found == (None if value is None else pytest.approx(value)) and read == system


def test_an_amount_that_cannot_be_read_is_refused() -> None:
    with pytest.raises(KitError, match="cannot be read"):
        read_amount("a bit", "length", "cm")
    with pytest.raises(KitError, match="not a percentage"):
        read_amount("a bit", "share", "cm")


# ---- tidy source ---------------------------------------------------------------------------------------------

NAMES = st.text("abcdefgh_", min_size=1, max_size=34).map(lambda text: f"n{text}")
CALLS = st.builds(
    lambda head, plain, inner, last: Call(
        f"front.{head} = front.{head}", tuple([*plain, Call(f"{inner[0]}=front.{inner[0]}", tuple(inner[1:])), *last])
    ),
    NAMES,
    st.lists(NAMES, max_size=3),
    st.lists(NAMES, min_size=2, max_size=6),
    st.lists(NAMES.map(lambda name: f"{name}=1"), max_size=2, unique=True),
)


@settings(max_examples=40)
@given(CALLS)
def test_long_lines_are_broken_as_the_formatter_breaks_them(call: Call) -> None:
    source = "\n".join(["def step(front):", *call.lines(4)])
    ran = subprocess.run(
        (sys.executable, "-m", "ruff", "format", "--diff", "--config", str(ROOT / "pyproject.toml"), "-"),
        input=source + "\n",
        text=True,
        capture_output=True,
        check=False,
    )
    assert ran.returncode == 0, ran.stdout


@given(st.text(max_size=40))
def test_quoted_text_is_read_back(text: str) -> None:
    plain = "".join(c for c in text if c.isprintable() or c == " ")
    assert eval(quoted(plain)) == re.sub(" +", " ", plain).strip(" ")


def test_small_things() -> None:
    assert docstring('Say "so"') == ['    """Say "so" """']
    assert identifier("Shoulder lift!") == "shoulder_lift" and identifier("class") == "class_"
    assert free("hem", {"hem", "hem_2"}) == "hem_3"
    units = ("cm", "mm", "inch")
    assert [length_source(v, "cm", units) for v in (15.0, 6.0, 0.0)] == ["1.5 * cm", "6 * mm", "0 * cm"]
    assert length_source(stepped(10.0, "inch"), "inch", units) == "0.375 * inch"
    assert replace(ChosenMove("point"), way="up").way == "up"
