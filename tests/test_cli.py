"""The commands as a teacher runs them: help, exit statuses, standard input, reprinting, and the same bytes every time."""

from __future__ import annotations

import json
import os
import re
import shlex
import subprocess
import sys
from pathlib import Path

import click
import pytest
from click.testing import CliRunner, Result

import mathgen.bank.code
from mathgen.cli import COMMANDS, main
from tests.press.pdf_structure import text

ROOT = Path(__file__).resolve().parents[1]
MAIN = ROOT / "samples" / "main.csv"
README = (ROOT / "README.md").read_text(encoding="utf-8")

# One result: too little for twenty problems.
ONE_RESULT = "Pins knocked down\nGroup,Trial,Red (8),Blue (8)\nOwls,1,3,5\n"
# Nothing says whether the counts are of pins knocked down or left standing.
EITHER_WAY = "Group,Trial,Red (4),Blue (3)\nOwls,1,3,2\nHerons,1,1,2\n"
NO_SET_UP = "Pins knocked down\nGroup,Trial,Red,Blue\nOwls,1,3,2\nHerons,1,1,2\n"
NO_COUNT = "Pins knocked down\nGroup,Trial,Red (4),Blue (3)\nOwls,1,3,2\nHerons,1,1O,many\n"


def run(*arguments: object, typed: str | bytes | None = None) -> Result:
    """A command in this process, with what is typed into standard input."""
    # An exception that flies is a bug; caught, it would look like the exit status of a refusal.
    return CliRunner().invoke(main, list(map(str, arguments)), input=typed, catch_exceptions=False)


def alone(*arguments: object, folder: Path, hash_seed: str = "0") -> subprocess.CompletedProcess[str]:
    """A command in a process of its own."""
    command = [sys.executable, "-m", "mathgen", *map(str, arguments)]
    environment = {**os.environ, "PYTHONHASHSEED": hash_seed, "PYTHONPATH": str(ROOT)}
    return subprocess.run(command, cwd=folder, env=environment, capture_output=True, text=True, check=False)


def files(folder: Path) -> dict[str, bytes]:
    """Every file of a folder."""
    return {path.name: path.read_bytes() for path in sorted(folder.iterdir())}


@pytest.fixture(scope="module")
def sheet(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The folder of a grade 4 sheet made from the main sample, as README's command makes it."""
    folder = tmp_path_factory.mktemp("sheet")
    made = run("worksheet", MAIN, "--grade", 4, "--out", folder)
    assert made.exit_code == 0, made.output
    return folder


def code_of(folder: Path, grade: int = 4) -> str:
    """The sheet code that stands in a key file."""
    return str(json.loads((folder / f"grade{grade}-key.json").read_text(encoding="utf-8"))["code"])


# Help and README


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_has_help_that_says_what_it_does_and_names_its_options(name: str) -> None:
    shown = run(name, "--help")
    assert shown.exit_code == 0
    command = main.get_command(click.Context(main), name)
    assert command is not None
    assert command.help
    assert " ".join(command.help.split("\n\n")[0].split()) in " ".join(shown.output.split())
    for parameter in command.params:
        if isinstance(parameter, click.Option):
            assert parameter.opts[0] in shown.output


def test_the_program_lists_every_command_and_the_exit_statuses() -> None:
    shown = run("--help")
    assert shown.exit_code == 0
    assert all(re.search(rf"^  {name} ", shown.output, re.MULTILINE) for name in COMMANDS)
    statuses = "Exit status: 0 done as asked, 1 refused, 2 wrong usage, 3 needs an answer, 4 made with a change."
    assert statuses in " ".join(shown.output.split())


@pytest.mark.parametrize("name", COMMANDS)
def test_every_command_has_a_place_in_readme(name: str) -> None:
    assert f"| `mathgen {name} " in README


def test_readme_names_no_command_and_no_option_that_is_not_there() -> None:
    known = {option for name in COMMANDS for param in main.get_command(click.Context(main), name).params for option in param.opts}  # type: ignore[union-attr]
    own = "\n".join(line for line in README.splitlines() if "pip install" not in line)
    assert set(re.findall(r"(?<![\w-])--[a-z][a-z-]+", own)) <= known | {"--help"}
    assert set(re.findall(r"`mathgen ([a-z-]+)", README)) <= set(COMMANDS)


def test_readme_main_command_is_one_that_works(tmp_path: Path) -> None:
    """The words after "mathgen" in README's first command, run as they stand but for the folder."""
    found = re.search(r"\.venv/bin/mathgen (today .*)", README)
    assert found is not None
    arguments = shlex.split(found[1])
    arguments[arguments.index("out")] = str(tmp_path)
    made = alone(*arguments, folder=ROOT)
    assert made.returncode == 0, made.stderr
    assert len(files(tmp_path)) == 8


# Exit statuses


def test_status_0_when_done_exactly_as_asked(tmp_path: Path) -> None:
    made = alone("worksheet", MAIN, "--grade", "4", "--count", "3", "--out", tmp_path, folder=tmp_path)
    assert made.returncode == 0
    assert made.stdout.split() == [str(tmp_path / f"grade4-{end}") for end in ("worksheet.pdf", "key.pdf", "key.json")]
    assert "6 groups: Owls" in made.stderr
    key = json.loads((tmp_path / "grade4-key.json").read_text(encoding="utf-8"))
    assert key["changes"] == []
    assert [len(form["problems"]) for form in key["forms"]] == [3]


@pytest.mark.parametrize(
    "command",
    [["read"], ["worksheet", "--grade", "4", "--out", "out"], ["bank", "--grades", "4", "--out", "bank.jsonl"]],
    ids=["read", "worksheet", "bank"],
)
def test_status_1_when_a_table_is_refused_with_every_fault_named(command: list[str], tmp_path: Path) -> None:
    (tmp_path / "table.csv").write_text(NO_COUNT, encoding="utf-8")
    name, *rest = command
    refused = alone(name, "table.csv", *rest, folder=tmp_path)
    assert refused.returncode == 1
    assert "C4" in refused.stderr
    assert "1O" in refused.stderr
    assert "D4" in refused.stderr
    assert "many" in refused.stderr
    assert "Traceback" not in refused.stderr
    assert [path.name for path in tmp_path.iterdir()] == ["table.csv"]


def test_status_1_when_there_is_no_such_file(tmp_path: Path) -> None:
    refused = run("worksheet", tmp_path / "none.csv", "--grade", 4, "--out", tmp_path / "out")
    assert refused.exit_code == 1
    assert "none.csv" in refused.output
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize(
    "arguments",
    [
        ["worksheet", MAIN, "--out", "out"],
        ["worksheet", MAIN, "--grade", "four", "--out", "out"],
        ["worksheet", MAIN, "--grade", "9", "--out", "out"],
        ["worksheet", MAIN, "--grades", "5-2", "--out", "out"],
        ["worksheet", MAIN, "--grade", "4"],
        ["worksheet", "--grade", "4", "--out", "out"],
        ["worksheet", MAIN, "--grade", "4", "--out", "out", "--colour"],
        ["worksheet", MAIN, "--grade", "4", "--out", "out", "--set-up", "red"],
        ["bank", MAIN, "--out", "bank.jsonl"],
        ["list", "models"],
        ["reprint"],
        ["draw"],
    ],
    ids=lambda arguments: " ".join(str(each.name if isinstance(each, Path) else each) for each in arguments),
)
def test_status_2_when_the_usage_is_wrong(arguments: list[object], tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.chdir(tmp_path)
    wrong = run(*arguments)
    assert wrong.exit_code == 2
    assert "Usage:" in wrong.output
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize(
    ("table", "answers"),
    [(EITHER_WAY, ["--counts down", "--counts standing"]), (NO_SET_UP, ["--set-up red=N,blue=N"])],
    ids=["down or standing", "set up"],
)
def test_status_3_when_an_answer_is_needed_and_the_option_that_gives_it_is_named(table: str, answers: list[str], tmp_path: Path) -> None:
    (tmp_path / "table.csv").write_text(table, encoding="utf-8")
    asked = alone("worksheet", "table.csv", "--grade", "3", "--out", "out", folder=tmp_path)
    assert asked.returncode == 3
    assert all(answer in asked.stderr for answer in answers)
    assert not (tmp_path / "out").exists()
    given = [word.replace("red=N,blue=N", "red=4,blue=3") for word in answers[0].split()]
    assert alone("read", "table.csv", *given, folder=tmp_path).returncode == 0


def test_status_4_when_made_with_a_change_that_is_said_on_standard_error_and_in_the_key_file(tmp_path: Path) -> None:
    (tmp_path / "table.csv").write_text(ONE_RESULT, encoding="utf-8")
    made = alone("worksheet", "table.csv", "--grade", "4", "--count", "20", "--out", "out", folder=tmp_path)
    assert made.returncode == 4
    changes = json.loads((tmp_path / "out" / "grade4-key.json").read_text(encoding="utf-8"))["changes"]
    assert changes
    assert all(f"grade 4: {change}" in made.stderr for change in changes)
    assert "20 problems were wanted" in changes[0]


def test_read_gives_json_with_the_same_statuses() -> None:
    read = run("read", "-", "--json", typed=ONE_RESULT)
    asked = run("read", "-", "--json", typed=EITHER_WAY)
    refused = run("read", "-", "--json", typed=NO_COUNT)
    assert (read.exit_code, asked.exit_code, refused.exit_code) == (0, 3, 1)
    understood, questions, faults = (json.loads(each.output) for each in (read, asked, refused))
    assert understood["rows"] == [
        {"group": "Owls", "trial": 1, "color": "red", "set_up": 8, "down": 3},
        {"group": "Owls", "trial": 1, "color": "blue", "set_up": 8, "down": 5},
    ]
    assert questions["rows"] == []
    assert [one["id"] for one in questions["questions"]] == ["counts"]
    assert [(one["cell"], one["found"]) for one in faults["faults"]] == [("C4", "1O"), ("D4", "many")]


# Standard input, files that exist, several grades


def test_a_table_from_standard_input_gives_the_same_files_as_from_a_file(sheet: Path, tmp_path: Path) -> None:
    made = run("worksheet", "-", "--grade", 4, "--out", tmp_path, typed=MAIN.read_bytes())
    assert made.exit_code == 0, made.output
    assert files(tmp_path) == files(sheet)


def test_a_table_pasted_from_a_spreadsheet_reads_as_its_csv_does() -> None:
    pasted = MAIN.read_text(encoding="utf-8").replace(",", "\t")
    assert json.loads(run("read", "-", "--json", typed=pasted).output)["rows"] == json.loads(run("read", MAIN, "--json").output)["rows"]


@pytest.mark.parametrize("command", [["worksheet", "--count", "2"], ["bank", "--per-model", "1"]], ids=["worksheet", "bank"])
def test_files_that_exist_are_kept_without_force_and_replaced_with_it(command: list[str], tmp_path: Path) -> None:
    out = tmp_path / ("bank.jsonl" if command[0] == "bank" else "grade4-key.pdf")
    out.write_text("mine", encoding="utf-8")
    name, *rest = command
    arguments = [name, MAIN, "--grade", 4, *rest, "--out", out if name == "bank" else tmp_path]
    refused = run(*arguments)
    assert refused.exit_code == 1
    assert out.name in refused.output
    assert "--force" in refused.output
    assert {path.name: path.read_text(encoding="utf-8") for path in tmp_path.iterdir()} == {out.name: "mine"}
    assert run(*arguments, "--force").exit_code == 0
    assert out.read_bytes() != b"mine"


@pytest.mark.parametrize(("asked", "grades"), [(["--grades", "3-5"], (3, 4, 5)), (["--grade", "3,5"], (3, 5))])
def test_several_grades_make_a_set_each(asked: list[str], grades: tuple[int, ...], tmp_path: Path) -> None:
    made = run("worksheet", MAIN, *asked, "--count", 3, "--out", tmp_path)
    assert made.exit_code == 0, made.output
    assert set(files(tmp_path)) == {f"grade{grade}-{end}" for grade in grades for end in ("worksheet.pdf", "key.pdf", "key.json")}


# Reprinting


@pytest.mark.parametrize(
    "wishes",
    [[], ["--seed", "7", "--forms", "2", "--paper", "a4", "--count", "4"], ["--large-print", "--layout", "save-paper"]],
    ids=["defaults", "forms", "large print"],
)
def test_a_code_and_its_table_print_the_same_bytes_again(wishes: list[str], tmp_path: Path) -> None:
    first, again = tmp_path / "first", tmp_path / "again"
    assert run("worksheet", MAIN, "--grade", 4, *wishes, "--out", first).exit_code in (0, 4)
    code = code_of(first)
    assert code in text((first / "grade4-worksheet.pdf").read_bytes())
    assert code in text((first / "grade4-key.pdf").read_bytes())
    assert run("reprint", code, MAIN, "--out", again).exit_code == 0
    assert files(again) == files(first)


def test_a_code_may_be_typed_in_small_letters_with_blanks(sheet: Path, tmp_path: Path) -> None:
    code = code_of(sheet).lower()
    assert run("reprint", f"{code[:5]} {code[5:10]}-{code[10:]}", MAIN, "--out", tmp_path).exit_code == 0
    assert files(tmp_path) == files(sheet)


def test_a_key_file_prints_the_same_pages_again_without_the_table(sheet: Path, tmp_path: Path) -> None:
    printed = run("reprint", sheet / "grade4-key.json", "--out", tmp_path)
    assert printed.exit_code == 0, printed.output
    assert files(tmp_path) == {name: content for name, content in files(sheet).items() if name.endswith(".pdf")}


def test_a_key_file_edited_by_hand_prints_what_it_now_says(sheet: Path, tmp_path: Path) -> None:
    content = json.loads((sheet / "grade4-key.json").read_text(encoding="utf-8"))
    content["pages"]["worksheet"]["title"] = "Rolling on Tuesday"
    edited = tmp_path / "grade4-key.json"
    edited.write_text(json.dumps(content), encoding="utf-8")
    printed = run("reprint", edited, "--out", tmp_path / "out")
    assert printed.exit_code == 4
    assert "This key file was changed after it was checked." in printed.stderr
    key = text((tmp_path / "out" / "grade4-key.pdf").read_bytes())
    assert "This key file was changed after it was checked." in key
    assert "Every answer was checked" not in key
    assert "Rolling on Tuesday" in text((tmp_path / "out" / "grade4-worksheet.pdf").read_bytes())


def test_a_key_file_with_a_table_is_printed_only_where_the_table_is_its_own(sheet: Path, tmp_path: Path) -> None:
    key, before = sheet / "grade4-key.json", MAIN.read_text(encoding="utf-8")
    assert run("reprint", key, MAIN, "--out", tmp_path / "same").exit_code == 0
    refused = run("reprint", key, "-", "--out", tmp_path / "other", typed=before.replace("Owls,1,3,2,3", "Owls,1,3,2,4"))
    assert refused.exit_code == 1
    assert "This table is not the one that grade4-key.json was made from" in refused.output
    assert not (tmp_path / "other").exists()


@pytest.mark.parametrize("lost", ["title", "forms", "paper"])
def test_a_key_file_with_a_part_lost_is_refused(lost: str, sheet: Path, tmp_path: Path) -> None:
    content = json.loads((sheet / "grade4-key.json").read_text(encoding="utf-8"))
    del content["pages"]["worksheet"][lost]
    edited = tmp_path / "grade4-key.json"
    edited.write_text(json.dumps(content), encoding="utf-8")
    refused = run("reprint", edited, "--out", tmp_path / "out")
    assert refused.exit_code == 1
    assert "grade4-key.json" in refused.output
    assert not (tmp_path / "out").exists()


@pytest.mark.parametrize("content", ["", "{}", "[]", "not JSON", '{"format": 99}'])
def test_a_file_that_is_no_key_file_is_refused(content: str, tmp_path: Path) -> None:
    (tmp_path / "some.json").write_text(content, encoding="utf-8")
    refused = run("reprint", tmp_path / "some.json", "--out", tmp_path / "out")
    assert refused.exit_code == 1
    assert "some.json" in refused.output


@pytest.mark.parametrize(
    ("old", "new"),
    [("Owls,1,3,2,3", "Owls,1,3,2,4"), ("Owls,2", "Owls,4"), ("Kites", "Gulls"), ("Blue (3)", "Blue (6)")],
    ids=["count", "trial", "group", "set up"],
)
def test_a_changed_table_is_refused_by_its_code(old: str, new: str, sheet: Path, tmp_path: Path) -> None:
    before = MAIN.read_text(encoding="utf-8")
    assert old in before
    refused = run("reprint", code_of(sheet), "-", "--out", tmp_path, typed=before.replace(old, new))
    assert refused.exit_code == 1
    assert "This table is not the one that the sheet was made from" in refused.output
    assert not list(tmp_path.iterdir())


def test_the_code_of_another_release_is_refused_and_the_key_file_named(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    other = mathgen.bank.code.RELEASE + 1
    with monkeypatch.context() as patched:
        patched.setattr("mathgen.bank.code.RELEASE", other)
        assert run("worksheet", MAIN, "--grade", 4, "--count", 2, "--out", tmp_path / "first").exit_code == 0
    refused = run("reprint", code_of(tmp_path / "first"), MAIN, "--out", tmp_path / "again")
    assert refused.exit_code == 1
    assert f"release {other}" in refused.output
    assert "key file" in refused.output
    assert run("reprint", tmp_path / "first" / "grade4-key.json", "--out", tmp_path / "again").exit_code == 0


def test_a_code_with_one_wrong_sign_is_refused_wherever_it_stands(sheet: Path, tmp_path: Path) -> None:
    code = code_of(sheet)
    for place, sign in enumerate(code):
        wrong = code[:place] + ("7" if sign != "7" else "8") + code[place + 1 :]
        assert run("reprint", wrong, MAIN, "--out", tmp_path).exit_code == 1
    assert not list(tmp_path.iterdir())


@pytest.mark.parametrize("code", ["", "4", "HELLO", "U" * 15])
def test_what_is_no_code_is_refused(code: str, tmp_path: Path) -> None:
    refused = run("reprint", code, MAIN, "--out", tmp_path)
    assert refused.exit_code == 1
    assert "is no sheet code" in refused.output


def test_a_plan_that_fits_no_code_is_reprinted_from_its_key_file(tmp_path: Path) -> None:
    first, again = tmp_path / "first", tmp_path / "again"
    assert run("worksheet", MAIN, "--grade", 4, "--topic", "fractions", "--count", 2, "--out", first).exit_code == 0
    refused = run("reprint", code_of(first), MAIN, "--out", again)
    assert refused.exit_code == 1
    assert "key file" in refused.output
    assert run("reprint", first / "grade4-key.json", "--out", again).exit_code == 0
    assert files(again) == {name: content for name, content in files(first).items() if name.endswith(".pdf")}


# Same table, options and seed: same bytes


def test_a_worksheet_has_the_same_bytes_in_every_process(tmp_path: Path) -> None:
    made = [tmp_path / seed for seed in ("0", "1")]
    for folder in made:
        done = alone("worksheet", MAIN, "--grades", "2-7", "--forms", "2", "--out", folder, folder=tmp_path, hash_seed=folder.name)
        assert done.returncode in (0, 4), done.stderr
    assert len(files(made[0])) == 18
    assert files(made[0]) == files(made[1])


@pytest.mark.parametrize("ending", ["jsonl", "csv"])
def test_a_bank_has_the_same_bytes_in_every_process(ending: str, tmp_path: Path) -> None:
    made = [tmp_path / f"{seed}.{ending}" for seed in ("0", "1")]
    for path in made:
        done = alone("bank", MAIN, "--grades", "2-7", "--per-model", "6", "--out", path, folder=tmp_path, hash_seed=path.stem)
        assert done.returncode == 0, done.stderr
    assert made[0].stat().st_size > 10_000
    assert made[0].read_bytes() == made[1].read_bytes()


def test_what_today_says_is_the_same_in_every_process(tmp_path: Path) -> None:
    said = set()
    for seed in ("0", "1", "3"):
        done = alone("today", MAIN, "--grade", "4", "--out", tmp_path / "out", "--force", folder=tmp_path, hash_seed=seed)
        assert done.returncode == 0, done.stderr
        said.add(done.stdout)
    assert len(said) == 1


def test_another_seed_draws_another_sheet(sheet: Path, tmp_path: Path) -> None:
    """Guards the two tests above: they would say nothing if the seed did nothing."""
    assert run("worksheet", MAIN, "--grade", 4, "--seed", 2, "--out", tmp_path).exit_code in (0, 4)
    assert files(tmp_path)["grade4-worksheet.pdf"] != files(sheet)["grade4-worksheet.pdf"]


@pytest.mark.parametrize("what", ["topics", "standards", "skills"])
def test_each_word_that_list_prints_is_one_that_worksheet_accepts(what: str, tmp_path: Path) -> None:
    """What a word has no problem for is another matter: none is called unknown."""
    words = run("list", what).output.splitlines()
    assert len(words) == len(set(words)) > 3
    made = run("worksheet", MAIN, "--grade", 4, *[part for word in words for part in (f"--{what[:-1]}", word)], "--out", tmp_path)
    assert made.exit_code in (0, 4), made.output
    wrong = run("worksheet", MAIN, "--grade", 4, f"--{what[:-1]}", "juggling", "--out", tmp_path / "wrong")
    assert wrong.exit_code == 1
    assert "juggling" in wrong.output
    assert (words[0] if what == "topics" else f"mathgen list {what} prints them all") in wrong.output
