/*
 * The teams that somebody follows, kept in this browser alone, competition by competition. A browser that keeps
 * nothing loses only this.
 */

const KEY = "rimebook.teams.";
const MOST = 20;
const ENTRY = /^[0-9a-f-]{36}$/;

/* The entries that are followed, in the order in which they were chosen. */
export function followed(competition, storage = window.localStorage) {
	try {
		const kept = JSON.parse(storage.getItem(KEY + competition) ?? "[]");
		return Array.isArray(kept) ? kept.filter((entry) => ENTRY.test(entry)).slice(0, MOST) : [];
	}
	catch {
		return [];
	}
}

/* Follow a team, or no longer; tells whether it is followed now. */
export function toggle(competition, entry, storage = window.localStorage) {
	const before = followed(competition, storage);
	const after = before.includes(entry) ? before.filter((one) => one !== entry) : [...before, entry].slice(-MOST);
	try {
		storage.setItem(KEY + competition, JSON.stringify(after));
	}
	catch {
		return before.includes(entry);
	}
	return after.includes(entry);
}

/* A name as people type it who are in a hurry; the server folds it the same way. */
export function fold(name) {
	return name.normalize("NFKD").toLowerCase().replaceAll("ø", "o").replaceAll("æ", "ae").replaceAll("ß", "ss").replace(/[^a-z0-9]/g, "");
}
