/*
 * Looks at the service again and again. A look only updates the table, so it can never disturb what is
 * being typed; without an answer the looks become rarer, and with the first answer what waits goes out.
 */
import { fetchTable } from "./service.js";

const LONGEST_WAIT = 15000;

export function keepLooking(card, outbox, every, refresh) {
	let failures = 0;
	let looking = false;
	let timer;

	async function look() {
		clearTimeout(timer);
		if (!looking) {
			looking = true;
			learn(await fetchTable(outbox.waitingCards().length));
			looking = false;
		}
		timer = setTimeout(look, Math.min(every() * 2 ** Math.min(failures, 5), LONGEST_WAIT));
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

	document.addEventListener("visibilitychange", () => document.hidden || look());
	window.addEventListener("online", look);
	window.addEventListener("storage", refresh);
	look();
	outbox.flush();
}
