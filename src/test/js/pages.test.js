/* What no script can see for itself: how pages include scripts, and whether what scripts import is there. */
import assert from "node:assert/strict";
import { readFileSync, readdirSync } from "node:fs";
import { dirname, join, normalize, relative, sep } from "node:path";
import { test } from "node:test";
import { fileURLToPath } from "node:url";

const RESOURCES = fileURLToPath(new URL("../../main/resources", import.meta.url));
const SCRIPTS = files(join(RESOURCES, "static/js"), ".js");
const TAGS = files(join(RESOURCES, "templates"), ".html").flatMap(([page, text]) => Array.from(text.matchAll(/<script\b[^>]*>[^<]*/g), ([tag]) => [page, tag]));

/* Each file below a folder with its text, named from the resources. */
function files(folder, ending) {
	return readdirSync(folder, { recursive: true })
		.map((name) => join(folder, name))
		.filter((name) => name.endsWith(ending))
		.map((name) => [relative(RESOURCES, name).split(sep).join("/"), readFileSync(name, "utf8")]);
}

function scriptOf(tag) {
	const [, address] = tag.match(/th:src="@\{(\/js\/[^}]+)\}"/) ?? [];
	return address && "static" + address;
}

/* The modules that one imports, each with the names. */
function imports([name, text]) {
	return Array.from(text.matchAll(/^import (?:\{([^}]*)\} from )?"([^"]+)";$/gm), ([, names, from]) => ({
		from: normalize(join(dirname(name), from)).split(sep).join("/"),
		names: (names ?? "").split(",").map((each) => each.trim()).filter(Boolean),
	}));
}

/* What a script has the browser run beside the page. */
function workers(text) {
	return Array.from(text.matchAll(/^const WORKER = "(\/js\/[^"]+)";$/gm), ([, address]) => "static" + address);
}

function exportsOf(text) {
	return Array.from(text.matchAll(/^export (?:async )?(?:function|class|const|let) (\w+)/gm), ([, name]) => name);
}

test("every script of ours is included as a module", () => {
	const ours = TAGS.filter(([, tag]) => scriptOf(tag));
	assert.ok(ours.length > 8);
	assert.deepEqual(ours.filter(([, tag]) => !tag.includes('type="module"')), []);
});

test("no page has a script of its own, which the content policy would not run", () => {
	assert.deepEqual(TAGS.filter(([, tag]) => !/th:src="@\{\/(js|webjars)\/[^}]+\}"[^>]*>\s*$/.test(tag)), []);
});

test("what a page includes is there, and no script is left that none needs", () => {
	const known = new Map(SCRIPTS);
	const needed = new Set();
	const need = (name, by) => {
		assert.ok(known.has(name), by + " needs " + name);
		if (!needed.has(name)) {
			needed.add(name);
			imports([name, known.get(name)]).forEach(({ from }) => need(from, name));
			workers(known.get(name)).forEach((worker) => need(worker, name));
		}
	};
	TAGS.filter(([, tag]) => scriptOf(tag)).forEach(([page, tag]) => need(scriptOf(tag), page));
	assert.deepEqual([...known.keys()].filter((name) => !needed.has(name)), []);
});

test("every name that is imported is exported there", () => {
	const known = new Map(SCRIPTS.map(([name, text]) => [name, exportsOf(text)]));
	const all = SCRIPTS.flatMap((script) => imports(script).flatMap(({ from, names }) => names.map((name) => [script[0], from, name])));
	assert.ok(all.length > 100);
	assert.deepEqual(all.filter(([, from, name]) => !known.get(from).includes(name)), []);
});
