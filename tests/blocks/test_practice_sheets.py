"""Every block's own lesson (`Lesson.of(block)`) has numbers to move: each moves lines and has a handle on the canvas;
left alone they give the block itself, and any mixture of them inside their ranges can be drafted."""

from __future__ import annotations

import itertools
from dataclasses import replace

import pytest

from kit import Lesson
from kit.blocks import Block, bodice_block, darted_bodice_block, skirt_block, trouser_block, with_sleeve
from kit.body import Body, workshop_chart
from kit.lesson.working import work
from kit.live.canvas.handles import handles
from kit.picture.step_pictures import player_pictures
from kit.piece.dart import intake, sewn_length
from kit.piece.piece import Piece
from kit.units import Length, cm, mm, show
from tests.body.published import bodies

NUMBERS = {
    "bodice_block": ["bust_ease", "waist_ease", "hip_ease", "neck_ease", "underarm_drop"],
    "darted_bodice_block": [
        "bust_ease",
        "waist_ease",
        "neck_ease",
        "underarm_drop",
        "dart_share",
        "shoulder_dart_width",
    ],
    "skirt_block": ["waist_ease", "hip_ease", "front_share", "skirt_length"],
    "trouser_block": ["waist_ease", "hip_ease", "knee_ease", "front_share", "hem_height"],
    "with_sleeve": ["cap_ease", "upper_arm_ease", "wrist_ease"],
}
BLOCKS = {
    "bodice_block": bodice_block,
    "darted_bodice_block": darted_bodice_block,
    "skirt_block": skirt_block,
    "trouser_block": trouser_block,
    "with_sleeve": with_sleeve(darted_bodice_block),
}
SIZES = workshop_chart().names
EVERY = pytest.mark.parametrize("name", BLOCKS)


@EVERY
def test_each_number_moves_lines_and_has_a_handle(name: str) -> None:
    lesson = Lesson.of(BLOCKS[name])
    lesson.choose(size="W4")
    assert [parameter.name for parameter in lesson.parameters] == NUMBERS[name]
    pattern = lesson.work()
    assert [handle.name for handle in handles(lesson, pattern)] == NUMBERS[name]
    for picture in player_pictures(pattern, "cm"):
        assert picture.words and "{" not in " ".join(picture.words)


@EVERY
@pytest.mark.parametrize("body", bodies())
def test_the_lesson_as_it_opens_is_the_block(name: str, body: Body) -> None:
    block = BLOCKS[name]
    lesson = Lesson.of(block)
    lesson.choose(body=body)
    for worked, piece in zip(lesson.work().pieces, block(body), strict=True):
        assert alike(worked) == alike(piece)


def alike(piece: Piece) -> tuple[object, ...]:
    """What a lesson that starts from the piece finds on it; in which order does not matter."""
    cut = piece.cut and replace(piece.cut, said=True)
    lines = {edge.name: (edge.path, edge.role) for edge in piece.edges}
    found = (dict(piece.points), dict(piece.guides), dict(piece.landmarks), {dart.name: dart for dart in piece.darts})
    return (piece.name, piece.title, piece.role, cut, lines, *found)


@pytest.mark.parametrize("name", [name for name in BLOCKS if name != "with_sleeve"])
def test_numbers_hold_together_over_their_ranges(name: str) -> None:
    """The ends of all ranges at once, in the smallest, a middle and the largest size: a draft that closes. (What a
    sleeve can be follows from its armscye; where cap and arm ask for opposite things it is refused, and told.)"""
    block: Block = BLOCKS[name]
    ends = [(parameter.least, parameter.most) for parameter in block.parameters]
    for size, values in itertools.product((SIZES[0], SIZES[4], SIZES[-1]), itertools.product(*ends)):
        named = dict(zip(NUMBERS[name], values, strict=True))
        for piece in work(block.definition, workshop_chart()[size], named, whole=False).pieces:
            assert piece.outline.self_crossing() is None, (size, named)


def test_what_the_bodice_says_comes_true() -> None:
    lesson = Lesson.of(bodice_block)
    lesson.choose(size="W4")
    lesson.change(bust_ease=14 * cm, waist_ease=18 * cm, hip_ease=12 * cm, neck_ease=2 * cm, underarm_drop=3 * cm)
    body, pattern = lesson.body, lesson.work()
    front, back = pattern.pieces
    lines = dict(front.guides) | {edge.name: edge.path for edge in front.edges}
    for line, girth, ease in (("bust_line", "bust", 140), ("waist", "waist", 180), ("hip", "hip", 120)):
        assert 4 * lines[line].length == pytest.approx(body[f"{girth}_girth"] + ease, abs=0.5)
    necks = 2 * (front.edge("neck").path.length + back.edge("neck").path.length)
    assert necks == pytest.approx(body["neck_base_girth"] + 20, abs=0.5)
    armpit = body["back_waist_length"] - body["armscye_depth"]
    assert dict(back.points)["underarm_point"].y == pytest.approx(armpit - 30)
    said = player_pictures(pattern, "cm")[0].words[0]
    for told in ((body["bust_girth"] + 140) / 4, (body["hip_girth"] + 120) / 4, 30.0):
        assert show(Length(told), "cm") in said


def test_what_the_darted_bodice_says_comes_true() -> None:
    lesson = Lesson.of(darted_bodice_block)
    lesson.choose(size="W4")
    lesson.change(bust_ease=8 * cm, waist_ease=6 * cm, shoulder_dart_width=17 * mm, underarm_drop=3 * cm)
    front, back = lesson.work().pieces
    body = lesson.body
    assert 4 * dict(front.guides)["bust_line"].length == pytest.approx(body["bust_girth"] + 80, abs=0.5)
    waist = 2 * (sewn_length(front, "waist") + sewn_length(back, "waist"))
    assert waist == pytest.approx(body["waist_girth"] + 60, abs=0.5)
    assert intake(back, next(dart for dart in back.darts if dart.name == "shoulder_dart")) == pytest.approx(17, abs=0.1)
    assert sewn_length(back, "shoulder") == pytest.approx(body["shoulder_length"], abs=0.5)
    armpit = body["back_waist_length"] - body["armscye_depth"]
    assert dict(back.points)["underarm_point"].y == pytest.approx(armpit - 30)
    lesson.change(dart_share=0.5)
    less = lesson.work()
    lesson.change(dart_share=0.75)
    more = lesson.work()
    for few, many in zip(less.pieces, more.pieces, strict=True):
        narrow, wide = (intake(p, next(dart for dart in p.darts if dart.name == "waist_dart")) for p in (few, many))
        assert wide > narrow + 5
    assert "75%" in player_pictures(more, "cm")[-1].words[0]


def test_what_the_trousers_say_comes_true() -> None:
    lesson = Lesson.of(trouser_block)
    lesson.choose(size="W4")
    lesson.change(waist_ease=4 * cm, hip_ease=8 * cm, knee_ease=16 * cm, front_share=0.3, hem_height=6 * cm)
    pattern = lesson.work()
    halves, body = pattern.pieces, lesson.body
    across = {name: sum(dict(piece.guides)[name].length for piece in halves) for name in ("hip_line", "knee_line")}
    assert 2 * across["hip_line"] == pytest.approx(body["hip_girth"] + 80, abs=0.5)
    assert across["knee_line"] == pytest.approx(body["knee_girth"] + 160, abs=0.5)
    waist = 2 * sum(sewn_length(piece, "waist") for piece in halves)
    assert waist == pytest.approx(body["waist_girth"] + 40, abs=0.5)
    wide = [sum(intake(piece, dart) for dart in piece.darts) for piece in halves]
    assert wide[0] / sum(wide) == pytest.approx(0.3, abs=0.01)
    before = Lesson.of(trouser_block)
    before.choose(size="W4")
    hems = [worked.pieces[0].edge("hem").path.start.y for worked in (before.work(), pattern)]
    assert hems[1] - hems[0] == pytest.approx(60 - 15)
    said = [picture.words[0] for picture in player_pictures(pattern, "cm")]
    assert "6 cm" in said[0] and "16 cm" in said[1] and "30%" in said[4]
