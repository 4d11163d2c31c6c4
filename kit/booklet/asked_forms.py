"""Which forms of the booklet a build is asked for, and the files they become."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from kit.booklet.forms import FORMS
from kit.errors import KitError, near

if TYPE_CHECKING:
    from kit.booklet.impose import Sheet

HTML, EPUB = "booklet.html", "booklet.epub"
# What is asked for: print forms to set, other files to make.
_SAID: dict[str, str] = {
    **{key: f"booklet-{key}.pdf" for key in FORMS},
    "large": "booklet-a4-large.pdf",
    "fold": "booklet-a5-on-a4.pdf",
    "fold-letter": "booklet-half-letter-on-letter.pdf",
    "html": HTML,
    "epub": EPUB,
}
FOLDED: dict[str, tuple[str, Sheet]] = {
    "booklet-a5-on-a4.pdf": ("a5", "a4"),
    "booklet-half-letter-on-letter.pdf": ("half-letter", "letter"),
}
ALL = tuple(dict.fromkeys(_SAID.values()))
DEFAULT = ("a4", "letter", "html", "epub")
LIVE = "live"
"""The screen's booklet that follows its reader's body, a folder that `lessonkit live` makes (kit/page)."""
CHOICES = (*_SAID, "all", LIVE)


@dataclass(frozen=True)
class AskedForms:
    """The booklet files a build makes, in the order they are named; `prints` are the keys of the forms that must be set
    in type for them. `live`: the folder of a page with the booklet beside it is asked for too, which no build makes by
    itself."""

    files: tuple[str, ...]
    live: bool = False

    @property
    def prints(self) -> tuple[str, ...]:
        own = [key for key in FORMS if f"booklet-{key}.pdf" in self.files]
        folded = [FOLDED[file][0] for file in self.files if file in FOLDED]
        return tuple(dict.fromkeys([*own, *folded]))


def asked_forms(said: str = "", papers: Sequence[str] = ()) -> AskedForms:
    """The forms in a text such as "a4,letter,fold,html,epub" or "all"; empty: those of `DEFAULT`, of its print forms
    only those on one of the `papers` where some are told. Raises `KitError` for one that does not exist."""
    usual = [name for name in DEFAULT if not papers or name in papers or name not in FORMS]
    names = [name.strip().lower() for name in said.split(",") if name.strip()] if said else usual
    if not names:
        raise KitError("no form is named.", where="--forms", do=f"Choose from {', '.join(CHOICES)}.")
    files: list[str] = []
    for name in names:
        if name == "all":
            files += ALL
        elif name == LIVE:
            continue
        elif name in _SAID:
            files.append(_SAID[name])
        else:
            raise KitError(f"there is no booklet form '{name}'.", where="--forms", do=near(name, CHOICES))
    return AskedForms(tuple(file for file in ALL if file in files), LIVE in names)
