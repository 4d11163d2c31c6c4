# Sentences of kit/sewing/operations/facing_edges.py.

finish_facing-overcast = Finish { $edge } with { $finish }.
finish_facing-guide = Stitch a guide row along { $edge }, { $turn } from the cut edge. Clip the curves up to it.
finish_facing-fold = Press the edge under along the guide row.
finish_facing-sew = Edgestitch along the fold, through the turned edge only.
finish_facing-why = The free edge of a facing lies flat inside and is only kept from fraying: a fold there would show on the outside.
finish_facing-why_turned = A turned edge is neat in thin cloth; the guide row is a line to fold along and keeps the curve from stretching.
