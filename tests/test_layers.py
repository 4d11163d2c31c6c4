"""Imports inside the kit go downward only (a room may import its own floor and those beneath)."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent

FLOORS = (
    ("geometry", "body", "units", "language", "errors", "resources", "placeholder", "atomic", "breath"),
    ("piece",),
    ("lesson", "sewing", "blocks"),
    ("proof", "cloth"),
    ("picture", "prose"),
    ("booklet", "paper"),
    ("cli", "words_cli", "class_cli", "live"),
)
FLOOR = {room: number for number, rooms in enumerate(FLOORS) for room in rooms}
ROOF = len(FLOORS)  # kit/__init__.py and kit/__main__.py: they may import any room, no room may import them


def module_name(path: Path, root: Path) -> str:
    parts = path.relative_to(root).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def floor_of(module: str) -> int:
    """The floor of `kit.room...`; the package's own face is the roof. KeyError for a room without a floor."""
    parts = module.split(".")
    return ROOF if len(parts) == 1 or parts[1] == "__main__" else FLOOR[parts[1]]


def imported(source: str, module: str, is_package: bool, rooms: set[str]) -> list[tuple[int, str]]:
    """(line, kit module) for every import of the kit in `source`, wherever it stands."""
    found: list[tuple[int, str]] = []
    for node in ast.walk(ast.parse(source)):
        if isinstance(node, ast.Import):
            found += [(node.lineno, alias.name) for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                parts = module.split(".")
                up = node.level - 1 if is_package else node.level
                base = ".".join(parts[: len(parts) - up] + ([node.module] if node.module else []))
            if base == "kit":  # `from kit import units` names a room, `from kit import Lesson` the public face
                found += [(node.lineno, f"kit.{a.name}" if a.name in rooms else "kit") for a in node.names]
            else:
                found.append((node.lineno, base))
    return [(line, name) for line, name in found if name == "kit" or name.startswith("kit.")]


def climbs(package: Path) -> list[str]:
    """Every import under `package` that goes up a floor, and every room without a floor, in words."""
    root = package.parent
    rooms = {path.stem for path in package.iterdir() if path.suffix == ".py" or path.is_dir()} - {"__init__"}
    trouble = []
    for path in sorted(package.rglob("*.py")):
        module = module_name(path, root)
        try:
            floor = floor_of(module)
            for line, name in imported(path.read_text("utf-8"), module, path.name == "__init__.py", rooms):
                if floor_of(name) > floor:
                    trouble.append(
                        f"{path.relative_to(root)}:{line}: floor {floor} imports {name}, floor {floor_of(name)}"
                    )
        except KeyError as room:
            trouble.append(f"{path.relative_to(root)}: the room {room} has no floor in tests/test_layers.py")
    return trouble


def test_imports_go_downward() -> None:
    assert len(list((ROOT / "kit").rglob("*.py"))) > 10
    assert climbs(ROOT / "kit") == []


@pytest.mark.parametrize(
    ("path", "source", "named"),
    [
        ("units.py", "from kit.piece.piece import Piece\n", "kit.piece.piece"),
        ("units.py", "def f():\n    import kit.paper\n", "kit.paper"),
        ("piece/piece.py", "from kit import Lesson\n", "imports kit,"),
        ("piece/piece.py", "from kit import picture\n", "kit.picture"),
        ("piece/piece.py", "from ..lesson import pattern\n", "kit.lesson"),
        ("piece/__init__.py", "from .. import lesson\n", "kit.lesson"),
        ("attic.py", "", "'attic' has no floor"),
    ],
)
def test_a_climbing_import_is_seen(tmp_path: Path, path: str, source: str, named: str) -> None:
    package = tmp_path / "kit"
    for room in ("piece", "lesson", "picture", "paper"):
        (package / room).mkdir(parents=True)
    (package / path).write_text(source)
    (trouble,) = climbs(package)
    assert named in trouble


def test_downward_and_level_imports_pass(tmp_path: Path) -> None:
    package = tmp_path / "kit"
    (package / "live").mkdir(parents=True)
    (package / "__init__.py").write_text("from kit.live.panel import Panel\n")
    (package / "cli.py").write_text("from kit.live import panel\nfrom kit import units\nimport json\n")
    (package / "units.py").write_text("from kit.errors import KitError\nimport kitten\n")
    (package / "live" / "panel.py").write_text("from . import canvas\nfrom ..units import cm\n")
    assert climbs(package) == []
