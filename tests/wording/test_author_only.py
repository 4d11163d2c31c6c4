"""Refusals that stand in the code as English sentences: how many in each room, and why only who writes a lesson, a
theme or a command can bring them. A room without a reason has none, and no room may gain many unseen."""

from __future__ import annotations

import ast
from collections import Counter
from pathlib import Path

KIT = Path(__file__).resolve().parents[2] / "kit"
REASONS = {
    # room: (refusals in English at most, why a student cannot bring them)
    "atomic.py": (2, "the computer refuses a file to whoever builds"),
    "blocks": (63, "a traced drawing is read, and a block written, in the lesson's code"),
    "body": (14, "a size chart is written by the lesson's author"),
    "booklet": (
        75,
        "building a booklet: notebook (a lesson kept as text too), pictures, fonts, theme, reports and what is typed "
        "after --values are the author's",
    ),
    "class_cli.py": (1, "an address is given by who serves the class"),
    "cli.py": (2, "options that contradict each other"),
    "cloth": (2, "what a lesson says of its cloth"),
    "geometry": (5, "a path or an outline made in code without lines or with one name twice"),
    "language.py": (6, "a catalogue that lacks a message"),
    "lesson": (
        225,
        "names, words and arguments written in a step; bounds, and values that follow, written as functions; "
        "measurements of the lesson's own; steps, exercises, presets and fittings of the author",
    ),
    "live": (42, "calls in a cell, answers to exercises, options of a class"),
    "page": (
        30,
        "building a page: its folder, core and compiled packages, options, and what of a lesson cannot be in it",
    ),
    "pages_cli.py": (2, "options of whoever prints the pages"),
    "paper": (1, "a fault of the DXF writer itself"),
    "picture": (1, "a fault of a pen itself"),
    "piece": (8, "names of edges, darts and pleats written in code"),
    "placeholder.py": (2, "braces in the author's text"),
    "proof": (1, "a call in a cell"),
    "prose": (3, "braces in the author's text, a sentence of an operation"),
    "reference": (1, "a verb named where a practice lesson is made"),
    "release": (8, "options of whoever makes a release, and its folder"),
    "resources.py": (1, "an installation that lacks files"),
    "room": (20, "options of whoever serves a class or runs its hub, and what the teacher's machine lacks"),
    "roster": (11, "a table of bodies, options and workers of whoever makes the sets"),
    "scratch.py": (1, "the computer refuses a folder to whoever builds"),
    "sewing": (82, "runs, their parts and landmarks, marks, strips and words written in a sewing step"),
    "units.py": (4, "a bare number in code"),
    "wording": (1, "a value of an unknown kind"),
    "words_cli.py": (1, "the author's translation"),
}


def is_english(what: ast.expr) -> bool:
    """Whether a refusal is given as a text in the code rather than as a message."""
    if isinstance(what, ast.JoinedStr):
        return True
    if isinstance(what, ast.Constant):
        return isinstance(what.value, str) and bool(what.value)
    if isinstance(what, ast.IfExp):
        return is_english(what.body) or is_english(what.orelse)
    if isinstance(what, ast.BinOp):
        return is_english(what.left) or is_english(what.right)
    return False


def refusals(source: str) -> list[bool]:
    """For each refusal, whether it is English."""
    return [
        is_english(node.args[0])
        for node in ast.walk(ast.parse(source))
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") in ("KitError", "TooNarrow") and node.args
    ]


def test_every_refusal_in_english_has_a_room_with_a_reason() -> None:
    english: Counter[str] = Counter()
    every = 0
    for path in sorted(KIT.rglob("*.py")):
        found = refusals(path.read_text("utf-8"))
        every += len(found)
        english[path.relative_to(KIT).parts[0]] += sum(found)
    english = +english
    print(f"\n{every} refusals, {english.total()} of them in English")
    assert {room: count for room, count in english.items() if room not in REASONS} == {}
    more = {room: (count, REASONS[room][0]) for room, count in english.items() if count > REASONS[room][0]}
    assert more == {}, "say the new ones by message(...), or raise the figure with a reason"


def test_a_text_and_a_message_are_told_apart() -> None:
    calls = (
        'KitError("a")',
        'KitError(f"{a} b")',
        'KitError(message("a.b"))',
        'KitError(x if y else "a")',
        "KitError(e.told)",
    )
    source = "\n".join(calls)
    assert refusals(source) == [True, True, False, True, False]
