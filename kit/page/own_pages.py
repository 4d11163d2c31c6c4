"""The reader's own pattern pages, written by the page itself: the same code, and so the same bytes, as `lessonkit
pages`. Only a page that was built with the compiled packages this needs carries it (`lessonkit live --packages`)."""

from __future__ import annotations

from base64 import b64encode
from typing import Any

from kit.diagnostic import message
from kit.errors import KitError
from kit.language import say
from kit.lesson.pattern import Pattern
from kit.page.told import findings
from kit.paper.papers import paper
from kit.paper.printing import print_files
from kit.paper.request import PageRequest
from kit.proof import failed, prove
from kit.prose.readings import ruling_of
from kit.rulers import ruled


def own_pages(pattern: Pattern, asked: object) -> dict[str, Any]:
    """The pages of `pattern` on the paper that is `asked` for by name or size ("a4", "300x500mm"): `files`, each with
    its `name` and its bytes as base64 (`data`), and what is `wrong` where the draft fails its proof ("" where it does
    not). Raises `KitError` for a paper there is not and for a pattern that cannot be printed."""
    if not isinstance(asked, str):
        raise KitError(message("page.not_asked"), do=message("page.again_do"))
    request = PageRequest(papers=(paper(asked),))
    with ruled(ruling_of(pattern)):
        made = print_files(pattern, request)
    found = prove(pattern)
    said = [each["said"] for each in findings(found) if each["level"] == "error"] if failed(found) else []
    return {
        "files": [{"name": name, "data": b64encode(data).decode("ascii")} for name, data in made.items()],
        "wrong": " ".join([say("page.booklet_wrong"), *said]) if said else "",
    }
