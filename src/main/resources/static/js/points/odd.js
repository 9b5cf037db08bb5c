/*
 * Marks that are asked about once before a card is sent. Only the judge's own card and own earlier marks of the
 * segment are looked at, never another judge's. Odd is
 *   every grade of the card being the lowest there is,
 *   a component more than two whole points below or above all marks that the judge gave it so far.
 */
import { signed, isMark } from "./marks.js";
import { elementLines, componentLines } from "./draft.js";

const FAR = 2;

export function oddities(card) {
	return [...lowest(card), ...far(card)];
}

function lowest(card) {
	const { lowestGrade } = card.task();
	const grades = elementLines(card.typed, card.task()).map((line) => line.grade);
	const isOdd = grades.length > 0 && grades.every((grade) => grade === lowestGrade);
	return isOdd ? [{ key: "lowest/" + grades.length, word: "odd-lowest", said: [signed(lowestGrade)] }] : [];
}

function far(card) {
	return componentLines(card.typed, card.task())
		.map(({ name, text }) => ({ name, text, own: card.ownMarks(name).map(({ mark }) => mark) }))
		.filter(({ text, own }) => isMark(text) && own.length > 0)
		.map(({ name, text, own }) => ({ name, text, low: Math.min(...own), high: Math.max(...own) }))
		.filter(({ text, low, high }) => Number(text) < low - FAR || Number(text) > high + FAR)
		.map(({ name, text, low, high }) => ({ key: name + "/" + text, word: low === high ? "odd-far-one" : "odd-far", said: [name, text, low.toFixed(2), high.toFixed(2)] }));
}
