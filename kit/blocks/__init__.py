"""Where a lesson may start: foundation blocks drafted for a body, and traced tops."""

from kit.blocks.block import Block
from kit.blocks.bodice import bodice_block
from kit.blocks.darted_bodice import darted_bodice_block
from kit.blocks.skirt import skirt_block
from kit.blocks.sleeve import with_sleeve
from kit.blocks.traced import Traced
from kit.blocks.trousers import trouser_block

__all__ = ["Block", "bodice_block", "darted_bodice_block", "with_sleeve", "skirt_block", "trouser_block", "Traced"]
