"""Options that say which draft of a lesson is built: size and units, a preset, values, as first cut or corrected."""

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


def add_choices(command: argparse.ArgumentParser) -> None:
    """The options of every command that runs a notebook: its size, its units, its time."""
    command.add_argument(
        "--size",
        metavar="SIZE",
        help="size of the lesson's chart (as saved when left out); W4/W6 is W4 above the waist and W6 below it",
    )
    read = command.add_mutually_exclusive_group()
    read.add_argument("--units", choices=("cm", "inch"), help="units read first (as saved when left out)")
    if command.prog.split()[-1] != "check":
        read.add_argument("--only", choices=("cm", "inch"), help="the one system to print, with nothing in brackets")
    command.add_argument(
        "--timeout", type=seconds, default=120, metavar="S", help="seconds one cell may take (120 when left out)"
    )


def seconds(text: str) -> int:
    """A number of seconds as it is typed; refused where it is none."""
    if not text.isdigit() or int(text) == 0:
        raise argparse.ArgumentTypeError(f"'{text}' is not a number of seconds; type a whole number such as 120")
    return int(text)
