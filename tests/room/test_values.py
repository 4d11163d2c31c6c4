"""Codes, seats, rates and messages of a class: pure values, tried with a clock of the test's own."""

from __future__ import annotations

import json
import re
from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kit import KitError
from kit.booklet.qr import QUIET, modules, qr_svg
from kit.room import codes, said
from kit.room.addresses import checked_name, hosts
from kit.room.rates import Bucket, Buckets
from kit.room.seats import NoSeat, Seat, Seats
from kit.room.server import Options


class Clock:
    def __init__(self) -> None:
        self.now = 1000.0

    def __call__(self) -> float:
        return self.now


def test_codes_are_long_enough_and_readable() -> None:
    made = {codes.new_code() for _ in range(200)}
    assert len(made) == 200
    assert all(re.fullmatch(r"[a-hjkmnp-z2-9]{10}", code) for code in made)
    assert len(codes.LETTERS) ** 10 > 2**49
    assert codes.read_code(" K7QM-2xpd 9r\n") == "k7qm2xpd9r"
    assert codes.same("k7qm2xpd9r", codes.written("k7qm2xpd9r").upper())
    assert not codes.same("k7qm2xpd9r", "") and not codes.same("k7qm2xpd9r", "k7qm2xpd9")


def test_the_last_seat_is_given_once() -> None:
    seats = Seats(2)
    first, second = seats.take("a"), seats.take("a")
    assert isinstance(first, Seat) and isinstance(second, Seat) and first.token != second.token
    assert seats.take("b") == NoSeat("full") and len(seats) == 2
    seats.leave(first)
    assert isinstance(seats.take("b"), Seat) and seats.find(first.token) is None


def test_a_seat_nobody_uses_is_given_on_and_one_in_use_is_not() -> None:
    clock = Clock()
    seats = Seats(2, clock=clock)
    unused, away = seats.take("a"), seats.take("a")
    assert isinstance(unused, Seat) and isinstance(away, Seat)
    away.used = True
    clock.now += 59
    assert seats.take("b") == NoSeat("full")
    clock.now += 2  # a minute has gone by: the page of the first was never opened
    third = seats.take("b")
    assert isinstance(third, Seat) and seats.find(unused.token) is None and seats.find(away.token) is away
    third.lines = 1
    clock.now += 500
    assert seats.take("c") == NoSeat("full")
    clock.now += 100
    assert isinstance(seats.take("c"), Seat) and seats.find(away.token) is None
    assert seats.find(third.token) is third  # its line is open, however long nothing was heard


def test_one_device_has_a_share_of_the_seats() -> None:
    seats = Seats(10, per_device=2)
    assert all(isinstance(seats.take("a"), Seat) for _ in range(2))
    assert seats.take("a") == NoSeat("device")
    assert isinstance(seats.take("b"), Seat)


def test_a_bucket_fills_at_its_rate() -> None:
    clock = Clock()
    bucket = Bucket(2.0, 4.0, clock)
    assert [bucket.take() for _ in range(5)] == [True] * 4 + [False]
    clock.now += 0.5
    assert bucket.take() and bucket.empty
    clock.now += 1000
    assert [bucket.take() for _ in range(5)] == [True] * 4 + [False]
    assert not bucket.take(2)


def test_devices_have_buckets_of_their_own_and_are_forgotten() -> None:
    buckets = Buckets(1.0, 1.0, Clock())
    assert buckets.of("a").take() and not buckets.of("a").take() and buckets.of("b").take()
    for number in range(3000):
        buckets.of(str(number))
    assert len(buckets._of) <= 2000


def test_a_school_behind_one_address_has_connections_for_all_its_seats() -> None:
    """A browser opens up to six connections to one server (RFC 9112, 9.4 leaves the number open; six: from memory)."""
    network = Options(address="192.168.1.20", students=40)
    assert network.connections_each == 32
    assert replace(network, per_device=30).connections_each >= 30 * 7
    assert replace(network, per_device=0).connections_each >= 40 * 7  # no limit of seats but that of the class
    assert Options(per_device=2).connections_each == 0


def test_hosts_are_those_of_the_class() -> None:
    assert hosts("192.168.1.20", 8866) == {"192.168.1.20:8866"}
    assert hosts("127.0.0.1", 8866) == {"127.0.0.1:8866", "localhost:8866", "[::1]:8866"}
    named = {f"{name}{port}" for name in ("192.168.1.20", "class.test") for port in (":443", "")}
    assert hosts("192.168.1.20", 443, ["Class.Test"]) == named
    assert hosts("192.168.1.20", 8866, ["Class.Test"]) == {"192.168.1.20:8866", "class.test:8866", "class.test"}
    assert hosts("192.168.1.20", 80) == {"192.168.1.20:80", "192.168.1.20"}  # RFC 9110, 4.2.1: http's own port
    assert "[fe80::1]" in hosts("fe80::1", 443)
    assert checked_name("Class.Test") == "class.test"
    for bad in ("", "http://class.test", "a b", "a/b", "-a", "class.test:80"):
        with pytest.raises(KitError, match="no name"):
            checked_name(bad)


@given(
    st.recursive(
        st.none() | st.booleans() | st.floats() | st.text(), lambda x: st.lists(x) | st.dictionaries(st.text(), x)
    )
)
def test_nothing_that_is_said_breaks_the_room(told: object) -> None:
    kinds = (
        "here",
        "name",
        "hand",
        "may_look",
        "draft",
        "ask",
        "make",
        "cancel",
        "send",
        "follow",
        "at",
        "look",
        "let_go",
    )
    for kind in kinds:
        parts = ("step", "values", "setting", "text", "name", "solved", "for", "id", "number", "paper")
        text = json.dumps({"is": kind, **dict.fromkeys(parts, told)})
        for read in (said.read_student, said.read_board):
            try:
                read(text)
            except said.Unsaid:
                pass


def test_a_message_is_read_into_its_value() -> None:
    here = {"is": "here", "step": "draft:hem", "number": 2, "steps": 9, "solved": ["a"], "errors": 0, "engine": "own"}
    assert said.read_student(json.dumps(here)) == said.Report("draft:hem", 2, 9, ("a",), 0, -1, "own")
    assert said.read_student('{"is": "name", "name": " Ines\\u202e\\n B. "}') == said.Named("Ines B.")
    asked = said.read_student('{"is": "ask", "id": 3, "text": "{\\"do\\":\\n\\"prove\\"}"}')
    assert asked == said.Ask(3, '{"do":"prove"}', True)
    setting = {"values": {"a": 1}, "evil": 2, "do": "mend"}
    assert said.read_student(json.dumps({"is": "draft", "for": 7, "setting": setting})) == said.Draft(
        7, {"values": {"a": 1}}
    )
    sent = said.read_board('{"is": "send", "step": {"kind": "sew", "key": "x", "picture": 2}, "values": {"a": 10}}')
    assert sent == said.Send({"kind": "sew", "key": "x", "picture": 2}, {"a": 10.0}, "")
    for wrong in ('{"is": "send", "values": {"a": "10"}}', '{"is": "at", "step": {"kind": "x", "key": ""}}'):
        with pytest.raises(said.Unsaid):
            said.read_board(wrong)
    with pytest.raises(said.Unsaid):
        said.read_student(json.dumps({"is": "hand", "more": "x" * said.MOST}))


def test_the_code_has_the_marks_of_the_standard() -> None:
    """ISO/IEC 18004: a finder pattern (7 x 7, ring and core) in three corners, timing patterns between them on row and
    column 6, a side of 17 + 4 x version modules, a quiet zone of 4."""
    rows = modules("http://192.168.1.20:8866/?token=k7qm2xpd9r")
    side = len(rows)
    assert (side - 17) % 4 == 0 and QUIET == 4
    ring = [[max(abs(x - 3), abs(y - 3)) != 2 for x in range(7)] for y in range(7)]
    for top, left in ((0, 0), (0, side - 7), (side - 7, 0)):
        assert [row[left : left + 7] for row in rows[top : top + 7]] == ring
    assert [rows[6][x] for x in range(8, side - 8)] == [x % 2 == 0 for x in range(8, side - 8)]
    assert [rows[y][6] for y in range(8, side - 8)] == [y % 2 == 0 for y in range(8, side - 8)]
    assert '"<&' not in qr_svg("http://a/", '"<&')


SEW = {"kind": "sew", "key": "hem", "picture": 2}


@pytest.mark.parametrize(
    ("told", "means"),
    [
        ({"is": "here"}, said.Report()),
        ({"is": "here", "engine": "theirs"}, said.Report(engine="")),
        ({"is": "name"}, said.Named("")),
        ({"is": "hand", "up": True}, said.Hand(True)),
        ({"is": "hand", "up": 1}, said.Hand(False)),
        ({"is": "may_look", "yes": True}, said.MayLook(True)),
        ({"is": "draft", "for": 4}, said.Draft(4, None)),
        ({"is": "ask", "id": 5, "text": '{"do": "draw"}'}, said.Ask(5, '{"do":"draw"}', False)),
        ({"is": "ask", "id": 6, "text": '{"do": "mend"}'}, said.Ask(6, '{"do":"mend"}', True)),
        (
            {"is": "make", "setting": {"units": "cm", "more": 1}, "paper": "a4", "booklet": True},
            said.MakePages({"units": "cm"}, "a4", True),
        ),
        ({"is": "cancel"}, said.Cancel()),
    ],
)
def test_what_a_page_says_is_read_part_by_part(told: dict[str, object], means: said.Said) -> None:
    assert said.read_student(json.dumps(told)) == means


@pytest.mark.parametrize(
    ("told", "means"),
    [
        ({"is": "send"}, said.Send(None, {}, "")),
        ({"is": "send", "step": SEW, "values": {"hem": 30}, "title": "Short"}, said.Send(SEW, {"hem": 30.0}, "Short")),
        ({"is": "follow", "on": True}, said.Follow(True)),
        ({"is": "follow"}, said.Follow(False)),
        ({"is": "at", "step": SEW}, said.At(SEW)),
        ({"is": "look", "number": 3}, said.LookAtDraft(3)),
        ({"is": "over"}, said.Over()),
        ({"is": "lower", "number": 3}, said.Lower(3)),
        ({"is": "let_go", "number": 3}, said.LetGo(3)),
        ({"is": "ask", "id": 1, "text": "{}"}, said.Ask(1, "{}", False)),
    ],
)
def test_what_a_board_says_is_read_part_by_part(told: dict[str, object], means: said.BoardSaid) -> None:
    assert said.read_board(json.dumps(told)) == means


@pytest.mark.parametrize(
    "told",
    [
        {"is": "here", "step": "x" * 121},
        {"is": "here", "solved": "hem"},
        {"is": "here", "solved": ["a"] * 201},
        {"is": "here", "errors": -2},
        {"is": "here", "number": True},
        {"is": "name", "name": "x" * 401},
        {"is": "draft", "setting": {}},
        {"is": "draft", "for": 1, "setting": "W4"},
        {"is": "make", "paper": "a4"},
        {"is": "make", "setting": {}, "paper": "x" * 21},
        {"is": "ask", "id": 1, "text": "[]"},
        {"is": "follow", "on": True},
        {"is": ["here"]},
        {},
    ],
)
def test_what_a_page_cannot_say_is_refused(told: dict[str, object]) -> None:
    with pytest.raises(said.Unsaid):
        said.read_student(json.dumps(told))
