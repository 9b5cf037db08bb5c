/* What is touched on every card: sending, refusals, notices, the way to a card that was opened again. */
import { part } from "./page.js";

export function onFrame(card, send, refresh) {
	part("send").addEventListener("click", send);
	onButton("refusals", "id", (id) => card.putAway(id));
	onButton("remarks", "remark", (remark) => {
		card.see(remark);
		part("title").focus();
	});
	onButton("reopened", "performance", (performance) => card.turnTo(performance));

	function onButton(id, datum, act) {
		part(id).addEventListener("click", (event) => {
			const value = event.target.closest("button")?.dataset[datum];
			if (value) {
				act(value);
				refresh();
			}
		});
	}
}

/* Whether a key is meant for the card, and not for a dialog, the browser or a button that has its own use for it. */
export function isForCard(event, card) {
	const busy = event.ctrlKey || event.metaKey || event.altKey || document.querySelector("dialog[open]") || card.view() !== "marking";
	return !busy && !(event.key === "Enter" && document.activeElement.closest(".keys, .refusals, #remarks, #reopened, a, [data-own-enter]"));
}
