"""The author's look of a booklet: `theme.toml` in the lesson's folder, two inks, two typefaces and a logo.

    [theme]
    ink = "#1f2d3a"
    accent = "#a8391b"
    typeface = "Booklet Sans"
    headings = "fonts/garden.otf"
    logo = "logo.svg"

Every entry may be left out. Inks must be dark enough to be read on white and on the cover's paper: WCAG 2.2, success
criterion 1.4.3, level AA, asks for a contrast of 4.5 : 1.
"""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from PIL import ImageFont

from kit.booklet.author import picture_data
from kit.booklet.fetch import THEME_FILE, LessonFolder
from kit.booklet.pictures import COVER
from kit.booklet.type import SANS, SERIF
from kit.errors import KitError, near
from kit.picture.theme import THEME, Theme, contrast, in_inks

FILE = THEME_FILE
LEAST_CONTRAST = 4.5
KEYS = ("ink", "accent", "typeface", "headings", "logo")
FACES = (SANS, SERIF)
_PAPERS = (("white", "#ffffff"), ("the cover's paper", COVER))
_COLOUR = re.compile(r"#[0-9a-fA-F]{6}")
_LARGEST_FONT = 20_000_000


@dataclass(frozen=True)
class BookTheme:
    """The look of a booklet: inks as "#rrggbb", the families of the text's and the headings' letters, `logo` as a data:
    address (empty for none), and the font files of the author's own families: (family, file)."""

    ink: str = THEME.ink
    accent: str = THEME.accent
    text_face: str = SANS
    heading_face: str = SERIF
    logo: str = ""
    fonts: tuple[tuple[str, Path], ...] = ()


def read_theme(folder: LessonFolder) -> BookTheme:
    """The theme in the lesson's folder, or the kit's own where there is none. Raises `KitError` naming the entry for
    an unknown key, a colour too pale to read, a file that is not a font or picture inside the folder."""
    path = folder.folder / FILE
    try:
        data = tomllib.loads(path.read_text(encoding="utf-8"))
    except FileNotFoundError:
        return BookTheme()
    except (OSError, UnicodeDecodeError) as error:
        raise KitError(f"it cannot be read ({error}).", where=FILE, do="Check the file and its permissions.") from None
    except tomllib.TOMLDecodeError as error:
        raise KitError(
            f"it cannot be read: {str(error)[:1].lower()}{str(error)[1:]}.",
            where=FILE,
            do='Write one entry on each line, its text in quotes: ink = "#1f2d3a".',
        ) from None
    return book_theme(data, folder)


def book_theme(data: Mapping[str, Any], folder: LessonFolder) -> BookTheme:
    """The theme told by the entries of a theme file."""
    _known(data, ("theme",), FILE)
    given = data.get("theme", {})
    if not isinstance(given, Mapping):
        raise KitError(f"theme is {given!r}, not a section.", where=FILE, do="Begin with a line [theme].")
    _known(given, KEYS, f"{FILE}, [theme]")
    for key, value in given.items():
        if not isinstance(value, str) or not value.strip():
            raise KitError(f"{key} is {value!r}, not a text.", where=FILE, do=f'Write {key} = "..." or leave it out.')
    plain = BookTheme()
    text, text_font = _face(given.get("typeface", plain.text_face), "typeface", "Author Text", folder)
    headings, heading_font = _face(given.get("headings", plain.heading_face), "headings", "Author Headings", folder)
    return BookTheme(
        ink=_ink(given.get("ink", plain.ink), "ink"),
        accent=_ink(given.get("accent", plain.accent), "accent"),
        text_face=text,
        heading_face=headings,
        logo=_logo(given.get("logo", ""), folder),
        fonts=(*text_font, *heading_font),
    )


def picture_theme(book: BookTheme, base: Theme = THEME) -> Theme:
    """The pictures' theme in the book's inks: every line and text that was in the ink or the accent of `base`."""
    return in_inks(book.ink, book.accent, base)


def _known(given: Mapping[str, Any], keys: tuple[str, ...], where: str) -> None:
    for key in given:
        if key not in keys:
            raise KitError(f"there is no entry '{key}'.", where=where, do=near(key, keys))


def _ink(colour: str, key: str) -> str:
    if not _COLOUR.fullmatch(colour):
        raise KitError(
            f"{key} is '{colour}', which is not a colour.",
            where=FILE,
            do="Write # and six digits of red, green and blue, such as #1f2d3a.",
        )
    colour = colour.lower()
    for paper, ground in _PAPERS:
        ratio = contrast(colour, ground)
        if ratio < LEAST_CONTRAST:
            raise KitError(
                f"{key} {colour} has a contrast of {int(ratio * 100) / 100:g} : 1 on {paper} ({ground}); text needs "
                f"{LEAST_CONTRAST:g} : 1 to be read.",
                where=FILE,
                do=f"Choose a darker colour, such as {_darker(colour)}.",
            )
    return colour


def _darker(colour: str) -> str:
    """The nearest colour of the same hue that can be read on every paper."""
    parts = [int(colour[i : i + 2], 16) for i in (1, 3, 5)]
    for step in range(100, -1, -1):
        found = "#" + "".join(f"{int(part * step / 100):02x}" for part in parts)
        if all(contrast(found, ground) >= LEAST_CONTRAST for _, ground in _PAPERS):
            return found
    return THEME.ink


def _face(name: str, key: str, family: str, folder: LessonFolder) -> tuple[str, tuple[tuple[str, Path], ...]]:
    """(family, its file) of one of the kit's faces or of a font file in the lesson's folder."""
    if name in FACES:
        return name, ()
    if Path(name).suffix.lower() not in (".ttf", ".otf"):
        raise KitError(
            f"{key} is '{name}', which is neither a typeface of the kit nor a font file.",
            where=FILE,
            do=f"{near(name, FACES)} Or put a .ttf or .otf file into the lesson's folder and name that.",
        )
    where = f"{FILE}, {key}"
    try:
        path = (folder.folder / name).resolve()
        inside, there = path.is_relative_to(folder.folder), path.is_file()
    except (OSError, RuntimeError, ValueError):
        path, inside, there = folder.folder, True, False
    if not inside:
        raise KitError(f"'{name}' lies outside the lesson's folder.", where=where, do="Copy the font into that folder.")
    if not there:
        raise KitError(f"there is no font '{name}'.", where=where, do="Check its name; capital letters count.")
    if path.stat().st_size > _LARGEST_FONT:
        raise KitError(f"'{name}' is larger than 20 MB.", where=where, do="Choose a smaller font.")
    try:
        ImageFont.truetype(str(path), 12)
    except (OSError, ValueError):
        raise KitError(f"'{name}' is not a font that can be read.", where=where, do="Choose another file.") from None
    return family, ((family, path),)


def _logo(file: str, folder: LessonFolder) -> str:
    if not file:
        return ""
    try:
        return picture_data(file, folder)
    except KitError as error:
        raise error.at(f"{FILE}, logo") from None
