# Frases de kit/sewing/operations/openings.py. $beside es un borde junto a la costura.

opening-leave_part = Deje { $size } { DEL($edge) } sin coser, de { $from } a { $to } desde el comienzo de la costura. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_part_from = Deje { $size } { DEL($edge) } sin coser: de { $from } a { $to }, medidos desde { EL($beside) }. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_mark = Deje sin coser { EL($mark) } entre las marcas: { $size }, de { $from } a { $to } desde el comienzo de la costura. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_mark_from = Deje sin coser { EL($mark) } entre las marcas: { $size }, de { $from } a { $to }, medidos desde { EL($beside) }. Remate con puntadas de retroceso a los dos lados de la abertura.
opening-leave_next = Deje { $size } { DEL($edge) } sin coser, empezando en { EL($beside) }. Remate con puntadas de retroceso donde la abertura encuentra la costura.
opening-leave_start = Deje { $size } sin coser al comienzo { DEL($edge) }. Remate con puntadas de retroceso donde la abertura encuentra la costura.
opening-leave_end = Deje { $size } sin coser al final { DEL($edge) }. Remate con puntadas de retroceso donde la abertura encuentra la costura.
opening-gap_part = Deje { $size } { DEL($edge) } sin coser para dar la vuelta a la labor, de { $from } a { $to } desde el comienzo de la costura. Remate con puntadas de retroceso a los dos lados del hueco.
opening-gap_part_from = Deje { $size } { DEL($edge) } sin coser para dar la vuelta a la labor: de { $from } a { $to }, medidos desde { EL($beside) }. Remate con puntadas de retroceso a los dos lados del hueco.
opening-gap_next = Deje { $size } { DEL($edge) } sin coser para dar la vuelta a la labor, empezando en { EL($beside) }. Remate con puntadas de retroceso donde el hueco encuentra la costura.
opening-gap_start = Deje un hueco para dar la vuelta a la labor: { $size } al comienzo { DEL($edge) }. Remate con puntadas de retroceso donde encuentra la costura.
opening-gap_end = Deje un hueco para dar la vuelta a la labor: { $size } al final { DEL($edge) }. Remate con puntadas de retroceso donde encuentra la costura.
opening-clip = En los dos extremos de la abertura dé un corte recto en ambos márgenes, de { $depth }: hasta la línea de costura y ni un hilo más.
opening-clip_one = Donde la abertura encuentra la costura, dé un corte recto en ambos márgenes, de { $depth }: hasta la línea de costura y ni un hilo más.
opening-turn = A lo largo de la abertura doble cada margen por su línea de costura hacia el revés de su propia pieza, meta el borde hacia dentro y cósalo. Planche.
opening-untrimmed = No recorte a lo largo de la abertura: allí los márgenes ya están cosidos.
opening-again = No cosa por encima de la abertura; remate con puntadas de retroceso en sus extremos.
