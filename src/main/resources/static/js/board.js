/*
 * A big screen that nobody sits at: shows its sheets in turn, counts towards the estimate, keeps the screen awake, and steps
 * through a ceremony with the keys of a presenter. Without this script the first sheet stays and links step on.
 */
import { sayWithoutNetwork } from "./follow/offline.js";

const TURN = 12_000;
const MINUTE = 60_000;
const relative = new Intl.RelativeTimeFormat(document.documentElement.lang, { numeric: "always" });

/* By the clock alone, so that what is exchanged meanwhile goes on where it was, and two screens show the same. */
function turn() {
	document.querySelectorAll(".turns").forEach((block) => {
		const sheets = [...block.querySelectorAll(".turn")];
		const shown = Math.floor(Date.now() / TURN) % Math.max(1, sheets.length);
		sheets.forEach((sheet, at) => (sheet.hidden = at !== shown));
	});
	document.querySelectorAll("[data-until]").forEach((count) => {
		const minutes = Math.ceil((Date.parse(count.dataset.until) - Date.now()) / MINUTE);
		count.hidden = !(minutes > 0);
		count.textContent = minutes > 0 ? relative.format(minutes, "minute") : "";
	});
}

const KEYS = { ArrowRight: "next", PageDown: "next", " ": "next", ArrowLeft: "prev", PageUp: "prev" };

document.addEventListener("keydown", (event) => {
	const link = KEYS[event.key] && document.querySelector(`a[rel="${KEYS[event.key]}"]`);
	if (link) {
		event.preventDefault();
		link.click();
	}
});

/* Where the device allows it, and again after it was looked away from. */
async function stayAwake() {
	try {
		await navigator.wakeLock?.request("screen");
	}
	catch {
		// The device decides.
	}
}

turn();
window.setInterval(turn, 1000);
document.addEventListener("exchanged", turn);
document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && stayAwake());
stayAwake();
sayWithoutNetwork();
