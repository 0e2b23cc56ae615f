"""Reading sees the words and the table, nothing else."""

import subprocess
import sys
from pathlib import Path

READ_WITH_FILES_BARRED = """
import sys

OWN = "mathgen/reading", "mathgen/scenario"

def guard(event, arguments):
    if event != "open" or not isinstance(arguments[0], str):
        return
    path = arguments[0].replace("\\\\", "/")
    if "/templates/" in path or ("/mathgen/" in path and not path.endswith((".py", ".pyc")) and not any(own in path for own in OWN)):
        raise PermissionError(path)

sys.addaudithook(guard)
from tests.reading.small_class import RAMP, TABLE
from mathgen.reading.read_problem import read_problem
from mathgen.reading.say_back import in_words

def bar_all(event, arguments):
    if event == "open":
        raise PermissionError(arguments[0])

sys.addaudithook(bar_all)
reading = read_problem("Look at Trial 1. What fraction of the red pins did the Owls knock down?", TABLE, RAMP)
sys.stdout.write(f"{reading.value} {in_words(reading, TABLE, RAMP)}\\n")
print(*sorted(name for name in sys.modules if name.startswith("mathgen.")))
"""

BARRED = ("models", "wording", "gate", "proof", "bank", "sheets", "problems", "difficulty", "press", "cli")
BARRED_FILES = {"mathgen.trials.totals", "mathgen.asks.evaluate", "mathgen.asks.steps", "mathgen.asks.relation"}


def test_reading_opens_no_template_and_loads_nothing_that_words_or_solves():
    """Its own code and lists are opened on import; after that not one file."""
    done = subprocess.run(
        [sys.executable, "-c", READ_WITH_FILES_BARRED], capture_output=True, text=True, cwd=Path(__file__).parents[2], check=False
    )
    assert done.returncode == 0, done.stderr
    said, modules = done.stdout.splitlines()
    assert said.startswith("3/4 Find the fraction")
    loaded = set(modules.split())
    assert not loaded & BARRED_FILES
    assert not [name for name in loaded if name.split(".")[1] in BARRED]


def test_no_sentence_is_named_whole_in_a_rule():
    """A rule is a frame: none spells out more than 12 words without leaving a part open."""
    from mathgen.reading import facts, instructions, noun_phrases, questions

    for rules in (facts.RULES, instructions.RULES, noun_phrases.RULES, questions.RULES):
        for entry in rules:
            words = [piece for piece in entry.pattern.split() if piece.islower() and "<" not in piece]
            assert len(words) <= 12, entry.pattern
