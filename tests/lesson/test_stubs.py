"""The stubs are what the verbs are now."""

from __future__ import annotations

from kit.lesson.stubs import FILES, stubs
from kit.lesson.verb import VERBS, verb


def test_the_stubs_are_as_new_as_the_verbs() -> None:
    made = stubs()
    assert tuple(made) == FILES
    for path, text in made.items():
        assert path.read_text("utf-8") == text, f"{path.name} is stale: run python -m kit.lesson.stubs"


def test_a_changed_verb_makes_them_stale() -> None:
    @verb
    def smooth(bench: object, edge: str, /, *more: str, by: float = 2.0, how: object = len) -> None:
        """Smooth an edge."""

    try:
        text = stubs()[FILES[0]]
    finally:
        del VERBS["smooth"]
    assert (
        'def smooth(self, edge: str, /, *more: str, by: float = 2.0, how: object = ...) -> None:\n        """Smooth'
        in text
    )
