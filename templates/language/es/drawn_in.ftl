# Frases para pasar elásticos y cordones.

thread_elastic-draw = Corte { $length } de elástico de { $width } de ancho, sujete un pasacintas a un extremo y páselo por la jareta { DEL($edge) }. No suelte el otro extremo.
thread_elastic-join = Monte los extremos { $join } uno sobre otro, sin torcerlos, y cósalos en forma de recuadro.
thread_elastic-fasten = Cosa bien los dos extremos, de lado a lado, en los extremos de la jareta.
thread_elastic-close = Deje que el anillo se meta dentro y cierre la abertura { DEL($gap) }, en línea con la costura.
thread_elastic-spread = Estire el borde unas cuantas veces para que la amplitud se reparta por igual.
thread_elastic-why = El elástico se corta más corto que el borde que recoge; pruebe su largo alrededor del cuerpo antes de unirlo.

thread_cord-draw = Sujete un pasacintas a un extremo de un cordón de { $length } de largo y páselo por la jareta { DEL($edge) }.
thread_cord-draw_strip = Sujete un pasacintas a un extremo { DEL($strip) } y páselo por la jareta { DEL($edge) }.
thread_cord-ends = Saque los extremos por { EL($places) }.
thread_cord-close = Cierre la abertura { DEL($gap) }, en línea con la costura.
thread_cord-tack = Cosa una vez de lado a lado la jareta y el cordón, a medio camino, para que no se pueda sacar. Anude los extremos.
thread_cord-knot = Anude los dos extremos entre sí, para que no se metan dentro.
thread_cord-why = Nada de cordones en la capucha ni en el cuello de la ropa de niños pequeños; en otros lugares deje los extremos cortos y siga las normas EN 14682 y ASTM F1816 y las de su país.

drawn_in-beside_elastic = Llévelo a lo largo del elástico, del lado de los ojetes, sin que el pasacintas lo cruce.
drawn_in-beside_cord = Llévelo a lo largo del cordón, que va del lado de los ojetes, sin que el pasacintas lo cruce.
