"""Darts in the proof: what is folded must close, and seams are measured as sewn."""

from __future__ import annotations

from dataclasses import replace

from kit.blocks import darted_bodice_block
from kit.body import workshop_chart
from kit.geometry import Path, Vector
from kit.lesson.lesson import Lesson
from kit.lesson.moves import move_dart
from kit.piece.piece import Piece
from kit.proof import prove
from kit.proof.darts import darts
from kit.units import cm


def front() -> Piece:
    return darted_bodice_block(workshop_chart()["W4"])[0]


def codes(piece: Piece) -> set[str]:
    return {finding.code for finding in darts((piece,))}


def test_the_block_is_clean_and_faults_are_named() -> None:
    piece = front()
    assert codes(piece) == set()
    bust, waist = piece.darts
    assert codes(replace(piece, darts=(replace(bust, end=bust.end - 6.0), waist))) == {"dart_legs"}
    assert codes(replace(piece, darts=(bust, replace(waist, end=900.0)))) == {"dart_not_closed"}
    outside = replace(waist, apex=waist.apex + Vector(0, 900), short=0.0)
    assert "dart_not_closed" in codes(replace(piece, darts=(bust, outside)))


def test_a_straight_mouth_has_no_cap_and_a_crooked_edge_bends() -> None:
    moved = move_dart(front(), "bust_dart", "armhole", 120.0)
    assert "dart_cap" in codes(moved)
    piece = front()
    edge = piece.edge("waist")
    dart = piece.darts[1]
    leg = edge.path.at(dart.start)
    bump = edge.path.start.mid(leg) + Vector(0, 15)
    slanted = Path.of(
        Path.line(edge.path.start, bump), Path.line(bump, leg), edge.path.between(dart.start, edge.path.length)
    )
    shift = slanted.length - edge.path.length
    crooked = replace(
        piece.with_edges(waist=replace(edge, path=slanted)),
        darts=(piece.darts[0], replace(dart, start=dart.start + shift, end=dart.end + shift)),
    )
    assert "dart_not_true" in codes(crooked)


def test_seams_with_darts_are_measured_as_sewn() -> None:
    lesson = Lesson("Two seams", start=darted_bodice_block, size="W4")

    @lesson.step("Allow")
    def allow(front, back):  # type: ignore[no-untyped-def]
        for piece in (front, back):
            piece.allow(neck=1 * cm, shoulder=1 * cm, armhole=1 * cm, side=1 * cm, waist=1 * cm)

    @lesson.sew("Join")
    def join(make, front, back):  # type: ignore[no-untyped-def]
        make.plain_seam(front.shoulder, back.shoulder, allowance=1 * cm)
        make.plain_seam(front.side, back.side, allowance=1 * cm)

    found = {finding.code for finding in prove(lesson.work())}
    assert not found & {"seam_length", "dart_legs", "dart_cap", "dart_not_true", "cut_line"}
