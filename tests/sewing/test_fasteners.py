"""Hooks, bars, eyes, snaps, eyelets: which half goes where, how far apart, and that each is drawn as what it is.

Which half lies over and which under, and that the distances agree, is common practice, no source."""

from __future__ import annotations

from dataclasses import replace

import jsonschema
import pytest

from kit.errors import KitError
from kit.geometry import Path, Point
from kit.paper.export import pattern_json, pattern_schema
from kit.picture.drawing import Stroke
from kit.picture.piece_sheet import piece_items
from kit.picture.sewing import scene_drawing
from kit.piece.piece import CutPlan, Mark
from kit.sewing.handle import PieceHandle
from kit.sewing.make import Make


def flap(garments, name, *marks):
    piece = garments.rectangle(name, 200, 60, {"lower": 10, "far": 10, "upper": 10, "near": 10}, cut=CutPlan())
    return replace(piece, marks=marks)


def point(name, x, kind="point"):
    return Mark(name, kind, point=Point(x, 30))


def hem_all(make, over, under):
    for each in (over, under):
        make.narrow_hem(each.lower, each.far, each.upper, each.near)


@pytest.mark.parametrize(
    ("second", "found"), [(100, []), (103, []), (104, ["fasteners_apart"]), (60, ["fasteners_apart"])]
)
@pytest.mark.parametrize("kind", ["snaps", "hooks", "eyes"])
def test_hooks_lie_as_far_apart_as_their_bars(garments, sewn, kind, second, found):
    """40 mm between the first and the second on one side: 3 mm more or less still closes flat."""
    pieces = (
        flap(garments, "over", point("one", 60), point("two", 100)),
        flap(garments, "under", point("one", 60), point("two", second)),
    )
    done = sewn(
        pieces,
        hem_all,
        lambda make, over, under: make.fasteners(over.one, over.two, under=[under.one, under.two], kind=kind),
    )
    assert done.codes == found


WRONG = [
    ("hooks", "bar", "hook"),
    ("hooks", "hook", "eye"),
    ("hooks", "hook", "hook"),
    ("eyes", "hook", "bar"),
    ("snaps", "socket", "snap"),
    ("snaps", "hook", "bar"),
    ("snaps", "snap", "buttonhole"),
]


@pytest.mark.parametrize(("kind", "on", "below"), WRONG)
def test_the_half_that_lies_over_is_not_sewn_below(garments, kind, on, below):
    pieces = (flap(garments, "over", point("one", 60, on)), flap(garments, "under", point("one", 60, below)))
    over, under = map(PieceHandle, pieces)
    with pytest.raises(KitError, match="Here comes another thing"):
        Make(pieces).fasteners(over.one, under=under.one, kind=kind)


@pytest.mark.parametrize(
    ("kind", "on", "below"), [("hooks", "hook", "bar"), ("eyes", "hook", "eye"), ("snaps", "snap", "socket")]
)
def test_pairs_that_belong_together_are_sewn_and_drawn(garments, sewn, kind, on, below):
    pieces = (flap(garments, "over", point("one", 60, on)), flap(garments, "under", point("one", 60, below)))
    done = sewn(pieces, hem_all, lambda make, over, under: make.fasteners(over.one, under=under.one, kind=kind))
    assert done.codes == []
    over, under = done.last.scenes(done.pattern)
    assert [(scene.layers[0].up, [thing.kind for thing in scene.things]) for scene in (over, under)] == [
        ("wrong", [on]),
        ("right", [below]),
    ]
    for scene, what in ((over, f"{on} on over"), (under, f"{below} on under")):
        assert [item for item in scene_drawing(scene, done.pattern).items if getattr(item, "name", "") == what]


def test_an_eyelet_is_no_snap(garments):
    pieces = (flap(garments, "over", point("one", 60, "snap"), point("two", 90, "eyelet")),)
    (over,) = map(PieceHandle, pieces)
    with pytest.raises(KitError, match="ball half of a snap"):
        Make(pieces).eyelets(over.one)
    make = Make(pieces)
    make.eyelets(over.two)
    assert len(make.operations) == 1


def lace(make, over, under):
    make.eyelets(over.one, over.two, opposite=[under.one, under.two])


@pytest.mark.parametrize(("second", "found"), [(100, []), (110, ["fasteners_apart"])])
def test_eyelets_for_lacing_face_each_other_in_finished_edges(garments, sewn, second, found):
    pieces = (
        flap(garments, "over", point("one", 60, "eyelet"), point("two", 100, "eyelet")),
        flap(garments, "under", point("one", 60, "eyelet"), point("two", second, "eyelet")),
    )
    done = sewn(pieces, hem_all, lace)
    assert done.codes == found
    assert done.last.notion_amounts(done.pattern) == {"eyelets": (4, "count")}
    assert done.last.wants(done.pattern) == () and len(done.last.scenes(done.pattern)) == 2
    assert "all layers" in done.said[1]
    assert sewn(pieces, lace, hem_all).codes[0] == "eyelet_early"
    odd = sewn(pieces, hem_all, lambda make, over, under: make.eyelets(over.one, over.two, opposite=under.one))
    assert odd.codes == ["fasteners_unequal"]


# ---- paper ----------------------------------------------------------------------------------------------------------


def test_each_is_printed_as_what_it_is(garments, wrap):
    """Closed lines of each sign, counted by hand: two rings of a hook, an eye and a bar, the rim, middle and four holes
    of either half of a snap, the rim and hole of an eyelet; and the one wire of hook, eye and bar."""
    counts = {"hook": (2, 1), "bar": (2, 1), "eye": (2, 1), "snap": (6, 0), "socket": (6, 0), "eyelet": (2, 0)}
    line = Path.line(Point(60, 30), Point(70, 30))
    for kind, (closed, open_) in counts.items():
        pointed = kind in ("hook", "bar", "eye")
        mark = Mark("m", kind, path=line) if pointed else point("m", 60, kind)
        items = [
            item
            for item in piece_items(flap(garments, "over", mark), wrap.pattern_of([]))
            if getattr(item, "name", "") == "over.m"
        ]
        assert all(isinstance(item, Stroke) and item.role == "symbol" for item in items)
        assert (sum(item.closed for item in items), sum(not item.closed for item in items)) == (closed, open_), kind
        xs = [p.x for item in items for curve in item.curves for p in curve.points(0.02)]
        if pointed:  # a sign is as long as what it stands for
            assert min(xs) == pytest.approx(60, abs=0.2) and max(xs) == pytest.approx(70, abs=0.2), kind


def test_a_hook_and_its_eye_are_told_apart(garments, wrap):
    """A hook's wire turns back beside its shank and ends there; an eye's comes home to its foot."""
    ends = {}
    for kind in ("hook", "eye"):
        mark = Mark("m", kind, path=Path.line(Point(60, 30), Point(70, 30)))
        items = piece_items(flap(garments, "over", mark), wrap.pattern_of([]))
        (wire,) = [item for item in items if getattr(item, "name", "") == "over.m" and not item.closed]
        ends[kind] = wire.curves[-1].end.x
    assert ends["hook"] > 65 and ends["eye"] < 63


def test_the_data_names_their_kind(garments, sewn):
    pieces = (flap(garments, "over", point("one", 60, "socket")),)
    data = pattern_json(sewn(pieces, lambda make, over: make.narrow_hem(over.lower)).pattern)
    jsonschema.Draft202012Validator(pattern_schema()).validate(data)
    assert [mark["kind"] for mark in data["pieces"][0]["marks"]] == ["socket"]
