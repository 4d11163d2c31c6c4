"""The form that names a traced outline's edges."""

from __future__ import annotations

from pathlib import Path
from typing import Any

import pytest

from kit import mm, read_traced
from kit.body import workshop_chart
from kit.errors import KitError
from kit.live.name_edges import NameEdges, name_edges

BOX = '<path id="{name}" d="M {x} 0 H {right} V 300 H {x} Z"/>'


@pytest.fixture
def drawn(tmp_path: Path) -> Any:
    body = BOX.format(name="front", x=0, right=200) + BOX.format(name="back", x=300, right=520)
    file = tmp_path / "top.svg"
    file.write_text(
        f'<svg xmlns="http://www.w3.org/2000/svg" width="600mm" height="400mm" viewBox="0 0 600 400">{body}</svg>'
    )
    return read_traced(file)


def named(form: NameEdges) -> NameEdges:
    for sheet in form.sheets:
        for field, name in zip(sheet.edges, ("centre", "neck", "side", "hip"), strict=True):
            field.value = name
        sheet.waist.value = "10 cm"
    return form


def test_every_edge_named_gives_the_code_to_keep(drawn: Any) -> None:
    form = name_edges(drawn, "Box")
    assert "no edge has a name yet" in form.message.value
    assert form.code.value == ""
    named(form)
    assert "Every edge is named" in form.message.value
    scope: dict[str, Any] = {"drawn": drawn, "mm": mm}
    exec(form.code.value, scope)
    body = workshop_chart()["W4"]
    assert scope["top"](body) == form.top()(body)
    front, back = scope["top"](body)
    assert [edge.name for edge in front.edges] == ["centre", "neck", "side", "hip"]
    assert front.edge("hip").path.start.y == pytest.approx(-100)
    assert back.edge("neck").path.length == pytest.approx(220)


def test_an_edge_without_a_name_goes_on_with_the_one_before(drawn: Any) -> None:
    form = named(name_edges(drawn))
    form.sheets[0].edges[2].value = ""
    front = form.top()(workshop_chart()["W4"])[0]
    assert [edge.name for edge in front.edges] == ["centre", "neck", "hip"]
    assert front.edge("neck").path.length == pytest.approx(500)


def test_an_outline_without_a_piece_is_left_out(drawn: Any) -> None:
    form = named(name_edges(drawn))
    form.sheets[1].piece.value = ""
    assert [piece.name for piece in form.top()(workshop_chart()["W4"])] == ["front"]


def test_what_is_wrong_is_said_in_the_form(drawn: Any) -> None:
    form = named(name_edges(drawn))
    form.sheets[0].edges[1].value = "side"
    assert "two edges are called &#x27;side&#x27;" in form.message.value
    assert form.code.value == ""
    named(form)
    form.sheets[0].waist.value = "about there"
    assert form.code.value == ""
    form.sheets[0].waist.value = ""
    assert "where the waistline is" in form.message.value
    form.sheets[0].waist.value = "9"
    assert "no corner 9" in form.message.value
    named(form)
    form.sheets[1].piece.value = "front"
    assert "two pieces are called" in form.message.value
    form.sheets[0].edges[0].value = "<b>centre"
    assert "<b>centre" not in form.message.value + form.sheets[0].picture.value
    with pytest.raises(KitError, match="not on str"):
        name_edges("top.svg")  # type: ignore[arg-type]


def test_the_picture_numbers_the_corners(drawn: Any) -> None:
    form = named(name_edges(drawn))
    for word in ("4 corners", ">1<", ">4<", "centre", "hip"):
        assert word in form.sheets[0].picture.value
