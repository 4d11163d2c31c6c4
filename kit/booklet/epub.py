"""The booklet as an EPUB 3.3 publication (W3C Recommendation, 25 May 2023), made from its screen page.

The page is cut at its sections: each becomes one XHTML content document, pictures stay inside it as SVG, photographs
become files of their own, and references between sections name the file they lead to. All is written into a ZIP
container whose first entry is the stored `mimetype` (EPUB OCF). Nothing in it is remote.
"""

from __future__ import annotations

import base64
import io
import re
import uuid
import zipfile
from dataclasses import dataclass
from datetime import UTC, datetime
from urllib.parse import unquote
from xml.etree.ElementTree import Element
from xml.sax.saxutils import escape

from kit.booklet.moment import moment_of
from kit.booklet.xhtml import OPS, SVG, XHTML, name, parse, serialise, text
from kit.language import say

_DATA = re.compile(r"data:(image/[a-z+.-]+);base64,(.*)\Z", re.DOTALL)
_ENDINGS = {"image/png": "png", "image/jpeg": "jpg", "image/gif": "gif", "image/webp": "webp", "image/svg+xml": "svg"}
_DROPPED = {"script", "dialog", "style", "link", "template", "noscript"}
_CONTAINER = """<?xml version="1.0" encoding="UTF-8"?>
<container version="1.0" xmlns="urn:oasis:names:tc:opendocument:xmlns:container">
<rootfiles><rootfile full-path="EPUB/package.opf" media-type="application/oebps-package+xml"/></rootfiles>
</container>
"""
_FEATURES = ("structuralNavigation", "tableOfContents", "readingOrder", "alternativeText")
_STYLE = """
body { margin: 0; background: none; }
section, .cover, main { box-shadow: none; max-width: none; width: auto; height: auto; }
.cover, .cover * { position: static; }
figure svg, img { max-width: 100%; height: auto; }
figure svg.phone { display: block; width: 100%; max-width: 120mm; }
"""


@dataclass(frozen=True)
class _Document:
    """One content document: its file `stem`, what it is called, and its section."""

    stem: str
    title: str
    body: tuple[Element, ...]


def epub(html: str, *, rights: str = "", date: str = "", modified: datetime | None = None) -> bytes:
    """The screen page `html` as an EPUB. Its title, language, author and description are the page's own; the lesson and
    edition the page names make its identifier, the same for every build of that edition. `rights` is the licence;
    `modified` is left out for `moment_of` the lesson's `date`."""
    page = parse(html)
    head = next(child for child in page if name(child) == "head")
    body = next(child for child in page if name(child) == "body")
    meta = {item.get("name"): item.get("content", "") for item in head if name(item) == "meta"}
    lesson, edition = body.get("data-lesson", ""), body.get("data-edition", "")
    title = next((text(item) for item in head if name(item) == "title"), "") or lesson
    language = page.get("lang") or "en"
    style = "\n".join(item.text or "" for item in head if name(item) == "style")
    moment = (modified or moment_of(date, html.encode())).astimezone(UTC)
    documents = _documents(body, title)
    pictures = _take_pictures(documents)
    _point_across(documents)
    files: dict[str, str | bytes] = {"EPUB/style.css": _css(style) + _STYLE, **pictures}
    for document in documents:
        files[f"EPUB/{document.stem}.xhtml"] = _page(document, language)
    files["EPUB/nav.xhtml"] = _nav(documents, title, language)
    cover = _cover_picture(documents)
    if cover:
        files["EPUB/cover-picture.svg"] = cover
    identifier = uuid.uuid5(uuid.NAMESPACE_URL, f"lessonkit:{lesson}/{edition}/{language}").urn
    files["EPUB/package.opf"] = _package(
        documents,
        files,
        title,
        language,
        identifier,
        moment,
        meta.get("author", ""),
        meta.get("description", ""),
        rights,
    )
    return _zipped(files, moment)


# ---- cutting the page -------------------------------------------------------------------------------------


def _documents(body: Element, title: str) -> list[_Document]:
    """The page's sections in order, each a document; what stands between two sections goes with the one before."""
    groups: list[list[Element]] = []
    for block in _blocks(body):
        _clean(block)
        block.tail = None
        if name(block) == "section" or not groups:
            groups.append([block])
        else:
            groups[-1].append(block)
    found: list[_Document] = []
    for number, group in enumerate(groups):
        heading = next((item for block in group for item in block.iter() if name(item) in ("h1", "h2")), None)
        stem = "cover" if number == 0 else re.sub(r"[^a-z0-9-]", "", (group[0].get("id") or "").lower())
        if not stem or not stem[0].isalpha() or any(stem == other.stem for other in found):
            stem = f"part-{number}"
        said = text(heading) if heading is not None else title
        found.append(_Document(stem, said or title, tuple(group)))
    return found


def _blocks(parent: Element) -> list[Element]:
    found: list[Element] = []
    for child in parent:
        if name(child) in _DROPPED or not name(child):
            continue
        if name(child) == "main" or (name(child) == "div" and any(name(inner) == "section" for inner in child)):
            found += _blocks(child)
        else:
            found.append(child)
    return found


def _clean(element: Element) -> None:
    """Take out what belongs to the screen page alone, and of a picture made for two screens the one for the wider."""
    if "two" in element.get("class", "").split():
        for child in [item for item in element if name(item) == "svg" and item.get("class") != "phone"]:
            element.remove(child)
    for child in list(element):
        if name(child) in _DROPPED and not child.tag.startswith(f"{{{SVG}}}"):
            element.remove(child)
        else:
            _clean(child)
    for key in [
        key for key in element.attrib if key.startswith("on") or (key == "role" and element.get(key) == "alert")
    ]:
        del element.attrib[key]


def _take_pictures(documents: list[_Document]) -> dict[str, bytes]:
    """Photographs inside the page as files; the same picture is kept once."""
    files: dict[str, bytes] = {}
    stems: dict[str, str] = {}
    for element in _all(documents):
        found = _DATA.match(element.get("src", "")) if name(element) == "img" else None
        if found is None:
            continue
        address = element.get("src", "")
        if address not in stems:
            stems[address] = f"pictures/{len(stems) + 1}.{_ENDINGS.get(found[1], 'bin')}"
            files[f"EPUB/{stems[address]}"] = base64.b64decode(unquote(found[2]))
        element.set("src", stems[address])
    return files


def _point_across(documents: list[_Document]) -> None:
    """References to what now stands in another file name that file; one that leads nowhere becomes plain text."""
    home = {
        element.get("id", ""): document.stem
        for document in documents
        for block in document.body
        for element in block.iter()
        if element.get("id")
    }
    for document in documents:
        for element in (item for block in document.body for item in block.iter()):
            address = element.get("href", "")
            if name(element) != "a" or not address.startswith("#"):
                continue
            target = home.get(unquote(address[1:]))
            if target is None:
                del element.attrib["href"]
            elif target != document.stem:
                element.set("href", f"{target}.xhtml{address}")


def _all(documents: list[_Document]) -> list[Element]:
    return [item for document in documents for block in document.body for item in block.iter()]


def _cover_picture(documents: list[_Document]) -> str:
    """The first picture of the cover as an SVG file, to stand for the book on a shelf."""
    svg = next((item for block in documents[0].body for item in block.iter() if item.tag == f"{{{SVG}}}svg"), None)
    return '<?xml version="1.0" encoding="UTF-8"?>\n' + serialise(svg) + "\n" if svg is not None else ""


# ---- writing ----------------------------------------------------------------------------------------------


def _page(document: _Document, language: str) -> str:
    kind = "cover" if document.stem == "cover" else "bodymatter"
    inside = "\n".join(serialise(block, XHTML) for block in document.body)
    return _xhtml(document.title, language, f'<body epub:type="{kind}">\n{inside}\n</body>')


def _xhtml(title: str, language: str, body: str) -> str:
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n<!DOCTYPE html>\n'
        f'<html xmlns="{XHTML}" xmlns:epub="{OPS}" lang="{language}" xml:lang="{language}">\n'
        f'<head>\n<meta charset="utf-8"/>\n<title>{escape(title)}</title>\n'
        f'<link rel="stylesheet" type="text/css" href="style.css"/>\n</head>\n{body}\n</html>\n'
    )


def _nav(documents: list[_Document], title: str, language: str) -> str:
    lines: list[str] = []
    for document in documents:
        address = f"{document.stem}.xhtml"
        steps = [
            f'<li><a href="{address}#{escape(item.get("id", ""))}">{escape(said)}</a></li>'
            for block in document.body
            for item in block.iter()
            if name(item) == "article" and item.get("id") and (said := _heading(item))
        ]
        inner = f"\n<ol>\n{chr(10).join(steps)}\n</ol>\n" if steps else ""
        lines.append(f'<li><a href="{address}">{escape(document.title)}</a>{inner}</li>')
    first = documents[1].stem if len(documents) > 1 else documents[0].stem
    contents, start = escape(say("screen.contents")), escape(say("screen.start"))
    return _xhtml(
        title,
        language,
        f'<body>\n<nav epub:type="toc" role="doc-toc" aria-label="{contents}">\n<h1>{contents}</h1>\n<ol>\n'
        f"{chr(10).join(lines)}\n</ol>\n</nav>\n"
        f'<nav epub:type="landmarks" hidden="hidden" aria-label="{start}">\n<ol>\n'
        f'<li><a epub:type="cover" href="{documents[0].stem}.xhtml">{escape(documents[0].title)}</a></li>\n'
        f'<li><a epub:type="bodymatter" href="{first}.xhtml">{start}</a></li>\n</ol>\n</nav>\n</body>',
    )


def _heading(article: Element) -> str:
    """A step's heading with its number before its words."""
    heading = next((item for item in article.iter() if name(item) in ("h2", "h3", "h4")), None)
    if heading is None:
        return ""
    parts = [heading.text or ""]
    for child in heading:
        if child.get("class") == "time":
            continue
        parts += [text(child), " " if child.get("class") == "number" else "", child.tail or ""]
    return " ".join("".join(parts).split())


def _package(
    documents: list[_Document],
    files: dict[str, str | bytes],
    title: str,
    language: str,
    identifier: str,
    moment: datetime,
    author: str,
    description: str,
    rights: str,
) -> str:
    inside = {document.stem: files[f"EPUB/{document.stem}.xhtml"] for document in documents}
    items = ['<item id="nav" href="nav.xhtml" media-type="application/xhtml+xml" properties="nav"/>']
    items.append('<item id="style" href="style.css" media-type="text/css"/>')
    for stem, content in inside.items():
        properties = ' properties="svg"' if "<svg" in str(content) else ""
        items.append(f'<item id="{stem}" href="{stem}.xhtml" media-type="application/xhtml+xml"{properties}/>')
    kinds = {ending: kind for kind, ending in _ENDINGS.items()}
    for path in files:
        if path.startswith("EPUB/pictures/"):
            stem, _, ending = path.removeprefix("EPUB/").partition(".")
            kind = kinds.get(ending, "image/png")
            items.append(f'<item id="{stem.replace("/", "-")}" href="{stem}.{ending}" media-type="{kind}"/>')
    if "EPUB/cover-picture.svg" in files:
        items.append(
            '<item id="cover-picture" href="cover-picture.svg" media-type="image/svg+xml" properties="cover-image"/>'
        )
    said = [f'<dc:identifier id="identifier">{identifier}</dc:identifier>', f"<dc:title>{escape(title)}</dc:title>"]
    said.append(f"<dc:language>{escape(language)}</dc:language>")
    optional = (("creator", author), ("description", description), ("rights", rights))
    said += [f"<dc:{tag}>{escape(value)}</dc:{tag}>" for tag, value in optional if value]
    said.append(f'<meta property="dcterms:modified">{moment:%Y-%m-%dT%H:%M:%SZ}</meta>')
    # EPUB Accessibility 1.1 (W3C), section 2: these four and a summary; https://www.w3.org/TR/epub-a11y-11/
    said += [f'<meta property="schema:accessMode">{mode}</meta>' for mode in ("textual", "visual")]
    said += [f'<meta property="schema:accessModeSufficient">{modes}</meta>' for modes in ("textual,visual", "textual")]
    said += [f'<meta property="schema:accessibilityFeature">{feature}</meta>' for feature in _FEATURES]
    said.append('<meta property="schema:accessibilityHazard">none</meta>')
    said.append(f'<meta property="schema:accessibilitySummary">{escape(say("screen.access"))}</meta>')
    spine = "\n".join(f'<itemref idref="{document.stem}"/>' for document in documents)
    newline = "\n"
    return (
        '<?xml version="1.0" encoding="UTF-8"?>\n'
        '<package xmlns="http://www.idpf.org/2007/opf" version="3.0" unique-identifier="identifier" '
        f'xml:lang="{language}">\n<metadata xmlns:dc="http://purl.org/dc/elements/1.1/">\n{newline.join(said)}\n'
        f"</metadata>\n<manifest>\n{newline.join(items)}\n</manifest>\n<spine>\n{spine}\n</spine>\n</package>\n"
    )


def _css(style: str) -> str:
    """The page's style without the rules of printed pages (`@page`), which a reading system lays out itself."""
    out, at = "", 0
    for found in re.finditer(r"@page\b[^{]*\{", style):
        if found.start() < at:
            continue
        out += style[at : found.start()]
        depth, at = 1, found.end()
        while depth and at < len(style):
            depth += {"{": 1, "}": -1}.get(style[at], 0)
            at += 1
    return out + style[at:]


def _zipped(files: dict[str, str | bytes], moment: datetime) -> bytes:
    stamp = moment.timetuple()[:6] if moment.year >= 1980 else (1980, 1, 1, 0, 0, 0)
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as container:
        # EPUB OCF: first, stored, no extra field, so that the type stands at a fixed place in the file.
        container.writestr(zipfile.ZipInfo("mimetype", stamp), "application/epub+zip")
        for path, content in {"META-INF/container.xml": _CONTAINER, **files}.items():
            entry = zipfile.ZipInfo(path, stamp)
            entry.compress_type = zipfile.ZIP_DEFLATED
            container.writestr(entry, content)
    return out.getvalue()
