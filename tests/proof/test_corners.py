"""Corner truth: seams of several edges, parts, darts, facings, corners declared; and where there is nothing to say."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from pathlib import Path as File
from types import ModuleType
from typing import Any

import pytest

from kit import blank_paper
from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.skirt import skirt_block
from kit.blocks.sleeve import with_sleeve
from kit.blocks.trousers import trouser_block
from kit.body.chart import workshop_chart
from kit.geometry import Point
from kit.language import speaking
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern, SewRecord
from kit.piece.darts_and_pleats import Dart
from kit.piece.piece import Declared, Piece
from kit.proof import Finding, prove
from kit.proof.corners import corners, kinks
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make
from kit.units import cm
from tests.example import lesson_notebooks, notebook_names

EDGES = {"top": 10, "seam": 10, "bottom": 10, "far": 10}
Sewing = Callable[..., None]


def sewn(wrap: ModuleType, pieces: tuple[Piece, ...], *steps: Sewing) -> Pattern:
    make = Make(pieces)
    for step in steps:
        step(make, *(PieceHandle(piece) for piece in pieces))
    record = SewRecord("seam", "Seam", "", "", tuple(make.operations))
    return replace(wrap.pattern_of([], pieces=pieces, strips=()), sewing=(record,))


def panels(wrap: ModuleType, drop: float = 0.0, lift: float = 0.0, **changes: Any) -> tuple[Piece, Piece]:
    """Two panels for a seam at x = 100; the left one's lower edge falls away to the far side by -`drop` mm over 100,
    the right one's by `lift`."""
    a = wrap.polygon("left_panel", [(0, 100), (100, 100), (100, 0), (0, drop)], EDGES)
    b = wrap.polygon("right_panel", [(0, 100), (100, 100), (100, 0), (0, lift)], EDGES)
    return replace(a, **changes), b


def plain(make: Any, a: Any, b: Any) -> None:
    make.plain_seam(a.seam, b.seam, allowance=1 * cm)


def only(pattern: Pattern) -> list[Finding]:
    return corners(pattern)


def test_angles_that_add_up_run_on(wrap) -> None:
    """16.7 degrees up on one side and as much down on the other: straight across."""
    assert only(sewn(wrap, panels(wrap), plain)) == []
    assert only(sewn(wrap, panels(wrap, 30, -30), plain)) == []
    assert only(sewn(wrap, panels(wrap, 5, 0), plain)) == []  # 2.9 degrees, within 3


@pytest.mark.parametrize(("drop", "words"), [(-30, "dips in"), (30, "comes to a point")])
def test_a_bend_is_told_with_its_way(wrap, drop, words) -> None:
    (finding,) = only(sewn(wrap, panels(wrap, drop), plain))
    assert "bends by 17 degrees" in finding.what and words in finding.what  # atan(30 / 100) = 16.7
    assert (finding.code, finding.level, finding.step) == ("corner_not_true", "warning", "seam")
    assert (finding.piece, finding.edge) == ("left_panel", "bottom")


@pytest.mark.parametrize("code", ["en", "de", "es", "fr"])
def test_where_it_bends_names_the_piece_once(wrap, code) -> None:
    with speaking(code):
        (finding,) = only(sewn(wrap, panels(wrap, -30), plain))
    title = panels(wrap)[0].title
    assert finding.where.startswith(f"{title}, seam, ") and finding.where.lower().count(title.lower()) == 1


def test_a_declared_corner_is_exempt(wrap) -> None:
    for one, other in (("seam", "bottom"), ("bottom", "seam")):
        pieces = panels(wrap, 30, declared=(Declared(one, other, "V point"),))
        assert only(sewn(wrap, pieces, plain)) == []
    assert len(only(sewn(wrap, panels(wrap, 30, declared=(Declared("top", "seam", "slit"),)), plain))) == 1


def test_a_declared_corner_of_a_step_reaches_the_proof(tmp_path, monkeypatch) -> None:
    """By the bench's own verb: `front.declare(front.side, front.hem, why=...)`."""
    monkeypatch.chdir(tmp_path)

    def worked(why: str) -> Pattern:
        lesson = Lesson("Pointed", start=bodice_block, size="W4")

        @lesson.step("Rule the hems")
        def hems(front, back):
            """Rule the hems."""
            for piece in (front, back):
                piece.draw(hem=piece.waist.parallel(7 * cm, "down"), instead_of=piece.hip)
                piece.join(piece.side, piece.hem)
                piece.join(piece.hem, piece.centre)
                piece.allow(side=1 * cm)
            if why:
                front.declare(front.side, front.hem, why=why)

        @lesson.sew("Sew the sides")
        def sides(make, front, back):
            """Sew."""
            make.plain_seam(front.side, back.side, allowance=1 * cm)

        return lesson.work()

    (finding,) = only(worked(""))
    assert "comes to a point" in finding.what
    assert only(worked("a pointed hem")) == []


def test_a_seam_of_several_edges_is_looked_at_where_it_ends(wrap) -> None:
    edges = {"top": 10, "upper": 10, "lower": 10, "bottom": 10, "far": 10}

    def piece(name: str, drop: float) -> Piece:
        return wrap.polygon(name, [(0, 100), (100, 100), (90, 60), (100, 0), (0, drop)], edges)

    def one_run(make: Any, a: Any, b: Any) -> None:
        make.plain_seam(a.upper + a.lower, b.upper + b.lower, allowance=1 * cm)

    assert only(sewn(wrap, (piece("left_panel", 0), piece("right_panel", 0)), one_run))  # 99.5 + 99.5: not straight
    straight = (piece("left_panel", 0), piece("right_panel", 0))
    both = [k.end for k in kinks(sewn(wrap, straight, one_run))]
    assert both == [False, True]


def test_a_part_ends_within_its_edge_and_says_nothing_there(wrap) -> None:
    def part(make: Any, a: Any, b: Any) -> None:
        make.plain_seam(a.seam.between(0 * cm, 6 * cm), b.seam.between(0 * cm, 6 * cm), allowance=1 * cm)

    def lower(make: Any, a: Any, b: Any) -> None:
        make.plain_seam(a.seam.between(4 * cm, 10 * cm), b.seam.between(4 * cm, 10 * cm), allowance=1 * cm)

    assert only(sewn(wrap, panels(wrap, 30), part)) == []
    assert len(only(sewn(wrap, panels(wrap, 30), lower))) == 1


def test_darts_on_the_seam_and_at_its_corner_are_folded_shut(wrap) -> None:
    """A dart at the very end of the lower edge: folded shut it turns what lies beyond it by twice atan(10 / 60)."""
    a, b = panels(wrap)
    on_seam = Dart("dart", "seam", Point(40, 50), 40.0, 60.0)
    assert only(sewn(wrap, (replace(a, darts=(on_seam,)), b), plain)) == []
    at_corner = Dart("dart", "bottom", Point(90, 60), 0.0, 20.0)
    (kink,) = kinks(sewn(wrap, (replace(a, darts=(at_corner,)), b), plain))
    assert kink.degrees == pytest.approx(-18.92, abs=0.01)  # -2 atan(10 / 60): the line dips in


def test_a_row_of_two_sewn_to_one_is_looked_at_at_its_outer_ends(wrap) -> None:
    """Two yokes joined at a side seam, sewn as one row to a wide lower panel."""
    names = {"top": 10, "side": 10, "low": 10, "free": 10}
    left = wrap.polygon("left_yoke", [(0, 40), (100, 40), (100, 0), (0, 0)], names)
    right = wrap.polygon("right_yoke", [(200, 40), (100, 40), (100, 0), (200, 0)], names)
    lower = {"top": 10, "one": 10, "hem": 10, "other": 10}

    def sew(make: Any, a: Any, b: Any, c: Any) -> None:
        make.plain_seam(a.side, b.side, allowance=1 * cm)
        make.plain_seam([a.low, b.low], c.top, allowance=1 * cm)

    def found(slant: float) -> list[float]:
        panel = wrap.polygon("lower", [(0, 0), (200, 0), (200 + slant, -100), (0, -100)], lower)
        return [round(k.degrees, 1) for k in kinks(sewn(wrap, (left, right, panel), sew))]

    assert found(0) == []
    assert found(30) == [-16.7]  # the panel's corner opens by atan(30 / 100) to 106.7 degrees


def test_a_facing_must_have_the_garments_corners(wrap) -> None:
    garment = wrap.polygon("front", [(0, 100), (100, 100), (100, 0), (0, 0)], EDGES)

    def face(make: Any, a: Any, b: Any) -> None:
        make.attach_facing(b.seam, a.seam, allowance=1 * cm)

    def facing(drop: float) -> Piece:
        return wrap.polygon("front_facing", [(60, 100), (100, 100), (100, 0), (60, drop)], EDGES)

    assert only(sewn(wrap, (garment, facing(0)), face)) == []
    (finding,) = only(sewn(wrap, (garment, facing(-10)), face))
    assert "104" in finding.what and "90" in finding.what  # atan(10 / 40) = 14.0 degrees more than square
    assert "turned onto" in finding.what


# ---- no false findings ------------------------------------------------------------------------------------


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_the_blocks_have_no_untrue_corner(size: str) -> None:
    seams = {
        bodice_block: [("front.shoulder", "back.shoulder"), ("front.side", "back.side")],
        with_sleeve(darted_bodice_block): [
            ("front.shoulder", "back.shoulder"),
            ("front.side", "back.side"),
            ("sleeve.front_underarm", "sleeve.back_underarm"),
        ],
        skirt_block: [("front.side", "back.side")],
    }
    for block, pairs in seams.items():
        pieces = tuple(block(workshop_chart()[size]))
        make = Make(pieces)
        handles = {piece.name: PieceHandle(piece) for piece in pieces}
        for a, b in pairs:
            (p, e), (q, f) = a.split("."), b.split(".")
            make.plain_seam(getattr(handles[p], e), getattr(handles[q], f), allowance=1 * cm)
        record = SewRecord("seam", "Seam", "", "", tuple(make.operations))
        lesson = Lesson("Bare", start=block, size=size)
        pattern = replace(lesson.work(), pieces=pieces, sewing=(record,))
        assert [str(f) for f in corners(pattern)] == []


@pytest.mark.parametrize("size", ["W1", "W4", "W10"])
def test_the_trousers_have_no_untrue_corner(size: str) -> None:
    pieces = tuple(trouser_block(workshop_chart()[size]))
    make = Make(pieces)
    handles = {piece.name: PieceHandle(piece) for piece in pieces}
    shared = {e.name for e in pieces[0].edges} & {e.name for e in pieces[1].edges}
    for name in sorted(shared & {"side", "inseam", "inside_leg", "outseam"}):
        make.plain_seam(*(getattr(handles[p.name], name) for p in pieces[:2]), allowance=1 * cm)
    assert make.operations
    pattern = replace(Lesson("Bare", start=trouser_block, size=size).work(), pieces=pieces)
    record = SewRecord("seam", "Seam", "", "", tuple(make.operations))
    assert [str(f) for f in corners(replace(pattern, sewing=(record,)))] == []


@pytest.mark.parametrize("book", lesson_notebooks(), ids=lambda path: path.stem)
def test_the_example_lessons_have_no_untrue_corner_or_lonely_notch(book: File, tmp_path, monkeypatch) -> None:
    monkeypatch.chdir(tmp_path)
    lessons = [value for value in notebook_names(book).values() if isinstance(value, Lesson)]
    assert lessons
    for lesson in lessons:
        codes = [f.code for f in prove(lesson.work())]
        assert not {"corner_not_true", "notch_unmatched", "seam_length", "opening_moved"} & set(codes)


def test_what_is_turned_lies_on_its_partner(wrap) -> None:
    """A slanting end on both: opened out it would come to a point, turned the one lies on the other."""

    def turned(make: Any, a: Any, b: Any) -> None:
        make.seam_to_turn(a.seam, b.seam, allowance=1 * cm)

    assert only(sewn(wrap, panels(wrap, 30, 30), plain))
    assert only(sewn(wrap, panels(wrap, 30, 30), turned)) == []
    (finding,) = only(sewn(wrap, panels(wrap, 30, 0), turned))
    assert finding.code == "corner_not_true"


def test_where_the_two_halves_of_a_piece_bend_the_other_half_is_named() -> None:
    """A hood's neck edge rises 2 cm on 20 to the centre seam, and so do both halves: 2 atan(1 / 10) = 11.4 degrees."""
    lesson = Lesson("Hood", start=blank_paper)

    @lesson.step("Draw it", makes="hood")
    def draw(hood):
        a, b, c, d = (hood.place(x * cm, y * cm) for x, y in ((0, 0), (20, 2), (20, 30), (0, 30)))
        hood.draw(neck=a.to(b), crown=b.to(c), top=c.to(d), face_edge=d.to(a))
        hood.allow(neck=1 * cm, crown=1 * cm, top=1 * cm, face_edge=1 * cm)
        hood.cut(2, mirrored=True)

    @lesson.sew("Sew the centre")
    def sew(make, hood):
        make.plain_seam(hood.left.crown, hood.right.crown, allowance=1 * cm)

    (finding,) = only(lesson.work())
    assert "the neck edge of the hood meets that of the other half" in finding.what and "11 degrees" in finding.what


def test_a_tube_closed_by_its_own_seam_has_no_other_half() -> None:
    """Its hem leaves the seam at an angle at both ends, so that the ring comes to a point there."""
    lesson = Lesson("Tube", start=blank_paper)

    @lesson.step("Draw it", makes="tube")
    def draw(tube):
        a, b, c, d = (tube.place(x * cm, y * cm) for x, y in ((0, 0), (20, 0), (20, 30), (0, 30)))
        low = tube.place(10 * cm, -3 * cm)
        tube.draw(hem=a.to(low).joined(low.to(b)), near=b.to(c), top=c.to(d), far=d.to(a))
        tube.allow(hem=1 * cm, near=1 * cm, top=1 * cm, far=1 * cm)
        tube.cut(1)

    @lesson.sew("Close it")
    def sew(make, tube):
        make.plain_seam(tube.near, tube.far, allowance=1 * cm)

    found = only(lesson.work())
    assert found and all("other half" not in finding.what for finding in found)
