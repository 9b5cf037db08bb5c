/*
 * The commentator's page. A link brings its token behind the hash sign, which goes to the service once, in a form.
 * The page then keeps itself in step, piece by piece, and keeps what is written about teams on this device.
 */
import { keepContact } from "./follow/contact.js";
import { exchange, remember } from "./commentary/pieces.js";
import { asText, erase, notes, write } from "./commentary/notes.js";

const LOOK = 3000; // What the referee releases tells nobody; so the page asks.

const main = document.getElementById("content");
const competition = main.dataset.notes;

function open() {
	const token = window.location.hash.slice(1);
	window.history.replaceState(null, "", window.location.pathname + window.location.search);
	document.getElementById("token").value = token;
	document.getElementById("open").submit();
}

/* A link that is opened while the page shows another one's. */
function reopen() {
	const form = document.querySelector("form.leave");
	const token = document.createElement("input");
	token.type = "hidden";
	token.name = "token";
	token.value = window.location.hash.slice(1);
	window.history.replaceState(null, "", window.location.pathname + window.location.search);
	form.action = form.action.replace(/\/leave(\?|$)/, "$1");
	form.append(token);
	form.submit();
}

/* Every field of a team holds the same note. */
function fill(root) {
	const kept = notes(competition);
	root.querySelectorAll("[data-note]").forEach((field) => {
		field.closest(".note").hidden = false;
		if (field !== document.activeElement) {
			field.value = kept[field.dataset.note]?.text ?? "";
		}
	});
}

function keep(field) {
	write(competition, field.dataset.note, field.dataset.team, field.value);
	document.querySelectorAll('[data-note="' + CSS.escape(field.dataset.note) + '"]').forEach((other) => other === field || (other.value = field.value));
}

let tag = null;
let looking = false;
let again = false;

async function look() {
	if (looking) {
		again = true;
		return;
	}
	looking = true;
	try {
		const answer = await fetch(main.dataset.part, { cache: "no-store", headers: tag ? { "If-None-Match": tag } : {} });
		if (answer.status === 410 || answer.status === 404) {
			window.location.reload();
		}
		else if (answer.status === 200) {
			show(await answer.text(), answer.headers.get("ETag"));
		}
	}
	catch {
		// The contact says so.
	}
	looking = false;
	if (again) {
		again = false;
		look();
	}
}

function show(html, newest) {
	if (!html.startsWith("<div id=\"live\"")) {
		window.location.reload();
		return;
	}
	const before = document.getElementById("live").dataset.heard;
	const waits = exchange(html, fill);
	document.getElementById("held").hidden = !waits;
	tag = waits ? null : newest;
	const heard = document.getElementById("live").dataset.heard;
	if (heard !== before) {
		document.getElementById("heard").textContent = heard;
	}
}

function follow() {
	remember();
	fill(document);
	document.addEventListener("input", (event) => event.target.dataset?.note && keep(event.target));
	document.addEventListener("focusout", (event) => event.target.dataset?.note && window.setTimeout(look, 0));
	window.addEventListener("storage", () => fill(document));
	document.getElementById("c-notes-acts").hidden = false;
	document.getElementById("c-notes-export").addEventListener("click", save);
	document.getElementById("c-notes-erase").addEventListener("click", (event) => sure(event.currentTarget));
	let within = 0;
	keepContact({
		signals: main.dataset.signals,
		moments: main.dataset.signals.replace(/signals$/, "moments"),
		quiet: 35000,
		moved: () => window.setTimeout(look, Math.min(within, 500) * Math.random()),
		adrift: (gone) => document.getElementById("adrift").toggleAttribute("hidden", !gone),
		alive: (milliseconds) => (within = milliseconds),
		silent: look,
	});
	window.setInterval(() => document.hidden || look(), LOOK);
}

function save() {
	const link = document.createElement("a");
	link.href = URL.createObjectURL(new Blob([asText(competition)], { type: "text/plain;charset=utf-8" }));
	link.download = "notes-" + competition + ".txt";
	link.click();
	URL.revokeObjectURL(link.href);
}

/* Asked once, since nobody can bring notes back. */
function sure(button) {
	if (!button.dataset.asked) {
		button.dataset.asked = button.textContent;
		button.textContent = button.dataset.sure;
		return;
	}
	button.textContent = button.dataset.asked;
	delete button.dataset.asked;
	erase(competition);
	fill(document);
	document.getElementById("c-notes-said").textContent = button.dataset.erased;
}

const isOpening = document.getElementById("open");
if (window.location.hash.length > 40) {
	(isOpening ? open : reopen)();
}
else if (!isOpening) {
	follow();
}
window.addEventListener("hashchange", () => window.location.hash.length > 40 && (isOpening ? open : reopen)());
