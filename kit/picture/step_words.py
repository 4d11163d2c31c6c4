"""What a drafting picture shows, in words: its alternative text, from the same record as its lines."""

from __future__ import annotations

from kit.language import called, say
from kit.lesson.pattern import StepRecord
from kit.picture.step_texts import measured, shown_value
from kit.prose.hand_said import hand_said
from kit.units import System, show
from kit.wording.lists import listed
from kit.wording.names import edge_label


def step_alt(record: StepRecord, system: System = "cm", both: bool = False) -> str:
    """What the step's picture shows, in words: pieces, new lines and points, measures, what is taken away."""
    parts = [say("picture.step_title", title=record.title)]
    titles = [piece.title or called(piece.name) for piece in record.pieces]
    if titles:
        parts.append(say("picture.step_pieces", pieces=listed(titles)))
    labels = _edge_labels(record)
    new = [_line_on(labels.get((piece, name), called(name)), piece) for piece, name, _ in record.new]
    if new:
        parts.append(say("picture.step_new", lines=listed(new)))
    points = [called(name) for _, name, _ in record.new_points]
    if points:
        parts.append(say("picture.step_points", points=listed(points)))
    parts += hand_said(record)
    if record.spots:
        said = [measured(spot, record, shown_value(spot, system, both)) for spot in record.spots]
        parts.append(say("picture.step_measures", measures=listed(said)))
    marks = [_line_on(mark.label, piece) for piece, mark in record.new_marks]
    marks += [
        say("picture.notch_on", kind=notch.kind, edge=called(notch.edge), piece=called(piece))
        for piece, notch in record.new_notches
    ]
    if marks:
        parts.append(say("picture.step_marked", marks=listed(marks)))
    if record.allowed:
        parts.append(say("picture.step_cut_line", pieces=listed([called(name) for name in record.allowed])))
    gone = [_line_on(called(name), piece) for piece, name, _ in record.removed]
    if gone:
        parts.append(say("picture.step_removed", lines=listed(gone)))
    for strip in record.strips:
        length, width = show(strip.length, system), show(strip.width, system)
        parts.append(say("picture.step_strip", strip=strip.title, length=length, width=width))
    return " ".join(parts)


def _line_on(line: str, piece: str) -> str:
    return say("picture.line_on", line=line, piece=called(piece))


def _edge_labels(record: StepRecord) -> dict[tuple[str, str], str]:
    return {(piece.name, edge.name): edge_label(edge) for piece in record.pieces for edge in piece.edges}
