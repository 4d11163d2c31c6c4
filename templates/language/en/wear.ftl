# Findings of the garment on the body: whether it goes on, fits, and can be tied. $part is the name of a body measurement;
# $need, $has and other lengths come with their units. Keys that end in _do say what can be done.

wear-where = On the body

# ---- putting it on ----
wear-neck_small = opened as far as it goes, the neck is { $has } round, and a { $part } of { $need } must pass: { $amount } are missing.
wear-neck_small_do = Lower or widen the neck until it is { $amount } longer all round, or open it with a slit or zip that is { $half } longer.
wear-narrow_at = no way on: at the waist it lets { $has } through, opened as far as it goes, and { $need } must pass there for a { $part } of { $girth }.
wear-narrow_above = no way on: { $far } above the waist it lets { $has } through, opened as far as it goes, and { $need } must pass there for a { $part } of { $girth }.
wear-narrow_below = no way on: { $far } below the waist it lets { $has } through, opened as far as it goes, and { $need } must pass there for a { $part } of { $girth }.
wear-narrow_do = Open it farther: a zip, placket or slit that is { $half } longer gives { $amount } there. Or draw it that much wider.
wear-narrow_elastic_do = Cut the elastic at least { $amount } longer.
wear-armhole_small = an armhole is { $has } round; over the shoulder of an arm of { $arm } it needs { $need } at least.
wear-armhole_small_do = Lower it at the underarm until it is { $amount } longer.
wear-hand_stuck = a sleeve ends { $has } round, and a hand of { $need } must pass.
wear-hand_stuck_do = Make the opening { $amount } wider, or give it a slit that is buttoned.
wear-arm_stuck = a sleeve is { $has } round where the arm measures { $need }.
wear-arm_stuck_do = Make it wider by { $amount } and some ease.
wear-arm_tight = a sleeve has { $ease } of ease round the upper arm; in woven cloth the arm needs { $least } to bend.
wear-arm_tight_do = Make it { $amount } wider.
wear-heel_stuck = a trouser leg ends { $has } round, and a heel girth of { $need } must pass.
wear-heel_stuck_do = Make the hem { $amount } wider, or leave a slit in the side seam.

# ---- wearing it ----
wear-too_small = it measures { $has } where a { $part } of { $need } goes into it.
wear-too_small_do = Make it wider by { $amount } and at least { $ease } of ease: cloth that is woven does not stretch.
wear-ease_small = for { THE($part) } it has { $ease } of ease; a close garment of woven cloth wants { $least }.
wear-ease_small_do = Make it { $amount } wider there.
wear-stride = closed all round and without a slit its hem measures { $has }; a step needs { $need } about the knee.
wear-stride_do = Make the hem { $amount } wider, or leave a slit or a pleat in it.
wear-head_small = it is { $has } round, and the head measures { $head }.
wear-head_small_do = Make it { $amount } wider, and add 1 to 2 cm of ease.
wear-head_large = it is { $has } round for a head of { $head }: it comes down over the eyes.
wear-head_large_do = Make it narrower, or draw it in with a band.
wear-elastic_long = the elastic is { $has } round for a waist of { $waist }: it holds nothing.
wear-elastic_long_do = Cut it a little shorter than the waist.
wear-elastic_short = the elastic is { $has } round for a waist of { $waist }: it cuts in.
wear-elastic_short_do = Cut it longer, a little shorter than the waist.

# ---- tying it ----
# $strip is the title of a strip, as a text of its own.
wear-ties_short = the ties ({ $strip }) are { $long } long together, and the way round the body from one to the other is { $way }: they make no knot.
wear-ties_short_do = Cut each at least { $each } long.
wear-ties_no_bow = of the ties ({ $strip }), { $long } together, { $left } are left when they have gone { $way } round the body: enough for a knot, not for a bow.
wear-wrap_small = only ties hold the fronts together, and they lie { $has } over one another.
wear-wrap_small_do = Let them overlap by { $amount } more.
wear-belt_short = the belt ({ $strip }) is { $long } long; once round are { $around }, and the rest makes no knot.
wear-belt_short_do = Cut it { $amount } longer.
wear-strap_small = the strap ({ $strip }) and the edge between its ends make a loop of { $has }, and a head of { $head } must pass.
wear-strap_small_nobody = the strap ({ $strip }) and the edge between its ends make a loop of { $has }. The pieces follow no one’s measures; the head of a grown woman, { $head } on average, does not pass.
wear-strap_small_do = Cut the strap { $amount } longer.

# ---- worn and moved in ----
wear-stretch_spent = for { THE($part) } the cloth is stretched by { $spent } standing still, of { THE($stretch) } it gives: too little is left to breathe and reach with.
wear-ease_style = called { $style } fitting, it has { $ease } of ease for { THE($part) }; that style wants { $least } at least.
wear-pocket_low = a pocket opens { $has } below the waist; a hanging hand reaches in only down to { $least } below it.
wear-pocket_low_do = Lay it { $amount } higher at least.
wear-pocket_narrow = the mouth of a pocket is { $has } long; a flat hand wants { $need }.
wear-pocket_narrow_do = Make the mouth { $amount } longer.
wear-loop_small = a belt loop is { $has } long when its ends are turned under; the belt ({ $strip }), { $wide } wide, does not go through.
wear-loop_small_do = Cut the loop { $amount } longer, and a little more for the thickness of the belt.
wear-tie_opening = the opening in the seam is { $has } long; the tie ({ $strip }), { $wide } wide, jams in it.
wear-tie_opening_do = Leave at least { $least } open, or make the tie narrower.
wear-wrap_low = the fronts of the wrap meet { $meets } above the waist, and the breasts end { $bust } above it: nothing covers them.
wear-wrap_low_do = Draw the neck edge so that the fronts cross at least { $amount } higher, or let them overlap by more.
wear-wrap_gapes = the edge of the wrap is { $has } long from the neck down, and the body it lies on { $body }: it stands away.
wear-wrap_gapes_do = Take { $amount } out of it with a dart that is closed into side or waist, or ease it onto tape.
wear-wrap_pulls = the edge of the wrap is { $has } long from the neck down, and the body it goes over { $body }: it pulls across the bust and rides up.
wear-wrap_pulls_do = Lengthen the front over the bust by { $amount }: cut it across at the bust and spread it, and let a dart keep the side as long as it was.
wear-wrap_thigh = only ties hold the fronts together, and at the thigh they lie { $has } over one another; walking and sitting down want { $least }.
wear-wrap_thigh_do = Let each front pass the centre by { $half } more.
wear-button_bust = the button nearest to the bust lies { $off } from it; with more than { $most } the front gapes there.
wear-button_bust_do = Put a button at the bust, { $height } above the waist, and share out the others from there.
wear-arm_raised = from the waist up the side and down the underarm of the sleeve it measures { $has }, the body { $need }: an arm that is raised lifts it by { $up }.
wear-arm_raised_do = Raise the underarm of bodice and sleeve, or make the cap lower and the sleeve wider, until the two lengths grow by { $amount }.
wear-cut_on = from the waist up the side and down the underarm to where the sleeve ends it measures { $has }, the body with a level arm { $need }. The arm goes up by { $angle } degrees before the hem moves, 90 is level; raised so far it lifts the hem by { $up }.
wear-cut_on_do = Let the underarm meet the side higher, or let the sleeve slope less, until the two lengths together grow by { $amount }.
wear-cap_ease = the sleeve cap is { $ease } longer than the armhole; this cloth takes { $most } of ease at most without puckers.
wear-cap_ease_do = Draw the cap { $amount } shorter, or gather it and make a puffed sleeve of it.
wear-armhole_low = an armhole without a sleeve ends { $has } below the armpit and bares the side; { $most } are the most that is usual.
wear-armhole_low_do = Raise it by { $amount }.
wear-crotch_short = from the upper edge in front between the legs to the one behind it measures { $has }, and the body { $need } there: it cuts in when one sits.
wear-crotch_short_do = Make the crotch seam { $amount } longer: deepen its curve, or raise the back waist.

# ---- finished measurements ----
wear-finished_bust_girth = Finished girth at the bust
wear-finished_waist_girth = Finished girth at the waist
wear-finished_hip_girth = Finished girth at the hip
wear-finished_upper_arm_girth = Finished sleeve at the upper arm
wear-finished_small_ring = “{ $title }” comes out at { $has }, and a { $part } of { $need } must go through: { $amount } are missing, and nothing opens there.
wear-finished_small_whole = “{ $title }” comes out at { $has }, and it goes round a { $part } of { $need }: { $amount } are missing, and nothing of the garment opens.
wear-finished_small_do = Draw it { $amount } longer all round, let it open there by a slit or a zip of { $half } or more, or choose cloth that stretches and say so.
wear-untried_lines = Not tried on a body: no piece has a line that says where bust, waist or hip lies. Draw one as a guide of such a name, as waist_line.
wear-untried_measures = Not tried on a body: how high the lines of the pieces lie is told by measures that these sizes lack: { $measures }. Add them to the size chart.
wear-untried_girths = Not tried on a body: the sizes have none of { $measures }.
