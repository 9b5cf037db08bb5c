/*
 * The elements as a ribbon in the order skated. A place in the ribbon is as wide with one element as with
 * fourteen, so that a new call moves nothing that is there.
 */
import { button, element, part, say, show, state, sync, word } from "../card/page.js";
import { elementLines } from "./draft.js";
import { textOf } from "./components.js";

/* How long a touch of the ribbon does not count after its places have moved. */
const SETTLING = 500;
let order = [];
let shownFor;
let movedAt = -Infinity;

export function drawRibbon(card) {
	const places = placesOf(card);
	noteOrder(places.map(({ key }) => key), card.turned);
	show(part("none-called"), places.length === 0);
	sync(part("elements"), places, place, (item, line) => drawPlace(item, line, card.typed));
	part("elements").querySelector("[aria-pressed=true]")?.scrollIntoView({ block: "nearest", inline: "nearest" });
}

function placesOf(card) {
	const task = card.task();
	const void_ = task.elements.filter(({ counts }) => !counts).map((called) => ({ key: "void/" + called.id, kind: "void", element: called, state: "void" }));
	return [...elementLines(card.typed, task), ...void_].sort((a, b) => a.element.number - b.element.number || (a.kind === "gone" ? -1 : b.kind === "gone" ? 1 : 0));
}

/* Places moved where the ones before are no longer the first ones; another team's are a ribbon of their own. */
function noteOrder(keys, at) {
	if (at === shownFor && order.length > 0 && keys.length > 0 && !order.every((key, index) => keys[index] === key)) {
		movedAt = performance.now();
	}
	order = keys;
	shownFor = at;
}

export function isSettling(time) {
	return time - movedAt < SETTLING;
}

function place({ key, kind }) {
	const made = element("li", kind, "");
	const inside = kind === "void" ? element("p", "line", "") : button("line", "", { line: key });
	for (const name of ["number", "given", "code", "flag"]) {
		inside.append(element("span", "line-" + name, ""), " ");
	}
	made.append(inside);
	return made;
}

function drawPlace(item, line, typed) {
	const inside = item.firstChild;
	state(item, line.state);
	if (line.kind !== "void") {
		inside.setAttribute("aria-pressed", String(line.key === typed.at));
	}
	say(inside.querySelector(".line-number"), String(line.element.number));
	say(inside.querySelector(".line-code"), line.element.code);
	say(inside.querySelector(".line-given"), line.kind === "void" ? "" : textOf(line, typed) || "–");
	say(inside.querySelector(".line-flag"), flag(line));
}

function flag({ kind, state: standing, element: called }) {
	if (kind === "void") {
		return word("points-flag-void");
	}
	if (kind === "gone") {
		return word("points-flag-gone");
	}
	return standing === "confirm" ? word("points-flag-changed") : called.review ? word("points-flag-review") : "";
}
