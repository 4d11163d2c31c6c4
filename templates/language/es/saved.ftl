# Valores guardados junto al cuaderno, cuando no se usan.
saved-broken = { $file }: no se pueden leer los valores guardados; valen los de la lección. El archivo se conserva al guardar de nuevo.
saved-broken_line = { $file }: no se pueden leer los valores guardados en la línea { $line }; valen los de la lección. El archivo se conserva al guardar de nuevo.
saved-another = { $file } contiene valores de otra lección, «{ $other }»; no se usan. Si son para esta, escriba en él "lesson": "{ $slug }".
saved-no_size = { $file } nombra la talla «{ $size }», que esta lección no tiene; se dibuja otra. Elija una talla y guarde.
saved-no_units = { $file } nombra la unidad «{ $units }»; solo se conocen cm e inch. Vale la de la lección. Elija una unidad y guarde.
saved-out_of_range = { $file }: { $trouble } Vale el valor de la lección: { $value }.
saved-apart = { $other }, en esta carpeta, tiene el mismo título. Los valores de este cuaderno se guardan aparte, en { $file }.
