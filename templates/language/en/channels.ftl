# Sentences of kit/sewing/operations/channels.py.

channel-mark = On the right side of { $edge } chalk a line { $distance } from the edge and a second one { $depth } below it. Pin the layers together.
channel-first = Stitch along the upper line, through all layers.
channel-second = Stitch along the lower line, { $total } from the edge, through all layers too.
channel-second_gap = Stitch along the lower line, { $total } from the edge, through all layers too, but leave { $gap } open for threading, on { $where }. Backstitch at both ends of the gap.
channel-why = The two rows keep the layers together, so that what is drawn through stays between them and cannot slip up to the edge or down into the lining.
