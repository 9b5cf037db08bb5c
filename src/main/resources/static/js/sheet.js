/*
 * The announcer's sheet keeps itself in step. What is opened stays open and what is being read stays where it is.
 */
import { exchange, remember } from "./commentary/pieces.js";

const LOOK = 2000;
const PATIENCE = 8000;

let looking = false;

const nothing = () => undefined;

async function look() {
	if (looking) {
		return;
	}
	looking = true;
	const { part, seen } = document.getElementById("live").dataset;
	try {
		const answer = await fetch(part + "&seen=" + seen, { cache: "no-store", signal: AbortSignal.timeout(PATIENCE) });
		if (answer.status === 200) {
			show(await answer.text());
		}
		adrift(answer.status >= 500);
	}
	catch {
		adrift(true);
	}
	looking = false;
}

/* Whoever is signed out meanwhile is asked to sign in. */
function show(html) {
	if (!html.startsWith("<div id=\"live\"")) {
		window.location.reload();
		return;
	}
	const waits = exchange(html, nothing);
	if (!waits) {
		document.getElementById("live").dataset.seen = new DOMParser().parseFromString(html, "text/html").getElementById("live").dataset.seen;
	}
}

function adrift(gone) {
	document.getElementById("adrift").hidden = !gone;
}

remember();
window.setInterval(look, LOOK);
