# Sentences of the sewing operations, pictures' alternative texts, and the small words they are put together
# from. Braces hold values; a translation keeps the names and may put them in any order.

language-name = English

phrase-minutes = { $count ->
        [one] about { $count } minute
       *[other] about { $count } minutes
    }

# How places and lists are said.

phrase-edge_on_side = { $side } { $edge }
phrase-piece = { THE($piece) }
phrase-piece_on_side = the { $side } { $piece }
phrase-place = { THE($edge) } of { THE($piece) }
phrase-place_on_side = { THE($edge) } of the { $side } { $piece }
# Marks numbered in a row, such as "buttonhole 1 to 6"; and a mark of both halves, where others named with it are on one.
phrase-numbered_row = { $name } { $first } to { $last }
phrase-on_both_halves = { $place }, left and right
# A piece with its edge or mark, such as "front side" and "front left side".
phrase-run = { $piece } { $edge }
phrase-run_on_side = { $piece } { $side } { $edge }
# Runs of edges sewn as one row to another.
phrase-row = { $first } with { $last }
# A title within a sentence: $small is in small letters, $given as the lesson writes it (for languages with capital nouns).
phrase-title = { $small }
# $sound is "i" before a word that begins with that vowel (Spanish needs it), else "other"; a language may leave it out.
phrase-two = { $first } and { $last }
phrase-more = { $first }, { $last }
phrase-then = { $first } { $then }
# Parts of a text that may have commas of their own.
phrase-parted = { $first }; { $last }
# The same for a list of places, each of which may be a list itself.
phrase-two_places = { $first } and { $last }
phrase-more_places = { $first }, { $last }

# A part of edges from one landmark to another, "side seam from the slit to the hem"; and the landmarks.
phrase-part = { $place } { $stretch }
phrase-stretch = from { $start } to { $end }
phrase-stretch_below = from { $start } to { $end } below { THE($edge) }
phrase-stretch_above = from { $start } to { $end } above { THE($edge) }
phrase-stretch_from = from { $start } to { $end }, measured from { THE($edge) }
phrase-stretch_along = from { $start } to { $end }, measured from its start
phrase-spot_below = { $size } below { THE($edge) }
phrase-spot_above = { $size } above { THE($edge) }
phrase-spot_from = { $size } from { THE($edge) }
phrase-spot_along = { $size } from its start
phrase-spot_edge = at { THE($edge) }
phrase-spot_mark = at { $mark }
phrase-spots_below = { $first } and { $second } below { THE($edge) }
phrase-spots_above = { $first } and { $second } above { THE($edge) }
phrase-spots_from = { $first } and { $second } from { THE($edge) }
phrase-spots_along = { $first } and { $second } from its start
phrase-at_mark = { THE($mark) }
phrase-at_mark_upper = the upper mark of { THE($mark) }
phrase-at_mark_lower = the lower mark of { THE($mark) }
phrase-at_mark_toward = the mark of { THE($mark) } towards { THE($edge) }
phrase-at_notch = the notch
phrase-at_notch_double = the double notch
phrase-at_notch_number = notch { $number } counted from { THE($edge) }
phrase-at_edge = { THE($edge) }
phrase-at_start = its start
phrase-at_end = its end
phrase-at_below = { $size } below { THE($edge) }
phrase-at_above = { $size } above { THE($edge) }
phrase-at_from = a point { $size } from { THE($edge) }
phrase-at_along = a point { $size } from its start

word-left = left
word-right = right
word-face-right = right side up
word-face-wrong = wrong side up
word-interfacing-right = adhesive side down
word-interfacing-wrong = adhesive side up
word-finish-zigzag = a zigzag stitch
word-finish-overlock = an overlock stitch
word-finish-pinked = pinking shears
word-tube-casing = casing
word-tube-channel = channel
word-stuff-interfacing = interfacing
word-thing-zip = zip
word-thing-zip_tape = tape of an open zip
word-thing-button = button
word-thing-buttonhole = buttonhole
word-thing-hook = hook
word-thing-bar = bar for a hook
word-thing-eye = eye for a hook
word-thing-snap = ball half of a snap
word-thing-socket = socket of a snap
word-thing-eyelet = eyelet
word-thing-cut = line to cut along
word-thing-tower = tower of a placket
word-thing-elastic = length of elastic
word-thing-cord = cord
word-thing-threaded = bodkin with the end that is in the tunnel
word-thing-binding = binding strip
word-thing-clips = row of clips in the allowance
word-thing-caught = end of a strip caught between the layers
word-thing-tie = tie or strap that comes out
word-thing-gap = gap held open
word-thing-wedges = row of wedges cut out of the allowance
word-close = close
word-easy = easy
word-loose = loose

# What people call an edge that the lesson gives no words of its own, by its name.

edge-outer = outer edge
edge-inner = inner edge
edge-wrist = wrist edge
edge-side = side seam
edge-neck = neck edge
edge-shoulder = shoulder seam
edge-opening = sleeve opening
edge-centre = centre line
edge-hem = hem
edge-waist = waist
edge-hip = hip
edge-armhole = armhole
edge-inseam = inseam
edge-outseam = outseam
edge-cap = cap
edge-overarm = overarm
edge-underarm = underarm
edge-front_underarm = front underarm
edge-back_underarm = back underarm
edge-centre_front = centre front
edge-centre_back = centre back
edge-front_side = front side
edge-back_side = back side
edge-left_side = left side
edge-right_side = right side
edge-top = top
edge-bottom = bottom
edge-mouth = mouth
edge-near_end = near end
edge-far_end = far end
edge-front_end = front end
edge-back_end = back end
edge-button_end = button end

common-both_sides = Work the left and the right side alike.
common-pin_right = Pin { $a } to { $b }, right sides together, along { THE($edge) }.
common-pin_wrong = Pin { $a } to { $b }, wrong sides together, along { THE($edge) }.
common-pin_right_same_piece = Pin the left and the right half right sides together along { THE($edge) }.
common-pin_wrong_same_piece = Pin the left and the right half wrong sides together along { THE($edge) }.
common-both_sides_open_left = Leave it open on the left half of the body only; sew the right half in the same way, but all along.
common-both_sides_open_right = Leave it open on the right half of the body only; sew the left half in the same way, but all along.
common-pin_right_run_on_run = Pin { $a } to { $b }, right sides together.
common-pin_wrong_run_on_run = Pin { $a } to { $b }, wrong sides together.
common-match_notches = Match the notches.
common-match_seams = Match the seams.
common-match_seams_and_notches = Match the seams and the notches.
common-ease = One edge is { $ease } longer on purpose: spread that fullness evenly and pin it.
common-press_open = Press the allowances open.
common-press_one_side = Press the seam to one side.
common-press_later = Do not press it yet.
common-press_towards = Press the seam towards { $piece }.

alt-bottom = { $piece } lies { $face }.
alt-together = { $piece } lies on top, { $face }, edge to edge along { THE($edge) }.
alt-open = { $piece } lies beside it, opened out at { THE($edge) }, { $face }.
alt-flat = { $piece } lies on it, { $face }.
alt-turned = { START(THE($edge)) } is folded over by { $depth }.
alt-row = A new row of stitching runs along { THE($edge) }.
alt-row_inside = A new row of stitching runs { $inset } inside { THE($edge) }.
alt-row_outside = A new row of stitching runs in the allowance, { $inset } outside the stitch line of { THE($edge) }.
alt-old_row = The earlier row along { THE($edge) } shows.
alt-gap = It leaves { $gap } open.
alt-strip = { START(THE($strip)) } is shown.
alt-pinned = Pins hold { THE($edge) }.
alt-folded = { $piece } is folded over along a line.
alt-thing = A { $thing } is shown in its place.
alt-things = { $count } of these are shown in their places: { $thing }.
alt-row_line = A new row of stitching follows the marked line.
alt-row_baste = A row of long basting stitches runs along { THE($edge) }.
alt-row_gather = Rows of long stitches for gathering run along { THE($edge) }.
alt-row_box = A box with a cross is stitched at { THE($edge) }.
alt-row_hand = Hand stitches run along { THE($edge) }.
alt-section = A cross-section shows how the layers lie.
alt-draft = Draft of { $pieces }.
alt-draft_strips = Strips to cut: { $strips }.
alt-draft_new = New lines: { $lines }.
alt-draft_removed = Taken away or redrawn: { $lines }.
alt-draft_points = New points: { $points }.
alt-draft_measures = Measures: { $measures }.
alt-draft_measure = { $name } { $value }
