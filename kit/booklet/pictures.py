"""Drawings as inline SVG for a page: the booklet's own letters, a title and alternative text, and ids that
no other picture on the page has."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from html import escape

from markupsafe import Markup

from kit.booklet.forms import Form, Room
from kit.picture.drawing import Drawing
from kit.picture.legend import signs_in
from kit.picture.lettered import lettered
from kit.picture.svg_pen import written
from kit.picture.theme import THEME, Theme

FONT = "'Booklet Sans','Source Sans Pro','Source Sans 3','Noto Sans','DejaVu Sans',sans-serif"
COVER = "#fdfbf6"  # the cover's paper, as in booklet.css
_ID = re.compile(r'(\bid="|url\(#|href="#|\baria-labelledby="|\baria-describedby=")([\w.-]+)')
_OPEN = re.compile(r"<svg\b[^>]*>")
_SIZE = re.compile(r'<svg\b[^>]*?\bwidth="([\d.]+)"[^>]*?\bheight="([\d.]+)"')
_TITLE = re.compile(r"<(title|desc)\b[^>]*>.*?</\1>", re.DOTALL)
_SCRIPT = re.compile(r"<(script|foreignObject|iframe)\b", re.IGNORECASE)


@dataclass(frozen=True)
class Picture:
    """A finished picture: inline `svg` of `width` x `height` CSS px, alternative text `alt`, an optional `caption`;
    `growth` says how high it would be with another width, `signs` are those of the legend that it uses."""

    svg: Markup
    alt: str
    caption: str = ""
    width: float = 0.0
    height: float = 0.0
    growth: tuple[float, float] = (0.0, 0.0)
    signs: frozenset[str] = frozenset()

    def height_at(self, width: float) -> float:
        """About how high (CSS px) it would be with that `width`: its lines grow, its text does not.

        >>> Picture(Markup(), "", growth=(10.0, 0.5)).height_at(200.0)
        110.0
        """
        text, share = self.growth
        return text + share * width


@dataclass(frozen=True)
class Inks:
    """The inks and letters of a booklet's pictures: the author's theme, letters enlarged for the form."""

    theme: Theme = THEME

    @classmethod
    def of(cls, theme: Theme, form: Form) -> Inks:
        texts = {role: replace(text, size=text.size * 1.06 * form.letters) for role, text in theme.texts.items()}
        return cls(replace(theme, font=FONT, texts=texts))


@dataclass(frozen=True)
class Sketch:
    """A picture not inked yet: `draw` gives its drawing for a room, so that it can be tried at several heights."""

    draw: Callable[[Room], Drawing]
    name: str
    room: Room
    caption: str = ""
    alt: str = ""

    def inked(self, inks: Inks, share: float = 1.0) -> Picture:
        """The picture with so much of its room's height."""
        room = self.room.times(share)
        return picture(self.draw(room), self.name, room, inks, self.caption, self.alt)

    def again(self, made: Picture, inks: Inks, share: float) -> Picture:
        """What `inked` gives for `share`; it is `made`, the picture at its usual height, where that fills the width and
        has the height it needs."""
        filled = made.width > self.room.width - 2 and made.height <= round(self.room.height * share)
        return made if share == 1.0 or filled else self.inked(inks, share)


def picture(
    drawing: Drawing,
    name: str,
    room: Room,
    inks: Inks,
    caption: str = "",
    alt: str = "",
    paper: str = "#ffffff",
) -> Picture:
    """`drawing` fitted inside `room` on `paper`. `name` makes its ids its own; `alt` replaces the drawing's own
    alternative text."""
    said = alt or drawing.alt or drawing.title or caption
    theme = replace(inks.theme, paper=paper)
    made = lettered(replace(drawing, alt=said), round(room.width), round(room.height), theme)
    text = written(made, theme)
    size = _SIZE.search(text)
    width, height = (float(size[1]), float(size[2])) if size else room
    share = made.height_at(room.width + 1) - made.height_at(room.width)
    growth = made.height_at(room.width) - share * room.width, share
    return Picture(Markup(_named(text, name, said)), said, caption, width, height, growth, signs_in(drawing))


def _named(text: str, name: str, alt: str) -> str:
    """The SVG with prefixed ids and exactly one <title>, which is its alternative text in HTML and PDF."""
    if _SCRIPT.search(text):
        raise ValueError("a picture may not hold script or foreign content")
    text = text[text.index("<svg") :]
    text = _ID.sub(lambda found: f"{found[1]}{name}-{found[2]}", text)
    text = _TITLE.sub("", text)
    opening = _OPEN.match(text)
    assert opening is not None
    tag = re.sub(r'\s(?:role|aria-[a-z]+)="[^"]*"', "", opening[0])
    head = tag[:-1] + f' role="img" aria-labelledby="{name}-title">'
    return f'{head}<title id="{name}-title">{escape(alt)}</title>{text[opening.end() :]}'
