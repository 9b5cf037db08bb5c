/*
 * Enter goes on to the next field, and from the last one to the button: whoever keys with the number pad
 * never has to look up, and sends a card only when all of it is typed. Without this, Enter sends the form.
 */
function typed(form) {
	return Array.from(form.elements).filter((field) => field.type === "text");
}

for (const form of document.querySelectorAll("form[data-onward]")) {
	form.addEventListener("keydown", (event) => {
		const fields = typed(form);
		const at = fields.indexOf(event.target);
		if (event.key !== "Enter" || event.ctrlKey || event.metaKey || at < 0) {
			return;
		}
		event.preventDefault();
		const next = fields[at + 1] ?? form.querySelector("button[type=submit]");
		next.focus();
		next.select?.();
	});
}
