# How many of the lesson's own texts are not translated. $language is the code of the language they are printed in
# instead, such as en; $file is the name of the file where translations are written.
own_words-missing = { $count ->
    [one] { $count } text of the lesson has no translation in { $file }; it is printed in its own language, marked [{ $language }].
   *[other] { $count } texts of the lesson have no translation in { $file }; they are printed in their own language, marked [{ $language }].
}
own_words-region = The kit has no words for { $region } alone; those of { $language } are used, with the numbers, dates and paper of the region.
