"""What a pupil tells to set the scene: groups that join, who rolled, how it went, scores where no pin is worth anything.

A scene is taken out only where the question names everything in it again, or is given what it leaves out; a scene with a word that is
on none of these lists stays, and is asked about.
"""

from __future__ import annotations

import re

from mathgen.trials.table import TrialTable

# How a turn went, in a word that no count hangs on.
_MOODS = (
    r"(?:(?:really|all|both|just|also|totally) )*"
    r"(?:aimed (?:for|at)|went for|tried for|had (?:some |a lot of |no |a bit of )?(?:trouble|luck|fun|a hard time|a good day|a bad day)"
    r"|had an? (?:good|great|bad|rough|hard|tough|strong|fine|nice|terrible|awful|amazing|wonderful) (?:time|day|go|turn|roll|trial|game)"
    r"|struggled|did (?:really |very |so |pretty )?(?:well|badly|great|ok|okay|fine|poorly)|crashed|cheered|celebrated"
    r"|rocked|bombed|flopped|shone|got excited|were (?:on a roll|excited|happy|sad|proud)|practiced|played|love|loved|like|liked)"
    r"(?: (?:with|at|on|for|about|during|in))?"
)
_ROLLED = re.compile(
    r"\b(?:all )?(?:rolled|bowled|took turns|had (?:a|their|its) (?:go|turn|roll)|took (?:a|their|its) (?:go|turn))"
    r"(?: (?:the|a|their) (?:sock )?ball)?(?: down the ramp)?(?: one after (?:another|the other))?(?=[.!,]|$)",
    re.IGNORECASE,
)
_JOINED = (
    r"(?:(?:join|team|pair|group) up|joined up|teamed up|paired up|joined? (?:together|forces)|team(?:ed)? together|pool(?:ed)?|combined?"
    r"|put|add(?:ed)?|work(?:ed)? together|(?:make|made|form(?:ed)?) (?:one|a) (?:big )?(?:team|group)|(?:are|were) (?:put )?together)"
)
_ASKS_IT = r"(?:pins )?(?:is|was|are|does) (?:that|this|it|they)(?: make)?(?: (?:in all|altogether|together|in total|all together))?"
_PRICED = re.compile(r"\b(?:points?|pts?|poynts|worth|marks?)\b", re.IGNORECASE)
_STATS = r"mean|average|median"
_SCORED_IN = re.compile(
    rf"\b(?:{_STATS}|middle|highest|lowest|biggest|smallest|greatest|largest|difference|bigger|higher|lower|smaller|greater|times"
    r"|(?:go|went|goes) (?:up|down)|increased?|decreased?|improved?|rise|rose|drop(?:ped)?|change[ds]?|fell|grew|sum|trial scores)\b",
    re.IGNORECASE,
)


class Scene:
    """Takes the scenes out of texts about one table."""

    def __init__(self, table: TrialTable) -> None:
        """Args:
        table: its labels may stand in a scene.
        """
        groups = "|".join(re.escape(label) for label in sorted(table.groups, key=len, reverse=True)) or "(?!)"
        colors = "|".join(re.escape(color) for color in sorted(table.colors, key=len, reverse=True)) or "(?!)"
        one = rf"(?:the )?(?:{groups})"
        self._labels = re.compile(rf"\b(?:{groups}|{colors}|trial \w+)\b", re.IGNORECASE)
        where = (
            rf"(?: (?:the )?(?:{colors})(?: pins?| ones?)?)?"
            r"(?: (?:in|on|during|for) (?:trial \w+|the \w+ trial|all (?:the |\d |\w+ )?trials))?"
        )
        self._mood = re.compile(
            rf"^(?:(?:lol|wow|oh no|yay|haha|hey|ok|so)[,!]? )?(?P<who>{one}(?: and {one})?) {_MOODS}{where}[.!]+ (?P<rest>[^.!?]+[.?!]*)$",
            re.IGNORECASE,
        )
        pair = rf"(?P<pair>{one} and {one})"
        what = rf"(?: (?:their|the|all their))?(?P<when> trial \w+)?(?: (?P<color>{colors}))?(?: (?:pins|totals?|results?|scores?))?"
        later = r"(?: (?:together|up))?(?P<later> (?:in|for|on|over|across) [^.!?,:]*?)?(?: together)?"
        self._joined = re.compile(
            rf"^(?:(?:if|suppose|say|imagine) )?(?:{pair} {_JOINED}|(?:put|add|join|combine|take) {pair.replace('pair', 'two')})"
            rf"{what}{later}[.,!:;]+ (?P<rest>how many [^.!?]+[.?!]*)$",
            re.IGNORECASE,
        )

    def __call__(self, text: str) -> str:
        """The text without its scene, or with it said as the reader knows it."""
        text = self._mood.sub(self._named_again, text)
        text = self._joined.sub(self._together, text)
        text = self._rolled(text)
        return _scores(text)

    def _named_again(self, match: re.Match[str]) -> str:
        """ "The Otters aimed for gold. How many gold pins did they ...": the question, with the group in it."""
        rest = re.sub(r"\bthey\b", match["who"], match["rest"], count=1, flags=re.IGNORECASE)
        scene = match[0][: match.start("rest") - match.start()]
        named, asked = ({label.casefold() for label in self._labels.findall(part)} for part in (scene, rest))
        return rest if named <= asked else match[0]

    @staticmethod
    def _together(match: re.Match[str]) -> str:
        """ "The Otters and the Moles put their pins together. How many more is that than ...": the question, with the two in it."""
        pair, color = match["pair"] or match["two"], f"{match['color']} " if match["color"] else ""
        when = f" in{match['when']}" if match["when"] else match["later"] or ""
        rest = match["rest"]
        plain = re.fullmatch(rf"how many {_ASKS_IT}[?.!]*", rest, re.IGNORECASE)
        if plain is not None:
            return f"how many {color}pins did {pair} knock down together{when}?"
        more = re.fullmatch(r"how many (more|fewer) (?:pins )?(?:is|was) (?:that|this|it) than (.+)", rest, re.IGNORECASE)
        if more is not None:
            return f"how many {more[1]} {color}pins did {pair} knock down together{when} than {more[2]}"
        if color or (match["when"] and match["later"]):
            return match[0]
        return f"for {pair} together{when}, {rest}"

    @staticmethod
    def _rolled(text: str) -> str:
        """ "In trial 4 the groups rolled. How many ...": rolling is what a trial is, so the sentence only names who and when."""
        first, mark, rest = text.partition(". ")
        if not mark or "?" in first or not re.search(r"\bhow\b|\bwhat\b|\bwhich\b|\bfind\b", rest, re.IGNORECASE):
            return text
        return f"{_ROLLED.sub('', first)}{mark}{rest}"


def _scores(text: str) -> str:
    """ "The Owls' mean score": where no pin is worth anything, a score that is compared or averaged is a number of pins knocked down."""
    if _PRICED.search(text) or not re.search(r"\bscores?\b", text, re.IGNORECASE) or not _SCORED_IN.search(text):
        return text
    if not re.search(r"\b(?:per|each|every|scores|trials?|groups?)\b", text, re.IGNORECASE):
        text = re.sub(rf"\b({_STATS}) score\b", r"\1 number of pins knocked down per trial", text, flags=re.IGNORECASE)
    return re.sub(r"\bscore(s?)\b", r"total\1", text, flags=re.IGNORECASE)
