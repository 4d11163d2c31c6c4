"""A folder of static files in which a lesson lives: any web space can serve it.

    index.html, sw.js, page.webmanifest       what a browser asks for first
    edition-1a2b3c4d/                         everything else of this edition: page, pictures, Python, kit, lesson

A new edition gets a folder of its own, and the one before it goes when the new one stands, so that what a reader has
open never mixes with it. The lesson is the class copy's: without answers, comments and notes-to-self.
"""

from __future__ import annotations

import hashlib
import json
import re
import shutil
from collections.abc import Callable, Iterable, Mapping, Sequence
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from importlib.metadata import PackageNotFoundError, distribution
from pathlib import Path
from typing import Any

from jinja2 import Environment, FileSystemLoader, StrictUndefined

from kit.atomic import make_folder, write_atomically
from kit.booklet.asked_draft import AskedDraft
from kit.booklet.handover import DRAFTED, Handover
from kit.booklet.run_notebook import read_notebook, run_notebook
from kit.cloth.kept_lays import Kept
from kit.cloth.yardage import yardage
from kit.errors import KitError, near
from kit.language import keys, known_language, languages, say, speaking
from kit.lesson.lesson import slug
from kit.lesson.word_file import path_of
from kit.live.class_source import Source, class_source
from kit.page.alone import AloneError, answer_alone
from kit.page.booklet_page import BOOKLET_FILE, PageBooklet, booklet_file, file_of, page_booklet
from kit.page.bundle import MARKUP, PATHS, PURE, PURE_MODULES, WRITER, unpacked, zipped
from kit.page.bytecode import compiled
from kit.page.core import LOCK, VERSION, Core, cache_folder, core
from kit.page.icons import icon
from kit.page.kept_kit import kept_kit
from kit.page.opening import Opening, opening
from kit.page.packages import packages as given_packages
from kit.page.packed import packed
from kit.page.pages_beside import BESIDE, OFFERED, PAGES_LOCK, megabytes, page_parts, try_pages
from kit.page.standard_library import standard_library
from kit.paper.papers import paper
from kit.resources import templates
from kit.units import System

LESSON = "lesson.ipynb"
_EDITION = re.compile(r"edition-[0-9a-f]{12}")
SCRIPTS = (
    *("app.js", "engine.js", "sliders.js", "grips.js", "body.js", "told.js", "page.css"),
    *("worker.js", "making.js", "files.js", "unpack.js", "unpacking.js"),
)
"""What of templates/page a page is made of, but for its index and service worker."""
_PATIENCE = 600.0  # seconds in which the page's own Python must have drawn every step
_FIRST = "// Keeps one edition of the lesson on the device"  # how sw.js.j2 begins
_OFTEN = ("opening", "opening_first", "cannot_run", "not_loaded", "needs_scripts", "booklet_link")


@dataclass(frozen=True)
class BuiltPage:
    """What was built: its `folder`, the `languages` it speaks, `bytes` of all its files, and `notes` for the author."""

    folder: Path
    languages: tuple[str, ...]
    bytes: int
    notes: tuple[str, ...]


def build_page(
    notebook: Path,
    out: Path,
    *,
    pyodide: Path | None = None,
    packages: Path | None = None,
    spoken: Sequence[str] = (),
    sliders: Sequence[str] = (),
    cloth: bool = True,
    timeout: int = 120,
    progress: Callable[[str], None] = lambda line: None,
    own_engine: bool = True,
    booklet: bool = False,
    size: str | None = None,
    units: System | None = None,
    draft: AskedDraft | None = None,
) -> BuiltPage:
    """Write the page of the lesson in `notebook` into the folder `out`. `pyodide` is a folder with Pyodide's core,
    `packages` one with its compiled packages, with which the page writes its reader's own pattern pages (None: it
    writes none);
    `spoken` the languages to choose from (the lesson's own and those with a translation beside it when empty);
    `sliders` the parameters a reader may move (all when empty); `cloth`: lengths to buy are worked out for every size.
    Without its `own_engine` the page has no Python: a room (kit/room) works the lesson for it. `booklet`: the booklet
    lies beside it, in each of the languages, and follows the reader's body. Page and booklet open in `size` and
    `units` (None: as saved beside the notebook) at the values of `draft`.

    Runs the notebook. Raises `KitError`; what stood in `out` before stands then.
    """
    book = read_notebook(notebook)
    _check_free(out)
    writer = None if packages is None or not own_engine else given_packages(packages)
    taken = core(pyodide, progress) if own_engine else None
    source = class_source(notebook, LESSON, public=True)
    progress(f"Running {notebook.name} from the top")
    sized = (DRAFTED,) if cloth or booklet else ()
    ran = run_notebook(
        book,
        notebook.resolve().parent,
        name=notebook.name,
        size=size,
        units=units,
        sizes=sized,
        draft=draft,
        timeout=timeout,
    )
    given = ran.handover
    info = given.pattern.lesson
    offered = _offered(notebook, info.language, spoken)
    known = [value.name for value in given.pattern.values]
    for name in sliders:
        if name not in known:
            raise KitError(f"there is no parameter '{name}'.", where="--sliders", do=near(name, known))
    lesson = dict(source.files)
    for code in offered:
        words = path_of(notebook, code)
        if words.is_file():
            lesson[f"lesson.{code}.po"] = words.read_bytes()
    drawings = any(b"read_traced" in data for data in lesson.values())
    bundle = kept_kit(offered, drawings=drawings, booklet=booklet)
    progress("Cloth to buy" if cloth else "Cloth to buy is left out")
    kept = Kept.beside(notebook.resolve().parent, info.slug)
    options = {
        "languages": offered,
        "sliders": list(sliders) or None,
        "cloth": {"sizes": _lengths(given, kept)} if cloth else {},
    }
    beside: tuple[PageBooklet, ...] = ()
    if booklet:
        progress("The booklet's pictures and words")
        beside = tuple(page_booklet(ran, notebook, code, kept) for code in offered)
        options["inks"] = list(beside[0].inks)
    progress("Trying the page's own Python, without any other package")
    begins = opening(given, draft)
    loaded = _try(bundle, lesson, {**options, "opening": begins.told})
    extra: dict[str, bytes] = {}
    if writer is not None and taken is not None:
        progress("Trying what writes the reader's own pages")
        whole = kept_kit(offered, drawings=drawings, booklet=booklet, pages=True)
        try_pages(whole, lesson, options)
        extra = page_parts(writer, taken, whole)
    parts, slow = _parts(lesson, options, info.title, offered, begins, extra), ""
    if booklet:
        parts |= {name: (templates() / "page" / name).read_bytes() for name in ("booklet.js", "booklet.css")}
    if taken is not None:
        progress("Compiling the page's Python (kept for the next build), and writing the page")
        library = unpacked(_library(taken.bytes_of("python_stdlib.zip"), bundle, loaded))
        quick, library, slow = _quick(taken, bundle, library)
        parts |= _python(taken, quick, library)
    notes = (
        *_notes(given, offered, source, cloth, pages=bool(extra)),
        *([begins.note] if begins.note and not booklet else ()),  # the booklet's own notes tell it
        *filter(None, (slow,)),
        *dict.fromkeys(note for each in beside for note in each.notes),
    )
    return _write(out, parts, info.title, offered, notes, beside)


def _offered(notebook: Path, own: str, spoken: Sequence[str]) -> tuple[str, ...]:
    known = languages()
    first = known_language(own)
    if not spoken:
        return (first, *(code for code in known if code != first and path_of(notebook, code).is_file()))
    for code in spoken:
        if code not in known:
            raise KitError(f"there is no language '{code}'.", where="--languages", do=near(code, known))
    return tuple(dict.fromkeys(spoken))


def _lengths(given: Handover, kept: Kept) -> dict[str, list[dict[str, Any]]]:
    """For each size the cloths, their widths and the length to buy, mm; 0 where the cloth is too narrow."""
    patterns = given.sizes or (given.pattern,)
    found = yardage(patterns, kept=kept)
    return {
        pattern.body.name: [
            {"cloth": row.cloth, "width": row.width, "length": row.of(pattern.body.name).length} for row in found
        ]
        for pattern in patterns
    }


def _try(bundle: Mapping[str, bytes], lesson: Mapping[str, bytes], options: Mapping[str, Any]) -> list[str]:
    """The page's own kit works the page's own lesson in a Python that has nothing else: every step is drawn. Returns
    the modules of the standard library that this took."""
    try:
        told = answer_alone(_TRIAL, bundle, lesson, options, seconds=_PATIENCE)
    except AloneError as error:
        if error.late:
            raise KitError(
                f"the lesson cannot be worked in a browser: its steps were not all drawn within {_PATIENCE:g} seconds.",
                do="Look for a loop that does not end, or build with fewer --languages.",
            ) from None
        raise KitError(
            f"the lesson cannot be worked in a browser: {error}",
            do="What a page cannot have, such as another package, goes into a cell with the tag notes-to-self.",
        ) from None
    if told["answered"]:
        raise KitError("an exercise's answer would be in the page.", do="Write it right in lesson.exercise(...).")
    if told["refused"]:
        raise KitError(f"the lesson cannot be worked in a browser: {told['refused'][0]}", do="Correct that step.")
    loaded: list[str] = told["loaded"]
    return loaded


_TRIAL = """
import sys
sys.path.insert(0, sys.argv[1])
import json
from pathlib import Path
from kit.page.opened import without_notebook
without_notebook()
from kit.page.engine import Engine
told = json.loads(sys.argv[2])
given = {"offered": told["languages"], **{key: told[key] for key in ("sliders", "cloth", "inks") if key in told}}
engine = Engine(Path("lesson.ipynb"), **given)
refused = []
opening = told.get("opening", {})
body = {"size": opening["size"]} if opening.get("size") else {}
def ask(**asked):
    asked = {"body": body, "units": opening.get("units", "cm"), "values": opening.get("values", {}), **asked}
    made = json.loads(engine.answer(json.dumps(asked)))
    if not made["ok"]:
        refused.append(made["said"])
    return made
for code in told["languages"]:
    about = ask(do="about", language=code)
    for step in about.get("steps", ()):
        ask(do="draw", language=code, step={"kind": step["kind"], "key": step["key"], "picture": -1})
    if "inks" in told:
        for step in about.get("steps", ()):
            ask(do="booklet", language=code, step=step)
ask(do="prove")
if "inks" in told:
    ask(do="booklet")
body = {"name": "I", "typed": {"bust_girth": "94 cm"}}
if engine.lesson.measures:
    engine.answer(json.dumps({"do": "read", "name": "i.toml", "text": '[measured]\\nbust_girth = "94 cm"'}))
    for wanted in ("body", "write"):
        engine.answer(json.dumps({"do": wanted, "body": body}))
loaded = sorted(name for name in sys.modules if name.partition(".")[0] in sys.stdlib_module_names)
told = {"refused": refused, "answered": any(each.answer for each in engine.lesson.exercises), "loaded": loaded}
print(json.dumps(told))
"""


# ---- files ----------------------------------------------------------------------------------------------------


def _python(taken: Core, bundle: Mapping[str, bytes], library: Mapping[str, bytes]) -> dict[str, bytes]:
    """The files with which the page works the lesson itself."""
    whole = {
        "kit.zip.lzma": zipped(dict(bundle), stored=True),
        "python.zip.lzma": zipped(dict(library), stored=True),
        "pyodide.asm.wasm.lzma": taken.bytes_of("pyodide.asm.wasm"),
    }
    with ThreadPoolExecutor() as pool:  # packing lets other threads run
        tight = dict(zip(whole, pool.map(packed, whole.values()), strict=True))
    return {
        **tight,
        "pyodide.mjs": taken.bytes_of("pyodide.mjs"),
        "pyodide.asm.mjs": taken.bytes_of("pyodide.asm.mjs"),
        "lock.json": LOCK.encode(),
    }


def _parts(
    lesson: Mapping[str, bytes],
    options: Mapping[str, Any],
    title: str,
    offered: Sequence[str],
    begins: Opening,
    extra: dict[str, bytes],
) -> dict[str, bytes]:
    """The files of the edition's folder by name, but for those of the page's own Python. `extra` are those that write
    the reader's own pages."""
    parts = {
        "lesson.zip": zipped(dict(lesson)),
        "engine.json": _json(options),
        "notices.txt": _notices(WRITER.values() if extra else ()).encode("utf-8"),
        **{f"icon-{side}.png": icon(side) for side in (192, 512)},
    }
    for name in SCRIPTS:
        parts[name] = (templates() / "page" / name).read_bytes()
    told = {"slug": slug(title), "languages": {code: _words(code) for code in offered}, "own": offered[0]}
    told["opening"] = begins.told
    if extra:
        told["pages"] = {"papers": list(OFFERED), "size": megabytes(extra)}
    parts["page.json"] = _json(told)
    return parts | extra


def _library(whole: bytes, bundle: Mapping[str, bytes], loaded: Sequence[str]) -> bytes:
    """The part of the standard library, kept from build to build: to find it takes a while."""
    told = hashlib.sha256(whole + " ".join(loaded).encode())
    for name in sorted(bundle):
        if name.endswith(".py"):
            told.update(name.encode() + bundle[name])
    told.update((Path(__file__).with_name("standard_library.py")).read_bytes())
    kept = cache_folder() / f"python-{told.hexdigest()[:24]}.zip"
    if kept.is_file():
        return kept.read_bytes()
    made = standard_library(whole, bundle, loaded)
    try:
        write_atomically(kept, made)
    except KitError:
        pass  # it is made anew next time
    return made


def _quick(
    taken: Core, bundle: dict[str, bytes], library: dict[str, bytes]
) -> tuple[dict[str, bytes], dict[str, bytes], str]:
    """Kit and library compiled; where that cannot be done they stay as they are, and a note says so."""
    try:
        with ThreadPoolExecutor() as pool:  # each is compiled in a process of its own
            kit, python = pool.map(lambda files: compiled(taken, files), (bundle, library))
        return kit, python, ""
    except KitError as error:
        why = error.what.rstrip(".")
    note = f"Its Python travels as source ({why}): the page opens several seconds later, each time."
    return bundle, library, f"{note} Install Node.js 20 or newer (https://nodejs.org) and build again."


def _words(code: str) -> dict[str, str]:
    """The page's own words in a language; what the page puts in stands in braces."""
    places = {name: f"{{{name}}}" for name in ("number", "count", "name", "size", "edition", "value", "kind", "what")}
    with speaking(code):
        words = {key: say(f"page.{key}", {**places, "units": ""}) for key in keys("page")}
        words["start"] = say("class_copy.start")
        words["body_empty"] = say("panel.body_empty")
        words["body_mine"] = say("panel.body_mine")
        words |= {f"paper_{name}": paper(name).said for name in OFFERED}
    return words


def _json(value: Any) -> bytes:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"), sort_keys=True).encode("utf-8")


def _notices(more: Iterable[str] = ()) -> str:
    parts = [
        "This page holds the work of others, under their own licences.",
        f"Pyodide {VERSION} (https://github.com/pyodide/pyodide), Mozilla Public License 2.0: "
        "https://www.mozilla.org/MPL/2.0/. It is used as it was published; its sources are at that address.",
        "CPython and its standard library (https://www.python.org), Python Software Foundation License. Comments and "
        "unused modules are left out.",
        "Locale data in Babel: Unicode CLDR, Unicode License V3 (https://www.unicode.org/license.txt).",
    ]
    plain = (*PURE.values(), "fluent.syntax", *PURE_MODULES.values(), *PATHS.values(), *MARKUP.values(), *more)
    for name in ("pattern-lesson-kit", *plain):
        try:
            found = distribution(name)
        except PackageNotFoundError:
            continue
        about: Any = found.metadata
        licence = about.get("License-Expression") or about.get("License") or ""  # a backport gives no None for []
        texts = [
            str(path.read_text("utf-8"))
            for path in found.files or ()
            if re.search(r"(?i)(licen[cs]e|notice)[^/]*$", str(path)) and not str(path).endswith(".py")
        ]
        head = f"{about['Name']} {found.version}, {licence.splitlines()[0] if licence else 'see below'}"
        parts.append("\n\n".join([head, *dict.fromkeys(text.strip() for text in texts)]))
    return ("\n\n" + "-" * 78 + "\n\n").join(parts) + "\n"


def _notes(
    given: Handover, offered: Sequence[str], source: Source, cloth: bool, *, pages: bool = False
) -> tuple[str, ...]:
    """What the author must know."""
    notes = [
        "Whoever opens the page can read the lesson's code: its cells travel with it, without comments.",
        "Answers of exercises are not inside." if source.answers else "",
        "Bodies stay behind: where a cell makes or loads one, size W4 of the workshop's chart stands; body files are "
        "not packed. The lesson's own texts go as they stand."
        if source.bodies
        else "",
        "notices.txt names the work of others that travels with it.",
        "Left out: cutting layouts, photographs, markdown cells, fittings."
        if pages
        else "Left out: pattern pages and cutting layouts (a reader can send you a body file instead), "
        "photographs, markdown cells, fittings.",
        "The reader's own pattern pages were tried in this Python, not in a browser: have one page make them, and "
        "measure its test square, before you hand it out."
        if pages
        else "",
        "" if cloth else "Cloth to buy is left out (--no-cloth).",
    ]
    missing = [row.name for row in given.chart if row.trouble]
    if missing:
        notes.append(f"Sizes that cannot be drafted: {', '.join(missing)}.")
    return tuple(filter(None, notes))


# ---- writing --------------------------------------------------------------------------------------------------


def _check_free(out: Path) -> None:
    if out.exists() and not out.is_dir():
        raise KitError(f"'{out}' is a file.", where="--out", do="Name a folder.")
    if out.is_dir() and any(out.iterdir()) and not _ours(out):
        raise KitError(f"'{out}' holds something else.", where="--out", do="Name an empty folder, or a new one.")


def _ours(out: Path) -> bool:
    """Whether the folder holds a page built before: an edition beside a sw.js that begins as ours does."""
    try:
        begins = (out / "sw.js").read_bytes().startswith(_FIRST.encode())
    except OSError:
        return False
    return begins and any(each.is_dir() and _EDITION.fullmatch(each.name) for each in out.iterdir())


def _write(
    out: Path,
    parts: Mapping[str, bytes],
    title: str,
    offered: tuple[str, ...],
    notes: tuple[str, ...],
    beside: Sequence[PageBooklet] = (),
) -> BuiltPage:
    told = hashlib.sha256()
    for name in sorted(parts):
        told.update(name.encode() + b"\0" + hashlib.sha256(parts[name]).digest())
    pages = Environment(
        loader=FileSystemLoader(templates() / "page"),
        autoescape=True,
        undefined=StrictUndefined,
        keep_trailing_newline=True,
    )
    skin = hashlib.sha256(b"".join((templates() / "page" / n).read_bytes() for n in ("index.html.j2", "sw.js.j2")))
    told.update(skin.digest())
    for each in beside:
        told.update(each.html.encode("utf-8"))
    booklets = file_of(beside)
    edition = f"edition-{told.hexdigest()[:12]}"
    listed = [name for name in sorted(parts) if name != "notices.txt" and not name.startswith(BESIDE)]
    size = round(sum(len(parts[name]) for name in listed if name != "pyodide.asm.mjs") / 1e6 + 0.3)
    with speaking(offered[0]):
        words = {key: say(f"page.{key}", size=size) if key == "opening_first" else say(f"page.{key}") for key in _OFTEN}
        index = pages.get_template("index.html.j2").render(
            title=title,
            edition=edition,
            language=offered[0],
            words=words,
            booklet=booklets.get(offered[0], ""),
            booklets=json.dumps(booklets),
            pages=PAGES_LOCK in parts,
        )
    manifest = {
        "name": title,
        "short_name": title[:24],
        "start_url": "./",
        "scope": "./",
        "display": "standalone",
        "background_color": "#f6f2ea",
        "theme_color": "#1f2d3a",
        "icons": [
            {
                "src": f"{edition}/icon-{side}.png",
                "sizes": f"{side}x{side}",
                "type": "image/png",
                "purpose": "any maskable",
            }
            for side in (192, 512)
        ],
    }
    files = ["./", "page.webmanifest", *(f"{edition}/{name}" for name in listed)]
    service = pages.get_template("sw.js.j2").render(edition=edition, files=json.dumps(files))
    make_folder(out)
    for name, data in parts.items():
        write_atomically(out / edition / name, data)
    for each in beside:
        text = booklet_file(each, edition, slug(title), _words(each.language), size, booklets)
        write_atomically(out / booklets[each.language], text)
    for path in (out / BOOKLET_FILE, *out.glob("booklet.*.html")):
        if path.name not in booklets.values():
            path.unlink(missing_ok=True)
    write_atomically(out / "page.webmanifest", _json(manifest))
    write_atomically(out / "index.html", index)
    write_atomically(out / "sw.js", service)
    for folder in out.iterdir():
        if folder.is_dir() and _EDITION.fullmatch(folder.name) and folder.name != edition:
            shutil.rmtree(folder, ignore_errors=True)
    whole = sum(path.stat().st_size for path in out.rglob("*") if path.is_file())
    return BuiltPage(out, offered, whole, notes)
