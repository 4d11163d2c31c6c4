"""An example lesson written again in a made-up language: every piece, edge, point, guide, mark, dart, parameter and
title is renamed, each word spelt backwards, in the notebook's own cells. What a name says in English is lost; what a
thing is must come from its role. `shape` is what is left of a result when its words are taken away."""

from __future__ import annotations

import ast
import json
import re
from collections.abc import Callable, Iterator, Mapping
from dataclasses import fields, is_dataclass, replace
from pathlib import Path
from typing import Any

from kit.blocks.block import Block
from kit.body import workshop_chart
from kit.body.body import Body
from kit.geometry import Point
from kit.lesson.another import find_lesson
from kit.lesson.lesson import Lesson
from kit.lesson.pattern import Pattern
from kit.picture.drawing import Dot, Drawing, Fill, Label, Stroke
from kit.piece.piece import Piece

NOTEBOOKS = Path(__file__).resolve().parents[1] / "example_notebooks"
_SHOWS = re.compile(r"^(panel|body_form|canvas|player)\(|^skirt = ", re.MULTILINE)
_NAMING = (
    "draw",
    "mark",
    "guide",
    "allow",
    "say",
    "measure",
    "fitting",
    "preset",
    "try_on",
)  # their keywords are names
_WORDS = ("title", "said", "name")  # keywords whose text people read
_TITLED = ("step", "sew", "finished", "Lesson", "variation")  # the first argument is a title
_OPTIONS = ("pressed", "laid", "kind", "style", "finish", "method", "way", "units", "size", "lie", "hold", "share")


def foreign(name: str) -> str:
    """A name in the other language: every word of it backwards, but for the `far_` that the bench adds."""
    return "_".join(word if word == "far" else word[::-1] for word in name.split("_"))


def foreign_words(text: str) -> str:
    return " ".join(word[::-1] for word in text.split(" "))


def names_in(pattern: Pattern) -> set[str]:
    """Every name of the author's in a pattern."""
    found = {value.name for value in pattern.values} | {strip.name for strip in pattern.strips}
    for piece in (*pattern.start, *pattern.pieces, *(piece for step in pattern.steps for piece in step.pieces)):
        found.add(piece.name)
        for things in (piece.edges, piece.marks, piece.darts, piece.pleats, piece.notches):
            found.update(thing.name for thing in things)
        found.update(name for name, _ in (*piece.points, *piece.guides))
    found.update(spot.name for step in pattern.steps for spot in step.spots)
    found -= {measure.name for measure in pattern.body.measures} | {"outer", ""}
    own = {
        name for name in found if name.isidentifier() and not name.startswith("buttonhole_")
    }  # those the bench names
    return {name for name in own if foreign(name) != name}


class _Renamed(ast.NodeTransformer):
    """The same cell in the other language."""

    def __init__(self, names: set[str]) -> None:
        self.names = names

    def _name(self, name: str) -> str:
        return foreign(name) if name in self.names else name

    def visit_Name(self, node: ast.Name) -> Any:
        return ast.Name(self._name(node.id), node.ctx)

    def visit_arg(self, node: ast.arg) -> Any:
        return ast.arg(self._name(node.arg))

    def visit_Attribute(self, node: ast.Attribute) -> Any:
        of_kit = isinstance(node.value, ast.Name) and node.value.id in ("make", "lesson", "top")
        return ast.Attribute(self.visit(node.value), node.attr if of_kit else self._name(node.attr), node.ctx)

    def visit_Constant(self, node: ast.Constant) -> Any:
        if not isinstance(node.value, str):
            return node
        text = node.value
        if all(part.isidentifier() for part in text.split(".")):
            return ast.Constant(".".join(self._name(part) for part in text.split(".")))
        return ast.Constant(re.sub(r"\{(\w+)", lambda found: "{" + self._name(found[1]), text))

    def visit_Call(self, node: ast.Call) -> Any:
        verb = node.func.attr if isinstance(node.func, ast.Attribute) else getattr(node.func, "id", "")
        if verb == "open_lesson":
            return ast.Call(ast.Name("opened", ast.Load()), node.args, [])
        given = node.args if verb == "role" else [self.visit(arg) for arg in node.args]
        made = ast.Call(self.visit(node.func), given, [])
        if verb in _TITLED and node.args and isinstance(node.args[0], ast.Constant):
            made.args[0] = ast.Constant(foreign_words(node.args[0].value))
        for keyword in node.keywords:
            name, value = keyword.arg, keyword.value
            text = isinstance(value, ast.Constant) and isinstance(value.value, str)
            if text and (verb == "say" or name in _WORDS):
                new: ast.expr = ast.Constant(foreign_words(value.value))  # type: ignore[attr-defined, arg-type]
            elif text and name in _OPTIONS:
                new = value
            elif name == "start":
                new = ast.Call(ast.Name("foreign_block", ast.Load()), [value], [])
            else:
                new = self.visit(value)
            made.keywords.append(ast.keyword(self._name(name) if name and verb in _NAMING else name, new))
        return made

    def visit_FunctionDef(self, node: ast.FunctionDef) -> Any:
        self.generic_visit(node)
        node.name = self._name(node.name)
        return node


def foreign_piece(piece: Piece, names: set[str]) -> Piece:
    """A block's piece in the other language. Its roles stay: they are what it is."""

    def n(name: str) -> str:
        return foreign(name) if name in names else name

    return replace(
        piece,
        name=n(piece.name),
        title=foreign_words(piece.title),
        edges=tuple(replace(e, name=n(e.name), said=foreign_words(e.said)) for e in piece.edges),
        cut=replace(piece.cut, fold=n(piece.cut.fold)),
        notches=tuple(replace(x, edge=n(x.edge)) for x in piece.notches),
        points=tuple((n(name), point) for name, point in piece.points),
        guides=tuple((n(name), path) for name, path in piece.guides),
        darts=tuple(replace(d, name=n(d.name), edge=n(d.edge), said=foreign_words(d.said)) for d in piece.darts),
        landmarks=tuple((n(name), what) for name, what in piece.landmarks or ()),
    )


def cells(notebook: str) -> Iterator[str]:
    for cell in json.loads((NOTEBOOKS / notebook).read_text(encoding="utf-8"))["cells"]:
        source = "".join(cell["source"])
        if cell["cell_type"] == "code":
            kept = [line for line in source.split("\n") if not _SHOWS.search(line)]
            if any(line.strip() for line in kept):
                yield "\n".join(kept)


PRACTICE = "blocks_and_moves.ipynb"
"""The practice sheet shows several lessons side by side; the first is the one its moves are tried on."""


def the_lesson(space: dict[str, Any], notebook: str) -> Any:
    if notebook != PRACTICE:
        return find_lesson(space)
    return next(thing for thing in space.values() if isinstance(thing, Lesson))


def plain_lesson(notebook: str) -> Any:
    """The lesson as it is written."""
    space: dict[str, Any] = {"__name__": "__lesson__"}
    for source in cells(notebook):
        source = source.replace("open_lesson(", "opened(")
        space["opened"] = plain_lesson
        exec(compile(source, notebook, "exec"), space)
    return the_lesson(space, notebook)


def foreign_lesson(notebook: str, names: set[str], roles: Mapping[str, str] | None = None) -> Any:
    """The lesson in the other language. `roles` are lines its author adds: {function that makes the piece: line}."""

    def foreign_block(block: Any) -> Callable[[Body], tuple[Piece, ...]]:
        def draft(body: Body) -> tuple[Piece, ...]:
            return tuple(foreign_piece(piece, names) for piece in block(body))

        return Block(foreign_words(block.title), block.measures, draft)

    space: dict[str, Any] = {
        "__name__": "__lesson__",
        "foreign_block": foreign_block,
        "opened": lambda path: foreign_lesson(path, names),
    }
    for source in cells(notebook):
        tree = ast.parse(source)
        for node in ast.walk(tree):
            if isinstance(node, ast.FunctionDef) and node.name in (roles or {}):
                node.body.extend(ast.parse((roles or {})[node.name]).body)
        exec(compile(ast.fix_missing_locations(_Renamed(names).visit(tree)), notebook, "exec"), space)
    return the_lesson(space, notebook)


def work(lesson: Any, size: str = "W4") -> Pattern:
    pattern: Pattern = lesson.work(workshop_chart()[size])
    return pattern


def shape(thing: Any) -> tuple[list[str], list[float]]:
    """What a result is without its words: the kinds of its parts in order, and every number in it."""
    kinds: list[str] = []
    numbers: list[float] = []

    def walk(thing: Any) -> None:
        if isinstance(thing, Drawing):
            kinds.append("drawing")
            walk([item for item in thing.items if not isinstance(item, Label)])
        elif isinstance(thing, bool) or thing is None:
            kinds.append(str(thing))
        elif isinstance(thing, int | float):
            numbers.append(float(thing))
        elif isinstance(thing, Point):
            numbers.extend((thing.x, thing.y))
        elif isinstance(thing, Mapping):
            walk(list(thing.values()))
        elif isinstance(thing, list | tuple):
            kinds.append(f"{len(thing)}")
            for part in thing:
                walk(part)
        elif is_dataclass(thing):
            kinds.append(type(thing).__name__)
            if isinstance(thing, Stroke | Fill | Dot):
                kinds.append(thing.role)
            for field in fields(thing):
                # Who said it is no part of the shape, nor what a value keeps so as not to work it out twice.
                if field.name != "by_hand" and not field.name.startswith("_"):
                    walk(getattr(thing, field.name))

    walk(thing)
    return kinds, numbers
