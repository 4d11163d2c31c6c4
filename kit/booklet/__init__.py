"""From notebook to instruction booklet."""

from kit.quick_start import leave_out_address_grammar

leave_out_address_grammar()
