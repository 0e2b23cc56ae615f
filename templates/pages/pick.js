// Picks a card, checks what is typed, helps, and keeps the score. Everything that a class typed is set as text, never as markup.
"use strict";
(() => {
  const deck = JSON.parse(document.getElementById("deck").textContent);
  const at = id => document.getElementById(id);
  const TRIES = 2; // before the worked solution is shown

  // Elements from plain data

  const make = (name, attributes = {}, ...children) => {
    const element = document.createElement(name);
    for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
    element.append(...children);
    return element;
  };
  const fractionOf = part => {
    const stacked = make("span", { class: "fraction", "aria-hidden": "true" }, make("span", {}, part.top), make("span", {}, part.bottom));
    const whole = part.whole === null ? [] : [make("span", { "aria-hidden": "true" }, part.whole)];
    return make("span", { class: "keep", role: "img", "aria-label": part.alt }, ...whole, stacked);
  };
  const setOf = parts => parts.map(part =>
    "top" in part ? fractionOf(part) : "kept" in part ? make("span", { class: "keep" }, part.kept) : "bold" in part ? make("strong", {}, part.bold) : part.text);
  const tableOf = data => {
    const head = make("tr", {}, make("th", { scope: "col" }, data.corner), ...data.columns.map(one => make("th", { scope: "col" }, one.head, ...(one.note ? [make("br"), one.note] : []))));
    const rows = data.rows.map(row => make("tr", {}, make("th", { scope: "row" }, row.head), ...row.cells.map(cell => make("td", {}, cell))));
    const table = make("table", {}, make("caption", {}, data.caption), make("thead", {}, head), make("tbody", {}, ...rows));
    return make("div", { class: "scroll", tabindex: "0", role: "region", "aria-label": data.caption }, table);
  };
  const pictureOf = picture => make("img", { src: picture.address, alt: picture.alt });
  const problemOf = card => [
    ...(card.table ? [tableOf(card.table)] : []), ...card.notes.map(note => make("p", { class: "note" }, note)), ...(card.graph ? [pictureOf(card.graph)] : []), make("p", { class: "words" }, ...setOf(card.parts)),
  ];

  // What is kept: in the browser's storage where it is allowed, else until the page is closed

  const KEY = `cards-${deck.mark}`;
  const storage = (() => {
    try { localStorage.setItem(`${KEY}-test`, "1"); localStorage.removeItem(`${KEY}-test`); return localStorage; } catch { return null; }
  })();
  const shuffled = seed => {
    let state = seed >>> 0;
    const next = () => { // mulberry32: small, seeded, the same on every device
      state = (state + 0x6d2b79f5) >>> 0;
      let mixed = Math.imul(state ^ (state >>> 15), state | 1);
      mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
      return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
    };
    const order = deck.cards.map((_, place) => place);
    for (let last = order.length - 1; last > 0; last -= 1) {
      const other = Math.floor(next() * (last + 1));
      [order[last], order[other]] = [order[other], order[last]];
    }
    return order;
  };
  const fresh = pupil => ({ pupil, order: shuffled(deck.seed * 1009 + pupil), place: -1, tries: 0, done: {}, hints: [] });
  const whole = (value, least, most) => Number.isInteger(value) && value >= least && value <= most;
  const kept = () => {
    try { // what is kept may be of another page, or spoiled: every part is looked at before it is believed
      const found = JSON.parse(storage.getItem(KEY)), last = deck.cards.length - 1;
      const all = found.order.length === deck.cards.length && [...found.order].sort((a, b) => a - b).every((one, place) => one === place);
      const done = Object.entries(found.done).every(([one, how]) => whole(Number(one), 0, last) && whole(how, 0, TRIES));
      const hints = found.hints.every(one => whole(one, 0, last));
      return all && done && hints && whole(found.pupil, 1, 1e6) && whole(found.place, -1, last) && whole(found.tries, 0, TRIES) ? found : null;
    } catch { return null; }
  };
  let game = (storage && kept()) || fresh(1);
  const keep = () => { try { if (storage) storage.setItem(KEY, JSON.stringify(game)); } catch { /* full, or shut meanwhile: go on without */ } };

  // The score

  const numbers = places => places.map(place => deck.cards[place].number).sort((a, b) => a - b).join(", ");
  const WAYS = [["right on try 1", 1], ["right on try 2", 2], ["worked solution shown", 0]];
  const show = () => {
    const done = Object.keys(game.done).length;
    at("progress").textContent = `${done} of ${deck.cards.length} cards done`;
    const told = WAYS.map(([words, how]) => [words, Object.keys(game.done).filter(place => game.done[place] === how).map(Number)]);
    told.push(["with a hint", game.hints.filter(place => place in game.done)]);
    const lines = told.filter(([, places]) => places.length).map(([words, places]) => `; ${words}: ${numbers(places)}`);
    at("result").value = `Deck ${deck.mark}, pupil ${game.pupil}: ${done} of ${deck.cards.length} cards${lines.join("")}`;
    const left = deck.cards.length - done;
    at("stack-line").textContent = left ? `${left} ${left === 1 ? "card" : "cards"} in the stack.` : "All cards are done. A new pupil can start the deck again.";
    at("pick").hidden = !left;
    at("next").textContent = left ? "Pick the next card" : "Back to the stack";
  };

  // One card

  let card = null;
  let field = null;
  const say = (text, mood, more = []) => at("feedback").replaceChildren(make("p", { class: mood }, text), ...more);

  const NUMBER = ["7", "8", "9", "⌫", "4", "5", "6", "/", "1", "2", "3", " ", ".", "0", "%"];
  const KEYS = {
    line: NUMBER,
    fraction: NUMBER,
    ratio: ["7", "8", "9", "⌫", "4", "5", "6", ":", "1", "2", "3", "/", "", "0"],
    quotient_remainder: ["7", "8", "9", "⌫", "4", "5", "6", " R ", "1", "2", "3", "", "", "0"],
  };
  const NAMES = { "/": "fraction bar", "%": "percent", ".": "decimal point", " ": "space, for a mixed number", "⌫": "delete", ":": "to", " R ": "remainder" };
  const boxes = () => make("span", { class: "fraction boxes", "aria-hidden": "true" }, make("span", {}, "□"), make("span", {}, "□"));
  const FACES = { "/": () => [boxes()], " ": () => [make("span", { "aria-hidden": "true" }, "1"), boxes()], " R ": () => ["R"] };
  // A typed fraction is shown set as one, so that a pupil sees what the line of signs means.
  const preview = () => {
    const found = /^\s*(?:(\d+)[ -]+)?(\d+)\s*\/\s*(\d+)\s*$/u.exec(field.value);
    at("seen").replaceChildren(...(found ? [fractionOf({ whole: found[1] ?? null, top: found[2], bottom: found[3], alt: "" })] : []));
  };
  // Keys write at the caret and leave the focus alone: on a touch screen no keyboard opens over the card.
  const press = key => {
    const [start, end] = [field.selectionStart, field.selectionEnd];
    if (key === "⌫") field.setRangeText("", start === end ? Math.max(start - 1, 0) : start, end, "end");
    else if (field.value.length - (end - start) + key.length <= field.maxLength) field.setRangeText(key, start, end, "end");
    preview();
  };
  const answerPlace = () => {
    const place = card.place;
    at("keypad").replaceChildren();
    at("keypad").hidden = !(place.kind in KEYS);
    const offered = place.kind === "truth" ? ["Yes", "No"] : place.choices;
    if (offered.length) {
      field = make("input", { type: "hidden", id: "typed" });
      const buttons = offered.map(word => make("button", { type: "button", "aria-pressed": "false" }, word));
      for (const button of buttons) {
        button.addEventListener("click", () => { field.value = button.textContent; for (const one of buttons) one.setAttribute("aria-pressed", String(one === button)); });
      }
      at("answer").replaceChildren(make("div", { class: "field", role: "group", "aria-label": "Your answer" }, ...buttons, field));
      return;
    }
    field = make("input", { type: "text", id: "typed", autocomplete: "off", autocapitalize: "off", spellcheck: "false", maxlength: "60" });
    const unit = place.unit ? [make("span", {}, place.unit)] : [];
    const seen = make("span", { id: "seen", "aria-hidden": "true" });
    at("answer").replaceChildren(make("label", { for: "typed" }, "Your answer"), make("div", { class: "field" }, field, ...unit, seen));
    field.addEventListener("input", preview);
    for (const key of KEYS[place.kind] || []) {
      if (!key) { at("keypad").append(make("span")); continue; }
      const button = make("button", { type: "button", "aria-label": NAMES[key] || key }, ...(FACES[key] ? FACES[key]() : [key]));
      button.addEventListener("mousedown", event => event.preventDefault());
      button.addEventListener("click", () => press(key));
      at("keypad").append(button);
    }
  };
  const showCard = () => {
    card = deck.cards[game.order[game.place]];
    at("card-head").textContent = `Card ${card.number}`;
    at("problem").replaceChildren(...problemOf(card));
    answerPlace();
    at("feedback").replaceChildren();
    at("hint-place").replaceChildren();
    at("worked").hidden = true;
    at("next").hidden = true;
    at("answer-form").hidden = false;
    at("hint").disabled = false;
    at("stack").hidden = true;
    at("card").hidden = false;
    at("card-head").focus();
  };
  const pick = () => {
    if (Object.keys(game.done).length === deck.cards.length) { showStack(); return; }
    if (game.place < 0 || game.order[game.place] in game.done) { game.place += 1; game.tries = 0; }
    keep();
    showCard();
    if (game.tries >= TRIES) finish(0);
  };
  const showStack = () => {
    stopReading();
    at("card").hidden = true;
    at("stack").hidden = false;
    show();
    (at("pick").hidden ? at("pupil") : at("pick")).focus();
  };
  const finish = how => {
    if (!(game.order[game.place] in game.done)) game.done[game.order[game.place]] = how;
    keep();
    show();
    at("answer-form").hidden = true;
    at("next").hidden = false;
    if (how === 0) {
      const steps = card.steps.map(step => make("p", {}, ...setOf(step)));
      const because = card.because.length ? [make("p", {}, ...setOf(card.because))] : [];
      at("hint-place").replaceChildren(); // its figure stands in the solution, filled in
      at("worked").replaceChildren(make("h3", { id: "worked-head" }, "Worked solution"), ...(card.worked ? [pictureOf(card.worked)] : []), ...steps, ...because, make("p", {}, make("strong", {}, "Answer: ", ...setOf(card.answer))));
      at("worked").hidden = false;
    }
    at("next").focus();
  };
  const judged = (expected, typed) => judge(expected, card.demand, typed, card.units);
  const slipOf = typed => card.slips.find(slip => {
    // A likely mistake need not be a number of the demanded kind; then it is compared as it stands.
    try { return ["right", "right_value_wrong_form"].includes(judged(slip.value, typed)); } catch { return slip.value === typed.trim(); }
  });
  const focusField = () => { if (field.type === "text") field.focus(); };
  const check = () => {
    const typed = field.value;
    if (!typed.trim()) { say(field.type === "hidden" ? "Choose an answer first." : "Write an answer first.", "again"); focusField(); return; }
    const verdicts = card.expected.map(one => judged(one, typed)); // a name may be written in several ways
    const verdict = verdicts.find(one => one === "right") || verdicts[0];
    if (verdict === "unreadable") { say("This cannot be read as an answer. Write it like 12, 3/4, 1 1/2 or 0.75.", "again"); focusField(); return; }
    if (verdict === "right_value_wrong_form") { // the value is found: that costs no try
      say(`The value is right. Write it ${card.form || "the usual way, like 3/4 or 0.75"}. Try again.`, "again");
      focusField();
      return;
    }
    game.tries += 1;
    if (verdict === "right") { say("Right.", "right", []); finish(Math.min(game.tries, TRIES)); return; }
    const slip = slipOf(typed);
    const line = slip ? slip.line : "Not yet.";
    if (game.tries >= TRIES) { say(`${line} Look at the worked solution.`, "again"); finish(0); return; }
    keep();
    say(`${line} Try again.`, "again");
    focusField();
  };
  const hint = () => {
    const lines = card.figure ? [pictureOf(card.figure), make("p", {}, "Draw it on your paper, and fill it in.")] : card.hint.map(line => make("p", {}, ...setOf(line)));
    at("hint-place").replaceChildren(...lines);
    at("hint").disabled = true;
    const place = game.order[game.place];
    if (!game.hints.includes(place)) game.hints.push(place);
    keep();
    at("check").focus();
  };
  // Comes again at the end of the deck.
  const putBack = () => {
    game.order.push(...game.order.splice(game.place, 1));
    game.place -= 1;
    game.tries = 0;
    keep();
    showStack();
  };

  // Reading aloud, where the device can

  const voice = window.speechSynthesis;
  const stopReading = () => { if (voice) voice.cancel(); };
  const voices = () => {
    let some = false;
    try { some = Boolean(voice) && voice.getVoices().length > 0; } catch { some = false; }
    at("aloud").hidden = !some;
  };
  voices();
  try { voice?.addEventListener("voiceschanged", voices); } catch { /* a device with a fixed list of voices */ }
  at("aloud").addEventListener("click", () => {
    stopReading();
    const said = new SpeechSynthesisUtterance(card.say);
    said.lang = deck.lang === "en" ? "en-US" : deck.lang;
    said.rate = 0.9;
    voice.speak(said);
  });

  // The foot of the page

  at("copy").addEventListener("click", async () => {
    const result = at("result");
    let copied = false;
    try { await navigator.clipboard.writeText(result.value); copied = true; } catch {
      result.select();
      try { copied = document.execCommand("copy"); } catch { copied = false; }
    }
    at("note").textContent = copied ? "Copied." : "Mark the line above and copy it yourself.";
  });
  const sure = open => { at("sure").hidden = !open; at("pupil").setAttribute("aria-expanded", String(open)); };
  at("pupil").addEventListener("click", () => { sure(true); at("sure-no").focus(); });
  at("sure-no").addEventListener("click", () => { sure(false); at("pupil").focus(); });
  at("sure-yes").addEventListener("click", () => {
    sure(false);
    game = fresh(game.pupil + 1);
    keep();
    at("note").textContent = `Pupil ${game.pupil} starts with the whole deck.`;
    showStack();
  });
  const paper = () => at("paper").replaceChildren(make("h1", {}, deck.title), ...deck.cards.map(one => make("article", {}, make("h2", {}, `Card ${one.number}`), ...problemOf(one), make("p", {}, "Answer: ____________"))));
  window.addEventListener("beforeprint", paper);
  window.addEventListener("afterprint", () => at("paper").replaceChildren());
  at("print").addEventListener("click", () => { try { window.print(); } catch { at("note").textContent = "This page may not print here. Open it in a tab of its own."; } });
  at("pick").addEventListener("click", pick);
  at("next").addEventListener("click", () => { stopReading(); pick(); });
  at("hint").addEventListener("click", hint);
  at("back").addEventListener("click", putBack);
  // No form: a frame may forbid forms.
  at("check").addEventListener("click", check);
  at("answer").addEventListener("keydown", event => { if (event.key === "Enter" && event.target === field) { event.preventDefault(); check(); } });
  if (!storage) at("note").textContent = "Progress is kept only until this page is closed.";
  show();
})();
