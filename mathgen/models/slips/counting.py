"""Slips, section H: how many more or fewer, and other questions of counting."""

from __future__ import annotations

from mathgen.models.slips.rule import Wrong, slip, whole


@slip("H01", "The question asks how far apart the two numbers are. Do not add.")
def more_means_add(a: int, b: int) -> Wrong:
    return whole(a + b)


@slip("H02", "That is the bigger number. How far apart are the two numbers?")
def bigger_number(a: int, b: int) -> Wrong:
    return whole(max(a, b))


@slip("H03", "Which number is the bigger one? Read the sentence again.")
def word_picks_sign(given: int, difference: int) -> Wrong:
    return whole(given + difference)


@slip("H05", "Count the {items} {down}, not the {items} {standing}.", sources=("words", "table"))
def standing_instead(u: int, u2: int) -> Wrong:
    return whole(abs(u - u2))


@slip("H06", "That is more {items} than {were_set_up}. Take away from the {items} {set_up}.")
def adds_everything(*numbers: int) -> Wrong:
    return whole(sum(numbers))


@slip("H07", "Read the question again. Is there one more step?")
def stops_half_way(first_result: int) -> Wrong:
    return whole(first_result)


@slip("H19", "The total has the parts in it already. Take the parts away from the total.")
def adds_the_total(total: int, *parts: int) -> Wrong:
    """Ours: a total and its known parts are all added."""
    return whole(total + sum(parts))


@slip("H10", "You cannot switch the digits. Trade 1 ten for 10 ones.")
def small_from_large_digit(a: int, b: int) -> Wrong:
    if max(a, b) <= 20:  # known by heart or counted, not worked in columns
        return None
    width = max(len(str(a)), len(str(b)))
    digits = [abs(int(x) - int(y)) for x, y in zip(str(a).zfill(width), str(b).zfill(width), strict=True)]
    return whole(int("".join(map(str, digits))))


@slip("H11", "Ten ones make 1 ten. Did you add the new ten?")
def lost_carry(*numbers: int) -> Wrong:
    width = max(len(str(number)) for number in numbers)
    columns = [sum(int(str(number).zfill(width)[place]) for number in numbers) for place in range(width)]
    # The first column is written out whole: 62 and 58 come to 110, not to 10; 6, 4 and 7 have no ten to lose.
    return whole(int("".join([str(columns[0]), *(str(column % 10) for column in columns[1:])])))


@slip("H13", "You are 1 away. Do not count the number that you start on.", unless_printed=True)
def one_off(counted: int) -> Wrong:
    return whole(counted)


@slip("H14", "One number is missing from your sum. Did you add every number?")
def stops_early(*numbers: int) -> Wrong:
    """Ours: the last number is left out of a sum."""
    return whole(sum(numbers[:-1]))


@slip("H15", "The question asks how many in all. Add.")
def takes_away_for_total(a: int, b: int) -> Wrong:
    """Ours: the other operation. Nobody answers 0 to "how many in all"."""
    return whole(abs(a - b)) if a != b else None


@slip("H16", "One number is missing. Did you add all the {items} {down} first?")
def leaves_one_out(all_of_them: int, *numbers: int) -> Wrong:
    """Ours: the last number is left out, then the sum is taken away."""
    return whole(all_of_them - sum(numbers[:-1]))


@slip("H17", "That counts the {items} {set_up} for one {trial} only. How many {trials} were there?")
def one_trial_set_up(each: int, down: int) -> Wrong:
    """Ours: the step that multiplies is left out."""
    return whole(each - down)


@slip("H18", "That is the number of {items} {down}. The question asks for the {items} {standing}.")
def other_part_of_count(k: int) -> Wrong:
    """Ours: the part that the question does not ask for."""
    return whole(k)


@slip("H20", "Put the {items} {down} and the {items} {standing} together. Add.")
def takes_away_for_start(a: int, b: int) -> Wrong:
    """Ours: "left" and "knocked down" call for taking away, where what there was at first is asked."""
    return whole(abs(a - b)) if a != b else None


@slip("H21", "Compare the digits from the left: first the tens, then the ones.")
def last_digits_compared(first: str, second: str, a: int, b: int, word: str) -> Wrong:
    """Ours: only the ones are looked at, 29 passes for more than 31."""
    if a % 10 == b % 10:
        return None
    return first if (a % 10 > b % 10) == (word == "more") else second


@slip("H22", "Read the question again: more or fewer?")
def other_one_is_chosen(other: str) -> Wrong:
    """Ours: the label that is left when the question is read the wrong way round."""
    return other


@slip("H40", "The sum may stand on either side. Both sides must be the same.")
def wants_the_sum_first() -> Wrong:
    return "false"


@slip("H41", "The sum is 1 off. Add again, then compare.")
def takes_near_for_equal(a: int, b: int, whole: int) -> Wrong:
    return "true" if abs(a + b - whole) == 1 else None


@slip("H42", "Add again. Count on from the greatest number.")
def counts_the_first_number_too(a: int, b: int, whole: int) -> Wrong:
    """Counting on from 5 with "5, 6": one too few."""
    return "true" if a + b - 1 == whole else "false"


@slip("H46", 'Read the sign from the left: > means "is greater than", < means "is less than".')
def reads_the_sign_backwards(other: str) -> Wrong:
    """Ours: common practice, no source."""
    return other


@slip("H47", "The number after the equals sign is only a part of its side. Work out both sides.")
def stops_at_the_equals_sign(first_side: int, after: int) -> Wrong:
    """The equals sign is taken for "the answer comes now": 3 + 4 = 7 + 1 passes for true."""
    return "true" if first_side == after else "false"


@slip("H48", "A ten is missing. Add the ones first, and make a new ten.")
def judges_without_the_new_ten(claimed: int, total: int) -> Wrong:
    """As H11, where a total is to be judged."""
    return "true" if claimed == total - 10 else "false"


@slip("H43", "After 9 ones comes the next ten.")
def stays_in_the_ten(number: int) -> Wrong:
    """38, 39, 30. Common practice, no source, as are the two below."""
    return whole(number + 2 - 10) if (number + 2) % 10 == 0 else None


@slip("H44", "That leaves a number out. Count on by ones.")
def leaves_a_number_out(number: int) -> Wrong:
    return whole(number + 3)


@slip("H45", "Write the number that you say as one number: tens, then ones.")
def writes_hundred_and_ones(number: int) -> Wrong:
    """101 as 1001."""
    return whole(1000 + (number + 2) % 100) if 100 < number + 2 < 110 else None


@slip("H60", "That number comes after. Which number comes before?")
def counts_on_for_back(number: int) -> Wrong:
    """Common practice, no source, as are the two below."""
    return whole(number + 1)


@slip("H61", "That is a whole ten less. Count back by one only.")
def counts_back_a_ten(number: int) -> Wrong:
    return whole(number - 10)


@slip("H62", "That number comes later. What is the ten before?")
def stays_in_the_ten_going_back(number: int) -> Wrong:
    """49 before 40."""
    return whole(number + 9) if number % 10 == 0 and number < 100 else None
