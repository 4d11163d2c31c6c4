"""A class or a family at once: a personal set of pages, booklet and cloth to buy for every row of a table of bodies.

`order.py` says what is asked for, `table.py` what of it is done already, by content; `at_work.py` makes one set in the
notebook's own kernel, which `warm.py` keeps; `local.py` and `cluster.py` hand the rows out, on this machine or beyond
it; `report.py` writes the table and the index page.
"""

from __future__ import annotations
