"""`lessonkit roster`: a personal set of pages, booklet and cloth to buy for every row of a table of bodies."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import Any

from kit.trust_cli import say_code


def add_roster(commands: Any, code: str) -> None:
    """Add the command to the parser's `commands`; `code` says that a notebook's code is run."""
    roster = commands.add_parser(
        "roster",
        help="make a personal set for every row of a table",
        description="Write pattern pages, booklet, cloth to buy and fit changes for every row of a table of bodies, a "
        "table of them all and an index page. Run again after an interruption, it makes only what is missing or has "
        f"changed. {code}",
    )
    roster.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    roster.add_argument("table", type=Path, metavar="BODIES.csv", help="one row a person, one column a measurement")
    roster.add_argument("--out", type=Path, required=True, metavar="DIR", help="folder for the sets")
    roster.add_argument(
        "--table-units",
        choices=("cm", "inch", "mm"),
        default="cm",
        help="unit of numbers without one in the table (cm when left out)",
    )
    roster.add_argument("--units", choices=("cm", "inch"), help="units read first (as saved when left out)")
    roster.add_argument("--language", default="", metavar="CODE", help="language of booklet and pages, such as es")
    roster.add_argument(
        "--booklet",
        default="a4",
        metavar="FORM",
        help="a4 (when left out), letter, a5, half-letter, a4-large, letter-large, or none for pages alone",
    )
    roster.add_argument(
        "--paper", action="append", default=[], metavar="PAPER", help="as for `pages` (a4 when left out)"
    )
    roster.add_argument(
        "--name-folders",
        action="store_true",
        help="call the folders by the people's names too; nothing else ever names them",
    )
    roster.add_argument("--workers", type=_count, default=0, metavar="N", help="sets at once (one a core)")
    roster.add_argument(
        "--scheduler",
        default="",
        metavar="ADDRESS",
        help="make the sets on a Dask cluster, such as tcp://10.0.0.5:8786, whose machines reach the notebook under "
        "the same path",
    )
    roster.add_argument(
        "--timeout", type=_count, default=120, metavar="S", help="seconds for a cell or a set (120 when left out)"
    )
    roster.set_defaults(run=_roster)


def _count(text: str) -> int:
    if not text.isdigit() or int(text) == 0:
        raise argparse.ArgumentTypeError(f"'{text}' is not a number; type a whole number such as 2")
    return int(text)


def _roster(options: argparse.Namespace) -> int:
    from kit.language import SOURCE, speaking
    from kit.roster.order import Order
    from kit.roster.report import INDEX, TABLE
    from kit.roster.run import run_roster, told_left

    say_code(options.notebook)
    live = sys.stdout.isatty()

    def done(count: int, total: int, left: float) -> None:
        tail = f", {told_left(left)}" if count < total else ""
        line = f"  [{'#' * (30 * count // max(total, 1)):<30}] {count} of {total} sets{tail}"
        print(f"\r{line:<79}" if live else line, end="" if live and count < total else "\n", flush=True)

    order = Order(
        options.notebook,
        options.booklet,
        tuple(options.paper) or ("a4",),
        options.units,
        options.language,
        options.timeout,
    )
    with speaking(options.language or SOURCE):
        made = run_roster(
            options.table,
            order,
            options.out,
            units=options.table_units,
            named=options.name_folders,
            workers=options.workers,
            scheduler=options.scheduler,
            progress=lambda line: print(line, flush=True),
            done=done,
        )
    for entry in made.refused[:10]:
        print(f"No set for {entry.label} (line {entry.line}): {entry.trouble}")
    if len(made.refused) > 10:
        print(f"And {len(made.refused) - 10} more; the table has them all.")
    failed = sum(entry.failed for entry in made.entries)
    if failed:
        print(f"{failed} failed the proof: do not cut from them.")
    if made.left:
        names = ", ".join(made.left[:8])
        print(f"Left from before, and no row stands for them now (do not cut from them): {names}")
    print(f"{len(made.entries) - len(made.refused)} of {len(made.entries)} sets are there; {made.made} made now.")
    print(options.out / INDEX)
    print(options.out / TABLE)
    return 0
