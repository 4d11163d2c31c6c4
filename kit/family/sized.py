"""A notebook's lesson in all its sizes, for the grade."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from kit.booklet.handover import DRAFTED
from kit.booklet.own_language import spoken
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.diagnostic import message, reading
from kit.errors import KitError
from kit.family.edition import Edition, edition_of
from kit.family.grade_told import GradeTold, grade_told
from kit.family.grading import Grading, grade
from kit.language import SOURCE, say, speaking, spoken_for
from kit.prose.readings import ruling_of
from kit.rulers import ruled
from kit.units import System


@dataclass(frozen=True)
class Graded:
    """The grade of a notebook's lesson and how it reads in `language`, lengths in `system`; `edition` is its first
    size, `left_out` says which sizes cannot be drafted, and why."""

    found: Grading
    page: GradeTold
    edition: Edition
    system: System
    language: str
    left_out: tuple[str, ...]


def graded(
    notebook: Path,
    *,
    units: System | None = None,
    language: str = "",
    timeout: int = 120,
    progress: Callable[[str], None] = lambda line: None,
) -> Graded:
    """The lesson of `notebook` worked in every size of its chart that can be drafted. `KitError` for a notebook that
    cannot be run, a language there is not, a lesson of one size."""
    with speaking(language or SOURCE):
        pass  # refuses a language without a catalogue before the notebook runs
    progress(f"Running {notebook.name} from the top")
    ran = run_notebook(
        read_notebook(notebook),
        notebook.resolve().parent,
        name=notebook.name,
        units=units,
        sizes=(DRAFTED,),
        timeout=timeout,
    )
    pattern = ran.handover.pattern
    if not ran.handover.chart:
        raise KitError(message("family.one_size"), where="grade", do=message("family.no_grade_do"))
    own = pattern.lesson.language
    told_in = language or spoken_for(own)
    with speaking(told_in), reading(pattern.lesson.units), ruled(ruling_of(pattern)):
        given = spoken(ran.handover, ran.notebook, notebook, told_in)[0] if language else ran.handover
        used = {name for row in given.chart for name, _ in row.measures}
        editions = [edition_of(each, told_in, used) for each in given.sizes]
        found = grade(editions, pattern.lesson.size_breaks, [row.name for row in given.chart])
        left = tuple(say("family.not_drafted", size=row.name, why=row.trouble) for row in given.chart if row.trouble)
        system = pattern.lesson.units
        return Graded(found, grade_told(found, editions[0], system), editions[0], system, told_in, left)
