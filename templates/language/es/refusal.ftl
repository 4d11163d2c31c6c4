# Rechazos: qué no va en un valor, una medida, un archivo o un trazado, y qué hacer (claves en _do). El lugar va delante.
# Lo que está escrito en el archivo de la lección queda como está.

refusal-near = ¿Quiso decir «{ $name }»?
refusal-known = Aquí hay: { $names }.
refusal-none = Aquí todavía no hay ninguno.
