"""The sheets of a folded booklet, printed, folded and leafed through in software."""

from __future__ import annotations

import io
import re
import subprocess
from pathlib import Path

import pikepdf
import pytest
from hypothesis import given
from hypothesis import strategies as st
from reportlab.pdfgen.canvas import Canvas

from kit.booklet.impose import MOST_SHEETS, impose, sides
from kit.errors import KitError

# ISO 216: A5 is 148 x 210 mm; half of US Letter is 5.5 x 8.5 in.
SMALL = {"a4": (148 / 25.4 * 72, 210 / 25.4 * 72), "letter": (396.0, 612.0)}
LARGE = {"a4": (297 / 25.4 * 72, 210 / 25.4 * 72), "letter": (792.0, 612.0)}


def booklet(pages: int, paper: str) -> bytes:
    """A booklet whose pages say their number, in the middle."""
    out = io.BytesIO()
    canvas = Canvas(out, pagesize=SMALL[paper])
    canvas.setTitle("Pebble top")
    for number in range(1, pages + 1):
        canvas.drawCentredString(SMALL[paper][0] / 2, 200, f"page-{number}")
        canvas.showPage()
    canvas.save()
    return out.getvalue()


def halves(pdf: bytes, folder: Path) -> list[tuple[str, str]]:
    """The words left and right of the fold on each side, read from where they stand by pdftotext (Poppler)."""
    path = folder / "sheets.pdf"
    path.write_bytes(pdf)
    text = subprocess.run(["pdftotext", "-bbox", str(path), "-"], capture_output=True, text=True, check=True).stdout
    found = []
    for page in re.findall(r'<page width="([\d.]+)"[^>]*>(.*?)</page>', text, re.DOTALL):
        words = re.findall(r'xMin="([\d.]+)"[^>]*xMax="([\d.]+)"[^>]*>([^<]+)</word>', page[1])
        side = {True: "", False: ""}
        for low, high, word in words:
            side[(float(low) + float(high)) / 2 < float(page[0]) / 2] = word
        found.append((side[True], side[False]))
    return found


def leafed(sides_: list[tuple[str, str]]) -> list[str]:
    """What a reader meets leaf by leaf after printing on both sides (flipped on the short edge, so that left and
    right of a sheet lie back to back: the back's left behind the front's right), nesting the sheets and folding."""
    sheets = [(sides_[at], sides_[at + 1]) for at in range(0, len(sides_), 2)]
    first_half = [text for front, back in sheets for text in (front[1], back[0])]
    second_half = [text for front, back in reversed(sheets) for text in (back[1], front[0])]
    return first_half + second_half


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize("pages", [*range(4, 41, 3), 5, 8, 40])
def test_folded_it_reads_in_order(pages: int, paper: str, tmp_path: Path) -> None:
    read = leafed(halves(impose(booklet(pages, paper), paper), tmp_path))
    assert len(read) == -(-pages // 4) * 4
    assert read == [f"page-{n}" for n in range(1, pages + 1)] + [""] * (len(read) - pages)


@given(pages=st.integers(4, 4 * MOST_SHEETS), back_cover=st.booleans())
def test_every_page_once_and_the_covers_outside(pages: int, back_cover: bool) -> None:
    laid = sides(pages, back_cover)
    assert sorted(n for side in laid for n in side if n is not None) == list(range(pages))
    assert len(laid) % 2 == 0 and laid[0][1] == 0
    outside = laid[0][0]
    assert outside == pages - 1 if back_cover or pages % 4 == 0 else outside is None


@given(sheets=st.integers(1, MOST_SHEETS))
def test_facing_pages_of_a_side_add_up(sheets: int) -> None:
    # From folding: the two pages on one side of a sheet add up to the number of pages and one.
    assert all(a + b + 2 == 4 * sheets + 1 for a, b in sides(4 * sheets) if a is not None and b is not None)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_sheet_and_its_printing(paper: str) -> None:
    with pikepdf.open(io.BytesIO(impose(booklet(6, paper), paper))) as pdf:
        assert len(pdf.pages) == 4
        for page in pdf.pages:
            assert [float(v) for v in list(page.mediabox)[2:]] == pytest.approx(LARGE[paper], abs=0.02)
        assert pdf.Root.ViewerPreferences.Duplex == "/DuplexFlipShortEdge"  # ISO 32000-1, table 150
        assert pdf.Root.ViewerPreferences.PrintScaling == "/None"
        assert b" 1 0 0 1 " in b" " + pdf.pages[0].Contents.read_bytes()  # moved, never scaled


def test_what_cannot_be_folded() -> None:
    with pytest.raises(KitError, match="not half of the sheet"):
        impose(booklet(4, "a4"), "letter")
    with pytest.raises(KitError, match="too thick"):
        sides(4 * MOST_SHEETS + 1)
    with pytest.raises(KitError, match="without pages"):
        sides(0)


def test_the_same_booklet_gives_the_same_sheets() -> None:
    small = booklet(6, "a4")
    assert impose(small, "a4") == impose(small, "a4")
