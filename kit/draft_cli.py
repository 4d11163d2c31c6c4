"""Options that say which draft of a lesson is built: a preset, values, as first cut or as corrected."""

from __future__ import annotations

import argparse
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from kit.booklet.asked_draft import AskedDraft, Draft


def add_draft(command: argparse.ArgumentParser, *, cut: bool = True) -> None:
    """The options of a command that builds a draft; without `cut` not that of the draft first cut."""
    command.add_argument("--preset", default="", metavar="NAME", help="a preset of the lesson, by its name")
    command.add_argument(
        "--values",
        action="append",
        default=[],
        metavar="NAME=VALUE",
        help='values of the lesson, such as sleeve_length=45cm or "hem_drop=2in, tucks=3"; may be given several times',
    )
    if cut:
        command.add_argument(
            "--as-cut",
            action="store_true",
            help="the draft the cloth was first cut from, with what its try-ons changed told in their steps (when left "
            "out, the pattern as corrected by them)",
        )


def add_no_paper(command: argparse.ArgumentParser) -> None:
    """The option that says which pieces are cut by their measures."""
    command.add_argument(
        "--no-paper",
        metavar="PIECES",
        help="pieces that take no pages, as the booklet tells their measures: rectangles for all that can be so, names "
        'such as "collar,cuff", or none (as the lesson says when left out)',
    )


def asked_draft(options: argparse.Namespace) -> AskedDraft:
    """The draft a command asks for: `check` looks at the values as they stand. `KitError` for a value without name."""
    from kit.booklet.asked_draft import AskedDraft, read_values

    draft: Draft = "present" if options.command == "check" else "first" if options.as_cut else "corrected"
    return AskedDraft(options.preset, read_values(options.values), draft)
