/* Keeps a public page in step: what moved is fetched under an address that no cache has. Without it the page reloads. */
import { keepContact } from "./follow/contact.js";
import { keep } from "./record/kept.js";

const calm = window.matchMedia("(prefers-reduced-motion: reduce)");
const known = {};
let tries = 0;
let within = 0;
let anew = "";
let whole = false;
let asking = false;
let wanted = false;

const PATIENCE = 15000; // Of one fetch; what does not come is asked for again.

const following = document.getElementById("following");
const live = () => document.getElementById("live");
const own = live().dataset.part;
const seen = () => JSON.parse(live().dataset.seen);
const isBehind = () => Object.entries(seen()).some(([id, moment]) => known[id] !== undefined && known[id] !== moment);

function fetchAgain(delay) {
	window.setTimeout(() => isBehind() && refetch(), delay);
}

function moved(signal) {
	known[signal.id] = signal.moment;
	if (isBehind()) {
		tries = 0;
		fetchAgain(within * Math.random());
	}
}

function address() {
	const moments = Object.keys(seen()).map((id) => known[id] ?? 0).join(".");
	const { tag } = live().dataset;
	return own + (tag && !whole ? "&since=" + tag : "") + "&moment=" + encodeURIComponent(moments + (tries ? "-" + tries : "") + anew);
}

/* Only one at a time: what moves meanwhile is asked for when that has come. */
async function refetch() {
	if (asking) {
		wanted = true;
		return;
	}
	asking = true;
	const part = await ask();
	asking = false;
	if (part) {
		show(part);
	}
	else {
		fetchLater();
	}
	if (wanted) {
		wanted = false;
		refetch();
	}
}

const fetchLater = () => fetchAgain(3000 + 2000 * Math.random());

/* After a fault all of it is fetched. */
function show(part) {
	try {
		exchange(part);
	}
	catch (fault) {
		whole = true;
		fetchLater();
		reportError(fault);
	}
}

/* Nothing runs in a document that is only parsed. */
const parsed = (html) => new DOMParser().parseFromString(html, "text/html").getElementById("live");

/* With the word that something moved comes what differs, for a page that is neither behind nor asking. */
function told(html) {
	const part = parsed(html);
	if (!asking && part?.dataset.since === live().dataset.tag) {
		show(part);
	}
}

/* The part as it is now, or how it differs; null where it did not come. */
async function ask() {
	try {
		const answer = await fetch(address(), { signal: AbortSignal.timeout(Number(following.dataset.patience ?? PATIENCE)) });
		return answer.ok ? parsed(await answer.text()) : null;
	}
	catch {
		return null;
	}
}

/* What the page shows of the record is kept in this browser, as a witness. */
const witness = () => live().querySelectorAll("[data-anchor]").forEach((line) => keep(line.dataset.anchor));
witness();

/*
 * What the reader opened stays open, focus stays where it was, what is being read stays where it is on the
 * screen, and a row that moved is seen to move. While something is selected nothing is exchanged at all.
 */
function exchange(part) {
	if (isSelecting()) {
		held(true);
		return;
	}
	const now = document.importNode(part, true);
	const moves = takeOver(now);
	whole = !moves;
	if (whole) {
		refetch();
		return;
	}
	const before = {
		read: rowInView(),
		open: [...live().querySelectorAll("details[open]")].map((details) => details.id),
		focus: focusPath(document.activeElement),
		word: live().querySelector("[popover]:popover-open")?.id,
		tops: new Map([...live().querySelectorAll("tbody[id]")].map((row) => [row.id, row.getBoundingClientRect().top])),
		heard: live().dataset.heard,
		title: live().dataset.title,
	};
	moves.forEach((take) => take());
	live().replaceWith(now);
	witness();
	before.open.forEach((id) => document.getElementById(id)?.setAttribute("open", ""));
	if (before.word) {
		document.getElementById(before.word)?.showPopover();
	}
	before.focus?.()?.focus({ preventScroll: true });
	keepInView(before.read);
	move(before.tops);
	if (live().dataset.heard && live().dataset.heard !== before.heard) {
		document.getElementById("heard").textContent = live().dataset.heard;
	}
	if (before.title && live().dataset.title) {
		document.title = document.title.replace(before.title, () => live().dataset.title);
	}
	document.dispatchEvent(new Event("exchanged"));
	if (isBehind() && tries < 20) {
		tries++;
		fetchAgain(1000);
	}
}

/*
 * What is not sent again is taken from what is shown: rows, what a row opens, and of a line in it the first cells.
 * Nothing is touched unless all of it is there.
 */
function takeOver(now) {
	const moves = [];
	if (now.dataset.since !== undefined && now.dataset.since !== live().dataset.tag) {
		return null;
	}
	for (const gap of now.querySelectorAll("[data-kept]")) {
		const cells = Number(gap.dataset.kept);
		const place = cells ? gap.closest("details") : gap;
		const shown = live().querySelector("#" + CSS.escape(place.id));
		const line = cells && shown ? shown.querySelectorAll("tr")[[...place.querySelectorAll("tr")].indexOf(gap)] : shown;
		if (!line || line.children.length < cells) {
			return null;
		}
		moves.push(() => {
			gap.removeAttribute("data-kept");
			return cells ? gap.prepend(...[...line.children].slice(0, cells)) : gap.replaceWith(line);
		});
	}
	return moves;
}

const held = (isHeld) => document.getElementById("held").toggleAttribute("hidden", !isHeld);

function isSelecting() {
	const selection = window.getSelection();
	return !selection.isCollapsed && live().contains(selection.anchorNode);
}

document.addEventListener("selectionchange", () => {
	if (!document.getElementById("held").hidden && !isSelecting()) {
		held(false);
		fetchAgain(0);
	}
});

/* The row that is being read: opened and in sight, or with the focus, or the first in sight after scrolling. */
function rowInView() {
	const rows = [...live().querySelectorAll("tbody[id]")].filter((row) => row.getBoundingClientRect().bottom > 0 && row.getBoundingClientRect().top < window.innerHeight);
	const row = rows.find((each) => each.querySelector("details[open]")) ?? rows.find((each) => each.contains(document.activeElement)) ?? (window.scrollY > 0 ? rows[0] : undefined);
	return row && { id: row.id, top: row.getBoundingClientRect().top };
}

function keepInView(read) {
	const row = read && document.getElementById(read.id);
	if (row) {
		window.scrollBy({ top: row.getBoundingClientRect().top - read.top, behavior: "instant" });
	}
}

function focusPath(element) {
	if (!element || !live().contains(element)) {
		return null;
	}
	const details = element.closest("details[id]");
	if (details) {
		return () => document.getElementById(details.id)?.querySelector("summary");
	}
	const href = element.getAttribute("href");
	return href ? () => live().querySelector('a[href="' + CSS.escape(href) + '"]') : null;
}

function move(tops) {
	if (calm.matches) {
		return;
	}
	live().querySelectorAll("tbody[id]").forEach((row) => {
		const top = tops.get(row.id);
		const by = top === undefined ? 0 : top - row.getBoundingClientRect().top;
		if (by) {
			row.animate([{ transform: "translateY(" + by + "px)" }, { transform: "none" }], { duration: 280, easing: "ease-out" });
		}
		else if (top === undefined) {
			row.animate([{ opacity: 0 }, { opacity: 1 }], { duration: 280 });
		}
	});
}

/* Say so when the connection is gone, and no longer than it is. */
const adrift = (gone) => document.getElementById("adrift").toggleAttribute("hidden", !gone);
keepContact({
	signals: following.dataset.signals + own.replace(/^([^?]*)\?part=live/, (_, page) => "?page=" + encodeURIComponent(page)),
	moments: following.dataset.signals.replace(/signals$/, "moments"),
	quiet: Number(following.dataset.quiet),
	part: told,
	moved,
	adrift,
	alive: (milliseconds) => (within = milliseconds),
	silent: () => {
		anew = "~" + Date.now();
		refetch();
	},
});
