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

/* How far a time is outside; empty inside. */
export function outside(seconds, { least, most }) {
	if (seconds > Number(most)) {
		return words(seconds - Number(most));
	}
	return seconds < Number(least) ? words(Number(least) - seconds) : "";
}
