# What the cloth asks of the way it is laid out.

cloth-nap = Lay every piece with its top the same way: none is turned round, here or when you cut.
cloth-print = Lay every piece with its top the same way: none is turned round, here or when you cut. Match the print at the seams; for that buy one repeat of it more for each row of pieces.
