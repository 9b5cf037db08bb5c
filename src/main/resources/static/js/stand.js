/*
 * The stand works without this. With it, quick remarks fill the form at once, what is typed is kept until
 * it is sent, whatever else reloads the page, and the page says when it has lost contact.
 */
const LONGEST_SILENCE = 5000;
let heard = Date.now();

function key(form) {
	return "rimebook/draft/" + form.dataset.draft;
}

function fields(form) {
	return Array.from(form.elements).filter((field) => field.name && !["hidden", "submit"].includes(field.type));
}

function keep(form) {
	const typed = fields(form).map((field) => (["radio", "checkbox"].includes(field.type) ? field.checked : field.value));
	sessionStorage.setItem(key(form), JSON.stringify(typed));
}

/* What the server sends back with a reason is newer than any draft. */
function restore(form) {
	const typed = JSON.parse(sessionStorage.getItem(key(form)) ?? "null");
	const all = fields(form);
	if (form.querySelector(".fault, .summary")) {
		keep(form);
	}
	else if (typed && typed.length === all.length) {
		all.forEach((field, at) => (["radio", "checkbox"].includes(field.type) ? (field.checked = typed[at]) : (field.value = typed[at])));
	}
}

function fill(form, { kind, text, touch }) {
	form.elements.kind.value = kind;
	form.elements.text.value = text;
	form.elements.touch.value = touch ?? "";
	form.elements.text.focus();
	const number = text.search(/\d/);
	if (number >= 0) {
		form.elements.text.setSelectionRange(number, number + 1);
	}
	keep(form);
}

/* Also the forms that come with a part that follows by itself. */
function restoreNew() {
	for (const form of document.querySelectorAll("form[data-draft]:not([data-kept])")) {
		form.dataset.kept = "yes";
		restore(form);
	}
}

document.addEventListener("input", (event) => event.target.form?.dataset.draft && keep(event.target.form));
document.addEventListener("submit", (event) => event.target.dataset.draft && sessionStorage.removeItem(key(event.target)));
document.body.addEventListener("htmx:oobAfterSwap", restoreNew);

/* A question that was opened stays open while the part around it is renewed, unless it is about another team. */
document.body.addEventListener("htmx:oobBeforeSwap", ({ detail: { target, fragment } }) => {
	for (const open of target.querySelectorAll("details[open][data-question]")) {
		fragment.querySelector(`details[data-question="${open.dataset.question}"]`)?.setAttribute("open", "");
	}
});
restoreNew();

document.addEventListener("click", (event) => {
	const quick = event.target.closest("button[data-text]");
	if (quick) {
		event.preventDefault();
		fill(document.getElementById("remark-form"), quick.dataset);
	}
});

/* What was asked for last answers: a part that arrives while a form is on its way opens no other page. */
let leaving = false;
document.addEventListener("submit", (event) => setTimeout(() => (leaving ||= !event.defaultPrevented)));
for (const step of ["htmx:beforeRequest", "htmx:beforeOnLoad"]) {
	document.body.addEventListener(step, (event) => leaving && event.preventDefault());
}

document.body.addEventListener("htmx:afterRequest", (event) => {
	if (event.detail.xhr && event.detail.xhr.status > 0 && event.detail.xhr.status < 400) {
		heard = Date.now();
	}
});
setInterval(() => {
	document.getElementById("no-contact").hidden = Date.now() - heard < LONGEST_SILENCE;
}, 1000);
