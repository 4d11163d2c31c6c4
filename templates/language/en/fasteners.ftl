# Sentences of kit/sewing/operations/fasteners.py.

snaps-first = Sew the flat half of each snap, the one with the ball, to the inside of the overlap at { $places }, through the inner layer only.
snaps-second = { $count ->
    [one] Chalk it, close the garment to mark where it meets, and sew the other half on at { $under }.
   *[other] Chalk it, close the garment to mark where it meets, and sew the other halves on at { $under }.
}
snaps-why = The chalk prints the exact place, so that the closed edge lies flat.

hooks-first = { $count ->
    [one] Sew the hook to the inside of the overlap at { $places }, a little back from its edge.
   *[other] Sew the hooks to the inside of the overlap at { $places }, a little back from its edge.
}
hooks-second = { $count ->
    [one] Close the garment, mark where the hook reaches, and sew the bar on at { $under }.
   *[other] Close the garment, mark where the hooks reach, and sew the bars on at { $under }.
}
hooks-why = Set a little back, the hook is hidden and the overlap is drawn taut.
eyes-first = { $count ->
    [one] Sew the hook to the inside of the one edge at { $places }, its bend { $reach } back from the edge: through both rings, and over the shank below the bend.
   *[other] Sew the hooks to the inside of the one edge at { $places }, the bend of each { $reach } back from the edge: through both rings, and over the shank below the bend.
}
eyes-second = { $count ->
    [one] Sew the eye to the inside of the other edge at { $under }, the loop reaching { $reach } beyond it: through both rings, and over the wire on either side at the edge.
   *[other] Sew the eyes to the inside of the other edge at { $under }, the loop reaching { $reach } beyond it: through both rings, and over the wire on either side at the edge.
}
eyes-close = { $count ->
    [one] Hook it: the edges just meet, neither lapping nor gaping.
   *[other] Hook them: the edges just meet, neither lapping nor gaping.
}
eyes-why = Set back by as much as the eye reaches out, the hook pulls the two edges together and hides behind them.

eyelets-back = Fuse or baste a scrap of interfacing behind { $places }.
eyelets-set = Set an eyelet at each by the maker's instructions, or work a small buttonhole, through this one layer only.
eyelets-why = In one layer only, the cord comes out of the casing and not through the garment; the scrap keeps the hole from tearing out.
cord_holes-work = Work a small buttonhole at { $places } through this one layer and its interfacing, so long that the cord runs through freely.
cord_holes-cut = Put a pin across each end and cut the slit open from the middle outwards with a seam ripper.
lacing_eyelets-back = See that interfacing lies between the layers where the eyelets come; fuse or baste a strip along the edge if there is none.
lacing_eyelets-set = Make a small hole at { $places } and at { $opposite }, through all layers, and set an eyelet at each by the maker's instructions, its finished face outside.
lacing_eyelets-lace = Lace the two edges together: each eyelet must lie level with the one opposite.
lacing_eyelets-why = Lacing pulls hard at each hole: all layers and the interfacing share the strain.
