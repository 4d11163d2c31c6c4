"""The structure of a printed booklet, put right where the typesetter leaves it short of PDF/UA-1 (ISO 14289-1).

WeasyPrint tags what it sets. Four things in its tree are mended here, in place: a header cell says whether it heads
a column or a row (ISO 32000-1, table 349, Scope); a picture's box is in points from the foot of its page (table 344,
BBox); a list holds list items only (table 336), where HTML groups the terms of a `dl`; and a
heading or paragraph set in several boxes does not hold another of its kind.
"""

from __future__ import annotations

import io
from collections.abc import Iterator

import pikepdf
from pikepdf import Array, Dictionary, Name

_POINTS = 0.75  # PDF points in a CSS px
_GROUPS = ("/Div", "/NonStruct", "/Span")
_ONCE = ("/H1", "/H2", "/H3", "/H4", "/H5", "/H6", "/P", "/Link", "/Caption")


def finish(pdf: bytes) -> bytes:
    """The tagged `pdf` with its structure tree mended and its pages' tab order that of the structure."""
    with pikepdf.open(io.BytesIO(pdf)) as document:
        root = document.Root.StructTreeRoot
        for element in structure_kids(root):
            _mend(element, head=False)
        for page in document.pages:
            if "/Annots" in page:
                page.Tabs = Name.S
        out = io.BytesIO()
        document.save(
            out, compress_streams=True, object_stream_mode=pikepdf.ObjectStreamMode.generate, deterministic_id=True
        )
    return out.getvalue()


def structure_kids(element: pikepdf.Object) -> Iterator[Dictionary]:
    """The structure elements directly in `element`, in reading order; content and annotations are passed over."""
    kids = element.get("/K")
    for kid in kids if isinstance(kids, Array) else [kids]:
        if isinstance(kid, Dictionary) and "/S" in kid:
            yield kid


def _mend(element: Dictionary, head: bool) -> None:
    role = str(element.S)
    head = head or role == "/THead"
    for kid in structure_kids(element):
        _mend(kid, head)
    # What PDF/UA-1 asks and the typesetter leaves out: header cells say what they head, figures say where they are, a
    # list holds list items only, and an element that may stand once inside its like becomes a plain span. A row of one
    # kid is written as that kid, as readers expect.
    if role == "/TH":
        if "/A" not in element:
            element.A = Dictionary(O=Name.Table)
        element.A.Scope = Name.Column if head else Name.Row
    elif role == "/Figure":
        _box(element)
    elif role == "/L":
        _items_only(element)
    elif role in _ONCE:
        for kid in structure_kids(element):
            if str(kid.S) == role and (role != "/Link" or not _has_annotation(kid)):
                kid.S = Name.Span
    kids = element.get("/K")
    if isinstance(kids, Array) and len(kids) == 1:
        element.K = kids[0]


def _box(figure: Dictionary) -> None:
    """A picture's box as the standard wants it; the typesetter gives CSS px from the top of the page."""
    box = figure.A.get("/BBox")
    if box is None or "/Pg" not in figure:
        return
    left, top, right, foot = (float(value) * _POINTS for value in box)
    height = float(figure.Pg.MediaBox[3])
    figure.A.BBox = Array([round(value, 3) for value in (left, height - foot, right, height - top)])
    figure.A.Placement = Name.Block


def _items_only(list_: Dictionary) -> None:
    """Take the groups out of a list, so that its items are its own kids."""
    if all(str(kid.S) not in _GROUPS for kid in structure_kids(list_)):
        return
    flat: list[Dictionary] = []
    for kid in structure_kids(list_):
        if str(kid.S) in _GROUPS:
            for inner in structure_kids(kid):
                inner.P = list_
                flat.append(inner)
        else:
            flat.append(kid)
    list_.K = Array(flat)


def _has_annotation(link: Dictionary) -> bool:
    kids = link.get("/K")
    return any(
        isinstance(kid, Dictionary) and str(kid.get("/Type")) == "/OBJR"
        for kid in (kids if isinstance(kids, Array) else [kids])
    )
