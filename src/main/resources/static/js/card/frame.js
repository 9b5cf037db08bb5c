/*
 * Draws what every card has: the bar, the team, what the referee says, the button to send and the line of
 * truth. words(version) says a card in a few words, missing(card) what it still lacks.
 */
import { attempt } from "./fault.js";
import { survivesReload } from "./offline.js";
import { clock, element, button, fill, part, say, show, state, sync, word } from "./page.js";

/* With more above the keys each takes less room, so that the keys keep their size and nothing is hidden. */
const WITH_ROOM = 2;
const LONG_NAME = 32;

export function drawFrame(card, zone, { words, missing }) {
	state(document.querySelector(".card"), card.view());
	document.querySelector(".card").dataset.kept = String(card.shelf.isKept());
	attempt("bar", () => drawBar(card));
	attempt("team", () => drawTeam(card));
	attempt("panel", () => drawPanel(card));
	attempt("reopened", () => drawReopened(card));
	attempt("notices", () => drawNotices(card));
	attempt("send", () => drawSend(card, words, missing));
	attempt("truth", () => drawTruth(card, zone, words));
	attempt("refusals", () => drawRefusals(card, words));
}

function drawBar(card) {
	state(part("contact"), card.contact);
	say(part("contact"), card.contact === "starting" ? "" : word(card.contact === "good" ? "contact-good" : "contact-none"));
	show(part("not-lasting"), !card.shelf.isLasting());
	show(part("stay"), card.contact === "none" && card.shelf.isLasting() && !survivesReload());
	if (card.table) {
		say(part("progress"), word("progress", card.table.skated, card.table.starters));
		say(part("segment"), card.table.segment);
	}
}

function drawTeam(card) {
	const at = card.at();
	say(part("title"), title(card));
	state(part("title"), title(card).length > LONG_NAME ? "long" : "short");
	show(part("start-number"), card.view() === "marking");
	say(part("number"), at ? String(at.startNumber) : "");
	say(part("club"), card.view() === "marking" ? at.club : card.view() === "lost" ? word("lost-text") : "");
}

function title(card) {
	switch (card.view()) {
		case "marking": return card.at().team;
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

/* What the referee decided about this seat: taken over by the substitute, or left out. */
function drawPanel(card) {
	say(part("panel-word"), card.table?.panel ?? "");
	show(part("panel-word"), Boolean(card.table?.panel));
}

/* A card that was opened again beside the team on the ice, and the way between the two. */
function drawReopened(card) {
	const { reopened, now } = card.table ?? {};
	const isShown = Boolean(reopened) && ["marking", "waiting"].includes(card.view());
	show(part("reopened"), isShown && (now || !card.isAtReopened()));
	if (isShown) {
		const target = card.isAtReopened() ? now : reopened;
		say(part("reopened-text"), word(card.isAtReopened() ? "reopened-here" : "reopened", reopened.startNumber));
		say(part("turn"), target ? word(card.isAtReopened() ? "reopened-back" : "reopened-go", target.startNumber) : "");
		part("turn").dataset.performance = target?.performance ?? "";
	}
}

function drawNotices(card) {
	const all = card.view() === "marking" ? card.notices() : [];
	const open = all.filter(({ seen }) => !seen);
	const shown = [...open, ...all.filter(({ seen }) => seen)];
	const boxes = open.length + (part("reopened").hidden ? 0 : 1);
	state(document.querySelector(".notices"), boxes > WITH_ROOM ? "many" : "few");
	sync(part("remarks"), shown.map((one) => ({ ...one, key: one.id })), notice, markSeen);
}

function notice({ id, kind, text }) {
	const made = element("li", "", "");
	const said = element("span", "", " " + text);
	said.prepend(element("strong", "", word("remark-" + kind)));
	said.id = "remark-" + id;
	const seen = button("", word("remark-seen"), { remark: id });
	seen.setAttribute("aria-describedby", said.id);
	made.append(said, " ", seen);
	return made;
}

function markSeen(item, { seen }) {
	state(item, seen ? "seen" : "open");
	show(item.querySelector("button"), !seen);
}

function drawSend(card, words, missing) {
	const send = part("send");
	send.disabled = !card.isSendable();
	state(send, card.isSent() ? card.truth() : "open");
	say(send, sendWords(card, words, missing));
}

function sendWords(card, words, missing) {
	if (card.view() === "marking" && !card.isWhole()) {
		return missing(card);
	}
	if (card.isSent()) {
		return word(card.truth() === "received" ? "send-sent" : "send-kept", words(card.newest()));
	}
	return card.view() === "marking" ? word(card.newest() ? "send-change" : "send", words(card.content())) : "";
}

function drawTruth(card, zone, words) {
	const { name, said } = card.view() === "marking" ? truth(card, zone, words) : afterwards(card, words);
	state(part("truth"), name);
	say(part("truth-word"), name === "" ? "" : word("truth-" + name, ...said));
}

function truth(card, zone, words) {
	const newest = card.newest();
	const name = card.truth();
	if (name === "being-typed" && newest) {
		return { name: "being-changed", said: [words(newest)] };
	}
	return { name, said: [newest?.receivedAt ? clock(newest.receivedAt, zone) : ""] };
}

/* Between two teams: what became of the card before. */
function afterwards(card, words) {
	const waiting = card.outbox.waitingCards().at(-1);
	if (waiting) {
		return { name: card.keeping() === "kept" ? "still-kept" : "still-waiting", said: [waiting.startNumber, words(waiting)] };
	}
	const ended = card.ended();
	if (ended) {
		return { name: "ended", said: [ended.startNumber] };
	}
	const last = card.received().reduce((a, b) => (a && Date.parse(a.receivedAt) > Date.parse(b.receivedAt) ? a : b), undefined);
	return last ? { name: "closed", said: [last.startNumber, words(last)] } : { name: "", said: [] };
}

function drawRefusals(card, words) {
	const told = card.outbox.refusals().map((refused) => ({ id: refused.id, text: word("refused", refused.startNumber, words(refused), refused.sentence) }));
	const unsent = card.unsent();
	if (unsent) {
		told.push({ id: "unsent", text: word("unsent", unsent.startNumber, card.inWords(unsent.typed), words(unsent.newest)) });
	}
	card.corrections().forEach(({ id, startNumber, segment, before, after }) => told.push({ id, text: word("corrected", startNumber, segment, before, after) }));
	if (card.view() === "lost") {
		card.outbox.waitingCards().forEach((kept) => told.push({ text: word("lost-kept", kept.startNumber, words(kept)) }));
	}
	show(part("refusals"), told.length > 0);
	fill(part("refusals").querySelector("ul"), told, refusal);
}

function refusal({ id, text }) {
	const made = element("li", "", "");
	made.append(element("span", "", text));
	if (id) {
		made.append(button("quiet", word("put-away"), { id }));
	}
	return made;
}
