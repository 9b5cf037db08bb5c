/*
 * The pages of a team's managers. A link brings its token behind the hash sign, which goes to the service once, in a form.
 * The time that is left for a protest is counted on from the service's clock.
 */
const form = document.getElementById("open");

function hand() {
	if (form === null || window.location.hash.length <= 40) {
		return;
	}
	const token = window.location.hash.slice(1);
	window.history.replaceState(null, "", window.location.pathname + window.location.search);
	document.getElementById("token").value = token;
	form.submit();
}

const begun = Date.now();

function count() {
	document.querySelectorAll("[data-left]").forEach((clock) => {
		const left = Math.max(0, Math.floor((Number(clock.dataset.left) - (Date.now() - begun)) / 1000));
		const hours = Math.floor(left / 3600);
		const minutes = String(Math.floor(left / 60) % 60).padStart(hours > 0 ? 2 : 1, "0");
		clock.textContent = (hours > 0 ? hours + ":" : "") + minutes + ":" + String(left % 60).padStart(2, "0");
	});
}

hand();
window.addEventListener("hashchange", hand);
if (document.querySelector("[data-left]") !== null) {
	count();
	window.setInterval(count, 1000);
}
