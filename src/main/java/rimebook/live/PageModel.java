package rimebook.live;

import java.util.Collection;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

import org.jspecify.annotations.Nullable;

import rimebook.competition.CompetitionView;
import rimebook.competition.SegmentView;
import rimebook.results.ResultVersion;

/**
 * What one public page is made of: what is asked for, in which language, and what the
 * template will be given.
 *
 * @param key what is asked for
 * @param moment where the competition stands, {@code null} on the list of competitions
 * @param base the path of the application, empty at the root
 */
record PageModel(RenditionKey key, @Nullable Moment moment, String base, Map<String, @Nullable Object> model) {

	static PageModel of(RenditionKey key, @Nullable Moment moment, String base) {
		PageModel page = new PageModel(key, moment, base, new HashMap<>());
		return page.with("links", page.links())
			.with("words", new PageWords(page.locale()))
			.with("frame", page.frame(null, Map.of()));
	}

	Locale locale() {
		return this.key.pageLanguage().locale();
	}

	/** Give the template a thing under a name. */
	PageModel with(String name, @Nullable Object value) {
		this.model.put(name, value);
		return this;
	}

	/** The page follows the competition: it moves when one of these segments does. */
	PageModel follows(CompetitionView competition, Collection<SegmentView> segments) {
		Map<String, Integer> seen = (this.moment != null) ? this.moment.seen(segments) : Map.of();
		return with("competition", competition).with("frame", frame(links().signals(competition), seen));
	}

	/** The same, and it moves when teams are expected at other times. */
	PageModel followsTimes(CompetitionView competition, Collection<SegmentView> segments) {
		Map<String, Integer> seen = (this.moment != null) ? this.moment.seenWithTimes(segments) : Map.of();
		return with("competition", competition).with("frame", frame(links().signals(competition), seen));
	}

	/**
	 * The page tells how things stand, in its title, too.
	 * @param name what it is about
	 */
	PageModel tells(CompetitionView competition, String name, Tidings tidings) {
		String said = tidings.headline().in(locale());
		String news = said.isEmpty() ? "" : " – " + said.replaceFirst("\\.$", "");
		String whose = name.equals(competition.name()) ? "" : " · " + competition.name();
		return with("tidings", tidings).with("title", name + news + whose);
	}

	/**
	 * The page goes about with a picture of a version, see {@link SharePictures}.
	 * @param page the page of its standing
	 * @param version the version, {@code null} before there is one
	 */
	PageModel pictured(String page, @Nullable ResultVersion version) {
		return with("picture", (version == null) ? null : page.replaceFirst("\\?.*$", "") + "/share/" + version.number()
				+ ".png?lang=" + locale().getLanguage());
	}

	/** The addresses that it leads to. */
	Links links() {
		return new Links(this.base, this.key.pageLanguage());
	}

	private Frame frame(@Nullable String signals, Map<String, Integer> seen) {
		return new Frame(this.base + this.key.path(), this.key.pageLanguage(), links().home(), signals, seen);
	}

}
