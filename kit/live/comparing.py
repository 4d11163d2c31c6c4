"""Two drafts of a lesson laid over each other in a cell: two sizes, other values, two lessons, an edition of before."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from html import escape
from pathlib import Path

from kit.diagnostic import message
from kit.errors import KitError
from kit.family.compared import Comparison, compared
from kit.family.edition import Edition, edition_of, read_edition
from kit.family.telling import PieceTold, Rows, StepTold, called, lines, told
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.lesson.parameter import Setting, given_values
from kit.lesson.pattern import Pattern
from kit.live.fragments import STEP_WIDTH, picture
from kit.live.shown import ShownAnswer
from kit.live.speech import in_words_of, spoken_by
from kit.prose.readings import ruling_of
from kit.rulers import Ruling, ruled
from kit.units import System

_CELL = "border-bottom:1px solid #bbb;padding:2px 14px 2px 0;text-align:left;font-weight:400"


def compare(
    first: Lesson | str | Path,
    second: Lesson | str | Path | None = None,
    /,
    *,
    sizes: Sequence[str] = (),
    at: str = "",
    **values: Setting,
) -> ShownAnswer[Comparison]:
    """What differs between two sizes of a lesson, between the lesson as it stands and other values, or between two
    lessons or editions; each piece of both laid over each other, what moved dimensioned.

    `first` and `second` are lessons, or the file pattern.json of an earlier build, or its folder. `at` lays the pieces
    on each other at a point, "neck_point", or an end of an edge, "side.start"; as drafted when left out. `KitError`
    where it is not said what is compared, for a size, value or place that is not there, and for a damaged file.

    Example::

        compare(lesson, sizes=("W3", "W5"))
        compare(lesson, sleeve_length=45 * cm)
        compare("editions/1", lesson)
    """
    lesson = next((each for each in (first, second) if isinstance(each, Lesson)), None)
    if lesson is None:
        raise KitError(message("family.no_lesson"), where="compare", do=message("family.no_lesson_do"))
    with _told_by(lesson) as system:
        before, after, names = _sides(first, second, tuple(sizes), values)
        found = compared(before, after, at, system)
        if not all(names):
            names = called(before, after)
        errata = not isinstance(first, Lesson) and before.edition != after.edition
        page = told(found, names, system, errata=errata)
        tables = "".join(
            (
                _table(page.measures) if page.measures else "",
                _both(page.notions) if page.notions else "",
                *(_piece(piece) for piece in page.pieces),
                *(f"<h5>{escape(step.title)}</h5>{_both(step)}" for step in (*page.drafting, *page.sewing)),
            )
        )
        lead = f"<p>{escape(page.lead)}</p>" if page.lead else ""
        html = f'<div style="max-width:{STEP_WIDTH:.0f}px"><h4>{escape(page.title)}</h4>{lead}{tables}</div>'
        return ShownAnswer(found, "\n".join(lines(page)), html)


@contextmanager
def _told_by(lesson: Lesson) -> Iterator[System]:
    info = lesson.info
    with in_words_of(lesson), ruled(Ruling(info.own or info.units)):
        yield lesson.units


def _sides(
    first: Lesson | str | Path,
    second: Lesson | str | Path | None,
    sizes: tuple[str, ...],
    values: Mapping[str, Setting],
) -> tuple[Edition, Edition, tuple[str, str]]:
    """Both editions and what they are called (empty: by their titles or editions)."""
    if second is not None:
        if sizes or values:
            raise KitError(message("family.two_given"), where="compare", do=message("family.two_given_do"))
        one, two = (_edition(side) for side in (first, second))
        return one, two, ("", "")
    assert isinstance(first, Lesson)
    if sizes:
        if len(sizes) != 2 or values:
            count = len(sizes)
            raise KitError(
                message("family.two_sizes", count=count), where="compare", do='compare(lesson, sizes=("W3", "W5"))'
            )
        patterns = [first.work(body=first.sizes[size]) for size in sizes]
        names = [pattern.body.said for pattern in patterns]
    elif values:
        given = given_values(first.parameters, values)
        patterns = [first.work(), first.work(values={**first.values, **given})]
        moved = (parameter for parameter in first.parameters if parameter.name in given)
        said = ", ".join(f"{each.label} {each.show(given[each.name], first.units)}" for each in moved)
        names = [say("family.as_it_stands"), say("family.with", values=said)]
    else:
        raise KitError(message("family.no_other"), where="compare", do=message("family.no_other_do"))
    one, two = (_of(pattern, first) for pattern in patterns)
    return one, two, (names[0], names[1])


def _edition(side: Lesson | str | Path) -> Edition:
    return _of(side.work(), side) if isinstance(side, Lesson) else read_edition(Path(side))


def _of(pattern: Pattern, lesson: Lesson) -> Edition:
    with ruled(ruling_of(pattern)):
        return edition_of(pattern, spoken_by(lesson), lesson.measures)


# ---- as HTML -----------------------------------------------------------------------------------------------


def _table(table: Rows) -> str:
    head = "".join(f'<th scope="col" style="{_CELL};opacity:.75">{escape(text)}</th>' for text in table.head)
    rows = "".join(
        "<tr>" + "".join(f'<td style="{_CELL}">{escape(text)}</td>' for text in row) + "</tr>" for row in table.rows
    )
    return f'<div style="overflow-x:auto"><table style="border-collapse:collapse"><tr>{head}</tr>{rows}</table></div>'


def _piece(piece: PieceTold) -> str:
    shown = picture(piece.drawing, STEP_WIDTH) if piece.drawing else ""
    words = "".join(f"<p>{escape(text)}</p>" for text in piece.words)
    return f"<h5>{escape(piece.title)}</h5>{shown}{words}{_table(piece.rows) if piece.rows else ''}"


def _both(step: StepTold) -> str:
    parts = ((say("family.was"), step.was), (say("family.now"), step.now))
    return "".join(f"<p><em>{escape(head)}</em> {escape(' '.join(words))}</p>" for head, words in parts if words)
