"""A refusal names the kit's own blocks in the reader's language, an author's by its own title."""

from __future__ import annotations

import pytest

from kit import KitError, bodice_block, darted_bodice_block, skirt_block, trouser_block, with_sleeve
from kit.blocks.block import Block
from kit.body.body import Body
from kit.language import languages, speaking

OWN = (bodice_block, darted_bodice_block, skirt_block, trouser_block, with_sleeve(bodice_block))


def refusal(block: Block, code: str) -> str:
    with speaking(code), pytest.raises(KitError) as caught:
        block(Body("Edda", {}))
    with speaking(code):
        return str(caught.value)


@pytest.mark.parametrize("block", OWN, ids=lambda block: block.title)
def test_the_kits_own_are_named_in_the_readers_language(block: Block) -> None:
    assert block.title in refusal(block, "en")
    said = {code: refusal(block, code) for code in languages() if code != "en"}
    assert len(said) == 3
    for code, text in said.items():
        assert "lock" not in text and "leeve" not in text, (code, text)


def test_an_authors_block_keeps_its_title() -> None:
    assert "My vest for Edda" in refusal(Block("My vest", ("bust_girth",), bodice_block.draft), "en")
    assert "My vest" in refusal(Block("My vest", ("bust_girth",), bodice_block.draft), "de")
