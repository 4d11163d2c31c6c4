"""Pages laid once more only where they change: for the numbers of other pages, and to even them out (evened.py).

WeasyPrint keeps where each page begins, makes one again where something on it has changed, and goes on from there until
a page begins as it did before. It fills in the number of a page named elsewhere only after the page that names it was
made again, and so makes that page three times; here all are filled in when all pages are there. A page's end that is
wanted elsewhere is put into the boxes that are there, where laying the whole page anew would make them all again.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from copy import deepcopy
from typing import Any
from xml.etree.ElementTree import Element

from weasyprint import __version__, layout

from kit.booklet.evened import ROUNDS, Wanted, short_pages, wanted

_TRIED = ("70.",)
"""The versions of WeasyPrint whose inside this leans on. With another a page is laid whole again."""


def pages_again() -> bool:
    """Have WeasyPrint lay pages so from now on. Whether it does: not where it is a version that this was not tried
    with."""
    if not __version__.startswith(_TRIED):
        return False
    if not isinstance(layout.make_all_pages, _Pages):
        layout.make_all_pages = _Pages(layout.make_all_pages)
    return True


class Evening:
    """What evens out one page that is being laid; `root` is its topmost element. Pages laid again that came out worse
    are put back."""

    def __init__(self, root: Element) -> None:
        self.root = root
        self._was: list[tuple[Any, Any]] = []  # boxes that were changed last, with the style they had
        self._begun: list[int] = []  # numbers of the pages that are laid again first
        self._short = -1
        self._moved: set[Element] = set()  # each element is moved once
        self._rounds = 0
        self._done = False

    def look(self, pages: Sequence[Any], top: Any) -> Sequence[int]:
        """Numbers (from 0) of pages to lay again now, after the boxes below `top` were changed; none where all is as it
        should be."""
        if self._done:
            return ()
        short = short_pages(pages, self.root)
        if self._rounds and short > self._short:
            self._done = True
            for box, style in reversed(self._was):
                box.style = style
            return self._begun
        asked = wanted(pages, self.root, self._moved) if self._rounds < ROUNDS else []
        self._done = not asked
        self._short = short
        self._rounds += 1
        self._was, self._begun = [], []
        first = _first_boxes(top) if asked else {}
        for each in asked:
            for box, name, value in _changes(each, first[each.element]):
                self._was.append((box, box.style))
                box.style = box.style.copy()  # elements that look alike share theirs
                box.style[name] = value
            self._begun.append(each.page)
            self._moved.add(each.element)
        return self._begun


def _first_boxes(top: Any) -> dict[Element, Any]:
    """The outermost box of each element."""
    found: dict[Element, Any] = {}
    for box in _below(top):
        if box.element is not None and "::" not in (box.element_tag or ""):
            found.setdefault(box.element, box)
    return found


def _below(box: Any) -> Iterator[Any]:
    yield box
    for child in getattr(box, "children", ()):
        yield from _below(child)


def _changes(asked: Wanted, box: Any) -> Iterator[tuple[Any, str, str]]:
    """The style that the classes `new-page` and `flows` would give (templates/booklet/print.css.j2)."""
    if asked.name == "new-page":
        yield box, "break_before", "page"
    else:
        yield box, "break_before", "auto"
        for child in box.children:
            if child.element_tag == "p":
                yield child, "break_after", "auto"


class _Pages:
    """Stands for the function of WeasyPrint's that makes all pages, which it calls until none has changed."""

    def __init__(self, slow: Callable[[Any, Any, Any, Any], Iterator[Any]]) -> None:
        self.slow = slow

    def __call__(self, context: Any, top: Any, html: Any, pages: Sequence[Any]) -> list[Any]:
        made = list(self.slow(context, top, html, pages))
        _number(context, len(made))
        evening = getattr(html, "evening", None)
        if evening is not None and not any(state[-1]["content_changed"] for state in context.page_maker):
            for page in evening.look(made, top):
                context.page_maker[page][-1]["content_changed"] = True
        return made


def _number(context: Any, pages: int) -> None:
    """Put the numbers of other pages, as they are now, into the pages that name them; one where they are others than it
    was laid with is made again."""
    states = context.page_maker
    for *_, (_, counters, *_), _ in states:
        counters["pages"] = [pages]
    for (box, token), item in context.target_collector.counter_lookup_items.items():
        at = item.page_maker_index
        if token == "content" and item.missing_target_counters and at is not None and at + 1 < len(states):
            before, here = _text(box), states[at + 1][3][1]
            item.cached_page_counter_values, item.pending = deepcopy(here), False
            item.parse_again(here)
            states[at][-1]["content_changed"] |= _text(box) != before


def _text(top: Any) -> str:
    return "".join(getattr(box, "text", "") for box in _below(top))
