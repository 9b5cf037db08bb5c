/* The card's page: finds its parts and words, and changes them only where something changed. */

export function part(id) {
	return document.getElementById(id);
}

/* The words of the page stand in the page; {0}, {1} are filled here. One that is not there is shown as its name. */
export function word(name, ...values) {
	const pattern = document.querySelector(`#words [data-word="${CSS.escape(name)}"]`)?.textContent ?? name;
	return pattern.replace(/\{(\d)\}/g, (place, index) => values[index]);
}

export function say(place, text) {
	if (place.textContent !== text) {
		place.textContent = text;
	}
}

export function show(place, shown) {
	place.hidden = !shown;
}

export function state(place, name) {
	if (place.dataset.state !== name) {
		place.dataset.state = name;
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

/*
 * As fill, for items with a key that are touched while they change: an element stays the same as long as
 * its key is there, and so does the focus. update(element, item) writes one.
 */
export function sync(list, items, make, update) {
	const keys = JSON.stringify(items.map((item) => item.key));
	if (list.dataset.keys !== keys) {
		const focused = document.activeElement;
		const known = new Map(Array.from(list.children, (child) => [child.dataset.key, child]));
		list.dataset.keys = keys;
		lay(list, items.map((item) => known.get(item.key) ?? keyed(make(item), item.key)));
		if (list.contains(focused)) {
			focused.focus();
		}
	}
	items.forEach((item, index) => update(list.children[index], item));
}

/* An element that is taken out and put back loses a touch that has begun on it: what can stay in place does. */
function lay(list, elements) {
	const wanted = new Set(elements);
	Array.from(list.children).filter((child) => !wanted.has(child)).forEach((child) => child.remove());
	elements.forEach((child, index) => {
		if (list.children[index] !== child && list.children[index + 1] === child) {
			list.append(list.children[index]);
		}
		if (list.children[index] !== child) {
			list.insertBefore(child, list.children[index] ?? null);
		}
	});
}

function keyed(made, key) {
	made.dataset.key = key;
	return made;
}

export function element(name, className, text) {
	const made = document.createElement(name);
	made.className = className;
	made.textContent = text;
	return made;
}

export function button(className, text, data) {
	const made = element("button", className, text);
	made.type = "button";
	Object.assign(made.dataset, data);
	return made;
}

export function clock(instant, zone) {
	return new Intl.DateTimeFormat("en-GB", { timeZone: zone, hour: "2-digit", minute: "2-digit", second: "2-digit" }).format(new Date(instant));
}
