/* Draws what the card knows. */
import { equalTotals, placeAmong, ranked, total } from "./order.js";
import { element, fill, part, say, show, state, word } from "./page.js";
import { isWhole } from "./typing.js";

const MARKS = ["first", "second"];

export function draw(card, { zone }) {
	state(document.querySelector(".card"), card.view());
	drawContact(card);
	drawTeam(card);
	drawMarks(card);
	drawSend(card);
	drawTruth(card, zone);
	drawOwn(card);
	drawRefusals(card);
	say(part("spoken"), spoken(card));
}

function drawContact(card) {
	state(part("contact"), card.contact);
	say(part("contact"), word(card.contact === "good" ? "contact-good" : "contact-none"));
	show(part("not-lasting"), !card.shelf.isLasting());
	if (card.table) {
		say(part("progress"), word("progress", card.table.skated, card.table.starters));
		say(part("segment"), card.table.segment);
	}
}

function drawTeam(card) {
	const now = card.table?.now;
	say(part("title"), title(card));
	show(part("start-number"), card.view() === "marking");
	say(part("number"), now ? String(now.startNumber) : "");
	say(part("club"), card.view() === "marking" ? now.club : card.view() === "lost" ? word("lost-text") : "");
	fill(part("remarks"), card.view() === "marking" ? now.remarks : [], remark);
}

function title(card) {
	switch (card.view()) {
		case "marking": return card.table.now.team;
		case "lost": return word("lost-title");
		case "starting": return word("starting");
		default: return waitingFor(card.table);
	}
}

function waitingFor({ segment, skated, starters }) {
	if (segment === "") {
		return word("waiting-segment");
	}
	return skated === starters ? word("waiting-none") : word("waiting-team");
}

function remark({ kind, text }) {
	const made = element("li", "", "");
	made.append(element("strong", "", word("remark-" + kind)), " " + text);
	return made;
}

function drawMarks(card) {
	say(part("first").querySelector(".mark-name"), word("first-" + (card.table?.kind ?? "any")));
	for (const mark of MARKS) {
		const text = card.typed[mark];
		const button = part(mark);
		button.setAttribute("aria-pressed", String(card.typed.at === mark));
		say(button.querySelector(".typed"), text === "" || isWhole(text) ? text : text.charAt(0) + ".");
		say(button.querySelector(".untyped"), "0.0".slice(text === "" || isWhole(text) ? text.length : 2).replace(/0/g, "–"));
	}
	drawPlace(card);
}

function drawPlace(card) {
	say(part("place"), card.hasMarks() ? place(card) : "");
	const equal = card.hasMarks() ? equalTotals(card.marks(), card.others(), card.table.secondLook) : [];
	fill(part("equal"), card.refusal ? [] : equal.map(({ other, side }) => equalTotal(card, other, side)), (text) => element("li", "", text));
	say(part("key-refusal"), card.refusal ? word("key-" + card.refusal) : "");
}

function place(card) {
	const marks = card.marks();
	const others = card.others();
	return word("place", figure(total(marks)), placeAmong(marks, others, card.table.secondLook), others.length + 1);
}

function equalTotal(card, other, side) {
	const look = word(card.table.secondLook === "FIRST_MARK" ? "first-look" : "second-look");
	return word("equal-" + side, other.startNumber, marks(other), look);
}

function drawSend(card) {
	const button = part("send");
	button.disabled = !card.isSendable();
	state(button, card.isSent() ? card.truth() : "open");
	say(button, sendWords(card));
}

function sendWords(card) {
	if (!card.hasMarks()) {
		return word("send-missing");
	}
	if (card.isSent()) {
		return word(card.truth() === "kept" ? "send-kept" : "send-sent", marks(card.newest()));
	}
	return word(card.newest() ? "send-change" : "send", marks(card.marks()));
}

function drawTruth(card, zone) {
	const { name, words } = card.view() === "marking" ? truth(card, zone) : afterwards(card);
	state(part("truth"), name);
	say(part("truth-word"), name === "" ? "" : word("truth-" + name, ...words));
}

function truth(card, zone) {
	const newest = card.newest();
	const name = card.truth();
	if (name === "being-typed" && newest) {
		return { name: "being-changed", words: [marks(newest)] };
	}
	return { name, words: [newest?.receivedAt ? clock(newest.receivedAt, zone) : ""] };
}

/* Between two teams: what became of the card before. */
function afterwards(card) {
	const waiting = card.outbox.waiting().at(-1);
	if (waiting) {
		return { name: "still-kept", words: [waiting.startNumber, marks(waiting)] };
	}
	const last = card.received().reduce((a, b) => (a && Date.parse(a.receivedAt) > Date.parse(b.receivedAt) ? a : b), undefined);
	return last ? { name: "closed", words: [last.startNumber, marks(last)] } : { name: "", words: [] };
}

function drawOwn(card) {
	const others = card.table ? card.others() : [];
	const rows = ranked(card.view() === "marking" ? [...others, ...atHand(card)] : others, card.table?.secondLook);
	show(part("own-none"), rows.length === 0);
	fill(part("own"), rows.map(ownRow), drawOwnRow);
	part("own").querySelector("[aria-current]")?.scrollIntoView({ block: "nearest" });
}

function atHand(card) {
	const { startNumber, team } = card.table.now;
	const marks = card.hasMarks() ? card.marks() : card.newest();
	return marks ? [{ first: marks.first, second: marks.second, startNumber, team, atHand: true }] : [];
}

function ownRow({ card, place }) {
	return { place, startNumber: card.startNumber, team: card.team, marks: marks(card), total: figure(total(card)), atHand: card.atHand };
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

function drawRefusals(card) {
	const unsent = card.unsent();
	const told = card.outbox.refusals().map(({ id, startNumber, sentence, ...both }) => ({ id, text: word("refused", startNumber, marks(both), sentence) }));
	if (unsent) {
		const typed = (unsent.typed.first || "–") + " / " + (unsent.typed.second || "–");
		told.push({ id: "unsent", text: word("unsent", unsent.startNumber, typed, marks(unsent.newest)) });
	}
	if (card.view() === "lost") {
		card.outbox.waiting().forEach((kept) => told.push({ text: word("lost-kept", kept.startNumber, marks(kept)) }));
	}
	show(part("refusals"), told.length > 0);
	fill(part("refusals").querySelector("ul"), told, refusal);
}

function refusal({ id, text }) {
	const made = element("li", "", "");
	made.append(element("span", "", text));
	if (id) {
		const button = element("button", "quiet", word("put-away"));
		button.type = "button";
		button.dataset.id = id;
		made.append(button);
	}
	return made;
}

/* What a screen reader says after each key. */
function spoken(card) {
	if (card.view() !== "marking") {
		return "";
	}
	if (card.refusal) {
		return word("key-" + card.refusal);
	}
	return MARKS.map((mark) => part(mark).querySelector(".mark-name").textContent + " " + (card.typed[mark] || word("empty"))).join(", ")
		+ ". " + part("place").textContent;
}

function marks(card) {
	return figure(card.first) + "\u00a0/\u00a0" + figure(card.second);
}

function figure(tenths) {
	return (tenths / 10).toFixed(1);
}

function clock(instant, zone) {
	return new Intl.DateTimeFormat("en-GB", { timeZone: zone, hour: "2-digit", minute: "2-digit", second: "2-digit" }).format(new Date(instant));
}
