/*
 * The judge's card in points judging. Elements appear as the technical desk calls them, so the service is
 * looked at more often than in placement judging; a call is on the card within a second.
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
import { bounces } from "./points/bounce.js";
import { PointsCard } from "./points/card.js";
import { fetchEarlier, onEarlier } from "./points/earlier.js";
import { back, confirm, enter, goBy, goTo, grade, step, stepComponent, typeKey, whole } from "./points/keys.js";
import { oddities } from "./points/odd.js";
import { isSettling } from "./points/ribbon.js";
import { draw, sayGiven } from "./points/view.js";

const LOOK_WHILE_MARKING = 700;
const LOOK_BETWEEN = 1500;
const KEYS = { ",": ".", "−": "-", "Backspace": "erase", "Delete": "erase" };
const MOVES = { ArrowUp: () => goBy(card, -1), ArrowDown: () => goBy(card, 1), ArrowLeft: () => step(card, -1), ArrowRight: () => step(card, 1) };

const face = document.querySelector(".card");
const shelf = new Shelf(face.dataset.seat);
const outbox = new Outbox(shelf, deliver, () => refresh());
const card = new PointsCard(shelf, outbox, newId);
const isSecond = bounces();
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
function act(change, isTyped = false) {
	const { acts } = card.typed;
	change();
	card.said = sayGiven(card, doneSince(acts));
	refresh();
	if (isTyped || document.activeElement.closest("[data-line], #send")) {
		follow();
	}
}

function follow() {
	const there = document.querySelector(`[data-line="${CSS.escape(card.lineAt()?.key ?? "")}"]`) ?? part("send");
	if (there.disabled) {
		document.activeElement.blur();
	}
	else {
		there.focus();
	}
}

/* The line of what was done since, or taken back. */
function doneSince(before) {
	const { acts } = card.typed;
	return acts === before ? undefined : (acts.length < before.length ? before : acts).at(-1)?.key;
}

function send() {
	if (card.isSendable()) {
		sendOrAsk(card, oddities(card));
	}
}

function onKey(event) {
	if (!isForCard(event, card) || isOwnEnter(event)) {
		return;
	}
	const key = KEYS[event.key] ?? event.key;
	if (/^([0-9.+-]|erase)$/.test(key)) {
		event.preventDefault();
		if (!event.repeat) {
			act(() => typeKey(card, key), true);
		}
	}
	else if (MOVES[key]) {
		event.preventDefault();
		act(MOVES[key], true);
	}
	else if (key === "Enter") {
		event.preventDefault();
		if (!event.repeat) {
			act(() => enter(card) || send(), true);
		}
	}
}

/* Enter on another line than the one that is typed goes there. */
function isOwnEnter(event) {
	const line = document.activeElement.dataset.line;
	return event.key === "Enter" && line !== undefined && line !== card.lineAt()?.key;
}

/* A key that moves the card on counts once, however fast it is touched again. */
function onTouch(id, datum, change, isOnce = true) {
	part(id).addEventListener("click", (event) => {
		const value = event.target.closest("button")?.dataset[datum];
		if (value !== undefined) {
			const isBounce = isSecond(datum + "/" + value, event.timeStamp) && isOnce;
			act(() => (isBounce ? card.type(card.typed, "twice") : change(value, event)));
		}
	});
}

function onStep(value) {
	const [quarters, name] = value.split(/\/(.*)/s);
	stepComponent(card, name, Number(quarters));
}

onTouch("elements", "line", (line, event) => (isSettling(event.timeStamp) ? card.type(card.typed, "moved") : goTo(card, line)), false);
onTouch("grade-keys", "grade", (key) => grade(card, Number(key)));
onTouch("mark-keys", "whole", (key) => whole(card, key));
onTouch("components", "line", (line) => goTo(card, line), false);
onTouch("components", "step", onStep, false);
onTouch("at", "act", (name) => (name === "confirm" ? confirm(card) : back(card)));
document.addEventListener("keydown", onKey);
onFrame(card, send, refresh);
onDiffering(card, refresh);
onOdd(card);
onEarlier(card, refresh);
keepLooking(card, outbox, () => (card.view() === "marking" ? LOOK_WHILE_MARKING : LOOK_BETWEEN), refresh);
keepPage();
