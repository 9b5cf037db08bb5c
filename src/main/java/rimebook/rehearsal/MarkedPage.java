package rimebook.rehearsal;

import java.util.Map;

import org.thymeleaf.engine.AbstractTemplateHandler;
import org.thymeleaf.model.AttributeValueQuotes;
import org.thymeleaf.model.ICloseElementTag;
import org.thymeleaf.model.IModelFactory;
import org.thymeleaf.model.IOpenElementTag;
import org.thymeleaf.model.IStandaloneElementTag;

/**
 * Writes the word into a page: a band at its top, an attribute from which the style sheet
 * takes other colours, its title, and that no search engine shall keep it. On paper the
 * band stands at the top of each sheet. Parts of pages, which have none of these, stay as
 * they are. Of a template engine a new one serves each page.
 */
public class MarkedPage extends AbstractTemplateHandler {

	/** Beside the style sheet of a page, which paper does not have. */
	private static final String ON_PAPER = """
			<style>
			.rehearsal-band { position: running(rehearsal); text-align: center; font-size: 10pt; color: #4a1f73; \
			border: 0.4mm solid #4a1f73; padding: 0.6mm 0; }
			@page { @top-center { content: element(rehearsal); width: 100%; vertical-align: middle; } }
			</style>
			""";

	private boolean titled;

	private boolean paper;

	@Override
	public void handleOpenElement(IOpenElementTag tag) {
		switch (tag.getElementCompleteName()) {
			case "html" -> super.handleOpenElement(factory().setAttribute(tag, "data-rehearsal",
					word("rehearsal.band.word"), AttributeValueQuotes.DOUBLE));
			case "head" -> {
				super.handleOpenElement(tag);
				super.handleStandaloneElement(factory().createStandaloneElementTag("meta",
						Map.of("name", "robots", "content", "noindex"), AttributeValueQuotes.DOUBLE, false, true));
			}
			case "title" -> {
				super.handleOpenElement(tag);
				if (!this.titled) {
					super.handleText(factory().createText(word("rehearsal.band.word") + ": "));
				}
				// Drawings have titles, too.
				this.titled = true;
			}
			case "body" -> {
				super.handleOpenElement(tag);
				super.handleText(factory().createText(band()));
			}
			default -> super.handleOpenElement(tag);
		}
	}

	@Override
	public void handleStandaloneElement(IStandaloneElementTag tag) {
		this.paper |= tag.getElementCompleteName().equals("meta") && "subject".equals(tag.getAttributeValue("name"));
		super.handleStandaloneElement(tag);
	}

	@Override
	public void handleCloseElement(ICloseElementTag tag) {
		if (this.paper && tag.getElementCompleteName().equals("head")) {
			super.handleText(factory().createText(ON_PAPER));
		}
		super.handleCloseElement(tag);
	}

	private String band() {
		return """
				<div class="rehearsal-band" role="complementary" aria-label="%1$s"><strong>%1$s</strong> \
				<span>%2$s</span></div>""".formatted(word("rehearsal.band.word"), word("rehearsal.band.text"));
	}

	/** A word in the language of the page; none of them has a sign of HTML. */
	private String word(String key) {
		return getContext().getMessage(MarkedPage.class, key, new Object[0], true);
	}

	private IModelFactory factory() {
		return getContext().getModelFactory();
	}

}
