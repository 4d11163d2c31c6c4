"""Whether two lines lie close to each other all along, asked of shapely (GEOS).

The Hausdorff distance says the same and more, by comparing every place with every other: some thousand times as slow on
lines of a thousand points.
"""

from __future__ import annotations

from typing import Any

import shapely


def near(one: Any, other: Any, off: float, step: float = 1.0) -> bool:
    """Whether all of each line lies within `off` mm of the other, looked at in its points and at least every `step`
    mm."""
    for line, beside in ((one, other), (other, one)):
        spots = shapely.points(shapely.get_coordinates(shapely.segmentize(line, step)))
        shapely.prepare(beside)
        if not bool(shapely.dwithin(beside, spots, off).all()):
            return False
    return True
