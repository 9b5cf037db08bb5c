/* Which line is next: the one after it that has a file, in the order of the list. */
export function after(lines, entry) {
	const at = lines.findIndex((line) => line.entry === entry);
	return lines.slice(at + 1).find((line) => line.version);
}

/* The first line whose file nobody has played; the first with a file where all were. */
export function first(lines) {
	const playable = lines.filter((line) => line.version);
	return playable.find((line) => Number(line.played) === 0) ?? playable[0];
}

/* The line before it that has a file. */
export function before(lines, entry) {
	const at = lines.findIndex((line) => line.entry === entry);
	return lines.slice(0, at < 0 ? lines.length : at).reverse().find((line) => line.version);
}

/* Seconds as "3:42". */
export function time(seconds) {
	const whole = Math.floor(seconds);
	return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}
