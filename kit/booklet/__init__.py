"""From notebook to instruction booklet."""
