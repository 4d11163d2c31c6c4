"""For whom a booklet is made: a class (and its author), who want all that is known, or buyers, who want to sew.

A buyer's booklet has no log of the fittings, no index of measures and no drafting by hand: that is a file of its own.
Cells of the notebook tagged `for-class` are printed for a class alone.
"""

from __future__ import annotations

import copy
from dataclasses import replace
from typing import Literal

from nbformat import NotebookNode

from kit.booklet.model import Block, Booklet, BookletPart, SewStep

Audience = Literal["class", "buyers"]
CLASS_CELL = "for-class"


def cells_for(notebook: NotebookNode, audience: Audience) -> NotebookNode:
    """The notebook without the markdown cells that are not for that audience."""
    if audience == "class":
        return notebook
    kept = copy.copy(notebook)
    kept["cells"] = [
        cell
        for cell in notebook.cells
        if cell.cell_type != "markdown" or CLASS_CELL not in cell.metadata.get("tags", [])
    ]
    return kept


def for_buyers(book: Booklet) -> Booklet:
    """The booklet without what is for a class alone, and without references to it."""
    sewing = _without_references(book.sewing)
    return replace(book, worksheet=(), apart=book.worksheet, fittings=(), index=(), sewing=sewing)


def _without_references(part: BookletPart) -> BookletPart:
    def plain(block: Block) -> Block:
        if not isinstance(block, SewStep):
            return block
        return replace(block, operations=tuple(replace(each, fitting="") for each in block.operations))

    return replace(part, blocks=tuple(plain(block) for block in part.blocks))
