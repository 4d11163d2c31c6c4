"""The measuring figure: every tape can be found, by its number, from one side or the other."""

from __future__ import annotations

import re

import pytest

from kit.body import MEASUREMENTS, workshop_chart
from kit.errors import KitError
from kit.picture.drawing import Label, Stroke
from kit.picture.figure import measuring_figure, views
from kit.picture.svg_pen import bounds_of, svg


def labels(view: str, names: list[str] | None = None) -> list[str]:
    drawing = measuring_figure(names, view)  # type: ignore[arg-type]
    return [item.text for item in drawing.items if isinstance(item, Label)]


def test_every_measurement_is_shown_from_somewhere() -> None:
    front, back = measuring_figure(view="front"), measuring_figure(view="back")
    for number, name in enumerate(MEASUREMENTS, 1):
        for view, drawing in (("front", front), ("back", back)):
            shown = view in views(name)
            assert any(isinstance(item, Stroke) and item.name == name for item in drawing.items) == shown, name
            assert (str(number) in labels(view)) == shown
        assert views(name)


def test_front_and_back_share_their_numbers() -> None:
    names = ["hip_girth", "back_width", "front_width", "hip_girth"]
    assert sorted(labels("front", names)) == ["1", "3"]
    assert sorted(labels("back", names)) == ["1", "2"]


def test_numbers_are_clear_of_each_other() -> None:
    for view in ("front", "back"):
        at = [item.at for item in measuring_figure(view=view).items if isinstance(item, Label)]  # type: ignore[arg-type]
        for i, one in enumerate(at):
            for other in at[i + 1 :]:
                assert abs(one.x - other.x) > 50 or abs(one.y - other.y) > 55


def test_alternative_text_names_each_tape_with_its_number() -> None:
    drawing = measuring_figure(["bust_girth", "back_waist_length"], "back")
    assert drawing.alt == (
        "A standing figure seen from the back, with a numbered tape for each measurement: 1 bust girth, "
        "2 back waist length."
    )
    assert "2 back waist length" in svg(drawing)
    assert "none" in measuring_figure([], "front").alt


def test_levels_are_those_of_a_middle_size() -> None:
    """Tapes stand where the invented size W4 has them, within 2 cm: waist and hip above the floor, nape to waist."""
    body = workshop_chart()["W4"]

    def span(name: str, view: str) -> tuple[float, float]:
        items = measuring_figure([name], view).items  # type: ignore[arg-type]
        stroke = next(i for i in items if isinstance(i, Stroke) and i.name == name and i.role == "new")
        ends = [stroke.curves[0].start.y, stroke.curves[-1].end.y]
        return max(ends), min(ends)

    top, floor = span("waist_height", "front")
    assert top - floor == pytest.approx(body["waist_height"], abs=20) and floor == 0
    assert span("hip_girth", "front")[0] == pytest.approx(body["waist_height"] - body["waist_to_hip"], abs=20)
    nape, waist = span("back_waist_length", "back")
    assert nape - waist == pytest.approx(body["back_waist_length"], abs=20)
    assert sum(span("height", "back")) == pytest.approx(body["height"], abs=20)


def test_it_fits_its_frame_and_refuses_an_unknown_name() -> None:
    for view in ("front", "back"):
        xmin, ymin, xmax, ymax = bounds_of(measuring_figure(view=view))  # type: ignore[arg-type]
        assert (xmin, ymin, xmax, ymax) == (-480, -30, 480, 1700)
    assert re.search("Did you mean 'bust_girth'", str(_refused("bust_grith")))


def _refused(name: str) -> KitError:
    with pytest.raises(KitError) as caught:
        measuring_figure([name])
    return caught.value


def test_legs_are_shown_where_they_are_measured() -> None:
    assert bounds_of(measuring_figure(["bust_girth"], "front"))[1] > 600
    assert bounds_of(measuring_figure(["bust_girth", "knee_girth"], "back"))[1] < 0
