# Titles of the pieces of the kit's own blocks, as they stand on the paper until the lesson gives its own.

block-front_bodice = Front bodice
block-back_bodice = Back bodice
block-front_skirt = Front skirt
block-back_skirt = Back skirt
block-front_trouser_leg = Front trouser leg
block-back_trouser_leg = Back trouser leg
block-sleeve = Sleeve

# What a reader must know of a traced top; $size is the size it fits, or none.
block_note-traced =
    { $size ->
        [none] { $title } is traced from a garment and fits the wearer it was traced for alone; it does not change with the body.
       *[other] { $title } is traced from a garment and fits size { $size } alone; it does not change with the body.
    }

# ---- bodies a block cannot be drafted for ----
blocks-missing = { THE($measure) } is missing.
blocks-missing_do = Measure it: { $note }
blocks-missing_own_do = Give it with the other measurements.
blocks-for_body = { $block } for { $body }
blocks-two_refused = a { $one } of { $one_value } with a { $other } of { $other_value } { $trouble }
blocks-two_refused_do = Measure { $one } and { $other } again.
blocks-goes_one_do = Measure { $one } and { $other } again. It can be drafted with { $first }.
blocks-goes_two_do = Measure { $one } and { $other } again. It can be drafted with { $first }, or with { $second }.
blocks-goes_with = a { $measure } of { $value }
blocks-estimated = { $what } Estimated, not measured: { $measures }.
blocks-again_do = Measure { THE($measure) } again.
blocks-arm_short = an { $measure } of { $value } is too short for a cap that fits an armscye of { $armscye }.
blocks-arm_large = an { $measure } of { $value } and { $ease } of ease is too large for an armscye of { $armscye }: the cap would be lower than { $least }.
blocks-arm_large_do = Measure the upper arm and the armscye depth again, deepen the armhole, or take less ease.
blocks-arm_small = an { $measure } of { $value } and { $ease } of ease is too small for an armscye of { $armscye }: the cap would be higher than { $most }.
blocks-arm_small_do = Measure the upper arm and the armscye depth again, or take more ease at the upper arm.
blocks-wrist_wide = a { $measure } of { $value } makes a wrist far wider than the upper arm of { $arm }.
blocks-wrist_narrow = a { $measure } of { $value } makes a wrist far narrower than the upper arm of { $arm }.
blocks-armscyes_differ = a front armscye of { $front } and a back armscye of { $back } are too different for one sleeve.
blocks-armscyes_differ_do = Look at where the shoulder seam meets the armhole.
blocks-ease_negative = ease is zero or more.
blocks-refused_neck_shoulders = makes a neck too wide for the shoulders.
blocks-refused_no_side_seam = leaves no side seam above the waist.
blocks-refused_neck_armhole = makes a front neck as deep as the armhole.
blocks-refused_side_flat = makes a side seam lie flatter than 45 degrees.
blocks-refused_armhole_shallow = leaves an armhole too shallow for an arm.
blocks-refused_shoulder_beyond = carries the shoulder beyond the side of the bust.
blocks-refused_width_beyond = reaches beyond the side of the bust.
blocks-refused_width_inside = lies far inside the shoulder tip.
blocks-refused_width_past_tip = reaches far beyond the shoulder tip.
blocks-refused_side_leans = makes the side seam lean too far for an armhole.
blocks-refused_no_dart_room = leaves no room for darts above the waist.
blocks-refused_side_leans_20 = makes a side seam lean by more than 20 degrees.
blocks-refused_bust_dart_deep = makes a bust dart as deep as the side seam.
blocks-refused_no_waist_shape = leaves nothing to shape from hip to waist.
blocks-refused_darts_wide = makes darts too wide to lie flat.
blocks-refused_hip_side_flat = makes the side seam lie too flat.
blocks-refused_below_hem = reaches below the hem.
blocks-refused_hip_crotch = leaves no room between hip and crotch.
blocks-refused_leg_slant = makes the leg's side slant too much.
blocks-refused_crotch_curve = leaves no room for the crotch curve.

# ---- more of them ----
blocks-refused_back_low = sets the centre back too low.
blocks-refused_back_high = sets the centre back too high.
blocks-refused_wide_leg = makes a leg far too wide.
blocks-refused_fork_wide = makes a crotch too wide.

block_title-bodice = Bodice block
block_title-darted_bodice = Darted bodice block
block_title-skirt = Skirt block
block_title-trousers = Trouser block
block_title-with_sleeve = { $block } with a sleeve
