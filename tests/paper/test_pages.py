"""Pattern pages measured in what a printer would get: the PDFs rendered by poppler."""

from __future__ import annotations

import re
import subprocess
from collections.abc import Callable
from io import BytesIO
from pathlib import Path as FilePath

import numpy as np
import pikepdf
import pytest
import shapely

from kit.lesson.pattern import Pattern
from kit.paper.first_page import INCH_SIDE, METRIC_SIDE, square_places
from kit.paper.pages import RING, joints, plan, tile
from kit.paper.papers import A4, LETTER, Paper
from kit.paper.pdf_pen import MM
from kit.paper.plan import all_tiles
from kit.paper.sheet import Sheet, sheet, sheet_content, sheet_pdf
from tests.example import EXAMPLE, notebook_names

Render = Callable[..., list[np.ndarray]]
BOTH = pytest.mark.parametrize("paper", [A4, LETTER], ids=lambda paper: paper.name)


@pytest.fixture(scope="module")
def garment() -> Pattern:
    """The example lesson's own pattern, so that what is measured is what `make demo` prints."""
    pattern: Pattern = notebook_names(EXAMPLE)["lesson"].work(values={})
    return pattern


@pytest.fixture(scope="module")
def laid(garment: Pattern) -> Sheet:
    return sheet(garment)


@pytest.fixture(scope="module")
def content(laid: Sheet, garment: Pattern) -> bytes:
    return sheet_content(laid, garment)


@pytest.fixture(scope="module")
def pages(content: bytes, laid: Sheet, garment: Pattern) -> dict[str, bytes]:
    return {paper.name: tile(content, laid, garment, paper) for paper in (A4, LETTER)}


# ---- scale -------------------------------------------------------------------------------------------------


def lines_across(profile: np.ndarray) -> list[float]:
    """Centres of the dark lines in a profile of darkness, in pixels, by centre of gravity."""
    found = []
    for run in np.split(
        np.flatnonzero(profile > 0.05), np.flatnonzero(np.diff(np.flatnonzero(profile > 0.05)) > 1) + 1
    ):
        if len(run):
            found.append(float(np.average(run + 0.5, weights=profile[run])))
    return found


@BOTH
def test_squares_measure_true(paper: Paper, pages: dict[str, bytes], laid: Sheet, render: Render) -> None:
    # 300 dots per inch of 25.4 mm exactly (1959). The aim is 0.1 mm over a page.
    image = render(pages[paper.name], 300, 1, 1)[0]
    held = plan(laid, paper).paper
    dot = 25.4 / 300
    places = square_places(held.width, held.height, held.margin)
    for (left, bottom), side in zip(places, (METRIC_SIDE, INCH_SIDE), strict=True):
        # A band 2 mm wide between two ticks, 15 mm in from the corner, read just over both sides.
        rows = slice(round((held.height - bottom - 18) / dot), round((held.height - bottom - 16) / dot))
        columns = slice(round((left + 16) / dot), round((left + 18) / dot))
        across = image[rows].mean(axis=0)
        down = image[:, columns].mean(axis=1)
        x0, y0 = (left - 2) / dot, (held.height - bottom - side - 2) / dot
        reach = (side + 4) / dot
        for profile, start in ((across, x0), (down, y0)):
            found = lines_across(profile[int(start) : int(start + reach)])
            assert len(found) == 2
            assert (found[1] - found[0]) * dot == pytest.approx(side, abs=0.1)


@BOTH
def test_pages_are_the_size_of_the_paper(paper: Paper, pages: dict[str, bytes], laid: Sheet) -> None:
    held = plan(laid, paper).paper
    with pikepdf.open(BytesIO(pages[paper.name])) as document:
        for page in document.pages:
            box = [float(value) for value in page.mediabox]
            assert box == pytest.approx([0, 0, held.width * MM, held.height * MM], abs=1e-3)


def test_sheet_page_is_the_sheet_at_full_size(content: bytes, laid: Sheet, garment: Pattern) -> None:
    with pikepdf.open(BytesIO(content)) as document:
        assert [float(v) for v in document.pages[0].mediabox] == pytest.approx(
            [0, 0, laid.width * MM, laid.height * MM], abs=1e-3
        )


# ---- put together again ------------------------------------------------------------------------------------

DPI = 254  # ten dots a millimetre, so that tiles of whole millimetres fall on whole dots


def grown(dark: np.ndarray, by: int) -> np.ndarray:
    out = dark.copy()
    for axis in (0, 1):
        for step in range(1, by + 1):
            for way in (step, -step):
                out |= np.roll(dark, way, axis)
        dark = out.copy()
    return out


@BOTH
def test_pages_cut_and_put_together_equal_the_sheet(
    paper: Paper, pages: dict[str, bytes], content: bytes, laid: Sheet, render: Render
) -> None:
    whole = render(content, DPI)[0]
    planned = plan(laid, paper)
    held = planned.paper
    printed = render(pages[paper.name], DPI, 2)
    assert len(printed) == len(planned.tiles)
    height, width = whole.shape
    pad = 3000
    table = np.zeros((height + pad, width + pad), dtype=np.float32)
    own = np.zeros(table.shape, dtype=bool)  # where a page's own marks may lie

    def box(x0: float, y0: float, x1: float, y1: float) -> tuple[slice, slice]:
        top, bottom = (laid.height - y1) * 10, (laid.height - y0) * 10
        return slice(max(0, round(top)), max(0, round(bottom))), slice(max(0, round(x0 * 10)), max(0, round(x1 * 10)))

    for each, image in zip(planned.tiles, printed, strict=True):
        rows, columns = box(each.left, each.bottom, each.right, each.top)
        trim = round(held.margin * 10)
        table[rows, columns] = image[trim : trim + rows.stop - rows.start, trim : trim + columns.stop - columns.start]
        for x in (each.left, each.right):
            own[box(x - 0.5, each.bottom, x + 0.5, each.top)] = True
        for y in (each.bottom, each.top):
            own[box(each.left, y - 0.5, each.right, y + 0.5)] = True
        own[box(each.left + 2, each.top - 13, each.left + 15, each.top - 4)] = True
    for link in joints(laid, planned):
        for x, y in link.marks:
            reach = RING + 5.5
            own[box(x - reach, y - reach, x + reach, y + reach)] = True
        # scissors beside the trim line of the page that is cut
        cut = link.after
        if link.upright:
            middle = (cut.bottom + cut.top) / 2
            own[box(cut.left - 3, middle - 12, cut.left + 3, middle + 12)] = True
        else:
            middle = (cut.left + cut.right) / 2
            own[box(middle - 12, cut.top - 3, middle + 12, cut.top + 3)] = True

    drawn = np.zeros(table.shape, dtype=bool)
    drawn[:height, :width] = whole > 0.4
    joined = table > 0.4
    assert drawn.sum() > 50_000
    missing = drawn & ~grown(table > 0.15, 1)
    assert missing.sum() == 0
    extra = joined & ~grown(np.pad(whole > 0.15, ((0, pad), (0, pad))), 1) & ~own
    assert extra.sum() == 0


def test_the_comparison_sees_a_page_half_a_millimetre_off(content: bytes, render: Render) -> None:
    whole = render(content, DPI)[0]
    dark = whole > 0.4
    assert (np.roll(dark, 5, axis=1) & ~grown(whole > 0.15, 1)).sum() > 1000


@BOTH
def test_both_pages_of_a_joint_carry_its_marks_at_the_same_place(paper: Paper, laid: Sheet) -> None:
    planned = plan(laid, paper)
    found = joints(laid, planned)
    assert [link.number for link in found] == list(range(1, len(found) + 1))
    for link in found:
        assert len(link.marks) == 2
        for x, y in link.marks:
            assert link.before.left - 1e-9 <= x <= link.before.right + 1e-9
            assert link.before.bottom - 1e-9 <= y <= link.before.top + 1e-9
            assert link.after.left - 1e-9 <= x <= link.after.right + 1e-9
            assert link.after.bottom - 1e-9 <= y <= link.after.top + 1e-9


# ---- the file ----------------------------------------------------------------------------------------------


@BOTH
def test_the_sheet_is_in_the_file_once(paper: Paper, pages: dict[str, bytes]) -> None:
    with pikepdf.open(BytesIO(pages[paper.name])) as document:
        forms = {page.Resources.XObject.Sheet.objgen for page in list(document.pages)[1:]}
        assert len(forms) == 1 and (0, 0) not in forms
        assert "/XObject" not in document.pages[0].Resources or "/Sheet" not in document.pages[0].Resources.XObject


@BOTH
def test_printing_is_asked_to_be_unscaled(paper: Paper, pages: dict[str, bytes], garment: Pattern) -> None:
    # ISO 32000-1:2008, 12.2, table 150: PrintScaling None.
    with pikepdf.open(BytesIO(pages[paper.name])) as document:
        assert document.Root.ViewerPreferences.PrintScaling == "/None"
        assert str(document.Root.Lang) == "en"
        assert garment.lesson.title in str(document.docinfo["/Title"])


def test_files_are_sound(
    pages: dict[str, bytes], content: bytes, laid: Sheet, garment: Pattern, tmp_path: FilePath
) -> None:
    files = {**pages, "content": content, "sheet": sheet_pdf(content, laid, garment)}
    for name, data in files.items():
        path = tmp_path / f"{name}.pdf"
        path.write_bytes(data)
        said = subprocess.run(["qpdf", "--check", str(path)], capture_output=True, text=True)
        assert said.returncode == 0, said.stdout + said.stderr
        fonts = subprocess.run(["pdffonts", str(path)], capture_output=True, text=True, check=True).stdout
        for line in fonts.splitlines()[2:]:
            assert re.search(r"TrueType.*\byes yes (yes|no)", line), f"{name}: not embedded: {line}"


@BOTH
def test_blank_pages_are_left_out(paper: Paper, pages: dict[str, bytes], laid: Sheet, render: Render) -> None:
    planned = plan(laid, paper)
    paperwork = shapely.union_all(laid.ink)
    touched = [
        each
        for each in all_tiles(laid.width, laid.height, planned.paper)
        if paperwork.distance(shapely.box(each.left, each.bottom, each.right, each.top)) < 0.5
    ]
    assert list(planned.tiles) == touched
    with pikepdf.open(BytesIO(pages[paper.name])) as document:
        assert len(document.pages) == len(touched) + 1


def test_the_same_pattern_gives_the_same_bytes(
    pages: dict[str, bytes], content: bytes, laid: Sheet, garment: Pattern
) -> None:
    again = sheet_content(sheet(garment), garment)
    assert again == content
    assert tile(again, laid, garment, A4) == pages["a4"]
    assert sheet_pdf(again, laid, garment) == sheet_pdf(content, laid, garment)


@BOTH
def test_every_page_says_what_and_where_it_is(
    paper: Paper, pages: dict[str, bytes], laid: Sheet, tmp_path: FilePath
) -> None:
    path = tmp_path / "pages.pdf"
    path.write_bytes(pages[paper.name])
    planned = plan(laid, paper)
    total = len(planned.tiles) + 1
    for number, each in enumerate(planned.tiles, 2):
        text = subprocess.run(
            ["pdftotext", "-layout", "-f", str(number), "-l", str(number), str(path), "-"],
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for said in (f"page {number} of {total}", "Tideline wrap top", "size W4", "edition 1", "2026-11", each.name):
            assert said in text
