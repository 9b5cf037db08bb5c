/*
 * The judge's card in placement judging. The service says what is on the ice and what it has received; what
 * is being typed and what is not yet received live on the tablet.
 */
import { onDiffering } from "./card/differ.js";
import { newId } from "./card/ids.js";
import { keepLooking } from "./card/look.js";
import { keepPage } from "./card/offline.js";
import { onOdd, sendOrAsk } from "./card/odd.js";
import { part } from "./card/page.js";
import { deliver } from "./card/service.js";
import { Shelf } from "./card/shelf.js";
import { isForCard, onFrame } from "./card/touch.js";
import { Outbox } from "./card/outbox.js";
import { PairCard } from "./pair/card.js";
import { oddities } from "./pair/odd.js";
import { choose, press } from "./pair/typing.js";
import { draw } from "./pair/view.js";

const LOOK_EVERY = 1500;

const face = document.querySelector(".card");
const shelf = new Shelf(face.dataset.seat);
const outbox = new Outbox(shelf, deliver, () => refresh());
const card = new PairCard(shelf, outbox, newId);

function refresh() {
	draw(card, face.dataset);
}

function touch(key) {
	const { typed, refusal } = press(card.typed, key, card.takesZero());
	card.type(typed, refusal);
	refresh();
	follow();
}

function turnTo(mark) {
	card.type(choose(card.typed, mark));
	refresh();
}

/* With the keyboard the focus goes where the typing goes. */
function follow() {
	const places = [part("first"), part("second"), part("send")];
	if (places.includes(document.activeElement)) {
		part(card.typed.at).focus();
	}
}

function send() {
	if (!card.isSendable()) {
		return;
	}
	if (card.hasZero() && !card.takesZero()) {
		card.type(card.typed, "not-skated");
		refresh();
	}
	else if (card.hasZero()) {
		part("zero").showModal();
	}
	else {
		sendOrAsk(card, oddities(card));
	}
}

function onKey(event) {
	if (!isForCard(event, card)) {
		return;
	}
	const key = { ",": ".", "Backspace": "erase", "Delete": "erase" }[event.key] ?? event.key;
	if (/^([0-9.]|erase)$/.test(key)) {
		event.preventDefault();
		touch(key);
	}
	else if (key === "ArrowLeft" || key === "ArrowRight") {
		const mark = key === "ArrowLeft" ? "first" : "second";
		turnTo(mark);
		part(mark).focus();
	}
	else if (key === "Enter") {
		event.preventDefault();
		send();
	}
}

for (const mark of ["first", "second"]) {
	part(mark).addEventListener("click", () => turnTo(mark));
	part(mark).addEventListener("focus", () => turnTo(mark));
}
part("keys").addEventListener("click", (event) => event.target.dataset.key && touch(event.target.dataset.key));
part("zero").addEventListener("close", () => part("zero").returnValue === "send" && card.send());
document.addEventListener("keydown", onKey);
onFrame(card, send, refresh);
onDiffering(card, refresh);
onOdd(card);
keepLooking(card, outbox, () => LOOK_EVERY, refresh);
keepPage();
