/*
 * What is typed of a card in points judging, against the list of called elements: each grade with the code
 * that it was given to, so that an element that is called otherwise later has to be confirmed. Nothing here
 * touches the page.
 *
 * A draft is { grades: { id: { grade, code } }, components: { name: text }, at, sign }: at is the key of the
 * line being typed or "send", sign a "-" or "+" that waits for its digit.
 */
import { isMark } from "./marks.js";

export const NOTHING_TYPED = Object.freeze({ grades: {}, components: {}, at: "send", sign: "" });

/* The lines of the card in order: elements that count, then components. */
export function lines(draft, task) {
	return [...elements(task).map((element) => elementLine(draft, element)), ...task.components.map((name) => componentLine(draft, name))];
}

export function elements(task) {
	return task.elements.filter((element) => element.counts);
}

function elementLine({ grades }, element) {
	const given = grades[element.id];
	const state = given === undefined ? "missing" : given.code === element.code ? "given" : "confirm";
	return { key: "element/" + element.id, kind: "element", element, grade: given?.grade, was: given?.code, state };
}

function componentLine({ components }, name) {
	const text = components[name] ?? "";
	return { key: "component/" + name, kind: "component", name, text, state: isMark(text) ? "given" : "missing" };
}

export function lineAt(draft, task) {
	return lines(draft, task).find((line) => line.key === draft.at);
}

export function isWhole(draft, task) {
	return elements(task).length > 0 && lines(draft, task).every((line) => line.state === "given");
}

export function give(draft, { element }, grade) {
	return { ...draft, sign: "", grades: { ...draft.grades, [element.id]: { grade, code: element.code } } };
}

export function takeBack(draft, { element }) {
	const { [element.id]: gone, ...grades } = draft.grades;
	return { ...draft, sign: "", grades };
}

export function mark(draft, { name }, text) {
	return { ...draft, components: { ...draft.components, [name]: text } };
}

export function choose(draft, at) {
	return { ...draft, at, sign: "" };
}

/* To the next line of the same kind that something is missing on, else to any such line, else to the sending. */
export function moveOn(draft, task) {
	const all = lines(draft, task);
	const here = all.findIndex((line) => line.key === draft.at);
	const open = [...all.slice(here + 1), ...all.slice(0, here + 1)].filter((line) => line.state !== "given");
	const next = open.find((line) => line.kind === all[here]?.kind) ?? all.find((line) => line.state !== "given");
	return choose(draft, next?.key ?? "send");
}

/* The line before or after; the sending is the last. */
export function moveBy(draft, task, by) {
	const keys = [...lines(draft, task).map((line) => line.key), "send"];
	const there = Math.min(Math.max(keys.indexOf(draft.at) + by, 0), keys.length - 1);
	return choose(draft, keys[there]);
}

/*
 * Another list of elements was called. Who is just typing is left alone; who waits on a line that is given
 * already, or on a component not begun, is led to the element that is called now.
 */
export function fitted(draft, task) {
	const at = lineAt(draft, task);
	const isWaiting = !at || (at.kind === "component" && at.text === "");
	const open = lines(draft, task).find((line) => line.state !== "given" && (line.kind === "element" || !at));
	return isWaiting ? choose(draft, open?.key ?? at?.key ?? "send") : draft;
}
