# Cuántos textos propios de la lección no están traducidos. $language es el código de la lengua en que se imprimen;
# $file, el archivo donde se escriben las traducciones.
own_words-missing = { $count ->
    [one] { $count } texto de la lección no tiene traducción en { $file }; se imprime en su propia lengua, marcado [{ $language }].
   *[other] { $count } textos de la lección no tienen traducción en { $file }; se imprimen en su propia lengua, marcados [{ $language }].
}
own_words-region = No hay palabras propias para { $region }; se usan las de { $language }, con los números, las fechas y el papel de la región.
