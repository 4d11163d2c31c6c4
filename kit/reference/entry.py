"""An entry of the reference: a verb with all that is known of it, its example as a cell that runs, and what came of it.

Everything is read from the verb itself: its docstring and signature, its rules and refusals, and its example, worked on
a practice lesson.
"""

from __future__ import annotations

import ast
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from kit.lesson.lesson import Lesson, unheard
from kit.lesson.pattern import Pattern
from kit.prose import sentences
from kit.prose.alt import step_alt
from kit.reference.practice import DRAFTED, EMPTY, KINDS, asked_for, names_in, practice_cloth, practice_paper, written
from kit.reference.refusals import refused
from kit.reference.verb_help import Kind, Verb, verbs_of

_DATA = Path(__file__).parent / "data"
_OWNERS: Mapping[str, str] = {
    "piece": "front",
    "line": "front.side",
    "point": "front.neck_point",
    "strip": "tie",
    "make": "make",
    "cut piece": "front",
    "edges": "front.side",
}


@dataclass(frozen=True)
class VerbEntry:
    """The entry of one `verb` of a `kind` of thing."""

    kind: Kind
    verb: Verb

    @property
    def key(self) -> str:
        """What it is known by: `make.set_band`, `piece.notch`."""
        return f"{self.kind}.{self.verb.name}"

    @property
    def owner(self) -> str:
        """What may stand before its dot."""
        return _OWNERS[self.kind]

    @property
    def drafts(self) -> bool:
        return self.kind in DRAFTED

    @property
    def refuses(self) -> tuple[str, ...]:
        """What it refuses that is its own."""
        return refused(self.verb.function)

    @property
    def wanted_for(self) -> tuple[str, ...]:
        """What one wants who finds it, in the words of the trade."""
        return tuple(words for words, keys in trade_words().items() if self.key in keys)

    @property
    def lines(self) -> str:
        """Its example, and what makes seen what the example only finds: a line or point drawn, a length said, a part
        of an edge stitched."""
        example = self.verb.example
        return "\n".join([example, *_seen(example, self.kind, self.verb.gives)])

    @property
    def arguments(self) -> tuple[str, ...]:
        """The pieces and strips its example is a step of."""
        return asked_for(self.lines, self.kind)

    @property
    def cell(self) -> str:
        """Its example as a cell of a notebook: a fresh practice lesson, and a step of it."""
        names = self.arguments
        title = self.verb.name.replace("_", " ").capitalize()
        given = "".join(
            f", {what}={_quoted([name for name in names if name in those])}"
            for what, those in (("makes", EMPTY), ("strips", ("tie",)))
            if self.drafts and any(name in those for name in names)
        )
        paper, decorator = ("practice_paper", "step") if self.drafts else ("practice_cloth", "sew")
        body = "\n".join(f"    {line}" for line in self.lines.split("\n"))
        return (
            f'lesson = {paper}("{self.key}")\n\n\n@lesson.{decorator}("{title}"{given})\n'
            f"def example({', '.join(names)}):\n{body}"
        )

    def worked(self) -> Pattern:
        """The pattern of the practice lesson with the example in it, nothing shown of it."""
        lesson: Lesson = unheard(practice_paper(self.key) if self.drafts else practice_cloth(self.key))
        lines = "\n".join(line for line in self.lines.split("\n") if not line.startswith("print("))
        names = self.arguments
        function = written("example", lines, names)
        if self.drafts:
            makes = tuple(name for name in names if name in EMPTY)
            lesson.step("Example", makes=makes, strips=tuple(name for name in names if name == "tie"))(function)
        else:
            lesson.sew("Example")(function)
        return lesson.work()

    def says(self) -> tuple[str, ...]:
        """What the kit says of the example: the sentences of an operation, of a verb of the bench what its picture
        shows; nothing of one that gives a length."""
        pattern = self.worked()
        if self.drafts:
            return () if self.verb.gives == "length" else (step_alt(pattern.steps[-1], pattern.lesson.units),)
        found: list[str] = []
        for operation in pattern.sewing[-1].operations:
            found += sentences(pattern, operation, pattern.lesson.units)
        return tuple(found)


@cache
def entries() -> Mapping[str, VerbEntry]:
    """Every entry by its key, kind after kind."""
    found = [VerbEntry(kind, verb) for kind in KINDS for verb in verbs_of(kind).values()]
    return {entry.key: entry for entry in found}


@cache
def trade_words() -> Mapping[str, tuple[str, ...]]:
    """What one may want to do, in the words of the trade, and the keys of the entries that do it."""
    return {words: tuple(keys) for words, keys in _trade_words().items() if words != "offered"}


@cache
def offered_words() -> Mapping[str, tuple[str, ...]]:
    """The same for what a lesson or the kit itself offers ("kit.read_chart"), where no verb is meant."""
    return {words: tuple(keys) for words, keys in _trade_words()["offered"].items()}


@cache
def _trade_words() -> Mapping[str, Any]:
    return tomllib.loads((_DATA / "trade_words.toml").read_text(encoding="utf-8"))


@dataclass(frozen=True)
class Group:
    """Entries of one subject, with a sentence about it."""

    title: str
    says: str
    keys: tuple[str, ...]


@cache
def groups(part: str) -> tuple[Group, ...]:
    """The subjects of `part`, "drafting" or "sewing", in the order of the reference."""
    read: dict[str, Any] = tomllib.loads((_DATA / "groups.toml").read_text(encoding="utf-8"))
    return tuple(Group(one["title"], one["says"], tuple(one["verbs"])) for one in read[part])


def _seen(example: str, kind: Kind, gives: str) -> list[str]:
    """The lines that make what an example finds seen."""
    body = ast.parse(example).body
    used = {name for node in body if isinstance(node, ast.Expr) for name in names_in(ast.unparse(node))}
    assigned = {_name(node): node.value for node in body if isinstance(node, ast.Assign) and _name(node)}
    found = [name for name in assigned if name not in used]
    if not found or kind == "make":
        return []
    if gives == "length":
        return [f"print({found[-1]})"]
    if kind not in DRAFTED:
        return [f"make.topstitch({name}, distance=6 * mm)" for name in found]
    if gives not in ("line", "point"):
        return []
    piece = next(name for name in asked_for(example, kind))
    lines = [name for name in found if _gives(assigned[name]) == "line"]
    points = [name for name in found if _gives(assigned[name]) == "point"]
    more = [f"{piece}.guide({', '.join(f'new_{name}={name}' for name in lines)})"] if lines else []
    return more + ([f"{piece}.mark({', '.join(f'new_{name}={name}' for name in points)})"] if points else [])


def _name(node: ast.Assign) -> str:
    return node.targets[0].id if isinstance(node.targets[0], ast.Name) else ""


def _gives(value: ast.expr) -> str:
    """What the last word of an expression gives: "line", "point" or something else."""
    node = value.func if isinstance(value, ast.Call) else value
    word = node.attr if isinstance(node, ast.Attribute) else ""
    for kind in ("point", "line", "piece"):
        if word in verbs_of(kind):
            return str(verbs_of(kind)[word].gives)
    return ""


def _quoted(names: list[str]) -> str:
    said = ", ".join(f'"{name}"' for name in names)
    return said if len(names) == 1 else f"({said})"
