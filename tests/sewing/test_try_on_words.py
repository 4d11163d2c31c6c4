"""What a fitting begins with: where the garment is put on."""

from __future__ import annotations

import pytest

from kit.lesson.another import open_lesson
from kit.resources import examples
from kit.sewing.operations.try_ons import TryOn


@pytest.mark.parametrize(("name", "key"), [("limpet_hat", "try_on.wear_head"), ("dune_skirt", "try_on.wear")])
def test_a_hat_is_put_on_the_head_and_a_skirt_with_its_shoes(name: str, key: str) -> None:
    pattern = open_lesson(examples() / f"{name}.ipynb").work()
    fittings = [each for record in pattern.sewing for each in record.operations if isinstance(each, TryOn)]
    assert fittings and all(each.sentences(pattern)[0][0] == key for each in fittings)
