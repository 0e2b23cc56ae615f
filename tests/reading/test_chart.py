import pytest

from mathgen.reading.chart import Clash, Grammar, build, rule


def refuse_zero(number: int) -> int:
    if number == 0:
        raise Clash
    return number


SUMS = Grammar(
    (
        rule("sum", "NUM plus <sum>", lambda number, rest: f"({number}+{rest})"),
        rule("sum", "NUM", str),
        rule("sum", "<pair> plus <sum>", lambda pair, rest: f"({pair}+{rest})"),
        rule("pair", "NUM plus NUM", lambda a, b: f"[{a} {b}]"),
        rule("question", "(what|how) much? is COLOR? <sum>", lambda color, total: (color, total)),
        rule("checked", "NUM", refuse_zero),
    )
)


def read(name: str, *tokens: tuple[str, object]) -> list[object]:
    return [build(node, [(value,) for _, value in tokens]) for node in SUMS.parse(name, tuple((kind,) for kind, _ in tokens))]


ONE, TWO, THREE, PLUS = ("NUM", 1), ("NUM", 2), ("NUM", 3), ("plus", None)


def test_every_way_to_span_the_whole_row_is_found():
    assert sorted(map(str, read("sum", ONE, PLUS, TWO, PLUS, THREE))) == ["(1+(2+3))", "([1 2]+3)"]


def test_what_does_not_reach_the_end_is_no_way():
    assert read("sum", ONE, PLUS, TWO, PLUS) == []


def test_words_may_be_chosen_and_left_out_and_what_is_left_out_is_none():
    assert read("question", ("what", None), ("is", None), ONE) == [(None, "1")]
    assert read("question", ("how", None), ("much", None), ("is", None), ("COLOR", "red"), ONE) == [("red", "1")]


def test_parts_that_do_not_go_together_clash():
    assert read("checked", ONE) == [1]
    with pytest.raises(Clash):
        read("checked", ("NUM", 0))


def test_a_token_can_be_of_several_kinds():
    [node] = SUMS.parse("question", (("what",), ("is",), ("GROUP", "COLOR"), ("one", "NUM")))
    assert build(node, [(None,), (None,), ("Red", "red"), (None, 1)]) == ("red", "1")


def test_rules_that_begin_with_themselves_or_lead_nowhere_are_refused():
    with pytest.raises(ValueError, match="begins with itself"):
        Grammar((rule("a", "<b> x", str), rule("b", "<a> y", str)))
    with pytest.raises(ValueError, match="no rule for <b>"):
        Grammar((rule("a", "x <b>", str),))
