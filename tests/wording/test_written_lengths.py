"""What is read as a length in an author's own words, and what is not. One inch is 25.4 mm (international yard and pound
agreement, 1959); the readings are worked from that by hand, rounded as a tape shows them."""

from __future__ import annotations

import pytest

from kit.rulers import Ruling, System, ruled
from kit.wording.written_lengths import in_one_system


@pytest.mark.parametrize(
    ("system", "text", "said"),
    [
        ("inch", "1 cm turned in, the rest turned up", "3/8 in turned in, the rest turned up"),
        ("inch", "elastic, 2.5 cm wide, 1.1 m", "elastic, 1 in wide, 1 1/4 yd"),
        ("inch", "between 4 and 6 mm", "between 1/8 in and 1/4 in"),
        ("inch", "in rows 1 and 2 cm beside them", "in rows 1 and 3/4 in beside them"),
        ("inch", "2–3 cm", "3/4 in–1 3/16 in"),
        ("inch", "10 x 15 cm", "3 15/16 in x 5 7/8 in"),
        ("inch", "Nimm 1,5 cm dazu.", "Nimm 5/8 in dazu."),
        ("inch", "2.5 cm (1 in)", "1 in"),
        ("cm", "2.5 cm (1 in)", "2.5 cm"),
        ("cm", "1 in (2.5 cm) wide", "2.5 cm wide"),
        ("inch", "a zigzag 0.5 mm wide and 2.5 mm long", "a zigzag 0.5 mm wide and 2.5 mm long"),
        ("inch", "cloth of 150 g/m², 30 °C, 3 m²", "cloth of 150 g/m², 30 °C, 3 m²"),
        ("inch", "Set `hem = 4 * cm` or `4 cm` in the cell.", "Set `hem = 4 * cm` or `4 cm` in the cell."),
        ("inch", "Add {hem_depth} and 1 cm.", "Add {hem_depth} and 3/8 in."),
        ("inch", "already 1/2 in deep", "already 1/2 in deep"),
        ("cm", "already 2 cm deep", "already 2 cm deep"),
        ("cm", "Fold 2 in half, press 3 in one go.", "Fold 2 in half, press 3 in one go."),
        ("cm", "2 in wide, 3 in.", "5.1 cm wide, 7.6 cm."),
        ("cm", "1/2 in from the edge", "1.3 cm from the edge"),
    ],
)
def test_lengths_written_out(system: System, text: str, said: str) -> None:
    with ruled(Ruling(alone=True)):
        assert in_one_system(text, system) == said
