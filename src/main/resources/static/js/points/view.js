/* Draws a card in points judging: the lines with what was given, the line at hand, the keys for it. */
import { drawDiffering } from "../card/differ.js";
import { drawFrame } from "../card/frame.js";
import { button, element, fill, part, say, show, state, sync, word } from "../card/page.js";
import { elements, lines } from "./draft.js";
import { drawEarlier } from "./earlier.js";
import { isMark, signed } from "./marks.js";

export function draw(card, { zone }) {
	drawFrame(card, zone, { words, missing });
	drawLines(card);
	drawAt(card);
	drawEarlier(card);
	drawDiffering(card, zone, differing);
	say(part("spoken"), spoken(card));
}

/* "5 grades, 7.25 7.50 7.00" */
function words({ grades, components }) {
	const given = Object.keys(grades).length;
	return [word(given === 1 ? "points-grade" : "points-grades", given), Object.values(components).join(" ")].join(", ");
}

/* What the card still lacks, counted: the lines themselves show where. */
function missing(card) {
	const task = card.task();
	if (elements(task).length === 0) {
		return word("points-not-called");
	}
	const all = lines(card.typed, task);
	const counts = [
		["points-lacks-grade", all.filter((line) => line.kind === "element" && line.state === "missing").length],
		["points-lacks-confirm", all.filter((line) => line.state === "confirm").length],
		["points-lacks-mark", all.filter((line) => line.kind === "component" && line.state === "missing").length],
	];
	return word("points-lacks", counts.filter(([, count]) => count > 0).map(([name, count]) => word(count === 1 ? name : name + "s", count)).join(", "));
}

function drawLines(card) {
	const task = card.task();
	const all = lines(card.typed, task);
	const open = new Map(all.map((line) => [line.key, line]));
	const called = task.elements.map((called) => open.get("element/" + called.id) ?? { key: "void/" + called.id, kind: "void", element: called, state: "void" });
	show(part("none-called"), called.length === 0);
	sync(part("elements"), called, line, (item, drawn) => drawLine(item, drawn, card.typed));
	sync(part("components"), all.filter((drawn) => drawn.kind === "component"), line, (item, drawn) => drawLine(item, drawn, card.typed));
	part("lines").querySelector("[aria-pressed=true]")?.scrollIntoView({ block: "nearest" });
}

function line({ key, kind }) {
	const made = element("li", kind, "");
	const inside = kind === "void" ? element("p", "line", "") : button("line", "", { line: key });
	for (const name of ["number", "code", "name", "flag", "given"]) {
		inside.append(element("span", "line-" + name, ""), " ");
	}
	made.append(inside);
	return made;
}

function drawLine(item, drawn, typed) {
	const inside = item.firstChild;
	const { number = "", code = drawn.name, name = "", review = false } = drawn.element ?? {};
	state(item, drawn.state);
	if (drawn.kind !== "void") {
		inside.setAttribute("aria-pressed", String(drawn.key === typed.at));
	}
	say(inside.querySelector(".line-number"), String(number));
	say(inside.querySelector(".line-code"), code);
	say(inside.querySelector(".line-name"), name);
	say(inside.querySelector(".line-flag"), flags(drawn, review));
	say(inside.querySelector(".line-given"), given(drawn, typed) || (drawn.kind === "void" ? "" : "–"));
}

function flags(drawn, review) {
	const told = [];
	if (drawn.state === "void") {
		told.push(word("points-void"));
	}
	if (drawn.state === "confirm") {
		told.push(drawn.was ? word("points-was", drawn.was) : word("points-changed"));
	}
	if (review) {
		told.push(word("points-review"));
	}
	return told.join(", ");
}

function given(drawn, typed) {
	if (drawn.kind === "element" && drawn.key === typed.at && typed.sign) {
		return typed.sign === "-" ? "−" : "+";
	}
	if (drawn.kind === "component") {
		return isMark(drawn.text) ? drawn.text : drawn.text && drawn.text + "–.––".slice(drawn.text.includes(".") ? drawn.text.length : 1);
	}
	return drawn.grade === undefined ? "" : signed(drawn.grade);
}

/* The line at hand in large, with its keys. */
function drawAt(card) {
	const at = card.lineAt();
	const element = at?.element;
	state(part("pads"), at?.kind ?? "none");
	say(part("at-name"), at ? (element ? word("points-element", element.number, element.code) : at.name) : card.isWhole() ? word("points-all-given") : "");
	say(part("at-more"), element ? [element.name, flags(at, element.review)].filter(Boolean).join(", ") : !at && card.isWhole() ? word("key-choose-line") : "");
	say(part("at-value"), at ? given(at, card.typed) || "–" : "");
	say(part("key-refusal"), card.refusal ? word("key-" + card.refusal) : "");
	show(part("confirm"), at?.state === "confirm");
	say(part("confirm"), at?.state === "confirm" ? word("points-confirm", signed(at.grade), element.code) : "");
	drawGradeKeys(card.task());
}

function drawGradeKeys({ lowestGrade, highestGrade }) {
	const keys = [];
	for (let grade = lowestGrade; grade <= highestGrade; grade++) {
		keys.push(grade);
	}
	keys.splice(keys.indexOf(1) + 1, 0, "erase");
	fill(part("grade-keys"), keys, (key) => key === "erase" ? button("erase", word("points-erase"), { grade: key }) : button("", signed(key), { grade: key }));
}

function differing(card, mine) {
	const received = card.fromService(mine.received);
	const known = card.task().elements;
	const ids = Array.from(new Set([...Object.keys(mine.grades), ...Object.keys(received.grades)]));
	const grade = (version, id) => (version.grades[id] === undefined ? "–" : signed(version.grades[id]));
	const name = (id) => {
		const called = known.find((one) => one.id === id);
		return called ? word("points-element", called.number, called.code) : mine.codes[id] ?? word("points-gone");
	};
	return [
		...ids.map((id) => ({ name: name(id), mine: grade(mine, id), received: grade(received, id) })),
		...Object.keys(mine.components).map((component) => ({ name: component, mine: mine.components[component], received: received.components[component] ?? "–" })),
	];
}

/* What a screen reader says after each key: what was given, and what is asked for next. */
function spoken(card) {
	if (card.view() !== "marking") {
		return "";
	}
	if (card.refusal) {
		return word("key-" + card.refusal);
	}
	const next = [part("at-name").textContent, part("at-more").textContent, spokenValue(card)].filter(Boolean).join(", ");
	return [card.said, next].filter(Boolean).join(". ");
}

function spokenValue(card) {
	const at = card.lineAt();
	return at ? given(at, card.typed) || word("empty") : "";
}

/* "Element 3, I3: +2" for the line that something was just given to. */
export function sayGiven(card, key) {
	const done = lines(card.typed, card.task()).find((one) => one.key === key);
	const name = done?.element ? word("points-element", done.element.number, done.element.code) : done?.name;
	return done ? name + ": " + (given(done, card.typed) || word("empty")) : "";
}
