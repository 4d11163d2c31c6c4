# How a body is named on pieces and pages: a size of the chart or a person's label, or what is drawn without a body.

body-size = size { $name }
body-one_size = one size

# Which size to draw for a body and where to blend. $measure is a measure-... of measures.ftl, $value and $off are lengths.

body-advice_draw = Draw size { $size } by the { $measure }, { $value }.
body-advice_between = Draw size { $size }: the { $measure }, { $value }, lies between { $smaller } and { $larger }. For a loose shape { $smaller } will do, for a close one or firm cloth take { $larger }.
body-advice_beyond = Beyond the largest size by the { $measure }, { $value }: { $size } is { $off } too small. Draft from your own measurements instead of a size.
body-advice_below = Below the smallest size by the { $measure }, { $value }: { $size } is { $off } too large. Draft from your own measurements instead of a size.
body-advice_fuller_bust = The bust is { $off } fuller than size { $size } allows for: keep the shoulders of { $size } and add at the bust.
# The side seam of the size drawn goes over to that of another size: out to a larger one, in to a smaller one.
body-advice_waist =
    { $way ->
        [out] The { $measure }, { $value }, is that of { $size }: below the underarm blend the side seam out to { $size } at the waist.
       *[in] The { $measure }, { $value }, is that of { $size }: below the underarm blend the side seam in to { $size } at the waist.
    }
body-advice_hip =
    { $way ->
        [out] The { $measure }, { $value }, is that of { $size }: below the waist blend the side seam out to { $size } at the hip.
       *[in] The { $measure }, { $value }, is that of { $size }: below the waist blend the side seam in to { $size } at the hip.
    }
# A length of the draft is altered between two levels; $measure begins the line, its first letter large.
body-advice_back_waist_length =
    { $way ->
        [longer] { $measure }: lengthen by { $off } between armpit and waist.
       *[shorter] { $measure }: shorten by { $off } between armpit and waist.
    }
body-advice_waist_to_hip =
    { $way ->
        [longer] { $measure }: lengthen by { $off } between waist and hip.
       *[shorter] { $measure }: shorten by { $off } between waist and hip.
    }
body-advice_arm_length =
    { $way ->
        [longer] { $measure }: lengthen by { $off } along the sleeve, above the elbow.
       *[shorter] { $measure }: shorten by { $off } along the sleeve, above the elbow.
    }

# Measurements that do not go together: $part and $whole are measure-... of measures.ftl.

body-check_very_small = The { $part }, { $part_value }, is very small beside the { $whole }, { $whole_value }.
body-check_smaller = The { $part }, { $part_value }, is smaller than the { $whole }, { $whole_value }.
body-check_much_smaller = The { $part }, { $part_value }, is much smaller than the { $whole }, { $whole_value }.
body-check_larger = The { $part }, { $part_value }, is larger than the { $whole }, { $whole_value }.
body-check_larger_by_far = The { $part }, { $part_value }, is larger by far than the { $whole }, { $whole_value }.
body-check_much_larger = The { $part }, { $part_value }, is much larger than the { $whole }, { $whole_value }.
body-check_small = The { $part }, { $part_value }, is small beside the { $whole }, { $whole_value }.
body-check_large = The { $part }, { $part_value }, is large beside the { $whole }, { $whole_value }.
body-check_short = The { $part }, { $part_value }, is short beside the { $whole }, { $whole_value }.
body-check_long = The { $part }, { $part_value }, is long beside the { $whole }, { $whole_value }.
body-check_low = The { $part }, { $part_value }, is low beside the { $whole }, { $whole_value }.
body-check_high = The { $part }, { $part_value }, is high beside the { $whole }, { $whole_value }.
body-check_shorter = The { $part }, { $part_value }, is shorter than the { $whole }, { $whole_value }.
body-check_longer_by_far = The { $part }, { $part_value }, is longer by far than the { $whole }, { $whole_value }.
body-check_again = Measure both again; if they are right, go on.
body-check_shoulders =
    { $how ->
        [narrow] The { $shoulder }, { $shoulder_value }, does not go with the { $back }, { $back_value }: the back is narrow for shoulders about { $across } from tip to tip.
       *[wide] The { $shoulder }, { $shoulder_value }, does not go with the { $back }, { $back_value }: the back is wide for shoulders about { $across } from tip to tip.
    }
body-check_shoulders_do = Find the end of the shoulder bone again by lifting the arm, and measure both once more.
body-check_nape = { $back } and { $waist } together, { $sum }, do not reach the nape of a person of { $height }.
body-check_nape_do = Tie a tape around the waist and measure all three to and from it.
body-check_rise = { $waist } less { $inside } is { $left }, but the { $rise } is { $rise_value }.
body-check_rise_do = Measure the body rise sitting on a flat, hard chair, and the inside leg to the floor.
