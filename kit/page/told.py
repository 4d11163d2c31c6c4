"""What the page says of a pattern beside its picture: findings, finished measurements, a step's measures, cloth."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from kit.body.body import Body
from kit.body.chart import SizeChart
from kit.body.measures import said
from kit.language import say
from kit.lesson.ease import ease
from kit.lesson.pattern import Pattern
from kit.picture.step_pictures import PlayerPicture
from kit.picture.step_texts import measured, shown_value
from kit.proof.finding import Finding
from kit.units import System, both
from kit.wear.finished import fitted


def findings(found: Sequence[Finding]) -> list[dict[str, str]]:
    """Each finding: its `level`, the word for that, and what it `said`."""
    return [{"level": each.level, "word": say(f"panel.level_{each.level}"), "said": str(each)} for each in found]


def finished(pattern: Pattern, system: System) -> list[dict[str, str]]:
    """Finished measurements, with the ease of those that go over a body measurement: the lesson's own and those that
    the garment has by itself."""
    eased = {title: (over, value) for title, over, value in ease(pattern)}
    rows = [(title, value, eased.get(title)) for title, value in pattern.finished]
    rows += [(row.title, row.girth, (row.measure, row.ease)) for row in fitted(pattern)]
    return [
        {"name": title, "size": both(value, system, "finished"), "ease": _ease(over, system)}
        for title, value, over in rows
    ]


def _ease(eased: tuple[str, float] | None, system: System) -> str:
    if eased is None:
        return ""
    over, value = eased
    key = "panel.ease" if value >= 0 else "panel.ease_less"
    return say(key, ease=both(abs(value), system, "finished"), over=said(over))


def measures(pattern: Pattern, shot: PlayerPicture, system: System) -> list[str]:
    """What a drafting step measures, each with its place and value in words; nothing of a sewing step, whose sentences
    name every length."""
    record = next((each for each in pattern.steps if shot.kind == "draft" and each.key == shot.key), None)
    if record is None:
        return []
    return [measured(spot, record, shown_value(spot, system, True)) for spot in record.spots]


def bought(cloth: Mapping[str, Any], size: str, chart: SizeChart, body: Body, system: System) -> dict[str, Any]:
    """The lengths to buy, from the tables made when the page was built: for the `size` worn, else for the size nearest
    to the body, which is told. Nothing where no table was made."""
    tables = cloth.get("sizes", {})
    if not tables:
        return {"rows": [], "note": ""}
    nearest = size if size in tables else _nearest(body, chart, list(tables))
    rows = [
        {
            "cloth": say(f"booklet.cloth_{row['cloth']}"),
            "width": both(float(row["width"]), system, "finished"),
            "length": both(float(row["length"]), system, "shop") if row["length"] else say("booklet.too_narrow"),
        }
        for row in tables[nearest]
    ]
    key = "page.cloth_note" if nearest == size or len(tables) == 1 else "page.cloth_nearest"
    return {"rows": rows, "note": say(key, size=nearest)}


def _nearest(body: Body, chart: SizeChart, names: Sequence[str]) -> str:
    """The size whose girths are nearest to the body's, those that are too small counted double: cloth that is left
    over can be used."""

    def off(name: str) -> float:
        pairs = [(body[key], chart[name][key]) for key in chart.keys if key in body and key in chart[name]]
        return sum(abs(mine - its) * (2 if its < mine else 1) for mine, its in pairs)

    return min((name for name in names if name in chart), key=off, default=names[0])
