"""The booklet's tables: sizes, finished measurements, the reader's choices, cloth to buy, what to cut."""

from __future__ import annotations

from kit.booklet.handover import Handover
from kit.booklet.measuring import used_measures
from kit.booklet.model import Cloth, Table
from kit.cloth.cut_list import INTERFACING_WIDTH, Cut, boxes, cut_list
from kit.cloth.need import nap_note, need
from kit.errors import KitError
from kit.lesson.pattern import Pattern, Value
from kit.piece.piece import Cloth as ClothName
from kit.piece.piece import Strip
from kit.prose import notions, tools
from kit.units import System, both, percent, show, unitless

_CLOTH = {"main": "Main cloth", "interfacing": "Interfacing", "lining": "Lining"}
_PER_CLOTH = {"main": "main cloth", "interfacing": "interfacing", "lining": "lining"}
_UNIT = {"cm": "centimetres", "inch": "inches"}


def said(name: str) -> str:
    """A measurement's or parameter's name as people read it: bust_girth -> Bust girth."""
    text = name.replace("_", " ").strip()
    return text[:1].upper() + text[1:]


def _stacked(value: float, system: System) -> str:
    """A length in both systems on two lines, without units: '96' over '37 3/4'."""
    second: System = "inch" if system == "cm" else "cm"
    return "\n".join(unitless(show(value, one, "finished")) for one in (system, second))


def _order(system: System) -> str:
    second: System = "inch" if system == "cm" else "cm"
    return f"{said(_UNIT[system])} above, {_UNIT[second]} below."


def size_table(given: Handover) -> Table | None:
    """Body measurements of the sizes the lesson is made for, the reader's size marked."""
    if not given.chart:
        return None
    system = given.pattern.lesson.units
    names = list(dict.fromkeys(name for row in given.chart for name, _ in row.measures))
    rows = []
    if not names:
        return None
    for name in names:
        by_size = [dict(row.measures).get(name) for row in given.chart]
        rows.append((said(name), *("–" if value is None else _stacked(value, system) for value in by_size)))
    sizes = [row.name for row in given.chart]
    mine = given.pattern.body.name
    note = _order(system)
    if mine in sizes:
        note += f" This booklet is drafted for size {mine}."
    else:
        note += f" This booklet is drafted for the measurements of {mine}, listed below."
    return Table("Body measurements", ("Size", *sizes), tuple(rows), sizes.index(mine) if mine in sizes else -1, note)


def body_table(given: Handover) -> Table | None:
    """Those of the reader's own measurements that the lesson uses, estimates said so; None when the body is a
    size of the chart."""
    body, system = given.pattern.body, given.pattern.lesson.units
    if any(row.name == body.name for row in given.chart) and not body.estimated:
        return None
    wanted = set(used_measures(given)) or {measure.name for measure in body.measures}
    used = [measure for measure in body.measures if measure.name in wanted]
    if not used:
        return None
    rows = tuple(
        (said(m.name), both(m.value, system, "draft"), "estimated" if m.estimated else "measured") for m in used
    )
    note = ""
    if any(measure.estimated for measure in used):
        names = ", ".join(said(measure.name).lower() for measure in used if measure.estimated)
        note = f"Estimated from the nearest size, not measured: {names}. Measure them before you cut."
    return Table(f"Measurements of {body.name}", ("Measurement", "Value", ""), rows, note=note)


def finished_table(given: Handover) -> Table | None:
    """Finished measurements in every size the lesson can be drafted in."""
    pattern, system = given.pattern, given.pattern.lesson.units
    if not pattern.finished:
        return None
    titles = [title for title, _ in pattern.finished]
    sizes = [row.name for row in given.chart]
    if pattern.body.name not in sizes:
        plain = tuple((title, both(value, system, "finished")) for title, value in pattern.finished)
        return Table("Finished measurements", ("Garment", "Finished"), plain)
    rows = tuple(
        (
            title,
            *(
                _stacked(dict(row.finished)[title], system) if title in dict(row.finished) else "–"
                for row in given.chart
            ),
        )
        for title in titles
    )
    note = _order(system)
    refused = [row for row in given.chart if row.trouble]
    if refused:
        note += f" With these choices it cannot be drafted in {', '.join(row.name for row in refused)}."
    return Table("Finished measurements", ("Garment", *sizes), rows, sizes.index(pattern.body.name), note)


def choice_table(pattern: Pattern) -> Table | None:
    """The parameters as this booklet was drafted with them."""
    if not pattern.values:
        return None
    system = pattern.lesson.units
    rows = tuple(
        (said(value.label), number(value.value, value.kind, system), _range(value, system), value.why)
        for value in pattern.values
    )
    return Table("Choices in this draft", ("Measure", "Here", "Range", "Why"), rows)


def number(value: float, kind: str, system: System) -> str:
    """A parameter's or measure's value as people read it."""
    if kind == "share":
        return percent(value)
    if kind == "count":
        return f"{value:.0f}"
    return both(value, system)


def _range(value: Value, system: System) -> str:
    if value.kind == "length":
        return f"{show(value.least, system)} to {show(value.most, system)}"
    return f"{number(value.least, value.kind, system)} to {number(value.most, value.kind, system)}"


def cloth(pattern: Pattern) -> Cloth:
    """What to buy: cloth per width from a simple lay, and notions."""
    info, system = pattern.lesson, pattern.lesson.units
    rows: list[tuple[str, ...]] = []
    kinds: tuple[ClothName, ...] = ("main", "lining", "interfacing")
    for kind in kinds:
        cut = boxes(pattern, kind)
        if not cut:
            continue
        widths = (INTERFACING_WIDTH,) if kind == "interfacing" else info.cloth_widths
        for width in widths:
            try:
                found = need(cut, width)
            except KitError as error:
                rows.append((_CLOTH[kind], both(width, system, "finished"), "too narrow", str(error)))
                continue
            lay = "folded lengthwise" if found.lay == "folded" else "opened out flat"
            rows.append((_CLOTH[kind], both(width, system, "finished"), both(found.length, system, "shop"), lay))
    table = Table("Cloth to buy", ("Cloth", "Width", "Length to buy", "Laid"), tuple(rows)) if rows else None
    note = (
        "Lengths are worked out by laying the pieces in simple rows, each in its own rectangle and on the grain, "
        "rounded up as cloth is sold. A careful lay may need less; cloth that shrinks"
    )
    more = nap_note(info.nap)
    note += f" needs more. {more}" if more else ", has a nap or a pattern to match needs more."
    return Cloth(info.cloth, table, _notions(pattern), tuple(tools(pattern)), note if table else "")


def _notions(pattern: Pattern) -> tuple[str, ...]:
    """The lesson's own notions, then what its operations use up and the lesson does not name."""
    own = pattern.lesson.notions
    named = " ".join(own).lower()
    return (*own, *(need for need in notions(pattern) if need.split()[-1].lower() not in named))


def cut_sentence(cut: Cut) -> str:
    """'Cut 2 of main cloth and 2 of interfacing, as mirrored pairs' and its like."""
    start = f"Cut {cut.count} of {_PER_CLOTH[cut.cloth]}"
    if cut.interfacing:
        start += f" and {cut.interfacing} of interfacing"
    if cut.how == "fold":
        return f"{start}, with the {cut.edge} on the fold"
    if cut.how == "pair" and cut.count > 1:
        pairs = cut.count > 2 or cut.interfacing > 1
        return f"{start}, as {'mirrored pairs' if pairs else 'a mirrored pair'}"
    if cut.how == "right_side_up":
        return f"{start}, {'each ' if cut.count > 1 else ''}single, right side up"
    if cut.how == "strip" and cut.square:
        return f"{start}, one after the other from a continuous bias strip"
    if cut.how == "strip" and cut.joins:
        return f"{start}, {cut.joins + 1} to each strip"
    return start


def cut_table(pattern: Pattern) -> Table:
    """The cut list of pieces and strips."""
    rows = tuple((str(cut.number), cut.title, cut_sentence(cut)) for cut in cut_list(pattern))
    return Table("Cut list", ("No.", "Piece", "Cut"), rows)


def strip_table(pattern: Pattern) -> Table | None:
    """Strips, which have no paper piece: their cut sizes in both systems."""
    if not pattern.strips:
        return None
    system = pattern.lesson.units
    rows = tuple(
        (
            str(strip.number),
            strip.title,
            str(strip.count if strip.square else strip.pieces),
            f"{both(strip.cut_length, system)} × {both(strip.width, system)}{_how_cut(strip, system)}",
            f"{both(strip.finished_width, system)} wide" if strip.finished_width else "",
        )
        for strip in pattern.strips
    )
    along = (
        "on the grain each names" if {strip.grain for strip in pattern.strips} - {"lengthwise"} else "along the grain"
    )
    note = f"Strips have no paper piece: chalk them straight onto the cloth, {along}. Allowances are included."
    return Table("Strips", ("No.", "Strip", "Cut", "Length × width as cut", "Finished"), rows, note=note)


_ALONG = {"lengthwise": "", "crosswise": "across the cloth", "bias": "on the bias"}


def _how_cut(strip: Strip, system: System) -> str:
    """What more is said of how a strip is cut: its grain, its joins, the square it comes from."""
    said = [_ALONG[strip.grain]]
    seams = both(strip.join_allowance, system, "allowance")
    if strip.square:
        said.append(
            f"as one continuous strip from a square of {both(strip.square, system)} sewn into a tube with "
            f"seams of {seams}"
        )
    elif strip.joins:
        each = "each strip" if strip.count > 1 else "the strip"
        number = "one join" if strip.joins == 1 else f"{strip.joins} joins"
        way = "diagonal" if strip.join == "diagonal" else "straight"
        said.append(f"{each} pieced with {number}, {way}, with {seams} to each side")
    found = "; ".join(part for part in said if part)
    return f", {found}" if found else ""
