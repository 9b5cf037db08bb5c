/*
 * The judge's card. The service says what is on the ice and what it has received; what is being typed
 * and what is not yet received live on the tablet. Each look at the service only updates the table,
 * so it can never disturb what is being typed.
 */
import { newId } from "./card/ids.js";
import { Card } from "./card/card.js";
import { part } from "./card/page.js";
import { draw } from "./card/view.js";
import { deliver, fetchTable } from "./card/service.js";
import { Shelf } from "./card/shelf.js";
import { choose, press } from "./card/typing.js";
import { Outbox } from "./outbox.js";

const LOOK_EVERY = 1500;
const LONGEST_WAIT = 15000;

const face = document.querySelector(".card");
const shelf = new Shelf(face.dataset.seat);
const outbox = new Outbox(shelf, deliver, () => refresh());
const card = new Card(shelf, outbox, newId);
let failures = 0;
let looking = false;
let timer;

function refresh() {
	draw(card, face.dataset);
}

async function look() {
	clearTimeout(timer);
	if (!looking) {
		looking = true;
		learn(await fetchTable());
		looking = false;
	}
	timer = setTimeout(look, Math.min(LOOK_EVERY * 2 ** Math.min(failures, 4), LONGEST_WAIT));
}

function learn({ outcome, table }) {
	if (outcome === "table") {
		card.take(table);
		card.contact = "good";
	}
	else if (outcome === "seat-lost") {
		card.contact = "seat-lost";
	}
	else if (failures > 0) {
		card.contact = "none";
	}
	if (outcome === "table" && failures > 0) {
		outbox.flush();
	}
	failures = outcome === "table" ? 0 : failures + 1;
	refresh();
}

function touch(key) {
	const { typed, refusal } = press(card.typed, key);
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
	if (card.hasZero()) {
		part("zero").showModal();
	}
	else {
		card.send();
	}
}

function onKey(event) {
	if (event.ctrlKey || event.metaKey || event.altKey || part("zero").open || card.view() !== "marking") {
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
	else if (key === "Enter" && !document.activeElement.closest(".keys, .refusals, a")) {
		event.preventDefault();
		send();
	}
}

function onPutAway(event) {
	const id = event.target.closest("button")?.dataset.id;
	if (id) {
		card.putAway(id);
		refresh();
	}
}

for (const mark of ["first", "second"]) {
	part(mark).addEventListener("click", () => turnTo(mark));
	part(mark).addEventListener("focus", () => turnTo(mark));
}
part("keys").addEventListener("click", (event) => event.target.dataset.key && touch(event.target.dataset.key));
part("send").addEventListener("click", send);
part("refusals").addEventListener("click", onPutAway);
part("zero").addEventListener("close", () => part("zero").returnValue === "send" && card.send());
document.addEventListener("keydown", onKey);
document.addEventListener("visibilitychange", () => document.hidden || look());
window.addEventListener("online", look);
window.addEventListener("storage", refresh);

look();
outbox.flush();
