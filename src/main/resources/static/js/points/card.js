/* A card in points judging: grades for called elements, marks for components. */
import { Card } from "../card/card.js";
import { NOTHING_TYPED, elements, fitted, isWhole, lineAt } from "./draft.js";
import { fromNumber, isMark, signed } from "./marks.js";

const NO_TASK = { listSequence: 0, elements: [], components: [], lowestGrade: -5, highestGrade: 5, card: null };

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

	take(table) {
		super.take(table);
		this.fit();
	}

	turnTo(performance) {
		super.turnTo(performance);
		this.said = "";
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

	asTyped({ grades, codes, components }) {
		const given = Object.entries(grades).map(([id, grade]) => [id, { grade, code: codes[id] }]);
		return { ...NOTHING_TYPED, grades: Object.fromEntries(given), components };
	}

	isAnything({ grades, components }) {
		return Object.keys(grades).length > 0 || Object.values(components).some((text) => text !== "");
	}

	isSame({ grades, components }, version) {
		return Object.entries(version.grades).every(([id, grade]) => grades[id]?.grade === grade)
			&& Object.entries(version.components).every(([name, mark]) => components[name] === mark);
	}

	/* Who confirms an element that was called otherwise has changed the card, even with the same grade. */
	isSent() {
		const newest = this.newest();
		return newest !== undefined && this.isWhole() && this.isSame(this.typed, newest)
			&& elements(this.task()).every(({ id, code }) => newest.grades[id] !== undefined && newest.codes[id] === code);
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
			codes: Object.fromEntries(counting.map(({ id, code }) => [id, code])),
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

	/* An element that was called otherwise since has no code here: the one that it was given to is not known. */
	fromService(card, task = this.task()) {
		const codes = task.elements.map(({ id, code, confirm }) => [id, confirm ? "" : code]);
		const components = Object.entries(card.components).map(([name, mark]) => [name, fromNumber(mark)]);
		return { ...card, state: "received", codes: Object.fromEntries(codes), components: Object.fromEntries(components) };
	}

	/* The seat's cards of the segment as last fetched, in the form of a version. */
	earlier() {
		return this.shelf.read("earlier", []).map((card) => {
			const graded = card.elements.filter(({ grade }) => grade !== null);
			return { ...this.fromService(card, card), grades: Object.fromEntries(graded.map(({ id, grade }) => [id, grade])) };
		});
	}

	inWords({ grades, components }) {
		const given = Object.values(grades).map(({ grade }) => signed(grade));
		return [...given, ...Object.values(components).filter(isMark)].join(" ");
	}

}
