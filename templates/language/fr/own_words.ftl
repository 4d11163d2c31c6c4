# Combien de textes de la leçon ne sont pas traduits.
own_words-missing = { $count ->
    [one] { $count } texte de la leçon n’a pas de traduction dans { $file } ; il est imprimé dans sa langue, avec la marque [{ $language }].
   *[other] { $count } textes de la leçon n’ont pas de traduction dans { $file } ; ils sont imprimés dans leur langue, avec la marque [{ $language }].
}
own_words-region = Il n’y a pas de texte propre à { $region } ; ce sont ceux de { $language } qui servent, avec les nombres, les dates et le papier de la région.
