# Sentences of kit/sewing/portion.py.

rows-go_on = Go on with { $place }.
rows-go_on_strip = Go on with { THE($strip) }.
