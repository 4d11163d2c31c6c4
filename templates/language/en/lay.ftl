# Cutting layouts and how much cloth to buy (kit/cloth/lay.py, kit/cloth/yardage.py, kit/picture/lay.py).

lay-yardage_note = Each length is that of a lay that was worked out with the true outlines of the pieces, all on their grain and { $apart } apart, rounded up as cloth is sold.
# $share is a percentage such as 5%.
lay-yardage_shrinkage = It allows for { $share } of the length that the cloth loses when it is washed; wash and press it before you cut.
lay-yardage_unwashed = Nothing is added for shrinking; buy more of cloth that shrinks, and wash it before you cut.
lay-may_fold = { $sign } This length is enough on folded cloth too.
lay-falls = Size { $smaller } takes more than { $larger }: its pieces were laid just as often, but they do not go together as closely.
lay-interfacing_pieced = The interfacing of these is cut in two lengths, which overlap by { $overlap }: { $pieces }. In one length it takes as much as the piece is long.

# The picture. $width and $length are lengths such as 140 cm (55 in).
lay-title = Cutting layout
lay-heading_main = Main cloth { $width } wide, { $length } long
lay-heading_lining = Lining { $width } wide, { $length } long
lay-heading_interfacing = Interfacing { $width } wide, { $length } long
# Above each part of the cloth. $length is the length of that part.
lay-flat_cloth = Opened out flat, right side up. Cut through one layer.
lay-flat_interfacing = Opened out flat; glue side, if it has one, down. Cut through one layer.
lay-folded_cloth = Folded lengthwise, right sides together. Cut through both layers.
lay-folded_interfacing = Folded lengthwise. Cut through both layers.
lay-opened_cloth = The rest, { $length } long, opened out flat, right side up. Cut through one layer.
lay-opened_interfacing = The rest, { $length } long, opened out flat; glue side, if it has one, down. Cut through one layer.
# Below the picture.
lay-dashed = Dashed outline: here the paper lies turned over, printed side down; a half is turned about its fold line.
# Along the edges of the cloth.
lay-fold = fold
lay-selvedge = selvedge
lay-selvedges = both selvedges
lay-grain = lengthwise grain
lay-grain_nap = tops this way
# $half is half the width of the cloth.
lay-half_width = half: { $half }
# On a piece.
lay-piece_title = { $number } { $title }
lay-turned_over = turned over
# $count strips lie side by side.
lay-strips = { $count ->
    [one] { $count } strip
   *[other] { $count } strips
}
# What someone hears who cannot see the picture. $heading is one of the headings above.
lay-alt = Cutting layout. { $heading }.
lay-alt_flat = The cloth is opened out flat, one layer with the right side up.
lay-alt_lengthwise = The cloth is folded along its length, its selvedges together.
lay-alt_part = The cloth is folded along its length for the first part and opened out flat beyond it.
lay-alt_piece = { $count ->
    [one] Piece { $number }, { $title }, is laid once.
   *[other] Piece { $number }, { $title }, is laid for { $count } of them.
}
lay-alt_fold = Piece { $number }, { $title }, lies at the fold.
lay-alt_over = { $count ->
    [one] One piece of paper is turned over.
   *[other] { $count } pieces of paper are turned over.
}
lay-alt_half = { $count ->
    [one] The paper of one piece is a half, turned over about its fold line for the other half.
   *[other] The paper of { $count } pieces is a half, turned over about its fold line for the other half.
}
