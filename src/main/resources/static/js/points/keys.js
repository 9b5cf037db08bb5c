/* What a key does to a card in points judging, touched on the tablet or pressed on a keyboard. */
import { choose, componentLines, componentAt, elementAt, give, leaveOut, mark, moveBy, moveOn, moveOnComponent, takeBack } from "./draft.js";
import { finished, isMark, stepped, typeMark, wholeMark } from "./marks.js";

/* Give the element in the middle a grade; then the next one is there. */
export function grade(card, value) {
	const at = elementAt(card.typed, card.task());
	if (at?.kind !== "element") {
		return card.type(card.typed, "no-element");
	}
	card.type(moveOn(give(card.typed, at, value), card.task()));
}

/* A whole number makes a mark of the component at hand; then the next one is at hand. */
export function whole(card, key) {
	const at = componentAt(card.typed, card.task());
	card.type(moveOnComponent(mark(card.typed, at, wholeMark(key)), card.task()));
}

/* So many quarters more or less for that component; nothing moves. */
export function stepComponent(card, name, quarters) {
	const line = componentLines(card.typed, card.task()).find((one) => one.name === name);
	const { text, refusal } = stepped(line.text, quarters);
	card.type(refusal ? card.typed : mark(card.typed, line, text), refusal);
}

/* The grade stays for the element that is called now; an element that was taken out is left out. */
export function confirm(card) {
	const at = elementAt(card.typed, card.task());
	const confirmed = at.kind === "gone" ? leaveOut(card.typed, at) : give(card.typed, at, at.grade);
	card.type(moveOn(confirmed, card.task()));
}

/* The last grade or component given, wherever the card has moved since; again for the one before. */
export function back(card) {
	card.type(takeBack(card.typed, card.task()));
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
	else if (at?.kind === "component") {
		stepComponent(card, at.name, by);
	}
}

/* A digit, sign or point of the keyboard, or "erase". */
export function typeKey(card, key) {
	const at = card.lineAt();
	if (key === "erase" && !isHalfTyped(at)) {
		return card.typed.sign ? card.type({ ...card.typed, sign: "" }) : back(card);
	}
	if (card.typed.typing === "component") {
		return /^[0-9.]$|^erase$/.test(key) ? typeComponent(card, at, key) : undefined;
	}
	if (at?.kind !== "element") {
		return card.type(card.typed, card.typed.typing === "send" ? "choose-line" : "no-element");
	}
	typeGrade(card, key);
}

function isHalfTyped(line) {
	return line?.kind === "component" && line.text !== "" && !isMark(line.text);
}

function typeComponent(card, at, key) {
	const { text, refusal } = typeMark(at.text, key);
	if (refusal) {
		return card.type(card.typed, refusal);
	}
	const typed = mark(card.typed, at, text);
	card.type(isMark(text) ? moveOnComponent(typed, card.task()) : typed);
}

function typeGrade(card, key) {
	if (key === "-" || key === "+") {
		return card.type({ ...card.typed, sign: key });
	}
	const digit = Number((card.typed.sign === "-" ? "-" : "") + key);
	const { lowestGrade, highestGrade } = card.task();
	return digit >= lowestGrade && digit <= highestGrade ? grade(card, digit + 0) : card.type(card.typed, "grade-range");
}

/* What Enter does here: confirm, finish a mark, go on to the components, else nothing, so that the card is sent. */
export function enter(card) {
	const at = card.lineAt();
	if (at?.state === "confirm") {
		confirm(card);
		return true;
	}
	const mended = isHalfTyped(at) ? finished(at.text) : undefined;
	if (mended) {
		card.type(moveOnComponent(mark(card.typed, at, mended), card.task()));
		return true;
	}
	const waits = !at && card.typed.typing === "element" && !card.isWhole();
	if (waits && card.typed.component) {
		goTo(card, "component/" + card.typed.component);
	}
	return waits;
}
