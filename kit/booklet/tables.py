"""The booklet's tables: sizes, finished measurements, the reader's choices, cloth to buy, what to cut."""

from __future__ import annotations

from collections.abc import Sequence
from functools import reduce

from kit.booklet.handover import Handover
from kit.booklet.measuring import named, said, used_measures
from kit.booklet.model import ClothAdvice, Table
from kit.cloth.cut_list import CutListRow, cut_list
from kit.cloth.needle import FINE_ROWS, NeedleSetting, setting_for
from kit.cloth.pieced import OVERLAP
from kit.language import keys, say
from kit.lesson.ease import ease
from kit.lesson.no_paper import no_paper
from kit.lesson.pattern import ParameterValue, Pattern
from kit.picture.stretch_gauge import RELAXED
from kit.piece.piece import Strip
from kit.proof.texts import named_by
from kit.prose import tools
from kit.prose.by_measures import measured_marks, measured_size
from kit.prose.readings import shown
from kit.rulers import ruling
from kit.units import System, both, percent, plain, show, stacked
from kit.wear.finished import Fitted, fitted
from kit.wording.lists import listed, strung, two_sentences
from kit.wording.notion_sizes import sized
from kit.wording.worded import worded


def drafted_note(system: System, size: str, person: str) -> str:
    """Under the chart of sizes: how it is read, and for whom the booklet is drafted, a `size` or else a `person`."""
    if size:
        return say("booklet.drafted_for_size", order=_order(system), size=size)
    return say("booklet.drafted_for_body", order=_order(system), name=person)


def _order(system: System) -> str:
    """Which system stands above in a chart; "" where there is one."""
    return say(f"booklet.{system}_alone" if ruling().alone else f"booklet.{system}_above")


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
        rows.append(
            (
                said(name, given.pattern.lesson.measurements),
                *("–" if value is None else stacked(value, system) for value in by_size),
            )
        )
    sizes = [row.name for row in given.chart]
    mine = given.pattern.body.name
    note = drafted_note(system, mine if mine in sizes else "", mine)
    marked = sizes.index(mine) if mine in sizes else -1
    return Table(say("booklet.body_measurements"), (say("booklet.size"), *sizes), tuple(rows), marked, note, "chart")


def body_table(given: Handover) -> Table | None:
    """Those of the reader's own measurements that the lesson uses, estimates said so; None when the body is a
    size of the chart."""
    body, system = given.pattern.body, given.pattern.lesson.units
    if any(row.name == body.name for row in given.chart) and not body.estimated:
        return None
    own = given.pattern.lesson.measurements
    wanted = set(used_measures(given)) or {measure.name for measure in body.measures}
    used = [measure for measure in body.measures if measure.name in wanted]
    if not used:
        return None
    rows = tuple(
        (
            said(m.name, own),
            both(m.value, system, "draft"),
            say("booklet.estimated" if m.estimated else "booklet.measured"),
        )
        for m in used
    )
    note = ""
    if any(measure.estimated for measure in used):
        names = listed([named(m.name, own) for m in used if m.estimated])
        note = say("booklet.estimated_note", names=names)
    head = (say("booklet.measurement"), say("booklet.value"), "")
    return Table(say("booklet.measurements_of", name=body.name), head, rows, note=note)


def finished_table(given: Handover) -> Table | None:
    """Finished measurements in every size the lesson can be drafted in."""
    pattern, system = given.pattern, given.pattern.lesson.units
    if not pattern.finished:
        return None
    titles = [title for title, _ in pattern.finished]
    sizes = [row.name for row in given.chart]
    if pattern.body.name not in sizes:
        plain = tuple((title, both(value, system, "finished")) for title, value in pattern.finished)
        return Table(say("booklet.finished"), (say("booklet.garment"), say("booklet.finished_value")), plain)
    worn = {row.name: dict(row.worn) for row in given.chart}
    rows = tuple(
        (title, *(_measured(dict(row.finished).get(title), system) for row in given.chart)) for title in titles
    )
    rows += tuple(
        (row.title, *(_measured(worn[size].get(row.measure), system) for size in sizes)) for row in steady(given)
    )
    note = _order(system)
    refused = [row for row in given.chart if row.trouble]
    if refused:
        note = say("booklet.not_in_sizes", order=note, sizes=listed([row.name for row in refused]))
    marked = sizes.index(pattern.body.name)
    return Table(say("booklet.finished"), (say("booklet.garment"), *sizes), rows, marked, note, "chart")


def steady(given: Handover) -> tuple[Fitted, ...]:
    """The girths that the garment has by itself, but for those that some size lacks: there the body's level runs into
    the curve under the arm, and what is measured beside it goes up and down with that curve and not with the body."""
    drafted = [dict(row.worn) for row in given.chart if row.worn]
    return tuple(row for row in fitted(given.pattern) if all(row.measure in worn for worn in drafted))


def _measured(value: float | None, system: System) -> str:
    return "–" if value is None else stacked(value, system, "finished")


def ease_table(pattern: Pattern, own_girths: Sequence[Fitted] | None = None) -> Table | None:
    """How much larger than the body the garment is: for the lesson's measurements that say what they go over, and for
    those that the garment has by itself (`own_girths`; None: all of them)."""
    system = pattern.lesson.units
    own = pattern.lesson.own or system
    rows = tuple(
        (
            title,
            said(over, pattern.lesson.measurements),
            both(pattern.body[over], system),
            both(_ease(pattern, title, over, own), system),
        )
        for title, over, _ in ease(pattern)
    )
    rows += tuple(
        (
            row.title,
            said(row.measure),
            both(pattern.body[row.measure], system),
            both(shown(row.girth, own, finished=True) - shown(pattern.body[row.measure], own), system),
        )
        for row in (fitted(pattern) if own_girths is None else own_girths)
    )
    if not rows:
        return None
    head = tuple(say(f"booklet.{key}") for key in ("garment", "goes_over", "body_value", "ease_value"))
    fit = say(f"booklet.fit_{pattern.lesson.fit}") if pattern.lesson.fit else ""
    note = " ".join(filter(None, (say("booklet.ease_note"), fit)))
    return Table(say("booklet.ease"), head, rows, note=note, kind="plain ease")


def _ease(pattern: Pattern, title: str, over: str, own: System) -> float:
    """What the printed body measurement lacks of the printed finished one."""
    return shown(dict(pattern.finished)[title], own, finished=True) - shown(pattern.body[over], own)


def choice_table(pattern: Pattern) -> Table | None:
    """The parameters as this booklet was drafted with them."""
    if not pattern.values:
        return None
    system = pattern.lesson.units
    rows = tuple(
        (said(value.label), number(value.value, value.kind, system), _range(value, system), _reason(value, system))
        for value in pattern.values
    )
    head = tuple(say(f"booklet.{key}") for key in ("choice", "here", "range", "why"))
    return Table(say("booklet.choices"), head, rows, kind="plain choices")


def _reason(value: ParameterValue, system: System) -> str:
    """Why there is this choice, and what of the body it follows from."""
    follows = worded(value.follows, system) if value.follows else ""
    return two_sentences(value.why, follows)


def number(value: float, kind: str, system: System) -> str:
    """A parameter's or measure's value as people read it."""
    if kind == "share":
        return percent(value)
    if kind == "count":
        return f"{value:.0f}"
    return both(value, system)


def _range(value: ParameterValue, system: System) -> str:
    if value.kind == "length":
        return say("booklet.from_to", least=show(value.least, system), most=show(value.most, system))
    least, most = (number(end, value.kind, system) for end in (value.least, value.most))
    return say("booklet.from_to", least=least, most=most)


def cloth(pattern: Pattern, lengths: Table | None, by_size: tuple[Table, ...]) -> ClothAdvice:
    """What to buy and bring: the lesson's advice on cloth, the tables of lengths, notions and tools."""
    info = pattern.lesson
    given = [(key, getattr(info, key)) for key in ("fibre", "weight", "drape", "avoid", "prewash")]
    advice = [(say(f"booklet.{key}"), text) for key, text in given if text]
    if "cloth" in info.handling and (setting := setting_for(info.weight)):
        advice.append((say("booklet.needle"), _needle(setting, info.units)))
    advice += _stretch(pattern)
    return ClothAdvice(info.cloth, tuple(advice), lengths, by_size, _notions(pattern), tuple(tools(pattern)))


def _stretch(pattern: Pattern) -> list[tuple[str, str]]:
    """How far the cloth must stretch, how that is measured, and how such cloth is sewn."""
    info = pattern.lesson
    if not info.stretch and not info.stretch_along:
        return []
    ends = (RELAXED, RELAXED * (1.0 + info.stretch))
    relaxed, stretched = (both(mm, info.units) for mm in ends)
    said = []
    if info.stretch:
        share = percent(info.stretch)
        said.append(say("booklet.stretch_across", relaxed=relaxed, stretched=stretched, share=share))
    if info.stretch_along:
        said.append(say("booklet.stretch_along", share=percent(info.stretch_along)))
    return [
        (say("booklet.stretch"), " ".join(said)),
        (say("booklet.stretch_sewing"), say("booklet.stretch_seams")),
    ]


def _needle(setting: NeedleSetting, system: System) -> str:
    """Needle and stitch in a sentence, and what fine cloth wants besides."""
    ends = [list(dict.fromkeys(each)) for each in (setting.needle, [plain(value) for value in setting.stitch])]
    needle, stitch = (say("booklet.from_to", least=e[0], most=e[1]) if len(e) > 1 else e[0] for e in ends)
    said = say("booklet.needle_for", needle=needle, stitch=stitch)
    if not setting.fine:
        return said
    near, far = (both(mm, system, "allowance") for mm in FINE_ROWS)
    return f"{said} {say('booklet.fine_seams', near=near, far=far)}"


def _notions(pattern: Pattern) -> tuple[str, ...]:
    """The lesson's own notions, then what its operations use up and the lesson does not name."""
    own = pattern.lesson.notions
    named = " ".join(own).lower()
    wanted = {need for record in pattern.sewing for operation in record.operations for need in operation.notions}
    more = [need for need in keys("notion") if need in wanted and not any(word in named for word in named_by(need))]
    system = pattern.lesson.units
    return (*(sized(text, system) for text in own), *(say(f"notion.{need}") for need in more))


def cut_sentence(cut: CutListRow, system: System = "cm") -> str:
    """'Cut 2 of main cloth and 2 of interfacing, as mirrored pairs' and its like."""
    values = {"count": cut.count, "interfacing": cut.interfacing, "edge": cut.edge}
    values["cloth"] = say(f"booklet.of_{cut.cloth}")
    if cut.how == "fold":
        key = "cut_fold"
    elif cut.how == "pair" and cut.count > 1:
        key = "cut_pairs" if cut.count > 2 or cut.interfacing > 1 else "cut_pair"
    elif cut.how == "right_side_up":
        key = "cut_face_up"
    elif cut.how == "strip" and cut.square:
        key = "cut_continuous"
    elif cut.how == "strip" and cut.joins:
        key, values["lengths"] = "cut_joined", cut.joins + 1
    else:
        key = "cut"
    said = say(f"booklet.{key}{'_interfaced' if cut.interfacing else ''}", values)
    return say("booklet.cut_in_two", said=said, overlap=both(OVERLAP, system, "allowance")) if cut.in_two else said


def cut_table(pattern: Pattern) -> Table:
    """The cut list of pieces and strips."""
    rows = tuple((str(cut.number), cut.title, cut_sentence(cut, pattern.lesson.units)) for cut in cut_list(pattern))
    head = (say("booklet.no"), say("booklet.piece"), say("booklet.to_cut"))
    return Table(say("booklet.cut_list"), head, rows, kind="plain cutlist")


def measured_table(pattern: Pattern) -> Table | None:
    """Pieces that are cut by their measures: how many, their size as cut, and what is marked on them."""
    system = pattern.lesson.units
    cuts = {(cut.number, cut.title): cut for cut in cut_list(pattern)}
    rows = tuple(
        (
            str(piece.number),
            piece.title,
            cut_sentence(cuts[piece.number, piece.title], system),
            measured_size(piece, system),
            reduce(two_sentences, measured_marks(piece, pattern)),
        )
        for piece in no_paper(pattern)
    )
    if not rows:
        return None
    head = tuple(say(f"booklet.{key}") for key in ("no", "piece", "to_cut", "strip_size", "without_paper_marks"))
    return Table(say("booklet.without_paper"), head, rows, note=say("booklet.without_paper_note"))


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
            strip_size(strip, system),
            say("booklet.wide", width=both(strip.finished_width, system)) if strip.finished_width else "",
        )
        for strip in pattern.strips
    )
    mixed = {strip.grain for strip in pattern.strips} - {"lengthwise"}
    note = say("booklet.strips_note_mixed" if mixed else "booklet.strips_note")
    head = tuple(say(f"booklet.{key}") for key in ("no", "strip", "to_cut", "strip_size", "finished_value"))
    return Table(say("booklet.strips"), head, rows, note=note)


def strip_size(strip: Strip, system: System) -> str:
    """The size a strip is cut in, and what more is said of it: its grain, its joins, the square it comes from."""
    size = say("booklet.length_by_width", length=both(strip.cut_length, system), width=both(strip.width, system))
    found = [size] + ([] if strip.grain == "lengthwise" else [say(f"booklet.strip_{strip.grain}")])
    seams = both(strip.join_allowance, system, "allowance")
    if strip.square:
        found.append(say("booklet.strip_square", square=both(strip.square, system), seams=seams))
    elif strip.joins:
        key = f"strip_pieced_{strip.join}" + ("_each" if strip.count > 1 else "")
        found.append(say(f"booklet.{key}", joins=strip.joins, seams=seams))
    return strung(found, "parted")
