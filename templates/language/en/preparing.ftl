# Sentences of kit/sewing/operations/preparing.py.

gather-sew = Set the longest stitch and sew two rows along { $edge }, { $apart } apart, on either side of the stitch line. Leave long thread ends and do not backstitch.
gather-sew_more = Set the longest stitch and sew { $rows } rows along { $edge }, { $apart } apart. Leave long thread ends and do not backstitch.
gather-mark = Mark the quarters of { $edge } and of the edge it will be sewn to.
gather-draw = Pull the bobbin threads from both ends until it measures { $to } instead of { $full }, and wind them around a pin.
gather-draw_to_fit = Pull the bobbin threads from both ends until it fits { $fit }: { $to } instead of { $full }. Wind them around a pin.
gather-spread = Spread the gathers evenly between the marks.
gather-why = Two rows make the small folds lie side by side; a single row lets them tip over.
gather-why_quarters = Marked quarters keep the fullness where the design wants it.

ease_stitch-sew = Sew one row of long stitches along { $edge }, { $distance } outside the stitch line, and leave long thread ends.
ease_stitch-sew_two = Sew two rows of long stitches along { $edge } in the allowance, the first { $distance } outside the stitch line, and leave long thread ends.
ease_stitch-draw = Pull the bobbin thread until the edge is { $less } shorter and measures { $to }.
ease_stitch-draw_to_fit = Pull the bobbin thread until the edge is { $less } shorter and measures { $to }: so it fits { $fit }.
ease_stitch-draw_later = Pull the bobbin thread a little, until the edge begins to cup.
ease_stitch-smooth = Spread the fullness with your fingers until no fold shows, and shrink it with steam.
ease_stitch-why = A longer edge drawn up without a fold gives room for the body: over the shoulder, the elbow, the seat.

baste-sew = Baste along { $edge }, { $distance } outside the stitch line, through all layers.
baste-sew_on_line = Baste along { $edge } on the stitch line, through all layers, with a thread of another colour.
baste-sew_together = Lay { $edge } edge to edge, right sides together, pin, and baste on the stitch line with a thread of another colour.
baste-later = This basting comes out again. In a seam that begins with the wrong sides together or with a fold it comes out before the first row; in any other once the seam is sewn, close beside the basting and not through it.
baste-why = Long stitches hold the layers where pins would let them shift, and come out easily.

remove_basting-pull = Take out the basting along { $edge }: snip it every few stitches and pull.
