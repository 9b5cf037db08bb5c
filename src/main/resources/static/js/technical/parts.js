/* The parts of the page that follow by themselves, each with the print of what it shows. */
const NAMES = ["ice", "plan", "called", "deducted"];

export const part = (id) => document.getElementById(id);

export function prints() {
	return NAMES.map((name) => [name, part(name)?.dataset.print ?? ""]);
}

/* Put newer parts in their places; the focus stays with what it was on. */
export function replace(html) {
	const focused = document.activeElement?.id;
	const fresh = new DOMParser().parseFromString(html, "text/html");
	for (const name of [...NAMES, "refused"]) {
		const newer = fresh.getElementById(name);
		if (newer) {
			part(name).replaceWith(document.importNode(newer, true));
		}
	}
	if (focused && document.activeElement?.id !== focused) {
		part(focused)?.focus();
	}
}

export const rows = () => Array.from(document.querySelectorAll("#called .row"));

/* The called list as the page shows it. */
export const called = () => ({ sequence: part("called").dataset.sequence, rows: rows().map((row) => row.dataset) });
