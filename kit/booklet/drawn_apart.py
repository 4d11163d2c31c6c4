"""Pictures taken out of a page before it is set in type: each becomes an image that the typesetter reads by itself.

WeasyPrint gives every element of a page its style and a box, those inside a drawing too, though it draws them by their
own attributes alone: in a booklet three elements of four. As an image a drawing is read once and drawn, no more. It is
made lighter on the way. A group whose lines share one ink and fill nothing becomes one line with as many parts (each
begins its dashes anew, ISO 32000-1, 8.4.3.6), and what is only for a screen, the names of lines and the title, is left
out; the title is the image's alternative text. Nothing that is drawn looks otherwise.
"""

from __future__ import annotations

from xml.etree.ElementTree import Element, SubElement, tostring

SCHEME = "kitdrawing"
"""What the addresses of the drawings taken out of a page begin with."""
_SVG = "{http://www.w3.org/2000/svg}"
_HTML = "{http://www.w3.org/1999/xhtml}"
_OWN = frozenset(("transform", "clip-path", "mask", "filter", "opacity", "id", "class", "style"))
"""What a group does to its parts together, and cannot hand on to each."""


def taken_out(root: Element) -> dict[str, bytes]:
    """Put an image in the place of every drawing in the page below `root`; what each draws, by its address. A drawing
    that has no title keeps its place."""
    drawings: dict[str, bytes] = {}
    head = _HTML if root.tag.startswith(_HTML) else ""
    for parent in list(root.iter()):
        for index, child in enumerate(parent):
            if child.tag == f"{_SVG}svg" and not str(parent.tag).startswith(_SVG) and (alt := _title(child)):
                address = f"{SCHEME}:{len(drawings)}"
                kept = {name: value for name, value in child.attrib.items() if name in ("class", "id")}
                kept["class"] = f"{kept.get('class', '')} drawing".strip()
                image = Element(f"{head}img", {**kept, "src": address, "alt": alt})
                image.tail, child.tail = child.tail, None
                parent[index] = image
                drawings[address] = tostring(lighter(child), encoding="utf-8")
    return drawings


def _title(drawing: Element) -> str:
    title = drawing.find(f"{_SVG}title")
    return (title.text or "").strip() if title is not None else ""


def lighter(drawing: Element) -> Element:
    """The drawing without titles and names, and with as few elements as draw the same."""
    made = Element(drawing.tag, {name: value for name, value in drawing.attrib.items() if not _idle(name)})
    made.text, made.tail = drawing.text, drawing.tail
    for child in drawing:
        if child.tag == f"{_SVG}title":
            continue
        if child.tag == f"{_SVG}g" and len(child) and not _OWN & child.attrib.keys():
            _ungrouped(child, made)
        else:
            made.append(lighter(child))
    return made


def _ungrouped(group: Element, into: Element) -> None:
    """The parts of a group that only says their ink."""
    ink = {name: value for name, value in group.attrib.items() if not _idle(name)}
    if ink.get("fill") == "none" and all(_is_line(part) for part in group):
        SubElement(into, f"{_SVG}path", ink, d="".join(part.attrib["d"] for part in group))
        return
    for part in group:
        one = lighter(part)
        one.attrib.update({name: value for name, value in ink.items() if name not in one.attrib})
        into.append(one)


def _idle(name: str) -> bool:
    """Whether an attribute draws nothing: a name, and what reading as a browser does makes of xmlns="..."."""
    return name == "data-name" or name.startswith("{http://www.w3.org/2000/xmlns/}")


def _is_line(part: Element) -> bool:
    """Whether it is a path with nothing of its own, which begins at a place and not where another ended."""
    data = part.attrib.get("d", "")
    return (
        part.tag == f"{_SVG}path"
        and part.attrib.keys() <= {"d", "data-name"}
        and data.startswith("M")
        and not len(part)
    )
