"""The command `lessonkit compare`: two sizes, settings or editions of a lesson laid over each other."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.draft_cli import add_draft
from kit.trust_cli import say_code


def add_compare(commands: Any, code: str = "") -> None:
    """Add the command to the parser's `commands`; `code` warns that the notebook's code runs."""
    compare = commands.add_parser(
        "compare",
        help="lay two sizes, settings or editions over each other",
        description="Say and draw what differs between two sizes of a lesson (--sizes W3,W4), between the lesson as it "
        "stands and other values (--values, --preset), between the cloth first cut and the corrected pattern "
        f"(--as-cut), or between two notebooks or editions. {code}".strip(),
    )
    compare.add_argument(
        "first", type=Path, metavar="FIRST", help="a notebook, or the file pattern.json of an edition, or its folder"
    )
    compare.add_argument("second", type=Path, nargs="?", metavar="SECOND", help="the one to lay over it")
    compare.add_argument("--sizes", default="", metavar="A,B", help="two sizes of the lesson's chart")
    compare.add_argument("--size", metavar="SIZE", help="the size both are worked in (that of the edition)")
    add_draft(compare, cut=False)
    compare.add_argument("--as-cut", action="store_true", help="the draft first cut, beside the corrected one")
    compare.add_argument(
        "--at",
        default="",
        metavar="PLACE",
        help="lay the pieces on each other at this point, such as neck_point, or end of an edge, such as side.start "
        "(as drafted when left out)",
    )
    add_told(compare, "comparison.pdf, comparison.json and a picture of each piece")
    compare.set_defaults(run=_compare)


def add_told(command: argparse.ArgumentParser, files: str) -> None:
    """The options of a command that tells something of a lesson and writes `files` into a folder."""
    command.add_argument("--units", choices=("cm", "inch"), help="units read first (those of the lesson)")
    command.add_argument("--language", default="", metavar="CODE", help="language it is told in, such as es")
    command.add_argument("--out", type=Path, metavar="DIR", help=f"folder for {files}")
    command.add_argument("--timeout", type=int, default=120, metavar="S", help="seconds one cell may take (120)")


def _compare(options: argparse.Namespace) -> int:
    from kit.atomic import write_atomically
    from kit.booklet.asked_draft import AskedDraft, read_values
    from kit.family.asked import AskedComparison, compare, is_notebook
    from kit.family.files import comparison_files
    from kit.family.telling import lines
    from kit.language import speaking
    from kit.paper.range_files import read_sizes

    asked = AskedComparison(
        options.first,
        options.second,
        tuple(read_sizes(options.sizes)),
        options.size,
        AskedDraft(options.preset, read_values(options.values)),
        options.as_cut,
        options.at,
        options.units,
        options.language,
        max(1, options.timeout),
    )
    notebooks = [path for path in (asked.first, asked.second) if path is not None and is_notebook(path)]
    if notebooks:
        say_code(*notebooks)
    answer = compare(asked, progress=lambda line: print(line, flush=True))
    with speaking(answer.language):
        for line in lines(answer.page):
            print(line)
        if options.out is not None:
            for name, data in comparison_files(answer.found, answer.page, answer.system).items():
                print(write_atomically(options.out / name, data))
    return 0
