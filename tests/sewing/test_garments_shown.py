"""What every picture of the jacket, the skirt and the tote shows, in words: the layers as they lie by then, the rows,
what is sewn on, where the cloth is folded.

Most pictures were read beside the step it belongs to (how cloth lies while it is sewn: common practice, no source); the
lengths are those of the pieces in `garments.py`.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.lesson.pattern import Pattern
from kit.sewing.in_work import shown_scenes
from kit.units import cm
from tests.fitted import tunic
from tests.sewing.telling import told_scene
from tests.told import Kept


def held(name: str, pattern: Pattern) -> None:
    found = {}
    for record in pattern.sewing:
        for number, operation in enumerate(record.operations, 1):
            for count, scene in enumerate(shown_scenes(pattern, operation), 1):
                title = f"{record.title}, {operation.kind} {number}, picture {count}"
                found[title] = "\n".join(told_scene(scene))
    Kept(Path(__file__).with_name(f"{name}_shown.txt")).holds(found)


@pytest.mark.parametrize("name", ["JACKET", "SKIRT", "TOTE"])
def test_what_the_pictures_of_a_garment_show(garments, name):
    held(name.lower(), getattr(garments, name).pattern())


def test_what_the_pictures_of_the_wrap_top_show(wrap):
    held("wrap_top", wrap.pattern_of(wrap.whole_order()))


def _sewn(make, front, back):
    make.plain_seam(front.side, back.side, allowance=1.5 * cm)


def _basted(make, front, back):
    make.baste(front.side, back.side)


def _nothing(make, front, back):
    """The sides are sewn before."""


TRIED = {
    # name: (the top goes from, to, what is sewn before it is tried on, what after)
    "taken_in": (28, 25, _sewn, _nothing),
    "let_out": (25, 26, _sewn, _nothing),
    "taken_in_where_it_is_basted": (28, 25, _basted, None),
    "taken_in_where_nothing_is_sewn": (28, 25, None, None),
    "let_out_too_far": (25, 30, None, None),
}


@pytest.mark.parametrize("name", TRIED)
def test_what_the_pictures_of_a_try_on_show(name, tmp_path, monkeypatch):
    monkeypatch.chdir(tmp_path)
    was, now, before, seam = TRIED[name]
    trial = {"top_width": (was * cm, now * cm)}
    lesson = tunic(lambda make: make.try_on("It gapes.", **trial), before=before, seam=seam)
    held(f"tunic_{name}", lesson.work())
