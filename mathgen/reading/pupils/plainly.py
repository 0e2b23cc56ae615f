"""A pupil's text put plainly: turns of speech that mean the same as one the reader knows, before a word of it is heard.

Each rule is a pattern and what it comes to. A rule may only restate: it never drops a number, a label or a word that could change the
answer. What is understood in the end is said back to the pupil, so that nothing is restated unseen.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import NamedTuple

from mathgen.trials.table import TrialTable

_ORDER = "first|second|third|fourth|fifth|sixth|last|final"
_FORM = r"fraction|decimal|percent(?:age)?"
_STAT = r"median|mean|average|middle (?:number|one|value)"
_ROLLED = r"(?:has|have|had|took|take|takes) (?:a|its|their) (?:turn|go|roll)|rolls?|rolled|goes|go|went|plays?|played|threw|bowls?|bowled"
_USE = r"(?:use|using|based on|according to|going by|go by|looking at|judging by|judging from|from|given|by)"


class _Rule(NamedTuple):
    pattern: re.Pattern[str]
    plain: str | Callable[[re.Match[str]], str]


class Plainly:
    """Puts texts about one table plainly."""

    def __init__(self, table: TrialTable, past_standing: str) -> None:
        """Args:
        table: its labels are known words.
        past_standing: what is said of pins that were not knocked down: "left standing".
        """
        self._table = table
        groups = "|".join(re.escape(label) for label in sorted(table.groups, key=len, reverse=True)) or "(?!)"
        colors = "|".join(re.escape(color) for color in sorted(table.colors, key=len, reverse=True)) or "(?!)"
        self._not_a_color = re.compile(rf"\b(was|were|is|are) (?:not|never) ({colors})\b", re.IGNORECASE)
        self._labels = re.compile(rf"\b(?:{groups}|{colors}|\d+)s?\b", re.IGNORECASE)
        self._standing = past_standing
        self._rules = [_Rule(re.compile(pattern, re.IGNORECASE), plain) for pattern, plain in _rules(rf"(?:the )?(?:{groups})(?:['’]s?)?")]

    def __call__(self, text: str) -> str:
        """The text, said as the reader knows it."""
        for pattern, plain in self._rules:
            text = pattern.sub(plain, text)
        text = self._not_a_color.sub(self._another_color, text)
        text = re.sub(r"\b(that|which|who) (?:did not|didn['’]?t)(?=$|[?.,]| (?:for|in|by|on) )", rf"\1 were {self._standing}", text, flags=re.IGNORECASE)
        text = _COMPARE.sub(self._compared, text)
        text = self._others(text)
        return _as_a_question(" ".join(text.split()))

    @staticmethod
    def parted(text: str) -> str:
        """The text with what it tells first as a sentence of its own: for where it can not be understood as one."""
        return _SPLICED.sub(". ", text)

    def _another_color(self, match: re.Match[str]) -> str:
        """ "Were not red": were of one of the other colors."""
        others = [color for color in self._table.colors if color.casefold() != match[2].casefold()]
        return f"{match[1]} {' or '.join(others)}" if others else match[0]

    def _compared(self, match: re.Match[str]) -> str:
        """ "Compare gold and red. How many times ...": the first sentence adds nothing where the second names the same."""
        first, rest = ({found.casefold().rstrip("s") for found in self._labels.findall(part)} for part in match.groups())
        others = re.sub(r"\b(?:the|and|with|to|pins|trials?|,)\b|\s", "", self._labels.sub("", match[1]), flags=re.IGNORECASE)
        return match[2] if first and first <= rest and not others else match[0]

    def _others(self, text: str) -> str:
        """ "Red pins are worth 3 points, all the others 1": the other colors by name, where a worth is told."""
        if not re.search(r"\b(?:points?|pts?|worth)\b", text, re.IGNORECASE):
            return text

        def colors(match: re.Match[str]) -> str:
            named = [color for color in self._table.colors if re.search(rf"\b{re.escape(color)}", text[: match.start()], re.IGNORECASE)]
            others = [color for color in self._table.colors if color not in named]
            return match[0] if not named or not others else f"{' and '.join(others)} pins"

        return _OTHERS.sub(colors, text)


# "The Finches got red and gold pins down in trial 1, what is the ratio ...": a sentence that tells, and one that asks.
_SPLICED = re.compile(
    r"(?<=[^,.?!:;])(?<!^in)(?<!^of), (?=(?:what is|what's|whats|what was|how many|how much|which)\b)(?!.*[,.?!:;] )", re.IGNORECASE
)
_COMPARE = re.compile(r"^compare ([^.?!:]+)[.:!] (.+)$", re.IGNORECASE)
_OTHERS = re.compile(
    r"\b(?:all (?:of )?)?(?:the )?(?:rest|others|other (?:pins|colou?rs|ones)|remaining (?:pins|colou?rs))\b"
    r"|\b(?:every|each|any) other (?:pin|colou?r|one)\b|\ball other (?:pins|colou?rs)\b|\bother (?:pins|colou?rs)\b|\b(?:everything|anything) else\b",
    re.IGNORECASE,
)
_ASKING = re.compile(
    r"\b(?:how|what|whats|wats|wat|wot|which|wich|who|whos|whose|find|give|work out|calculate|determine|compute|state|write|express|show|add|tell|name"
    r"|estimate|identify|count|ratio|median|mean|average|chance|probability|fraction|percent\w*|decimal|difference|minus|subtract|take away|half)\b|%",
    re.IGNORECASE,
)
_TOTAL = re.compile(r"\b(?:total|in all|al+to?gether|al+togeather|put together|combined|overall|all together)\b", re.IGNORECASE)
_COUNT = re.compile(r"(?<!trial )(?<!trials )(?<!round )\b\d+\b(?!\s*(?:st|nd|rd|th|trials?|tr[iy]e?s|goes|rolls|turns|rounds|groups|teams))", re.IGNORECASE)


def _as_a_question(text: str) -> str:
    """ "Total pins down, Swifts, last trial", "Blue pins still up after their second go?": how many, where no number is told."""
    body = text.rstrip(" .!?")
    one_sentence = not re.search(r"[.!?;:]\s", body)
    if not one_sentence or _ASKING.search(body) or _COUNT.search(body):
        return text
    if text.endswith("?") and not re.match(r"(?:did|do|does|was|were|is|are|can|could|will|would|has|have|and|or)\b", body, re.IGNORECASE):
        return f"how many {body}?"
    return f"how many {body}?" if _TOTAL.search(body) else text


def _rules(group: str) -> list[tuple[str, str | Callable[[re.Match[str]], str]]]:
    """The rules, in the order in which they are tried.

    Args:
        group: a pattern for the name of any group, with its article.
    """
    return [
        # ordinals: "2nd", "the first one", "their last go" (not "go and ...")
        (r"\b(1st|2nd|3rd|4th|5th|6th)\b", lambda match: _ORDINALS[match[1].casefold()]),
        (rf"\b({_ORDER}) (?:one|go|roll|turn|try|attempt)\b", r"\1 trial"),
        # who rolled, said as a clause: "when the Owls roll", "when the Badgers did trial 1"
        (rf"\bwhen ({group}) (?:did|had|do|does|has) (?=(?:their |its |the )?(?:{_ORDER}|trial))", r"for \1 in "),
        (rf"\b(?:when|if) ({group}) (?:{_ROLLED})\b", r"for \1"),
        # results that are used: the scope they name stays
        (rf"^{_USE} (?:the |their |these |those )?(?:class(?:'s)? )?(?:results?|data)(?: in the table)?(?: (?:for|of|from) (?P<scope>[^,]*?))?,? (?:to )?(?=estimate|find|what|how|work out|calculate)",
         lambda match: f"for {match['scope']} " if match["scope"] else ""),
        (rf"^{_USE} ({group}) results?(?: (?:for|of|from) (?P<scope>[^,]*?))?,? (?:to )?(?=estimate the|find|what|how)",
         lambda match: f"for {match[1]} " + (f"{match['scope']} " if match["scope"] else "")),
        (rf"^{_USE} (?P<scope>(?:all|the|trials?|every|each)\b[^,]*?\btrials?(?: \d+(?:(?:, \d+)* and \d+)?)?),? (?:to )?(?=estimate|find|what|how)",
         lambda match: f"in {match['scope']} "),
        (rf"\b{_USE} (?:the |their |these )?results? (?=(?:of|from|for) )", ""),
        (rf"\b{_USE} (?:the |their |these )?results?\b,?", ""),
        (r"\bestimate (?=the (?:experimental )?(?:probability|chance))", "what is "),
        (r"\bevery group and (?:every |each )?trial\b|\ball (?:the )?groups and (?:all )?(?:the )?trials\b", "the whole class in all trials"),
        (r"\b(?:every group|all (?:of )?the groups) combined\b", "the whole class"),
        (r"\ball (?:of )?the groups['’] results\b", "the whole class in all trials"),
        # a form asked for first or last
        (rf"^(?:express|write|give) (?:it )?as an? ({_FORM})\s*:\s*", r"what \1 is "),
        (rf"^(?:as an? )?({_FORM})(?: please)?\s*:\s*", r"what \1 is "),
        (rf"^as an? ({_FORM}),? (?=.*\bout of\b)", r"what \1 is "),
        (rf"\b(?:written|expressed|given|say it|state it|stated) (?=(?:as|in) an? (?:{_FORM}))", ""),
        # in order, and the middle
        (rf"\b(?:put|order|arrange|line up|list|sort) (?P<what>[^.,?!]+?)(?: in order)?(?: from)?(?: (?:least|smallest|lowest|most|biggest|highest) to (?:greatest|biggest|largest|highest|most|least|smallest))?"
         rf"[.,!]?(?: and)?(?: then)? (?:what is|what's|whats|what number is|state|find|give|tell me) the ({_STAT})(?: number)?(?P<end>[.?!]*)$",
         lambda match: f"what is the {_stat(match[2])} of {match['what']}{match['end']}"),
        (r"\s*\(?(?:that is,? )?\(the middle (?:number|one|value)\)", ""),
        (r"\b(?:each|every) of the (\w+) (groups|teams)\b(?=.*$)", r"the \1 \2"),
        (rf"^(?P<what>[^:.?!]+?):? (?:what is|what's|whats) (?:their|its) ({_STAT})(?P<end>[?.]*)$",
         lambda match: f"what is the {_stat(match[2])} of {match['what']}{match['end']}"),
        (rf"^if (?:all )?(?:the )?(?P<what>pins|\w+ pins) (?P<who>{group}) (?P<verb>knocked down|got|hit) (?P<when>[^,]*?)\bwere (?:shared|split|spread|divided)(?: out)?(?: evenly| equally)?(?: out)?"
         rf" (?:over|across|among|between) (?P<trials>[^,]*?\btrials)(?: evenly| equally)?, how many [^?]*\?*$",
         lambda match: f"what is the mean number of {match['what']} {match['who']} {match['verb']} per trial in {match['trials']}?"),
        # one group or several
        (r"\b(which|what|name the|identify the|find the|state the) (group|team|trial|color|colour)s?,? or \2s\b", r"which \2"),
        (r"\b(?:identify|name|state|determine) the (group|team|trial|color|colour)s? (?=with|that|which|who)", r"which \1 "),
        (r"\b(which (?:group|team|trial|colou?r)) (?:with|that|which|who) (?=the )", r"\1 got "),
        (r"\b(which (?:group|team|trial|colou?r)) (?:that|which|who) ", r"\1 "),
        (r",? or groups if (?:it is|its|it's) a tie", ""),
        (r"\bgroups? tied for the\b", "group got the"),
        (r"\bwhose total was (?:the )?(highest|biggest|largest|greatest)\b", "which group got the most"),
        (r"\bwhose total was (?:the )?(lowest|smallest)\b", "which group got the fewest"),
        # compared with
        (rf"^compared (?:to|with) ({group}),? (how (?:many|much) .*?)(\??)$", r"\2 than \1\3"),
        (rf"^compare ({group}) (?:and|with|to) ({group})[.:,;]? (?=how)", r"\1 and \2, "),
        (r"\bextra (?=\w+ pins\b|pins\b)", "more "),
        (rf"\bhow many times as many (?P<what>[^?]*?) as (?P<b>{group}) did (?P<a>{group}) (?P<rest>[^?]*)",
         lambda match: f"how many times as many {match['what']} did {match['a']} {match['rest'].rstrip()} as {match['b']}"),
        (r"\bhow many pins? better (was|were)\b", r"how many more pins \1"),
        # a change told first: "The Jays dropped from trial 1 to trial 2. By how many?"
        (rf"^(?:oh (?:no|wow|yes)!? )?(?P<who>[^.?!]*?)(?:'s)?(?: total| score)? (?P<turn>dropped|fell|sank|went down|declined|decreased|rose|climbed|jumped|went up|improved|grew|increased)"
         rf"(?: a lot)? from (?P<a>[^.?!]+?) to (?P<b>[^.?!]+?)[.,!;:]+ (?:and )?by how (?:many|much)(?: pins)?(?: did (?:it|they) \w+)?\??$",
         lambda match: f"by how many pins did {match['who']} {_TURN[match['turn'].casefold()]} from {match['a']} to {match['b']}?"),
        # a part of those that fell: "the percent of the pins knocked down by the Larks that were gold"
        (rf"\b(?:the |what )?({_FORM}) (?:of|out of) (the (?:pins|total)[^?.]*?) that (?:were|was|are) (?=\w+(?: pins)?\s*[?.]?$)", r"of \2, what \1 were "),
        # a test: "8 pins or more", "8 or more pins"
        (r"\b(\d+|\w+) pins or more\b", r"at least \1 pins"),
        (r"\b(\d+) or more pins\b", r"at least \1 pins"),
        (r"\bof there (trials|tries|goes|rolls|turns)\b", r"of their \1"),
        (r"\bneed to (?:hit|knock down|get)( in [^?]*?)? to (?:knock down|get|hit) all (?:of )?(?:the )?(\d+)( pins)?", r"need\1 to have \2"),
        # points
        (r"\blet (?=(?:each|every|an?|the|all)? ?[\w ]{0,20}be worth)", "if "),
        (r"\b(?:counts?|scores?|earns?|gets?) (?=\d+ (?:points?|pts?))", "is worth "),
        (r"(?<=points) while\b|(?<=point) while\b", " and"),
        (r"\b(how many points (?:do|did|would|does) [^?.]*?) (?:make|earn|win|collect|score)\b", r"\1 get"),
        (r"\bnothing else (?:counts|scores|is worth anything)\b", "everything else is worth 0 points"),
        (r"(?<=trials) counted\b", ""),
    ]  # fmt: skip


_ORDINALS = {"1st": "first", "2nd": "second", "3rd": "third", "4th": "fourth", "5th": "fifth", "6th": "sixth"}
_TURN = {
    **dict.fromkeys(("dropped", "fell", "sank", "went down", "declined", "decreased"), "go down"),
    **dict.fromkeys(("rose", "climbed", "jumped", "went up", "improved", "grew", "increased"), "go up"),
}


def _stat(word: str) -> str:
    return "median" if word.casefold().startswith("middle") else word
