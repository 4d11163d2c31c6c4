# Sentences of kit/sewing/operations/finishes.py.

edge_finish-sew = Finish { $edge } with { $finish }.
edge_finish-why = Stitches over the raw edge hold the threads that would fray out of it.

topstitch-sew = From the right side stitch along { $edge }, { $distance } from it.
topstitch-edge = Edgestitch along { $edge } from the right side, { $distance } from it.
topstitch-sew_rows = From the right side stitch { $rows } rows along { $edge }, { $apart } apart, the first { $distance } from it.
topstitch-edge_rows = From the right side stitch { $rows } rows along { $edge }, { $apart } apart, the first an edgestitch { $distance } from it.
topstitch-why = A row from the right side keeps an edge flat and its layers in place, and it is meant to be seen.

staystitch-sew = Stitch along { $edge }, { $distance } outside the stitch line, so that it cannot stretch.
staystitch-why = A curve cut across the grain stretches as soon as it is handled.
