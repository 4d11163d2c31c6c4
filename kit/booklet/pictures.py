"""Drawings as inline SVG for a page: the booklet's own letters, a title and alternative text, and ids that
no other picture on the page has."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from html import escape

from markupsafe import Markup

from kit.picture.drawing import Drawing
from kit.picture.svg_pen import svg
from kit.picture.theme import THEME

FONT = "'Booklet Sans','Source Sans 3','Noto Sans','DejaVu Sans',sans-serif"
COVER = "#fdfbf6"  # the cover's paper, as in booklet.css
_ID = re.compile(r'(\bid="|url\(#|href="#|\baria-labelledby="|\baria-describedby=")([\w.-]+)')
_OPEN = re.compile(r"<svg\b[^>]*>")
_TITLE = re.compile(r"<(title|desc)\b[^>]*>.*?</\1>", re.DOTALL)
_SCRIPT = re.compile(r"<(script|foreignObject|iframe)\b", re.IGNORECASE)


@dataclass(frozen=True)
class Picture:
    """A finished picture: inline `svg`, alternative text `alt`, and an optional `caption`."""

    svg: Markup
    alt: str
    caption: str = ""


def picture(
    drawing: Drawing,
    name: str,
    width: float,
    height: float,
    caption: str = "",
    alt: str = "",
    paper: str = "#ffffff",
) -> Picture:
    """`drawing` fitted inside `width` x `height` CSS px on `paper`. `name` makes its ids its own; `alt`
    replaces the drawing's own alternative text."""
    said = alt or drawing.alt or drawing.title or caption
    text = svg(
        replace(drawing, alt=said),
        width=round(width),
        height=round(height),
        theme=replace(THEME, font=FONT, paper=paper),
    )
    return Picture(Markup(_named(text, name, said)), said, caption)


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
