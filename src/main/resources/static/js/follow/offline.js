/*
 * Browsers keep a page that says that there is no network (worker.js), over TLS only; a certificate that the device does not
 * trust is as none.
 */
const WORKER = "/js/follow/worker.js";

export function sayWithoutNetwork() {
	if (navigator.serviceWorker && window.location.pathname.startsWith("/follow/")) {
		navigator.serviceWorker.register(WORKER, { scope: "/follow/" }).catch(() => undefined);
	}
}
