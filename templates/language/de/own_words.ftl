# Wie viele Texte der Lektion nicht übersetzt sind. { $language } ist der Code der Sprache, in der sie stattdessen
# gedruckt werden, etwa en; { $file } der Name der Datei für Übersetzungen.
own_words-missing = { $count ->
    [one] { $count } Text der Lektion hat in { $file } keine Übersetzung; er wird in seiner eigenen Sprache gedruckt und mit [{ $language }] gekennzeichnet.
   *[other] { $count } Texte der Lektion haben in { $file } keine Übersetzung; sie werden in ihrer eigenen Sprache gedruckt und mit [{ $language }] gekennzeichnet.
}
own_words-region = Für { $region } gibt es keine eigenen Texte; es gelten die von { $language }, mit Zahlen, Datumsangaben und Papier der Region.
