# ---- fit changes: what they are called

fit-lengthen_above_waist = Lengthen above the waist
fit-lengthen_below_waist = Lengthen below the waist
fit-lengthen_above_hip = Lengthen above the hip
fit-lengthen_above_hem = Lengthen above the hem
fit-lengthen_above_knee = Lengthen above the knee
fit-lengthen_below_knee = Lengthen below the knee
fit-lengthen_above_elbow = Lengthen above the elbow
fit-lengthen_below_elbow = Lengthen below the elbow
fit-shorten_above_waist = Shorten above the waist
fit-shorten_below_waist = Shorten below the waist
fit-shorten_above_hip = Shorten above the hip
fit-shorten_above_hem = Shorten above the hem
fit-shorten_above_knee = Shorten above the knee
fit-shorten_below_knee = Shorten below the knee
fit-shorten_above_elbow = Shorten above the elbow
fit-shorten_below_elbow = Shorten below the elbow
fit-long_rise = Long rise
fit-short_rise = Short rise
fit-full_bust = Full bust
fit-small_bust = Small bust
fit-full_seat = Full seat
fit-flat_seat = Flat seat
fit-sway_back = Sway back
fit-round_back = High round back
fit-broad_shoulder = Broad shoulder
fit-narrow_shoulder = Narrow shoulder
fit-sloping_shoulder = Sloping shoulder
fit-square_shoulder = Square shoulder
fit-forward_shoulder = Forward shoulder
fit-full_upper_arm = Full upper arm
fit-let_out_sides = Let out the side seams
fit-take_in_sides = Take in the side seams
fit-lower_underarm = Lower the underarm
fit-raise_underarm = Raise the underarm

# ---- how each is done by hand, $amount being how much

fit-lengthen_text = Cut every piece that is sewn together here across on its lengthen line, and spread the cut by { $amount }. Keep the grainline in one line. Draw fold and straight seams with a ruler from end to end, curved seams smoothly over the gap.
fit-shorten_text = Fold a tuck across every piece that is sewn together here, on its shorten line, so that it takes up { $amount } in all. Keep the grainline in one line. Draw fold and straight seams with a ruler from end to end, curved seams smoothly over the fold.
fit-long_rise_text = Cut front and back across between waist and hip, on their lengthen lines, and spread both by { $amount }. Draw the crotch seam and the side seam smoothly over the gap.
fit-short_rise_text = Fold a tuck across front and back between waist and hip, on their shorten lines, so that it takes up { $amount }. Draw the crotch seam and the side seam smoothly over the fold.
fit-full_bust_text = Slash the front from its lower edge up to the bust point and on to the armhole (to the middle of the shoulder where the front has no bust dart). Do not cut through there: it is the hinge. Where there is a bust dart, slash along it to the bust point. Open the slash at the bust point by half of { $amount } and keep it as wide below; the bust dart becomes wider by itself. Cut the centre across below the bust and let it down until the lower edges are level. Draw the darts anew to the new bust point.
fit-small_bust_text = Slash the front from its lower edge up to the bust point and on to the armhole (to the middle of the shoulder where the front has no bust dart), and along the bust dart where there is one. Lap the slash at the bust point by half of { $amount } and keep the lap as wide below; the bust dart becomes narrower by itself. Cut the centre across below the bust and lap it until the lower edges are level. Draw the darts anew to the new bust point.
fit-full_seat_text = Slash the back from its centre across to the side, above the fullest part of the seat, and open it by { $amount } at the centre; the side is the hinge. Draw the centre smoothly or, on the fold, straight; what the waist gains goes into the dart next to the centre.
fit-flat_seat_text = Fold a wedge out of the back, above the fullest part of the seat: { $amount } at the centre, nothing at the side. Draw the centre smoothly or, on the fold, straight; what the waist loses comes out of the dart next to the centre.
fit-sway_back_text = Take { $amount } out of the back at the centre of the waist, tapering to nothing at the side seam: draw the waist edge into the piece there, or fold the wedge out where the back goes on below the waist, and keep the centre straight. Darts keep their width.
fit-round_back_text = Slash the back from its centre across to the armhole, between the shoulder blades, and open it by { $amount } at the centre; the armhole is the hinge. Draw the centre straight up. What the neck gains is taken up in a neck dart or eased in.
fit-broad_shoulder_text = Slash from the shoulder down to the armhole, on front and back alike, and open it by { $amount } at the shoulder; the armhole is the hinge and keeps its length. Draw the shoulder straight from the neck to its new tip.
fit-narrow_shoulder_text = Slash from the shoulder down to the armhole, on front and back alike, and lap it by { $amount } at the shoulder; the armhole is the hinge and keeps its length. Draw the shoulder straight from the neck to its new tip.
fit-sloping_shoulder_text = Move the armhole as it is { $amount } down, on front and back alike, and draw the shoulder from the neck to its new tip. The underarm goes down by as much.
fit-sloping_shoulder_sleeve = The sleeve still fits.
fit-square_shoulder_text = Move the armhole as it is { $amount } up, on front and back alike, and draw the shoulder from the neck to its new tip. The underarm goes up by as much.
fit-square_shoulder_sleeve = The sleeve still fits.
fit-forward_shoulder_text = Take { $amount } off the front at the tip of the shoulder, to nothing at the neck, and add as much to the back.
fit-forward_shoulder_sleeve = On the sleeve move the mark for the shoulder seam to the front by as much.
fit-full_upper_arm_text = Slash the sleeve down its middle and across at the upper arm. Spread it at the upper arm by { $amount } in all; wrist, top of the cap and both underarm points are hinges. Cap, underarm seams and wrist keep their lengths, the cap becomes lower.
fit-let_out_sides_text = Draw the side seams of front and back farther out, each by a quarter of { $amount }, over their whole length.
fit-let_out_sides_sleeve = Widen the sleeve at its underarm seams until its cap fits the armhole again.
fit-take_in_sides_text = Draw the side seams of front and back farther in, each by a quarter of { $amount }, over their whole length.
fit-take_in_sides_sleeve = Narrow the sleeve at its underarm seams until its cap fits the armhole again.
fit-lower_underarm_text = Mark the underarm { $amount } lower on the side seams of front and back and draw the armhole down to it.
fit-lower_underarm_sleeve = Lower the underarm points of the sleeve along its underarm seams until its cap fits the armhole again.
fit-raise_underarm_text = Mark the underarm { $amount } higher on the side seams of front and back and draw the armhole up to it.
fit-raise_underarm_sleeve = Raise the underarm points of the sleeve along its underarm seams until its cap fits the armhole again; those of a low cap also move inward.

# ---- and what stands beside them

fit-the_difference = the difference
fit-part_1 = { $name }
fit-part_2 = { $name }, half on each side
fit-part_4 = { $name }, a quarter on each seam
fit-lacking = { $piece } has not the edges and lines that this change goes by.
fit-lacking_do = Choose another change, or place it after the step that draws them.
fit-too_short = { $piece } cannot be made { $amount } shorter there.
fit-too_much = { $amount } is too much for { $piece }.
fit-dart = { THE($dart) } of { $piece } cannot take up that much.
fit-bust_far = the front cannot be changed by { $amount } at the bust.
fit-arm_far = the sleeve cannot be made { $amount } wider at the upper arm.
fit-no_piece = there is no front or back that this change could be made to.
fit-no_level = no piece has the two levels of the body between which it would be cut.
fit-too_far = here it goes no further than { $most }; { $amount } is asked for.
fit-too_far_do = Set it to { $most } or less, and fit the rest at a try-on.
fit-no_sleeve = there is no set-in sleeve.

fit-picture = { $title }: { $pieces }, before and after.
