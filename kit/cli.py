"""The command `lessonkit`: build a lesson's booklet and pattern pages, start a new lesson, check one."""

from __future__ import annotations

import argparse
import re
import sys
from collections.abc import Sequence
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import TYPE_CHECKING, Any

from kit.bar_cli import bar
from kit.class_cli import add_commands
from kit.compare_cli import add_compare
from kit.diagnostic import Diagnostic, reading
from kit.draft_cli import add_draft, add_no_paper, asked_draft
from kit.errors import KitError
from kit.files_cli import add_files
from kit.fit_cli import add_fit
from kit.grade_cli import add_grade
from kit.help_cli import add_help
from kit.live_cli import add_live, add_live_at
from kit.quick_start import leave_out_address_grammar
from kit.ranges_cli import add_ranges, check_ranges
from kit.release_cli import add_release
from kit.roster_cli import add_roster
from kit.terminal_cli import ended
from kit.trust_cli import say_code
from kit.words_cli import add_words

if TYPE_CHECKING:
    from kit.booklet.handover import MendingAdvice
    from kit.lesson.pattern import Pattern

leave_out_address_grammar()  # what a command needs is imported only when it is run

_CODE = (
    "Building and checking run the notebook from the top, with your rights, in its own folder. Build only notebooks "
    "whose code you trust."
)


_BUILD = (
    "Write the instruction booklet (PDF to print, HTML for phone and tablet, EPUB), the pattern pages at true scale on "
    "A4 and Letter, the whole pattern on one sheet, and pattern.json, into one folder. The proof is run too: what it "
    "finds is printed, and stands on the booklet's cover where it failed."
)
_CHECK = (
    "Prove a lesson and write nothing: seams equally long, every raw edge closed once, allowances what the seams "
    "take, a way into the garment, its girths against the body. Each finding says what, where, by how much and what to "
    "do. Exit status 0: no errors, 1: errors, 2: it could not be drafted. In a notebook of several lessons each is "
    "checked."
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command; gives back its exit status (`kit.terminal_cli.ended`)."""
    options = parser().parse_args(arguments)
    return ended(lambda: int(options.run(options)))


def subcommands(whole: argparse.ArgumentParser) -> dict[str, argparse.ArgumentParser]:
    """The parser of each command, by its name."""
    (group,) = (action for action in whole._actions if isinstance(action, argparse._SubParsersAction))
    return dict(group.choices)


def parser() -> argparse.ArgumentParser:
    """What the command understands."""
    parser = argparse.ArgumentParser(
        prog="lessonkit",
        description="Make an instruction booklet and true-scale pattern pages from a lesson notebook.",
        epilog=f"{_CODE} More: lessonkit help, lessonkit help build, lessonkit help set_band.",
    )
    parser.add_argument("--version", action="version", version=f"lessonkit {_version()}")
    commands = parser.add_subparsers(dest="command", required=True, metavar="COMMAND")

    build = commands.add_parser("build", help="write booklet and pattern pages", description=f"{_BUILD} {_CODE}")
    build.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    _choices(build)
    build.add_argument(
        "--forms",
        default="",
        metavar="FORMS",
        help="forms of the booklet, such as a4,letter,html,epub (these when left out); also a5, half-letter, large "
        "(18 pt on A4) or letter-large, fold (A5 laid on A4 to fold and staple) or fold-letter; all",
    )
    build.add_argument(
        "--for",
        dest="audience",
        choices=("class", "buyers"),
        default="class",
        help="class (when left out): all that is known, with the log of the fittings, the worksheet and the index of "
        "measures; buyers: what one sews by, the worksheet for drafting by hand a file of its own",
    )
    build.add_argument(
        "--language",
        metavar="CODE",
        help="language of booklet and pages, such as es (that of the lesson's own words when left out), or with its "
        "region, such as es-MX, for the paper, numbers and dates there",
    )
    build.add_argument(
        "--out", type=Path, metavar="DIR", help="folder for the output (out/NAME, or out/NAME-CODE, when left out)"
    )
    add_live_at(build)
    add_draft(build)
    add_no_paper(build)
    build.add_argument("--timings", action="store_true", help="say how long each stage took")
    build.set_defaults(run=_build)

    _pages_parser(commands)
    add_commands(commands, _CODE)
    add_words(commands, _CODE)
    add_roster(commands, _CODE)
    add_compare(commands, _CODE)
    add_grade(commands, _CODE)
    add_release(commands, _CODE)
    add_fit(commands, _CODE)
    add_live(commands, _CODE)

    add_files(commands, _CODE)
    add_help(commands)

    check = commands.add_parser(
        "check", help="say whether the lesson can be sewn as it stands", description=f"{_CHECK} {_CODE}"
    )
    check.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    _choices(check)
    add_draft(check, cut=False)
    add_ranges(check)
    check.set_defaults(run=_check)

    bodies = commands.add_parser(
        "bodies", help="work the lesson for every body in a table", description=f"Try a lesson on many bodies. {_CODE}"
    )
    bodies.add_argument("table", type=Path, metavar="FILE.csv", help="one row a person, one column a measurement")
    bodies.add_argument("notebook", type=Path, metavar="NOTEBOOK", help="the lesson, a file ending in .ipynb")
    bodies.add_argument("--report", type=Path, required=True, metavar="REPORT.json", help="where the report is written")
    bodies.add_argument(
        "--units", choices=("cm", "inch", "mm"), default="cm", help="unit of numbers without one (cm when left out)"
    )
    bodies.add_argument(
        "--timeout", type=_seconds, default=120, metavar="S", help="seconds for a cell or ten rows (120 when left out)"
    )
    bodies.set_defaults(run=_bodies)
    return parser


def _pages_parser(commands: Any) -> None:
    pages = commands.add_parser(
        "pages",
        help="print the pattern your way: paper, joining, printer, scale",
        description=f"Write pattern pages for the papers and the printer you have. {_CODE}",
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
    _choices(pages)
    add_draft(pages)
    add_no_paper(pages)
    pages.add_argument("--out", type=Path, metavar="DIR", help="folder for the output (out/NAME when left out)")
    pages.set_defaults(run=_pages)


def _choices(command: argparse.ArgumentParser) -> None:
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
        "--timeout", type=_seconds, default=120, metavar="S", help="seconds one cell may take (120 when left out)"
    )


def _seconds(text: str) -> int:
    if not text.isdigit() or int(text) == 0:
        raise argparse.ArgumentTypeError(f"'{text}' is not a number of seconds; type a whole number such as 120")
    return int(text)


def _build(options: argparse.Namespace) -> int:
    from kit.booklet.asked_forms import FOLDED, asked_forms
    from kit.booklet.build import build
    from kit.language import say
    from kit.lesson.no_paper import read_no_paper

    asked_forms(options.forms)  # refuses an unknown form before anything is said or run
    draft = asked_draft(options)
    name = options.notebook.stem.replace("_", "-") + (f"-{options.language}" if options.language else "")
    out = options.out or Path("out") / name
    say_code(options.notebook)
    built = build(
        options.notebook,
        out,
        size=options.size,
        units=options.units,
        only=options.only,
        forms=options.forms,
        audience=options.audience,
        language=options.language,
        draft=draft,
        bare=read_no_paper(options.no_paper),
        live_at=options.live_at,
        timeout=options.timeout,
        progress=lambda line: print(line, flush=True),
    )
    for line in built.left_out:
        print(f"Left out of the booklet: {line}")
    for line in built.notes:
        print(line)
    _print_findings(built.findings, built.pattern)
    if options.timings:
        for stage, seconds in built.timings.items():
            print(f"{stage:>33}  {seconds:6.2f} s")
        print(f"{'total':>33}  {built.seconds:6.2f} s  (booklet PDFs are set beside the other stages)")
    if built.failed:
        print("Proof failed: the booklet says so on its cover. Do not cut from these pages.")
    if built.earlier:
        print(f"From an earlier build, not made again: {', '.join(built.earlier)}")
    for path in built.paths.values():
        print(path)
    if any(file in built.paths for file in FOLDED):
        print(say("screen.fold"))
    return 0


def _pages(options: argparse.Namespace) -> int:
    from kit.atomic import write_atomically
    from kit.booklet.handover import alone
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
    given = alone(ran.handover) if options.only else ran.handover
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
        _print_findings(findings, pattern)
        if failed(findings):
            print("Proof failed. Do not cut from these pages.")
    for name, data in made.items():
        print(write_atomically(out / name, data))
    return 0


def _check(options: argparse.Namespace) -> int:
    from kit.booklet.compose import compose
    from kit.booklet.fetch import LessonFolder
    from kit.booklet.handover import Refused
    from kit.booklet.run_notebook import read_notebook, run_lessons
    from kit.booklet.told_words import raw_words
    from kit.proof import failed, prove
    from kit.wear.worn import why_untried

    draft = asked_draft(options)
    say_code(options.notebook)
    if options.ranges:
        return check_ranges(options)
    notebook = read_notebook(options.notebook)
    raw = raw_words(notebook)
    book, answers = run_lessons(
        notebook,
        options.notebook.resolve().parent,
        name=options.notebook.name,
        size=options.size,
        units=options.units,
        draft=draft,
        timeout=options.timeout,
    )
    folder = LessonFolder(options.notebook.resolve().parent)
    if len(answers) > 1:
        print(
            f"This notebook has {len(answers)} lessons; a booklet is made of one. What each drafts and sews is checked."
        )
    status = 0
    for answer in answers:
        if isinstance(answer, Refused):
            print(f"lessonkit: {answer}", file=sys.stderr)
            _print_advice(answer.advice)
            status = 2
            continue
        findings = prove(answer.pattern)
        for note in (*answer.notes, *(raw if len(answers) == 1 else ())):
            print(note)
        if len(answers) == 1:
            compose(answer, book, folder, findings)  # its words, references and photos must be sound too
            for line in dict.fromkeys(folder.left_out):
                print(f"Left out of the booklet: {line}")
        _print_findings(findings, answer.pattern)
        if (why := why_untried(answer.pattern)) is not None:
            print(why)
        _print_advice(answer.advice)
        title, size = answer.pattern.lesson.title, answer.pattern.body.name
        if failed(findings):
            print(f"{title}, {size}: the proof failed.")
            status = max(status, 1)
        else:
            print(f"{title}, {size}: {'nothing found' if not findings else 'no errors'}.")
    return status


def _print_advice(found: Sequence[MendingAdvice]) -> None:
    """What mends the lesson; for its own values also what is wrong, which nothing else tells."""
    from kit.language import say
    from kit.proof.remedy import heading

    for advice in found:
        if advice.own:
            print(say("remedy.own_values"))
            for trouble in advice.trouble:
                print(f"error: {trouble}")
        if advice.remedies:
            print(heading(advice.remedies))
        for remedy in advice.remedies:
            print(say("remedy.line", remedy=str(remedy)))


def _bodies(options: argparse.Namespace) -> int:
    from kit.booklet.bodies import work_bodies
    from kit.language import say

    say_code(options.notebook)
    made = work_bodies(
        options.table,
        options.notebook,
        options.report,
        units=options.units,
        timeout=options.timeout,
        progress=lambda line: print(line, flush=True),
        done=bar("bodies"),
    )
    for column, why in made["ignored"].items():
        print(f"Column '{column}' was left aside: {why}")
    refused = [row for row in made["rows"] if not row["drafted"]]
    for row in refused[:10]:
        line = f"line {row['line']}"
        who = line.capitalize() if row["name"] == line.capitalize() else f"{row['name']} ({line})"
        print(f"{who}: {row['trouble']}")
        if row["remedies"]:
            print(f"  {say('remedy.line', remedy=row['remedies'][0]['says'])}")
    if len(refused) > 10:
        print(f"And {len(refused) - 10} more; the report has them all.")
    counts = made["counts"]
    print(
        f"{made['lesson']}: {counts['drafted']} of {counts['rows']} bodies drafted, "
        f"{counts['with_errors']} of them with errors in the proof."
    )
    failed = counts["not_drafted"] + counts["with_errors"]
    if failed:
        print(f"Of the {failed} that failed, a change of values mends {counts['with_remedy']}; the report names it.")
    print(options.report)
    return 0


def _print_findings(findings: Sequence[Diagnostic], pattern: Pattern) -> None:
    from kit.prose.readings import ruling_of
    from kit.rulers import ruled

    with reading(pattern.lesson.units), ruled(ruling_of(pattern)):
        for finding in findings:
            where = f"{finding.where}: " if finding.where else ""
            text = re.sub(r"\s+", " ", f"{where}{finding.what} {finding.do}").strip()
            print(f"{finding.level}: {text}")


def _version() -> str:
    try:
        return version("pattern-lesson-kit")
    except PackageNotFoundError:
        return "(not installed)"


if __name__ == "__main__":
    sys.exit(main())
