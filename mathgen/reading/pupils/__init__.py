"""Pupils' own questions: heard, understood, and answered, asked about or declined.

    words.toml    what pupils say, as closed lists: signs of what is wanted, words of spans, empty words, slips of the pen
    plainly       turns of speech (turns.toml) said as the reader knows them
    scene         what is told to set the scene: groups that join, who rolled, how it went, scores
    combined      two counts put together, each a question of its own
    hearing       a text to tokens; spelling mends the one known word that a slip must be
    spans         tokens to spans by small local rules: whose, when, which things, what became of them (bags)
    clauses       spans to what is told first (told_first), one question, and its form
    asked_*       one question to wishes, a file for each sort: counts, parts, series, points
    plans         wishes to plans (wish_*), held against what was told (talk); whatever would be a guess is asked back
    successes     questions about trials with a target color, each known as a whole
    no_result     results never taken, and the same question about those that were
    asked_back    a question that is answered, in place of a yes or no question or of whose change is the greatest
    say_plan      the plan in words, and its steps; counts that differ in one label only are said once (say_series)
    verdict       the plan worked out and said; two ways to understand that differ, on the table or its shadow, are asked back

Order matters little, and filler not at all; but each word is a span, a sign, or on a list of words that carry nothing.
"""
