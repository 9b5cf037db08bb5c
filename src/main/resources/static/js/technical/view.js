/* Draws what is in hand at the desk: the chosen element, what can be done to it, what a code that is typed is for. */
import { part, rows } from "./parts.js";

export function named({ number, code }) {
	return number + " " + code;
}

export function drawDesk(state) {
	drawRows(state.row);
	drawTools(state);
	drawMode(state);
	drawOnward();
}

/* Nothing is read back while nobody is on the ice. */
function drawOnward() {
	const onward = part("onward");
	if (onward) {
		onward.hidden = !part("ice").dataset.performance;
	}
}

function drawRows(chosen) {
	for (const row of rows()) {
		const isChosen = row.dataset.id === chosen?.id;
		row.tabIndex = isChosen ? 0 : -1;
		if (isChosen) {
			row.setAttribute("aria-current", "true");
		}
		else {
			row.removeAttribute("aria-current");
		}
	}
}

function drawTools(state) {
	const title = part("chosen");
	if (title) {
		title.textContent = state.row ? title.dataset.word.replace("{0}", named(state.row)) : title.dataset.none;
		for (const button of document.querySelectorAll(".tools [data-act]")) {
			button.disabled = !state.isPossible(button.dataset.act, button.dataset.value);
		}
	}
}

function drawMode({ mode, row }) {
	const words = part("find-mode");
	if (words) {
		words.textContent = words.dataset[mode].replace("{0}", row ? named(row) : "");
		part("find-leave").hidden = mode === "call";
		part("find").classList.toggle("turned", mode !== "call");
	}
}

/* What a button does, as the page says it should the act be refused. */
export function spoken(button, row) {
	const words = Array.from(button.children).filter((child) => child.tagName !== "KBD").map((child) => child.textContent.trim()).join(" ");
	return row && button.closest(".tools") && button.dataset.act !== "UNDO" ? named(row) + ": " + words : words;
}
