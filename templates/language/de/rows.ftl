# Sätze von kit/sewing/portion.py.

rows-go_on = Weiter geht es { DAT($place, with: "an") }.
rows-go_on_strip = Weiter geht es mit { DAT($strip) }.
