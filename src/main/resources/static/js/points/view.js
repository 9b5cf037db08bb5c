/* Draws a card in points judging: the element in the middle, the ribbon of all, the components on one scale. */
import { drawDiffering } from "../card/differ.js";
import { drawFrame } from "../card/frame.js";
import { element, fill, part, say, show, state, word } from "../card/page.js";
import { drawComponents, textOf } from "./components.js";
import { elementAt, elements, lastAct, lines } from "./draft.js";
import { drawEarlier } from "./earlier.js";
import { signed } from "./marks.js";
import { drawRibbon } from "./ribbon.js";
import { drawScale } from "./scale.js";

export function draw(card, { zone }) {
	drawFrame(card, zone, { words, missing });
	drawRibbon(card);
	drawAt(card);
	drawScale(card);
	drawBack(card);
	drawComponents(card);
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

/* The element in the middle, in large; where none waits, what happens next. */
function drawAt(card) {
	const at = elementAt(card.typed, card.task());
	state(part("at"), at ? at.state : "none");
	part("at").dataset.typed = card.typed.typing === "element" ? "here" : "elsewhere";
	say(part("at-number"), at ? String(at.element.number) : "");
	say(part("at-name"), at ? at.element.code : "");
	say(part("at-value"), at ? textOf(at, card.typed) : "");
	say(part("at-more"), at ? [at.element.name, changes(at)].filter(Boolean).join(", ") : nothingAt(card));
	say(part("at-open"), at?.state === "given" ? openElsewhere(card, at) : "");
	say(part("key-refusal"), card.refusal ? word("key-" + card.refusal) : "");
	show(part("confirm"), at?.state === "confirm");
	say(part("confirm"), at?.state === "confirm" ? confirmation(at) : "");
}

function nothingAt(card) {
	return elements(card.task()).length === 0 ? word("points-none-called") : word("points-none-open");
}

function confirmation({ kind, grade, element: called }) {
	return kind === "gone" ? word("points-leave-out", nameOf(called)) : word("points-confirm", signed(grade), called.code);
}

function changes({ kind, state: standing, was, grade, element: called }) {
	const told = [];
	if (kind === "gone") {
		told.push(word("points-out", signed(grade)));
	}
	else if (standing === "confirm") {
		told.push(was ? word("points-was", was) : word("points-changed"));
	}
	if (called.review) {
		told.push(word("points-review"));
	}
	return told.join(", ");
}

/* Who looks at an element that has its grade hears here of those that wait; nothing moves. */
function openElsewhere(card, at) {
	const open = lines(card.typed, card.task()).filter((line) => line.element && line.key !== at.key && line.state !== "given");
	return open.length > 0 ? word("points-open", open.map((line) => nameOf(line.element)).join(", ")) : "";
}

function nameOf({ number, code }) {
	return code ? number + " " + code : word("points-gone");
}

/* What the last act was stands on the key that takes it back. */
function drawBack(card) {
	const act = lastAct(card.typed, card.task());
	const done = act && lines(card.typed, card.task()).find((line) => line.key === act.key || line.key === act.key.replace("element/", "gone/"));
	part("back").setAttribute("aria-disabled", String(!act));
	fill(part("back"), act ? [word("points-erase"), done ? sayLine(done, card.typed) : word("points-gone")] : [word("points-erase"), word("points-erase-none")],
		(text) => element("span", "", text));
}

function sayLine(line, typed) {
	return (line.element ? nameOf(line.element) : line.name) + " " + textOf(line, typed);
}

function differing(card, mine) {
	const received = card.fromService(mine.received);
	const known = card.task().elements;
	const ids = Array.from(new Set([...Object.keys(mine.grades), ...Object.keys(received.grades)]));
	const grade = (version, id) => (version.grades[id] === undefined ? "–" : signed(version.grades[id]));
	const name = (id) => {
		const called = known.find((one) => one.id === id) ?? mine.called[id];
		return called ? word("points-element", called.number, called.code) : word("points-gone");
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
	return [card.said, next(card)].filter(Boolean).join(". ");
}

function next(card) {
	const at = card.lineAt();
	if (!at) {
		return card.typed.typing === "send" ? word("points-all-given") : nothingAt(card);
	}
	const said = at.element ? [word("points-element", at.element.number, at.element.code), at.element.name, changes(at)] : [at.name];
	return [...said, textOf(at, card.typed) || word("empty")].filter(Boolean).join(", ");
}

/* "Element 3, I3: +2" for a line that something was just given to. */
export function sayGiven(card, key) {
	const done = lines(card.typed, card.task()).find((one) => one.key === key);
	const name = done?.element ? word("points-element", done.element.number, done.element.code) : done?.name;
	return done ? name + ": " + (textOf(done, card.typed) || word("empty")) : "";
}
