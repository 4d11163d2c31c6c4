"""Titles, edges and places as people say them."""

from __future__ import annotations

from kit.diagnostic import EdgeName, HasName, NamedLandmark, NamedPlace, System
from kit.language import SOURCE, called, language, say, says
from kit.units import both
from kit.wording.lists import listed


def title_said(title: str) -> str:
    """A title in running text: the first letter small where the language writes it so, unless it begins with capitals
    ("UK top") or with a letter that stands for itself ("T-shirt"). The rest stays as it is ("yoke B")."""
    first = title.split(" ")[0]
    capitals = sum(letter.isupper() for letter in first)
    kept = capitals > 1 or (len(first) > 1 and not first[1].isalpha())
    return say("phrase.title", small=title if kept else title[:1].lower() + title[1:], given=title)


def edge_said(edge: HasName) -> str:
    """An edge in running text: the lesson's own words, else the language's for that name, else the name."""
    return edge.said or _called(edge.name)


def edge_label(edge: HasName) -> str:
    """An edge as it is written beside its line in a picture: in the source its short name ("side"), else as it is
    said."""
    if edge.said or language() != SOURCE:
        return edge_said(edge)
    return called(edge.name)


def _called(name: str) -> str:
    key = f"edge.{name}"
    return say(key) if says(key) else called(name)


def side_word(side: str) -> str:
    """Left or right."""
    return say(f"word.{side}")


def edge_on_side(edge: str, side: str) -> str:
    """An edge (in words) of one half, or of both (""): "left side seam"."""
    return say("phrase.edge_on_side", side=side_word(side), edge=edge) if side else edge


def piece_said(title: str, side: str = "") -> str:
    """A piece with its article: "the front", "the left front"."""
    if side:
        return say("phrase.piece_on_side", side=side_word(side), piece=title_said(title))
    return say("phrase.piece", piece=title_said(title))


def place_said(spot: NamedPlace, system: System = "cm") -> str:
    """Edges or a mark with their piece: "front left side seam"; and from where to where."""
    edges = listed([edge_said(each) if isinstance(each, EdgeName) else each for each in spot.edges])
    values = {"piece": title_said(spot.title), "edge": edges}
    if spot.side:
        place = say("phrase.run_on_side", values, side=side_word(spot.side))
    else:
        place = say("phrase.run", values)
    return part_said(place, spot.part, system)


def part_said(place: str, part: tuple[NamedLandmark, NamedLandmark] | None, system: System = "cm") -> str:
    """A place (in words), and from which landmark to which where it is a part: "hem from the slit to the side seam"."""
    return place if part is None else say("phrase.part", place=place, stretch=stretch_said(part, system))


def stretch_said(part: tuple[NamedLandmark, NamedLandmark], system: System = "cm") -> str:
    """From which landmark to which: "from the slit to the hem", "from 2 cm to 17 cm below the waist"."""
    one, two = part
    if one.kind == two.kind == "length" and one.label == two.label:
        part = (one, two) if one.mm <= two.mm else (two, one)
        low, high = (both(each.mm, system) for each in part)
        return say(f"phrase.stretch_{_way(two)}", start=low, end=high, edge=edge_on_side(_label(one), one.side))
    return say("phrase.stretch", start=landmark_said(one, system), end=landmark_said(two, system))


def spot_said(mark: NamedLandmark, system: System = "cm") -> str:
    """Where something lies along edges: "2 cm below the waist", "at the waist"."""
    edge = edge_on_side(_label(mark), mark.side)
    if mark.kind in ("mark", "notch"):
        return say("phrase.spot_mark", mark=landmark_said(mark, system))
    if mark.kind != "length":
        return say("phrase.spot_edge", edge=edge or landmark_said(mark, system))
    return say(f"phrase.spot_{_way(mark)}", size=both(mark.mm, system), edge=edge)


def spots_said(places: tuple[NamedLandmark, ...], system: System = "cm") -> str:
    """Two places along edges: "8 cm and 27 cm from the left side"; the way of the farther one is said of both. Told
    from different edges each is said by itself: "6 cm from the left side and 6 cm from the right side"."""
    one, two = places
    if (one.label, one.side) != (two.label, two.side):
        return listed([spot_said(each, system) for each in places])
    first, second = (both(each.mm, system) for each in places)
    return say(f"phrase.spots_{_way(two)}", first=first, second=second, edge=edge_on_side(_label(one), one.side))


def landmark_said(mark: NamedLandmark, system: System = "cm") -> str:
    """A place along edges by what lies there: "the upper mark of the tie opening", "2 cm below the waist"."""
    label = _label(mark)
    said = edge_on_side(label, mark.side)
    if mark.kind == "length":
        return say(f"phrase.at_{_way(mark)}", size=both(mark.mm, system), edge=said)
    if mark.kind == "tip":
        return say(f"phrase.at_{mark.way}")
    if mark.kind == "notch":
        return say(f"phrase.at_notch{f'_{mark.way}' if mark.way else ''}", number=mark.number, edge=label)
    if mark.kind == "edge":
        return say("phrase.at_edge", edge=said)
    key = f"phrase.at_mark{f'_{mark.way}' if mark.way else ''}"
    return say(key, mark=said, edge=edge_said(mark.beside) if mark.beside.name else "")


def _way(length: NamedLandmark) -> str:
    """How a length is told: from its edge, or along where none is met."""
    return length.way if _label(length) else "along"


def _label(mark: NamedLandmark) -> str:
    if isinstance(mark.label, EdgeName):
        return edge_said(mark.label) if mark.label.name else ""
    return mark.label


def measure_said(name: str) -> str:
    """A body measurement as people say it; of a lesson's own, its name with blanks."""
    key = f"measure.{name}"
    return say(key) if says(key) else name.replace("_", " ")
