# Frases de kit/sewing/operations/channels.py.

channel-mark = Por el derecho, marque con jaboncillo en { EL($edge) } una línea a { $distance } del borde y otra { $depth } más abajo. Prenda las capas con alfileres.
channel-first = Cosa por la línea de arriba, atravesando todas las capas.
channel-second = Cosa por la línea de abajo, a { $total } del borde, también a través de todas las capas.
channel-second_gap = Cosa por la línea de abajo, a { $total } del borde, también a través de todas las capas, pero deje sin coser { $gap } en { EL($where) } para pasar el elástico o el cordón. Remate con puntadas de retroceso a los dos lados de la abertura.
channel-why = Los dos pespuntes mantienen juntas las capas: lo que se pasa queda entre ellos y no se va hacia el borde ni hacia el forro.
