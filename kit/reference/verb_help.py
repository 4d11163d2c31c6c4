"""What the verbs of a lesson can say of themselves: a line, their arguments with units and defaults, an example.

All of it comes from the verb's own signature and docstring. A docstring ends in an `Example::` block of up to three
lines, which a test runs; its first sentence is the line shown beside a name that is offered.
"""

from __future__ import annotations

import ast
import inspect
import re
import textwrap
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, Literal, get_args, get_origin

from kit.language import say
from kit.lesson.bench import VERBS as BENCH
from kit.lesson.bench_strip import BenchStrip
from kit.lesson.pencil import PaperLine, PaperPoint
from kit.sewing.handle import PieceHandle, StripHandle
from kit.sewing.make import VERBS as OPERATIONS
from kit.sewing.run import Edges
from kit.units import Length

Kind = Literal["piece", "line", "point", "strip", "make", "cut piece", "edges", "mark", "fold", "cut strip", "length"]
"""What a name in a step can stand for: on the bench a piece, line, point or strip; in a sewing step `make`, a cut
piece, its edges, marks and folds, a strip; a length."""

_REGISTERED: dict[str, Mapping[str, Callable[..., Any]]] = {"piece": BENCH, "make": OPERATIONS}
_WITH_METHODS: dict[str, type] = {
    "line": PaperLine,
    "point": PaperPoint,
    "strip": BenchStrip,
    "cut piece": PieceHandle,
    "cut strip": StripHandle,
    "edges": Edges,
}
_NOT_WRITTEN = frozenset({"lay_dart", "freeze"})  # the kit itself writes these, no lesson
_GIVES: dict[str, Kind] = {
    "PaperPoint": "point",
    "PaperLine": "line",
    "Length": "length",
    "Run": "edges",
    "Self": "edges",
    "PieceHandle": "cut piece",
}
_WIDE = 78  # JupyterLab's tooltip holds as many
_EXAMPLE = re.compile(r"^Examples?::[ ]*\n(?P<lines>(?:[ \t]*\n|[ \t]+.*\n?)+)", re.MULTILINE)
_SENTENCE = re.compile(r".+?(?:\.(?=\s)|$)", re.DOTALL)
_LINE = 80


@dataclass(frozen=True)
class Verb:
    """A word that may be written after a dot: its `name`, the `function` behind it and what it `gives` ("" where that
    is nothing to go on with). A `quality` is read without brackets, as `edge.start` is."""

    name: str
    function: Callable[..., Any]
    gives: Kind | Literal[""] = ""
    quality: bool = False

    @property
    def words(self) -> str:
        """All its docstring but the example, as one paragraph each."""
        text = _EXAMPLE.sub("", inspect.cleandoc(self.function.__doc__ or "") + "\n")
        parts = (part.strip() for part in re.split(r"\n\s*\n", text) if part.strip())
        return "\n\n".join(part if part.startswith(">>> ") else " ".join(part.split()) for part in parts)

    @property
    def sentence(self) -> str:
        """The first sentence of its docstring."""
        found = _SENTENCE.match(self.words.split("\n\n")[0])
        return found[0] if found else ""

    @property
    def line(self) -> str:
        """That sentence to stand beside a name; of a long one what comes before its colon."""
        sentence = self.sentence.rstrip(".").replace("`", "")
        return sentence if len(sentence) <= _LINE else re.split(r"[:;] ", sentence)[0]

    @property
    def example(self) -> str:
        """The lines of its example, "" where it has none."""
        found = _EXAMPLE.search(inspect.cleandoc(self.function.__doc__ or "") + "\n")
        return textwrap.dedent(found["lines"]).strip() if found else ""

    @property
    def arguments(self) -> tuple[inspect.Parameter, ...]:
        """What is written between its brackets."""
        return () if self.quality else tuple(inspect.signature(self.function).parameters.values())[1:]


@cache
def verbs_of(kind: str) -> Mapping[str, Verb]:
    """The verbs of one kind of thing by name; none for a kind that has none."""
    found = [Verb(name, function, _gives(function)) for name, function in sorted(_REGISTERED.get(kind, {}).items())]
    for name, member in sorted(vars(_WITH_METHODS.get(kind, object)).items()):
        if isinstance(member, property) and member.fget and _gives(member.fget):
            found.append(Verb(name, member.fget, _gives(member.fget), quality=True))
        elif inspect.isfunction(member):
            found.append(Verb(name, member, _gives(member)))
    return {verb.name: verb for verb in found if not verb.name.startswith("_") and verb.name not in _NOT_WRITTEN}


def _gives(function: Callable[..., Any]) -> Kind | Literal[""]:
    return _GIVES.get(str(function.__annotations__.get("return", "")), "")


# ---- in full ----------------------------------------------------------------------------------------------


def in_full(verb: Verb, owner: str) -> str:
    """A verb as text to read at the cursor: how it is written, after the name of its `owner`, what it does, an example,
    its arguments one a line, and what else is to be said. What is asked for most stands first: a tooltip is low."""
    parts = [f"{owner}.{_call(verb)}", _wrapped(verb.sentence)]
    if verb.example:
        parts.append(say("reference.example") + "\n" + textwrap.indent(verb.example, "  "))
    if arguments := verb.arguments:
        wide = max(len(written(argument)) for argument in arguments)
        parts.append("\n".join(f"  {written(argument):{wide}}  {told(argument, verb)}" for argument in arguments))
    parts.append("\n\n".join(_wrapped(part) for part in verb.words[len(verb.sentence) :].strip().split("\n\n")))
    return "\n\n".join(part for part in parts if part)


def _wrapped(text: str) -> str:
    return text if text.startswith(">>> ") else "\n".join(textwrap.wrap(text, _WIDE))


def _call(verb: Verb) -> str:
    if verb.quality:
        return verb.name
    words = [
        f"{argument.name}=..." if argument.kind is argument.KEYWORD_ONLY else written(argument)
        for argument in verb.arguments
    ]
    line = f"{verb.name}({', '.join(words)})"
    return "\n    ".join(textwrap.wrap(line, _WIDE - 12, break_long_words=False, break_on_hyphens=False))


def written(argument: inspect.Parameter) -> str:
    """An argument as it is named in a call."""
    if argument.kind is argument.VAR_POSITIONAL:
        return f"{argument.name}, ..."
    return "name=..." if argument.kind is argument.VAR_KEYWORD else argument.name


def told(argument: inspect.Parameter, verb: Verb) -> str:
    """What an argument takes, and what holds where it is left out."""
    function = inspect.unwrap(verb.function)
    what = _LANDMARK if _takes_landmark(argument, function) else _kinds(str(argument.annotation), function.__globals__)
    given = argument.default
    if given is argument.empty:
        return what
    if given is None or given in ("", ()):
        return f"{what}; may be left out"
    said = f"{given:g} mm" if isinstance(given, Length) else repr(given).replace("'", '"')
    return f"{what}; {said} where nothing is said"


_LANDMARK = "a length along it, a mark, a notch or the edge beside it"


def _takes_landmark(argument: inspect.Parameter, function: Callable[..., Any]) -> bool:
    return str(argument.annotation) == "At" and function.__module__ == Edges.__module__


_SAID = {
    "Size": "a length, such as 1.5 * cm",
    "Length": "a length",
    "PaperPoint": "a point",
    "PaperLine": "a line",
    "BenchPiece": "a piece",
    "OpenPiece": "a piece",
    "At": "a length along it or a point",
    "Notched": "a length along it, two of them, or a point",
    "PieceHandle": "a piece",
    "Runs": "edges, one or several",
    "Run": "an edge",
    "Place": "a mark",
    "Mark": "a mark",
    "Fold": "a dart, pleat or tuck",
    "StripHandle": "a strip",
    "StripEdges": "a strip's sides or ends",
    "Opening": "a mark or (length, length)",
    "Operation": "what was begun",
    "Across": "the name both edges of the seam have, or the two edges",
    "str": "a word in quotation marks",
    "bool": "True or False",
    "int": "a whole number",
    "float": "a number",
    "Edges": "edges, one or several",
}
_SHORT = {
    "At": "length or point",
    "PaperPoint": "point",
    "Size": "length",
    "str": "word",
    "PaperLine": "line",
    "Run": "edge",
}


def _kinds(annotation: str, names: Mapping[str, Any]) -> str:
    """An annotation in words."""
    try:
        parts = _parts(ast.parse(annotation, mode="eval").body)
    except SyntaxError:
        return annotation
    inner = [item for part in parts for item in _items(part)]
    single = [part for part in parts if not _items(part)] or inner
    texts = [ast.unparse(part) for part in single]
    named = "str" in texts and len(texts) > 1
    said = [_kind(part, names) for part in single if not (named and ast.unparse(part) == "str")]
    said += ["its name in quotation marks"] if named else []
    return _either(list(dict.fromkeys(said))) + (", one or several" if inner else "")


def _parts(node: ast.expr) -> list[ast.expr]:
    """The alternatives of a union, without None."""
    if isinstance(node, ast.BinOp) and isinstance(node.op, ast.BitOr):
        return [*_parts(node.left), *_parts(node.right)]
    return [] if isinstance(node, ast.Constant) and node.value is None else [node]


def _items(node: ast.expr) -> list[ast.expr]:
    """What a row of any length holds: of `tuple[str, ...]` str; nothing where it is no such row."""
    if not (isinstance(node, ast.Subscript) and isinstance(node.value, ast.Name)):
        return []
    if node.value.id in ("Sequence", "list"):
        return _parts(node.slice)
    inner = node.slice.elts if node.value.id == "tuple" and isinstance(node.slice, ast.Tuple) else []
    return _parts(inner[0]) if any(isinstance(item, ast.Constant) for item in inner) else []


def _kind(node: ast.expr, names: Mapping[str, Any]) -> str:
    text = ast.unparse(node)
    if isinstance(node, ast.Subscript) and isinstance(node.value, ast.Name):
        inner = node.slice.elts if isinstance(node.slice, ast.Tuple) else [node.slice]
        if node.value.id == "Literal":
            return _either([f'"{ast.literal_eval(item)}"' for item in inner])
        return f"({', '.join(_either([_short(part) for part in _parts(item)]) for item in inner)})"
    alias = names.get(text)
    if get_origin(alias) is Literal:
        return _either([f'"{word}"' for word in get_args(alias)])
    return _SAID.get(text, text)


def _short(node: ast.expr) -> str:
    text = ast.unparse(node)
    return _SHORT.get(text, text)


def _either(words: list[str]) -> str:
    return words[0] if len(words) == 1 else f"{', '.join(words[:-1])} or {words[-1]}"
