package rimebook.testsupport;

import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ExtensionContext.Store;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.springframework.test.context.junit.jupiter.SpringExtension;

/**
 * Gives each test its {@link Browsers}, which know the service of the test's application
 * context, if it has one.
 */
class BrowserExtension implements ParameterResolver, AfterEachCallback {

	private static final Namespace NAMESPACE = Namespace.create(BrowserExtension.class);

	@Override
	public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
		return parameter.getParameter().getType() == Browsers.class;
	}

	@Override
	public Browsers resolveParameter(ParameterContext parameter, ExtensionContext context) {
		return store(context).computeIfAbsent(Browsers.class,
				(key) -> new Browsers(() -> SpringExtension.getApplicationContext(context)), Browsers.class);
	}

	/** Before folders of a test are deleted in which a browser may still write. */
	@Override
	public void afterEach(ExtensionContext context) {
		Browsers opened = store(context).remove(Browsers.class, Browsers.class);
		if (opened != null) {
			opened.close();
		}
	}

	/** What a constructor was given belongs to its test, not to all of its class. */
	@Override
	public ExtensionContextScope getTestInstantiationExtensionContextScope(ExtensionContext root) {
		return ExtensionContextScope.TEST_METHOD;
	}

	private static Store store(ExtensionContext context) {
		return context.getStore(NAMESPACE);
	}

}
