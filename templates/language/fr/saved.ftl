# Valeurs gardées à côté du notebook, quand elles ne servent pas.
saved-broken = { $file } : les valeurs enregistrées sont illisibles ; celles de la leçon s’appliquent. Le fichier est conservé au prochain enregistrement.
saved-broken_line = { $file } : les valeurs enregistrées sont illisibles à la ligne { $line } ; celles de la leçon s’appliquent. Le fichier est conservé au prochain enregistrement.
saved-another = { $file } contient les valeurs d’une autre leçon, « { $other } » ; elles ne servent pas. Si elles sont destinées à celle-ci, y écrire "lesson": "{ $slug }".
saved-no_size = { $file } nomme la taille « { $size } », que cette leçon n’a pas ; une autre est tracée. Choisir une taille et enregistrer.
saved-no_units = { $file } nomme l’unité « { $units } » ; seules cm et inch sont connues. Celle de la leçon s’applique. Choisir une unité et enregistrer.
saved-out_of_range = { $file } : { $trouble } La valeur de la leçon s’applique : { $value }.
saved-apart = { $other }, dans ce dossier, porte le même titre. Les valeurs de ce notebook sont gardées à part, dans { $file }.
