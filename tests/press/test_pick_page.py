"""The pick-a-card page in a real browser: the same verdicts as the program, no network, no storage needed, every control by keyboard."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING, Any

import pytest

from mathgen.bank.deck import make_deck
from mathgen.bank.deck_plan import ChosenDeck, DeckPlan
from mathgen.exact.judge import judge
from mathgen.press.pick_page import pick_page
from mathgen.trials.table import TrialTable
from tests.audit.banks import sample
from tests.browser import running
from tests.exact.typed_answers import cases, odd_signs

if TYPE_CHECKING:
    from playwright.sync_api import Browser, BrowserContext, Page


@cache
def plan() -> DeckPlan:
    """A deck of numbers and names: with every new model, other cards are drawn."""
    for seed in range(1, 30):
        made = make_deck(sample("main"), DeckPlan((4,), 12, seed=seed))
        if any(card.problem.answer.kind == "name" and card.problem.slips for card in made.cards):
            return DeckPlan((4,), 12, seed=seed)
    raise AssertionError("no deck has a name for an answer")


CASES = json.loads((Path(__file__).parents[1] / "exact" / "judge_cases.json").read_text(encoding="utf-8"))


@pytest.fixture(scope="module")
def browser() -> Iterator[Browser]:
    yield from running()


@pytest.fixture(scope="module")
def file(tmp_path_factory: pytest.TempPathFactory) -> Path:
    path = tmp_path_factory.mktemp("pick") / "cards.html"
    path.write_bytes(pick_page(sample("main"), plan())[0])
    return path


@pytest.fixture(scope="module")
def deck() -> ChosenDeck:
    return make_deck(sample("main"), plan())


@pytest.fixture
def page(browser: Browser, file: Path) -> Iterator[Page]:
    """The page opened from disk; every request and every complaint of the browser is a failure."""
    context = browser.new_context(viewport={"width": 1024, "height": 768})
    yield from _watched(context, file.as_uri())
    context.close()


def _watched(context: BrowserContext, address: str) -> Iterator[Page]:
    opened = context.new_page()
    found: list[str] = []
    opened.on("console", lambda message: found.append(message.text))
    opened.on("pageerror", lambda error: found.append(str(error)))
    opened.on("request", lambda request: found.append(request.url) if not request.url.startswith(("file:", "data:")) else None)
    opened.goto(address)
    yield opened
    assert found == []


def typed(page: Page, text: str) -> None:
    """Give an answer, by typing or by its button."""
    if page.get_attribute("#typed", "type") == "hidden":
        page.get_by_role("button", name=text, exact=True).click()
    else:
        page.fill("#typed", text)
    page.click("#check")


def card_of(page: Page, deck: ChosenDeck) -> Any:
    number = int(page.inner_text("#card-head").split()[1])
    return next(card for card in deck.cards if card.number == number)


def test_the_page_s_judge_and_the_program_s_agree_on_the_table_of_verdicts(page: Page) -> None:
    verdicts = page.evaluate("cases => cases.map(one => judge(one.expected, one.demand, one.typed))", CASES)
    assert len(CASES) >= 400
    assert [one for one, verdict in zip(CASES, verdicts, strict=True) if verdict != one["verdict"]] == []


def test_they_agree_on_thousands_of_made_up_answers(page: Page) -> None:
    made = cases(4000, "page") + odd_signs(4000, "page")
    verdicts = page.evaluate("cases => cases.map(one => judge(one.expected, one.demand, one.typed))", made)
    assert [one for one, verdict in zip(made, verdicts, strict=True) if verdict != judge(**one)[0]] == []
    assert {"right", "right_value_wrong_form", "wrong", "unreadable"} == set(verdicts)


def test_they_agree_on_the_table_of_verdicts_under_every_demand(page: Page) -> None:
    demands = (
        *("any", "simplest", "mixed", "mixed:any", "decimal", "percent", "ratio", "ratio:any"),
        *("whole", "decimal:2", "percent:1", "whole:10"),
    )
    numbers = [one for one in CASES if one["demand"] not in ("name", "truth", "quotient_remainder", "list", "expression", "rubric")]
    made = [{"expected": one["expected"], "demand": demand, "typed": one["typed"]} for one in numbers for demand in demands]
    verdicts = page.evaluate("cases => cases.map(one => judge(one.expected, one.demand, one.typed))", made)
    assert [one for one, verdict in zip(made, verdicts, strict=True) if verdict != judge(**one)[0]] == []


def test_they_agree_on_the_units_of_another_activity(page: Page) -> None:
    units = ("seed", "tray (big)", "trial")
    said = ("12 seeds", "12 pins", "12 trials", "12 tray (big)s", "12 red seeds", "12 Seeds.", "12", "twelve seeds", "12 beans")
    made = [(key, one) for key in ("12", "12 seeds") for one in said]
    verdicts = page.evaluate("([cases, units]) => cases.map(([key, one]) => judge(key, 'whole', one, units))", [made, units])
    assert verdicts == [judge(key, "whole", one, units)[0] for key, one in made]
    assert verdicts[:3] == ["right", "wrong", "right"]
    assert verdicts[len(said) :][:3] == ["right", "wrong", "wrong"]


def test_every_card_comes_once_and_its_key_is_right(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    seen = []
    for place in range(len(deck.cards)):
        card = card_of(page, deck)
        seen.append(card.number)
        assert page.inner_text("#problem .words").split()[0] == card.problem.text.split()[0]
        typed(page, card.problem.answer.shown)
        assert page.inner_text("#feedback") == "Right."
        assert page.inner_text("#progress") == f"{place + 1} of {len(deck.cards)} cards done"
        page.click("#next")
    assert sorted(seen) == [card.number for card in deck.cards]
    assert seen != sorted(seen)
    told = ", ".join(str(card.number) for card in deck.cards)
    assert page.input_value("#result") == f"Deck {deck.mark}, pupil 1: {len(seen)} of {len(seen)} cards; right on try 1: {told}"
    assert page.is_hidden("#pick")


def test_a_likely_mistake_gets_its_own_line_and_after_two_tries_the_worked_solution_is_shown(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    while not card_of(page, deck).problem.slips:
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    number, problem = card_of(page, deck)[:2]
    slip = problem.slips[0]
    typed(page, slip.value)
    assert page.inner_text("#feedback") == f"{slip.line} Try again."
    assert page.is_hidden("#worked")
    typed(page, slip.value)
    assert "Answer:" in page.inner_text("#worked")
    assert page.input_value("#result").endswith(f"; worked solution shown: {number}")


def test_a_right_value_in_another_form_is_told_apart(browser: Browser, tmp_path: Path) -> None:
    plan = DeckPlan((6,), 12, topics=("percents",))
    path = tmp_path / "percents.html"
    path.write_bytes(pick_page(sample("main"), plan)[0])
    deck = make_deck(sample("main"), plan)
    context = browser.new_context()
    page = context.new_page()
    page.goto(path.as_uri())
    page.click("#pick")
    while card_of(page, deck).problem.answer.demand.form != "percent":
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    answer = card_of(page, deck).problem.answer
    typed(page, str(answer.exact))
    assert page.inner_text("#feedback") == "The value is right. Write it as a percent. Try again."
    typed(page, answer.shown)
    assert page.inner_text("#feedback") == "Right."
    context.close()


def test_a_right_value_in_another_form_costs_no_try(browser: Browser, tmp_path: Path) -> None:
    plan = DeckPlan((6,), 12, topics=("percents",))
    path = tmp_path / "percents.html"
    path.write_bytes(pick_page(sample("main"), plan)[0])
    deck = make_deck(sample("main"), plan)
    context = browser.new_context()
    page = context.new_page()
    page.goto(path.as_uri())
    page.click("#pick")
    while card_of(page, deck).problem.answer.demand.form != "percent":
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    for _ in range(3):
        typed(page, str(card_of(page, deck).problem.answer.exact))
        assert page.is_hidden("#worked")
    context.close()


def test_a_card_counts_in_its_own_unit_and_seeds_are_no_pins(browser: Browser, tmp_path: Path) -> None:
    path, plan = tmp_path / "seeds.html", DeckPlan((2,), 8)
    path.write_bytes(pick_page(sample("seeds"), plan, "seeds")[0])
    deck = make_deck(sample("seeds"), plan, "seeds")
    context = browser.new_context()
    page = context.new_page()
    page.goto(path.as_uri())
    page.click("#pick")
    while not card_of(page, deck).problem.answer.display.endswith(" seeds"):
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    answer = card_of(page, deck).problem.answer
    typed(page, f"{answer.shown} trials")
    assert "Try again." in page.inner_text("#feedback")
    typed(page, answer.display)
    assert page.inner_text("#feedback") == "Right."
    context.close()


def test_a_name_is_chosen_from_those_that_the_question_compares(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    while card_of(page, deck).problem.answer.kind != "name":
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    problem = card_of(page, deck).problem
    offered = page.locator("#answer button").all_inner_texts()
    assert {problem.answer.shown, *(slip.value for slip in problem.slips)} <= set(offered)
    typed(page, problem.slips[0].value)
    assert page.inner_text("#feedback") == f"{problem.slips[0].line} Try again."


def test_what_can_not_be_read_costs_no_try(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    while card_of(page, deck).problem.answer.kind != "number":
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    for _ in range(3):
        typed(page, "hello")
        assert "cannot be read" in page.inner_text("#feedback")
    typed(page, card_of(page, deck).problem.answer.shown)
    assert page.inner_text("#feedback") == "Right."


def test_a_pupil_s_progress_outlasts_the_page_and_a_new_pupil_starts_afresh_in_another_order(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    first = page.inner_text("#card-head")
    typed(page, card_of(page, deck).problem.answer.shown)
    page.reload()
    assert page.inner_text("#progress").startswith("1 of ")
    page.click("#pick")
    assert page.inner_text("#card-head") != first
    orders = []
    for _ in range(2):
        page.click("#pupil")
        page.click("#sure-yes")
        assert page.inner_text("#progress").startswith("0 of ")
        orders.append(page.evaluate("JSON.parse(localStorage.getItem(Object.keys(localStorage)[0])).order"))
    assert orders[0] != orders[1]


def test_a_touch_on_new_pupil_clears_nothing_until_it_is_confirmed(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    typed(page, card_of(page, deck).problem.answer.shown)
    page.click("#pupil")
    page.click("#sure-no")
    assert page.inner_text("#progress").startswith("1 of ")


WHOLE_DECK = {"pupil": 1, "order": list(range(12)), "place": 0, "tries": 0, "done": {}, "hints": []}
PARTS: tuple[dict[str, Any], ...] = ({"place": 99}, {"done": None}, {"tries": "1"}, {"order": [0]})
SPOILED = ["no JSON", "null", "[]", *(json.dumps(WHOLE_DECK | one) for one in PARTS)]


@pytest.mark.parametrize("kept", SPOILED)
def test_progress_that_is_spoiled_starts_afresh(page: Page, kept: str) -> None:
    page.click("#pick")
    page.evaluate("kept => localStorage.setItem(Object.keys(localStorage)[0], kept)", kept)
    page.reload()
    assert page.inner_text("#progress").startswith("0 of ")
    page.click("#pick")
    assert page.is_visible("#card")


def test_a_card_that_is_put_back_comes_again_last(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    first = card_of(page, deck).number
    page.click("#back")
    page.click("#pick")
    seen = []
    for _ in deck.cards:
        seen.append(card_of(page, deck).number)
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    assert seen[-1] == first
    assert sorted(seen) == [card.number for card in deck.cards]


def test_reading_aloud_is_offered_where_there_is_a_voice_and_says_the_card_s_words(browser: Browser, file: Path, page: Page) -> None:
    page.click("#pick")
    assert page.is_hidden("#aloud")
    context = browser.new_context()
    other = context.new_page()
    other.add_init_script(
        """window.spoken = []; Object.defineProperty(window, "speechSynthesis", { value: {
        getVoices: () => [{}], addEventListener: () => {}, cancel: () => {}, speak: one => window.spoken.push(one.text) } });"""
    )
    other.goto(file.as_uri())
    other.click("#pick")
    other.click("#aloud")
    number = int(other.inner_text("#card-head").split()[1])
    data = json.loads(other.inner_text("#deck") or other.locator("#deck").text_content() or "")
    assert other.evaluate("window.spoken") == [next(card["say"] for card in data["cards"] if card["number"] == number)]
    context.close()


def test_what_is_not_the_page_s_own_does_not_run(browser: Browser, file: Path) -> None:
    context = browser.new_context()
    page = context.new_page()
    page.goto(file.as_uri())
    page.evaluate("document.body.append(Object.assign(document.createElement('script'), { textContent: 'document.title = 1' }))")
    assert page.title() == "Knocking down pins: pick a card"
    context.close()


def test_it_works_in_a_frame_without_storage(browser: Browser, file: Path, deck: ChosenDeck) -> None:
    context = browser.new_context()
    outer = context.new_page()
    outer.set_content('<iframe sandbox="allow-scripts" width="800" height="900"></iframe>')
    outer.evaluate("html => { document.querySelector('iframe').srcdoc = html; }", file.read_text(encoding="utf-8"))
    frame = outer.frame_locator("iframe")
    frame.locator("#pick").click()
    assert "kept only until this page is closed" in frame.locator("#note").inner_text()
    number = int(frame.locator("#card-head").inner_text().split()[1])
    problem = next(card.problem for card in deck.cards if card.number == number)
    if frame.locator("#typed").get_attribute("type") == "hidden":
        frame.get_by_role("button", name=problem.answer.shown, exact=True).click()
    else:
        frame.locator("#typed").fill(problem.answer.shown)
    frame.locator("#check").click()
    assert frame.locator("#feedback").inner_text() == "Right."
    context.close()


def test_names_are_text_whatever_stands_in_them(browser: Browser, tmp_path: Path) -> None:
    evil = '<img src=x onerror="document.title=1">'
    rows = [replace(row, group=evil) if row.group == "Owls" else row for row in sample("main").rows]
    path, plan, table = tmp_path / "evil.html", DeckPlan((3, 4, 6), 20), TrialTable(tuple(rows))
    path.write_bytes(pick_page(table, plan)[0])
    deck = make_deck(table, plan)
    context = browser.new_context()
    for page in _watched(context, path.as_uri()):
        page.click("#pick")
        shown = ""
        for _ in deck.cards:
            shown += page.inner_text("#problem")
            typed(page, card_of(page, deck).problem.answer.shown)
            page.click("#next")
        assert evil in shown
        assert page.title() == "Knocking down pins: pick a card"
        assert page.locator("img[src=x]").count() == 0
    context.close()


@pytest.mark.parametrize("scheme", ["light", "dark"])
@pytest.mark.parametrize("width", [320, 390, 1280])
def test_axe_finds_no_violation_and_nothing_runs_over_the_side(
    browser: Browser, file: Path, deck: ChosenDeck, scheme: Any, width: int
) -> None:
    """axe-core's rules, which follow WCAG 2.2 at levels A and AA and its own best practices; each kind of card, in every state."""
    from axe_playwright_python.sync_playwright import Axe

    context = browser.new_context(color_scheme=scheme, viewport={"width": width, "height": 700})
    page = context.new_page()
    page.goto(file.as_uri())

    def clean(state: str) -> None:
        found = Axe().run(page).response["violations"]
        assert [(one["id"], one["nodes"][0]["html"][:90]) for one in found] == [], state
        assert page.evaluate("document.documentElement.scrollWidth") <= width, state

    clean("stack")
    page.click("#pick")
    seen = set()
    for _ in deck.cards:
        kind = (page.locator("#problem table").count(), page.locator("#problem img").count(), page.get_attribute("#typed", "type"))
        problem = card_of(page, deck).problem
        new = kind not in seen
        seen.add(kind)
        if new:
            page.click("#hint")
            clean(f"hint, {kind}")
        if new and problem.slips:
            typed(page, problem.slips[0].value)
            clean(f"feedback, {kind}")
            typed(page, problem.slips[0].value)
            clean(f"worked solution, {kind}")
        else:
            typed(page, problem.answer.shown)
        page.click("#next")
    page.click("#pupil")
    clean("all done, new pupil")
    assert len(seen) > 2
    context.close()


def test_a_card_can_be_picked_and_answered_with_the_keyboard_alone(page: Page, deck: ChosenDeck) -> None:
    page.keyboard.press("Tab")
    page.keyboard.press("Enter")
    while page.get_attribute("#typed", "type") == "hidden":
        typed(page, card_of(page, deck).problem.answer.shown)
        page.keyboard.press("Enter")
    while page.evaluate("document.activeElement.id") != "typed":
        page.keyboard.press("Tab")
    page.keyboard.type(card_of(page, deck).problem.answer.shown)
    page.keyboard.press("Enter")
    assert page.inner_text("#feedback") == "Right."
    assert page.evaluate("document.activeElement.id") == "next"


def test_the_touch_keys_write_and_delete_at_the_caret(page: Page, deck: ChosenDeck) -> None:
    page.click("#pick")
    while page.locator("#keypad button").count() == 0 or page.locator("#keypad [aria-label='fraction bar']").count() == 0:
        typed(page, card_of(page, deck).problem.answer.shown)
        page.click("#next")
    for name in ("3", "fraction bar", "4", "7", "delete"):
        page.locator(f"#keypad [aria-label='{name}']").click()
    assert page.input_value("#typed") == "3/4"
    assert page.locator("#seen .fraction span").all_inner_texts() == ["3", "4"]
    assert page.evaluate("document.activeElement.id") != "typed"  # or a touch screen would open its keyboard over the card


def test_all_cards_are_printed(page: Page, deck: ChosenDeck) -> None:
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    page.emulate_media(media="print")
    assert page.locator("#paper article").count() == len(deck.cards)
    assert page.is_visible("#paper")
    assert page.is_hidden("#pick")


def test_the_same_plan_gives_the_same_bytes(file: Path) -> None:
    assert pick_page(sample("main"), plan())[0] == file.read_bytes()
