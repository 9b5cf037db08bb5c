/*
 * Over TLS the browser keeps the card's page and its parts, so that a reload without network shows the card
 * (see worker.js). Without TLS no browser does, and the page says what not to do while there is no contact.
 */
const WORKER = "/js/card/worker.js";

/* Whether a reload without network would show the card. */
export function survivesReload() {
	return Boolean(navigator.serviceWorker?.controller);
}

export async function keepPage() {
	if (!navigator.serviceWorker) {
		return;
	}
	try {
		await navigator.serviceWorker.register(WORKER, { scope: "/judge/" });
		const { active } = await navigator.serviceWorker.ready;
		active.postMessage({ parts: parts() });
	}
	catch {
		// A certificate that the tablet does not trust, or a private window: as without TLS.
	}
}

/* The page and whatever it has loaded, but nothing that the service answers anew each time. */
function parts() {
	const loaded = performance.getEntriesByType("resource").map(({ name }) => new URL(name));
	return [location.pathname, ...loaded.filter(({ origin, pathname }) => origin === location.origin && !pathname.startsWith("/api/")).map(({ pathname }) => pathname)];
}
