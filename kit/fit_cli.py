"""The command `lessonkit fit`: which size to draw for a body, and what to alter in it."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.trust_cli import say_code


def add_fit(commands: Any, code: str = "") -> None:
    """Add the command to the parser's `commands`; `code` warns that the notebook's code runs."""
    fit = commands.add_parser(
        "fit",
        help="say which size to draw for a body and which fit changes it asks for",
        description="Compare a body with the size chart of a lesson: the size to draw, where to blend, and the fit "
        f"changes with their amounts, with the command that builds them. {code}".strip(),
    )
    fit.add_argument("body", type=Path, metavar="BODY", help="a body file, such as mine.toml")
    fit.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    fit.add_argument("--units", choices=("cm", "inch"), help="units read first (those of the lesson)")
    fit.add_argument("--language", default="", metavar="CODE", help="language it is told in, such as es")
    fit.set_defaults(run=_fit)


def _fit(options: argparse.Namespace) -> int:
    from kit.body.advice import advise
    from kit.body.file import load_body
    from kit.body.proposed import within
    from kit.language import known_language, say, speaking
    from kit.lesson.another import open_lesson

    say_code(options.notebook)
    lesson = open_lesson(options.notebook.resolve())
    body = load_body(options.body, lesson.sizes)
    system = options.units or lesson.units
    with speaking(known_language(options.language or lesson.info.language)):
        advice = advise(body, lesson.sizes, system)
        for sentence in advice.sentences:
            print(sentence)
        lesson.choose(size=advice.size)
        most = {parameter.name: parameter.most for parameter in (*lesson.fit_changes, *lesson.parameters)}
        asked, cut = within(advice.changes, most, system)
        if cut:
            print(cut)
        left = [one.told(system) for one in advice.changes if one.name not in most]
        if left:
            print(say("body.advice_elsewhere", changes="; ".join(left)))
        values = ",".join(f"{one.name}={one.amount / 10:.3g}cm" for one in asked)
        end = f" --values {values}" if values else ""
        print(say("body.advice_build", command=f"lessonkit build {options.notebook} --size {advice.size}{end}"))
    return 0
