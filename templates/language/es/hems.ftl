# Frases para dobladillos.

hem-catch = Extienda por el revés { EL($caught) }, en plano, para que quede sujeto en el dobladillo.
hem-clip_ends = Dé un piquete al margen en { EL($ends) }, casi hasta la línea de costura, para poder doblar este tramo por separado.
hem-first = Doble { EL($edge) } { $first } hacia el revés y planche.
hem-second = Doble otra vez, ahora { $second }, y planche; dobladillo total: { $total }.
hem-narrow = Doble { EL($edge) } { $first } hacia el revés y planche, después { $second } más y planche; dobladillo total: { $total }.
hem-finish = { START($finish) } el borde { DEL($edge) }.
hem-single = Doble { EL($edge) } { $first } hacia el revés y planche.
hem-sew = Cosa a { $row } del doblez interior.
hem-sew_single = Cosa a { $row } del borde rematado.
hem-sew_raw = Cosa a { $row } del borde sin rematar.
hem-press = Planche el dobladillo.
hem-ring = Vuelva la prenda del revés y cosa todo el contorno con el brazo libre de la máquina, empezando y terminando en una costura.
hem-lap_rows = Deje que la costura monte unas puntadas sobre su propio comienzo.
hem-why_once = Con un solo doblez el dobladillo es fino y cae suave; su borde hay que rematarlo para que no se deshilache.
hem-why_twice = Con dos dobleces el borde queda encerrado y el dobladillo no necesita otro remate.
hem-why_narrow = Cuanto más estrecho es el dobladillo, mejor sigue una curva.
