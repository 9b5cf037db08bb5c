/*
 * What goes wrong on this page may stop neither the looking nor the sending nor the typing. It is shown in
 * a line of its own in place of "In contact", and the next look tells the service. A part that is drawn
 * again without a fault is whole again; what went wrong anywhere else stays until the page is reloaded.
 */
const faults = new Map();

/* Do one thing and let the rest go on whatever comes of it. Tells whether it went well. */
export function attempt(name, act) {
	try {
		act();
		faults.delete(name);
	}
	catch (fault) {
		note(name, fault);
	}
	mark();
	return !faults.has(name);
}

export function hasFault() {
	return faults.size > 0;
}

/* Each fault is written once, though its part is tried again with every look. */
export function note(name, fault) {
	if (faults.get(name) !== String(fault)) {
		faults.set(name, String(fault));
		console.error(name, fault);
	}
	mark();
}

function mark() {
	document.querySelector(".card").toggleAttribute("data-fault", hasFault());
	const line = document.getElementById("fault");
	if (line && line.hidden === hasFault()) {
		line.hidden = !hasFault();
	}
}

window.addEventListener("error", ({ error, message }) => note("page", error ?? message));
window.addEventListener("unhandledrejection", ({ reason }) => note("page", reason));
