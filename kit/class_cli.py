"""The commands of a class: `lessonkit class-copy` makes the students' notebook, `lessonkit serve` opens it to a
room."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.errors import KitError

_ROOM = (
    "Gives out the page of a class copy's lesson from this machine, and holds the teacher's board. Each browser works "
    "the lesson itself; where one cannot, this machine does it. Students can run no code of their own here; there is "
    "no file browser and no terminal. The address needs the class code, which is new each time. Use it in a room you "
    "trust, or give a certificate: without one the line is not encrypted."
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
    serve.add_argument(
        "--pyodide",
        type=Path,
        metavar="DIR",
        help="folder with Pyodide's core for the page (fetched through npm, and kept, when left out)",
    )
    serve.add_argument(
        "--room-alone",
        action="store_true",
        help="let this machine work the lesson for every page, none its own browser",
    )
    serve.add_argument(
        "--workers", type=_count, default=0, metavar="N", help="processes that do so (one for each core, 4 at most)"
    )
    serve.add_argument("--certificate", type=Path, metavar="FILE", help="certificate (PEM), for an encrypted line")
    serve.add_argument("--key", type=Path, metavar="FILE", help="its key, where that is a file of its own")
    serve.add_argument(
        "--name",
        action="append",
        default=[],
        metavar="HOST",
        help="a name this machine is called by in the room, as the certificate has it (may be given again)",
    )
    serve.add_argument(
        "--per-device", type=_count, metavar="N", help="students from one device of the network at most (3)"
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
    from kit.language import say
    from kit.live.class_copy import make_class_copy

    names = None
    if options.exercises is not None:
        names = [name for name in options.exercises.split(",") if name.strip()]
    print(say("building.code"), flush=True)
    made = make_class_copy(
        options.notebook,
        options.out,
        exercises=names,
        timeout=options.timeout,
        progress=lambda line: print(line, flush=True),
    )
    print(f"Exercises: {', '.join(made.exercises)}" if made.exercises else "No exercises.")
    if made.bodies:
        print("A size of the chart stands in the place of the bodies that were written in the lesson, or beside it.")
    print(f"{made.notebook}\n{made.lesson}")
    print(f"Open it to a room with: lessonkit serve {made.notebook}")
    return 0


def _serve(options: argparse.Namespace) -> int:
    from kit.room.addresses import checked_name, local_address
    from kit.room.server import Options, serve

    address = "127.0.0.1"
    if options.local_network is not None:
        address = options.local_network or local_address()
        if address in ("0.0.0.0", "::"):
            raise KitError(
                f"'{address}' would open every network of this machine.",
                where="--local-network",
                do="Name the address of one, or leave it out.",
            )
    print("This runs the class copy's code on this machine.", flush=True)
    asked = Options(
        port=options.port,
        address=address,
        students=options.students,
        keep=options.keep,
        pyodide=options.pyodide,
        room_alone=options.room_alone,
        certificate=options.certificate,
        key=options.key,
        names=tuple(checked_name(name) for name in options.name),
        per_device=options.per_device,
        workers=options.workers,
    )
    serve(options.notebook, asked, lambda line: print(line, flush=True))
    print("The room is closed.")
    return 0
