"""The nbconvert exporter `booklet`: `jupyter nbconvert --to booklet`, and Export in JupyterLab's File menu."""

from __future__ import annotations

from pathlib import Path
from typing import Any, cast

from nbconvert.exporters.exporter import Exporter
from nbformat import NotebookNode
from traitlets import Enum, Integer, Unicode

from kit.booklet.compose import compose
from kit.booklet.fetch import LessonFolder
from kit.booklet.forms import form_named
from kit.booklet.html import to_html
from kit.booklet.own_language import spoken
from kit.booklet.run_notebook import run_notebook
from kit.booklet.theme_file import read_theme
from kit.booklet.typesetter import load_typesetter, need_typesetter
from kit.diagnostic import reading
from kit.language import speaking, spoken_for
from kit.proof import prove
from kit.units import System


class BookletExporter(Exporter):
    """Runs the notebook afresh and prints its lesson as a booklet, for the size and values saved beside it.

    Options: `--BookletExporter.size=W4`, `--BookletExporter.units=inch`, `--BookletExporter.form=letter`,
    `--BookletExporter.language=es`, `--BookletExporter.timeout=120`.
    """

    export_from_notebook = "Booklet (PDF)"
    output_mimetype = "application/pdf"

    size = Unicode("", help="Size of the lesson's chart; empty: as saved beside the notebook.").tag(config=True)
    units = Enum(["", "cm", "inch"], "", help="Units read first; empty: as saved beside the notebook.").tag(config=True)
    form = Unicode("a4", help="Form of the booklet: a4, letter, a5, half-letter, a4-large, letter-large.").tag(
        config=True
    )
    language = Unicode("", help="Language of the booklet; empty: that of the lesson's own words.").tag(config=True)
    timeout = Integer(120, help="Seconds a cell may take.").tag(config=True)

    def _file_extension_default(self) -> str:
        return ".pdf"

    def from_notebook_node(  # type: ignore[override]
        self, nb: NotebookNode, resources: dict[str, Any] | None = None, **kw: Any
    ) -> tuple[bytes, dict[str, Any]]:
        """The booklet of `nb` as PDF bytes. Raises `KitError` in plain words for what cannot be built."""
        need_typesetter()
        load_typesetter()
        from kit.booklet.render import to_pdf

        _, resources = super().from_notebook_node(nb, resources, **kw)
        metadata = resources.get("metadata", {})
        folder = Path(metadata.get("path") or ".").resolve()
        form = form_named(self.form)
        ran = run_notebook(
            nb,
            folder,
            name=f"{metadata.get('name') or 'notebook'}.ipynb",
            size=self.size or None,
            units=cast(System, self.units) if self.units else None,
            timeout=self.timeout,
            progress=self.log.info,
        )
        lesson = LessonFolder(folder)
        look = read_theme(lesson)
        own = ran.handover.pattern.lesson.language
        units = ran.handover.pattern.lesson.units
        with speaking(self.language or spoken_for(own)), reading(units):
            given, cells = ran.handover, ran.notebook
            if self.language:
                path = folder / f"{metadata.get('name') or 'notebook'}.ipynb"
                given, cells, notes = spoken(given, cells, path, self.language)
                for note in notes:
                    self.log.warning(note)
            html = to_html(compose(given, cells, lesson, prove(given.pattern), form, look), form, look)
        return to_pdf(html, lesson, look=look), resources
