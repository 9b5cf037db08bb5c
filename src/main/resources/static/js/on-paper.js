// What a page on paper says of itself and only the browser knows: its address, and when it was printed.

const line = document.querySelector(".on-paper");
const time = line.querySelector("time");
// As the house writes dates: 29 November 2026.
const language = document.documentElement.lang.replace(/^en$/, "en-GB");
const dayAndTime = {
	day: "numeric",
	month: "long",
	year: "numeric",
	hour: "2-digit",
	minute: "2-digit",
	timeZoneName: "short"
};

function tell() {
	const now = new Date();
	line.querySelector(".address").textContent = location.href.replace(/#.*/, "");
	time.dateTime = now.toISOString();
	time.textContent = now.toLocaleString(language, dayAndTime);
}

addEventListener("beforeprint", tell);
tell();
