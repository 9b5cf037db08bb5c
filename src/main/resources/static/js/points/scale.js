/* The grades as one scale, and the whole numbers of a component as another: made once, then only marked. */
import { button, fill, part, show } from "../card/page.js";
import { componentAt, elementAt } from "./draft.js";
import { isMark, signed, wholeMark } from "./marks.js";

const WHOLES = Array.from({ length: 11 }, (none, whole) => String(whole));

export function drawScale(card) {
	const task = card.task();
	const at = elementAt(card.typed, task);
	fill(part("grade-keys"), gradesOf(task), (grade) => button("", signed(grade), { grade }));
	for (const key of part("grade-keys").children) {
		mark(key, at?.kind === "element" && at.grade === Number(key.dataset.grade), at?.kind === "element");
	}
	const component = componentAt(card.typed, task);
	fill(part("mark-keys"), WHOLES, (whole) => button("", whole === "0" ? wholeMark(whole) : whole, { whole }));
	for (const key of part("mark-keys").children) {
		mark(key, component && isMark(component.text) && Math.floor(Number(component.text)) === Number(key.dataset.whole), Boolean(component));
	}
	show(part("mark-keys"), task.components.length > 0);
}

function gradesOf({ lowestGrade, highestGrade }) {
	return Array.from({ length: highestGrade - lowestGrade + 1 }, (none, index) => lowestGrade + index);
}

function mark(key, isGiven, isOpen) {
	key.setAttribute("aria-pressed", String(Boolean(isGiven)));
	key.setAttribute("aria-disabled", String(!isOpen));
}
