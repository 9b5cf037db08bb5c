/*
 * Marks that are asked about once before a card is sent. Only the judge's own card and own earlier marks of the
 * segment are looked at, never another judge's. Odd is
 *   every grade of the card being the lowest there is,
 *   a component more than two whole points below or above all marks that the judge gave it so far,
 *   a component below one point, which a touch beside the scale makes of a usual one (common practice).
 */
import { signed, isMark } from "./marks.js";
import { elementLines, componentLines } from "./draft.js";

const FAR = 2;
const RARE = 1;

export function oddities(card) {
	return [...lowest(card), ...unusual(card)];
}

function lowest(card) {
	const { lowestGrade } = card.task();
	const grades = elementLines(card.typed, card.task()).map((line) => line.grade);
	const isOdd = grades.length > 0 && grades.every((grade) => grade === lowestGrade);
	return isOdd ? [{ key: "lowest/" + grades.length, word: "odd-lowest", said: [signed(lowestGrade)] }] : [];
}

function unusual(card) {
	return componentLines(card.typed, card.task())
		.filter(({ text }) => isMark(text))
		.flatMap(({ name, text }) => asked(name, text, card.ownMarks(name).map(({ mark }) => mark)));
}

function asked(name, text, own) {
	const [low, high] = [Math.min(...own), Math.max(...own)];
	if (own.length > 0 && (Number(text) < low - FAR || Number(text) > high + FAR)) {
		return [{ key: name + "/" + text, word: low === high ? "odd-far-one" : "odd-far", said: [name, text, low.toFixed(2), high.toFixed(2)] }];
	}
	return Number(text) < RARE ? [{ key: name + "/" + text, word: "odd-rare", said: [name, text, RARE.toFixed(2)] }] : [];
}
