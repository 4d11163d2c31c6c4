"""Still pictures for where no kernel runs: a repository's page, an export, a browser without network, an e-mail.

What a cell shows carries its picture a second time, as SVG and as PNG, and its words as text, each under its own type;
whoever opens the notebook takes the best one it can show. A widget's still is the picture as it stood when its cell was
run. The PNG of a step takes up to a second or two, so it is made aside when the sliders rest. The wrap top's notebook,
22 steps with their pictures, grows from 0.7 to about 2 MB.
"""

from __future__ import annotations

import base64
import io
import re
from collections.abc import Sequence
from html import escape, unescape
from typing import Any

SVG, PNG = "image/svg+xml", "image/png"
_WIDE = 1000.0
"""Width (px) within which several pictures stand side by side."""
_GAP = 16.0
_SHARP = 1.25
"""Pixels of the PNG to one of the SVG."""
_LARGEST = 2400
_SIZE = re.compile(r'<svg\b[^>]*?\bwidth="([\d.]+)"[^>]*?\bheight="([\d.]+)"')
_PICTURE = re.compile(r"<svg\b.*?</svg>", re.DOTALL)
_STYLE = re.compile(r'(<svg\b[^>]*?) style="[^"]*"')
_TAG = re.compile(r"<[^>]+>")
_BLOCK = re.compile(r"</(?:p|div|li|tr|h\d)>")


def bundle(html: str, *, png: bool = True) -> dict[str, str]:
    """What is shown under a cell, `html` with its pictures as SVG, for every reader: HTML, the pictures as one SVG and,
    with `png`, as one PNG, and the words as text. A PNG of sewing pictures takes a second and more."""
    return {"text/html": html, "text/plain": words(html), **still(pictures(html), png=png)}


def pictures(html: str) -> tuple[str, ...]:
    """The pictures in `html`, in order."""
    return tuple(_PICTURE.findall(html))


def words(html: str) -> str:
    """The words of `html` without its pictures, a line for each paragraph."""
    text = unescape(_TAG.sub("", _BLOCK.sub("\n", _PICTURE.sub("", html))))
    return "\n".join(line.strip() for line in text.splitlines() if line.strip())


def still(shown: Sequence[str], *, png: bool = True) -> dict[str, str]:
    """The pictures of the SVG pen in `shown`, put side by side and beneath each other, as SVG and, with `png`, as PNG,
    by type; nothing for none."""
    whole = _together(shown)
    if not whole:
        return {}
    return {SVG: whole, **({PNG: base64.b64encode(_png(shown)).decode("ascii")} if png else {})}


Given = Any
"""What a widget says of itself: its data by type, or (data, metadata), or None where it is not shown."""


def with_still(given: Given, shown: Sequence[str], title: str) -> Given:
    """What a widget says of itself with a still of what it shows; its text, and its alternative text, is its `title`
    with what the picture's own says."""
    if given is None or not shown:
        return given
    data, more = given if isinstance(given, tuple) else (given, {})
    told = " ".join([f"{title}.", *(unescape(text) for text in re.findall(r'aria-label="([^"]*)"', shown[0])[:1])])
    alt = {kind: {"alt": told} for kind in (SVG, PNG)}
    return {**data, "text/plain": told, **still(shown)}, {**more, **alt}


def _placed(shown: Sequence[str]) -> tuple[list[tuple[str, float, float, float, float]], float, float]:
    """Each picture with its left, top, width and height, and the width and height of all."""
    found: list[tuple[str, float, float, float, float]] = []
    left = top = row = right = 0.0
    for picture in shown:
        size = _SIZE.search(picture)
        if size is None:
            continue
        wide, high = float(size[1]), float(size[2])
        if left and left + wide > _WIDE:
            left, top, row = 0.0, top + row + _GAP, 0.0
        found.append((picture, left, top, wide, high))
        row, right = max(row, high), max(right, left + wide)
        left += wide + _GAP
    return found, right, top + row


def _together(shown: Sequence[str]) -> str:
    placed, wide, high = _placed(shown)
    if not placed:
        return ""
    bare = [_STYLE.sub(r"\1", picture, count=1) for picture, *_ in placed]
    if len(bare) == 1:
        return bare[0]
    inner = "".join(
        picture.replace("<svg ", f'<svg x="{x:g}" y="{y:g}" ', 1)
        for picture, (_, x, y, *_rest) in zip(bare, placed, strict=True)
    )
    told = escape(" ".join(re.findall(r'aria-label="([^"]*)"', inner)), quote=False)
    head = f'<svg xmlns="http://www.w3.org/2000/svg" width="{wide:g}" height="{high:g}" viewBox="0 0 {wide:g} {high:g}"'
    return f'{head} role="img"><title>{told}</title>{inner}</svg>'


def _png(shown: Sequence[str]) -> bytes:
    """Few colours and much white: a palette makes it a third as large."""
    from PIL import Image

    from kit.picture.raster import raster

    placed, wide, high = _placed(shown)
    sharp = min(_SHARP, _LARGEST / max(wide, high))
    sheet = Image.new("RGB", (max(1, round(wide * sharp)), max(1, round(high * sharp))), "#ffffff")
    for picture, x, y, width, height in placed:
        size = (max(1, round(width * sharp)), max(1, round(height * sharp)))
        sheet.paste(
            Image.fromarray(raster(picture, size, "#ffffff")).convert("RGB"), (round(x * sharp), round(y * sharp))
        )
    out = io.BytesIO()
    sheet.quantize(64, method=Image.Quantize.FASTOCTREE).save(out, "PNG", optimize=True)
    return out.getvalue()
