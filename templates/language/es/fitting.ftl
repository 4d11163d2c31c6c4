# Lo que cambió una prueba, en frases y en la imagen que pone un trazado sobre otro.

# $name es un parámetro tal como lo llama la lección; $before y $after son longitudes, tantos por ciento o números enteros.
fitting-changed = { $name }: de { $before } a { $after }.

# No se movió nada de las líneas de costura.
fitting-no_line_moves = No se mueve ninguna línea de costura.
# $piece es el título de una pieza que uno de los dos trazados no tiene.
fitting-new_piece = { $piece }: esta pieza es nueva.
fitting-gone_piece = { $piece }: esta pieza ya no hace falta.
fitting-hardly = { $piece }: sus líneas se mueven menos de un milímetro.
fitting-darts = { $piece }: las pinzas o los pliegues quedan en otro lugar.
# Un punto de encuentro de dos bordes se deslizó, pero ninguna línea se movió.
fitting-meets_elsewhere = { $piece }: las líneas se quedan, pero se encuentran en otro lugar.

# Cómo se movió un borde: $way es up, down, out (hacia fuera de la tela) o in; $at y $to son los bordes vecinos.
fitting-all_along =
    { $way ->
        [up] { $piece }: { EL($edge) } sube { $size } en todo su largo.
        [down] { $piece }: { EL($edge) } baja { $size } en todo su largo.
        [out] { $piece }: { EL($edge) } se desplaza { $size } hacia fuera en todo su largo.
       *[in] { $piece }: { EL($edge) } se desplaza { $size } hacia dentro en todo su largo.
    }
fitting-to_nothing =
    { $way ->
        [up] { $piece }: { EL($edge) } sube { $size } en { EL($at) } y muere en { EL($to) }.
        [down] { $piece }: { EL($edge) } baja { $size } en { EL($at) } y muere en { EL($to) }.
        [out] { $piece }: { EL($edge) } se desplaza { $size } hacia fuera en { EL($at) } y muere en { EL($to) }.
       *[in] { $piece }: { EL($edge) } se desplaza { $size } hacia dentro en { EL($at) } y muere en { EL($to) }.
    }
fitting-middle =
    { $way ->
        [up] { $piece }: { EL($edge) } sube hasta { $size } entre sus extremos.
        [down] { $piece }: { EL($edge) } baja hasta { $size } entre sus extremos.
        [out] { $piece }: { EL($edge) } se desplaza hasta { $size } hacia fuera entre sus extremos.
       *[in] { $piece }: { EL($edge) } se desplaza hasta { $size } hacia dentro entre sus extremos.
    }
# Dos extremos que se mueven en el mismo sentido, pero no lo mismo.
fitting-unequal =
    { $way ->
        [up] { $piece }: { EL($edge) } sube { $size } en { EL($at) } y { $other } en { EL($to) }.
        [down] { $piece }: { EL($edge) } baja { $size } en { EL($at) } y { $other } en { EL($to) }.
        [out] { $piece }: { EL($edge) } se desplaza hacia fuera { $size } en { EL($at) } y { $other } en { EL($to) }.
       *[in] { $piece }: { EL($edge) } se desplaza hacia dentro { $size } en { EL($at) } y { $other } en { EL($to) }.
    }
# Dos extremos que se mueven en sentidos distintos: una frase para cada uno.
fitting-one_end =
    { $way ->
        [up] { $piece }: { EL($edge) } sube { $size } en { EL($at) }.
        [down] { $piece }: { EL($edge) } baja { $size } en { EL($at) }.
        [out] { $piece }: { EL($edge) } se desplaza { $size } hacia fuera en { EL($at) }.
       *[in] { $piece }: { EL($edge) } se desplaza { $size } hacia dentro en { EL($at) }.
    }

# La imagen. $piece es el título de una pieza; $words, las frases de arriba.
fitting-title = { $piece }, antes y después
fitting-alt = { $piece }: el trazado de antes de la prueba, en línea discontinua, y el de después, uno sobre otro. Lo que se movió va en línea gruesa. { $words }
# La misma imagen mientras se mueve un valor.
fitting-alt_moving = { $piece }: el trazado de antes de la prueba, en línea discontinua, y el de ahora, uno sobre otro.
