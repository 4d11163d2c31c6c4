# La page à lire d’abord, et ce que montrent les images d’aperçu.
release-title = Commencer ici
release-edition = édition { $edition }
release-do_read = Lire le livret.
release-read = Sur téléphone ou tablette, ouvrir { $screen } ; sur papier, imprimer { $printed }. Il donne les tailles, ce qu’il faut acheter et chaque étape.
release-read_one = Ouvrir { $file }. Il donne les tailles, ce qu’il faut acheter et chaque étape.
release-do_choose = Choisir sa taille.
release-choose = Prendre ses mesures et les comparer au tableau des tailles du livret, qui dit aussi quoi faire entre deux tailles.
release-do_print = Imprimer les pages.
release-print = Prendre dans la liste ci-dessous le fichier de sa taille et en imprimer la première page à 100 %, sans ajuster au papier. Mesurer le carré d’essai ; s’il est juste, imprimer le reste.
release-do_nested = Toutes les tailles ensemble :
release-nested = La dernière ligne de la liste est un fichier où toutes les tailles sont superposées. Sa page de légende dit quelles pages demande chaque taille.
release-do_sheets = À la reprographie :
release-sheets = Faire imprimer à 100 % un fichier de { $folder } sur le papier que dit son nom. Mesurer le carré d’essai avant de payer.
release-do_projector = Avec un projecteur :
release-projector = Prendre un fichier de { $folder }, clair ou foncé. Mesurer ses deux carrés sur la table avant de couper.
release-do_files = Avec un autre programme :
release-files = { $folder } contient le patron à l’échelle 1 en SVG et en DXF, et comme simples données.
release-do_join = Assembler, couper, coudre.
release-join = Assembler les pages par leurs repères, découper les pièces de patron, les placer comme le montre le livret et suivre ses étapes.
release-what_to_print = Ce qu’il faut imprimer
release-size = Taille
release-pages_a4 = En A4
release-pages_letter = En US Letter
release-file_pages = { $count ->
    [one] { $file }, { $count } page
   *[other] { $file }, { $count } pages
 }
release-all_sizes = Toutes, superposées
release-mind = Attention aux mains
release-caution_blades = Ciseaux, cutters rotatifs, épingles et aiguilles blessent : couper en s’éloignant de soi, fermer la lame en la posant, tenir les doigts loin de l’aiguille, et garder le tout hors de portée des enfants.
release-caution_iron = Un fer brûle, sa vapeur aussi : le poser sur son talon, et le débrancher en partant.
release-licence = Ce qui est permis
release-sums = SHA256SUMS donne une somme de contrôle de chaque fichier, pour vérifier une copie.
release-preview_cover = La première page du livret « { $title } ».
release-preview_step = Une page du livret avec l’étape « { $step } », son image et son texte.
release-preview_sizes = La page du livret avec son tableau des tailles.
