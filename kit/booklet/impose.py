"""Saddle-stitch imposition: a small booklet laid on larger sheets to be printed on both sides, folded and stapled.

Sheets lie landscape with two pages beside each other on each side. The stack is folded once, in the middle, and
stapled through the fold. With 4n pages, sheet s (counted from 0, outermost first) carries the pages

    front: 4n - 2s | 2s + 1        back: 2s + 2 | 4n - 2s - 1

(common bookbinding practice; it follows from folding). Blank pages make the count a multiple of four; they go before
the last page where that is a back cover, else at the end. Inner leaves of a thick stack stand out at the fore edge
("creep"): paper of 80 g/m2 is about 0.1 mm thick (common practice, no source), so 20 sheets push the innermost leaf
out by 2 mm, less than the outer margin; the pages are therefore not shifted, and more sheets than that are refused.
The result is for printing: links, bookmarks and tags stay with the booklet it was made from.
"""

from __future__ import annotations

import io
from typing import Literal

import pikepdf

from kit.errors import KitError

MOST_SHEETS = 20
Sheet = Literal["a4", "letter"]
# Landscape sheets in points: ISO 216 A4 is 210 x 297 mm, US Letter 8.5 x 11 in.
SHEETS: dict[Sheet, tuple[float, float]] = {"a4": (297 / 25.4 * 72, 210 / 25.4 * 72), "letter": (792.0, 612.0)}
_FITS = 2.0  # points by which half a sheet and a page may differ


def sides(pages: int, back_cover: bool = False) -> tuple[tuple[int | None, int | None], ...]:
    """What stands left and right on each side of the sheets, in printing order (front and back of the outermost
    sheet first), for a booklet of `pages`: indices counted from 0, None for a blank page. With `back_cover` the last
    page stays outermost. Raises `KitError` for no pages or more than `MOST_SHEETS` sheets."""
    if pages < 1:
        raise KitError("a booklet without pages cannot be folded.")
    blanks = -pages % 4
    order: list[int | None] = list(range(pages))
    at = pages - 1 if back_cover else pages
    order[at:at] = [None] * blanks
    sheets = len(order) // 4
    if sheets > MOST_SHEETS:
        raise KitError(
            f"the booklet has {pages} pages: {sheets} sheets are too thick to fold in one stack "
            f"({MOST_SHEETS} at most).",
            do="Leave the folded form out, or have the small booklet bound.",
        )
    found: list[tuple[int | None, int | None]] = []
    for first in range(0, len(order) // 2, 2):
        last = len(order) - 1 - first
        found += [(order[last], order[first]), (order[first + 1], order[last - 1])]
    return tuple(found)


def impose(pdf: bytes, paper: Sheet = "a4", back_cover: bool = False) -> bytes:
    """The booklet `pdf` (pages half as large as the sheet: A5 for "a4", half Letter for "letter") laid on landscape
    sheets, each page at its own scale. Print on both sides, flipped on the short edge. Raises `KitError` when the
    pages are not half a sheet, and as `sides` does."""
    width, height = SHEETS[paper]
    with pikepdf.open(io.BytesIO(pdf)) as source, pikepdf.new() as made:
        for number, page in enumerate(source.pages, start=1):
            left, foot, right, top = (float(value) for value in page.mediabox)
            if abs(right - left - width / 2) > _FITS or abs(top - foot - height) > _FITS:
                raise KitError(
                    f"page {number} is {_mm(right - left)} x {_mm(top - foot)} mm, not half of the sheet "
                    f"({_mm(width / 2)} x {_mm(height)} mm).",
                    where="fold",
                )
        forms = [made.copy_foreign(page.as_form_xobject()) for page in source.pages]
        # A page laid as a picture on another has lost its place in the tree of headings and paragraphs: it says so,
        # rather than point into a tree that is not there. The booklet to read on a screen is the other file.
        for form in forms:
            for key in ("/StructParents", "/StructParent"):
                if key in form:
                    del form[key]
        for left_page, right_page in sides(len(source.pages), back_cover):
            made.add_blank_page(page_size=(width, height))
            sheet = made.pages[-1]
            content, placed = b"", pikepdf.Dictionary()
            for name, index, x in (("/Left", left_page, 0.0), ("/Right", right_page, width / 2)):
                if index is not None:
                    box = [float(value) for value in forms[index].BBox]
                    dx, dy = x + (width / 2 - box[2] + box[0]) / 2 - box[0], (height - box[3] + box[1]) / 2 - box[1]
                    placed[name] = forms[index]
                    content += f"q 1 0 0 1 {dx:.4f} {dy:.4f} cm {name} Do Q\n".encode()
            sheet.Resources = pikepdf.Dictionary(XObject=placed)
            sheet.Contents = made.make_stream(content)
        title = str(source.docinfo.get("/Title", ""))
        with made.open_metadata(set_pikepdf_as_editor=False) as data:
            data["dc:title"] = title
        made.Root.Lang = source.Root.get("/Lang", pikepdf.String("en"))
        made.Root.ViewerPreferences = pikepdf.Dictionary(
            DisplayDocTitle=True, Duplex=pikepdf.Name.DuplexFlipShortEdge, PrintScaling=pikepdf.Name("/None")
        )
        out = io.BytesIO()
        made.save(out, object_stream_mode=pikepdf.ObjectStreamMode.generate, deterministic_id=True)
    return out.getvalue()


def _mm(points: float) -> str:
    return f"{points / 72 * 25.4:.0f}"
