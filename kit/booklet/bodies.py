"""Many bodies: a lesson worked for each row of a table of measurements.

The notebook runs once; then its kernel works the lesson for the rows, some at a time, and a row that cannot be
drafted says why and never stops the rest. The table is read here, before anything runs: column names as in the
measurement table, and other words for the same tape. Bust girth (over the fullest part) and upper chest girth
(above it) are different tapes; a column that may mean either is refused.
"""

from __future__ import annotations

import csv
import io
import json
import re
from collections.abc import Callable, Mapping, Sequence
from contextlib import suppress
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Any, Literal

from kit.atomic import write_atomically
from kit.body.measures import MEASUREMENTS, said
from kit.booklet.run_notebook import read_notebook, run_and_ask
from kit.diagnostic import list_of, message, reading
from kit.diagnostic import measure as a_measure
from kit.errors import KitError, near
from kit.lesson.another import find_lesson
from kit.units import Length, parse

Unit = Literal["cm", "inch", "mm"]
MIMETYPE = "application/vnd.lessonkit.bodies+json"
_PORTION = 10  # rows worked at a time, so that progress shows
_REMEDIES = 3  # single values told for one body, at most

_NAMES = ("name", "label", "person", "id", "body", "student")
_SAME: Mapping[str, str] = {
    other: name
    for name, others in {
        "bust_girth": "bust full_bust full_bust_girth bust_circumference",
        "upper_chest_girth": "upper_chest high_bust high_bust_girth upper_bust upper_bust_girth above_bust",
        "under_bust_girth": "under_bust underbust underbust_girth rib_cage ribcage",
        "waist_girth": "waist natural_waist waist_circumference",
        "hip_girth": "hip hips full_hip full_hip_girth hip_circumference seat seat_girth",
        "neck_base_girth": "neck_base base_of_neck neck_base_circumference",
        "shoulder_length": "shoulder shoulder_seam neck_to_shoulder",
        "back_width": "across_back across_back_width cross_back",
        "front_width": "across_front across_front_width across_chest",
        "bust_point_width": "bust_point_to_bust_point bust_span",
        "back_waist_length": "back_length nape_to_waist back_neck_to_waist center_back_length centre_back_length",
        "front_waist_length": "front_length",
        "armscye_depth": "scye_depth armhole_depth",
        "waist_to_hip": "hip_depth",
        "upper_arm_girth": "upper_arm bicep biceps bicep_girth biceps_girth upper_arm_circumference",
        "elbow_girth": "elbow",
        "wrist_girth": "wrist wrist_circumference",
        "arm_length": "shoulder_to_wrist",
        "thigh_girth": "thigh thigh_circumference",
        "knee_girth": "knee knee_circumference",
        "calf_girth": "calf calf_circumference",
        "ankle_girth": "ankle ankle_circumference",
        "body_rise": "crotch_depth sitting_rise",
        "total_crotch_length": "crotch_length total_crotch",
        "inside_leg_length": "inside_leg inseam inside_leg_height crotch_height",
        "outside_leg_length": "outside_leg outseam side_length",
        "height": "stature body_height",
        "head_girth": "head head_circumference hat_size",
        "hand_girth": "hand hand_circumference palm_girth",
        "heel_girth": "heel heel_circumference heel_ankle_girth heel_and_instep foot_and_heel",
        "foot_girth": "foot foot_circumference ball_girth",
        "shoulder_girth": "shoulders shoulder_circumference",
    }.items()
    for other in others.split()
}
_UNCLEAR: Mapping[str, str] = {
    "neck": "around the middle of the neck, or its base (neck_base_girth)",
    "neck_girth": "around the middle of the neck, or its base (neck_base_girth)",
    "shoulder_width": "one shoulder (shoulder_length), or both from tip to tip",
    "rise": "sitting at the side (body_rise), or between the legs (total_crotch_length)",
    "sleeve_length": "of the arm (arm_length), or of a garment",
    "leg_length": "inside (inside_leg_length) or outside (outside_leg_length)",
}


@dataclass(frozen=True)
class PersonRow:
    """One person of the table: its `line` in the file, `name` (empty where the table gives none), `values` in mm by
    measurement, and the `trouble` that its cells make, empty when they can be read. `more` are cells of columns the kit
    does not know, read as lengths by their headings: a lesson may have measurements of its own."""

    line: int
    name: str
    values: tuple[tuple[str, float], ...]
    trouble: str = ""
    more: tuple[tuple[str, float], ...] = ()


@dataclass(frozen=True)
class People:
    """A table of bodies as read: its `rows`, which column was taken for which measurement (`taken`), and the
    columns left aside, each with the reason (`ignored`)."""

    rows: tuple[PersonRow, ...]
    taken: tuple[tuple[str, str], ...]
    ignored: tuple[tuple[str, str], ...]


# ---- reading the table ------------------------------------------------------------------------------------


def read_people(path: Path, units: Unit = "cm") -> People:
    """The people in a CSV file; numbers without a unit are in `units`. Raises `KitError` for a file that cannot
    be read or that does not say what its columns are; a bad cell only marks its row."""
    where = path.name or str(path)
    try:
        text = path.read_text("utf-8-sig")
    except FileNotFoundError:
        raise KitError(message("body.file_missing"), where=str(path), do=message("body.file_missing_do")) from None
    except UnicodeDecodeError:
        raise KitError(message("body.file_not_text"), where=where, do=message("body.people_save_do")) from None
    except OSError:
        raise KitError(message("body.file_unread"), where=str(path), do=message("body.file_unread_do")) from None
    return parse_people(text, units, where)


def parse_people(text: str, units: Unit = "cm", where: str = "the table") -> People:
    """As `read_people`, from CSV text. Cells are divided by commas, semicolons or tabs."""
    head = next((line for line in text.splitlines() if line.strip()), "")
    divider = max(",;\t", key=head.count)
    reader = csv.reader(io.StringIO(text, newline=""), delimiter=divider)
    lines: list[tuple[int, list[str]]] = []
    try:
        for cells in reader:
            if any(cell.strip() for cell in cells):
                lines.append((reader.line_num, [cell.strip() for cell in cells]))
    except csv.Error:
        raise KitError(
            message("body.people_line", line=reader.line_num), where=where, do=message("body.people_save_do")
        ) from None
    if len(lines) < 2:
        raise KitError(message("body.people_none"), where=where, do=message("body.people_none_do"))
    header = lines[0][1]
    columns, labels, ignored = _columns(header, where)
    rows = [_row(line, cells, header, columns, labels, units) for line, cells in lines[1:]]
    unknown = [index for index, text in enumerate(header) if text in dict(ignored)]
    rows = [
        replace(row, more=_more(cells, header, unknown, units)) for row, (_, cells) in zip(rows, lines[1:], strict=True)
    ]
    taken = tuple((header[index], name) for index, (name, _) in columns.items())
    return People(tuple(rows), taken, tuple(ignored))


def told_columns(people: People) -> list[str]:
    """Which columns were taken for which measurements where their headings say it in other words, in one sentence."""
    other = [(column, name) for column, name in people.taken if _heading(column)[0] != name]
    if not other:
        return []
    return [f"Taken as: {'; '.join(f'{column} is {said(name)}' for column, name in other)}."]


def _columns(
    header: Sequence[str], where: str
) -> tuple[dict[int, tuple[str, Unit | None]], list[int], list[tuple[str, str]]]:
    """Which column is which measurement and its own unit if its heading gives one; the columns that name the
    person; those left aside and why."""
    keys = [_heading(text) for text in header]
    has_bust = any(_meaning(key) == "bust_girth" for key, _ in keys)
    found: dict[int, tuple[str, Unit | None]] = {}
    labels, ignored = [], []
    for index, (key, unit) in enumerate(keys):
        name = _meaning(key)
        if key in ("chest", "chest_girth", "chest_circumference"):
            if not has_bust:
                raise KitError(
                    message("body.people_bust", column=header[index]),
                    where=where,
                    do=message("body.people_bust_do"),
                )
            name = "upper_chest_girth"
        if key in _NAMES:
            labels.append(index)
        elif not name:
            ignored.append((header[index], _why(key)))
        elif name in [other for other, _ in found.values()]:
            first = next(header[i] for i, (other, _) in found.items() if other == name)
            raise KitError(
                message("body.people_twice", one=first, other=header[index], measure=a_measure(name)),
                where=where,
                do=message("body.people_twice_do"),
            )
        else:
            found[index] = (name, unit)
    if not found:
        raise KitError(
            message("body.people_columns", columns=list_of(header[:12], "string")),
            where=where,
            do=message("body.people_columns_do"),
        )
    return found, labels, ignored


def _heading(text: str) -> tuple[str, Unit | None]:
    """A column's heading as a key, and the unit it ends in: "Bust girth (cm)" is bust_girth in cm."""
    key = re.sub(r"[^a-z0-9]+", "_", text.lower()).strip("_")
    ending = re.fullmatch(r"(.+)_(cm|mm|in|inch|inches)", key)
    if not ending:
        return key, None
    unit: Unit = "cm" if ending[2] == "cm" else "mm" if ending[2] == "mm" else "inch"
    return ending[1], unit


def _meaning(key: str) -> str:
    return key if key in MEASUREMENTS else _SAME.get(key, "")


def _why(key: str) -> str:
    if key in _UNCLEAR:
        return f"it may be measured in two ways: {_UNCLEAR[key]}."
    hint = near(key, MEASUREMENTS)
    return "it is no measurement the kit knows." + (f" {hint}" if hint.startswith("Did you mean") else "")


def _row(
    line: int,
    cells: Sequence[str],
    header: Sequence[str],
    columns: Mapping[int, tuple[str, Unit | None]],
    labels: Sequence[int],
    units: Unit,
) -> PersonRow:
    name = " ".join(cells[index] for index in labels if index < len(cells) and cells[index])
    values: list[tuple[str, float]] = []
    troubles = []
    if len(cells) > len(header):
        troubles.append(f"it has {len(cells)} cells for {len(header)} columns.")
    for index, (measure, unit) in columns.items():
        text = cells[index] if index < len(cells) else ""
        if not text or text.lower() in ("na", "n/a", "nan", "-", "–"):
            continue
        try:
            values.append((measure, _length(text, unit or units)))
        except KitError as error:
            troubles.append(str(error.at(said(measure))))
    return PersonRow(line, name, tuple(values), " ".join(troubles))


def _more(
    cells: Sequence[str], header: Sequence[str], columns: Sequence[int], units: Unit
) -> tuple[tuple[str, float], ...]:
    """The cells of those columns that are lengths, by the key of their heading."""
    found = []
    for index in columns:
        key, unit = _heading(header[index])
        with suppress(KitError, IndexError):
            if cells[index]:
                found.append((key, _length(cells[index], unit or units)))
    return tuple(found)


def _length(text: str, unit: Unit) -> float:
    if unit == "mm" and text[-1].isdigit():
        text += " mm"
    return float(parse(text, "inch" if unit == "inch" else "cm"))


# ---- in the notebook's kernel -----------------------------------------------------------------------------


def send(namespace: Mapping[str, Any], rows: str) -> None:
    """Called in the kernel: works the lesson for `rows` (JSON of [name, values in mm]) and displays a report
    for each, as JSON."""
    from IPython.display import publish_display_data

    lesson = find_lesson(namespace)  # where there are two, this ends the run before any row is worked
    answer: dict[str, Any] = {
        "lesson": lesson.info.title,
        "values": {name: round(value, 3) for name, value in lesson.values.items()},
        "rows": [work_row(lesson, name, values) for name, values in json.loads(rows)],
        "own": [one.name for one in lesson.sizes.own],
    }
    publish_display_data({MIMETYPE: json.dumps(answer)})


def work_row(lesson: Any, name: str, values: Mapping[str, float]) -> dict[str, Any]:
    """What became of one body: `drafted` or its `trouble`, `checks` of the body, `estimated` measures that the
    lesson uses, `findings` of the proof, `finished` measurements (mm), and for a body that cannot be drafted, or with
    errors in the proof, the `remedies`: values that mend it. Told with the lesson's own units first."""
    with reading(lesson.units):
        return _tried(lesson, name, values)


def _tried(lesson: Any, name: str, values: Mapping[str, float]) -> dict[str, Any]:
    from kit.body.check import check_body
    from kit.body.make import make_body
    from kit.proof import prove
    from kit.proof.mending import remedies

    found: dict[str, Any] = {"drafted": False, "trouble": "", "checks": [], "estimated": [], "findings": []}
    found["finished"], found["remedies"] = {}, []
    body = None
    try:
        known = {*MEASUREMENTS, *(one.name for one in lesson.sizes.own)}
        body = make_body({key: Length(value) for key, value in values.items() if key in known}, lesson.sizes, name)
        found["checks"] = [str(doubt) for doubt in check_body(body, lesson.units)]
        found["estimated"] = [m.name for m in body.estimated if m.name in lesson.measures]
        pattern = lesson.work(body=body)
        found["drafted"] = True
        found["finished"] = {title: round(float(value), 2) for title, value in pattern.finished}
        found["findings"] = [finding.as_dict() for finding in prove(pattern)]
    except KitError as error:
        found["trouble"] = str(error)
    except Exception as error:  # whatever one body does, the others are still worked
        found["trouble"] = f"The lesson stopped on this body ({type(error).__name__}: {error})."
    if body is not None and (not found["drafted"] or any(f["level"] == "error" for f in found["findings"])):
        with suppress(Exception):  # the trouble itself is told
            found["remedies"] = [remedy.as_dict() for remedy in remedies(lesson, body, count=_REMEDIES)]
    return found


# ---- the whole table --------------------------------------------------------------------------------------


def work_bodies(
    table: Path,
    notebook: Path,
    report: Path,
    *,
    units: Unit = "cm",
    timeout: int = 120,
    progress: Callable[[str], None] = lambda line: None,
    done: Callable[[int, int], None] = lambda count, total: None,
) -> dict[str, Any]:
    """Work the lesson of `notebook` for every row of `table` and write `report` (JSON); gives the report.

    `timeout` is seconds for a cell, and for each ten rows. `progress` is told phrases, `done` how many rows are
    worked of how many. Raises `KitError` when the table, the notebook or the report cannot be used; an earlier
    report then stays as it was.
    """
    people = read_people(table, units)
    book = read_notebook(notebook)
    if report.is_dir():
        raise KitError(message("body.file_folder"), where=str(report), do=message("body.report_do"))
    sound = [row for row in people.rows if not row.trouble]
    portions = [sound[start : start + _PORTION] for start in range(0, len(sound), _PORTION)] or [[]]
    questions = [_question(portion) for portion in portions]
    for line in told_columns(people):
        progress(line)
    progress(f"Running {notebook.name} from the top")
    _, answers = run_and_ask(
        book,
        notebook.resolve().parent,
        questions,
        MIMETYPE,
        name=notebook.name,
        timeout=timeout,
        progress=lambda line: progress(f"  {line}"),
        asking=lambda number: done(min((int(number) - 1) * _PORTION, len(sound)), len(sound)),
    )
    done(len(sound), len(sound))
    worked: dict[int, dict[str, Any]] = {}
    first: dict[str, Any] = {}
    for portion, answer in zip(portions, answers, strict=True):
        if not answer:
            raise KitError("the notebook gave no answer.", do="Run it again.")
        said_back = json.loads(answer)
        first = first or said_back
        worked.update({row.line: found for row, found in zip(portion, said_back["rows"], strict=True)})
    made = _report(people, worked, first, table, notebook)
    write_atomically(report, json.dumps(made, indent=1, ensure_ascii=False) + "\n")
    return made


def _question(portion: Sequence[PersonRow]) -> str:
    rows = json.dumps([[row.name, {**dict(row.more), **dict(row.values)}] for row in portion])
    return f"import kit.booklet.bodies\nkit.booklet.bodies.send(globals(), {rows!r})"


def _report(
    people: People, worked: Mapping[int, dict[str, Any]], first: Mapping[str, Any], table: Path, notebook: Path
) -> dict[str, Any]:
    rows = []
    own = {column: key for column, _ in people.ignored if (key := _heading(column)[0]) in first.get("own", ())}
    for row in people.rows:
        empty = {
            "drafted": False,
            "trouble": row.trouble,
            "checks": [],
            "estimated": [],
            "findings": [],
            "finished": {},
            "remedies": [],
        }
        rows.append(
            {
                "line": row.line,
                "name": row.name or f"Line {row.line}",
                "measured": {
                    name: round(value, 2)
                    for name, value in (*row.values, *row.more)
                    if name in {*own.values()} | MEASUREMENTS.keys()
                },
                **worked.get(row.line, empty),
            }
        )
    drafted = [row for row in rows if row["drafted"]]
    return {
        "lesson": first.get("lesson", ""),
        "notebook": notebook.name,
        "table": table.name,
        "lengths": "mm",
        "values": first.get("values", {}),
        "columns": {**dict(people.taken), **own},
        "ignored": {column: why for column, why in people.ignored if column not in own},
        "counts": {
            "rows": len(rows),
            "drafted": len(drafted),
            "with_errors": sum(any(f["level"] == "error" for f in row["findings"]) for row in drafted),
            "not_drafted": len(rows) - len(drafted),
            "with_remedy": sum(bool(row["remedies"]) for row in rows),
        },
        "rows": rows,
    }
