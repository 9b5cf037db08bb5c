/*
 * The clock at the stand counts on from the moment that the page was given. The page's own clock is set by the
 * service: by the time in each answer, of which the one with the shortest way is the most exact.
 */
import { sendWithoutLeaving } from "./send.js";
import { elapsed, inside, outside, words } from "./time.js";

const TICK = 200;
let ahead = Number(document.getElementById("clock")?.dataset.now ?? Date.now()) - Date.now();
let shortest = Infinity;
const asked = new WeakMap();

document.body.addEventListener("htmx:beforeSend", (event) => asked.set(event.detail.xhr, Date.now()));
document.body.addEventListener("htmx:afterRequest", ({ detail: { xhr } }) => {
	const time = Number(xhr?.getResponseHeader("Rink-Time"));
	const way = Date.now() - (asked.get(xhr) ?? NaN);
	if (time && way < shortest) {
		shortest = way;
		ahead = time + way / 2 - Date.now();
	}
	/* A page that stays open for hours forgets an exact answer slowly. */
	shortest += 1;
});

function show(dial) {
	const seconds = elapsed(Number(dial.dataset.since), Date.now() + ahead);
	const time = dial.querySelector(".time");
	if (time.textContent !== words(seconds)) {
		time.textContent = words(seconds);
		for (const word of dial.querySelectorAll(".words > [data-least]")) {
			word.hidden = !inside(seconds, word.dataset);
		}
		const figure = dial.querySelector(".outside");
		if (figure) {
			figure.textContent = outside(seconds, figure.dataset);
		}
	}
}

function tick() {
	document.querySelectorAll("#clock .dial[data-since]:not([data-since=''])").forEach(show);
}

/* Keys that write nothing, and never while something is being typed. */
const KEYS = { F8: "button[aria-keyshortcuts=F8]", F9: "summary[aria-keyshortcuts=F9]" };

function typing() {
	return document.activeElement?.matches("input:not([type=radio]), textarea, select, [contenteditable]");
}

document.addEventListener("keydown", (event) => {
	const target = KEYS[event.key] && document.querySelector("#clock " + KEYS[event.key]);
	if (target && !event.repeat && !event.ctrlKey && !event.altKey && !event.metaKey && !event.shiftKey && !typing()) {
		event.preventDefault();
		target.focus();
		target.click();
	}
});

function tellKeys() {
	document.querySelectorAll("#clock kbd").forEach((key) => (key.hidden = false));
}

document.addEventListener("click", (event) => {
	const opens = event.target.closest("[data-opens]");
	if (opens) {
		document.getElementById(opens.dataset.opens).open = true;
	}
});

/* A team may wait only while it is interrupted or about to skate again: the form is there with its link. */
function showWait() {
	const form = document.getElementById("let-wait");
	if (form) {
		form.hidden = !document.querySelector("#clock [data-opens=let-wait]");
	}
}

sendWithoutLeaving();

/* Whoever acts by keyboard stays at the clock, but never on the button that came in the place of the last. */
let within = false;
document.body.addEventListener("htmx:oobBeforeSwap", () => (within ||= Boolean(document.activeElement?.closest("#clock"))));

document.body.addEventListener("htmx:oobAfterSwap", () => {
	if (within && document.activeElement === document.body) {
		document.getElementById("clock")?.focus();
	}
	within = false;
	showWait();
	tellKeys();
	tick();
});
tellKeys();
tick();
setInterval(tick, TICK);
