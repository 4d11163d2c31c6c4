# Sentences of kit/sewing/portion.py.

rows-go_on = Go on with { $place }.
