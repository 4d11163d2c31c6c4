"""What sewing pictures of short lessons show: labels written from the garment in the hand, before they were drawn."""

from __future__ import annotations

import tomllib
from collections import Counter
from collections.abc import Iterator
from functools import cache
from pathlib import Path
from typing import Any

import pytest
from shapely.ops import unary_union

from kit.body import workshop_chart
from kit.lesson.lesson import Lesson
from kit.lesson.where import acting
from kit.picture.drawing import Dot, Fill, Stroke
from kit.sewing.in_work import shown_scenes
from tests.picture.sewn_rules import Picture, against, pictures, shape
from tests.wear.garments import HERE, lesson_of

OWN = Path(__file__).parent / "lessons"
LABELS: list[dict[str, Any]] = tomllib.loads((Path(__file__).parent / "data" / "garments_seen.toml").read_text())[
    "label"
]


def lesson(name: str) -> Lesson:
    file = OWN / f"{name}.py"
    if not file.exists():
        assert (HERE / "lessons" / f"{name}.py").exists(), name
        return lesson_of(name)
    names: dict[str, Any] = {"__name__": "__lesson__"}
    with acting(opening=(file,)):
        exec(compile(file.read_text(encoding="utf-8"), str(file), "exec"), names)
    made = names["lesson"]
    assert isinstance(made, Lesson)
    return made


@cache
def shown(name: str) -> list[Picture]:
    return list(pictures(lesson(name).work(workshop_chart()["W4"]), name))


def things(picture: Picture) -> Counter[str]:
    """How many of each thing are seen in the part that shows cloth: all strokes and fills of one thing touch."""
    found: dict[str, list[Any]] = {}
    for item in picture.drawing.items:
        if isinstance(item, Dot) or not isinstance(item, Fill | Stroke) or " on " not in item.name:
            continue
        seen = shape(item).buffer(0.5) if isinstance(item, Fill) else picture.seen(item).buffer(0.5)
        seen = seen.intersection(picture.bounds)
        if not seen.is_empty and seen.area > 1.0:
            found.setdefault(item.name, []).append(seen)
    counts: Counter[str] = Counter()
    for name, parts in found.items():
        merged = unary_union(parts)
        counts[name] = len(getattr(merged, "geoms", [merged]))
    return counts


def beyond(picture: Picture, label: dict[str, Any]) -> Iterator[str]:
    """What of the words that only these labels have the picture does not show."""
    yield from against(picture, label)
    panels = len(shown_scenes(picture.pattern, picture.operation))  # those of a strip by itself too
    if "panels" in label and panels != label["panels"]:
        yield f"{panels} pictures"
    counts = things(picture)
    for name, count in label.get("things", {}).items():
        least = name.startswith("clips")  # so many at least
        if counts[name] != count and not (least and counts[name] > count):
            yield f"{counts[name]} times {name}"
    for name, share in label.get("out", {}).items():
        own = [shape(fill) for fill in picture.fills() if fill.name == name]
        cloth = unary_union([shape(fill) for fill in picture.fills() if fill.name != name and fill.role != "frame"])
        if not own or unary_union(own).difference(cloth).area < share * unary_union(own).area:
            yield f"{name} lies on the cloth"


@pytest.mark.parametrize("label", LABELS, ids=[f"{label['at']} {label['picture']}" for label in LABELS])
def test_a_picture_shows_what_its_label_says(label: dict[str, Any]) -> None:
    mine = [each for each in shown(label["at"].split()[0]) if each.key == label["at"]]
    assert mine, "there is no such picture"
    assert list(beyond(mine[label["picture"]], label)) == [], label["why"]


def test_a_waistband_over_a_centre_seam_has_its_button_where_it_is_drafted() -> None:
    """The trousers' button is marked 1.2 cm inside the end of the band, which laps 3 cm: it lies wholly on the band."""
    (picture,) = [each for each in shown("trousers") if each.key == "trousers finish buttons 1"]
    (band,) = [shape(fill) for fill in picture.fills() if fill.name == "waistband"]
    (button,) = [shape(fill) for fill in picture.fills() if fill.name == "button on waistband"]
    assert button.difference(band).area < 1.0
    assert button.centroid.distance(band.exterior) == pytest.approx(12.0, abs=1.0)
