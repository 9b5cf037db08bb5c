/* What a key does to a card in points judging, touched on the tablet or pressed on a keyboard. */
import { choose, give, mark, moveBy, moveOn, takeBack } from "./draft.js";
import { finished, isMark, pressMark, stepped } from "./marks.js";

/* Give the element at hand a grade, or take it back with "erase"; then the next line is chosen. */
export function grade(card, key) {
	const at = card.lineAt();
	if (at?.kind !== "element") {
		return card.type(card.typed, "choose-line");
	}
	if (key === "erase") {
		return card.type(card.typed.sign ? choose(card.typed, at.key) : takeBack(card.typed, at));
	}
	card.type(moveOn(give(card.typed, at, Number(key)), card.task()));
}

/* One key of a component's mark; a whole mark moves on. */
export function component(card, key) {
	const at = card.lineAt();
	if (at?.kind !== "component") {
		return card.type(card.typed, "choose-line");
	}
	const { text, refusal } = pressMark(at.text, key);
	if (refusal) {
		return card.type(card.typed, refusal);
	}
	const typed = mark(card.typed, at, text);
	card.type(isMark(text) ? moveOn(typed, card.task()) : typed);
}

/* The grade of an element that was called otherwise stays. */
export function confirm(card) {
	const at = card.lineAt();
	card.type(moveOn(give(card.typed, at, at.grade), card.task()));
}

export function goTo(card, line) {
	card.type(choose(card.typed, line));
}

export function goBy(card, by) {
	card.type(moveBy(card.typed, card.task(), by));
}

/* One grade or one quarter more or less, without leaving the line. */
export function step(card, by) {
	const at = card.lineAt();
	const { lowestGrade, highestGrade } = card.task();
	if (at?.kind === "element") {
		const next = Math.min(Math.max((at.grade ?? 0) + (at.grade === undefined ? 0 : by), lowestGrade), highestGrade);
		card.type(give(card.typed, at, next));
	}
	else if (at && stepped(at.text, by)) {
		card.type(mark(card.typed, at, stepped(at.text, by)));
	}
}

/* A digit, sign or point of the keyboard. */
export function typeKey(card, key) {
	const at = card.lineAt();
	if (at?.kind !== "element") {
		return /^[0-9.]$|^erase$/.test(key) ? component(card, key) : undefined;
	}
	if (key === "-" || key === "+") {
		return card.type({ ...card.typed, sign: key });
	}
	if (key === "erase") {
		return grade(card, key);
	}
	const digit = Number((card.typed.sign === "-" ? "-" : "") + key);
	const { lowestGrade, highestGrade } = card.task();
	return digit >= lowestGrade && digit <= highestGrade ? grade(card, digit + 0) : card.type(card.typed, "grade-range");
}

/* What Enter does here: confirm, finish a mark, else nothing, so that the card is sent. */
export function enter(card) {
	const at = card.lineAt();
	if (at?.state === "confirm") {
		confirm(card);
		return true;
	}
	const whole = at?.kind === "component" && !isMark(at.text) ? finished(at.text) : undefined;
	if (whole) {
		card.type(moveOn(mark(card.typed, at, whole), card.task()));
	}
	return whole !== undefined;
}
