"""Drawings written into a PDF with less to do: the same marks. Reference: WeasyPrint's own functions (`slow`)."""

from __future__ import annotations

import math
import re
from types import SimpleNamespace
from typing import Any

import pytest
import weasyprint
from hypothesis import given
from hypothesis import strategies as st
from weasyprint import HTML, svg

from kit.booklet.quick_drawing import _Quick, path_operators, quick_drawing

quick_drawing()
SLOW = {name: quick.slow for name, quick in svg.TAGS.items() if isinstance(quick, _Quick)}
numbers = st.decimals(-900, 900, places=2).map(lambda each: f"{each.normalize():f}")


@st.composite
def plain_paths(draw: Any) -> str:
    """Path data in capital words, written close or wide."""
    between, out = draw(st.sampled_from([" ", ",", " , "])), []
    for word in ["M", *draw(st.lists(st.sampled_from("MLHVCZ"), max_size=8))]:
        count = {"M": 2, "L": 2, "C": 6, "H": 1, "V": 1, "Z": 0}[word] * draw(st.integers(1, 2))
        out.append(word + between.join(draw(numbers) for _ in range(count)))
    return draw(st.sampled_from(["", " "])).join(out)


class Recorded:
    """What is drawn, as (operator, numbers)."""

    def __init__(self) -> None:
        self.told: list[tuple[str, tuple[float, ...]]] = []

    def __getattr__(self, name: str) -> Any:
        return lambda *values: self.told.append((name, tuple(map(float, values))))


def slowly(data: str) -> list[tuple[str, tuple[float, ...]]]:
    stream = Recorded()
    drawing = SimpleNamespace(stream=stream, inner_width=1.0, inner_height=1.0, inner_diagonal=1.0)
    drawing.point = lambda x, y, size: (float(x), float(y))
    node = SimpleNamespace(get=lambda name, default=None: data if name == "d" else default, vertices=[])
    SLOW["path"](drawing, node, 12.0)
    # It begins every path at the origin, and says a place at which something begins once more where it ends.
    return [each for at, each in enumerate(stream.told) if at or each != ("move_to", (0.0, 0.0))]


def quickly(data: str) -> list[tuple[str, tuple[float, ...]]]:
    names = {"m": "move_to", "l": "line_to", "c": "curve_to", "h": "close"}
    out, values = [], []
    found = path_operators(data)
    assert found is not None
    for token in found.decode().split():
        if token in names:
            out.append((names[token], tuple(values)))
            values = []
        else:
            values.append(float(token))
    return out


@given(plain_paths())
def test_plain_paths_draw_what_they_say(data: str) -> None:
    if re.search(r"M[^LHVC]*Z|Z\s*Z", data):  # closes nothing
        assert path_operators(data) is None
        return
    slow, quick = slowly(data), quickly(data)
    assert [name for name, _ in quick] == [name for name, _ in slow]
    for (_, one), (_, two) in zip(quick, slow, strict=True):
        assert one == pytest.approx(two, abs=1e-9)


@pytest.mark.parametrize(
    "data",
    ["m0 0l9 9", "M0 0A9 9 0 0 1 5 5", "M0 0L9", "L1 1", "M0 0L5% 5", "M1e3 0L0 0", "M0 0Z5", "M", "M0 0Q1 1 2 2"],
)
def test_what_is_told_otherwise_is_left_to_weasyprint(data: str) -> None:
    assert path_operators(data) is None


def content(body: str, quick: bool) -> str:
    """The drawing operators of a page that holds one drawing."""
    for name, slow in SLOW.items():
        svg.TAGS[name] = slow
    if quick:
        quick_drawing()
    try:
        image = f'<svg xmlns="http://www.w3.org/2000/svg" width="200" height="100">{body}</svg>'
        page = HTML(string=f"<html><body>{image}</body></html>").render()
        (pdf,) = [page.write_pdf(uncompressed_pdf=True)]
        return str(pdf.decode("latin-1"))
    finally:
        quick_drawing()


def test_a_text_is_laid_out_at_once_and_stands_where_it_stood() -> None:
    """Its letters come in one run instead of one by one; a text whose letters have places of their own keeps them."""
    one = '<text x="{x}" y="50" font-family="DejaVu Sans" font-size="20" text-anchor="{anchor}">{text}</text>'
    for anchor in ("start", "middle", "end"):
        word = one.format(x="100", anchor=anchor, text="noon")
        slow, quick = content(word, quick=False), content(word, quick=True)
        assert (slow.count(" Tm"), quick.count(" Tm")) == (4, 1), anchor
        assert shift(quick) == pytest.approx(shift(slow), abs=0.1), anchor
    apart = one.format(x="10 60", anchor="start", text="ab")
    assert content(apart, quick=True).count(" Tm") == content(apart, quick=False).count(" Tm") == 2


def shift(pdf: str) -> float:
    """How far a text is moved to the left for its anchor: the last upright slide of the page before its text is drawn,
    or nothing."""
    slides = [line.split() for line in pdf.splitlines() if line.startswith("1 0 0 1 -") and line.endswith(" cm")]
    return math.fabs(float(slides[-1][4])) if slides else 0.0


def test_a_version_that_was_not_tried_draws_by_itself(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(weasyprint, "__version__", "71.0")
    for name, slow in SLOW.items():
        monkeypatch.setitem(svg.TAGS, name, slow)
    quick_drawing()
    assert {name: svg.TAGS[name] for name in SLOW} == SLOW


def test_nothing_is_lost_where_weasyprint_has_no_such_table(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.delattr(svg, "TAGS")
    quick_drawing()


def test_a_long_path_with_an_arc_in_it_is_known_as_such_at_one_reading() -> None:
    """A round corner after many long numbers: numbers that may be parted anywhere are not tried in every way, which
    would take longer than anybody waits."""
    long = "M1253.42 793.11" + "C1304.55 793.11 1326.48 736.07 1344.42 685.11" * 40
    assert path_operators(f"{long}A50 50 0 0 1 1365.42 1180.11Z") is None
    assert path_operators(f"{long}Z") is not None
