"""In the notebook's own kernel, after its last cell: sets are made one after another, for as long as somebody asks.

The lesson, the typesetter and the layouts found so far stay in memory between two sets. Questions and answers travel
through a connection that only our own parent process knows the key of.
"""

from __future__ import annotations

import os
import pickle
from collections.abc import Mapping
from multiprocessing.connection import Client
from typing import Any

import nbformat

from kit.body.advice import advise
from kit.body.check import check_body
from kit.body.make import make_body
from kit.body.measures import MEASUREMENTS
from kit.booklet.buying import Shopping, shopping
from kit.booklet.fetch import LessonFolder
from kit.booklet.handover import Handover, SizeRow, work
from kit.booklet.own_language import spoken
from kit.booklet.theme_file import read_theme
from kit.cloth.kept_lays import Kept
from kit.diagnostic import reading
from kit.errors import KitError
from kit.language import language, say, speaking, spoken_for
from kit.lesson.another import find_lesson
from kit.lesson.pattern import Pattern
from kit.lesson.where import here
from kit.paper.export import pattern_text
from kit.paper.printing import print_files
from kit.paper.request import PageRequest, read_papers
from kit.proof import failed, prove
from kit.prose.readings import ruling_of
from kit.roster.order import NO_BOOKLET, MadeSet, Order, Task
from kit.rulers import ruled
from kit.units import Length, both


def serve(namespace: Mapping[str, Any], address: str, key: str, order: str) -> None:
    """Called in the kernel: answer each `Task` that arrives at `address` with a `MadeSet`, or with a `KitError`; ends
    with whoever asks. Raises `KitError` when the notebook has no lesson, or several."""
    maker = _Maker(find_lesson(namespace), Order.read(order))
    with Client(address, authkey=bytes.fromhex(key)) as asked:
        asked.send_bytes(pickle.dumps(os.getpid()))
        while True:
            try:
                task = pickle.loads(asked.recv_bytes())
            except (EOFError, OSError):
                return
            if task is None:
                return
            asked.send_bytes(pickle.dumps(maker.answer(task)))


class _Maker:
    """A lesson that sets are made of."""

    def __init__(self, lesson: Any, order: Order) -> None:
        self._lesson, self._order = lesson, order
        self._folder = order.notebook.parent
        file = here().file
        self._book = nbformat.read(file or order.notebook, as_version=4)
        self._lays = Kept()
        self._chart: tuple[SizeRow, ...] | None = None
        if order.units:
            lesson.choose(units=order.units)

    def answer(self, task: Task) -> MadeSet | KitError:
        """The set of one body, or why there is none. Whatever one body does, the others are still made."""
        own = self._lesson.info.language
        with speaking(self._order.language or spoken_for(own)), reading(self._lesson.units):
            try:
                return self._made(task)
            except KitError as error:
                return error
            except Exception as error:
                what = " ".join(f"{type(error).__name__}: {error}".split())[:300]
                return KitError(f"the lesson stopped on this body ({what}).")

    def _made(self, task: Task) -> MadeSet:
        lesson, order = self._lesson, self._order
        known = {*MEASUREMENTS, *(one.name for one in lesson.sizes.own)}
        label = say("roster.label", number=str(task.number))
        body = make_body({k: Length(v) for k, v in task.values if k in known}, lesson.sizes, label)
        lesson.choose(body=body)
        given = work(lesson, None, None, chart=self._chart)
        self._chart = given.chart
        if order.language:
            given, book, _ = spoken(given, self._book, order.notebook, order.language)
        else:
            book = self._book
        pattern = given.pattern
        with ruled(ruling_of(pattern)):
            findings = prove(pattern)
            bought = shopping(given, self._lays)
            files = print_files(pattern, PageRequest(papers=read_papers(order.papers)))
            files["pattern.json"] = pattern_text(pattern, bought.amounts).encode("utf-8")
            left_out: list[str] = []
            if order.booklet != NO_BOOKLET:
                files[f"booklet-{order.booklet}.pdf"] = self._booklet(given, book, findings, bought, left_out)
        try:
            advice = list(advise(body, lesson.sizes, lesson.units).sentences)
        except KitError as error:
            advice = [str(error)]
        told = {
            "label": label,
            "language": language(),
            "title": pattern.lesson.title,
            "failed": failed(findings),
            "findings": [finding.as_dict() for finding in findings],
            "doubts": [str(doubt) for doubt in check_body(body, lesson.units)],
            "estimated": [measure.name for measure in body.estimated if measure.name in lesson.measures],
            "fit": advice,
            "cloth": _cloth(pattern, bought),
            "finished": {title: both(value, lesson.units, "finished") for title, value in pattern.finished},
            "left_out": left_out,
        }
        return MadeSet(files, told)

    def _booklet(self, given: Handover, book: Any, findings: Any, bought: Shopping, left_out: list[str]) -> bytes:
        from kit.booklet.compose import compose
        from kit.booklet.forms import FORMS
        from kit.booklet.html import to_html
        from kit.booklet.typesetter import load_typesetter

        load_typesetter()
        from kit.booklet.render import to_pdf

        folder, form = LessonFolder(self._folder), FORMS[self._order.booklet]
        look = read_theme(folder)
        html = to_html(compose(given, book, folder, findings, form, look, bought), form, look)
        pdf = to_pdf(html, folder, look=look)
        left_out += dict.fromkeys(folder.left_out)
        return pdf


def _cloth(pattern: Pattern, bought: Shopping) -> list[str]:
    """What to buy of each cloth, for each width, in words."""
    system, found = pattern.lesson.units, []
    for each in bought.amounts:
        amount = each.of(pattern.body.name)
        length = amount.shown(system) or say("booklet.too_narrow")
        found.append(f"{say(f'booklet.cloth_{each.cloth}')}, {both(each.width, system, 'finished')}: {length}")
    return found
