/*
 * Teams found while typing, and teams that this device follows. Without this script the form finds them, and
 * every team has its page.
 */
import { fold, followed, toggle } from "./follow/teams.js";

/* The list narrows with each letter; it is drawn anew whenever the page moves. */
const field = document.getElementById("find-name");

function narrow() {
	const typed = fold(field.value);
	document.querySelectorAll(".teams li").forEach((line) => {
		const names = [...line.querySelectorAll(".segment-name, .club")].map((name) => fold(name.textContent));
		line.hidden = !names.some((name) => name.includes(typed));
	});
}

/* A team's own page: one button. */
const button = document.getElementById("follow-team");

function say(isFollowed) {
	button.textContent = isFollowed ? button.dataset.leave : button.dataset.follow;
	button.setAttribute("aria-pressed", String(isFollowed));
}

/* The competition's page: a card for each team that is followed, taken from its own page. */
const shelf = document.getElementById("followed");

async function card(entry) {
	const address = new URL(shelf.dataset.cards, window.location.href);
	address.pathname += entry;
	address.searchParams.set("part", "live");
	const answer = await fetch(address);
	return answer.ok ? new DOMParser().parseFromString(await answer.text(), "text/html").querySelector(".team-card") : null;
}

async function lay() {
	try {
		const cards = await Promise.all(followed(shelf.dataset.competition).map(card));
		const there = cards.filter(Boolean).map((one) => document.adoptNode(one));
		shelf.replaceChildren(...there);
		shelf.hidden = there.length === 0;
	}
	catch {
		// The cards of before stay until the network is back.
	}
}

if (field) {
	field.addEventListener("input", narrow);
	document.addEventListener("exchanged", narrow);
}
if (button) {
	const { competition, entry } = button.dataset;
	button.hidden = false;
	say(followed(competition).includes(entry));
	button.addEventListener("click", () => say(toggle(competition, entry)));
}
if (shelf) {
	lay();
	document.addEventListener("exchanged", lay);
}
