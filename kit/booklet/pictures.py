"""Drawings as inline SVG for a page: the booklet's own letters, a title and alternative text, and ids that
no other picture on the page has."""

from __future__ import annotations

import math
import re
from collections.abc import Callable
from dataclasses import dataclass, replace
from html import escape

from markupsafe import Markup

from kit.booklet.forms import PHONE, Form, PictureRoom
from kit.picture.drawing import Dimension, Drawing, Label
from kit.picture.legend import signs_in
from kit.picture.lettered import Growth, growth_of, lettered
from kit.picture.svg_pen import written
from kit.picture.theme import THEME, Theme

FONT = "'Booklet Sans','Source Sans Pro','Source Sans 3','Noto Sans','DejaVu Sans',sans-serif"
COVER = "#fdfbf6"  # the cover's paper, as in booklet.css
# What stands before the name of an id, as the SVG pen writes it. Plain text is replaced many times as quickly as what a
# pattern finds, and a booklet has megabytes of pictures.
_IDS = (' id="', "url(#", 'href="#', ' aria-labelledby="', ' aria-describedby="')
_OPEN = re.compile(r"<svg\b[^>]*>")
_SIZE = re.compile(r'<svg\b[^>]*?\bwidth="([\d.]+)"[^>]*?\bheight="([\d.]+)"')
_TITLE = re.compile(r"<(title|desc)\b[^>]*>.*?</\1>", re.DOTALL)
_SCRIPT = re.compile(r"<(script|foreignObject|iframe)\b", re.IGNORECASE)


@dataclass(frozen=True)
class Picture:
    """A finished picture: inline `svg` of `width` x `height` CSS px, alternative text `alt`, an optional `caption`;
    `signs` are those of the legend that it uses. `phone` is it once more for a narrow screen ("": it is the same)."""

    svg: Markup
    alt: str
    caption: str = ""
    width: float = 0.0
    height: float = 0.0
    signs: frozenset[str] = frozenset()
    phone: str = ""


@dataclass(frozen=True)
class Inks:
    """The inks and letters of a booklet's pictures: the author's theme, letters enlarged for the form. `phone`: each
    picture is also made for a narrow screen."""

    theme: Theme = THEME
    phone: bool = False

    @classmethod
    def of(cls, theme: Theme, form: Form) -> Inks:
        texts = {role: replace(text, size=text.size * 1.06 * form.letters) for role, text in theme.texts.items()}
        return cls(replace(theme, font=FONT, texts=texts), form.screen)


@dataclass(frozen=True)
class UninkedPicture:
    """A picture not inked yet: `draw` gives its drawing for a room, so that it can be tried at several heights."""

    draw: Callable[[PictureRoom], Drawing]
    name: str
    room: PictureRoom
    caption: str = ""
    alt: str = ""

    def growth(self, inks: Inks) -> Growth:
        """About how high the picture is with all of some width, told before it is inked."""
        return growth_of(self.draw(self.room), self.room.width, self.room.height, inks.theme)

    def inked(self, inks: Inks, share: float = 1.0, most: float = math.inf) -> Picture:
        """The picture with so much of its room's height, and no more than `most` CSS px of it."""
        room = self.room.times(share)
        room = PictureRoom(room.width, min(room.height, most))
        narrow = self.draw(PHONE) if inks.phone else None
        return picture(self.draw(room), self.name, room, inks, self.caption, self.alt, narrow=narrow)


def picture(
    drawing: Drawing,
    name: str,
    room: PictureRoom,
    inks: Inks,
    caption: str = "",
    alt: str = "",
    paper: str = "#ffffff",
    narrow: Drawing | None = None,
    phone: PictureRoom = PHONE,
) -> Picture:
    """`drawing` fitted inside `room` on `paper`. `name` makes its ids its own; `alt` replaces the drawing's own
    alternative text. A narrow screen gets it with its texts placed anew, as they keep their size there, or the drawing
    `narrow`, in the room `phone`."""
    said = alt or drawing.alt or drawing.title or caption
    theme = replace(inks.theme, paper=paper)
    text = _named(_inked(drawing, said, room, theme), name, said)
    size = _SIZE.search(text)
    width, height = (float(size[1]), float(size[2])) if size else room
    other = ""
    if (
        inks.phone
        and not 0.85 <= width / PHONE.width <= 1.0
        and any(isinstance(item, Label | Dimension) for item in drawing.items)
    ):
        small = _named(_inked(narrow or drawing, said, phone, theme), f"{name}-phone", said)
        other = Markup(small.replace("<svg ", '<svg class="phone" ', 1))
    return Picture(Markup(text), said, caption, width, height, signs_in(drawing), other)


def _inked(drawing: Drawing, alt: str, room: PictureRoom, theme: Theme) -> str:
    return written(lettered(replace(drawing, alt=alt), round(room.width), round(room.height), theme), theme)


def _named(text: str, name: str, alt: str) -> str:
    """The SVG with prefixed ids and exactly one <title>, which is its alternative text in HTML and PDF."""
    if _SCRIPT.search(text):
        raise ValueError("a picture may not hold script or foreign content")
    text = text[text.index("<svg") :]
    for before in _IDS:
        text = text.replace(before, f"{before}{name}-")
    text = _TITLE.sub("", text)
    opening = _OPEN.match(text)
    assert opening is not None
    tag = re.sub(r'\s(?:role|aria-[a-z]+)="[^"]*"', "", opening[0])
    head = tag[:-1] + f' role="img" aria-labelledby="{name}-title">'
    return f'{head}<title id="{name}-title">{escape(alt)}</title>{text[opening.end() :]}'
