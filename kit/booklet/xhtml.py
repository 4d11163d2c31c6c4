"""A page of HTML as a tree, and a tree as well-formed XHTML (HTML Living Standard, "the XML syntax")."""

from __future__ import annotations

import re
from xml.etree.ElementTree import Element
from xml.sax.saxutils import escape, quoteattr

import tinyhtml5

XHTML = "http://www.w3.org/1999/xhtml"
SVG = "http://www.w3.org/2000/svg"
OPS = "http://www.idpf.org/2007/ops"
_PREFIXES = {
    "http://www.w3.org/1999/xlink": "xlink",
    "http://www.w3.org/XML/1998/namespace": "xml",
    OPS: "epub",
}
# Characters XML 1.0 has no place for (section 2.2).
_NOT_XML = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
_VOID = frozenset(
    ["area", "base", "br", "col", "embed", "hr", "img", "input", "link", "meta", "source", "track", "wbr"]
)


def parse(html: str) -> Element:
    """The page's `html` element, parsed as a browser does; HTML and SVG elements carry their namespaces."""
    root: Element = tinyhtml5.parse(html, namespace_html_elements=True)
    return root


def name(element: Element) -> str:
    """The local name of an element, empty for a comment."""
    return element.tag.rpartition("}")[2] if isinstance(element.tag, str) else ""


def text(element: Element) -> str:
    """All the text in `element` on one line, pictures left out."""
    return " ".join("".join(_texts(element)).split())


def _texts(element: Element) -> list[str]:
    found = [element.text or ""]
    for child in element:
        if name(child) not in ("svg", "", "style", "script"):
            found += _texts(child)
        found.append(child.tail or "")
    return found


def serialise(element: Element, around: str = "") -> str:
    """`element` without its tail as XML. `around` is the namespace that holds already."""
    if not isinstance(element.tag, str):
        return ""
    space, _, local = element.tag[1:].rpartition("}") if element.tag.startswith("{") else (XHTML, "", element.tag)
    said, prefixes = [local], set[str]()
    if space != around:
        said.append(f'xmlns="{space}"')
    # Attributes of a foreign namespace keep the few prefixes an EPUB reader knows and are dropped else; so are names
    # that XML does not allow, which an HTML parser lets through.
    for key, value in element.attrib.items():
        inner, _, plain = key[1:].rpartition("}") if key.startswith("{") else ("", "", key)
        if inner:
            prefix = _PREFIXES.get(inner)
            if prefix is None:
                continue
            if prefix != "xml" and prefix not in prefixes:
                said.append(f'xmlns:{prefix}="{inner}"')
                prefixes.add(prefix)
            plain = f"{prefix}:{plain}"
        elif ":" in plain or not re.fullmatch(r"[A-Za-z_][\w.-]*", plain):
            continue
        said.append(f"{plain}={quoteattr(_NOT_XML.sub('', value))}")
    inside = escape(_NOT_XML.sub("", element.text or ""))
    for child in element:
        inside += serialise(child, space) + escape(_NOT_XML.sub("", child.tail or ""))
    if not inside and (space != XHTML or local in _VOID):
        return f"<{' '.join(said)}/>"
    return f"<{' '.join(said)}>{inside}</{local}>"
