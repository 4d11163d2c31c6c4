# Phrases de kit/sewing/portion.py.

rows-go_on = Continuer { AU($place) }.
rows-go_on_strip = Continuer avec { LE($strip) }.
