/*
 * Marks that are asked about once before a card is sent. Only the judge's own card and own earlier marks of the
 * segment are looked at, never another judge's. Odd is, as common practice has it,
 *   a mark more than two points below or above all marks of its kind that the judge gave so far,
 *   a mark below one point, which a digit too few or a touch beside the key makes of a usual one,
 *   two marks of one card more than a point and a half apart.
 */
import { fromNumber } from "./typing.js";

/* In tenths. */
const FAR = 20;
const APART = 15;
const RARE = 10;

export function oddities(card) {
	const given = card.content();
	return [...apart(given), ...unusual("first", given, card.others()), ...unusual("second", given, card.others())];
}

function apart({ first, second }) {
	const said = [figure(first), figure(second)];
	return Math.abs(first - second) > APART ? [{ key: "apart/" + said.join("/"), word: "odd-apart", said }] : [];
}

function unusual(mark, given, others) {
	const own = others.map((other) => other[mark]);
	const low = Math.min(...own);
	const high = Math.max(...own);
	const asked = (word, ...said) => [{ key: mark + "/" + given[mark], word, said: [nameOf(mark), figure(given[mark]), ...said.map(figure)] }];
	if (own.length > 0 && (given[mark] < low - FAR || given[mark] > high + FAR)) {
		return asked(low === high ? "odd-far-one" : "odd-far", low, high);
	}
	return given[mark] < RARE ? asked("odd-rare", RARE) : [];
}

const nameOf = (mark) => document.querySelector("#" + mark + " .mark-name").textContent;

function figure(tenths) {
	return fromNumber(tenths / 10);
}
