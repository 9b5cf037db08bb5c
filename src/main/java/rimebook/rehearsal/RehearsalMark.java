package rimebook.rehearsal;

import java.util.Set;

import org.springframework.context.annotation.Profile;
import org.springframework.stereotype.Component;
import org.thymeleaf.dialect.AbstractDialect;
import org.thymeleaf.dialect.IPostProcessorDialect;
import org.thymeleaf.postprocessor.IPostProcessor;
import org.thymeleaf.postprocessor.PostProcessor;
import org.thymeleaf.templatemode.TemplateMode;

/**
 * Marks every page and every sheet of a rehearsal. It works on what comes out of any
 * template, so that one that is written tomorrow is marked without knowing of it.
 */
@Component
@Profile(RehearsalMark.PROFILE)
class RehearsalMark extends AbstractDialect implements IPostProcessorDialect {

	/** A service of this profile is a rehearsal. */
	static final String PROFILE = "rehearsal";

	private static final int LAST = 10_000;

	RehearsalMark() {
		super(PROFILE);
	}

	@Override
	public int getDialectPostProcessorPrecedence() {
		return LAST;
	}

	@Override
	public Set<IPostProcessor> getPostProcessors() {
		return Set.of(new PostProcessor(TemplateMode.HTML, MarkedPage.class, LAST));
	}

}
