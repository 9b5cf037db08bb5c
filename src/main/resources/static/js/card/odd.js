/*
 * Odd marks are asked about once, then believed. What is odd each kind of card says from the judge's own marks
 * alone, as { key, word, said }: word and said for the sentence, key so that it is not asked again.
 */
import { element, fill, part, word } from "./page.js";

export function sendOrAsk(card, odd) {
	const asked = card.typed.asked ?? [];
	const open = odd.filter(({ key }) => !asked.includes(key));
	if (open.length === 0) {
		card.send();
		return;
	}
	card.type({ ...card.typed, asked: [...asked, ...open.map(({ key }) => key)] });
	fill(part("odd-marks"), open.map(({ word: name, said }) => word(name, ...said)), (sentence) => element("li", "", sentence));
	part("odd").dataset.performance = card.turned;
	part("odd").returnValue = "";
	part("odd").showModal();
}

/* The team may have changed while the question stood. */
export function onOdd(card) {
	part("odd").addEventListener("close", () => {
		if (part("odd").returnValue === "send" && part("odd").dataset.performance === card.turned && card.isSendable()) {
			card.send();
		}
	});
}
