"""In which order test files are tried for a change in a module: those of its name first, then those that import it,
then what else its folder has.

Most changes are noticed by a test of the module's own name, so that nothing else need run. Which tests run through a
line is not measured: for one room that takes longer than forty trials.
"""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from pathlib import Path, PurePosixPath

AT_ONCE = 8
"""Test files of the folder that run in one go."""
FEW = 8
"""A module that so many test files of other folders import, or fewer, is theirs as well: they come before the rest of
the folder. What more of them import is used everywhere, and they come last."""
_ELSEWHERE = ("bench", "browser", "fuzz")  # folders whose tests are no part of the quick check


@dataclass(frozen=True)
class Round:
    """Test files (paths in the tree) that are tried together; `near` by name, or in the folder and importing it."""

    files: tuple[str, ...]
    near: bool


def rounds(root: Path, module: str, seconds: Callable[[str], float], without: Sequence[str] = ()) -> tuple[Round, ...]:
    """The test files for a change in `module` (a path in the tree at `root`), each once, nearest first; within each
    degree of nearness those that take the fewest `seconds` first. Files of the names `without` are left out."""
    return tuple(_rounds(root, module, seconds, frozenset(without)))


def _rounds(root: Path, module: str, seconds: Callable[[str], float], without: frozenset[str]) -> Iterator[Round]:
    path = PurePosixPath(module)
    parts = path.parent.parts if path.stem == "__init__" else (*path.parent.parts, path.stem)
    folder = f"tests/{path.parts[1]}/"
    texts = {file: text for file, text in _tests(root) if PurePosixPath(file).stem not in without}
    own = [file for file in texts if file.startswith(folder)]
    named = [file for file in own if _is_named(PurePosixPath(file).stem, parts[-1])]
    importing = [
        file
        for file, text in texts.items()
        if file not in named and parts[-1] in text and ".".join(parts) in imports(text)
    ]
    inside = [file for file in importing if file in own]
    outside = [file for file in importing if file not in own]
    rest = [file for file in own if file not in named and file not in inside]

    def ordered(files: Sequence[str]) -> tuple[str, ...]:
        return tuple(sorted(files, key=lambda file: (seconds(file), file)))

    if named:
        exact = [file for file in named if PurePosixPath(file).stem == f"test_{parts[-1]}"]
        yield Round((*exact, *ordered([file for file in named if file not in exact])), near=True)
    if inside:
        yield Round(ordered(inside), near=True)
    for files in (outside, rest) if len(outside) <= FEW else (rest, outside):
        order = ordered(files)
        for at in range(0, len(order), AT_ONCE):
            yield Round(order[at : at + AT_ONCE], near=False)


@cache
def imports(text: str) -> frozenset[str]:
    """Dotted names of every module of the kit that a test file may import by one of its lines: of `from kit.a import b`
    both `kit.a` and `kit.a.b`, as the line does not say whether `b` is a module."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(text)):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
            found.add(node.module)
            found |= {f"{node.module}.{alias.name}" for alias in node.names}
    return frozenset(name for name in found if name.split(".")[0] == "kit")


def _is_named(test: str, stem: str) -> bool:
    return test == f"test_{stem}" or test.startswith(f"test_{stem}_")


@cache
def _tests(root: Path) -> tuple[tuple[str, str], ...]:
    return tuple(
        (path.relative_to(root).as_posix(), path.read_text("utf-8"))
        for path in sorted((root / "tests").rglob("test_*.py"))
        if path.relative_to(root).parts[1] not in _ELSEWHERE
    )
