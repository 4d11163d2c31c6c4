"""The kit as the page carries it: the modules the engine reaches, the languages asked for, nothing compiled.

Which modules these are is read from their imports. A module that cannot be loaded without a compiled package is left
out, and with it those that cannot be loaded without it; where such a module is named inside a function only, the
function is left with nothing to call, and tests/page works every lesson without. Comments and docstrings stay behind.
"""

from __future__ import annotations

import ast
import io
import pickle
import re
import sys
import zipfile
from collections.abc import Iterator, Sequence
from importlib.util import find_spec
from pathlib import Path

from kit.errors import KitError
from kit.resources import sign_letters, templates

ROOTS = ("kit", "kit.page.at_rest", "kit.page.engine", "kit.page.opened")
WHOLE = ("kit.sewing", "kit.lesson", "kit.blocks")
"""Rooms whose modules are found when they are asked for, by name or by being there."""
PURE = {"babel": "babel", "fluent": "fluent.runtime", "attr": "attrs", "pytz": "pytz"}
"""Packages in plain Python that come along, by the distribution their notice is found under."""
PURE_MODULES = {"typing_extensions": "typing_extensions"}
PATHS = {"svgelements": "svgelements"}
"""Those that come along only where a lesson reads a drawing."""
MARKUP = {"markupsafe": "MarkupSafe"}
"""Those that come along only with a booklet; what of it is compiled stays behind, and its own Python does the same."""
BOOKLET = "kit.page.booklet"
PAGES = "kit.page.own_pages"
"""What writes pattern pages: only where the compiled packages come along (kit/page/packages.py)."""
COMPILED = ("numpy", "shapely", "PIL")
"""Those packages, as they are imported."""
WRITER = {"reportlab": "reportlab"}
"""What else it needs, in plain Python."""
_WRITER_LEFT = ("reportlab/graphics", "reportlab/platypus", "reportlab/fonts")
LETTERS = "_letters"
"""The folder inside the kit where a page has its letters (kit/resources.py)."""
_NOT_HERE = ("kit.live", "kit.booklet", "kit.paper", "kit.pack", "kit.cli")
_LEFT = (
    *("babel/messages/frontend", "babel/messages/extract", "babel/messages/setuptools_frontend", "babel/support"),
    *("babel/messages/checkers", "babel/messages/mofile", "babel/units", "babel/lists"),
)
_NOT_ASKED = (
    *("territory_zones", "zone_territories", "windows_zone_mapping", "territory_languages", "meta_zones"),
    *("likely_subtags", "territory_currencies", "territory_aliases", "language_aliases", "zone_aliases"),
)
"""Of all languages at once: what only addresses, money and languages without words of their own here need."""
_NOT_SAID = (
    *("territories", "languages", "variants", "scripts", "zone_formats", "time_zones", "meta_zones"),
    *("interval_formats", "compact_decimal_formats", "compact_currency_formats", "currency_names"),
    *("currency_names_plural", "unit_patterns", "compound_unit_patterns", "unit_display_names", "date_fields"),
    *("day_period_rules", "datetime_formats_relative"),
)
"""Of one language: names of places, languages, money and units, of which no sentence of the kit is made."""
_WHEN = (1980, 1, 1, 0, 0, 0)
_KIT = Path(__file__).resolve().parents[1]


def zipped(files: dict[str, bytes], *, stored: bool = False) -> bytes:
    """Files as a ZIP archive, the same bytes every time; `stored`: not packed, to be packed as a whole."""
    made = io.BytesIO()
    with zipfile.ZipFile(made, "w", zipfile.ZIP_DEFLATED, compresslevel=9) as archive:
        for name in sorted(files):
            info = zipfile.ZipInfo(name, _WHEN)
            info.compress_type = zipfile.ZIP_STORED if stored else zipfile.ZIP_DEFLATED
            info.external_attr = 0o644 << 16
            archive.writestr(info, files[name])
    return made.getvalue()


def unpacked(archive: bytes) -> dict[str, bytes]:
    """The files of a ZIP archive by name."""
    with zipfile.ZipFile(io.BytesIO(archive)) as opened:
        return {name: opened.read(name) for name in opened.namelist() if not name.endswith("/")}


def kit_files(
    languages: Sequence[str], *, drawings: bool = False, booklet: bool = False, pages: bool = False
) -> dict[str, bytes]:
    """Everything of the page's own Python by its path: the kit, its data and catalogues, and the packages in plain
    Python it stands on. `drawings`: with what reads an SVG; `booklet`: with what a booklet follows the body by;
    `pages`: with what writes pattern pages."""
    files: dict[str, bytes] = {}
    heads: set[str] = set()
    for module in sorted(modules(booklet, pages)):
        path = path_of(module)
        heads |= _heads(path.read_text("utf-8"))
        files[f"kit/{path.relative_to(_KIT).as_posix()}"] = stripped(path.read_text("utf-8"))
    for room in ("body", "piece"):
        for path in sorted((_KIT / room / "data").iterdir()):
            if path.is_file():
                files[f"kit/{room}/data/{path.name}"] = path.read_bytes()
    for code in dict.fromkeys(("en", *languages)):
        folder = templates() / "language" / code
        if not folder.is_dir():
            raise KitError(f"there is no language '{code}'.", where="--languages", do="Choose of en, de, fr, es.")
        for path in sorted(folder.iterdir()):
            if path.is_file() and (path.suffix != ".ftl" or _subjects(path.read_text("utf-8")) & heads):
                files[f"kit/_templates/language/{code}/{path.name}"] = _catalogue(path.read_text("utf-8"))
    files.update(packages(languages, drawings=drawings, booklet=booklet))
    if pages:
        files.update(_writer())
    return files


# ---- the kit --------------------------------------------------------------------------------------------------


def path_of(module: str) -> Path:
    """The file of a module of the kit."""
    place = _KIT.joinpath(*module.split(".")[1:])
    return place / "__init__.py" if place.is_dir() else place.with_suffix(".py")


def modules(booklet: bool = False, pages: bool = False) -> set[str]:
    """The modules of the kit that the page carries, with those of its `booklet`, or of what writes its `pages`."""
    here = {*(["kit.booklet"] if booklet else []), *(["kit.paper", "kit.pack"] if pages else [])}
    elsewhere = tuple(room for room in _NOT_HERE if room not in here)
    pure = {*PURE, *PURE_MODULES, *(MARKUP if booklet else ()), *((*COMPILED, *WRITER) if pages else ())}
    reached: set[str] = set()
    needs: dict[str, set[str]] = {}
    barred: set[str] = set()
    waiting = [*ROOTS, *_homes(), *([BOOKLET] if booklet else []), *([PAGES] if pages else [])]
    for room in WHOLE:
        base = _KIT.joinpath(*room.split(".")[1:])
        names = (
            ".".join(("kit", *path.relative_to(_KIT).with_suffix("").parts)) for path in sorted(base.rglob("*.py"))
        )
        waiting += [name.removesuffix(".__init__") for name in names]
    while waiting:
        module = waiting.pop()
        if module in reached or module.startswith(elsewhere) or not path_of(module).is_file():
            continue
        reached.add(module)
        first, later, foreign = imports(module)
        needs[module] = first
        if foreign - pure - sys.stdlib_module_names:
            barred.add(module)
        waiting += [*first, *later, *_parents(module)]
    while True:
        more = {m for m in reached - barred if any(n in barred or n.startswith(elsewhere) for n in needs[m])}
        if not more:
            return reached - barred
        barred |= more


def _homes() -> list[str]:
    """Where the names live that a lesson imports from the kit."""
    tree = ast.parse((_KIT / "__init__.py").read_text("utf-8"))
    for node in tree.body:
        if isinstance(node, ast.Assign) and any(isinstance(t, ast.Name) and t.id == "_HOMES" for t in node.targets):
            return sorted(set(ast.literal_eval(node.value).values()))
    return []


def _parents(module: str) -> list[str]:
    parts = module.split(".")
    return [".".join(parts[:n]) for n in range(1, len(parts))]


def imports(module: str) -> tuple[set[str], set[str], set[str]]:
    """What a module of the kit imports: modules of the kit when it is loaded, others of the kit later on, and other
    packages when it is loaded. Imports for types alone do not count."""
    first: set[str] = set()
    later: set[str] = set()
    foreign: set[str] = set()
    for node, at_once in _imports(ast.parse(path_of(module).read_text("utf-8")).body, True):
        names = [a.name for a in node.names] if isinstance(node, ast.Import) else _from(node, module)
        for name in names:
            if name == "kit" or name.startswith("kit."):
                (first if at_once else later).add(name)
            elif at_once:
                foreign.add(name.split(".")[0])
    return first, later, foreign


def _from(node: ast.ImportFrom, module: str) -> list[str]:
    base = node.module or ""
    if node.level:
        parts = module.split(".")
        up = node.level - 1 if path_of(module).name == "__init__.py" else node.level
        base = ".".join(parts[: len(parts) - up] + ([base] if base else []))
    if not (base == "kit" or base.startswith("kit.")):
        return [base]
    inner = [f"{base}.{alias.name}" for alias in node.names]
    return [base, *(name for name in inner if path_of(name).is_file())]


def _imports(body: Sequence[ast.stmt], at_once: bool) -> Iterator[tuple[ast.Import | ast.ImportFrom, bool]]:
    for node in body:
        if isinstance(node, ast.Import | ast.ImportFrom):
            yield node, at_once
        elif isinstance(node, ast.If) and "TYPE_CHECKING" in ast.unparse(node.test):
            yield from _imports(node.orelse, at_once)
        elif isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef):
            yield from _imports(node.body, False)
        else:
            for inner in ("body", "orelse", "finalbody"):
                yield from _imports(getattr(node, inner, []), at_once)
            for handler in (*getattr(node, "handlers", ()), *getattr(node, "cases", ())):
                yield from _imports(handler.body, at_once)


def stripped(source: str) -> bytes:
    """Python without its comments and docstrings."""
    tree = ast.parse(source)
    for node in ast.walk(tree):
        if isinstance(node, ast.Module | ast.ClassDef | ast.FunctionDef | ast.AsyncFunctionDef):
            first = node.body[0] if node.body else None
            if (
                isinstance(first, ast.Expr)
                and isinstance(first.value, ast.Constant)
                and isinstance(first.value.value, str)
            ):
                node.body[0:1] = [] if len(node.body) > 1 or isinstance(node, ast.Module) else [ast.Pass()]
    return ast.unparse(tree).encode("utf-8")


def _heads(source: str) -> set[str]:
    """What the keys of messages may begin with in this module: every text in it up to its first dot."""
    texts = (node.value for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Constant))
    return {text.partition(".")[0] for text in texts if isinstance(text, str)}


def _subjects(text: str) -> set[str]:
    """What the messages of a catalogue begin with. A file none of whose subjects the page's modules name stays away."""
    return {name.partition("-")[0] for name in re.findall(r"(?m)^([a-zA-Z][\w-]*) *=", text)}


def _catalogue(text: str) -> bytes:
    """A catalogue without its comments."""
    return "".join(line for line in text.splitlines(True) if not line.startswith("#")).encode("utf-8")


# ---- packages in plain Python -----------------------------------------------------------------------------------


def packages(languages: Sequence[str], *, drawings: bool = False, booklet: bool = False) -> dict[str, bytes]:
    """The packages that come along, Python alone, with the words and numbers of the languages asked for."""
    files: dict[str, bytes] = {}
    for name in (*PURE, *(PATHS if drawings else ()), *(MARKUP if booklet else ())):
        folder = _package(name)
        for path in sorted(folder.rglob("*.py")):
            place = f"{name}/{path.relative_to(folder).as_posix()}"
            if not place.startswith(_LEFT):
                files[place] = stripped(path.read_text("utf-8"))
    for name in PURE_MODULES:
        spec = find_spec(name)
        assert spec is not None and spec.origin
        files[f"{name}.py"] = stripped(Path(spec.origin).read_text("utf-8"))
    babel = _package("babel")
    files["babel/global.dat"] = _globals((babel / "global.dat").read_bytes())
    for code in dict.fromkeys(("root", "en", *languages)):
        files[f"babel/locale-data/{code}.dat"] = _locale((babel / "locale-data" / f"{code}.dat").read_bytes())
    return files


def _writer() -> dict[str, bytes]:
    """What writes a PDF, as it is installed, and the letters it sets, with their licence."""
    files: dict[str, bytes] = {}
    for name in WRITER:
        folder = _package(name)
        for path in sorted(folder.rglob("*.py")):
            place = f"{name}/{path.relative_to(folder).as_posix()}"
            if not place.startswith(_WRITER_LEFT):
                files[place] = path.read_bytes()
    for letters in sorted(sign_letters().iterdir()):
        if letters.name in ("DejaVuSans.ttf", "DejaVuSans-Bold.ttf", "LICENSE_DEJAVU"):
            files[f"kit/{LETTERS}/{letters.name}"] = letters.read_bytes()
    return files


def _package(name: str) -> Path:
    spec = find_spec(name)
    places = list(spec.submodule_search_locations or ()) if spec else []
    if not places:
        raise KitError(f"the package '{name}' is missing.", do="Install pattern-lesson-kit again.")
    return Path(places[0])


def _globals(data: bytes) -> bytes:
    """What Babel knows of all languages at once, without the lists that no lesson asks for."""
    known = pickle.loads(data)
    for key in _NOT_ASKED:
        known[key] = {}
    return pickle.dumps(known, 4)


def _locale(data: bytes) -> bytes:
    """What Babel knows of one language: its numbers, plurals and dates, without the names of places and money."""
    known = pickle.loads(data)
    for key in _NOT_SAID:
        if key in known:
            known[key] = {}
    return pickle.dumps(known, 4)
