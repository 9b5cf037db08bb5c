/*
 * The judge's card in points judging. Elements appear as the technical desk calls them, so the service is
 * looked at more often than in placement judging; a call is on the card within a second.
 */
import { onDiffering } from "./card/differ.js";
import { newId } from "./card/ids.js";
import { keepLooking } from "./card/look.js";
import { part } from "./card/page.js";
import { deliver } from "./card/service.js";
import { Shelf } from "./card/shelf.js";
import { isForCard, onFrame } from "./card/touch.js";
import { Outbox } from "./card/outbox.js";
import { PointsCard } from "./points/card.js";
import { fetchEarlier, onEarlier } from "./points/earlier.js";
import { component, confirm, enter, goBy, goTo, grade, step, typeKey } from "./points/keys.js";
import { draw, sayGiven } from "./points/view.js";

const LOOK_WHILE_MARKING = 700;
const LOOK_BETWEEN = 1500;
const KEYS = { ",": ".", "−": "-", "Backspace": "erase", "Delete": "erase" };
const MOVES = { ArrowUp: () => goBy(card, -1), ArrowDown: () => goBy(card, 1), ArrowLeft: () => step(card, -1), ArrowRight: () => step(card, 1) };

const face = document.querySelector(".card");
const shelf = new Shelf(face.dataset.seat);
const outbox = new Outbox(shelf, deliver, () => refresh());
const card = new PointsCard(shelf, outbox, newId);
let known;

function refresh() {
	draw(card, face.dataset);
	lookUp();
}

/* Another team is done, or another card is open: the judge's own earlier cards have changed. */
function lookUp() {
	const now = JSON.stringify([card.table?.skated, card.open().map(({ performance }) => performance)]);
	if (card.table && now !== known) {
		known = now;
		fetchEarlier(card, refresh);
	}
}

/* Do something to the card and say what it was; with the keyboard the focus goes where the typing goes. */
function act(change) {
	const before = card.typed.at;
	change();
	card.said = sayGiven(card, before);
	refresh();
	if (document.activeElement.closest("#lines, #send")) {
		(document.querySelector(`[data-line="${CSS.escape(card.typed.at)}"]`) ?? part("send")).focus();
	}
}

function send() {
	if (card.isSendable()) {
		card.send();
	}
}

function onKey(event) {
	if (!isForCard(event, card)) {
		return;
	}
	const key = KEYS[event.key] ?? event.key;
	if (/^([0-9.+-]|erase)$/.test(key)) {
		event.preventDefault();
		act(() => typeKey(card, key));
	}
	else if (MOVES[key]) {
		event.preventDefault();
		act(MOVES[key]);
	}
	else if (key === "Enter") {
		event.preventDefault();
		act(() => enter(card) || send());
	}
}

function onTouch(id, datum, change) {
	part(id).addEventListener("click", (event) => {
		const value = event.target.closest("button")?.dataset[datum];
		if (value !== undefined) {
			act(() => change(value));
		}
	});
}

onTouch("lines", "line", (line) => goTo(card, line));
onTouch("grade-keys", "grade", (key) => grade(card, key));
onTouch("mark-keys", "key", (key) => component(card, key));
part("confirm").addEventListener("click", () => act(() => confirm(card)));
document.addEventListener("keydown", onKey);
onFrame(card, send, refresh);
onDiffering(card, refresh);
onEarlier(card, refresh);
keepLooking(card, outbox, () => (card.view() === "marking" ? LOOK_WHILE_MARKING : LOOK_BETWEEN), refresh);
