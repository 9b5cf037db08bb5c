/* Whole seconds, as a clock shows them: what has begun but is not full does not count. */

export function elapsed(since, now) {
	return Math.max(0, Math.floor((now - since) / 1000));
}

export function words(seconds) {
	return Math.floor(seconds / 60) + ":" + String(seconds % 60).padStart(2, "0");
}

export function inside(seconds, { least, most }) {
	return seconds >= Number(least) && (most === undefined || seconds <= Number(most));
}

/* How far a running time is outside, in the words of the page; empty inside. */
export function outside(seconds, { least, most, toGo, over }) {
	if (seconds > Number(most)) {
		return over.replace("#", words(seconds - Number(most)));
	}
	return seconds < Number(least) ? toGo.replace("#", words(Number(least) - seconds)) : "";
}
