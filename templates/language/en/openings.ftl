# Sentences of kit/sewing/operations/openings.py. $beside is an edge beside the seam.

opening-leave_part = Leave { $size } of { THE($edge) } unsewn, from { $from } to { $to } along it. Backstitch at both ends of the opening.
opening-leave_part_from = Leave { $size } of { THE($edge) } unsewn: from { $from } to { $to }, measured from { THE($beside) }. Backstitch at both ends of the opening.
opening-leave_mark = Leave { THE($mark) } unsewn between its marks: { $size }, from { $from } to { $to } along the part that is sewn. Backstitch at both ends of the opening.
opening-leave_mark_from = Leave { THE($mark) } unsewn between its marks: { $size }, from { $from } to { $to }, measured from { THE($beside) }. Backstitch at both ends of the opening.
opening-leave_next = Leave { THE($size) } of { THE($edge) } next to { THE($beside) } unsewn. Backstitch where the opening meets the row.
opening-leave_start = Leave the first { $size } of { THE($edge) } unsewn. Backstitch where the opening meets the row.
opening-leave_end = Leave the last { $size } of { THE($edge) } unsewn. Backstitch where the opening meets the row.
opening-gap_part = Leave a gap of { $size } in { THE($edge) } for turning, from { $from } to { $to } along it. Backstitch at both ends of the gap.
opening-gap_part_from = Leave a gap of { $size } in { THE($edge) } for turning: from { $from } to { $to }, measured from { THE($beside) }. Backstitch at both ends of the gap.
opening-gap_next = Leave a gap of { $size } in { THE($edge) } for turning, next to { THE($beside) }. Backstitch where it meets the row.
opening-gap_start = Leave a gap for turning: the first { $size } of { THE($edge) }. Backstitch where it meets the row.
opening-gap_end = Leave a gap for turning: the last { $size } of { THE($edge) }. Backstitch where it meets the row.
opening-clip = At both ends of the opening clip straight into both allowances, { $depth } deep: up to the stitch line and not a thread further.
opening-clip_one = Where the opening meets the row, clip straight into both allowances, { $depth } deep: up to the stitch line and not a thread further.
opening-turn = Along the opening fold each allowance along its stitch line to the wrong side of its own piece, turn its raw edge under and stitch it down. Press.
opening-untrimmed = Do not trim along the opening: its allowances are stitched down already.
opening-again = Do not sew across the opening; backstitch at its ends.
