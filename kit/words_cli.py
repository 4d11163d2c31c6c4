"""The command `lessonkit words`: the file in which a lesson's own words are translated."""

from __future__ import annotations

import argparse
from functools import partial
from pathlib import Path
from typing import Any

from kit.errors import KitError
from kit.trust_cli import say_code


def add_words(commands: Any, code: str = "") -> None:
    """Add the command to the parser's `commands`; `code` warns that the notebook's code runs."""
    words = commands.add_parser(
        "words",
        help="write or update the file for translating a lesson's own words",
        description=f"Collect a lesson's own words in a gettext PO file beside the notebook. {code}".strip(),
    )
    words.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    words.add_argument("--language", required=True, metavar="CODE", help="the language to translate into, such as es")
    words.add_argument("--timeout", type=int, default=120, metavar="S", help="seconds one cell may take (120)")
    words.add_argument(
        "--draft",
        action="store_true",
        help="fill the gaps with the kit's own words where only one translation is possible",
    )
    words.set_defaults(run=_words)


def _words(options: argparse.Namespace) -> int:
    from kit.booklet.own_language import markdown_cells
    from kit.booklet.run_notebook import read_notebook, run_notebook
    from kit.language import SOURCE, languages
    from kit.lesson.drafted_words import drafted
    from kit.lesson.own_words import own_texts
    from kit.lesson.word_file import path_of, read_words, write_words

    path = path_of(options.notebook, options.language)
    read_words(path, options.language)  # a broken file is told before the notebook runs
    book = read_notebook(options.notebook)
    say_code(options.notebook)
    ran = run_notebook(
        book, options.notebook.resolve().parent, name=options.notebook.name, timeout=max(1, options.timeout)
    )
    lesson = ran.handover.pattern.lesson
    if lesson.language.lower() == options.language.lower():
        raise KitError(
            f"the lesson is written in that language ({lesson.language}).",
            where=options.notebook.name,
            do='Choose another one, or say what it is written in: Lesson(..., language="...").',
        )
    texts = own_texts(ran.handover, markdown_cells(ran.notebook))
    draft = None
    if options.draft and lesson.language == SOURCE:
        draft = partial(drafted, language=options.language)
    counted = write_words(path, texts, lesson.title, options.language, draft)
    print(path)
    looked = f", {counted.fuzzy} more to be looked at again (marked fuzzy)" if counted.fuzzy else ""
    if options.draft:
        print(f"{counted.drafted} texts were filled in from the kit's own words; read them.")
    print(f"{counted.done} of {counted.total} texts are translated{looked}.")
    if options.language not in languages():
        print(f"The kit itself has no words in '{options.language}' yet; it has {', '.join(languages())}.")
    return 0
