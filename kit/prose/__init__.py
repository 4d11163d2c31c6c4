"""Sentences of sewing operations, a teacher's words with live values, alternative texts, cautions, terms."""

from kit.prose.alt import operation_alt, scene_alt, step_alt
from kit.prose.notes import Caution, Term, cautions, notions, terms, tools
from kit.prose.say import about_minutes, edges_said, pieces_said, places_said, sentences, whys
from kit.prose.words import fill_words

__all__ = [
    "Caution",
    "Term",
    "about_minutes",
    "cautions",
    "edges_said",
    "fill_words",
    "notions",
    "operation_alt",
    "pieces_said",
    "places_said",
    "scene_alt",
    "sentences",
    "step_alt",
    "terms",
    "tools",
    "whys",
]
