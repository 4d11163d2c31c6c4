# Wie ein Körper auf Teilen und Seiten heißt: eine Größe der Tabelle oder der Name einer Person.

body-size = Größe { $name }
body-one_size = Einheitsgröße
