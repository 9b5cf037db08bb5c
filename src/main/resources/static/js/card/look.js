/*
 * Looks at the service again and again. A look only updates the table, so it can never disturb what is
 * being typed; without an answer the looks become rarer, and with the first answer what waits goes out.
 * Nothing that goes wrong with an answer or while drawing it ends the looking. "In contact" is said for
 * as long as the last answer is fresh.
 */
import { attempt, hasFault } from "./fault.js";
import { keep, newest } from "../record/kept.js";
import { fetchTable, tellAgain } from "./service.js";

/* A service that was away is found again before a referee has called the next team. */
const LONGEST_WAIT = 5000;
const FRESH = 5000;
const CHECK_EVERY = 500;
const WITNESS_EVERY = 20000;

export function keepLooking(card, outbox, every, refresh) {
	let failures = 0;
	let looking = false;
	let heardAt = Date.now();
	let timer;
	let witnessedAt = 0;
	let witnessed = 0;

	async function look() {
		clearTimeout(timer);
		if (!looking) {
			looking = true;
			let known = new Set();
			let waiting = 0;
			attempt("outbox", () => {
				known = outbox.receivedIds();
				waiting = outbox.waitingCards().length;
			});
			const answer = await fetchTable(waiting, hasFault(), witnessed);
			looking = false;
			hear(answer.outcome);
			attempt("table", () => (answer.table ? card.hear(answer.table, known, answer.lives) : answer.outcome === "unreachable" && card.recall()));
			attempt("drawing", refresh);
			attempt("record", () => answer.table && witness(answer.table.record));
		}
		timer = setTimeout(look, wait());
	}

	/* This tablet keeps where the record ended, now and then, and says so. */
	function witness(record) {
		if (record && Math.abs(Date.now() - witnessedAt) >= WITNESS_EVERY) {
			witnessedAt = Date.now();
			keep(record);
			witnessed = newest();
		}
	}

	function wait() {
		let shortest = LONGEST_WAIT;
		attempt("waiting", () => (shortest = every()));
		return Math.min(shortest * 2 ** Math.min(failures, 5), LONGEST_WAIT);
	}

	function hear(outcome) {
		if (outcome === "table") {
			heardAt = Date.now();
			card.contact = "good";
			if (failures > 0) {
				tellAgain();
				outbox.flush();
			}
		}
		else if (outcome === "seat-lost") {
			card.contact = "seat-lost";
		}
		else if (failures > 0) {
			card.contact = "none";
		}
		failures = outcome === "table" ? 0 : failures + 1;
	}

	/* A clock that was set back says nothing of how old the answer is. */
	function check() {
		const age = Date.now() - heardAt;
		if (card.contact === "good" && (age > FRESH || age < 0)) {
			card.contact = "none";
			attempt("drawing", refresh);
		}
	}

	setInterval(check, CHECK_EVERY);
	document.addEventListener("visibilitychange", () => {
		check();
		if (!document.hidden) {
			look();
		}
	});
	window.addEventListener("online", look);
	card.shelf.onChange = () => attempt("drawing", refresh);
	look();
	outbox.flush();
}
