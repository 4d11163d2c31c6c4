"""Imports inside the kit go downward only, and no file of it imports itself on a way round."""

from __future__ import annotations

import ast
import sys
from functools import cache
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent

FLOORS = (
    ("diagnostic",),
    ("errors", "pausing"),
    ("resources", "placeholder", "atomic", "pack", "quick_start", "rulers", "scratch", "forgetting", "cores"),
    ("grammar",),
    ("language",),
    ("units",),
    ("wording",),
    ("geometry", "body"),
    ("piece",),
    ("sewing",),
    ("lesson",),
    ("blocks", "cloth"),
    ("wear",),
    ("proof", "prose"),
    ("picture",),
    ("paper",),
    ("booklet",),
    ("family", "release", "roster"),
    ("reference",),
    ("live",),
    ("page",),
    ("room",),
    (
        *("cli", "words_cli", "class_cli", "draft_cli", "ranges_cli", "compare_cli", "grade_cli", "trust_cli"),
        *("bar_cli", "terminal_cli", "roster_cli", "help_cli", "files_cli", "release_cli", "fit_cli", "live_cli"),
        *("pages_cli", "findings_cli"),
    ),
)
"""From the ground up. A room imports itself and the floors beneath it; rooms on one floor leave each other alone, but
for the command line, which is one room in several files. An import for types alone counts like any other."""
FLOOR = {room: number for number, rooms in enumerate(FLOORS) for room in rooms}
ROOF = len(FLOORS)  # kit/__init__.py and kit/__main__.py: they may import any room, no room may import them


@cache  # every module of the kit is looked at twice
def imports(source: str) -> tuple[ast.Import | ast.ImportFrom, ...]:
    """Every import, wherever it stands."""
    return tuple(node for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Import | ast.ImportFrom))


def module_name(path: Path, root: Path) -> str:
    parts = path.relative_to(root).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def floor_of(module: str) -> int:
    """The floor of `kit.room...`; the package's own face is the roof. KeyError for a room without a floor."""
    parts = module.split(".")
    return ROOF if len(parts) == 1 or parts[1] == "__main__" else FLOOR[parts[1]]


def beside(module: str, name: str) -> bool:
    """Whether two modules lie in different rooms."""
    return module.split(".")[1:2] != name.split(".")[1:2]


def imported(source: str, module: str, is_package: bool, rooms: set[str]) -> list[tuple[int, str]]:
    """(line, kit module) for every import of the kit in `source`, wherever it stands."""
    found: list[tuple[int, str]] = []
    for node in imports(source):
        if isinstance(node, ast.Import):
            found += [(node.lineno, alias.name) for alias in node.names]
        else:
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


def circles(package: Path) -> list[list[str]]:
    """The modules under `package` that import one another in a circle, each circle once, by Tarjan's way of finding
    the strongly connected parts of a graph (SIAM Journal on Computing 1, 1972)."""
    root = package.parent
    paths = {module_name(path, root): path for path in package.rglob("*.py")}
    arrows = {module: _wanted(path, paths) for module, path in paths.items()}
    order: dict[str, int] = {}
    low: dict[str, int] = {}
    open_: list[str] = []
    found: list[list[str]] = []

    def visit(module: str) -> None:
        order[module] = low[module] = len(order)
        open_.append(module)
        for other in arrows[module]:
            if other not in order:
                visit(other)
                low[module] = min(low[module], low[other])
            elif other in open_:
                low[module] = min(low[module], order[other])
        if low[module] == order[module]:
            part = open_[open_.index(module) :]
            del open_[open_.index(module) :]
            if len(part) > 1:
                found.append(sorted(part))

    for module in paths:
        if module not in order:
            visit(module)
    return sorted(found)


def _wanted(path: Path, modules: dict[str, Path]) -> set[str]:
    """The modules of the kit that a file imports, the innermost that is named."""
    found: set[str] = set()
    for node in imports(path.read_text("utf-8")):
        if isinstance(node, ast.Import):
            found |= {alias.name for alias in node.names}
        elif node.module and not node.level:
            inner = {f"{node.module}.{alias.name}" for alias in node.names}
            found |= {name if name in modules else node.module for name in inner}
    return found & set(modules)


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
                if floor_of(name) > floor or (floor_of(name) == floor < len(FLOORS) - 1 and beside(module, name)):
                    trouble.append(
                        f"{path.relative_to(root)}:{line}: floor {floor} imports {name}, floor {floor_of(name)}"
                    )
        except KeyError as room:
            trouble.append(f"{path.relative_to(root)}: the room {room} has no floor in tests/test_layers.py")
    return trouble


def test_imports_go_downward() -> None:
    assert len(list((ROOT / "kit").rglob("*.py"))) > 10
    assert climbs(ROOT / "kit") == []


def test_no_file_imports_itself_on_a_way_round() -> None:
    assert circles(ROOT / "kit") == []


def test_a_circle_is_seen(tmp_path: Path) -> None:
    package = tmp_path / "kit"
    (package / "piece").mkdir(parents=True)
    (package / "piece" / "one.py").write_text("def f():\n    from kit.piece.two import g\n")
    (package / "piece" / "two.py").write_text("from kit.piece import three\n")
    (package / "piece" / "three.py").write_text("if TYPE_CHECKING:\n    import kit.piece.one\n")
    (package / "piece" / "four.py").write_text("from kit.piece.one import f\n")
    assert circles(package) == [["kit.piece.one", "kit.piece.three", "kit.piece.two"]]


@pytest.mark.parametrize(
    ("path", "source", "named"),
    [
        ("units.py", "from kit.piece.piece import Piece\n", "kit.piece.piece"),
        ("units.py", "def f():\n    import kit.paper\n", "kit.paper"),
        ("piece/piece.py", "from kit import Lesson\n", "imports kit,"),
        ("piece/piece.py", "from kit import picture\n", "kit.picture"),
        ("piece/piece.py", "from ..lesson import pattern\n", "kit.lesson"),
        ("piece/__init__.py", "from .. import lesson\n", "kit.lesson"),
        ("piece/piece.py", "if TYPE_CHECKING:\n    from kit.sewing.run import Run\n", "kit.sewing.run"),
        ("proof/prove.py", "from kit.prose.say import listed\n", "kit.prose.say"),
        ("attic.py", "", "'attic' has no floor"),
    ],
)
def test_a_climbing_import_is_seen(tmp_path: Path, path: str, source: str, named: str) -> None:
    package = tmp_path / "kit"
    for room in ("piece", "lesson", "proof", "picture", "paper"):
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


# ---- nothing compiled on the way from values to drawing -------------------------------------------------------------

WAY = (
    *(
        "diagnostic",
        "errors",
        "pausing",
        "resources",
        "placeholder",
        "atomic",
        "rulers",
        "language",
        "units",
        "wording",
    ),
    *("geometry", "body", "piece", "sewing", "lesson", "blocks", "wear", "proof", "prose", "picture", "page"),
)
"""The rooms a lesson's page needs in the reader's browser, where Python runs without packages of its own."""
PURE = {"babel", "fluent", "attr", "pytz", "typing_extensions", "svgelements"}
"""Packages in plain Python that those rooms may use."""
ASIDE = {
    *("kit.blocks.read_dxf", "kit.lesson.another", "kit.lesson.where", "kit.resources"),
    *("kit.picture.fitted", "kit.picture.lay", "kit.picture.matplotlib_pen", "kit.picture.piece_sheet"),
    *("kit.picture.raster", "kit.picture.raster_path", "kit.picture.text_room", "kit.picture.thumbnails"),
    *("kit.piece.offset", "kit.geometry.outline"),
    "kit.page.build",
}
"""Modules of those rooms that name another package all the same: printed pieces, cutting layouts, pixels, DXF, a
polygon for who wants shapely's, IPython where a notebook runs, and what builds the page. tests/page/test_pure_way.py
works, draws and proves every lesson without any of it."""


def compiled(package: Path) -> set[str]:
    """The modules of the rooms on the way that import a package which is neither the kit, nor the standard library,
    nor one of `PURE`, wherever the import stands, but for those for types alone."""
    found = set()
    for room in WAY:
        paths = (
            [package / f"{room}.py"] if (package / f"{room}.py").is_file() else sorted((package / room).rglob("*.py"))
        )
        for path in paths:
            if packages_of(path.read_text("utf-8")) - PURE - sys.stdlib_module_names - {"kit"}:
                found.add(module_name(path, package.parent))
    return found


def packages_of(source: str) -> set[str]:
    """The packages that a file imports when it runs."""
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, ast.If) and "TYPE_CHECKING" in ast.unparse(node.test):
            node.body = []
    names = [alias.name for node in ast.walk(tree) if isinstance(node, ast.Import) for alias in node.names]
    names += [
        node.module for node in ast.walk(tree) if isinstance(node, ast.ImportFrom) and node.module and not node.level
    ]
    return {name.split(".")[0] for name in names}


def test_nothing_compiled_on_the_way() -> None:
    assert sorted(compiled(ROOT / "kit") - ASIDE) == []


def test_a_compiled_import_is_seen(tmp_path: Path) -> None:
    package = tmp_path / "kit"
    (package / "wear").mkdir(parents=True)
    (package / "wear" / "one.py").write_text("def f():\n    import shapely\n")
    (package / "wear" / "two.py").write_text("if TYPE_CHECKING:\n    import shapely\nimport babel\nimport math\n")
    (package / "units.py").write_text("from numpy import array\n")
    assert compiled(package) == {"kit.wear.one", "kit.units"}
