/*
 * Reading back by keyboard: Enter authorises, Escape goes back to the desk. A key still held down from the
 * page before authorises nothing.
 */
function onKey(event) {
	if (event.key === "Enter" && event.repeat) {
		event.preventDefault();
	}
	else if (event.key === "Escape") {
		document.querySelector(".trail a").click();
	}
}

document.addEventListener("keydown", onKey);
(document.getElementById("authorise") ?? document.getElementById("back"))?.focus({ preventScroll: true });
