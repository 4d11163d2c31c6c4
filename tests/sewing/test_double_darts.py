"""Darts with two points, sewn: from the middle to either point, each by its own verb."""

from __future__ import annotations

import math
from dataclasses import replace

import pytest

from kit.errors import KitError
from kit.geometry import Point
from kit.piece.piece import Mark
from tests.double_darted import back, dart
from tests.sewing.table import sewn


def test_it_is_sewn_from_the_middle_to_either_point() -> None:
    done = sewn((back(dart()),), lambda make, back: make.double_dart(back.waist_dart))
    assert done.codes == []
    said = done.said
    order = ("Mark both points", "Stitch", "Do not backstitch", "Clip the fold", "towards the centre")
    assert [word for word, line in zip(order, said, strict=False) if word not in line] == []
    assert "1.5 cm" in said[1] and said[1].index("lower point") < said[1].index("upper point")
    assert "15 cm" in said[1] and "3 mm" in said[3]
    twice = sewn((back(dart()),), *[lambda make, back: make.double_dart(back.waist_dart)] * 2)
    assert twice.codes == ["double_dart_twice"]


def test_a_narrow_one_is_not_clipped() -> None:
    done = sewn((back(dart(intake=10.0)),), lambda make, back: make.double_dart(back.waist_dart, press="side"))
    assert not any("Clip" in line for line in done.said) and "towards the side" in done.said[-2]


def test_each_dart_has_its_own_verb() -> None:
    piece = replace(back(dart(), Mark("spot", "point", point=Point(50, 50))))
    for write, match in (
        (lambda make, back: make.dart(back.waist_dart), "make.double_dart"),
        (lambda make, back: make.double_dart(back.spot), "no dart with two points"),
    ):
        with pytest.raises(KitError, match=match):
            sewn((piece,), write)


def test_its_pictures_show_both_legs() -> None:
    done = sewn((back(dart()),), lambda make, back: make.double_dart(back.waist_dart))
    folded, sewn_up = done.last.scenes(done.pattern)
    assert (len(folded.rows), len(sewn_up.rows)) == (1, 2)
    assert folded.layers[0].fold is not None
    assert [row.line.length for row in sewn_up.rows] == pytest.approx([2 * math.hypot(15, 150)] * 2)
