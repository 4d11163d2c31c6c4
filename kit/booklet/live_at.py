"""Where a lesson lives on the web: its address in the booklet, as a link and as a code for a phone's camera."""

from __future__ import annotations

import re
from html import escape
from urllib.parse import parse_qsl, urlencode, urlsplit, urlunsplit

from markupsafe import Markup

from kit.booklet.handover import Handover
from kit.booklet.model import LiveAt
from kit.booklet.pictures import Picture
from kit.booklet.qr import qr_svg
from kit.errors import KitError
from kit.language import say

SIDE = 113.4  # CSS px: 30 mm, of which the code's white round about is a seventh
_LONGEST = 200  # characters; a code for more has squares too small for a printed page
_SHOWN = re.compile(r"^https?://|/$|(?<=/)index\.html$")


def read_live_at(text: str) -> str:
    """The address of a page made by `lessonkit live`, checked. Nothing is fetched from it. Raises `KitError`."""
    address = text.strip()
    try:
        parts = urlsplit(address)
        good = parts.scheme in ("http", "https") and bool(parts.hostname) and parts.username is None
    except ValueError:
        good = False
    if not good or not address.isascii() or not address.isprintable() or " " in address or len(address) > _LONGEST:
        raise KitError(
            f"'{address[:60]}' is no address of a page.",
            where="--live-at",
            do=f"Type where the folder of lessonkit live stands, such as https://example.org/top/, "
            f"{_LONGEST} characters at most, letters beyond A to Z written as a browser's address line copies them.",
        )
    return address


def live_at(address: str, given: Handover) -> LiveAt:
    """What the booklet says of the page at `address`, which opens in the size this booklet is drawn in."""
    size = given.pattern.body.name
    sized = any(row.name == size for row in given.chart)
    target = _with(address, "size", size) if sized else address
    worn = bool(given.chart)
    key = "live_at_sized" if sized else "live_at" if worn else "live_at_plain"
    alt = say("booklet.live_code", address=target)
    drawn = qr_svg(target).replace("<svg ", f'<svg width="{SIDE:g}" height="{SIDE:g}" ', 1)
    drawn = drawn.replace('role="img" aria-label=""', 'role="img" aria-labelledby="live-code-title"')
    head, _, rest = drawn.partition(">")
    code = Markup(f'{head}><title id="live-code-title">{escape(alt)}</title>{rest}')
    shown = _SHOWN.sub("", _SHOWN.sub("", address))
    return LiveAt(target, shown, say(f"booklet.{key}", size=size), Picture(code, alt, "", SIDE, SIDE))


def _with(address: str, name: str, value: str) -> str:
    """The address asking for one thing more."""
    parts = urlsplit(address)
    asked = [(key, text) for key, text in parse_qsl(parts.query, keep_blank_values=True) if key != name]
    return urlunsplit((*parts[:3], urlencode([*asked, (name, value)]), parts.fragment))
