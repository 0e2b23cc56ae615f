// Typed answers judged against keys, as mathgen/exact/judge does; tests hold both to one file of cases. Numbers are exact: BigInt
// over BigInt. judge(expected, demand, typed, units) gives "right", "right_value_wrong_form", "wrong" or "unreadable".
"use strict";
const judge = (() => {
  const RIGHT = "right", FORM = "right_value_wrong_form", WRONG = "wrong", UNREADABLE = "unreadable";
  class NotANumber extends Error {}

  // Exact numbers

  const gcd = (a, b) => { a = a < 0n ? -a : a; b = b < 0n ? -b : b; while (b) [a, b] = [b, a % b]; return a; };
  const ratio = (n, d = 1n) => { if (d < 0n) [n, d] = [-n, -d]; const g = gcd(n, d) || 1n; return { n: n / g, d: d / g }; };
  const same = (x, y) => x.n === y.n && x.d === y.d;
  const times = (x, k) => ratio(x.n * k, x.d);
  const negative = x => ratio(-x.n, x.d);
  const power = (base, exponent) => base ** BigInt(exponent);
  const size = x => (x < 0n ? -x : x);

  // Half up, away from zero.
  const rounded = (x, places) => {
    const [top, bottom] = places >= 0 ? [x.n * power(10n, places), x.d] : [x.n, x.d * power(10n, -places)];
    const whole = ((2n * size(top) + bottom) / (2n * bottom)) * (top < 0n ? -1n : 1n);
    return places >= 0 ? ratio(whole, power(10n, places)) : ratio(whole * power(10n, -places));
  };
  // Digits after the point, or null where the decimal never ends.
  const decimalPlaces = x => {
    let [twos, fives, rest] = [0, 0, x.d];
    while (rest % 2n === 0n) { rest /= 2n; twos += 1; }
    while (rest % 5n === 0n) { rest /= 5n; fives += 1; }
    return rest === 1n ? Math.max(twos, fives) : null;
  };

  // Plain signs

  const SPACE = "\\t-\\r\\x1c-\\x20\\x85\\xa0\\u1680\\u2000-\\u200a\\u2028\\u2029\\u202f\\u205f\\u3000";
  const ENDS = new RegExp(`^[${SPACE}]+|[${SPACE}]+$`, "gu");
  const strip = text => text.replace(ENDS, "");
  const stripOf = (text, signs) => {
    let [start, end] = [0, text.length];
    while (start < end && signs.includes(text[start])) start += 1;
    while (end > start && signs.includes(text[end - 1])) end -= 1;
    return text.slice(start, end);
  };
  const SIGNS = new Map([
    ...[..."−–—‒‐‑﹣"].map(sign => [sign, "-"]), ...[..."⁄∕"].map(sign => [sign, "/"]), ...[..."٪﹪"].map(sign => [sign, "%"]),
    ...[..."∶﹕"].map(sign => [sign, ":"]),
    ...[..."\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000"].map(sign => [sign, " "]),
    ...[..."\t\n\x0b\x0c\r\x1c\x1d\x1e\x1f\x85\u1680\u2028\u2029"].map(sign => [sign, " "]),
    ...[..."\u200b\u2060\ufeff"].map(sign => [sign, ""]), ["\u0304", "\u0305"], ["…", "..."], ["‚", ","], ["﹩", "$"],
  ]);
  const RAISED = "⁰¹²³⁴⁵⁶⁷⁸⁹";
  const tidy = text => {
    text = strip(text);
    if (/^[\x20-\x7e]*$/u.test(text)) return text;
    const out = [];
    let raisedBefore = false;
    for (const sign of text) {
      const raised = RAISED.includes(sign);
      if (/[\u00bc-\u00be\u2150-\u215f\u2189]/u.test(sign)) out.push(` ${sign.normalize("NFKD")} `);
      else if (raised) out.push((raisedBefore ? "" : " ") + RAISED.indexOf(sign));
      else if (/[\u2080-\u208e\u2090-\u209c\uff01-\uff60\uffe0-\uffe6\u1d62-\u1d6a\u2c7c]/u.test(sign)) out.push(sign.normalize("NFKD"));
      else out.push(sign);
      raisedBefore = raised;
    }
    return strip([...out.join("")].map(sign => (SIGNS.has(sign) ? SIGNS.get(sign) : sign)).join("").replace(/ {2,}/gu, " "));
  };

  // Number words

  const SMALL = ("zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen " +
    "eighteen nineteen").split(" ");
  const TENS = ["", "", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"];
  const SCALES = [[1000000000, "billion"], [1000000, "million"], [1000, "thousand"]];
  const VALUES = new Map([...SMALL.map((word, n) => [word, n]), ...TENS.map((word, n) => [word, 10 * n]).slice(2)]);
  const IRREGULAR = { one: "first", two: "second", three: "third", five: "fifth", eight: "eighth", nine: "ninth", twelve: "twelfth" };
  const POWERS = new Map([[100, "hundredth"], [1000, "thousandth"], [10000, "ten-thousandth"], [100000, "hundred-thousandth"],
    [1000000, "millionth"]]);
  const LARGEST = 999999999999;
  const belowThousand = number => {
    const parts = number >= 100 ? [`${SMALL[Math.floor(number / 100)]} hundred`] : [];
    const rest = number % 100;
    if (rest) parts.push(rest < 20 ? SMALL[rest] : TENS[Math.floor(rest / 10)] + (rest % 10 ? `-${SMALL[rest % 10]}` : ""));
    return parts.join(" ");
  };
  const cardinal = number => {
    if (number === 0) return SMALL[0];
    const parts = [];
    for (const [scale, name] of SCALES) {
      if (number >= scale) { parts.push(`${belowThousand(Math.floor(number / scale))} ${name}`); number %= scale; }
    }
    if (number) parts.push(belowThousand(number));
    return parts.join(" ");
  };
  const readCardinal = words => {
    let [total, current] = [0, 0];
    for (const word of words) {
      const scale = SCALES.find(([, name]) => name === word);
      if (VALUES.has(word)) current += VALUES.get(word);
      else if (word === "hundred") current *= 100;
      else if (scale) { total += current * scale[0]; current = 0; }
      else return null;
    }
    total += current;
    return !words.length || total > LARGEST || cardinal(total).replaceAll("-", " ") !== words.join(" ") ? null : total;
  };
  const partName = (bottom, many) => {
    if (bottom === 2) return many ? "halves" : "half";
    let name = POWERS.get(bottom);
    if (!name) {
      const words = cardinal(bottom), cut = words.lastIndexOf("-") + 1, last = words.slice(cut);
      name = words.slice(0, cut) + (IRREGULAR[last] || (last.endsWith("y") ? `${last.slice(0, -1)}ieth` : `${last}th`));
    }
    return many ? `${name}s` : name;
  };
  const PARTS = new Map([["quarter", 4], ["quarters", 4]]);
  for (const bottom of [...Array(98).keys()].map(n => n + 2).concat([...POWERS.keys()])) {
    for (const many of [false, true]) PARTS.set(partName(bottom, many).replaceAll("-", " "), bottom);
  }

  // A written number: value, form, places, whether in lowest terms

  const WHOLE = "(?:[1-9][0-9]{0,2}(?:,[0-9]{3})+|[0-9]+)";
  const PERCENT = "(?:%|percent|per cent|pct\\.?)";
  const PLAIN = new RegExp(`^([-+]?) *(\\$?) *([-+]?)(?:(${WHOLE})\\.?|(${WHOLE})?\\.([0-9]+)\\.?|(?:(${WHOLE})(?: +and +| *& *| +|-))?(${WHOLE}) */ *` +
    `(${WHOLE}))(?: *(${PERCENT}|¢|cents?|dollars?))?\\.?$`, "u");
  const PAIR = new RegExp(`^([-+]?) *(${WHOLE}|[0-9]*\\.[0-9]+)(?: *(:) *| +(to) +| +(?:(?:out +)?of|in) +(?:the +)?)(${WHOLE}|[0-9]*\\.[0-9]+)\\.?$`, "u");
  const COMMA = new RegExp(`^([-+]?) *([0-9]+),([0-9]+)(?: *(${PERCENT}))?\\.?$`, "u");
  const REPEATING = new RegExp("^([-+]?) *([0-9]*)\\.(?:([0-9]*)(?:\\(([0-9]+)\\)|((?:[0-9]\\u0305)+))|([0-9]+) *(?:\\.\\.+(?: *\\(?(?:repeating|repeats)\\)?)?" +
    `|\\(?(?:repeating|recurring|repeats|bar)\\)?))(?: *(${PERCENT}))?$`, "u");

  const digits = text => BigInt(text.replaceAll(",", ""));
  const over = (top, bottom) => { if (bottom === 0n) throw new NotANumber("divides by zero"); return ratio(top, bottom); };
  const decimalOf = text => { const [before, after = ""] = text.replaceAll(",", "").split("."); return ratio(BigInt((before || "0") + after), power(10n, after.length)); };
  const number = (value, form, places, lowest, text, proper = true) => ({ value, form, places, lowest, text, proper });

  const plainNumber = (found, text) => {
    const [, sign, dollar, inner, whole, before, after, wholes, top, bottom, suffix] = found;
    if (sign && inner) throw new NotANumber("two signs");
    let [lowest, proper, places, form, value] = [true, true, null, "", null];
    if (whole !== undefined) [form, value, places] = ["whole", ratio(digits(whole)), 0];
    else if (after !== undefined) {
      places = after.length;
      [form, value] = ["decimal", ratio(digits((before || "") + after), power(10n, places))];
    } else {
      const [upper, lower] = [digits(top), digits(bottom)];
      value = over(upper, lower);
      lowest = lower > 1n && gcd(upper, lower) === 1n;
      form = "fraction";
      if (wholes !== undefined) {
        form = "mixed";
        proper = 0n < upper && upper < lower;
        lowest = lowest && proper;
        value = ratio(value.n + digits(wholes) * value.d, value.d);
      }
    }
    if (sign === "-" || inner === "-") value = negative(value);
    if (suffix === undefined && !dollar) return number(value, form, places, lowest, text, proper);
    if (suffix !== undefined && "%p".includes(suffix[0])) {
      if (dollar) throw new NotANumber("both money and a percent");
      return number(ratio(value.n, value.d * 100n), "percent", places, lowest, text);
    }
    const cents = suffix !== undefined && "¢c".includes(suffix[0]);
    if (top !== undefined || (dollar && cents)) throw new NotANumber("no amount of money");
    return cents ? number(ratio(value.n, value.d * 100n), "money", null, true, text) : number(value, "money", places, true, text);
  };
  const pairNumber = ([, sign, first, colon, to, second], text) => {
    const [left, right] = [decimalOf(first), decimalOf(second)];
    if (right.n === 0n) throw new NotANumber("a zero in second place");
    const whole = !(first + second).includes(".");
    let value = ratio(left.n * right.d, left.d * right.n);
    const lowest = whole && gcd(left.n, right.n) === 1n;
    if (sign === "-") value = negative(value);
    if (colon || to) return number(value, "ratio", null, lowest, text);
    if (!whole) throw new NotANumber("not out of a whole number");
    return number(value, "fraction", null, lowest && right.n > 1n, text);
  };
  const commaNumber = ([, sign, before, after, percent], text) => {
    let value = ratio(BigInt(before + after), power(10n, after.length));
    if (sign === "-") value = negative(value);
    return number(percent ? ratio(value.n, value.d * 100n) : value, "comma", after.length, true, text);
  };
  const repeatingBlock = written => {
    if (written.length === 1) return ["", written];
    let best = null;
    for (let length = 1; length <= Math.floor(written.length / 2); length += 1) {
      let start = written.length - length;
      while (start > 0 && written[start - 1] === written[start - 1 + length]) start -= 1;
      if (start + 2 * length <= written.length && (best === null || start + length < best[0] + best[1])) best = [start, length];
    }
    return best && [written.slice(0, best[0]), written.slice(best[0], best[0] + best[1])];
  };
  const repeatingNumber = ([, sign, whole, early, bracketed, barred, brokenOff, percent], text) => {
    let [before, block] = [early || "", bracketed || (barred || "").replaceAll("\u0305", "")];
    if (brokenOff !== undefined) {
      const found = repeatingBlock(brokenOff);
      if (found === null) throw new NotANumber("cannot tell which digits repeat");
      [before, block] = found;
    }
    const lead = BigInt((whole || "0") + before);
    let value = ratio(BigInt((whole || "0") + before + block) - lead, power(10n, before.length) * (power(10n, block.length) - 1n));
    if (sign === "-") value = negative(value);
    return percent ? number(ratio(value.n, value.d * 100n), "percent", null, true, text) : number(value, "repeating", null, true, text);
  };
  // A whole number in words, or one in digits among words: "3 fourths".
  const count = words => (words.length === 1 && /^[0-9]{1,12}$/u.test(words[0]) ? Number(words[0]) : readCardinal(words));
  const fractionInWords = words => {
    const cut = words.indexOf("over");
    if (cut >= 0) {
      const [top, bottom] = [count(words.slice(0, cut)), count(words.slice(cut + 1))];
      return top === null || bottom === null ? null : [top, bottom];
    }
    if (words.length === 1 && words[0] === "half") return [1, 2];
    if (words[0] === "a" || words[0] === "an") words = ["one", ...words.slice(1)];
    for (let at = words.length - 1; at > 0; at -= 1) {
      const [top, bottom] = [count(words.slice(0, at)), PARTS.get(words.slice(at).join(" "))];
      if (top !== null && bottom !== undefined) return [top, bottom];
    }
    return null;
  };
  const inWords = (plain, text) => {
    let words = plain.replaceAll("-", " ").replaceAll(",", " ").replace(/\.+$/u, "").split(/\s+/u).filter(Boolean);
    const minus = words[0] === "negative" || words[0] === "minus";
    if (minus) words = words.slice(1);
    const percent = words.at(-1) === "percent";
    if (percent) words = words.slice(0, -1);
    let [lowest, proper, places, form, value] = [true, true, null, "", null];
    const counted = readCardinal(words);
    if (counted !== null) [form, value, places] = ["whole", ratio(BigInt(counted)), 0];
    else if (words.includes("point")) {
      const cut = words.indexOf("point"), before = readCardinal(words.slice(0, cut));
      const after = words.slice(cut + 1).map(word => readCardinal([word]));
      if (before === null || !after.length || after.some(digit => digit === null || digit > 9)) return null;
      places = after.length;
      [form, value] = ["decimal", ratio(BigInt(`${before}${after.join("")}`), power(10n, places))];
    } else if (words.includes("to") || words.includes("of")) {
      const cut = words.includes("to") ? words.indexOf("to") : words.indexOf("of");
      const ahead = words[cut] === "of" && words[cut - 1] === "out" ? words.slice(0, cut - 1) : words.slice(0, cut);
      const [left, right] = [count(ahead), count(words.slice(cut + 1))];
      if (left === null || right === null) return null;
      form = words[cut] === "to" ? "ratio" : "fraction";
      value = over(BigInt(left), BigInt(right));
      lowest = gcd(BigInt(left), BigInt(right)) === 1n && (form === "ratio" || right > 1);
    } else {
      let wholes = 0;
      form = "fraction";
      if (words.includes("and")) {
        const cut = words.indexOf("and");
        [wholes, words, form] = [count(words.slice(0, cut)), words.slice(cut + 1), "mixed"];
      }
      const pair = fractionInWords(words);
      if (pair === null || wholes === null) return null;
      const [top, bottom] = pair.map(BigInt);
      value = over(top, bottom);
      value = ratio(value.n + BigInt(wholes) * value.d, value.d);
      proper = form === "fraction" || (0n < top && top < bottom);
      lowest = bottom > 1n && gcd(top, bottom) === 1n && proper;
    }
    if (minus) value = negative(value);
    return percent ? number(ratio(value.n, value.d * 100n), "percent", places, lowest, text) : number(value, form, places, lowest, text, proper);
  };
  const written = text => {
    const plain = tidy(text).toLowerCase().replace(/^(?:(?:negative|minus) ([0-9.$].*)|\( ?- ?([0-9./ ]+)\))$/u, "-$1$2");
    if (!plain || plain.length > 4000) throw new NotANumber("nothing, or too long");
    for (const [pattern, made] of [[PLAIN, plainNumber], [PAIR, pairNumber], [REPEATING, repeatingNumber], [COMMA, commaNumber]]) {
      const found = pattern.exec(plain);
      if (found) return made(found, text);
    }
    const said = inWords(plain, text);
    if (said !== null) return said;
    throw new NotANumber("no number");
  };

  // A number and its unit

  const UNITS = ("pin trial group time point number dot cross space picture part box bag result pair row outcome card way success set count").split(" ");
  const NAMED_ONLY = { inches: "inch", inch: "inch", in: "inch", "in.": "inch", '"': "inch", feet: "foot", foot: "foot", ft: "foot", "ft.": "foot", "'": "foot" };
  const COLORS = "red|blue|gold|green|yellow|orange|purple|violet|black|white|pink|brown|tan|teal|silver|gray|grey";
  const FATE = "knocked down|left standing|set up|standing|down|as many|in all|in total|altogether";
  const PATTERNS = new Map();
  const unitPattern = units => {
    const nouns = units.map(unit => unit.replace(/[\\^$.*+?()[\]{}|/]/gu, "\\$&")).join("|");
    if (!PATTERNS.has(nouns)) {
      PATTERNS.set(nouns, new RegExp(`^(?<number>.*?)\\s*(?<=[\\s0-9%)\\u0305])(?:of\\s+)?(?:the\\s+)?(?:(?:more|fewer)\\s+)?(?:(?:${COLORS}|ordered|color)\\s+)?` +
        `(?:(?<noun>${nouns})(?:es|s)?(?:\\s+(?:per|a|(?:for\\s+|in\\s+)?each)\\s+(?:${nouns}))?(?:\\s+(?:were\\s+|was\\s+)?(?:${FATE}))?|(?<inch>inches|inch|in\\.?)|more|fewer|(?:were\\s+|was\\s+)?(?:${FATE}))$`, "isu"));
    }
    return PATTERNS.get(nouns);
  };
  const THEN_WORDS = /^(.*[0-9%)\u0305])\s*([\p{L}\p{Nl}\p{No}][^\p{Nd}]*|["'′″°])$/su;
  const attempt = (make, otherwise) => { try { return make(); } catch (fault) { if (!(fault instanceof NotANumber)) throw fault; return otherwise(fault); } };
  const ABOUT = /^(?:(?:about|around|roughly|approximately|approx\.)\s+|[~≈]\s*)(.+)$/isu;
  const read = (typed, units) => {
    const plain = tidy(typed).replace(/^(?:[a-z]\s*)?=\s*/iu, "").replace(new RegExp(`[${SPACE}]+$`, "u"), "");
    const estimate = ABOUT.exec(plain);
    return estimate ? { ...readPlain(estimate[1], units), about: true } : readPlain(plain, units);
  };
  const readPlain = (plain, units) =>
    attempt(() => { const made = written(plain); return { number: made, unit: made.form === "money" ? "money" : "", known: true }; }, first => {
      const found = unitPattern(units).exec(plain.replace(/[.!]+$/u, ""));
      if (found && found.groups.number) {
        const made = attempt(() => written(found.groups.number), () => null);
        if (made) return { number: made, unit: found.groups.inch ? "inch" : (found.groups.noun || "").toLowerCase(), known: !found.groups.inch };
      }
      const other = THEN_WORDS.exec(plain);
      if (!other) throw first;
      const made = attempt(() => written(other[1]), () => { throw first; });
      const word = strip(other[2]).toLowerCase();
      if (["bar", "repeating", "repeats", "recurring"].includes(word)) throw first;
      return { number: made, unit: NAMED_ONLY[word] || word, known: false };
    });

  // Names, yes and no, quotient and remainder

  const AROUND = " .!\"'“”";
  const wholeName = text => {
    let plain = stripOf(text.normalize("NFC").toLowerCase(), AROUND).split(new RegExp(`[${SPACE}]+`, "u")).filter(Boolean).join(" ");
    plain = plain.replace(/^(?:the|an?) /u, "");
    const rest = plain.startsWith("group ") ? plain.slice(6) : plain;
    return /^\d+$/u.test(rest) ? rest : plain;
  };
  const NAMES_APART = new RegExp(`,[${SPACE}]*(?:and[${SPACE}]+)?|[${SPACE}]+and[${SPACE}]+|[${SPACE}]*&[${SPACE}]*`, "u");
  const COLOR = /^[a-z]+(?:[ -][a-z]+)*$/u;
  const judgeName = (expected, typed, thing) => {
    const key = wholeName(expected);
    let name = wholeName(typed);
    if (!name) return UNREADABLE;
    if (key === `trial ${stripOf(typed, AROUND)}`) return RIGHT;
    if (COLOR.test(expected)) {
      name = name.replace(new RegExp(`^(?:an? )?(.+) ${thing.toLowerCase().replace(/[\\^$.*+?()[\]{}|/]/gu, "\\$&")}s?$`, "u"), "$1");
    }
    const parts = text => text.split(NAMES_APART).map(wholeName).sort().join("\u0000");
    return name === key || parts(key) === parts(name) ? RIGHT : WRONG;
  };
  const TRUTH = { yes: true, y: true, true: true, t: true, no: false, n: false, false: false, f: false };
  const judgeTruth = (expected, typed) => {
    const said = wholeName(typed);
    return !Object.hasOwn(TRUTH, said) ? UNREADABLE : TRUTH[said] === TRUTH[wholeName(expected)] ? RIGHT : WRONG;
  };
  const judgeRubric = (expected, typed) => {
    const said = tidy(typed).split(" ")[0].toLowerCase(), [name, key] = [said, expected].map(text => wholeName(stripOf(text, ",.;:!")));
    return !Object.hasOwn(TRUTH, name) ? UNREADABLE : TRUTH[name] === TRUTH[key] ? FORM : WRONG;
  };
  const REMAINDER = /^(\d+)(?:\s*[a-z]+)*\s*(?:,|\br|[a-z]|\s)\s*(?:[a-z]+\s*)*(\d+)(?:\s*[a-z]+)*$/iu;
  const judgeRemainder = (expected, typed) => {
    const [key, said] = [expected, typed].map(text => REMAINDER.exec(stripOf(tidy(text), " .!")));
    return said ? (BigInt(said[1]) === BigInt(key[1]) && BigInt(said[2]) === BigInt(key[2]) ? RIGHT : WRONG) : UNREADABLE;
  };
  const TERM = "(\\d+(?:/\\d+)?)", OF_PAIRS = " *(?:[*x×+]|and|by|times|to) *", OF_MORE = " *(?:[+&]|,? *and|,) *";
  const BETWEEN = /^(?:[ ,;.()]|and )*$/u;
  const CHANGE = / *(?:-+>|=>|→|becomes|changed? to|changes to) */gu, WHOSE = /trial [0-9]+ *:? +(?:from +)?(?=[0-9]+ +to)/gu;
  const groupsOf = (text, count, inOrder) => {
    let tidied = tidy(text).toLowerCase();
    if (inOrder) tidied = tidied.replace(CHANGE, " to ").replace(WHOSE, "");
    const found = new Set(), together = new RegExp(Array(count).fill(TERM).join(inOrder ? " +to +" : count === 2 ? OF_PAIRS : OF_MORE), "gu");
    if (!BETWEEN.test(tidied.replace(together, ""))) return null;
    for (const [, ...terms] of tidied.matchAll(together)) {
      if (inOrder) found.add(terms.join(" "));
      else if (terms.every(term => term.split("/")[0] !== "0")) found.add(terms.sort().join(" "));
    }
    return found;
  };
  const inLowest = term => {
    const [top, bottom] = term.split("/").map(BigInt), { n, d } = ratio(top, bottom ?? 1n);
    return `${n}/${d}`;
  };
  const judgeList = (expected, typed) => {
    const count = (expected.split(",")[0].split(" ").length + 1) / 2, changes = expected.includes(" to ");
    const [key, said] = [expected, typed].map(text => groupsOf(text, count, changes));
    if (!said || !said.size || [...said].some(one => one.split(" ").some(term => term.endsWith("/0")))) return UNREADABLE;
    if (said.size === key.size && [...said].every(one => key.has(one))) return changes && typed.toLowerCase().includes("trial") ? FORM : RIGHT;
    const values = groups => [...groups].map(one => one.split(" ").map(inLowest).sort().join(" ")).sort().join();
    return !changes && values(said) === values(key) ? FORM : WRONG;
  };

  // Expressions: (2 + 11) x 4, 4(11+2) and 4 × (2+11) are one

  const oneWay = text => {
    const plain = text.replace(/\s/gu, "").replace(/[×x]/gu, "*"), tokens = plain.match(/\d+|[a-z]|[-+*()]/gu) ?? [];
    if (tokens.join("") !== plain || !tokens.length) return "none";
    tokens.push("end");
    const fail = () => { throw new Error("no expression"); };
    const factor = () => {
      const token = tokens.shift();
      if (token === "(") {
        const found = termsOf();
        if (tokens.shift() !== ")") fail();
        return found.length > 1 ? `(${found.join("+")})` : found[0];
      }
      return token === undefined || token === "end" || !/^[\da-z]+$/u.test(token) ? fail() : /^\d/u.test(token) ? String(BigInt(token)) : token;
    };
    const product = () => {
      const factors = [factor()];
      while (!["+", "-", ")", "end"].includes(tokens[0] ?? "end")) {
        if (tokens[0] === "*") tokens.shift();
        factors.push(factor());
      }
      return factors.sort().join("*");
    };
    const termsOf = () => {
      const terms = [(tokens[0] === "-" ? tokens.shift() : "") + product()];
      while (["+", "-"].includes(tokens[0])) terms.push((tokens.shift() === "-" ? "-" : "") + product());
      return terms.sort();
    };
    try {
      const found = termsOf().join("+");
      return tokens.length === 1 ? found : "none";
    } catch {
      return "none";
    }
  };

  // Numbers

  const BARE = ["whole", "fraction", "mixed", "decimal", "repeating", "comma"];
  const readings = (form, { value, places, form: own }, unit) => {
    const plain = ["decimal", "whole", "money"].includes(own);
    if (form === "decimal") return [{ value, places: own === "percent" && places !== null ? places + 2 : places, own: plain }];
    if (own === "percent") return [{ value: times(value, 100n), places, own: true }];
    const asDecimal = { value: times(value, 100n), places: places === null ? null : places - 2, own: false };
    return BARE.includes(own) && !unit ? [{ value, places, own: plain }, asDecimal] : [asDecimal];
  };
  const judgeReading = (exact, places, reading) => {
    const target = rounded(exact, places), value = reading.value;
    if (reading.own && reading.places !== null) {
      const own = decimalPlaces(exact);
      if (same(value, target) && reading.places === places) return RIGHT;
      if (own !== null && own < places && same(value, exact) && reading.places === own) return RIGHT;
    }
    if (same(value, exact) || same(value, target)) return FORM;
    return reading.places !== null && reading.places > places && same(value, rounded(exact, reading.places)) ? FORM : WRONG;
  };
  const denominatorOne = ({ text }) => /(?:\/1|of1)$/u.test(tidy(text).replaceAll(" ", ""));
  const formFault = (form, exact, key, made) => {
    if (made.form === "comma") return true;
    const isRatio = form === "ratio" || form === "ratio:any";
    if (made.form === "ratio" && !isRatio && key.form !== "ratio") return true;
    const money = made.form === "money" && made.places === 0, whole = exact.d === 1n;
    if (form === "simplest" || form === "mixed" || form === "mixed:any") {
      if (whole) return !((made.form === "whole" || made.form === "money") && made.places === 0);
      if ((made.form !== "fraction" && made.form !== "mixed") || (form !== "mixed:any" && !made.lowest) || !made.proper) return true;
      return form !== "simplest" && made.form === "fraction" && size(exact.n) > exact.d;
    }
    if (form === "fraction") return !(made.form === "fraction" || made.form === "mixed" || (whole && made.form === "whole"));
    if (form === "decimal") {
      return !(["decimal", "repeating"].includes(made.form) || (made.form === "money" && made.places !== null) || (whole && made.form === "whole"));
    }
    if (form === "percent") return made.form !== "percent";
    if (isRatio) {
      if (made.form !== "ratio" && made.form !== "fraction") return true;
      return form === "ratio" && !made.lowest && !(made.form === "fraction" && denominatorOne(made));
    }
    return form === "whole" && !(made.form === "whole" || money);
  };
  const judgeNumber = (key, form, places, made, unit) => {
    const exact = key.value;
    if (form === "whole" && places !== null) {
      if (!same(made.value, rounded(exact, places))) return WRONG;
      return made.form === "whole" || (made.form === "money" && made.places === 0) ? RIGHT : FORM;
    }
    if (places !== null) {
      const measured = form === "percent" ? times(exact, 100n) : exact;
      const order = [RIGHT, FORM, WRONG];
      const found = readings(form, made, unit).map(reading => judgeReading(measured, places, reading));
      const verdict = order[Math.min(...found.map(one => order.indexOf(one)))];
      return verdict === RIGHT && made.form === "comma" ? FORM : verdict;
    }
    if (form === "percent" && BARE.includes(made.form) && !unit && same(made.value, times(exact, 100n))) return made.form === "comma" ? FORM : RIGHT;
    if (!same(made.value, exact)) return WRONG;
    return formFault(form, exact, key, made) ? FORM : RIGHT;
  };
  const DEMAND = /^(decimal|percent|whole):(\d+)$/u;

  return (expected, demand, typed, units = UNITS) => {
    if (demand === "name") return judgeName(expected, typed, units[0]);
    if (demand === "expression") {
      const said = stripOf(tidy(typed).toLowerCase(), " .").replaceAll("is greater than", ">").replaceAll("is less than", "<").replace(/^(.+)<(.+)$/u, "$2>$1");
      const [mine, key] = [said, tidy(expected).toLowerCase()].map(text => text.split(">").map(oneWay).join(">"));
      return said ? (mine === key ? RIGHT : WRONG) : UNREADABLE;
    }
    if (demand === "quotient_remainder") return judgeRemainder(expected, typed);
    if (demand === "list") return judgeList(expected, typed);
    if (demand === "truth") return judgeTruth(expected, typed);
    if (demand === "rubric") return judgeRubric(expected, typed);
    const asked = DEMAND.exec(demand);
    const form = asked ? asked[1] : demand;
    const places = !asked ? null : form === "whole" ? 1 - asked[2].length : Number(asked[2]);
    const key = read(expected, units);
    return attempt(() => {
      let made = read(typed, units);
      if (made.unit === "money" && form === "whole" && units.includes("cent") && !key.unit) { // "60 cents", "$0.60" where cents are asked for
        const value = ratio(made.number.value.n * 100n, made.number.value.d);
        made = { number: { ...made.number, value, form: made.number.places === null ? "whole" : "money" }, unit: "", known: true };
      }
      if (made.unit) {
        const moneyForCount = made.unit === "money" && form === "whole";
        if (!(key.unit ? made.unit === key.unit : made.known && !moneyForCount)) return WRONG;
      }
      if (key.unit && key.unit !== "money" && made.number.form === "percent") return WRONG;
      const verdict = judgeNumber(key.number, form, places, made.number, made.unit);
      return verdict === RIGHT && made.about && !key.about && places === null ? FORM : verdict;
    }, () => UNREADABLE);
  };
})();
