# What a fitting changed, in sentences and in the picture that lays the draft before it and after it over each other.

# $name is a parameter as the lesson calls it ("shoulder lift"); $before and $after are lengths in both systems,
# shares in per cent or whole numbers.
fitting-changed = { $name } from { $before } to { $after }.

# Nothing on the stitch lines moved (an allowance changed, say).
fitting-no_line_moves = No stitch line moves.
# $piece is the title of a piece that one of the two drafts has not.
fitting-new_piece = { $piece }: this piece is new.
fitting-gone_piece = { $piece }: this piece is not needed any more.
fitting-hardly = { $piece }: its lines move by less than a millimetre.
fitting-darts = { $piece }: the darts or pleats lie elsewhere.
# A point where two edges meet slid along them, but no line moved.
fitting-meets_elsewhere = { $piece }: the lines stay, but meet in another place.

# How one edge of a piece moved. $piece is its title, $edge the edge ("overarm"), $way is up, down, out (out of the
# cloth: more cloth) or in; $size a length in both systems. $at and $to name the neighbouring edges at its ends.
fitting-all_along =
    { $way ->
        [up] { $piece }: { THE($edge) } is raised by { $size } all along.
        [down] { $piece }: { THE($edge) } is lowered by { $size } all along.
        [out] { $piece }: { THE($edge) } is moved outward by { $size } all along.
       *[in] { $piece }: { THE($edge) } is moved inward by { $size } all along.
    }
fitting-to_nothing =
    { $way ->
        [up] { $piece }: { THE($edge) } is raised by { $size } at { THE($at) }, tapering to nothing at { THE($to) }.
        [down] { $piece }: { THE($edge) } is lowered by { $size } at { THE($at) }, tapering to nothing at { THE($to) }.
        [out] { $piece }: { THE($edge) } is moved outward by { $size } at { THE($at) }, tapering to nothing at { THE($to) }.
       *[in] { $piece }: { THE($edge) } is moved inward by { $size } at { THE($at) }, tapering to nothing at { THE($to) }.
    }
fitting-middle =
    { $way ->
        [up] { $piece }: { THE($edge) } is raised by up to { $size } between its ends.
        [down] { $piece }: { THE($edge) } is lowered by up to { $size } between its ends.
        [out] { $piece }: { THE($edge) } is moved outward by up to { $size } between its ends.
       *[in] { $piece }: { THE($edge) } is moved inward by up to { $size } between its ends.
    }
# Two ends that move the same way by different amounts.
fitting-unequal =
    { $way ->
        [up] { $piece }: { THE($edge) } is raised by { $size } at { THE($at) } and by { $other } at { THE($to) }.
        [down] { $piece }: { THE($edge) } is lowered by { $size } at { THE($at) } and by { $other } at { THE($to) }.
        [out] { $piece }: { THE($edge) } is moved outward by { $size } at { THE($at) } and by { $other } at { THE($to) }.
       *[in] { $piece }: { THE($edge) } is moved inward by { $size } at { THE($at) } and by { $other } at { THE($to) }.
    }
# Two ends that move different ways: one sentence for each.
fitting-one_end =
    { $way ->
        [up] { $piece }: at { THE($at) } { THE($edge) } is raised by { $size }.
        [down] { $piece }: at { THE($at) } { THE($edge) } is lowered by { $size }.
        [out] { $piece }: at { THE($at) } { THE($edge) } is moved outward by { $size }.
       *[in] { $piece }: at { THE($at) } { THE($edge) } is moved inward by { $size }.
    }

# The picture. $piece is a piece's title, $titles a list of edges, $words the sentences above.
fitting-title = { $piece }, before and after
fitting-alt = { $piece } before the fitting, dashed, and after it, drawn over each other. What moved is drawn heavy. { $words }
# The same picture while a value is being moved.
fitting-alt_moving = { $piece } before the fitting, dashed, and as it is now, drawn over each other.
