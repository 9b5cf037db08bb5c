/*
 * Serves the judge's card where there is no network: the page and its parts as they were when there was one.
 * The network comes first, so that a new version of the service is seen at once; what it does not answer in
 * time is taken from what is kept. Nothing below /api ever is: cards, and what is on the ice, are never old.
 * It imports nothing, since not every browser lets a worker of this kind do so.
 */
const KEPT = "rimebook-card";
const PATIENCE = 4000;
const PART = /^\/(judge\/card$|js\/|css\/|img\/|webjars\/)/;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("message", (event) => event.waitUntil(keep(event.data.parts)));
self.addEventListener("fetch", (event) => {
	const { origin, pathname } = new URL(event.request.url);
	if (event.request.method === "GET" && origin === self.location.origin && PART.test(pathname)) {
		event.respondWith(freshOrKept(event.request, pathname));
	}
});

/* Keep these, and nothing of earlier versions of the page. */
async function keep(parts) {
	const wanted = parts.filter((part) => PART.test(part));
	const kept = await caches.open(KEPT);
	await Promise.all(wanted.map((part) => fresh(new Request(part), part).catch(() => undefined)));
	for (const { url } of await kept.keys()) {
		if (!wanted.includes(new URL(url).pathname)) {
			await kept.delete(url);
		}
	}
}

async function freshOrKept(request, path) {
	try {
		return await Promise.race([fresh(request, path), late()]);
	}
	catch {
		const kept = await caches.open(KEPT);
		return await kept.match(path) ?? fetch(request);
	}
}

/* Only the page itself is kept, not where a seat that was lost is led to. */
async function fresh(request, path) {
	const answer = await fetch(request);
	if (answer.ok && !answer.redirected && answer.type === "basic") {
		const kept = await caches.open(KEPT);
		await kept.put(path, answer.clone());
	}
	return answer;
}

function late() {
	return new Promise((resolve, reject) => setTimeout(() => reject(new Error("no answer")), PATIENCE));
}
