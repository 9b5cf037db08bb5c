/*
 * Says in the house's own words that there is no network. It keeps one page for that and its look, and never a standing:
 * what cannot be fetched is not shown, so nothing old can be taken for new. Pages of the crew and of tablets are out
 * of its reach. It imports nothing, since not every browser lets a worker of this kind do so.
 */
const KEPT = "rimebook-offline";
const SPOKEN = /^[a-z]{2,3}$/;
/* What the page's scripts import, which its text does not say. */
const IMPORTED = ["/js/follow/offline.js"];

const page = (language) => "/offline?lang=" + language;
const wanted = () => [...new Set(["en", ...navigator.languages.map((language) => language.slice(0, 2))])].slice(0, 4);

self.addEventListener("install", (event) => event.waitUntil(keep().then(() => self.skipWaiting())));
self.addEventListener("activate", (event) => event.waitUntil(self.clients.claim()));
self.addEventListener("fetch", (event) => {
	const { request } = event;
	const { origin, pathname } = new URL(request.url);
	if (request.method === "GET" && request.mode === "navigate") {
		event.respondWith(fetch(request).catch(() => without(request)));
	}
	else if (origin === self.location.origin && /^\/(css|img|js)\//.test(pathname)) {
		event.respondWith(fetch(request).catch(() => kept(pathname)));
	}
});

async function keep() {
	const shelf = await caches.open(KEPT);
	await Promise.all((await shelf.keys()).map((old) => shelf.delete(old)));
	for (const language of wanted()) {
		const answer = await fetch(page(language));
		const text = await answer.clone().text();
		await shelf.put(page(language), answer);
		const looks = [...text.matchAll(/(?:href|src)="(\/(?:css|img|js)\/[^"]+)"/g)].map(([, look]) => look);
		await Promise.all([...new Set([...looks, ...IMPORTED])].map((look) => shelf.add(look).catch(() => undefined)));
	}
}

async function without(request) {
	const asked = new URL(request.url).searchParams.get("lang") ?? navigator.language.slice(0, 2);
	const shelf = await caches.open(KEPT);
	return (SPOKEN.test(asked) && await shelf.match(page(asked))) || await shelf.match(page("en")) || Response.error();
}

async function kept(path) {
	const shelf = await caches.open(KEPT);
	return await shelf.match(path) ?? Response.error();
}
