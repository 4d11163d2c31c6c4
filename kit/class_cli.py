"""The commands of a class: `lessonkit class-copy` makes the students' notebook, `lessonkit serve` opens it to a
room."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.errors import KitError

_ROOM = (
    "Serves a class copy from this machine. Every browser gets values, folder and kernel of its own. Students see no "
    "code and can run none; there is no file browser and no terminal. The address needs the class code, which is new "
    "each time. Use it in a room you trust: the line is not encrypted."
)


def add_commands(commands: Any, code: str) -> None:
    """Add the two commands to the parser's `commands`; `code` says that a notebook's code is run."""
    copy = commands.add_parser(
        "class-copy", help="make the students' notebook of a lesson", description=f"Make a class copy. {code}"
    )
    copy.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    copy.add_argument(
        "--exercises", metavar="NAMES", help="exercises by title or short name, with commas (all when left out)"
    )
    copy.add_argument("--out", type=Path, metavar="FILE", help="the class copy (NAME_class.ipynb when left out)")
    copy.add_argument(
        "--timeout", type=_count, default=120, metavar="S", help="seconds one cell may take (120 when left out)"
    )
    copy.set_defaults(run=_class_copy)

    serve = commands.add_parser("serve", help="open a class copy to a room", description=_ROOM)
    serve.add_argument("notebook", type=Path, metavar="CLASS_COPY", help="what class-copy made")
    serve.add_argument("--port", type=_port, default=8866, metavar="PORT", help="8866 when left out")
    serve.add_argument(
        "--local-network",
        nargs="?",
        const="",
        metavar="ADDRESS",
        help="let the local network in, at this machine's address there (only this machine when left out)",
    )
    serve.add_argument("--students", type=_count, default=30, metavar="N", help="at most so many at once (30)")
    serve.add_argument(
        "--keep", type=Path, metavar="DIR", help="keep what students make in this folder (removed at the end otherwise)"
    )
    serve.set_defaults(run=_serve)


def _count(text: str) -> int:
    if not text.isdigit() or int(text) == 0:
        raise argparse.ArgumentTypeError(f"'{text}' is not a number; type a whole number such as 30")
    return int(text)


def _port(text: str) -> int:
    if not text.isdigit() or int(text) > 65535:
        raise argparse.ArgumentTypeError(f"'{text}' is not a port; type a number such as 8866")
    return int(text)


def _class_copy(options: argparse.Namespace) -> int:
    from kit.live.class_copy import make_class_copy

    names = None
    if options.exercises is not None:
        names = [name for name in options.exercises.split(",") if name.strip()]
    print("This runs the notebook's code.", flush=True)
    made = make_class_copy(
        options.notebook,
        options.out,
        exercises=names,
        timeout=options.timeout,
        progress=lambda line: print(line, flush=True),
    )
    print(f"Exercises: {', '.join(made.exercises)}" if made.exercises else "No exercises.")
    print(f"{made.notebook}\n{made.lesson}")
    print(f"Open it to a room with: lessonkit serve {made.notebook}")
    return 0


def _serve(options: argparse.Namespace) -> int:
    from kit.live.serve import local_address, serve

    address = "127.0.0.1"
    if options.local_network is not None:
        address = options.local_network or local_address()
        if address in ("0.0.0.0", "::"):
            raise KitError(
                f"'{address}' would open every network of this machine.",
                where="--local-network",
                do="Name the address of one, or leave it out.",
            )
    print("This runs the class copy's code on this machine, once for each student.", flush=True)
    serve(
        options.notebook,
        port=options.port,
        address=address,
        students=options.students,
        keep=options.keep,
        tell=lambda line: print(line, flush=True),
    )
    print("The room is closed.")
    return 0
