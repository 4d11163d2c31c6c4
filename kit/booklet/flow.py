"""The order of the lesson: markdown, drafting steps and sewing steps as they follow each other in the
notebook."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass

from markupsafe import Markup
from nbformat import NotebookNode

from kit.booklet.fetch import LessonFolder
from kit.booklet.model import Block, DraftStep, Operation, Part, SewStep, Words
from kit.booklet.pictures import picture
from kit.booklet.tables import number, said
from kit.booklet.words import to_html
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.picture.draft import step_drawing
from kit.picture.drawing import Drawing
from kit.picture.sewing import scene_drawing
from kit.picture.svg_pen import bounds_of
from kit.placeholder import names
from kit.prose import about_minutes, fill_words, scene_alt, sentences, step_alt, whys
from kit.sewing.operation import Operation as SewingOperation

PRIVATE = "notes-to-self"
_HEADING = re.compile(r"\A\s*(#{1,2})\s+(.+?)\s*#*\s*$", re.MULTILINE)

# Picture sizes in CSS px (1/96 in): beside the text, across the page under it, one of several in a row under it.
_BESIDE = (360.0, 305.0)
_ACROSS = (608.0, 320.0)
_FULL = (608.0, 560.0)
_STAGE = (290.0, 270.0)


@dataclass(frozen=True)
class Flow:
    """A lesson's words and steps in order: `opening` before the first step, `drafting`, `sewing`, `closing`."""

    opening: tuple[Words, ...]
    drafting: Part
    sewing: Part
    closing: Part


@dataclass(frozen=True)
class _Text:
    """One markdown cell: its source and pasted pictures."""

    source: str
    attachments: dict[str, object]


_Item = _Text | StepRecord | SewRecord


def flow(pattern: Pattern, notebook: NotebookNode, folder: LessonFolder) -> Flow:
    """The lesson in notebook order. Markdown tagged `notes-to-self` is left out; a step whose cell is not in
    the notebook (made in a loop, or imported) keeps its place among the lesson's steps. Pictures refused in
    markdown are added to `folder.left_out`."""
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

    def words(texts: Iterable[_Item]) -> tuple[Words, ...]:
        made = [_words(text, pattern, folder) for text in texts if isinstance(text, _Text)]
        return tuple(block for block in made if block.html.strip())

    write = _writer(pattern, folder)
    return Flow(
        opening=words(items[:heading]),
        drafting=_part("Drafting", drafting, write),
        sewing=_part("Sewing", sewing, write),
        closing=_part("To finish", items[last + 1 :] if last >= 0 else [], write),
    )


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


def _part(title: str, items: list[_Item], write: Callable[[_Item], Block | None]) -> Part:
    """A section; a heading that opens it in the notebook becomes its title."""
    if items and isinstance(items[0], _Text):
        found = _HEADING.match(items[0].source)
        if found:
            title = Markup(to_html_title(found[2])).striptags()
            items = [_Text(items[0].source[found.end() :], items[0].attachments), *items[1:]]
    blocks = [write(item) for item in items]
    return Part(title, tuple(block for block in blocks if block is not None))


def to_html_title(text: str) -> str:
    """A heading's words without its markup characters."""
    return re.sub(r"[*_`]+", "", str(Markup.escape(text)))


def _words(text: _Text, pattern: Pattern, folder: LessonFolder) -> Words:
    source = text.source
    found = _HEADING.match(source)
    if found and len(found[1]) == 1 and found[2].strip().lower() == pattern.lesson.title.lower():
        source = source[found.end() :]
    return Words(to_html(source, folder, attachments=text.attachments, level=1))


def _writer(pattern: Pattern, folder: LessonFolder) -> Callable[[_Item], Block | None]:
    system = pattern.lesson.units
    counts = {"draft": 0, "sew": 0}

    def write(item: _Item) -> Block | None:
        if isinstance(item, _Text):
            words = _words(item, pattern, folder)
            return words if words.html.strip() else None
        if isinstance(item, StepRecord):
            counts["draft"] += 1
            return draft_step(item, counts["draft"], pattern, folder)
        counts["sew"] += 1
        return sew_step(item, counts["sew"], pattern, folder)

    def draft_step(record: StepRecord, count: int, pattern: Pattern, folder: LessonFolder) -> DraftStep:
        drawing = step_drawing(record, system)
        many = len(record.allowed) > 2
        across = many or _is_wide(drawing)
        room = _FULL if many else _ACROSS if across else _BESIDE
        return DraftStep(
            count,
            record.key,
            record.title,
            to_html(fill_words(record.text, record.values, system), folder),
            _numbers(record, pattern),
            picture(drawing, f"draft{count}", *room, alt=step_alt(record, system)),
            across,
        )

    def sew_step(record: SewRecord, count: int, pattern: Pattern, folder: LessonFolder) -> SewStep:
        operations = tuple(
            _operation(operation, f"sew{count}-{i}", pattern) for i, operation in enumerate(record.operations)
        )
        text = to_html(fill_words(record.text, record.values, system), folder) if record.text else Markup()
        minutes = sum(operation.minutes(pattern) for operation in record.operations)
        time = about_minutes(minutes) if minutes else ""
        return SewStep(count, record.key, record.title, text, operations, time, record.words)

    return write


def _operation(operation: SewingOperation, name: str, pattern: Pattern) -> Operation:
    system = pattern.lesson.units
    stages = [scene for scene in operation.scenes(pattern) if scene.layers or scene.strip]
    size = _BESIDE if len(stages) == 1 else _STAGE
    pictures = []
    for i, scene in enumerate(stages):
        drawing = scene_drawing(scene, pattern, system, fit=size)
        caption = f"{i + 1} of {len(stages)}" if len(stages) > 1 else ""
        pictures.append(picture(drawing, f"{name}-{i}", *size, caption, scene_alt(pattern, scene, system)))
    why = " ".join(whys(pattern, operation, system)) if pattern.lesson.whys else ""
    return Operation(" ".join(sentences(pattern, operation, system)), tuple(pictures), why)


def _is_wide(drawing: Drawing) -> bool:
    left, bottom, right, top = bounds_of(drawing)
    return right - left > 1.75 * (top - bottom)


def _numbers(record: StepRecord, pattern: Pattern) -> tuple[tuple[str, str], ...]:
    """The measures a step uses or its text names, each once, as the text and the picture show them. Others
    that only the picture dimensions (every allowance, say) stay there."""
    system = pattern.lesson.units
    wanted = {*names(record.text), *record.uses}
    labels = {spot.name: spot.label for spot in record.spots if spot.label}
    labels |= {value.name: value.label for value in pattern.values}
    guessed = {measure.name for measure in pattern.body.estimated}
    return tuple(
        (said(labels.get(name, name)), number(value, kind, system) + (", estimated" if name in guessed else ""))
        for name, value, kind in dict((entry[0], entry) for entry in record.values).values()
        if name in wanted
    )
