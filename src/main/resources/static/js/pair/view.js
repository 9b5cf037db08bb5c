/* Draws a card of two marks: the marks, the place they would take, the judge's own cards in order. */
import { drawDiffering } from "../card/differ.js";
import { attempt } from "../card/fault.js";
import { drawFrame } from "../card/frame.js";
import { element, fill, part, say, show, word } from "../card/page.js";
import { equalTotals, placeAmong, ranked, total } from "./order.js";
import { isWhole } from "./typing.js";

const MARKS = ["first", "second"];

export function draw(card, { zone }) {
	drawFrame(card, zone, { words: marks, missing: () => word("send-missing") });
	attempt("marks", () => drawMarks(card));
	attempt("own", () => drawOwn(card));
	attempt("differing", () => drawDiffering(card, zone, differing));
	attempt("spoken", () => say(part("spoken"), spoken(card)));
}

function drawMarks(card) {
	say(markName("first"), word("first-" + (card.table?.kind ?? "any")));
	for (const mark of MARKS) {
		const text = card.typed[mark];
		const button = part(mark);
		button.setAttribute("aria-pressed", String(card.typed.at === mark));
		say(button.querySelector(".typed"), text === "" || isWhole(text) ? text : text.charAt(0) + ".");
		say(button.querySelector(".untyped"), "0.0".slice(text === "" || isWhole(text) ? text.length : 2).replace(/0/g, "–"));
	}
	drawPlace(card);
}

function markName(mark) {
	return part(mark).querySelector(".mark-name");
}

function drawPlace(card) {
	say(part("place"), card.isWhole() ? place(card) : "");
	const equal = card.isWhole() && card.table ? equalTotals(card.content(), card.others(), card.table.secondLook) : [];
	fill(part("equal"), card.refusal ? [] : equal.map(({ other, side }) => equalTotal(card, other, side)), (text) => element("li", "", text));
	say(part("key-refusal"), card.refusal ? word("key-" + card.refusal) : "");
}

function place(card) {
	const given = card.content();
	const others = card.others();
	return word("place", figure(total(given)), placeAmong(given, others, card.table?.secondLook), others.length + 1);
}

function equalTotal(card, other, side) {
	const look = word(card.table.secondLook === "FIRST_MARK" ? "first-look" : "second-look");
	return word("equal-" + side, other.startNumber, marks(other), look);
}

function drawOwn(card) {
	const others = card.others();
	const rows = ranked(card.view() === "marking" ? [...others, ...atHand(card)] : others, card.table?.secondLook);
	show(part("own-none"), rows.length === 0);
	fill(part("own"), rows.map(ownRow), drawOwnRow);
	part("own").querySelector("[aria-current]")?.scrollIntoView({ block: "nearest" });
}

function atHand(card) {
	const { startNumber, team } = card.at();
	const given = card.isWhole() ? card.content() : card.newest();
	return given ? [{ first: given.first, second: given.second, startNumber, team, atHand: true }] : [];
}

function ownRow({ card, place: taken }) {
	return { place: taken, startNumber: card.startNumber, team: card.team, marks: marks(card), total: figure(total(card)), atHand: card.atHand };
}

function drawOwnRow(row) {
	const made = element("li", "", "");
	if (row.atHand) {
		made.setAttribute("aria-current", "true");
	}
	const team = element("span", "own-team", row.team);
	team.prepend(element("span", "own-number", row.startNumber), " ");
	for (const piece of [element("span", "own-place", row.place), team, element("span", "own-marks", row.marks), element("span", "own-total", row.total)]) {
		made.append(piece, " ");
	}
	return made;
}

function differing(card, mine) {
	const received = card.fromService(mine.received);
	return MARKS.map((mark) => ({ name: markName(mark).textContent, mine: figure(mine[mark]), received: figure(received[mark]) }));
}

/* What a screen reader says after each key. */
function spoken(card) {
	if (card.view() !== "marking") {
		return "";
	}
	if (card.refusal) {
		return word("key-" + card.refusal);
	}
	return MARKS.map((mark) => markName(mark).textContent + " " + (card.typed[mark] || word("empty"))).join(", ")
		+ ". " + part("place").textContent;
}

function marks(card) {
	return figure(card.first) + "\u00a0/\u00a0" + figure(card.second);
}

function figure(tenths) {
	return (tenths / 10).toFixed(1);
}
