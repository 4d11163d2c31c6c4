# Frases para dobladillos.

hem-catch = Extienda en plano por dentro este borde, para que quede sujeto en el dobladillo: { $caught }.
hem-clip_ends = Corte el margen hasta casi la línea de costura, para poder doblar este tramo por separado: { $ends }.
hem-first = Doble { $first } hacia el revés y planche: { $edge }.
hem-second = Doble otra vez, ahora { $second }, y planche; dobladillo total: { $total }.
hem-narrow = Doble { $first } hacia el revés y planche, después { $second } más y planche; los dos dobleces ocupan { $total }: { $edge }.
hem-finish = Remate el canto con { $finish }: { $edge }.
hem-single = Doble { $first } hacia el revés y planche: { $edge }.
hem-sew = Cosa a { $row } del doblez interior.
hem-sew_single = Cosa a { $row } del borde rematado.
hem-press = Planche el dobladillo.
hem-ring = Vuelva la prenda del revés y cosa todo el contorno con el brazo libre de la máquina, empezando y terminando en una costura.
hem-lap_rows = Deje que la costura monte unas puntadas sobre su propio comienzo.
hem-why_once = Con un solo doblez el dobladillo es fino y cae suave; su canto hay que rematarlo para que no se deshilache.
hem-why_twice = Con dos dobleces el canto queda encerrado y el dobladillo no necesita otro remate.
hem-why_narrow = Cuanto más estrecho es el dobladillo, mejor sigue una curva.
