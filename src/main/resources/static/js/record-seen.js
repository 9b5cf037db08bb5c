/* Shows what this browser saw of the record, and gives it out as a file. */
import { isContradicted, lines } from "./record/kept.js";

const place = document.getElementById("seen");
const kept = lines();
const file = document.getElementById("seen-file");

place.hidden = false;
document.getElementById("seen-lines").textContent = kept.join("\n");
document.getElementById("seen-lines").hidden = kept.length === 0;
document.getElementById("seen-state").textContent = isContradicted() ? place.dataset.two : kept.length === 0 ? place.dataset.none : "";
if (kept.length > 0) {
	file.href = URL.createObjectURL(new Blob([kept.join("\n") + "\n"], { type: "text/plain" }));
	file.hidden = false;
}
