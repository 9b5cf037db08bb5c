/* The judge's own cards of earlier teams of the segment, to be looked up; kept on the tablet for a look without contact. */
import { fetchOwnCards } from "../card/service.js";
import { element, fill, part, show } from "../card/page.js";
import { fromNumber, signed } from "./marks.js";

export async function fetchEarlier(card, refresh) {
	const cards = await fetchOwnCards();
	if (cards) {
		card.shelf.write("earlier", cards);
		refresh();
	}
}

export function drawEarlier(card) {
	const cards = card.shelf.read("earlier", []).filter((own) => !card.isOpen(own.performance));
	show(part("earlier-none"), cards.length === 0);
	fill(part("earlier-cards"), cards, drawCard);
	show(part("earlier-open"), ["marking", "waiting"].includes(card.view()));
}

function drawCard({ startNumber, team, elements, components }) {
	const made = element("li", "", "");
	const name = element("h3", "", " " + team);
	name.prepend(element("span", "own-number", startNumber));
	made.append(name, figures(elements.map(({ number, code, grade }) => [number + " " + code, grade === null ? "–" : signed(grade)])),
		figures(Object.entries(components).map(([component, mark]) => [component, fromNumber(mark)])));
	return made;
}

function figures(pairs) {
	const list = element("dl", "figures", "");
	for (const [name, value] of pairs) {
		const pair = element("div", "", "");
		pair.append(element("dt", "", name), " ", element("dd", "", value));
		list.append(pair);
	}
	return list;
}

export function onEarlier(card, refresh) {
	part("earlier-open").addEventListener("click", () => {
		fetchEarlier(card, refresh);
		part("earlier").showModal();
	});
}
