# Qué remedia un trazado que se rechaza o no pasa la comprobación: valores hallados al probar.
# { $name } es el nombre de un valor; { $value } es el que lo remedia y { $was } el que está puesto, con su unidad.

remedy-least = { $name }: { $value } como mínimo; ahora { $was }.
remedy-most = { $name }: { $value } como máximo; ahora { $was }.
remedy-to = { $name }: poner { $value }; ahora { $was }.
remedy-each = { $name }: { $value }
remedy-together = A la vez: { $changes }.
remedy-back = Volver a valores que funcionan: { $changes }.
remedy-back_many = { $count ->
    [one] Volver a un valor que funciona.
   *[other] Volver a { $count } valores que funcionan.
}
remedy-one_of = { $count ->
    [one] Esto lo remedia sin tocar los demás valores:
   *[other] Cualquiera de estos lo remedia sin tocar los demás valores:
}
remedy-no_single = { $count ->
    [one] Ningún valor por sí solo lo remedia dentro de sus límites. Esto sí:
   *[other] Ningún valor por sí solo lo remedia dentro de sus límites. Cualquiera de estos sí:
}
remedy-none = No se ha hallado ningún valor que lo remedie dentro de sus límites.
remedy-for_proof = Para corregir lo que halló la comprobación:
remedy-looking = Buscando valores que lo remedien …
remedy-take = Ponerlo
remedy-take_back = Volver
remedy-take_tip = Ponerlo: { $remedy }
remedy-line = remedio: { $remedy }
remedy-own_values = Con los valores de la propia lección:
