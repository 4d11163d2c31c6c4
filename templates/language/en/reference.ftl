# Headings of the reference of verbs: `lessonkit help` and lesson.help(...). The entries themselves are English, like the
# code they are about.
reference-example = Example:
reference-says = What it says of the example:
reference-shows = What its picture shows:
reference-refuses = What it refuses (… stands for a value):
reference-refuses_nothing = It refuses nothing of its own; what every verb refuses: lessonkit help refusals
reference-wanted = Wanted for:
reference-also = Also in the words of the trade:
reference-several = { $topic }:
reference-overview = Every verb by subject. More of one: lessonkit help set_band, in a notebook lesson.help("set_band"). By what you want: lessonkit help "curved hem".
reference-unknown = there is no entry '{ $topic }'.
reference-unknown_near = Near: { $names }.
reference-unknown_do = Ask for a verb, such as set_band, or for a word of the trade, such as hem. All: lessonkit help
reference-kind_piece = a verb of a piece in a drafting step
reference-kind_line = a verb of a line in a drafting step
reference-kind_point = a verb of a point in a drafting step
reference-kind_strip = a verb of a strip in a drafting step
reference-kind_make = an operation of a sewing step
reference-kind_cut_piece = of a cut piece in a sewing step
reference-kind_edges = of an edge in a sewing step
reference-kind_lesson = of a lesson
reference-kind_kit = imported from kit
reference-block_lies = On its pieces in size { $size }, in cm; places are so far out from the centre line and up from the waistline:
reference-block_edges = edges, in order:
reference-block_points = points:
reference-block_levels = levels and guide lines:
reference-block_darts = darts:
