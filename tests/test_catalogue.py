"""The code and the English catalogue agree: every key said in the code has its message, every place of a message is
filled, no message of the findings lies unused, and no finding is written in the code."""

from __future__ import annotations

import ast
import re
from collections.abc import Iterator
from functools import lru_cache
from pathlib import Path

import pytest
from fluent.syntax import FluentParser
from fluent.syntax import ast as fluent
from fluent.syntax.visitor import Visitor

ROOT = Path(__file__).resolve().parent.parent
ENGLISH = ROOT / "templates" / "language" / "en"
ROOMS = ("proof", "sewing", "cloth", "wording", "wear")
TOLD = {"Diagnostic", "trouble", "refuse", "fold_finding", "_finding", "_told"}
"""What makes a finding or trouble; its texts are arguments."""
SAID = {"message", "say"}
"""What takes the key of a message and its values."""
GLUE = "\0"


class Places(Visitor):
    """The names of the places in a message."""

    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: fluent.VariableReference) -> None:
        self.names.add(node.id.name)


@lru_cache
def messages() -> dict[str, set[str]]:
    """{key of a message: the names of its places}."""
    found = {}
    for path in sorted(ENGLISH.glob("*.ftl")):
        for entry in FluentParser().parse(path.read_text("utf-8")).body:
            if isinstance(entry, fluent.Message):
                places = Places()
                places.visit(entry)
                found[entry.id.name] = places.names
    return found


def trees(*rooms: str) -> Iterator[tuple[Path, ast.Module]]:
    for room in rooms:
        for path in sorted((ROOT / "kit" / room).rglob("*.py")):
            yield path, ast.parse(path.read_text("utf-8"))


def called(node: ast.AST) -> str:
    if not isinstance(node, ast.Call):
        return ""
    return node.func.id if isinstance(node.func, ast.Name) else getattr(node.func, "attr", "")


def text_of(node: ast.expr) -> str:
    """The text of a string in the code, `GLUE` in the places filled in; empty for anything else."""
    if isinstance(node, ast.Constant) and isinstance(node.value, str):
        return node.value
    if isinstance(node, ast.JoinedStr):
        return "".join(part.value if isinstance(part, ast.Constant) else GLUE for part in node.values)  # type: ignore[misc]
    return ""


def unsaid(source: ast.AST) -> list[str]:
    """Words with a space between them that stand in the arguments of a finding and not within `message`."""

    def texts(node: ast.AST) -> Iterator[str]:
        if called(node) in SAID:
            return
        if isinstance(node, ast.Constant | ast.JoinedStr):
            if re.search(r"[a-z] |[a-z]\0| [a-z]|\0[a-z]|\.$", text := text_of(node)):
                yield text
            return
        for child in ast.iter_child_nodes(node):
            yield from texts(child)

    found = []
    for node in ast.walk(source):
        if called(node) in TOLD:
            assert isinstance(node, ast.Call)
            for each in (*node.args, *(word.value for word in node.keywords if word.arg in ("says", "at", "can"))):
                found += [f"{node.lineno}: {text}" for text in texts(each)]
    return found


CODES = re.compile(r"^[a-z_\0]+$")


@pytest.mark.parametrize("room", ROOMS)
def test_no_finding_is_written_in_the_code(room: str) -> None:
    found = [
        f"{path.relative_to(ROOT)}:{text}"
        for path, tree in trees(room)
        for text in unsaid(tree)
        if not CODES.match(text.partition(": ")[2])
    ]
    assert found == []


def test_a_text_in_the_code_is_seen() -> None:
    source = (
        'Diagnostic("code", "error", message("proof.x", call=f"make.{y}"), f"{piece.title}, step \'{title}\'", can="Sew it.")\n'  # noqa: E501
        'trouble(f"{kind}_late", "it is late" if late else message("a.b"))\n'
    )
    found = unsaid(ast.parse(source))
    assert [text for text in found if not CODES.match(text.partition(": ")[2])] == [
        f"1: {GLUE}, step '{GLUE}'",
        "1: Sew it.",
        "2: it is late",
    ]


@pytest.mark.parametrize("room", ROOMS)
def test_what_is_said_has_its_message_and_every_place_of_it_is_filled(room: str) -> None:
    known = messages()
    trouble = []
    for path, tree in trees(room):
        for node in ast.walk(tree):
            if called(node) not in SAID:
                continue
            assert isinstance(node, ast.Call)
            key = text_of(node.args[0]).replace(".", "-")
            if not key:
                continue  # a key made elsewhere
            shape = re.compile(re.escape(key).replace(re.escape(GLUE), ".+"))
            meant = [name for name in known if shape.fullmatch(name)]
            if not meant:
                trouble.append(f"{path.name}:{node.lineno} {key.replace(GLUE, '...')} has no message")
            open_ended = len(node.args) > 1 or any(word.arg is None for word in node.keywords)
            if GLUE in key or open_ended:
                continue
            given = {word.arg for word in node.keywords}
            trouble += [f"{path.name}:{node.lineno} {key} lacks {place}" for place in known.get(key, set()) - given]
    assert trouble == []


@pytest.mark.parametrize("family", ["proof", "sewing_trouble", "cloth", "wear"])
def test_no_message_of_the_findings_lies_unused(family: str) -> None:
    shapes = {
        text_of(node).removeprefix(f"{family}.")
        for _, tree in trees(*ROOMS)
        for node in ast.walk(tree)
        if isinstance(node, ast.Constant | ast.JoinedStr) and text_of(node).strip(GLUE)
    }
    ways = [re.compile(re.escape(s).replace(re.escape(GLUE), "[a-z_]+?")) for s in shapes if re.search("[a-z]", s)]
    own = [name.removeprefix(f"{family}-") for name in messages() if name.startswith(f"{family}-")]
    ends = {name.removesuffix("_do") for name in own}
    idle = [n for n in own if not any(way.fullmatch(n) for way in ways) and n.removesuffix("_do") not in _coded(ends)]
    assert own and idle == []


def _coded(names: set[str]) -> set[str]:
    """Those of the names that are codes of findings: their keys are made from the code."""
    codes = {text_of(n) for _, tree in trees(*ROOMS) for n in ast.walk(tree) if isinstance(n, ast.Constant)}
    return names & codes
