package rimebook.keying;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

import org.jspecify.annotations.Nullable;
import org.springframework.validation.Errors;

import rimebook.paper.PaperCards;
import rimebook.paper.SeatPaper;

/** One judge's paper card as it is keyed in, or as a difference is settled. */
class PaperForm extends KeyedForm {

	private List<Line> lines = new ArrayList<>();

	private int keyings;

	private int card;

	/** The form for keying: filled with what the same person keyed before. */
	static PaperForm of(KeyingPage page, SeatPaper paper) {
		PaperForm form = new PaperForm();
		form.restOn(page, 0);
		form.fill(page, (line) -> page.words(paper.said().own(), line));
		return form;
	}

	/** The form for settling: filled where nobody says anything else. */
	static PaperForm toSettle(KeyingPage page, SeatPaper paper) {
		PaperForm form = new PaperForm();
		form.restOn(page, 0);
		form.keyings = paper.sight().keyings();
		form.card = paper.sight().card();
		form.fill(page, (line) -> page.isDisputed(paper, line) ? ""
				: page.words(paper.said().voices().isEmpty() ? null : paper.said().voices().get(0).marks(), line));
		return form;
	}

	private void fill(KeyingPage page, Function<PaperCards.CardLine, String> typed) {
		page.onPaper().lines().forEach((line) -> this.lines.add(new Line(line.key(), typed.apply(line))));
	}

	/**
	 * Fit the lines to what has to be given now, keeping what is typed: the list of
	 * elements may have changed since the form was opened.
	 */
	PaperForm fitted(KeyingPage page) {
		Map<String, Line> given = new LinkedHashMap<>();
		this.lines.forEach((line) -> given.put(line.key, line));
		this.lines = new ArrayList<>(page.onPaper()
			.lines()
			.stream()
			.map((line) -> given.getOrDefault(line.key(), new Line(line.key(), "")))
			.toList());
		return this;
	}

	/** Say beside each field what is wrong with it; the lines fit the page. */
	void check(KeyingPage page, Errors errors) {
		if (page.onPaper().lines().isEmpty()) {
			errors.reject("keying.desk.card.no-list");
		}
		for (int i = 0; i < page.onPaper().lines().size(); i++) {
			PaperCards.CardLine line = page.onPaper().lines().get(i);
			if (line.read(this.lines.get(i).given()).isEmpty()) {
				errors.rejectValue("lines[" + i + "].typed", "keying.desk.wrong." + line.kind(),
						new Object[] { line.name(), line.number(), line.most() }, null);
			}
		}
	}

	PaperCards.KeyedCard marks(KeyingPage page) {
		Map<String, Integer> marks = new LinkedHashMap<>();
		for (int i = 0; i < page.onPaper().lines().size(); i++) {
			PaperCards.CardLine line = page.onPaper().lines().get(i);
			marks.put(line.key(), line.read(this.lines.get(i).given()).orElseThrow());
		}
		return new PaperCards.KeyedCard(marks);
	}

	SeatPaper.Sight sight() {
		return new SeatPaper.Sight(this.keyings, this.card);
	}

	public List<Line> getLines() {
		return this.lines;
	}

	public void setLines(List<Line> lines) {
		this.lines = lines;
	}

	public int getKeyings() {
		return this.keyings;
	}

	public void setKeyings(int keyings) {
		this.keyings = keyings;
	}

	public int getCard() {
		return this.card;
	}

	public void setCard(int card) {
		this.card = card;
	}

	/** What is given for one line of the card. */
	static class Line {

		private String key = "";

		private String typed = "";

		private @Nullable String chosen;

		Line() {
		}

		Line(String key, String typed) {
			this.key = key;
			this.typed = typed;
		}

		/** What is typed goes before what is chosen. */
		private String given() {
			return (this.typed.isBlank() && this.chosen != null) ? this.chosen : this.typed;
		}

		/** The key of the card's line. */
		public String getKey() {
			return this.key;
		}

		public void setKey(String key) {
			this.key = key;
		}

		public String getTyped() {
			return this.typed;
		}

		public void setTyped(String typed) {
			this.typed = typed;
		}

		/** Of what was keyed or sent, the value chosen; {@code null} for none. */
		public @Nullable String getChosen() {
			return this.chosen;
		}

		public void setChosen(@Nullable String chosen) {
			this.chosen = chosen;
		}

	}

}
