"""How a full-scale sheet falls onto pages: a grid of tiles, of which only those that carry paper of a piece
are printed. Rows are numbered from the top, columns lettered from the left, so that "3B" is one place.

A tile is what is left of a page when it is cut at its trim lines. The page carries on by the paper's overlap
to the right and below; there the next page is glued on.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Any

import numpy as np
import shapely

from kit.paper.papers import Paper

_EDGE = 0.5  # a line as wide as this may reach over a tile's border


@dataclass(frozen=True)
class Tile:
    """One page of the pattern: its place in the grid and the part of the sheet it keeps after trimming, in mm
    of the sheet (`left`, `bottom`, `right`, `top`)."""

    row: int
    column: int
    left: float
    bottom: float
    right: float
    top: float

    @property
    def name(self) -> str:
        """Row number and column letter: "1A" is the top left page."""
        return f"{self.row + 1}{self.column_letters}"

    @property
    def column_letters(self) -> str:
        """A, B ... Z, AA, AB ..."""
        return letters(self.column)


@dataclass(frozen=True)
class PagePlan:
    """The printed tiles of a sheet of `width` x `height` mm on `paper`, which is held the way it is printed, in `rows`
    and `columns`.
    `crossed` are the borders (places of both tiles) over which something of a piece runs."""

    paper: Paper
    width: float
    height: float
    rows: int
    columns: int
    tiles: tuple[Tile, ...]
    crossed: frozenset[tuple[tuple[int, int], tuple[int, int]]] = frozenset()

    @cached_property
    def _places(self) -> dict[tuple[int, int], Tile]:
        return {(tile.row, tile.column): tile for tile in self.tiles}

    def at(self, row: int, column: int) -> Tile | None:
        """The printed tile of that place, or None where the page is left out."""
        return self._places.get((row, column))

    @cached_property
    def _groups(self) -> dict[tuple[int, int], tuple[int, int]]:
        """The first place of the group a tile belongs to: tiles hang together where a piece runs across a border."""
        # A union-find: every place begins as a group of its own, and each border that is crossed joins two. Of two
        # first places the earlier one leads, so that the answer does not hang on the order of the borders.
        group = {place: place for place in self._places}

        def first(place: tuple[int, int]) -> tuple[int, int]:
            while group[place] != place:
                place = group[place]
            return place

        for one, other in sorted(self.crossed):
            if one in group and other in group:
                a, b = sorted((first(one), first(other)))
                group[b] = a
        return {place: first(place) for place in group}

    @property
    def groups(self) -> int:
        """How many separate patches the pages make on the table."""
        return len(set(self._groups.values()))

    def joined(self, tile: Tile, down: int, across: int) -> Tile | None:
        """The tile `down` rows and `across` columns away if the two are joined, or None."""
        other = self.at(tile.row + down, tile.column + across)
        if other is None or self._groups[tile.row, tile.column] != self._groups[other.row, other.column]:
            return None
        return other

    @property
    def borders(self) -> tuple[tuple[Tile, Tile], ...]:
        """Pairs of tiles that are joined, the left or upper one first. Neighbours that share no piece, and belong to
        no patch that does, need not be joined."""
        found = []
        for tile in self.tiles:
            for other in (self.joined(tile, 0, 1), self.joined(tile, 1, 0)):
                if other is not None:
                    found.append((tile, other))
        return tuple(found)


def letters(place: int) -> str:
    """A for 0, B for 1 ... Z, AA, AB ...

    >>> letters(0), letters(25), letters(26)
    ('A', 'Z', 'AA')
    """
    out = ""
    place += 1
    while place:
        place, rest = divmod(place - 1, 26)
        out = chr(ord("A") + rest) + out
    return out


def grid(width: float, height: float, paper: Paper) -> tuple[int, int]:
    """Rows and columns of `paper`, held as given, that cover a sheet of `width` x `height` mm.

    >>> from kit.paper.papers import A4
    >>> grid(400.0, 500.0, A4)  # rows, columns
    (2, 3)
    """
    across, down = paper.step
    columns = max(1, math.ceil((width - paper.overlap) / across - 1e-9))
    rows = max(1, math.ceil((height - paper.overlap) / down - 1e-9))
    return rows, columns


def all_tiles(width: float, height: float, paper: Paper) -> list[Tile]:
    """Every tile of the grid, row by row, blank ones too. The last column and row keep their overlap."""
    across, down = paper.step
    area_width, area_height = paper.area
    rows, columns = grid(width, height, paper)
    tiles = []
    for row in range(rows):
        top = height - row * down
        bottom = top - (area_height if row == rows - 1 else down)
        for column in range(columns):
            left = column * across
            right = left + (area_width if column == columns - 1 else across)
            tiles.append(Tile(row, column, left, bottom, right, top))
    return tiles


def plan_on(ink: Sequence[Any], width: float, height: float, paper: Paper) -> PagePlan:
    """The pages of `paper`, held as given, which some of `ink` (shapely geometries in mm of the sheet: the
    paper of each piece) falls on."""
    # Tiles and borders are asked all at once for each piece, prepared for it: one question per tile and piece took
    # most of the time of a plan. A border counts as crossed where something runs over it, half a line's width to either
    # side, and only such pages must be joined.
    tiles = all_tiles(width, height, paper)
    rows, columns = grid(width, height, paper)
    sides = np.array([(tile.left, tile.bottom, tile.right, tile.top) for tile in tiles])
    boxes = shapely.box(sides[:, 0] - _EDGE, sides[:, 1] - _EDGE, sides[:, 2] + _EDGE, sides[:, 3] + _EDGE)
    used = np.zeros(len(tiles), dtype=bool)
    pairs = [
        (place, place + step)
        for place, tile in enumerate(tiles)
        for step, last in ((1, tile.column == columns - 1), (columns, tile.row == rows - 1))
        if not last
    ]
    lines = shapely.buffer([_border(tiles[one], tiles[other]) for one, other in pairs], _EDGE, cap_style="flat")
    across = np.zeros(len(pairs), dtype=bool)
    for shape in ink:
        shapely.prepare(shape)
        used |= shapely.intersects(shape, boxes)
        across |= shapely.intersects(shape, lines) if len(pairs) else False
    kept = tuple(tile for tile, keep in zip(tiles, used, strict=True) if keep)
    crossed = frozenset(
        ((tiles[one].row, tiles[one].column), (tiles[other].row, tiles[other].column))
        for (one, other), over in zip(pairs, across, strict=True)
        if over
    )
    rows = max((tile.row for tile in kept), default=0) + 1
    columns = max((tile.column for tile in kept), default=0) + 1
    return PagePlan(paper, width, height, rows, columns, kept, crossed)


def _border(before: Tile, after: Tile) -> Any:
    if before.row == after.row:
        return shapely.LineString([(after.left, before.bottom), (after.left, before.top)])
    return shapely.LineString([(before.left, after.top), (before.right, after.top)])


def count_pages(ink: Sequence[Any], width: float, height: float, paper: Paper) -> int:
    """How many pages `plan_on` would print."""
    tiles = all_tiles(width, height, paper)
    sides = np.array([(tile.left, tile.bottom, tile.right, tile.top) for tile in tiles])
    boxes = shapely.box(sides[:, 0] - _EDGE, sides[:, 1] - _EDGE, sides[:, 2] + _EDGE, sides[:, 3] + _EDGE)
    used = np.zeros(len(tiles), dtype=bool)
    for shape in ink:
        shapely.prepare(shape)
        used |= shapely.intersects(shape, boxes)
    return int(used.sum())


def plan_pages(ink: Sequence[Any], width: float, height: float, paper: Paper, ways: Sequence[Paper] = ()) -> PagePlan:
    """The plan with the fewest pages among the `ways` to hold the paper (upright or on its side when none are
    given); the first of them when several take as many.

    >>> from kit.paper.papers import A4
    >>> plan = plan_pages([shapely.box(10.0, 10.0, 300.0, 200.0)], 310.0, 210.0, A4)
    >>> plan.rows, plan.columns, [tile.name for tile in plan.tiles]
    (1, 2, ['1A', '1B'])
    """
    return min(
        (plan_on(ink, width, height, held) for held in ways or (paper, paper.turned)),
        key=lambda plan: len(plan.tiles),
    )
