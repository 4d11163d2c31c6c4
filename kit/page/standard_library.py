"""The standard library as the page carries it: the modules that are reached, without comments and docstrings.

What is reached is read from the imports of the library's own sources, wherever they stand, for the Python of the
browser, which is not the one that builds. What only a terminal, a debugger, a server or another process needs is left
out, even where a module would import it when asked for such a thing: a page has none of them.
"""

from __future__ import annotations

import ast
import io
import re
import zipfile
from collections.abc import Iterable, Mapping, Sequence

from kit.page.bundle import stripped, zipped

NEEDED = (
    # What Python, Pyodide's own start and its file system import.
    *("_pyodide", "pyodide", "site", "encodings", "codecs", "io", "abc", "os", "stat", "posixpath", "genericpath"),
    *("_collections_abc", "importlib", "importlib.readers", "zipimport", "zipfile", "shutil", "tempfile", "pathlib"),
    *("sysconfig", "_sysconfigdata__emscripten_wasm32-emscripten", "asyncio", "traceback", "linecache", "warnings"),
    *("importlib.resources.readers", "importlib.resources._adapters", "importlib.resources._itertools"),
    *("_py_warnings", "_weakrefset", "random", "bisect", "copyreg", "token", "tokenize", "pkgutil", "string"),
    *("datetime", "_strptime", "decimal", "locale", "typing", "annotationlib", "struct"),
    *("fractions", "colorsys", "statistics", "csv", "textwrap", "unicodedata", "hashlib", "heapq", "_ast_unparse"),
)
"""Modules a lesson's code may ask for, or that are imported where imports are not read."""
_ENCODINGS = ("__init__", "aliases", "utf_8", "utf_8_sig", "ascii", "latin_1", "cp437", "utf_16", "raw_unicode_escape")
_IMPORT = re.compile(r"^[ \t]*(?:from\s+([\w.]+)\s+import|import\s+([\w., ]+))", re.MULTILINE)
_NEVER = {
    *("test", "idlelib", "turtledemo", "ensurepip", "pydoc_data", "lib2to3", "unittest", "tkinter", "multiprocessing"),
    *("pdb", "bdb", "cmd", "code", "doctest", "pydoc", "profile", "pstats", "cProfile", "trace", "timeit", "gettext"),
    *("_pyrepl", "curses", "readline", "rlcompleter", "webbrowser", "venv", "sqlite3", "dbm", "wsgiref", "xmlrpc"),
    *("http", "ftplib", "smtplib", "imaplib", "poplib", "socketserver", "ssl", "mailbox", "netrc", "plistlib"),
    *("tarfile", "lzma", "bz2", "gzip", "optparse", "getopt", "argparse", "getpass", "pty", "tty", "wave", "uuid"),
    *("compileall", "py_compile", "zipapp", "modulefinder", "pickletools", "symtable", "pyclbr", "tabnanny"),
    *("nturl2path", "_pyio", "ctypes.macholib", "asyncio.windows_events", "asyncio.windows_utils", "tracemalloc"),
    *("asyncio.proactor_events", "asyncio.__main__", "asyncio.tools", "concurrent.interpreters", "string.templatelib"),
    *("concurrent.futures.process", "concurrent.futures.interpreter", "urllib.request", "urllib.response", "shlex"),
    *("logging.config", "logging.handlers", "importlib.metadata", "mimetypes", "runpy", "_pydatetime", "_pydecimal"),
    *("email.mime", "email.generator", "email.contentmanager", "email.policy", "email.message", "email.parser"),
    *("email.header", "email._policybase", "email.utils", "email.feedparser", "email._parseaddr", "email.charset"),
    *("pyodide._nodesock_transport",),
}
"""What only a terminal, a debugger, a server, another process or Python's own fallbacks ask for."""


def standard_library(whole: bytes, bundle: Mapping[str, bytes], loaded: Sequence[str] = ()) -> bytes:
    """The part of the standard library `whole` (a ZIP archive) that the files of `bundle` and Pyodide reach, and what
    was `loaded` when the lesson was tried, if it is there."""
    with zipfile.ZipFile(io.BytesIO(whole)) as archive:
        sources = {name: archive.read(name) for name in archive.namelist() if not name.endswith("/")}
    known = {_module(name): name for name in sources if name.endswith(".py")}
    waiting = [*NEEDED, *_asked(bundle), *loaded]
    reached: set[str] = set()
    while waiting:
        module = waiting.pop()
        while module and module not in known:
            module = module.rpartition(".")[0]
        if not module or module in reached or (_is_never(module) and module not in loaded):
            continue
        reached.add(module)
        waiting += [parent for parent in _parents(module) if parent in known and parent not in reached]
        waiting += _imported(sources[known[module]].decode("utf-8"), module, known[module].endswith("__init__.py"))
    kept = {}
    for module in reached:
        if module.startswith("encodings.") and module.rpartition(".")[2] not in _ENCODINGS:
            continue
        kept[known[module]] = _short(sources[known[module]])
    for name in _ENCODINGS:
        kept[f"encodings/{name}.py"] = _short(sources[f"encodings/{name}.py"])
    for package in ("_pyodide", "pyodide"):
        kept.update({name: text for name, text in sources.items() if name.startswith(f"{package}/")})
    return zipped(kept)


def _is_never(module: str) -> bool:
    return module in _NEVER or any(parent in _NEVER for parent in _parents(module))


def _module(name: str) -> str:
    return name.removesuffix(".py").removesuffix("/__init__").replace("/", ".")


def _parents(module: str) -> list[str]:
    parts = module.split(".")
    return [".".join(parts[:n]) for n in range(1, len(parts))]


def _asked(bundle: Mapping[str, bytes]) -> Iterable[str]:
    """What the kit and its packages import, wherever it stands."""
    for name, data in bundle.items():
        if name.endswith(".py"):
            for node in ast.walk(ast.parse(data)):
                if isinstance(node, ast.Import):
                    yield from (alias.name for alias in node.names)
                elif isinstance(node, ast.ImportFrom) and node.module and not node.level:
                    yield node.module
                    yield from (f"{node.module}.{alias.name}" for alias in node.names)


def _imported(source: str, module: str, is_package: bool) -> list[str]:
    """What a module of the library imports, wherever it does."""
    try:
        tree = ast.parse(source)
    except SyntaxError:  # newer than the Python that builds
        return [name for one, more in _IMPORT.findall(source) for name in (one or more).replace(" ", "").split(",")]
    told: list[str] = []
    for node in ast.walk(tree):
        names: list[str] = []
        if isinstance(node, ast.Import):
            names = [alias.name for alias in node.names]
        elif isinstance(node, ast.ImportFrom):
            base = node.module or ""
            if node.level:
                parts = module.split(".")
                up = node.level - 1 if is_package else node.level
                base = ".".join(parts[: len(parts) - up] + ([base] if base else []))
            names = [base, *(f"{base}.{alias.name}" for alias in node.names)]
        told += names
    return told


def _short(source: bytes) -> bytes:
    try:
        return stripped(source.decode("utf-8"))
    except SyntaxError:
        return source
