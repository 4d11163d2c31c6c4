"""Traced tops: an outline by points, closed and sound or refused at once."""

from __future__ import annotations

import pickle
from typing import Any

import pytest

from kit.blocks import Traced
from kit.body import workshop_chart
from kit.errors import KitError
from kit.geometry import Point
from kit.language import speaking
from kit.lesson.lesson import Lesson
from kit.lesson.own_words import own_texts, translate
from kit.proof import prove
from kit.units import cm, inch

BODY = workshop_chart()["W4"]
FRONT: dict[str, list[Any]] = {
    "neck": [(0, 33), (4, 34.2), (7, 42)],
    "shoulder": [(7, 42), (18, 37.5)],
    "armhole": [(18, 37.5), (16.8, 28), (19, 22.5), (24.5, 20)],
    "side": [(24.5, 20), (22.5, 0), (26, -18)],
    "hip": [(26, -18), (0, -18)],
    "centre": [(0, -18), (0, 33)],
}


def blouse(**changes: Any) -> Traced:
    return Traced("My blouse", pieces={"front": FRONT | changes}, size="40")


def test_a_traced_front_is_a_piece_like_the_blocks() -> None:
    top = blouse()
    (front,) = top(BODY)
    assert [edge.name for edge in front.edges] == list(FRONT)
    assert dict(front.points)["shoulder_tip"].x == pytest.approx(180)
    assert set(dict(front.points)) == {
        "centre_neck",
        "neck_point",
        "shoulder_tip",
        "underarm_point",
        "side_hip",
        "centre_hip",
        "centre_waist",
        "side_waist",
    }
    assert set(dict(front.guides)) == {"waist", "bust_line"}
    assert front.outline.self_crossing() is None
    assert front.edge("shoulder").path.is_straight
    assert not front.edge("armhole").path.is_straight
    for x, y in FRONT["armhole"]:
        assert front.edge("armhole").path.distance_to(Point(x * 10, y * 10)) < 0.01
    assert front.fold == "centre"


def test_it_fits_one_size_and_says_so() -> None:
    top = blouse()
    assert top(BODY) == top(workshop_chart()["W9"])
    assert "fits size 40 alone" in top.note
    assert top.measures == ()


@pytest.mark.parametrize(
    ("code", "words"), [("de", "für Größe 40"), ("es", "para la talla 40"), ("fr", "à la taille 40")]
)
def test_what_it_fits_is_said_in_the_language_that_is_read(code: str, words: str) -> None:
    """The note is handed over as it is and said when the finding is shown; no author has to translate it."""
    (note,) = pickle.loads(pickle.dumps(blouse().notes))
    pattern = Lesson("From a blouse", start=blouse()).work(BODY, {})
    assert pattern.lesson.start_notes == (note,)
    assert not [text for text, where in own_texts(pattern) if "start" in where]
    with speaking(code):
        made, _ = translate(pattern, None, code)
        (told,) = [finding.what for finding in prove(made) if finding.code == "start"]
        assert words in told and "traced" not in told


def test_units_and_lengths() -> None:
    in_mm = {edge: [(x * 10, y * 10) for x, y in spots] for edge, spots in FRONT.items()}
    as_lengths = {edge: [(x * cm, y * cm) for x, y in spots] for edge, spots in FRONT.items()}
    (front,) = blouse()(BODY)
    assert Traced("a", {"front": in_mm}, unit="mm")(BODY)[0].edges == front.edges
    assert Traced("a", {"front": as_lengths}, unit="inch")(BODY)[0].edges == front.edges
    square = {"a": [(0, 0), (1, 0)], "b": [(1, 0), (1, 1)], "c": [(1, 1), (0, 0)]}
    (piece,) = Traced("a", {"front": square}, unit="inch")(BODY)
    assert piece.edge("a").path.length == pytest.approx(float(inch))


def test_more_named_points() -> None:
    top = Traced("a", {"front": FRONT}, points={"front": {"side_waist": (22.5, 0)}})
    assert dict(top(BODY)[0].points)["side_waist"].x == pytest.approx(225)


@pytest.mark.parametrize(
    ("changes", "words"),
    [
        ({"shoulder": [(7, 42.5), (18, 37.5)]}, ["front", "'neck' ends", "'shoulder' starts", "5.0 mm", "x 7 cm"]),
        ({"hip": [(26, -18), (0, -17)]}, ["'hip' ends", "gap of 10.0 mm"]),
        ({"hip": [(26, -18), (10, 25), (20, 25), (0, -18)]}, ["crosses"]),
        ({"shoulder": [(7, 42)]}, ["shoulder", "1 point is not an edge"]),
        ({"shoulder": [(7, 42), (7, 42), (18, 37.5)]}, ["stands twice in a row"]),
        ({"shoulder": [(7, 42), (18, "x")]}, ["not a point"]),
        ({"shoulder": [(7, 42), 18]}, ["not a point"]),
        ({"shoulder": [(7, 42), (18, float("nan"))]}, ["finite"]),
        ({"shoulder": [(7, 42), (1800, 37.5)]}, ["1800 cm", "unit="]),
    ],
)
def test_a_faulty_outline_is_refused(changes: dict[str, Any], words: list[str]) -> None:
    with pytest.raises(KitError) as caught:
        blouse(**changes)
    for word in ["My blouse", *words]:
        assert word in str(caught.value)


def test_names_are_checked() -> None:
    pairs = list(FRONT.items())
    with pytest.raises(KitError, match="two edges are called 'neck'"):
        Traced("a", {"front": [*pairs[:-1], ("neck", FRONT["centre"])]})
    with pytest.raises(KitError, match="'side seam' cannot be"):
        Traced("a", {"front": [*pairs[:-1], ("side seam", FRONT["centre"])]})
    with pytest.raises(KitError, match="Did you mean 'front'"):
        Traced("a", {"front": FRONT}, points={"frunt": {"x": (0, 0)}})
    with pytest.raises(KitError, match="'underarm_point' stands twice"):
        Traced("a", {"front": FRONT}, points={"front": {"underarm_point": (0, 0)}})
    with pytest.raises(KitError, match="unit 'feet'"):
        Traced("a", {"front": FRONT}, unit="feet")
    with pytest.raises(KitError, match="needs a piece"):
        Traced("a", {})
