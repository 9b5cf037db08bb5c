/*
 * Notes of one's own, team by team, kept in this browser alone and sent nowhere. A browser that keeps nothing
 * loses them with the page.
 */

const KEY = "rimebook.notes.";
const LONGEST = 2000;

/* All notes of a competition: by entry what the team is called and what was written. */
export function notes(competition, storage = window.localStorage) {
	try {
		const kept = JSON.parse(storage.getItem(KEY + competition) ?? "{}");
		return kept && typeof kept === "object" && !Array.isArray(kept) ? kept : {};
	}
	catch {
		return {};
	}
}

/* Keep a note; an empty one is forgotten. Tells whether it is kept. */
export function write(competition, entry, team, text, storage = window.localStorage) {
	const all = notes(competition, storage);
	if (text.trim()) {
		all[entry] = { team, text: text.slice(0, LONGEST) };
	}
	else {
		delete all[entry];
	}
	try {
		storage.setItem(KEY + competition, JSON.stringify(all));
		return true;
	}
	catch {
		return false;
	}
}

export function erase(competition, storage = window.localStorage) {
	try {
		storage.removeItem(KEY + competition);
		return true;
	}
	catch {
		return false;
	}
}

/* The notes as a text that anybody can read. */
export function asText(competition, storage = window.localStorage) {
	return Object.values(notes(competition, storage))
		.map((note) => note.team + "\n" + note.text + "\n")
		.join("\n");
}
