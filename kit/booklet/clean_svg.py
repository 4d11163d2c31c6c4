"""A drawing from the lesson's folder, with everything taken out that could run or reach outside the file.

An SVG file may hold scripts, frames, references to other files and addresses, and entities that stand for them. A
booklet takes none of it: what is left is shapes, text, pictures that are data inside the file, and references to its
own parts. The cleaned drawing is what every form of the booklet carries.
"""

from __future__ import annotations

import re
from xml.etree import ElementTree
from xml.etree.ElementTree import Element

from kit.booklet.xhtml import SVG, serialise
from kit.errors import KitError

_RUNS = {"script", "foreignobject", "iframe", "object", "embed", "audio", "video", "handler", "listener", "link"}
_CHANGES = {"animate", "set", "animatemotion", "animatetransform"}  # may turn a harmless address into another
_PICTURE = re.compile(r"data:image/(png|jpeg|gif|webp);base64,[A-Za-z0-9+/=\s]+\Z")
_URL = re.compile(r"url\(\s*(?!['\"]?#)[^)]*\)?", re.IGNORECASE)
_IMPORT = re.compile(r"@import[^;}]*[;}]?", re.IGNORECASE)
_DO = "Open it in a drawing program and save it as plain SVG, or use a PNG."


def clean_svg(data: bytes, name: str) -> bytes:
    """The drawing in `data` without whatever could run or reach outside it, as UTF-8. Raises `KitError` naming the file
    when it is not an SVG, or declares entities."""
    if b"<!ENTITY" in data or b"<\x00!\x00E\x00N\x00T\x00I\x00T\x00Y" in data:
        raise KitError(f"'{name}' declares entities, which may stand for other files.", do=_DO)
    try:
        root = ElementTree.fromstring(data)
    except (ElementTree.ParseError, ValueError, LookupError):
        raise KitError(f"'{name}' cannot be read as a drawing.", do=_DO) from None
    if root.tag != f"{{{SVG}}}svg":
        raise KitError(f"'{name}' is not an SVG drawing.", do=_DO)
    _clean(root)
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{serialise(root)}\n'.encode()


def _clean(element: Element) -> None:
    for child in list(element):
        local = child.tag.rpartition("}")[2].lower() if isinstance(child.tag, str) else ""
        if not str(child.tag).startswith(f"{{{SVG}}}") or local in _RUNS or local in _CHANGES:
            _take_out(element, child)
            continue
        if local == "style":
            child.text = _style(child.text or "")
        _clean(child)
    for key, value in list(element.attrib.items()):
        local = key.rpartition("}")[2].lower()
        if local.startswith("on") or (local in ("href", "src", "base") and not _inside(value)):
            del element.attrib[key]
        elif local == "style" or "url" in value.lower() or "\\" in value:
            element.set(key, _style(value))


def _take_out(parent: Element, child: Element) -> None:
    """Remove `child`, and keep the text behind it in its place."""
    at = list(parent).index(child)
    if child.tail:
        if at:
            parent[at - 1].tail = (parent[at - 1].tail or "") + child.tail
        else:
            parent.text = (parent.text or "") + child.tail
    parent.remove(child)


def _inside(address: str) -> bool:
    return address.strip().startswith("#") or bool(_PICTURE.match(address.strip()))


def _style(text: str) -> str:
    """CSS that names only parts of the file. CSS may spell any letter as an escape (CSS Syntax, 4.3.7) and name
    pictures without `url`; no drawing needs either, and such a style goes whole."""
    return "" if "\\" in text or "image-set" in text.lower() else _IMPORT.sub("", _URL.sub("none", text))
