# Frases de kit/sewing/operations/openings.py. $beside es un borde junto a la costura.

opening-leave_part = Deje { $size } sin coser en { $edge }, de { $from } a { $to } desde su comienzo. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_part_from = Deje { $size } sin coser en { $edge }: de { $from } a { $to }, medidos desde aquí: { $beside }. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_mark = Deje sin coser el tramo entre las marcas ({ $mark }): { $size }, de { $from } a { $to } desde el comienzo de la costura. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_mark_from = Deje sin coser el tramo entre las marcas ({ $mark }): { $size }, de { $from } a { $to }, medidos desde aquí: { $beside }. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_next = Deje { $size } sin coser en { $edge }, empezando aquí: { $beside }. Remate con puntadas de retroceso donde la abertura encuentra la costura.
opening-leave_start = Deje sin coser { $size } al comienzo de { $edge }. Remate con puntadas de retroceso donde la abertura encuentra la costura.
opening-leave_end = Deje sin coser { $size } al final de { $edge }. Remate con puntadas de retroceso donde la abertura encuentra la costura.
opening-gap_part = Deje { $size } sin coser en { $edge } para volver la labor, de { $from } a { $to } desde su comienzo. Remate con puntadas de retroceso a los dos lados del hueco.
opening-gap_part_from = Deje { $size } sin coser en { $edge } para volver la labor: de { $from } a { $to }, medidos desde aquí: { $beside }. Remate con puntadas de retroceso a los dos lados del hueco.
opening-gap_next = Deje { $size } sin coser en { $edge } para volver la labor, empezando aquí: { $beside }. Remate con puntadas de retroceso donde el hueco encuentra la costura.
opening-gap_start = Deje un hueco para volver la labor: { $size } al comienzo de { $edge }. Remate con puntadas de retroceso donde encuentra la costura.
opening-gap_end = Deje un hueco para volver la labor: { $size } al final de { $edge }. Remate con puntadas de retroceso donde encuentra la costura.
opening-clip = En los dos extremos de la abertura dé un corte recto en ambos márgenes, de { $depth }: hasta la línea de costura y ni un hilo más.
opening-clip_one = Donde la abertura encuentra la costura, dé un corte recto en ambos márgenes, de { $depth }: hasta la línea de costura y ni un hilo más.
opening-turn = A lo largo de la abertura doble cada margen por su línea de costura hacia el revés de su propia pieza, meta el canto hacia dentro y cósalo. Planche.
opening-untrimmed = No recorte a lo largo de la abertura: allí los márgenes ya están cosidos.
opening-again = No cosa por encima de la abertura; remate con puntadas de retroceso en sus extremos.
