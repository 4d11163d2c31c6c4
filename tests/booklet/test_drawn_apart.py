"""Drawings set in type as images of their own: the same marks on the paper, from fewer elements."""

from __future__ import annotations

import subprocess
from pathlib import Path
from xml.etree.ElementTree import XML

import numpy as np
import pikepdf
import pytest
from PIL import Image

import kit.booklet.render as render
from kit.booklet.drawn_apart import SCHEME, lighter, taken_out
from kit.booklet.fetch import LessonFolder

SVG = "http://www.w3.org/2000/svg"
DRAWING = f"""<svg xmlns="{SVG}" width="300" height="200" viewBox="0 0 300 200" role="img" id="one">
<title>A kite &amp; its tail</title><defs><clipPath id="w"><path d="M0 0H150V200H0Z"/></clipPath>
<pattern id="p" width="8" height="8" patternUnits="userSpaceOnUse"><circle cx="4" cy="4" r="2"/></pattern></defs>
<g fill="none" stroke="#123456" stroke-width="3" stroke-dasharray="12 6"><path data-name="a" d="M10 10L290 30"/>
<path data-name="b" d="M10 60C60 20 200 150 290 60"/></g><g fill="#c00000" stroke="#000000">
<path d="M20 90h60v60h-60Z"/>
<circle data-name="dot" cx="120" cy="120" r="9"/></g><path d="M160 90h60v60h-60Z" fill="url(#p)"/>
<g clip-path="url(#w)"><path d="M100 170H290" stroke="#000000" stroke-width="9"/></g>
<g transform="translate(240 180)"><rect x="-30" y="-9" width="60" height="18" fill="#eeeeee"/>
<text y="5" font-family="Kit" font-size="14" text-anchor="middle">tail</text></g></svg>"""
ALT = "A kite & its tail"
PAGE = f"""<!DOCTYPE html><html lang="en"><head><title>Kite</title><style>
@page {{ size: 120mm 90mm; margin: 5mm }} svg, img.drawing {{ display: block; max-width: 100%; height: auto }}
</style></head><body><h1>Kite</h1><figure>{DRAWING}<figcaption>A kite</figcaption></figure></body></html>"""


def tags(drawing: str) -> list[str]:
    return [str(each.tag).rpartition("}")[2] for each in lighter(XML(drawing)).iter()]


def test_lines_of_one_ink_are_one_line_and_other_groups_hand_on_their_ink() -> None:
    made = lighter(XML(DRAWING))
    assert (DRAWING.count("<path"), tags(DRAWING).count("path")) == (6, 5) and "title" not in tags(DRAWING)
    dashed = next(each for each in made if each.get("stroke-dasharray"))
    assert dashed.get("d") == "M10 10L290 30M10 60C60 20 200 150 290 60" and not len(dashed)
    dot = next(each for each in made if each.tag.endswith("circle"))
    assert (dot.get("fill"), dot.get("stroke"), dot.get("data-name")) == ("#c00000", "#000000", None)
    assert [each.attrib.keys() for each in made if each.tag.endswith("}g")] == [{"clip-path"}, {"transform"}]


@pytest.mark.parametrize(
    "group",
    [
        '<g fill="none" opacity=".5" stroke="#000000"><path d="M0 0L9 9"/><path d="M0 9L9 0"/></g>',
        '<g fill="#ff0000"><path d="M0 0h9v9h-9Z"/><path d="M3 3v3h3v-3Z"/></g>',
        '<g fill="none" stroke="#000000"><path d="M0 0L9 9"/><path d="m0 9l9 0" stroke="#ff0000"/></g>',
        '<g fill="none" stroke="#000000"><path d="M0 0L9 9"/><path d="l9 0"/></g>',
    ],
    ids=["seen through", "filled", "an ink of its own", "begun where another ends"],
)
def test_lines_that_would_look_otherwise_together_stay_apart(group: str) -> None:
    assert tags(f'<svg xmlns="{SVG}">{group}</svg>').count("path") == 2


def test_a_drawing_becomes_an_image_with_its_title_for_a_text() -> None:
    root = XML(PAGE.removeprefix("<!DOCTYPE html>"))
    found = taken_out(root)
    (image,) = root.iter("img")
    assert image.attrib == {"class": "drawing", "id": "one", "src": f"{SCHEME}:0", "alt": "A kite & its tail"}
    assert list(found) == [f"{SCHEME}:0"] and not list(root.iter(f"{{{SVG}}}svg"))
    untitled = XML(f'<html><body><svg xmlns="{SVG}"><path d="M0 0"/></svg></body></html>')
    assert taken_out(untitled) == {} and next(untitled.iter(f"{{{SVG}}}svg")) is not None


def test_the_paper_shows_the_same(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """Beside the page with the drawing in it, as WeasyPrint sets it by itself."""
    shown, told = {}, {}
    for way in ("apart", "within"):
        if way == "within":
            monkeypatch.setattr(render, "taken_out", lambda root: {})
        pdf = tmp_path / f"{way}.pdf"
        pdf.write_bytes(render.to_pdf(PAGE, LessonFolder(tmp_path)))
        subprocess.run(["pdftoppm", "-r", "100", "-png", "-singlefile", pdf, tmp_path / way], check=True)
        shown[way] = np.asarray(Image.open(tmp_path / f"{way}.png").convert("L")).astype(int)
        with pikepdf.open(pdf) as made:
            told[way] = [
                str(each.get("/Alt", ""))
                for each in made.objects
                if isinstance(each, pikepdf.Dictionary) and each.get("/S") == "/Figure"
            ]
    assert told["apart"] == [ALT]
    assert told["within"] in ([ALT], [])  # WeasyPrint 68.0 makes no figure of a drawing in a page, 70.0 does
    apart, within = shown["apart"], shown["within"]
    assert apart.shape == within.shape and (apart < 128).sum() > 2000
    assert (abs(apart - within) > 96).sum() < 30  # a raster may round a line one pixel aside
