"""A try-on that moves a mark: what was sewn along it is told, as what lies on a line that moves is."""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.blocks.blank import blank_paper
from kit.lesson.lesson import Lesson
from kit.prose import sentences
from kit.units import cm


@pytest.fixture(autouse=True)
def alone(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)


def trial(write, **asks) -> list[str]:
    """A straight sack, 60 cm long, with a slit of 12 cm that begins `slit_at` below the top: what its try-on says."""
    lesson = Lesson("Sack", start=blank_paper)
    lesson.length("slit_at", 20 * cm, least=5 * cm, most=40 * cm)
    lesson.length("width", 25 * cm, least=20 * cm, most=40 * cm)

    def draw(piece, slit_at, width) -> None:
        low = piece.place(0, 0)
        high = low.up(60 * cm)
        corner, out = high.out(width), low.out(width)
        piece.draw(centre=low.to(high), top=high.to(corner), side=corner.to(out), hem=out.to(low))
        piece.leave_open("slit", piece.side, at=slit_at, size=12 * cm)
        piece.allow(top=1.5 * cm, side=1.5 * cm, hem=3 * cm)
        piece.cut(1, fold="centre")
        piece.grain(along=piece.centre)

    @lesson.step("Draw the front", makes="front")
    def draw_front(front, slit_at, width):
        draw(front, slit_at, width)

    @lesson.step("Draw the back", makes="back")
    def draw_back(back, slit_at, width):
        draw(back, slit_at, width)

    @lesson.sew("Sides")
    def sides(make, front, back):
        write(make, front, back)

    @lesson.sew("Try it on")
    def tried(make):
        make.try_on("It gapes.", **asks)

    pattern = lesson.work()
    (made,) = [op for record in pattern.sewing for op in record.operations if op.kind == "try_on"]
    return sentences(pattern, made)


def with_opening(make, front, back):
    make.plain_seam(front.side, back.side, allowance=1.5 * cm, opening=front.slit)


def down_to_it(make, front, back):
    make.plain_seam(front.side.before(front.slit), back.side.before(back.slit), allowance=1.5 * cm)


LOWER = {"slit_at": (20 * cm, 23 * cm)}


def test_an_opening_that_hangs_on_a_moved_mark_is_told_with_its_new_place() -> None:
    found = [line for line in trial(with_opening, **LOWER) if line.startswith("The opening")]
    assert found == [
        "The opening in the side seam of the front hangs on a mark that has moved; it now lies from 23 cm (9 1/16 in) "
        "to 35 cm (13 3/4 in) below the top. Close the seam where the old one was, unpick it along the new one, "
        "and turn in and stitch its edges there as before.",
        "The opening in the side seam of the back" + found[1].removeprefix("The opening in the side seam of the back"),
    ]


def test_a_row_that_ends_at_a_moved_mark_is_told_with_its_new_end() -> None:
    found = [line for line in trial(down_to_it, **LOWER) if line.startswith("The stitching")]
    assert len(found) == 2 and "it now ends 23 cm (9 1/16 in) below the top." in found[0]


def test_a_line_that_moves_sideways_takes_its_mark_along_and_a_mark_that_stays_is_not_told() -> None:
    assert not [line for line in trial(with_opening, width=(25 * cm, 24 * cm)) if "hangs on a mark" in line]
