"""The worked steps of an ask: one true equality a line, and beside them the lines that a teacher writes on the board.

Counts are read cell by cell here; nothing is taken from ``trials.totals`` or from ``asks.evaluate``. From below upwards:

- ``written_number``: a number as it is written, 9/12 or 2 1/4 or 75%;
- ``cell_reader``: the counts, prices and lengths of the table;
- ``lines``: what a working puts down, and how a teacher writes the same;
- ``sums``, ``products``, ``centers``, ``rates``: the steps of one kind of arithmetic each;
- ``ways``: the steps that list every way to do something;
- ``working``: the value of an expression, whatever it is made of;
- ``undoing``: what was done to an unknown is undone;
- ``answer_form``: the last number in the form that the words demand;
- ``by_goal``: the whole working of an ask.
"""
