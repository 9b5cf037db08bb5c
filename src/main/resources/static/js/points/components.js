/* The components with their steps, and the judge's own marks of earlier teams above the whole numbers. */
import { button, element, fill, part, say, state, sync, word } from "../card/page.js";
import { componentAt, componentLines } from "./draft.js";
import { isMark, signed } from "./marks.js";

const STEPS = [["down", -1, "−¼"], ["up", 1, "+¼"], ["half", 2, "+½"]];
const WHOLES = 11;
const SHOWN_AT_ONE_MARK = 3;

export function drawComponents(card) {
	const task = card.task();
	sync(part("components"), componentLines(card.typed, task), item, (made, line) => drawItem(made, line, card.typed));
	drawOwnMarks(card, componentAt(card.typed, task));
}

function item({ name, key }) {
	const made = element("li", "component", "");
	const inside = button("part", "", { line: key });
	inside.append(element("span", "part-name", name), " ", element("span", "line-given", ""));
	made.append(inside);
	for (const [direction, quarters, text] of STEPS) {
		const step = button("step " + direction, text, { step: quarters + "/" + name, ownEnter: "" });
		step.setAttribute("aria-label", word("points-step-" + direction, name));
		made.append(step);
	}
	return made;
}

function drawItem(made, line, typed) {
	state(made, line.state);
	const isAt = line.name === typed.component;
	made.firstChild.setAttribute("aria-pressed", String(isAt));
	made.dataset.typed = isAt && typed.typing === "component" ? "here" : "elsewhere";
	say(made.querySelector(".line-given"), textOf(line, typed) || "–");
	for (const step of made.querySelectorAll(".step")) {
		step.setAttribute("aria-disabled", String(line.text === ""));
	}
}

/* What is given on a line, or half typed; empty for nothing. */
export function textOf(line, typed) {
	if (line.kind === "element" && line.key === typed.at && typed.sign) {
		return typed.sign === "-" ? "−" : "+";
	}
	if (line.kind === "component") {
		return isMark(line.text) ? line.text : line.text && line.text + "–.––".slice(line.text.includes(".") ? line.text.length : 1);
	}
	return line.grade === undefined ? "" : signed(line.grade);
}

/* Each earlier team's start number stands over the whole number and quarter that its mark has. */
function drawOwnMarks(card, at) {
	const own = at ? card.ownMarks(at.name).sort((a, b) => a.mark - b.mark || a.startNumber - b.startNumber) : [];
	say(part("own-name"), !at ? "" : own.length > 0 ? word("points-own", at.name) : word("points-own-none", at.name));
	say(part("own-said"), own.map(({ startNumber, mark }) => word("points-own-mark", startNumber, mark.toFixed(2))).join(", "));
	fill(part("own-marks"), stacks(own), stack);
	const here = at && isMark(at.text) ? [Number(at.text)] : [];
	fill(part("own-here"), here, (mark) => placed(element("span", "", "▾"), mark));
}

function stacks(own) {
	const marks = Array.from(new Set(own.map(({ mark }) => mark)));
	return marks.map((mark) => ({ mark, numbers: own.filter((one) => one.mark === mark).map(({ startNumber }) => startNumber) }));
}

function stack({ mark, numbers }) {
	const made = placed(element("span", "", ""), mark);
	const more = numbers.length > SHOWN_AT_ONE_MARK;
	const shown = more ? numbers.slice(1 - SHOWN_AT_ONE_MARK) : numbers;
	made.append(...(more ? [element("i", "", "+" + (numbers.length - shown.length))] : []), ...shown.map((number) => element("b", "", number)));
	return made;
}

function placed(made, mark) {
	made.style.setProperty("--place", String((Math.floor(mark) + (mark % 1) + 0.125) / WHOLES));
	return made;
}
