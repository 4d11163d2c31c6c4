# Frases de kit/sewing/portion.py.

rows-go_on = Siga ahora con { EL($place) }.
rows-go_on_strip = Siga ahora con { EL($strip) }.
