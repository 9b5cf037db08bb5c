/*
 * A hand in a glove touches twice without meaning it. The second touch of the same key within a third of a
 * second does not count, whatever is in the middle by then; another key counts at once. Times are those of the
 * touches themselves, so that a busy tablet does not swallow touches that were meant.
 */
const PAUSE = 350;

export function bounces() {
	let last = { key: "", time: -Infinity };
	return (key, time) => {
		const isSecond = key === last.key && time - last.time < PAUSE;
		last = { key, time };
		return isSecond;
	};
}
