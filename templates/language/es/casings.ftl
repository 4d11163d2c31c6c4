# Frases para las jaretas.

casing-first = Doble { EL($edge) } { $first } hacia el revés y planche.
casing-second = Doble otra vez, ahora { $second }, y planche; en total: { $total }.
casing-sew = Cosa a { $row } del doblez interior, todo a lo largo.
casing-sew_gap = Cosa a { $row } del doblez interior, pero deje sin coser { $gap } en { EL($where) } para pasar el elástico o el cordón. Remate con puntadas de retroceso a los dos lados de la abertura.
casing-why = La jareta es un poco más ancha que lo que corre por ella, para que se pueda fruncir y aun así no se retuerza.
