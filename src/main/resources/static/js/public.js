/*
 * What a public page can do beyond showing: pass its address on, with what the device has for that and without anybody
 * else; and say so where there is no network. Without this script neither is offered.
 */
import { sayWithoutNetwork } from "./follow/offline.js";

const share = document.getElementById("share");
const done = document.getElementById("share-done");

function offer(act, what) {
	const button = share.querySelector(`[data-act="${act}"]`);
	button.hidden = false;
	share.hidden = false;
	button.addEventListener("click", () => what(button).catch(() => undefined));
}

/* Without the part that stands for nothing but this moment. */
const address = () => window.location.origin + window.location.pathname + window.location.search;

if (share && navigator.share) {
	offer("share", () => navigator.share({ title: document.title, url: address() }));
}
if (share && navigator.clipboard) {
	offer("copy", async (button) => {
		await navigator.clipboard.writeText(address());
		done.textContent = button.dataset.done;
	});
}

sayWithoutNetwork();

/* The page that says that there is no network tries again by itself, so that a screen that nobody sits at comes back. */
if (document.getElementById("no-contact")) {
	window.setTimeout(() => window.location.reload(), 15_000);
	window.addEventListener("online", () => window.location.reload());
}
