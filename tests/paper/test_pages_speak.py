"""Every text on pattern pages, sheets, the projector's sheet and in the SVG file comes from the catalogue, but for the
lesson's own words, numbers and units; the document says its language; fractions are set as real ones."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET
from collections.abc import Callable, Iterator
from dataclasses import replace
from io import BytesIO
from pathlib import Path as FilePath
from typing import Any

import matplotlib
import pikepdf
import pytest
import shapely
from fontTools.ttLib import TTFont
from reportlab.pdfgen.canvas import Canvas

from kit.body import workshop_chart
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.paper.export import write_pages
from kit.paper.first_page import plan_note
from kit.paper.nested import lay_nest, nest
from kit.paper.nested_pages import nested_pages
from kit.paper.papers import A0, A4, PAPERS, paper
from kit.paper.pdf_pen import fonts, text_width, wrap
from kit.paper.plan import plan_pages
from kit.paper.printing import print_files
from kit.paper.projector import projector_pdf, projector_sheet
from kit.paper.range_files import RangeRequest, range_files
from kit.paper.request import PageRequest
from kit.paper.svg_file import svg_text
from tests.lesson_words import example_lessons, filled, own_words, strangers
from tests.pseudo import CODE, OPEN, escaped, pseudo

PAGES = r"[0-9]+[A-Z]+"
COLUMNS = {*"ABCDEFGHIJKL", "150 x 200 mm"}
SLASH = "\N{FRACTION SLASH}"
Written = Callable[[], list[str]]


@pytest.fixture(scope="module")
def lessons() -> dict[str, Lesson]:
    return example_lessons()


@pytest.fixture
def written(monkeypatch: pytest.MonkeyPatch) -> Written:
    """What reportlab was given to write since it was last asked, in order."""
    said: list[str] = []
    draw = Canvas.drawString

    def drawn(canvas: Any, x: float, y: float, text: str, *rest: Any, **more: Any) -> None:
        said.append(text)
        draw(canvas, x, y, text, *rest, **more)

    def taken() -> list[str]:
        found = list(said)
        said.clear()
        return found

    monkeypatch.setattr(Canvas, "drawString", drawn)
    return taken


def strays(texts: list[str], allowed: set[str]) -> list[str]:
    """Words from elsewhere; names of pages and columns are letters. What was broken into lines is read as one."""
    plain = [text for text in texts if not re.fullmatch(PAGES, text)]
    outside = [word for text in plain for word in escaped(text, allowed)]
    return outside and escaped(" ".join(plain), allowed)


def of_document(pdf: bytes) -> tuple[str, list[str]]:
    """A PDF's language, and its title with the names of its layers."""
    with pikepdf.open(BytesIO(pdf)) as document:
        names = [str(document.docinfo["/Title"])]
        properties = document.Root.get("/OCProperties")
        if properties is not None:
            names += [str(group.Name) for group in properties.OCGs] + [str(properties.D.Name)]
        return str(document.Root.Lang), names


def sizes(lesson: Lesson, *names: str) -> list[Pattern]:
    return [lesson.work(workshop_chart()[name]) for name in names]


REQUESTS = {
    "a4": PageRequest((A4,)),
    "small paper, butt": PageRequest((paper("150x200mm"),), joining="butt"),
    "common, corrected": PageRequest((paper("a4-or-letter"),), printer_scale=(0.97, 0.985)),
    "tabloid sideways, half": PageRequest((paper("tabloid"),), orientation="sideways", class_scale=0.5),
    "a0, quarter": PageRequest((A0,), class_scale=0.25),
    "roll, whole": PageRequest((paper("roll-36in"),), printer_scale=(0.98, 0.98), whole=True),
}


@pytest.mark.parametrize("case", REQUESTS)
def test_no_word_on_printed_pages_escapes_the_catalogue(
    case: str, lessons: dict[str, Lesson], written: Written
) -> None:
    with pseudo(), filled() as values:
        (pattern,) = sizes(lessons["tideline_wrap_top"], "W4")
        told: list[str] = []
        made = print_files(pattern, REQUESTS[case], told.append)
        allowed = own_words(pattern) | {pattern.lesson.edition}
        texts = written()
        assert strays(texts, allowed) == [] and sum(OPEN in text for text in texts) > 20
        assert strays(told, set()) == []
        for pdf in made.values():
            language, names = of_document(pdf)
            assert language == CODE and strays(names, allowed) == []
    assert strangers({value for value in values if not re.fullmatch(PAGES, value)}, allowed | COLUMNS) == []


@pytest.mark.parametrize("name", ["dune_skirt", "ferry_tote"])
def test_no_word_of_the_files_of_a_build_escapes(
    name: str, lessons: dict[str, Lesson], written: Written, tmp_path: FilePath
) -> None:
    with pseudo():
        (pattern,) = sizes(lessons[name], "W4")
        told: list[str] = []
        allowed = own_words(pattern)
        made = write_pages(pattern, tmp_path, told.append)
        assert strays(written(), allowed) == [] and strays(told, set()) == []
        for path in made.values():
            if path.suffix == ".pdf":
                assert of_document(path.read_bytes())[0] == CODE


def test_no_word_of_nested_pages_escapes(lessons: dict[str, Lesson], written: Written) -> None:
    with pseudo(), filled() as values:
        patterns = sizes(lessons["tideline_wrap_top"], "W3", "W4", "W5", "W8")
        allowed = own_words(*patterns)
        made = nest(patterns, workshop_chart().sizes)
        for held in (A4, paper("letter")):
            pdf = nested_pages(made, lay_nest(made, (held,)), held)
            texts = written()
            assert strays(texts, allowed) == [] and sum(OPEN in text for text in texts) > 20
            language, names = of_document(pdf)
            assert language == CODE and strays(names, allowed) == []
            assert any(say("paper.layer_stitch", size="W8") == name for name in names)
    assert strangers({value for value in values if not re.fullmatch(PAGES, value)}, allowed | COLUMNS) == []


def test_no_word_of_the_projectors_sheet_escapes(lessons: dict[str, Lesson], written: Written) -> None:
    with pseudo():
        (pattern,) = sizes(lessons["harbour_jacket"], "W4")
        pdf = projector_pdf(projector_sheet(pattern), pattern)
        texts = written()
        assert strays(texts, own_words(pattern)) == [] and sum(OPEN in text for text in texts) > 10
        language, names = of_document(pdf)
        assert language == CODE and strays(names, own_words(pattern)) == []


def svg_words(text: str) -> Iterator[str]:
    for element in ET.fromstring(text).iter():
        if element.tag.rpartition("}")[2] in ("text", "title", "desc"):
            yield element.text or ""
        yield element.get("aria-label", "")


def test_no_word_of_the_drawing_file_escapes_and_its_ids_stay(lessons: dict[str, Lesson]) -> None:
    patterns = sizes(lessons["tideline_wrap_top"], "W3", "W4", "W8")
    made = nest(patterns, workshop_chart().sizes)
    plain = svg_text(made, lay_nest(made, (A0,)))
    with pseudo():
        made = nest(patterns, workshop_chart().sizes)
        said = svg_text(made, lay_nest(made, (A0,)))
        texts = list(svg_words(said))
        assert strays(texts, own_words(*patterns)) == [] and sum(OPEN in text for text in texts) > 20
    assert set(re.findall(r'id="([^"]+)"', said)) >= {
        name for name in re.findall(r'id="([^"]+)"', plain) if "names" not in name and "text" not in name
    }


def test_what_is_told_while_files_are_made_speaks(lessons: dict[str, Lesson]) -> None:
    with pseudo():
        patterns = sizes(lessons["dune_skirt"], "W4", "W5")
        told: list[str] = []
        asked = RangeRequest(PageRequest((A4,)), nested=True, each=True, projector=True)
        range_files(patterns, workshop_chart().sizes, asked, told.append)
        assert len(told) >= 5 and strays(told, set()) == []


def test_papers_are_called_in_the_spoken_language() -> None:
    with pseudo():
        assert all(each.said.startswith(OPEN) for each in PAPERS.values())
    assert [each.said for each in PAPERS.values()] == [each.title for each in PAPERS.values()]
    assert paper("300x500mm").said == "300 x 500 mm"


@pytest.mark.parametrize(
    ("wide", "lefts", "said"),
    [
        (190, (0,), "1 page, 1 row by 1 column"),
        (370, (0, 300), "2 pages, 1 row by 2 columns, none to be joined"),
        (550, (0, 500), "2 pages, 1 row by 3 columns, none to be joined; 1 blank page is left out"),
        (910, (0, 170, 850), "3 pages, 1 row by 5 columns, in 2 patches; 2 blank pages are left out"),
    ],
)
def test_the_plan_is_told_in_whole_sentences(wide: float, lefts: tuple[float, ...], said: str) -> None:
    pages = plan_pages([shapely.box(left, 50, left + 40, 200) for left in lefts], wide, 277, A4, (A4,))
    assert plan_note(pages) == said
    with pseudo():
        assert escaped(plan_note(pages)) == []


# ---- fractions --------------------------------------------------------------------------------------------


def test_fractions_on_pages_are_real_and_the_font_has_them(lessons: dict[str, Lesson], written: Written) -> None:
    """Outside check: the character map of the embedded font, read by fontTools."""
    (pattern,) = sizes(lessons["tideline_wrap_top"], "W4")
    inches = replace(pattern, lesson=replace(pattern.lesson, units="inch"))
    pdf = print_files(inches, PageRequest((A4,)))["pages-a4.pdf"]
    said = "".join(written())
    assert not re.search(r"\d/\d", said) and re.search("[½¼¾⅛⅜⅝⅞]", said)
    assert pdf.startswith(b"%PDF")
    folder = FilePath(matplotlib.get_data_path()) / "fonts" / "ttf"
    needed = "½¼¾⅛⅜⅝⅞⁰¹²³⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉" + SLASH
    for face in fonts():
        known = TTFont(folder / f"{face}.ttf").getBestCmap()
        assert all(ord(sign) in known for sign in needed)


def test_room_and_lines_are_those_of_the_set_text() -> None:
    assert text_width("1 3/16 in", 2.2) == text_width(f"1³{SLASH}₁₆ in", 2.2)
    assert text_width("1 1/2 in", 2.2) < text_width("1 1.2 in", 2.2)
    assert wrap("half an inch is 1/2 in", 2.2, 200.0) == ["half an inch is ½ in"]
