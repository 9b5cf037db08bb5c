/* A card in points judging: grades for called elements, marks for components. */
import { Card } from "../card/card.js";
import { NOTHING_TYPED, elements, fitted, isWhole, lineAt } from "./draft.js";
import { fromNumber, isMark, signed } from "./marks.js";

const NO_TASK = { listSequence: 0, elements: [], takenOut: [], components: [], lowestGrade: -5, highestGrade: 5, card: null };

export class PointsCard extends Card {

	get kind() {
		return "points";
	}

	nothing() {
		return NOTHING_TYPED;
	}

	/* What has to be given to the performance at hand. */
	task() {
		return (this.isAtReopened() ? this.table.reopened.points : this.table?.points) ?? NO_TASK;
	}

	turnTo(performance) {
		super.turnTo(performance);
		this.said = "";
		this.fit();
	}

	follow() {
		super.follow();
		this.fit();
	}

	fit() {
		if (this.at()) {
			this.typed = fitted(this.typed, this.task());
		}
	}

	lineAt() {
		return lineAt(this.typed, this.task());
	}

	asTyped({ grades, called, components }) {
		const given = Object.entries(grades).map(([id, grade]) => [id, { grade, ...called[id] }]);
		return { ...NOTHING_TYPED, grades: Object.fromEntries(given), components };
	}

	isAnything({ grades, components }) {
		return Object.keys(grades).length > 0 || Object.values(components).some((text) => text !== "");
	}

	isSame({ grades, components }, version) {
		return Object.entries(version.grades).every(([id, grade]) => grades[id]?.grade === grade)
			&& Object.entries(version.components).every(([name, mark]) => components[name] === mark);
	}

	/* Who confirms another element, or one that was taken out, has changed the card, even with the same grades. */
	isSent() {
		const newest = this.newest();
		return newest !== undefined && this.isWhole() && this.isSame(this.typed, newest)
			&& elements(this.task()).every(({ id, element }) => newest.grades[id] !== undefined && newest.called[id]?.element === element);
	}

	isWhole() {
		return isWhole(this.typed, this.task());
	}

	content() {
		const { listSequence, components } = this.task();
		const counting = elements(this.task()).filter(({ id }) => this.typed.grades[id]);
		return {
			listSequence,
			grades: Object.fromEntries(counting.map(({ id }) => [id, this.typed.grades[id].grade])),
			called: Object.fromEntries(counting.map((one) => [one.id, asCalled(one)])),
			components: Object.fromEntries(components.map((name) => [name, this.typed.components[name]])),
		};
	}

	/* The seat's cards at the service: of what can be marked, and of earlier teams. */
	received() {
		const tasks = [[this.table?.now, this.table?.points], [this.table?.reopened, this.table?.reopened?.points]]
			.filter(([performance, task]) => performance && task?.card)
			.map(([performance, task]) => ({ ...performance, ...this.fromService(task.card, task) }));
		return [...tasks, ...this.earlier().filter((card) => !this.isOpen(card.performance))];
	}

	/* Where another element is called now, the one that was graded is not known here. */
	fromService(card, task = this.task()) {
		const known = task.elements.filter(({ confirm }) => !confirm).concat(task.takenOut ?? []);
		const components = Object.entries(card.components).map(([name, mark]) => [name, fromNumber(mark)]);
		return { ...card, state: "received", called: Object.fromEntries(known.map((one) => [one.id, asCalled(one)])), components: Object.fromEntries(components) };
	}

	/* The seat's cards of the segment as last fetched, in the form of a version. */
	earlier() {
		return this.shelf.read("earlier", []).map((card) => {
			const graded = card.elements.filter(({ grade }) => grade !== null);
			return { ...this.fromService(card, card), grades: Object.fromEntries(graded.map(({ id, grade }) => [id, grade])) };
		});
	}

	/* The marks that this judge gave a component to other teams: { startNumber, mark }, as received and as kept here. */
	ownMarks(name) {
		const received = this.earlier().filter(({ performance }) => performance !== this.turned);
		const known = new Set([this.turned, ...received.map(({ performance }) => performance)]);
		const kept = this.outbox.waitingCards().filter(({ kind, performance }) => kind === this.kind && !known.has(performance));
		return [...received, ...kept]
			.filter(({ components }) => isMark(components[name] ?? ""))
			.map(({ startNumber, components }) => ({ startNumber, mark: Number(components[name]) }));
	}

	inWords({ grades, components }) {
		const given = Object.values(grades).map(({ grade }) => signed(grade));
		return [...given, ...Object.values(components).filter(isMark)].join(" ");
	}

}

function asCalled({ element, code, number }) {
	return { element, code, number };
}
