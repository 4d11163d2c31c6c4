"""What is printed on the pieces can be read back from the pages: edition and date on every one of them.

Outside check: pdftotext (poppler) reads the PDF files; spaces are left out, for turned text is read letter by letter.
"""

from __future__ import annotations

import subprocess
from dataclasses import replace
from pathlib import Path as FilePath

import pytest
import shapely

from kit.blocks import skirt_block
from kit.body import workshop_chart
from kit.geometry import Path, Point
from kit.lesson.pattern import Pattern
from kit.paper.pages import tile
from kit.paper.papers import A4
from kit.paper.sheet import Sheet, sheet, sheet_content
from kit.piece.piece import CutPlan, Edge, Grain, Piece
from tests.example import EXAMPLE, notebook_names


def told(content: bytes, folder: FilePath) -> str:
    """Everything written in a PDF, in the order it is drawn, without spaces: turned text comes letter by letter."""
    (folder / "in.pdf").write_bytes(content)
    read = subprocess.run(["pdftotext", "-raw", folder / "in.pdf", "-"], capture_output=True, check=True, text=True)
    return "".join(read.stdout.split())


def tab() -> Piece:
    corners = [Point(0, 0), Point(30, 0), Point(30, 40), Point(0, 40)]
    names = ("a", "b", "c", "d")
    edges = tuple(
        Edge(n, Path.line(p, q), 10.0) for n, p, q in zip(names, corners, [*corners[1:], corners[0]], strict=True)
    )
    grain = Grain(Point(15, 6), Point(15, 34))
    return Piece("tab", "Tab", edges, number=9, cut=CutPlan(2, mirrored=True), grain=grain)


@pytest.fixture(scope="module")
def pattern() -> Pattern:
    worked = notebook_names(EXAMPLE)["lesson"].work(workshop_chart()["W4"])
    skirt = skirt_block.lesson.work(workshop_chart()["W4"]).pieces
    allowed = tuple(
        replace(
            piece,
            name=f"skirt_{piece.name}",
            number=20 + number,
            edges=tuple(replace(e, allowance=0.0 if e.name == piece.fold else 10.0) for e in piece.edges),
        )
        for number, piece in enumerate(skirt)
    )
    return replace(worked, pieces=(*worked.pieces, *allowed, tab()))


@pytest.fixture(scope="module")
def laid(pattern: Pattern) -> Sheet:
    return sheet(pattern)


def mark_of(pattern: Pattern) -> str:
    return f"edition{pattern.lesson.edition},{pattern.lesson.date}"


def test_every_piece_carries_edition_and_date(pattern: Pattern, laid: Sheet, tmp_path: FilePath) -> None:
    for placement in laid.placements:
        alone = replace(laid, placements=(placement,))
        text = told(sheet_content(alone, pattern), tmp_path)
        size = f"size{pattern.body.name}"
        for wanted in (
            mark_of(pattern),
            size,
            "".join(placement.piece.title.split()),
            f"cut{placement.piece.cut.count}",
        ):
            assert wanted in text, (placement.piece.name, wanted, text)
    assert told(sheet_content(laid, pattern), tmp_path).count(mark_of(pattern)) == len(pattern.pieces)


def test_text_led_outside_has_room_on_the_sheet(pattern: Pattern, laid: Sheet) -> None:
    small = next(p for p in laid.placements if p.piece.name == "tab")
    whole = shapely.box(0.0, 0.0, laid.width, laid.height)
    assert whole.contains(small.written)
    outline = shapely.Polygon([(p.x, p.y) for p in small.outline])
    assert not outline.contains(small.written), "the tab is too small for its text"
    for other in laid.placements:
        if other is not small:
            assert small.written.distance(other.ink) > 5.0, other.piece.name


def test_the_tiled_pages_carry_it_for_each_piece(pattern: Pattern, laid: Sheet, tmp_path: FilePath) -> None:
    pages = told(tile(sheet_content(laid, pattern), laid, pattern, A4), tmp_path)
    assert pages.count(mark_of(pattern)) >= len(pattern.pieces)
