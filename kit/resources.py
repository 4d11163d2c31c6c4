"""Where the kit's own files lie: booklet templates, sentences, starter notebooks, example lessons.

A checkout and an editable install keep them beside the package (`templates/`, `example_notebooks/`); a wheel
carries them inside it (`kit/_templates`, `kit/_examples`).
"""

from __future__ import annotations

from importlib.util import find_spec
from pathlib import Path

from kit.errors import KitError

_PACKAGE = Path(__file__).resolve().parent


def _folder(inside: str, beside: str) -> Path:
    for folder in (_PACKAGE / inside, _PACKAGE.parent / beside):
        if folder.is_dir():
            return folder
    raise KitError(
        f"the folder '{beside}' that belongs to the kit is missing.",
        where=str(_PACKAGE),
        do="Install pattern-lesson-kit again.",
    )


def templates() -> Path:
    """The folder of booklet templates, sentences and starter notebooks. Raises `KitError` when it is missing."""
    return _folder("_templates", "templates")


def examples() -> Path:
    """The folder of example lessons. Raises `KitError` when it is missing."""
    return _folder("_examples", "example_notebooks")


def sign_letters() -> Path:
    """The folder of DejaVu's font files, which travel with matplotlib. Found without loading matplotlib, which takes
    longer than anything else of a page's type; a system that keeps matplotlib's data apart is asked through it."""
    if (_PACKAGE / "_letters").is_dir():  # in a lesson's page (kit/page/bundle.py)
        return _PACKAGE / "_letters"
    found = find_spec("matplotlib")
    folder = Path(found.origin).parent / "mpl-data" if found and found.origin else Path()
    if not (folder / "fonts" / "ttf").is_dir():
        import matplotlib

        folder = Path(matplotlib.get_data_path())
    return folder / "fonts" / "ttf"
