"""The engine of a lesson's page, asked as the page asks it, under CPython."""

from __future__ import annotations

import json
import math
from pathlib import Path
from typing import Any
from xml.etree import ElementTree

import pytest

from kit import open_lesson
from kit.body.file import load_body
from kit.page.engine import Engine
from kit.picture.draft import step_drawing
from kit.picture.drawing import Dimension, Label
from kit.proof import prove
from kit.units import both

ROOT = Path(__file__).parents[2]


def at(name: str, **options: Any) -> Engine:
    return Engine(ROOT / "example_notebooks" / f"{name}.ipynb", **options)


@pytest.fixture(scope="module")
def wrap() -> Engine:
    return at("tideline_wrap_top", offered=("en", "de", "fr", "es"))


def ask(engine: Engine, **message: Any) -> dict[str, Any]:
    made: dict[str, Any] = json.loads(engine.answer(json.dumps(message)))
    return made


def test_what_the_lesson_is(wrap: Engine) -> None:
    about = ask(wrap, do="about")
    lesson = open_lesson(ROOT / "example_notebooks" / "tideline_wrap_top.ipynb")
    pattern = lesson.work()
    assert about["title"] == "Tideline wrap top" and about["size"] == lesson.body.name
    assert about["sizes"] == list(lesson.sizes.names) and about["values"] == lesson.values
    keys = [("draft", step.key) for step in pattern.steps] + [("sew", step.key) for step in pattern.sewing]
    assert [(step["kind"], step["key"]) for step in about["steps"]] == keys
    assert {each["name"] for each in about["measures"] if each["used"]} >= set(lesson.measures)
    assert [each["code"] for each in about["languages"]] == ["en", "de", "fr", "es"]


def test_a_step_is_what_the_kit_draws_and_says(wrap: Engine) -> None:
    lesson = open_lesson(ROOT / "example_notebooks" / "tideline_wrap_top.ipynb")
    pattern = lesson.work(values={**lesson.values, "sleeve_length": 200.0})
    record = next(step for step in pattern.steps if step.key == "overarm")
    told = ask(wrap, do="draw", values={"sleeve_length": 200}, step={"kind": "draft", "key": "overarm"})
    drawing = step_drawing(record, "cm")
    assert told["alt"] == drawing.alt and both(200.0) in told["words"][0]
    assert f"sleeve length {both(200.0)}" in told["measures"]
    slider = next(each for each in told["sliders"] if each["name"] == "sleeve_length")
    assert slider["value"] == 200 and slider["shown"] == both(200.0)
    assert slider["at"] * slider["size"] == pytest.approx(200) and slider["own"] == 260
    ElementTree.fromstring(told["svg"])


def test_nothing_of_one_setting_is_left_in_the_next(wrap: Engine) -> None:
    first = ask(wrap, do="draw")
    ask(wrap, do="draw", values={"sleeve_length": 300}, body={"size": "W8"}, units="inch", language="de")
    ask(wrap, do="draw", body={"name": "Ines", "typed": {"bust_girth": "94 cm", "height": "150 cm"}})
    assert ask(wrap, do="draw") == first


def test_a_picture_as_numbers(wrap: Engine) -> None:
    """Those that the kit draws with, whole, texts before they are placed."""
    lesson = open_lesson(ROOT / "example_notebooks" / "tideline_wrap_top.ipynb")
    record = lesson.work(values={**lesson.values, "sleeve_length": 217.3}).steps[0]
    told = ask(wrap, do="data", values={"sleeve_length": 217.3}, step={"kind": "draft", "key": record.key})["drawing"]
    drawing = step_drawing(record, "cm")
    assert [item[0] for item in told["items"]] == [type(item).__name__ for item in drawing.items]
    for item, mine in zip(told["items"], drawing.items, strict=True):
        if isinstance(mine, Label):
            assert item[1:3] == [mine.text, ["Point", mine.at.x, mine.at.y]]
        if isinstance(mine, Dimension):
            ends = [["Point", end.x, end.y] for end in (mine.start, mine.end)]
            assert item[1:4] == [*ends, mine.text]
    assert any(isinstance(item, Dimension) for item in drawing.items) and told["alt"] == drawing.alt


def test_every_picture_is_reached(wrap: Engine) -> None:
    for step in ask(wrap, do="about")["steps"]:
        last = ask(wrap, do="draw", step={**step, "picture": -1})
        assert last["step"]["picture"] == last["step"]["pictures"]
        assert (last["step"]["kind"], last["step"]["key"]) == (step["kind"], step["key"]) and last["words"]
    assert ask(wrap, do="draw", step={"kind": "sew", "key": "gone"})["number"] == 0


def test_the_picture_fits_the_room(wrap: Engine) -> None:
    for room in ([360, 300], [900, 700], ["x", None], [math.inf, 1], [1e9, 1e9], [True, False], "big"):
        root = ElementTree.fromstring(ask(wrap, do="draw", room=room)["svg"])
        wide, high = (float(root.attrib[side]) for side in ("width", "height"))
        if room in ([360, 300], [900, 700]):
            assert wide <= room[0] + 0.5 and high <= room[1] + 0.5  # type: ignore[operator]
        assert wide <= 4000.5 and high <= 4000.5


def test_the_proof_and_the_exercises(wrap: Engine) -> None:
    lesson = open_lesson(ROOT / "example_notebooks" / "tideline_wrap_top.ipynb")
    told = ask(wrap, do="prove")
    assert [each["level"] for each in told["findings"]] == [each.level for each in prove(lesson.work())]
    assert not told["failed"] and told["passed"]
    (exercise,) = told["exercises"]
    assert not exercise["solved"]
    (own,) = lesson.exercises
    solved = ask(wrap, do="prove", values=dict(own.answer))
    assert solved["exercises"][0]["solved"]
    assert {row["name"] for row in told["finished"]} >= {title for title, _ in lesson.work().finished}


def test_four_languages(wrap: Engine) -> None:
    said = {code: ask(wrap, do="draw", language=code)["words"][0] for code in ("en", "de", "fr", "es")}
    assert len(set(said.values())) == 4 and not any("[en]" in text for text in said.values())
    assert "26 cm" in said["de"] and ask(wrap, do="draw", language="xx")["words"][0] == said["en"]
    refused = {code: ask(wrap, do="draw", language=code, values=7)["said"] for code in ("en", "de", "fr", "es")}
    assert len(set(refused.values())) == 4


def test_a_body_of_ones_own(wrap: Engine, tmp_path: Path) -> None:
    body = {"name": "Ines", "typed": {"bust_girth": "37", "waist_girth": "75 cm", "hip_girth": "long"}}
    told = ask(wrap, do="body", units="inch", body=body, shown=["bust_girth", "back_width"])
    assert told["rows"]["hip_girth"]["wrong"] and not told["rows"]["bust_girth"]["wrong"]
    assert "94 cm" in told["rows"]["bust_girth"]["value"] and told["advice"]
    assert {each["view"] for each in told["figures"]} == {"front", "back"}
    assert not ask(wrap, do="draw", units="inch", body=body)["ok"]
    del body["typed"]["hip_girth"]  # type: ignore[attr-defined]
    assert ask(wrap, do="draw", units="inch", body=body)["ok"]
    written = ask(wrap, do="write", units="inch", body=body)["text"]
    (tmp_path / "ines.toml").write_text(written, "utf-8")
    assert load_body(tmp_path / "ines.toml")["bust_girth"] == pytest.approx(37 * 25.4)
    read = ask(wrap, do="read", name="ines.toml", text=written)
    assert read["name"] == "Ines" and read["typed"] == {"bust_girth": "37 in", "waist_girth": "75 cm"}
    assert read["units"] == "inch"
    assert not ask(wrap, do="draw", body={"name": "W4", "typed": {"bust_girth": "94 cm"}})["ok"]


HOSTILE = [
    {"do": "draw", "values": {"sleeve_length": 1e300}},
    {"do": "draw", "values": {"sleeve_length": "26"}},
    {"do": "draw", "values": {"sleeve_length": True}},
    {"do": "draw", "values": {"__class__": 1}},
    {"do": "draw", "values": [1]},
    {"do": "draw", "units": "furlong"},
    {"do": "draw", "body": 3},
    {"do": "draw", "body": {"size": "XXL"}},
    {"do": "draw", "body": {"size": {"a": 1}}},
    {"do": "draw", "body": {"name": 3, "typed": {}}},
    {"do": "draw", "body": {"name": "x", "typed": {"bust_girth": 9}}},
    {"do": "draw", "body": {"name": "x", "typed": {"bust_girth": "9" * 5000}}},
    {"do": "draw", "body": {"name": "x", "typed": {"bust_girth": "94 cm", "tail": "3 cm"}}},
    {"do": "draw", "body": {"name": "x", "typed": {}}},
    {"do": "write", "body": {}},
    {"do": "read", "name": "x.toml", "text": "]["},
    {"do": "read", "name": "../../etc/passwd\0", "text": "x" * 2_000_000},
    {"do": "read", "name": "", "text": "\ud800 = 1"},
    {"do": "read", "name": 1, "text": None},
    {"do": "mend", "values": {"sleeve_length": -5}},
    {"do": "mend", "good": {"sleeve_length": "far"}},
    {"do": "__init__"},
    {"do": None},
    {},
]


@pytest.mark.parametrize("message", HOSTILE, ids=lambda message: json.dumps(message)[:60])
def test_what_cannot_be_is_refused_in_words(wrap: Engine, message: dict[str, Any]) -> None:
    told = ask(wrap, **message)
    assert not told["ok"] and 10 < len(told["said"]) < 700
    assert "Traceback" not in told["said"] and "went wrong" not in told["said"], told["said"]


@pytest.mark.parametrize("text", ["", "[]", "nul", "{", "[" * 100_000, '{"do":"draw","values":{"sleeve_length":NaN}}'])
def test_what_is_no_message_is_refused(wrap: Engine, text: str) -> None:
    told = json.loads(wrap.answer(text))
    assert not told["ok"] and told["said"]


VEST = """
from kit import Lesson, bodice_block, cm, mm
lesson = Lesson("Vest", start=bodice_block)
lesson.length("side_slit", 10 * cm, least=0 * cm, most=60 * cm)
@lesson.step("Mark the slit")
def mark_slit(front, back, side_slit):
    "Measure {side_slit} along the side."
    front.side.at(side_slit)
    for piece in (front, back):
        piece.allow(neck=6 * mm, shoulder=1 * cm, armhole=5 * mm, side=1 * cm, hip=3 * cm)
"""


def test_what_is_refused_is_mended(tmp_path: Path) -> None:
    cell = {"cell_type": "code", "source": VEST, "metadata": {}, "outputs": [], "execution_count": None}
    book = {"cells": [cell], "metadata": {}, "nbformat": 4, "nbformat_minor": 5}
    (tmp_path / "vest.ipynb").write_text(json.dumps(book), "utf-8")
    engine = Engine(tmp_path / "vest.ipynb")
    assert ask(engine, do="draw")["ok"]
    refused = ask(engine, do="draw", values={"side_slit": 500})
    assert not refused["ok"] and "50 cm" in refused["said"]
    told = ask(engine, do="mend", values={"side_slit": 500}, moved="side_slit")
    (remedy,) = told["remedies"]
    assert "Side slit: at most 41.3 cm" in remedy["said"]
    assert ask(engine, do="draw", values=remedy["values"])["ok"]


def test_only_the_sliders_that_were_opened() -> None:
    engine = at("dune_skirt", sliders=("flare",))
    assert list(ask(engine, do="about")["values"]) == ["flare"]
    assert [each["name"] for each in ask(engine, do="draw")["sliders"]] == ["flare"]


def test_cloth_of_the_size_and_of_the_nearest() -> None:
    rows = {size: [{"cloth": "main", "width": 1400.0, "length": mm}] for size, mm in (("W4", 1500.0), ("W6", 1700.0))}
    engine = at("dune_skirt", cloth={"sizes": rows})
    told = ask(engine, do="prove", body={"size": "W6"})["cloth"]
    assert "W6" in told["note"] and told["rows"][0]["length"] == both(1700.0, "cm", "shop")
    own = {"name": "Ines", "typed": {"hip_girth": "106 cm", "waist_girth": "82 cm"}}
    told = ask(engine, do="prove", body=own)["cloth"]
    assert "W6" in told["note"] and "nearest" in told["note"]
    assert ask(at("dune_skirt"), do="prove")["cloth"] == {"note": "", "rows": []}


def test_the_end_of_a_measure_is_where_the_lesson_drags_it(wrap: Engine) -> None:
    """A grip stands where the dimension ends, and goes with the hand: as the value grows by 10 mm, its end is 10 mm
    farther from its start, as large as the piece is drawn."""
    step = {"kind": "draft", "key": "overarm"}
    told = [ask(wrap, do="draw", values={"sleeve_length": mm}, step=step)["grips"] for mm in (200, 210)]
    one, two = ([grip for grip in grips if grip["name"] == "sleeve_length"] for grips in told)
    assert len(one) == len(two) == 1 and one[0]["rate"] == pytest.approx(two[0]["rate"]) and one[0]["rate"] > 0
    assert math.hypot(*one[0]["way"]) == pytest.approx(1)
    drawn = [ask(wrap, do="data", values={"sleeve_length": mm}, step=step)["drawing"]["items"] for mm in (200, 210)]
    ends = [next(item for item in items if item[0] == "Dimension" and "sleeve length" in item[3]) for items in drawn]
    spans = [math.dist(item[1][1:], item[2][1:]) for item in ends]
    assert spans[1] - spans[0] == pytest.approx(10 * one[0]["rate"], rel=1e-6)
    assert one[0]["at"] == pytest.approx([ends[0][2][1], -ends[0][2][2]])
    names = {grip["name"] for grip in ask(wrap, do="draw", step=step)["grips"]}
    open_to = Engine(ROOT / "example_notebooks" / "tideline_wrap_top.ipynb", sliders=["hem_drop"])
    assert "sleeve_length" in names and "sleeve_length" not in str(ask(open_to, do="draw", step=step)["grips"])
