"""Curved hems just inside and just outside what can be eased, and how deep one lies flat. A strip folded at an arc of
radius r and depth d is 2 d / (r - d) longer than the line it lies on, or 2 d / (r + d) shorter (two circles)."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import Any

import pytest

from kit.geometry import Arc, Path, Point
from kit.language import languages, say, speaking
from kit.piece.piece import Edge, Piece
from kit.proof.curved_folds import curved_edges, fit_findings
from kit.proof.finding import Finding
from kit.sewing.ends import turnings
from tests.proof.test_folds import circle, findings, sewn


def values(finding: Finding) -> dict[str, Any]:
    """What fills the first of the two sentences of a finding."""
    first = dict(finding.says.values)["first"].value  # type: ignore[union-attr]
    return {name: value.value for name, value in first.values}


@pytest.mark.parametrize(("share", "told"), [(0.048, False), (0.052, True), (0.09, True)])
@pytest.mark.parametrize("hollow", [False, True])
def test_a_round_hem_is_eased_by_a_twentieth(share: float, told: bool, hollow: bool) -> None:
    radius = 500.0
    depth = radius * share / (2 - share if hollow else 2 + share)
    found = findings(sewn(circle(radius, depth, hollow), depth))
    assert [f.code for f in found] == ["hem_not_flat"] * told
    for finding in found:
        said = values(finding)
        arc = math.pi / 3
        assert (finding.level, finding.piece, finding.edge, finding.step) == ("warning", "skirt", "hem", "hem")
        assert finding.amount == pytest.approx(2 * depth * arc, rel=1e-3) == said["surplus"]
        assert said["share"] == pytest.approx(share, rel=1e-3) and said["eases"] == 0.05
        assert said["depth"] == pytest.approx(depth) and said["window"] == 50.0
        assert said["sharp"] == pytest.approx(2 * depth * 50 / radius, rel=0.06)
        assert ("shorter" in finding.what, "pull" in finding.what) == (hollow, hollow)


@pytest.mark.parametrize("radius", [317.3, 400.0, 500.0, 733.1])
def test_along_a_round_the_first_place_is_told(radius: float) -> None:
    """Everywhere alike but for the last bit of a number, in which two machines may differ: the browser's Python once
    told another place than this one. The turn is read every 2.5 mm or less, over a window of 50 mm."""
    piece = circle(radius, 30.0, True)
    order = turnings(sewn(piece, 30.0))
    (fit,) = curved_edges(piece, order)
    assert fit.at == pytest.approx(25.0, abs=1.3)


@pytest.mark.parametrize("hollow", [False, True])
def test_the_depth_that_lies_flat_is_told_in_whole_millimetres(hollow: bool) -> None:
    """d = r s / (2 + s) outside and r s / (2 - s) inside, with s = 1/20: 12.2 and 12.8 mm at 500 mm, rounded down."""
    found = findings(sewn(circle(500.0, 40.0, hollow), 40.0))
    depth = dict(found[0].can.values)["depth"].value  # type: ignore[union-attr]
    assert depth == 12.0


@pytest.mark.parametrize(("radius", "key"), [(112.0, "proof.fold_face_do"), (122.0, "proof.fold_shallower_do")])
def test_where_hardly_anything_lies_flat_it_is_faced(radius: float, key: str) -> None:
    """Less than 3 mm is no hem: r / 39 is 2.9 mm at a radius of 112 mm, 3.1 mm at 122."""
    (found,) = findings(sewn(circle(radius, 20.0, hollow=True), 20.0))
    assert found.can.key == key  # type: ignore[union-attr]


def mixed(bend: float) -> Piece:
    """A quarter piece whose hem is straight for 400 mm and then goes round a corner of radius `bend`."""
    hem = Path(
        (
            Arc(Point(400, bend), bend, 0.0, -math.pi / 2),
            *Path.line(Point(400, 0), Point(0, 0)).curves,
        )
    )
    corners = [Point(0, 0), Point(0, 600), Point(400 + bend, 600), Point(400 + bend, bend)]
    edges = (
        Edge("centre", Path.line(corners[0], corners[1]), 15.0),
        Edge("waist", Path.line(corners[1], corners[2]), 10.0),
        Edge("side", Path.line(corners[2], corners[3]), 15.0),
        Edge("hem", hem, 20.0),
    )
    return Piece("skirt", "Skirt", edges)


@pytest.mark.parametrize("depth", [6.0, 8.0, 10.0, 14.0])
def test_what_can_be_eased_along_the_whole_hem_is_a_note(depth: float) -> None:
    """The round corner turns by a right angle: 2 d pi / 2 over the whole hem of 400 + 100 pi / 2 = 557 mm; a twentieth
    of the line it lies on is reached at d = 8.7 mm by the hem's own length, at any d in the corner's 50 mm."""
    piece = mixed(100.0)
    piece = piece.with_edges(hem=replace(piece.edge("hem"), allowance=depth))
    pattern = sewn(piece, depth)
    (fit,) = (f for f in curved_edges(pattern.piece("skirt"), turnings(pattern)) if f.edge.name == "hem")
    length = 400 + 50 * math.pi
    whole = math.pi / 2
    assert fit.surplus == pytest.approx(2 * depth * whole, rel=1e-3)
    share = 2 * depth * whole / (length - depth * whole)
    assert fit.share == pytest.approx(share, rel=1e-3)
    assert fit.sharp_surplus == pytest.approx(2 * depth * 50 / 100, rel=0.06)
    assert fit.at < 50 * math.pi and not fit.lies_flat
    (found,) = [f for f in findings(pattern) if f.code == "hem_not_flat"]
    assert found.level == ("note" if share <= 0.05 else "warning")
    assert found.amount == pytest.approx(2 * depth * whole, rel=1e-3)


def test_a_straight_hem_is_not_asked() -> None:
    from tests.proof.test_folds import skirt

    pattern = sewn(skirt(20.0, 40.0), 40.0)
    assert list(curved_edges(pattern.piece("skirt"), turnings(pattern))) == []


@pytest.mark.parametrize("hollow", [False, True])
@pytest.mark.parametrize("whole", [0.0, -1.0])
def test_a_hem_that_waves_tells_of_the_place_alone(hollow: bool, whole: float) -> None:
    """Long in one place and short in another its whole is as long as the line, or differs the other way."""
    piece = circle(500.0, 40.0, hollow)
    (fit,) = curved_edges(piece, turnings(sewn(piece, 40.0)))
    (found,) = fit_findings(piece, replace(fit, surplus=fit.surplus * whole))
    assert values(found).keys() == {"depth", "edge", "surplus", "at", "sharp", "window", "share", "eases"}
    assert "is 8 mm" in found.what  # 2 d within 50 mm of 500: 80 * 50 / 500
    assert "within 5 cm" in found.what and "it is worst" not in found.what
    assert "it is worst" in fit_findings(piece, fit)[0].what


@pytest.mark.parametrize("code", languages())
@pytest.mark.parametrize("what", ["longer", "shorter"])
def test_cloth_takes_up_in_one_place_what_it_takes_up_on_the_whole(code: str, what: str) -> None:
    """A longer edge is eased in, a shorter one drawn out, wherever that is."""
    given = {name: f"[{name}]" for name in ("depth", "edge", "surplus", "at", "sharp", "window", "share", "eases")}
    with speaking(code):
        whole, there = (say(f"proof.fold_{what}{more}", given).partition("([share]")[2] for more in ("", "_there"))
    assert there == whole and "[eases]" in there
