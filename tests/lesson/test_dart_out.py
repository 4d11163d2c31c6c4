"""A dart taken out of a draft: its width left in the edge or closed into the seam beside it (common practice, no
source). What must come out is reckoned here from the block's own points."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kit import Lesson, darted_bodice_block, skirt_block, trouser_block
from kit.blocks.block import Block
from kit.errors import KitError
from kit.geometry import Point
from kit.lesson.dart_out import dart_into, dart_out
from kit.piece.dart import dart_of
from kit.piece.piece import Notch, Piece


def skirt_back() -> Piece:
    return skirt_block(Lesson("Skirt", start=skirt_block, size="W4").body)[1]


def width(piece: Piece, name: str) -> float:
    dart = dart_of(piece, name)
    path = piece.edge(dart.edge).path
    return path.at(dart.start).distance(path.at(dart.end))


def test_left_in_the_edge_its_width_stays_and_nothing_else_moves() -> None:
    piece = skirt_back()
    out = dart_out(piece, "waist_dart_2")
    assert [dart.name for dart in out.darts] == ["waist_dart_1"]
    for name in ("hem", "centre", "side"):
        assert out.edge(name).path == piece.edge(name).path
    old, dart = piece.edge("waist").path, dart_of(piece, "waist_dart_2")
    cap = dart.end - dart.start
    assert out.edge("waist").path.length == pytest.approx(old.length - cap + width(piece, "waist_dart_2"), abs=0.01)
    assert out.edge("waist").path.at(dart.start).distance(old.at(dart.start)) < 0.01
    # The other dart lies where it lay, by its two ends.
    for end in ("start", "end"):
        was, now = (getattr(dart_of(each, "waist_dart_1"), end) for each in (piece, out))
        assert out.edge("waist").path.at(now).distance(old.at(was)) < 0.01


def test_closed_into_the_side_it_is_off_the_waist_and_the_hip_stays() -> None:
    piece = skirt_back()
    piece = replace(piece, notches=(Notch("side", 50.0), Notch("side", 400.0)))
    wide, plain = width(piece, "waist_dart_2"), dart_out(piece, "waist_dart_2")
    out = dart_into(piece, "waist_dart_2", "side")
    assert out.edge("waist").path.length == pytest.approx(plain.edge("waist").path.length - wide, abs=0.01)
    assert out.edge("waist").path.start.distance(out.edge("centre").path.end) < 0.01
    assert out.edge("waist").path.end.distance(out.edge("side").path.start) < 0.01
    assert dict(out.points)["side_waist"].distance(out.edge("waist").path.end) < 0.01
    side, old = out.edge("side").path, piece.edge("side").path
    # From the dart's depth down the side lies in its old course; above it has come in, nowhere farther than the dart.
    deep = 0.0
    for down in range(0, 600, 10):
        gap = side.distance_to(old.at(float(down)))
        assert gap <= wide + 0.01
        deep = float(down) if gap > 0.2 else deep
    assert 60 < deep < 170
    low = next(each for each in out.notches if each.distance > 100)
    assert side.at(low.distance).distance(old.at(400.0)) < 0.1
    # It runs in without a corner.
    angles = [side.tangent_at(float(at)).turn_to(side.tangent_at(at + 2.0)) for at in range(2, 300, 2)]
    assert max(map(abs, angles)) < 0.05


def test_at_the_beginning_of_its_edge_everything_along_it_moves_up() -> None:
    trousers = trouser_block(Lesson("Trousers", start=trouser_block, size="W4").body)[1]
    out = dart_into(trousers, "waist_dart_1", "crotch")
    wide = width(trousers, "waist_dart_1")
    path = out.edge("waist").path
    assert path.start.distance(out.edge("crotch").path.end) < 0.01
    assert path.start.distance(trousers.edge("waist").path.at(wide)) < 0.5
    other, was = dart_of(out, "waist_dart_2"), dart_of(trousers, "waist_dart_2")
    assert path.at(other.start).distance(trousers.edge("waist").path.at(was.start)) < 0.01
    assert path.at(other.end).distance(trousers.edge("waist").path.at(was.end)) < 0.01


def written(into: str | None, block: Block = skirt_block, dart: str = "waist_dart_2") -> str:
    lesson = Lesson("Practice", start=block, size="W4")

    @lesson.step("Take the dart away")
    def away(back: object) -> None:
        """It took {waist_dart_2_intake}."""
        back.remove_dart(dart, into=into)  # type: ignore[attr-defined]

    try:
        return str(lesson.work().drafting[-1].text)
    except KitError as error:
        return str(error)


def test_what_cannot_be_is_said_with_what_can() -> None:
    assert "the hem does not meet the waist" in written("hem") and "begins or ends where the waist" in written("hem")
    assert "lies on the fold" in written("centre")
    assert "there is no dart 'bust_dart'" in written("side", dart="bust_dart")


def test_a_dart_that_lies_on_what_is_taken_off_is_named() -> None:
    piece = skirt_back()
    near = dart_of(piece, "waist_dart_2")
    moved = replace(near, start=piece.edge("waist").path.length - 20, end=piece.edge("waist").path.length - 5)
    darts = (replace(dart_of(piece, "waist_dart_1"), apex=Point(80, -100)), moved)
    with pytest.raises(KitError, match=r"waist dart 2 opens where the waist .*is cut away"):
        dart_into(replace(piece, darts=darts), "waist_dart_1", "side")


@pytest.mark.parametrize("into", [None, "side"])
def test_without_a_name_all_darts_go_however_many_a_figure_has(into: str | None) -> None:
    for size in ("W1", "W4", "W10"):
        lesson = Lesson("Skirt", start=skirt_block, size=size)

        @lesson.step("Take the darts away")
        def away(front: object, back: object) -> None:
            """Take them away."""
            front.remove_dart(into=into)  # type: ignore[attr-defined]
            back.remove_dart(into=into)  # type: ignore[attr-defined]

        for before, piece in zip(skirt_block(lesson.body), lesson.work().pieces, strict=True):
            off = sum(width(before, dart.name) for dart in before.darts)
            caps = sum(dart.end - dart.start for dart in before.darts)
            left = before.edge("waist").path.length - caps + (0 if into else off)
            assert piece.darts == () and piece.edge("waist").path.length == pytest.approx(left, abs=0.05)


def test_a_dart_beside_it_keeps_its_legs() -> None:
    piece = darted_bodice_block(Lesson("Bodice", start=darted_bodice_block, size="W4").body)[0]
    bust = dart_of(piece, "bust_dart")
    out = dart_into(piece, "waist_dart", "side")
    now = dart_of(out, "bust_dart")
    for end in ("start", "end"):
        was = piece.edge("side").path.at(getattr(bust, end))
        assert out.edge("side").path.at(getattr(now, end)).distance(was) < 0.05
    close = replace(bust, start=piece.edge("side").path.length - 40, end=piece.edge("side").path.length - 10)
    with pytest.raises(KitError, match="no room on the side"):
        dart_into(replace(piece, darts=(close, dart_of(piece, "waist_dart"))), "waist_dart", "side")


def test_a_dart_this_figure_does_not_need_is_passed_over() -> None:
    lesson = Lesson("Practice", start=skirt_block, size="W4")

    @lesson.step("Spare it")
    def spare(front: object) -> None:
        """Spare it."""
        front.spare_darts("waist_dart_9")  # type: ignore[attr-defined]
        front.remove_dart("waist_dart_9", into="side")  # type: ignore[attr-defined]

    before = skirt_block(lesson.body)[0]
    assert lesson.work().piece("front").edge("waist").path.length == pytest.approx(before.edge("waist").path.length)
