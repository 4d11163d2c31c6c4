"""A lesson's grade in a cell: every measure in every size, and where a step stumbles."""

from __future__ import annotations

from html import escape

from kit.errors import KitError
from kit.family.edition import edition_of
from kit.family.grade_told import GradeTold, grade_told, lines
from kit.family.grading import Grading, grade
from kit.language import say
from kit.lesson.lesson import Lesson
from kit.live.fragments import message, notes
from kit.live.shown import ShownAnswer
from kit.live.speech import in_words_of, spoken_by
from kit.prose.readings import ruling_of
from kit.rulers import Ruling, ruled

_CELL = "border-bottom:1px solid #bbb;padding:2px 0 2px 12px;font-weight:400;vertical-align:top"


def grade_table(lesson: Lesson) -> ShownAnswer[Grading]:
    """Every measure of a lesson in every size of its chart, the step from size to size, and a finding where a step is
    unlike its neighbours. Sizes from which other steps are meant are named in `Lesson(..., size_breaks=["W7"])`. A
    size that cannot be drafted is left out and told. `KitError` for a lesson of one size.

    Example::

        grade_table(lesson)
    """
    info = lesson.info
    editions, left = [], []
    with in_words_of(lesson), ruled(Ruling(info.own or info.units)):
        for name in lesson.sizes.names if lesson.measures else ():
            try:
                pattern = lesson.work(body=lesson.sizes[name])
            except KitError as error:
                left.append(say("family.not_drafted", size=name, why=str(error)))
                continue
            with ruled(ruling_of(pattern)):
                editions.append(edition_of(pattern, spoken_by(lesson), lesson.measures))
        found = grade(editions, info.size_breaks, lesson.sizes.names)
        page = grade_told(found, editions[0], lesson.units)
        text = "\n".join((*left, *lines(page)))
        return ShownAnswer(found, text, _html(page, left))


def _html(page: GradeTold, left: list[str]) -> str:
    head = "".join(f'<th scope="col" style="{_CELL};text-align:right">{escape(size)}</th>' for size in page.sizes)
    rows = "".join(
        f'<tr><th scope="row" style="{_CELL};text-align:left;padding-left:0">{escape(name)}</th>'
        + "".join(
            f'<td style="{_CELL};text-align:right">{escape(value)}<br><small>{escape(step)}</small></td>'
            for value, step in cells
        )
        + "</tr>"
        for name, cells in page.rows
    )
    uneven = "".join(message(text) for text in page.uneven) or f"<p>{escape(say('family.grade_even'))}</p>"
    same = notes((say("family.grade_same"), *page.same)) if page.same else ""
    follows = notes((say("family.grade_follows"), *page.follows)) if page.follows else ""
    return (
        f"<h4>{escape(page.title)}</h4>{notes((*left, page.breaks))}<p>{escape(page.unit)}</p>{uneven}"
        f'<div style="overflow-x:auto"><table style="border-collapse:collapse"><tr><td></td>{head}</tr>{rows}</table>'
        f"</div>{same}{follows}"
    )
