"""Pages evened out once they are set: one that came out mostly white takes from the page before it.

Steps are shared out over pages before they are set (paging.py). What stands before them (tables, layouts, lists, fit
changes) flows from page to page, and a block that must stay whole leaves white where it does not fit. Such a page gets
the last blocks of the page before it, a whole chapter where that can be, as long as that one stays full enough itself.
A last page may be short, but not a few lines of a list that begins before it.
Only places where a page may end are taken: before a chapter, and between two blocks that stand on their own. Where the
page before has nothing to give, the chapter that comes next begins on the short page, with what of it has room there,
though it would begin a page of its own or keep its first words with what follows. So does a chapter whose first page
has but its first words, where the page before has room for them. What has become of it is looked through once more.
"""

from __future__ import annotations

from collections.abc import Container, Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any
from xml.etree.ElementTree import Element

from weasyprint.formatting_structure.boxes import Box, ReplacedBox, TextBox

LEAST = 0.45  # share of its depth below which a page is mostly white
_SCRAP = 0.25  # share below which the last page is a scrap of what stands on the page before it
_MOST = 0.96  # share that a page may come to hold, by what is reckoned here
_GAP = 0.04  # share that the space between two blocks may take, which is nothing at a page's end
ROUNDS = 2
"""How often pages are looked through: what was moved leaves other pages short, and WeasyPrint lays pages again eight
times at most."""
_OWN_PAGE = ("about", "worksheet")
"""The first chapter, which the cover stands before, and what is taken out and laid beside the paper."""
_ALONE = frozenset(("tabled", "fit-change", "gauge", "lists", "lay", "finished", "live-at"))
"""Classes of blocks before which a page may end, if it is not their heading that comes before."""
_ENDING = _ALONE | {"cards"}
"""Classes of blocks after which it may."""


@dataclass(frozen=True)
class _Sheet:
    """A page that is set: how far down it is `filled` (a share of its depth), the blocks that begin on it before
    which it might end, with the share of the page above each and whether it is a chapter, and the chapter that begins
    at its top."""

    filled: float
    blocks: tuple[tuple[Element, float, bool], ...]
    chapter: Element | None = None


@dataclass(frozen=True)
class Wanted:
    """A change that evens pages out: the `element` gets the class `name`, "new-page" to begin a page, "flows" to begin
    on the page before it; the first page (from 0) that it changes."""

    element: Element
    name: str
    page: int


def wanted(pages: Sequence[Any], root: Element, moved: Container[Element] = ()) -> list[Wanted]:
    """What would have no page mostly white but the last, and that no scrap, as far as that can be had; `pages` are the
    boxes of the pages (WeasyPrint's) as they are set now, `root` is the topmost element. None of the elements `moved`
    before is moved again."""
    sheets = _sheets(pages, root)
    return [each for each in (*_breaks(sheets), *_flows(sheets)) if each.element not in moved]


def _breaks(sheets: Sequence[_Sheet]) -> Iterator[Wanted]:
    for number, (before, short) in enumerate(pairwise(sheets)):
        last = number == len(sheets) - 2
        if short.filled >= (_SCRAP if last else LEAST):
            continue
        best: tuple[bool, float, Element] | None = None
        for element, above, chapter in before.blocks:
            left, moved = above - _GAP, short.filled + before.filled - above + _GAP
            least = left if last else min(left, moved)
            if least >= LEAST and moved <= _MOST and (best is None or (chapter, least) > best[:2]):
                best = chapter, least, element
        if best is not None:
            yield Wanted(best[2], "new-page", number)


def _flows(sheets: Sequence[_Sheet]) -> Iterator[Wanted]:
    for number, (before, after) in enumerate(pairwise(sheets)):
        chapter = after.chapter
        if chapter is None or chapter.get("id") in _OWN_PAGE:
            continue
        # Onto a page that is mostly white, or from one with its first words alone to where these have room.
        alone = after.filled < LEAST and number < len(sheets) - 2
        # Drafting and sewing, whose steps were shared out from the top of a page, go for their first words alone.
        white = before.filled < LEAST and "steps" not in _names(chapter)
        if white or (alone and before.filled + after.filled + 2 * _GAP <= _MOST):
            yield Wanted(chapter, "flows", number)


def short_pages(pages: Sequence[Any], root: Element) -> int:
    """How many pages but the last are mostly white."""
    return sum(each.filled < LEAST for each in _sheets(pages, root)[:-1])


def _sheets(pages: Sequence[Any], root: Element) -> list[_Sheet]:
    alone = _standing_alone(root)
    seen: set[Element] = set()
    return [_sheet(page, alone, seen) for page in pages]


def _standing_alone(root: Element) -> dict[Element, bool]:
    """The elements before which a page may end, and whether each is a chapter."""
    found: dict[Element, bool] = {}
    for parent in root.iter():
        last: frozenset[str] = frozenset()
        for child in parent:
            names = _names(child)
            if "part" in names:
                found[child] = True
            elif names & _ALONE and last & _ENDING:
                found[child] = False
            last = names
    return found


def _names(element: Element) -> frozenset[str]:
    return frozenset((element.get("class") or "").split())


def _sheet(area: Any, alone: dict[Element, bool], seen: set[Element]) -> _Sheet:
    """One page; `seen` are the elements that began before it, to which its own are added."""
    top, depth = area.content_box_y(), area.height
    filled, blocks = 0.0, []
    chapter: Element | None = None
    for box in _boxes(area):
        element = getattr(box, "element", None)
        if element is not None and element in alone and element not in seen:
            seen.add(element)
            above = (box.border_box_y() - top) / depth
            if above > _GAP:
                blocks.append((element, above, alone[element]))
            elif alone[element]:
                chapter = element
        if isinstance(box, (TextBox, ReplacedBox)):
            foot = (box.position_y + box.margin_height() - top) / depth
            if foot <= 1.005:  # the page's number stands lower
                filled = max(filled, foot)
    return _Sheet(filled, tuple(blocks), chapter)


def _boxes(box: Box) -> Iterator[Box]:
    yield box
    for child in getattr(box, "children", ()):
        yield from _boxes(child)
