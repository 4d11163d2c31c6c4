# Sätze von kit/sewing/portion.py.

rows-go_on = Weiter geht es hier: { $place }.
