"""Pieces of HTML shown under cells and on the panel. Whatever comes from a lesson is escaped here."""

from __future__ import annotations

import linecache
import re
import traceback
from collections.abc import Callable, Iterable, Sequence
from html import escape
from pathlib import Path

from kit.body.measures import said
from kit.errors import KitError
from kit.language import say
from kit.lesson.ease import ease
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.picture.drawing import Drawing
from kit.picture.svg_pen import svg
from kit.proof.finding import Finding
from kit.sewing.seam_walk import Walk
from kit.units import System, both
from kit.wear.finished import fitted
from kit.wording.lists import strung

STEP_WIDTH, STEP_HEIGHT = 620.0, 490.0
"""Room of a step's picture, px: with its sentence beside it, the picture and some twenty lines of code stand in one
view of a screen of 1920 x 1080."""
SCENE_WIDTH = 460.0
_WHERE = (560.0, 600.0)
_KIT = str(Path(__file__).resolve().parents[1])
_PICTURED = 8  # findings that bring their picture along

_BOX = (
    "margin:4px 0;padding:8px 12px;border-left:4px solid {edge};background:{ground};color:#222;"
    "border-radius:3px;line-height:1.4;max-width:46em"
)
_OLD = (
    "position:absolute;z-index:1;top:0;left:0;padding:2px 10px;background:#fdf1e3;color:#222;"
    "border-left:4px solid #b3541e;border-radius:3px;font-size:90%"
)
_QUIET = "opacity:.75;font-size:90%"


def picture(drawing: Drawing, width: float, height: float | None = None) -> str:
    """`drawing` as SVG that shrinks where there is less room."""
    return svg(drawing, width, height).replace("<svg ", '<svg style="max-width:100%;height:auto" ', 1)


def height(html: str) -> float:
    """How high (px) a picture is where it has its full width."""
    found = re.search(r'<svg [^>]*?height="([\d.]+)"', html)
    return float(found[1]) if found else 0.0


def message(text: str) -> str:
    """A calm box that says what is wrong and what to do."""
    return _box(escape(text), "#b3541e", "#fdf1e3") if text else ""


def sentence(text: str) -> str:
    """A sentence beside a button."""
    return f'<div style="line-height:1.35;max-width:40em">{escape(text)}</div>'


def notes(texts: Iterable[str]) -> str:
    """Things worth knowing, in one box; nothing for none."""
    lines = [f"<div>{escape(text)}</div>" for text in texts if text]
    return _box("".join(lines), "#3b6ea5", "#eaf2fa") if lines else ""


def dimmed(html: str) -> str:
    """What was last shown while something is in the way of something newer."""
    return f'<div style="opacity:.35" aria-hidden="true">{html}</div>'


def old(html: str) -> str:
    """The last good picture, saying over it that it is old; it keeps its place and its height."""
    said = escape(say("panel.old_picture"))
    told = f'<div style="{_OLD}">{said}</div>'
    return f'<div class="lessonkit-old" style="position:relative">{told}{dimmed(html)}</div>'


def plain(error: Exception) -> str:
    """Any error in words: a `KitError` as it stands, with the line of the teacher's code that caused it."""
    if not isinstance(error, KitError):
        return say("panel.kit_wrong", kind=type(error).__name__, what=str(error))
    cause = error.__cause__
    if cause is None or cause.__traceback__ is None:
        return str(error)
    last = traceback.extract_tb(cause.__traceback__)[-1]
    for frame in reversed(traceback.extract_tb(cause.__traceback__)):
        if "ipykernel" in frame.filename or frame.filename.startswith("<"):
            last = frame
            break
    else:
        if last.filename.startswith(_KIT):
            return str(error)  # a line of the kit says nothing to the reader
    line = (last.line or linecache.getline(last.filename, last.lineno or 0)).strip()
    if not line:
        return str(error)
    return say("panel.line_of_cell", trouble=str(error), number=last.lineno or 0, line=line)


# ---- under a cell -----------------------------------------------------------------------------------------


def step(record: StepRecord, system: System) -> str:
    """A drafting step: title, words with their numbers, picture."""
    from kit.picture.draft import step_drawing
    from kit.prose import fill_words

    words = _paragraphs(fill_words(record.text, record.values, system))
    drawn = picture(step_drawing(record, system), STEP_WIDTH, STEP_HEIGHT)
    return _titled(record.title, _beside(words, drawn))


def sew_step(record: SewRecord, pattern: Pattern, system: System) -> str:
    """A sewing step: title, the teacher's words, each operation's sentences and pictures."""
    from kit.picture.sewing import scene_drawing
    from kit.prose import fill_words, sentences, whys
    from kit.sewing.in_work import shown_scenes

    own = _paragraphs(fill_words(record.text, record.values, system))
    body = "" if record.words == "after" else own
    for operation in record.operations:
        if record.words != "instead":
            body += f"<p>{escape(' '.join(sentences(pattern, operation, system)))}</p>"
        if pattern.lesson.whys and operation.whys(pattern):
            body += f"<p><em>{escape(' '.join(whys(pattern, operation, system)))}</em></p>"
        drawings = [scene_drawing(scene, pattern, system) for scene in shown_scenes(pattern, operation)]
        if drawings:
            shown = "".join(f"<div>{picture(drawing, SCENE_WIDTH)}</div>" for drawing in drawings)
            body += f'<div style="display:flex;flex-wrap:wrap;gap:12px">{shown}</div>'
    return _titled(record.title, body + (own if record.words == "after" else ""))


def one_finished(title: str, value: float, system: System) -> str:
    """A finished measurement under the cell that defines it."""
    size = escape(both(value, system, "finished"))
    return f"<p>{escape(say('panel.cell_finished', title=title))} <strong>{size}</strong></p>"


def walk(walked: Walk, system: System) -> str:
    """Two edges walked: the picture, and in words every place with its difference."""
    from kit.picture.walk import walk_drawing, walk_title, walk_words

    words = "".join(f"<li>{escape(line)}</li>" for line in walk_words(walked, system)[1:])
    body = picture(walk_drawing(walked, system), STEP_WIDTH)
    return _titled(walk_title(walked), f'{body}<ul style="max-width:46em;list-style:none;padding:0">{words}</ul>')


def walk_text(walked: Walk, system: System) -> str:
    """The same in words alone, a line each."""
    from kit.picture.walk import walk_words

    return "\n".join(walk_words(walked, system))


# ---- on the panel -----------------------------------------------------------------------------------------


def finished(pattern: Pattern, system: System) -> str:
    """Finished measurements as a small table, with the ease of those that go over a body measurement: the lesson's own
    and those that the garment has by itself."""
    eased = {title: (over, value) for title, over, value in ease(pattern)}
    rows = [
        (title, both(value, system, "finished"), _ease(eased.get(title), system)) for title, value in pattern.finished
    ]
    rows += [
        (row.title, both(row.girth, system, "finished"), _ease((row.measure, row.ease), system))
        for row in fitted(pattern)
    ]
    return heading(say("panel.finished")) + table(rows) if rows else ""


def table(rows: Iterable[tuple[str, str, str]]) -> str:
    """Rows of a name, a figure and a quiet word beside it."""
    cells = "".join(
        f'<tr><th scope="row" style="text-align:left;font-weight:normal;padding:1px 16px 1px 0">{escape(name)}</th>'
        f'<td style="text-align:left;padding:1px 0">{escape(figure)}</td>'
        f'<td style="text-align:left;padding:1px 0 1px 16px;{_QUIET}">{escape(word)}</td></tr>'
        for name, figure, word in rows
    )
    return f'<table style="border-collapse:collapse;white-space:nowrap">{cells}</table>'


def _ease(eased: tuple[str, float] | None, system: System) -> str:
    if eased is None:
        return ""
    over, value = eased
    key = "panel.ease" if value >= 0 else "panel.ease_less"
    return say(key, ease=both(abs(value), system, "finished"), over=said(over))


def figures(rows: Iterable[tuple[str, str, bool, str]]) -> str:
    """Rows of a name, a figure, whether it is an old one, and what is wrong with it."""
    cells = "".join(
        f'<tr><th scope="row" style="text-align:left;font-weight:normal;padding:1px 16px 1px 0">{escape(name)}</th>'
        f'<td title="{escape(trouble)}" style="text-align:left;padding:1px 0;min-width:11em'
        f'{";opacity:.5" if old else ""}">{escape(figure)}</td></tr>'
        for name, figure, old, trouble in rows
    )
    return f'<table style="border-collapse:collapse;white-space:nowrap">{cells}</table>'


def checking(before: str = "") -> str:
    """The proof is being worked; what it last said (`before`, its HTML) stands by, dimmed."""
    waiting = f'<span style="font-weight:normal;{_QUIET}">{escape(say("panel.checking"))}</span>'
    return f"{_heading(say('panel.proof'), waiting)}{dimmed(before) if before else ''}"


Depends = Callable[[Finding], Sequence[str]]


def findings(
    found: Sequence[Finding],
    pattern: Pattern | None = None,
    system: System = "cm",
    depends: Depends | None = None,
) -> str:
    """What the proof found, under its heading."""
    return proved(proof(found, pattern, system, depends))


def proved(html: str) -> str:
    """What the proof found (HTML), under its heading."""
    return heading(say("panel.proof")) + html


def proof(
    found: Sequence[Finding],
    pattern: Pattern | None = None,
    system: System = "cm",
    depends: Depends | None = None,
) -> str:
    """What the proof found, in the proof's own order. With its pattern the first ones can be unfolded to show where;
    `depends` gives the labels of the parameters a finding depends on."""
    sound = not any(finding.level != "note" for finding in found)
    passed = f"<div>{escape(say('panel.passed'))}</div>" if sound else ""
    if not found:
        return passed
    lines = []
    for number, finding in enumerate(found):
        word = say("panel.finding", level=say(f"panel.level_{finding.level}"))
        where = _where(finding, pattern, system) if pattern is not None and number < _PICTURED else ""
        names = depends(finding) if depends is not None and finding.level != "note" else ()
        leads = f'<div style="{_QUIET}">{escape(say("panel.depends", names=strung(names)))}</div>' if names else ""
        lines.append(
            f'<li style="margin:3px 0;line-height:1.35"><strong style="color:{LEVELS[finding.level]}">{escape(word)}'
            f"</strong> {escape(str(finding))}{leads}{where}</li>"
        )
    return f'{passed}<ul style="margin:0;padding-left:1.2em;max-width:40em">{"".join(lines)}</ul>'


def _where(finding: Finding, pattern: Pattern, system: System) -> str:
    from kit.picture.finding import finding_drawing

    drawing = finding_drawing(finding, pattern, system)
    if drawing is None:
        return ""
    return f"<details><summary>{escape(say('panel.show_where'))}</summary>{picture(drawing, *_WHERE)}</details>"


LEVELS = {"error": "#b3541e", "warning": "#8a6d00", "note": "#3b6ea5"}
"""The colour of each level of finding."""


def heading(text: str) -> str:
    """What stands over a part of the panel."""
    return _heading(text)


def _heading(text: str, beside: str = "") -> str:
    return f'<div style="font-weight:600;margin:6px 0 2px 0">{escape(text)} {beside}</div>'


def _titled(title: str, body: str) -> str:
    return f'<div style="max-width:1000px"><div style="font-weight:600">{escape(title)}</div>{body}</div>'


def _beside(words: str, drawn: str) -> str:
    """Words and a picture beside each other, or one beneath the other where there is no room."""
    return (
        '<div style="display:flex;flex-wrap:wrap;gap:0 24px;align-items:flex-start">'
        f'<div style="flex:1 1 320px;min-width:0">{words}</div>'
        f'<div style="flex:0 1 {STEP_WIDTH:.0f}px;min-width:0">{drawn}</div></div>'
    )


def _paragraphs(text: str) -> str:
    blocks = [" ".join(block.split()) for block in text.split("\n\n")]
    return "".join(f'<p style="max-width:46em">{escape(block)}</p>' for block in blocks if block)


def _box(html: str, edge: str, ground: str) -> str:
    return f'<div role="status" style="{_BOX.format(edge=edge, ground=ground)}">{html}</div>'
