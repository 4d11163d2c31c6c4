"""Alternative texts of pictures, from the same records as the pictures and sentences."""

from __future__ import annotations

from collections import Counter
from typing import TYPE_CHECKING

from kit.language import called
from kit.prose.hand_said import hand_said
from kit.prose.phrases import phrase, say, word
from kit.prose.say import edges_said
from kit.prose.step_measures import place_said
from kit.sewing.cut import Cut
from kit.sewing.in_work import shown_scenes
from kit.sewing.operation import Operation
from kit.sewing.scene import Layer, Row, Scene
from kit.units import System, both, percent
from kit.wording.lists import listed
from kit.wording.names import edge_said, title_said

if TYPE_CHECKING:
    from kit.lesson.pattern import StepRecord


def operation_alt(pattern: Cut, operation: Operation, system: System = "cm") -> str:
    """What an operation's pictures show, stage by stage."""
    return " ".join(scene_alt(pattern, scene, system) for scene in shown_scenes(pattern, operation))


def scene_alt(pattern: Cut, scene: Scene, system: System = "cm") -> str:
    """What one picture shows: the layers from the bottom up, the rows, the folds."""
    if scene.recut is not None:
        key = "recut" if scene.recut.edges else "trim_extra"
        return say(f"picture.{key}_alt", {"piece": pattern.piece(scene.recut.now.name).title})
    if scene.worn:
        return " ".join(say(f"picture.tried_on_{key}", {}) for key in ("alt", "level") if key == "alt" or scene.pins)
    found: list[str] = []
    for layer in scene.layers:
        found += _layer(pattern, layer, first=layer is scene.layers[0], system=system)
    found += [say("alt.pinned", {"edge": edges_said(pattern, (run,), system)}) for run in scene.pins]
    for row in scene.rows:
        found += _row(pattern, row, system)
    for kind, count in Counter(thing.kind for thing in scene.things).items():
        thing = word(f"thing.{kind}")
        key = "alt.thing" if count == 1 else "alt.things"
        found.append(say(key, {"thing": thing, "count": count}))
    if scene.strip:
        found.append(say("alt.strip", {"strip": title_said(pattern.strip(scene.strip).title)}))
    if scene.section is not None:
        found.append(say("alt.section", {}))
    return " ".join(found)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def _layer(pattern: Cut, layer: Layer, *, first: bool, system: System) -> list[str]:
    piece = pattern.piece(layer.run.piece)
    title = title_said(piece.title)
    if layer.stuff == "interfacing":
        name = word("stuff.interfacing")
    elif layer.run.side and piece.cut.mirrored:
        name = phrase("piece_on_side", side=word(layer.run.side), piece=title)
    else:
        name = phrase("piece", piece=title)
    values = {
        "piece": _capital(name),
        "face": word(f"{'interfacing' if layer.stuff == 'interfacing' else 'face'}.{layer.up}"),
        "edge": edges_said(pattern, (layer.run,), system),
    }
    key = "bottom" if first or layer.on is None else layer.how
    found = [say(f"alt.{key}", values)]
    for edge, depth in layer.turn:
        found.append(
            say(
                "alt.turned",
                {"edge": edge_said(piece.edge(edge)), "depth": both(depth, system, "allowance")},
            )
        )
    if layer.fold is not None:
        found.append(say("alt.folded", values))
    return found


def _row(pattern: Cut, row: Row, system: System) -> list[str]:
    values = {
        "edge": edges_said(pattern, (row.run,), system),
        "inset": both(abs(row.inset), system, "allowance"),
    }
    if row.ink == "old":
        return [say("alt.old_row", values)]
    if row.line is not None or row.style in ("baste", "gather", "hand", "box"):
        return [say(f"alt.row_{row.style}" if row.line is None else "alt.row_line", values)]
    key = "row" if abs(row.inset) < 0.5 else "row_inside" if row.inset > 0 else "row_outside"
    found = [say(f"alt.{key}", values)]
    if row.gap is not None:
        found.append(say("alt.gap", {"gap": both(row.gap[1] - row.gap[0], system)}))
    return found


def step_alt(step: StepRecord, system: System = "cm") -> str:
    """What a drafting step's picture shows: its pieces, what is new, what was taken away, the measures."""
    names = [phrase("piece", piece=title_said(piece.title)) for piece in step.pieces]
    found = [say("alt.draft", {"pieces": listed(names)})] if names else []
    if step.strips:
        strips = [title_said(strip.title) for strip in step.strips]
        found.append(say("alt.draft_strips", {"strips": listed(strips)}))
    labels = {(piece.name, edge.name): edge_said(edge) for piece in step.pieces for edge in piece.edges}

    def lines(records: tuple[tuple[str, str, object], ...]) -> str:
        return listed([labels.get((piece, name), called(name)) for piece, name, _ in records])

    if step.new:
        found.append(say("alt.draft_new", {"lines": lines(step.new)}))
    if step.removed:
        found.append(say("alt.draft_removed", {"lines": lines(step.removed)}))
    if step.new_points:
        found.append(say("alt.draft_points", {"points": lines(step.new_points)}))
    found += hand_said(step)
    measures = []
    for spot in step.spots:
        value = _spot_value(spot.value, spot.kind, system)
        measures.append(say("alt.draft_measure", {"name": place_said(spot, step.pieces), "value": value}))
    if measures:
        found.append(say("alt.draft_measures", {"measures": listed(measures)}))
    return " ".join(found)


def _spot_value(value: float, kind: str, system: System) -> str:
    if kind == "share":
        return percent(value)
    return f"{round(value)}" if kind == "count" else both(value, system)
