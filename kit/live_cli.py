"""The command `lessonkit live`: a lesson as a page that works in the reader's own browser."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import TYPE_CHECKING, Any

from kit.draft_cli import add_draft
from kit.trust_cli import say_code

if TYPE_CHECKING:
    from kit.booklet.asked_draft import AskedDraft
    from kit.units import System


def add_live(commands: Any, code: str = "") -> None:
    """Add the command to the parser's `commands`; `code` warns that the notebook's code runs."""
    live = commands.add_parser(
        "live",
        help="write a page in which the lesson lives in the reader's own browser",
        description="Write a folder of static files for any web space: the lesson with sliders, pictures, exercises "
        f"and the reader's own measurements, worked in the reader's browser. {code}".strip(),
    )
    live.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    live.add_argument("--out", type=Path, required=True, metavar="DIR", help="folder for the page")
    live.add_argument(
        "--pyodide",
        type=Path,
        metavar="DIR",
        help="folder with Pyodide's core (fetched through npm, and kept, when left out)",
    )
    live.add_argument(
        "--packages",
        type=Path,
        metavar="DIR",
        help="folder with the compiled packages of Pyodide's distribution: the page then writes its reader's own "
        "pattern pages (not tried in a browser)",
    )
    live.add_argument(
        "--languages",
        default="",
        metavar="CODES",
        help="languages to choose from, such as en,de (the lesson's own and those it is translated to when left out)",
    )
    live.add_argument(
        "--sliders", default="", metavar="NAMES", help="the parameters readers may move (all when left out)"
    )
    live.add_argument(
        "--no-cloth", action="store_true", help="leave out the lengths of cloth to buy, which take a while"
    )
    live.add_argument(
        "--booklet",
        action="store_true",
        help="with the booklet beside the page, which follows the reader's measurements too (build --forms live)",
    )
    live.add_argument(
        "--size", metavar="SIZE", help="size of the lesson's chart in which the page opens (as saved when left out)"
    )
    live.add_argument("--units", choices=("cm", "inch"), help="units in which it opens (as saved when left out)")
    add_draft(live, cut=False)
    live.add_argument("--timeout", type=int, default=120, metavar="S", help="seconds one cell may take (120)")
    live.set_defaults(run=_live)


def add_live_at(command: argparse.ArgumentParser) -> None:
    """Where a booklet's readers find the page."""
    command.add_argument(
        "--live-at",
        default="",
        metavar="URL",
        help="address at which the folder of lessonkit live stands; the booklet leads there, in print with a code for "
        "a phone's camera",
    )


def _live(options: argparse.Namespace) -> int:
    from kit.booklet.asked_draft import AskedDraft, read_values
    from kit.page.build import build_page

    say_code(options.notebook)
    made = build_page(
        options.notebook,
        options.out,
        pyodide=options.pyodide,
        packages=options.packages,
        spoken=_listed(options.languages),
        sliders=_listed(options.sliders),
        cloth=not options.no_cloth,
        timeout=options.timeout,
        booklet=options.booklet,
        size=options.size,
        units=options.units,
        draft=AskedDraft(options.preset, read_values(options.values)) if options.preset or options.values else None,
        progress=lambda line: print(line, flush=True),
    )
    for note in made.notes:
        print(note)
    print(f"{made.folder / 'index.html'} and {made.bytes / 1e6:.1f} MB beside it, in {', '.join(made.languages)}")
    print(f"Look at it with: python -m http.server --bind 127.0.0.1 --directory {made.folder}")
    return 0


def write_live(
    notebook: Path,
    out: Path,
    language: str | None,
    timeout: int,
    *,
    size: str | None = None,
    units: System | None = None,
    draft: AskedDraft | None = None,
) -> None:
    """The form `live` of a booklet: the page with the booklet beside it, in the folder `out`, in a `language` (None:
    the lesson's own), drawn in `size` and `units` at the values of `draft` (None: as saved)."""
    from kit.page.build import build_page

    made = build_page(
        notebook,
        out,
        spoken=[language] if language else (),
        timeout=timeout,
        booklet=True,
        size=size,
        units=units,
        draft=draft,
        progress=lambda line: print(line, flush=True),
    )
    for note in made.notes:
        print(note)
    print(made.folder / "booklet.html")


def _listed(text: str) -> list[str]:
    return [part.strip() for part in text.split(",") if part.strip()]
