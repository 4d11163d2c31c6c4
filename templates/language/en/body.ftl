# How a body is named on pieces and pages: a size of the chart or a person's label, or what is drawn without a body.

body-size = size { $name }
body-one_size = one size

# Which size to draw for a body and where to blend. $measure is a measure-... of measures.ftl, $value and $off are lengths.

body-advice_draw = Draw size { $size } by { THE($measure) }, { $value }.
body-advice_between = Draw size { $size }: { THE($measure) }, { $value }, lies between { $smaller } and { $larger }. For a loose shape { $smaller } will do, for a close one or firm cloth take { $larger }.
body-advice_beyond = Beyond the largest size by { THE($measure) }, { $value }: { $size } is { $off } too small. Draft from your own measurements instead of a size.
body-advice_below = Below the smallest size by { THE($measure) }, { $value }: { $size } is { $off } too large. Draft from your own measurements instead of a size.
body-advice_fuller_bust = The bust is { $off } fuller than size { $size } allows for: keep the shoulders of { $size } and add at the bust.
body-advice_one_draft = Drawn as one, with nothing left to blend, that is size { $size }.
# The side seam of the size drawn goes over to that of another size: out to a larger one, in to a smaller one.
body-advice_waist =
    { $way ->
        [out] { START(THE($measure)) }, { $value }, is that of { $size }: below the underarm blend the side seam out to { $size } at the waist.
       *[in] { START(THE($measure)) }, { $value }, is that of { $size }: below the underarm blend the side seam in to { $size } at the waist.
    }
body-advice_hip =
    { $way ->
        [out] { START(THE($measure)) }, { $value }, is that of { $size }: below the waist blend the side seam out to { $size } at the hip.
       *[in] { START(THE($measure)) }, { $value }, is that of { $size }: below the waist blend the side seam in to { $size } at the hip.
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

body-check_very_small = { START(THE($part)) }, { $part_value }, is very small beside { THE($whole) }, { $whole_value }.
body-check_smaller = { START(THE($part)) }, { $part_value }, is smaller than { THE($whole) }, { $whole_value }.
body-check_much_smaller = { START(THE($part)) }, { $part_value }, is much smaller than { THE($whole) }, { $whole_value }.
body-check_larger = { START(THE($part)) }, { $part_value }, is larger than { THE($whole) }, { $whole_value }.
body-check_larger_by_far = { START(THE($part)) }, { $part_value }, is larger by far than { THE($whole) }, { $whole_value }.
body-check_much_larger = { START(THE($part)) }, { $part_value }, is much larger than { THE($whole) }, { $whole_value }.
body-check_small = { START(THE($part)) }, { $part_value }, is small beside { THE($whole) }, { $whole_value }.
body-check_large = { START(THE($part)) }, { $part_value }, is large beside { THE($whole) }, { $whole_value }.
body-check_short = { START(THE($part)) }, { $part_value }, is short beside { THE($whole) }, { $whole_value }.
body-check_long = { START(THE($part)) }, { $part_value }, is long beside { THE($whole) }, { $whole_value }.
body-check_low = { START(THE($part)) }, { $part_value }, is low beside { THE($whole) }, { $whole_value }.
body-check_high = { START(THE($part)) }, { $part_value }, is high beside { THE($whole) }, { $whole_value }.
body-check_shorter = { START(THE($part)) }, { $part_value }, is shorter than { THE($whole) }, { $whole_value }.
body-check_longer_by_far = { START(THE($part)) }, { $part_value }, is longer by far than { THE($whole) }, { $whole_value }.
body-check_again = Measure both again; if they are right, go on.
body-check_shoulders =
    { $how ->
        [narrow] { START(THE($shoulder)) }, { $shoulder_value }, does not go with { THE($back) }, { $back_value }: the back is narrow for shoulders about { $across } from tip to tip.
       *[wide] { START(THE($shoulder)) }, { $shoulder_value }, does not go with { THE($back) }, { $back_value }: the back is wide for shoulders about { $across } from tip to tip.
    }
body-check_shoulders_do = Find the end of the shoulder bone again by lifting the arm, and measure both once more.
body-check_nape = { $back } and { $waist } together, { $sum }, do not reach the nape of a person of { $height }.
body-check_nape_do = Tie a tape around the waist and measure all three to and from it.
body-check_rise = { $waist } less { $inside } is { $left }, but { THE($rise) } is { $rise_value }.
body-check_rise_do = Measure the body rise sitting on a flat, hard chair, and the inside leg to the floor.

# ---- refusals ----
body-not_plausible = { $value } cannot be right; people measure between { $least } and { $most }.
body-slip_cm_as_mm = Was a value in cm typed as mm?
body-slip_mm_as_cm = Was a value in mm typed as cm?
body-slip_inch_as_cm = Was a value in inches typed as cm?
body-slip_inch_as_mm = Was a value in inches typed as mm?
body-slip_cm_as_inch = Was a value in cm typed as inches?
body-measure_again = Measure again.
body-unknown_measure = there is no body measurement '{ $name }'.
body-no_body_name = Body
body-no_girth = no girth is given that has a place in the size chart.
body-no_girth_do = Measure at least the bust girth, or the upper chest, hip or waist girth.
body-no_size_girth = no size can be chosen without a girth.
body-no_size_girth_do = Give the bust girth of this body.
body-no_advice = no size can be advised without a girth.
body-no_advice_do = Measure the bust, waist and hip girth.
body-no_such_size = there is no size '{ $size }'.
body-no_such_kind = there is no kind of measurement '{ $kind }'.
body-nothing_to_save = nothing was measured, so there is nothing to save.
body-nothing_to_save_do = Measure first.
body-file_key = '{ $name }' does not belong in a body file.
body-file_key_measure = '{ $name }' does not belong in a body file. Measurements stand below the line [measured].
body-file_units = the units are '{ $units }'.
body-write_do = Write, for example, { $line }
body-file_name = the name is { $name }, not text.
body-file_empty = it holds no measurements.
body-file_large = the file is far too large for a body.
body-file_own_do = Name the body's own file.
body-file_missing = there is no such file.
body-file_missing_do = Check its name and folder.
body-file_folder = this is a folder.
body-file_folder_do = Name the file in it.
body-file_not_text = the file is not plain text.
body-file_not_text_do = Save it as plain text (UTF-8).
body-file_unread = the file cannot be read.
body-file_unread_do = Check the file and its permissions.
body-file_broken_line = the file is broken: line { $line } cannot be read.
body-file_broken = the file is broken: it cannot be read to its end.
body-box_unusable = what is typed for { $measures } cannot be used yet.
body-box_unusable_do = Correct it, or empty the box.
body-no_girth_yet = there is no girth yet.
body-name_of_size = '{ $name }' is the name of a size.
body-name_of_size_do = Give this body a name of its own.
body-other_file = there is a file of that name that is not a body.
body-other_file_do = It is left as it was. Choose another name.
body-file_no_name = the file has no name.
body-file_no_name_do = Type, for example, mine.toml.
body-where_name = Name
body-where_file = File

# ---- tables of people ----
body-people_none = there are no people in it.
body-people_none_do = Give a line of column names, then one line for each person.
body-people_columns = no column is a body measurement; they are { $columns }.
body-people_columns_do = Name columns as in a body file, such as bust_girth, waist_girth, hip_girth.
body-people_save_do = Save the table as CSV (UTF-8).
body-people_line = line { $line } cannot be read.
body-people_bust = the column '{ $column }' may be the bust girth, over the fullest part, or the upper chest girth, above it.
body-people_bust_do = Rename it bust_girth or upper_chest_girth.
body-people_twice = the columns '{ $one }' and '{ $other }' are both the same measurement: { $measure }.
body-people_twice_do = Keep one of them.
body-report_do = Name a file for the report, such as report.json.

body-proposal = { $change }: { $amount }
body-advice_changes = Fit changes for size { $size }: { $changes }.
body-advice_cut = The body asks for more than this garment takes. Set only to the most it takes: { $changes }. Make a try-on, or draft from your own measurements.
body-advice_elsewhere = Not to be made on this garment: { $changes }.
body-advice_build = To build it: { $command }
