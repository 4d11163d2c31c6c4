# Comment un corps est nommé sur les pièces et les pages.

body-size = taille { $name }
body-one_size = taille unique
