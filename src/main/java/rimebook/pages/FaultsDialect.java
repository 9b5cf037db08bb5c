package rimebook.pages;

import java.util.Set;

import org.jspecify.annotations.Nullable;
import org.springframework.context.MessageSource;
import org.springframework.stereotype.Component;
import org.thymeleaf.context.IExpressionContext;
import org.thymeleaf.dialect.AbstractDialect;
import org.thymeleaf.dialect.IExpressionObjectDialect;
import org.thymeleaf.expression.IExpressionObjectFactory;

/** Gives templates {@code #faults}. */
@Component
class FaultsDialect extends AbstractDialect implements IExpressionObjectDialect, IExpressionObjectFactory {

	private static final String NAME = "faults";

	private final MessageSource messages;

	FaultsDialect(MessageSource messages) {
		super(NAME);
		this.messages = messages;
	}

	@Override
	public IExpressionObjectFactory getExpressionObjectFactory() {
		return this;
	}

	@Override
	public Set<String> getAllExpressionObjectNames() {
		return Set.of(NAME);
	}

	@Override
	public @Nullable Object buildObject(IExpressionContext context, String name) {
		return name.equals(NAME) ? new Faults(this.messages, context.getLocale()) : null;
	}

	@Override
	public boolean isCacheable(String name) {
		return true;
	}

}
