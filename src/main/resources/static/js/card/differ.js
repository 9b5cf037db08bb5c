/*
 * Two versions of one card, side by side: this tablet's, which was refused, and the one that was received.
 * rows(card, both) gives { name, mine, received } line by line.
 */
import { clock, element, fill, part, say, word } from "./page.js";

export function drawDiffering(card, zone, rows) {
	const both = card.view() === "marking" || card.view() === "waiting" ? card.differing() : undefined;
	const dialog = part("differ");
	if (both) {
		say(part("differ-title"), word("differ-title", both.startNumber, both.team));
		say(part("differ-received"), word("differ-received", clock(both.received.receivedAt, zone)));
		fill(part("differ-rows"), rows(card, both), row);
	}
	if (Boolean(both) !== dialog.open) {
		open(dialog, both);
	}
}

function open(dialog, both) {
	if (both) {
		dialog.showModal();
		part("differ-title").focus();
	}
	else {
		dialog.close();
	}
}

function row({ name, mine, received }) {
	const made = element("tr", mine === received ? "" : "other", "");
	const head = element("th", "", name);
	head.scope = "row";
	made.append(head, element("td", "", mine), element("td", "", received));
	return made;
}

/* No choice is made by a key that was meant for the card. */
export function onDiffering(card, refresh) {
	part("differ").addEventListener("cancel", (event) => event.preventDefault());
	part("differ").addEventListener("click", (event) => {
		const choice = event.target.closest("button")?.dataset.choice;
		if (choice) {
			if (choice === "mine") {
				card.chooseMine();
			}
			else {
				card.chooseReceived();
			}
			refresh();
		}
	});
}
