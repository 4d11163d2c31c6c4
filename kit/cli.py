"""The command `lessonkit`: build a lesson's booklet and pattern pages, start a new lesson, check one."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from importlib.metadata import PackageNotFoundError, version
from pathlib import Path
from typing import TYPE_CHECKING

from kit.bar_cli import bar
from kit.class_cli import add_commands
from kit.compare_cli import add_compare
from kit.draft_cli import add_choices, add_draft, add_no_paper, asked_draft, seconds
from kit.files_cli import add_files
from kit.findings_cli import print_advice, print_findings
from kit.fit_cli import add_fit
from kit.grade_cli import add_grade
from kit.help_cli import add_help
from kit.live_cli import add_live, add_live_at, write_live
from kit.pages_cli import add_pages
from kit.quick_start import leave_out_address_grammar
from kit.ranges_cli import add_ranges, check_ranges
from kit.release_cli import add_release
from kit.roster_cli import add_roster
from kit.terminal_cli import ended
from kit.trust_cli import say_code
from kit.words_cli import add_words

if TYPE_CHECKING:
    pass

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
    add_choices(build)
    build.add_argument(
        "--forms",
        default="",
        metavar="FORMS",
        help="forms of the booklet, such as a4,letter,html,epub (these when left out); also a5, half-letter, large "
        "(18 pt on A4) or letter-large, fold (A5 laid on A4 to fold and staple) or fold-letter; all; live: a folder "
        "for a web space, with a booklet that follows its reader's measurements",
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

    add_pages(commands, _CODE)
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
    add_choices(check)
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
        "--timeout", type=seconds, default=120, metavar="S", help="seconds for a cell or ten rows (120 when left out)"
    )
    bodies.set_defaults(run=_bodies)
    return parser


def _build(options: argparse.Namespace) -> int:
    from kit.language import SOURCE, speaking

    with speaking(options.language or SOURCE):  # refuses a language without a catalogue before anything is run
        return _built(options)


def _built(options: argparse.Namespace) -> int:
    """The build, which tells what it does in the language that is spoken."""
    from kit.booklet.asked_forms import FOLDED, asked_forms
    from kit.booklet.build import build
    from kit.language import say
    from kit.lesson.no_paper import read_no_paper

    live = asked_forms(options.forms).live  # refuses an unknown form before anything is said or run
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
        print(say("building.left_out", what=line))
    for line in built.notes:
        print(line)
    print_findings(built.findings, built.pattern)
    if options.timings:
        for stage, seconds in built.timings.items():
            print(f"{stage:>33}  {seconds:6.2f} s")
        print(f"{'total':>33}  {built.seconds:6.2f} s  (booklet PDFs are set beside the other stages)")
    if built.failed:
        print(say("building.failed"))
    if built.earlier:
        print(say("building.earlier", files=", ".join(built.earlier)))
    for path in built.paths.values():
        print(path)
    if live:
        write_live(
            options.notebook,
            out / "booklet-live",
            options.language,
            options.timeout,
            size=options.size,
            units=options.units,
            draft=draft,
        )
    if any(file in built.paths for file in FOLDED):
        print(say("screen.fold"))
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
            print_advice(answer.advice)
            status = 2
            continue
        findings = prove(answer.pattern)
        for note in (*answer.notes, *(raw if len(answers) == 1 else ())):
            print(note)
        if len(answers) == 1:
            compose(answer, book, folder, findings)  # its words, references and photos must be sound too
            for line in dict.fromkeys(folder.left_out):
                print(f"Left out of the booklet: {line}")
        print_findings(findings, answer.pattern)
        if (why := why_untried(answer.pattern)) is not None:
            print(why)
        print_advice(answer.advice)
        title, size = answer.pattern.lesson.title, answer.pattern.body.name
        if failed(findings):
            print(f"{title}, {size}: the proof failed.")
            status = max(status, 1)
        else:
            print(f"{title}, {size}: {'nothing found' if not findings else 'no errors'}.")
    return status


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


def _version() -> str:
    try:
        return version("pattern-lesson-kit")
    except PackageNotFoundError:
        return "(not installed)"


if __name__ == "__main__":
    sys.exit(main())
