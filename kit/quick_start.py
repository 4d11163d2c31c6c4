"""What a command need not wait for as it starts."""

from __future__ import annotations

import sys

_GRAMMAR = "rfc3987_syntax"


def leave_out_address_grammar() -> None:
    """Have jsonschema do without its grammar of internationalised web addresses (RFC 3987), unless it is there already.

    nbformat brings in jsonschema, which builds a parser for such addresses as soon as it is imported, should the
    package that holds the grammar be there. That takes two seconds of work, more than all else of a command's start,
    and no notebook's schema asks for it. Where the package is missing jsonschema leaves out that one check; a name
    that is None among the loaded modules counts as missing. Must be called before anything imports jsonschema.
    """
    sys.modules.setdefault(_GRAMMAR, None)  # type: ignore[arg-type]
