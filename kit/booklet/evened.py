"""Pages evened out once they are set: one that came out mostly white takes from the page before it.

Steps are shared out over pages before they are set (paging.py). What stands before them (tables, layouts, lists, fit
changes) flows from page to page, and a block that must stay whole leaves white where it does not fit. Such a page gets
the last blocks of the page before it, a whole chapter where that can be, as long as that one stays full enough itself.
Only places where a page may end are taken: before a chapter, and between two blocks that stand on their own.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Any
from xml.etree.ElementTree import Element

from weasyprint.document import Page
from weasyprint.formatting_structure.boxes import Box, ReplacedBox, TextBox

LEAST = 0.45  # share of its depth below which a page is mostly white
_MOST = 0.96  # share that a page may come to hold, by what is reckoned here
_GAP = 0.04  # share that the space between two blocks may take, which is nothing at a page's end
_ALONE = frozenset(("tabled", "fit-change", "gauge", "lists", "lay", "finished", "live-at"))
"""Classes of blocks before which a page may end, if it is not their heading that comes before."""
_ENDING = _ALONE | {"cards"}
"""Classes of blocks after which it may."""


@dataclass(frozen=True)
class _Sheet:
    """A page that is set: how far down it is `filled` (a share of its depth), and the blocks that begin on it before
    which it might end, with the share of the page above each and whether it is a chapter."""

    filled: float
    blocks: tuple[tuple[Element, float, bool], ...]


def wanted_breaks(pages: Sequence[Page], root: Element) -> list[Element]:
    """The elements below `root` that should begin a page so that no page but the last is mostly white, as far as that
    can be had; `pages` are the page as it is set now."""
    alone = _standing_alone(root)
    seen: set[Element] = set()
    sheets = [_sheet(page, alone, seen) for page in pages]
    found: list[Element] = []
    for before, short in pairwise(sheets[:-1]):
        if short.filled >= LEAST:
            continue
        best: tuple[bool, float, Element] | None = None
        for element, above, chapter in before.blocks:
            left, moved = above - _GAP, short.filled + before.filled - above + _GAP
            least = min(left, moved)
            if least >= LEAST and moved <= _MOST and (best is None or (chapter, least) > best[:2]):
                best = chapter, least, element
        if best is not None:
            found.append(best[2])
    return found


def _standing_alone(root: Element) -> dict[Element, bool]:
    """The elements before which a page may end, and whether each is a chapter."""
    found: dict[Element, bool] = {}
    for parent in root.iter():
        last: frozenset[str] = frozenset()
        for child in parent:
            names = _names(child)
            if "part" in names and "steps" not in names:
                found[child] = True
            elif names & _ALONE and last & _ENDING:
                found[child] = False
            last = names
    return found


def _names(element: Element) -> frozenset[str]:
    return frozenset((element.get("class") or "").split())


def _sheet(page: Page, alone: dict[Element, bool], seen: set[Element]) -> _Sheet:
    """One page; `seen` are the elements that began before it, to which its own are added."""
    area: Any = page._page_box
    top, depth = area.content_box_y(), area.height
    filled, blocks = 0.0, []
    for box in _boxes(area):
        element = getattr(box, "element", None)
        if element is not None and element in alone and element not in seen:
            seen.add(element)
            above = (box.border_box_y() - top) / depth
            if above > _GAP:
                blocks.append((element, above, alone[element]))
        if isinstance(box, (TextBox, ReplacedBox)):
            foot = (box.position_y + box.margin_height() - top) / depth
            if foot <= 1.005:  # the page's number stands lower
                filled = max(filled, foot)
    return _Sheet(filled, tuple(blocks))


def _boxes(box: Box) -> Iterator[Box]:
    yield box
    for child in getattr(box, "children", ()):
        yield from _boxes(child)
