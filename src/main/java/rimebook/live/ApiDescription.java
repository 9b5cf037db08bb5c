package rimebook.live;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

import io.swagger.v3.core.converter.AnnotatedType;
import io.swagger.v3.core.converter.ModelConverters;
import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.ArraySchema;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.servers.Server;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springdoc.core.customizers.OperationCustomizer;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.io.ClassPathResource;
import org.springframework.web.method.HandlerMethod;
import tools.jackson.databind.json.JsonMapper;

/**
 * Tells the library that describes the public data what cannot be seen in the
 * controllers, which write bytes that are kept: bodies, headers, problems, the stream and
 * an example of everything. The examples are a competition that is made up; a test asks
 * the service for each of them and compares the answer.
 */
@Configuration(proxyBeanMethods = false)
class ApiDescription {

	private static final String FOLDER = "openapi/";

	private static final String PROBLEM = "Problem";

	private static final String STREAM = "/follow/{competition}/signals";

	/** What the variables of the addresses are in the examples. */
	private static final Map<String, Named> VARIABLES = Map.of("competition",
			new Named("The competition's slug", "fjord-days"), "event", new Named("The event's slug", "junior"),
			"segment", new Named("The segment's slug", "free-skating"), "number",
			new Named("The number of a version", "9"), "one",
			new Named("The identity of an entry", "00000000-0000-7000-8000-000000000064"), "other",
			new Named("The identity of another", "00000000-0000-7000-8000-000000000066"));

	private final Set<Class<?>> bodies = ConcurrentHashMap.newKeySet();

	/** Leads from wherever the service lies; never from a host that a request names. */
	@Bean
	OpenAPI publicData() {
		return new OpenAPI()
			.info(new Info().title("Rimebook, public data").version("1").description(text("description.md")))
			.servers(List.of(new Server().url("/").description("This service")))
			.components(new Components());
	}

	@Bean
	OperationCustomizer answered() {
		return (operation, method) -> {
			Answers answers = method.getMethodAnnotation(Answers.class);
			return (answers != null) ? described(operation, method, answers) : operation;
		};
	}

	private Operation described(Operation operation, HandlerMethod method, Answers answers) {
		boolean table = answers.body() == Void.class;
		String id = method.getMethod().getName() + (table ? "Table" : "");
		operation.operationId(id).summary(answers.value()).tags(List.of(table ? "Tables" : "Data"));
		variables(operation);
		MediaType body = new MediaType();
		if (table) {
			body.schema(new Schema<>().types(Set.of("string")));
		}
		else {
			this.bodies.add(answers.body());
			body.schema(new Schema<>().$ref("#/components/schemas/" + answers.body().getSimpleName()));
		}
		String example = textOrNull(id + (table ? ".csv" : ".json"));
		if (example != null) {
			body.example(table ? example : JsonMapper.shared().readValue(example, Object.class));
		}
		operation.responses(responses(answers.value(), table ? "text/csv" : "application/json", body));
		return operation;
	}

	private static void variables(Operation operation) {
		if (operation.getParameters() != null) {
			operation.getParameters().forEach((parameter) -> {
				Named named = VARIABLES.get(parameter.getName());
				if (named != null) {
					parameter.description(named.meaning()).example(named.example());
				}
			});
		}
	}

	private static ApiResponses responses(String meaning, String type, MediaType body) {
		Header tag = new Header().description("Names these bytes; send it as If-None-Match")
			.schema(new Schema<>().types(Set.of("string")));
		return new ApiResponses()
			.addApiResponse("200",
					new ApiResponse().description(meaning)
						.content(new Content().addMediaType(type, body))
						.addHeaderObject("ETag", tag))
			.addApiResponse("304", new ApiResponse().description("Nothing new since the tag that was sent"))
			.addApiResponse("404", problem("There is none, or it is not public"))
			.addApiResponse("503", tooMuch());
	}

	private static ApiResponse problem(String meaning) {
		return new ApiResponse().description(meaning)
			.content(new Content().addMediaType("application/problem+json",
					new MediaType().schema(new Schema<>().$ref("#/components/schemas/" + PROBLEM))));
	}

	private static ApiResponse tooMuch() {
		return new ApiResponse().description("More is asked than can be answered at once")
			.addHeaderObject("Retry-After",
					new Header().description("Seconds").schema(new Schema<>().types(Set.of("integer"))));
	}

	/** The bodies, what a refusal looks like, and the stream, which has no controller. */
	@Bean
	OpenApiCustomizer whole() {
		return (description) -> {
			this.bodies.forEach((body) -> ModelConverters.getInstance(true)
				.resolveAsResolvedSchema(new AnnotatedType(body).resolveAsRef(true)).referencedSchemas
				.forEach((name, schema) -> description.getComponents().addSchemas(name, schema)));
			this.bodies.forEach((body) -> complete(body, description));
			description.getComponents().addSchemas(PROBLEM, problem());
			description.getPaths().addPathItem(STREAM, new PathItem().get(stream()));
		};
	}

	/**
	 * Every member of a record is there; one that may have no value may be {@code null}.
	 */
	private static void complete(Class<?> type, OpenAPI description) {
		Schema<?> schema = description.getComponents().getSchemas().get(type.getSimpleName());
		if (schema == null || !type.isRecord() || schema.getRequired() != null && schema.getTitle() != null) {
			return;
		}
		schema.title(type.getSimpleName());
		List<String> required = new ArrayList<>();
		for (RecordComponent component : type.getRecordComponents()) {
			String name = component.getName();
			if (!mayBeLeftOut(component)) {
				required.add(name);
			}
			if (component.getAnnotatedType().isAnnotationPresent(Nullable.class)) {
				schema.getProperties().computeIfPresent(name, (key, member) -> orNull((Schema<?>) member));
			}
			if (component.getAnnotatedType() instanceof AnnotatedParameterizedType list
					&& Arrays.stream(list.getAnnotatedActualTypeArguments())
						.anyMatch((part) -> part.isAnnotationPresent(Nullable.class))) {
				Schema<?> member = Objects.requireNonNull((Schema<?>) schema.getProperties().get(name));
				member.setItems(orNull(member.getItems()));
			}
			inside(component).forEach((part) -> complete(part, description));
		}
		schema.setRequired(required);
	}

	private static boolean mayBeLeftOut(RecordComponent component) {
		return Arrays.stream(component.getAccessor().getAnnotations())
			.anyMatch((one) -> one.annotationType().getSimpleName().equals("JsonInclude"));
	}

	private static List<Class<?>> inside(RecordComponent component) {
		List<Class<?>> parts = new ArrayList<>(List.of(component.getType()));
		if (component.getGenericType() instanceof ParameterizedType list) {
			Arrays.stream(list.getActualTypeArguments())
				.filter(Class.class::isInstance)
				.forEach((part) -> parts.add((Class<?>) part));
		}
		return parts;
	}

	private static Schema<?> orNull(Schema<?> member) {
		if (member.get$ref() != null) {
			return new Schema<>()
				.anyOf(List.of(new Schema<>().$ref(member.get$ref()), new Schema<>().types(Set.of("null"))));
		}
		Set<String> types = new LinkedHashSet<>((member.getTypes() != null) ? member.getTypes() : Set.of("string"));
		types.add("null");
		member.setTypes(types);
		return member;
	}

	private static Schema<?> problem() {
		Schema<?> schema = new Schema<>().types(Set.of("object")).description("A refusal, by RFC 9457");
		schema.addProperty("type", string("The address of a page that explains the code"));
		schema.addProperty("title", string("What is wrong, in general"));
		schema.addProperty("status", new Schema<>().types(Set.of("integer")).description("The status of the answer"));
		schema.addProperty("detail", string("What is wrong here, in a sentence"));
		schema.addProperty("instance", string("What was asked for"));
		schema.addProperty("code", string("Stable, for programs, such as not-found"));
		schema.addProperty("errors",
				new ArraySchema().items(new Schema<>().types(Set.of("object"))).types(Set.of("array")));
		schema.addProperty("reference", string("What to quote when asking about a fault; else empty"));
		schema.setRequired(List.of("type", "title", "status", "detail", "instance", "code"));
		return schema;
	}

	private static Schema<?> string(String meaning) {
		return new Schema<>().types(Set.of("string")).description(meaning);
	}

	private static Operation stream() {
		Operation operation = new Operation().operationId("signals")
			.summary("Server-sent events: what moved, never what it became")
			.description(text("stream.md"))
			.tags(List.of("Following"))
			.addParametersItem(new Parameter().name("competition")
				.in("path")
				.required(true)
				.schema(new Schema<>().types(Set.of("string"))));
		variables(operation);
		return operation
			.responses(new ApiResponses()
				.addApiResponse("200",
						new ApiResponse().description("The stream, without end")
							.content(new Content().addMediaType("text/event-stream",
									new MediaType().schema(new Schema<>().types(Set.of("string")))
										.example(text("signals.txt")))))
				.addApiResponse("404", problem("There is none, or it is not public"))
				.addApiResponse("503", tooMuch().description("No stream is free: ask the moments")));
	}

	private static String text(String name) {
		String text = textOrNull(name);
		if (text == null) {
			throw new IllegalStateException("The description lacks " + name);
		}
		return text;
	}

	private static @Nullable String textOrNull(String name) {
		ClassPathResource file = new ClassPathResource(FOLDER + name);
		if (!file.exists()) {
			return null;
		}
		try {
			return file.getContentAsString(StandardCharsets.UTF_8);
		}
		catch (IOException ex) {
			throw new UncheckedIOException(ex);
		}
	}

	/** A variable of an address. */
	private record Named(String meaning, String example) {
	}

}
