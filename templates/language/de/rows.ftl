# Sätze von kit/sewing/portion.py.

rows-go_on = Weiter geht es hier: { $place }.
rows-go_on_strip = Weiter geht es hier: { $strip }.
