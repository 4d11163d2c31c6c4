"""What every picture of the jacket, the skirt and the tote shows, in words: the layers as they lie by then, the rows,
what is sewn on, where the cloth is folded.

Each picture was read beside the step it belongs to (how cloth lies while it is sewn: common practice, no source); the
lengths are those of the pieces in `garments.py`.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from kit.sewing.in_work import shown_scenes
from tests.sewing.telling import told_scene
from tests.told import Kept


@pytest.mark.parametrize("name", ["JACKET", "SKIRT", "TOTE"])
def test_what_its_pictures_show(garments, name):
    pattern = getattr(garments, name).pattern()
    found = {}
    for record in pattern.sewing:
        for number, operation in enumerate(record.operations):
            for count, scene in enumerate(shown_scenes(pattern, operation), 1):
                title = f"{record.title}, {operation.kind} {number + 1}, picture {count}"
                found[title] = "\n".join(told_scene(scene))
    Kept(Path(__file__).with_name(f"{name.lower()}_shown.txt")).holds(found)
