/* The card's page: finds its parts and words, and changes them only where something changed. */

export function part(id) {
	return document.getElementById(id);
}

/* The words of the page stand in the page; {0}, {1} are filled here. */
export function word(name, ...values) {
	const pattern = document.querySelector(`#words [data-word="${name}"]`).textContent;
	return pattern.replace(/\{(\d)\}/g, (place, index) => values[index]);
}

export function say(element, text) {
	if (element.textContent !== text) {
		element.textContent = text;
	}
}

export function show(element, shown) {
	element.hidden = !shown;
}

export function state(element, name) {
	if (element.dataset.state !== name) {
		element.dataset.state = name;
	}
}

/* Put the items into a list unless it shows them already; make(item) gives the element of one. */
export function fill(list, items, make) {
	const seen = JSON.stringify(items);
	if (list.dataset.seen !== seen) {
		list.dataset.seen = seen;
		list.replaceChildren(...items.map(make));
	}
}

export function element(name, className, text) {
	const made = document.createElement(name);
	made.className = className;
	made.textContent = text;
	return made;
}
