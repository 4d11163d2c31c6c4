"""The booklet's model as one self-contained HTML page: style sheet and pictures inside it, for print or a screen."""

from __future__ import annotations

from functools import lru_cache

from jinja2 import Environment, FileSystemLoader, StrictUndefined
from markupsafe import Markup

from kit.booklet.fine_setting import set_finely
from kit.booklet.forms import SCREEN, Form
from kit.booklet.model import Booklet, IndexEntry
from kit.booklet.theme_file import BookTheme
from kit.language import say
from kit.resources import templates
from kit.wording.lists import strung


def to_html(
    book: Booklet, form: Form = SCREEN, look: BookTheme | None = None, *, sheet_only: bool = False, live: bool = False
) -> str:
    """The booklet as a page in one `form`, in the author's `look`; or `sheet_only`, its worksheet for drafting by
    hand. `live`: what follows the body says which part it is, for a page that puts another in its place."""
    look = look or BookTheme()
    jinja = environment()
    given = {"form": form, "look": look, "comma_page": say("booklet.comma_page"), "content_lines": len(contents(book))}
    sheets = ["booklet.css.j2", "screen.css.j2" if form.screen else "print.css.j2"]
    css = "\n".join(jinja.get_template(sheet).render(given) for sheet in sheets)
    page = jinja.get_template("booklet.html.j2")
    narrow = not form.beside and not form.screen
    return page.render(
        book=book,
        form=form,
        css=Markup(css),
        contents=contents(book),
        sizes_title=sizes_title(book),
        narrow=narrow,
        sheet_only=sheet_only,
        live=live,
    )


def sizes_title(book: Booklet) -> str:
    """What the chapter of sizes is called: where there is no size to choose, it tells the finished one."""
    return say("booklet.sizes" if book.size_tables else "booklet.finished")


def contents(book: Booklet) -> list[tuple[str, str]]:
    """(id, title) of every part, in order of use."""
    parts: list[tuple[str, str, object]] = [
        ("begin", say("booklet.begin"), True),
        ("printing", say("booklet.printing"), True),
        ("reading", say("booklet.how_to_read"), True),
        ("measuring", say("booklet.measure"), book.measuring),
        ("sizes", sizes_title(book), True),
        ("fit-changes", say("booklet.fit_changes"), book.fit_changes),
        ("cloth", say("booklet.cloth_and_notions"), True),
        ("lays", say("booklet.lays"), book.lays),
        ("marking", say("booklet.marking"), True),
        ("pieces", say("booklet.pieces"), True),
        ("drafting", book.drafting.title, book.drafting.blocks),
        ("worksheet", say("booklet.worksheet"), book.worksheet),
        ("sewing", book.sewing.title, book.sewing.blocks),
        ("fitting", say("booklet.fitting"), book.fittings),
        ("care", say("booklet.care"), book.care),
        ("variations", say("booklet.variations"), book.variations),
        ("closing", book.closing.title, book.closing.blocks),
        ("terms", say("booklet.terms"), book.terms),
        ("index", say("booklet.index"), book.index),
        ("left-out", say("booklet.left_out"), book.left_out),
    ]
    return [(target, title) for target, title, there in parts if there]


@lru_cache(maxsize=1)
def environment() -> Environment:
    """The templates of `templates/booklet`: everything put into them is escaped."""
    jinja = Environment(
        loader=FileSystemLoader(templates() / "booklet"),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    jinja.filters["finely"] = set_finely
    jinja.globals["say"] = say
    jinja.globals["see_steps"] = _see_steps
    return jinja


def _see_steps(entry: IndexEntry) -> Markup:
    """The steps of an entry of the index, each a link."""
    link = Markup('<a class="ref" href="#step-{}">{}</a>')
    links = [link.format(key, say("booklet.see_step", number=number)) for number, key in entry.steps]
    return Markup(strung(links, "parted"))
