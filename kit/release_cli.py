"""The command `lessonkit release`: a folder ready to sell or to hand out."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.draft_cli import add_draft, asked_draft
from kit.live_cli import add_live_at
from kit.trust_cli import say_code


def add_release(commands: Any, code: str = "") -> None:
    """Add the command to the parser's `commands`; `code` warns that the notebook's code runs."""
    command = commands.add_parser(
        "release",
        help="a folder ready to sell or to hand out",
        description="Make a folder with booklets, pages of every size and nested, sheets for a copy shop, files for a "
        "projector and for other programs, previews, a first page and checksums. It is refused while the proof fails, "
        f"a text is untranslated, a picture has no alternative text or a slider does not hold. {code}".strip(),
    )
    command.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    command.add_argument("--out", type=Path, required=True, metavar="DIR", help="folder of the release")
    command.add_argument("--forms", default="", metavar="FORMS", help="forms of the booklet (a4,letter,html,epub)")
    command.add_argument("--languages", default="", metavar="CODES", help="such as en,de; all (the lesson's own)")
    command.add_argument("--for", dest="audience", choices=("buyers", "class"), default="buyers", help="(buyers)")
    command.add_argument("--size", metavar="SIZE", help="the size the booklet is drawn in (as saved)")
    command.add_argument("--sizes", default="", metavar="SIZES", help="sizes to print, such as W3,W4 (all)")
    command.add_argument(
        "--allow",
        default="",
        metavar="NAMES",
        help="what is waived, and written down: proof, notions, sizes, words, pictures, ranges",
    )
    command.add_argument(
        "--ranges",
        choices=("quick", "full"),
        default="quick",
        help="try the sliders in three sizes and 75 settings, or as check --ranges does (quick)",
    )
    add_live_at(command)
    add_draft(command)
    command.add_argument("--timeout", type=int, default=120, metavar="S", help="seconds one cell may take (120)")
    command.set_defaults(run=_release)


def _release(options: argparse.Namespace) -> int:
    from kit.booklet.live_at import read_live_at
    from kit.paper.range_files import read_sizes
    from kit.release.gate import read_allowed
    from kit.release.release import AskedRelease, release

    asked = AskedRelease(
        forms=options.forms,
        languages=options.languages,
        audience=options.audience,
        size=options.size,
        sizes=read_sizes(options.sizes),
        allow=read_allowed(options.allow),
        ranges=options.ranges,
        draft=asked_draft(options),
        timeout=max(1, options.timeout),
        live_at=read_live_at(options.live_at) if options.live_at else "",
    )
    say_code(options.notebook)
    done = release(options.notebook, options.out, asked, progress=lambda line: print(line, flush=True))
    for reason in done.waived:
        print(f"Waived, {reason.name}: {reason}")
    for path in done.files:
        print(options.out / path)
    return 0
