"""The file of a lesson's words in one language: `<notebook>.<language>.po`, beside the notebook.

GNU gettext's PO format ("The Format of PO Files" in its manual), read and written by Babel, so that any editor of such
files can be used. Updating keeps every translation: a text that changed a little keeps its old one, marked fuzzy and
with the old text beside it; one that went is kept at the end as obsolete, and comes back with its text.
"""

from __future__ import annotations

import io
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from pathlib import Path

from babel.messages.catalog import Catalog, Message
from babel.messages.pofile import PoFileError, read_po, write_po

from kit.atomic import write_atomically
from kit.errors import KitError
from kit.lesson.own_words import OwnText
from kit.lesson.publishing import is_language

_HEADER = """\
# The words of the lesson "{title}" in another language ({language}).
# Write the translation between the quotes after msgstr. Leave what stands in braces as it is, such as {{hem}}.
# Take the word fuzzy out once you have looked at an entry again.
#"""
_DRAFTED = "filled in from the kit's own words"
_COMMENT = 200
_LINE = re.compile(r'\s*(?:(?:msgctxt|msgid|msgid_plural|msgstr(?:\[\d+\])?)\s*)?"(?:[^"\\]|\\.)*"\s*')


@dataclass(frozen=True)
class Counted:
    """How many of a lesson's texts are translated, how many are marked fuzzy, how many there are, and how many of the
    translated were filled in just now."""

    done: int
    fuzzy: int
    total: int
    drafted: int = 0


def path_of(notebook: Path, language: str) -> Path:
    """Where the words of the lesson in `notebook` stand in `language`. `KitError` when that is not a language."""
    if not is_language(language):
        raise KitError(
            f"'{language}' is not the code of a language.", do='Write one such as "es", "de" or "pt-BR" (BCP 47).'
        )
    return notebook.with_name(f"{notebook.stem}.{language}.po")


def read_words(path: Path, language: str) -> Catalog | None:
    """The translations in `path`; None when there is no such file. `KitError` with the line for a broken one."""
    try:
        data = path.read_bytes()
    except FileNotFoundError:
        return None
    except OSError as error:
        raise KitError(
            f"it cannot be read ({error.strerror}).", where=path.name, do="Check the file and its permissions."
        ) from None
    do = "Correct that line, or go back to a saved copy of the file."
    try:
        for number, line in enumerate(data.decode("utf-8-sig").split("\n"), 1):
            if line.strip() and not line.lstrip().startswith("#") and not _LINE.fullmatch(line):
                raise KitError(f"it cannot be read; line {number}: '{line.strip()[:60]}'.", where=path.name, do=do)
        return read_po(io.BytesIO(data), locale=_locale(language), charset="utf-8", abort_invalid=True)
    except KitError:
        raise
    except PoFileError as error:
        line = f"line {error.lineno + 1}: " if isinstance(error.lineno, int) else ""
        raise KitError(f"it cannot be read; {line}{error.args[0]}.", where=path.name, do=do) from None
    except UnicodeDecodeError:
        raise KitError("it is not text in UTF-8.", where=path.name, do="Save it again as UTF-8.") from None
    except (ValueError, IndexError, TypeError, AttributeError) as error:
        raise KitError(f"it cannot be read ({error}).", where=path.name, do=do) from None


def write_words(
    path: Path, texts: Iterable[OwnText], title: str, language: str, draft: Callable[[str], str] | None = None
) -> Counted:
    """Write or update the file with the lesson's `texts`, atomically, and count what is translated. `draft` gives the
    translation of a text that has none yet, or "". `KitError` when the file there is broken (it then stays as it was)
    or cannot be written."""
    known = read_words(path, language)
    updated, counted = merged(known, texts, title, language)
    if draft is not None:
        counted = _filled(updated, counted, draft)
    out = io.BytesIO()
    write_po(out, updated, width=100, include_previous=True)
    data = out.getvalue()
    if not path.exists() or path.read_bytes() != data:
        write_atomically(path, data)
    return counted


def merged(known: Catalog | None, texts: Iterable[OwnText], title: str, language: str) -> tuple[Catalog, Counted]:
    """A catalogue of the `texts` with the translations of the `known` one."""
    wanted = Catalog(locale=_locale(language), charset="utf-8")
    for text, where in texts:
        wanted.add(text, auto_comments=[" ".join(where.split())[:_COMMENT]])
    if known is None:
        known = Catalog(
            locale=_locale(language),
            header_comment=_HEADER.format(title=" ".join(title.split()), language=language),
            project=title,
            version="1",
            charset="utf-8",
            fuzzy=False,
        )
    else:
        for message in list(known.obsolete.values()):  # a text that came back
            if isinstance(message.id, str) and message.id in wanted and message.id not in known:
                known.add(message.id, message.string, flags=message.flags, user_comments=message.user_comments)
                del known.obsolete[message.id]
    known.update(wanted, update_creation_date=False)
    messages = [message for message in known if message.id]
    for message in messages:  # texts, not program strings
        message.flags -= {"python-format", "python-brace-format"}
        if not _said(message):
            message.flags -= {"fuzzy"}
    fuzzy = sum(1 for message in messages if message.fuzzy)
    done = sum(1 for message in messages if _said(message) and not message.fuzzy)
    return known, Counted(done, fuzzy, len(messages))


def _filled(catalogue: Catalog, counted: Counted, draft: Callable[[str], str]) -> Counted:
    """The gaps of a catalogue filled, each with a remark that says so."""
    drafts = 0
    for message in catalogue:
        if message.id and not _said(message) and (text := draft(str(message.id))):
            message.string = text
            message.user_comments = [*message.user_comments, _DRAFTED]
            drafts += 1
    return Counted(counted.done + drafts, counted.fuzzy, counted.total, drafts)


def _said(message: Message) -> bool:
    return isinstance(message.string, str) and bool(message.string.strip())


def _locale(language: str) -> str:
    """A language tag as gettext writes it: pt-BR -> pt_BR."""
    return re.sub("-", "_", language)
