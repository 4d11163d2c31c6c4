# Une leçon qui vit dans le navigateur de ses lecteurs (kit/page). $number et $count comptent les étapes ; la page met
# elle-même ce qui est entre accolades ici.

# Pendant qu’elle s’ouvre.
page-opening = En préparation…
page-opening_first = La première visite charge environ { $size } Mo. Ensuite, la leçon s’ouvre sans internet.
page-cannot_run = Ce navigateur ne peut pas faire fonctionner la leçon. Une version plus récente de Firefox, Chrome, Edge ou Safari le peut.
page-not_loaded = Une partie de la leçon n’a pas pu être chargée. Vérifier la connexion et recharger la page.
page-needs_scripts = Cette page a besoin de JavaScript.
page-kept = La leçon est conservée sur cet appareil et s’ouvre sans internet.
page-newer = Il existe une édition plus récente de cette leçon.
page-newer_take = La charger
page-edition = Édition { $edition }

# Étapes et image.
page-steps = Étapes
page-drafting = Tracé
page-sewing = Couture
page-back = Retour
page-on = Suivant
page-place = Étape { $number } sur { $count }
page-measures = Mesures de cette image
page-no_picture = Cette étape n’a pas d’image.
page-larger = Agrandir
page-smaller = Ajuster à l’écran
page-picture = Image
page-stale = L’image montre le dernier tracé qui a pu être dessiné.
page-stopped = Cela ne se terminait pas et a été arrêté. La dernière valeur changée est rétablie.

# Ce qui se règle.
page-values = Valeurs
page-reset = Valeurs de la leçon
page-less = Moins : { $name }
page-more = Plus : { $name }
page-body = Corps
page-size = Taille
page-own_body = Mesures personnelles
page-private = Ce qui est saisi ici reste sur cet appareil.
page-name = Nom
page-all_measures = Montrer toutes les mesures
page-use_body = Tracer pour ces mesures
page-body_used = La leçon est maintenant tracée pour { $name }.
page-save_body = Enregistrer dans un fichier
page-load_body = Charger un fichier
page-body_file = mes-mesures.toml
page-language = Langue
page-units = Unités
page-cm = cm
page-inch = pouces
page-language_en = English
page-language_de = Deutsch
page-language_fr = Français
page-language_es = Español

# Ce qui est dit.
page-check = Vérification
page-checking = Vérification en cours…
page-mend = Comment y remédier ?
page-mending = Recherche d’un remède…
page-finished = Mesures finies
page-cloth = Tissu à acheter
page-cloth_note = Pour la taille { $size } avec les valeurs avec lesquelles cette page a été faite.
page-cloth_nearest = Pour la taille { $size }, la plus proche des mesures saisies, avec les valeurs avec lesquelles cette page a été faite.
page-exercises = Exercices
page-hint = Montrer un indice
page-no_hint = Plus d’indices
page-about = À propos de cette page
page-left_out = Cette page n’imprime pas de patron et ne fait pas de plan de coupe. Avec le fichier des mesures, le professeur peut imprimer le patron à la bonne taille.
page-notices = Mentions et licences

# The reader's own pattern pages, where the page can write them. $size are megabytes, $name is a file.
page-pages = Mes pages de patron
page-pages_how = Pages de patron pour la taille, les mesures et les valeurs choisies sur cette page, en PDF à imprimer. La première fois, environ { $size } Mo de plus sont chargés.
page-pages_paper = Papier
page-pages_make = Faire mes pages
page-pages_stop = Arrêter
page-pages_loading = Chargement de ce qui écrit les pages…
page-pages_laying = Les pièces sont placées et les pages écrites. Cela peut prendre quelques minutes…
page-pages_stopped = Arrêté. Aucune page n’a été faite.
page-pages_done = Vos pages sont prêtes. Imprimez-les sans mise à l’échelle et mesurez le carré test avant de couper.
page-pages_save = Enregistrer { $name }
page-pages_not_here = Ce qui écrit les pages n’a pas pu être chargé. Vérifiez la connexion et réessayez, ou envoyez le fichier des mesures au professeur, qui peut imprimer le patron à la bonne taille.
page-pages_left_out = Cette page ne fait pas de plan de coupe.

# Ce que la leçon refuse. $name et $value sont ce qui lui a été envoyé.
page-not_asked = la page a demandé quelque chose que cette leçon ne connaît pas.
page-again_do = Recharger la page.
page-no_units = { $units } ne sont pas des unités.
page-no_values = les valeurs ne peuvent pas être lues.
page-no_body = le corps ne peut pas être lu.
page-no_number = { $value } n’est pas une valeur de { $name }.
page-no_slider = cette leçon n’a pas de valeur nommée { $name }.
page-no_measure = il n’y a pas de mesure nommée { $name }.
page-no_steps = cette leçon n’a pas encore d’étapes.
page-length_do = Saisir une longueur, par exemple 94 cm ou 37 in.
page-kit_wrong = Quelque chose a échoué dans la leçon ({ $kind } : { $what }). Ramener la valeur changée en dernier.

# Le livret à côté de la page.
page-booklet_link = Le livret, à vos mesures
page-booklet_mine = Ce livret à vos propres mesures
page-booklet_how = Saisissez vos mesures une fois : les étapes, les images, les longueurs et les tableaux de ce livret sont tracés pour vous. Ce que vous saisissez reste sur votre appareil.
page-booklet_how_plain = Les étapes, les images et les longueurs de ce livret suivent les valeurs réglées sur la page de la leçon.
page-booklet_open = Utiliser mes mesures
page-booklet_back = Revenir au livret imprimé
page-booklet_page = La page de la leçon, avec ses valeurs
page-booklet_type = Choisissez une taille ou saisissez vos mesures ci-dessous.
page-booklet_drawing = Tracé pour { $name } : étape { $number } sur { $count } …
page-booklet_done = Tout dans ce livret vaut maintenant pour { $name }, sauf là où autre chose est indiqué.
page-booklet_done_values = Tout dans ce livret vaut maintenant pour { $name } et les valeurs réglées sur la page de la leçon, sauf là où autre chose est indiqué.
page-booklet_stands = Le livret vaut toujours pour { $name }.
page-booklet_wrong = Ce tracé ne passe pas le contrôle. Ne coupez pas d’après lui :
page-booklet_no_lays = Les plans de coupe manquent ici : ils valaient pour la taille { $size }. Placez vos propres pièces avant d’acheter le tissu.
page-booklet_no_sheet = Le tracé à la main d’après des nombres manque ici : c’étaient ceux de la taille { $size }. Les étapes ci-dessus valent pour vous.
page-booklet_no_pages = Les pages imprimées du patron ne suivent pas : elles sont à une taille. Enregistrez vos mesures dans un fichier et envoyez-le à qui vous a donné cette leçon.
page-booklet_drawn_for = Les images de cette partie sont à la taille { $size }.
page-booklet_differs = À vos mesures, cette étape se coud autrement qu’à la taille { $size }, montrée ici. Voyez-la sur la page de la leçon.
