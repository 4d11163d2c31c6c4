# Sentences of kit/sewing/operations/drawn_in.py.

thread_elastic-draw = Cut { $length } of elastic { $width } wide, fix a bodkin to one end and draw it through the { $tube } of { $edge }. Hold on to the other end.
thread_elastic-join = Lay its ends { $join } over one another, not twisted, and stitch them in a box.
thread_elastic-fasten = Stitch both its ends fast across the ends of the { $tube }.
thread_elastic-close = Let the ring slip inside, and stitch the gap on { $gap } shut in line with the row.
thread_elastic-spread = Stretch the edge a few times, so that the fullness spreads evenly.
thread_elastic-why = Elastic is cut shorter than the edge it draws in; try its length around the body before it is joined.

thread_cord-draw = Fix a bodkin to one end of a cord { $length } long and draw it through the { $tube } of { $edge }.
thread_cord-draw_strip = Fix a bodkin to one end of { THE($strip) } and draw it through the { $tube } of { $edge }.
thread_cord-ends = Bring its ends out at { $places }.
thread_cord-close = Stitch the gap on { $gap } shut in line with the row.
thread_cord-tack = Stitch once across { $tube } and cord, halfway round, so that the cord cannot be pulled out. Knot its ends.
thread_cord-knot = Knot its two ends together, so that they cannot slip back inside.
thread_cord-why = No drawstrings at the hood or neck of clothes for young children; elsewhere keep the ends short and follow EN 14682, ASTM F1816 and local rules.

drawn_in-beside_elastic = Draw it in along the elastic, on the side of the eyelets, and do not let the bodkin cross it.
drawn_in-beside_cord = Draw it in along the cord, which lies on the side of the eyelets, and do not let the bodkin cross it.
