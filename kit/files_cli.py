"""Commands that make and tidy files a lesson's author works on: a new lesson, copies of the examples, a clean
notebook."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import Any

STARTS = {
    "block": "a block in your size: a sleeveless top from the bodice block",
    "traced": "a top that fits, traced in a drawing program (SVG or DXF)",
    "blank": "blank paper: a flat bag with a handle, drawn line by line",
    "skirt": "a block in your size: an A-line skirt from the skirt block",
    "trousers": "a block in your size: pull-on trousers from the trouser block",
    "sleeve": "a block in your size: a loose top with set-in sleeves from the bodice block with a sleeve",
    "darted": "a block in your size: a close top buttoned down the back from the bodice block with darts",
}
_ANOTHER = "another lesson: type the name of its notebook"


def add_files(commands: Any, code: str) -> None:
    """Add the commands to the parser's `commands`; `code` says that a notebook's code is run."""
    new = commands.add_parser(
        "new",
        help="start a lesson notebook",
        description="Write a lesson to start from: it drafts, sews and builds as it is, with the panel, a try-on and "
        "an exercise, and you change it into your own. Without --from it asks what to start from.",
    )
    new.add_argument("name", metavar="NAME", help='what the lesson is called, such as "Dune skirt"')
    new.add_argument(
        "--from",
        dest="start",
        metavar="START",
        help=f"{', '.join(STARTS)}, a block by its name, or the notebook of another lesson (.ipynb) to vary",
    )
    new.set_defaults(run=_new)

    examples = commands.add_parser(
        "examples",
        help="copy the example lessons, the guides and the reference",
        description="Copy the example lessons, the guides and the reference into a folder, to read, run and change. "
        "What is there already is left alone.",
    )
    examples.add_argument(
        "folder",
        nargs="?",
        type=Path,
        default=Path("lessons"),
        metavar="DIR",
        help="the folder (lessons when left out)",
    )
    examples.set_defaults(run=_examples)

    tidy = commands.add_parser(
        "clean",
        help="take outputs out of a notebook",
        description="Take out what running left in notebooks: outputs, counts, the state of widgets. A lesson that has "
        "run is some forty times as large as what was written in it; clean it before it is shared or committed.",
    )
    tidy.add_argument("notebooks", nargs="+", type=Path, metavar="NOTEBOOK", help="a file ending in .ipynb")
    tidy.set_defaults(run=_clean)

    report = commands.add_parser(
        "report",
        help="pack what is needed to report a wrong picture",
        description="Pack the lesson without outputs, its values, what the proof found, the kit's version and the "
        "pictures as SVG into one zip. Measurements of a person are left out: a size of the chart takes the place of "
        f"every body a cell makes or loads. Look into the file before you send it. {code}",
    )
    report.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    report.add_argument(
        "--step", default="", metavar="NAME", help="the pictures of this step only (its function's name)"
    )
    report.add_argument("--says", default="", metavar="TEXT", help="what is wrong, in your words")
    report.add_argument("--size", metavar="SIZE", help="size of the lesson's chart (as saved when left out)")
    report.add_argument("--out", type=Path, metavar="FILE", help="the zip (NAME-report.zip when left out)")
    report.add_argument(
        "--timeout", type=int, default=120, metavar="S", help="seconds one cell may take (120 when left out)"
    )
    report.set_defaults(run=_report)


def _new(options: argparse.Namespace) -> int:
    from kit.booklet.starter import start

    path = start(options.name, Path.cwd(), options.start or _asked())
    print(f"{path}\nOpen it with: jupyter lab {path.name}")
    return 0


def _asked() -> str:
    """What to start from, asked where somebody sits there to answer; a block otherwise."""
    if not (sys.stdin.isatty() and sys.stdout.isatty()):
        return "block"
    print("Start from:")
    for number, (name, says) in enumerate(STARTS.items(), start=1):
        print(f"  {number}  {name:8} {says}")
    print(f"  or {_ANOTHER}")
    answer = input("Number or name (1): ").strip()
    if answer.isdigit() and 1 <= int(answer) <= len(STARTS):
        return list(STARTS)[int(answer) - 1]
    return answer or "block"


def _examples(options: argparse.Namespace) -> int:
    from kit.booklet.starter import copy_examples

    made, kept = copy_examples(options.folder)
    print(f"{len(made)} files copied to {options.folder}.")
    if kept:
        print(f"Left as they are, since they are there already: {', '.join(path.name for path in kept)}")
    print(f"Begin with: jupyter lab {options.folder / 'guide_first_evening.ipynb'}")
    return 0


def _clean(options: argparse.Namespace) -> int:
    from kit.booklet.clean import clean

    for path in options.notebooks:
        before, after = clean(path)
        said = f"{_size(before)}, now {_size(after)}" if before != after else f"{_size(after)}, nothing to take out"
        print(f"{path}: {said}")
    return 0


def _report(options: argparse.Namespace) -> int:
    from kit.atomic import write_atomically
    from kit.booklet.reporting import packed
    from kit.trust_cli import say_code

    say_code(options.notebook)
    out = options.out or Path(f"{options.notebook.stem.replace('_', '-')}-report.zip")
    data, names = packed(
        options.notebook, size=options.size, step=options.step, says=options.says, timeout=options.timeout
    )
    print(f"{len(names)} files, without anybody's measurements. Look into it before you send it:")
    print(write_atomically(out, data))
    return 0


def _size(count: int) -> str:
    return f"{count / 1000:.0f} kB" if count < 1_000_000 else f"{count / 1_000_000:.1f} MB"
