"""What editors and type checkers see of the verbs: two stub files made from the registered verbs.

`python -m kit.lesson.stubs` writes `kit/lesson/bench_types.pyi` and `kit/sewing/make_types.pyi`; a test fails when they
are older than the verbs. The verbs are found when the kit runs, so a checker could not see them otherwise.
"""

from __future__ import annotations

import ast
import builtins
import inspect
import re
import subprocess
import sys
from collections.abc import Callable, Mapping
from functools import cache
from pathlib import Path
from typing import Any, get_overloads

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.lesson.bench import VERBS as BENCH
from kit.sewing.make import VERBS as MAKE

KIT = Path(__file__).resolve().parents[1]
FILES = (KIT / "lesson" / "bench_types.pyi", KIT / "sewing" / "make_types.pyi")

_HEAD = '''"""Made by `python -m kit.lesson.stubs` from the verbs, for editors and type checkers. Not to be edited."""

'''

_NAMES = '''
class PaperName(PaperLine, PaperPoint):
    """What a name drawn on a piece stands for, `front.side` or `front.neck_point`: a line or a point. Which, only the
    draft knows, so that both are offered; `front.edge("side")` and `front.point("neck_point")` say it."""

    def to(self, other: PaperLine | PaperPoint, *, end: str = "end") -> PaperLine: ...
'''

_BENCH_NAMES = """
    def __getattr__(self, name: str) -> PaperName: ...
"""

Imports = dict[str, set[str]]


def stubs() -> dict[Path, str]:
    """The text of each stub file."""
    imports: Imports = {
        "typing": {"overload"},
        "kit.lesson.pencil": {"PaperLine", "PaperPoint"},
        "kit.lesson.bench": {"BenchPiece"},
    }
    verbs = _methods(BENCH, imports, returns=None)
    bench = _HEAD + _imports(imports) + _NAMES + "\nclass BenchVerbs:\n" + _BENCH_NAMES + verbs
    imports = {"kit.sewing.operation": {"Operation"}}
    verbs = _methods(MAKE, imports, returns="Operation")
    make = _HEAD + _imports(imports) + "\nclass MakeVerbs:\n" + verbs
    return {path: _formatted(path, text) for path, text in zip(FILES, (bench, make), strict=True)}


def _methods(verbs: Mapping[str, Callable[..., Any]], imports: Imports, returns: str | None) -> str:
    found = []
    for _, function in sorted(verbs.items()):
        ways = get_overloads(function) or [function]
        doc = inspect.cleandoc(function.__doc__ or "").replace("\n", "\n        ")
        for way in ways:
            mark = "    @overload\n" if len(ways) > 1 else ""
            head = _signature(way, imports, returns)
            found.append(f'{mark}    def {function.__name__}{head}:\n        """{doc}"""\n')
    return "\n".join(found)


def _signature(function: Callable[..., Any], imports: Imports, returns: str | None) -> str:
    """The signature as a method's, and what its annotations name added to `imports`."""
    own = inspect.signature(function)
    first, *rest = own.parameters.values()

    def said(annotation: Any) -> str:
        text = re.sub(r"\bOpenPiece\b", "BenchPiece", str(annotation))
        for node in ast.walk(ast.parse(text, mode="eval")):
            if isinstance(node, ast.Name) and not hasattr(builtins, node.id):
                home, name = _home(function.__module__, node.id)
                imports.setdefault(home, set()).add(name)
        return text

    parts = ["self"] + (["/"] if first.kind is first.POSITIONAL_ONLY else [])
    positional = first.kind is first.POSITIONAL_ONLY
    keyword = False
    for each in rest:
        if each.kind is each.POSITIONAL_ONLY and positional:
            parts.remove("/")
            parts += [_parameter(each, said), "/"]
            continue
        if each.kind is each.KEYWORD_ONLY and not keyword:
            parts.append("*")
        keyword = keyword or each.kind in (each.KEYWORD_ONLY, each.VAR_POSITIONAL)
        stars = "*" if each.kind is each.VAR_POSITIONAL else "**" if each.kind is each.VAR_KEYWORD else ""
        parts.append(stars + _parameter(each, said))
    return f"({', '.join(parts)}) -> {returns or said(own.return_annotation)}"


def _parameter(parameter: inspect.Parameter, said: Callable[[Any], str]) -> str:
    text = f"{parameter.name}: {said(parameter.annotation)}"
    if parameter.default is parameter.empty:
        return text
    plain = parameter.default in (None, ()) or type(parameter.default) in (str, bool, int, float)
    return f"{text} = {parameter.default!r}" if plain else f"{text} = ..."


@cache
def _brought(module: str) -> dict[str, str]:
    """The names a module imports, and where each comes from; what it imports with a star, where that comes from."""
    tree = ast.parse(inspect.getsource(sys.modules[module]))
    found: dict[str, str] = {}
    for node in (node for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) and node.module):
        home = str(node.module)
        found |= {alias.asname or alias.name: home for alias in node.names if alias.name != "*"}
        found |= _brought(home) if node.names[0].name == "*" else {}
    return found


def _home(module: str, name: str) -> tuple[str, str]:
    if name == "BenchPiece":
        return "kit.lesson.bench", name
    return _brought(module).get(name, module), name


def _imports(imports: Imports) -> str:
    def order(module: str) -> tuple[bool, str]:
        return module.startswith("kit."), module

    lines: list[str] = []
    last = False
    for module in sorted(imports, key=order):
        if lines and order(module)[0] != last:
            lines.append("")
        last = order(module)[0]
        lines.append(f"from {module} import {', '.join(sorted(imports[module]))}")
    return "\n".join(lines) + "\n"


def _formatted(path: Path, text: str) -> str:
    for arguments in (["check", "--fix-only", "--quiet", "--select", "I"], ["format", "--quiet"]):
        command = [sys.executable, "-m", "ruff", *arguments, "--stdin-filename", str(path), "-"]
        done = subprocess.run(command, input=text, capture_output=True, text=True, cwd=KIT.parent)
        if done.returncode:
            raise KitError(f"the stub {path.name} could not be put into style.", do=done.stderr.strip())
        text = done.stdout
    return text


def main() -> None:
    """Write the stub files."""
    for path, text in stubs().items():
        write_atomically(path, text)
        print(path)


if __name__ == "__main__":
    main()
