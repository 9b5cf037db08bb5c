/*
 * What this browser saw of the record: anchors, each a line of text, with the time at which it was first seen
 * by the clock of this device. They lie in the browser's own storage, where no administrator of the service
 * can reach them. A browser that keeps nothing loses only this.
 */

const KEY = "rimebook.record";
const MOST = 1000;
const ANCHOR = /^line ([0-9]{1,18}) ([0-9a-f]{64})( .*)?$/;

/* Keep an anchor; one that is known keeps the time of its first sight. Tells whether it is new. */
export function keep(text, now = new Date(), storage = window.localStorage) {
	try {
		const kept = read(storage);
		if (!ANCHOR.test(text) || kept.some((one) => one.text === text)) {
			return false;
		}
		kept.push({ text, seen: now.toISOString() });
		storage.setItem(KEY, JSON.stringify(thinned(kept)));
		return true;
	}
	catch {
		return false;
	}
}

/* All that was kept, by the number of the line, as text that verify-record reads. */
export function lines(storage = window.localStorage) {
	return [...read(storage)].sort((a, b) => number(a) - number(b)).map(({ text, seen }) => text + " seen " + seen);
}

/*
 * The number of the line that was kept last, 0 for none. It may be smaller than others: a service that started
 * from a copy counts its lines anew from there.
 */
export function newest(storage = window.localStorage) {
	const last = read(storage).at(-1);
	return last ? number(last) : 0;
}

/* Whether two lines of one number differ. */
export function isContradicted(storage = window.localStorage) {
	const known = new Map();
	return read(storage).some(({ text }) => {
		const [, line, digest] = text.match(ANCHOR);
		const before = known.get(line);
		known.set(line, digest);
		return before !== undefined && before !== digest;
	});
}

function number({ text }) {
	return Number(text.match(ANCHOR)[1]);
}

/* What was seen early is as good a witness as what was seen late, so of the older half each second one goes. */
function thinned(kept) {
	return kept.length <= MOST ? kept : kept.filter((one, at) => at > kept.length / 2 || at % 2 === 0);
}

function read(storage) {
	try {
		const kept = JSON.parse(storage.getItem(KEY) ?? "[]");
		return Array.isArray(kept) ? kept.filter((one) => ANCHOR.test(one?.text)) : [];
	}
	catch {
		return [];
	}
}
