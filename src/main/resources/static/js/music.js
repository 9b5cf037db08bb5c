/*
 * Pages about music. A file that is too large is said so before it is sent, so that nothing that was typed is lost. The
 * desk loads every file of its segment and plays from there, whatever becomes of the network.
 */
import { openDesk } from "./music/desk.js";

const MEGABYTE = 1024 * 1024;

function guard(form) {
	const said = document.getElementById("too-large");
	const sending = document.getElementById("sending");
	form.addEventListener("submit", (event) => {
		const file = form.querySelector("input[type=file]").files[0];
		const large = file !== undefined && file.size > Number(form.dataset.most);
		said.hidden = !large;
		sending.textContent = large ? "" : form.dataset.sending;
		if (large) {
			event.preventDefault();
			said.textContent = form.dataset.tooLarge.replace("#", (Math.ceil(10 * file.size / MEGABYTE) / 10).toFixed(1));
		}
	});
	window.addEventListener("pageshow", () => {
		sending.textContent = "";
	});
}

document.querySelectorAll("form[data-hand-in]").forEach(guard);
document.querySelectorAll(".music-desk").forEach(openDesk);
