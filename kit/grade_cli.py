"""The command `lessonkit grade`: every measure from size to size, and where a step stumbles."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.compare_cli import add_told
from kit.trust_cli import say_code


def add_grade(commands: Any, code: str = "") -> None:
    """Add the command to the parser's `commands`; `code` warns that the notebook's code runs."""
    command = commands.add_parser(
        "grade",
        help="measures and steps in every size, and where a step stumbles",
        description="Work a lesson in every size of its chart: each measure, the step from size to size, and a finding "
        f"where a step is unlike its neighbours or something does not stay the same that should. {code}".strip(),
    )
    command.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    add_told(command, "grade.pdf, grade.csv (for a spreadsheet) and grade.json")
    command.set_defaults(run=_grade)


def _grade(options: argparse.Namespace) -> int:
    """0, or 1 where a step stumbles that follows from nothing else."""
    from kit.atomic import write_atomically
    from kit.family.files import grade_files
    from kit.family.grade_told import lines
    from kit.family.sized import graded
    from kit.language import speaking

    say_code(options.notebook)
    answer = graded(
        options.notebook,
        units=options.units,
        language=options.language,
        timeout=max(1, options.timeout),
        progress=lambda line: print(line, flush=True),
    )
    with speaking(answer.language):
        for line in (*answer.left_out, *lines(answer.page)):
            print(line)
        if options.out is not None:
            for name, data in grade_files(answer.found, answer.page, answer.edition, answer.system).items():
                print(write_atomically(options.out / name, data))
    return 1 if any(each.why in ("off", "jump", "turn") for each in answer.found.slips) else 0
