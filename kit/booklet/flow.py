"""The order of the lesson: markdown, drafting steps and sewing steps as they follow each other in the
notebook."""

from __future__ import annotations

import re
from dataclasses import dataclass

from markupsafe import Markup
from nbformat import NotebookNode

from kit.booklet.model import Block, BookletPart, Words
from kit.booklet.paging import Placing, spread_over_pages
from kit.booklet.setting import Planned, Setter
from kit.language import say
from kit.lesson.pattern import Pattern, SewRecord, StepRecord

PRIVATE = "notes-to-self"
_HEADING = re.compile(r"\A\s*(#{1,2})\s+(.+?)\s*#*\s*$", re.MULTILINE)


_SPARE = 0.985
"""What is left free at the foot of a page, as heights are reckoned before the page is set."""


@dataclass(frozen=True)
class Flow:
    """A lesson's words and steps in order: `opening` before the first step, `drafting`, `sewing`, `closing`."""

    opening: tuple[Words, ...]
    drafting: BookletPart
    sewing: BookletPart
    closing: BookletPart


@dataclass(frozen=True)
class _Text:
    """One markdown cell: its source and pasted pictures."""

    source: str
    attachments: dict[str, object]


_Item = _Text | StepRecord | SewRecord


def flow(pattern: Pattern, notebook: NotebookNode, setter: Setter) -> Flow:
    """The lesson in notebook order, set by `setter`. Markdown tagged `notes-to-self` is left out; a step whose cell is
    not in the notebook (made in a loop, or imported) keeps its place among the lesson's steps. Steps are numbered
    through drafting and sewing."""
    items = _items(pattern, notebook)
    kinds = [type(item) for item in items]
    first_draft = kinds.index(StepRecord) if StepRecord in kinds else len(items)
    first_sew = kinds.index(SewRecord) if SewRecord in kinds else len(items)
    last = max((i for i, kind in enumerate(kinds) if kind is not _Text), default=-1)
    first = min(first_draft, first_sew)

    heading = _head_of(items, first) if first < len(items) else len(items)
    sewing_at = _head_of(items, first_sew) if first_sew < len(items) else last + 1
    drafting, sewing = items[heading:sewing_at], items[sewing_at : last + 1]
    if first_sew < first_draft:
        drafting, sewing = [], items[heading : last + 1]
    order = _Order(pattern, setter, numbers(pattern, notebook))
    return Flow(
        opening=tuple(Words(html) for html in map(order.html, items[:heading]) if html.strip()),
        drafting=order.part(say("booklet.drafting"), drafting),
        sewing=order.part(say("booklet.sewing"), sewing),
        closing=order.part(say("booklet.to_finish"), items[last + 1 :] if last >= 0 else []),
    )


def numbers(pattern: Pattern, notebook: NotebookNode) -> dict[str, int]:
    """The number of every step and sewing step, by key: as they follow each other in the booklet."""
    records = [item for item in _items(pattern, notebook) if not isinstance(item, _Text)]
    return {record.key: count for count, record in enumerate(records, 1)}


def _items(pattern: Pattern, notebook: NotebookNode) -> list[_Item]:
    """Markdown and records in one list. Records come in the lesson's own order; each pulls in the markdown
    that stands before its cell."""
    cells = notebook.cells
    place = {cell.get("id", ""): index for index, cell in enumerate(cells)}
    records: list[StepRecord | SewRecord] = [*pattern.steps, *pattern.sewing]
    at = {id(record): place.get(record.cell, -1) for record in records}
    _after_what_they_follow(pattern, at)
    if all(where >= 0 for where in at.values()):
        records.sort(key=lambda record: at[id(record)])
    items: list[_Item] = []
    reached = 0

    def markdown_until(end: int) -> None:
        nonlocal reached
        for cell in cells[reached:end]:
            if cell.cell_type == "markdown" and PRIVATE not in cell.metadata.get("tags", []):
                items.append(_Text(cell.source, dict(cell.get("attachments", {}))))
        reached = max(reached, end)

    for record in records:
        markdown_until(at[id(record)])
        items.append(record)
    markdown_until(len(cells))
    return items


def _after_what_they_follow(pattern: Pattern, at: dict[int, int]) -> None:
    """A cell that opens another notebook's lesson brings drafting and sewing steps at once. Its sewing comes after all
    drafting, and none of its steps before those it follows in the lesson."""
    both = {record.cell for record in pattern.steps} & {record.cell for record in pattern.sewing}
    if not both:
        return
    drafted = max(at[id(record)] for record in pattern.steps)
    for records, least in ((pattern.steps, 0), (pattern.sewing, drafted)):
        for record in records:
            least = max(least, at[id(record)])
            at[id(record)] = least


def _head_of(items: list[_Item], index: int) -> int:
    """Where the section that begins with the step at `index` begins: at the nearest heading among the
    markdown right before it, else at the step."""
    at = index
    while at > 0 and isinstance(items[at - 1], _Text):
        at -= 1
    for i in range(index - 1, at - 1, -1):
        item = items[i]
        found = _HEADING.match(item.source) if isinstance(item, _Text) else None
        if found and (len(found[1]) == 2 or i > 0):
            return i
    return index


@dataclass(frozen=True)
class _Order:
    pattern: Pattern
    setter: Setter
    numbers: dict[str, int]

    def html(self, item: _Item) -> Markup:
        """A markdown cell as safe HTML; nothing for a step."""
        if not isinstance(item, _Text):
            return Markup()
        source = item.source
        found = _HEADING.match(source)
        if found and len(found[1]) == 1 and found[2].strip().lower() == self.pattern.lesson.title.lower():
            source = source[found.end() :]
        return self.setter.markdown(source, item.attachments)

    def part(self, title: str, items: list[_Item]) -> BookletPart:
        """A section; a heading that opens it in the notebook becomes its title."""
        if items and isinstance(items[0], _Text):
            found = _HEADING.match(items[0].source)
            if found:
                title = self.setter.title(Markup(to_html_title(found[2])).striptags())
                items = [_Text(items[0].source[found.end() :], items[0].attachments), *items[1:]]
        planned = [plan for plan in map(self._planned, items) if plan is not None]
        units = [unit for plan in planned for unit in plan.units]
        form = self.setter.form
        if form.screen:
            placings = tuple(Placing(1.0, False) for _ in units)
        else:
            depth = form.depth * _SPARE
            placings = spread_over_pages(units, depth, depth - self.setter.part_head(title))
        blocks: list[Block] = []
        at = 0
        for plan in planned:
            blocks.append(plan.block(placings[at : at + len(plan.units)]))
            at += len(plan.units)
        return BookletPart(title, tuple(blocks))

    def _planned(self, item: _Item) -> Planned | None:
        if isinstance(item, StepRecord):
            return self.setter.draft(item, self.numbers[item.key])
        if isinstance(item, SewRecord):
            return self.setter.sew(item, self.numbers[item.key])
        html = self.html(item)
        return self.setter.words(html) if html.strip() else None


def to_html_title(text: str) -> str:
    """A heading's words without its markup characters."""
    return re.sub(r"[*_`]+", "", str(Markup.escape(text)))
