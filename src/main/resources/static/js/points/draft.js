/*
 * What is typed of a card in points judging, against the list of called elements: each grade with the element
 * that it was given to, so that another element in its place, or one that was taken out, has to be confirmed.
 * A changed level, part or downgrade is the same element. Nothing here touches the page.
 *
 * A draft is
 *   grades      { id: { grade, element, code, number } }, as called when the grade was given
 *   components  { name: text }
 *   at          the key of the element in the middle, "" while none waits
 *   component   the name of the component that the next whole number goes to
 *   typing      where a keyboard types: "element", "component" or "send"
 *   sign        a "-" or "+" that waits for its digit
 *   acts        what was done, oldest first, each with what was there before: { key, before }
 *   asked       the odd marks that the judge was asked about already
 */
import { isMark } from "./marks.js";

const MOST_ACTS = 60;

export const NOTHING_TYPED = Object.freeze({ grades: {}, components: {}, at: "", component: "", typing: "element", sign: "", acts: [], asked: [] });

/* The lines of the card in order: elements as skated, those taken out where they were, then components. */
export function lines(draft, task) {
	return [...elementLines(draft, task), ...componentLines(draft, task)];
}

export function elements(task) {
	return task.elements.filter((element) => element.counts);
}

export function elementLines(draft, task) {
	const called = elements(task).map((element) => elementLine(draft, element));
	return [...called, ...goneLines(draft, task)].sort((a, b) => a.element.number - b.element.number || (a.kind === "gone" ? -1 : 1));
}

export function componentLines({ components }, task) {
	return task.components.map((name) => {
		const text = components[name] ?? "";
		return { key: "component/" + name, kind: "component", name, text, state: isMark(text) ? "given" : "missing" };
	});
}

function elementLine({ grades }, element) {
	const given = grades[element.id];
	const state = given === undefined ? "missing" : given.element === element.element ? "given" : "confirm";
	return { key: "element/" + element.id, kind: "element", element, grade: given?.grade, was: given?.code, state };
}

function goneLines({ grades }, task) {
	const known = new Set(task.elements.map(({ id }) => id));
	return Object.entries(grades)
		.filter(([id]) => !known.has(id))
		.map(([id, { grade, code = "", number = 0 }]) => ({ key: "gone/" + id, kind: "gone", element: { id, code, number }, grade, state: "confirm" }));
}

/* The element in the middle, if any. */
export function elementAt(draft, task) {
	return elementLines(draft, task).find((line) => line.key === draft.at);
}

export function componentAt(draft, task) {
	return componentLines(draft, task).find((line) => line.name === draft.component);
}

/* Where a keyboard types. */
export function lineAt(draft, task) {
	return draft.typing === "element" ? elementAt(draft, task) : draft.typing === "component" ? componentAt(draft, task) : undefined;
}

export function isWhole(draft, task) {
	return elements(task).length > 0 && lines(draft, task).every((line) => line.state === "given");
}

export function give(draft, { key, element }, grade) {
	const given = { grade, element: element.element, code: element.code, number: element.number };
	return noted({ ...draft, sign: "", grades: { ...draft.grades, [element.id]: given } }, key, draft.grades[element.id]);
}

/* The judge knows that the element was taken out: its grade goes with it. */
export function leaveOut(draft, { element }) {
	return noted({ ...draft, grades: without(draft.grades, element.id) }, "element/" + element.id, draft.grades[element.id]);
}

/* A mark typed key by key is one act. */
export function mark(draft, { key, name, text }, next) {
	const changed = { ...draft, components: { ...draft.components, [name]: next } };
	const goesOn = text !== "" && !isMark(text) && draft.acts.at(-1)?.key === key;
	return goesOn ? changed : noted(changed, key, text);
}

function noted(draft, key, before) {
	return { ...draft, acts: [...draft.acts, { key, before: before ?? null }].slice(-MOST_ACTS) };
}

function without(things, name) {
	const { [name]: gone, ...rest } = things;
	return rest;
}

/* The last act that can be taken back; what was done to an element that has lost its value is out of reach. */
export function lastAct({ acts }, task) {
	return acts.findLast(({ key }) => isInReach(key, task));
}

function isInReach(key, task) {
	const [kind, name] = parted(key);
	return kind === "component" ? task.components.includes(name) : !task.elements.some(({ id, counts }) => id === name && !counts);
}

function parted(key) {
	const cut = key.indexOf("/");
	return [key.slice(0, cut), key.slice(cut + 1)];
}

/* Take the last act back, whatever is in the middle now, and turn to what it was done to. */
export function takeBack(draft, task) {
	const act = lastAct(draft, task);
	if (!act) {
		return draft;
	}
	const [kind, name] = parted(act.key);
	const acts = draft.acts.slice(0, draft.acts.lastIndexOf(act));
	const before = { ...draft, acts, sign: "" };
	if (kind === "component") {
		return choose({ ...before, components: { ...draft.components, [name]: act.before ?? "" } }, act.key);
	}
	const grades = act.before ? { ...draft.grades, [name]: act.before } : without(draft.grades, name);
	const isCalled = task.elements.some(({ id }) => id === name);
	return fitted(choose({ ...before, grades }, (isCalled ? "element/" : "gone/") + name), task);
}

export function choose(draft, key) {
	const [kind, name] = parted(key);
	if (kind === "component") {
		return { ...draft, component: name, typing: "component", sign: "" };
	}
	return key === "send" ? { ...draft, typing: "send", sign: "" } : { ...draft, at: key, typing: "element", sign: "" };
}

/* From an element to the next one that something is missing on; without one the middle waits for the next call. */
export function moveOn(draft, task) {
	const all = elementLines(draft, task);
	const here = all.findIndex((line) => line.key === draft.at);
	const next = [...all.slice(here + 1), ...all.slice(0, here + 1)].find((line) => line.state !== "given");
	const typing = next || !isWhole(draft, task) ? "element" : "send";
	return { ...draft, at: next?.key ?? "", typing, sign: "" };
}

/* From a component to the next one without a mark. */
export function moveOnComponent(draft, task) {
	const all = componentLines(draft, task);
	const here = all.findIndex((line) => line.name === draft.component);
	const next = [...all.slice(here + 1), ...all.slice(0, here + 1)].find((line) => line.state === "missing");
	const typing = next ? "component" : isWhole(draft, task) ? "send" : "element";
	return { ...draft, component: next?.name ?? draft.component, typing };
}

/* The line before or after; the sending is the last. */
export function moveBy(draft, task, by) {
	const called = elementLines(draft, task).map((line) => line.key);
	const keys = [...called, ...componentLines(draft, task).map((line) => line.key), "send"];
	const current = draft.typing === "send" ? "send" : draft.typing === "component" ? "component/" + draft.component : draft.at;
	const here = current === "" ? called.length - (by > 0 ? 1 : 0) : keys.indexOf(current);
	return choose(draft, keys[Math.min(Math.max(here + by, 0), keys.length - 1)]);
}

/*
 * Another list of elements was called. Only where nothing was in the middle does the element called now come
 * there: whoever looks at an element, given or not, and whoever types a component is left alone.
 */
export function fitted(kept, task) {
	const draft = { ...NOTHING_TYPED, ...kept };
	const all = elementLines(draft, task);
	const isThere = all.some((line) => line.key === draft.at);
	const open = all.find((line) => line.state !== "given");
	const at = isThere ? draft.at : open?.key ?? "";
	const component = task.components.includes(draft.component) ? draft.component : firstMissing(draft, task);
	return { ...draft, at, component, typing: at && !isThere && draft.typing === "send" ? "element" : draft.typing };
}

function firstMissing(draft, task) {
	return componentLines(draft, task).find((line) => line.state === "missing")?.name ?? task.components[0] ?? "";
}
