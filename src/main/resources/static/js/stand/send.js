/*
 * A touch of the clock is sent without leaving the page. One that cannot be sent is said so, and is made again by
 * hand: had it waited, it would carry a wrong time. What changed comes with the parts that follow.
 */
const TOUCHES = "#clock form[action*='/clock/']";

function fields(form, button) {
	const typed = new URLSearchParams(new FormData(form));
	if (button?.name) {
		typed.append(button.name, button.value);
	}
	return typed;
}

function refuse(form, words) {
	const place = document.getElementById("not-sent");
	place.textContent = words;
	place.hidden = false;
	delete form.dataset.sent;
	form.querySelector("input:not([type=hidden])")?.dispatchEvent(new Event("input", { bubbles: true }));
}

async function send(form, button) {
	const place = document.getElementById("not-sent");
	place.dataset.unreached ??= place.textContent;
	try {
		const answer = await fetch(form.action, { method: "POST", body: fields(form, button), headers: { "Rink-Touch": "true" } });
		if (answer.status === 204) {
			place.hidden = true;
		}
		else if (answer.headers.get("Content-Type")?.startsWith("text/plain")) {
			refuse(form, await answer.text());
		}
		else {
			location.reload();
		}
	}
	catch {
		refuse(form, place.dataset.unreached);
	}
	htmx.trigger(document.body, "clock-touched");
}

/* One touch is one act, however fast the second tap comes. */
export function sendWithoutLeaving() {
	document.addEventListener("submit", (event) => {
		const form = event.target.closest(TOUCHES);
		if (form) {
			event.preventDefault();
			if (!form.dataset.sent) {
				form.dataset.sent = "yes";
				send(form, event.submitter);
			}
		}
	});
}
