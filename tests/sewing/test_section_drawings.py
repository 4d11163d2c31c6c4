"""Every cross-section as one sees it, drawn with characters: which cloth lies where, how far its edges reach, where its
folds and rows of stitching are.

The drawings stand in `section_drawings.txt`. Each was looked at beside the textbook diagram of its seam, hem or edge
(common practice, no source; the manner is that of ISO 4916, each ply a line, needle lines upright). A section whose
drawing changes is looked at again.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial
from pathlib import Path
from string import ascii_lowercase

import pytest

from kit.sewing import section
from kit.sewing.scene import Section
from kit.sewing.sections import bands, bindings, closures, finishes, folds, hems, plackets, pockets, seams
from tests.told import Kept

DRAWINGS = Path(__file__).with_name("section_drawings.txt")

SECTIONS: dict[str, partial[Section]] = {
    "superimposed": partial(section.superimposed),
    "superimposed, of facing and lining": partial(section.superimposed, "facing", "lining"),
    "caught": partial(section.caught),
    "caught, of facing and lining": partial(section.caught, "facing", "lining"),
    "pressed open": partial(section.pressed_open),
    "French seam, first row": partial(section.french_first),
    "French seam": partial(section.french_second),
    "faced": partial(section.faced),
    "faced with lining, understitched": partial(section.faced, "lining", understitched=True),
    "hem turned once": partial(section.hem_once),
    "hem turned twice, 1 and 2": partial(section.hem_twice, 10.0, 20.0),
    "hem turned twice, equal": partial(section.hem_twice, 20.0, 20.0),
    "hem turned twice, 1 and 10: no narrower than can be seen": partial(section.hem_twice, 3.0, 30.0),
    "hem turned twice, 2 and 1: no deeper than it is turned": partial(section.hem_twice, 20.0, 10.0),
    "hem turned twice, nothing given": partial(section.hem_twice, 0.0, 0.0),
    "strip folded in four": partial(section.folded_in_four),
    "strip folded in four, one row": partial(section.folded_in_four, both=False),
    "strip being folded in four": partial(section.folding_in_four),
    "tube": partial(section.tube),
    "strip hemmed along both edges": partial(section.hemmed_both),
    "turned tube": partial(section.turned_tube),
    "turned tube, one row": partial(section.turned_tube, 1),
    "turned tube, two rows": partial(section.turned_tube, 2),
    "fused": partial(section.fused),
    "one ply": partial(section.one_ply),
    "one ply of lining": partial(section.one_ply, "lining"),
    "band set": partial(bands.band_set),
    "band set, a facing caught": partial(bands.band_set, caught=True),
    "band laid on, a facing caught": partial(bands.band_laid_on_facing),
    "band closed": partial(bands.band_closed),
    "band closed by hand": partial(bands.band_closed, stitched=False),
    "turned out": partial(bands.turned_out),
    "rolled out": partial(bands.rolled_out),
    "band end": partial(bands.band_end),
    "gap closed": partial(bands.gap_closed),
    "sleeve set": partial(bands.sleeve_set),
    "sleeve set, pressed open": partial(bands.sleeve_set, "_open"),
    "sleeve set, pressed towards the garment": partial(bands.sleeve_set, "_garment"),
    "binding, first row": partial(bindings.bound_first),
    "binding folded in two, first row": partial(bindings.bound_first, double=True),
    "bound": partial(bindings.bound),
    "bound double": partial(bindings.bound_double),
    "faced with a bias strip": partial(bindings.bias_faced),
    "casing": partial(bindings.casing),
    "casing with elastic": partial(bindings.casing, "elastic"),
    "channel": partial(bindings.channel),
    "channel with a cord": partial(bindings.channel, "cord"),
    "channel in a hem": partial(bindings.channel, hemmed=True),
    "zip, lapped": partial(closures.zip_lapped),
    "zip, centred": partial(closures.zip_centred),
    "zip, invisible, first row": partial(closures.zip_invisible_first),
    "zip, invisible": partial(closures.zip_invisible),
    "zip, fly": partial(closures.zip_fly),
    "zip, fly with a shield": partial(closures.zip_fly, shield=True),
    "buttonhole": partial(closures.buttonholed),
    "graded": partial(finishes.graded),
    "graded lining": partial(finishes.graded, "lining"),
    "tacked": partial(finishes.tacked),
    "folded and sewn": partial(folds.folded),
    "folded": partial(folds.folded, sewn=False),
    "folded in two": partial(folds.folded_double),
    "drawn up": partial(folds.drawn_up),
    "drawn up by three rows": partial(folds.drawn_up, 3),
    "blind hem": partial(hems.blind, twice=False),
    "blind hem, turned twice": partial(hems.blind, twice=True),
    "taped hem": partial(hems.taped),
    "rolled": partial(hems.rolled),
    "faced hem": partial(hems.faced_down),
    "placket, bound": partial(plackets.placket_bound),
    "placket, tower": partial(plackets.placket_tower),
    "patch pocket": partial(pockets.patch_edge),
    "pocket edge": partial(pockets.pocket_edge_folded),
    "bag sewn": partial(pockets.bag_sewn),
    "bags together": partial(pockets.bags_together),
    "seam pressed to one side": partial(seams.pressed_one_side),
    "bound open": partial(seams.bound_open),
    "French seam, trimmed": partial(seams.french_trimmed),
    "felled, trimmed": partial(seams.felled_trimmed),
    "shut in and pressed to one side": partial(seams.enclosed_pressed),
    "mock French seam": partial(seams.mock_french),
    "felled": partial(seams.felled),
    "lapped": partial(seams.lapped),
    "lapped raw": partial(seams.lapped_raw),
    "opening": partial(seams.opening),
}


def drawing(found: Section) -> str:
    """A section in characters: two to a cloth's thickness across, a line to half a level upward. A ply's letter runs
    along it; `x` are its cut ends, `>` and `<` those that go on; `|` is a row of stitching, hidden by the plies it goes
    through, which are named below. `^` marks the seam."""
    lines = list(_lines(found))
    names = [f"{letter} {ply.stuff} ({ply.name})" for letter, ply in zip(ascii_lowercase, found.plies, strict=False)]
    rows = [
        f"row at {x:g}, {low:g} to {high:g}: {', '.join(found.through(n))}"
        for n, (x, low, high) in enumerate(found.stitches)
    ]
    return "\n".join([*lines, *names, *rows])


def _lines(found: Section) -> Iterator[str]:
    cells: dict[tuple[int, int], str] = {}

    def put(x: float, y: float, mark: str) -> None:
        cells[round(2 * x), round(y / 0.7)] = mark

    for x, low, high in found.stitches:
        for step in range(round(low / 0.7), round(high / 0.7) + 1):
            put(x, step * 0.7, "|")
    for letter, ply in zip(ascii_lowercase, found.plies, strict=False):
        for (a, b), (c, d) in zip(ply.path, ply.path[1:], strict=False):
            for n in range(101):
                put(a + (c - a) * n / 100, b + (d - b) * n / 100, letter)
        for end, beside, cut in ((ply.path[0], ply.path[1], ply.raw[0]), (ply.path[-1], ply.path[-2], ply.raw[1])):
            put(*end, "x" if cut else ("<" if end[0] < beside[0] else ">"))
    least, most = min(x for x, _ in cells), max(x for x, _ in cells)
    for y in range(max(y for _, y in cells), min(y for _, y in cells) - 1, -1):
        row = "".join(cells.get((x, y), " ") for x in range(min(least, -1), most + 1)).rstrip()
        yield f"{0.7 * y:5.1f} {row}".rstrip()
    yield f"      {'^':>{1 - min(least, -1)}}"  # the seam, at 0


def _kept() -> dict[str, str]:
    parts = DRAWINGS.read_text("utf-8").strip("\n").split("\n\n")
    return dict(part.split("\n", 1) for part in parts)


@pytest.mark.parametrize("name", SECTIONS)
def test_a_section_looks_as_it_did_when_it_was_looked_at(name):
    assert drawing(SECTIONS[name]()) == _kept()[name]


def test_every_section_is_drawn():
    modules = (section, bands, bindings, closures, finishes, folds, hems, plackets, pockets, seams)
    made = {
        value
        for module in modules
        for value in vars(module).values()
        if getattr(value, "__module__", "") == module.__name__
    }
    assert {drawn.func for drawn in SECTIONS.values()} == made
    Kept(DRAWINGS).holds({name: drawing(drawn()) for name, drawn in SECTIONS.items()})
