# Frases para pretinas, puños y cuellos.

seam_band-catch = Coloque { EL($caught) } sobre el derecho, a lo largo { DEL($on) }, con los bordes a ras y los centros casados, e hilvane: la costura lo sujeta entre las dos capas.
seam_band-why = La pretina exterior es la que se ve; lleva entretela para que ni los márgenes ni el uso se marquen por fuera.

band_ends-fold = Doble { EL($pieces) } a lo largo, derecho con derecho, borde con borde.
band_ends-fold_marked = Doble { EL($pieces) } a lo largo por la línea marcada, derecho con derecho; un borde largo sobresale del otro.
band_ends-sew = Cosa de lado a lado en { EL($edge) }, a { $allowance } del borde, por las dos capas, y remate con puntadas de retroceso en el doblez.
band_ends-sew_set = Cosa de lado a lado en { EL($edge) }, a { $allowance } del borde, desde el doblez hasta la costura que sujeta la pieza, solo por sus dos capas. Aparte la prenda y remate con puntadas de retroceso en los dos extremos.
band_ends-extra = En el extremo que monta, siga la costura doblando la esquina, por los dos bordes largos, hasta donde empieza la prenda. Dé ahí un corte en el margen hasta las puntadas.
band_ends-trim = Recorte los márgenes y corte las esquinas en diagonal, muy cerca de las puntadas.
band_ends-why = Los extremos se cosen por dentro y se vuelven del derecho, para que no quede ningún borde sin rematar donde se abrocha.

set_band-staystitch = Haga una costura de refuerzo a lo largo { DEL($edge) }, a { $row } por fuera de la línea de costura, y dé piquetes en el margen hasta ella, más o menos cada { $spacing } donde la curva es más cerrada: así se abre y queda recto a lo largo { DEL($band) }.
set_band-clip_curve = Dé piquetes en el margen { DEL($edge) } hasta la costura de refuerzo, más o menos cada { $spacing } donde la curva es más cerrada: así se abre y queda recto a lo largo { DEL($band) }.
set_band-clip_band = Dé piquetes en el margen { DEL($straight) } casi hasta la línea de costura, más o menos cada { $spacing } donde la curva { DEL($edge) } es más cerrada, para que el margen se abra alrededor de ella.
set_band-catch = Extienda por el revés { EL($caught) }, en plano y con los bordes a ras, para que quede sujeto en la costura.
set_band-pin = Sujete con alfileres { EL($band) } sobre { EL($edge) }, derecho con derecho.
set_band-match = Haga coincidir centros, costuras y piquetes; los extremos { DEL($band) } quedan justo en los extremos del borde.
set_band-match_raw = Haga coincidir centros, costuras y piquetes; las líneas de costura de los extremos { DEL($band) } quedan justo en los extremos terminados del borde, y los márgenes sobresalen.
set_band-match_ring = Las dos partes están cerradas en círculo: sujete primero la costura { DEL($band) } sobre una costura del borde, después centros y piquetes, y luego lo que queda entre ellos.
set_band-ends_beyond = Haga coincidir centros, costuras y piquetes; { EL($band) } sobresale { $beyond } del borde en { EL($end) }.
set_band-ends_beyond_raw = Haga coincidir centros, costuras y piquetes; { EL($band) } sobresale { $beyond } y su margen del borde en { EL($end) }, y en el otro extremo solo el margen.
set_band-ease = El borde es a propósito { $ease } más largo en total: embeba esa diferencia por igual y sujete con alfileres.
set_band-pull = El borde es { $ease } más largo en total: sujete ambos con alfileres por los cuartos y, al coser, estire { EL($band) } hasta el largo del borde, nunca el borde mismo.
set_band-sew = Cosa a { $allowance } del borde.
set_band-trim = Escalone los márgenes: recorte el de la prenda más estrecho que el { DEL($band) }.
set_band-clip = Dé cortes en los márgenes de las curvas, casi hasta las puntadas.
set_band-press = Planche { EL($band) } en dirección contraria a la prenda, con los dos márgenes hacia dentro.
set_band-why = Los márgenes rellenan la pieza y quedan dentro al cerrarla; no caen nunca sobre la prenda, donde se marcarían al planchar.

close_band-turn = Doble { EL($edge) } { $turned } hacia dentro y planche.
close_band-pin = Coloque el doblez sobre la costura, apenas más allá de las puntadas, y sujete con alfileres o hilvane.
close_band-edgestitch = Pespuntee al filo por el derecho a través de todas las capas, de modo que por debajo quede sujeto el doblez.
close_band-groove = Cosa por el derecho en el surco de la costura, de modo que por debajo quede sujeto el doblez.
close_band-hand = Cosa a mano el doblez a las puntadas, con puntada escondida.
close_band-seams = En cada costura que encuentra, sujete el doblez a los márgenes de debajo con unas puntadas a mano que no pasen al derecho; entre ellas queda suelto.
close_band-why = Si el doblez sobrepasa apenas la costura, la costura hecha desde el otro lado lo sujeta con seguridad.
