"""The booklet's model: notebook order, words left out, numbers in both systems, tables."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest

from kit.booklet import buying, fitting_notes, measuring, pictures, worksheets
from kit.booklet import compose as composing
from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.handover import Handover
from kit.booklet.html import to_html
from kit.booklet.model import Booklet, DraftStep, SewStep, Words
from kit.booklet.pictures import Picture, picture
from kit.booklet.run_notebook import Ran, read_notebook, run_notebook
from kit.language import say
from kit.picture.drawing import Dot, Drawing, Fill, Stroke
from kit.picture.legend import SIGNS
from kit.picture.scene_signs import CUT
from kit.proof import Finding
from tests.unplaced import texts_unplaced

from .conftest import Writer, lesson_at, markdown

WORDS = {
    "lesson": [markdown("Why *we* like it."), markdown("Buy needles.", "notes-to-self")],
    "armhole": [markdown("Look at the curve of a <b>bare</b> arm & compare.")],
    "allowances": [markdown("Secret remark.", "notes-to-self")],
    "neck": [markdown("Press before you turn.")],
    "end": [markdown("## Wearing it\n\nWash it once.")],
}


@pytest.fixture(scope="module", autouse=True)
def words_asked() -> Iterator[None]:
    """Where the texts of pictures stand plays no part in what a booklet holds."""
    with texts_unplaced():
        yield


@pytest.fixture(scope="module")
def ran(tmp_path_factory: pytest.TempPathFactory) -> Ran:
    path = lesson_at(tmp_path_factory.mktemp("compose"), WORDS)
    return run_notebook(read_notebook(path), path.parent, name=path.name, size="W4")


@pytest.fixture(scope="module")
def book(ran: Ran) -> Booklet:
    return compose(ran.handover, ran.notebook, LessonFolder(ran.folder))


def titles(book: Booklet) -> list[str]:
    found = []
    for part in (book.drafting, book.sewing):
        for block in part.blocks:
            text = re.sub(r"<[^>]+>", "", str(block.html)).strip() if isinstance(block, Words) else block.title
            found.append(text)
    return found


def test_words_and_steps_keep_the_order_of_the_notebook(book: Booklet) -> None:
    assert titles(book) == [
        "Trace the front and the back of your block, with the waistline.",
        "Open the neck and straighten the sides",
        "Rule the hem",
        "True the hem at the side",
        "Look at the curve of a &lt;b&gt;bare&lt;/b&gt; arm &amp; compare.",
        "Redraw the armhole",
        "Add allowances and write on the pieces",
        "Cut the bias strips",
        "Cut the pieces, transfer the notches, and press as you go.",
        "Join the shoulders",
        "Press before you turn.",
        "Face the neck with a bias strip",
        "Join the sides",
        "Face the armholes and hem the top",
    ]
    assert (book.drafting.title, book.sewing.title) == ("Drafting", "Sewing")
    numbers = [block.number for block in book.sewing.blocks if isinstance(block, SewStep)]
    assert numbers == [7, 8, 9, 10]
    assert "Why <em>we</em> like it." in book.opening[-1].html
    assert book.closing.title == "Wearing it"
    assert "Wash it once." in str(book.closing.blocks[0].html)


def test_notes_to_self_stay_out(book: Booklet) -> None:
    html = to_html(book)
    assert "Buy needles" not in html and "Secret remark" not in html
    assert "Wash it once" in html


def test_the_title_is_not_repeated_in_the_opening(book: Booklet) -> None:
    assert all("<h2>Pebble top" not in words.html for words in book.opening)


def test_numbers_come_in_both_systems(ran: Ran, book: Booklet) -> None:
    step = next(block for block in book.drafting.blocks if isinstance(block, DraftStep) and block.key == "hem")
    assert ("Length below waist", "16 cm (6 5/16 in)") in step.numbers
    assert "16 cm" in step.text
    inches = replace(ran.handover.pattern, lesson=replace(ran.handover.pattern.lesson, units="inch"))
    other = compose(Handover(inches, ran.handover.chart), ran.notebook, LessonFolder(ran.folder))
    step = next(block for block in other.drafting.blocks if isinstance(block, DraftStep) and block.key == "hem")
    assert ("Length below waist", "6 5/16 in (16 cm)") in step.numbers


def test_the_readers_size_is_marked(book: Booklet) -> None:
    (sizes,), (finished,) = book.size_tables, book.finished_tables
    assert sizes.head[sizes.marked + 1] == "W4"
    assert finished.head[finished.marked + 1] == "W4"
    assert finished.rows[0][0] == "Chest, all round"
    assert 'class="mine"' in to_html(book)


def test_estimated_measures_are_said(ran: Ran) -> None:
    pattern = ran.handover.pattern
    first, *rest = pattern.body.measures
    body = replace(pattern.body, name="Mara", measures=(replace(first, estimated=True), *rest))
    given = Handover(replace(pattern, body=body), ran.handover.chart)
    book = compose(given, ran.notebook, LessonFolder(ran.folder))
    assert book.body_table is not None
    assert [row[2] for row in book.body_table.rows].count("estimated") == 1
    assert "Measure them before you cut" in book.body_table.note
    assert book.size_tables[0].marked == -1


def test_every_picture_has_alternative_text_and_its_own_ids(book: Booklet) -> None:
    html = to_html(book)
    svgs = re.findall(r"<svg\b.*?</svg>", html, re.DOTALL)
    assert len(svgs) >= 12
    for svg in svgs:
        title = re.search(r"<title[^>]*>(.*?)</title>", svg, re.DOTALL)
        assert title and len(title[1].strip()) > 3
        assert 'role="img"' in svg
    ids = re.findall(r'\bid="([^"]+)"', html)
    assert len(ids) == len(set(ids))
    wanted = re.findall(r"url\(#([^)]+)\)", html) + re.findall(r'href="#([^"]+)"', html)
    assert set(wanted) <= set(ids)


def test_text_of_the_lesson_is_escaped(ran: Ran) -> None:
    evil = '<script>alert("x")</script>'
    pattern = ran.handover.pattern
    lesson = replace(
        pattern.lesson, title=evil, summary=evil, cloth=evil, author=evil, notions=(evil,), cautions=(evil,)
    )
    steps = tuple(replace(step, title=evil, text=f"**bold** and {evil}") for step in pattern.steps)
    sewing = tuple(replace(record, title=evil, text=evil) for record in pattern.sewing)
    values = tuple(replace(value, said=evil, why=evil) for value in pattern.values)
    pieces = tuple(replace(piece, title=evil) for piece in pattern.pieces)
    body = replace(pattern.body, name=evil)
    spoiled = replace(pattern, lesson=lesson, steps=steps, sewing=sewing, values=values, pieces=pieces, body=body)
    finding = Finding(code="x", level="error", says=evil, at=evil, amount=None, can=evil, step="", piece="", edge="")
    html = to_html(compose(Handover(spoiled), ran.notebook, LessonFolder(ran.folder), [finding]))
    assert "<script" not in html
    assert "&lt;script&gt;" in html
    assert "<strong>bold</strong>" in html


def test_a_failed_proof_is_said_on_the_cover(ran: Ran) -> None:
    finding = Finding(
        code="seam-lengths",
        level="error",
        says="the side seams differ by 4 mm.",
        at="Join the sides",
        amount=4.0,
        can="True the side seam.",
        step="sides",
        piece="front",
        edge="side",
    )
    clean = to_html(compose(ran.handover, ran.notebook, LessonFolder(ran.folder)))
    html = to_html(compose(ran.handover, ran.notebook, LessonFolder(ran.folder), [finding]))
    assert "Proof failed" not in clean
    assert "Proof failed" in html and "the side seams differ by 4\u00a0mm." in html
    warned = to_html(compose(ran.handover, ran.notebook, LessonFolder(ran.folder), [replace(finding, level="warning")]))
    assert "Proof failed" not in warned


def test_the_page_stands_alone(book: Booklet) -> None:
    html = to_html(book)
    assert '<html lang="en">' in html
    assert "<title>Pebble top – instruction booklet</title>" in html
    assert not re.search(r'(?:src|href)="(?!#|data:|https://|mailto:)', html)
    assert "<link" not in html and "@import" not in html and "<script" not in html


def test_pictures_left_out_are_listed(write_lesson: Writer, tmp_path: Path) -> None:
    (tmp_path / "outside.png").write_bytes(b"x")
    path = write_lesson({"hem": [markdown("![outside](../outside.png)")]})
    ran = run_notebook(read_notebook(path), path.parent)
    book = compose(ran.handover, ran.notebook, LessonFolder(ran.folder))
    assert any("../outside.png" in line for line in book.left_out)
    assert "picture left out" in to_html(book)


def test_the_legend_has_the_signs_of_this_booklet_and_no_others(ran: Ran, book: Booklet) -> None:
    """Against the pictures as drawn for the screen: what a picture's pen is asked to draw, gathered beside it."""
    asked: dict[str, set[str]] = {}

    def watched(drawing: Drawing, name: str, *rest: Any, **more: Any) -> Picture:
        for item in drawing.items:
            kind = (
                item.role if isinstance(item, Stroke | Fill) else f"point_{item.role}" if isinstance(item, Dot) else ""
            )
            if kind == "sign":
                kind = f"sign_{'tangent' if '.tangent.' in getattr(item, 'name', '') else 'square'}"
            elif getattr(item, "name", "") == CUT:
                kind = "cut_mark"
            elif kind.startswith("ply") and kind != "ply_face":
                kind = "ply"
            asked.setdefault(name.split("-")[0], set()).add(kind)
        return picture(drawing, name, *rest, **more)

    with pytest.MonkeyPatch.context() as patch:
        for module in (composing, pictures, buying, worksheets, measuring, fitting_notes):
            if hasattr(module, "picture"):
                patch.setattr(module, "picture", watched)
        again = compose(ran.handover, ran.notebook, LessonFolder(ran.folder))
    explained = {"legend", "lay", "measuring"}
    used = set().union(*(kinds for name, kinds in asked.items() if name not in explained))
    listed = [each.caption for each in again.legend]
    assert listed == [each.caption for each in book.legend]
    # The first seam is shown cut through too, right sides told, where the cut is marked. The example of cloth cut
    # through with its right side shows cloth cut through as well: one example for both.
    assert {"ply", "ply_face", "cut_mark"} <= asked["sew7"]
    assert listed == [say(f"picture.legend_{sign}") for sign in SIGNS if sign in used - {"ply"}]
    assert "lining" not in listed and "stitching of this step" in listed and "new in this step" in listed
