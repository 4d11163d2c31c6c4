"""Run by tests/page in a process of its own: a lesson answers its page with every package but those in plain Python
locked out. Arguments: notebooks. Writes one JSON line a notebook: what was asked how often, and what was refused."""

from __future__ import annotations

import json
import sys
from importlib.abc import MetaPathFinder
from pathlib import Path
from typing import Any

PURE = {"kit", "babel", "fluent", "attr", "pytz", "typing_extensions", "svgelements"}


class Locked(MetaPathFinder):
    """Finds nothing but the standard library and `PURE`."""

    def find_spec(self, name: str, path: Any = None, target: Any = None) -> None:
        head = name.split(".")[0]
        if head not in PURE and head not in sys.stdlib_module_names and not head.startswith("_sysconfigdata"):
            raise ModuleNotFoundError(f"no module named {name!r} here", name=name)


def main(notebooks: list[str]) -> None:
    sys.meta_path.insert(0, Locked())
    from kit.page.engine import Engine
    from kit.page.opened import without_notebook

    without_notebook()
    for notebook in notebooks:
        engine = Engine(Path(notebook), offered=("en", "de"))
        refused, asked, drawn = [], 0, 0

        def ask(engine: Engine = engine, **message: Any) -> dict[str, Any]:
            nonlocal asked
            asked += 1
            answer: dict[str, Any] = json.loads(engine.answer(json.dumps(message)))
            if not answer["ok"]:
                refused.append([message["do"], answer["said"]])  # noqa: B023
            return answer

        about = ask(do="about")
        for step in about["steps"]:
            last = ask(do="draw", step={"kind": step["kind"], "key": step["key"], "picture": -1})
            drawn += bool(last["svg"])
            for number in range(1, last["step"]["pictures"]):
                drawn += bool(ask(do="draw", step={"kind": step["kind"], "key": step["key"], "picture": number})["svg"])
        proved = ask(do="prove")
        ask(do="draw", language="de", units="inch")
        ask(do="body", body={"name": "Ines", "typed": {"bust_girth": "94 cm"}}, shown=["bust_girth", "arm_length"])
        name, value = next(iter(about["values"].items()))
        ask(do="mend", values={name: value})
        told = {"finished": len(proved["finished"]), "exercises": len(proved["exercises"])}
        print(json.dumps({"asked": asked, "drawn": drawn, "refused": refused, **told}), flush=True)
    loaded = {name.split(".")[0] for name in sys.modules} - PURE - sys.stdlib_module_names
    print(json.dumps(sorted(name for name in loaded if not name.startswith("_") and name != "site")))


main(sys.argv[1:])
