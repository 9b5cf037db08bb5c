/*
 * Exchanges the pieces of the page that say something else than before, and no others. What was opened stays
 * open, focus stays where it was, what is being read stays where it is on the screen. A piece in which somebody
 * writes or selects waits.
 */

const live = () => document.getElementById("live");
const pieces = (root) => [...root.querySelectorAll("[data-piece]")];

/* What each piece said when it came: the page itself changes it, by opening and by notes. */
const said = new Map();

export function remember() {
	pieces(live()).forEach((piece) => said.set(piece.id, piece.cloneNode(true)));
}

/*
 * Put newer pieces in their places; prepare is given each before it is shown. Tells whether one of them waits.
 */
export function exchange(html, prepare) {
	const fresh = new DOMParser().parseFromString(html, "text/html").getElementById("live");
	if (!fresh) {
		return false;
	}
	const read = beingRead();
	const waits = pieces(fresh).filter((piece) => place(piece, prepare)).length > 0;
	const gone = pieces(live()).filter((piece) => !fresh.querySelector("#" + CSS.escape(piece.id)));
	gone.filter((piece) => !isBusy(piece)).forEach((piece) => {
		said.delete(piece.id);
		piece.remove();
	});
	inOrder(fresh);
	keepInView(read);
	live().dataset.heard = fresh.dataset.heard;
	return waits || gone.some(isBusy);
}

/* Tells whether it has to wait. */
function place(fresh, prepare) {
	const shown = document.getElementById(fresh.id);
	if (shown && said.get(fresh.id)?.isEqualNode(fresh)) {
		return false;
	}
	if (shown && isBusy(shown)) {
		return true;
	}
	said.set(fresh.id, fresh.cloneNode(true));
	const piece = document.importNode(fresh, true);
	if (!shown) {
		prepare(piece);
		live().append(piece);
		return false;
	}
	const focused = shown.contains(document.activeElement) ? pathTo(document.activeElement) : null;
	shown.querySelectorAll("details[open][id]").forEach((opened) => piece.querySelector("#" + CSS.escape(opened.id))?.setAttribute("open", ""));
	prepare(piece);
	shown.replaceWith(piece);
	(focused ? piece.querySelector(focused) : null)?.focus({ preventScroll: true });
	return false;
}

/* Only what stands elsewhere is moved, since moving a thing takes the focus from it. */
function inOrder(fresh) {
	let before = null;
	for (const { id } of pieces(fresh)) {
		const piece = document.getElementById(id);
		const should = before ? before.nextElementSibling : live().firstElementChild;
		if (piece && piece !== should && !isBusy(piece)) {
			live().insertBefore(piece, should);
		}
		before = piece ?? before;
	}
}

function isBusy(piece) {
	const selection = window.getSelection();
	return document.activeElement?.tagName === "TEXTAREA" && piece.contains(document.activeElement) || !selection.isCollapsed && piece.contains(selection.anchorNode);
}

function pathTo(element) {
	const details = element.closest("summary")?.parentElement;
	if (details?.id) {
		return "#" + CSS.escape(details.id) + " > summary";
	}
	return element.getAttribute("href") ? 'a[href="' + CSS.escape(element.getAttribute("href")) + '"]' : null;
}

/*
 * What is in sight, the likeliest to be read first: what has the focus, then what is nearest to the middle. At the
 * top of the page, with nothing opened, the page itself is what is looked at.
 */
function beingRead() {
	const inSight = [...live().querySelectorAll("[id]")].filter((element) => element.getBoundingClientRect().bottom > 0 && element.getBoundingClientRect().top < window.innerHeight);
	const focused = document.activeElement?.closest("#live [id]");
	if (window.scrollY === 0 && !focused && !inSight.some((element) => element.matches("details[open]"))) {
		return [];
	}
	return inSight
		.map((element) => ({ id: element.id, top: element.getBoundingClientRect().top, away: element === focused ? -1 : away(element) }))
		.sort((one, other) => one.away - other.away);
}

function away(element) {
	const box = element.getBoundingClientRect();
	return Math.abs((box.top + box.bottom) / 2 - window.innerHeight / 2);
}

/* Teams come and go with their places, so the first that is still there is held fast. */
function keepInView(read) {
	const still = read.find(({ id }) => document.getElementById(id));
	if (still) {
		window.scrollBy({ top: document.getElementById(still.id).getBoundingClientRect().top - still.top, behavior: "instant" });
	}
}
