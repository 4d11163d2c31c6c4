# What lies at a place on an edge when one seam line is walked along the other: in pictures, findings and lists.

walk-start = start
walk-end = end
walk-notch = notch
walk-double_notch = double notch
walk-corner = corner
# Where one edge of a run meets the next.
walk-seam = { $first } to { $second }
# $first is the name of an opening marked on the edge.
walk-mark_start = start of { THE($first) }
walk-mark_end = end of { THE($first) }
walk-both = { $names }
