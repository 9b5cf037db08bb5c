package rimebook.web;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.UUID;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.web.servlet.support.RequestDataValueProcessor;

/**
 * Gives every form that changes something a token of its own beside the one against
 * foreign sites, by which the same form sent twice is known again.
 */
class FormTokens implements RequestDataValueProcessor {

	/** The hidden field. */
	static final String FIELD = "formToken";

	private final RequestDataValueProcessor others;

	FormTokens(RequestDataValueProcessor others) {
		this.others = others;
	}

	/** Spring Security brings a processor of its own, which goes on as before. */
	static BeanPostProcessor beside() {
		return new BeanPostProcessor() {

			@Override
			public Object postProcessAfterInitialization(Object bean, String name) {
				return (bean instanceof RequestDataValueProcessor others) ? new FormTokens(others) : bean;
			}

		};
	}

	@Override
	public String processAction(HttpServletRequest request, String action, String method) {
		return this.others.processAction(request, action, method);
	}

	@Override
	public String processFormFieldValue(HttpServletRequest request, @Nullable String name, String value, String type) {
		return this.others.processFormFieldValue(request, name, value, type);
	}

	/** Forms that only ask have none. */
	@Override
	public @Nullable Map<String, String> getExtraHiddenFields(HttpServletRequest request) {
		Map<String, String> fields = this.others.getExtraHiddenFields(request);
		if (fields == null || fields.isEmpty()) {
			return fields;
		}
		Map<String, String> more = new LinkedHashMap<>(fields);
		more.put(FIELD, UUID.randomUUID().toString());
		return more;
	}

	@Override
	public String processUrl(HttpServletRequest request, String url) {
		return this.others.processUrl(request, url);
	}

}
