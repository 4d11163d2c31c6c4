# Refus : ce qui ne va pas dans une valeur, une mesure, un fichier ou un tracé, et que faire (clés en _do). Le lieu est
# placé devant. Ce qui est écrit dans le fichier de la leçon reste tel quel.

refusal-near = S’agit-il de « { $name } » ?
refusal-known = Noms connus ici : { $names }.
refusal-none = Il n’y en a pas encore ici.
