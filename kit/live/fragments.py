"""Pieces of HTML shown under cells and on the panel. Whatever comes from a lesson is escaped here."""

from __future__ import annotations

import linecache
import traceback
from collections.abc import Iterable, Sequence
from html import escape

from kit.errors import KitError
from kit.lesson.pattern import Pattern, SewRecord, StepRecord
from kit.picture.drawing import Drawing
from kit.picture.svg_pen import svg
from kit.proof.finding import Finding
from kit.sewing.walked import Walk
from kit.units import System, both

STEP_WIDTH = 620.0
SCENE_WIDTH = 460.0
_WHERE = (560.0, 600.0)
_PICTURED = 8  # findings that bring their picture along

_BOX = (
    "margin:4px 0;padding:8px 12px;border-left:4px solid {edge};background:{ground};color:#222;"
    "border-radius:3px;line-height:1.4;max-width:46em"
)
_QUIET = "opacity:.75;font-size:90%"


def picture(drawing: Drawing, width: float, height: float | None = None) -> str:
    """`drawing` as SVG that shrinks where there is less room."""
    return svg(drawing, width, height).replace("<svg ", '<svg style="max-width:100%;height:auto" ', 1)


def message(text: str) -> str:
    """A calm box that says what is wrong and what to do."""
    return _box(escape(text), "#b3541e", "#fdf1e3") if text else ""


def notes(texts: Iterable[str]) -> str:
    """Things worth knowing, in one box; nothing for none."""
    lines = [f"<div>{escape(text)}</div>" for text in texts if text]
    return _box("".join(lines), "#3b6ea5", "#eaf2fa") if lines else ""


def dimmed(html: str) -> str:
    """The last good picture while something is in the way of a newer one."""
    return f'<div style="opacity:.35" aria-hidden="true">{html}</div>'


def plain(error: Exception) -> str:
    """Any error in words: a `KitError` as it stands, with the line of the teacher's code that caused it."""
    if not isinstance(error, KitError):
        return (
            f"Something in the kit itself went wrong ({type(error).__name__}: {error}). "
            "Your values are kept. Move the value you changed last back, and run the cell again."
        )
    cause = error.__cause__
    if cause is None or cause.__traceback__ is None:
        return str(error)
    last = traceback.extract_tb(cause.__traceback__)[-1]
    for frame in reversed(traceback.extract_tb(cause.__traceback__)):
        if "ipykernel" in frame.filename or frame.filename.startswith("<"):
            last = frame
            break
    line = (last.line or linecache.getline(last.filename, last.lineno or 0)).strip()
    return f"{error} (Line {last.lineno} of the cell: {line})" if line else str(error)


# ---- under a cell -----------------------------------------------------------------------------------------


def step(record: StepRecord, system: System) -> str:
    """A drafting step: title, words with their numbers, picture."""
    from kit.picture.draft import step_drawing
    from kit.prose import fill_words

    words = fill_words(record.text, record.values, system)
    return _titled(record.title, _paragraphs(words) + picture(step_drawing(record, system), STEP_WIDTH))


def sew_step(record: SewRecord, pattern: Pattern, system: System) -> str:
    """A sewing step: title, the teacher's words, each operation's sentences and pictures."""
    from kit.picture.sewing import scene_drawing
    from kit.prose import fill_words, sentences, whys

    own = _paragraphs(fill_words(record.text, record.values, system))
    body = "" if record.words == "after" else own
    for operation in record.operations:
        if record.words != "instead":
            body += f"<p>{escape(' '.join(sentences(pattern, operation, system)))}</p>"
        if pattern.lesson.whys and operation.whys(pattern):
            body += f"<p><em>{escape(' '.join(whys(pattern, operation, system)))}</em></p>"
        drawings = [scene_drawing(scene, pattern, system) for scene in operation.scenes(pattern)]
        if drawings:
            shown = "".join(f"<div>{picture(drawing, SCENE_WIDTH)}</div>" for drawing in drawings)
            body += f'<div style="display:flex;flex-wrap:wrap;gap:12px">{shown}</div>'
    return _titled(record.title, body + (own if record.words == "after" else ""))


def one_finished(title: str, value: float, system: System) -> str:
    """A finished measurement under the cell that defines it."""
    return f"<p>{escape(title)}: <strong>{escape(both(value, system, 'finished'))}</strong></p>"


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


def finished(values: Sequence[tuple[str, float]], system: System) -> str:
    """Finished measurements as a small table."""
    if not values:
        return ""
    rows = "".join(
        f'<tr><th scope="row" style="text-align:left;font-weight:normal;padding:1px 16px 1px 0">{escape(title)}</th>'
        f'<td style="text-align:left;padding:1px 0">{escape(both(value, system, "finished"))}</td></tr>'
        for title, value in values
    )
    return f'{_heading("Finished measurements")}<table style="border-collapse:collapse">{rows}</table>'


def checking() -> str:
    return f'{_heading("Proof")}<div style="{_QUIET}">Checking …</div>'


def findings(found: Sequence[Finding], pattern: Pattern | None = None, system: System = "cm") -> str:
    """What the proof found, in the proof's own order. With its pattern the first ones can be unfolded to show where."""
    passed = "" if any(finding.level != "note" for finding in found) else "<div>Every check passed.</div>"
    if not found:
        return f"{_heading('Proof')}{passed}"
    lines = []
    for number, finding in enumerate(found):
        word, colour = _LEVELS[finding.level]
        where = _where(finding, pattern, system) if pattern is not None and number < _PICTURED else ""
        lines.append(
            f'<li style="margin:3px 0;line-height:1.35"><strong style="color:{colour}">{word}.</strong> '
            f"{escape(str(finding))}{where}</li>"
        )
    listed = f'<ul style="margin:0;padding-left:1.2em;max-width:40em">{"".join(lines)}</ul>'
    return f"{_heading('Proof')}{passed}{listed}"


def _where(finding: Finding, pattern: Pattern, system: System) -> str:
    from kit.picture.finding import finding_drawing

    drawing = finding_drawing(finding, pattern, system)
    if drawing is None:
        return ""
    return f"<details><summary>Show where</summary>{picture(drawing, *_WHERE)}</details>"


_LEVELS = {"error": ("To put right", "#b3541e"), "warning": ("Look again", "#8a6d00"), "note": ("Note", "#3b6ea5")}


def _heading(text: str) -> str:
    return f'<div style="font-weight:600;margin:6px 0 2px 0">{text}</div>'


def _titled(title: str, body: str) -> str:
    return f'<div style="max-width:1000px"><div style="font-weight:600">{escape(title)}</div>{body}</div>'


def _paragraphs(text: str) -> str:
    blocks = [" ".join(block.split()) for block in text.split("\n\n")]
    return "".join(f'<p style="max-width:46em">{escape(block)}</p>' for block in blocks if block)


def _box(html: str, edge: str, ground: str) -> str:
    return f'<div role="status" style="{_BOX.format(edge=edge, ground=ground)}">{html}</div>'
