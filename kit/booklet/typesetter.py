"""The typesetter loaded, and what is said where its library, Pango, is not there: the same words in every command.

The words stand in `.ci/system-packages` too, which `make demo` asks before anything is installed; a test holds both
together.
"""

from __future__ import annotations

import ctypes.util
import io
import sys
from collections.abc import Iterator
from contextlib import contextmanager, redirect_stdout, suppress

from kit.errors import KitError

_PANGO = ("libpango-1.0.so.0", "libpango-1.0.0.dylib", "libpango-1.0-0.dll")
_PACKAGES = "libpango-1.0-0 libpangoft2-1.0-0 libharfbuzz-subset0 fonts-dejavu-core"
_WHAT = "the booklet's PDF needs the Pango library and a font, and they are not here."
_DO = (
    f"Install them, then run the same command again. Debian, Ubuntu: sudo apt install {_PACKAGES}. "
    "Fedora: sudo dnf install pango dejavu-sans-fonts. macOS: brew install pango libffi (if it is still not found: "
    'export DYLD_FALLBACK_LIBRARY_PATH="$(brew --prefix)/lib"). Windows: install MSYS2, run in its shell: pacman -S '
    "mingw-w64-x86_64-pango; then: set WEASYPRINT_DLL_DIRECTORIES=C:\\msys64\\mingw64\\bin."
)


def missing() -> KitError:
    """The refusal of whatever sets a page in type."""
    return KitError(_WHAT, do=_DO)


def is_missing(complaint: str) -> bool:
    """Whether what a process that loads the typesetter complained of is that a library of its is not there."""
    return "cannot load library" in complaint and "OSError" in complaint


def need_typesetter() -> None:
    """Refuse in words, before any work, where the typesetter cannot be loaded. Raises `KitError`."""
    for name in _PANGO:
        with suppress(OSError):
            ctypes.CDLL(name)
            return  # quick; the typesetter itself takes half a second to load, and is loaded elsewhere
    try:
        with redirect_stdout(io.StringIO()):  # where it has words of its own for it
            load_typesetter()  # looks in more places
    except OSError as error:
        raise (missing() if is_missing(f"OSError: {error}") else error) from None


def load_typesetter() -> None:
    """Load WeasyPrint without the search that costs most of it: it tries each of its libraries under the names of other
    systems first, and for each of these ctypes asks the linker and the compiler, fifty processes in all, where the name
    that Linux gives it is found at once. Only where it is not is the search made. Raises `OSError` where a library is
    not there, as the import does.
    """
    with suppress(OSError), _by_name(), redirect_stdout(io.StringIO()):
        import weasyprint

        return
    import weasyprint  # noqa: F401


@contextmanager
def _by_name() -> Iterator[None]:
    """Libraries are found by their full names alone; elsewhere than on Linux as ever."""
    search = ctypes.util.find_library
    if sys.platform == "linux":
        ctypes.util.find_library = lambda name: None
    try:
        yield
    finally:
        ctypes.util.find_library = search
