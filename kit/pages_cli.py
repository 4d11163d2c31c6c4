"""The command `lessonkit pages`: the pattern printed for the papers and the printer one has."""

from __future__ import annotations

import argparse
from pathlib import Path
from typing import Any

from kit.draft_cli import add_choices, add_draft, add_no_paper, asked_draft
from kit.errors import KitError
from kit.findings_cli import print_findings
from kit.trust_cli import say_code


def add_pages(commands: Any, code: str) -> None:
    """The command, for the parser's `commands`; `code` is what is said of running a notebook's code."""
    pages = commands.add_parser(
        "pages",
        help="print the pattern your way: paper, joining, printer, scale",
        description=f"Write pattern pages for the papers and the printer you have. {code}",
    )
    pages.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    pages.add_argument(
        "--paper",
        action="append",
        default=[],
        metavar="PAPER",
        help="a4, letter, a4-or-letter, a3, tabloid, a0, roll-36in, roll-914mm, or a size such as 300x500mm or "
        "13x19in; may be given several times (a4 and letter when left out)",
    )
    pages.add_argument(
        "--orientation",
        choices=("auto", "upright", "sideways"),
        default="auto",
        help="how the paper is held (the way that takes fewest pages when left out)",
    )
    pages.add_argument(
        "--joining",
        choices=("overlap", "butt"),
        default="overlap",
        help="trim two sides and glue on the next page, or trim all sides and tape edge to edge",
    )
    pages.add_argument(
        "--margin", metavar="MM", help="what the printer leaves blank: 8mm, or 6mm,15mm for sides and top and bottom"
    )
    pages.add_argument(
        "--printer-scale",
        metavar="PERCENT",
        help="what the gauge says: 97%%, or 97%%,98.5%% for the paper's short and long side",
    )
    pages.add_argument("--scale", metavar="SCALE", help="1, 1/2 or 1/4: for drafting practice in class")
    pages.add_argument("--whole", action="store_true", help="draw pieces cut on the fold whole")
    pages.add_argument(
        "--sizes",
        metavar="SIZES",
        help="several sizes of the lesson's chart, such as W1,W4, or all; W4/W6 is W4 above the waist and W6 below it",
    )
    pages.add_argument("--nested", action="store_true", help="lay the sizes over one another, each on its own layer")
    pages.add_argument("--each", action="store_true", help="with --nested, write every size by itself as well")
    pages.add_argument(
        "--projector",
        nargs="?",
        const="fitted",
        metavar="SIZE",
        help="one sheet for a projector as well, fitted to the pieces or of a size such as 1500x900mm",
    )
    pages.add_argument("--files", default="", metavar="KINDS", help="files for other programs: svg,dxf,json")
    add_choices(pages)
    add_draft(pages)
    add_no_paper(pages)
    pages.add_argument("--out", type=Path, metavar="DIR", help="folder for the output (out/NAME when left out)")
    pages.set_defaults(run=_pages)


def _pages(options: argparse.Namespace) -> int:
    from kit.atomic import write_atomically
    from kit.booklet.handover import alone
    from kit.booklet.own_language import in_one_system
    from kit.booklet.run_notebook import read_notebook, run_notebook
    from kit.lesson.no_paper import choosing, read_no_paper
    from kit.paper.range_files import RangeRequest, range_files, read_files, read_sheet, read_sizes
    from kit.paper.request import PageRequest, read_class_scale, read_margins, read_papers, read_printer_scale
    from kit.proof import failed, prove
    from kit.prose.readings import ruling_of
    from kit.rulers import ruled

    request = PageRequest(
        papers=read_papers(options.paper),
        orientation=options.orientation,
        joining=options.joining,
        margins=read_margins(options.margin) if options.margin else None,
        printer_scale=read_printer_scale(options.printer_scale) if options.printer_scale else (1.0, 1.0),
        class_scale=read_class_scale(options.scale) if options.scale else 1.0,
        whole=options.whole,
    )
    sizes = read_sizes(options.sizes or "")
    if options.nested and len(sizes) < 2 and [size.lower() for size in sizes] != ["all"]:
        raise KitError(
            "there are no sizes to lay over one another.", where="--nested", do="Add --sizes W1,W4 or --sizes all."
        )
    if options.size and sizes:
        raise KitError("both --size and --sizes are given.", where="pages", do="Leave one of them out.")
    of_range = RangeRequest(
        request,
        options.nested,
        options.each,
        options.projector is not None,
        read_sheet(options.projector or ""),
        read_files(options.files),
    )
    out = options.out or Path("out") / options.notebook.stem.replace("_", "-")
    draft = asked_draft(options)
    say_code(options.notebook)
    ran = run_notebook(
        read_notebook(options.notebook),
        options.notebook.resolve().parent,
        name=options.notebook.name,
        size=options.size,
        units=options.only or options.units,
        sizes=sizes,
        draft=draft,
        timeout=options.timeout,
    )
    given = in_one_system(alone(ran.handover), ran.notebook)[0] if options.only else ran.handover
    bare = read_no_paper(options.no_paper)
    patterns = tuple(choosing(pattern, bare) for pattern in given.sizes or (given.pattern,))
    chart = [row.name for row in given.chart]
    if not chart and (sizes or options.size):
        print("note: this lesson uses no measurement of the body, so it has one size; these pages are that one.")
    chart += [pattern.body.name for pattern in patterns if chart and pattern.body.name not in chart]  # sizes between
    with ruled(ruling_of(given.pattern)):
        made = range_files(patterns, chart, of_range, progress=lambda line: print(line, flush=True))
    for pattern in patterns:
        findings = prove(pattern)
        if findings and len(patterns) > 1:
            print(f"Size {pattern.body.name}:")
        print_findings(findings, pattern)
        if failed(findings):
            print("Proof failed. Do not cut from these pages.")
    for name, data in made.items():
        print(write_atomically(out / name, data))
    return 0
