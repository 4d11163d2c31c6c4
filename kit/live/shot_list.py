"""The shot list of a film: a page to print and to have by hand, with the picture of each shot, its words and how long
they take, what to lay ready and what to mind.

The tools of a sewing step are those of its operations; those of a drafting step follow from the lines it draws. Words
that stand under one picture are not told again under the next of the same step.
"""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from html import escape

from kit.geometry import Arc, Line
from kit.language import keys, say
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.live.captions import lasting
from kit.live.film import Showing, clock
from kit.picture.step_pictures import PlayerPicture, player_pictures, told_once
from kit.picture.svg_pen import svg
from kit.prose.notes import cautions
from kit.prose.told import told_steps
from kit.units import System, set_fractions
from kit.wording.lists import strung

_STYLE = """
@page { margin: 12mm; }
body { margin: 1.5em; font: 15px/1.4 "Source Sans Pro", "Noto Sans", sans-serif; color: #1f2d3a; background: #fff; }
h1 { margin: 0 0 0.6em; font-size: 1.6em; line-height: 1.15; }
table { width: 100%; border-collapse: collapse; }
th, td { padding: 0.5em 0.8em 0.5em 0; border-top: 1px solid #8a9299; text-align: left; vertical-align: top; }
thead { display: table-header-group; }
thead th { border-top: 0; }
tr { break-inside: avoid; }
.time { white-space: nowrap; font-variant-numeric: tabular-nums; }
.picture { width: 46%; }
svg { display: block; width: 100%; height: auto; max-height: 20em; }
dl { margin: 0; } dt { font-weight: 600; } dd { margin: 0 0 0.4em; }
.picture p { margin: 0.3em 0 0; } .lasts { color: #55606b; font-size: 0.9em; }
.short { font-weight: 600; color: #8a2d12; }
.care { margin: 0 0 1em; } .care h2 { margin: 0; font-size: 1.1em; } .care ul { margin: 0.2em 0; padding-left: 1.2em; }
.care p { margin: 0; }
.step { font-weight: normal; } .step b { display: block; font-size: 1.1em; }
@media (max-width: 600px) {
  thead { display: none; } tr, td, th { display: block; width: auto !important; }
  td { border-top: 0; padding-top: 0; }
}
@media print { body { margin: 0; font-size: 11pt; } }
"""


_ROOM = (540.0, 300.0)  # CSS px, about as large as a picture is shown
_HEADS = {"tools": "booklet.tools", "pieces": "player.shots_pieces", "notions": "booklet.notions"}


def shot_list(
    pattern: Pattern, system: System, language: str, times: Mapping[str, float], found: Sequence[Showing] = ()
) -> str:
    """The shot list as a page of HTML that needs nothing beside it, in the language spoken now, whose code is
    `language`. `times` are the seconds at which a film shows a step, where it is made already, and `found` when each is
    on show: one that is gone before its words can be read is told. `KitError` for words that cannot be filled in."""
    records: dict[str, StepRecord | SewRecord] = {step.key: step for step in pattern.steps}
    records |= {sewn.key: sewn for sewn in pattern.sewing}
    rows: list[str] = []
    shots = player_pictures(pattern, system)
    words = told_once(shots)
    needed = {step.key: lasting(step.words) for step in told_steps(pattern, system)} if found else {}
    for shot, said in zip(shots, words, strict=True):
        short = _too_short(found, shot.key, needed.get(shot.key, 0.0)) if shot.picture == 1 else ""
        rows.append(_row(shot, records[shot.key], pattern, times, said, short))
    title = escape(say("player.shots", lesson=pattern.lesson.title))
    heads = ("shots_step", "mark_time", "shots_picture", "shots_ready") if times else ("shots_step", "shots_picture")
    heads = heads if times else (*heads, "shots_ready")
    head = "".join(f'<th scope="col">{escape(say(f"player.{key}"))}</th>' for key in heads)
    rows = rows if times else [row.replace('<td class="time"></td>', "") for row in rows]
    return (
        f'<!doctype html>\n<html lang="{escape(language)}"><head><meta charset="utf-8"><title>{title}</title>'
        '<meta name="viewport" content="width=device-width, initial-scale=1">'
        f"<style>{_STYLE}</style></head>\n<body><h1>{title}</h1>\n{_care(pattern)}"
        f"<table><thead><tr>{head}</tr></thead>\n<tbody>\n" + "\n".join(rows) + "\n</tbody></table></body></html>\n"
    )


def _too_short(found: Sequence[Showing], key: str, needed: float) -> str:
    """What is told of a step that is never on show for as long as its words take, all of which stand under it each
    time; nothing while no end is known."""
    longest = max((one.end - one.start for one in found if one.key == key), default=math.inf)
    if longest >= needed:
        return ""
    return say("player.shots_short", shown=math.floor(longest), seconds=math.ceil(needed))


def _care(pattern: Pattern) -> str:
    """The usual cautions: hands on camera are followed."""
    told = cautions(pattern)
    each = "".join(f"<li><b>{escape(one.title)}.</b> {escape(one.text)}</li>" for one in told if one.title)
    rest = "".join(f"<p>{escape(one.text)}</p>" for one in told if not one.title)
    return f'<section class="care"><h2>{escape(say("booklet.take_care"))}</h2><ul>{each}</ul>{rest}</section>\n'


def _row(
    shot: PlayerPicture,
    record: StepRecord | SewRecord,
    pattern: Pattern,
    times: Mapping[str, float],
    words: Sequence[str],
    short: str,
) -> str:
    first = shot.picture == 1
    said = " · ".join(part for part in (shot.label, shot.part) if part)
    at = clock(times[shot.key]) if first and shot.key in times else ""
    picture = svg(shot.draw(), *_ROOM) if shot.draw is not None else escape(say("player.no_picture"))
    picture += "".join(f"<p>{escape(set_fractions(text))}</p>" for text in words)
    if words:
        picture += f'<p class="lasts">{escape(say("player.shots_lasts", seconds=math.ceil(lasting(words))))}</p>'
    if short:
        picture += f'<p class="short">{escape(short)}</p>'
    ready = "".join(
        f"<dt>{escape(say(_HEADS[kind]))}</dt><dd>{escape(strung(found))}</dd>"
        for kind, found in (ready_for(record, pattern) if first else ())
        if found
    )
    return (
        f'<tr><th scope="row" class="step">{escape(said)}<b>{escape(shot.title)}</b></th><td class="time">{at}</td>'
        f'<td class="picture">{picture}</td><td>{f"<dl>{ready}</dl>" if ready else ""}</td></tr>'
    )


def ready_for(record: StepRecord | SewRecord, pattern: Pattern) -> tuple[tuple[str, tuple[str, ...]], ...]:
    """What to lay ready for a step, as people call it: ("tools", ...), ("pieces", ...), ("notions", ...)."""
    if isinstance(record, StepRecord):
        pieces = tuple(dict.fromkeys([*(p.title for p in record.pieces), *(s.title for s in record.strips)]))
        return ("tools", _drafting_tools(record)), ("pieces", pieces), ("notions", ())
    tools = {tool for operation in record.operations for tool in operation.tools}
    tools |= {"scissors" for operation in record.operations if "scissors" in operation.cautioned(pattern)}
    notions = {need for operation in record.operations for need in operation.notions}
    uses = [operation.uses for operation in record.operations]
    titles = [pattern.piece(name).title for each in uses for name in each.pieces]
    titles += [pattern.strip(name).title for each in uses for name in each.strips]
    return (
        ("tools", tuple(say(f"tool.{key}") for key in keys("tool") if key in tools)),
        ("pieces", tuple(dict.fromkeys(titles))),
        ("notions", tuple(say(f"notion.{key}") for key in keys("notion") if key in notions)),
    )


def _drafting_tools(record: StepRecord) -> tuple[str, ...]:
    """Pencil, ruler and set square always; the rest as the new lines ask for it."""
    parts = [part for _, _, path in record.new for part in path.curves]
    wanted = ["pencil", "ruler", "set_square"]
    wanted += ["curve"] if any(not isinstance(part, Line | Arc) for part in parts) else []
    wanted += ["compasses"] if any(isinstance(part, Arc) for part in parts) else []
    return tuple(say(f"player.shots_{key}") for key in wanted)
